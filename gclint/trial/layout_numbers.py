"""The numbers by which test cuts are laid out, from rules/trial/plan.toml."""

from __future__ import annotations

from functools import cache

from gclint.knowledge.numbers import Number
from gclint.shipped import folder


@cache
def plan_numbers() -> dict[str, Number]:
    """By name. Raises Problem where the file is damaged."""
    from gclint.toml.file import load

    return load(folder() / "trial" / "plan.toml", dict[str, Number], "list of numbers")


def plan_number(name: str) -> float:
    return plan_numbers()[name].value
