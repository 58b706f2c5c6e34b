"""Modes, order of execution and offsets against the NIST RS274/NGC report (NISTIR 6556, 2000)."""

from __future__ import annotations

import math

import pytest

from tests.motion.run import STATED, ends, events, faults, run


def test_spindle_stops_before_the_motion() -> None:
    """3.8: `M5 G1 X..` cuts with the spindle off."""
    m = run(STATED + "F100 S1000 M3 G0 X0 Y0 Z0\nG1 X5 M5\n")
    assert m.spindle.tolist() == [1, 0]


def test_stop_comes_after_the_motion() -> None:
    """3.8: `M0 X..` moves, then stops."""
    m = run(STATED + "G0 X0 Y0 Z0\nM0 X5\n")
    assert events(m)[-1] == ("stop", 3, 2)


def test_tool_change_then_spindle_on() -> None:
    """3.8 and 3.6.3: M6 stops the spindle, and `T1 M6 M3 S4000` ends with it on."""
    m = run(STATED + "S4000 M3\nT1 M6 M3 S4000\nG0 X0 Y0 Z0\nT2 M6\nX1\n")
    assert m.spindle.tolist() == [1, 0]
    assert m.tool.tolist() == [1, 2]
    assert m.tool_line.tolist() == [3, 5]


def test_dwell_comes_after_spindle_start_and_before_the_motion() -> None:
    """3.8."""
    m = run(STATED + "G0 X0 Y0 Z0\nG1 X5 F100 G4 P2 S1000 M3\n")
    assert [(e[0], e[2]) for e in events(m)[-3:]] == [("speed", 1), ("spindle-cw", 1), ("dwell", 1)]


def test_feed_number_outlives_a_change_of_units() -> None:
    """4.3.3.2: stored numbers do not change, so F100 is 100 in/min after G20."""
    m = run(STATED + "G0 X0 Y0 Z0\nG1 X1 F100\nG20 G1 X2\nG1 X3 F30\n")
    assert m.feed[1:].tolist() == pytest.approx([100, 2540, 762])
    assert m.x1.tolist() == pytest.approx([0, 1, 50.8, 76.2])


def test_inverse_time() -> None:
    """3.5.19: F2 is half a minute; every cut needs its own F; 10 mm at 500 mm/min is F50."""
    m = run(STATED + "G0 X0 Y0 Z0\nG93 G1 X10 F50\nX20 F2\nX30\n")
    assert m.feed[1] == pytest.approx(500)
    assert m.length[2] / m.feed[2] * 60 == pytest.approx(30)
    assert math.isnan(m.feed[3])
    assert faults(m) == [("feed-missing", 5)]


def test_rapids_need_no_feed_in_inverse_time() -> None:
    """3.5.19."""
    assert faults(run(STATED + "G93 G0 X0 Y0 Z0\nX5\n")) == []


@pytest.mark.parametrize(
    "block",
    [
        "G0 G1 X1",
        "G17 G18 X1",
        "G20 G21",
        "G90 G91 X1",
        "M3 M4",
        "M8 M9",
        "M0 M30",
        "X1 X2",
        "F1 F2",
        "G92 G1 X1",
        "G10 L2 P1 G0 X1",
    ],
)
def test_conflicts(block: str) -> None:
    """3.4 and 3.3.5: two words of one group, one letter twice, groups 0 and 1 both wanting the axis words."""
    m = run(STATED + f"G0 X0 Y0 Z0\n{block}\n")
    assert faults(m) == [("word-conflict", 3)]
    assert len(m) == 1
    assert not m.ended


def test_group_1_is_suspended_where_it_is_only_implied() -> None:
    """3.4."""
    m = run(STATED + "G1 X0 Y0 Z0 F100\nG92 X5\nX6\n")
    assert faults(m) == []
    assert m.x1.tolist() == pytest.approx([0, 1])  # X6 is one past the place that was called 5


def test_g92() -> None:
    """3.5.18: at X4, `G92 x7` and then `G92 x9` make offsets of -3 and -5; G91 changes nothing."""
    m = run(STATED + "G0 X4 Y0 Z0\nG92 x7\nX7\nG91 G92 x9\nG90 X0\nG92.1\nX0\n")
    assert m.x1.tolist() == pytest.approx([4, 4, -5, 0])


def test_g92_2_keeps_and_g92_3_restores() -> None:
    """3.5.18."""
    m = run(STATED + "G0 X4 Y0 Z0\nG92 X7\nG92.2\nX1\nG92.3\nX1\n")
    assert m.x1.tolist() == pytest.approx([4, 1, -2])


def test_g10_names_origins_absolutely() -> None:
    """3.5.5: `G10 L2 P1 x3.5 y17.2`; what is not named does not change. A declared pair relates two systems."""
    m = run("G21 G90 G94 G17\nG10 L2 P1 X3.5 Y17.2 Z0\nG10 L2 P2 X13.5 Y17.2 Z0\nG54 G0 X0 Y0 Z0\nG55 X0 Y0\n")
    assert [(x, y) for _, x, y, _ in ends(m)] == [(0, 0), (10, 0)]
    assert not (m.flags & 1024).any()


def test_g10_refuses_other_systems() -> None:
    """3.5.5: P is 1 to 9."""
    assert faults(run(STATED + "G10 L2 P10 X0\n")) == [("value-out-of-range", 2)]


def test_g28_goes_by_way_of_the_point() -> None:
    """3.5.8: to the programmed point, then home; without axis words straight home."""
    m = run(STATED + "G0 X0 Y0 Z0\nG28 Z5\nG28\n")
    assert ends(m)[1] == ("rapid", 0, 0, 5)
    assert math.isnan(m.z1[2])
    assert m.x1[2] == pytest.approx(0)
    assert math.isnan(m.x1[3])
    assert len(m) == 4


def test_g53_needs_a_straight_motion() -> None:
    """3.5.12."""
    assert faults(run(STATED + "F100 G0 X0 Y0 Z0\nG2 X2 I1\nG53 Z0\n")) == [("no-motion-mode", 4)]
    m = run(STATED + "G0 X0 Y0 Z0\nG53 Z0\nX5\n")
    assert m.flags[1] & 1
    assert math.isnan(m.z1[1])
    assert m.flags[2] & 4096


def test_length_offset_moves_nothing() -> None:
    """3.5.11 and 5.1.2: after G43 the Z reading changes by a length that is unknown here."""
    m = run(STATED + "G0 X0 Y0 Z0.5\nG43 H2\nX1\nZ5\n")
    assert len(m) == 3
    assert math.isnan(m.z1[1])
    assert m.z1[2] == pytest.approx(5)


def test_block_delete_is_read_and_not_executed() -> None:
    """2.2.2."""
    assert m_len("G0 X0 Y0 Z0\n/X5\nY5\n") == 2


def m_len(text: str) -> int:
    return len(run(STATED + text))


def test_nothing_is_executed_behind_the_end() -> None:
    """3.6.1."""
    m = run(STATED + "G0 X0 Y0 Z0\nM30\nX5\n")
    assert len(m) == 1
    assert m.ended


@pytest.mark.parametrize(
    ("block", "kind"), [("S-1", "value-out-of-range"), ("T-1", "value-out-of-range"), ("G4 P-1", "value-out-of-range")]
)
def test_negative_values(block: str, kind: str) -> None:
    """3.5.4, 3.7.2, 3.7.3."""
    assert faults(run(STATED + block + "\n")) == [(kind, 2)]
