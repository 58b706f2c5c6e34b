"""The contact profile against an oracle that has only the tool's places, on programs made at random and by hand."""

from __future__ import annotations

import math
import random
from pathlib import Path as File

import numpy as np
import pytest

from gclint.check import trace as traced
from gclint.columns import Bools
from gclint.setup.declare import Options
from gclint.stock import contact
from gclint.stock.engage import engage
from gclint.tables.engagement import Engagement
from gclint.tables.motion import ARC_CW, Motion
from gclint.tables.setup import Tool
from tests.stock import dexels
from tests.stock.build import Path, box, contact_of, flat, setup

BOX = (0.0, 40.0, 0.0, 30.0)
BLANK = box((0, 40), (0, 30))
TOOLS = {
    "flat": flat(6.0),
    "ball": Tool(1, "ball", 6.0),
    "bull-nose": Tool(1, "bull-nose", 6.0, corner_radius=1.0),
    "v": Tool(1, "v", 6.0, angle=90.0),
}
PLACES = (0.02, 0.35, 0.65, 0.98)  # of a piece, at which the oracle looks
NEARLY_A_SLOT = 165.0  # degrees; there the angle of a rim moves by 8 degrees for a hundredth of the radius


def wander(seed: int, radius: float) -> Path:
    """Lines, ramps, arcs, helices and plunges over the blank, now and then through what is cut already."""
    dice = random.Random(seed)
    path = Path((dice.uniform(6, 34), dice.uniform(6, 24), 2.0)).rapid(z=0.2)
    for _ in range(dice.randint(8, 12)):
        x, y, z = path.at
        kind = dice.random()
        turn = dice.uniform(0, 2 * math.pi)
        lower = max(-4.0, z - dice.uniform(0.3, 1.2))
        if kind < 0.45:
            path.line(dice.uniform(4, 36), dice.uniform(4, 26))
        elif kind < 0.6:
            path.line(dice.uniform(4, 36), dice.uniform(4, 26), lower)
        elif kind < 0.75:
            r = dice.uniform(0.6, 2.2) * radius
            centre = x + r * math.cos(turn), y + r * math.sin(turn)
            path.arc(centre, dice.choice((-1, 1)) * dice.uniform(60, 360), z=z)
        elif kind < 0.9:
            r = dice.uniform(0.5, 1.5) * radius
            path.arc((x + r * math.cos(turn), y + r * math.sin(turn)), dice.choice((-540, 360, 720)), z=lower)
        else:
            path.line(z=lower)
    return path


def heading(motion: Motion, move: int, share: float) -> float:
    """Direction of travel at a share of a move, radians."""
    if motion.kind[move] >= ARC_CW:
        start = math.atan2(motion.y0[move] - motion.cv[move], motion.x0[move] - motion.cu[move])
        return start + math.radians(share * motion.sweep[move]) + math.copysign(math.pi / 2, motion.sweep[move])
    return math.atan2(motion.y1[move] - motion.y0[move], motion.x1[move] - motion.x0[move])


def seen(tool: Tool, motion: Motion, whole: dexels.Trace, found: Engagement, piece: int) -> list[dexels.Met]:
    """What the oracle sees at PLACES of a piece."""
    pieces, made = found.pieces, []
    for place in PLACES:
        share = float(pieces.start[piece] + place * (pieces.end[piece] - pieces.start[piece]))
        until = whole.until(int(pieces.move[piece]), share)
        made.append(dexels.met(tool, until, heading(motion, int(pieces.move[piece]), float(until.share[-1])), BOX))
    return made


def alike(views: list[dexels.Met]) -> bool:
    """Whether a piece meets the same from its start to its end."""
    high = max(float(view.depth.max()) for view in views)
    return all(float(np.abs(view.depth - views[0].depth).mean()) <= 0.06 * high for view in views)


