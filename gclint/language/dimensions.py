"""Units and dimensions of the rule language.

Expressions are computed in mm, s, degrees and N; a unit is a factor into these and a dimension. Teeth and revolutions
are
named but have no dimension, so that `feed / (speed * flutes)` is a length and rev/min is one over a time.
"""

from __future__ import annotations

Dimension = tuple[int, int, int, int]  # powers of length, time, angle, force

PLAIN: Dimension = (0, 0, 0, 0)

UNITS: dict[str, tuple[float, Dimension]] = {
    "": (1.0, PLAIN),
    "%": (0.01, PLAIN),
    "um": (0.001, (1, 0, 0, 0)),
    "mm": (1.0, (1, 0, 0, 0)),
    "cm": (10.0, (1, 0, 0, 0)),
    "m": (1000.0, (1, 0, 0, 0)),
    "in": (25.4, (1, 0, 0, 0)),
    "mm^2": (1.0, (2, 0, 0, 0)),
    "mm^3": (1.0, (3, 0, 0, 0)),
    "ms": (0.001, (0, 1, 0, 0)),
    "s": (1.0, (0, 1, 0, 0)),
    "min": (60.0, (0, 1, 0, 0)),
    "mm/s": (1.0, (1, -1, 0, 0)),
    "mm/min": (1 / 60, (1, -1, 0, 0)),
    "in/min": (25.4 / 60, (1, -1, 0, 0)),
    "m/min": (1000 / 60, (1, -1, 0, 0)),
    "m/s": (1000.0, (1, -1, 0, 0)),
    "mm/s^2": (1.0, (1, -2, 0, 0)),
    "rev/min": (1 / 60, (0, -1, 0, 0)),
    "deg": (1.0, (0, 0, 1, 0)),
    "N": (1.0, (0, 0, 0, 1)),
    "N/mm": (1.0, (-1, 0, 0, 1)),
    "N/mm^2": (1.0, (-2, 0, 0, 1)),
    "N m": (1000.0, (1, 0, 0, 1)),
    "W": (1000.0, (1, -1, 0, 1)),
}

_SHOWN: dict[Dimension, tuple[str, str]] = {  # how people read a dimension: unit, and its name in a message
    PLAIN: ("", "a plain number"),
    (1, 0, 0, 0): ("mm", "a length"),
    (2, 0, 0, 0): ("mm^2", "an area"),
    (3, 0, 0, 0): ("mm^3", "a volume"),
    (0, 1, 0, 0): ("s", "a time"),
    (1, -1, 0, 0): ("mm/min", "a feed or an edge speed"),
    (1, -2, 0, 0): ("mm/s^2", "an acceleration"),
    (0, -1, 0, 0): ("rev/min", "a speed in rev/min"),
    (0, 0, 1, 0): ("deg", "an angle"),
    (0, 0, 0, 1): ("N", "a force"),
    (-1, 0, 0, 1): ("N/mm", "a stiffness"),
    (-2, 0, 0, 1): ("N/mm^2", "a stress"),
    (1, 0, 0, 1): ("N m", "a torque"),
    (1, -1, 0, 1): ("W", "a power"),
}


def shown_unit(dimension: Dimension) -> str:
    """The unit a value of this dimension is shown in; "" where there is no usual one."""
    return _SHOWN.get(dimension, ("", ""))[0]


def dimension_name(dimension: Dimension) -> str:
    if dimension in _SHOWN:
        return _SHOWN[dimension][1]
    powers = zip(("mm", "s", "deg", "N"), dimension)
    return "a quantity in " + " ".join(f"{unit}^{power}" for unit, power in powers if power)


def times(left: Dimension, right: Dimension, sign: int = 1) -> Dimension:
    """Dimension of a product (sign 1) or of a quotient (sign -1)."""
    a, b, c, d = (x + sign * y for x, y in zip(left, right))
    return a, b, c, d
