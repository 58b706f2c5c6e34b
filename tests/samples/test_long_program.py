"""A program of 100,000 lines, made here and never stored, goes the whole way."""

from __future__ import annotations

import numpy as np
import pytest

from gclint.check import check
from gclint.setup.declare import Options
from tests.bench.make_program import STEP, finishing_program, height

LINES = 100_000
SIDE = 64.0  # mm, a little more than the field that such a program covers


def surface(x: np.ndarray, y: np.ndarray) -> np.ndarray:
    return -1.8 + 0.9 * np.sin(x * 0.12) * np.cos(y * 0.09) + 0.6 * np.sin((x + y) * 0.31)


def volume_under_ball(
    radius: float, side: float, x0: float, x1: float, y0: float, y1: float, cell: float
) -> float:
    """Volume that a ball following the surface takes out of a block with its top at Z0, by brute force on a grid.

    The tip runs over `height` at every point of (0..side)^2; the block is x0..x1, y0..y1. mm3.
    """
    xs, ys = np.arange(x0 + cell / 2, x1, cell), np.arange(y0 + cell / 2, y1, cell)
    top = np.zeros((len(ys), len(xs)))
    reach = np.arange(-radius, radius + 1e-9, cell)
    for dx in reach:
        for dy in reach:
            if dx * dx + dy * dy > radius * radius + 1e-9:
                continue
            px, py = np.meshgrid(xs + dx, ys + dy)
            inside = (px >= 0) & (px <= side) & (py >= 0) & (py <= side)
            lift = radius - np.sqrt(max(0.0, radius * radius - dx * dx - dy * dy))
            top = np.where(inside, np.minimum(top, surface(px, py) + lift), top)
    return float(-top.sum() * cell * cell)


def test_the_oracle_knows_the_surface() -> None:
    x, y = np.array([0.0, 12.3]), np.array([0.0, 45.6])
    assert surface(x, y) == pytest.approx([height(*point) for point in zip(x, y)])


@pytest.mark.slow
def test_a_hundred_thousand_lines_are_read_cut_and_judged() -> None:
    data = finishing_program(LINES)
    assert data.count(b"\n") == LINES
    stock = f"{SIDE + 8} x {SIDE + 8} x 12 mm at -4 -4"
    options = Options(material="beech", tools=("1: ball 6mm 2fl up-cut",), stock=stock)
    checked = check(data, "relief.nc", options)
    assert checked.lines == LINES
    assert checked.units == "mm"
    assert not [f for f in checked.findings if f.rule == "internal-error"]
    (tool,) = checked.tools
    assert tool.cut_length_mm > 0.9 * STEP * LINES
    # Brute force falls short by the square of its cell (8170.5, 8283.5 and 8311.8 mm3 at 0.4, 0.2 and 0.1 mm): two of
    # them give the limit.
    coarse, fine = (volume_under_ball(3, 315 * STEP, -4, SIDE + 4, -4, SIDE + 4, cell) for cell in (0.4, 0.2))
    assert tool.removed_mm3 == pytest.approx(fine + (fine - coarse) / 3, rel=0.01)
