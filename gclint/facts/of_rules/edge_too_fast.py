"""Gives the facts that edge-too-fast alone looks at."""

from __future__ import annotations

from typing import Any

import numpy as np

from gclint.facts.context import Context
from gclint.facts.fact import Fact, number


def _edge_at_slowest(context: Context) -> Any:
    spindle = context.setup.spindle
    slowest = min((mark.true for mark in spindle.dial), default=spindle.low)
    return None if slowest is None else np.pi * context.cutting.loads.effective_diameter * slowest / 1000


FACTS: dict[str, dict[str, Fact]] = {
    "pieces": {
        "edge_at_slowest": number("m/min", "edge speed at the slowest the spindle turns", _edge_at_slowest,
                                  "`[spindle] dial` or `range` in shop.toml"),
    },
}  # fmt: skip
