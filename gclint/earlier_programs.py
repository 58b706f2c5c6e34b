"""The programs that cut a blank before the one that is checked: what they leave of it."""

from __future__ import annotations

import hashlib
import math
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING

import msgspec
import numpy as np
from msgspec import structs

from gclint import disk
from gclint.problem import Problem, reason
from gclint.setup.order import Order, declared_at
from gclint.stock_store import Known, StockStore
from gclint.tables.assumption import Assumption
from gclint.tables.setup import Assumed, Setup, Stock, UsedFile

if TYPE_CHECKING:
    from gclint.setup.declare import Declared
    from gclint.stock.engage import Ready, Start
    from gclint.stock.grid import Grid
    from gclint.tables.engagement import Engagement
    from gclint.tables.field import Field
    from gclint.tables.motion import Motion
    from gclint.tables.program import Program

FINER = 0.8  # a program that wants cells smaller than this share of those there are has the earlier ones cut again
HELD = 1_000_000  # moves of earlier programs that are held from finding out about them to their sweep


@dataclass(frozen=True, slots=True, eq=False)
class Earlier:
    """The blank as the program finds it. `start` None: nothing can be modelled, or nothing was cut."""

    start: Start | None = None
    name: str = ""  # under which the field that the program leaves is laid on the shelf
    used: tuple[UsedFile, ...] = ()
    assumed: tuple[Assumed, ...] = ()
    unclear: str = ""  # why it is not known in full

    def left(self, engagement: Engagement, store: StockStore | None) -> Engagement:
        """The engagement with all that is known of the blank; what it leaves is laid on the shelf."""
        if store is not None and self.name and engagement.field is not None:
            store.lay(self.name, engagement.field)
        assumed = self.assumed if engagement.box is not None else ()
        doubts = (*self.doubts(engagement), *engagement.doubts)
        return replace(engagement, assumed=(*engagement.assumed, *assumed), doubts=doubts, field=None)

    def doubts(self, engagement: Engagement) -> tuple[Assumption, ...]:
        """What hangs on cuts that are not known: all that the program meets."""
        if not self.unclear:
            return ()
        ones = (("pieces", engagement.pieces), ("entries", engagement.entries), ("passes", engagement.passes))
        return (
            Assumption(
                entry="earlier-cuts-unknown",
                what="what was cut before",
                value="no more than could be followed",
                alternatives=("more of it, so that less is met here",),
                because=self.unclear,
                rows={name: np.ones(len(table), bool) for name, table in ones},
                spares=("spindle", "state", "time", "heat"),
            ),
        )


NONE_EARLIER = "no earlier program is declared (`program` or `after` in job.toml)"
WHOLE = Assumed("the blank", "whole: nothing has been cut before", NONE_EARLIER)


def earlier_of(
    declared: Declared, order: Order, motion: Motion, setup: Setup, store: StockStore | None
) -> Earlier:
    """What the programs before this one of the order leave. Raises Problem, at its name in job.toml, for one that
    cannot be read."""
    from gclint.stock.engage import prepare

    walk = _Walk(declared, order, store)
    known = [walk.known(place) for place in range(order.at)]
    ready = prepare(motion, setup)
    this = Known(order.steps[order.at].name, _digest(ready, setup), "", ready.box, ready.wanted, "", len(motion))
    start, name = walk.start([*known, this])
    used = tuple(
        UsedFile("earlier program", walk.order.steps[n].path, f"sha256:{each.content}") for n, each in enumerate(known)
    )
    return Earlier(start, name, used, _told(declared, order), _unclear(known, setup, order))


def _told(declared: Declared, order: Order) -> tuple[Assumed, ...]:
    names = [step.name for step in order.steps[: order.at]]
    turns = [step for step in order.steps[: order.at + 1] if step.flip is not None]
    if not names and not turns:
        return (Assumed("the blank", WHOLE.value, "job.toml names this program first"),)
    left = f"as left by {', '.join(names)}" if names else "whole"
    for step in turns:
        assert step.flip is not None
        left += f", turned over along {step.flip.axis.upper()} before {step.name}"
    made = [Assumed("the blank", left, "job.toml gives the order of the programs")]
    for step in turns:
        if step.flip is not None and step.flip.corner is None:
            because = f"the flip before {step.name} names no `corner`"
            made.append(Assumed("the blank's corner after a flip", "where it was before", because))
    return tuple(made)


def _unclear(known: list[Known], setup: Setup, order: Order) -> str:
    unclear = next((f"{each.name}: {each.unclear}" for each in known if each.unclear), "")
    if not known and order.steps[order.at].flip is not None:
        return "the blank was turned over, and no program is named that cut its other side"
    return unclear


