"""Interpreting: what is stated, what is known, and what happens to a block that cannot be executed."""

from __future__ import annotations

import math
import sys

import pytest

from gclint.problem import Problem
from gclint.tables.motion import (
    COMPENSATED,
    CYCLE,
    HOME,
    INCH,
    LIFT_UNKNOWN,
    MACHINE,
    OTHER_FRAME,
    PROBE,
    RIGHT,
    X_WORD,
    Y_WORD,
    Z_WORD,
)
from tests.motion.run import STATED, ends, events, faults, run


def test_what_is_unstated_is_told_once_at_the_motion_it_concerns() -> None:
    m = run("G0 X0 Y0 Z5\nG1 X1 F100\nG2 X3 I1\nG1 X0\nG3 X2 I1\n")
    assert faults(m) == [
        ("units-unstated", 1),
        ("distance-unstated", 1),
        ("offset-unstated", 1),
        ("feed-mode-unstated", 2),
        ("plane-unstated", 3),
    ]


def test_machine_moves_use_no_work_offset() -> None:
    m = run("G21 G90 G94\nG53 G0 Z0\nG0 X1 Y1\n")
    assert faults(m) == [("offset-unstated", 3)]


def test_what_the_controller_has_in_force_needs_no_word() -> None:
    m = run("G0 X1 Y1 Z1\nG2 X2 I.5 F10\n", start_state=("G20", "G90", "G94", "G17", "G54"))
    assert faults(m) == []
    assert m.x1.tolist() == pytest.approx([25.4, 50.8])
    assert m.offset.tolist() == [540, 540]


def test_flags_and_columns_of_a_move() -> None:
    m = run("G20 G90 G94 G17 G55\nT3 M6\nS9000 M3\nG0 X1 Y1 Z1\nG1 Z0 F10\n")
    assert m.flags.tolist() == [INCH | X_WORD | Y_WORD | Z_WORD, INCH | Z_WORD]
    assert m.offset.tolist() == [550, 550]
    assert m.line.tolist() == [4, 5]
    assert (m.feed[1], m.feed_line[1], m.speed[1], m.speed_line[1]) == (pytest.approx(254), 5, 9000, 3)
    assert (m.tool[1], m.tool_line[1], m.spindle[1]) == (3, 2, 1)
    assert math.isnan(m.feed[0])


def test_positions_start_unknown() -> None:
    m = run(STATED + "G0 Z5\nX1\nY1\n")
    assert math.isnan(m.x1[0])
    assert math.isnan(m.z0[0])
    assert math.isnan(m.length[0])
    assert ends(m)[2] == ("rapid", 1, 1, 5)


def test_length_of_a_move_under_an_unknown_z() -> None:
    m = run(STATED + "G0 X0 Y0\nX3 Y4\n")
    assert m.length[1] == pytest.approx(5)


def test_incremental_move_from_an_unknown_place() -> None:
    m = run("G21 G91 G94 G17 G54\nG0 X1\nX1\n")
    assert faults(m) == [("position-unknown", 2)]
    assert math.isnan(m.x1[1])


@pytest.mark.parametrize(
    "block", ["G1 X1,5", "G1 X1 X2", "G2 X9 I1", "G2 X9 R1", "G2 X5", "G2 X5 K1", "G99.9 X1", "G1 X[1+"]
)
def test_a_block_that_is_not_executed_loses_the_axes_it_names(block: str) -> None:
    m = run(STATED + f"G0 X0 Y0 Z0 F100\n{block}\nG1 Y5\nX1\n")
    assert len(m) == 3
    assert math.isnan(m.x1[1])
    assert m.y1[1] == pytest.approx(5)
    assert m.x1[2] == pytest.approx(1)


def test_one_cause_is_told_once() -> None:
    """An arc after a lost position is unknown as well, and says nothing new."""
    m = run(STATED + "G0 X0 Y0 Z0 F100\nG2 X9 I1\nG2 X5 I1\nG1 X0 Y0\n")
    assert faults(m) == [("arc-does-not-close", 3)]
    assert math.isnan(m.length[1])


