"""Where an undeclared blank may end, and which cuts would meet less of it, or nothing, if it ended there.

What the program cuts along at length lies in the blank. Beyond that, its path may start or end in the air: an approach
from the side, the overrun of a facing pass, the open end of a slot. So the blank's edge may lie anywhere between the
outline of what is cut at length and one tool diameter outside all cuts; the field is swept with the latter.

A rapid that comes down there is likelier beside the blank than in it: nobody means to crash. A descent at feed, as into
the end of a slot, is meant to cut: it hangs on the edge only where the whole tool stands outside.
"""

from __future__ import annotations

import numpy as np

from gclint.columns import Bools, Floats, Floats32, Ints, Longs
from gclint.knowledge.numbers import model_number
from gclint.motion.along import points_at
from gclint.tables.assumption import Assumption
from gclint.tables.engagement import Entries, Passes, Pieces
from gclint.tables.motion import RAPID, Motion
from gclint.tables.setup import Stock

PARTS = 16  # of an arc, along which it is followed as chords
SPARES = ("spindle", "state")  # holds wherever the blank ends
SIDES = ("lowest X", "highest X", "lowest Y", "highest Y")


def edge_of(
    motion: Motion, tool: Ints, radius: Floats, box: Stock, pieces: Pieces, entries: Entries, passes: Passes
) -> Assumption | None:
    """What hangs on where an assumed blank ends; None where nothing does, or the outline is declared.

    tool, radius [moves]: -1 = not swept; of the tool, mm.
    """
    if box.placed or not len(pieces):
        return None
    top = box.top or 0.0
    rapids = _Reach.of(motion, tool, radius, top, model_number("lead"), 0.25)
    feeds = _Reach.of(motion, tool, radius, top, 1.0, 1.25)
    if rapids is None or feeds is None:
        return None

    def beyond(move: Ints, share: Floats | Floats32, fast: _Reach = rapids, slow: _Reach = feeds) -> Bools:
        return np.where(motion.kind[move] == RAPID, fast.hangs(move, share), slow.hangs(move, share))

    hangs = beyond(pieces.move, pieces.start) | beyond(pieces.move, pieces.end)
    first, last = entries.first_move, entries.last_move
    ones = np.ones(len(entries), np.float64)
    entered = beyond(first, 0 * ones) | beyond(first, ones) | beyond(last, ones)
    whole = np.zeros(len(passes), bool)
    if len(passes):
        ends = np.concatenate(([0], np.cumsum(~hangs)))
        whole = ends[passes.last_piece + 1] == ends[passes.first_piece]
    if not (hangs.any() or entered.any()):
        return None
    return Assumption(
        entry="blank-not-declared",
        what="the blank's edge",
        value="one tool diameter outside the cuts",
        alternatives=("where the cuts along it end",),
        because="no stock is declared" if not box.declared else "the stock's place is not declared",
        rows={"pieces": hangs, "entries": entered, "passes": whole},
        spares=SPARES,
    )


def cleared_before(motion: Motion, reach: Floats, box: Stock, pieces: Pieces, entries: Entries,
                   passes: Passes) -> Assumption | None:  # fmt: skip
    """All that is cut, where no blank is declared and the first cut at feed begins deeper than one pass could reach.

    reach [moves]: of the tool, mm.
    """
    feeds = np.flatnonzero(motion.kind[pieces.move] != RAPID)
    if box.declared or not len(feeds):
        return None
    first = feeds[:1]
    move = pieces.move[first]
    _, _, z = points_at(motion, move, pieces.start[first].astype(np.float64))
    depth = (box.top or 0.0) - float(z[0])
    if not depth > float(reach[move[0]]):
        return None
    return Assumption(
        entry="earlier-cuts-unknown",
        what="what was cut before",
        value="nothing",
        alternatives=("what lies above its first cut",),
        because=f"no stock is declared, and the first cut begins {depth:.1f} mm down",
        rows={"pieces": np.ones(len(pieces), bool), "entries": np.ones(len(entries), bool),
              "passes": np.ones(len(passes), bool)},
        spares=(*SPARES, "time", "heat"),
    )  # fmt: skip