@pytest.mark.parametrize(
    ("name", "seed"),
    [
        *(("flat", seed) for seed in (0, 1, 2)),
        *(pytest.param("flat", seed, marks=pytest.mark.slow) for seed in (3, 4, 5, 6, 7)),
        *(pytest.param(name, seed, marks=pytest.mark.slow) for name in ("ball", "bull-nose", "v") for seed in (1, 4)),
    ],
)
def test_random_programs_meet_what_the_oracle_sees(name: str, seed: int) -> None:
    tool = TOOLS[name]
    motion = wander(seed, tool.diameter / 2).motion()
    found = engage(motion, setup(tool, stock=BLANK))
    pieces, whole = found.pieces, dexels.trace(motion)
    assert pieces.removed.sum() == pytest.approx(dexels.volume(tool, whole, BOX, 0.06), rel=0.01)
    along = (pieces.travel > 0.2) & (pieces.ae > 0)
    if name != "flat":  # as these go down, what flank and tip take off pass into each other
        along &= np.abs(pieces.drop) < 1e-6
    looked, most_pieces = 0, 14 if name == "flat" else 6  # of a shaped tool the oracle asks every radius
    for piece in np.random.default_rng(seed).permutation(np.flatnonzero(along))[:most_pieces].tolist():
        views = seen(tool, motion, whole, found, piece)
        if not alike(views):
            continue
        rows, most = pieces.profile[[piece]], float(np.mean([view.depth.max() for view in views]))
        # where a shaped tool's contact runs out along the steep flank of an earlier groove, it ends within a cell
        for deeper in (0.012, 0.37 * most, 0.71 * most)[name != "flat" :]:
            levels = views[0].depth[views[0].depth > 0]
            if np.any(np.abs(levels - deeper) < 0.03 * most) or min(view.width(deeper) for view in views) < 0.02:
                continue  # a level within the noise of the limit is either; a hair at the rim has no angle
            arcs, widths = ([getattr(view, what)(deeper) for view in views] for what in ("arc", "width"))
            if max(arcs) - min(arcs) > 2.5:
                continue
            looked += 1
            told = float(contact.width(found.contact, rows, deeper)[0])
            assert told == pytest.approx(np.mean(widths), rel=0.02, abs=0.01 * tool.diameter), (piece, deeper)
            if max(arcs) < NEARLY_A_SLOT:
                angle = float(contact.arc(found.contact, rows, deeper)[0])
                # the height of a shaped tool's contact comes from cells beside each other
                assert angle == pytest.approx(np.mean(arcs), abs=2.0 if name == "flat" else 4.0), (piece, deeper)
            ahead = float(contact.largest_cosine(found.contact, rows, deeper)[0])
            assert ahead == pytest.approx(max(view.cosine(deeper) for view in views), abs=0.03), (piece, deeper)
        deepest = float(contact.deepest(found.contact, rows)[0])
        tenths = [np.quantile(view.depth[view.depth > 0.012], 0.9) for view in views]
        assert min(tenths) - found.cell <= deepest <= 1.1 * max(tenths) + found.cell, piece
    assert looked > 0


def on(found: Engagement, move: int, low: float = 0.3, high: float = 0.7) -> Bools:
    """The pieces of the middle of a move."""
    pieces = found.pieces
    picked: Bools = (pieces.move == move) & (pieces.start >= low) & (pieces.end <= high)
    assert picked.any()
    return picked


@pytest.mark.parametrize("wide", [0.3, 0.6, 1.5])
@pytest.mark.parametrize("turned", [0.0, 30.0])
def test_a_rib_cut_down_its_middle_lies_dead_ahead(wide: float, turned: float) -> None:
    c, s = math.cos(math.radians(turned)), math.sin(math.radians(turned))

    def at(x: float, y: float) -> tuple[float, float]:
        return 20 + x * c - y * s, 15 + x * s + y * c

    path = Path((20, 15, 5))
    for y in (-(6 + wide) / 2, (6 + wide) / 2, 0.0):
        path.rapid(*at(-13, y)).rapid(z=-1).line(*at(13, y)).rapid(z=5)
    found = engage(path.motion(), setup(flat(6.0), stock=BLANK))
    rows = found.pieces.profile[on(found, len(path.rows) - 2)]
    first, last = contact.runs(found.contact, rows)
    assert np.isnan(first[:, 1]).all()
    half = math.degrees(math.asin(wide / 6))
    assert first[:, 0] == pytest.approx(-half, abs=2)
    assert last[:, 0] == pytest.approx(half, abs=2)
    assert contact.largest_cosine(found.contact, rows) == pytest.approx(1, abs=1e-3)
    assert np.median(contact.width(found.contact, rows)) == pytest.approx(wide, rel=0.02)
    assert found.pieces.climb[on(found, len(path.rows) - 2)] == pytest.approx(0.5, abs=0.1)


def test_a_skim_of_both_walls_is_two_runs_at_the_sides() -> None:
    path = Path((5, 15, 5))
    path.tool = 2
    path.rapid(z=-2).line(x=35).rapid(z=5).rapid(x=5)
    path.tool = 1
    path.rapid(z=-2).line(x=35)
    found = engage(path.motion(), setup(flat(6.0), Tool(2, "flat", 5.8), stock=BLANK))
    picked = on(found, len(path.rows) - 1)
    rows = found.pieces.profile[picked]
    first, last = contact.runs(found.contact, rows)
    edge = math.degrees(math.asin(2.9 / 3))
    assert first == pytest.approx(np.tile([-90, edge], (len(rows), 1)), abs=2)
    assert last == pytest.approx(np.tile([-edge, 90], (len(rows), 1)), abs=2)
    assert contact.largest_cosine(found.contact, rows) == pytest.approx(math.cos(math.radians(edge)), abs=0.02)
    assert found.pieces.ap[picked] == pytest.approx(2.0, abs=0.01)
    assert found.pieces.ae[picked] == pytest.approx(0.2, rel=0.05)


