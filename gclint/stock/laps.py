"""Closed laps: where the tool comes back to a point of its own path at one level, and the lifts on its way.

A lap is a stretch of feed moves of one tool, without a rapid and without a way through the air, in which the tip never
goes lower than where the stretch begins; it may rise in between, over a tab. Only its closed part counts.
"""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from gclint.columns import Bools, Floats, Longs
from gclint.motion.along import points_at
from gclint.tables.motion import HOME, MACHINE, OTHER_FRAME, RAPID, Motion

LEVEL = 1e-3  # mm; heights that differ by less are one level
SAME_POINT = 0.02  # mm; a lap is closed where it comes back this near
LEAST_LENGTH = 3.0  # mm; a shorter way round is no lap


class Laps(Struct, frozen=True, eq=False):
    """One row for each closed lap, in the order of execution."""

    first: Longs  # rows of Motion
    last: Longs
    level: Floats  # Z of the lowest tip, mm
    length: Floats  # in X and Y, mm
    low: Floats  # [laps, 2] lowest X and Y of the tip's path, mm (of arcs: of their ends and quarters)
    high: Floats

    def __len__(self) -> int:
        return len(self.first)


def laps_of(motion: Motion, top: float | None, lowest: float = np.inf) -> Laps:
    """The closed laps whose level is at most `lowest` (Z, mm); `top`: of the blank, above which is air."""
    rows, group, level = _stretches(motion, top, lowest)
    if not len(rows):
        return _none()
    x = np.column_stack((motion.x0[rows], motion.x1[rows]))
    y = np.column_stack((motion.y0[rows], motion.y1[rows]))
    flat = _across(motion, rows)
    along = np.concatenate(([0.0], np.cumsum(flat)))
    starts = np.concatenate(([True], np.diff(group) != 0))
    # vertices at the level: the start of each stretch, and the end of each of its moves
    px = np.concatenate((x[starts, 0], x[:, 1]))
    py = np.concatenate((y[starts, 0], y[:, 1]))
    pz = np.concatenate((motion.z0[rows[starts]], motion.z1[rows]))
    own = np.concatenate((group[starts], group))
    s = np.concatenate((along[:-1][starts], along[1:]))
    at = np.concatenate((np.flatnonzero(starts), np.arange(len(rows)) + 1))  # moves before the vertex
    lies = np.abs(pz - level[own]) <= LEVEL
    px, py, own, s, at = px[lies], py[lies], own[lies], s[lies], at[lies]
    best_first, best_last, best = _longest(px, py, own, s, int(group[-1]) + 1)
    closed = np.flatnonzero(best >= LEAST_LENGTH)
    if not len(closed):
        return _none()
    first, last = at[best_first[closed]], at[best_last[closed]] - 1
    low, high = _bounds(motion, rows, first, last)
    return Laps(rows[first], rows[last], level[closed], best[closed], low, high)


def _stretches(motion: Motion, top: float | None, lowest: float) -> tuple[Longs, Longs, Floats]:
    """(rows of the moves that belong to a stretch, its number 0 and up for each, the level of each stretch)."""
    m = motion
    known = (m.flags & (MACHINE | HOME | OTHER_FRAME)) == 0
    for values in (m.x0, m.y0, m.z0, m.x1, m.y1, m.z1):
        known &= np.isfinite(values)
    air = np.zeros(len(m), dtype=bool) if top is None else (m.z0 >= top) & (m.z1 >= top)
    # a rapid straight up that stays below the top is the lift over a tab
    lift = (m.kind == RAPID) & (m.x0 == m.x1) & (m.y0 == m.y1) & (m.z1 > m.z0)
    lift &= m.z1 < (np.inf if top is None else top)
    chosen = known & ~air & ((m.kind != RAPID) | lift)
    rows = np.flatnonzero(chosen)
    if not len(rows):
        return rows, rows, np.empty(0)
    segment = np.cumsum(np.concatenate(([True], (np.diff(rows) > 1) | (np.diff(m.tool[rows]) != 0))))
    z = m.z1[rows]
    span = float(z.max() - z.min()) + 1.0
    least = np.minimum.accumulate(z - segment * span) + segment * span  # of each segment for itself
    drops = np.concatenate(([True], (np.diff(least) < -LEVEL) | (np.diff(segment) != 0)))
    level_start = m.z0[rows] - least <= LEVEL  # a segment that begins at its level has no way down
    drops &= ~(np.concatenate(([True], np.diff(segment) != 0)) & level_start)
    number = np.cumsum(drops | np.concatenate(([True], np.diff(segment) != 0)))
    member = ~drops & (least <= lowest)
    rows, number, least = rows[member], number[member], least[member]
    if not len(rows):
        return rows, rows, np.empty(0)
    changes = np.concatenate(([False], np.diff(number) != 0))
    group = np.cumsum(changes)
    return rows, group, least[np.concatenate(([True], changes[1:]))]