class _Reach:
    """How far the cuts at length reach on each side, and which runs of feed come from beyond into them."""

    def __init__(self, motion: Motion, run: Longs, limits: Floats, room: Floats, inward: Bools) -> None:
        self.motion, self.run, self.limits, self.room, self.inward = motion, run, limits, room, inward

    @staticmethod
    def of(motion: Motion, tool: Ints, radius: Floats, top: float, lead: float, room: float) -> _Reach | None:
        """lead: diameters of unbroken cut that lie in the blank; room: diameters beyond them that do not hang yet."""
        feeds = (tool >= 0) & (motion.kind != RAPID) & (np.fmin(motion.z0, motion.z1) < top)
        rows = np.flatnonzero(feeds)
        if not len(rows):
            return None
        # one run goes on while one feed move below the top follows the other
        number = np.cumsum(np.concatenate(([True], np.diff(rows) > 1))) - 1
        path = _chords(motion, rows, number)
        limits, inward = np.full(4, np.nan), np.zeros((4, int(number[-1]) + 1), bool)
        wide = 2 * float(radius[rows].max())
        for side in range(4):
            limits[side] = _reach(path, side, lead * wide)
            inner = np.minimum(path.start[side], path.end[side]) <= limits[side]
            inward[side] = np.bincount(path.run, weights=inner, minlength=inward.shape[1]) > 0
        # the run that a move belongs to, or that begins behind it before the tool is lifted out
        moves = np.arange(len(motion))
        at = np.searchsorted(rows, moves)
        following = rows[np.minimum(at, len(rows) - 1)]
        lifts = np.concatenate(([0], np.cumsum(~(np.minimum(motion.z0, motion.z1) < top))))
        run = np.where((at < len(rows)) & (lifts[following] == lifts[moves]), number[np.minimum(at, len(rows) - 1)], -1)
        return _Reach(motion, run, limits, room * 2 * radius, inward)

    def hangs(self, move: Ints, share: Floats | Floats32) -> Bools:
        """Whether the tool, after a share of each of these moves, stands beyond the cuts at length, and its run of feed
        moves (of a rapid: the next) leads into them."""
        x, y, _ = points_at(self.motion, move, np.asarray(share, np.float64))
        run, room = self.run[move], self.room[move]
        found = np.zeros(len(move), bool)
        for side, place in enumerate((-x, x, -y, y)):
            if np.isfinite(self.limits[side]):
                found |= (place > self.limits[side] + room) & (run >= 0) & self.inward[side][run]
        return found


class _Path:
    """Feed moves as chords: [4, chords] coordinates outward on each side, mm; length, mm; the run they belong to."""

    def __init__(self, start: Floats, end: Floats, length: Floats, run: Longs) -> None:
        self.start, self.end, self.length, self.run = start, end, length, run


def _chords(motion: Motion, rows: Longs, number: Longs) -> _Path:
    arc = motion.sweep[rows] != 0
    parts = np.where(arc, PARTS, 1)
    row = np.repeat(np.arange(len(rows)), parts)
    nth = np.arange(len(row)) - np.repeat(np.cumsum(parts) - parts, parts)
    of = parts[row].astype(np.float64)
    x0, y0, _ = points_at(motion, rows[row], nth / of)
    x1, y1, _ = points_at(motion, rows[row], (nth + 1) / of)
    length = np.where(arc[row], motion.length[rows[row]] / of, np.hypot(x1 - x0, y1 - y0))
    return _Path(np.stack((-x0, x0, -y0, y0)), np.stack((-x1, x1, -y1, y1)), np.nan_to_num(length), number[row])


def _reach(path: _Path, side: int, length: float) -> float:
    """The farthest place on a side beyond which one unbroken run of cuts is longer than `length`; NaN for none."""
    a, b = path.start[side], path.end[side]
    most = np.maximum(a, b)
    high, low = float(most.max()), float(np.minimum(a, b).min())
    step = length
    while not _longest(path, a, b, most, max(high - step, low)) > length:
        if not (0 < step < high - low):  # nor where a tool of no size, or a place that is no number, has no steps
            return np.nan
        step *= 2
    far, near = high, max(high - step, low)
    near_rows = np.flatnonzero(most >= near)
    part = _Path(path.start[:, near_rows], path.end[:, near_rows], path.length[near_rows], path.run[near_rows])
    a, b, most = a[near_rows], b[near_rows], most[near_rows]
    for _ in range(40):
        middle = (near + far) / 2
        if far - near < 1e-4:
            break
        near, far = (middle, far) if _longest(part, a, b, most, middle) > length else (near, middle)
    return near


def _longest(path: _Path, a: Floats, b: Floats, most: Floats, edge: float) -> float:
    """The longest unbroken run of cuts that stays at or beyond an edge, mm."""
    rows = np.flatnonzero(most >= edge)
    if not len(rows):
        return 0.0
    a, b = a[rows], b[rows]
    change = np.where(np.abs(b - a) > 1e-12, np.abs(b - a), 1.0)
    share = np.where(np.abs(b - a) > 1e-12, (np.maximum(a, b) - edge) / change, 1.0)
    part = path.length[rows] * np.clip(share, 0.0, 1.0)
    # a chord that comes from this side of the edge begins a run, whatever lies between it and the one before
    begins = np.concatenate(([True], np.diff(path.run[rows]) != 0)) | (a < edge)
    return float(np.bincount(np.cumsum(begins) - 1, weights=part).max())
