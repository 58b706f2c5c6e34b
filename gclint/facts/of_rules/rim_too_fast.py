"""Gives the facts that rim-too-fast alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Floats
from gclint.facts.context import Context
from gclint.facts.cut import piece_move
from gclint.facts.fact import Fact, number
from gclint.facts.path import diameters


def _rim_speed(context: Context) -> Floats:
    speed = context.cutting.true_speed_of[piece_move(context)]
    return np.pi * diameters(context) * speed / 60_000  # mm/min to m/s


FACTS: dict[str, dict[str, Fact]] = {
    "pieces": {
        "rim_speed": number("m/s", "speed of the tool's rim at its full diameter", _rim_speed, "the spindle's speed"),
    },
}  # fmt: skip
