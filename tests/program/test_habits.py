"""One test for each habit of the table in rules/controllers/HABITS.md: what is understood and what is reported."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from gclint.check import check, trace
from gclint.problem import Problem
from gclint.setup.declare import Options
from gclint.tables.finding import Checked

TABLE = Path(__file__).resolve().parents[2] / "rules" / "controllers" / "HABITS.md"
HEAD = b"G21 G90 G94 G17 G54\nM3 S16000\nG0 X0 Y0 Z5\n"
END = b"\nG0 Z5\nM5\nM30\n"
MILD = {"never-cuts", "z-zero-suspect", "tool-not-declared"}  # what a program of a few lines in the air says anyhow

# habit: (lines, ends of the moves between the first and the last, rules with findings)
CASES: dict[str, tuple[bytes, list[tuple[float, float, float]], set[str]]] = {
    "percent-line": (b"% G1 X9\nG0 X8", [(8, 0, 5)], set()),
    "double-slash": (b"// G1 X9\nG0 X8", [(8, 0, 5)], set()),
    "block-delete": (b"/G1 X9\nG0 X8", [(8, 0, 5)], set()),
    "unclosed-bracket": (b"G0 X7 (pocket X9\nG0 X8", [(7, 0, 5), (8, 0, 5)], {"comment-leftover"}),
    "nested-bracket": (b"(pocket (2))\nG0 X8", [(8, 0, 5)], {"comment-leftover"}),
    "comma-decimal": (b"G0 X12,5\nG0 X8", [(8, 0, 5)], {"number-unreadable"}),
    "exponent": (b"G0 X1e3\nG0 Y1E-5\nG0 X8 Y7", [(8, 7, 5)], {"number-unreadable"}),
    "old-units": (b"G70\nG0 X1\nG71", [(25.4, 0, 5)], set()),
    "semicolon-end": (b"G0 X8;\nG0 Y7 ;", [(8, 0, 5), (8, 7, 5)], set()),
    "no-point": (b"G0 X100", [(100, 0, 5)], set()),
    "split-number": (b"G0 X 1\t2 . 5", [(12.5, 0, 5)], set()),
    "lower-case": (b"g0 x8", [(8, 0, 5)], set()),
    "t-without-m6": (b"T2\nG0 X8", [(8, 0, 5)], set()),
    "change-in-comment": (b"(change to tool 2)\nG0 X8", [(8, 0, 5)], set()),
    "dwell-unit": (b"G4 P2000", [], {"dwell-unit-suspect"}),
    "one-centre-word": (b"G2 X9 Y9 J9 F300", [(9, 9, 5)], set()),
    "bare-circle": (b"G2 I5 F300", [(0, 0, 5)], set()),
    "glued-words": (b"G0X8Y7", [(8, 7, 5)], set()),
    "program-number": (b"O1234 (PIER)\n:77\nG0 X8", [(8, 0, 5)], set()),
    "checksum": (b"N3 G0 X8*106\nN4 G0 X9*1", [(8, 0, 5), (9, 0, 5)], {"number-unreadable"}),
    "number-order": (b"N30 G0 X8\nN20 G0 X9", [(8, 0, 5), (9, 0, 5)], set()),
    "control-character": (b"G0 X8 \x07", [(8, 0, 5)], {"number-unreadable"}),
    "sender-line": (b"$ab\nG0 X8", [(8, 0, 5)], {"number-unreadable"}),
    "long-line": (b"G0 X8 (" + b"-" * 300 + b")", [(8, 0, 5)], {"number-unreadable"}),
    "arc-turns": (b"G2 I3 Z-5 P5 F300", [(0, 0, -5)], set()),
    "centre-mode": (b"G0 X40 Y30\nG2 X60 Y50 I60 J30 F300", [(40, 30, 5)], {"arc-centre-suspect"}),
}
# Those that are more than lines within a program.
WHOLE = {
    "byte-order-mark", "utf-16", "mixed-line-ends", "several-programs", "nul-bytes", "end-of-file-mark",
    "feed-per-second", "cut-short",
}  # fmt: skip


def judged(data: bytes, **given: str) -> Checked:
    return check(data, "habit.nc", Options(tools=("1: flat 6mm 2fl up-cut",), **given), "/nowhere/habit.nc")


def rules(checked: Checked) -> set[str]:
    return {finding.rule for finding in checked.findings} - MILD


def moves(data: bytes) -> list[tuple[float, float, float]]:
    motion = trace(data, "habit.nc", Options(), "/nowhere/habit.nc").motion
    return [(round(float(x), 6), round(float(y), 6), round(float(z), 6))
            for x, y, z in zip(motion.x1, motion.y1, motion.z1)]  # fmt: skip


def test_every_row_of_the_table_has_its_test() -> None:
    rows = re.findall(r"(?m)^\| ([a-z0-9-]+) \|", TABLE.read_text(encoding="utf-8"))
    assert set(rows) - {"habit"} == {*CASES, *WHOLE}


@pytest.mark.parametrize("habit", list(CASES))
def test_habit(habit: str) -> None:
    lines, ends, reported = CASES[habit]
    data = HEAD + lines + END
    assert [at[:2] for at in moves(data)[1 : 1 + len(ends)]] == [at[:2] for at in ends]
    assert [at[2] for at in moves(data)[1 : 1 + len(ends)]] == [at[2] for at in ends]
    assert rules(judged(data)) & {r for _, _, each in CASES.values() for r in each} == reported


def test_the_switch_for_slashed_lines_is_taken_to_be_on() -> None:
    assert any("slash" in row.what for row in judged(HEAD + b"/G1 X9" + END).assumed)
    assert not any("slash" in row.what for row in judged(HEAD + b"G0 X9" + END).assumed)


def test_byte_order_mark() -> None:
    assert moves(b"\xef\xbb\xbf" + HEAD + b"G0 X8" + END)[1] == (8, 0, 5)
    assert not rules(judged(b"\xef\xbb\xbf" + HEAD + b"G0 X8" + END))


@pytest.mark.parametrize("encoding", ["utf-16", "utf-16-le", "utf-16-be"])
def test_utf_16(encoding: str) -> None:
    with pytest.raises(Problem, match="UTF-16"):
        judged((HEAD + b"G0 X8" + END).decode().encode(encoding))


def test_mixed_line_ends() -> None:
    assert moves(HEAD.replace(b"\n", b"\r\n") + b"G0 X8\rG0 X9" + END)[1:3] == [(8, 0, 5), (9, 0, 5)]


@pytest.mark.parametrize("again", [b"O2\n" + HEAD + b"G0 X9" + END, b"%\nO2\nG0 X9\n%\n"])
def test_several_programs(again: bytes) -> None:
    data = b"%\nO1\n" + HEAD + b"G0 X8" + END + again
    assert len(moves(data)) == 3
    assert [f.line for f in judged(data).findings if f.rule == "blocks-behind-end"] == [9]


def test_nul_bytes() -> None:
    assert moves(b"\0\0\0" + HEAD + b"G0 X8" + END + b"\0" * 50)[1] == (8, 0, 5)
    with pytest.raises(Problem, match="binary"):
        judged(HEAD + b"G0 X8\0\n" + END)


def test_end_of_file_mark() -> None:
    assert not rules(judged(HEAD + b"G0 X8" + END + b"\x1a"))


def test_feed_per_second() -> None:
    data = HEAD + b"G0 X-10 Y40\nG1 Z-2 F25\nG1 X130" + END
    found = rules(judged(data, material="birch-plywood", stock="120 x 80 x 18 mm at 0 0"))
    assert "feed-unit-suspect" in found
    assert "chip-too-thin" not in found


@pytest.mark.parametrize("tail", [b"G0 X", b"G0 X8 (poc", b"G0 X-"])
def test_cut_short(tail: bytes) -> None:
    assert "program-cut-short" in rules(judged(HEAD + b"G0 X8\n" + tail))
    assert "program-cut-short" not in rules(judged(HEAD + b"G0 X8\nG0 X9"))


def test_cut_short_before_anything_moves() -> None:
    found = rules(judged(b"G21 G90\nM3 S16000\nG0 ZZ(po"))
    assert "program-cut-short" in found
    assert "internal-error" not in found


@pytest.mark.parametrize("deep", ["#" * 300 + "1", "#" * 1000 + "1", ("#" * 20 + "[") * 20 + "1" + "]" * 20, "[" * 61])
def test_a_chain_that_is_too_deep_costs_its_own_line_alone(deep: str) -> None:
    from gclint.check import check
    from gclint.setup.declare import Options

    made = check(f"G21 G90 G94\nG1 X{deep} F100\nG1 X5 F-3\nM30\n".encode(), "deep.nc", Options())
    rules = {finding.rule: finding.worst_line for finding in made.findings}
    assert "internal-error" not in rules
    assert rules["expression-wrong"] == 2


def test_a_chain_within_the_bound_is_read() -> None:
    from gclint.program.code import DEEPEST, Unreadable, parse

    assert parse(f"X{'#' * DEEPEST}1").words
    assert parse(f"X{'[' * DEEPEST}1{']' * DEEPEST}").words
    for one_more in (f"X{'#' * (DEEPEST + 1)}1", f"X{'[' * DEEPEST}#1{']' * DEEPEST}", f"X-{'#' * DEEPEST}1"):
        with pytest.raises(Unreadable):
            parse(one_more)
