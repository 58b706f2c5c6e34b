"""Gives the facts that shank-rubs alone looks at."""

from __future__ import annotations

from typing import Any

import numpy as np

from gclint.columns import Column
from gclint.facts.context import Context
from gclint.facts.fact import Fact, number
from gclint.knowledge.numbers import model_number


def shank_contact(context: Context) -> Any:
    """[pieces] mm of wall that the shank meets above the flutes.

    NaN where the flutes' length is not declared and the tool goes deeper than the shortest flutes are long.
    """
    pieces = context.engagement.pieces
    contact = pieces.shank.astype(np.float64)
    number: Column = context.motion.tool[pieces.move]
    shortest = model_number("shortest_flutes")
    for tool in context.tools:
        declared = context.tool(tool)
        if declared is None or declared.flute_length is None:
            diameter = declared.diameter if declared else 0.0
            contact[(number == tool) & (pieces.depth > shortest * diameter)] = np.nan
    return contact


FACTS: dict[str, dict[str, Fact]] = {
    "pieces": {
        "shank_contact": number("mm", "height of wall that the shank meets above the flutes", shank_contact,
                                "`flute_length` of the tool in shop.toml"),
    },
}  # fmt: skip
