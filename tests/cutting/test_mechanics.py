"""Force, power and bending: properties that must hold whatever the numbers."""

from __future__ import annotations

import numpy as np
import pytest
from scipy.integrate import trapezoid

from gclint.cutting import formulas as f
from gclint.cutting import mechanics as m
from gclint.tables.setup import Tool

KIENZLE = m.Law(700.0, 700.0, 0.25, 0.01)
RANGE = m.Law(20.0, 50.0, 0.0, 0.01)


def test_a_slot_carries_one_straight_tooth_or_a_quarter_of_many() -> None:
    """Geometry: two teeth opposite each other never share a slot; the mean sum of z teeth is z / 4 of kc ap fz."""
    assert float(m.share_of_edge(180.0)) == pytest.approx(1.0)
    assert float(m.share_of_sum(180.0, 8)) == pytest.approx(2.0)
    assert float(m.largest_force(20.0, RANGE, 0.1, 3.0, 180.0, 2)) == pytest.approx(20 * 3 * 0.1)
    assert float(m.largest_force(20.0, RANGE, 0.1, 3.0, 180.0, 8)) == pytest.approx(2 * 20 * 3 * 0.1)


@pytest.mark.parametrize("phi", [20.0, 60.0, 90.0, 120.0, 180.0])
@pytest.mark.parametrize("lag", [1.0, 30.0, 90.0, 200.0])
def test_share_of_edge_against_a_search(phi: float, lag: float) -> None:
    """The helix spreads the edge: the best place for it, found by trying all of them."""
    angles = np.radians(np.linspace(-lag, phi + lag, 40001))
    inside = np.where((angles >= 0) & (angles <= np.radians(phi)), np.sin(angles), 0.0)
    step = angles[1] - angles[0]
    total = np.concatenate(([0.0], np.cumsum(inside))) * step
    width = round(np.radians(lag) / step)
    best = (total[width:] - total[:-width]).max() / np.radians(lag)
    assert float(m.share_of_edge(phi, lag)) == pytest.approx(best, abs=2e-3)


@pytest.mark.parametrize("law", [KIENZLE, RANGE])
@pytest.mark.parametrize("ae", [0.2, 1.5, 3.0, 6.0])
@pytest.mark.parametrize("fz", [0.002, 0.0101, 0.04, 0.3])
def test_the_inverses_give_back_what_went_in(law: m.Law, ae: float, fz: float) -> None:
    phi, lag = f.engagement_angle(ae, 6.0), m.edge_lag(4.0, 6.0, 30.0)
    force = m.largest_force(law.high, law, fz, 4.0, phi, 2, lag)
    share = np.maximum(m.share_of_edge(phi, lag), m.share_of_sum(phi, 2))
    by_force = m.feed_for_load(force, law.high * 4.0 * share, m.share_of_edge(phi), law)
    assert float(by_force) == pytest.approx(fz)
    vf, hm = fz * 18000.0 * 2, f.chip_thickness_mean(fz, ae, 6.0)
    power = m.cutting_power(4.0 * ae, vf, law.kc(hm)[1])
    by_power = m.feed_for_load(power, law.high * 4.0 * ae / 60000.0, hm / vf, law)
    assert float(by_power) == pytest.approx(vf)


def test_the_range_of_a_force_is_its_two_ends() -> None:
    fz, ae = np.linspace(0.005, 0.2, 40), np.linspace(0.1, 6.0, 40)
    phi = f.engagement_angle(ae, 6.0)
    mean, low, high = m.force_range(KIENZLE, fz, 3.0, phi, 2, (40.0, 10.0), 0.9)
    assert low == pytest.approx(m.largest_force(KIENZLE.low, KIENZLE, fz, 3.0, phi, 2, 40.0, 0.9))
    assert high == pytest.approx(m.largest_force(KIENZLE.high, KIENZLE, fz, 3.0, phi, 2, 10.0, 0.9))
    assert np.all(mean <= low)
    assert np.all(low <= high)


def test_force_and_power_rise_with_feed_width_and_depth() -> None:
    rises = np.linspace(0.01, 6.0, 200)
    for law in (KIENZLE, RANGE):
        by_feed = m.largest_force(law.low, law, rises / 20.0, 3.0, 90.0, 2)
        by_width = m.largest_force(law.low, law, 0.05, 3.0, f.engagement_angle(rises, 6.0), 2)
        by_depth = m.largest_force(law.low, law, 0.05, rises, 90.0, 2)
        for column in (by_feed, by_width, by_depth):
            assert np.all(np.diff(column) >= -1e-12)
            assert column[-1] > column[0]


