"""What each move does to the stock: the field is swept move by move, and every piece of path in contact is kept."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from gclint.columns import Bools, Floats, Ints, distinct, one_of
from gclint.faults import CODE
from gclint.knowledge.numbers import model_number
from gclint.setup.toolbox import needs_in_collet
from gclint.stock.assume import NEEDS_STOCK, blank, lowest_z, top_of, wider
from gclint.stock.contact import empty as no_contact
from gclint.stock.edge import cleared_before, edge_of
from gclint.stock.entries import entries_of, tips_of
from gclint.stock.grid import Grid, cell_wanted, grid_over
from gclint.stock.passes import passes_of
from gclint.stock.profile import FLAT, Profile, profile
from gclint.stock.sweeps import Swept, sweep
from gclint.tables.engagement import Engagement, Entries, Passes, Pieces
from gclint.tables.field import Field
from gclint.tables.motion import COMPENSATED, HOME, LIFT_UNKNOWN, MACHINE, OTHER_FRAME, PROBE, RAPID, Motion
from gclint.tables.setup import Assumed, Setup, Stock

# Work before the sweep gives up, in cells looked at, some 4 ns each (see WORK_* in sweep.py): half a minute of one
# core, and as much again for 8 million moves. A fine finishing move takes 300 to 600.
MOST_WORK, WORK_OF_MOVE = 8e9, 1000
GIVEN_UP_WORK = 3e8  # the same for a program that was given up at a bound: mostly one that never ends
FAR = 1e7  # mm; a position beyond it is not believed

BOUND_REACHED = CODE["bound-reached"]

Notes = list[tuple[str, str, int]]


@np.errstate(over="ignore", invalid="ignore")  # unknown and absurd positions are sorted out by comparison
def engage(motion: Motion, setup: Setup, start: Start | None = None) -> Engagement:
    """Sweeps every move through the stock (mm; see the tables in stock/table.py).

    Fine moves in contact are swept together where they leave one segment by at most 0.003 mm, never across a rapid, a
    corner, a change from down to up or a descent steeper than 45 degrees.
    A piece that goes straight down has angle 0, and as ae the share of its disc on uncut material times the diameter.
    What cannot be modelled (tools that are unknown, moves whose place is unknown, a stock whose top is unknown) is left
    out of the field and counted in `not_judged`. Raises Problem where the kernel is not built or the stock has no size.

    start: the blank as earlier programs left it; None: whole.
    """
    ready = prepare(motion, setup)
    if ready.box is None or ready.wanted is None:
        return _nothing(ready, start)
    return _sweep(ready, setup, start)


def prepare(motion: Motion, setup: Setup) -> Ready:
    """All that is known before the field is swept: the blank, what is swept, the cell it wants.

    Raises Problem for a stock without size.
    """
    notes: Notes = []
    top = top_of(setup)
    motion, lifts = _from_above(motion, top or 0.0)
    chosen = _choose(motion, setup, notes)
    if top is None:
        notes.append(("the stock: where its top lies is not known", NEEDS_STOCK, int(np.count_nonzero(chosen.swept))))
        return Ready(motion, chosen, None, None, (), notes)
    swept = chosen.swept
    box, assumed = blank(motion, setup, top, swept, chosen.radius)
    low = swept & (chosen.lowest < top)
    cuts = low & (motion.kind != RAPID)
    if box is None:
        if swept.any():
            notes.append(
                (
                    "the stock: no cut goes below work Z0, so its top is not known",
                    NEEDS_STOCK,
                    int(np.count_nonzero(swept)),
                )
            )
        return Ready(motion, chosen, None, None, (), notes)
    wanted = cell_wanted(chosen.tool, chosen.tools, chosen.lowest, cuts if cuts.any() else low, top)
    return Ready(motion, chosen, box, wanted, chosen.assumed + assumed + lifts, notes)


@dataclass(frozen=True, slots=True, eq=False)
class _Chosen:
    """What is swept: per move the row of its tool (-1: left out), its tool's radius, its lowest Z."""

    tool: Ints
    tools: list[Profile]
    radius: Floats
    lowest: Floats
    assumed: tuple[Assumed, ...]

    @property
    def reach(self) -> Floats:
        """[moves] how deep one pass can go: the length of the flutes, else so many diameters; inf where left out."""
        each = [
            made.flute_length if math.isfinite(made.flute_length) else 2 * made.radius * model_number("one_pass")
            for made in self.tools
        ]
        return np.array([*each, math.inf])[self.tool]

    @property
    def swept(self) -> Bools:
        return self.tool >= 0


