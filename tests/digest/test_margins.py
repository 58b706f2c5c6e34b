"""How near a cut is to its limits, told also where nothing is found. The figures are worked out by hand here."""

from __future__ import annotations

import pytest

from gclint.check import check
from gclint.digest.margin_words import margin_words, mark_words, nearest_words
from gclint.digest.margins_of_reach import DISTANCES
from gclint.digest.words import Lengths
from gclint.setup.declare import Options
from gclint.tables.finding import Checked, Margin, ToolRow
from tests.judge.try_judge import tried

SLOT = """G21 G90 G94 G17 G54
{t}M3 S{s}
G4 P4
G0 X20 Y20 Z20
G0 Z2
G1 Z0 F400
G1 X60 Z-3 F600
G1 X20 F{f}
G1 X100
G0 Z20
M5
M30
"""
DIAL = """[spindle]
kind = "dial"
dial = [ { mark = "1", stated = 9500 }, { mark = "2", stated = 12500 }, { mark = "3", stated = 20000 } ]
[[tool]]
number = 1
shape = "flat"
diameter = "6 mm"
flutes = 2
"""


def judged(speed: int = 16000, feed: int = 1600) -> Checked:
    program = SLOT.format(t="T1 M6\n", s=speed, f=feed)
    options = Options("birch-plywood", ("1: flat 6mm 2fl",), "120 x 80 x 18 mm at 0 0")
    return check(program.encode(), "slot.nc", options, "/nowhere/slot.nc")


def margin(checked: Checked, what: str, side: str) -> Margin:
    return next(one for one in checked.tools[0].margins if (one.what, one.side) == (what, side))


def test_a_full_slot_cuts_a_chip_of_its_feed_per_tooth() -> None:
    """F1600 / (16000 x 2) = 0.05 mm, against what the card allows a slot of 6 mm."""
    checked = judged()
    for side in ("least", "most"):
        one = margin(checked, "chip", side)
        assert one.found == pytest.approx(0.05, rel=0.01)
        room = one.found / one.limit - 1 if side == "least" else 1 - one.found / one.limit
        assert one.room == pytest.approx(room, abs=1e-3)
        assert one.line in (8, 9)
        assert one.source


def test_a_limit_that_is_passed_has_less_than_no_room() -> None:
    assert margin(judged(feed=200), "chip", "least").room < 0
    assert margin(judged(feed=9000), "chip", "most").room < 0
    assert margin(judged(), "chip", "least").room > 0
    assert margin(judged(), "chip", "most").room > 0


def test_the_depth_is_that_of_the_cut() -> None:
    one = margin(judged(), "depth of a slot", "most")
    assert one.found == pytest.approx(3.0, abs=0.05)
    assert one.room == pytest.approx(1 - one.found / one.limit, abs=1e-3)


def test_without_a_material_only_what_is_known_has_a_margin() -> None:
    program = SLOT.format(t="T1 M6\n", s=16000, f=1600)
    checked = check(program.encode(), "slot.nc", Options(tools=("1: flat 6mm 2fl",)), "/nowhere/slot.nc")
    assert {one.what for one in checked.tools[0].margins}.isdisjoint({"chip", "edge speed"})


def row_of(*margins: Margin) -> ToolRow:
    return ToolRow(
        tool=1, name="", passes=1, entries={}, cut_length_mm=1, cut_time_s=1, rapid_time_s=None, set_feed_mm_min=None,
        reached_feed_mm_min=None, set_speed_rpm=None, true_speed_rpm=None, fz_mm=None, h_ex_mm=None, ap_max_mm=None,
        ae_max_mm=None, removed_mm3=None, margins=margins,
    )  # fmt: skip


def test_margins_in_words() -> None:
    thin = Margin("chip", "least", 0.055, 0.042, "mm", 0.31, 8, "practice", "")
    thick = Margin("chip", "most", 0.055, 0.1, "mm", 0.45, 8, "practice", "")
    row = row_of(thin, thick)
    assert margin_words(row, Lengths(False)) == ["chip 0.055 mm: 31 % above the thinnest, 45 % under the thickest"]
    assert margin_words(row, Lengths(True))[0].startswith("chip 0.00217 in: ")
    assert nearest_words([row], Lengths(False)) == ["tool 1: chip 31 % above the thinnest, 0.055 mm on line 8"]
    over = Margin("chip", "most", 0.12, 0.1, "mm", -0.2, 8, "practice", "")
    assert margin_words(row_of(over), Lengths(False)) == ["chip 0.12 mm: 20 % over the thickest"]


def test_which_mark_suits_where_none_is_set() -> None:
    """At F1200 and 2 flutes: 0.063, 0.048 and 0.030 mm at marks 1, 2 and 3; the card asks for 0.035 to 0.10."""
    program = SLOT.format(t="", s=5000, f=1200).replace("F600", "F1200").replace("F400", "F1200")
    row = tried(program, material="birch-plywood", shop=DIAL).tools[0]
    assert [(mark.mark, mark.suits) for mark in row.marks] == [("1", True), ("2", True), ("3", False)]
    assert row.marks[2].breaks == ("thinnest chip",)
    assert row.marks[2].feed_mm_min is not None
    assert row.marks[2].feed_mm_min / (20000 * 2) >= 0.035
    said = mark_words(row.marks, Lengths(False))
    assert said.startswith("1 or 2 suits these feeds; not 3 (thinnest chip, F")


@pytest.mark.parametrize(("speed", "job"), [(9500, ""), (5000, 'dial = "1"')])
def test_a_mark_that_is_known_asks_for_no_other(speed: int, job: str) -> None:
    program = SLOT.format(t="", s=speed, f=1200)
    job = f'{job}\nmaterial = "birch-plywood"\nshop = "shop.toml"\n'
    assert tried(program, shop=DIAL, job=job).tools[0].marks == ()


REACHED = """G21 G90 G94 G17 G54
S12000 M3
G0 Z30
G0 X10 Y20
G0 Z4
G1 Z-5 F300
G1 X110 F1500
G0 Z4
G0 X30 Y50
G1 Z-11 F300
G1 X60 F1500
G0 Z30
M30
"""


def test_table_travel_and_height_of_rapids_are_told_as_distances() -> None:
    """Z -11 of 12 mm of blank and 0.5 mm of spoilboard; X 10 to 110, Y 20 to 50, Z -11 to 30; rapids across at 4."""
    shop = '[machine]\ntravel = { x = "600 mm", y = "400 mm", z = "90 mm" }\n'
    checked = tried(
        REACHED, "1: flat 6mm 2fl", material="birch-plywood", stock="120 x 80 x 12 mm at 0 0", shop=shop,
        job='[hold]\nby = "clamps"\nspoilboard = "0.5 mm"\n',
    )  # fmt: skip
    told = {one.what: (one.found, one.limit, one.line) for one in checked.tools[0].margins}
    assert told["lowest cut"] == (11.0, 12.5, 10)
    assert told["height of rapids"] == (4.0, 1.0, 9)
    assert told["travel in X"][:2] == (100.0, 600.0)
    assert told["travel in Y"][:2] == (30.0, 400.0)
    assert told["travel in Z"][:2] == (41.0, 90.0)


def test_what_is_not_declared_has_no_margin_of_reach() -> None:
    checked = tried(REACHED, "1: flat 6mm 2fl", material="birch-plywood")
    assert not {one.what for one in checked.tools[0].margins} & set(DISTANCES)
