"""Later habits of coordinates (from memory, no source): local shifts are followed, turned and scaled frames are not."""

from __future__ import annotations

import pytest

from gclint.tables.motion import OTHER_FRAME
from tests.motion.run import STATED, ends, faults, run


def test_g52_shifts_every_move_until_it_is_set_back() -> None:
    m = run(STATED + "G0 X0 Y0 Z5\nG52 X10 Y20\nX0 Y0\nG91 X1\nG90 G52 X0 Y0\nX0 Y0\n")
    assert ends(m)[1:] == [("rapid", 10, 20, 5), ("rapid", 11, 20, 5), ("rapid", 0, 0, 5)]
    assert faults(m) == []


def test_g52_before_the_first_move_and_in_inches() -> None:
    m = run("G20 G90 G94 G17 G54\nG52 X1\nG0 X0 Y0 Z1\n")
    assert ends(m) == [("rapid", 25.4, 0, 25.4)]


@pytest.mark.parametrize(
    ("code", "cancel"), [("G68 X0 Y0 R45", "G69"), ("G51 X0 Y0 P2", "G50"), ("G51.1 X0", "G50.1"), ("G16", "G15")]
)
def test_moves_in_a_turned_frame_are_not_followed(code: str, cancel: str) -> None:
    m = run(STATED + f"G0 X1 Y2 Z5\n{code}\nX20 Y0\nG1 X30 F100\n{cancel}\nG0 X0 Y0\nZ6\n")
    assert [bool(flags & OTHER_FRAME) for flags in m.flags] == [False, True, True, False, False]
    assert faults(m) == [("frame-turned", 3)]
    assert ends(m)[-1][:3] == ("rapid", 0, 0)


def test_an_offset_called_in_a_turned_frame_stays_turned() -> None:
    m = run(STATED + "G0 X1 Y2 Z5\nG68 X0 Y0 R45\nG54\nG92 X3\nX20 Y0\nG69\nX0 Y0\n")
    assert m.flags[1] & OTHER_FRAME


def test_cancel_words_in_a_header_change_nothing() -> None:
    m = run(STATED + "G15 G50 G69 G80\nG0 X1 Y2 Z5\n")
    assert ends(m) == [("rapid", 1, 2, 5)]
    assert faults(m) == []


def test_k_counts_the_holes_of_a_cycle() -> None:
    m = run(STATED + "G0 X0 Y0 Z5 F100\nG91 G99 G81 X10 Z-3 R-4 K3\n")
    holes = [float(x) for kind, x in zip(m.kind, m.x1) if kind == 1]
    assert holes == pytest.approx([10, 20, 30])


def test_k0_keeps_the_words_and_drills_nothing() -> None:
    m = run(STATED + "G0 X0 Y0 Z5 F100\nG99 G81 X10 Z-3 R1 K0\nX20\n")
    assert [float(x) for kind, x in zip(m.kind, m.x1) if kind == 1] == pytest.approx([20])
    assert faults(m) == []