def test_a_wall_skim_over_a_thin_floor_is_deep_or_wide_but_not_both() -> None:
    path = Path((5, 15, 5)).rapid(z=-17.5).line(x=35).rapid(z=5).rapid(5, 15.2).rapid(z=-18).line(x=35)
    found = engage(path.motion(), setup(flat(6.0), stock=box((0, 40), (0, 30), depth=20)))
    picked = on(found, len(path.rows) - 1)
    rows = found.pieces.profile[picked]
    assert found.pieces.ap[picked] == pytest.approx(18, abs=0.1)
    assert found.pieces.ae[picked] == pytest.approx(0.2, rel=0.05)
    assert contact.width(found.contact, rows, 1.0) == pytest.approx(0.2, rel=0.05)
    assert contact.width(found.contact, rows, 0.2) == pytest.approx(6, rel=0.01)
    assert contact.width(found.contact, rows, 0.7) == pytest.approx(0.2, rel=0.05)
    assert contact.arc(found.contact, rows, 6.0) == pytest.approx(math.degrees(math.acos(1 - 0.2 / 3)), abs=2)
    assert contact.deepest(found.contact, rows) == pytest.approx(18, abs=0.2)
    assert contact.deepest(found.contact, rows, share=0.5) == pytest.approx(0.5, abs=0.02)


def test_three_levels_side_by_side_are_told_apart() -> None:
    path = Path((20, 15, 5))
    for y, z in ((9.0, -3.0), (10.5, -2.0)):  # leaves steps of 3, 2 and 0 mm under the last lap
        path.rapid(5, y).rapid(z=z).line(x=35).rapid(z=5)
    path.rapid(5, 14).rapid(z=-4).line(x=35)
    found = engage(path.motion(), setup(flat(6.0), stock=BLANK))
    rows = found.pieces.profile[on(found, len(path.rows) - 1)]
    for deeper, wide in ((0.5, 6.0), (1.5, 5.0), (2.5, 3.5)):
        assert contact.width(found.contact, rows, deeper) == pytest.approx(wide, rel=0.02), deeper


@pytest.mark.parametrize("share", [0.1, 0.3, 0.5, 1.0])
def test_a_plunge_tells_how_much_of_its_disc_met_how_much(share: float) -> None:
    # beside the blank's edge, so that the disc stands on a segment of that area
    away = next(
        d for d in np.linspace(-3, 3, 6001)
        if math.acos(d / 3) - d / 3 * math.sqrt(max(0.0, 1 - (d / 3) ** 2)) <= share * math.pi
    )  # fmt: skip
    found = engage(Path((-away, 15, 1)).line(z=-1.2).motion(), setup(flat(6.0), stock=BLANK))
    pieces = found.pieces
    assert contact.under(found.contact, pieces.profile) == pytest.approx(share, abs=0.02)
    whole = contact.under_depth(found.contact, pieces.profile, pieces.drop, 0.5 * share)
    assert whole.sum() == pytest.approx(1.2, abs=0.01)
    assert contact.under_median(found.contact, pieces.profile, pieces.drop).sum() == pytest.approx(1.2, abs=0.01)
    half = contact.under_depth(found.contact, pieces.profile, pieces.drop, 0.6)
    assert half.sum() == pytest.approx(1.2 if share > 0.6 else 0.0, abs=0.01)
    assert contact.under_share(found.contact, pieces.profile, pieces.drop, 0.0) == pytest.approx(share, abs=0.02)


def test_a_plunge_beside_its_own_slot_is_a_graze() -> None:
    path = Path((10, 15, 5)).rapid(z=-3).line(x=30).rapid(z=5).rapid(20, 15.15).rapid(z=0.5).line(z=-3)
    found = engage(path.motion(), setup(flat(6.0), stock=BLANK))
    plunge = found.pieces.move == len(path.rows) - 1
    assert contact.under(found.contact, found.pieces.profile[plunge]).max() < 0.05


