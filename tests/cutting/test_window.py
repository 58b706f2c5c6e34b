"""The operating window against its own inequalities, against shapely, and against practice. Shop data are invented."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from gclint.cards.material import material
from gclint.cutting import mechanics
from gclint.cutting.cut_limits import Bounds, Cut, usual_cut, window_of
from gclint.cutting.limits import Level, Limit, Ray, Speed
from gclint.cutting.nearest_pair import Part, marks_that_do, nearest_to, other_speed, same_speed
from gclint.cutting.window import Window, aim, runnable
from gclint.tables.material import Sourced
from gclint.tables.setup import Axes, Controller, DialMark, Hold, Machine, Setup, Spindle, Tool
from gclint.tables.setup import Window as Given

INVENTED = ("practice", "invented")
BOUNDS = Bounds(*(Sourced(value, *INVENTED) for value in (0.05, 0.15, 1.0, 0.8)))
MARKS = tuple(DialMark(mark, speed, None) for mark, speed in zip("ABCDEF", (9500, 12500, 16000, 19500, 23000, 26500)))
DIAL = Spindle("dial", 9500, 26500, MARKS)
COMMANDED = Spindle("commanded", 8000, 24000)
ROUTER = Machine(feed_limit=Axes(2500, 2500, 800))
EIGHTH = Tool(
    1, "flat", 3.175, flutes=2, helix="down-cut", stickout=20, flute_length=12, shank=3.175, made_of="carbide"
)  # fmt: skip
SIX = Tool(1, "flat", 6.0, flutes=2)


def setup_of(
    name: str = "cured-epoxy", spindle: Spindle = COMMANDED, machine: Machine = ROUTER,
    band: tuple[float, float] | None = None,
) -> Setup:  # fmt: skip
    measured = {} if band is None else {1: {"": Given(*band, "mm", *INVENTED)}}
    card = material(name)
    return Setup(machine, spindle, Controller(), {}, card, None, None, None, Hold(), measured_windows=measured)


def straight(limits: list[Limit], spindle: Spindle = COMMANDED, reached: list[float] | None = None) -> Window:
    caps = np.array(reached or [math.inf])
    return Window(tuple(limits), spindle, caps, np.ones(len(caps)))


def ray(slope: float, least: bool) -> Ray:
    return Ray("chip", least, *INVENTED, slope=np.array([slope]))


def speed(n: float, least: bool) -> Speed:
    return Speed("edge", least, *INVENTED, speed=np.array([n]))


@given(
    low=st.floats(0.01, 0.2), high=st.floats(0.02, 0.6), most=st.floats(300, 6000),
    slow=st.floats(3000, 12000), fast=st.floats(9000, 30000),
)  # fmt: skip
@settings(deadline=None, derandomize=True)
def test_straight_limits_give_the_polygon_that_shapely_cuts(
    low: float, high: float, most: float, slow: float, fast: float
) -> None:
    level = Level("feed", False, *INVENTED, feed=most)
    limits = [ray(low, True), ray(high, False), level, speed(slow, True), speed(fast, False)]
    far = 1e6
    cut = shapely.Polygon([(slow, 0), (fast, 0), (fast, most), (slow, most)]) if slow < fast else shapely.Polygon()
    cut &= shapely.Polygon([(0, 0), (far, low * far), (0, low * far)])
    cut &= shapely.Polygon([(0, 0), (far, 0), (far, high * far)])
    region = straight(limits).region(1000, 40000, 1e5)
    made = [shapely.Polygon([(corner.speed, corner.feed) for corner in outline]) for outline in region]
    area = sum(polygon.area for polygon in made)
    assert area == pytest.approx(cut.area, rel=1e-6, abs=1e-3 * most)
    if made and cut.area > 1:
        assert made[0].symmetric_difference(cut).area < 1e-6 * cut.area + 1e-3
        assert len(region[0]) <= 8  # corners, not samples


@pytest.mark.parametrize("name", ["cured-epoxy", "aluminium-6061", "birch-plywood", "hdpe"])
@pytest.mark.parametrize("operation", ["slot", "side", "finish"])
def test_the_region_is_where_no_inequality_fails(name: str, operation: str) -> None:
    """Sampled pairs against each limit written out anew: chip, edge, bending, power, machine."""
    curve = ((8000.0, 120.0), (16000.0, 240.0), (24000.0, 200.0))
    shop = setup_of(name, Spindle("commanded", 8000, 24000, power_curve=curve))
    cut = usual_cut(EIGHTH, operation, shop)
    window = window_of(cut, EIGHTH, shop, BOUNDS)
    polygons = [shapely.Polygon([(c.speed, c.feed) for c in outline]) for outline in window.region(8000, 24000, 9000)]
    rng = np.random.default_rng(1)
    for n, vf in zip(rng.uniform(8000, 24000, 300), rng.uniform(20, 4000, 300)):
        expected = _quiet(float(n), float(vf), cut, shop)
        assert window.inside(n, vf) == expected
        near = any(polygon.boundary.distance(shapely.Point(n, vf)) < 2 for polygon in polygons)
        if not near:
            assert any(polygon.contains(shapely.Point(n, vf)) for polygon in polygons) == expected


def _quiet(n: float, vf: float, cut: Cut, shop: Setup) -> bool:
    """Whether a pair keeps every limit, from the formulas themselves."""
    from gclint.cutting import formulas
    from gclint.cutting.windows import floors_for, windows_for

    assert shop.material is not None
    D, z = EIGHTH.diameter, 2
    own = windows_for(shop.material, EIGHTH, None)
    fz, vc = vf / n / z, math.pi * D * n / 1000
    h_ex = float(formulas.chip_thickness_largest(fz, cut.ae, D))
    h_m = float(formulas.chip_thickness_mean(fz, cut.ae, D))
    chip = own.chip[cut.operation]
    low = chip.low or 0.0
    for floor in floors_for(shop.material, EIGHTH, None):
        low = float(np.interp(vc, floor.edge_speed, floor.low))
        low *= shop.material.finish_share.value if cut.operation == "finish" else 1.0
    if h_ex < low or h_ex > (chip.high or math.inf) or vf > 2500:
        return False
    if own.edge_speed and own.edge_speed.high and vc > own.edge_speed.high:
        return False
    law = mechanics.law_of(shop.material.force)
    if law is None:
        return True
    spindle = shop.spindle
    kc = math.sqrt(float(law.kc(h_m)[0]) * float(law.kc(h_m)[1]))
    if cut.ae * cut.ap * vf * kc / 60000 > 0.8 * float(mechanics.spindle_power(spindle.power_curve, None, n)):
        return False
    beam = mechanics.beam_of(EIGHTH)
    assert beam is not None
    phi = formulas.engagement_angle(cut.ae, D)
    lags = tuple(mechanics.edge_lag(cut.ap, D, helix) for helix in (40.0, 20.0))
    mean, least, most = mechanics.force_range(law, fz, cut.ap, phi, 2.0, (lags[0], lags[1]))
    at = cut.ap / 2
    bends = math.sqrt(mean * most) * float(beam.bend_per_newton(at)) > (0.05 if cut.wall else 0.15)
    return not bends and math.sqrt(least * most) * float(beam.stress_per_newton(at)) <= 1500


def test_practice_in_cured_epoxy() -> None:
    """1/8 in bits cut well at 40 to 60 in/min and 10,000 to 14,000 rev/min on a dial that turns 15 % slower than it
    says; at 20,000 and more the same feed makes dust. Common practice, no source."""
    dial = Spindle("commanded", 5000, 30000)
    window = window_of(Cut("slot", 3.175, 1.0, wall=False), EIGHTH, setup_of(spindle=dial), BOUNDS)
    for stated, inches in ((10000, 40), (10000, 60), (12000, 45), (12000, 60), (14000, 50), (14000, 60)):
        assert window.inside(0.85 * stated, inches * 25.4)
    for stated in (20000, 24000):
        for inches in (40, 50, 60):
            names = {one.limit.name for one in window.broken(0.85 * stated, inches * 25.4)}
            assert "thinnest chip" in names


def test_every_pair_it_gives_is_inside() -> None:
    for name in ("cured-epoxy", "aluminium-6061", "birch-plywood"):
        for spindle in (COMMANDED, DIAL):
            window = window_of(usual_cut(EIGHTH, "side", setup_of(name)), EIGHTH, setup_of(name, spindle), BOUNDS)
            best = window.best()
            pairs = [] if best is None else [(best.speed, best.feed)]
            pairs += [(mark.true, feed) for mark, feed in window.marks() if feed is not None]
            for n in range(8000, 24001, 1000):
                feed, other = window.same_speed(n, 1500), window.same_feed(n, 700)
                pairs += [(n, feed)] if feed is not None else []
                pairs += [(other.speed, 700)] if other else []
            assert pairs
            for n, vf in pairs:
                assert window.inside(n, vf)


def test_the_best_pair_lies_farthest_from_all_limits() -> None:
    window = window_of(usual_cut(EIGHTH, "slot", setup_of()), EIGHTH, setup_of(), BOUNDS)
    best = window.best()
    assert best is not None
    most = max(window.margin(n, vf) for n in range(8000, 24001, 100) for vf in range(100, 2500, 20))
    assert window.margin(best.speed, best.feed) > most - 0.07  # of those as far within 5 %, and rounded


def test_a_dial_turned_too_high() -> None:
    """Dial F turns 26,500 where S says 18,000: 0.028 mm instead of 0.042; the band is 0.035 to 0.10."""
    window = window_of(Cut("slot", 6.0, 3.0), SIX, setup_of("birch-plywood", DIAL, band=(0.035, 0.10)), BOUNDS)
    part = Part(1500, window, np.array([26500.0]))
    feeds = same_speed(part)
    assert feeds.low == pytest.approx(1855)
    assert feeds.to is not None
    assert 1855 <= feeds.to <= 2500
    marks = [pair.mark for pair in marks_that_do((part,), "F", 26500)]
    assert marks[0] == "D"
    assert "E" not in marks  # 0.033: still too thin


def test_arcs_that_never_reach_their_feed() -> None:
    """Lines at F2400 S18000 and arcs that run at most 759 mm/min; the band is 0.03 to 0.08."""
    setup = setup_of("cast-acrylic", machine=Machine(), band=(0.03, 0.08))
    window = window_of(Cut("slot", 6.0, 3.0), SIX, setup, BOUNDS)
    both = Window(window.limits, window.spindle, np.array([math.inf, 759.0]), np.array([38.0, 62.0]), 0.1, 0.1)
    pairs = other_speed((Part(2400, both, np.array([18000.0, 18000.0])),), nearest_to(18000))
    assert pairs is not None
    assert (pairs.speed, pairs.feeds) == (10000, (1200,))
    assert not both.inside(10000, 2400)


def test_the_machines_limit_is_kept_and_the_speed_lowered() -> None:
    window = straight([ray(0.12, True), ray(0.2, False), Level("feed", False, *INVENTED, feed=2500)])
    assert same_speed(Part(1440, window, np.array([24000.0]))).to is None
    pairs = other_speed((Part(1440, window, np.array([24000.0])),), nearest_to(24000))
    assert pairs is not None
    assert window.inside(pairs.speed, pairs.feeds[0])


def test_an_advised_feed_lies_a_third_into_the_window() -> None:
    assert aim(400, 600, 1800) == pytest.approx(1000, abs=1)
    assert aim(4000, 600, 1800) == pytest.approx(1400, abs=1)
    assert aim(700, 600, 1800) == 700
    assert aim(400, 800, math.inf) == pytest.approx(1000)
    assert aim(4000, 0, 1800) == pytest.approx(1440)


@given(st.floats(1, 5000), st.floats(1, 5000), st.floats(1, 5000), st.booleans())
def test_a_runnable_feed_is_round_and_inside(a: float, b: float, wanted: float, inch: bool) -> None:
    low, high = min(a, b), max(a, b)
    feed = runnable(min(max(wanted, low), high), low, high, inch)
    if feed is not None:
        assert low * (1 - 1e-5) <= feed <= high * (1 + 1e-5)
        shown = feed / 25.4 if inch else feed
        assert round(shown, 3) == pytest.approx(shown, abs=1e-9)
    if high > low * 1.2 and low > 20:
        assert feed is not None
