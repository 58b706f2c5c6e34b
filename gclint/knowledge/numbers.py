"""The numbers by which the model sorts what it sees, from rules/model/numbers.toml."""

from __future__ import annotations

from functools import cache

from msgspec import Struct

from gclint.shipped import folder
from gclint.tables.setup import Limits


class Number(Struct, frozen=True, forbid_unknown_fields=True):
    value: float
    unit: str
    means: str
    standing: str
    source: str


@cache
def numbers() -> dict[str, Number]:
    """By name. Raises Problem where the file is damaged."""
    from gclint.toml.file import load

    return load(folder() / "model" / "numbers.toml", dict[str, Number], "list of numbers")


def usual_limits() -> Limits:
    """How far a program with loops and calls is followed where the shop says nothing."""
    return Limits(*(int(numbers()[f"most_{name}"].value) for name in Limits.__struct_fields__))


def model_number(name: str) -> float:
    return numbers()[name].value
