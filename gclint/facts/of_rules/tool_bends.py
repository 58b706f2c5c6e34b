"""Gives the facts that tool-bends alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Floats, Ints
from gclint.facts.context import Context
from gclint.facts.cut import NEEDS_BENDING
from gclint.facts.fact import Fact, number
from gclint.facts.surface import AROUND, BEYOND, cells_at, middle_of
from gclint.knowledge.numbers import model_number
from gclint.tables.motion import LINE


def bent_wall(context: Context) -> Floats:
    """[pieces] 1 where the tool bends, and a wall half as high as the cut is deep stands there at the end; else 0.

    A wall that a later skim goes over again does not count, nor does material outside the model's box.
    """
    engagement, m = context.engagement, context.motion
    pieces, box, cell = engagement.pieces, engagement.box, engagement.cell
    found = np.zeros(len(pieces))
    if box is None or box.x is None or box.y is None or engagement.cut.size == 0:
        return found
    bends = context.cutting.loads.effort.bend(high=True) > model_number("bends_at_all")
    rows = np.flatnonzero(bends & (m.kind[pieces.move] >= LINE) & (pieces.ap > model_number("at_the_top")))
    if not len(rows):
        return found
    radius = context.cutting.loads.effective_diameter[rows] / 2
    floor, half = pieces.depth[rows], pieces.ap[rows] / 2
    near = float(radius.max()) / 2  # pieces are half a radius long
    skimmed: Ints | None = None
    x, y = middle_of(context, rows)
    for angle in AROUND:
        inside, j, i = cells_at(context, x, y, radius + BEYOND * cell, angle, cell)
        stands = inside[floor[inside] - engagement.cut[j, i] >= half[inside]]
        if not len(stands):
            continue
        if skimmed is None:
            skimmed = _last_skim(context, near)
        rim, j, i = cells_at(context, x[stands], y[stands], radius[stands], angle, near)
        stands = stands[rim]
        later = skimmed[j, i]
        again = (later > rows[stands]) & (pieces.depth[np.maximum(later, 0)] >= floor[stands] - half[stands])
        found[rows[stands[~again]]] = 1.0
    return found


def _last_skim(context: Context, near: float) -> Ints:
    """[ny, nx] by squares of `near` mm: the last narrow cut whose rim passes in it or beside it; -1: none does."""
    pieces, loads = context.engagement.pieces, context.cutting.loads
    cut, times = context.engagement.cut, context.engagement.cell / near
    last = np.full((int(cut.shape[0] * times) + 3, int(cut.shape[1] * times) + 3), -1, np.int32)
    narrow = (pieces.ae <= model_number("skim") * loads.effective_diameter) & (pieces.removed > 0)
    rows = np.flatnonzero(narrow & (context.motion.kind[pieces.move] >= LINE))
    x, y = middle_of(context, rows)
    for angle in AROUND:
        inside, j, i = cells_at(context, x, y, loads.effective_diameter[rows] / 2, angle, near)
        last[j, i] = np.maximum(last[j, i], rows[inside])  # of several pieces in one square the last one stays
    for _ in range(2):  # one square wider along Y, then, turned over, along X
        wider = last.copy()
        wider[1:] = np.maximum(wider[1:], last[:-1])
        wider[:-1] = np.maximum(wider[:-1], last[1:])
        last = wider.T
    return last


FACTS: dict[str, dict[str, Fact]] = {
    "pieces": {
        "bend_low": number("mm", "how far the tip of the tool bends aside, at least",
                           lambda c: c.cutting.loads.effort.bend(high=False), NEEDS_BENDING),
        "bend_high": number("mm", "how far the tip of the tool bends aside, at most",
                            lambda c: c.cutting.loads.effort.bend(high=True), NEEDS_BENDING),
        "bent_wall": number("", "1 where the tool bends beside a wall that stands at the end of the program, else 0",
                            bent_wall),
    },
}  # fmt: skip