TOOL = Tool(1, "flat", 3.0, flute_length=12.0, stickout=30.0, shank=6.0, made_of="Solid carbide")


def test_a_longer_thinner_softer_tool_bends_more() -> None:
    from msgspec.structs import replace

    def bend(**changed: object) -> float:
        beam = m.beam_of(replace(TOOL, **changed))
        assert beam is not None
        return float(beam.bend_per_newton(1.0))

    assert bend(stickout=40.0) > bend() > bend(stickout=20.0)
    assert bend(diameter=2.5) > bend() > bend(diameter=4.0)
    assert bend(made_of="HSS") > bend()
    assert bend(neck=20.0) > bend()


def test_a_stepped_cantilever_against_numeric_integration() -> None:
    """Virtual work with the trapezium rule on a fine grid: independent of the closed form."""
    beam = m.beam_of(TOOL, 500.0)
    assert beam is not None
    for at in (0.0, 2.0, 11.0, 15.0):
        x = np.linspace(0.0, 30.0, 600_001)
        d = np.where(x <= 12.0, 0.8 * 3.0, 6.0)
        curve = np.maximum(x - at, 0.0) / (600e3 * np.pi * d**4 / 64.0)
        slope_sum = trapezoid(curve * x, x) + 1.0 / 500.0
        assert float(beam.bend_per_newton(at)) == pytest.approx(slope_sum, rel=1e-4)
        stress = (np.maximum(x - at, 0.0) * 32.0 / (np.pi * d**3)).max()
        assert float(beam.stress_per_newton(at)) == pytest.approx(stress, rel=1e-4)


def test_what_is_missing_is_named_and_nothing_is_guessed() -> None:
    from msgspec.structs import replace

    assert m.missing_for_beam(Tool(1, "flat", 3.0)) == ("stickout", "flute_length", "shank", "made_of")
    assert m.missing_for_beam(replace(TOOL, flute_length=30.0, shank=None)) == ()
    assert m.beam_of(replace(TOOL, made_of="unobtainium")) is None
    assert m.beam_of(replace(TOOL, shape="v")) is None


def test_spindle_power_by_curve_and_by_rating() -> None:
    curve = ((6000.0, 400.0), (12000.0, 800.0), (24000.0, 800.0))
    power = m.spindle_power(curve, 700.0, np.array([3000.0, 6000.0, 9000.0, 30000.0]))
    assert power.tolist() == pytest.approx([200.0, 400.0, 600.0, 800.0])
    assert float(m.spindle_power((), 700.0, 5000.0)) == pytest.approx(700.0)
    assert np.isnan(m.spindle_power((), None, 5000.0))


@pytest.mark.parametrize(
    ("said", "name"),
    [
        ("carbide", "carbide"), ("Solid Carbide", "carbide"), ("HSS", "hss"), ("hss-co", "hss"), ("cobalt", "hss"),
        ("high-speed steel", "hss"), ("carbide-tipped", "steel"), ("tool steel", "steel"), ("cheese", None),
        (None, None),
    ],
)  # fmt: skip
def test_what_a_tool_is_made_of(said: str | None, name: str | None) -> None:
    made = m.tool_material(said)
    assert (made.name if made else None) == name


def test_a_tapered_ball_lies_between_its_two_ends() -> None:
    taper = Tool(1, "tapered-ball", 6.0, flutes=2, flute_length=20.0, stickout=30.0, shank=6.0, made_of="carbide",
                 tip_diameter=2.0, angle=10.0)  # fmt: skip
    thick = Tool(1, "ball", 6.0, flutes=2, flute_length=20.0, stickout=30.0, shank=6.0, made_of="carbide")
    thin = Tool(1, "ball", 2.0, flutes=2, flute_length=20.0, stickout=30.0, shank=6.0, made_of="carbide")
    bends = []
    for tool in (thick, taper, thin):
        beam = m.beam_of(tool)
        assert beam is not None
        bends.append(float(beam.bend_per_newton(0.5)))
    assert bends[0] < bends[1] < bends[2]
    assert m.missing_for_beam(Tool(1, "tapered-ball", 6.0))[-2:] == ("tip_diameter", "angle")
