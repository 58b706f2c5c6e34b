"""Gives the facts that feed-never-reached alone looks at."""

from __future__ import annotations

from gclint.facts.cut import NEEDS_FLUTES, chip_at, mean_feed
from gclint.facts.fact import Fact, number

FACTS: dict[str, dict[str, Fact]] = {
    "pieces": {
        "h_ex_at_mean_feed": number("mm", "largest chip thickness at the feed reached on average over the move",
                                    lambda c: chip_at(c, mean_feed(c)), NEEDS_FLUTES),
    },
}  # fmt: skip
