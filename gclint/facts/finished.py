"""The surface that is left when the program has run, asked at single points.

What stands there at the end stood there all along: whatever meets it met solid material, at whatever moment. So less
than what was there may be told, never more.
"""

from __future__ import annotations

import numpy as np

from gclint.columns import Floats
from gclint.facts.context import Context
from gclint.stock.assume import outline


def surface(context: Context, x: Floats, y: Floats) -> Floats:
    """Z of the finished surface at points, mm; -inf outside the blank, and where nothing was modelled."""
    box, cut, cell = context.engagement.box, context.engagement.surface, context.engagement.cell
    z = np.full(np.shape(x), -np.inf)
    if box is None or box.top is None or cell <= 0 or not cut.size:
        return z
    x_low, _, y_low, _ = outline(box)
    column, row = np.floor((x - x_low) / cell), np.floor((y - y_low) / cell)
    inside = (column >= 0) & (row >= 0) & (column < cut.shape[1]) & (row < cut.shape[0])
    z[inside] = box.top - cut[row[inside].astype(np.int64), column[inside].astype(np.int64)]
    if box.bottom is not None:
        z[z <= box.bottom] = -np.inf  # cut through: nothing is left
    return z
