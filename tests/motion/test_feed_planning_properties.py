"""What holds of every plan, on random paths of straight moves and arcs."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st

from gclint.motion.feed_planning import plan_feed
from gclint.tables.motion import Motion
from gclint.tables.setup import Axes, Controller, Hold, Machine, Setup, Spindle
from gclint.tables.timing import Timing
from tests.motion.run import STATED, run

STEADY = settings(deadline=None, suppress_health_check=[HealthCheck.too_slow])  # nothing here is timed
FEED = 1800.0  # mm/min


def timed(motion: Motion, **machine: Any) -> Timing:
    return plan_feed(motion, Setup(Machine(**machine), Spindle(), Controller(), {}, None, None, None, None, Hold()))


# Steps (x, y, z, bulge): straight where bulge is 0, else an arc in the plane whose centre lies beside the chord.
STEP = st.tuples(
    st.integers(-3000, 3000), st.integers(-3000, 3000), st.integers(-500, 500), st.sampled_from([0, 0, 0, -1, 0.4, 2])
)
PATHS = st.lists(STEP, min_size=1, max_size=12)
ACCELERATIONS = st.tuples(*[st.floats(20, 2000)] * 3)


def text_of(steps: list[Any], feed: float = FEED) -> str:
    lines, x, y, z = [STATED + f"G0 X0 Y0 Z0\nG1 F{feed:g}"], 0, 0, 0
    for dx, dy, dz, bulge in steps:
        x, y, z = x + dx, y + dy, z + dz
        end = f"X{x / 1000:.3f} Y{y / 1000:.3f} Z{z / 1000:.3f}"
        if bulge and math.hypot(dx, dy) > 20:
            i, j = (dx / 2 - bulge * dy) / 1000, (dy / 2 + bulge * dx) / 1000
            lines.append(f"G{2 if bulge < 0 else 3} {end} I{i:.6f} J{j:.6f}")
        else:
            lines.append(f"G1 {end}")
    return "\n".join(lines) + "\n"


@STEADY
@given(PATHS, ACCELERATIONS, st.floats(0.002, 0.2))
def test_no_move_is_faster_than_its_feed_or_slower_than_standing(
    steps: list[Any], a: tuple[float, float, float], deviation: float
) -> None:
    motion = run(text_of(steps))
    timing = timed(motion, acceleration=Axes(*a), corner_deviation=deviation)
    cut = np.flatnonzero((motion.kind != 0) & (motion.length > 0))
    assert np.isfinite(timing.seconds[cut]).all()
    assert (timing.peak[cut] <= FEED * (1 + 1e-9)).all()
    assert (timing.reached[cut] <= timing.peak[cut] * (1 + 1e-9)).all()
    assert (timing.seconds[cut] * FEED / 60 >= motion.length[cut] * (1 - 1e-9)).all()
    # no slower than standing still at each end, under the weakest axis of all
    v, weak = FEED / 60, min(a)
    length = motion.length[cut]
    alone = np.where(length >= v * v / weak, length / v + v / weak, 2 * np.sqrt(length / weak))
    lines = motion.kind[cut] == 1
    assert (timing.seconds[cut][lines] <= alone[lines] * (1 + 1e-6) + 1e-9).all()


@STEADY
@given(PATHS, ACCELERATIONS, st.floats(1.1, 10))
def test_a_stronger_machine_is_never_slower(steps: list[Any], a: tuple[float, float, float], more: float) -> None:
    motion = run(text_of(steps))
    weak = timed(motion, acceleration=Axes(*a), corner_deviation=0.02)
    strong = timed(motion, acceleration=Axes(*(each * more for each in a)), corner_deviation=0.02)
    assert np.nansum(strong.seconds) <= np.nansum(weak.seconds) * (1 + 1e-9)


@STEADY
@given(PATHS, ACCELERATIONS)
def test_more_feed_is_never_slower(steps: list[Any], a: tuple[float, float, float]) -> None:
    slow, fast = (
        timed(run(text_of(steps, feed)), acceleration=Axes(*a), corner_deviation=0.02) for feed in (FEED, 2 * FEED)
    )
    assert np.nansum(fast.seconds) <= np.nansum(slow.seconds) * (1 + 1e-9)


@STEADY
@example([(-21, 6, 173), (3000, 250, -21)], (22, 20, 23))  # sharp and wide corner differ by rounding alone
@given(st.lists(st.tuples(*[st.integers(-3000, 3000)] * 3), min_size=1, max_size=12), ACCELERATIONS)
def test_the_way_back_takes_as_long(points: list[tuple[int, int, int]], a: tuple[float, float, float]) -> None:
    def there(way: list[tuple[int, int, int]]) -> float:
        moves = "".join(f"G1 X{x / 1000:.3f} Y{y / 1000:.3f} Z{z / 1000:.3f}\n" for x, y, z in way[1:])
        x, y, z = (each / 1000 for each in way[0])
        motion = run(STATED + f"G0 X{x:.3f} Y{y:.3f} Z{z:.3f}\nF{FEED:g}\n{moves}")
        return float(np.nansum(timed(motion, acceleration=Axes(*a), corner_deviation=0.02).seconds[1:]))

    way = [(0, 0, 0), *points]
    assert there(way) == pytest.approx(there(way[::-1]), rel=1e-6, abs=1e-9)


@STEADY
@given(PATHS, st.tuples(*[st.floats(100, 3000)] * 3))
def test_no_axis_is_faster_than_its_limit(steps: list[Any], limit: tuple[float, float, float]) -> None:
    motion = run(text_of(steps))
    timing = timed(motion, feed_limit=Axes(*limit))
    lines = np.flatnonzero((motion.kind == 1) & (motion.length > 0))
    ends = ((motion.x0, motion.x1), (motion.y0, motion.y1), (motion.z0, motion.z1))
    for (start, end), most in zip(ends, limit):
        share = np.abs(end[lines] - start[lines]) / motion.length[lines]
        assert (timing.peak[lines] * share <= most * (1 + 1e-9)).all()
