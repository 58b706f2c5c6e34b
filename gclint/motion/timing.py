"""Reached feed and time of every move, as columns beside Motion."""

from __future__ import annotations

from dataclasses import dataclass

from gclint.columns import Floats
from gclint.setup.types import Assumed


@dataclass(frozen=True, slots=True, eq=False)
class Timing:
    """mm/min and seconds; NaN where unknown (a rapid whose rapid rate is undeclared, a cut with no feed)."""

    reached: Floats
    seconds: Floats
    dwell: float  # s, all dwells together
    assumed: tuple[Assumed, ...]