def test_a_corner_reaches_as_far_as_it_does_at_its_longest() -> None:
    path = Path((10, 8, 5)).rapid(z=-2).line(x=30).line(y=22).line(x=30.3).line(y=22.3)
    found = engage(path.motion(), setup(flat(6.0), stock=BLANK))
    into = found.pieces.profile[found.pieces.move == len(path.rows) - 1][-1:]
    # a wall 0.3 beside it all the way, and another ahead over the last 0.3 of it
    assert contact.arc(found.contact, into)[0] > 90


# properties


def measured(path: Path, tool: Tool = TOOLS["flat"]) -> np.ndarray:
    """[move] volume and, by length, the mean depth, width, angle and arc deeper than 0.3 mm."""
    found = engage(path.motion(), setup(tool, stock=box((-60, 60), (-60, 60))))
    pieces, n = found.pieces, len(path.rows)
    arcs = contact.arc(found.contact, pieces.profile, 0.3)
    long = np.maximum(np.bincount(pieces.move, pieces.length, n), 1e-9)
    columns = pieces.ap, pieces.ae, pieces.angle, arcs
    means = [np.bincount(pieces.move, values * pieces.length, n) / long for values in columns]
    return np.column_stack([np.bincount(pieces.move, pieces.removed, n), *means])


LAPS = (
    (-20, -12, -1.0), (22, -12, -1.0), (22, 10, -1.0), (-20, 10, -1.5), (-20, -9, -1.5), (18, -5, -2.0), (18, 12, -2.0)
)  # fmt: skip


def laps(change=lambda x, y, z: (x, y, z), split: int = 1) -> Path:  # type: ignore[no-untyped-def]
    path = Path(change(-20, -12, 0.0))
    for point in LAPS:
        start = path.at
        for k in range(1, split + 1):
            path.line(*(a + (b - a) * k / split for a, b in zip(start, change(*point), strict=True)))
    return path


def test_shifting_and_turning_by_a_right_angle_change_nothing() -> None:
    as_is = measured(laps())
    assert as_is[:, 0].sum() > 500
    for change in (
        lambda x, y, z: (x + 3.137, y - 1.713, z),
        lambda x, y, z: (-y, x, z),
        lambda x, y, z: (-x, -y, z),
    ):
        other = measured(laps(change))
        assert other[:, 0] == pytest.approx(as_is[:, 0], rel=0.01, abs=0.3)
        assert other[:, 1] == pytest.approx(as_is[:, 1], rel=0.03, abs=0.02)
        # the last leg lies in part over what was cut: where its pieces begin and end is another matter
        assert other[:-1, 2] == pytest.approx(as_is[:-1, 2], rel=0.02, abs=0.06)
        assert other[:-1, 3:] == pytest.approx(as_is[:-1, 3:], rel=0.02, abs=2.5)
        assert other[-1, 2] == pytest.approx(as_is[-1, 2], rel=0.05)


def test_splitting_moves_changes_nothing() -> None:
    as_is, split = measured(laps()), measured(laps(split=7))
    together = split.reshape(len(LAPS), 7, -1)
    assert together[:, :, 0].sum(axis=1) == pytest.approx(as_is[:, 0], rel=0.01, abs=0.3)
    assert together[1:, 1:-1, 1].mean(axis=1) == pytest.approx(as_is[1:, 1], rel=0.1, abs=0.1)
    assert together[1:, 1:-1, 2].mean(axis=1) == pytest.approx(as_is[1:, 2], rel=0.1, abs=0.3)


def test_reversing_a_program_takes_off_the_same_and_turns_climb_to_conventional() -> None:
    def laps_of(order: int) -> tuple[Engagement, int]:
        path = Path((5, 10, 5)).rapid(z=-1).line(x=35).rapid(z=5)
        path.rapid((5, 35)[order], 11.2).rapid(z=-1).line(x=(35, 5)[order])
        return engage(path.motion(), setup(flat(6.0), stock=BLANK)), len(path.rows) - 1

    (there, move), (back, _) = laps_of(0), laps_of(1)
    assert back.pieces.removed.sum() == pytest.approx(there.pieces.removed.sum(), rel=0.002)
    assert back.pieces.ae[on(back, move)].mean() == pytest.approx(there.pieces.ae[on(there, move)].mean(), rel=0.02)
    assert there.pieces.climb[on(there, move)] == pytest.approx(0.0, abs=0.01)
    assert back.pieces.climb[on(back, move)] == pytest.approx(1.0, abs=0.01)
    left, right = (contact.runs(e.contact, e.pieces.profile[on(e, move)]) for e in (there, back))
    assert np.median(left[0][:, 0]) == pytest.approx(-np.median(right[1][:, 0]), abs=1)


