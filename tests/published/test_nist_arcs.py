"""Arcs against the NIST RS274/NGC report (NISTIR 6556, 2000), section 3.5.3 and the printed session of 5.1.2.

Centres and radii are the report's; sweeps and lengths follow from them by geometry.
"""

from __future__ import annotations

import math

import pytest

from gclint.cards.controller import controller
from gclint.motion.interpret import interpret
from gclint.program.read import read
from tests.motion.run import STATED, ends, faults, run


def test_centre_format_example() -> None:
    """3.5.3.2: from (7,7), `G17 G2 x10 y16 i3 j4 z9` is about (10,11) with radius 5."""
    m = run(STATED + "F100 G0 X7 Y7 Z9\nG17 G2 x10 y16 i3 j4 z9\n")
    assert (m.cu[1], m.cv[1]) == pytest.approx((10, 11))
    assert m.sweep[1] == pytest.approx(-143.1301, abs=1e-4)
    assert m.length[1] == pytest.approx(12.4905, abs=1e-4)


def test_radius_format_example() -> None:
    """5.1.2: from (3,1,0), `g2 x0 r7.01 z0.5` turns about (1.5, 7.8476)."""
    m = run(STATED + "F100 G0 X3 Y1 Z0\ng2 x0 r7.01 z0.5\n")
    assert ends(m)[1] == ("cw", 0, 1, 0.5)
    assert (m.cu[1], m.cv[1]) == pytest.approx((1.5, 7.8476), abs=1e-4)
    assert m.sweep[1] == pytest.approx(-24.7114, abs=1e-4)
    assert m.length[1] == pytest.approx(3.0644, abs=1e-4)


def test_negative_radius_takes_the_long_way() -> None:
    """3.5.3.1: R > 0 turns at most 180 degrees, R < 0 between 180 and 360."""
    short = run(STATED + "F100 G0 X0 Y0 Z0\nG3 X10 R6\n")
    long = run(STATED + "F100 G0 X0 Y0 Z0\nG3 X10 R-6\n")
    assert 0 < short.sweep[1] < 180 < long.sweep[1] < 360
    assert short.sweep[1] + long.sweep[1] == pytest.approx(360)


@pytest.mark.parametrize(("radius", "off"), [(5.001, 0.1), (5.0001, 0.0316)])
def test_radius_format_near_a_half_turn(radius: float, off: float) -> None:
    """3.5.3.1 warns: a small error of R moves the centre a lot. Numbers by geometry."""
    m = run(STATED + f"F100 G0 X0 Y0 Z0\nG2 X10 R{radius}\n")
    assert math.hypot(m.cu[1] - 5, m.cv[1]) == pytest.approx(off, rel=2e-3)


def test_end_at_the_start() -> None:
    """3.5.3: a full circle in centre format, an error in radius format."""
    m = run(STATED + "F100 G0 X5 Y0 Z0\nG2 X5 Y0 I-5\n")
    assert m.sweep[1] == pytest.approx(-360)
    assert m.length[1] == pytest.approx(10 * math.pi)
    m = run(STATED + "F100 G0 X5 Y0 Z0\nG2 X5 Y0 R5\n")
    assert faults(m) == [("arc-radius-impossible", 3)]
    assert len(m) == 1


@pytest.mark.parametrize(("off", "closes"), [(0.0019, True), (0.0021, False)])
def test_tolerance_of_the_radii(off: float, closes: bool) -> None:
    """3.5.3.2: the two radii may differ by 0.002 mm."""
    m = run(STATED + f"F100 G0 X0 Y0 Z0\nG3 X{10 + off} I5\nG1 X0\n", arc_tolerance=0.002, arc_tolerance_share=0.0)
    assert [kind for kind, _ in faults(m)] == ([] if closes else ["arc-does-not-close"])
    assert len(m) == (3 if closes else 2)


def test_tolerance_in_inches() -> None:
    """3.5.3.2: 0.0002 in where the program is in inches; a controller card gives the tolerance in mm."""
    card = {"arc_tolerance": 0.0002 * 25.4, "arc_tolerance_share": 0.0}
    assert faults(run("G20 G90 G94 G17 G54\nF10 G0 X0 Y0 Z0\nG3 X1.00019 I.5\n", **card)) == []
    assert faults(run("G20 G90 G94 G17 G54\nF10 G0 X0 Y0 Z0\nG3 X1.00021 I.5\n", **card)) == [("arc-does-not-close", 3)]


def test_centre_is_incremental_in_absolute_mode() -> None:
    """3.5.17: I J K are always increments."""
    a = run(STATED + "F100 G0 X10 Y10 Z0\nG2 X20 Y10 I5 J0\n")
    b = run(STATED + "F100 G0 X10 Y10 Z0\nG91 G2 X10 Y0 I5 J0\n")
    assert ends(a) == ends(b)
    assert (a.cu[1], a.cv[1]) == pytest.approx((15, 10)) == (b.cu[1], b.cv[1])


def test_xz_plane_is_seen_from_plus_y() -> None:
    """4.3.6.1: in G18 the first axis is Z and the second X; G2 is clockwise seen from +Y."""
    # Seen from +Y, with Z to the right and X up, clockwise from the left of the circle goes over its top (X > 0).
    m = run(STATED + "F100 G0 X0 Y0 Z-5\nG18 G2 X0 Z5 I0 K5\n")
    assert m.sweep[1] == pytest.approx(-180)
    assert (m.cu[1], m.cv[1]) == pytest.approx((0, 0))
    quarter = run(STATED + "F100 G0 X0 Y0 Z-5\nG18 G2 X5 Z0 I0 K5\n")
    assert quarter.sweep[1] == pytest.approx(-90)


def test_yz_plane() -> None:
    """3.5.3.2: G19 takes Y Z with J K; first axis Y, second Z."""
    m = run(STATED + "F100 G0 X0 Y5 Z0\nG19 G3 Y0 Z5 J-5 K0\n")
    assert m.sweep[1] == pytest.approx(90)
    assert (m.cu[1], m.cv[1]) == pytest.approx((0, 0))


def test_feed_goes_along_the_helix() -> None:
    """2.1.2.6: diameter 6, pitch 2: 18.955 mm along the helix against 18.850 mm in the plane."""
    m = run(STATED + "F100 G0 X3 Y0 Z0\nG3 I-3 Z-2\n")
    assert m.length[1] == pytest.approx(18.955, abs=1e-3)
    assert m.feed[1] == pytest.approx(100)


@pytest.mark.parametrize(
    ("unit", "end", "closes"),
    [("G21", "10.0019", True), ("G21", "10.0021", False), ("G20", "1.00019", True), ("G20", "1.00021", False)],
)
def test_how_far_the_radii_may_differ(unit: str, end: str, closes: bool) -> None:
    """3.5.3.2: it is an error if the radii differ by more than 0.0002 in or 0.002 mm."""
    radius = 10 if unit == "G21" else 1
    text = f"{unit} G90 G94 G17 G54\nF100 G0 X0 Y0 Z0\nG2 X{radius} Y{end} I{radius} J0\n"
    m = interpret(read(text.encode(), "test"), controller("rs274ngc"))
    assert [kind for kind, _ in faults(m)] == ([] if closes else ["arc-does-not-close"])
