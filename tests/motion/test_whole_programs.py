"""What holds for every realistic program: printed and read again, split and resumed, in inches, it moves the same."""

from __future__ import annotations

from dataclasses import fields

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from gclint.columns import Column
from gclint.motion.interpret import interpret
from gclint.program.read import tabulate
from gclint.tables.motion import Motion
from gclint.tables.program import BROKEN, DELETED, EXPRESSION, FLOW, Program
from gclint.tables.setup import Controller
from tests.motion.run import faults, run
from tests.strategies import AXES, STEADY, Block, hostile, realistic, text

OF_THE_RUN = {"faults", "stopped_at", "stopped_because", "ended", "assumed", "followed", "beside"}
COLUMNS = [f.name for f in fields(Motion) if f.name not in OF_THE_RUN]
MOVES = [name for name in COLUMNS if not name.endswith("line") and not name.startswith("event")]


def columns(motion: Motion, names: list[str], rows: slice = slice(None)) -> dict[str, Column]:
    return {name: getattr(motion, name)[rows] for name in names}


def assert_alike(ours: dict[str, Column], theirs: dict[str, Column], within: float) -> None:
    for name, column in ours.items():
        np.testing.assert_allclose(column, theirs[name], rtol=within, atol=within, err_msg=name)


# ---- printing and reading again


def printed(program: Program) -> str:
    """The words of a program, each block on its own line of the original; no comments, no numbers of blocks."""
    lines = [""] * program.lines
    for b, line in enumerate(program.block_line):
        if program.block_flags[b] & (EXPRESSION | FLOW | BROKEN):
            continue
        words = range(program.block_word[b], program.block_word[b + 1])
        said = (
            f"{chr(program.word_letter[w])}{np.format_float_positional(program.word_value[w], unique=True, trim='-')}"
            for w in words
        )
        lines[line - 1] = "/" * bool(program.block_flags[b] & DELETED) + " ".join(said)
    return "\n".join(lines) + "\n"


def same_when_printed(data: bytes) -> None:
    program = tabulate(data, "first")
    if (program.block_flags & (EXPRESSION | FLOW | BROKEN)).any():
        return
    again = tabulate(printed(program).encode(), "again")
    first, second = interpret(program, Controller()), interpret(again, Controller())
    for name in COLUMNS:
        np.testing.assert_array_equal(getattr(first, name), getattr(second, name), err_msg=name)
    assert faults(first) == faults(second)


@pytest.mark.slow
@settings(STEADY, max_examples=200)
@given(realistic(), st.booleans())
def test_a_realistic_program_printed_moves_the_same(blocks: list[Block], inch: bool) -> None:
    same_when_printed(text(blocks, inch).encode())


@settings(STEADY, max_examples=200)
@given(hostile)
def test_any_words_printed_move_the_same(data: bytes) -> None:
    same_when_printed(data)


# ---- splitting and resuming

MODAL = ((20, 21), (17, 18, 19), (94, 95), (98, 99))


def resuming(done: list[Block], motion: Motion) -> str:
    """Blocks that bring a machine to where `motion`, the moves of the blocks done so far, has left it."""
    codes = [int(number) for block in done for letter, number in block if letter == "G"]
    last = {letter: number for block in done for letter, number in block if letter in "SFT"}
    spindle = [int(number) for block in done for letter, number in block if letter == "M" and number in (3, 4, 5, 6)]
    place = " ".join(f"{axis}{getattr(motion, axis.lower() + '1')[-1]:.9f}" for axis in AXES)
    stated = [f"G{next((c for c in reversed(codes) if c in group), group[-1])}" for group in MODAL[1:]]
    motion_code = next((c for c in reversed(codes) if c in (0, 1, 2, 3, 80)), 0)
    lines = ["G21 G90 G54", f"T{last['T']} M6", f"G0 {place}", " ".join(stated)]
    lines.append(f"F{last['F']} S{last['S']}")
    turned = next((m for m in reversed(spindle) if m != 6), 5) if spindle[-1] != 6 else 5
    lines += [f"M{turned}", f"G{motion_code}", next(f"G{c}" for c in reversed(codes) if c in (90, 91))]
    return "\n".join(lines) + "\n"


def in_a_cycle(done: list[Block]) -> bool:
    codes = [int(number) for block in done for letter, number in block if letter == "G" and number not in (98, 99)]
    motion = [c for c in codes if c < 4 or 73 <= c < 90]
    return bool(motion) and motion[-1] not in (0, 1, 2, 3, 80)


@pytest.mark.slow
@settings(STEADY, max_examples=200)
@given(realistic(), st.data())
def test_splitting_and_resuming_gives_the_same_moves(blocks: list[Block], data: st.DataObject) -> None:
    places = [n for n in range(4, len(blocks) + 1) if not in_a_cycle(blocks[:n])]
    at = data.draw(st.sampled_from(places))
    whole = run(text(blocks))
    before = run(text(blocks[:at]))
    assert_alike(columns(before, MOVES), columns(whole, MOVES, slice(len(before))), 0.0)
    header = resuming(blocks[:at], before)
    rest = text(blocks[at:]).partition("\n")[2]
    after = run(header + rest)
    assert_alike(columns(after, MOVES, slice(1, None)), columns(whole, MOVES, slice(len(before), None)), 1e-6)
    assert len(after) - 1 == len(whole) - len(before)


# ---- units


@pytest.mark.slow
@settings(STEADY, max_examples=200)
@given(realistic())
def test_inches_and_millimetres_give_the_same_program(blocks: list[Block]) -> None:
    mm, inch = run(text(blocks)), run(text(blocks, inch=True))
    names = [name for name in MOVES if name != "flags"]
    assert_alike(columns(mm, names), columns(inch, names), 1e-6)
    assert faults(mm) == faults(inch)


@pytest.mark.slow
@settings(STEADY, max_examples=100)
@given(realistic())
def test_realistic_programs_are_without_fault(blocks: list[Block]) -> None:
    assert faults(run(text(blocks))) == []
