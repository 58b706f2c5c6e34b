"""What the model reckons, in words, from rules/model/quantities.toml: formulas and sources for people to read."""

from __future__ import annotations

from functools import cache

from msgspec import Struct

from gclint.shipped import folder


class Quantity(Struct, frozen=True, forbid_unknown_fields=True):
    title: str
    means: str
    formula: tuple[str, ...]
    numbers: tuple[str, ...]  # names in numbers.toml
    rules: tuple[str, ...]
    standing: str
    source: str


@cache
def quantities() -> dict[str, Quantity]:
    """By name. Raises Problem where the file is damaged."""
    from gclint.toml.file import load

    return load(folder() / "model" / "quantities.toml", dict[str, Quantity], "list of quantities")