@dataclass(frozen=True, slots=True, eq=False)
class Ready:
    """A program before its sweep; `box` None: nothing can be modelled; `wanted` None: nothing is cut."""

    motion: Motion
    chosen: _Chosen
    box: Stock | None
    wanted: float | None  # mm
    assumed: tuple[Assumed, ...]
    notes: Notes

    def swept(self, setup: Setup, grid: Grid, field: Field | None) -> Swept:
        """What the kernel makes of it on this grid; a field must lie on it."""
        motion, chosen = self.motion, self.chosen
        most_work = MOST_WORK + WORK_OF_MOVE * len(motion)
        if BOUND_REACHED in motion.faults.kind:
            most_work = min(MOST_WORK, GIVEN_UP_WORK)
        path = np.where(chosen.swept & (chosen.lowest < grid.top), np.fmax(motion.length, 0.0), 0.0)
        thick = math.inf if self.box is None or self.box.bottom is None else grid.top - self.box.bottom
        resolution = setup.controller.resolution
        return sweep(motion, chosen.tool, chosen.tools, path, grid, resolution, most_work, field, thick)


@dataclass(frozen=True, slots=True, eq=False)
class Start:
    """The blank as a program finds it: `field` (None: nothing was cut) lies on `grid`, which covers `box`."""

    box: Stock
    grid: Grid
    field: Field | None


def _from_above(motion: Motion, top: float) -> tuple[Motion, tuple[Assumed, ...]]:
    """Gives moves that start after a machine-coordinate move a start at the stock's top, straight over their end."""
    lifted = (motion.flags & LIFT_UNKNOWN != 0) & ~np.isfinite(motion.z0)
    lifted &= np.isfinite(motion.x1) & np.isfinite(motion.y1) & np.isfinite(motion.z1)
    if not lifted.any():
        return motion, ()
    x0, y0 = np.where(lifted, motion.x1, motion.x0), np.where(lifted, motion.y1, motion.y0)
    z0 = np.where(lifted, np.maximum(motion.z1, top), motion.z0)
    length = np.where(lifted, z0 - motion.z1, motion.length)
    because = "its place in work coordinates is not known"
    note = Assumed("height after a machine-coordinate move", "above the stock", because)
    return replace(motion, x0=x0, y0=y0, z0=z0, length=length), (note,)


def _choose(motion: Motion, setup: Setup, notes: Notes) -> _Chosen:
    n = len(motion)
    flags = motion.flags
    known = np.ones(n, bool)
    for values in (motion.x0, motion.y0, motion.z0, motion.x1, motion.y1, motion.z1):
        known &= np.abs(values) < FAR
    usable = known.copy()
    for bit, what, needs in (
        (
            OTHER_FRAME,
            "moves in a work offset or frame whose place is not known",
            "one work offset per program, none turned",
        ),
        (
            COMPENSATED,
            "moves under G41 or G42 whose real path is not known",
            "the diameter that D stands for, and a contour that it fits",
        ),
        (PROBE, "probing moves, which stop where the probe touches", "nothing that could be declared"),
    ):
        concerned = flags & bit != 0
        if concerned.any():
            notes.append((what, needs, int(np.count_nonzero(concerned))))
            usable &= ~concerned
    lost = ~known & (flags & (MACHINE | HOME | OTHER_FRAME | COMPENSATED | PROBE) == 0)
    # one that ends above the stock cannot have cut much, and a rapid of unknown height is a lift
    top = top_of(setup) or 0.0
    lost &= (motion.z1 < top) | (~(motion.z1 >= top) & (motion.kind != RAPID))
    if lost.any():
        notes.append(
            ("moves from or to an unknown position", "a first move that names X, Y and Z", int(np.count_nonzero(lost)))
        )

    assumed: list[Assumed] = []
    tool = np.full(n, -1, np.int32)
    radius = np.zeros(n)
    profiles: list[Profile] = []
    for number in distinct(motion.tool).tolist():
        mine = usable & (motion.tool == number)
        cutting = int(np.count_nonzero(mine & (motion.kind != RAPID)))
        declared = setup.tools.get(number)
        if declared is None:
            if cutting:
                name = f"tool {number}" if number >= 0 else "the tool (the program names none)"
                example = (
                    f'tool {number} (e.g. --tool "{number}: flat 6mm 2fl up-cut")'
                    if number >= 0
                    else needs_in_collet(setup.tools)
                )
                notes.append((f"the cuts of {name}", example, cutting))
            continue
        made = profile(declared)
        if made is None:
            continue
        if isinstance(made, str):
            if made:
                notes.append((f"the cuts of {declared.called}", f"{made} of tool {number}", cutting))
            else:
                notes.append(
                    (f"the shape of {declared.called} is not modelled", "nothing that could be declared", cutting)
                )
            continue
        if math.isfinite(made.flute_length) and not math.isfinite(made.shank_radius):
            notes.append(("shank-rubs", f"`shank` of {declared.called} in shop.toml", cutting))
        tool[mine], radius[mine] = len(profiles), made.radius
        profiles.append(made)
        assumed.extend(made.assumed)
    return _Chosen(tool, profiles, radius, lowest_z(motion), tuple(assumed))


