"""Bending, breaking, stalling, long tools and rubbing, from a program to the finding."""

from __future__ import annotations

import pytest

from gclint.tables.finding import Checked
from tests.judge.try_judge import found, tried

STOCK = "120 x 80 x 20 mm at 0 0"
LENGTHS = 'flute_length = "12 mm"\nstickout = "30 mm"\nshank = "3.175 mm"\nmade_of = "carbide"\n'


def slot(depth: float, feed: int, speed: int = 18000, y: float = 40) -> str:
    return f"G21 G90 G94 G17 G54\nM3 S{speed}\nG0 Z5\nG0 X-10 Y{y}\nG1 Z-{depth} F300\nG1 X130 F{feed}\n"


def shop(more: str = LENGTHS, spindle: str = "", diameter: str = "3.175 mm", flutes: int = 2) -> str:
    tool = f'[[tool]]\nnumber = 1\nshape = "flat"\ndiameter = "{diameter}"\nflutes = {flutes}\n'
    return f"{spindle}\n{tool}{more}"


def judged(program: str, material: str = "aluminium-6061", **of_shop: object) -> Checked:
    return tried(program + "G0 Z5\nM30\n", material=material, stock=STOCK, shop=shop(**of_shop))  # type: ignore[arg-type]


def needs(checked: Checked, rule: str) -> str:
    return next((blind.needs for blind in checked.not_judged if blind.rule == rule), "")


def test_a_wall_that_stays_is_held_to_a_finer_limit_than_a_slot_that_is_widened() -> None:
    """The same slot; once its walls stay, once later passes take them away."""
    stays = judged(slot(1.5, 900))
    (bends,) = found(stays, "tool-bends")
    assert bends.window is not None
    assert bends.window.high == pytest.approx(0.05)
    beside = "".join(f"G0 Z5\nG0 X-10 Y{y}\nG1 Z-1.5 F300\nG1 X130 F200\n" for y in (38.5, 41.5))
    taken = judged(slot(1.5, 900) + beside)
    assert not [f for f in found(taken, "tool-bends") if 6 in f.lines]


@pytest.mark.parametrize("allowance", [0.1, 0.2, 0.5])
def test_a_wall_that_a_skim_makes_anew_is_not_the_wall_of_the_rough_cut(allowance: float) -> None:
    """One side of a blank: roughed, then skimmed along the same wall; without the skim the rough cut is the wall."""

    def side(y: float, feed: int) -> str:
        return f"G0 Z5\nG0 X-10 Y{y}\nG1 Z-1.8 F300\nG1 X130 F{feed}\n"

    head = "G21 G90 G94 G17 G54\nM3 S18000\n"
    rough, skim = side(-allowance, 900), side(0, 200)
    assert [f for f in found(judged(head + rough), "tool-bends") if 6 in f.lines]
    assert not [f for f in found(judged(head + rough + skim), "tool-bends") if 6 in f.lines]


def test_a_stiffer_setup_bends_less() -> None:
    short = LENGTHS.replace("30 mm", "16 mm")
    assert found(judged(slot(1, 900)), "tool-bends")
    assert not found(judged(slot(1, 900), more=short), "tool-bends")


def test_a_machine_that_gives_way_counts() -> None:
    short = LENGTHS.replace("30 mm", "16 mm")
    weak = "[machine]\nstiffness = \"120 N/mm\"\n"
    (bends,) = found(judged(slot(1, 900), more=short, spindle=weak), "tool-bends")
    assert bends.grade == "change"


def test_breaking_stands_in_for_bending_where_it_is_no_milder() -> None:
    checked = judged(slot(3, 6000))
    assert found(checked, "tool-breaks")
    assert not found(checked, "tool-bends")
    checked = judged(slot(3, 3000))
    assert [f.grade for f in found(checked, "tool-breaks")] == ["consider"]
    assert [f.grade for f in found(checked, "tool-bends")] == ["change"]


