"""The tool's path as drawn: short straight pieces with what is told of each, cut at the edges of what touches."""

from __future__ import annotations

from dataclasses import dataclass, fields

import numpy as np

from gclint.columns import Bools, Bytes, Column, Floats, Floats32, Ints
from gclint.motion.along import points_at, starts_in_plane
from gclint.run import Tables
from gclint.tables.motion import HOME, MACHINE, OTHER_FRAME, RAPID, Motion

# how a piece is drawn
RAPID_AIR, FEED_AIR, CUT, RAPID_CUT = 0, 1, 2, 3

CHORD = 0.01  # mm that a drawn arc may lie beside the true one
MOST_CHORDS = 256  # of one turn
FURTHEST = 2_000_000.0  # mm from zero: what lies beyond is not drawn


@dataclass(frozen=True, slots=True, eq=False)
class Path:
    """Points in the order of execution, mm; piece i goes from point i to point i + 1 and is drawn if `drawn`.

    `first_move` is the first move a piece stands for, and the others up to the next piece's. Of merged pieces the worst
    counts: the chip farthest from the middle of its window, the least share of the feed, the largest of the others.
    """

    x: Floats
    y: Floats
    z: Floats
    first_move: Ints
    tool: Ints
    kind: Bytes
    drawn: Bools
    place: Floats32  # of the chip: 0 nothing, 1 and 2 the ends of its window, 3 twice its high end; NaN not judged
    chip: Floats32  # h_ex, mm
    share: Floats32  # reached by set feed
    depth: Floats32  # ap, mm
    force: Floats32  # N, high end

    def __len__(self) -> int:
        return len(self.first_move)

    def rows(self) -> list[str]:
        """Names of the columns with one row for each piece."""
        return [field.name for field in fields(self)][3:]


def path_of(tables: Tables) -> tuple[Path, int]:
    """(the whole path, how many moves cannot be drawn because their place in the blank is not known)."""
    motion, pieces = tables.motion, tables.engagement.pieces
    hidden = _hidden(motion)
    shown = np.flatnonzero(~hidden & (motion.length > 0))
    move, share = _cuts(motion, shown, tables)
    x, y, z = points_at(motion, move, share)
    # between the last point of a move and the first of the next nothing is drawn
    inner = move[1:] == move[:-1]
    joined = inner | ((np.diff(x) ** 2 + np.diff(y) ** 2 + np.diff(z) ** 2) < 1e-8)
    same = joined & ~inner  # one point twice: the second is dropped
    keep = np.concatenate(([True], ~same)) if len(x) else np.zeros(0, bool)
    x, y, z = x[keep], y[keep], z[keep]
    owner = np.where(same, move[1:], move[:-1])  # the piece that starts at a dropped point starts at the kept one
    begins = np.flatnonzero(keep)
    ends = np.append(begins[1:], len(move)) - 1  # the last of the points that stand in one place
    row = ends[:-1] if len(ends) else ends
    owner = move[row]
    middle = (share[row] + share[np.minimum(row + 1, max(len(share) - 1, 0))]) / 2
    drawn = move[row] == move[np.minimum(row + 1, max(len(move) - 1, 0))]
    touched = _touched(owner, middle, pieces.move, pieces.start, pieces.end)
    rapid = motion.kind[owner] == RAPID
    kind = np.where(touched >= 0, np.where(rapid, RAPID_CUT, CUT), np.where(rapid, RAPID_AIR, FEED_AIR))
    return Path(
        x, y, z, owner.astype(np.int32), motion.tool[owner].astype(np.int32), kind.astype(np.uint8), drawn,
        *_values(tables, owner, touched),
    ), int(hidden.sum())  # fmt: skip


def _hidden(motion: Motion) -> Bools:
    ends = (motion.x0, motion.y0, motion.z0, motion.x1, motion.y1, motion.z1)
    unknown = np.zeros(len(motion), bool)
    for column in ends:
        unknown |= ~(np.abs(column) < FURTHEST)
    return np.asarray(unknown | ((motion.flags & (MACHINE | HOME | OTHER_FRAME)) != 0))


