"""The verbs beside check: show, why, material, controller, shop, job, pack."""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from pathlib import Path

import pytest

from gclint.knowledge.numbers import numbers
from gclint.knowledge.quantities import quantities
from gclint.packs.shipped_packs import shipped_packs
from gclint.shipped import folder

Gclint = Callable[..., tuple[int, str, str]]
DECLARED = ("--material", "beech", "--tool", "1: flat 6mm 2fl up-cut", "--stock", "60 x 20 x 9 mm at -10 -10")
SHOP = """[machine]
name = "bench router"
travel = { x = "600 mm", y = "400 mm" }

[spindle]
kind = "dial"
dial = [ { mark = "A", stated = 9500, measured = 8100 }, { mark = "B", stated = 12500 } ]

[[tool]]
number = 3
name = "eighth down-cut"
shape = "flat"
diameter = "1/8 in"
"""
HOUSE = """pack = "lowtide"
about = "Invented: what the Lowtide workshop asks of every program."

[[rule]]
name = "below-the-board"
title = "The tool goes below the board"
looks_at = "moves"
when = "lowest < floor"
grade = "consider"
happens = "The tool goes below the workshop's 18 mm boards."
why = "The table has no board to cut into."
standing = "practice"
source = "a house rule"
owner = "the workshop"
limits.floor = { value = "-18 mm", standing = "practice", source = "the boards' thickness" }
must_find = [ { says = "a move to Z-20", program = "G21 G90\\nG0 X0 Y0 Z-20\\nM30\\n", line = 2 } ]
must_leave = [ { says = "a move to Z-17", program = "G21 G90\\nG0 X0 Y0 Z-17\\nM30\\n" } ]
"""


def flat(text: str) -> str:
    return " ".join(text.split())


def narrow(text: str) -> bool:
    return max(map(len, text.splitlines())) <= 80 and "\x1b" not in text


def test_show_says_what_each_tool_does(program: Path, gclint: Gclint) -> None:
    code, out, err = gclint("show", program.name, *DECLARED)
    assert (code, err) == (0, "")
    assert narrow(out)
    assert "TOOL 1 ---" in out
    for said in ("S 18000 set", "200 to 1800 mm/min set", "straight down 1 1 mm 7", "Z -1 1 7 41 mm 1 mm"):
        assert said in flat(out)


def test_show_as_json(program: Path, gclint: Gclint) -> None:
    code, out, _err = gclint("show", program.name, *DECLARED, "--as", "json")
    document = json.loads(out)
    assert code == 0
    tool = document["tools"][0]
    assert tool["row"]["passes"] == 1
    assert [(e["kind"], e["count"], e["first_line"]) for e in tool["entries"]] == [("straight", 1, 7)]
    assert [level["lowest_z_mm"] for level in tool["levels"]] == [-1]


def test_show_an_inch_program_in_inches(program: Path, gclint: Gclint) -> None:
    program.write_text("G20 G90 G94 G17 G54\nT1 M6\nM3 S12000\nG0 Z1\nG0 X0 Y0\nG1 Z-0.1 F10\nG1 X2 F60\nG0 Z1\nM30\n")
    out = gclint("show", program.name, *DECLARED)[1]
    assert "10 to 60 in/min set" in flat(out)
    assert "Z -0.1" in out
    assert "0.2362 in" in out
    assert " mm" not in out


def test_show_a_program_without_moves(program: Path, gclint: Gclint) -> None:
    program.write_text("G21\nM30\n")
    code, out, _err = gclint("show", program.name)
    assert code == 0
    assert "no tool moves" in out


def test_why_lists_every_rule(here: Path, gclint: Gclint) -> None:
    code, out, _err = gclint("why")
    assert code == 0
    assert narrow(out)
    for pack in shipped_packs():
        assert pack.name.upper() in out
        for rule in pack.rules:
            assert rule.name in out


@pytest.mark.parametrize("rule", [rule.name for pack in shipped_packs() for rule in pack.rules])
def test_why_tells_all_about_a_rule(rule: str, here: Path, gclint: Gclint) -> None:
    code, out, err = gclint("why", rule)
    assert (code, err) == (0, "")
    assert narrow(out)
    text = next(each.text for pack in shipped_packs() for each in pack.rules if each.name == rule)
    assert flat(text.why) in flat(out)
    assert flat(text.title) in flat(out)
    for name in text.limits:
        assert f"{name} = " in out
    if text.must_find:
        assert "FOUND IN ---" in out
    if text.must_leave:
        assert "LEFT ALONE IN ---" in out


