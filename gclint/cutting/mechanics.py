"""Force, power and bending in closed form, in the symbols of ISO 3002: numbers or numpy arrays in, the same out.

Fc cutting force (along the cut), kc specific cutting force, kc1.1 its value at h = 1 mm, mc the exponent, Pc cutting
power, Mc torque; D, z, n, vf, fz, ae, ap, h as in `gclint.cutting.formulas`. N, mm, N/mm2, W, N m, mm/min, rev/min,
degrees. NaN in gives NaN out; nothing raises. A chip thinner than `thinnest` mm counts as that thick for kc: the power
law is not carried further (from memory: it does not hold for chips under 0.01 to 0.02 mm).

The force is the force along the cut alone. The force across it (about a third of it) would add some 5 % to the sum of
both and is left out, as no source gives it for wood, resin and plastic.
"""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from gclint.columns import Column
from gclint.cutting.formulas import PI
from gclint.knowledge.numbers import model_number
from gclint.tables.material import Force
from gclint.tables.setup import Tool

Values = Column | float
SPIRALS = ("up-cut", "down-cut", "compression")


class Law(Struct, frozen=True):
    """kc = k h^-mc between a low and a high k, N/mm2 (Kienzle); mc is 0 where a card gives a plain range."""

    low: float
    high: float
    mc: float
    thinnest: float  # mm

    def kc(self, h: Values) -> tuple[Column, Column]:
        """(low, high) specific cutting force at chip thickness h, N/mm2."""
        fall = self.fall(h)
        return np.asarray(self.low * fall), np.asarray(self.high * fall)

    def fall(self, h: Values) -> Values:
        """h^-mc, the factor by which kc differs from kc1.1."""
        return np.power(np.maximum(h, self.thinnest), -self.mc) if self.mc else 1.0


def law_of(force: Force | None) -> Law | None:
    """What a material card says of its cutting force; None where it says nothing."""
    if force is None:
        return None
    thinnest = model_number("thinnest_chip")
    if force.kc11 is not None and force.exponent is not None:
        return Law(float(force.kc11), float(force.kc11), float(force.exponent), thinnest)
    if force.low is None:
        return None
    return Law(float(force.low), float(force.high or force.low), float(force.exponent or 0.0), thinnest)


def specific_force(kc11: float, exponent: float, h: Values) -> Column:
    """kc = kc1.1 h^-mc, N/mm2 (Kienzle's power law)."""
    return np.asarray(kc11 * np.power(h, -exponent))


def cutting_force(kc: Values, b: Values, h: Values) -> Column:
    """Fc = kc b h of one edge: chip width b, chip thickness h, mm."""
    return np.asarray(np.asarray(kc) * b * h)


def cutting_power(section: Values, vf: Values, kc: Values) -> Column:
    """Pc = A vf kc / 60000, W; A = ae ap is the section that is cut away, mm2, vf mm/min."""
    return np.asarray(np.asarray(section) * vf * kc / 60000.0)


def mean_force(power: Values, vc: Values) -> Column:
    """Fc = 60 Pc / vc of all teeth together on average, N; vc in m/min (Pc = Fc vc)."""
    with np.errstate(divide="ignore", invalid="ignore"):
        return np.asarray(60.0 * np.asarray(power) / vc)


def torque(power: Values, n: Values) -> Column:
    """Mc = 60 Pc / (2 pi n), N m; power in W."""
    with np.errstate(divide="ignore", invalid="ignore"):
        return np.asarray(60.0 * np.asarray(power) / (2.0 * PI * np.asarray(n)))


def edge_lag(ap: Values, D: Values, helix: Values) -> Column:
    """2 ap tan(helix) / D as degrees: how far one helical edge lies spread around the tool over the depth ap."""
    return np.degrees(np.asarray(2.0 * np.asarray(ap) * np.tan(np.radians(helix)) / D))


def share_of_edge(phi: Values, lag: Values = 0.0) -> Column:
    """Mean of sin over the angle `lag` of the engagement 0..phi that carries most, edge outside the cut counting as 0.

    For a straight edge (lag 0) it is the largest sin: h / fz at the thickest place. Degrees. Geometry of the edge.
    """
    if isinstance(lag, float) and lag == 0.0:
        return np.sin(np.radians(np.minimum(phi, 90.0)))
    phi, lag = np.radians(phi), np.maximum(np.radians(lag), 1e-6)
    span = np.minimum(lag, phi)  # the part of the edge that is in the cut at once
    end = np.clip(PI / 2.0 + span / 2.0, span, phi)
    return np.asarray(2.0 * np.sin(end - span / 2.0) * np.sin(span / 2.0) / lag)


