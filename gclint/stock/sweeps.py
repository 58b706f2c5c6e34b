"""Runs the kernel over the moves: in one sweep, or over two halves of a long program side by side."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from gclint.columns import Bytes, Floats, Floats32, Ints
from gclint.problem import NotBuilt
from gclint.stock.contact import empty, joined
from gclint.stock.grid import Grid
from gclint.stock.halves import Halves, halves_of
from gclint.stock.profile import Profile
from gclint.tables.contact import Contact
from gclint.tables.field import Field, Side
from gclint.tables.motion import Motion
from gclint.threads import run_both

ROOM = 4_000_000  # most pieces written at a time
MOST_MERGED = 32  # moves swept as one segment
MOST_CELLS_TWICE = 12e6  # the most of which two fields are held
SHARE = 0.75  # of the work of one sweep that each of two halves may take


@dataclass(frozen=True, slots=True, eq=False)
class Swept:
    """What the kernel wrote: see Sweeper.run; `next_move` is the first that was not swept."""

    side: Side
    table: Floats32  # [PIECE_COLUMNS, pieces]
    move: Ints
    profile: Ints  # [pieces] row of `contact`
    contact: Contact
    bits: Bytes
    skipped: Bytes  # [moves]
    before: Floats32
    next_move: int
    whole: tuple[Any, ...]  # table, move, profile, bits with the room behind, which means nothing

    @property
    def columns(self) -> dict[str, Floats32]:
        """The table by name."""
        from gclint.stock.sweep import PIECE_COLUMNS

        return dict(zip(PIECE_COLUMNS, self.table, strict=True))


def sweep(motion: Motion, tool: Ints, tools: list[Profile], work: Floats, grid: Grid, resolution: float,
          most_work: float, start: Field | None = None, thick: float = np.inf) -> Swept:  # fmt: skip
    """`tool`, `work` [moves]: row of `tools` (-1: left out), mm of path that cuts. `most_work` cells are looked at.

    start: what is left of a blank `thick` mm thick when the first move begins, on this very grid; None: all of it.
    """
    rows = np.array([each.row for each in tools], np.float64)
    floor = start.floor(thick) if start is not None else None

    def run(moves: int, chosen: Ints) -> Swept:
        return _run(motion, moves, chosen, rows, grid, resolution, most_work, start, floor)

    halves = None
    if grid.shape[0] * grid.shape[1] <= MOST_CELLS_TWICE:
        reach = np.array([np.fmax(each.radius, each.shank_radius) + 4 * grid.cell for each in tools])
        halves = halves_of(motion, tool, reach, grid, work)
    if halves is None:
        return run(len(motion), tool)
    most_work *= SHARE
    later = tool.copy()
    later[: halves.at][~halves.again[: halves.at]] = -1
    return _joined(*run_both(lambda: run(halves.at, tool), lambda: run(len(motion), later), len(motion)), halves)


def _joined(first: Swept, second: Swept, halves: Halves) -> Swept:
    second.skipped[: halves.at], second.before[: halves.at] = first.skipped, first.before
    if first.next_move < halves.at:
        return replace(first, before=second.before)
    for name in Side.__slots__:
        halves.join(getattr(first.side, name), getattr(second.side, name))
    own = int(np.searchsorted(second.move, halves.at))
    profile = second.profile[own:]
    skip = int(profile[0]) if len(profile) else len(second.contact)  # those of moves gone through again
    later = second.table[:, own:], second.move[own:], profile + (len(first.contact) - skip), second.bits[:, own:]
    whole = tuple(_behind(kept, len(first.move), more) for kept, more in zip(first.whole, later, strict=True))
    table, move, profile, bits = whole
    contact = joined([first.contact, second.contact.part(skip)])
    return Swept(
        first.side, table, move, profile, contact, bits, second.skipped, second.before, second.next_move, whole
    )


def _behind(kept: Any, count: int, more: Any) -> Any:
    """`more` behind the first `count` columns: in the room that is there, copied only if there is too little."""
    until = count + more.shape[-1]
    if until > kept.shape[-1]:
        return np.concatenate((kept[..., :count], more), axis=-1)
    kept[..., count:until] = more
    return kept[..., :until]


def _run(m: Motion, moves: int, tool: Ints, tools: Floats, grid: Grid, resolution: float, most_work: float,
         start: Field | None, floor: Floats32 | None) -> Swept:  # fmt: skip
    """One sweep over the first so many moves."""
    try:
        from gclint.stock.rim import Rim
        from gclint.stock.sweep import PIECE_COLUMNS, Sweeper
    except ImportError:
        raise NotBuilt("gclint.stock.sweep") from None
    # np.zeros leaves the pages to be made at first touch, so that a large blank of which little is cut costs little
    if start is None:
        side = Side(*(np.zeros(grid.shape, np.float32) for _ in range(3)))
    else:
        side = Side(start.top.cut.copy(), start.top.share.copy(), start.top.other.copy())
    row = np.zeros(2 * grid.shape[1], np.float32)
    sweeper = Sweeper(
        side.cut, side.share, side.other, grid.x_low, grid.y_low, grid.cell, grid.top, row, MOST_MERGED,
        np.zeros((0, 0), np.float32) if floor is None else floor,
    )  # fmt: skip
    skipped, before = np.zeros(moves, np.uint8), np.zeros(moves, np.float32)
    room = min(ROOM, len(m) + 80_000)  # as a rule enough for all; memory that is not written costs nothing
    parts: list[tuple[Any, ...]] = []
    contacts: list[Contact] = []
    at = rows = count = 0
    while at < moves:
        out, bits = np.empty((len(PIECE_COLUMNS), room), np.float32), np.empty((3, room), np.uint8)
        of_move, profile = np.empty(room, np.int32), np.empty(room, np.int32)
        contact = empty(room)
        rim = Rim(contact.depth, contact.edges, contact.above, contact.reach, contact.disc)
        at, made = sweeper.run(
            at, m.kind[:moves], m.plane, m.x0, m.y0, m.z0, m.x1, m.y1, m.z1, m.cu, m.cv, m.sweep,
            tool, tools, resolution, most_work, out, of_move, profile, bits, skipped, before, rim,
        )  # fmt: skip
        profile[:made] += rows
        contacts.append(contact.part(0, rim.used))
        parts.append((out, of_move, profile, bits))
        count, rows = count + made, rows + rim.used
        if sweeper.cells_visited > most_work or at >= moves:
            break
        parts[-1] = tuple(each[..., :made] for each in parts[-1])
    whole = tuple(each[0] if len(each) == 1 else np.concatenate(each, axis=-1) for each in zip(*parts, strict=True))
    out, of_move, profile, bits = (each[..., :count] for each in whole)
    return Swept(side, out, of_move, profile, joined(contacts), bits, skipped, before, at, whole)
