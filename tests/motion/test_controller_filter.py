"""What a controller makes of a program: codes, words and habits that it refuses or ignores."""

from __future__ import annotations

from pathlib import Path

import pytest

from gclint.cards.codes import KINDS
from gclint.motion.interpret import interpret
from gclint.program.read import read
from gclint.tables.setup import Controller
from tests.motion.run import STATED, ends, faults, run

HOLES = STATED + "G0 X0 Y0 Z5\nG81 X10 Y0 Z-3 R2 F300\nX20\nG0 X30\nM30\n"


def about(motion: object) -> list[str]:
    return [KINDS[int(a)] for kind, a in zip(motion.faults.kind, motion.faults.a) if a == a and a >= 1]  # type: ignore[attr-defined]


def test_a_refused_cycle_drills_nothing_until_another_motion_comes() -> None:
    motion = run(HOLES, states={"G81": "refuses"})
    assert [(kind, x) for kind, x, _, _ in ends(motion)] == [("rapid", 0.0), ("rapid", 30.0)]
    assert faults(motion) == [("code-refused", 3)]
    assert about(motion) == ["cycles"]


def test_an_ignored_cycle_runs_across_the_top() -> None:
    motion = run(HOLES, states={"G81": "ignores"})
    assert ends(motion)[1] == ("rapid", 10.0, 0.0, -3.0)  # Z is a word like any other to G0
    assert ("code-ignored", 3) in faults(motion)


def test_turns_that_are_ignored_are_one_turn() -> None:
    text = STATED + "G0 X0 Y0 Z0\nG1 F100\nG2 X0 Y0 I3 J0 Z-5 P5\nM30\n"
    assert run(text).sweep[-1] == pytest.approx(-1800)
    motion = run(text, states={"arc-turns": "ignores"})
    assert motion.sweep[-1] == pytest.approx(-360)
    assert motion.z1[-1] == pytest.approx(-5)
    assert faults(motion) == [("code-ignored", 4)]
    assert about(motion) == ["arc-turns"]


def test_one_turn_is_what_one_turn_says() -> None:
    assert not faults(run(STATED + "G0 X0 Y0 Z0\nG2 I3 P1 F9\nM30\n", states={"arc-turns": "refuses"}))


def test_p_of_a_dwell_is_no_turn_count() -> None:
    motion = run(STATED + "G0 X0 Y0 Z0\nG2 I3 F100\nG4 P5\nM30\n", states={"arc-turns": "ignores"})
    assert not faults(motion)
    assert 5.0 in motion.event_value.tolist()


def test_inches_that_are_ignored_are_mm() -> None:
    motion = run("G20 G90 G94 G17 G54\nG0 X1 Y0 Z0\nM30\n", states={"G20": "ignores"}, start_state=("G21",))
    assert motion.x1[0] == pytest.approx(1.0)
    assert faults(motion) == [("code-ignored", 1)]


def test_a_refused_word_stops_its_line() -> None:
    motion = run(STATED + "G0 X0 Y0 Z5\nG1 X5 A90 F100\nG1 Y5\nM30\n", states={"A": "refuses"})
    assert len(ends(motion)) == 2
    assert faults(motion)[0] == ("code-refused", 3)
    assert about(motion) == ["word"]


def test_other_codes() -> None:
    states = dict.fromkeys(("G0", "G17", "G21", "G54", "G90", "G94", "M30"), "does")
    motion = run(STATED + "G0 X0 Y0 Z5\nG64 P0.01\nM30\n", states=states, other_codes="refuses")
    assert faults(motion) == [("code-refused", 3)]


def test_what_is_not_executed_is_not_refused() -> None:
    motion = run(STATED + "/G81 X1 Y1 Z-1 R1 F9\nG0 X0 Y0 Z5\nM30\nG81 X1 Y1 Z-1 R1\n%\n", states={"G81": "refuses"})
    assert [kind for kind, line in faults(motion) if line == 2] == []


