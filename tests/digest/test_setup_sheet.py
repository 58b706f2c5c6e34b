"""The paper list of small programs whose figures are reckoned by hand; shops and programs are invented."""

from __future__ import annotations

from itertools import pairwise
from pathlib import Path

import pytest

from gclint.cards.material import material, names
from gclint.tables.finding import Checked
from gclint.tables.setup_sheet import SetupSheet
from tests.judge.try_judge import tried

SHOP = """
[machine]
rapid = { x = "6000 mm/min", y = "6000 mm/min", z = "6000 mm/min" }
controller = "CARD"

[spindle]
kind = "dial"
dial = [ { mark = "B", stated = 12000 }, { mark = "D", stated = 18000 } ]
started = "by-hand"

[[tool]]
number = 1
name = "six up-cut"
shape = "flat"
diameter = "6 mm"
flutes = 2
stickout = "31 mm"

[[tool]]
number = 2
shape = "flat"
diameter = "4 mm"
flutes = 2
"""
JOB = """
material = "beech"
z_zero = "Z"

[stock]
size = ["120 mm", "80 mm", "18 mm"]
measured_thickness = "17.5 mm"
corner = ["0 mm", "0 mm"]

[hold]
by = "screws"
"""
TWO = (
    "G21 G90 G94 G17 G54\nT1 M6\nM3 S18000\nG0 Z10\nG0 X20 Y10\nG1 Z-2 F300\nG1 X80 F1200\nG0 Z10\n"
    "(turn the clamp)\nM0\nM3 S18000\nG0 X20 Y30\nG1 Z-2 F300\nG1 X80 F1200\nG0 Z10\nM5\n"
    "T2 M6\nM3 S12000\nG0 X20 Y60\nG1 Z-18 F300\nG1 X80 F1200\nG0 Z10\nM5\nM30\n"
)


def paper(checked: Checked) -> SetupSheet:
    assert checked.paper is not None, checked.findings
    return checked.paper


def two(card: str = "shop-3-axis", z: str = "stock-top", program: str = TWO) -> SetupSheet:
    return paper(tried(program, shop=SHOP.replace("CARD", card), job=JOB.replace('"Z"', f'"{z}"')))


def test_zero_and_how_far_everything_reaches() -> None:
    made = two()
    assert (made.zero.corner, made.zero.height) == ("front-left", "stock-top")
    assert made.zero.above_table_mm == pytest.approx(17.5)
    assert made.blank is not None
    assert made.cut is not None
    assert made.tip is not None
    assert not made.blank_assumed
    assert (made.blank.left, made.blank.right, made.blank.front, made.blank.back) == pytest.approx((0, 120, 0, 80))
    assert (made.cut.left, made.cut.right, made.cut.front, made.cut.back) == pytest.approx((-17, 83, -7, 62))
    assert (made.tip.left, made.tip.right, made.tip.front, made.tip.back) == pytest.approx((-20, 80, -10, 60))
    assert made.lowest_z_mm == pytest.approx(-18)
    assert made.lowest_above_table_mm == pytest.approx(-0.5)  # half a millimetre into the table
    assert made.highest_z_mm == pytest.approx(10)
    assert made.thickness_mm == pytest.approx(17.5)


def test_zero_on_the_table_and_a_blank_that_lies_elsewhere() -> None:
    made = two(z="table")
    assert (made.zero.height, made.zero.above_table_mm) == ("table", pytest.approx(0))
    centre = JOB.replace('"0 mm", "0 mm"', '"-60 mm", "-40 mm"').replace('"Z"', '"stock-top"')
    for corner, where in (
        ('"-60 mm", "-40 mm"', "centre"), ('"-120 mm", "0 mm"', "front-right"), ('"0 mm", "-80 mm"', "back-left"),
        ('"-120 mm", "-80 mm"', "back-right"), ('"0 mm", "-40 mm"', "edge"), ('"-50 mm", "-10 mm"', "inside"),
        ('"5 mm", "5 mm"', "outside"),
    ):  # fmt: skip
        job = centre.replace('"-60 mm", "-40 mm"', corner)
        assert paper(tried(TWO, shop=SHOP.replace("CARD", "any"), job=job)).zero.corner == where
    bare = paper(tried(TWO, shop=SHOP.replace("CARD", "any")))
    assert (bare.zero.corner, bare.zero.height, bare.blank_assumed) == ("not-known", "not-declared", True)
    assert bare.lowest_above_table_mm is None


