"""House packs change grades and narrow rules of other packs, always with a reason that the report shows."""

from __future__ import annotations

from typing import Any

import pytest

from gclint.digest.sheet_words import graded_words, house_words
from gclint.tables.finding import Checked, HouseRule, Regraded
from tests.judge.try_judge import found, tried

HEAD = "G21 G90 G94 G17 G54\nM3 S12000\nG0 Z5\n"
PLUNGE = HEAD + "T1 M6\nG0 X20 Y40\nG1 Z-1 F100\nG0 Z5\nT2 M6\nG0 X40 Y40\nG1 Z-1 F90\nG0 Z5\nM30\n"
ACROSS = HEAD + "T1 M6\nG0 X-10 Y40\nG0 Z-1\nG0 X60\nG0 Z5\nM30\n"
JOB = 'packs = ["house.toml"]\n'
PACK = 'pack = "lowtide"\nabout = "Invented: what the Lowtide workshop asks."\n'
TWO = ("1: flat 6mm 2fl up-cut", "2: flat 3mm 2fl up-cut")


def judged(house: str, program: str = PLUNGE, **more: Any) -> Checked:
    given = {"material": "cured-epoxy", "stock": "120 x 80 x 20 mm at 0 0", "job": JOB, **more}
    return tried(program, *TWO, house=PACK + house, **given)


def narrow(scope: str, rule: str = "straight-plunge") -> str:
    return f'[[narrow]]\nrule = "{rule}"\n{scope}\nbecause = "we drill first"\n'


def regrade(grade: str, rule: str = "straight-plunge") -> str:
    return f'[[regrade]]\nrule = "{rule}"\ngrade = "{grade}"\nbecause = "We drill first."\n'


def test_a_house_pack_gives_a_rule_another_grade_and_the_finding_says_so() -> None:
    plain = found(judged(regrade("change", "long-tool")), "straight-plunge")
    assert {(f.grade, f.regraded) for f in plain} == {("change", None)}
    checked = judged(regrade("consider"))
    plunges = found(checked, "straight-plunge")
    assert [f.grade for f in plunges] == ["consider", "consider"]
    own = plunges[0].regraded
    assert own is not None
    assert (own.was, own.because) == ("change", "We drill first.")
    assert own.by.endswith("house.toml")
    (told,) = checked.house
    assert (told.rule, told.does, told.says, told.count) == (
        "straight-plunge", "regrades", "consider instead of change or consider", 2
    )  # fmt: skip
    assert '"consider" by' in graded_words(plunges[0])
    assert "because We drill first" in graded_words(plunges[0])
    assert house_words(checked)[0].endswith("because We drill first; 2 findings here")


def test_a_rule_with_several_grades_has_one_and_each_finding_knows_its_own() -> None:
    """Of the grades it had before, only those that differ are changed."""
    program = HEAD + "T1 M6\nG0 X20 Y40\nG1 Z-12 F100\nG0 Z5\nM30\n"
    rules = ("too-deep", "full-width-too-deep", "straight-plunge")
    before = found(judged(regrade("change", "long-tool"), program), *rules)
    assert before
    checked = judged("".join(regrade("halt", name) for name in {f.rule for f in before}), program)
    for finding in found(checked, *(f.rule for f in before)):
        assert finding.grade == "halt"
        assert finding.regraded is not None
        assert finding.regraded.was in ("change", "consider")


def test_a_rule_that_was_halt_is_told_even_where_it_finds_nothing() -> None:
    checked = judged(regrade("consider", "rapid-through-stock") + regrade("consider", "steep-ramp"))
    assert not found(checked, "rapid-through-stock", "steep-ramp")
    said = house_words(checked)
    assert len(said) == 1
    assert "rapid-through-stock: consider instead of halt" in said[0]
    assert said[0].endswith("; none here")
    (hit,) = found(judged(regrade("consider", "rapid-through-stock"), ACROSS), "rapid-through-stock")
    assert hit.grade == "consider"
    assert hit.regraded == Regraded("halt", hit.regraded.by if hit.regraded else "", "We drill first.")


