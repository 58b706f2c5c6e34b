"""What holds for every program: nothing crashes, tables are whole, moves join up."""

from __future__ import annotations

import numpy as np
from hypothesis import given, settings

from gclint.motion.interpret import interpret
from gclint.program.read import tabulate
from gclint.tables.motion import Motion
from gclint.tables.setup import Controller
from tests.motion.run import run
from tests.strategies import STEADY, Block, hostile, realistic, text


def joined(m: Motion) -> bool:
    """Every move starts where the one before it ended, wherever both are known."""
    for start, end in ((m.x0, m.x1), (m.y0, m.y1), (m.z0, m.z1)):
        gap = start[1:] - end[:-1]
        if not np.all(np.isnan(gap) | (gap == 0)):
            return False
    return True


@settings(STEADY, max_examples=300)
@given(hostile)
def test_any_words_are_interpreted(data: bytes) -> None:
    program = tabulate(data, "any")
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


@settings(STEADY, max_examples=60)
@given(realistic())
def test_moves_join_up(blocks: list[Block]) -> None:
    assert joined(run(text(blocks)))