def share_of_sum(phi: Values, z: Values) -> Column:
    """Mean of the forces of all teeth added as vectors, in units of kc ap fz: z / (2 pi) |integral of sin (cos, sin)|.

    What is left of the force when helix and many teeth smooth it; z / 4 for a slot. Degrees. Geometry.
    """
    phi = np.radians(phi)
    along, across = np.sin(phi) ** 2 / 2.0, (phi - np.sin(phi) * np.cos(phi)) / 2.0
    return np.asarray(np.asarray(z) / (2.0 * PI) * np.hypot(along, across))


def largest_force(k: float, law: Law, fz: Values, b: Values, phi: Values, z: Values, lag: Values = 0.0,
                  sin_kr: Values = 1.0) -> Column:  # fmt: skip
    """Largest force on the tool during a turn, N: one tooth at its thickest chip, or the sum of all teeth if larger.

    k: `law.low` or `law.high`. b: axial width of the chip (ap), mm; phi: engagement angle; lag: `edge_lag`, degrees.
    """
    h = np.asarray(fz) * share_of_edge(phi) * sin_kr
    return cutting_force(k * law.fall(h), b, np.asarray(fz) * _share(phi, z, lag))


def force_range(law: Law, fz: Values, b: Values, phi: Values, z: Values, lags: tuple[Values, Values],
                sin_kr: Values = 1.0) -> tuple[Column, Column, Column]:  # fmt: skip
    """(mean over a turn at `law.low`, `largest_force` at `law.low`, `largest_force` at `law.high`), N, together.

    lags: `edge_lag` of the low and of the high end, degrees.
    """
    straight, total = share_of_edge(phi), share_of_sum(phi, z)
    strip = cutting_force(law.fall(np.asarray(fz) * straight * sin_kr), b, fz)
    low, high = (np.maximum(share_of_edge(phi, lag), total) for lag in lags)
    return law.low * strip * total, law.low * strip * low, law.high * strip * high


def _share(phi: Values, z: Values, lag: Values) -> Column:
    return np.maximum(share_of_edge(phi, lag), share_of_sum(phi, z))


def edge_angles(tool: Tool | None) -> tuple[float, float]:
    """(steepest, shallowest) angle at which the tool's edges may lie, degrees: nobody declares it."""
    straight = tool is not None and tool.helix == "straight"
    twisted = tool is not None and tool.helix in SPIRALS
    return (
        0.0 if straight else model_number("helix_steepest"),
        model_number("helix_shallowest") if twisted else 0.0,
    )


# --- the same turned round: what a limit allows -----------------------------------------------------------------------


@np.errstate(divide="ignore", invalid="ignore", over="ignore")
def feed_for_load(load: Values, per: Values, ratio: Values, law: Law | None) -> Column:
    """x with per x max(ratio x, thinnest)^-mc = load: the feed at which a force or a power reaches `load` (Kienzle).

    x may be a feed per tooth, per turn or per minute; `ratio` is the chip it makes for each unit of it. A load rises
    with the feed, so this is the only answer. Bending and stress are forces times a number of the tool.
    """
    if law is None or not law.mc:
        return np.asarray(np.asarray(load) / per)
    thin = np.asarray(load / (per * law.thinnest ** -law.mc))  # below the thinnest chip kc no longer grows
    thick = np.power(np.asarray(load) * np.power(ratio, law.mc) / per, 1.0 / (1.0 - law.mc))
    return np.where(np.asarray(ratio) * thick >= law.thinnest, thick, thin)


# --- bending ----------------------------------------------------------------------------------------------------------


class Section(Struct, frozen=True):
    """A cylinder of a tool: from `near` to `far` mm above the tip, `d` mm thick for bending."""

    near: float
    far: float
    d: float


class Beam(Struct, frozen=True):
    """A tool as a stepped cantilever held at the nut (Euler and Bernoulli); E N/mm2, k_machine N/mm or None."""

    sections: tuple[Section, ...]  # from the tip upward, without gaps
    E: float
    machine: float | None = None

    def bend_per_newton(self, at: Values = 0.0) -> Column:
        """How far the tip moves aside for 1 N that acts `at` mm above it, mm: sum of integral (x - at) x dx / (E I).

        I = pi d^4 / 64. For one section and at = 0 it is L^3 / (3 E I). The machine gives way by 1 / stiffness.
        """
        at = np.asarray(at, dtype=float)
        total = np.zeros(at.shape) if self.machine is None else np.full(at.shape, 1.0 / self.machine)
        for part in self.sections:
            inertia = PI * part.d**4 / 64.0
            near, far = np.clip(at, part.near, part.far), part.far
            total = total + ((far**3 - near**3) / 3.0 - at * (far**2 - near**2) / 2.0) / (self.E * inertia)
        return np.where(np.isnan(at), np.nan, total)

    def stress_per_newton(self, at: Values = 0.0) -> Column:
        """Largest bending stress for 1 N `at` mm above the tip, N/mm2: 32 (x - at) / (pi d^3), top of each part."""
        at = np.asarray(at, dtype=float)
        worst = np.zeros(at.shape)
        for part in self.sections:
            worst = np.maximum(worst, np.maximum(part.far - at, 0.0) * 32.0 / (PI * part.d**3))
        return np.where(np.isnan(at), np.nan, worst)