def test_numbers_without_a_point() -> None:
    text = STATED + "G0 X100 Y1500 Z0.\nG1 X-20 F300\nM30\n"
    motion = run(text.replace("Z0.", "Z0"), no_point="resolution")
    assert ends(motion) == [("rapid", 0.1, 1.5, 0.0), ("line", -0.02, 1.5, 0.0)]
    assert motion.feed[-1] == pytest.approx(300)
    inch = run(text.replace("G21", "G20").replace("Z0.", "Z0"), no_point="resolution")
    assert inch.x1[0] == pytest.approx(0.01 * 25.4)
    mixed = run(text.replace("Z0.", "Z5."), no_point="resolution")  # written for another controller: followed as meant
    assert ends(mixed) == [("rapid", 100.0, 1500.0, 5.0), ("line", -20.0, 1500.0, 5.0)]
    assert faults(mixed) == [("point-missing", 2)]
    assert mixed.faults.a[0] == 3
    assert faults(run(STATED + "#1=5.\nG0 X#1 Y[#1] Z5.\nM30\n", no_point="resolution")) == []


def test_feed_in_mm_a_second() -> None:
    motion = run(STATED + "G0 X0 Y0 Z5\nG1 X9 F10\nM30\n", feed_unit="mm/s")
    assert motion.feed[-1] == pytest.approx(600)


def test_the_old_names_of_inch_and_mm() -> None:
    """ISO 6983-1: G70 inch, G71 mm (from memory)."""
    motion = run("G70 G90 G94 G17 G54\nG0 X1 Y0 Z0\nG71\nG0 X1\nM30\n")
    assert motion.x1.tolist() == pytest.approx([25.4, 1.0])
    assert not faults(motion)
    assert [taken.value for taken in motion.assumed] == ["G70 as inch and G71 as mm"]


@pytest.mark.parametrize(
    ("habit", "line", "motion_lost"),
    [
        ("expressions", "G1 X[1+2] F9", True), ("flow-by-number", "o100 if [1]", True),
        ("macro-words", "IF [1 EQ 1] GOTO 9", True),
        ("semicolon-comments", "G1 X1 F9 ; pier", False), ("checksums", "N1 G1 X1 F9*57", False),
        ("program-numbers", "O1234 (PIER)", False), ("percent", "% pier", False), ("block-delete", "/G1 X1", False),
        ("one-centre-word", "G2 X2 Y0 I1 F9", True), ("arc-radius", "G2 X2 Y0 R1 F9", True),
        ("full-circles", "G2 I1 J0 F9", True),
    ],
)  # fmt: skip
def test_habits_that_are_refused(habit: str, line: str, motion_lost: bool) -> None:
    motion = run(STATED + f"G0 X0 Y0 Z5\n{line}\nG0 X7 Y7\nM30\n", states={habit: "refuses"})
    assert ("code-refused", 3) in faults(motion)
    assert about(motion)[0] == habit
    assert not motion.stopped_at
    assert (3 in motion.line.tolist()) == (not motion_lost and line.lstrip("N1 ").startswith("G1"))


def test_a_card_with_nothing_to_say_gives_the_same_program_back() -> None:
    from gclint.faults import FaultRows
    from gclint.motion.controller_filter import filter_program

    program = read(HOLES.encode(), "test")
    assert filter_program(program, Controller(), FaultRows())[0] is program


def test_an_ignored_word_beside_an_expression() -> None:
    text = STATED + "#1=3\nG0 X0 Y0 Z0\nG1 F100\nG2 X0 Y0 I#1 J0 Z-5 P5\nM30\n"
    assert run(text).sweep[-1] == pytest.approx(-1800)
    motion = run(text, states={"arc-turns": "ignores"})
    assert motion.sweep[-1] == pytest.approx(-360)
    assert faults(motion) == [("code-ignored", 5)]


def test_a_subprogram_beside_the_program_is_taken_as_the_controller_takes_it(tmp_path: Path) -> None:
    (tmp_path / "O100.nc").write_text("O100\nG81 X1 Y1 Z-3 R2\nM99\n")
    program = read((STATED + "G0 X0 Y0 Z5 F100\nM98 P100\nM30\n").encode(), "test")
    assert len(ends(interpret(program, Controller(), folder=tmp_path))) > 3
    motion = interpret(program, Controller(states={"G81": "refuses"}), folder=tmp_path)
    assert faults(motion)[0] == ("code-refused", 3)
    assert ends(motion) == [("rapid", 0, 0, 5)]
