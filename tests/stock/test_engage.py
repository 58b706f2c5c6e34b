"""Engagement, contact, shank, what is assumed and what is not judged."""

from __future__ import annotations

import math

import numpy as np
import pytest

from gclint.problem import Problem
from gclint.stock.engage import engage
from gclint.tables.engagement import SHANK, SIDE, TIP, Engagement
from gclint.tables.motion import COMPENSATED, LIFT_UNKNOWN, OTHER_FRAME, PROBE
from gclint.tables.setup import Stock, Tool
from tests.stock.build import Path, box, columns, flat, setup

BLANK = box((0, 60), (0, 40))


def of_move(found: Engagement, move: int, column: str, low: float = 0.0, high: float = 1.0) -> np.ndarray:
    """A column of the pieces of one move that lie within a share of it."""
    pieces = found.pieces
    return getattr(pieces, column)[(pieces.move == move) & (pieces.start >= low - 1e-6) & (pieces.end <= high + 1e-6)]


@pytest.mark.parametrize("levels", [1, 2])
@pytest.mark.parametrize("stepover", [0.1, 0.6, 1.5, 2.4, 3.0, 4.5])
def test_concentric_laps_give_the_stepover_as_ae(stepover: float, levels: int) -> None:
    # square laps outward: every straight side away from the corners cuts the stepover, at each level
    # (the last side runs into the start of its own lap)
    path = Path((30, 20, 1))
    for level in range(levels):
        path.rapid(30 - 5, 20 - 5).line(z=-(level + 1.0))
        for lap in range(2):
            r = 5 + lap * stepover
            path.line(30 - r, 20 - r).line(30 + r, 20 - r).line(30 + r, 20 + r).line(30 - r, 20 + r).line(
                30 - r, 20 - r
            )
        path.rapid(z=1)
    found = engage(path.motion(), setup(flat(6.0), stock=BLANK))
    per_level = len(path.rows) // levels
    for level in range(levels):
        for side in range(8, 11):
            ae = of_move(found, level * per_level + side, "ae", 0.3, 0.6)
            assert len(ae) > 0
            assert ae == pytest.approx(stepover, rel=0.10 if stepover < 0.2 else 0.02 + 0.01 * level)
            assert of_move(found, level * per_level + side, "ap", 0.3, 0.6) == pytest.approx(1.0, abs=0.02)


def test_material_right_of_the_path_is_climb_milling() -> None:
    # across the blank's lower edge: material lies at higher Y; going to +X it is on the left
    to_right = engage(Path((-10, 0, -2)).line(x=70).motion(), setup(flat(), stock=BLANK))
    to_left = engage(Path((70, 0, -2)).line(x=-10).motion(), setup(flat(), stock=BLANK))
    slot = engage(Path((-10, 20, -2)).line(x=70).motion(), setup(flat(), stock=BLANK))
    assert of_move(to_right, 0, "climb", 0.3, 0.7) == pytest.approx(0.0, abs=0.03)
    assert of_move(to_left, 0, "climb", 0.3, 0.7) == pytest.approx(1.0, abs=0.03)
    assert of_move(slot, 0, "climb", 0.3, 0.7) == pytest.approx(0.5, abs=0.03)
    assert of_move(to_left, 0, "angle", 0.3, 0.7) == pytest.approx(90.0, abs=1.5)


def test_a_slot_of_tiny_moves_reads_as_one_long_move_does() -> None:
    for tool in (flat(), Tool(1, "ball", 6.0)):
        long = engage(Path((-5, 20, -2)).line(x=65).motion(), setup(tool, stock=BLANK))
        fine = Path((-5, 20, -2))
        for k in range(1, 1401):
            fine.line(x=-5 + 0.05 * k)
        tiny = engage(fine.motion(), setup(tool, stock=BLANK))
        middle = (tiny.pieces.move > 500) & (tiny.pieces.move < 900)
        assert len(np.unique(tiny.pieces.move[middle])) == 399
        for column in ("ae", "angle", "ap"):
            expected = of_move(long, 0, column, 0.4, 0.6).mean()
            assert getattr(tiny.pieces, column)[middle].mean() == pytest.approx(expected, rel=0.02)
        assert tiny.pieces.removed.sum() == pytest.approx(long.pieces.removed.sum(), rel=0.01)


def test_only_the_part_of_a_descent_that_is_in_the_stock_is_a_piece() -> None:
    found = engage(Path((30, 20, 5)).line(z=-3).motion(), setup(flat(), stock=BLANK))
    assert found.pieces.drop.sum() == pytest.approx(3.0, abs=1e-4)
    assert found.pieces.under == pytest.approx(1.0, abs=0.02)
    assert found.pieces.centre.all()
    assert (found.pieces.touch == TIP).all()
    assert found.pieces.angle == pytest.approx(0.0, abs=1e-6)


