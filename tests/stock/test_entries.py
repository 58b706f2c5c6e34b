"""Entries and passes; the slopes and depths are those of a workshop's own acceptance list (invented)."""

from __future__ import annotations

import math

import pytest

from gclint.stock.engage import engage
from gclint.tables.engagement import ENTRY_KINDS, Engagement
from gclint.tables.setup import Tool
from tests.stock.build import Path, box, flat, setup

BLANK = box((0, 120), (0, 80))


def run(path: Path, tool: Tool | None = None) -> Engagement:
    return engage(path.motion(), setup(tool or flat(), stock=BLANK))


def kinds(found: Engagement) -> list[str]:
    return [ENTRY_KINDS[kind] for kind in found.entries.kind]


def test_a_plunge_counts_only_the_depth_in_solid() -> None:
    entries = run(Path((40, 30, 5), feed=900).line(z=-3)).entries
    assert entries.solid == pytest.approx([3.0], abs=1e-3)
    assert entries.descent == pytest.approx([8.0])
    assert entries.travel == pytest.approx([0.0])
    assert entries.slope == pytest.approx([90.0])
    assert entries.z_feed == pytest.approx([900.0])
    assert entries.under == pytest.approx([1.0], abs=0.02)


def helix(radius: float, laps: int = 3) -> Path:
    path = Path((40 + radius, 30, 0))
    for lap in range(laps):
        path.arc((40, 30), 360, z=-(lap + 1.0))
    return path.arc((40, 30), 360)


@pytest.mark.parametrize(
    ("path", "kind", "slope", "solid"),
    [
        (Path((40, 30, 0)).line(x=90, z=-3), "ramp", 3.4, 3.0),
        (Path((40, 30, 0)).line(x=42, z=-3).line(x=90), "straight", 56.3, 3.0),
        (helix(3.0), "helix", 3.0, 3.0),
        (helix(0.05), "straight", 72.6, 3.0),
        (Path((43, 30, 0)).arc((40, 30), 360, z=-5), "helix", 14.9, 5.0),
    ],
)
def test_slopes_in_solid(path: Path, kind: str, slope: float, solid: float) -> None:
    found = run(path)
    assert kinds(found)[0] == kind
    assert found.entries.slope[0] == pytest.approx(slope, abs=0.06)
    assert found.entries.solid[0] == pytest.approx(solid, abs=0.01)
    assert len(found.entries) == len(found.passes) == 1


def test_a_ramp_from_the_air_has_the_slope_of_its_part_in_solid() -> None:
    entries = run(Path((40, 30, 5)).line(x=90, z=-3)).entries
    assert entries.slope == pytest.approx([math.degrees(math.atan(8 / 50))], abs=0.05)
    assert entries.solid == pytest.approx([3.0], abs=0.01)
    assert entries.travel == pytest.approx([50 * 3 / 8], abs=0.05)


def test_a_helix_that_does_not_travel_is_straight() -> None:
    # a radius under the controller's resolution: whatever the words say, this is a plunge
    entries = run(helix(0.0001)).entries
    assert ENTRY_KINDS[entries.kind[0]] == "straight"
    assert entries.slope[0] == pytest.approx(90.0)


def test_a_zigzag_ramp_is_one_entry() -> None:
    path = Path((40, 30, 0))
    for k in range(6):
        path.line(x=60 if k % 2 == 0 else 40, z=-(k + 1) * 0.5)
    found = run(path.line(x=60))
    assert kinds(found) == ["ramp"]
    assert found.entries.solid == pytest.approx([3.0], abs=0.02)
    assert found.entries.slope == pytest.approx([math.degrees(math.atan(3 / 120))], abs=0.02)


