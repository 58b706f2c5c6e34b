"""Lines that differ only in their numbers, read by the kernel, against Python's own arithmetic on the same text."""

from __future__ import annotations

import random

import numpy as np
import pytest

from gclint.motion.interpret import interpret
from gclint.program.read import read
from gclint.tables.motion import Motion
from gclint.tables.setup import Controller

HEAD = "G21 G90 G94 G17 G54\nG0 X0 Y0 Z5\nF600\n"


def run(text: str) -> Motion:
    return interpret(read((HEAD + text + "M30\n").encode(), "forms"), Controller())


def number(chance: random.Random) -> str:
    whole = chance.randrange(1, 99)
    return chance.choice((f"{chance.uniform(0, 99):.3f}", f"{whole}", f"{whole}.", ".5"))


def test_every_line_of_a_form_has_its_own_numbers() -> None:
    chance = random.Random(4)
    lines, wanted = [], []
    for n in range(600):
        a, b, c, d = (number(chance) for _ in range(4))
        lines.append((
            f"G1 X[{a}+{b}*{c}] Y{d}",
            f"N{n} g1 x [ {a} + {b} * {c} ] (bend {n}) y{d} ; {n}",
            f"G1X[{a}+{b}*{c}]Y[-{d}]",
            f"#5={a}\nG1 X[#5+{b}*{c}] Y{d}",
        )[n % 4])
        wanted.append((float(a) + float(b) * float(c), -float(d) if n % 4 == 2 else float(d)))
    moved = run("\n".join(lines) + "\n")
    assert not moved.stopped_at
    assert not len(moved.faults)
    assert np.column_stack((moved.x1, moved.y1))[1:] == pytest.approx(np.array(wanted))


def test_a_code_that_calls_is_none_that_sets() -> None:
    """M98 P.. has the form of M3 S.., and G65 that of G1."""
    moved = run("M3 S[1+2]\nM3 S[2+2]\nM98 P[1+2]\n")
    assert moved.stopped_at == 6


def test_the_number_of_a_parameter_belongs_to_the_form() -> None:
    moved = run("#1=7\n#2=8\nG1 X[#1+0] Y1\nG1 X[#2+0] Y2\nG1 X[#1+1] Y3\n")
    assert moved.x1[1:].tolist() == [7, 8, 8]


def test_a_line_of_a_loop_is_kept_and_stays_what_it_was() -> None:
    text = "#1=0\nO1 while [#1 LT 5]\n#1=[#1+1]\nG1 X[#1*2] Y[1+0]\nG1 X[#1*3] Y[2+0]\nO1 endwhile\n"
    moved = run(text)
    assert moved.x1[1:].tolist() == [x for n in range(1, 6) for x in (2 * n, 3 * n)]
    assert moved.y1[1:].tolist() == [1, 2] * 5


def test_words_keep_their_places_in_the_text() -> None:
    told = run("G1 X[1+1] Q3\nG1   X[10.5+1]   Q3\n").faults
    text = HEAD + "G1 X[1+1] Q3\nG1   X[10.5+1]   Q3\n"
    spans = [text[start:end] for start, end in zip(told.start.tolist(), told.end.tolist())]
    assert spans == ["Q3", "Q3"]


def test_long_programs_of_one_form_are_followed_to_their_end() -> None:
    lines = "".join(f"G1 X[{n % 97}+{n % 7}] Y[{n}/1000]\n" for n in range(60_000))
    moved = run(lines)
    assert not moved.stopped_at
    assert len(moved) == 60_001
