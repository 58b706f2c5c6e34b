"""The script that breaks every rule sees a bound that nothing holds, and none where all are held."""

from __future__ import annotations

from msgspec.structs import replace

from gclint.packs.pack import Pack, Rule
from gclint.packs.shipped_packs import shipped_packs, sources
from gclint.shipped import folder
from tests.mutate_rules import Samples, mutants, survivors


class NoSamples(Samples):
    def __init__(self) -> None:
        self.tables, self.chains, self.views = [], [], {}


def rule_of(name: str) -> tuple[Rule, Pack, str]:
    for pack in shipped_packs():
        for rule in pack.rules:
            if rule.name == name:
                return rule, pack, sources(folder())[pack.file_of(name).removeprefix("rules/")]
    raise AssertionError(name)


def test_what_is_broken() -> None:
    """dwell-in-material: when in_cut and turning and seconds > longest and ...; one limit."""
    rule, pack, source = rule_of("dwell-in-material")
    said = [words for words, _ in mutants(source, pack, pack.rules.index(rule))]
    assert said == [
        "negated", "bound 1 (seconds > 0.5) = 0", "bound 1 (seconds > 0.5) = infinity",
        "limit longest = 0", "limit longest = infinity",
    ]  # fmt: skip


def test_a_rule_whose_bounds_are_held_has_no_survivor() -> None:
    assert survivors(*rule_of("dwell-in-material"), NoSamples()) == (5, [])


def test_a_bound_that_no_example_holds_survives() -> None:
    rule, pack, source = rule_of("dwell-in-material")
    half_a_second = next(each for each in rule.text.must_leave if "half a second" in each.says)
    loose = replace(
        rule, text=replace(rule.text, must_leave=tuple(e for e in rule.text.must_leave if e is not half_a_second))
    )
    rules = tuple(loose if each is rule else each for each in pack.rules)
    count, alive = survivors(loose, replace(pack, rules=rules), source, NoSamples())
    assert (count, alive) == (5, ["bound 1 (seconds > 0.5) = 0", "limit longest = 0"])
