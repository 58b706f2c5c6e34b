"""Cutting geometry in closed form, in the symbols of ISO 3002: each formula one function over numbers or numpy arrays.

D tool diameter, De diameter that cuts, z teeth, n speed, vf feed, fz feed per tooth, ap axial, ae radial depth of cut,
h chip thickness (hex largest, hm mean), kr cutting edge angle, phi engagement angle. Lengths mm, vf mm/min, n rev/min,
vc m/min, angles degrees. Where an input is NaN the result is NaN; nothing raises.
"""

from __future__ import annotations

from typing import TypeVar

import numpy as np

from gclint.columns import Column

Number = TypeVar("Number", float, Column)
PI = float(np.pi)


def cutting_speed(D: Number, n: Number | float) -> Number:
    """vc = pi D n / 1000, m/min."""
    return D * n * (PI / 1000.0)


def speed_for(vc: Number, D: Number | float) -> Number:
    """n = 1000 vc / (pi D), rev/min."""
    return vc * 1000.0 / (PI * D)


def feed_per_tooth(vf: Number, n: Number | float, z: Number | float) -> Number:
    """fz = vf / (n z), mm."""
    return vf / (n * z)


def engagement_angle(ae: Column | float, D: Column | float) -> Column:
    """phi with cos(phi) = 1 - 2 ae / D for a side cut of width ae; 0 to 180 degrees."""
    return np.degrees(np.arccos(_cos_engagement(ae, D)))


def chip_thickness_largest(
    fz: Column | float, ae: Column | float, D: Column | float, sin_kr: Column | float = 1.0
) -> Column:
    """hex = fz sin(phi) sin(kr) for phi under 90 degrees, else fz sin(kr)."""
    cosine = np.clip(_cos_engagement(ae, D), 0.0, 1.0)
    return np.asarray(fz * np.sqrt(1.0 - cosine * cosine) * sin_kr)


def chip_thickness_mean(
    fz: Column | float, ae: Column | float, D: Column | float, sin_kr: Column | float = 1.0
) -> Column:
    """hm = fz sin(kr) (2 ae / D) / phi, phi in radians: the exact mean over the arc of a side cut; 0 where ae is 0."""
    phi = np.arccos(_cos_engagement(ae, D))
    with np.errstate(divide="ignore", invalid="ignore"):
        share = np.where(phi > 0.0, np.clip(2.0 * np.asarray(ae) / D, 0.0, 2.0) / phi, 0.0)
    return np.asarray(fz * share * sin_kr)


def chip_thickness_mean_of_arc(
    fz: Column | float, ae: Column | float, R: Column | float, phi: Column | float, sin_kr: Column | float = 1.0
) -> Column:
    """hm = fz sin(kr) ae / (R phi): the exact mean over any arc (or arcs) phi, degrees, ae wide across the feed.

    The volume that a tooth takes off, fz ae for each mm of depth, over the length of its way in the material, R phi.
    For a side cut it is `chip_thickness_mean`. 0 where there is no arc.
    """
    way = np.asarray(R * np.radians(phi))
    with np.errstate(divide="ignore", invalid="ignore"):
        return np.asarray(fz * np.where(way > 0.0, ae / way, 0.0) * sin_kr)


def chip_thickness_with_runout(h: Column | float, runout: float, z: int) -> Column:
    """Thickest chip of a tool of z teeth whose tip runs out by `runout` (total indicator reading), mm.

    A tooth stands out against the one k places before it by at most runout sin(pi k / z), and that one left k h: with
    two teeth h + runout, never over 2 h, where one tooth does all the work. One tooth cuts h. Geometry of a circle
    whose centre is half the runout off the axis.
    """
    k = np.arange(1, max(z, 1) + 1)
    out = runout * np.sin(PI * k / max(z, 1))
    thickest = np.asarray(h)
    made = thickest * k[-1]  # the last of k: the tooth itself, a turn before
    for before, stands in zip(k[:-1], out[:-1]):
        made = np.minimum(made, before * thickest + stands)
    return np.asarray(made)


def chip_allowed_with_runout(h: Column | float, runout: float, z: int) -> Column:
    """The chip at which `chip_thickness_with_runout` is h, mm."""
    k = np.arange(1, max(z, 1) + 1)
    out = runout * np.sin(PI * k / max(z, 1))
    made = np.asarray(h) / k[-1]
    for before, stands in zip(k[:-1], out[:-1]):
        made = np.maximum(made, (np.asarray(h) - stands) / before)
    return np.asarray(made)


def _cos_engagement(ae: Column | float, D: Column | float) -> Column:
    with np.errstate(divide="ignore", invalid="ignore"):
        return np.clip(1.0 - 2.0 * np.asarray(ae) / D, -1.0, 1.0)


def effective_diameter_ball(D: float, ap: Column | float) -> Column:
    """De = 2 sqrt(ap (D - ap)), D from half the diameter on."""
    depth = np.clip(ap, 0.0, D / 2.0)
    return np.asarray(2.0 * np.sqrt(depth * (D - depth)))


def effective_diameter_bull_nose(D: float, r: float, ap: Column | float) -> Column:
    """De = D - 2 r + 2 sqrt(ap (2 r - ap)) within the corner radius r, D above it."""
    depth = np.clip(ap, 0.0, r)
    return np.asarray(D - 2.0 * r + 2.0 * np.sqrt(depth * (2.0 * r - depth)))


def effective_diameter_v(D: float, angle: float, ap: Column | float, tip: float = 0.0) -> Column:
    """De = tip + 2 ap tan(A / 2), at most D; A the full included angle."""
    return np.asarray(np.minimum(tip + 2.0 * np.asarray(ap) * np.tan(np.radians(angle / 2.0)), D))


def effective_diameter_tapered_ball(D: float, angle: float, ap: Column | float, tip: float) -> Column:
    """A ball of diameter `tip` up to where the cone of full angle A touches it, then the cone, at most D."""
    half = np.radians(angle / 2.0)
    touch = tip / 2.0 * (1.0 - np.sin(half))  # height of the circle in which ball and cone meet
    cone = tip * np.cos(half) + 2.0 * (np.asarray(ap) - touch) * np.tan(half)
    return np.where(np.asarray(ap) <= touch, effective_diameter_ball(tip, ap), np.minimum(cone, D))


def sin_edge_angle_ball(D: float, ap: Column | float) -> Column:
    """sin(kr) at the top of the cut of a ball: De / D."""
    return np.asarray(effective_diameter_ball(D, ap) / D)


def sin_edge_angle_bull_nose(r: float, ap: Column | float) -> Column:
    """sin(kr) at the top of the cut of a corner radius r: cos(kr) = 1 - ap / r, 1 above the corner."""
    depth = np.clip(np.asarray(ap) / r, 0.0, 1.0)
    return np.asarray(np.sqrt(depth * (2.0 - depth)))


def ramp_length(depth: float, angle: float) -> float:
    """X-Y travel that a ramp of `angle` degrees needs to reach `depth`: depth / tan(angle)."""
    return float(depth / np.tan(np.radians(angle)))
