"""Each kind of fault, planted in one clean program; `python -m tests.planted` plants it in all of them."""

from __future__ import annotations

from itertools import islice

import pytest

from tests.planted import plan
from tests.planted.harness import STOPS, Planter, planted, try_one


@pytest.mark.parametrize("base", plan.bases(), ids=lambda base: base.name)
def test_the_program_is_clean_before(base: plan.Base) -> None:
    assert [f.rule for f in base.findings if f.grade in STOPS] == []


@pytest.mark.slow
@pytest.mark.parametrize("planter", plan.planters(), ids=lambda planter: planter.name)
def test_the_fault_is_found_and_nothing_it_does_not_explain(planter: Planter) -> None:
    """In a program that changes from one planter to the next; the long one only where no other will do."""
    order = sorted(plan.bases(), key=lambda base: (len(base.data) > 20_000, hash_of(planter.name, base.name)))
    base, plant = next((base, plant) for base in order for plant in islice(planted(base, planter, 0), 1))
    result = try_one(base, planter, plant)
    assert result.found, (base.name, plant.says)
    assert [(f.rule, f.line) for f in result.extra] == [], (base.name, plant.says)


def hash_of(*texts: str) -> int:
    return sum((k + 1) * ord(c) for k, c in enumerate("/".join(texts))) % 1009


def test_every_rule_is_planted_or_the_reason_is_told() -> None:
    named = [planter.rule for planter in plan.planters()]
    assert set(named) | set(plan.CANNOT_BE_PLANTED) == plan.shipped_rules()
    assert not set(named) & set(plan.CANNOT_BE_PLANTED)
