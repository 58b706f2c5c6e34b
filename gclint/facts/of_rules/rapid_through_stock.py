"""Gives the facts that rapid-through-stock alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Floats
from gclint.facts.context import Context
from gclint.facts.fact import Fact, number


def _move_width(context: Context) -> Floats:
    """[pieces] the largest width of cut along the whole move, mm."""
    pieces = context.engagement.pieces
    if not len(pieces):
        return np.zeros(0)
    begins = np.flatnonzero(np.concatenate(([True], pieces.move[1:] != pieces.move[:-1])))
    widest = np.maximum.reduceat(pieces.ae, begins)
    return np.repeat(widest, np.diff(np.concatenate((begins, [len(pieces)])))).astype(np.float64)


FACTS: dict[str, dict[str, Fact]] = {
    "pieces": {
        "move_width": number("mm", "largest radial width of cut along the whole move of the piece", _move_width),
    },
}  # fmt: skip
