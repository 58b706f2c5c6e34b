"""Which declared keep-outs moves cross, and how deep; the work is bounded, and what lies beyond the bound is told."""

from __future__ import annotations

import numpy as np

from gclint.columns import Column, Floats, distinct
from gclint.facts.context import Context, once
from gclint.tables.motion import MACHINE, OTHER_FRAME

MOST_LOOKS = 1_000_000_000  # from moves at keep-outs that may be near: some seconds


@once
def into_keep_out(context: Context) -> tuple[Floats, Column]:
    """[moves] (mm by which the tool passes below the top of a keep-out box it crosses, the box; -inf and -1 if none).

    NaN for moves that were not looked at, since the work is bounded.
    """
    from gclint.motion.boxes import Boxes

    m = context.motion
    boxes = context.setup.keep_out
    depth = np.full(len(m), -np.inf)
    which = np.full(len(m), -1, dtype=np.int32)
    if not boxes:
        return depth, which
    low, high = np.array([box.low for box in boxes], float), np.array([box.high for box in boxes], float)
    own = (m.flags & (MACHINE | OTHER_FRAME)) == 0  # the way point of a home move is a place like any other
    placed = own & np.isfinite(m.x1) & np.isfinite(m.y1) & np.isfinite(m.z1)
    near = np.flatnonzero(placed & (context.lowest < high[:, 2].max(initial=-np.inf)))
    if not len(near):
        return depth, which
    numbers = distinct(m.tool)
    radius = np.array([t.diameter / 2 if (t := context.tool(int(n))) else 0.0 for n in numbers])
    looked_at = Boxes(low, high).crossed(
        near, m.x0, m.y0, m.z0, m.x1, m.y1, m.z1, m.cu, m.cv, m.sweep, m.plane, m.length, context.lowest,
        radius[np.searchsorted(numbers, m.tool)], depth, which, MOST_LOOKS,
    )  # fmt: skip
    depth[near[looked_at:]] = np.nan
    return depth, which


def beyond_looks(context: Context) -> Column:
    """The moves that were not looked at."""
    return np.flatnonzero(np.isnan(into_keep_out(context)[0]))
