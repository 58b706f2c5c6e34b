"""Reached feed and time of every move, as columns beside Motion."""

from __future__ import annotations

from dataclasses import dataclass

from gclint.columns import Floats
from gclint.tables.setup import Assumed


@dataclass(frozen=True, slots=True, eq=False)
class Timing:
    """mm/min and seconds; NaN where unknown (a rapid whose rapid rate is undeclared, a cut with no feed).

    The thickest chip and the largest force come from `peak`. Whether a move ever gets to its feed is judged by
    `reached`, which stopping and starting make less than `peak`.
    """

    reached: Floats  # mean over the move: length by time
    peak: Floats  # fastest along the move
    seconds: Floats
    dwell: float  # s, all dwells together
    assumed: tuple[Assumed, ...]
