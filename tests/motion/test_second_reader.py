"""The second reader finds what is wrong in our tables, and holds nothing against us that it cannot know."""

from __future__ import annotations

import sys
from dataclasses import replace

import numpy as np
import pytest

from gclint.motion import second_reader
from gclint.motion.interpret import interpret
from gclint.motion.second_reader import Compared, read_again
from gclint.problem import Problem
from gclint.program.read import read
from gclint.tables.setup import Controller

PROGRAM = """G21 G90 G94 G17 G54
T1 M6
M3 S12000
G0 X1 Y2 Z3
G1 X5 F100
G2 X7 I1
M5
M30
"""


def again(text: str | bytes) -> Compared:
    program = read(text if isinstance(text, bytes) else text.encode(), "test")
    return read_again(program, interpret(program, Controller()))


def reasons(compared: Compared) -> list[str]:
    return [*compared.words_not_compared, *compared.ends_not_compared]


def test_nothing_differs() -> None:
    compared = again(PROGRAM)
    assert compared.differences == []
    assert (compared.blocks, compared.words, compared.moving, compared.ends) == (8, 8, 3, 3)
    assert reasons(compared) == []


@pytest.mark.parametrize(
    ("column", "value", "what", "theirs"),
    [
        ("x1", 5.5, "end X", "5 mm"), ("y1", 2.1, "end Y", "2 mm"), ("z1", 3.00001, "end Z", "3 mm"),
        ("feed", 101, "feed", "F100"), ("speed", 1200, "speed", "S12000"), ("kind", 0, "motion", "G1"),
        ("plane", 18, "plane", "G17"), ("flags", 4, "units", "G21"), ("flags", 64, "feed mode", "G94"),
        ("offset", 550, "work offset", "G54"), ("spindle", 0, "spindle", "M3"), ("tool", 3, "tool", "T1"),
    ],
)  # fmt: skip
def test_a_planted_difference_is_listed(column: str, value: float, what: str, theirs: str) -> None:
    program = read(PROGRAM.encode(), "test")
    motion = interpret(program, Controller())
    wrong = getattr(motion, column).copy()
    wrong[1] = value
    compared = read_again(program, replace(motion, **{column: wrong}))
    first = compared.differences[0]
    assert (first.line, first.what, first.theirs) == (5, what, theirs)


def test_a_planted_word_is_listed() -> None:
    program = read(PROGRAM.encode(), "test")
    motion = interpret(program, Controller())
    value, letter = program.word_value.copy(), program.word_letter.copy()
    value[10] += 1  # X1 of line 4
    letter[18] = ord("J")  # I1 of line 6
    compared = read_again(replace(program, word_value=value, word_letter=letter), motion)
    assert [(d.line, d.what, d.ours, d.theirs) for d in compared.differences] == [
        (4, "words", "G0 X2 Y2 Z3", "G0 X1 Y2 Z3"),
        (6, "words", "G2 X7 J1", "G2 X7 I1"),
    ]


def test_a_lost_word_is_listed() -> None:
    program = read(b"G1 X1\nY2\n", "test")
    shorter = replace(program, block_word=np.array([0, 1, 3], np.int32))
    assert [d.line for d in read_again(shorter, interpret(program, Controller())).differences] == [1, 2]


@pytest.mark.parametrize(
    ("line", "why"),
    [
        ("X+5", second_reader.NUMBER), ("X1 0", second_reader.NUMBER), ("X- 5", second_reader.NUMBER),
        ("X5 (a;b)", second_reader.COMMENT), ("X5 (50%)", second_reader.COMMENT), ("X5 (", second_reader.COMMENT),
        ("X5*71", second_reader.MARK), ("O7 X5", second_reader.MARK), ("X5" + " " * 1000, second_reader.LONG),
        ("/X5", second_reader.SKIPPED), ("X[1+1]", second_reader.NOT_PLAIN), ("X1.2.3", second_reader.UNREADABLE),
        ("G81 Z-1 R1", second_reader.CYCLES), ("G53 Z0", second_reader.HOMES), ("G28 Z0", second_reader.HOMES),
        ("G38.2 Z-5", second_reader.PROBES), ("G92 X0", second_reader.FRAMES), ("G55 X0", second_reader.FRAMES),
        ("G187 P1", second_reader.REFUSED), ("G2 X90 R1", second_reader.OURS_REFUSED), ("G4 X2", second_reader.DWELLS),
    ],
)  # fmt: skip
def test_what_cannot_be_compared_is_counted_and_the_rest_agrees(line: str, why: str) -> None:
    compared = again(PROGRAM.replace("G2 X7 I1\n", f"{line}\nG1 X7 Y8\nG91 X1\n"))
    assert compared.differences == []
    if line not in ("G187 P1", "G4 X2", "G92 X0") and why != second_reader.OURS_REFUSED:  # these do not move
        assert reasons(compared)[0] == why


def test_units_are_changed_for_it_and_order_within_a_block_means_nothing() -> None:
    changed = "G20 G1 X1\nG91 X1\nG21 X1\nX1 F50 G90\nX3 Y2 I1 G3\nG93 G1 X9 F3\n"
    compared = again(PROGRAM.replace("G2 X7 I1\n", changed))
    assert compared.differences == []
    assert compared.ends == compared.moving == 8


@pytest.mark.parametrize("ending", ["\r\n", "\r", ";\n", " \n"])
def test_line_ends_of_every_kind(ending: str) -> None:
    compared = again(("\ufeff" + PROGRAM).replace("\n", ending).encode())
    assert compared.differences == []
    assert compared.words == 8


def test_tools_are_compared_where_both_know_them() -> None:
    two = PROGRAM.replace("G2 X7 I1\n", "T2\nG1 X6\nM6\nG1 X7 F9\nT3 M6\nM3 X8\n")
    assert again(two).differences == []


def test_blocks_with_parameters_are_passed_over_and_the_rest_agrees() -> None:
    compared = again(PROGRAM.replace("G2 X7 I1\n", "#1=3\nG1 X#1 F[#1*9] S#1\nM4 S#1\nX8\nG0 Z9\nG1 X2 F300 S500\n"))
    assert compared.differences == []
    assert compared.ends == 5
    assert compared.ends_not_compared[second_reader.NOT_PLAIN].blocks == 1


def test_behind_a_loop_only_words_are_compared() -> None:
    loop = "O1 repeat [2]\nG91 G1 X1\nO1 endrepeat\nG90 X9\n"
    compared = again(PROGRAM.replace("G2 X7 I1\n", loop))
    assert compared.differences == []
    assert (compared.ends, compared.ends_not_compared[second_reader.FLOWS].blocks) == (2, 2)


def test_a_bound_is_told(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(second_reader, "MOST_BLOCKS", 5)
    compared = again(PROGRAM)
    assert (compared.blocks, compared.left_out) == (5, 3)


def test_it_is_not_installed(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, "pygcode", None)
    with pytest.raises(Problem, match=r"pip install 'gclint\[second-reader\]'"):
        again(PROGRAM)
