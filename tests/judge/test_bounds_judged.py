"""A program that is too much work ends by a bound with a finding that says what nobody has looked at."""

from __future__ import annotations

import math

import pytest

from tests.judge.try_judge import found, tried

HEAD = "G21 G90 G94 G17 G54\nT1 M6\nS12000 M3\nG4 P4\nG0 X10 Y10 Z5\nG1 Z-1 F300\n"
FOOT = "G0 Z5\nM5\nM30\n"
TOOL = "1: flat 6mm 2fl up-cut"
BLANK = "100 x 60 x 10 mm at 0 0"


def test_the_bound_of_work_is_a_finding_and_what_lies_behind_it_is_not_called_idle(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    from gclint.stock import engage

    zigzag = "".join(f"G1 X{10 + 70 * (k % 2)} Y{10 + k * 0.02:.3f} F1200\n" for k in range(300))
    whole = tried(HEAD + zigzag + FOOT, TOOL, material="beech", stock=BLANK)
    assert not found(whole, "not-followed")
    monkeypatch.setattr(engage, "MOST_WORK", 2e6)
    monkeypatch.setattr(engage, "WORK_OF_MOVE", 0)
    checked = tried(HEAD + zigzag + FOOT, TOOL, material="beech", stock=BLANK)
    (told,) = found(checked, "not-followed")
    assert told.grade == "change"
    assert 20 < told.line < 250
    assert "more work than one check does" in told.happens
    assert f"{306 - told.line + 1} moves" in told.happens
    assert not found(checked, "cuts-only-air", "never-cuts")


def test_fine_moves_stay_within_what_each_adds_to_the_bound(monkeypatch: pytest.MonkeyPatch) -> None:
    from gclint.stock import engage

    floor = "".join(
        f"G1 X{x * 0.2:.3f} Y{y * 0.2:.3f} Z{-1.8 + 0.9 * math.sin(x * 0.024) + 0.6 * math.sin(y * 0.06):.3f} F1200\n"
        for y in range(100, 130)
        for x in (range(60, 260) if y % 2 else range(259, 59, -1))
    )
    monkeypatch.setattr(engage, "MOST_WORK", 1e6)
    program = HEAD + "G0 Z5\nG0 X51.8 Y20\n" + floor + FOOT
    checked = tried(program, "1: flat 3.2mm 2fl up-cut", material="beech", stock=BLANK)
    assert not found(checked, "not-followed")


def test_an_arc_of_too_many_turns_is_a_finding() -> None:
    wheel = "G1 X20 Y20\nG18 G2 X20 Z-1 I5 K0 P10000 F1200\nG17\n"
    checked = tried(HEAD + wheel + FOOT, TOOL, material="beech", stock=BLANK)
    (told,) = found(checked, "not-followed")
    assert (told.line, told.grade) == (8, "change")
    assert "too many turns" in told.happens


def test_the_bound_of_looks_at_keep_outs_is_a_finding(monkeypatch: pytest.MonkeyPatch) -> None:
    from gclint.facts import keep_outs

    job = 'material = "beech"\n[stock]\nsize = ["100 mm", "60 mm", "10 mm"]\ncorner = ["0 mm", "0 mm"]\n' + "".join(
        f'[[keep_out]]\nfrom = ["{90 + n} mm", "50 mm", "-10 mm"]\nto = ["{90.5 + n} mm", "60 mm", "9 mm"]\n'
        for n in range(4)
    )
    way = "".join(f"G1 X{20 + k % 2} F1200\n" for k in range(50))
    assert not found(tried(HEAD + way + FOOT, TOOL, job=job), "not-followed")
    monkeypatch.setattr(keep_outs, "MOST_LOOKS", 60)
    (told,) = found(tried(HEAD + way + FOOT, TOOL, job=job), "not-followed")
    assert "keep-out" in told.happens
    assert told.grade == "change"
    assert 5 < told.line < 57
