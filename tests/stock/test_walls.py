"""Walls left between two straight cuts, whose thickness and height are known."""

from __future__ import annotations

import pytest

from gclint.stock.engage import engage
from gclint.stock.walls import Walls, thin_walls
from tests.stock.build import Path, box, flat, setup


def two_grooves(apart: float, z: float) -> Walls:
    """Two grooves of 6 mm side by side with `apart` mm between them, along X from 20 to 80."""
    path = Path((20.0, 20.0, 5.0)).line(z=z).line(80.0).rapid(z=5.0).rapid(20.0, 26.0 + apart).line(z=z).line(80.0)
    motion, declared = path.motion(), setup(flat(6.0), stock=box((0.0, 100.0), (0.0, 60.0), 18.0))
    return thin_walls(motion, engage(motion, declared))


@pytest.mark.parametrize("apart", [0.6, 0.8, 1.2])
def test_a_wall_between_two_grooves(apart: float) -> None:
    walls = two_grooves(apart, -10.0)
    assert len(walls) == 2  # seen at two heights
    assert walls.thickness == pytest.approx(apart, abs=0.2)
    assert walls.height.max() == pytest.approx(9.0, abs=0.1)
    assert walls.length == pytest.approx(63, abs=3)  # 60 and the round ends, between which it gets thicker


def test_a_thick_wall_and_a_low_one_are_none() -> None:
    assert len(two_grooves(3.0, -10.0)) == 0
    assert len(two_grooves(0.6, -2.5)) == 0
