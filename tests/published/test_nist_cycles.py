"""Canned cycles against the NIST RS274/NGC report (NISTIR 6556, 2000): 3.5.16, the printed session, example C.3."""

from __future__ import annotations

import pytest

from tests.motion.run import STATED, ends, events, faults, run


def test_g81_example_1() -> None:
    """3.5.16.2: at (1,2,3), `G90 G81 G98 X4 Y5 Z1.5 R2.8`."""
    m = run(STATED + "F100 G0 X1 Y2 Z3\nG90 G81 G98 X4 Y5 Z1.5 R2.8\n")
    assert ends(m)[1:] == [("rapid", 4, 5, 3), ("rapid", 4, 5, 2.8), ("line", 4, 5, 1.5), ("rapid", 4, 5, 3)]
    assert m.cycle.tolist() == [0, 81, 81, 81, 81]


def test_g81_example_2() -> None:
    """3.5.16.2: at (1,2,3), `G91 G81 G98 X4 Y5 Z-0.6 R1.8 L3`."""
    m = run(STATED + "F100 G0 X1 Y2 Z3\nG91 G81 G98 X4 Y5 Z-0.6 R1.8 L3\n")
    assert ends(m)[1:] == [
        ("rapid", 1, 2, 4.8),
        *(
            move
            for x, y in ((5, 7), (9, 12), (13, 17))
            for move in (("rapid", x, y, 4.8), ("line", x, y, 4.2), ("rapid", x, y, 4.8))
        ),
    ]


def test_printed_session() -> None:
    """5.1.2: at (30,1,-0.5), `g91 g81 x3 y2 z-0.8 r1.5 l2`."""
    m = run(STATED + "F100 G0 X30 Y1 Z-0.5\ng91 g81 x3 y2 z-0.8 r1.5 l2\n")
    assert ends(m)[1:] == [
        ("rapid", 30, 1, 1.0),
        ("rapid", 33, 3, 1.0),
        ("line", 33, 3, 0.2),
        ("rapid", 33, 3, 1.0),
        ("rapid", 36, 5, 1.0),
        ("line", 36, 5, 0.2),
        ("rapid", 36, 5, 1.0),
    ]


def test_g83_pecks() -> None:
    """3.5.16.4: r0.2 z-1.1 q0.21 is seven pecks."""
    m = run(STATED + "F100 G0 X0 Y0 Z1\nG83 X1 Y1 R0.2 Z-1.1 Q0.21\n")
    bottoms = [z for kind, _, _, z in ends(m) if kind == "line"]
    assert bottoms == pytest.approx([-0.01, -0.22, -0.43, -0.64, -0.85, -1.06, -1.1])
    # out to the clear height after each, and back down to just above the last bottom
    assert [z for kind, _, _, z in ends(m)[4::3] if kind == "rapid"] == pytest.approx([1.0] * 7)


def test_sticky_z_is_read_again_as_an_increment() -> None:
    """C.3: `g81 x3 y4 r0.2 z-1.1` then `x1 y0 r0 g91 l3`: bottoms at 0.2 - 1.1 = -0.9 at X4, X5, X6."""
    m = run(STATED + "F100 G0 X0 Y0 Z1\ng99 g81 x3 y4 r0.2 z-1.1\nx1 y0 r0 g91 l3\n")
    assert [move[1:] for move in ends(m) if move[0] == "line"] == [
        (3, 4, -1.1),
        (4, 4, -0.9),
        (5, 4, -0.9),
        (6, 4, -0.9),
    ]


def test_clear_height() -> None:
    """3.5.20: G98 clears to the old Z if that is above R, G99 to R."""
    old = run(STATED + "F100 G0 X0 Y0 Z5\nG98 G81 X1 Z-1 R2\nX2\n")
    assert [z for kind, _, _, z in ends(old)] == [5, 5, 2, -1, 5, 5, 2, -1, 5]
    r = run(STATED + "F100 G0 X0 Y0 Z5\nG99 G81 X1 Z-1 R2\nX2\n")
    assert [z for kind, _, _, z in ends(r)] == [5, 5, 2, -1, 2, 2, -1, 2]