@pytest.mark.parametrize("name", list(quantities()))
def test_why_says_how_a_figure_is_worked_out(name: str, here: Path, gclint: Gclint) -> None:
    code, out, err = gclint("why", name)
    assert (code, err) == (0, "")
    assert narrow(out)
    shown = quantities()[name]
    assert flat(shown.means) in flat(out)
    assert flat(shown.source) in flat(out)
    assert all(flat(line) in flat(out) for line in shown.formula)
    assert all(flat(numbers()[number].means) in flat(out) for number in shown.numbers)
    assert name in gclint("why")[1]


def test_why_knows_the_nearest_rule(here: Path, gclint: Gclint) -> None:
    assert 'nearest: "straight-plunge"' in gclint("why", "strait-plunge")[2]
    assert 'nearest: "bending"' in gclint("why", "bendin")[2]


def test_material_lists_and_shows_cards(here: Path, gclint: Gclint) -> None:
    out = gclint("material")[1]
    assert narrow(out)
    assert "cured-epoxy" in out
    card = gclint("material", "cured-epoxy")[1]
    assert narrow(card)
    assert re.search(r"0\.042 to 0\.1 mm +common practice +2\n", card)
    assert "SOURCES ---" in card
    assert "CAUTIONS ---" in card


def test_material_check(here: Path, gclint: Gclint) -> None:
    text = (folder() / "materials" / "beech.toml").read_text(encoding="utf-8")
    card = here / "bog-oak.toml"
    card.write_text(text.replace('name = "beech"', 'name = "bog-oak"'), encoding="utf-8")
    code, out, err = gclint("material", "check", str(card))
    assert (code, err) == (0, "")
    assert "bog-oak" in out
    card.write_text(text.replace('high = "0.28 mm"', 'high = "0.10 mm"'), encoding="utf-8")
    code, out, err = gclint("material", "check", "bog-oak.toml")
    line = 1 + text[: text.index('high = "0.28 mm"')].count("\n")
    assert (code, err) == (1, "")
    assert "file bog-oak.toml material" in " ".join(out.split())
    assert f"- line {line}, column 54: chip.high: the limit falls" in out
    card.write_text(text.replace("[depth]", "[deptj]"), encoding="utf-8")
    code, out, err = gclint("material", "check", "bog-oak.toml")
    assert (code, out) == (2, "")
    assert 'nearest: "depth"' in err
    assert gclint("material", "check")[0] == 2


def test_a_shops_own_card_is_found_by_its_name(here: Path, gclint: Gclint) -> None:
    text = (folder() / "materials" / "beech.toml").read_text(encoding="utf-8")
    (here / "bog-oak.toml").write_text(text.replace('name = "beech"', 'name = "bog-oak"'), encoding="utf-8")
    (here / "shop.toml").write_text('[[tool]]\nnumber = 1\nshape = "flat"\ndiameter = "6 mm"\nflutes = 2\n')
    (here / "job.toml").write_text('program = "a.nc"\nshop = "shop.toml"\nmaterial = "bog-oak"\n')
    program = "G21 G90 G94 G17 G54\nM3 S16000\nG0 Z5\nG0 X0 Y0\nG1 Z-1 F300\nG1 X40 F1500\nG0 Z5\nM30\n"
    (here / "a.nc").write_text(program)
    assert gclint("check", "a.nc")[0] == 0
    (here / "job.toml").write_text('program = "a.nc"\nshop = "shop.toml"\nmaterial = "bog-oa"\n')
    assert gclint("check", "a.nc")[0] == 2


def test_controller_lists_and_shows_cards(here: Path, gclint: Gclint) -> None:
    out = gclint("controller")[1]
    assert narrow(out)
    assert "hobby-3-axis" in out
    card = gclint("controller", "hobby-3-axis")[1]
    assert narrow(card)
    assert "M6 is ignored" in card
    assert "SOURCES ---" in card
    code, out, err = gclint("controller", "hobby-3axis")
    assert (code, out) == (2, "")
    assert 'nearest: "hobby-3-axis"' in err


def test_controller_check(here: Path, gclint: Gclint) -> None:
    text = 'name = "ours"\ntitle = "ours (invented)"\nsource = "invented"\n[arcs]\ntolerance = "0.005 mm"\n'
    (here / "ours.toml").write_text(text)
    code, out, err = gclint("controller", "check", "ours.toml")
    assert (code, err) == (0, "")
    assert "reads well" in out
    (here / "ours.toml").write_text(text + '[[refuses]]\ncodes = ["cyclse"]\n')
    code, out, err = gclint("controller", "check", "ours.toml")
    assert (code, out) == (2, "")
    assert "ours.toml:7:10:" in err
    assert 'nearest: "cycles"' in err
    assert gclint("controller", "check")[0] == 2


