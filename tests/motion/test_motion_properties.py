"""What holds for every program: units do not matter, nothing crashes, moves join up."""

from __future__ import annotations

from decimal import Decimal

import numpy as np
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from gclint.motion.interpret import interpret
from gclint.motion.table import Motion
from gclint.program.read import tabulate
from gclint.setup.types import Controller
from tests.motion.run import run

STEADY = settings(deadline=None, suppress_health_check=[HealthCheck.too_slow])  # nothing here is timed

MM = st.integers(-2000, 2000).map(lambda n: n * Decimal("1.27"))  # a whole number of 0.05 in


@st.composite
def plain_lines(draw: st.DrawFn) -> list[list[tuple[str, Decimal | int]]]:
    """Blocks of lines and R arcs, lengths in mm."""
    lines: list[list[tuple[str, Decimal | int]]] = [[("G", 0), ("X", Decimal(0)), ("Y", Decimal(0)), ("Z", Decimal(5))]]
    for _ in range(draw(st.integers(1, 12))):
        words = [(axis, draw(MM)) for axis in draw(st.sets(st.sampled_from("XYZ"), min_size=1))]
        code = draw(st.sampled_from([0, 1, 2, 3, 90, 91]))
        if code in (2, 3):
            words.append(("R", Decimal(20000)))
        block: list[tuple[str, Decimal | int]] = [("G", code)]
        if code >= 90:
            block.append(("G", 1))
        lines.append(block + words)
    return lines


def text(lines: list[list[tuple[str, Decimal | int]]], scale: Decimal) -> str:
    out = []
    for block in lines:
        out.append(" ".join(f"{k}{v if k == 'G' else v / scale:f}" for k, v in block))
    return "\n".join(out)


@settings(STEADY)
@given(plain_lines())
def test_inches_and_millimetres_give_the_same_moves(lines: list[list[tuple[str, Decimal | int]]]) -> None:
    mm = run("G21 G90 G94 G17 G54 F254\n" + text(lines, Decimal(1)))
    inch = run("G20 G90 G94 G17 G54 F10\n" + text(lines, Decimal("25.4")))
    assert mm.kind.tolist() == inch.kind.tolist()
    for name in ("x0", "y0", "z0", "x1", "y1", "z1", "cu", "cv", "sweep", "length", "feed"):
        np.testing.assert_allclose(getattr(mm, name), getattr(inch, name), rtol=1e-9, atol=1e-6, err_msg=name)


def joined(m: Motion) -> bool:
    """Every move starts where the one before it ended, wherever both are known."""
    for start, end in ((m.x0, m.x1), (m.y0, m.y1), (m.z0, m.z1)):
        gap = start[1:] - end[:-1]
        if not np.all(np.isnan(gap) | (gap == 0)):
            return False
    return True


PIECES = st.sampled_from(
    ["G0", "G1", "G2", "G3", "G17", "G18", "G19", "G20", "G21", "G28", "G30", "G40", "G41", "G43", "G49", "G53", "G54",
     "G55", "G59.3", "G73", "G80", "G81", "G83", "G84", "G87", "G90", "G91", "G92", "G92.1", "G92.2", "G92.3", "G93",
     "G94", "G95", "G98", "G99", "G4", "G10", "G38.2", "G90.1", "M0",
     "M3", "M4", "M5", "M6", "M8", "X1", "X-2.5", "Y3",
     "Z-1", "Z4", "I1", "J-1", "K2", "R2", "R-3", "P1", "P2", "L2", "L20", "Q.5",
     "F100", "F0", "S500", "T1", "T2", "H1", "D1",
     "A90", "X1e5", "X,", "#1=2", "(", ")", "\n", "\n", "\n", "/"]
)  # fmt: skip


@settings(STEADY, max_examples=300)
@given(st.lists(PIECES, max_size=80))
def test_any_words_are_interpreted(pieces: list[str]) -> None:
    program = tabulate(" ".join(pieces).encode(), "any")
    m = interpret(program, Controller())
    rows = {len(getattr(m, name)) for name in Motion.__dataclass_fields__ if name in m_columns}
    assert rows == {len(m)}
    assert (np.diff(m.line) >= 0).all()
    assert (np.diff(m.event_line) >= 0).all()
    arcs = m.kind >= 2
    assert (m.sweep[~arcs] == 0).all()
    assert ((m.sweep[m.kind == 2] < 0) | np.isnan(m.sweep[m.kind == 2])).all()
    assert ((m.sweep[m.kind == 3] > 0) | np.isnan(m.sweep[m.kind == 3])).all()
    for line, start, end in zip(m.faults.line, m.faults.start, m.faults.end):
        assert program.line_start[line - 1] <= start < end <= program.line_start[line]


m_columns = ("line", "kind", "x0", "x1", "cu", "length", "feed", "spindle", "tool", "flags", "cycle", "feed_line")


@settings(STEADY)
@given(plain_lines())
def test_moves_join_up(lines: list[list[tuple[str, Decimal | int]]]) -> None:
    assert joined(run("G21 G90 G94 G17 G54 F254\n" + text(lines, Decimal(1))))