def _cuts(motion: Motion, shown: Column, tables: Tables) -> tuple[Ints, Floats]:
    """(move, share of it) of every point: its ends, where contact begins and ends, and the corners of arcs."""
    pieces = tables.engagement.pieces
    drawn = np.zeros(len(motion), bool)
    drawn[shown] = True
    moves, shares = [shown, shown], [np.zeros(len(shown)), np.ones(len(shown))]
    for column in (pieces.start, pieces.end):
        inside = np.flatnonzero((column > 1e-4) & (column < 1 - 1e-4) & drawn[pieces.move])
        moves.append(pieces.move[inside])
        shares.append(column[inside].astype(np.float64))
    arcs = shown[motion.sweep[shown] != 0]
    if len(arcs):
        counts = chords(motion, arcs)
        of_arc = np.repeat(np.arange(len(arcs)), counts - 1)
        step = np.arange(len(of_arc)) - np.repeat(np.cumsum(counts - 1) - (counts - 1), counts - 1) + 1
        moves.append(arcs[of_arc])
        shares.append(step / counts[of_arc])
    key = np.concatenate(moves).astype(np.float64) + 0.5 * np.concatenate(shares)
    key.sort(kind="stable")
    if len(key):
        key = key[np.concatenate(([True], np.diff(key) > 1e-7))]
    move = np.floor(key).astype(np.int32)
    return move, np.minimum((key - move) * 2, 1.0)


def chords(motion: Motion, arcs: Column) -> Ints:
    """How many straight pieces stand for each arc."""
    first, second, _ = starts_in_plane(motion, arcs)
    radius = np.hypot(first - motion.cu[arcs], second - motion.cv[arcs])
    with np.errstate(invalid="ignore", divide="ignore"):
        angle = 2 * np.degrees(np.arccos(np.clip(1 - CHORD / np.maximum(radius, CHORD), -1, 1)))
    turns = np.abs(motion.sweep[arcs])
    wanted = np.ceil(turns / np.clip(angle, 360 / MOST_CHORDS, 30))
    return np.asarray(np.clip(np.nan_to_num(wanted, nan=1), 1, 20_000).astype(np.int32))


def _touched(owner: Ints, middle: Floats, move: Ints, start: Floats32, end: Floats32) -> Ints:
    """Row of Pieces that the middle of each drawn piece lies in; -1 in the air."""
    if not len(move):
        return np.full(len(owner), -1, np.int32)
    row = np.searchsorted(move + 0.5 * start.astype(np.float64), owner + 0.5 * middle + 1e-9, side="right") - 1
    safe = np.maximum(row, 0)
    inside = (row >= 0) & (move[safe] == owner) & (middle <= end[safe] + 1e-6)
    return np.where(inside, row, -1).astype(np.int32)


def _values(tables: Tables, owner: Ints, touched: Ints) -> tuple[Floats32, ...]:
    loads, timing = tables.cutting.loads, tables.timing
    cut, row = touched >= 0, np.maximum(touched, 0)
    nothing = np.full(len(owner), np.nan, np.float32)
    with np.errstate(invalid="ignore", divide="ignore"):
        share = (timing.reached[owner] / tables.motion.feed[owner]).astype(np.float32)
    if not len(tables.engagement.pieces):
        return nothing, nothing, share, nothing, nothing

    def of(column: Column) -> Floats32:
        return np.where(cut, column[row], np.nan).astype(np.float32)

    judged = np.where(cut & (loads.chip_judged[row] != 0), loads.h_ex[row], np.nan)
    place = chip_place(judged, loads.chip_low[row], loads.chip_high[row])
    return place, of(loads.h_ex), share, of(tables.engagement.pieces.ap), of(loads.effort.force_high)


def chip_place(chip: Column, low: Column, high: Column) -> Floats32:
    """0 to 1 under the window, 1 to 2 in it, 2 to 3 up to twice its high end. A side without a limit is never left."""
    with np.errstate(invalid="ignore", divide="ignore"):
        low, has_high = np.nan_to_num(low), np.isfinite(high)
        known = np.isfinite(chip) & (has_high | (low > 0))
        top = np.where(has_high, high, np.maximum(2 * low, chip))
        inside = 1 + np.clip((chip - low) / np.maximum(top - low, 1e-9), 0, 1)
        place = np.where(chip < low, chip / low, np.where(chip > top, 2 + np.minimum((chip - top) / top, 1), inside))
    return np.where(known, place, np.nan).astype(np.float32)
