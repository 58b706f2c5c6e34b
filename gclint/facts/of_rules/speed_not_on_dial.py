"""Gives the facts that speed-not-on-dial alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Floats
from gclint.facts.context import Context
from gclint.facts.fact import Fact, number
from gclint.facts.moves import aimed_marks, speed_moves


def _stated(context: Context) -> Floats:
    return np.array([mark.stated if mark else np.nan for mark in aimed_marks(context)], dtype=np.float64)


def _off_by(context: Context) -> Floats:
    speeds = context.motion.speed[speed_moves(context)]
    with np.errstate(divide="ignore", invalid="ignore"):
        off = np.abs(speeds - _stated(context)) / _stated(context)
    return np.where(np.isnan(speeds), 0.0, off)  # no S: nothing that could differ


FACTS: dict[str, dict[str, Fact]] = {
    "speeds": {
        "off_by": number("", "how far S is from what its dial mark states, as a share", _off_by),
        "stated": number("rev/min", "what the dial mark states", _stated),
    },
}  # fmt: skip
