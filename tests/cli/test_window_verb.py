"""`gclint window` as a user meets it. The shop is invented."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import jsonschema
import pytest

from gclint.report.answers.window_out import SCHEMA_FILE, schema
from gclint.report.text.text_sheet import TextSheet

Run = Callable[..., tuple[int, str, str]]
SHOP = """
[machine]
feed_limit = { x = "2500 mm/min", y = "2500 mm/min", z = "800 mm/min" }
[spindle]
kind = "dial"
power = "300 W"
dial = [
    { mark = "1", stated = 9500 }, { mark = "2", stated = 12500 }, { mark = "3", stated = 16000 },
    { mark = "4", stated = 19500 }, { mark = "5", stated = 23000 }, { mark = "6", stated = 26500 },
]
[[tool]]
number = 1
shape = "flat"
diameter = "6 mm"
flutes = 2
[[tool]]
number = 2
shape = "flat"
diameter = "1/8 in"
flutes = 3
stickout = "40 mm"
flute_length = "22 mm"
shank = "1/8 in"
made_of = "carbide"
[windows."birch-plywood".1]
fz = ["0.035 mm", "0.10 mm"]
"""
EPOXY = ("window", "--material", "cured-epoxy", "--tool", "flat 1/8in 2fl down-cut")


@pytest.fixture
def shop(here: Path) -> str:
    (here / "lowtide.toml").write_text(SHOP)
    return "lowtide.toml"


def document(gclint: Run, *args: str) -> dict[str, Any]:
    code, out, err = gclint(*args, "--as", "json")
    assert (code, err) == (0, "")
    made: dict[str, Any] = json.loads(out)
    jsonschema.validate(made, json.loads(SCHEMA_FILE.read_text(encoding="utf-8")))
    return made


def test_the_shipped_schema_is_the_one_the_structs_make() -> None:
    shipped = json.loads(SCHEMA_FILE.read_text(encoding="utf-8"))
    assert shipped == schema(), "run  python -m gclint.report.answers.window_out"


def test_a_drawing_with_limits_and_pairs_fits_80_plain_columns(here: Path, gclint: Run) -> None:
    code, out, err = gclint(*EPOXY)
    assert (code, err) == (0, "")
    lines = out.split("\n")
    assert max(map(len, lines)) <= 80
    assert out.isascii()
    assert "in/min" in out  # the tool's text speaks inches
    for words in ("thinnest chip", "thickest chip", "fastest edge", "O best pair", "PAIRS THE MACHINE CAN RUN"):
        assert words in out
    drawn = [line for line in lines if "|" in line]
    assert len(drawn) == 16
    for sign in ("1", "2", "3", ".", "O"):
        assert any(sign in line.split("|")[1] for line in drawn)


def test_inside_on_the_drawing_is_inside_by_the_numbers(here: Path, gclint: Run) -> None:
    """The drawing's cells against the region of the JSON document."""
    import shapely

    from gclint.report.answers.window_asked import asked_of
    from gclint.report.answers.window_out import LEFT, ROWS, answer, sheet

    asked = asked_of("beech", "flat 6mm 2fl up-cut", "slot", None, "3", None, None, None, None, None, None)
    made = answer(asked)
    for width in (80, 120):
        paper = TextSheet(width)
        sheet(made, paper)
        rows = [line[LEFT + 1 :] for line in paper.text.split("\n") if len(line) > LEFT and line[LEFT] == "|"][::-1]
        assert len(rows) == ROWS
        columns = paper.width - LEFT - 2
        polygons = [shapely.Polygon([(c.speed, c.feed) for c in outline]) for outline in made.out.region]
        for r, row in enumerate(rows):
            for c, sign in enumerate(row):
                n = made.slowest + (made.fastest - made.slowest) * c / (columns - 1)
                at = shapely.Point(n, (r + 0.5) * made.most / ROWS)
                if sign == ".":
                    assert any(polygon.distance(at) < 1e-6 for polygon in polygons)
                elif sign == " ":
                    assert not any(polygon.contains(at) for polygon in polygons)