def test_a_plunge_at_the_edge_stands_on_half_its_disc() -> None:
    found = engage(Path((0, 20, 5)).line(z=-3).motion(), setup(flat(), stock=BLANK))
    assert found.pieces.under == pytest.approx(0.5, abs=0.03)


def test_a_rapid_through_the_stock_has_pieces() -> None:
    found = engage(Path((-10, 20, 5)).rapid(z=-2).rapid(x=70).rapid(z=5).motion(), setup(flat(), stock=BLANK))
    assert set(found.pieces.move.tolist()) == {1}
    assert (found.pieces.touch == SIDE).all()
    assert found.pieces.removed.sum() == pytest.approx(60 * 6 * 2, rel=0.01)
    assert len(found.passes) == 0


@pytest.mark.parametrize(
    ("tool", "rubs"),
    [
        (flat(flute_length=5.0, shank=6.0), True),  # shank as wide as the cut, wall 1 mm above the flutes
        (flat(flute_length=6.5, shank=6.0), False),  # flutes reach over the wall
        (flat(flute_length=5.0, shank=5.8), False),  # ground back: clear of its own wall by 0.1 mm
        (flat(flute_length=5.0, shank=8.0), True),
    ],
)
def test_the_shank_touches_the_wall_above_the_flutes(tool: Tool, rubs: bool) -> None:
    found = engage(Path((-10, 20, -3)).line(x=70).line(z=-6).line(x=-10).motion(), setup(tool, stock=BLANK))
    touched = found.pieces.touch & SHANK != 0
    assert touched.any() == rubs
    if rubs:
        assert found.pieces.shank.max() == pytest.approx(1.0, abs=0.02)
        assert set(found.pieces.move[touched].tolist()) == {2}


def test_a_wall_cleared_by_a_wider_lap_does_not_meet_the_shank() -> None:
    path = Path((-10, 20, -4)).line(x=70).line(y=20.3).line(x=-10).line(y=19.7).line(x=70)
    path.line(y=20).line(z=-8).line(x=-10)
    found = engage(path.motion(), setup(flat(flute_length=5.0, shank=6.0), stock=BLANK))
    assert not (found.pieces.touch & SHANK).any()


def test_flutes_without_a_shank_are_not_judged() -> None:
    found = engage(Path((-10, 20, -3)).line(x=70).motion(), setup(flat(flute_length=5.0), stock=BLANK))
    assert list(found.not_judged) == [("shank-rubs", "`shank` of tool 1 in shop.toml", 1)]


def test_an_undeclared_stock_is_the_swept_box_and_one_diameter() -> None:
    path = Path((0, 0, 5)).rapid(10, 10).line(z=-2).line(x=40).line(y=30).rapid(z=5).rapid(200, 200)
    found = engage(path.motion(), setup(flat(6.0)))
    assert found.box is not None
    assert found.box.x == pytest.approx((1.0, 49.0))
    assert found.box.y == pytest.approx((1.0, 39.0))
    assert found.box.bottom is None
    assert found.box.top == pytest.approx(0.0)
    assert [entry.what for entry in found.assumed] == ["stock top", "stock in X", "stock in Y"]
    assert found.not_judged == ()


def test_only_the_unknown_parts_of_a_declared_stock_are_assumed() -> None:
    known = Stock(None, None, 12.0, 0.0, declared=True, placed=False)
    found = engage(Path((0, 0, 20)).line(z=10).line(x=40).motion(), setup(flat(6.0), stock=known))
    assert found.box is not None
    assert (found.box.top, found.box.bottom) == (12.0, 0.0)
    assert [entry.what for entry in found.assumed] == ["stock in X", "stock in Y"]
    assert found.pieces.ap.max() == pytest.approx(2.0, abs=0.01)


def test_an_arc_counts_with_all_it_sweeps() -> None:
    # a half circle over the top of its ends
    found = engage(Path((20, 20, -1)).arc((30, 20), -180).motion(), setup(flat(6.0)))
    assert found.box is not None
    assert found.box.x == pytest.approx((11.0, 49.0))
    assert found.box.y == pytest.approx((11.0, 39.0))


@pytest.mark.parametrize(("z_zero", "z"), [(None, 1.0), ("table", -1.0), (10.0, -1.0)])
def test_a_top_that_nothing_tells_is_not_judged(z_zero: str | float | None, z: float) -> None:
    found = engage(Path((0, 0, 5)).line(z=z).line(x=40).motion(), setup(flat(), z_zero=z_zero))
    assert found.box is None
    assert len(found.pieces) == 0
    assert [needs for _, needs, _ in found.not_judged] == ["stock (--stock or [stock] in job.toml)"]


def test_an_unknown_tool_is_left_out_and_said() -> None:
    path = Path((0, 0, 5)).line(z=-2).line(x=40)
    path.tool = 3
    path.line(y=20).line(x=0)
    found = engage(path.motion(), setup(flat(6.0)))
    assert found.pieces.move.max() == 1
    assert found.not_judged == (("the cuts of tool 3", 'tool 3 (e.g. --tool "3: flat 6mm 2fl up-cut")', 2),)


