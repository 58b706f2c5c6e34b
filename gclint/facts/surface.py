"""What is left standing beside a cut, read from the finished surface of the stock model."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np

from gclint.columns import Bools, Column, Floats, Longs, one_of
from gclint.facts.context import Context
from gclint.facts.path import heading
from gclint.knowledge.numbers import model_number
from gclint.motion.along import points_at
from gclint.tables.motion import LINE

AROUND = np.linspace(0.0, 2 * np.pi, 16, endpoint=False)  # directions looked at
BEYOND = 1.5  # cells outside the rim, so that the wall's own cell does not count
LIFTING = ("up-cut", "compression")


def lifts_top_edge(context: Context) -> Bools:
    """[pieces] whether edges that lift their chips cut the stock's top, which still lies beside the cut at the end.

    Those of an up-cut tool, not looked at in a material that does not mind, and the lower edges of a compression tool.
    """
    engagement, m = context.engagement, context.motion
    pieces, box, cut = engagement.pieces, engagement.box, engagement.cut
    found = np.zeros(len(pieces), bool)
    material = context.setup.material
    minds = LIFTING if material is None or material.up_cut_frays_top else LIFTING[1:]
    if box is None or box.x is None or box.y is None or cut.size == 0:
        return found
    lifting = {n: tool.diameter / 2 for n, tool in context.setup.tools.items() if tool.helix in minds}
    number = m.tool[pieces.move]
    same = model_number("at_the_top")
    met = one_of(number, list(lifting)) & (pieces.depth - pieces.ap < same) & (pieces.ap > same)
    rows = np.flatnonzero(met & (m.kind[pieces.move] >= LINE))
    radius = np.zeros(len(rows))
    for n, half in lifting.items():
        radius[number[rows] == n] = half
    for inside, depth in _around(context, rows, radius):
        found[rows[inside[depth == 0]]] = True
    return found


def wall_beside(context: Context, rows: Column, left: Column) -> Floats:
    """[rows] height above the tip of the finished surface at `left` mm to the left of the axis, at least a wall's cell
    outside the rim; 0 outside the box."""
    box, cut, cell = context.engagement.box, context.engagement.cut, context.engagement.cell
    height = np.zeros(len(rows))
    if box is None or box.x is None or box.y is None or cut.size == 0:
        return height
    x, y = middle_of(context, rows)
    along_x, along_y = heading(context, rows)
    least = context.cutting.loads.effective_diameter[rows] / 2 + BEYOND * cell
    aside = np.copysign(np.maximum(np.abs(left), least), left)
    i, j = np.floor((x - aside * along_y - box.x[0]) / cell), np.floor((y + aside * along_x - box.y[0]) / cell)
    inside = np.flatnonzero((i >= 0) & (j >= 0) & (i < cut.shape[1]) & (j < cut.shape[0]))
    surface = cut[j[inside].astype(np.int64), i[inside].astype(np.int64)]
    height[inside] = np.maximum(0.0, context.engagement.pieces.depth[rows[inside]] - surface)
    return height


def _around(context: Context, rows: Column, radius: Column) -> Iterator[tuple[Column, Column]]:
    """For each direction: which of `rows` look into the stock's outline, and the finished depth just beyond the rim."""
    x, y = middle_of(context, rows)
    for angle in AROUND:
        cell = context.engagement.cell
        inside, j, i = cells_at(context, x, y, radius + BEYOND * cell, angle, cell)
        yield inside, context.engagement.cut[j, i]


def cells_at(
    context: Context, x: Column, y: Column, radius: Column, angle: float, cell: float
) -> tuple[Longs, Longs, Longs]:
    """(which points lie in the model's box, their row, their column): `radius` away from x, y in one direction."""
    box, cut, own = context.engagement.box, context.engagement.cut, context.engagement.cell
    if box is None or box.x is None or box.y is None:
        return (np.zeros(0, np.int64),) * 3
    i = np.floor((x + radius * np.cos(angle) - box.x[0]) / cell)
    j = np.floor((y + radius * np.sin(angle) - box.y[0]) / cell)
    per_own = own / cell  # 1 exactly where the cells are the model's own
    wide, high = cut.shape[1] * per_own, cut.shape[0] * per_own
    inside = np.flatnonzero((i >= 0) & (j >= 0) & (i < wide) & (j < high))
    return inside, j[inside].astype(np.int64), i[inside].astype(np.int64)


def middle_of(context: Context, rows: Column) -> tuple[Column, Column]:
    """X and Y of the tool's axis in the middle of each piece, mm."""
    pieces = context.engagement.pieces
    share = (pieces.start[rows].astype(np.float64) + pieces.end[rows]) / 2
    x, y, _ = points_at(context.motion, pieces.move[rows], share)
    return x, y