class _Walk:
    """Goes along the order: what each program wants first, then the fields that are not on the shelf."""

    def __init__(self, declared: Declared, order: Order, store: StockStore | None) -> None:
        self.declared, self.order, self.store = declared, order, store
        self.held: dict[int, tuple[Ready, Setup]] = {}

    def known(self, place: int) -> Known:
        """Reads a program as far as it must be known; from the shelf, where its text alone decided that."""
        data = self._bytes(place)
        content = disk.digest(data)
        files = [(file.path, file.text) for file in (self.declared.job_file, self.declared.shop_file) if file]
        said = msgspec.json.encode((self.order.steps[place].path, place, self.declared.options, files))
        name = hashlib.sha256(said + content.encode()).hexdigest()
        remembered = self.store.recall(name) if self.store is not None else None
        if remembered is not None:
            return remembered
        with disk.overhearing() as asked:
            ready, setup, program = self._ready(place, data)
        unclear = _why_unclear(ready, setup, program)
        made = Known(
            self.order.steps[place].name, _digest(ready, setup), content, ready.box, ready.wanted, unclear,
            len(ready.motion),
        )  # fmt: skip
        if self.store is not None:
            self.store.remember(name, made, asked)
        if len(ready.motion) + sum(len(each.motion) for each, _ in self.held.values()) <= HELD:
            self.held[place] = ready, setup
        return made

    def _bytes(self, place: int) -> bytes:
        from gclint.program import LARGEST

        step = self.order.steps[place]
        try:
            data = disk.content(Path(step.path), LARGEST + 1)
        except (OSError, ValueError) as problem:
            says = reason(problem) if isinstance(problem, OSError) else str(problem)
            raise self._wrong(place, f"cannot be read: {says}") from None
        if len(data) > LARGEST:
            raise self._wrong(place, "is over 1 GiB; gclint reads programs up to 1 GiB")
        return data

    def _wrong(self, place: int, says: str) -> Problem:
        step = self.order.steps[place]
        assert self.declared.job_file is not None
        return self.declared.job_file.wrong(step.key, f'"{step.name}", which cuts the blank first, {says}')

    def _ready(self, place: int, data: bytes | None = None) -> tuple[Ready, Setup, Program]:
        from gclint.motion.compensate import compensate
        from gclint.motion.interpret import interpret
        from gclint.program.read import read
        from gclint.setup.resolve import limits_of, shop_setup, with_program
        from gclint.stock.engage import prepare

        step = self.order.steps[place]
        here = declared_at(self.declared, self.order, place)
        try:
            program = read(self._bytes(place) if data is None else data, step.path)
        except Problem as problem:
            raise self._wrong(place, f"is no program that can be read: {problem.says}") from None
        setup = shop_setup(here)
        motion = interpret(program, setup.controller, limits_of(here), Path(step.path).parent)
        setup = with_program(setup, here, program, motion)
        motion = compensate(motion, setup, program)
        return prepare(motion, setup), setup, program

    def start(self, known: list[Known]) -> tuple[Start | None, str]:
        """How the last of these finds the blank, and the name of what it leaves."""
        from gclint.stock.engage import Start

        grids = _grids(known)
        at = len(known) - 1
        grid = grids[at]
        if grid is None:
            return None, ""
        names = self._names(known, grids)
        field, done = None, -1
        if self.store is not None:
            for place in range(at - 1, -1, -1):
                there = grids[place]
                found = self.store.take(names[place], there.shape) if there is not None else None
                if found is not None:
                    field, done = found, place
                    break
        for place in range(done + 1, at):
            field = self._cut(place, known[place], grids[place], self._arrived(field, place, grids))
            if self.store is not None and field is not None and grids[place] is not None:
                self.store.lay(names[place], field)
            self.held.pop(place, None)
        box = _box(known, grid)
        return Start(box, grid, self._arrived(field, at, grids)), names[at]

    def _arrived(self, field: Field | None, place: int, grids: list[Grid | None]) -> Field | None:
        """The field that the program before leaves, as this one finds it: turned over, or within more cells."""
        flip, grid = self.order.steps[place].flip, grids[place]
        if field is None:
            return None
        if flip is not None:
            field = field.turned(flip.axis)
        if grid is not None and field.shape != grid.shape:
            before = next(each for each in reversed(grids[:place]) if each is not None)
            left = round((before.x_low - grid.x_low) / grid.cell)
            front = round((before.y_low - grid.y_low) / grid.cell)
            field = replace(field, top=field.top.wider(left, front, grid.shape))
        return field

    def _cut(self, place: int, known: Known, grid: Grid | None, field: Field | None) -> Field | None:
        from gclint.tables.field import Field

        if grid is None or known.wanted is None:
            return field
        ready, setup = self.held.get(place) or self._ready(place)[:2]
        made = ready.swept(setup, grid, field)
        return Field(grid.cell, made.side, None if field is None else field.under)

    def _names(self, known: list[Known], grids: list[Grid | None]) -> list[str]:
        """For each program, what names the field that it leaves: all that went into it."""
        said = hashlib.sha256(b"field")
        names = []
        for place, (each, grid) in enumerate(zip(known, grids)):
            flip = self.order.steps[place].flip
            shape = (0, 0) if grid is None else grid.shape
            cell = 0.0 if grid is None else grid.cell
            said.update(f"{each.digest} {shape} {cell!r} {flip.axis if flip else '-'}\0".encode())
            if grid is not None:
                said.update(f"{grid.x_low!r} {grid.y_low!r} {grid.top!r}\0".encode())
            names.append(said.hexdigest())
        return names