@pytest.mark.parametrize(
    ("tool", "needs"),
    [
        (Tool(1, "v", 6.0), "angle of tool 1"),
        (Tool(1, "bull-nose", 6.0), "corner_radius of tool 1"),
        (Tool(1, "tapered-ball", 6.0, angle=10.0), "tip_diameter of tool 1"),
        (Tool(1, "t-slot", 6.0), "nothing that could be declared"),
    ],
)
def test_a_tool_whose_shape_is_not_known_is_not_judged(tool: Tool, needs: str) -> None:
    found = engage(Path((0, 0, 5)).line(z=-2).line(x=40).motion(), setup(tool))
    assert len(found.pieces) == 0
    assert needs in [entry[1] for entry in found.not_judged]


def test_a_drag_tool_never_cuts() -> None:
    found = engage(Path((0, 0, 5)).line(z=-2).line(x=40).motion(), setup(Tool(1, "drag", 6.0), stock=BLANK))
    assert len(found.pieces) == 0
    assert found.not_judged == ()


def test_a_drill_without_an_angle_has_118_degrees_and_says_so() -> None:
    found = engage(Path((30, 20, 5)).line(z=-5).motion(), setup(Tool(1, "drill", 6.0), stock=BLANK))
    assert [entry.value for entry in found.assumed] == ["118 degrees"]
    hole, cone = math.pi * 9 * (5 - 3 / math.tan(math.radians(59))), math.pi * 9 * 3 / math.tan(math.radians(59)) / 3
    assert found.pieces.removed.sum() == pytest.approx(hole + cone, rel=0.02)


@pytest.mark.parametrize("flag", [OTHER_FRAME, COMPENSATED, PROBE])
def test_moves_whose_real_path_is_not_known_are_counted(flag: int) -> None:
    path = Path((10, 20, -2)).line(x=30).line(x=50, flags=flag)
    found = engage(path.motion(), setup(flat(), stock=BLANK))
    assert found.pieces.move.max() == 0
    assert [count for _, _, count in found.not_judged] == [1]


def test_a_start_from_an_unknown_height_comes_from_above() -> None:
    path = Path((30, 20, math.nan)).line(30, 20, -2, flags=LIFT_UNKNOWN, length=math.nan).line(x=40)
    found = engage(path.motion(), setup(flat(), stock=BLANK))
    assert set(found.pieces.move.tolist()) == {0, 1}
    assert found.pieces.drop.max() > 0
    assert any("machine-coordinate" in entry.what for entry in found.assumed)


def test_a_cut_from_an_unknown_place_is_counted_and_a_rapid_above_is_not() -> None:
    nan = math.nan
    path = Path((nan, nan, nan)).rapid(z=5).rapid(10, 10).line(z=-2).line(x=40)
    assert engage(path.motion(), setup(flat(), stock=BLANK)).not_judged == ()
    path = Path((nan, nan, 5)).line(z=-2).line(10, 10).line(x=40)
    assert [count for _, _, count in engage(path.motion(), setup(flat(), stock=BLANK)).not_judged] == [2]


def test_the_cell_follows_the_tool_and_what_it_cuts() -> None:
    path = Path((30, 20, 5)).line(z=-0.3).line(x=40)
    assert engage(path.motion(), setup(flat(6.0), stock=BLANK)).cell == pytest.approx(6 / 32, rel=0.05)
    assert engage(path.motion(), setup(flat(1.0), stock=BLANK)).cell == pytest.approx(0.05, rel=0.05)
    assert engage(path.motion(), setup(flat(40.0), stock=BLANK)).cell == pytest.approx(0.5, rel=0.05)
    v = engage(path.motion(), setup(Tool(1, "v", 12.0, angle=60.0), stock=BLANK))
    assert v.cell == pytest.approx(0.05, rel=0.05)
    assert v.pieces.ae[v.pieces.move == 1] == pytest.approx(2 * 0.3 * math.tan(math.radians(30)), rel=0.1)


def test_a_blank_too_large_for_its_cells_gets_larger_ones_and_says_so() -> None:
    found = engage(Path((30, 20, 1)).line(z=-1).line(x=40).motion(), setup(flat(1.0), stock=box((0, 2000), (0, 1000))))
    assert found.cell_wanted == pytest.approx(0.05)
    assert found.cell > 0.2
    assert found.cut.size <= 40e6
    assert len(found.pieces) > 0


def test_a_stock_of_no_size_is_a_problem() -> None:
    with pytest.raises(Problem, match="that is no size"):
        engage(Path((0, 0, 5)).line(z=-2).motion(), setup(flat(), stock=Stock((5, 5), (0, 1), 0, -1, True, True)))


def test_no_moves_at_all() -> None:
    found = engage(columns(), setup(flat()))
    assert (len(found.pieces), len(found.entries), len(found.passes), found.not_judged) == (0, 0, 0, ())
