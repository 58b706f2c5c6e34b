"""What each tooth bites, on tables made by hand."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest

from gclint.cards.material import material
from gclint.cutting.load import load
from gclint.tables.cutting import OPERATION, OPERATIONS, Cutting
from gclint.tables.motion import COMPENSATED, RAPID
from gclint.tables.setup import DialMark, Spindle, Tool, Window
from tests.cutting import tables

FLAT = Tool(1, "flat", 6.0, flutes=2)
DIAL = Spindle("dial", dial=(DialMark("A", 9500, 8100), DialMark("B", 12500, None)))


def loads(*tools: Tool, name: str | None = "beech", moves: dict[str, Any] | None = None, **columns: Any) -> Cutting:
    rows = max([1, *(np.size(value) for value in (*columns.values(), *(moves or {}).values()))])
    motion = tables.motion(rows, **(moves or {}))
    others = {key: columns.pop(key) for key in ("spindle", "dial", "measured_windows") if key in columns}
    setup = tables.setup(*tools, material=material(name) if name else None, **others)
    return load(motion, tables.timing(motion), tables.engagement(rows, **columns), setup)


# feed per tooth and chip


def test_feed_per_tooth_and_chip() -> None:
    cut = loads(FLAT, ae=[6.0, 3.0, 0.6, 0.1]).loads  # F1000, 10,000 rev/min, two flutes
    assert cut.fz == pytest.approx(0.05)
    assert cut.h_ex / cut.fz == pytest.approx([1.0, 1.0, 0.6, 0.2561], abs=1e-4)
    assert cut.h_m / cut.fz == pytest.approx([0.6366, 0.6366, 0.3108, 0.1288], abs=2e-4)
    assert cut.edge_speed == pytest.approx(188.496, abs=1e-2)


def test_fastest_feed_reached_wins_over_set_feed() -> None:
    motion = tables.motion(2)
    timing = tables.timing(motion)
    timing.peak[:] = [500.0, np.nan]
    setup = tables.setup(FLAT, material=material("beech"))
    assert load(motion, timing, tables.engagement(2), setup).loads.feed == pytest.approx([500.0, 1000.0])


@pytest.mark.parametrize(
    ("tool", "ap", "diameter", "share"),
    [
        (Tool(1, "ball", 6.0, flutes=2), 0.3, 2.615, 0.4359),
        (Tool(1, "ball", 6.0, flutes=2), 5.0, 6.0, 1.0),
        (Tool(1, "bull-nose", 6.0, flutes=2, corner_radius=1.0), 0.5, 5.732, 0.8660),
        (Tool(1, "bull-nose", 6.0, flutes=2), 0.5, 6.0, 1.0),
        (Tool(1, "v", 12.7, flutes=2, angle=60.0), 3.0, 3.464, 0.8660),
        (Tool(1, "tapered-ball", 6.0, flutes=2, angle=10.0, tip_diameter=2.0), 0.5, 1.732, 0.8660),
        (Tool(1, "tapered-ball", 6.0, flutes=2, angle=10.0, tip_diameter=2.0), 10.0, 3.5826, 0.9962),
    ],
)
def test_the_diameter_that_cuts(tool: Tool, ap: float, diameter: float, share: float) -> None:
    """`share` is h_ex / fz in a slot: the sine of the edge angle at the top of the cut."""
    cut = loads(tool, ap=ap, ae=diameter, radius=diameter / 2).loads
    assert cut.effective_diameter[0] == pytest.approx(diameter, abs=1e-3)
    assert cut.h_ex[0] / cut.fz[0] == pytest.approx(share, abs=1e-3)


@pytest.mark.parametrize(("angle", "share"), [(15.0, 0.991), (30.0, 0.966), (60.0, 0.866), (120.0, 0.5)])
def test_a_v_thins_the_chip_by_the_slope_of_its_edge(angle: float, share: float) -> None:
    """Geometry: the normal of a cone of full angle A lies A / 2 above level, so the chip is cos(A / 2) of the feed."""
    cut = loads(Tool(1, "v", 12.7, flutes=2, angle=angle), ap=1.0, ae=1.0, radius=0.5).loads
    assert cut.h_ex[0] / cut.fz[0] == pytest.approx(share, abs=1e-3)


@pytest.mark.parametrize("rib", [0.3, 0.6, 1.5])
def test_a_rib_cut_down_its_middle_takes_the_whole_feed(rib: float) -> None:
    """Geometry: dead ahead the chip is fz; the mean over the arc 2 asin(rib / D) is fz rib / (R arc)."""
    half = float(np.degrees(np.arcsin(rib / 6.0)))
    motion, engagement = tables.motion(1), tables.engagement(1, ae=rib, ap=1.0)
    object.__setattr__(engagement, "contact", tables.contact(rib, 1.0, around=half))
    cut = load(motion, tables.timing(motion), engagement, tables.setup(FLAT, material=material("beech"))).loads
    assert cut.h_ex[0] / cut.fz[0] == pytest.approx(1.0, rel=0.03)
    assert cut.h_m[0] / cut.fz[0] == pytest.approx(rib / (3.0 * np.radians(2 * half)), rel=0.03)


def test_a_feed_straight_down_bites_under_the_tip() -> None:
    cut = loads(FLAT, ae=6.0, ap=2.0, drop=2.0, travel=0.0, length=2.0, moves={"kind": 1}).loads
    assert cut.h_ex[0] == pytest.approx(cut.fz[0])


def test_a_ramp_bites_with_its_two_feeds_where_they_are() -> None:
    """Geometry: 30 degrees down, the rim takes cos 30 of the feed, the end of the tool sin 30."""
    down, level = 2.5, 2.5 * np.sqrt(3)
    slot = loads(FLAT, ae=6.0, drop=down, travel=level, length=5.0, under=1.0).loads
    assert slot.h_ex[0] / slot.fz[0] == pytest.approx(np.cos(np.radians(30)), rel=1e-3)
    narrow = loads(FLAT, ae=0.1, drop=down, travel=level, length=5.0, under=1.0).loads
    assert narrow.h_ex[0] / narrow.fz[0] == pytest.approx(0.5, rel=1e-3)


def test_runout_widens_the_chip_only_where_it_is_declared() -> None:
    true = loads(FLAT, ae=[6.0, 0.6]).loads
    assert true.h_thick.tolist() == true.h_ex.tolist()
    out = loads(Tool(1, "flat", 6.0, flutes=2, runout=0.02), ae=[6.0, 0.6]).loads
    assert out.h_ex.tolist() == true.h_ex.tolist()
    assert out.h_thick == pytest.approx([0.07, 0.05], rel=1e-3)
    assert loads(Tool(1, "flat", 6.0, flutes=1, runout=0.02), ae=6.0).loads.h_thick == pytest.approx([0.1])


def test_two_tools_keep_their_own_numbers() -> None:
    cut = loads(FLAT, Tool(2, "flat", 3.175, flutes=1), moves={"tool": [1, 2, 1]}, ae=3.0).loads
    assert cut.fz == pytest.approx([0.05, 0.1, 0.05])
    assert cut.chip_high == pytest.approx([0.13, 0.07, 0.13])


# true speed


def test_a_commanded_spindle_turns_as_set() -> None:
    cutting = loads(FLAT)
    assert cutting.true_speed_of == pytest.approx(10000.0)
    assert [a.what for a in cutting.assumed] == ["true speed"]
    assert loads(FLAT, moves={"speed": np.nan}).assumed == ()


def test_a_speed_over_the_spindle_is_judged_at_the_speed_it_really_reaches() -> None:
    spindle = Spindle("commanded", low=6000.0, high=8000.0)
    cutting = loads(FLAT, moves={"speed": [7000.0, 10000.0], "feed": 800.0}, spindle=spindle)
    assert cutting.true_speed_of == pytest.approx([7000.0, 8000.0])
    assert cutting.loads.fz == pytest.approx([800 / 14000, 800 / 16000], rel=1e-6)
    assert [a.value for a in cutting.assumed] == ["the S of the program", "8000 rev/min where S asks for more"]
    within = loads(FLAT, moves={"speed": [7000.0, 8000.0]}, spindle=spindle)
    assert [a.value for a in within.assumed] == ["the S of the program"]


def test_dial_of_the_job_wins_over_s() -> None:
    cutting = loads(FLAT, spindle=DIAL, dial="A", moves={"speed": [12500.0, np.nan]})
    assert cutting.true_speed_of == pytest.approx([8100.0, 8100.0])
    assert cutting.dial_mark == ("A",)


def test_s_means_the_mark_it_is_within_two_percent_of() -> None:
    cutting = loads(FLAT, spindle=DIAL, moves={"speed": [12700.0, 9600.0, 9700.0, np.nan, 12700.0]})
    assert cutting.true_speed_of == pytest.approx([12500.0, 8100.0, np.nan, np.nan, 12500.0], nan_ok=True)
    assert cutting.dial_mark == ("B", "A", "")
    assert [a.what for a in cutting.assumed] == ["dial mark B"]  # A was measured


def test_an_unknown_speed_is_not_judged() -> None:
    cutting = loads(FLAT, spindle=DIAL, moves={"speed": 18000.0})
    assert np.isnan(cutting.loads.h_ex).all()
    chips = {"chip-too-thin", "chip-too-thick", "edge-too-fast"}
    assert {rule for rule, needs, _ in cutting.not_judged if "speed" in needs} == chips | {"tool-bends", "tool-breaks"}
    assert np.isnan(loads(FLAT, moves={"speed": 0.0}).loads.fz).all()


# operations


@pytest.mark.parametrize(
    ("operation", "columns"),
    [
        ("slot", {"ae": 6.0, "angle": 180.0}),
        ("slot", {"ae": 3.0, "angle": 150.0}),
        ("slot", {"ae": 5.4, "angle": 140.0}),
        ("side", {"ae": 5.3, "angle": 149.0}),
        ("side", {"ae": 0.61}),
        ("finish", {"ae": 0.59}),
        ("ramp", {"drop": 0.2, "centre": 1, "under": 0.5}),
        ("ramp", {"drop": 0.2, "under": 0.6}),
        ("side", {"drop": 0.2, "under": 0.1}),
        ("side", {"drop": -0.2, "centre": 1}),
        ("plunge", {"drop": 2.0, "travel": 0.0}),
    ],
)
def test_operation(operation: str, columns: dict[str, float]) -> None:
    assert OPERATIONS[loads(FLAT, **columns).loads.operation[0]] == operation


def test_drills_cycles_and_rapids() -> None:
    assert loads(Tool(1, "drill", 3.0), drop=2.0).loads.operation[0] == OPERATION["drill"]
    assert loads(FLAT, moves={"cycle": 83}, drop=2.0).loads.operation[0] == OPERATION["drill"]
    assert loads(FLAT, moves={"kind": RAPID}).loads.operation[0] == OPERATION["rapid"]


# what is judged


@pytest.mark.parametrize(
    ("tool", "columns", "judged"),
    [
        (FLAT, {}, 1),
        (FLAT, {"ap": 0.05}, 1),
        (FLAT, {"ap": 0.049}, 0),
        (FLAT, {"ae": [0.04, 0.04, 0.04]}, 0),
        (FLAT, {"drop": 0.2, "centre": 1}, 0),
        (FLAT, {"drop": 2.0, "travel": 0.0}, 0),
        (FLAT, {"touch": 4}, 0),
        (FLAT, {"moves": {"flags": COMPENSATED}}, 0),
        (FLAT, {"moves": {"kind": RAPID}}, 0),
        (Tool(1, "v", 6.0, flutes=2, angle=60.0), {}, 0),
        (Tool(1, "burr", 6.0, flutes=2), {}, 0),
        (Tool(1, "drill", 6.0, flutes=2), {}, 0),
    ],
)
def test_where_a_chip_is_judged(tool: Tool, columns: dict[str, Any], judged: int) -> None:
    rows = {"ae": [1.0, 1.0, 1.0]} | columns
    assert set(loads(tool, **rows).loads.chip_judged.tolist()) == {judged}


def test_a_pass_shorter_than_the_diameter_is_not_judged() -> None:
    assert loads(FLAT, ae=[1.0]).loads.chip_judged.tolist() == [0]  # one piece of 5 mm, D 6
    assert loads(FLAT, ae=[1.0, 1.0]).loads.chip_judged.tolist() == [1, 1]


# windows


def test_the_window_of_the_operation() -> None:
    cut = loads(FLAT, ae=[6.0, 3.0, 0.1]).loads
    assert cut.chip_low == pytest.approx([0.030, 0.030, 0.0075])
    assert cut.chip_high == pytest.approx(0.13)
    assert cut.edge_low == pytest.approx(0.0)
    assert np.isinf(cut.edge_high).all()  # the card of beech knows no limit


def test_measured_windows_reach_the_rows() -> None:
    own = {1: {"": Window(0.02, 0.05, "mm", "measured", "test cuts")}}
    cut = loads(FLAT, measured_windows=own, ae=[6.0, 0.1]).loads
    assert cut.chip_low == pytest.approx([0.02, 0.005])


def test_the_floor_of_cured_epoxy_rises_with_edge_speed() -> None:
    tool = Tool(1, "flat", 3.175, flutes=2)
    speeds = np.array([100.0, 120.0, 132.0, 144.0, 200.0]) * 1000 / (np.pi * 3.175)
    cut = loads(tool, name="cured-epoxy", moves={"speed": speeds}, ae=1.0).loads
    assert cut.chip_low == pytest.approx([0.042, 0.042, 0.0485, 0.055, 0.055], abs=1e-5)
    assert cut.edge_high == pytest.approx(130.0)
    finish = loads(tool, name="cured-epoxy", moves={"speed": speeds}, ae=0.1).loads
    assert finish.chip_low[-1] == pytest.approx(0.25 * 0.055, abs=1e-5)


def test_tooling_board_has_no_thin_chip() -> None:
    cut = loads(FLAT, name="tooling-board").loads
    assert cut.chip_low == pytest.approx(0.0)
    assert cut.chip_high == pytest.approx(0.28)


def test_fine_ball_finishing_is_no_thin_chip() -> None:
    """Ball of 6 mm, lines 0.4 mm apart, F2000 S18000 (0.056 mm per tooth) in oak; band 0.04 to 0.10, invented."""
    own = {1: {"": Window(0.04, 0.10, "mm", "measured", "test cuts")}}
    ball = Tool(1, "ball", 6.0, flutes=2)
    fast = {"feed": 2000.0, "speed": 18000.0}
    cuts = {"ae": [0.4] * 3, "ap": [0.1, 0.3, 1.0], "radius": [0.768, 1.308, 2.236]}  # of the ball at that depth
    cut = loads(ball, name="oak", measured_windows=own, moves=fast, **cuts).loads
    assert cut.chip_judged.all()
    assert (cut.h_ex > cut.chip_low).all()
    assert (cut.h_ex < cut.chip_high).all()


# not judged


@pytest.mark.parametrize(
    ("tool", "name", "needs"),
    [
        (FLAT, None, "--material NAME"),
        (Tool(1, "flat", 6.0), "beech", "`flutes` of tool 1 in shop.toml"),
        (Tool(1, "flat", 0.8, flutes=2), "beech", '[windows."beech".1] in shop.toml'),
        (Tool(1, "flat", 20.0, flutes=2), "cured-epoxy", "an edge speed of cured-epoxy for a tool of 20 mm"),
    ],
)
def test_a_missing_fact_is_named(tool: Tool, name: str | None, needs: str) -> None:
    cutting = loads(tool, name=name, ae=[1.0, 1.0, 1.0], move=[0, 0, 1])
    assert {count for _, said, count in cutting.not_judged if needs in said} == {2}  # moves, not pieces


def test_nothing_is_missing_of_a_v_tool_or_in_air() -> None:
    power = ("spindle-stalls", "`power` or `power_curve` of [spindle] in shop.toml", 1)
    assert loads(Tool(1, "v", 6.0, angle=60.0)).not_judged == (power,)
    known = Tool(1, "flat", 6.0, flutes=2, flute_length=20.0, stickout=30.0, shank=6.0, made_of="carbide")
    assert loads(known, spindle=Spindle(power=700.0)).not_judged == ()
    empty = load(tables.motion(1), tables.timing(tables.motion(1)), tables.engagement(0), tables.setup(FLAT))
    assert empty.not_judged == ()
    assert len(empty.loads.fz) == 0


def test_an_undeclared_tool_gives_unknowns() -> None:
    cutting = loads(FLAT, moves={"tool": [1, 7]})
    assert np.isnan(cutting.loads.fz).tolist() == [False, True]
    assert np.isnan(cutting.loads.chip_low).tolist() == [False, True]
    assert list(cutting.windows) == [1]


def test_zeros_and_unknowns_make_no_noise() -> None:
    ball = Tool(1, "ball", 6.0, flutes=2)
    cut = loads(ball, ap=[0.0, np.nan, 0.0], ae=[0.0, 1.0, np.nan], moves={"feed": [np.nan, 0.0, 1.0]}).loads
    assert not cut.chip_judged.any()