@pytest.mark.parametrize(
    ("scope", "tools", "words"),
    [
        ("tool = 1", {1}, "only tool 1"),
        ("tool = [1, 2]", {1, 2}, "only tool 1 and 2"),
        ("except_tool = 1", {2}, "except tool 1"),
        ("except_tool = [1, 2]", set(), "except tool 1 and 2"),
        ('except_tool = "fine"', {1, 2}, "except tool fine"),
        ('material = "cured-epoxy"', {1, 2}, "only in cured-epoxy"),
        ('material = ["beech", "oak"]', set(), "only in beech and oak"),
        ('except_material = "cured-epoxy"', set(), "except in cured-epoxy"),
        ('program = "try.nc"', {1, 2}, "only in the program try.nc"),
        ('program = ["sign-*", "T?Y.*"]', {1, 2}, "only in the program sign-* and T?Y.*"),
        ('except_program = "tr*"', set(), "except in the program tr*"),
        ('tool = 1\nmaterial = "beech"', set(), "only tool 1, only in beech"),
        ('tool = 1\nexcept_program = "x*"', {1}, "only tool 1, except in the program x*"),
    ],
)
def test_a_house_pack_narrows_a_rule(scope: str, tools: set[int], words: str) -> None:
    checked = judged(narrow(scope))
    assert {f.tool for f in found(checked, "straight-plunge")} == tools
    (told,) = checked.house
    assert (told.does, told.says, told.count) == ("narrows", words, 2 - len(tools))
    assert bool(house_words(checked)) == (len(tools) < 2)
    if len(tools) < 2:
        assert f"straight-plunge counts {words}, by" in house_words(checked)[0]
        assert f"{2 - len(tools)} place" in house_words(checked)[0]


def test_a_tool_is_meant_by_its_name_in_the_shop_too() -> None:
    shop = '[[tool]]\nnumber = 2\nname = "fine"\nshape = "flat"\ndiameter = "3 mm"\nflutes = 2\n'
    checked = tried(
        PLUNGE, "1: flat 6mm 2fl", material="cured-epoxy", stock="120 x 80 x 20 mm at 0 0", shop=shop,
        job='shop = "shop.toml"\n' + JOB, house=PACK + narrow('except_tool = "fine"'),
    )  # fmt: skip
    assert {f.tool for f in found(checked, "straight-plunge")} == {1}


def test_where_the_material_is_not_declared_a_rule_for_one_material_is_not_judged() -> None:
    checked = judged(narrow('material = "beech"', "rapid-through-stock"), ACROSS, material=None)
    assert not found(checked, "rapid-through-stock")
    (row,) = [row for row in checked.not_judged if row.rule == "rapid-through-stock"]
    assert "material" in row.needs


def test_two_packs_narrow_one_rule_together_and_rules_are_added() -> None:
    rule = """
[[rule]]
name = "too-far-out"
title = "The tool goes far out"
looks_at = "moves"
cause = "once"
worst = "x"
when = "x > far"
grade = "change"
happens = "It goes to X {x}."
why = "Our board ends there."
standing = "practice"
source = "our board"
owner = "the workshop"
limits.far = { value = "30 mm", standing = "practice", source = "our board" }
"""
    checked = judged(narrow("tool = 1") + narrow("tool = 2") + rule)
    assert not found(checked, "straight-plunge")
    (own,) = found(checked, "too-far-out")
    assert own.happens == "It goes to X 40 mm."
    added = [each for each in checked.house if each.does == "adds"]
    assert [(each.rule, each.count, each.because) for each in added] == [("too-far-out", 1, "our board")]
    assert house_words(checked)[-1].startswith("1 rule more, by ")
    assert house_words(checked)[-1].endswith(": too-far-out")


def test_the_sheet_and_the_document_show_what_a_house_pack_changed(tmp_path: Any) -> None:
    from click.testing import CliRunner

    from gclint.cli.main import gclint

    (tmp_path / "house.toml").write_text(PACK + regrade("consider"))
    (tmp_path / "job.toml").write_text(JOB + 'material = "cured-epoxy"\n[stock]\nsize = ["120 mm", "80 mm", "20 mm"]\n')
    (tmp_path / "a.nc").write_text(PLUNGE)
    tools = ["--tool", TWO[0], "--tool", TWO[1]]
    done = CliRunner().invoke(gclint, ["check", str(tmp_path / "a.nc"), *tools])
    flat = " ".join(done.output.split())
    assert 'graded "consider" by' in flat
    assert "HOUSE RULES ---" in flat
    assert "because We drill first" in flat


def test_only_a_lowered_halt_counts_as_one() -> None:
    for says, lowers in (
        ("consider instead of halt or change", True), ("change instead of change", False),
        ("halt instead of consider", False), ("change instead of halt", True),
    ):  # fmt: skip
        assert HouseRule("a", "regrades", says, "b", "c", 0).lowers_halt == lowers
