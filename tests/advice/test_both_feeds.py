"""A cutting feed that comes down takes the plunges with it: their limit is a share of it."""

from __future__ import annotations

from gclint.advice.edits import edited, edits_of
from gclint.check import check
from gclint.setup.declare import Options

PROGRAM = """G21 G90 G94 G17 G54
T1 M6
S5000 M3
G4 P4
G0 Z5
G0 X20 Y20
G1 Z-1 F330
G1 X100 F1000
G1 Y60
G0 Z5
M5
M30
"""
GIVEN = Options("birch-plywood", ("1: flat 2mm 2fl",), "120 x 80 x 8 mm at 0 0")


def test_the_plunge_is_set_with_the_cutting_feed() -> None:
    findings = check(PROGRAM.encode(), "try.nc", GIVEN, "try.nc").findings
    thick = next(finding for finding in findings if finding.rule == "chip-too-thick")
    assert "go down slower too" in thick.change.text
    assert {word.line for word in thick.change.set} == {7, 8}
    lines = PROGRAM.splitlines()
    for edit in edits_of(thick.change, dict(enumerate(lines, 1))):
        lines[edit.line - 1] = edited(lines[edit.line - 1], [edit])
    after = check("\n".join(lines).encode(), "try.nc", GIVEN, "try.nc").findings
    assert not {"chip-too-thick", "plunge-too-fast", "chip-too-thin"} & {finding.rule for finding in after}


def test_a_plunge_that_is_slow_enough_is_left() -> None:
    text = PROGRAM.replace("F330", "F100")
    findings = check(text.encode(), "try.nc", GIVEN, "try.nc").findings
    thick = next(finding for finding in findings if finding.rule == "chip-too-thick")
    assert {word.line for word in thick.change.set} == {8}
    assert "go down" not in thick.change.text