def _grids(known: list[Known]) -> list[Grid | None]:
    """The grid of each program, all in the cells that the last ones need; None before the first that cuts.

    Where the outline is not declared, each program's grid is that of the one before with more cells around it.
    """
    from gclint.stock.grid import Grid, grid_over, widened

    grids: list[Grid | None] = []
    finest = math.inf
    for place, each in enumerate(known):
        if each.box is None or each.wanted is None:
            grids.append(_again(grids, each))
            continue
        there = next((grid for grid in reversed(grids) if grid is not None), None)
        if there is None:
            finest = each.wanted
            grids.append(grid_over(each.box, finest))
        elif each.wanted < FINER * there.cell and each.wanted < finest:
            finest = each.wanted
            whole = grid_over(_around([one.box for one in known[: place + 1]]), finest)
            grids = [None if grid is None else _at(whole, one.box) for one, grid in zip(known, grids)]
            grids.append(_at(whole, each.box))
        elif each.box.placed:
            grids.append(_at(there, each.box))
        else:
            wide = widened(there, each.box)
            if wide is None:  # too many cells: larger ones, and everything cut again
                whole = grid_over(_around([one.box for one in known[: place + 1]]), there.cell)
                grids = [None if grid is None else whole for grid in grids]
                wide = whole
            grids.append(wide)
    return [Grid(g.shape, g.x_low, g.y_low, g.cell, g.top) if g is not None else None for g in grids]


def _again(grids: list[Grid | None], each: Known) -> Grid | None:
    there = next((grid for grid in reversed(grids) if grid is not None), None)
    return there if there is None or each.box is None else _at(there, each.box)


def _at(grid: Grid, box: Stock | None) -> Grid:
    """The same cells, where the blank lies for another program."""
    if box is None or not box.placed or box.x is None or box.y is None:
        return grid
    return structs.replace(grid, x_low=box.x[0], y_low=box.y[0], top=box.top or 0.0)


def _around(boxes: list[Stock | None]) -> Stock:
    """The box around all of them; of a declared blank its own."""
    there = [box for box in boxes if box is not None]
    last = there[-1]
    if last.placed:
        return last
    spans = []
    for axis in ("x", "y"):
        own = [span for box in there if (span := getattr(box, axis)) is not None]
        spans.append((min(low for low, _ in own), max(high for _, high in own)))
    return msgspec.structs.replace(last, x=spans[0], y=spans[1])


def _box(known: list[Known], grid: Grid) -> Stock:
    box = known[-1].box
    return box if box is not None and box.placed else _around([each.box for each in known])


def _why_unclear(ready: Ready, setup: Setup, program: Program) -> str:
    from gclint.judge.set_up_stops import set_up_behind

    if ready.notes:
        return ready.notes[0][0]
    line = set_up_behind(program, ready.motion, setup)
    return f"a stop on line {line} speaks of another set-up" if line else ""


def _digest(ready: Ready, setup: Setup) -> str:
    """Of all that a sweep depends on, but the field and its cells."""
    m, chosen = ready.motion, ready.chosen
    said = hashlib.blake2b(digest_size=32)
    for column in (m.kind, m.plane, m.x0, m.y0, m.z0, m.x1, m.y1, m.z1, m.cu, m.cv, m.sweep, chosen.tool):
        said.update(np.ascontiguousarray(column).data)
    said.update(repr([tool.row for tool in chosen.tools]).encode())
    said.update(repr((setup.controller.resolution, ready.box, len(m))).encode())
    return said.hexdigest()
