"""The limits that advice keeps to are those that rules mark by their key `bounds`, whatever the rules are called."""

from __future__ import annotations

from gclint.advice.parts import bounds
from gclint.cutting.cut_limits import Bounds
from gclint.packs.shipped_packs import shipped_packs


def test_each_bound_is_marked_on_one_limit_of_one_rule() -> None:
    marked = [limit for pack in shipped_packs() for rule in pack.rules for limit in rule.text.limits.values()]
    assert sorted(limit.bounds for limit in marked if limit.bounds) == sorted(Bounds.__struct_fields__)


def test_a_bound_is_its_limit_as_a_plain_number_with_its_source() -> None:
    made = bounds()
    by_bound = {
        limit.bounds: limit for pack in shipped_packs() for rule in pack.rules for limit in rule.text.limits.values()
    }
    assert f"{made.wall.value:g} mm" == by_bound["wall"].value
    assert f"{100 * made.power.value:g} %" == by_bound["power"].value
    assert made.stress.standing == by_bound["stress"].standing
    assert made.stress.source == by_bound["stress"].source
