"""What is taken of a blank that nobody declared."""

from __future__ import annotations

import pytest

from gclint.check import run
from gclint.setup.declare import Options

HEAD = b"G21 G90 G94 G17 G54\nM3 S9000\n"
DOWN = b"G0 Z-20\nG0 X0 Y0\nG0 Z-0.5\nG1 Z1 F300\nG1 X30\nG0 Z-20\nG0 X40\nG0 Z-0.5\nG1 Z1\nG0 Z-20\nM30\n"
UP = b"G0 Z20\nG0 X0 Y0\nG0 Z0.5\nG1 Z-1 F300\nG1 X30\nG0 Z20\nG0 X40\nG0 Z0.5\nG1 Z-1\nG0 Z20\nM30\n"


@pytest.mark.parametrize(("cuts", "modelled"), [(UP, True), (DOWN, False)])
def test_a_program_that_counts_z_downward_has_no_blank_below_zero(cuts: bytes, modelled: bool) -> None:
    ran = run(HEAD + cuts, "gauge.nc", Options(material="oak", tools=("1: flat 6mm 2fl up-cut",)), None)
    assert ran.tables is not None
    assert (ran.tables.engagement.box is not None) == modelled
    assert not [f for f in ran.checked.findings if f.grade == "halt"]
    assert modelled or any("stock" in row.needs for row in ran.checked.not_judged if row.rule == "rapid-through-stock")


def test_one_travel_above_zero_is_enough_to_believe_it() -> None:
    cuts = b"G0 Z20\nG0 X0 Y0\nG1 Z-1 F300\nG1 X30\nG0 X60\nG1 Z0.5\nG0 Z20\nM30\n"
    ran = run(HEAD + cuts, "gauge.nc", Options(tools=("1: flat 6mm 2fl up-cut",)), None)
    assert "rapid-through-stock" in {f.rule for f in ran.checked.findings}