@pytest.mark.parametrize(
    ("arc", "closes"),
    [
        ("G0 X20.00 Y10.00\nG2 X20.35 Y10.12 I0.19 J0.00", False),  # radii 0.190 and 0.200: 0.010 mm and 5.3 %
        ("G0 X0 Y0\nG2 X300.01 Y0 I150 J0", True),  # 0.010 mm on 150
        ("G0 X0 Y0\nG2 X0.204 Y0 I0.1 J0", True),  # 0.004 mm
        ("G0 X0 Y0\nG2 X2001.2 Y0 I1000 J0", False),  # 0.1 % of the radius, but over 0.5 mm
    ],
)
def test_tolerance_of_small_controllers(arc: str, closes: bool) -> None:
    """Refused over 0.5 mm, or over 0.005 mm and over 0.1 % of the radius."""
    card = {"arc_tolerance": 0.005, "arc_tolerance_share": 0.001, "arc_tolerance_most": 0.5}
    m = run(STATED + f"F100 Z0\n{arc.replace('G0', 'G0 Z0', 1)}\n", **card)
    assert ("arc-does-not-close" in [kind for kind, _ in faults(m)]) != closes


def test_full_circle_with_one_centre_word_and_no_end() -> None:
    m = run(STATED + "G0 X5 Y0 Z0 F100\nG2 I-5\nG3 I-5 Z-1\n")
    assert m.sweep[1:].tolist() == pytest.approx([-360, 360])
    assert m.z1[2] == pytest.approx(-1)


def test_end_off_by_a_digit_is_a_tiny_arc() -> None:
    """What it does, not what it says: the end lies 0.001 mm on along the circle, not a turn further."""
    m = run(STATED + "G0 X5 Y0 Z0 F100\nG3 X5 Y0.001 I-5 Z-1\n")
    assert abs(m.sweep[1]) < 0.1


def test_turns() -> None:
    m = run(STATED + "G0 X5 Y0 Z0 F100\nG3 X5 Y0 I-5 Z-3 P3\nG2 X-5 I-5 P2\n")
    assert m.sweep[1:].tolist() == pytest.approx([3 * 360, -180 - 360])


def test_circle_of_no_radius_is_a_straight_move() -> None:
    m = run(STATED + "G0 X5 Y0 Z0 F100\nG2 X5 Y0 I0 J0 Z-2\n")
    assert ends(m)[1] == ("line", 5, 0, -2)
    assert m.length[1] == pytest.approx(2)


def test_absolute_arc_centres() -> None:
    a = run(STATED + "G0 X10 Y0 Z0 F100\nG90.1 G2 X20 Y0 I15 J0\n")
    b = run(STATED + "G0 X10 Y0 Z0 F100\nG2 X20 Y0 I15 J0\n", arc_centres="absolute")
    c = run(STATED + "G0 X10 Y0 Z0 F100\nG91.1 G2 X20 Y0 I5 J0\n", arc_centres="absolute")
    assert ends(a) == ends(b) == ends(c)
    assert a.cu[1] == b.cu[1] == c.cu[1] == pytest.approx(15)


def test_flow_stops_interpreting() -> None:
    m = run(STATED + "G0 X0 Y0 Z5\nM98 P10\nX5\n")  # there is no program 10
    assert len(m) == 1
    assert m.stopped_at == 3
    assert "calls" in m.stopped_because
    assert not m.ended


def test_flow_behind_the_end_does_not_matter() -> None:
    m = run(STATED + "G0 X0 Y0 Z5\nM30\nO100\nG1 X5\nM99\n")
    assert m.ended
    assert m.stopped_at == 0


@pytest.mark.parametrize(("tail", "ended"), [("M2", True), ("M30", True), ("%", True), ("", False), ("(%)", False)])
def test_end(tail: str, ended: bool) -> None:
    assert run("%\n" * (tail == "%") + STATED + f"G0 X0 Y0 Z5\n{tail}\n").ended == ended


