"""A window drawn as text: X on the side where the value lies, nearer or further."""

from __future__ import annotations

import pytest

from gclint.report.text.gauge import WIDTH, gauge


@pytest.mark.parametrize("value", [0.0, 0.01, 0.034])
def test_below_the_window(value: float) -> None:
    drawn = gauge(value, 0.035, 0.1)
    assert drawn.index("X") < drawn.index("[")


@pytest.mark.parametrize("value", [0.035, 0.06, 0.1])
def test_within_the_window(value: float) -> None:
    drawn = gauge(value, 0.035, 0.1)
    assert drawn.index("[") < drawn.index("X") < drawn.index("]")


@pytest.mark.parametrize("value", [0.11, 0.19, 5.0])
def test_above_the_window(value: float) -> None:
    drawn = gauge(value, 0.035, 0.1)
    assert drawn.index("]") < drawn.index("X")


def test_further_out_is_drawn_further_out() -> None:
    assert gauge(0.005, 0.035, 0.1).index("X") < gauge(0.03, 0.035, 0.1).index("X")
    assert gauge(0.11, 0.035, 0.1).index("X") < gauge(0.17, 0.035, 0.1).index("X")


def test_beyond_twice_the_high_limit_runs_off_the_line() -> None:
    assert gauge(0.5, 0.035, 0.1).endswith("X>")


def test_one_sided_windows() -> None:
    above = gauge(2.0, None, 0.5)
    assert above.index("0.5]") < above.index("X")
    within = gauge(0.2, None, 0.5)
    assert within.index("X") < within.index("0.5]")
    below = gauge(5.0, 10.0, None)
    assert below.index("X") < below.index("[10")


def test_nothing_is_drawn_without_a_window_or_a_number() -> None:
    assert gauge(1.0, None, None) == ""
    assert gauge(1.0, None, 0.0) == ""
    assert gauge(float("nan"), 1, 2) == ""
    assert gauge(float("inf"), 1, 2) == ""


@pytest.mark.parametrize(("low", "high"), [(0.035, 0.1), (8000.0, 24000.0), (-18.0, 0.0), (1.0, 1.0), (0.0, 0.0)])
def test_every_drawing_is_plain_and_short(low: float, high: float) -> None:
    for value in (-50.0, low, (low + high) / 2, high, 1e9):
        drawn = gauge(value, low, high)
        assert drawn.isascii()
        assert drawn.count("X") == 1
        assert len(drawn) <= WIDTH + 8
