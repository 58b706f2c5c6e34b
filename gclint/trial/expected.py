"""What is expected before a cut is seen, and when too little was seen: rules/trial/learn.toml."""

from __future__ import annotations

from functools import cache

import msgspec

from gclint.setup.declared import Table
from gclint.shipped import folder
from gclint.toml.quantity import Standing


class Normal(Table, frozen=True):
    """Logits."""

    mean: float
    sd: float
    tails: float | None = None  # degrees of freedom of a t distribution in a normal one's place


class Least(Table, frozen=True):
    cuts: int
    chips: int
    speeds: int
    sure: float
    pair: float  # share of the draws in which a pair that is recommended is in the window


class Near(Table, frozen=True):
    """Which cuts stand for a pair, and how many of them may be spoilt."""

    factor: float
    good_for_spoilt: float


class Check(Table, frozen=True):
    """When grades do not agree with what was fitted, or with each other."""

    chance: float
    more: float


class Tails(Table, frozen=True):
    """Shares of the draws that lie under the lower end of an interval, under its value, and under its upper end."""

    low: float
    value: float
    high: float


class Calibrated(Table, frozen=True):
    chip_low: Tails
    chip_high: Tails
    edge_low: Tails
    edge_high: Tails


class Tell(Table, frozen=True):
    sure: float
    advice: float
    matters: float


class Prior(Table, frozen=True):
    first_step: Normal
    next_step: Normal
    depth: Normal
    straight: Normal
    tool: Normal
    batch: Normal
    speed: Normal


class Fault(Table, frozen=True, rename={"from_": "from"}):
    from_: str  # the first word of its scale that spoils a cut
    chip: Normal
    edge: Normal
    straight: Normal | None = None  # where it is not that of `prior`
    at_speeds: bool = False  # it has a free term at each speed, as a resonance needs


class Expected(Table, frozen=True):
    standing: Standing
    source: str
    chance: float
    interval: float
    draws: int
    slip: float
    least: Least
    near: Near
    check: Check
    calibrated: Calibrated
    tell: Tell
    prior: Prior
    fault: dict[str, Fault] = msgspec.field(default_factory=dict)


@cache
def expected() -> Expected:
    from gclint.toml.file import load

    return load(folder() / "trial" / "learn.toml", Expected, "list of what is expected of test cuts")
