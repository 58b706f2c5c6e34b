"""Times: cuts at their set feed, rapids at the slowest axis, dwells in the controller's unit."""

from __future__ import annotations

import math

import pytest
from msgspec.structs import replace

from gclint.motion.feed_planning import plan_feed
from gclint.tables.setup import Axes, Controller, Hold, Machine, Setup, Spindle
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
    timing = plan_feed(run(STATED + "G0 X0 Y0 Z0\nG1 X10 F600\nX20 F0\n"), setup())
    assert timing.reached[1] == pytest.approx(600)
    assert timing.seconds[1] == pytest.approx(1)
    assert math.isnan(timing.seconds[2])
    assert any("acceleration" in a.because for a in timing.assumed)


def test_rapid_is_as_slow_as_its_slowest_axis() -> None:
    m = run(STATED + "G0 X0 Y0 Z0\nX30 Y40\nZ-10\n")
    timing = plan_feed(m, setup(Axes(3000, 2000, 1000)))
    assert timing.seconds[1:] == pytest.approx([1.2, 0.6])
    assert timing.reached[1:] == pytest.approx([2500, 1000])


def test_rapid_on_a_machine_that_is_not_declared() -> None:
    m = run(STATED + "G0 X0 Y0 Z0\nX30\nX30\n")
    assert [math.isnan(s) for s in plan_feed(m, setup()).seconds] == [True, True, False]
    known = plan_feed(m, setup(Axes(x=3000)))
    assert known.seconds[1] == pytest.approx(0.6)


@pytest.mark.parametrize(("unit", "seconds"), [("s", 2.5), ("ms", 0.0025)])
def test_dwell(unit: str, seconds: float) -> None:
    timing = plan_feed(run(STATED + "G4 P2\nG4 P0.5\nG4\n"), setup(dwell_unit=unit))
    assert timing.dwell == pytest.approx(seconds)


def test_exact_stop_and_exact_path() -> None:
    """G61.1 stops after every move, G61 only where the path turns, G64 rounds corners (NIST RS274/NGC 3.5.14)."""
    machine = Machine(acceleration=Axes(500, 500, 500), corner_deviation=0.02)
    ways = "G0 X0 Y0 Z0\nG1 F3000\n{mode}\nX50\nX100\nY100\n"
    took = {
        mode: plan_feed(run(STATED + ways.format(mode=mode)), replace(setup(), machine=machine)).seconds[1:].sum()
        for mode in ("G61.1", "G61", "G64", "")
    }
    assert took["G61.1"] == pytest.approx(1.1 + 1.1 + 2.1)
    assert took["G61"] == pytest.approx(2.1 + 2.1)
    assert took["G64"] < took["G61"]
    assert took["G64"] == pytest.approx(took[""])


def test_what_brings_the_machine_to_rest() -> None:
    machine = Machine(acceleration=Axes(500, 500, 500))
    for word in ("G4 P1", "M0", "M3 S9000", "M5"):
        motion = run(STATED + f"G0 X0 Y0 Z0\nG1 F3000\nX50\n{word}\nX100\n")
        timing = plan_feed(motion, replace(setup(), machine=machine))
        assert timing.seconds[1:] == pytest.approx([1.1, 1.1])
    going = plan_feed(run(STATED + "G0 X0 Y0 Z0\nG1 F3000\nX50\nM8\nX100\n"), replace(setup(), machine=machine))
    assert going.seconds[1:].sum() == pytest.approx(2.1)


def test_what_is_taken_is_listed() -> None:
    motion = run(STATED + "G0 X0 Y0 Z0\nM3 S9000\nG1 X10 F600\nM0\n")
    bare = replace(setup(), machine=Machine(acceleration=Axes(x=200, y=200)), spindle=Spindle(spin_up=4))
    assert {a.what for a in plan_feed(motion, bare).assumed} == {
        "acceleration of Z", "corner deviation", "time at tool changes and stops", "time for the spindle to start",
    }  # fmt: skip
    full = replace(setup(), machine=Machine(acceleration=Axes(200, 200, 200), corner_deviation=0.02))
    assert not plan_feed(run(STATED + "G1 X10 F600\n"), full).assumed


def test_a_feed_limit_counts_without_acceleration_too() -> None:
    limits = replace(setup(), machine=Machine(feed_limit=Axes(2500, 2500, 800)))
    timing = plan_feed(run(STATED + "G0 X0 Y0 Z0\nG1 X10 F3000\nZ-5\nX20 Y10\n"), limits)
    assert timing.peak[1:] == pytest.approx([2500, 800, 3000])
    assert timing.reached[1:] == pytest.approx([2500, 800, 3000])


def test_nothing() -> None:
    timing = plan_feed(run("(empty)\n"), setup(Axes(1, 1, 1)))
    assert len(timing.seconds) == 0