def test_shop_check(here: Path, gclint: Gclint) -> None:
    (here / "shop.toml").write_text(SHOP)
    code, out, err = gclint("shop", "check", "shop.toml")
    assert (code, err) == (0, "")
    for said in ("reads well", "router, travel X 600 Y 400 mm", "A 8100, B 12500", "tool 3 eighth down-cut"):
        assert said in flat(out)
    assert "- machine.rapid" in out
    assert "stock.size" not in out, "a shop file has no stock"


def test_job_check(program: Path, gclint: Gclint) -> None:
    (program.parent / "shop.toml").write_text(SHOP)
    job = program.parent / "job.toml"
    job.write_text(f'program = "{program.name}"\nshop = "shop.toml"\nmaterial = "beech"\n[hold]\nby = "tape"\n')
    code, out, err = gclint("job", "check", "job.toml")
    assert (code, err) == (0, "")
    assert "held by tape" in flat(out)
    assert "- stock.size" in out
    job.write_text('program = "gone.nc"\n')
    code, out, err = gclint("job", "check", "job.toml")
    assert (code, out) == (2, "")
    assert "job.toml:1" in err
    assert "gone.nc" in err


def test_pack_check_proves_a_house_pack(here: Path, gclint: Gclint) -> None:
    (here / "house.toml").write_text(HOUSE)
    code, out, err = gclint("pack", "check", "house.toml")
    assert (code, err) == (0, "")
    assert "below-the-board: proved" in out
    assert gclint("why", "below-the-board", "--pack", "house.toml")[0] == 0


def test_why_draws_a_rule_of_the_house_as_the_tool_sees_it(here: Path, gclint: Gclint) -> None:
    house = Path(__file__).parents[2] / "sample_programs" / "lowtide-house.toml"
    code, out, err = gclint("why", "thin-tool-too-deep", "--pack", str(house))
    assert (code, err) == (0, "")
    assert "a slot of 5 mm with a 2 mm tool" in flat(out).lower()
    assert "Measured: depth below the top" in out
    assert re.search(r"^  found  X+ +5 mm$", out, re.MULTILINE)
    assert re.search(r"^  good   \[=+\] +up to 4 mm$", out, re.MULTILINE)
    assert "  HERE  14  G1 Z-5 F200" in out
    assert gclint("why", "thin-tool-too-deep")[0] == 2  # not without its pack


def test_why_says_what_a_house_pack_changes(here: Path, gclint: Gclint) -> None:
    (here / "ours.toml").write_text(
        'pack = "ours"\nabout = "x"\n[[regrade]]\nrule = "straight-plunge"\ngrade = "consider"\n'
        'because = "our foam takes it"\n'
        '[[narrow]]\nrule = "straight-plunge"\nexcept_tool = 1\nbecause = "drilled first"\n'
    )
    code, out, _err = gclint("why", "straight-plunge", "--pack", "ours.toml")
    assert code == 0
    assert "consider instead of change or consider, by ours.toml, because our foam takes it" in flat(out)
    assert "except tool 1, by ours.toml, because drilled first" in flat(out)
    assert "IN THIS HOUSE" not in gclint("why", "straight-plunge")[1]
    assert "IN THIS HOUSE" not in gclint("why", "steep-ramp", "--pack", "ours.toml")[1]


@pytest.mark.parametrize(
    ("old", "new", "says"),
    [
        ("Z-20\\nM30", "Z-16\\nM30", "nothing is found"),
        ("line = 2", "line = 3", "found on line 2, not on line 3"),
        ("line = 2", "findings = 2", "found 1 times, not 2"),
        ("Z-17\\nM30", "Z-19\\nM30", "must_leave 1 (a move to Z-17): found on line 2"),
    ],
)
def test_pack_check_says_which_example_fails(here: Path, gclint: Gclint, old: str, new: str, says: str) -> None:
    (here / "house.toml").write_text(HOUSE.replace(old, new))
    code, out, err = gclint("pack", "check", "house.toml")
    assert (code, err) == (1, "")
    assert says in flat(out)
    assert "NOT PROVED" in out


@pytest.fixture
def group(here: Path) -> Path:
    """A copy of the folder of two shipped rules, to work on."""
    copy = here / "entries"
    copy.mkdir()
    for name in ("group.toml", "steep-ramp.toml", "helix-too-tight.toml"):
        copy.joinpath(name).write_text((folder() / "entries" / name).read_text(encoding="utf-8"), encoding="utf-8")
    return copy


