"""What is left of the blank: bridges as wide as geometry says, pieces cut free, grooves not cut through."""

from __future__ import annotations

import numpy as np
import pytest

from gclint.stock.engage import engage
from gclint.stock.laps import laps_of, points_along
from gclint.stock.standing import Left, left_standing
from tests.stock.build import Path, box, flat, setup


def around(path: Path, low: tuple[float, float], high: tuple[float, float], z: float, lifts: list[tuple[float, float]],
           to: float = -9.0) -> Path:  # fmt: skip
    """A lap about a rectangle, lifted along its lower side from x over a length."""
    path.line(*low, z)
    for x, length in lifts:
        path.line(x).line(z=to).line(x + length).line(z=z)
    return path.line(high[0]).line(y=high[1]).line(low[0]).line(y=low[1])


def left(path: Path, radius: float = 3.0, thick: float = 12.0) -> Left:
    motion = path.motion()
    declared = setup(flat(2 * radius), stock=box((0.0, 100.0), (0.0, 80.0), thick))
    return left_standing(motion, engage(motion, declared), declared)


def start() -> Path:
    return Path((20.0, 20.0, 5.0))


@pytest.mark.parametrize("lift", [6.0, 7.0, 8.5, 11.0, 20.0])
@pytest.mark.parametrize("radius", [1.5, 3.0])
def test_a_bridge_is_one_diameter_shorter_than_its_lift(lift: float, radius: float) -> None:
    path = around(start(), (20, 20), (80, 60), -8.0, [])
    found = left(around(path, (20, 20), (80, 60), -12.2, [(40, lift)]), radius).lifts
    assert len(found) == 1
    assert found.length[0] == pytest.approx(lift, abs=0.6)
    assert found.bridge[0] == pytest.approx(max(0.0, lift - 2 * radius), abs=0.25)
    assert found.height[0] == pytest.approx(3.0, abs=0.01)


def test_a_piece_with_bridges_is_not_free_and_one_without_is() -> None:
    path = around(start(), (20, 20), (80, 60), -8.0, [])
    held = left(around(path, (20, 20), (80, 60), -12.2, [(40, 11)]))
    assert len(held.standing) == 0
    path = around(start(), (20, 20), (80, 60), -8.0, [])
    loose = left(around(path, (20, 20), (80, 60), -12.2, [])).standing
    assert len(loose) == 1
    assert loose.area[0] == pytest.approx(54 * 34, rel=0.02)
    assert loose.high[0] - loose.low[0] == pytest.approx([54, 34], abs=0.5)
    assert loose.height[0] == pytest.approx(12)
    assert not loose.at_edge[0]
    assert not loose.inside[0]
    assert loose.freed_by[0] == len(path.rows) - 1


def test_a_hole_s_slug_lies_inside_the_part_around_it() -> None:
    path = around(start(), (40, 30), (60, 50), -12.2, []).rapid(z=5).rapid(20, 20)
    found = left(around(path, (20, 20), (80, 60), -12.2, [(40, 11)])).standing
    assert len(found) == 1
    assert found.inside[0]
    assert found.area[0] == pytest.approx(14 * 14, rel=0.05)


def test_a_cut_across_the_blank_parts_it_and_the_larger_piece_is_the_rest() -> None:
    path = Path((30.0, -10.0, 5.0)).line(z=-12.2).line(y=90.0)
    found = left(path).standing
    assert len(found) == 1
    assert found.at_edge[0]
    assert found.area[0] == pytest.approx(27 * 80, rel=0.02)


@pytest.mark.parametrize(("z", "remains"), [(-11.0, 1.0), (-11.95, 0.0), (-12.3, 0.0)])
def test_what_is_left_under_a_lap(z: float, remains: float) -> None:
    grooves = left(around(start(), (20, 20), (80, 60), z, [])).grooves
    assert grooves.left.tolist() == [pytest.approx(remains, abs=0.01)]
    assert grooves.share[0] == pytest.approx(-z / 12)


def test_the_floor_of_a_pocket_is_no_groove() -> None:
    path = start()
    path.line(z=-11.0)
    for n in range(9):
        path.line(80.0 if n % 2 == 0 else 20.0).line(y=22.5 + 2.5 * n)
    around(path.line(20.0).line(y=20.0), (20, 20), (80, 42.5), -11.0, [])
    assert len(left(path).grooves) == 0


def test_nothing_near_the_underside_costs_nothing() -> None:
    found = left(around(start(), (20, 20), (80, 60), -8.0, []))
    assert len(found.standing) == len(found.lifts) == len(found.grooves) == 0


def test_laps_close_where_the_path_meets_itself() -> None:
    """A lead-in, a lap, a lead-out, then a circle about another centre; and a zigzag that never closes."""
    path = Path((40.0, 40.0, 5.0)).line(z=-2.0).line(30.0, 30.0)
    path.line(70.0).line(y=60.0).line(30.0).line(y=30.0).line(33.0, 33.0)
    path.rapid(z=5.0).rapid(20.0, 20.0).line(z=-2.0).arc((15.0, 20.0), 360.0)
    path.rapid(z=5.0).rapid(0.0, 0.0).line(z=-1.0).line(10.0).line(y=2.0).line(0.0).line(y=4.0).line(10.0)
    laps = laps_of(path.motion(), 0.0)
    assert laps.length.tolist() == [pytest.approx(140.0), pytest.approx(10 * np.pi)]
    assert laps.low.tolist() == [[30.0, 30.0], [pytest.approx(10.0), pytest.approx(15.0)]]
    points = points_along(path.motion(), laps, 1.0)
    assert points.step.sum() == pytest.approx(140 + 10 * np.pi)
    assert np.hypot(points.x[points.lap == 1] - 15, points.y[points.lap == 1] - 20) == pytest.approx(5.0)
