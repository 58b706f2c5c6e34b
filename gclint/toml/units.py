"""Quantities as people write them ("1/8 in", "600 mm", "200 mm/s^2") as numbers in the internal units."""

from __future__ import annotations

import re

from gclint.problem import Problem, nearest

# each kind of quantity: its name for people, an example in two units, and what one unit is worth in the internal unit
Kind = tuple[str, str, dict[str, float]]

LENGTH_UNITS = {"mm": 1.0, "cm": 10.0, "m": 1000.0, "in": 25.4, "inch": 25.4, "inches": 25.4, '"': 25.4, "um": 0.001}
KINDS: dict[str, Kind] = {
    "length": ("a length", '"{n} mm" or "{in_} in"', LENGTH_UNITS),
    "feed": (
        "a feed",
        '"{n} mm/min" or "{in_} in/min"',
        {"mm/min": 1.0, "mm/s": 60.0, "m/min": 1000.0, "in/min": 25.4, "inch/min": 25.4, "ipm": 25.4, "in/s": 1524.0},
    ),
    "acceleration": (
        "an acceleration",
        '"{n} mm/s^2" or "{in_} in/s^2"',
        {"mm/s^2": 1.0, "mm/s2": 1.0, "m/s^2": 1000.0, "in/s^2": 25.4, "in/s2": 25.4},
    ),
    "stiffness": ("a stiffness", '"{n} N/mm"', {"N/mm": 1.0, "N/um": 1000.0}),
    "power": ("a power", '"{n} W" or "{n} kW"', {"W": 1.0, "kW": 1000.0, "hp": 745.6998715822702}),
    "time": ("a time", '"{n} s" or "{n} ms"', {"s": 1.0, "ms": 0.001, "min": 60.0}),
    "angle": ("an angle", '"{n} deg"', {"deg": 1.0, "degree": 1.0, "degrees": 1.0, "°": 1.0}),
    "speed": ("a speed", '{n} or "{n} rpm"', {"rpm": 1.0, "rev/min": 1.0}),
    "edge_speed": ("an edge speed", '"{n} m/min"', {"m/min": 1.0, "m/s": 60.0, "ft/min": 0.3048, "sfm": 0.3048}),
    "pressure": (
        "a cutting force per area",
        '"{n} N/mm^2"',
        {"N/mm^2": 1.0, "N/mm2": 1.0, "MPa": 1.0, "J/mm^3": 1e3, "hp min/in^3": 745.6998715822702 * 6e4 / 25.4**3},
    ),
}
LARGEST = 1e9  # nothing a shop declares is larger; keeps later arithmetic finite

# a sign, then "3 1/2", "3-1/2", "1/8", "3.175" or ".5"; no exponents
NUMBER = r"[+-]?(?:\d+(?:\s+|-)\d+/\d+|\d+/\d+|\d+\.?\d*|\.\d+)"
_PLAIN = re.compile(r"[+-]?[0-9]{1,9}(?:\.[0-9]{0,20})?")
_WHOLE = re.compile(rf"\s*({NUMBER})\s*(.*?)\s*", re.DOTALL)


def number(text: str) -> float:
    """The value of a text that matches NUMBER. Raises Problem for a fraction over zero or a number beyond any shop."""
    sign = -1.0 if text.startswith("-") else 1.0
    parts = re.split(r"[\s-]+", text.lstrip("+-"))
    value = 0.0
    for part in parts:
        if len(part) > 40:
            raise Problem(f'"{part[:12]}..." is no sensible number')
        top, _, bottom = part.partition("/")
        if bottom and float(bottom) == 0.0:
            raise Problem(f'"{text}" divides by zero')
        value += float(top) / (float(bottom) if bottom else 1.0)
    if value > LARGEST:
        raise Problem(f'"{text}" is too large')
    return sign * value


def quantity(text: object, kind: str, bare: bool = False) -> float:
    """The value of `text` in the internal unit of `kind` (a key of KINDS). `bare` allows a plain number.

    Raises Problem, without a place: the caller knows the key and the line.
    """
    name, example, units = KINDS[kind]
    if isinstance(text, bool) or not isinstance(text, str | int | float):
        raise Problem(f"expected {name} such as {_example(example, 10.0)}, got {_called(text)}")
    if isinstance(text, int | float):
        if bare:
            if abs(text) <= LARGEST:
                return float(text)
            raise Problem(f"{text} is too large" if text == text else "nan is no number")
        raise Problem(f"{text} has no unit; write {_example(example, float(text))}")
    head, _, tail = text.partition(" ")
    if tail in units and _PLAIN.fullmatch(head):  # as nearly all are written
        return float(head) * units[tail]
    match = _WHOLE.fullmatch(text)
    if match is None:
        raise Problem(f'"{_short(text)}" is not {name}; write for example {_example(example, 10.0)}')
    if match[2].startswith(",") and kind != "speed":
        raise Problem(f'"{_short(text)}" has a decimal comma; write it with a point')
    value, unit = number(match[1]), match[2]
    if not unit:
        if bare:
            return value
        raise Problem(f'"{_short(text)}" has no unit; write {_example(example, value)}')
    factor = units.get(unit, units.get(unit.lower()))
    if factor is None:
        tail = nearest(unit, tuple(units))
        raise Problem(f'"{_short(text)}" has the unit "{_short(unit)}", but {name} is wanted{tail}')
    return value * factor


def _example(example: str, value: float) -> str:
    return example.format(n=f"{value:g}", in_=f"{value / 25.4:.3g}")


def _called(thing: object) -> str:
    names = {bool: "true or false", list: "a list", dict: "a table", type(None): "nothing"}
    return names.get(type(thing), f"a {type(thing).__name__}")


def _short(text: str) -> str:
    text = text if len(text) <= 40 else text[:37] + "..."
    return "".join(c if c.isprintable() else "?" for c in text)
