"""Reading loses no byte: each belongs to exactly one word, comment or piece of frame, or stands where a fault says so.

What is what:
- a word: from its letter to behind its number;
- a comment: its text with the marks around it;
- frame: white space, line ends, a byte-order mark, '%', '/' and its number, the N word, a program number, a checksum;
- anything else lies in a block that is not plain (an expression, flow, unreadable text, or behind the closing '%') or
  inside the span of a fault.
"""

from __future__ import annotations

import re
from functools import reduce
from operator import xor

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from gclint.columns import Bytes
from gclint.faults import CODE
from gclint.program.read import tabulate
from gclint.tables.program import BEHIND_END, BROKEN, EXPRESSION, FLOW, Program
from tests.strategies import STEADY, Block, hostile, realistic, text

NUMBER = rb"[+-]?[0-9]*\.?[0-9]*"
FRAME = re.compile(rb"(\xef\xbb\xbf)?(/[0-9]?|%|[NO:]" + NUMBER + rb"|\*[0-9]*)*", re.IGNORECASE)
OPEN = BROKEN | EXPRESSION | FLOW | BEHIND_END
WIDE = [CODE["line-too-long"], CODE["block-unmoving"]]  # these faults span the whole line and explain no byte


def owners(program: Program) -> Bytes:
    """How many words and comments each byte belongs to."""
    owned = np.zeros(len(program.data), np.uint8)
    for start, end in zip(program.word_start, program.word_end):
        owned[start:end] += 1
    for start, end in zip(program.comment_start, program.comment_end):
        closed = program.data[start - 1 : start] == b"(" and program.data[end : end + 1] == b")"
        owned[start - 1 : end + closed] += 1
    return owned


def unexplained(program: Program) -> list[tuple[int, bytes]]:
    """(line, bytes) of all that is neither word, comment nor frame and that nothing accounts for."""
    owned = owners(program)
    for kind, start, end in zip(program.faults.kind, program.faults.start, program.faults.end):
        if kind not in WIDE:
            owned[start:end] = 1
    flags = dict(zip(program.block_line.tolist(), program.block_flags.tolist()))
    lost = []
    for line in range(1, program.lines + 1):
        if flags.get(line, 0) & OPEN:
            continue
        here = range(int(program.line_start[line - 1]), int(program.line_start[line]))
        left = bytes(program.data[n] for n in here if not owned[n] and program.data[n] not in b" \t\r\n\x1a\0")
        if not FRAME.fullmatch(left):
            lost.append((line, left))
    return lost


@pytest.mark.slow
@settings(STEADY, max_examples=1000)
@given(hostile)
def test_every_byte_of_any_text_is_accounted_for(data: bytes) -> None:
    program = tabulate(data, "any")
    assert owners(program).max(initial=0) <= 1
    assert unexplained(program) == []


DECORATIONS = st.sampled_from(["", "", " ", "\t", "(a comment)", "( )"])


@pytest.mark.slow
@settings(STEADY, max_examples=60)
@given(realistic(), st.data())
def test_a_realistic_program_is_words_comments_and_frame_alone(blocks: list[Block], data: st.DataObject) -> None:
    lines = text(blocks).splitlines()
    written = "%\nO1000 (A JOB)\n"
    for n, line in enumerate(lines):
        number = data.draw(st.sampled_from(["", f"N{n} "]))
        said = number + "".join(word + data.draw(DECORATIONS) for word in line.split())
        tail = data.draw(st.sampled_from(["", "; done", f"*{reduce(xor, said.encode())}"]))
        written += said + tail + "\r\n"
    program = tabulate((written + "%\n").encode(), "job")
    assert owners(program).max(initial=0) == 1
    assert unexplained(program) == []
    assert len(program.faults) == 0
    letters = [word[0] for line in lines for word in line.split()]
    assert bytes(program.word_letter).decode() == "".join(letters)


def test_a_byte_that_nothing_owns_would_be_noticed() -> None:
    program = tabulate(b"G1 X1\nG1 Y2\n", "test")
    for column in (program.word_start, program.word_end):
        column[1] -= 1
    assert owners(program).max() == 1
    assert unexplained(program) == [(1, b"1")]
