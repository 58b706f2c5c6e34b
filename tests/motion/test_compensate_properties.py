"""Whatever a program asks for under G41 and G42: no failure, no row lost, every value finite where its ends are."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from gclint.motion.interpret import interpret
from gclint.program.read import read
from gclint.tables.motion import COMPENSATED, OTHER_FRAME, Motion
from gclint.tables.setup import Controller
from tests.motion.compensated import compensated
from tests.motion.run import STATED

CODES = [
    *("G0", "G1", "G2", "G3", "G17", "G18", "G40", "G41", "G41", "G42", "G91", "G90", "G28", "G53", "G81", "G92"),
    *("G55", "G93", "G68", "G52", "D1", "D1", "D0", "D9", "D11", "T1", "M6", "F100", "I0", "J0", "R2", "R5", "M30"),
]
WORD = st.one_of(
    st.sampled_from(CODES),
    st.builds(lambda letter, value: f"{letter}{value}", st.sampled_from("XYZXYIJ"), st.integers(-12, 12)),
    st.builds(lambda letter, value: f"{letter}{value:.6f}", st.sampled_from("XYZIJR"), st.floats(-1e5, 1e5)),
)
PROGRAM = st.lists(st.lists(WORD, min_size=1, max_size=5).map(" ".join), min_size=1, max_size=25).map("\n".join)
HEAD = STATED + "T1 M6\nG0 X0 Y0 Z5\nG41 D1 G1 F100\n"


@pytest.mark.slow
@settings(max_examples=300, deadline=None)
@example("X-1\nX0\nX1 Y2.000000\nZ0\nX0", 4.0, "reads-ahead")  # straight down behind a move that does not fit
@given(PROGRAM, st.sampled_from([0.0, 0.01, 4.0, 30.0]), st.sampled_from(["reads-ahead", "report"]))
def test_any_program(body: str, diameter: float, rules: str) -> None:
    text = HEAD + body + "\n"
    before = interpret(read(text.encode(), "test"), Controller())
    after = compensated(text, max(diameter, 0.001), {11: diameter}, compensation_rules=rules)
    added = len(after) - len(before)
    assert 0 <= added <= len(before)
    assert (np.diff(after.event_move) >= 0).all()
    assert len(after.event_move) == len(before.event_move)
    assert sorted(set(after.line.tolist())) == sorted(set(before.line.tolist()))
    known = np.isfinite(after.x0) & np.isfinite(after.x1) & np.isfinite(after.y0) & np.isfinite(after.y1)
    flat = np.isfinite(after.z0) & np.isfinite(after.z1)
    assert (after.length[known & flat & (after.flags & COMPENSATED == 0)] >= 0).all()
    meets(after)


def meets(motion: Motion) -> None:
    """Two moves in one frame whose path is known meet."""
    for n in range(1, len(motion)):
        ends = (motion.x1[n - 1], motion.y1[n - 1], motion.x0[n], motion.y0[n])
        if (motion.flags[n - 1 : n + 1] & (COMPENSATED | OTHER_FRAME)).any() or not np.isfinite(ends).all():
            continue
        assert np.hypot(ends[2] - ends[0], ends[3] - ends[1]) < 2e-3, f"move {n} of line {motion.line[n]}"