def test_a_program_in_inches_and_one_under_g41_meet_the_same(tmp_path: File) -> None:
    options = Options(tools=("1: flat 6mm 2fl up-cut",), stock="40 x 30 x 10 mm at 0 0")
    head = "G90 G94 G17 G54 M3 S12000 G0 Z{up}\nG0 X{a} Y{b}\nG1 Z{z} F300\n"
    metric = "G21 " + head.format(up="5.08", a="-5.08", b="7.62", z="-1.27") + "G1 X45.72\nG1 Y10.16\nG1 X-5.08\nM30\n"
    inch = "G20 " + head.format(up="0.2", a="-0.2", b="0.3", z="-0.05") + "G1 X1.8\nG1 Y0.4\nG1 X-0.2\nM30\n"
    beside = (
        "G21 " + head.format(up="5.08", a="-5.08", b="2.62", z="-1.27")
        + "G41 D1 G1 X-5.08 Y4.62\nG1 X45.72\nG40 G1 Y7.62\nG1 Y10.16\nG1 X-5.08\nM30\n"
    )  # fmt: skip
    mm, inches, contour = (
        traced(text.encode(), "lowtide.nc", options, str(tmp_path / "lowtide.nc")).engagement
        for text in (metric, inch, beside)
    )
    assert inches.pieces.removed.sum() == pytest.approx(mm.pieces.removed.sum(), rel=1e-4)
    assert inches.pieces.ae == pytest.approx(mm.pieces.ae, abs=1e-3)
    assert contour.pieces.removed.sum() == pytest.approx(mm.pieces.removed.sum(), rel=0.01)


# the questions, on profiles made by hand


def test_the_questions_of_two_levels() -> None:
    table = contact_of([[(-90, 90, 0.5), (75, 90, 18.0)], [(-10, 10, 2.0)], [(-90, -80, 1.0), (80, 90, 3.0)]])
    rows = np.arange(3)
    assert contact.arc(table, rows).tolist() == pytest.approx([180, 20, 20])
    assert contact.arc(table, rows, 2.5).tolist() == pytest.approx([15, 0, 10])
    assert contact.arc(table, rows, np.array([0.4, 1.9, 0.5])).tolist() == pytest.approx([180, 20, 20])
    assert contact.widest_run(table, rows).tolist() == pytest.approx([180, 20, 10])
    assert contact.width(table, rows)[1] == pytest.approx(6 * math.sin(math.radians(10)))
    assert contact.largest_cosine(table, rows).tolist() == pytest.approx([1, 1, math.cos(math.radians(80))])
    assert contact.largest_cosine(table, rows, 1.0)[0] == pytest.approx(math.cos(math.radians(75)))
    assert contact.deepest(table, rows, share=0.05).tolist() == pytest.approx([18, 2, 3], rel=0.01)
    # in the second row the chip of a half-round edge, in the others of a straight one
    chip = contact.largest_chip(table, rows, lambda depth: np.where(depth == 2, 0.5, 1.0).astype(np.float32))
    assert chip.tolist() == pytest.approx([1, 0.5, math.cos(math.radians(80))], abs=1e-3)


def test_a_slope_is_cut_where_it_passes_the_limit() -> None:
    table = contact_of([[(-90, 90, 1.0)]])
    table.depth[0] = np.round((contact.MIDDLE + 90) / 180 / contact.MM)
    table.above[0] = [round(1 / 3 / contact.MM), round(2 / 3 / contact.MM)]
    table.edges[0, 4:12] = [-3000, 9000, contact.NONE, contact.NONE, 3000, 9000, contact.NONE, contact.NONE]
    for deeper in (0.1, 0.25, 0.5, 0.8):
        assert contact.arc(table, np.array([0]), deeper)[0] == pytest.approx(180 * (1 - deeper), abs=0.5)
    assert contact.deepest(table, np.array([0]), share=0.25)[0] == pytest.approx(0.75, abs=0.03)


def test_no_rows_and_no_contact_have_answers() -> None:
    table = contact_of([[]])
    for rows in (np.zeros(0, np.int64), np.array([0])):
        for question in (contact.arc, contact.width, contact.deepest, contact.largest_cosine, contact.under):
            assert question(table, rows).tolist() == [0.0] * len(rows)


def test_neighbours_that_are_alike_share_a_profile() -> None:
    found = engage(Path((-10, 15, -2)).line(x=50).motion(), setup(flat(6.0), stock=BLANK))
    assert len(found.contact) < 0.6 * len(found.pieces)
    taken = sum(getattr(found.contact, name)[:1].nbytes for name in found.contact.__slots__)
    assert (taken + 4) * 1_000_000 <= 100e6  # a million pieces, none alike
