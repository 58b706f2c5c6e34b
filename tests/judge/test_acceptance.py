"""What an acceptance reaches to: places, figures, grades, tools and programs; what is new beside it is told."""

from __future__ import annotations

import pytest

from gclint.judge.accept_all import known
from gclint.problem import Problem
from gclint.tables.finding import Checked, Finding
from tests.judge.try_judge import found, tried

HEAD = "G21 G90 G94 G17 G54\nM3 S12000\nG0 Z5\n"
SIX = "1: flat 6mm 2fl up-cut"
THROUGH = "G0 X20 Y40\nG1 Z-1 F100\nG0 X60\nG0 Z5\n"  # a rapid through the stock: graded halt


def plunges(*depths: float) -> str:
    return "".join(f"G0 X{20 + 12 * n} Y40\nG1 Z-{depth} F100\nG0 Z5\n" for n, depth in enumerate(depths))


def plunged(body: str, accept: str) -> Checked:
    job = f'[[accept]]\nrule = "straight-plunge"\nbecause = "drilled by hand first"\n{accept}'
    return tried(HEAD + body + "M30\n", SIX, material="cured-epoxy", stock="120 x 80 x 20 mm at 0 0", job=job)


def accepted(checked: Checked, rule: str = "straight-plunge") -> list[tuple[str | None, int]]:
    return [(finding.accepted, finding.count) for finding in found(checked, rule)]


DRILLED = "drilled by hand first"


@pytest.mark.parametrize(("places", "covered"), [(3, True), (2, False)])
def test_more_places_are_told_again(places: int, covered: bool) -> None:
    checked = plunged(plunges(1, 1, 1), f"places = {places}")
    assert accepted(checked) == [(DRILLED if covered else None, 3)]
    assert not found(checked, "acceptance-stale")
    happens = found(checked, "straight-plunge")[0].happens
    assert ("2 places at most, and there are 3" in happens) is not covered
    assert [each.covers for each in checked.acceptances] == [3 if covered else 0]


@pytest.mark.parametrize(("deepest", "covered"), [(2.0, True), (2.019, True), (2.1, False)])
def test_a_worse_figure_is_told_again(deepest: float, covered: bool) -> None:
    """One in a hundred is the rounding of the figure as it is written."""
    checked = plunged(plunges(1, deepest), 'found = "2 mm"')
    assert accepted(checked) == [(DRILLED if covered else None, 2)]
    if not covered:
        assert "it covers 2 mm at worst, and here are 2.1 mm" in found(checked, "straight-plunge")[0].happens


def test_where_small_is_worse_a_smaller_figure_is_told_again() -> None:
    cut = HEAD + "G0 X-10 Y40\nG1 Z-2 F{}\nG1 X130\nG0 Z5\nM30\n"
    job = '[[accept]]\nrule = "chip-too-thin"\nbecause = "slow on purpose"\nfound = "0.02 mm"\n'
    stock = {"material": "cured-epoxy", "stock": "120 x 80 x 20 mm at 0 0", "job": job}
    assert accepted(tried(cut.format(480), SIX, **stock), "chip-too-thin") == [("slow on purpose", 1)]  # 0.02 a tooth
    assert accepted(tried(cut.format(400), SIX, **stock), "chip-too-thin") == [(None, 1)]  # 0.0167


def test_a_figure_in_another_unit_covers_nothing() -> None:
    checked = plunged(plunges(1), 'found = "0.1 in"')
    assert accepted(checked) == [(None, 1)]
    assert "counted in mm" in found(checked, "straight-plunge")[0].happens


def test_text_that_is_found_must_be_the_same() -> None:
    shop = '[machine]\ncontroller = "hobby-3-axis"\n'
    job = '[[accept]]\nrule = "code-refused"\nbecause = "sent hole by hole"\nfound = "G81"\n'
    drills = HEAD + "G81 X10 Y10 Z-3 R2 F300\nG80\nG83 X20 Y10 Z-3 R2 Q1 F300\nG80\nM30\n"
    checked = tried(drills, SIX, shop=shop, job=job)
    assert {(f.found.value, f.accepted) for f in found(checked, "code-refused") if f.found} == {
        ("G81", "sent hole by hole"), ("G83", None),
    }  # fmt: skip


