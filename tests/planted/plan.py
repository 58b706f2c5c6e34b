"""Which clean programs, which planters, and which rules cannot be planted."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from functools import cache

from tests.planted import faults_of_entries, faults_of_spindle, faults_of_text  # noqa: F401  (they register their planters)
from tests.planted.base import Base, clean_samples
from tests.planted.harness import EACH, PLANTERS, Planter, Result, all_plants


@cache
def bases() -> list[Base]:
    return clean_samples()


def planters() -> list[Planter]:
    return PLANTERS


def results(chosen: Iterable[Planter], each: int = EACH) -> Iterator[Result]:
    return all_plants(bases(), chosen, each)


def unplanted() -> dict[str, str]:
    return {}