def test_tool_words_without_any_m6() -> None:
    m = run(STATED + "T1\nG0 X0 Y0 Z5\nT2\nX1\n")
    assert m.tool.tolist() == [1, 2]
    assert [a.what for a in m.assumed] == ["tool changes"]
    assert m.tool_line.tolist() == [2, 4]


def test_tool_word_waits_for_m6() -> None:
    m = run(STATED + "G0 X0 Y0 Z5\nT1 M6\nX1\nT2\nX2\nM6\nX3\n")
    assert m.tool.tolist() == [-1, 1, 1, 2]
    assert m.assumed == ()
    assert [e for e in events(m) if e[0] == "change"] == [("change", 3, 1), ("change", 7, 3)]


def test_controller_that_ignores_m6() -> None:
    """The first tool was put in by hand; the second never comes, and the spindle goes on."""
    m = run(STATED + "S1000 M3\nT1 M6\nG0 X0 Y0 Z5\nT2 M6\nX1\n", tool_change="ignores")
    assert m.tool.tolist() == [1, 1]
    assert m.spindle.tolist() == [1, 1]
    assert [e for e in events(m) if e[0] == "change"] == [("change", 3, 0), ("change", 5, 1)]


@pytest.mark.parametrize(("card", "spindle"), [("stops", 1), ("stops-spindle", 0)])
def test_spindle_at_a_program_stop(card: str, spindle: int) -> None:
    m = run(STATED + "S1000 M3\nM0\nG0 X0 Y0 Z5\n", program_stop=card)
    assert m.spindle.tolist() == [spindle]


def test_spindle_that_never_started_stays_so() -> None:
    m = run(STATED + "T1 M6\nM0\nG0 X0 Y0 Z5\nM5\nX1\n", program_stop="stops-spindle")
    assert m.spindle.tolist() == [2, 0]


def test_compensation() -> None:
    m = run(STATED + "G0 X0 Y0 Z0 F100\nG41 D1\nG1 X5\nG42\nX6\nG40\nX7\nG41 D1\nX8\n")
    assert [bool(f & COMPENSATED) for f in m.flags] == [False, True, True, False, True]
    assert [bool(f & RIGHT) for f in m.flags] == [False, False, True, False, False]
    assert faults(m) == [("compensation-refused", 5)]  # a second code while one is on


def test_feed_missing_is_told_once_until_a_feed_is_set() -> None:
    m = run(STATED + "G0 X0 Y0 Z0\nG1 X1\nX2\nF0\nX3\nF100\nX4\n")
    assert faults(m) == [("feed-missing", 3), ("feed-zero", 5)]
    assert m.feed[-1] == pytest.approx(100)
    assert math.isnan(m.feed[3])


def test_feed_per_revolution() -> None:
    m = run("G21 G90 G95 G17 G54\nS1000 M3\nG0 X0 Y0 Z0\nG1 X1 F0.2\n")
    assert m.feed[1] == pytest.approx(200)


def test_feed_in_another_mode_is_another_feed() -> None:
    m = run(STATED + "G0 X0 Y0 Z0 F100\nG93\nG94\nG1 X1\n")
    assert faults(m) == [("feed-missing", 5)]


def test_home_and_the_lift_after_it() -> None:
    m = run(STATED + "G0 X0 Y0 Z5\nG91 G28 Z0\nG90 X5 Y5\nZ2\nX6\n")
    assert [f & (HOME | MACHINE) for f in m.flags] == [0, HOME, HOME | MACHINE, 0, 0, 0]
    assert [bool(f & LIFT_UNKNOWN) for f in m.flags] == [False, False, False, True, True, False]
    assert faults(m) == []
    assert m.length[3] == pytest.approx(math.hypot(5, 5))


def test_g0_beside_a_home_move_is_one_motion() -> None:
    """Common practice, no source: `G0 G28 Z0` is written for the home move."""
    m = run(STATED + "G0 X0 Y0 Z5\nG91 G0 G28 Z0\n")
    assert faults(m) == []
    assert len(m) == 3


