"""A plan of test cuts and the grades they were given: what plan.toml and grades.toml hold.

Cuts are numbered in the order of cutting, and the number stands beside the cut on the coupon. A plan has a name that
no other plan has; its grades bear the same name, so that two plans are never mixed.
"""

from __future__ import annotations

import datetime
from collections.abc import Iterable
from typing import Annotated, Literal

from msgspec import Meta

from gclint.setup.declared import Table, ToolTable
from gclint.toml.quantity import Angle, Feed, Length, Position, Speed

Number = Annotated[int, Meta(ge=1, le=999)]
EntryWord = Literal["straight", "ramp"]


class Cut(Table, frozen=True):
    """One groove. `at` is the lower left corner of its field in work coordinates; `repeat_of` an earlier number."""

    number: Number
    tool: Annotated[int, Meta(ge=0, le=99999)]
    feed: Feed
    speed: Speed  # the S that is set: on a dial spindle what the mark states
    entry: EntryWord
    depth: Length
    at: tuple[Position, Position]
    dial: str | None = None
    true_speed: Speed | None = None  # what the shop measured for this mark or S, where it did
    repeat_of: Number | None = None
    risky: str = ""  # why, in one sentence; "" where gclint found nothing of grade change or above
    confirmed: bool = False  # a person has said that the risky cut may be made


class Shape(Table, frozen=True):
    """The path of every cut: a lead where the machine gets up to its feed (and ramps down and back), a straight part, a
    curve to the left and one to the right that end level with it, and a run-out. Straight part and curves are graded.
    """

    lead: Length
    straight: Length
    radius: Length
    run_out: Length
    ramp: Angle


class Plan(Table, frozen=True):
    """plan.toml."""

    plan: str
    made: datetime.date
    material: str  # a card's name, or a new one
    program: str  # file beside the plan
    coupon: tuple[Length, Length, Length]
    corner: tuple[Position, Position]  # its lowest X and Y in work coordinates
    field: tuple[Length, Length]  # what each cut has for itself
    controller: str = "any"
    batch: str = ""  # of the material, free text
    shop: str | None = None  # path, from the plan's folder
    machine: str = ""
    seed: int = 0
    like: str = ""  # the card that a new material was planned and checked by
    looks: bool = True  # the program stops behind every cut, to have it looked at
    shape: Shape | None = None  # None: the program was not written by gclint
    tool: tuple[ToolTable, ...] = ()  # as they were when the plan was made
    cut: tuple[Cut, ...] = ()

    def cut_of(self, number: int) -> Cut | None:
        return next((cut for cut in self.cut if cut.number == number), None)


def risks(cuts: Iterable[Cut]) -> list[tuple[str, str]]:
    """Each reason with the cuts it concerns: ('straight-plunge (...)', '8, 11-14')."""
    found: dict[str, list[int]] = {}
    for cut in cuts:
        for reason in filter(None, cut.risky.split("; ")):
            found.setdefault(reason, []).append(cut.number)
    return [(reason, listed(numbers)) for reason, numbers in found.items()]


def listed(numbers: list[int]) -> str:
    """'8, 11-14'."""
    runs: list[list[int]] = []
    for number in sorted(numbers):
        if runs and number == runs[-1][-1] + 1:
            runs[-1].append(number)
        else:
            runs.append([number])
    return ", ".join(f"{run[0]}-{run[-1]}" if len(run) > 2 else ", ".join(map(str, run)) for run in runs)


class Grade(Table, frozen=True):
    """What was seen at one cut; "" where it has not been graded. The words are those of rules/trial/scales.toml."""

    cut: Number
    chipping: str = ""
    dust: str = ""
    melting: str = ""
    chatter: str = ""
    debris: str = ""
    tool: str = ""
    stopped: str = ""
    measured_speed: Speed | None = None  # rev/min, in this cut
    date: datetime.date | None = None
    who: str = ""
    wear: str = ""  # of the tool before the cut, free text
    note: str = ""
    photos: tuple[str, ...] = ()  # names of files beside this one


class Grades(Table, frozen=True):
    """grades.toml."""

    plan: str
    grade: tuple[Grade, ...] = ()


FAULTS = ("chipping", "dust", "melting", "chatter", "debris", "tool", "stopped")


def graded(grade: Grade) -> bool:
    """Whether every scale has its word."""
    return all(getattr(grade, fault) for fault in FAULTS)


def begun(grade: Grade) -> bool:
    return any(getattr(grade, fault) for fault in FAULTS)


