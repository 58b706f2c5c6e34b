"""Reading: spans, line ends, flags, and what each kind of bad text becomes."""

from __future__ import annotations

import sys
from functools import reduce
from operator import xor

import pytest

from gclint.faults import KINDS
from gclint.problem import Problem
from gclint.program import read as room
from gclint.program.read import read
from gclint.tables.program import BEHIND_END, BROKEN, DELETED, EXPRESSION, FLOW, Program


def blocks(program: Program) -> list[tuple[int, int, str]]:
    """(line, flags, words as written)."""
    out = []
    for b, (line, flags) in enumerate(zip(program.block_line, program.block_flags)):
        words = range(program.block_word[b], program.block_word[b + 1])
        text = [program.data[program.word_start[w] : program.word_end[w]].decode() for w in words]
        out.append((int(line), int(flags), " ".join(text)))
    return out


def faults(program: Program) -> list[tuple[str, int, bytes]]:
    f = program.faults
    return [(KINDS[k], int(line), program.data[a:b]) for k, line, a, b in zip(f.kind, f.line, f.start, f.end)]


@pytest.mark.parametrize("end", ["\n", "\r\n", "\r"])
def test_line_ends(end: str) -> None:
    program = read(end.join(["G0 X1", "", "(pier)", "G1 Y2"]).encode(), "test")
    assert blocks(program) == [(1, 0, "G0 X1"), (4, 0, "G1 Y2")]
    assert program.lines == 4
    assert [program.line_text(n) for n in (1, 2, 3, 4)] == ["G0 X1", "", "(pier)", "G1 Y2"]


def test_mixed_line_ends_and_a_last_empty_line() -> None:
    program = read(b"G0\rG1\r\nG2 X1 I1\n\nG3 X1 I1\n", "test")
    assert [line for line, _, _ in blocks(program)] == [1, 2, 3, 5]
    assert program.lines == 5


def test_byte_order_mark_and_end_of_file_mark() -> None:
    program = read(b"\xef\xbb\xbfG0 X1\n\x1a", "test")
    assert blocks(program) == [(1, 0, "G0 X1")]
    assert len(program.faults) == 0


def test_columns_are_characters() -> None:
    for mark in ("", "\ufeff"):
        program = read(f"{mark}(Küste) X\nG1 X1\n".encode(), "test")
        assert program.place(int(program.faults.start[0])) == (1, 9)
        assert program.line_text(1) == "(Küste) X"


def test_latin_1_comment() -> None:
    program = read(b"(K\xfcste)\nG0 X1\n", "test")
    assert program.line_text(1) == "(Küste)"
    assert len(program.faults) == 0


def test_other_bytes_in_code() -> None:
    program = read("G1 X5 ü\nG1 X6\n".encode(), "test")
    assert faults(program) == [("character-unknown", 1, "ü".encode())]
    assert blocks(program)[0] == (1, 0, "G1 X5")  # the words beside it are clear


def test_decimal_comma_is_one_fault() -> None:
    program = read(b"G1 X12,5 Y3\nG1 X1,Y2\n", "test")
    assert faults(program) == [("number-unreadable", 1, b"X12,5"), ("character-unknown", 2, b",")]
    assert [flags for _, flags, _ in blocks(program)] == [BROKEN, BROKEN]


def test_running_text_is_one_fault_per_line() -> None:
    program = read(b"G1 X1\nchange tool now to 3 please\nEND of part\nDo not touch\nG1 X2\n", "test")
    assert faults(program) == [
        ("number-unreadable", 2, b"change"),
        ("number-unreadable", 3, b"END"),
        ("number-unreadable", 4, b"Do"),
    ]


def test_an_exponent_is_one_fault_and_an_e_word_is_none() -> None:
    program = read(b"G1 X1e3\nG1 X1E0.25\nG1 X1 E3\n", "test")
    assert faults(program) == [("number-unreadable", 1, b"X1e3")]
    assert [flags for _, flags, _ in blocks(program)] == [BROKEN, 0, 0]


@pytest.mark.parametrize(
    ("text", "span", "broken"),
    [
        ("(Pocket (2))", b")", False),
        ("G1 X1 )", b")", False),
        ("(a (b) and G1 X9) G1 X1", b" and G1 X9)", True),
    ],
)
def test_leftover_of_a_comment(text: str, span: bytes, broken: bool) -> None:
    program = read(f"{text}\nG1 X2\n".encode(), "test")
    assert faults(program) == [("comment-leftover", 1, span)]
    assert any(flags & BROKEN for _, flags, _ in blocks(program)) == broken


def test_nested_opening_bracket_alone_is_no_fault() -> None:
    assert faults(read(b"(a (b) G1 X1\n", "test")) == []


def test_semicolon_comment() -> None:
    program = read(b"G1 X1 ; to the (pier\n;G1 X2\n", "test")
    assert blocks(program) == [(1, 0, "G1 X1")]
    assert len(program.comment_line) == 2
    assert len(program.faults) == 0


def test_checksum_and_numbers() -> None:
    program = read(b"N10 G1 X1*57\nn20\nO1234 (NAME)\n:77\n", "test")
    assert blocks(program) == [(1, 0, "G1 X1")]
    assert program.block_number.tolist() == [10]


