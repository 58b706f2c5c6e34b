"""Which clean programs and which planters."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from functools import cache

from gclint.judge.compile_packs import shipped_packs
from tests.planted import faults_of_entries, faults_of_spindle, faults_of_text  # noqa: F401  (they register their planters)
from tests.planted.base import Base, clean_samples
from tests.planted.harness import EACH, PLANTERS, Planter, Result, all_plants


@cache
def bases() -> list[Base]:
    return clean_samples()


def planters() -> list[Planter]:
    return PLANTERS


def unplanted() -> set[str]:
    """Shipped rules that no planter stands for."""
    return {rule.name for pack in shipped_packs() for rule in pack.rules} - {each.rule for each in PLANTERS}


def results(chosen: Iterable[Planter], each: int = EACH) -> Iterator[Result]:
    return all_plants(bases(), chosen, each)
