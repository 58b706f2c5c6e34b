"""What is not judged asks only for what is not declared, and each thing once."""

from __future__ import annotations

import pytest

from gclint.digest.sheet_words import not_judged_by_need
from gclint.tables.finding import Checked
from tests.judge.try_judge import tried

CUT = "M3 S16000\nG4 P4\nG0 X20 Y20 Z20\nG0 Z2\nG1 X60 Z-3 F1200\nG1 X20\nG0 Z20\nM5\nM30\n"
HEAD = "G21 G90 G94 G17 G54\n"
FLAT = "1: flat 6mm 2fl up-cut"
STOCK = "120 x 80 x 18 mm at 0 0"
SHOP = """
[[tool]]
number = 1
shape = "flat"
diameter = "6 mm"
flutes = 2
[[tool]]
number = 3
shape = "drill"
diameter = "3 mm"
"""


def asked(checked: Checked) -> str:
    return " | ".join(not_judged_by_need(checked))


def test_one_question_where_several_tools_are_declared_and_none_is_called() -> None:
    checked = tried(HEAD + CUT, material="beech", stock=STOCK, shop=SHOP)
    needs = not_judged_by_need(checked)
    about_tool = [need for need in needs if "collet" in need]
    assert len(about_tool) == 1
    assert len(needs[about_tool[0]]) > 20
    assert not any(need.startswith("the tool") for need in needs)
    (question,) = (f for f in checked.findings if f.rule == "tool-not-declared")
    assert question.happens.startswith("Which bit is in the collet?")
    assert "1 (flat, 6 mm), 3 (drill, 3 mm)" in question.happens
    assert "`tool = N` in job.toml" in question.change.text


def test_the_job_answers_that_question() -> None:
    job = 'tool = 1\nshop = "shop.toml"\nmaterial = "beech"\n'
    checked = tried(HEAD + CUT, stock=STOCK, shop=SHOP, job=job)
    assert "collet" not in asked(checked)
    assert not [f for f in checked.findings if f.rule == "tool-not-declared"]
    assert [row.tool for row in checked.tools] == [1]
    assert any(taken.what == "tool in the spindle" and "line 1" in taken.because for taken in checked.assumed)


@pytest.mark.parametrize("cut", [CUT, CUT.replace("Z-3", "Z1")])
def test_the_blank_is_asked_for_once_and_the_declared_tool_never(cut: str) -> None:
    needs = not_judged_by_need(tried(HEAD + cut, FLAT, material="beech"))
    assert len([need for need in needs if "--stock" in need]) == 1
    assert not any("the tool (" in need or need == "the tool" for need in needs)


def test_a_declared_blank_is_not_asked_for() -> None:
    program = HEAD + "T1 M6\n" + CUT
    assert "--stock" not in asked(tried(program, FLAT, material="beech", stock=STOCK))
    by_rapids = program.replace("G1 X60 Z-3 F1200\nG1 X20\n", "G0 Z-3\n")
    said = asked(tried(by_rapids, FLAT, material="beech", stock=STOCK))
    assert "no move at feed shows where the stock's top is" in said
    assert "no cut goes below Z0" not in said


def test_keys_of_one_table_are_asked_for_together() -> None:
    needs = not_judged_by_need(tried(HEAD + "T1 M6\n" + CUT, FLAT, material="beech", stock=STOCK))
    assert len([need for need in needs if "[machine]" in need]) == 1
    assert len([need for need in needs if "of the tool in shop.toml" in need]) == 1
