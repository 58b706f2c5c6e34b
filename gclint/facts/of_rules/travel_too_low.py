"""Gives the facts that travel-too-low alone looks at."""

from __future__ import annotations

from typing import Any

import numpy as np

from gclint.facts.context import Context
from gclint.facts.fact import Fact, number
from gclint.facts.setup import STOCK
from gclint.tables.motion import RAPID


def _clearance(context: Context) -> Any:
    """Height of a level rapid above the declared blank it passes over, mm; a large number for all other moves."""
    stock, m = context.setup.stock, context.motion
    if stock is None or not stock.declared or stock.top is None:
        return None
    height = context.lowest - stock.top
    travels = (m.kind == RAPID) & (m.z0 == m.z1) & ((m.x1 != m.x0) | (m.y1 != m.y0)) & context.placed & (height > -1e-9)
    if stock.x is not None and stock.y is not None:
        for start, end, span in ((m.x0, m.x1, stock.x), (m.y0, m.y1, stock.y)):
            travels &= (np.fmin(start, end) < span[1]) & (np.fmax(start, end) > span[0])
    return np.where(travels, height, np.inf)


FACTS: dict[str, dict[str, Fact]] = {
    "moves": {
        "clearance": number("mm", "height of a level rapid above the declared blank it passes over", _clearance,
                            STOCK),
    },
}  # fmt: skip