def test_what_would_let_it_judge_is_named() -> None:
    checked = judged(slot(1, 900), more='stickout = "30 mm"\n')
    assert "`flute_length`, `shank`, `made_of` of tool 1" in needs(checked, "tool-bends")
    assert "power" in needs(checked, "spindle-stalls")
    assert not found(checked, "tool-bends", "tool-breaks", "spindle-stalls")


def test_the_power_curve_counts_at_the_true_speed() -> None:
    curve = '[spindle]\npower_curve = [[6000, "100 W"], [18000, "800 W"]]\n'
    six = LENGTHS.replace("3.175", "6")
    assert not found(judged(slot(2, 700, 18000), spindle=curve, diameter="6 mm", more=six), "spindle-stalls")
    (stalls,) = found(judged(slot(2, 700, 6000), spindle=curve, diameter="6 mm", more=six), "spindle-stalls")
    assert stalls.grade == "change"
    assert "100 W" in stalls.happens


def test_a_range_only_is_graded_by_its_ends() -> None:
    """HDPE's force is known as a range: the same cut at falling power goes from nothing over consider to change."""
    six = LENGTHS.replace("3.175", "6")
    grades = []
    for watt in (2000, 130, 60):
        spindle = f'[spindle]\npower = "{watt} W"\n'
        stalls = found(judged(slot(3, 3000), "hdpe", spindle=spindle, diameter="6 mm", more=six), "spindle-stalls")
        grades.append(stalls[0].grade if stalls else "")
    assert grades == ["", "consider", "change"]


def test_a_long_tool_is_named_only_where_its_bending_is_not_known() -> None:
    known = judged(slot(3.2, 300))
    assert not found(known, "long-tool")
    unknown = judged(slot(3.2, 300), more='stickout = "30 mm"\nshank = "3.175 mm"\n')
    (long,) = found(unknown, "long-tool")
    assert long.grade == "consider"
    foam = judged(slot(3.2, 300), "pvc-foam-board", more='stickout = "30 mm"\nshank = "3.175 mm"\n')
    assert not found(foam, "long-tool")
    thick = 'stickout = "40 mm"\nshank = "6 mm"\nflute_length = "8 mm"\n'
    assert not found(judged(slot(1.6, 300), more=thick, diameter="1.5 mm"), "long-tool")
    necked = thick + 'neck = "16 mm"\n'
    assert found(judged(slot(1.6, 300), more=necked, diameter="1.5 mm"), "long-tool")


def test_a_chip_thinner_than_the_edge_is_round_says_so() -> None:
    worn = 'edge_radius = "0.02 mm"\n'
    (thin,) = found(judged(slot(0.5, 150), more=worn), "chip-too-thin")
    assert "An edge rounded to 0.02 mm" in thin.happens
    (thin,) = found(judged(slot(0.5, 150), more=""), "chip-too-thin")
    assert "rounded" not in thin.happens


@pytest.mark.parametrize(
    ("depth", "feed", "material", "rule", "more"),
    [
        (3, 3000, "aluminium-6061", "tool-breaks", ""),
        (0.8, 900, "aluminium-6061", "tool-bends", ""),
        (3, 3000, "hdpe", "spindle-stalls", '[spindle]\npower = "130 W"\n'),
    ],
)
def test_the_feed_it_gives_mends_it(depth: float, feed: int, material: str, rule: str, more: str) -> None:
    lengths = LENGTHS.replace("3.175", "6") if material == "hdpe" else LENGTHS
    size = "6 mm" if material == "hdpe" else "3.175 mm"
    (wrong,) = found(judged(slot(depth, feed), material, spindle=more, more=lengths, diameter=size), rule)
    (word,) = wrong.change.set
    assert (word.line, word.word, word.from_) == (6, "F", feed)
    mended = judged(slot(depth, int(word.to)), material, spindle=more, more=lengths, diameter=size)
    assert not found(mended, rule)


def test_where_less_feed_would_rub_it_gives_passes() -> None:
    (bends,) = found(judged(slot(1.5, 900)), "tool-bends")
    assert "Cut this in 3 passes of 0.5 mm" in bends.change.text
    assert bends.change.set == ()
    assert not found(judged("".join(slot(0.5 * n, 900) for n in (1, 2, 3))), "tool-bends")
