"""The menders, in the order in which they work. Adding one: a file with `offers`, its rules in
`gclint/tables/mendable.py`, and its name here."""

from __future__ import annotations

from collections.abc import Callable
from importlib import import_module
from typing import NamedTuple

from gclint.mend.case import Case, Offer
from gclint.tables.finding import Finding
from gclint.tables.mendable import MENDERS

# words first: what later menders write takes its feeds from them
WORDS = ("comments", "modes_missing", "dwell_unit", "dial", "of_advice")
PATHS = ("contours", "arcs", "stops", "spindle", "lift", "home", "laps", "pecks", "entries", "fine_moves")


class Mender(NamedTuple):
    name: str
    rules: tuple[str, ...]
    offers: Callable[[Case, Finding], list[Offer]]


def menders(names: tuple[str, ...]) -> list[Mender]:
    """The menders of these names, loaded."""
    return [Mender(name, MENDERS[name], import_module(f"gclint.mend.{name}").offers) for name in names]


# What is never guessed: a question, not a mend.
QUESTIONS = {
    "units-suspect": "which unit was meant is for its maker to say",
    "units-switched": "which unit was meant is for its maker to say",
    "outside-stock": "whether the blank or the path lies wrong is for its maker to say",
    "outside-travel": "whether the part or its place is wrong is for its maker to say",
    "tool-not-as-declared": "which of the two tools is in the collet is for the person at the machine to say",
    "tool-not-declared": "the tool has to be declared",
    "never-cuts": "where Z zero lies is for its maker to say",
    "z-zero-suspect": "where Z zero lies is for its maker to say",
    "point-missing": "whether a decimal point was lost is for its maker to say",
    "work-offset-suspect": "which offset is set at the machine is for the person there to say",
}
