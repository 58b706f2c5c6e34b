"""Times: cuts at their set feed, rapids at the slowest axis, dwells in the controller's unit."""

from __future__ import annotations

import math

import pytest

from gclint.motion.pace import pace
from gclint.setup.types import Axes, Controller, Hold, Machine, Setup, Spindle
from tests.motion.run import STATED, run


def setup(rapid: Axes | None = None, dwell_unit: str = "s") -> Setup:
    return Setup(
        machine=Machine(rapid=rapid),
        spindle=Spindle(),
        controller=Controller(dwell_unit=dwell_unit),
        tools={},
        material=None,
        stock=None,
        z_zero=None,
        dial=None,
        hold=Hold(),
    )


def test_cut_at_its_set_feed() -> None:
    timing = pace(run(STATED + "G0 X0 Y0 Z0\nG1 X10 F600\nX20 F0\n"), setup())
    assert timing.reached[1] == pytest.approx(600)
    assert timing.seconds[1] == pytest.approx(1)
    assert math.isnan(timing.seconds[2])
    assert any("acceleration" in a.because for a in timing.assumed)


def test_rapid_is_as_slow_as_its_slowest_axis() -> None:
    m = run(STATED + "G0 X0 Y0 Z0\nX30 Y40\nZ-10\n")
    timing = pace(m, setup(Axes(3000, 2000, 1000)))
    assert timing.seconds[1:] == pytest.approx([1.2, 0.6])
    assert timing.reached[1:] == pytest.approx([2500, 1000])


def test_rapid_on_a_machine_that_is_not_declared() -> None:
    m = run(STATED + "G0 X0 Y0 Z0\nX30\nX30\n")
    assert [math.isnan(s) for s in pace(m, setup()).seconds] == [True, True, False]
    known = pace(m, setup(Axes(x=3000)))
    assert known.seconds[1] == pytest.approx(0.6)


@pytest.mark.parametrize(("unit", "seconds"), [("s", 2.5), ("ms", 0.0025)])
def test_dwell(unit: str, seconds: float) -> None:
    timing = pace(run(STATED + "G4 P2\nG4 P0.5\nG4\n"), setup(dwell_unit=unit))
    assert timing.dwell == pytest.approx(seconds)


def test_nothing() -> None:
    timing = pace(run("(empty)\n"), setup(Axes(1, 1, 1)))
    assert len(timing.seconds) == 0
