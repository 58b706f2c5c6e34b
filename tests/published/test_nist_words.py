"""Reading against the NIST RS274/NGC report (NISTIR 6556, 2000): section 3.3, lines, words and comments."""

from __future__ import annotations

import pytest

from gclint.faults import KINDS
from gclint.program.read import read
from gclint.tables.program import DELETED, Program


def words(text: str) -> list[tuple[str, float]]:
    program = read(text.encode(), "test")
    return [(chr(letter), float(value)) for letter, value in zip(program.word_letter, program.word_value)]


def kinds(program: Program) -> list[str]:
    return [KINDS[kind] for kind in program.faults.kind]


def test_white_space_counts_nowhere() -> None:
    """3.3: `g0x +0. 12 34y 7` is `g0 x+0.1234 y7`."""
    assert words("g0x +0. 12 34y 7") == words("g0 x+0.1234 y7") == [("G", 0.0), ("X", 0.1234), ("Y", 7.0)]


@pytest.mark.parametrize(
    ("text", "value"), [("X.5", 0.5), ("X5.", 5.0), ("X+.5", 0.5), ("X-0.25", -0.25), ("X007", 7.0)]
)
def test_numbers(text: str, value: float) -> None:
    """3.3.2.1: an optional sign, then digits with at most one point, at least one digit."""
    assert words(f"G1 {text}")[1] == ("X", pytest.approx(value, abs=1e-15))


@pytest.mark.parametrize("text", ["X.", "X", "X-", "X1.2.3", "X1.5e-3"])
def test_what_is_no_number(text: str) -> None:
    """3.3.2.1: a lone point is no number, and there is no exponent form."""
    assert kinds(read(f"G1 {text}\nG1 Y1".encode(), "test")) == ["number-unreadable"]


def test_order_of_a_block() -> None:
    """3.3: an optional `/`, then an optional N word, then the rest; the N word is no word of the block."""
    program = read(b"/N0010 G1 X1\nN20 G0\n", "test")
    assert program.block_number.tolist() == [10, 20]
    assert program.block_flags.tolist() == [DELETED, 0]
    assert bytes(program.word_letter) == b"GXG"


def test_comments_do_not_nest() -> None:
    """3.3.4: the first closing bracket ends a comment; what follows is read."""
    program = read(b"G1 (one (two) three) X1\n", "test")
    assert program.data[program.comment_start[0] : program.comment_end[0]] == b"one (two"
    assert kinds(program) == ["comment-leftover"]


def test_a_comment_must_close_on_its_line() -> None:
    """3.3.4."""
    assert kinds(read(b"G1 (one\nX1)\n", "test")) == ["comment-unclosed", "comment-leftover"]


def test_text_behind_the_second_percent_is_not_read() -> None:
    """3.1: where the first line is `%`, a second `%` ends the program and text after it is ignored."""
    program = read(b"%\nG1 X1\n%\nnot a program 1,2,3\n", "test")
    assert kinds(program) == []
    assert [bool(flags & 16) for flags in program.block_flags] == [False, True]


def test_longest_line() -> None:
    """3.3: 256 characters are a line, 257 are too many."""
    line = b"G1 X1 ("
    assert kinds(read(line + b"-" * (256 - len(line) - 1) + b")\n", "test")) == []
    program = read(line + b"-" * (257 - len(line) - 1) + b")\n", "test")
    assert kinds(program) == ["line-too-long"]
    assert program.faults.a.tolist() == [257.0]
