"""Feeds and dial marks that the machine can run. Marks and bands are invented."""

from __future__ import annotations

import pytest

from gclint.cutting.advice import advise_chip, feed_for_chip
from gclint.setup.types import Axes, DialMark, Machine, Spindle

MARKS = tuple(DialMark(mark, speed, None) for mark, speed in zip("ABCDEF", (9500, 12500, 16000, 19500, 23000, 26500)))
DIAL = Spindle("dial", 9500, 26500, MARKS)
ROUTER = Machine(feed_limit=Axes(2500, 2500, 800))
COMMANDED = Spindle("commanded", 8000, 24000)


def test_feed_for_a_chip() -> None:
    assert feed_for_chip(0.035, 1.0, 2, 26500) == pytest.approx(1855.0)
    assert feed_for_chip(0.035, 0.5, 2, 26500) == pytest.approx(3710.0)


def test_a_dial_turned_too_high() -> None:
    """Dial F turns 26,500 where S says 18,000: 0.028 mm instead of 0.042; the band is 0.035 to 0.10."""
    fz = 1500 / 26500 / 2
    advice = advise_chip(True, fz, fz, 2, 26500, 1500, 0.035, 0.10, DIAL, ROUTER, "F")
    assert advice.text == "F1855 or more at dial F, or dial D with the feed as it is (chip 0.038 mm)"
    assert advice.feed is not None
    assert 1855 <= advice.feed <= 2500
    marks = [mark for mark, _ in advice.marks]
    assert marks[0] == "D"
    assert "E" not in marks  # 0.033: still too thin
    assert dict(advice.marks)["D"] == pytest.approx(0.03846, abs=1e-5)


def test_the_feed_lands_a_third_into_the_window() -> None:
    advice = advise_chip(True, 0.02, 0.02, 2, 10000, 400, 0.03, 0.09, COMMANDED, Machine())
    assert advice.feed == pytest.approx(1000.0)  # 0.05 mm
    advice = advise_chip(False, 0.2, 0.2, 2, 10000, 4000, 0.03, 0.09, COMMANDED, Machine())
    assert advice.feed == pytest.approx(1400.0)  # 0.07 mm
    assert advice.text == "F1800 or less"


def test_radial_thinning_asks_for_more_feed() -> None:
    advice = advise_chip(True, 0.02, 0.012, 2, 10000, 400, 0.03, 0.09, COMMANDED, Machine())
    assert advice.text == "F1000 or more"


def test_the_machines_limit_is_kept_and_the_speed_lowered() -> None:
    advice = advise_chip(True, 0.03, 0.03, 2, 24000, 1440, 0.06, 0.10, COMMANDED, ROUTER)
    assert (advice.feed, advice.speed) == (2500.0, 17000.0)
    assert 0.06 < advice.feed / advice.speed / 2 < 0.10


def test_nothing_the_machine_can_run() -> None:
    slow = Machine(feed_limit=Axes(300, 300, 100))
    advice = advise_chip(True, 0.01, 0.01, 2, 24000, 480, 0.06, 0.10, COMMANDED, slow)
    assert (advice.feed, advice.speed, advice.marks) == (None, None, ())
    assert "No feed" in advice.text
    advice = advise_chip(True, 0.01, 0.01, 2, 26500, 300, 0.06, 0.10, DIAL, slow, "F")
    assert (advice.feed, advice.marks) == (None, ())
    assert "no dial mark" in advice.text


def test_one_limit_is_enough() -> None:
    assert advise_chip(True, 0.02, 0.02, 2, 10000, 400, 0.04, None, COMMANDED, Machine()).feed == pytest.approx(1000)
    assert advise_chip(False, 0.2, 0.2, 2, 10000, 4000, None, 0.09, COMMANDED, Machine()).feed == pytest.approx(1200)


def test_inches_are_spoken_to_an_inch_program() -> None:
    advice = advise_chip(True, 0.02, 0.02, 2, 10000, 400, 0.0254, 0.0762, COMMANDED, Machine(), inch=True)
    assert advice.text == "F20 or more"


@pytest.mark.parametrize("bad", [{"fz": 0.0}, {"h": float("nan")}, {"speed": float("nan")}, {"flutes": 0}])
def test_unknowns_give_no_advice(bad: dict[str, float]) -> None:
    fz, h, flutes, speed = bad.get("fz", 0.02), bad.get("h", 0.02), bad.get("flutes", 2), bad.get("speed", 10000.0)
    advice = advise_chip(True, fz, h, int(flutes), speed, 400, 0.03, 0.09, COMMANDED, Machine())
    assert (advice.feed, advice.speed) == (None, None)
