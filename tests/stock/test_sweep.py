"""The sweep kernel against the slow obvious version, and the promises it makes about paths run twice."""

from __future__ import annotations

import math
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from gclint.stock.engage import engage
from gclint.stock.profile import Profile, profile
from gclint.tables.motion import Motion
from gclint.tables.setup import Tool
from tests.stock.build import Path, box, flat, setup
from tests.stock.oracle import depths, distance, height

TOOLS = {
    "flat": Tool(1, "flat", 3.0),
    "ball": Tool(1, "ball", 3.0),
    "bull-nose": Tool(1, "bull-nose", 3.0, corner_radius=0.5),
    "v": Tool(1, "v", 3.0, angle=60.0),
    "v with a flat tip": Tool(1, "v", 3.0, angle=90.0, tip_diameter=0.6),
    "drill": Tool(1, "drill", 3.0, angle=118.0),
    "tapered-ball": Tool(1, "tapered-ball", 3.0, angle=30.0, tip_diameter=0.8),
}
# The sloped bull-nose and tapered tools are swept in small steps (see _segment), the others by closed formulas.
CLOSE = {"flat": 0.01, "ball": 0.01, "v": 0.01, "drill": 0.01}


@pytest.mark.parametrize("name", TOOLS)
@settings(max_examples=12, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(
    st.lists(
        st.tuples(st.floats(0.5, 5.5), st.floats(0.5, 3.5), st.floats(-2.5, 0.5)),
        min_size=2,
        max_size=3,
    )
)
def test_depths_agree_with_the_slow_version(name: str, points: list[tuple[float, float, float]]) -> None:
    tool = TOOLS[name]
    shape = profile(tool)
    assert isinstance(shape, Profile)
    path = Path(points[0]).through(points[1:])
    found = engage(path.motion(), setup(tool, stock=box((0, 6), (0, 4))))
    if found.cell == 0:
        assert min(z for _, _, z in points) >= 0
        return
    step = 4  # every fourth cell each way is enough for the slow version
    xs = (np.arange(0, found.cut.shape[1], step) + 0.5) * found.cell
    ys = (np.arange(0, found.cut.shape[0], step) + 0.5) * found.cell
    slow = depths(shape, points, xs.tolist(), ys.tolist(), places=150)
    # where a steep ramp's rim stands within a cell is not known better than half a cell
    steps = [(abs(c - z), math.hypot(a - x, b - y) or 1.0) for (x, y, z), (a, b, c) in pairwise(points)]
    steepest = max(drop / travel for drop, travel in steps)
    close = CLOSE.get(name, 0.03) + 0.02 + min(steepest, 2.0) * found.cell / 2
    fast = found.cut[::step, ::step]
    for j, y in enumerate(ys):
        for i, x in enumerate(xs):
            if abs(distance(points, x, y) - shape.radius) > 0.06:  # the slow version is coarse where the rim passes
                assert fast[j, i] == pytest.approx(slow[j, i], abs=close)


def test_an_arc_sweeps_what_its_chords_sweep() -> None:
    tool = flat(3.0)
    round_ = Path((12, 10, -1)).arc((10, 10), 270, z=-2)
    chords = Path((12, 10, -1))
    for k in range(1, 1001):
        angle = np.radians(270 * k / 1000)
        chords.line(10 + 2 * np.cos(angle), 10 + 2 * np.sin(angle), -1 - k / 1000)
    stock = setup(tool, stock=box((0, 20), (0, 20)))
    one, other = engage(round_.motion(), stock), engage(chords.motion(), stock)
    assert one.cut.max() == pytest.approx(2.0, abs=1e-3)
    assert one.pieces.removed.sum() == pytest.approx(other.pieces.removed.sum(), rel=0.01)
    assert np.mean(np.abs(one.cut - other.cut) > 0.02) < 0.005


@pytest.mark.parametrize("plane", [18, 19])
def test_arcs_in_upright_planes(plane: int) -> None:
    # a half turn that dips 4 mm: the deepest place is below the arc's centre
    start = (6.0, 10.0, 1.0) if plane == 18 else (10.0, 6.0, 1.0)
    centre = (1.0, 10.0) if plane == 18 else (10.0, 1.0)
    sweep = -180.0 if plane == 18 else 180.0
    for turn in (sweep, -sweep):
        found = engage(
            Path(start).arc(centre, turn, plane=plane).motion(),
            setup(Tool(1, "ball", 2.0), stock=box((0, 20), (0, 20))),
        )
        dips = turn == (180.0 if plane == 19 else -180.0)
        deepest = found.cut.max() if found.cut.size else 0.0
        assert deepest == pytest.approx(3.0 if dips else 0.0, abs=0.03)


@pytest.mark.parametrize("name", TOOLS)
def test_a_path_run_twice_removes_nothing_the_second_time(name: str) -> None:
    path = Path((2, 2, 1), tool=1)
    lap = [(2, 2, -1), (14, 3, -1), (15, 12, -2), (4, 13, -1.2), (2, 2, -1)]
    path.through(lap).rapid(z=2).rapid(2, 2).through(lap)
    found = engage(path.motion(), setup(TOOLS[name], stock=box((0, 20), (0, 20))))
    first = found.pieces.move <= 4
    again = found.pieces.removed[~first].sum()
    assert found.pieces.removed[first].sum() > 10
    assert again == pytest.approx(0.0, abs=1e-3)
    assert not (~first).any()


def test_a_lap_run_backwards_with_other_arcs_touches_nothing() -> None:
    path = Path((15, 10, -2)).arc((10, 10), 360).arc((10, 10), -360).arc((10, 10), -180).arc((10, 10), -180)
    found = engage(path.motion(), setup(flat(), stock=box((0, 20), (0, 20))))
    assert found.pieces.move.max() == 0


def test_rising_out_of_a_kerf_and_sliding_in_it_is_no_contact() -> None:
    path = Path((2, 10, 1)).line(z=-3).line(x=18).line(x=10).line(z=-1.5).line(x=4).line(x=12, z=2)
    found = engage(path.motion(), setup(flat(), stock=box((0, 20), (0, 20))))
    assert set(found.pieces.move.tolist()) == {0, 1}


def test_sliding_along_a_wall_is_no_contact_and_a_hair_more_is() -> None:
    stock = setup(flat(), stock=box((0, 60), (0, 40)))
    for angle in (0.0, 0.3, 0.8):
        c, s = np.cos(angle), np.sin(angle)

        def at(x: float, y: float, c: float = c, s: float = s) -> tuple[float, float]:
            return 15 + x * c - y * s, 8 + x * s + y * c

        path = Path((*at(0, 0), -2)).line(*at(25, 0)).line(*at(0, 0)).line(*at(0, 0.03)).line(*at(25, 0.03))
        found = engage(path.motion(), stock)
        moves = set(found.pieces.move.tolist())
        assert 1 not in moves
        assert 3 in moves
        skim = found.pieces.ae[found.pieces.move == 3]
        assert np.median(skim) == pytest.approx(0.03, rel=0.35)


@pytest.mark.parametrize("tool", [flat(6.0), Tool(1, "ball", 6.0), Tool(1, "bull-nose", 6.0, corner_radius=1.0)])
def test_the_turns_of_a_helix_cut_what_single_turns_cut(tool: Tool) -> None:
    stock = setup(tool, stock=box((0, 40), (0, 40)))
    one = engage(Path((25, 20, 0.5)).arc((20, 20), -360 * 40, z=-4).motion(), stock)
    turns = Path((25, 20, 0.5))
    for k in range(1, 41):
        turns.arc((20, 20), -360, z=0.5 - 4.5 * k / 40)
    each = engage(turns.motion(), stock)
    assert len(one.pieces) < 0.5 * len(each.pieces) or tool.shape == "ball"
    assert np.abs(one.cut - each.cut).max() < 0.02
    assert one.pieces.removed.sum() == pytest.approx(each.pieces.removed.sum(), rel=0.005)
    for name in ("length", "travel", "drop"):
        assert getattr(one.pieces, name).sum() == pytest.approx(getattr(each.pieces, name).sum(), rel=0.01), name
    widths = [np.average(found.pieces.ae, weights=found.pieces.length) for found in (one, each)]
    assert widths[0] == pytest.approx(widths[1], rel=0.1)
    assert (np.diff(one.pieces.start) > 0).all()
    assert (one.pieces.end[:-1] <= one.pieces.start[1:] + 1e-6).all()


def test_the_turns_of_a_helix_over_a_pocket_are_not_taken_for_alike() -> None:
    stock = setup(flat(6.0), stock=box((0, 40), (0, 40)))
    path = Path((12, 20, 1)).rapid(z=-2).line(x=18).rapid(z=1).rapid(25, 20, 0)
    each = Path((12, 20, 1)).rapid(z=-2).line(x=18).rapid(z=1).rapid(25, 20, 0)
    for k in range(1, 21):
        each.arc((20, 20), -360, z=-0.2 * k)
    whole, single = (engage(p.motion(), stock) for p in (path.arc((20, 20), -360 * 20, z=-4), each))
    assert whole.pieces.removed.sum() == pytest.approx(single.pieces.removed.sum(), rel=0.002)
    assert np.abs(whole.cut - single.cut).max() < 0.02


@pytest.mark.parametrize(
    ("tool", "drop"),
    [
        (Tool(1, "bull-nose", 6.0, corner_radius=1.0), 0.5),
        (Tool(1, "bull-nose", 6.0, corner_radius=1.0), 3.0),
        (Tool(1, "v", 6.0, angle=60.0, tip_diameter=1.0), 3.0),
        (Tool(1, "tapered-ball", 6.0, angle=20.0, tip_diameter=1.0), 3.0),
    ],
)
def test_ramps_of_shaped_tools_keep_their_volume(tool: Tool, drop: float) -> None:
    path = Path((10, 20, 0)).line(30, 20, -drop)
    found = engage(path.motion(), setup(tool, stock=box((0, 40), (10, 30))))
    shape = profile(tool)
    assert isinstance(shape, Profile)
    assert found.pieces.removed.sum() == pytest.approx(columns_gone(shape, path.motion()), rel=0.01)


def columns_gone(tool: Profile, motion: Motion) -> float:
    """mm3 gone after one line, over columns of 0.05 mm and places of 0.02 mm."""
    xs, ys = np.arange(5.025, 35, 0.05), np.arange(15.025, 25, 0.05)
    field = np.zeros((len(ys), len(xs)))
    heights = np.array([height(tool, r) for r in np.linspace(0, tool.radius, 3001)])
    for share in np.linspace(0, 1, 1001):
        x, y, z = (float(a[0] + share * (b[0] - a[0])) for a, b in (
            (motion.x0, motion.x1), (motion.y0, motion.y1), (motion.z0, motion.z1)
        ))  # fmt: skip
        near = slice(*np.searchsorted(xs, [x - tool.radius, x + tool.radius]))
        r = np.hypot(xs[near][None, :] - x, ys[:, None] - y)
        place = np.minimum(3000, np.round(r / tool.radius * 3000)).astype(int)
        high = np.where(r <= tool.radius, heights[place], np.inf)
        field[:, near] = np.maximum(field[:, near], -z - high)
    return float(field.sum() * 0.05 * 0.05)


@pytest.mark.parametrize("pitch", [0.05, 0.5])
def test_a_bore_widened_by_arcs_keeps_its_volume(pitch: float) -> None:
    turns = round(3 / pitch)
    path = Path((24, 20, 0)).arc((20, 20), 360 * turns, z=-3).arc((20, 20), 360).line(x=25).arc((20, 20), 360)
    found = engage(path.motion(), setup(flat(6.0), stock=box((0, 40), (0, 40))))
    first = found.pieces.removed[found.pieces.move <= 1].sum()
    assert first == pytest.approx(math.pi * (49 - 1) * 3, rel=0.003)
    assert found.pieces.removed.sum() == pytest.approx(math.pi * (64 - 1) * 3, rel=0.006)