def test_a_dial_turned_too_high(shop: str, gclint: Run) -> None:
    """26,500 rev/min at F1500: 0.028 mm where 0.035 to 0.10 are asked; F1855 or more, or dial 4."""
    made = document(
        gclint, "window", "--material", "birch-plywood", "--tool", "1", "--shop", shop, "--dial", "6", "--feed", "1500"
    )
    asked = made["programmed"]
    assert not asked["inside"]
    assert asked["chip_mm"] == pytest.approx(0.0283, abs=1e-4)
    (broken,) = asked["broken"]
    assert broken["limit"] == "thinnest chip"
    assert broken["times"] == pytest.approx(1500 / 1855, abs=1e-3)
    feeds = {pair["mark"]: pair["feed_mm_min"] for pair in made["pairs"] if pair["what"] == "dial"}
    assert feeds["4"] == 1500
    assert feeds["5"] > 1610  # as it is the chip would be 0.033 mm
    assert 1855 <= feeds["6"] <= 2500
    (same,) = (pair for pair in made["pairs"] if pair["what"] == "same feed")
    assert same["mark"] == "4"


def test_where_nothing_goes_it_says_what_to_move(shop: str, gclint: Run) -> None:
    args = ("window", "--material", "aluminium-6061", "--tool", "2", "--shop", shop, "--ap", "3 mm")
    made = document(gclint, *args)
    assert made["region"] == []
    assert {pair["feed_mm_min"] for pair in made["pairs"]} == {None}
    ways = {way["what"]: way for way in made["ways_out"]}
    assert set(ways) >= {"depth", "stickout"}
    mended = document(gclint, *args[:-1], f"{ways['depth']['to']} mm")
    assert mended["region"]
    assert mended["ways_out"] == []
    _, out, _ = gclint(*args)
    assert "No pair is inside every limit." in out


@pytest.mark.parametrize(
    ("args", "says"),
    [
        (("window",), "say what is cut"),
        (("window", "--material", "beech"), "say which tool cuts"),
        (("window", "--material", "beech", "--tool", "flat 6mm"), "flutes"),
        (("window", "--material", "beech", "--tool", "3"), "no tool 3"),
        (("window", "--material", "beech", "--tool", "v 6mm 60deg 1fl"), "v"),
        (("window", "--material", "beach", "--tool", "flat 6mm 2fl"), "beech"),
        ((*EPOXY, "--ae", "4 mm"), "no wider"),
        ((*EPOXY, "--ap", "0"), "larger than nothing"),
        ((*EPOXY, "--ap", "nan"), "no sensible number"),
        ((*EPOXY, "--speed", "fast"), "--speed"),
        ((*EPOXY, "--speed", "-5"), "--speed"),
        ((*EPOXY, "--feed", "1e999"), "--feed"),
        ((*EPOXY, "--dial", "1"), "no shop file declares"),
    ],
)
def test_what_is_missing_or_wrong_is_one_sentence(
    here: Path, gclint: Run, sentence: Callable[[str], str], args: tuple[str, ...], says: str
) -> None:
    code, out, err = gclint(*args)
    assert (code, out) == (2, "")
    assert says in sentence(err)


@pytest.mark.parametrize(
    "more",
    [("--speed", "1", "--feed", "1"), ("--speed", "1e9", "--feed", "1e9"), ("--feed", "0"), ("--ap", "0.000001")],
)
def test_odd_numbers_are_drawn_all_the_same(here: Path, gclint: Run, more: tuple[str, ...]) -> None:
    code, out, err = gclint(*EPOXY, "--unit", "mm", *more)
    assert (code, err) == (0, "")
    assert "OPERATING WINDOW" in out


