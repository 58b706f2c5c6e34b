"""What is taken as given: each thing once, with the declaration that would say it and what that would let be judged."""

from __future__ import annotations

from gclint.digest.sheet_words import assumed_words
from tests.judge.try_judge import tried

PROGRAM = "G21 G90 G94 G17 G54\nT1 M6\nM3 S16000\nG4 P4\nG0 X20 Y20 Z20\nG1 X60 Z-3 F1200\nG0 Z20\nM5\nM30\n"
FLAT = "1: flat 6mm 2fl up-cut"


def test_the_three_sides_of_an_undeclared_blank_are_one_sentence() -> None:
    checked = tried(PROGRAM, FLAT, material="beech")
    about = [said for said in assumed_words(checked) if "no stock is declared" in said]
    assert len(about) == 1
    assert all(part in about[0] for part in ("stock top", "stock in X", "stock in Y", "`[stock]` in job.toml"))
    assert all(taken.declare for taken in checked.assumed if taken.what.startswith("stock"))


def test_nothing_that_is_declared_is_asked_for() -> None:
    job = 'z_zero = "stock-top"\nmaterial = "beech"\n'
    job += '[stock]\nsize = ["120 mm", "80 mm", "18 mm"]\ncorner = ["0 mm", "0 mm"]\n'
    said = " ".join(assumed_words(tried(PROGRAM, FLAT, job=job)))
    assert "z_zero" not in said
    assert "[stock]" not in said
    assert "acceleration" in said


def test_a_tool_that_the_job_names_is_not_asked_for_again() -> None:
    uncalled = PROGRAM.replace("T1 M6\n", "")
    one = '[[tool]]\nnumber = 1\nshape = "flat"\ndiameter = "6 mm"\n'
    shop = one + one.replace("= 1", "= 2")
    job = 'tool = 2\nshop = "shop.toml"\nmaterial = "beech"\n'
    (taken,) = (one for one in tried(uncalled, shop=shop, job=job).assumed if one.what == "tool in the spindle")
    assert (taken.value, taken.declare) == ("tool 2", "")
    (taken,) = (one for one in tried(uncalled, FLAT, material="beech").assumed if one.what == "tool in the spindle")
    assert taken.declare == "`tool` in job.toml"