def test_g80_beside_another_motion_code() -> None:
    """Common practice, no source: headers such as `G0 G17 G40 G49 G80 G90`."""
    m = run("G0 G17 G21 G40 G49 G54 G80 G90 G94\nX1 Y1 Z1\n")
    assert faults(m) == []
    assert ends(m) == [("rapid", 1, 1, 1)]


def test_offset_of_unknown_place_is_a_frame_of_its_own() -> None:
    m = run(STATED + "G0 X0 Y0 Z5\nG55 X1 Y1 Z5\nX2\nG54 X0 Y0 Z5\nX1\n")
    assert [bool(f & OTHER_FRAME) for f in m.flags] == [False, True, True, False, False]
    assert math.isnan(m.x0[1])
    assert math.isnan(m.x0[3])
    assert m.length[2] == pytest.approx(1)


def test_offset_set_where_the_tool_stands() -> None:
    """G10 L20: the present place reads the words, in a system whose place is then known."""
    m = run(STATED + "G0 X10 Y0 Z5\nG10 L20 P2 X0 Y0 Z5\nG55 G0 X0 Y0 Z5\nX1\n")
    assert not (m.flags & OTHER_FRAME).any()
    assert m.x1.tolist() == pytest.approx([10, 10, 11])


def test_present_place_named_at_the_start() -> None:
    m = run(STATED + "G92 X0 Y0 Z0\nG0 Z5\nX1\n")
    assert m.z0[0] == pytest.approx(0)
    assert faults(m) == []
    assert not (m.flags & OTHER_FRAME).any()
    cancelled = run(STATED + "G92 X0 Y0 Z0\nG0 Z5\nG92.1\nX1\n")
    assert cancelled.flags[1] & OTHER_FRAME


def test_present_place_named_after_a_home_move() -> None:
    m = run(STATED + "G0 X0 Y0 Z5\nG53 G0 Z0\nG92 Z50\nG0 Z5\n")
    assert m.flags[2] & OTHER_FRAME
    assert m.z0[2] == pytest.approx(50)


def test_changed_origin_of_the_system_in_force() -> None:
    m = run("G21 G90 G94 G17\nG10 L2 P1 X0 Y0 Z0\nG54 G0 X0 Y0 Z5\nG10 L2 P1 X10 Y0 Z0\nX0\n")
    assert m.x1.tolist() == pytest.approx([0, 10])


def test_probing_ends_somewhere() -> None:
    m = run(STATED + "G0 X0 Y0 Z5\nG38.2 Z-10 F50\nG0 X1\n")
    assert m.flags[1] & PROBE
    assert math.isnan(m.z1[1])
    assert m.x1[1] == pytest.approx(0)


def test_rotary_axes_are_told_when_they_move() -> None:
    m = run(STATED + "G0 X0 Y0 Z5 A0\nX1 A0\nX2 A90\n")
    assert faults(m) == [("axis-not-modelled", 2), ("axis-not-modelled", 4)]
    assert [e for e in events(m) if e[0] == "axis-move"] == [("axis-move", 2, 0), ("axis-move", 4, 2)]
    assert len(m) == 3


def test_words_nothing_uses() -> None:
    m = run(STATED + "G0 X0 Y0 Z5 F100\nG1 X1 R5\nP3\nM62 P1\nG64 P0.1\n")
    assert faults(m) == [("word-unused", 3), ("word-unused", 4), ("code-unknown", 5)]


def test_unknown_code_without_axis_words_changes_nothing() -> None:
    m = run(STATED + "G0 X0 Y0 Z5\nG187 P1\nM114\nX1\n")
    assert [kind for kind, _ in faults(m)] == ["code-unknown", "code-unknown"]
    assert len(m) == 2


def test_cancel_words_change_nothing() -> None:
    assert faults(run(STATED + "G15 G40 G49 G50 G69 G80\n")) == []