def best(gclint: Run, *args: str) -> dict[str, Any]:
    (pair,) = [pair for pair in document(gclint, "window", *args)["pairs"] if pair["what"] == "best"]
    return dict(pair)


def test_the_best_pair_keeps_off_the_ends_of_a_range_nobody_declared(gclint: Run, here: Path) -> None:
    """A wood sets no limit of speed: the best pair is not at the 30,000 rev/min that are only taken."""
    asked = ("--material", "birch-plywood", "--tool", "flat 6mm 2fl up-cut")
    assert 10000 < best(gclint, *asked)["speed_rpm"] < 20000
    (here / "shop.toml").write_text('[spindle]\nkind = "commanded"\nrange = [8000, 24000]\n')
    assert best(gclint, *asked, "--shop", "shop.toml")["speed_rpm"] == 24000  # a declared end is safe to run at


def test_where_dust_is_no_fault_the_best_chip_is_half_of_the_thickest(gclint: Run) -> None:
    """The card of tooling board judges no thin chips; its thickest at 6 mm is 0.28 mm (common practice, no source)."""
    pair = best(gclint, "--material", "tooling-board", "--tool", "flat 6mm 2fl")
    assert pair["chip_mm"] == pytest.approx(0.14, rel=0.01)


def test_what_is_taken_for_the_cut_is_told_in_the_units_of_the_answer(gclint: Run) -> None:
    said = "the cut is {} deep (--ap is not given)"
    _, out, _ = gclint("window", "--material", "cured-epoxy", "--tool", "flat 1/8in 2fl down-cut")
    assert said.format("0.0937 in") in out
    _, out, _ = gclint("window", "--material", "cured-epoxy", "--tool", "flat 6mm 2fl down-cut")
    assert said.format("4.5 mm") in out


def test_the_answer_carries_the_cautions(gclint: Run) -> None:
    asked = ("window", "--material", "glass-filled-laminate", "--tool", "flat 3.175mm 2fl up-cut")
    text = " ".join(gclint(*asked)[1].split())
    assert "No promise" in text
    assert "Glass dust: wear a respirator" in text
    made = json.loads(gclint(*asked, "--as", "json")[1])
    assert any("hearing" in caution.lower() for caution in made["cautions"])
    assert any(caution.startswith("Glass-filled laminate: ") for caution in made["cautions"])


@pytest.mark.parametrize(
    ("feeds", "more", "counted"),
    [
        ('x = "2500 mm/min"', (), 1500.0),
        ('x = "100 in/min"', (), 1500.0 * 25.4),
        ('x = "100 in/min"', ("--unit", "mm"), 1500.0),
    ],
)
def test_a_feed_without_a_unit_counts_as_the_shop_does(
    here: Path, gclint: Run, feeds: str, more: tuple[str, ...], counted: float
) -> None:
    """The tool is told in inches, whatever the shop counts its feeds in."""
    Path("shop.toml").write_text(f"[machine]\nfeed_limit = {{ {feeds} }}\n")
    asked = ("--material", "beech", "--tool", "flat 1/8in 2fl", "--shop", "shop.toml", "--speed", "12000")
    made = document(gclint, "window", *asked, "--feed", "1500", *more)
    assert made["programmed"]["feed_mm_min"] == pytest.approx(counted)
    assert any("feed of 1500 is in" in said for said in made["assumed"])


def test_a_feed_of_no_known_unit_is_asked_for(here: Path, gclint: Run) -> None:
    asked = ("window", "--material", "beech", "--speed", "12000", "--feed", "1500")
    code, out, err = gclint(*asked, "--tool", "flat 1/8in 2fl")
    assert (code, out) == (2, "")
    assert '"1500 mm/min" or "1500 in/min"' in err
    assert gclint(*asked, "--tool", "flat 6mm 2fl")[0] == 0
    assert gclint(*asked, "--tool", "flat 1/8in 2fl", "--unit", "in")[0] == 0
