"""Times and speeds of moves on a machine with limited acceleration, against mechanics and plane geometry.

The formula stands beside each check; "reckoned" is arithmetic from it.
"""

from __future__ import annotations

import math

import numpy as np
import pytest

from gclint.motion.feed_planning import plan_feed
from gclint.motion.look_ahead import Planner
from gclint.tables.setup import Axes, Controller, Hold, Machine, Setup, Spindle
from gclint.tables.timing import Timing
from tests.motion.run import STATED, run


def timed(text: str, a: float, deviation: float = 0.01) -> Timing:
    machine = Machine(acceleration=Axes(a, a, a), corner_deviation=deviation)
    setup = Setup(machine, Spindle(), Controller(), {}, None, None, None, None, Hold())
    return plan_feed(run(STATED + "G0 X0 Y0 Z0\n" + text), setup)


# Trapezoid from rest to rest: v = a t and s = a t^2 / 2 up to the feed, level, and down again; reckoned.
@pytest.mark.parametrize(("distance", "seconds"), [(100, 2.100), (5, 0.200), (2, 0.1265)])
def test_trapezoid_from_rest_to_rest(distance: float, seconds: float) -> None:
    assert timed(f"G1 X{distance} F3000\n", 500).seconds[-1] == pytest.approx(seconds, abs=5e-5)


def test_fastest_of_a_short_move() -> None:
    """sqrt(a d), reckoned: 31.62 mm/s = 1897 mm/min over 2 mm at 500 mm/s2; 424 mm/min over 0.1 mm."""
    assert timed("G1 X2 F9000\n", 500).peak[-1] == pytest.approx(1897, abs=0.5)
    assert timed("G1 X0.1 F3000\n", 500).peak[-1] == pytest.approx(424, abs=0.5)


@pytest.mark.parametrize(("radius", "feed"), [(5, 3000), (1, 1342)])
def test_fastest_round_an_arc(radius: float, feed: float) -> None:
    """v = sqrt(a r), reckoned: 50 and 22.36 mm/s at 500 mm/s2. Long straight moves lead in and out."""
    text = f"G1 X100 F9000\nG2 X100 Y-{2 * radius} I0 J-{radius}\nG1 X0\n"
    timing = timed(text, 500)
    assert timing.peak[-2] == pytest.approx(feed, rel=5e-4)
    assert timing.reached[-2] == pytest.approx(feed, rel=5e-4)


# A corner with a deviation: the largest circle tangent to both moves that passes d from the corner has the radius
# r = d sin(angle / 2) / (1 - sin(angle / 2)), and v2 = a r; plane geometry, reckoned. Angles between the moves; 180 is
# straight on.
@pytest.mark.parametrize(("angle", "speed"), [(90, 3.474), (120, 5.685), (135, 7.790), (150, 11.905), (170, 36.18)])
def test_speed_through_a_corner(angle: float, speed: float) -> None:
    """One of the moves lies along an axis, so that the acceleration towards the centre is once that axis' own."""
    turn = math.radians(180 - angle)
    end = f"X{100 * math.sin(turn):.6f} Y{100 + 100 * math.cos(turn):.6f}"
    motion = run(STATED + f"G0 X0 Y0 Z0\nG1 Y100 F6000\n{end}\n")
    entry, bend, peak = (np.empty(4) for _ in range(3))
    rest, set_speed = np.zeros(4, np.uint8), np.full(3, 100.0)
    Planner(motion, rest, entry, bend, set_speed, peak, [500.0] * 3, [np.inf] * 3, [np.nan] * 3, 0.01, 0.25).run()
    assert math.sqrt(entry[2]) == pytest.approx(speed, rel=2e-4)


def test_straight_on_and_back() -> None:
    """180 degrees between two moves is no corner; a reversal is a stop."""
    split = timed("G1 X50 F3000\nX100\n", 500)
    assert split.seconds[-2:].sum() == pytest.approx(2.100, abs=5e-5)
    back = timed("G1 X50 F3000\nX0\n", 500)
    assert back.seconds[-2:] == pytest.approx([1.1, 1.1], abs=5e-5)


def test_without_acceleration_the_time_is_length_by_feed() -> None:
    """NIST RS274/NGC 2.1.2.16 knows no acceleration; its 5.3 has 2000 moves of 0.1 mm at 1000 mm/min in 12 s."""
    text = "G91\nG1 F1000\n" + "X0.1\n" * 2000
    setup = Setup(Machine(), Spindle(), Controller(), {}, None, None, None, None, Hold())
    plain = plan_feed(run(STATED + "G0 X0 Y0 Z0\n" + text), setup)
    assert plain.seconds[1:].sum() == pytest.approx(12.0)
    assert timed(text, 500).seconds[1:].sum() >= 12.0
