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


class Least(Table, frozen=True):
    cuts: int
    chips: int
    speeds: int
    sure: float


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


class Fault(Table, frozen=True, rename={"from_": "from"}):
    from_: str  # the first word of its scale that spoils a cut
    chip: Normal
    edge: Normal
    straight: Normal | None = None  # where it is not that of `prior`


class Expected(Table, frozen=True):
    standing: Standing
    source: str
    chance: float
    interval: float
    draws: int
    least: Least
    tell: Tell
    prior: Prior
    fault: dict[str, Fault] = msgspec.field(default_factory=dict)


@cache
def expected() -> Expected:
    from gclint.toml.file import load

    return load(folder() / "trial" / "learn.toml", Expected, "list of what is expected of test cuts")