def _longest(px: Floats, py: Floats, own: Longs, s: Floats, groups: int) -> tuple[Longs, Longs, Floats]:
    """For each stretch (first and last vertex of its longest closed way, the length of that way; 0 if none closes)."""
    first, last, best = np.zeros(groups, np.int64), np.zeros(groups, np.int64), np.zeros(groups)
    for shift in (0.0, 0.5):  # points near each other may lie on two sides of a border of one grid, not of both
        kx, ky = (np.floor(p / SAME_POINT + shift).astype(np.int64) for p in (px, py))
        order = np.lexsort((s, ky, kx, own))
        same = (np.diff(own[order]) == 0) & (np.diff(kx[order]) == 0) & (np.diff(ky[order]) == 0)
        begins = np.flatnonzero(np.concatenate(([True], ~same)))
        ends = np.concatenate((begins[1:], [len(order)])) - 1
        a, b = order[begins], order[ends]
        length = s[b] - s[a]
        rank = np.lexsort((-a, length, own[a]))
        final = rank[np.concatenate((np.diff(own[a][rank]) != 0, [True]))] if len(rank) else rank
        n = own[a][final]
        better = length[final] > best[n]
        first[n[better]], last[n[better]], best[n[better]] = a[final][better], b[final][better], length[final][better]
    return first, last, best


def _across(motion: Motion, rows: Longs) -> Floats:
    """Length of each move as seen from above, mm."""
    rise = motion.z1[rows] - motion.z0[rows]
    flat: Floats = np.sqrt(np.maximum(np.nan_to_num(motion.length[rows]) ** 2 - rise * rise, 0.0))
    return flat


def _bounds(motion: Motion, rows: Longs, first: Longs, last: Longs) -> tuple[Floats, Floats]:
    """[laps, 2] lowest and highest X and Y."""
    low, high = np.empty((len(first), 2)), np.empty((len(first), 2))
    radius = np.where(motion.sweep[rows] != 0, np.hypot(motion.x0[rows] - motion.cu[rows],
                                                        motion.y0[rows] - motion.cv[rows]), 0.0)  # fmt: skip
    arc = (motion.sweep[rows] != 0) & (motion.plane[rows] == 17) & np.isfinite(radius)
    wide = np.abs(motion.sweep[rows]) >= 180
    for axis, (a, b, centre) in enumerate(
        ((motion.x0[rows], motion.x1[rows], motion.cu[rows]), (motion.y0[rows], motion.y1[rows], motion.cv[rows]))
    ):
        least, most = np.minimum(a, b), np.maximum(a, b)
        # half a circle and more reaches about its radius to all sides; less is taken by its ends
        least = np.where(arc & wide, np.minimum(least, centre - radius), least)
        most = np.where(arc & wide, np.maximum(most, centre + radius), most)
        spans = np.column_stack((first, last + 1)).ravel()  # every second one of these is a lap
        low[:, axis] = np.minimum.reduceat(np.append(least, np.inf), spans)[::2]
        high[:, axis] = np.maximum.reduceat(np.append(most, -np.inf), spans)[::2]
    return low, high


def _none() -> Laps:
    empty = np.zeros(0, np.int64)
    return Laps(empty, empty, np.zeros(0), np.zeros(0), np.zeros((0, 2)), np.zeros((0, 2)))


class Points(Struct, frozen=True, eq=False):
    """Points along laps as seen from above, in the order of the path."""

    lap: Longs
    move: Longs  # row of Motion
    x: Floats
    y: Floats
    z: Floats  # of the tip
    dx: Floats  # direction of travel, of length 1
    dy: Floats
    step: Floats  # mm of path the point stands for


MOST_POINTS = 2_000_000  # of all laps together; the steps grow beyond
STEPS = 256  # most points of one move


def points_along(motion: Motion, laps: Laps, step: float) -> Points:
    """Points in the middle of steps of about `step` mm along each lap; moves straight up and down have none."""
    count = laps.last - laps.first + 1
    lap = np.repeat(np.arange(len(laps)), count)
    rows = np.arange(int(count.sum())) + np.repeat(laps.first - (np.cumsum(count) - count), count)
    flat = _across(motion, rows)
    moves = flat > 1e-6
    rows, lap, flat = rows[moves], lap[moves], flat[moves]
    step = max(step, float(flat.sum()) / MOST_POINTS)
    n = np.clip(np.ceil(flat / step).astype(np.int64), 1, STEPS)
    which = np.repeat(np.arange(len(rows)), n)
    share = (np.arange(int(n.sum())) - np.repeat(np.cumsum(n) - n, n) + 0.5) / n[which]
    row = rows[which]
    m = motion
    x, y, z = points_at(m, row, share)
    dx, dy = m.x1[row] - m.x0[row], m.y1[row] - m.y0[row]
    arc: Bools = (m.sweep[row] != 0) & (m.plane[row] == 17)
    way = np.sign(m.sweep[row])
    dx, dy = np.where(arc, -way * (y - m.cv[row]), dx), np.where(arc, way * (x - m.cu[row]), dy)
    size = np.maximum(np.hypot(dx, dy), 1e-12)
    return Points(lap[which], row, x, y, z, dx / size, dy / size, flat[which] / n[which])

