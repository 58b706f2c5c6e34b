"""Every fault that can be planted in a clean program is found under its name, and nothing else is found for it."""

from __future__ import annotations

import pytest

from tests.planted import plan
from tests.planted.harness import STOPS, Result


@pytest.fixture(scope="module")
def results() -> list[Result]:
    """One plant of each kind in each program; `python -m tests.planted` tries three."""
    return list(plan.results(plan.planters(), each=1))


@pytest.mark.parametrize("base", plan.bases(), ids=lambda base: base.name)
def test_the_program_is_clean_before(base: plan.Base) -> None:
    assert [f.rule for f in base.findings if f.grade in STOPS] == []


def test_nearly_all_planted_faults_are_found(results: list[Result]) -> None:
    missed = [(r.planter.rule, r.planter.name, r.base, r.plant.says) for r in results if not r.found]
    assert len(results) > 30
    assert len(missed) <= 0.01 * len(results), missed


def test_nothing_is_found_that_the_fault_does_not_explain(results: list[Result]) -> None:
    assert [(r.planter.name, r.base, f.rule, f.line) for r in results for f in r.extra] == []


def test_every_planter_finds_a_place(results: list[Result]) -> None:
    assert {p.name for p in plan.planters()} == {r.planter.name for r in results}
