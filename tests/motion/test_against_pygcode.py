"""Positions and modes, block by block, against a second reader: pygcode's own machine."""

from __future__ import annotations

import math
import warnings

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from tests.motion.run import STATED, run

STEADY = settings(deadline=None, suppress_health_check=[HealthCheck.too_slow])  # nothing here is timed

NUMBER = st.integers(-99999, 99999).map(lambda n: f"{n / 1000:.3f}")
SPINDLE = {1: "M03", -1: "M04", 0: "M05"}


@st.composite
def programs(draw: st.DrawFn) -> list[str]:
    """Blocks of straight moves and R arcs among changes of modes; one move per block, all axes known."""
    lines = ["G21 G90 G94 G17 G54", "M5 T1 M6 F100 S1000", "G0 X0 Y0 Z0"]
    for _ in range(draw(st.integers(1, 15))):
        words = draw(
            st.sets(st.sampled_from(["G90", "G91", "G17", "G18", "G19", "M3", "M4", "M5", "F", "S", "T"]), max_size=3)
        )
        for group in (("G90", "G91"), ("G17", "G18", "G19"), ("M3", "M4", "M5")):
            words -= set([w for w in group if w in words][1:])
        if "T" in words:
            words -= {"T"}
            lines.append(f"M5 T{draw(st.integers(1, 20))} M6")  # M5: only the report stops the spindle at M6
        out = [w + draw(st.integers(1, 9000).map(str)) if w in "FS" else w for w in sorted(words)]
        code = draw(st.sampled_from(["G0", "G1", "G1", "", "G2", "G3"]))
        axes = [axis + draw(NUMBER) for axis in sorted(draw(st.sets(st.sampled_from("XYZ"), min_size=1)))]
        if code in ("G2", "G3"):
            axes.append("R5000")
        elif not code and lines[-1].find("R") >= 0:
            code = "G1"
        lines.append(" ".join([*out, code, *axes]).strip())
    return lines


@pytest.mark.slow
@settings(STEADY, max_examples=60)
@given(programs())
def test_every_block_ends_in_the_same_place_and_mode(lines: list[str]) -> None:
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        import pygcode

        machine = pygcode.Machine()
        m = run("\n".join(lines))
        row_of = {int(line): row for row, line in enumerate(m.line)}
        for line, text in enumerate(lines, 1):
            row = row_of.get(line)
            if row is None and line > 2 and "M6" not in text:
                return  # an arc with no chord or a chord over its diameter: refused here, and the position is lost
            machine.process_block(pygcode.Line(text).block)
            if row is None:
                continue
            ours = (m.x1[row], m.y1[row], m.z1[row])
            assert ours == pytest.approx([machine.pos.values[axis] for axis in "XYZ"], abs=1e-6), (line, text)
            mode = str(machine.mode).split()
            assert f"G{m.kind[row]:02d}" in mode
            assert f"G{m.plane[row]}" in mode
            assert SPINDLE[int(m.spindle[row])] in mode, (line, text)
            assert m.speed[row] == pytest.approx(word(mode, "S"))
            assert m.tool[row] == word(mode, "T")
            if m.kind[row]:
                assert m.feed[row] == pytest.approx(word(mode, "F"))


def word(mode: list[str], letter: str) -> float:
    return next(float(w[1:]) for w in mode if w[0] == letter)


def test_units_and_offsets_by_hand() -> None:
    """pygcode keeps numbers over a change of units and has no known origins, so these are compared with plain sums."""
    m = run(STATED + "G0 X0 Y0 Z0\nG20 X1\nG91 X1\nG21 X1\n")
    assert m.x1.tolist() == pytest.approx([0, 25.4, 50.8, 51.8])
    assert not math.isnan(m.length[-1])