def test_pack_check_proves_shipped_rules_by_folder_and_by_file(group: Path, gclint: Gclint) -> None:
    code, out, err = gclint("pack", "check", "entries")
    assert (code, err) == (0, "")
    assert "steep-ramp: proved" in out
    assert "helix-too-tight: proved" in out
    code, out, _ = gclint("pack", "check", "entries/steep-ramp.toml")
    assert code == 0
    assert "steep-ramp: proved" in out
    assert "helix-too-tight" not in out
    (group / "steep-ramp.toml").write_text((group / "steep-ramp.toml").read_text().replace("Z", "X"))
    code, out, _ = gclint("pack", "check", "entries/steep-ramp.toml")
    assert code == 1
    assert "steep-ramp: NOT PROVED" in out


def test_a_file_of_a_group_holds_the_one_rule_it_is_named_after(group: Path, gclint: Gclint) -> None:
    one, other = group / "steep-ramp.toml", group / "helix-too-tight.toml"
    one.rename(group / "ramp.toml")
    code, _, err = gclint("pack", "check", "entries")
    assert code == 2
    assert "entries/ramp.toml:2" in err
    assert '"steep-ramp.toml"' in err
    (group / "ramp.toml").rename(one)
    one.write_text(one.read_text() + other.read_text())
    code, _, err = gclint("pack", "check", "entries/steep-ramp.toml")
    assert code == 2
    assert "entries/steep-ramp.toml" in err
    assert "one rule; this one holds 2" in err
    assert gclint("pack", "check", "entries/none.toml")[0] == 2


def test_pack_check_places_a_fault(here: Path, gclint: Gclint) -> None:
    (here / "house.toml").write_text(HOUSE.replace("< floor", "< 2 N"))
    code, out, err = gclint("pack", "check", "house.toml")
    assert (code, out) == (2, "")
    assert "house.toml:8" in err


def test_pack_facts(here: Path, gclint: Gclint) -> None:
    out = gclint("pack", "facts", "entries")[1]
    assert narrow(out)
    assert "slope" in out
    assert 'nearest: "entries"' in gclint("pack", "facts", "entrys")[2]


@pytest.mark.parametrize("args", [(), ("shop",), ("job",), ("pack",)])
def test_a_bare_group_tells_what_it_is_for(args: tuple[str, ...], here: Path, gclint: Gclint) -> None:
    code, out, err = gclint(*args)
    assert (code, err) == (0, "")
    assert out.startswith("Usage: gclint")
    assert narrow(out)


@pytest.mark.parametrize(
    "args",
    [
        ("check",), ("show",), ("why",), ("material",), ("shop",), ("job",), ("pack",), ("shop", "check"),
        ("job", "check"), ("pack", "check"), ("pack", "facts"), ("controller",),
    ],
)
def test_every_verb_has_help_of_80_columns(args: tuple[str, ...], here: Path, gclint: Gclint) -> None:
    code, out, _err = gclint(*args, "--help")
    assert code == 0
    assert narrow(out)


def test_ctrl_c_is_quiet(program: Path, gclint: Gclint, monkeypatch: pytest.MonkeyPatch) -> None:
    from gclint.motion import feed_planning

    def interrupted(*_: object) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr(feed_planning, "plan_feed", interrupted)
    code, out, err = gclint("check", program.name)
    assert (code, out, err.strip()) == (130, "", "")


def test_show_says_of_each_pair_whether_it_is_inside(gclint: Gclint, program: Path) -> None:
    """F1800 at 18000 rev/min with a 6 mm tool of 2 flutes is 0.05 mm a tooth; inside for beech, F400 is too thin."""
    out = gclint("show", str(program), *DECLARED)[1]
    assert "F1800 at 18000 rev/min is inside every limit that is known" in " ".join(out.split())
    program.write_text(program.read_text().replace("F1800", "F400"))
    out = gclint("show", str(program), *DECLARED)[1]
    assert "F400 at 18000 rev/min is outside (thinnest chip); inside there: F" in " ".join(out.split())
    document = json.loads(gclint("show", str(program), *DECLARED, "--as", "json")[1])
    (pair,) = document["pairs"]
    assert (pair["inside"], pair["broken"]) == (False, ["thinnest chip"])
    assert pair["feeds_mm_min"][0] > 400


@pytest.mark.parametrize(
    ("args", "says"),
    [
        (("shop", "nwe"), 'gclint: there is no "nwe" to do with a shop file; '),
        (("job", "chek"), 'gclint: there is no "chek" to do with a job file; nearest: "check"'),
        (("pack", "fact"), 'gclint: there is no "fact" to do with a pack; nearest: "facts"'),
        (("why", "xyzzy"), 'gclint: there is no rule or quantity "xyzzy"; `gclint why` lists them all'),
    ],
)
def test_what_is_not_there_is_told_with_what_there_is(
    args: tuple[str, ...], says: str, here: Path, gclint: Gclint, sentence: Callable[[str], str]
) -> None:
    code, out, err = gclint(*args)
    assert (code, out) == (2, "")
    assert sentence(err).startswith(says)