class ToolMaterial(Struct, frozen=True):
    """E and the bending stress a tool of it is allowed, N/mm2; the radius of its new edge, mm (model/numbers.toml)."""

    name: str
    E: float
    stress: float
    edge_radius: float


STRAIGHT_BEAMS = ("flat", "ball", "bull-nose", "facing", "tapered-ball")
TOOL_MATERIALS = (  # the first line with a word that is in what is declared; a tipped tool bends like its steel body
    ("steel", ("tipped", "brazed", "insert")),
    ("hss", ("hss", "high-speed", "high speed")),
    ("carbide", ("carbide", "hard metal", "hardmetal", "tungsten")),
    ("hss", ("cobalt",)),
    ("steel", ("steel",)),
)
SLICES = 8  # cylinders that stand for a cone


def tool_material(made_of: str | None) -> ToolMaterial | None:
    """None where the tool's material is not declared or not known to us."""
    said = (made_of or "").lower()
    for name, words in TOOL_MATERIALS:
        if any(word in said for word in words):
            modulus, stress = model_number(f"{name}_modulus"), model_number(f"{name}_stress")
            return ToolMaterial(name, modulus, stress, model_number("edge_radius"))
    return None


def beam_of(tool: Tool, stiffness: float | None = None) -> Beam | None:
    """The tool as a beam; None where `missing_for_beam` names something or its shape is no beam (V, drag, T-slot).

    Flutes bend like a bar of 0.8 D (Kops and Vo, Determination of the Equivalent Diameter of an End Mill Based on its
    Compliance, CIRP Annals 39 (1), 1990, abstract);
    the neck like a full bar of D up to `neck`; then the shank. `stiffness`: of the machine, N/mm.
    """
    made = tool_material(tool.made_of)
    if made is None or tool.stickout is None or missing_for_beam(tool) or tool.shape not in STRAIGHT_BEAMS:
        return None
    share, length = model_number("equivalent_diameter"), tool.stickout
    flutes = min(tool.flute_length or length, length)
    neck = min(max(tool.neck or flutes, flutes), length)
    shank = tool.diameter if tool.shank is None else tool.shank
    parts = _fluted(tool, flutes, share)
    if neck > flutes:
        parts.append(Section(flutes, neck, min(tool.diameter, shank)))
    if length > neck:
        parts.append(Section(neck, length, shank))
    return Beam(tuple(parts), made.E, stiffness)


def missing_for_beam(tool: Tool) -> tuple[str, ...]:
    """Keys of the tool without which its bending is unknown."""
    missing = [key for key in ("stickout", "flute_length") if getattr(tool, key) is None]
    whole = tool.stickout is not None and tool.flute_length is not None and tool.flute_length >= tool.stickout
    if tool.shank is None and not whole:
        missing.append("shank")
    if tool_material(tool.made_of) is None:
        missing.append("made_of")
    if tool.shape == "tapered-ball":
        missing += [key for key in ("tip_diameter", "angle") if not getattr(tool, key)]
    return tuple(missing)


def _fluted(tool: Tool, flutes: float, share: float) -> list[Section]:
    if tool.shape != "tapered-ball" or tool.tip_diameter is None or tool.angle is None:
        return [Section(0.0, flutes, share * tool.diameter)]
    at = np.linspace(0.0, flutes, SLICES + 1)
    middle = (at[:-1] + at[1:]) / 2.0
    wide = np.minimum(tool.tip_diameter + 2.0 * middle * np.tan(np.radians(tool.angle / 2.0)), tool.diameter)
    return [Section(float(a), float(b), share * float(d)) for a, b, d in zip(at[:-1], at[1:], wide)]


# --- spindle and edge -------------------------------------------------------------------------------------------------


def spindle_power(curve: tuple[tuple[float, float], ...], rated: float | None, n: Values) -> Column:
    """Power the spindle has at speed n, W: by its curve (level beyond its ends), else what it is rated at; else NaN."""
    n = np.asarray(n, dtype=float)
    if curve:
        points = sorted(curve)
        power = np.interp(n, [p[0] for p in points], [p[1] for p in points])
        # below the first point the torque stays, so the power falls with the speed
        return np.asarray(np.where(n < points[0][0], points[0][1] * n / points[0][0], power))
    return np.where(np.isnan(n), np.nan, np.nan if rated is None else rated)


def least_chip(edge_radius: float) -> tuple[float, float]:
    """(low, high) thinnest chip that still comes off, mm: 0.14 to 0.43 of the edge radius, below it the edge rubs.

    Study on micro helical milling of small holes, Int J Adv Manuf Technol 97, 2018 (abstract).
    """
    return edge_radius * model_number("least_chip_low"), edge_radius * model_number("least_chip_high")