@pytest.mark.parametrize(("text", "wrong"), [(b"N3 G0 X8*%d", False), (b"N3 G0 X9*%d", True), (b"N3 G0 X8 *%d", True)])
def test_checksums_are_checked(text: bytes, wrong: bool) -> None:
    """The exclusive or of the bytes before the star (common practice of senders, no source)."""
    right = reduce(xor, b"N3 G0 X8")
    assert [kind for kind, _, _ in faults(read(text % right, "test"))] == ["checksum-wrong"] * wrong


def test_block_delete() -> None:
    program = read(b"/G1 X1\n/2 G1 X2\nN5 /G1 X3\n//free text G1\n", "test")
    assert [flags for _, flags, _ in blocks(program)] == [DELETED] * 4
    assert [kind for kind, _, _ in faults(program)] == ["block-unmoving"] * 3


def test_percent() -> None:
    program = read(b"(head)\n%\nO1\nG1 X1\n% G1 X9 out of use\nG1 X2\n%\nG1 X3\n", "test")
    assert blocks(program) == [(4, 0, "G1 X1"), (6, 0, "G1 X2"), (8, BEHIND_END, "G1 X3")]


def test_percent_amid_code() -> None:
    program = read(b"G1 X5 % remark\n", "test")
    assert faults(program) == [("character-unknown", 1, b"%")]
    assert blocks(program)[0][1] & BROKEN


@pytest.mark.parametrize(
    "text", ["#1=5", "G1 X#2", "G1 X[1+2]", "G1 X-[#1*2]", "G1 X SIN[30]", "X=R1", "#<depth>=-3", "G1 X##2"]
)
def test_expressions(text: str) -> None:
    program = read(f"G21\n{text}\nG0 X1\n".encode(), "test")
    assert [flags for _, flags, _ in blocks(program)] == [0, EXPRESSION, 0]
    assert [kind for kind, _, _ in faults(program)] == ["expression"]


def test_letters_named_by_an_expression_block_stay() -> None:
    program = read(b"G1 X#1 Y[2-[3]] Z5 F ABS[#2] (slot)\n", "test")
    assert bytes(program.word_letter) == b"GXYZF"
    assert [value != value for value in program.word_value] == [False, True, True, False, True]


@pytest.mark.parametrize(
    "text",
    [
        "O100 sub",
        "O100 call [1] [2]",
        "o<bore> call",
        "O1 if [#1 GT 2]",
        "M98 P100",
        "M99",
        "G65 P9000 A1",
        "IF [#1 EQ 2] GOTO 10",
        "WHILE [#1 LT 3] DO1",
        "END1",
        "GOTO 5",
    ],
)
def test_flow(text: str) -> None:
    program = read(f"G21\n{text}\nG0 X1\n".encode(), "test")
    assert [flags & FLOW for _, flags, _ in blocks(program)] == [0, FLOW, 0]
    assert faults(program) == [("flow", 2, text.encode())]


def test_numbers_are_correctly_rounded() -> None:
    texts = [
        "0.1",
        "123456.789",
        ".000123",
        "99999.99999",
        "3.14159265358979323846",
        "0.0000000000000000000000001",
        "12345678901234567890",
    ]
    program = read("".join(f"X{t}\n" for t in texts).encode(), "test")
    assert program.word_value.tolist() == [float(t) for t in texts]


def test_a_number_no_double_holds() -> None:
    program = read(b"G1 X" + b"9" * 400 + b"\n", "test")
    assert faults(program)[0][0] == "number-unreadable"


@pytest.mark.parametrize(
    ("data", "says"),
    [
        (b"", "empty"),
        (b" \r\n\t\n", "empty"),
        (b"G1 X1\0\n", "binary"),
        (bytes(range(1, 9)) * 9, "binary"),
        ("G1 X1\n".encode("utf-16"), "UTF-16"),
        ("G1 X1 Y2 Z3 F4\n".encode("utf-16-le") * 9, "UTF-16"),
        (bytes(4000), "zero bytes"),
        (bytes(64) + b"G1 X1\n", "zero bytes"),
        (b"G1 X1\nG1 X" + b"5" * 1_000_001, "characters"),
    ],
)
def test_what_is_no_program(data: bytes, says: str) -> None:
    with pytest.raises(Problem, match=says) as problem:
        read(data, "pier.nc")
    assert problem.value.path == "pier.nc"


def test_place_of_a_line_that_is_too_long() -> None:
    with pytest.raises(Problem) as problem:
        read(b"G1 X1\nG1 X2\n(" + b"-" * 2_000_000 + b")\n", "pier.nc")
    assert problem.value.line == 3


def test_largest_line_that_is_read() -> None:
    program = read(b"G1 X1\n(" + b"-" * (room.LONGEST_LINE - 2) + b")\nG1 X2\n", "test")
    assert program.lines == 3


def test_largest_file(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(room, "LARGEST", 10)
    assert read(b"G1 X12345\n", "test").lines == 1
    with pytest.raises(Problem, match="over 1 GiB"):
        read(b"G1 X123456\n", "test")


def test_a_kernel_that_is_not_built_is_one_sentence(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, "gclint.program.scan", None)
    with pytest.raises(Problem, match="scan is not built"):
        read(b"G0 X1\n", "test")
