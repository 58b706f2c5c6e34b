"""Which clean programs, which planters, and which rules no planter can stand for."""

from __future__ import annotations

from functools import cache

from gclint.packs.shipped_packs import shipped_packs
from tests.planted import (  # noqa: F401  (they register their planters)
    faults_of_chips,
    faults_of_collisions,
    faults_of_contours,
    faults_of_entries,
    faults_of_loads,
    faults_of_part,
    faults_of_runs,
    faults_of_slips,
    faults_of_spindle,
    faults_of_text,
)
from tests.planted.base import Base, clean_samples
from tests.planted.harness import PLANTERS, Planter
from tests.planted.own_programs import own_programs

# rules that no program and no declaration can be given a fault for, with the reason
CANNOT_BE_PLANTED = {
    "internal-error": "it tells of a fault of gclint itself; tests/judge makes one by breaking a step",
    "blank-not-declared": "it stands for findings of other rules; tests/judge/test_by_assumption.py",
    "earlier-cuts-unknown": "it stands for findings of other rules; tests/judge/test_by_assumption.py",
    "another-set-up": "it stands for findings of other rules; tests/judge/test_by_assumption.py",
}

@cache
def bases() -> list[Base]:
    return [*clean_samples(), *own_programs()]


def planters() -> list[Planter]:
    return PLANTERS


def shipped_rules() -> set[str]:
    return {rule.name for pack in shipped_packs() for rule in pack.rules}
