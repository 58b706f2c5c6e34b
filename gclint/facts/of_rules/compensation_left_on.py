"""Gives the facts that compensation-left-on alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.facts.context import Context
from gclint.facts.contours import contours
from gclint.facts.fact import Fact, text

LEFT_ON = ("no", "tool-change", "end", "travel")


def _left_on(context: Context) -> tuple[np.ndarray[tuple[int], np.dtype[np.int32]], tuple[str, ...]]:
    return np.array([LEFT_ON.index(contour.left_on) for contour in contours(context)], dtype=np.int32), LEFT_ON


FACTS: dict[str, dict[str, Fact]] = {
    "contours": {
        "left_on": text("what finds it left on", _left_on, "", LEFT_ON),
    },
}  # fmt: skip
