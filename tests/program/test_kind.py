"""What is refused as a file for something else, and the milling programs nearest to it that are not."""

from __future__ import annotations

import pytest

from gclint.problem import Problem
from gclint.program.read import read

PRINTER = "M104 S200\nM82\nG1 X1 Y1 E0.1\nG1 X2 E0.2\nG1 X3 E0.3\n"
LASER = "G21\nG0 X0 Y0\nM4 S0\nG1 X10 S300 F900\nG1 X20 S200\nG1 X30 S0\nM5\n"
LATHE = "G50 S2500\nT0101\nG96 S180 M3\nG0 X52 Z2\nG1 Z-30 F0.2\n"
PROSE = "Dear harbour master,\nthe boats are late.\nYours\n"


@pytest.mark.parametrize(
    ("text", "says"), [(PRINTER, "3D printer"), (LASER, "laser"), (LATHE, "lathe"), (PROSE, "hardly a line")]
)
def test_refused(text: str, says: str) -> None:
    with pytest.raises(Problem, match=says) as problem:
        read(text.encode(), "pier.nc")
    assert problem.value.line is not None


@pytest.mark.parametrize(
    "text",
    [
        "G21 M104 S200\nG1 X1 Y1 F100\n",  # a word of heaters without filament
        "G21\nM3 S10000\nG0 X0 Y0\nG1 X10 F500\nM5\n",  # no Z at all: set by hand
        "G21\nM3 S10000\nG1 X10 Z-1 F500\nG1 X20 S12000\nG1 X30 S14000\n",  # speeds on moves, but Z moves
        "G21\nG18\nG0 X0 Z2\nT1 M6\nG1 X10 Z-1 F100\n",  # no Y: a cut in one plane
        "(only a comment)\n",
        "%\n%\n",
        "G21\nG90\n",
        "SHEET: 12\nWIDTH: 4\nG21\nG1 X1 F100\nX2\nX3\n",
        "G1 X12,5\n",
        "#1=5\nG1 X#1\n",
    ],
)
def test_left_alone(text: str) -> None:
    assert read(text.encode(), "pier.nc").lines > 0