@pytest.mark.parametrize("tool", [flat(5.0), Tool(1, "drill", 5.0)])
def test_pecks_into_one_hole_are_one_entry(tool: Tool) -> None:
    path = Path((20, 30, 5))
    for x in (20, 40, 60):
        path.rapid(x=x)
        for z in (2.0, 4.0, 6.0):
            path.rapid(z=1.0 if z == 2.0 else 2.5 - z).line(z=-z).rapid(z=2)
    found = run(path, tool)
    assert kinds(found) == ["straight"] * 3
    assert found.entries.solid == pytest.approx([6.0] * 3, abs=0.05)
    assert found.entries.depth == pytest.approx([6.0] * 3)


def test_a_descent_into_an_open_pocket_is_open() -> None:
    path = Path((20, 30, 5)).line(z=-2).line(x=60).line(y=35).line(x=20).line(y=30).rapid(z=5).rapid(40, 32.5)
    path.line(z=-2).line(y=50)
    found = run(path)
    assert kinds(found) == ["straight", "open"]
    assert not found.entries.from_outside.any()
    assert found.entries.pass_.tolist() == [0, 1]


def test_a_descent_outside_the_outline_is_side() -> None:
    found = run(Path((-10, 30, 5)).line(z=-3).line(x=130))
    assert kinds(found) == ["side"]
    assert found.entries.from_outside.tolist() == [1]
    assert found.entries.solid == pytest.approx([0.0])
    assert found.entries.depth == pytest.approx([3.0])


def test_a_second_level_over_the_same_hole_counts_only_the_new_depth() -> None:
    path = Path((40, 30, 5)).line(z=-2).line(x=80).rapid(z=5).rapid(x=40).line(z=-4).line(x=80)
    found = run(path)
    assert kinds(found) == ["straight", "straight"]
    assert found.entries.solid == pytest.approx([2.0, 2.0], abs=1e-3)
    assert found.entries.descent == pytest.approx([7.0, 9.0])


def test_following_a_surface_down_is_no_entry() -> None:
    # a skin of 0.3 mm is taken off a slope that was roughed before
    path = Path((10, 30, 0.3))
    for lift in (0.3, 0.0):
        path.rapid(z=5).rapid(x=10)
        path.line(10, 30, -0.5 + lift)
        for k in range(1, 61):
            path.line(x=10 + k, z=-0.5 - k * 0.1 + lift)
    found = run(path, Tool(1, "ball", 6.0))
    second = 2 + 61 + 2
    assert path.rows[second]["kind"] == 1
    later = found.entries.first_move >= second
    assert later.any()
    assert set(found.entries.kind[later].tolist()) <= {ENTRY_KINDS.index("straight"), ENTRY_KINDS.index("open")}
    assert found.entries.solid[later].max() < 0.35


def test_passes_break_at_air_tool_changes_and_rapids() -> None:
    path = Path((-10, 10, -2)).line(x=130).line(y=30).line(x=-10)  # out of the stock between two cuts
    path.rapid(z=5).rapid(20, 50).line(z=-1).line(x=60)
    path.tool = 2
    path.line(x=100)
    found = engage(path.motion(), setup(flat(), Tool(2, "flat", 6.0), stock=BLANK))
    assert found.passes.tool.tolist() == [1, 1, 1, 2]
    assert found.passes.lowest == pytest.approx([-2, -2, -1, -1])
    assert found.passes.removed.sum() == pytest.approx(found.pieces.removed.sum())
    assert found.passes.length[0] == pytest.approx(124.5, abs=2)
    assert found.passes.first_piece[0] == 0
    assert found.passes.last_piece[-1] == len(found.pieces) - 1
    assert (found.passes.first_piece[1:] == found.passes.last_piece[:-1] + 1).all()


def test_a_plunge_is_not_averaged_with_the_ramp_that_goes_on_from_it() -> None:
    found = run(Path((40, 30, 0)).line(z=-3).line(x=90, z=-3.5).line(x=40))
    assert kinds(found) == ["straight", "ramp"]
    assert found.entries.solid == pytest.approx([3.0, 0.5], abs=0.01)
    assert found.entries.slope == pytest.approx([90.0, 0.57], abs=0.06)


