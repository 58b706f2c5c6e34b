"""Slots cut level by level: a level meets what the level above left, though rounding shifts each lap a little."""

from __future__ import annotations

import numpy as np
import pytest

from gclint.check import run
from gclint.setup.declare import Options

LEVELS = (1.5, 3.0, 4.5, 5.0)


@pytest.mark.parametrize("shift", [0.0, 0.001])
def test_a_level_meets_what_the_level_above_left(shift: float) -> None:
    lines = ["G21 G90 G94 G17 G54", "M3 S16000", "G0 Z5"]
    for n, depth in enumerate(LEVELS):
        aside = shift * (-1) ** n
        lines += [f"G0 X{10 + aside:.3f} Y10", f"G1 Z-{depth} F400"]
        lines += [f"G1 X{47 + aside:.3f} Y{71.137 - aside:.3f} F1200"]
        lines += [f"G1 X{80 - aside:.3f} Y20", "G0 Z5"]
    ran = run(
        "\n".join([*lines, "M30"]).encode(),
        "levels.nc",
        Options(material="birch-plywood", tools=("1: flat 3.175mm 2fl down-cut",), stock="100 x 90 x 12 mm at 0 0"),
        None,
    )
    assert ran.tables is not None
    pieces, move = ran.tables.engagement.pieces, ran.tables.motion
    level = -move.z1[pieces.move]
    sideways = pieces.travel > 0
    for depth, above in zip(LEVELS, (0.0, *LEVELS)):
        at = sideways & (np.abs(level - depth) < 1e-6)
        assert at.any()
        assert np.quantile(pieces.ap[at], 0.95) == pytest.approx(depth - above, rel=0.05)
    assert "full-width-too-deep" not in {f.rule for f in ran.checked.findings}