def test_each_tool_with_what_must_be_set_for_it() -> None:
    first, second = two().tools
    assert (first.tool, first.name, first.stickout_mm, first.dial_marks) == (1, "six up-cut", 31.0, ("D",))
    assert (second.tool, second.stickout_mm, second.dial_marks) == (2, None, ("B",))
    assert (first.first_line, second.first_line) == (4, 19)
    # two cuts of 60 mm at 1200, descents of 12 at 300; rapids at 6000: 60 up or down, 22.36, 60, 72 across and over
    assert second.time_s == pytest.approx(28 / 300 * 60 + 60 / 1200 * 60 + (67.1 + 28) / 6000 * 60, abs=0.1)


def test_stops_say_what_to_do_there() -> None:
    first, pause, second = two().stops
    assert (first.line, first.words, first.tool) == (2, "M6", 1)
    assert "Have tool 1 (six up-cut) in, 31 mm out of the nut." in first.do
    assert "Set the dial to D." in first.do
    assert (pause.line, pause.words, pause.tool, pause.waits) == (10, "M0", None, True)
    assert pause.says == "turn the clamp"
    assert (second.line, second.tool, second.waits) == (17, 2, True)
    assert "Put tool 2 in." in second.do
    assert "Set Z zero with it; leave X and Y as they are." in second.do


CARDS = ("any", "hobby-3-axis", "iso-6983", "shop-3-axis", "shop-mill-macros")


@pytest.mark.parametrize("started", ["by-hand", "program"])
@pytest.mark.parametrize("card", CARDS)
def test_the_spindle_stands_still_before_hands_do_anything(card: str, started: str) -> None:
    """Common practice; on a hand-started router nothing but a hand switches the spindle off."""
    shop = SHOP.replace("CARD", card).replace('"by-hand"', f'"{started}"')
    made = paper(tried(TWO, shop=shop, job=JOB.replace('"Z"', '"stock-top"')))
    at_the_collet = "unplugged" if started == "by-hand" else "machine's manual"
    assert made.stops
    for stop in made.stops:
        assert "spindle off" in stop.do[0].lower()
        assert "stands still" in stop.do[0]
        if stop.tool is not None:
            assert any(at_the_collet in step for step in stop.do[:2])
            assert not any("unplugged" in step for step in stop.do if started == "program")
        if len(stop.do) > 1:  # the machine does not change the tool by itself
            assert stop.do[-1].startswith("Hands clear")
    assert made.tick[0].startswith("Spindle off")
    assert at_the_collet in made.tick[1]
    assert made.tick[-1].startswith("Hands clear")


def test_whether_the_program_starts_the_spindle_again() -> None:
    shop = SHOP.replace("CARD", "shop-3-axis").replace('"by-hand"', '"program"')
    job = JOB.replace('"Z"', '"stock-top"')
    pause = paper(tried(TWO, shop=shop, job=job)).stops[1]
    assert pause.do[-1].endswith("the program starts the spindle.")
    assert "leaves it on" not in pause.do[0]  # this card's M0 stops the spindle
    alone = paper(tried(TWO.replace("M0\nM3 S18000", "M0"), shop=shop, job=job)).stops[1]
    assert "the program does not start it" in alone.do[-1]
    turning = paper(tried(TWO, shop=shop.replace("shop-3-axis", "hobby-3-axis"), job=job)).stops[0]
    assert (turning.words, turning.waits) == ("M0", True)
    assert "leaves it on" in turning.do[0]


def test_a_stop_is_claimed_only_where_the_card_waits() -> None:
    """hobby-3-axis passes over M6, shop-3-axis waits at it, shop-mill-macros has a changer; any tells nothing."""
    waits = {card: [(stop.words, stop.waits) for stop in two(card).stops] for card in CARDS}
    assert waits["hobby-3-axis"] == [("M0", True), ("M6", False)]
    assert waits["shop-3-axis"] == [("M6", True), ("M0", True), ("M6", True)]
    assert waits["shop-mill-macros"] == [("M0", True), ("M6", False)]
    assert waits["any"] == [("M0", None), ("M6", None)]
    for card in CARDS:
        for stop in two(card).stops:
            assert ("The program stops here." in stop.here) == (stop.waits is True)
    optional = two("hobby-3-axis", program=TWO.replace("M0\n", "M1\n")).stops[0]
    assert (optional.words, optional.waits) == ("M1", None)


