"""Lengths on drawings, in the program's own units."""

from __future__ import annotations

import math

from gclint.digest.words import Lengths, plain_number


class Scale(Lengths):
    """Also gives round heights to write beside a drawing."""

    def mark(self, z: float | None) -> str:
        return "" if z is None else f"Z{plain_number(round(z * self.scale, 4))}"

    def ticks(self, low: float, high: float, about: int) -> list[float]:
        """Round values between two, mm."""
        span = (high - low) * self.scale
        raw = span / about
        power = 10.0 ** math.floor(math.log10(raw)) if raw > 0 else 1.0
        step = next(power * each for each in (1, 2, 5, 10) if power * each >= raw)
        first = math.ceil(low * self.scale / step)
        return [n * step / self.scale for n in range(first, math.floor(high * self.scale / step) + 1)]