@pytest.mark.parametrize(
    ("code", "out", "dwells"),
    [("G82", "rapid", 1), ("G85", "line", 0), ("G86", "rapid", 1), ("G88", "rapid", 1), ("G89", "line", 1)],
)
def test_way_out(code: str, out: str, dwells: int) -> None:
    """3.5.16.3 and .6 to .9: which cycles dwell, and whether the tool leaves at feed."""
    m = run(STATED + f"F100 M3 S1000 G0 X0 Y0 Z2\nG99 {code} X1 Z-1 R2 P0.5\n")
    assert ends(m)[-2:] == [("line", 1, 0, -1), (out, 1, 0, 2)]
    assert [e[0] for e in events(m)].count("dwell") == dwells


def test_g84_comes_out_at_feed_with_the_spindle_reversed() -> None:
    """3.5.16.5."""
    m = run(STATED + "F150 S300 M3 G0 X0 Y0 Z2\nG99 G84 X1 Z-1 R2\nG0 X5\n")
    assert ends(m)[2:4] == [("line", 1, 0, -1), ("line", 1, 0, 2)]
    assert m.spindle.tolist() == [1, 1, 1, -1, 1]
    assert m.feed[2] == m.feed[3] == pytest.approx(150)


def test_g87_feeds_upward() -> None:
    """3.5.16.8: down beside the hole with the spindle stopped, then up to K at feed."""
    m = run(STATED + "F100 S300 M3 G0 X0 Y0 Z5\nG87 X10 Y0 Z-20 R5 I2 J0 K-8\n")
    cuts = [(a, b) for kind, a, b in zip(m.kind, m.z0, m.z1) if kind == 1]
    assert cuts == [(-20, -8), (-8, -20)]
    assert m.spindle[(m.kind == 0) & (m.z1 == -20)].tolist() == [0, 0, 0]  # down, across to the hole, and back


@pytest.mark.parametrize(
    "block",
    [
        "G81 Z-1 R2 L0 X1",
        "G81 X1 Z-1 R2 L1.5",
        "G81 X1 Z3 R2",
        "G83 X1 Z-1 R2 Q0",
        "G82 X1 Z-1 R2 P-1",
        "G93 G81 X1 Z-1 R2",
        "G41 G81 X1 Z-1 R2",
        "M4 G84 X1 Z-1 R2",
        "M5 G86 X1 Z-1 R2",
        "G81 R2",
    ],
)
def test_refused(block: str) -> None:
    """3.5.16: what each cycle refuses. A refused block is not executed."""
    m = run(STATED + f"F100 S100 M3 G0 X0 Y0 Z5\n{block}\n")
    assert ("cycle-refused", 3) in faults(m)
    assert len(m) == 1


@pytest.mark.parametrize("block", ["G81 X1 R2", "G81 X1 Z-1", "G83 X1 Z-1 R2"])
def test_words_missing_on_first_use(block: str) -> None:
    """3.5.16: Z, R (and Q) must stand on the first use."""
    m = run(STATED + f"F100 G0 X0 Y0 Z5\n{block}\n")
    assert faults(m) == [("word-missing", 3)]


def test_axis_words_after_g80() -> None:
    """3.5.15: axis words while G80 is in force are an error unless a group 0 code uses them."""
    m = run(STATED + "F100 G0 X0 Y0 Z5\nG80\nX1\n")
    assert faults(m) == [("no-motion-mode", 4)]
    assert faults(run(STATED + "F100 G0 X0 Y0 Z5\nG80\nG92 X1\n")) == []


@pytest.mark.parametrize(
    ("plane", "letters", "places"),
    [("G17", "XYZ", (0, 1, 2)), ("G18", "ZXY", (2, 0, 1)), ("G19", "YZX", (1, 2, 0))],
)
@pytest.mark.parametrize("code", ["G81", "G83"])
def test_cycles_drill_along_the_third_axis_of_the_plane(
    plane: str, letters: str, places: tuple[int, int, int], code: str
) -> None:
    """3.5.16: example 1 of 3.5.16.2 (and G83 with one peck) in each plane, axes in the order of 3.5.16's table."""
    u, v, w = letters
    start = f"G21 G90 G94 {plane} G54\nF100 G0 {u}1 {v}2 {w}3\n"
    m = run(start + f"{code} G98 {u}4 {v}5 {w}1.5 R2.8 {'Q2' if code == 'G83' else ''}\n")
    assert faults(m) == []
    ours = [tuple(round(at[n], 6) for n in places) for at in zip(m.x1.tolist(), m.y1.tolist(), m.z1.tolist())]
    assert ours == [(1, 2, 3), (4, 5, 3), (4, 5, 2.8), (4, 5, 1.5), (4, 5, 3)]