def test_halt_is_accepted_only_by_saying_so() -> None:
    job = '[[accept]]\nrule = "rapid-through-stock"\nbecause = "the slot is milled already"\n'
    stock = "120 x 80 x 20 mm at 0 0"
    plain = tried(HEAD + THROUGH + "M30\n", SIX, stock=stock, job=job)
    (hit,) = found(plain, "rapid-through-stock")
    assert (hit.grade, hit.accepted) == ("halt", None)
    assert 'grade = "halt"' in hit.happens
    assert not found(plain, "acceptance-stale")
    said = tried(HEAD + THROUGH + "M30\n", SIX, stock=stock, job=job + 'grade = "halt"\n')
    assert [f.accepted for f in found(said, "rapid-through-stock")] == ["the slot is milled already"]


def test_halt_in_a_comment_is_accepted_only_by_saying_so() -> None:
    comment = "(gclint accept {}rapid-through-stock by Maren because the slot is milled already)\n"
    stock = "120 x 80 x 20 mm at 0 0"
    plain = tried(HEAD + comment.format("") + THROUGH + "M30\n", SIX, stock=stock)
    assert [f.accepted for f in found(plain, "rapid-through-stock")] == [None]
    assert "gclint accept halt rapid-through-stock" in found(plain, "rapid-through-stock")[0].happens
    said = tried(HEAD + comment.format("halt ") + THROUGH + "M30\n", SIX, stock=stock)
    assert [f.accepted for f in found(said, "rapid-through-stock")] == ["the slot is milled already"]
    assert [(each.by, each.grade) for each in said.acceptances] == [("Maren", "halt")]


def test_the_tool_of_a_program_that_names_none_is_the_one_that_is_assumed() -> None:
    assert accepted(plunged(plunges(1), "tool = 1")) == [(DRILLED, 1)]
    assert accepted(plunged(plunges(1), "tool = 2")) == [(None, 1)]


def test_an_acceptance_for_another_program_is_not_this_ones() -> None:
    mine = plunged(plunges(1), 'program = "try.nc"')
    assert accepted(mine) == [(DRILLED, 1)]
    other = plunged(plunges(1), 'program = "other.nc"')
    assert accepted(other) == [(None, 1)]
    assert not found(other, "acceptance-stale")
    assert not other.acceptances


def test_a_second_acceptance_of_the_same_is_stale_and_an_outgrown_one_says_why() -> None:
    again = '[[accept]]\nrule = "straight-plunge"\nbecause = "known"\nplaces = 9\n'
    checked = plunged(plunges(1, 1, 1), "places = 2\n" + again)
    assert accepted(checked) == [("known", 3)]
    (stale,) = found(checked, "acceptance-stale")
    assert "2 places at most, and there are 3" in stale.happens


def test_what_can_be_accepted_together_and_what_cannot() -> None:
    checked = tried(
        HEAD + plunges(1, 2.5) + THROUGH + "(gclint accept steep-ramp because why not)\nM30\n", SIX,
        material="cured-epoxy", stock="120 x 80 x 20 mm at 0 0",
    )  # fmt: skip
    made, left = known(checked, "try.nc")
    (plunge,) = (each for each in made if each.rule == "straight-plunge")
    assert (plunge.program, plunge.tool, plunge.grade, plunge.places, plunge.found) == (
        "try.nc", 1, "change", 2, "2.5 mm",
    )  # fmt: skip
    assert {finding.rule for finding in left} >= {"rapid-through-stock", "acceptance-stale"}
    assert all(finding.grade != "halt" for finding in left if finding.rule == "acceptance-stale")
    assert "halt" not in {each.grade for each in made}


def test_findings_on_both_sides_of_a_window_are_apart() -> None:
    def one(value: float, low: float | None, high: float | None) -> Finding:
        (finding,) = found(plunged(plunges(1), "places = 9\ntool = 2"), "straight-plunge")
        from msgspec.structs import replace

        from gclint.tables.finding import Found, Limits

        return replace(finding, found=Found("x", value, "mm"), window=Limits(low, high, "mm", "", ""))

    base = plunged("", "")
    from msgspec.structs import replace

    checked = replace(base, findings=(one(0.01, 0.02, 0.1), one(0.015, 0.02, 0.1), one(0.3, 0.02, 0.1)))
    assert [(each.found, each.places) for each in known(checked, "a.nc")[0]] == [("0.01 mm", 2), ("0.3 mm", 1)]


def test_bad_acceptances_are_refused_with_their_place() -> None:
    for line, word in (("places = 0", "out of range"), ('grade = "hold"', "none of its"), ("tool = true", "whole")):
        with pytest.raises(Problem, match=word) as problem:
            plunged("", line)
        assert problem.value.line == 4
