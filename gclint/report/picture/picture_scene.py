"""What a picture of a program holds: the path by kind and depth, the findings' places, tool changes, the extent."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import islice

import numpy as np

from gclint.columns import Bools, Floats
from gclint.digest.path import CUT, Path, path_of
from gclint.digest.simplify import simplified
from gclint.run import Tables
from gclint.tables.finding import Finding
from gclint.tables.motion import EVENT, Motion

LINES_LOOKED_AT = 50  # of a finding, for those on which the tool moves
MOVES_LOOKED_AT = 1000  # of a line in a loop
FEW, MANY = 6, 40  # places of one finding, and of findings told as one


@dataclass(frozen=True, slots=True)
class Place:
    """Where a mark stands, mm."""

    x: float
    y: float
    z: float


@dataclass(frozen=True, slots=True, eq=False)
class Scene:
    """Depths are counted from `top`: of the blank, else work zero. `places`: of each group of findings."""

    path: Path
    hidden: int  # moves whose place in the blank is not known
    off: float  # mm by which the path may be drawn beside the true one
    top: float
    deepest: float  # below top, mm; 0 where nothing goes below it
    places: tuple[tuple[Place, ...], ...]
    changes: tuple[tuple[int, Place], ...]  # (tool, where the one before it stopped or it begins)
    low: Place  # of everything drawn
    high: Place


def scene_of(tables: Tables, groups: Sequence[Sequence[Finding]], pieces: int) -> Scene:
    """`groups`: findings that are told as one; `pieces`: of the path at most."""
    motion, box = tables.motion, tables.engagement.box
    whole, hidden = path_of(tables)
    moves = [_moves_of(group, motion, whole) for group in groups]
    path, off = simplified(whole, _pinned(whole, moves), pieces)
    top = box.top if box is not None and box.top is not None else 0.0
    lowest = float(path.z.min()) if len(path.z) else top
    low, high = _extent(tables, path)
    return Scene(
        path=path,
        hidden=hidden,
        off=off,
        top=top,
        deepest=max(top - lowest, 0.0),
        places=tuple(tuple(_place(whole, move) for move in each) for each in moves),
        changes=_changes(motion, whole),
        low=low,
        high=high,
    )


def _moves_of(group: Sequence[Finding], motion: Motion, path: Path) -> list[int]:
    """A move for each finding; of one that stands alone also on its other lines."""
    if len(group) > 1:
        lines = [finding.worst_line for finding in group]
        most = MANY
    else:
        lines = [group[0].worst_line, *group[0].lines[:LINES_LOOKED_AT]]
        most = FEW
    moves = (_move_on(line, motion, path) for line in dict.fromkeys(lines))
    return list(islice((move for move in moves if move is not None), most))


def _move_on(line: int, motion: Motion, path: Path) -> int | None:
    """The first move on a line that touches material, else the first that is drawn."""
    moves = np.flatnonzero(motion.line == line)[:MOVES_LOOKED_AT]
    first, last = (np.searchsorted(path.first_move, moves + more) for more in (0, 1))
    drawn = [(int(m), path.kind[a:b]) for m, a, b in zip(moves, first, last) if a < b and path.drawn[a:b].any()]
    return next((m for m, kinds in drawn if (kinds >= CUT).any()), drawn[0][0] if drawn else None)


def _pinned(path: Path, moves: list[list[int]]) -> Bools:
    """Points that are kept when the path is simplified: the ends of the moves that findings point at."""
    pinned = np.zeros(len(path.x), bool)
    for each in moves:
        for move in each:
            pinned[np.searchsorted(path.first_move, [move, move + 1])] = True
    return pinned


def _place(path: Path, move: int) -> Place:
    """The middle of the part of a move that touches material, else of the whole move; the end where it goes down."""
    first, last = (int(row) for row in np.searchsorted(path.first_move, [move, move + 1]))
    rows = np.arange(first, last)
    touching = rows[path.kind[rows] >= CUT]
    rows = touching if len(touching) else rows
    start, end = int(rows[0]), int(rows[-1]) + 1
    level = abs(path.x[end] - path.x[start]) + abs(path.y[end] - path.y[start])
    if level < 1e-6:
        return Place(float(path.x[end]), float(path.y[end]), float(path.z[end]))
    middle = int(rows[len(rows) // 2])
    if len(rows) % 2:
        return Place(*(float((c[middle] + c[middle + 1]) / 2) for c in (path.x, path.y, path.z)))
    return Place(*(float(c[middle]) for c in (path.x, path.y, path.z)))


def _changes(motion: Motion, path: Path) -> tuple[tuple[int, Place], ...]:
    """Where each tool change is made: where the path stops before it, else where it goes on."""
    made: list[tuple[int, Place]] = []
    if not len(path):
        return ()
    rows = np.flatnonzero(motion.event_kind == EVENT["change"])
    if not len(rows):  # a T word alone changes the tool here
        rows = np.flatnonzero(motion.event_kind == EVENT["select"])
    for row in rows[:1000]:
        move = int(motion.event_move[row])
        point = int(np.searchsorted(path.first_move, move))
        point = min(point, len(path.x) - 1)
        value = motion.event_value[row]
        if np.isfinite(value):
            made.append((int(value), Place(float(path.x[point]), float(path.y[point]), float(path.z[point]))))
    return tuple(made)


def _extent(tables: Tables, path: Path) -> tuple[Place, Place]:
    """The box of the path, the blank, the keep-outs and work zero."""
    box = tables.engagement.box
    x, y, z = ([0.0, *_ends(c)] for c in (path.x, path.y, path.z))
    if box is not None:
        x += box.x or ()
        y += box.y or ()
        z += [side for side in (box.top, box.bottom) if side is not None]
    for keep_out in tables.setup.keep_out:
        for known, ends in zip((x, y, z), zip(keep_out.low, keep_out.high)):
            known += ends
    return Place(min(x), min(y), min(z)), Place(max(x), max(y), max(z))


def _ends(values: Floats) -> tuple[float, ...]:
    return (float(values.min()), float(values.max())) if len(values) else ()
