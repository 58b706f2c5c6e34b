"""Gives the facts that feed-over-machine alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Floats
from gclint.facts.context import Context
from gclint.facts.fact import Fact, number
from gclint.facts.moves import over_axis


def _at_most_limit(context: Context) -> Floats:
    """[moves] set feed at which no axis passes its limit, mm/min."""
    _, asked, limit = over_axis(context)
    with np.errstate(divide="ignore", invalid="ignore"):
        return context.motion.feed * limit / asked


FACTS: dict[str, dict[str, Fact]] = {
    "moves": {
        "feed_within_limits": number("mm/min", "feed at which no axis passes its limit", _at_most_limit),
    },
}  # fmt: skip