def _sweep(ready: Ready, setup: Setup, start: Start | None) -> Engagement:
    motion, chosen, notes, box, wanted = ready.motion, ready.chosen, ready.notes, ready.box, ready.wanted
    assert box is not None
    assert wanted is not None
    assumed = ready.assumed
    if start is not None and start.box != box:
        box = start.box
        assumed = tuple(wider(each, box) for each in assumed)
    grid = grid_over(box, wanted) if start is None else start.grid
    begins = None if start is None else start.field
    resolution = setup.controller.resolution
    made = ready.swept(setup, grid, begins)
    if made.next_move < len(motion):
        notes.append(
            (
                "moves beyond the bound of work: the cells are too small for so long a path",
                "a smaller stock",
                len(motion) - made.next_move,
            )
        )
    if made.skipped.any():
        notes.append(("arcs of too many turns", "nothing that could be declared", int(made.skipped.sum())))
    columns = made.columns
    solid = columns.pop("solid")
    pieces = Pieces(
        move=made.move, profile=made.profile, touch=made.bits[0], centre=made.bits[1], open_start=made.bits[2],
        **columns,
    )  # fmt: skip
    passes, pass_of = passes_of(motion, pieces, chosen.radius)
    pointed = one_of(motion.tool, [number for number, tool in setup.tools.items() if tool.shape == "v"])
    flat = np.array([tool.shape == FLAT for tool in chosen.tools], bool)[chosen.tool[pieces.move]]
    entries = entries_of(
        motion, pieces, tips_of(pieces, made.contact, flat, solid), passes, pass_of, box, made.before,
        resolution, chosen.radius, pointed,
    )  # fmt: skip
    # of a program alone nobody asks for what it leaves, and two thirds of it can go
    field = None if start is None else Field(grid.cell, made.side, None if begins is None else begins.under)
    edge = edge_of(motion, chosen.tool, chosen.radius, box, pieces, entries, passes)
    cleared = cleared_before(motion, chosen.reach, box, pieces, entries, passes)
    return Engagement(
        box, grid.cell, min(wanted, grid.cell), pieces, made.contact, entries, passes, made.side.cut, assumed,
        tuple(notes), begins, field, tuple(each for each in (cleared, edge) if each is not None),
        made.next_move if made.next_move < len(motion) else None,
        np.flatnonzero(made.skipped) if made.skipped.any() else None,
    )  # fmt: skip


def _nothing(ready: Ready, start: Start | None) -> Engagement:
    """An engagement with no rows."""
    ints, floats, small = np.zeros(0, np.int32), np.zeros(0, np.float32), np.zeros(0, np.uint8)
    kinds: dict[Any, Any] = {"Ints": ints, "Floats32": floats, "Bytes": small}

    def empty(table: type[Pieces] | type[Entries] | type[Passes]) -> dict[str, Any]:
        return {name: kinds[kind] for name, kind in table.__annotations__.items()}

    field = None if start is None else start.field
    return Engagement(
        ready.box, 0.0, 0.0, Pieces(**empty(Pieces)), no_contact(0), Entries(**empty(Entries)), Passes(**empty(Passes)),
        np.zeros((0, 0), np.float32), ready.assumed, tuple(ready.notes), field, field,
    )  # fmt: skip
