"""Engagement angle against cos(phi) = 1 - 2 ae / D (El-Hofy, Fundamentals of Machining Processes, 2nd ed., p. 174)."""

from __future__ import annotations

import math

import numpy as np
import pytest

from gclint.stock.engage import engage
from gclint.tables.setup import Tool
from tests.stock.build import Path, box, setup

D = 6.0


@pytest.mark.parametrize("turned", [0.0, 17.0, 45.0, 90.0, 200.0])
@pytest.mark.parametrize(("share", "angle"), [(1.0, 180.0), (0.5, 90.0), (0.25, 60.0), (0.1, 36.87)])
def test_slot_half_quarter_and_tenth_immersion(share: float, angle: float, turned: float) -> None:
    c, s = math.cos(math.radians(turned)), math.sin(math.radians(turned))

    def at(x: float, y: float) -> tuple[float, float]:
        return 100.03 + x * c - y * s, 100.07 + x * s + y * c

    path = Path((*at(-30, 0), -2)).line(*at(30, 0))
    if share < 1:
        path.rapid(z=5).rapid(*at(-30, share * D)).rapid(z=-2).line(*at(30, share * D))
    found = engage(path.motion(), setup(Tool(1, "flat", D), stock=box((40, 160), (40, 160))))
    pieces = found.pieces
    cut = (pieces.move == len(path.rows) - 1) & (pieces.start > 0.2) & (pieces.end < 0.8)
    assert cut.sum() > 10
    assert angle == pytest.approx(math.degrees(math.acos(1 - 2 * share)), abs=0.01)
    assert np.median(pieces.angle[cut]) == pytest.approx(angle, rel=0.02)
    assert pieces.ae[cut].mean() == pytest.approx(share * D, rel=0.02)
    assert pieces.ap[cut] == pytest.approx(2.0, abs=0.01)


@pytest.mark.parametrize(
    ("tool", "ap", "diameter"),
    [
        # diameter in the cut: ball 2 sqrt(ap (D - ap)); V 2 ap tan(angle / 2);
        # bull-nose D - 2 r + 2 sqrt(2 r ap - ap^2)
        (Tool(1, "ball", D), 0.5, 2 * math.sqrt(0.5 * 5.5)),
        (Tool(1, "ball", D), 2.0, 2 * math.sqrt(2.0 * 4.0)),
        (Tool(1, "v", 12.0, angle=60.0), 3.0, 2 * 3.0 * math.tan(math.radians(30))),
        (Tool(1, "bull-nose", D, corner_radius=1.0), 0.5, 4 + 2 * math.sqrt(0.75)),
    ],
)
def test_a_slot_is_as_wide_as_the_tool_at_that_depth(tool: Tool, ap: float, diameter: float) -> None:
    found = engage(Path((-10, 20, -ap)).line(70, 23).motion(), setup(tool, stock=box((0, 60), (0, 40))))
    middle = (found.pieces.start > 0.3) & (found.pieces.end < 0.7)
    assert found.pieces.ap[middle] == pytest.approx(ap, rel=0.01)
    assert found.pieces.ae[middle].mean() == pytest.approx(diameter, rel=0.05)
    assert found.pieces.angle[middle].mean() == pytest.approx(180.0, abs=12.0)
