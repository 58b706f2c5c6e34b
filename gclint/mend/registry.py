"""The menders, in the order in which they work. Adding one: a file with `offers`, its name here, and `mended_by` in the
rules that it answers."""

from __future__ import annotations

from collections.abc import Callable
from importlib import import_module
from typing import NamedTuple

from gclint.mend.case import Case, Offer
from gclint.tables.finding import Finding

# words first: what later menders write takes its feeds from them
WORDS = ("comments", "modes_missing", "dwell_unit", "dial", "of_advice")
PATHS = ("contours", "arcs", "stops", "spindle", "lift", "home", "laps", "pecks", "entries", "fine_moves")


class Mender(NamedTuple):
    name: str
    offers: Callable[[Case, Finding], list[Offer]]


def menders(names: tuple[str, ...]) -> list[Mender]:
    """Load the menders of these names."""
    return [Mender(name, import_module(f"gclint.mend.{name}").offers) for name in names]
