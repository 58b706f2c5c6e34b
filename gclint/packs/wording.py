"""Puts numbers into the sentences of a rule: in mm and seconds, or in the units the program itself uses."""

from __future__ import annotations

import math
import re

from gclint.facts.registry import View
from gclint.language.dimensions import UNITS
from gclint.language.evaluate import numbers, truth, words
from gclint.language.expression import NUMBER, TRUTH, Expression
from gclint.packs.pack import Cased, Template

# '3 N to 8 N', '3 mm x 8 mm': two amounts in one unit
_ENDS = r"(?<![\w.])(-?\d[\d.]*) ([A-Za-z%][\w/^]*(?: m)?) (to|x) (-?\d[\d.]*) \2(?![\w/^])"
_LENGTHS = r"(?<![\w.])(-?\d[\d.]*)(?: to (-?\d[\d.]*))? mm(?![\w/^])"  # '6 mm', '-1.2 to 200.2 mm'
_INCH = {"mm": "in", "mm/min": "in/min"}


def number_of(expression: Expression, row: View) -> float | None:
    """Value of an expression in its own unit for one row; None where unknown."""
    value = float(numbers(expression.code, row)[0]) / UNITS[expression.unit][0]
    return value if math.isfinite(value) else None


def chosen(cases: tuple[Cased, ...], row: View) -> Cased:
    """The first case whose condition holds for the row; the last one stands without a condition."""
    return next(
        (case for case in cases if case.when is None or truth(case.when.code, row)[0] == 2), cases[-1]
    )  # fmt: skip


def say(template: Template, row: View, inch: bool = False) -> str:
    """The sentence for one row; `inch` puts lengths and feeds in inches. '3 N to 8 N' becomes '3 to 8 N'."""
    said = " ".join("".join(part if isinstance(part, str) else _value(part, row, inch) for part in template).split())
    return one_unit(said)


def one_unit(said: str) -> str:
    """'3 N to 8 N' as '3 to 8 N', '8 N to 8 N' as '8 N', '3 mm x 8 mm' as '3 x 8 mm'."""
    return re.sub(_ENDS, _in_one_unit, said)


def in_inches(said: str) -> str:
    """A text of an earlier step, which knows mm alone, with its lengths in inches."""
    return re.sub(_LENGTHS, _converted, said)


def _converted(length: re.Match[str]) -> str:
    ends = [figure(float(end) / UNITS["in"][0], "in") for end in length.groups() if end is not None]
    return f"{' to '.join(ends)} in"


def _in_one_unit(ends: re.Match[str]) -> str:
    first, unit, between, second = ends.groups()
    return f"{first} {unit}" if between == "to" and first == second else f"{first} {between} {second} {unit}"


def _value(expression: Expression, row: View, inch: bool) -> str:
    if expression.kind == NUMBER:
        value = number_of(expression, row)
        if value is None:
            return "an unknown amount"
        return amount(value, expression.unit, inch, expression.places)
    if expression.kind == TRUTH:
        return ("no", "unknown", "yes")[int(truth(expression.code, row)[0])]
    return words(expression.code, row)[0] or ""


def amount(value: float, unit: str, inch: bool = False, places: int | None = None) -> str:
    """'3 mm', '0.0283 mm', '1500 mm/min', '33 %': as many digits as matter at the machine, or `places` decimals."""
    if inch and unit in _INCH:
        value, unit = value * UNITS[unit][0] / UNITS[_INCH[unit]][0], _INCH[unit]
        places = places + 1 if places is not None else None  # an inch is about as much longer than a mm
    return f"{figure(value, unit) if places is None else f'{round(value, places) + 0.0:.{places}f}'} {unit}".rstrip()


def figure(value: float, unit: str) -> str:
    if unit in ("mm/min", "rev/min", "m/min", "mm^2", "mm^3", "%", "W", "N", "N/mm^2"):
        places = 0 if abs(value) >= 10 else 1
    elif unit in ("deg", "s", "in/min"):
        places = 1
    elif unit in ("mm", "in"):
        places = (5 if unit == "in" and abs(value) < 0.01 else 4) if abs(value) < 0.1 else 3
    else:
        places = 3
    text = f"{value:.{places}f}"
    text = text.rstrip("0").rstrip(".") if "." in text else text
    return "0" if text == "-0" else text


def in_program_units(value: float | None, unit: str, inch: bool) -> tuple[float | None, str]:
    """A length or a feed in the unit of the program, other values as they are; rounded to what can be meant."""
    if value is None:
        return None, unit
    if inch and unit in _INCH:
        value, unit = value * UNITS[unit][0] / UNITS[_INCH[unit]][0], _INCH[unit]
    return float(f"{value:.6g}"), unit
