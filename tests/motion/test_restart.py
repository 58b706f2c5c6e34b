"""A program started again at a restart line, after the words that are told, does what the whole program did from there.

Oracle: the rest of the file behind those words, interpreted from nothing, against the moves of the whole file.
"""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from gclint.cards.controller import controller
from gclint.motion.interpret import interpret
from gclint.motion.restart import RestartLine, restart_lines, restart_moves
from gclint.program.read import read
from gclint.tables.motion import RAPID, Motion

SAMPLES = sorted(
    path for path in Path("sample_programs").glob("*/*") if path.suffix in (".nc", ".tap", ".gcode")
)
COLUMNS = ("kind", "x1", "y1", "z1", "feed", "speed", "spindle", "tool", "sweep")


def motion_of(data: bytes) -> Motion:
    return interpret(read(data, "try.nc"), controller("any"))


def lines_of(data: bytes, top: float | None = 0.0) -> tuple[list[int], str]:
    moves, why = restart_moves(read(data, "try.nc"), motion_of(data), top)
    return motion_of(data).line[moves].tolist(), why


def told(data: bytes, changes_tools: bool = True) -> tuple[RestartLine, ...]:
    program, motion = read(data, "try.nc"), motion_of(data)
    return restart_lines(program, motion, restart_moves(program, motion, 0.0)[0], changes_tools)


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_what_follows_is_what_the_whole_program_does(path: Path) -> None:
    data = path.read_bytes()
    program, whole = read(data, path.name), motion_of(data)
    moves, why = restart_moves(program, whole, 0.0)
    if whole.followed is not None:
        assert not len(moves)
        assert why
    for each in restart_lines(program, whole, moves[:6], True):
        text = data.splitlines()
        again = motion_of("\n".join(each.words).encode() + b"\n" + b"\n".join(text[each.line - 1 :]) + b"\n")
        first = int(np.searchsorted(again.line, len(each.words) + 1))
        assert len(again) - first == len(whole) - each.move
        for name in COLUMNS:
            assert np.allclose(
                getattr(again, name)[first:].astype(float), getattr(whole, name)[each.move :].astype(float),
                atol=1e-3, equal_nan=True,
            ), f"{name} from line {each.line}"  # fmt: skip
        assert (again.x0[first], again.y0[first], again.z0[first]) == pytest.approx(each.start, abs=1e-3)


HEAD = b"G21 G90 G94 G17 G54\nT1 M6\nM3 S16000\nG0 Z5\nX10 Y10\nG1 Z-1 F300\nX40 F900\n"


def test_the_first_line_above_the_stock_between_two_cuts() -> None:
    lines, why = lines_of(HEAD + b"G0 Z5\nX50\nY50\nG1 Z-1 F300\nX80 F900\nG0 Z5\nX0 Y0\nM30\n")
    assert (lines, why) == ([9], "")  # not the start, not the way home, and one line for one stretch


def test_an_arc_a_cycle_and_relative_lines_are_no_place_to_start() -> None:
    assert lines_of(HEAD + b"G0 Z5\nG91\nX5\nG90\nG1 Z-1 F300\nX80\nG0 Z5\nM30\n")[0] == []
    assert lines_of(HEAD + b"G0 Z5\nG81 X50 Y50 Z-1 R2 F100\nX60\nG80\nG1 Z-1 F300\nG0 Z5\nM30\n")[0] == []


def test_no_place_where_the_tool_is_offset() -> None:
    beside = b"G0 Z5\nG41 D1\nX50\nY50\nG1 Z-1 F300\nX80 F900\nG40\nG0 Z5\nX90\nG1 Z-1\nX99\nG0 Z5\nM30\n"
    assert lines_of(HEAD + beside)[0] == [16]


def test_why_there_is_none() -> None:
    own_zero = HEAD + b"G0 Z5\nX50\nG1 Z-1 F300\nX60\nG0 Z5\nG92 X0\nX10\nG1 Z-1\nX20\nG0 Z5\nM30\n"
    lines, why = lines_of(own_zero)
    assert lines == [9]
    assert "line 13" in why
    assert lines_of(HEAD, None) == ([], "where the stock's top lies is not known")
    looped = HEAD + b"G0 Z5\n#1=2\nO100 WHILE [#1 GT 0]\n#1=[#1-1]\nO100 ENDWHILE\nX50\nG1 Z-1\nG0 Z5\nM30\n"
    assert "loops" in lines_of(looped)[1]
    assert lines_of(b"G21 G90\nM30\n") == ([], "nothing moves")


def test_words_are_told_in_the_units_of_the_line_and_what_never_moved_is_left_out() -> None:
    inch = HEAD.replace(b"G21", b"G20").replace(b"G0 Z5", b"G0 Z0.2") + b"G0 Z0.2\nX50\nG1 Z-1 F30\nX60\nG0 Z5\nM30\n"
    (each,) = told(inch)
    assert each.inch
    assert each.words == ("G20 G90 G17 G94 G54", "T1 M6", "S16000 M3", "F900", "G0 Z0.2", "X40 Y10", "G0")
    (same,) = told(inch, changes_tools=False)
    assert not any(word.startswith("T") for word in same.words)


def test_travel_written_as_slow_cuts_is_travel() -> None:
    slow = HEAD + b"G1 Z5 F900\nG1 X50\nG1 Z-1 F300\nG1 X60\nG1 Z5\nM30\n"
    assert lines_of(slow)[0] == [9]
    assert bool((motion_of(slow).kind != RAPID).any())