def test_no_motion_mode() -> None:
    m = run(STATED + "X1 Y1\nG0 X1\n")
    assert faults(m) == [("no-motion-mode", 2)]
    assert len(m) == 1


@pytest.mark.parametrize(("block", "seconds"), [("G4 P2", 2), ("G4 X2", 2), ("G4 U2", 2), ("G4 S2", 2)])
def test_dwell_words(block: str, seconds: float) -> None:
    m = run(STATED + f"G0 X0 Y0 Z5\n{block}\nX1\n")
    assert m.event_value[[e[0] for e in events(m)].index("dwell")] == seconds
    assert len(m) == 2
    assert faults(m) == []


def test_dwell_without_time() -> None:
    m = run(STATED + "G4\n")
    assert faults(m) == [("word-missing", 2)]
    assert math.isnan(m.event_value[-1])


def test_retract_to_an_unknown_height() -> None:
    """The height before the cycle is not known: at least R, so the next hole is come to from above."""
    m = run(STATED + "F100\nG98 G81 X1 Y1 Z-1 R2\nX2\n")
    assert (m.flags & CYCLE).all()
    down = [i for i in range(len(m)) if m.kind[i] == 0 and m.z1[i] == 2]
    assert len(down) == 2
    assert all(m.flags[i] & LIFT_UNKNOWN for i in down)


def test_cycle_in_another_plane() -> None:
    m = run("G21 G90 G94 G18 G54\nF100 G0 X0 Y10 Z0\nG99 G81 X5 Z5 Y-3 R1\n")
    assert ends(m)[1:] == [("rapid", 5, 10, 5), ("rapid", 5, 1, 5), ("line", 5, -3, 5), ("rapid", 5, 1, 5)]


def test_chip_breaking_stays_in_the_hole() -> None:
    m = run(STATED + "F100 G0 X0 Y0 Z5\nG99 G73 X1 Z-3 R1 Q2\n")
    heights = [z for _, _, _, z in ends(m)[3:]]
    assert heights[0] == pytest.approx(-1)
    assert -1 < heights[1] < 0
    assert heights[2:] == pytest.approx([-3, 1])


def test_moves_are_bounded() -> None:
    m = run(STATED + "F100 G0 X0 Y0 Z5\nG91 G81 X1 Z-1 R0 L1000000000\nX1\n")
    assert m.stopped_at == 3
    assert "moves" in m.stopped_because
    assert faults(m)[-1] == ("bound-reached", m.stopped_at)
    assert len(m) < 3_000_000


def test_a_length_offset_has_a_whole_number() -> None:
    """NIST RS274/NGC 3.5.11: a negative H, or one that is no whole number, is an error."""
    m = run(STATED + "G0 Z5\nG43 H-1 Z3\nG43 H1.5 Z3\nG43 H0 Z3\n")
    assert faults(m) == [("value-out-of-range", 3), ("value-out-of-range", 4)]


def test_the_speed_of_the_edge_is_no_speed_of_the_spindle() -> None:
    m = run(STATED + "G0 X0 Y0 Z5\nG96 D2500 S100\nG0 X1\nG97 S3000\nG0 X2\n")
    assert math.isnan(m.speed[1])
    assert m.speed_line[1] == 3
    assert m.speed[2] == pytest.approx(3000)
    assert faults(m) == [("value-unknown", 3)]


def test_coordinates_beyond_any_machine() -> None:
    m = run(STATED + "G0 X0 Y0 Z5\nG1 X1234567 F100\n")
    assert faults(m) == [("value-out-of-range", 3)]
    assert len(m) == 1


def test_a_kernel_that_is_not_built_is_one_sentence(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, "gclint.motion.interpreter", None)
    with pytest.raises(Problem, match="interpreter is not built"):
        run(STATED)


def test_one_conflict_per_block() -> None:
    assert faults(run(STATED + "G0 X0 Y0 Z5\nG1 X1 X2 X3 Y1 Y2\n")) == [("word-conflict", 3)]