def test_a_tool_that_must_be_in_before_the_start_is_listed_there() -> None:
    """Neither M6 nor T waits for the first tool on this card, so nothing is to do at its line."""
    for program in (TWO, TWO.replace("T1 M6", "T1").replace("T2 M6", "M0\nT2")):
        made = two("hobby-3-axis", program=program)
        assert 2 not in [stop.line for stop in made.stops]
        assert "tool 1 (six up-cut) in, 31 mm out of the nut" in made.tick
    said = two("hobby-3-axis", program=TWO.replace("T1 M6", "T1 M6 (blue collet)"))
    assert any('the program says: "blue collet"' in text for text in said.tick)
    changer = two("shop-mill-macros")
    assert any("in the changer" in text and "tools 1, 2" in text for text in changer.tick)
    assert "by itself" in changer.stops[-1].here


def test_a_change_that_the_machine_passes_over_is_told() -> None:
    second = two("hobby-3-axis").stops[-1]
    assert second.waits is False
    assert "does not wait here" in second.here
    halted = two("hobby-3-axis", program=TWO.replace("T2 M6", "M0\nT2 M6")).stops[-1]
    assert (halted.words, halted.waits, halted.tool) == ("M0 M6", True, 2)


def test_a_stop_without_a_word_asks_to_find_out() -> None:
    pause = two(program=TWO.replace("(turn the clamp)\n", "")).stops[1]
    assert pause.says == ""
    assert any("find out before you start" in step for step in pause.do)


def test_restarts_tell_what_to_set() -> None:
    made = two()
    assert [(each.line, each.tool) for each in made.restarts] == [(12, 1), (19, 2)]
    assert made.restarts[0].words == ("G21 G90 G17 G94 G54", "T1 M6", "S18000 M3", "F1200", "G0 Z10", "X80 Y10")
    assert made.restarts[0].start_mm == pytest.approx((80, 10, 10))
    assert made.no_restart == ""


def test_many_restarts_are_spread_and_counted() -> None:
    lap = "G0 X{0} Y10\nG1 Z-1 F300\nG1 Y60 F1200\nG0 Z10\n"
    many = "G21 G90 G94 G17 G54\nM3 S18000\nG0 Z10\n" + "".join(lap.format(x) for x in range(5, 115, 2)) + "M30\n"
    made = two(program=many)
    assert (len(made.restarts), made.restarts_left_out) == (12, 42)
    lines = [each.line for each in made.restarts]
    assert lines == sorted(set(lines))
    left = [each.left_s for each in made.restarts if each.left_s is not None]
    steps = [a - b for a, b in pairwise(left)]
    assert max(steps) < 2 * min(steps)


def test_boxes_to_tick_hold_what_is_expected() -> None:
    ticks = two().tick
    expected = (
        "Spindle off", "unplugged", "tool 1 (six up-cut) in", "thickness measured (taken as 17.5 mm)",
        "dial set to D for the first tool (in all: D, B)", "X and Y zero set", "Z zero set with the first tool",
        "held by screws, looked at", "fingerprint compared", "initials", "Hands clear",
    )  # fmt: skip
    assert len(ticks) == len(expected)
    assert all(said in tick for said, tick in zip(expected, ticks))


def test_a_comment_beside_a_stop_is_shortened_and_cleaned() -> None:
    hostile = two(program=TWO.replace("turn the clamp", "\x1b[2J" + "lift " * 100)).stops[1]
    assert "\x1b" not in hostile.says
    assert len(hostile.says) <= 120


@pytest.mark.parametrize("name", names())
def test_every_shipped_card_says_what_a_good_chip_is_like(name: str) -> None:
    good = material(name).good_chip
    assert good is not None
    assert good.looks
    assert good.sounds
    assert (good.standing, good.source) == ("practice", "common practice, no source")


def test_a_card_of_ones_own_may_leave_it_out(tmp_path: Path) -> None:
    text = Path(material("beech").path).read_text(encoding="utf-8")
    start = text.index("[good_chip]")
    (tmp_path / "driftwood.toml").write_text(text[:start] + text[text.index("[thin]") :], encoding="utf-8")
    assert material(str(tmp_path / "driftwood.toml")).good_chip is None
