"""Milling kinematics against outside sources, named beside each check."""

from __future__ import annotations

import math

import pytest

from gclint.cutting import formulas as f

INCH, FOOT = 25.4, 0.3048


def test_speed_and_feed_in_inches() -> None:
    """Reckoned from n = vc / (pi D) and vf = fz n z (quantities of ISO 3002-1 and -3): 250 ft/min, 1 in, 4 teeth."""
    n = f.speed_for(250 * FOOT, INCH)
    assert n == pytest.approx(954.9, abs=0.1)
    assert f.feed_per_tooth(30.56 * INCH, n, 4) / INCH == pytest.approx(0.008, abs=1e-5)


def test_speed_without_the_rounded_factor() -> None:
    """Reckoned: n = 12 V / (pi D) with pi, not with the 4 for 12 / pi that gives 1067; 100 ft/min on 0.375 in."""
    assert f.speed_for(100 * FOOT, 0.375 * INCH) == pytest.approx(1018.6, abs=0.1)


def test_textbook_slot_mill() -> None:
    """El-Hofy, Fundamentals of Machining Processes, 2nd ed., p. 189: D 30, z 8, fz 0.1, 120 mm/min; 14.13 m/min."""
    n = 120 / (8 * 0.1)
    assert f.cutting_speed(30.0, n) == pytest.approx(14.137, abs=0.001)
    assert f.feed_per_tooth(120.0, n, 8) == pytest.approx(0.1)


@pytest.mark.parametrize(("share", "angle"), [(0.1, 36.870), (0.25, 60.0), (0.5, 90.0), (1.0, 180.0)])
def test_engagement_angle(share: float, angle: float) -> None:
    """El-Hofy, Fundamentals of Machining Processes, 2nd ed., p. 174: cos(phi) = 1 - 2 ae / D."""
    assert float(f.engagement_angle(share * 6.0, 6.0)) == pytest.approx(angle, abs=0.001)


@pytest.mark.parametrize(
    ("share", "largest", "mean"), [(0.1, 0.6, 0.3108), (0.25, 0.8660, 0.4775), (0.5, 1.0, 0.6366), (1.0, 1.0, 0.6366)]
)
def test_chip_thickness(share: float, largest: float, mean: float) -> None:
    """El-Hofy, Fundamentals of Machining Processes, 2nd ed., p. 174: exact forms of hex and hm, in shares of fz."""
    assert float(f.chip_thickness_largest(1.0, share * 6.0, 6.0)) == pytest.approx(largest, abs=1e-4)
    assert float(f.chip_thickness_mean(1.0, share * 6.0, 6.0)) == pytest.approx(mean, abs=1e-4)


def test_mean_chip_of_a_centred_face_cut() -> None:
    """Geometry: the mean of cos over 30 degrees on both sides is 3 / pi = 0.9549; a side cut of D / 2 has 2 / pi."""
    arc = 2 * math.degrees(math.asin(3.0 / 6.0))
    assert float(f.chip_thickness_mean_of_arc(1.0, 3.0, 3.0, arc)) == pytest.approx(0.9549, abs=1e-4)


@pytest.mark.parametrize(("share", "mean"), [(0.1, 0.3108), (0.25, 0.4775), (0.5, 0.6366), (1.0, 0.6366)])
def test_mean_chip_of_an_arc_at_the_side(share: float, mean: float) -> None:
    """Fundamentals of Machining Processes, 2nd ed., 2013, p. 174: the form for a measured arc is that of a side cut."""
    arc = float(f.engagement_angle(share * 6.0, 6.0))
    assert float(f.chip_thickness_mean_of_arc(1.0, share * 6.0, 3.0, arc)) == pytest.approx(mean, abs=1e-4)


@pytest.mark.parametrize(("fz", "runout", "thick"), [(0.025, 0.01, 0.035), (0.05, 0.03, 0.08), (0.01, 0.05, 0.02)])
def test_chip_of_a_tool_that_runs_out(fz: float, runout: float, thick: float) -> None:
    """From memory, no source read: with two flutes the teeth take fz +/- the runout. Geometry: one alone takes 2 fz."""
    assert float(f.chip_thickness_with_runout(fz, runout, 2)) == pytest.approx(thick)
    assert float(f.chip_allowed_with_runout(thick, runout, 2)) == pytest.approx(fz)


