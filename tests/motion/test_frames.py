"""Later habits of coordinates (from memory, no source): local shifts, and turned, scaled, mirrored and polar frames."""

from __future__ import annotations

import numpy as np
import pytest
from shapely import LineString, affinity

from gclint.tables.motion import OTHER_FRAME, RIGHT, Motion
from tests.motion.run import STATED, ends, faults, run


def test_g52_shifts_every_move_until_it_is_set_back() -> None:
    m = run(STATED + "G0 X0 Y0 Z5\nG52 X10 Y20\nX0 Y0\nG91 X1\nG90 G52 X0 Y0\nX0 Y0\n")
    assert ends(m)[1:] == [("rapid", 10, 20, 5), ("rapid", 11, 20, 5), ("rapid", 0, 0, 5)]
    assert faults(m) == []


def test_g52_before_the_first_move_and_in_inches() -> None:
    m = run("G20 G90 G94 G17 G54\nG52 X1\nG0 X0 Y0 Z1\n")
    assert ends(m) == [("rapid", 25.4, 0, 25.4)]


SHAPE = "X20 Y0\nG1 X30 Y4 F100\nG2 X34 Y8 I0 J4\nG3 X38 Y8 R2\nG1 Y20 Z-1\nG91 X-3 Y2\nG90 X20\nG0 Z5\n"
FRAMES = {
    "G68 X4 Y-2 R33": lambda line: affinity.rotate(line, 33, origin=(4, -2)),
    "G51 X1 Y2 P2": lambda line: affinity.scale(line, 2, 2, 2, origin=(1, 2, 1)),
    "G51.1 X7": lambda line: affinity.scale(line, -1, 1, origin=(7, 0)),
    "G51.1 X7 Y-1": lambda line: affinity.scale(line, -1, -1, origin=(7, -1)),
    "G51 X0 Y0 I-1.5 J1.5 K1": lambda line: affinity.scale(line, -1.5, 1.5, 1, origin=(0, 0, 0)),
}


def path(m: Motion, first: int, last: int) -> LineString:
    """The toolpath of these moves as a polyline, 12 chords an arc."""
    points = []
    for n in range(first, last):
        if m.kind[n] < 2:
            points += [(m.x0[n], m.y0[n], m.z0[n]), (m.x1[n], m.y1[n], m.z1[n])]
            continue
        start = np.arctan2(m.y0[n] - m.cv[n], m.x0[n] - m.cu[n])
        radius = np.hypot(m.x0[n] - m.cu[n], m.y0[n] - m.cv[n])
        for part in np.linspace(0, 1, 13):
            angle = start + np.radians(m.sweep[n]) * part
            z = m.z0[n] + part * (m.z1[n] - m.z0[n])
            points.append((m.cu[n] + radius * np.cos(angle), m.cv[n] + radius * np.sin(angle), z))
    return LineString(points)


@pytest.mark.parametrize("code", FRAMES)
def test_moves_in_a_frame_are_where_affine_geometry_puts_them(code: str) -> None:
    """The affine maps of shapely are the reference; that controllers do just this is from memory."""
    plain = run(STATED + f"G0 X1 Y2 Z1\n{SHAPE}")
    framed = run(STATED + f"G0 X1 Y2 Z1\n{code}\n{SHAPE}")
    assert faults(framed) == []
    assert not any(framed.flags & OTHER_FRAME)
    assert len(framed) == len(plain)
    wanted = np.array(FRAMES[code](path(plain, 2, len(plain))).coords)
    found = np.array(path(framed, 2, len(framed)).coords)
    np.testing.assert_allclose(found, wanted, atol=1e-6)


@pytest.mark.parametrize(
    ("code", "cancel"), [("G68 X0 Y0 R45", "G69"), ("G51 X0 Y0 P2", "G50"), ("G51.1 X0", "G50.1 X0"), ("G16", "G15")]
)
def test_a_cancel_ends_a_frame_and_moves_nothing(code: str, cancel: str) -> None:
    m = run(STATED + f"G0 X1 Y2 Z5\n{code}\nX20 Y0\nG1 X30 F100\n{cancel}\nG0 X0 Y0\nZ6\n")
    assert faults(m) == []
    assert len(m) == 5
    assert ends(m)[-1] == ("rapid", 0, 0, 6)


def test_a_factor_of_hundreds_counts_thousandths() -> None:
    m = run(STATED + "G0 X0 Y0 Z5\nG51 X0 Y0 P2000\nX10 Y5\n")
    assert ends(m)[-1] == ("rapid", 20, 10, 5)


def test_mirrored_then_scaled_then_turned() -> None:
    m = run(STATED + "G0 X0 Y0 Z5\nG68 X0 Y0 R90\nG51 X0 Y0 P2\nG51.1 X0\nX10 Y5\n")
    assert ends(m)[-1] == pytest.approx(("rapid", -10, -20, 5), abs=1e-9)


def test_polar_words_are_radius_and_angle_about_the_origin() -> None:
    m = run(STATED + "G0 X0 Y0 Z5 F100\nG16\nG99 G81 X10 Y30 Z-2 R1\nY120\nX20\nG15 G80\nG0 X0 Y0\n")
    holes = [(float(x), float(y)) for kind, x, y in zip(m.kind, m.x1, m.y1) if kind == 1]
    wanted = [complex(0, 0) + r * np.exp(1j * np.radians(a)) for r, a in ((10, 30), (10, 120), (20, 120))]
    np.testing.assert_allclose(holes, [(w.real, w.imag) for w in wanted], atol=1e-9)
    assert faults(m) == []


def test_compensation_changes_sides_in_a_mirror() -> None:
    m = run(STATED + "G0 X0 Y0 Z5\nG51.1 X0\nG1 G41 D1 X10 F100\n")
    assert m.flags[-1] & RIGHT


@pytest.mark.parametrize(
    "code",
    [
        "G68 X0 Y0", "G91 G68 X0 Y0 R45", "G18 G68 X0 Z0 R45", "G68 X0 Y0 I0 J0 K1 R45", "G51 X0 Y0 P0", "G51.1",
        "G51 X0 Y0 P2\nG99 G81 X1 Y1 Z-1 R1 F100", "G51 X0 Y0 I2 J1\nG2 X3 Y2 I1 J0 F100", "G16\nG91 X5 Y30",
        "G68 X0 Y0 R45\nG92 X3", "G68 X0 Y0 R45\nG10 L20 P1 X0",
    ],
)  # fmt: skip
def test_what_is_not_followed_is_a_fault_and_its_moves_stand_apart(code: str) -> None:
    m = run(STATED + f"G0 X1 Y2 Z5\n{code}\nG90 G0 X20 Y0\nG69 G50 G50.1 G15 G80\nG0 X0 Y0\n")
    assert [kind for kind, _ in faults(m)] == ["frame-turned"]
    last = [n for n in range(len(m)) if m.x1[n] == 20]
    assert all(m.flags[n] & OTHER_FRAME for n in last)
    assert ends(m)[-1][:3] == ("rapid", 0, 0)


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
