"""Gives the facts that cuts-table alone looks at."""

from __future__ import annotations

from typing import Any

import numpy as np

from gclint.facts.context import Context
from gclint.facts.fact import Fact, number
from gclint.facts.setup import STOCK


def _below_bottom(context: Context) -> Any:
    """How far the tip goes below the blank's underside, mm."""
    stock = context.setup.stock
    if stock is None or stock.bottom is None:
        return None
    return np.fmax(stock.bottom - context.lowest, -np.inf)


FACTS: dict[str, dict[str, Fact]] = {
    "moves": {
        "below_bottom": number("mm", "how far the tip goes below the blank's underside", _below_bottom, STOCK),
    },
}  # fmt: skip