@pytest.mark.parametrize("z", [1, 2, 3, 4, 6])
@pytest.mark.parametrize("runout", [0.004, 0.02, 0.2])
def test_chip_of_a_tool_that_runs_out_against_its_teeth_turned_round(z: int, runout: float) -> None:
    """Geometry: the surface that the teeth leave one after another, for all directions of the eccentricity."""
    fz, thickest = 0.03, 0.0
    for turned in range(720):
        radius = [runout / 2 * math.cos(2 * math.pi * i / z + math.radians(turned / 2)) for i in range(z)]
        chips = [min(k * fz + radius[0] - radius[-k % z] for k in range(1, z + 1))]
        thickest = max(thickest, *chips)
    most = float(f.chip_thickness_with_runout(fz, runout, z))
    assert thickest <= most + 1e-9
    assert most == pytest.approx(thickest, rel=0.12)
    assert float(f.chip_allowed_with_runout(most, runout, z)) == pytest.approx(fz)


@pytest.mark.parametrize(
    ("D", "ap", "De"), [(6.0, 0.3, 2.615), (10.0, 1.0, 6.0), (9.525, 0.762, 5.168), (6.0, 3.0, 6.0), (6.0, 5.0, 6.0)]
)
def test_effective_diameter_of_a_ball(D: float, ap: float, De: float) -> None:
    """Geometry: De = 2 sqrt(ap (D - ap)), the chord of a circle ap above its lowest point."""
    assert float(f.effective_diameter_ball(D, ap)) == pytest.approx(De, abs=1e-3)


@pytest.mark.parametrize(
    ("angle", "ap", "tip", "De"), [(60.0, 3.0, 0.0, 3.464), (90.0, 1.0, 0.0, 2.0), (30.0, 0.2, 0.2, 0.307)]
)
def test_effective_diameter_of_a_v_tool(angle: float, ap: float, tip: float, De: float) -> None:
    """Geometry: De = t + 2 ap tan(A / 2)."""
    assert float(f.effective_diameter_v(12.7, angle, ap, tip)) == pytest.approx(De, abs=1e-3)


def test_effective_diameters_meet_where_their_shapes_meet() -> None:
    """Geometry: a bull nose is a ball where the corner is the whole tool, and full size above its corner; a tapered
    ball has one diameter where ball and cone touch."""
    assert float(f.effective_diameter_bull_nose(6.0, 3.0, 0.3)) == pytest.approx(2.615, abs=1e-3)
    assert float(f.effective_diameter_bull_nose(6.0, 1.0, 2.0)) == pytest.approx(6.0)
    for ap in (0.912 - 1e-6, 0.912 + 1e-3):  # touch at 1 (1 - sin 5 deg) = 0.91284
        assert float(f.effective_diameter_tapered_ball(6.0, 10.0, ap, 2.0)) == pytest.approx(1.9924, abs=1e-3)
    assert float(f.sin_edge_angle_bull_nose(1.0, 0.5)) == pytest.approx(0.8660, abs=1e-4)


@pytest.mark.parametrize(
    ("n", "D", "vc"),
    [
        (10000.0, 3.175, 99.7), (24000.0, 3.175, 239.4), (30000.0, 3.175, 299.2),
        (10000.0, 6.35, 199.5), (18000.0, 6.35, 359.1), (24000.0, 6.35, 478.8),
    ],
)  # fmt: skip
def test_edge_speeds_of_small_tools(n: float, D: float, vc: float) -> None:
    """vc = pi D n / 1000."""
    assert f.cutting_speed(D, n) == pytest.approx(vc, abs=0.06)


@pytest.mark.parametrize(("angle", "length"), [(3.0, 57.24), (5.0, 34.29), (10.0, 17.01)])
def test_ramp_length(angle: float, length: float) -> None:
    """Geometry: 3 mm deep."""
    assert f.ramp_length(3.0, angle) == pytest.approx(length, abs=0.005)
