"""What holds for any bytes: nothing crashes, spans lie in their line, white space and case mean nothing."""

from __future__ import annotations

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st

from gclint.problem import Problem
from gclint.program.read import read, tabulate
from gclint.tables.program import Program
from tests.strategies import STEADY, hostile


def in_its_line(program: Program, line: int, start: int, end: int) -> bool:
    return int(program.line_start[line - 1]) <= start <= end <= int(program.line_start[line])


@settings(STEADY, max_examples=400)
@given(hostile)
def test_any_bytes(data: bytes) -> None:
    program = tabulate(data, "any")
    assert program.line_start[-1] == len(data)
    assert (np.diff(program.line_start) > 0).all()
    assert (np.diff(program.block_line) > 0).all()
    assert program.block_word[-1] == len(program.word_letter)
    for b, line in enumerate(program.block_line):
        for w in range(program.block_word[b], program.block_word[b + 1]):
            assert in_its_line(program, line, program.word_start[w], program.word_end[w])
    for line, start, end in zip(program.comment_line, program.comment_start, program.comment_end):
        assert in_its_line(program, line, start, end)
    f = program.faults
    for line, start, end in zip(f.line, f.start, f.end):
        assert in_its_line(program, line, start, end)
        assert start < end


@settings(STEADY, max_examples=200)
@given(hostile)
def test_any_bytes_are_read_or_refused(data: bytes) -> None:
    try:
        read(data, "any")
    except Problem as refused:
        problem = refused
    else:
        return
    assert "\n" not in problem.says


NUMBER = st.decimals(-9999, 9999, places=4, allow_nan=False).map(lambda d: f"{d:f}")
WORD = st.tuples(st.sampled_from("XYZFSIJKRP"), NUMBER)
BLANK = st.sampled_from(["", " ", "\t", "  "])


@settings(STEADY)
@given(st.lists(st.lists(WORD, min_size=1, max_size=6), min_size=1, max_size=5), st.data())
def test_white_space_and_case_mean_nothing(lines: list[list[tuple[str, str]]], data: st.DataObject) -> None:
    plain = "\n".join("".join(letter + number for letter, number in line) for line in lines)
    spread = "".join(
        data.draw(BLANK) + (c.lower() if data.draw(st.booleans()) else c) if c != "\n" else c for c in plain
    )
    a, b = tabulate(plain.encode(), "a"), tabulate(spread.encode(), "b")
    assert bytes(a.word_letter) == bytes(b.word_letter)
    assert a.word_value.tolist() == b.word_value.tolist()
    assert a.block_word.tolist() == b.block_word.tolist()
    assert len(a.faults) == len(b.faults) == 0
    assert a.word_value.tolist() == [float(number) for line in lines for _, number in line]
