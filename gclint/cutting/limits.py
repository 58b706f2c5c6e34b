"""Each limit of a cut as an inequality between the speed n (rev/min) and the feed vf (mm/min).

A limit holds for one cut or, as a column, for many places at once: `at(n)` gives the feed it asks for at that speed,
with one value for each place. A chip limit is a straight line through the origin (vf = fz z n), and so are bending and
breaking, as the force depends on the chip; power is a curve, the machine's feed a level, an edge speed a fixed speed.
"""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from gclint.columns import Column
from gclint.cutting.formulas import cutting_speed
from gclint.cutting.mechanics import Law, feed_for_load, spindle_power
from gclint.cutting.windows import Floor
from gclint.tables.setup import Spindle


class Limit(Struct, frozen=True, eq=False):
    """`least`: the pair must not lie below it, else not above it; `end`: the machine's own end, safe to run at."""

    name: str
    least: bool
    standing: str
    source: str
    end: bool = False

    def at(self, n: Column | float) -> Column:
        """Feed at speed n, mm/min; NaN where it sets no limit."""
        raise NotImplementedError


class Ray(Limit, frozen=True, eq=False, kw_only=True):
    """vf = slope n."""

    slope: Column  # mm/rev

    def at(self, n: Column | float) -> Column:
        return np.asarray(self.slope * n)


class Rising(Limit, frozen=True, eq=False, kw_only=True):
    """A least chip that rises with edge speed: vf = h(vc) per_chip n."""

    low: Column  # mm, where no floor rises
    per_chip: Column  # vf / (n h): flutes by h/fz
    diameter: Column  # mm, that cuts
    floors: tuple[tuple[Column, Floor, Column], ...]  # (places, floor, share of it)

    def at(self, n: Column | float) -> Column:
        speed = np.asarray(cutting_speed(self.diameter, n))
        low = np.broadcast_to(self.low, speed.shape).copy()
        for where, floor, share in self.floors:
            low[..., where] = np.interp(speed[..., where], floor.edge_speed, floor.low) * share
        return np.asarray(low * self.per_chip * n)


class Level(Limit, frozen=True, eq=False, kw_only=True):
    """vf = feed."""

    feed: float

    def at(self, n: Column | float) -> Column:
        return np.full(np.shape(n), self.feed)


class Power(Limit, frozen=True, eq=False, kw_only=True):
    """The feed at which the cut takes `share` of what the spindle has at n: c vf h^-mc = share P(n), h = ratio vf/n."""

    law: Law | None
    per_feed: Column  # W min/mm, with h^-mc taken out
    ratio: Column  # h_m n / vf, mm/rev per mm/rev
    spindle: Spindle
    share: float

    def at(self, n: Column | float) -> Column:
        power = self.share * spindle_power(self.spindle.power_curve, self.spindle.power, n)
        # with vf = x n the power is (per_feed n) x (ratio x)^-mc
        with np.errstate(divide="ignore", invalid="ignore"):
            return np.asarray(feed_for_load(power, self.per_feed * n, self.ratio, self.law) * n)


class Speed(Limit, frozen=True, eq=False, kw_only=True):
    """n = speed."""

    speed: Column  # rev/min

    def at(self, n: Column | float) -> Column:
        return np.full(np.shape(n), np.nan)