def test_a_short_curved_end_belongs_to_its_plunge() -> None:
    path = Path((40, 30, 0)).line(z=-1.8).line(x=40.02, z=-1.9).line(x=40.06, z=-1.96).line(x=40.1, z=-2).line(x=60)
    entries = run(path).entries
    assert entries.slope == pytest.approx([math.degrees(math.atan(1.96 / 0.06))], abs=0.1)
    assert entries.solid == pytest.approx([1.96], abs=1e-3)  # what is no steeper than 45 degrees is no part of it


@pytest.mark.parametrize("pitch", [0.2, 0.5, 0.7])
@pytest.mark.parametrize("radius", [2.0, 4.0, 12.0])
def test_a_gentle_helix_goes_down_into_solid(pitch: float, radius: float) -> None:
    path = Path((40 + radius, 30, 0))
    for lap in range(3):
        path.arc((40, 30), 360, z=-(lap + 1.0) * pitch)
    found = run(path.arc((40, 30), 360))
    assert kinds(found) == ["helix"]
    assert found.entries.solid == pytest.approx([3 * pitch], abs=0.01)
    assert found.entries.under == pytest.approx([1.0], abs=0.02)


def test_the_slope_is_that_of_the_steepest_half_diameter() -> None:
    path = Path((20, 30, 0)).line(x=60, z=-1).line(x=63, z=-3).line(x=90, z=-3.5)
    entries = run(path).entries
    assert entries.slope == pytest.approx([math.degrees(math.atan(2 / 3))], abs=0.05)
    assert entries.steep_move.tolist() == [1]
    assert (entries.steep_drop[0], entries.steep_travel[0]) == pytest.approx((2.0, 3.0), abs=0.01)
    assert entries.solid == pytest.approx([3.5], abs=0.02)


def test_an_entry_begins_at_the_first_move_in_solid() -> None:
    path = Path((40, 30, 30)).line(z=10).line(z=1).line(z=-2).line(z=-3).line(x=60)
    entries = run(path).entries
    assert (entries.first_move.tolist(), entries.last_move.tolist()) == ([2], [3])
    assert entries.solid == pytest.approx([3.0], abs=1e-3)
    assert entries.descent == pytest.approx([4.0])


def test_a_rapid_into_solid_is_no_entry_and_parts_what_is_below_it() -> None:
    path = Path((40, 30, 5)).line(z=-3).rapid(z=5).rapid(z=-5).line(z=-5.5).line(x=60)
    entries = run(path).entries
    assert kinds(run(path)) == ["straight", "straight"]
    assert entries.solid == pytest.approx([3.0, 0.5], abs=1e-3)


@pytest.mark.parametrize("beside", [0.3, 0.7, 1.5, 2.0, 4.0])
def test_the_share_of_the_disc_decides_what_is_solid(beside: float) -> None:
    """Geometry: the segment of a circle of 6 mm that stands over the wall of a slot as wide."""
    path = Path((20, 30, 5)).line(z=-2).line(x=80).line(x=20).rapid(z=5).rapid(50, 30 + beside).line(z=-2).line(x=60)
    found = run(path)
    reach = math.acos((3 - beside) / 3)
    exact = (reach - math.sin(reach) * math.cos(reach)) / math.pi
    if exact < 0.1:
        assert kinds(found)[1:] == ["open"]
    else:
        assert found.entries.solid[1] == pytest.approx(2.0, abs=0.01)
        assert found.entries.under[1] == pytest.approx(exact, abs=0.02)


def test_only_the_way_in_of_a_v_is_an_entry() -> None:
    tool = Tool(1, "v", 6.0, angle=60.0)
    path = Path((20, 30, 5)).line(z=-1).line(x=40).line(x=40.5, y=30.5, z=-2.5).line(40, 30, -1).line(y=50)
    assert [kind for kind in kinds(run(path, tool)) if kind != "open"] == ["straight"]
    assert [kind for kind in kinds(run(path)) if kind != "open"] == ["straight", "straight"]
