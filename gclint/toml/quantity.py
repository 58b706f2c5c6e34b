"""The kinds of quantity a declaration may hold, each read from a text with a unit; and the words that are graded by."""

from __future__ import annotations

from typing import Literal

from gclint.toml.units import quantity

Grade = Literal["halt", "change", "consider"]
Standing = Literal["measured", "published", "derived", "practice", "memory"]


class Quantity(float):
    """A number read from a text with a unit; each subclass is one kind of quantity in its internal unit."""

    kind = ""
    above: float | None = None  # the value must be over this
    bare = False  # a plain number will do


class Length(Quantity):
    """mm, above zero."""

    kind, above = "length", 0.0


class Position(Quantity):
    """mm, of either sign."""

    kind = "length"


class Depth(Quantity):
    """mm, zero or more."""

    kind, above = "length", -1e-12


class Feed(Quantity):
    """mm/min."""

    kind, above = "feed", 0.0


class Acceleration(Quantity):
    """mm/s2."""

    kind, above = "acceleration", 0.0


class Stiffness(Quantity):
    """N/mm."""

    kind, above = "stiffness", 0.0


class Power(Quantity):
    """W."""

    kind, above = "power", 0.0


class Time(Quantity):
    """s."""

    kind, above = "time", -1e-12


class Angle(Quantity):
    """Degrees."""

    kind, above = "angle", 0.0


class Speed(Quantity):
    """rev/min; a plain number will do."""

    kind, above, bare = "speed", 0.0, True


class EdgeSpeed(Quantity):
    """m/min."""

    kind, above = "edge_speed", 0.0


class Pressure(Quantity):
    """N/mm2."""

    kind, above = "pressure", 0.0


def from_text(wanted: type, given: object) -> object:
    """msgspec's hook for the kinds above. Raises Problem without a place."""
    from gclint.problem import Problem

    if not issubclass(wanted, Quantity):
        raise NotImplementedError(wanted)
    value = quantity(given, wanted.kind, wanted.bare)
    if wanted.above is not None and value <= wanted.above:
        raise Problem(f"{given} must be {'above zero' if wanted.above == 0.0 else 'zero or more'}")
    return wanted(value)
