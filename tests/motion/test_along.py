"""Places along moves, against the length and the radius of the path itself."""

from __future__ import annotations

import numpy as np
import pytest

from gclint.motion.along import point_at, points_at
from gclint.motion.interpret import interpret
from gclint.program.read import read
from gclint.tables.setup import Controller

ARCS = {
    "G17": ("G0 X10 Y0 Z0\n", "G17 G3 X-10 Y0 Z4 I-10 J0 F500\n", (0.0, 10.0, 2.0)),
    "G18": ("G0 X10 Y0 Z0\n", "G18 G2 X-10 Y4 Z0 I-10 K0 F500\n", (0.0, 2.0, 10.0)),
    "G19": ("G0 X0 Y10 Z0\n", "G19 G3 X4 Y-10 Z0 J-10 K0 F500\n", (2.0, 0.0, 10.0)),
}


@pytest.mark.parametrize("plane", ARCS)
def test_half_way_along_half_a_turn(plane: str) -> None:
    start, arc, expected = ARCS[plane]
    motion = interpret(read(f"G21 G90 G94 G54\n{start}{arc}M30\n".encode(), "arc.nc"), Controller())
    assert point_at(motion, 1, 0.5) == pytest.approx(expected, abs=1e-9)


def test_both_ends_and_the_way_between() -> None:
    motion = interpret(read(b"G21 G90 G94 G17 G54\nG0 X0 Y0 Z5\nG1 X10 Y20 Z-5 F500\nM30\n", "line.nc"), Controller())
    x, y, z = points_at(motion, np.array([1, 1, 1]), np.array([0.0, 0.25, 1.0]))
    assert x == pytest.approx([0, 2.5, 10])
    assert y == pytest.approx([0, 5, 20])
    assert z == pytest.approx([5, 2.5, -5])
