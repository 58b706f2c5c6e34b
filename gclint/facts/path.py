"""Facts about a cut along its path: jumps of the engagement, the opening slot of a pocket, holes and pecks."""

from __future__ import annotations

import numpy as np

from gclint.columns import Bools, Column, Floats, one_of
from gclint.facts.context import Context, once
from gclint.knowledge.numbers import model_number
from gclint.tables.motion import ARC_CCW, ARC_CW


@once
def along_cut(context: Context) -> tuple[Floats, Column, Floats]:
    """[pieces] length of cut up to the middle of each, the row of its pass, and its tool's diameter (NaN: unknown)."""
    pieces, passes = context.engagement.pieces, context.engagement.passes
    length = pieces.length.astype(np.float64)
    middle = np.cumsum(length) - length / 2
    of_pass = np.searchsorted(passes.first_piece, np.arange(len(pieces)), side="right")
    return middle, of_pass, diameters(context)


@once
def diameters(context: Context) -> Floats:
    """[pieces] full diameter of the tool, mm; NaN where it is not known."""
    number = context.motion.tool[context.engagement.pieces.move]
    known = np.full(len(number), np.nan)
    for n, tool in context.setup.tools.items():
        known[number == n] = tool.diameter
    return known


def piece_at(middle: Floats, of_pass: Column, where: Floats, diameter: Floats) -> Column:
    """[pieces] row of the piece nearest to a place along the cut, -1 where none of the same pass lies near it."""
    row = np.clip(np.searchsorted(middle, where), 1, len(middle) - 1)
    row = row - (where - middle[row - 1] < middle[row] - where)
    near = (np.abs(middle[row] - where) <= model_number("turn_near") * diameter) & (of_pass[row] == of_pass)
    return np.where(near, row, -1)


@once
def turn(context: Context) -> Floats:
    """[pieces] how far the path turns in X and Y around the piece, degrees; 0 where the pass begins or ends there."""
    n = len(context.engagement.pieces)
    if n < 2:
        return np.zeros(n)
    middle, of_pass, diameter = along_cut(context)
    x, y = heading(context, np.arange(n))
    around = model_number("turn_around") * diameter
    back, ahead = (piece_at(middle, of_pass, place, diameter) for place in (middle - around, middle + around))
    cosine = np.clip(x[back] * x[ahead] + y[back] * y[ahead], -1.0, 1.0)
    return np.where((back >= 0) & (ahead >= 0), np.degrees(np.arccos(cosine)), 0.0)


def heading(context: Context, rows: Column) -> tuple[Floats, Floats]:
    """Direction of travel in X and Y in the middle of each of `rows`, of length 1 (0 where there is none)."""
    m, pieces = context.motion, context.engagement.pieces
    of = pieces.move[rows]
    x, y = m.x1[of] - m.x0[of], m.y1[of] - m.y0[of]
    arc = np.flatnonzero((m.kind[of] >= ARC_CW) & (m.plane[of] == 17))
    at = of[arc]
    share = (pieces.start[rows][arc].astype(np.float64) + pieces.end[rows][arc]) / 2
    angle = np.arctan2(m.y0[at] - m.cv[at], m.x0[at] - m.cu[at]) + np.radians(m.sweep[at]) * share
    way = np.where(m.kind[at] == ARC_CCW, 1.0, -1.0)
    x[arc], y[arc] = -np.sin(angle) * way, np.cos(angle) * way
    long = np.hypot(x, y)
    with np.errstate(divide="ignore", invalid="ignore"):
        return np.nan_to_num(x / long), np.nan_to_num(y / long)


# entries: holes and pecks


def bores(context: Context) -> Bools:
    """[entries] whether the tool comes up again without a cut to the side: a hole as wide as the tool."""
    entries, pieces, passes = context.engagement.entries, context.engagement.pieces, context.engagement.passes
    if len(entries) == 0 or len(passes) == 0:
        return np.zeros(len(entries), bool)
    level = np.concatenate(([0.0], np.cumsum(pieces.travel.astype(np.float64))))
    own = np.maximum(entries.pass_, 0)
    first = np.searchsorted(pieces.move, entries.first_move)
    last = np.maximum(passes.last_piece[own].astype(np.int64) + 1, first)
    found: Bools = (entries.pass_ >= 0) & (level[last] - level[first] <= model_number("straight_share") * entries.solid)
    return found


def pecks(context: Context) -> Bools:
    """[entries] whether the tool comes up and goes down again within the entry, by a pecking cycle or written out."""
    if len(context.engagement.entries) == 0:
        return np.zeros(0, bool)
    cycle = one_of(context.motion.cycle[context.engagement.entries.first_move], (73, 83))
    deeper: Bools = _pecks(context)[1] > 0
    return cycle | deeper


def first_peck(context: Context) -> Floats:
    """[entries] how deep the first peck goes into solid, mm; of an entry without pecks its whole depth."""
    return _pecks(context)[0]


def next_peck(context: Context) -> Floats:
    """[entries] the deepest step of the pecks behind the first, mm; 0 if there is none."""
    return _pecks(context)[1]


@once
def _pecks(context: Context) -> tuple[Floats, Floats]:
    m, (rows, starts) = context.motion, context.entry_moves
    n = len(starts)
    if n == 0:
        return np.zeros(0), np.zeros(0)
    entries = context.engagement.entries
    entry = np.repeat(np.arange(n), np.diff(np.concatenate((starts, [len(rows)]))))
    z0, z1 = np.nan_to_num(m.z0[rows]), np.nan_to_num(m.z1[rows])
    lowest = np.minimum.reduceat(z1, starts)
    surface = lowest + entries.solid
    # lowest tip so far, entry by entry: each entry's heights lie far below those of the one before
    z1[starts] = np.minimum(z1[starts], surface)
    apart = entry * (float(z1.max() - z1.min()) + 1.0)
    so_far = np.minimum.accumulate(z1 - apart) + apart
    before = np.concatenate(([0.0], so_far[:-1]))
    before[starts] = surface
    gained = np.maximum(0.0, np.minimum(before, surface[entry]) - so_far)
    rises = z1 > z0 + 1e-6
    rises[starts] = True
    peck = np.cumsum(rises) - 1
    of_entry = entry[np.flatnonzero(rises)]
    depth = np.bincount(peck, gained)
    deep = np.flatnonzero(depth > model_number("contact_depth"))
    first, later = np.zeros(n), np.zeros(n)
    leads = np.concatenate(([True], of_entry[deep][1:] != of_entry[deep][:-1])) if len(deep) else np.zeros(0, bool)
    first[of_entry[deep[leads]]] = depth[deep[leads]]
    np.maximum.at(later, of_entry[deep[~leads]], depth[deep[~leads]])
    return first, later
