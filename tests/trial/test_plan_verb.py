"""`gclint trial plan`: what it writes can be run, is checked by gclint itself, and nothing is written over."""

from __future__ import annotations

import io
import re
import sys
import tomllib
from collections.abc import Callable
from itertools import combinations, pairwise
from pathlib import Path

import numpy as np
import pytest

from gclint.cards.controller import names
from gclint.check import trace
from gclint.problem import Problem
from gclint.setup.declare import Options
from gclint.trial.groove import path_of
from gclint.trial.make import numbers_of
from gclint.trial.plan import Plan, listed, risks
from gclint.trial.plan_file import read_grades, read_plan
from gclint.trial.program import start_of

Gclint = Callable[..., tuple[int, str, str]]
DIAL = """kind = "dial"
dial = [ { mark = "A", stated = 9500, measured = 8100 }, { mark = "B", stated = 12500, measured = 10700 },
         { mark = "C", stated = 16000, measured = 13600 } ]
started = "by-hand"
"""
COMMANDED = """kind = "commanded"
range = [6000, 24000]
started = "program"
spin_up = "3 s"
"""
SHOP = """[machine]
name = "bench router"
travel = { x = "600 mm", y = "400 mm", z = "90 mm" }
rapid = { x = "5000 mm/min", y = "5000 mm/min", z = "2000 mm/min" }
feed_limit = { x = "2500 mm/min", y = "2500 mm/min", z = "800 mm/min" }
acceleration = { x = "200 mm/s^2", y = "200 mm/s^2", z = "150 mm/s^2" }
controller = "hobby-3-axis"

[spindle]
DIAL
[[tool]]
number = 1
name = "eighth down-cut"
shape = "flat"
diameter = "1/8 in"
flutes = 2
flute_length = "12 mm"
helix = "down-cut"
centre_cutting = true

[[tool]]
number = 2
shape = "flat"
diameter = "6 mm"
flutes = 2
helix = "up-cut"

[[tool]]
number = 3
shape = "v"
diameter = "6 mm"
flutes = 2

[[tool]]
number = 4
shape = "flat"
diameter = "6 mm"
"""
ASKED = ("--material", "hdpe", "--tool", "1", "--blank", "180 x 90 x 15 mm at 0 0")
FEW = (*ASKED, "--cuts", "8", "--entry", "ramp")
FILES = {"plan.toml", "test-cuts.nc", "sheet.html", "grades.toml", "job.toml"}


@pytest.fixture(autouse=True)
def shop(here: Path) -> Path:
    path = here / "shop.toml"
    path.write_text(SHOP.replace("DIAL", DIAL), encoding="utf-8")
    return path


def commanded(shop: Path, card: str) -> None:
    shop.write_text(SHOP.replace("DIAL", COMMANDED).replace("hobby-3-axis", card), encoding="utf-8")


def blocks(folder: Path) -> list[str]:
    return (folder / "test-cuts.nc").read_text(encoding="ascii").splitlines()


def messages(lines: list[str]) -> list[str]:
    """What each stop (M0, or an M6 that waits) tells, as one text."""
    told: list[str] = []
    said: list[str] = []
    for line in lines:
        if line.startswith("(MSG, "):
            said.append(line[6:-1])
        elif said and (line == "M0" or line.endswith("M6")):
            told.append(" ".join(said))
            said = []
    assert not said
    return told


def apart(plan: Plan) -> list[tuple[float, float, float, float]]:
    """The box that each groove takes: (x low, x high, y low, y high)."""
    assert plan.shape is not None
    diameter = {tool.number: float(tool.diameter) for tool in plan.tool}
    widest = max(diameter.values())
    made = []
    for cut in plan.cut:
        x, y = start_of(cut, widest)
        end, half = path_of(plan.shape)[-1], diameter[cut.tool] / 2
        made.append((x - half, x + end.x + half, y - half, y + end.y + half))
    return made


def test_a_new_user_gets_every_file_and_a_program_that_passes(here: Path, gclint: Gclint) -> None:
    code, out, err = gclint("trial", "plan", "first", *ASKED, "--blank", "220 x 120 x 15 mm at 0 0")
    assert (code, err) == (0, "")
    assert {path.name for path in (here / "first").iterdir()} == FILES
    plan = read_plan(here / "first" / "plan.toml")
    assert len(plan.cut) == 24
    assert [cut.number for cut in plan.cut] == list(range(1, 25))
    assert {cut.entry for cut in plan.cut} == {"ramp", "straight"}
    assert {cut.dial for cut in plan.cut} == {"A", "B", "C"}
    assert plan.shop == "../shop.toml"
    assert read_grades(here / "first" / "grades.toml", plan).plan == plan.plan
    assert gclint("check", "first/test-cuts.nc")[0] == 0
    assert gclint("job", "check", "first/job.toml")[0] == 0
    assert max(map(len, out.splitlines())) <= 80
    for cut in plan.cut:
        assert f"\n{cut.number:<3} " in out


@pytest.mark.parametrize("card", names())
@pytest.mark.parametrize("spindle", [DIAL, COMMANDED], ids=["dial", "commanded"])
def test_the_program_passes_on_every_controller_card(
    card: str, spindle: str, here: Path, shop: Path, gclint: Gclint
) -> None:
    shop.write_text(SHOP.replace("DIAL", spindle).replace("hobby-3-axis", card), encoding="utf-8")
    more = ("--tool", "2") if card in ("rs274ngc", "hobby-3-axis") else ()
    code, _out, err = gclint("trial", "plan", "first", *FEW, *more, "--cuts", "10", "--blank", "250 x 150 x 15 mm")
    assert (code, err) == (0, "")
    code, out, _err = gclint("check", "first/test-cuts.nc")
    assert code == 0, out
    assert "code-refused" not in out
    assert "code-ignored" not in out


def test_every_graded_part_runs_at_its_set_feed(here: Path, gclint: Gclint) -> None:
    gclint("trial", "plan", "first", *ASKED, "--cuts", "10", "--entry", "ramp", "--confirm", "all")
    plan = read_plan(here / "first" / "plan.toml")
    path = here / "first" / "test-cuts.nc"
    tables = trace(path.read_bytes(), "x", Options(job=str(here / "first" / "job.toml")), str(path))
    lines = blocks(here / "first")
    starts = [n for n, line in enumerate(lines, 1) if line.startswith("(cut ")]
    assert len(starts) == 10
    for cut, start in zip(plan.cut, starts, strict=True):
        arcs = [n for n in range(start, start + 14) if re.match(r"G[23] ", lines[n - 1])]
        assert len(arcs) == 2
        graded = np.isin(tables.motion.line, [arcs[0] - 1, *arcs])
        assert graded.sum() == 3
        assert (tables.timing.reached[graded] >= 0.98 * float(cut.feed)).all()


def test_a_slow_machine_gets_feeds_that_it_reaches_and_a_longer_shape(here: Path, shop: Path, gclint: Gclint) -> None:
    gclint("trial", "plan", "quick", *FEW)
    shop.write_text(shop.read_text().replace('"200 mm/s^2"', '"40 mm/s^2"'))
    code, out, _err = gclint("trial", "plan", "slow", *FEW)
    assert code == 0
    quick, slow = (read_plan(here / name / "plan.toml") for name in ("quick", "slow"))
    assert quick.shape is not None
    assert slow.shape is not None
    assert slow.shape.radius > quick.shape.radius
    assert max(cut.feed for cut in slow.cut) < max(cut.feed for cut in quick.cut)
    assert "the feed that is reached on the test shape" in " ".join(out.split())


def test_cuts_lie_apart_and_inside_the_blank(here: Path, gclint: Gclint) -> None:
    gclint("trial", "plan", "first", *ASKED, "--tool", "2", "--blank", "300 x 200 x 15 mm at -20 30")
    plan = read_plan(here / "first" / "plan.toml")
    boxes = apart(plan)
    assert min(box[0] for box in boxes) >= -20 + 4.9
    assert max(box[1] for box in boxes) <= 280 - 4.9
    assert min(box[2] for box in boxes) >= 30 + 4.9
    assert max(box[3] for box in boxes) <= 230 - 4.9
    for one, other in combinations(boxes, 2):
        beside = one[1] + 2.9 < other[0] or other[1] + 2.9 < one[0]
        above = one[3] + 2.9 < other[2] or other[3] + 2.9 < one[2]
        assert beside or above


def test_the_dial_is_set_at_a_stop_and_seldom(here: Path, gclint: Gclint) -> None:
    gclint("trial", "plan", "first", *ASKED, "--cuts", "16", "--confirm", "all")
    lines = blocks(here / "first")
    set_on = [n for n, line in enumerate(lines) if line.startswith("M3 S")]
    assert len(set_on) <= 2 * 3
    for n in set_on[1:]:
        assert lines[n - 1] == "M0"
        assert any("set the dial to " in line for line in lines[n - 4 : n - 1])
    plan = read_plan(here / "first" / "plan.toml")
    stated = {"A": 9500, "B": 12500, "C": 16000}
    assert all(cut.speed == stated[str(cut.dial)] for cut in plan.cut)
    assert all(cut.true_speed is not None for cut in plan.cut)


def test_every_stop_begins_with_the_spindle_off(here: Path, gclint: Gclint) -> None:
    """A hand-started router goes on turning in the pause: nobody but the person switches it off."""
    _code, out, _err = gclint("trial", "plan", "first", *FEW)
    lines = blocks(here / "first")
    said = messages(lines)
    assert said
    for words in said:
        assert words.startswith("spindle off, wait until it stands still")
        assert words.index("spindle off, wait") < words.index("look at cut")
        assert words.endswith("hands clear, spindle on, then press start")
    assert "M5" not in lines[:-2]  # the program cannot switch it
    head = " ".join(lines[: lines.index("T1")])
    assert "before the start: spindle off" in head
    assert "router unplugged" in head
    assert all(word in " ".join(out.split()) for word in ("No promise", "Spindle off, wait until it stands still"))
    sheet = (here / "first" / "sheet.html").read_text()
    assert "Spindle off; wait until it stands still." in sheet
    assert "The law of the place" in sheet
    cuts = len(read_plan(here / "first" / "plan.toml").cut)
    assert sheet.count('<span class="box">') >= cuts  # one beside each cut, and those of each change
    assert sheet.count("Before cut ") >= 1


@pytest.mark.parametrize("card", ["shop-3-axis", "shop-mill-macros", "hobby-3-axis"])
def test_a_driven_spindle_is_stopped_and_started_by_the_program(
    card: str, here: Path, shop: Path, gclint: Gclint
) -> None:
    commanded(shop, card)
    assert gclint("trial", "plan", "first", *FEW, "--feed", "600 to 1500 mm/min")[0] == 0
    lines = blocks(here / "first")
    stops = [n for n, line in enumerate(lines) if line == "M0"]
    assert stops
    for n in stops:
        before = lines[:n]
        assert max(k for k, line in enumerate(before) if line == "M5") > max(
            k for k, line in enumerate(before) if line.startswith("M3 ")
        )
        assert lines[n + 1].startswith("M3 S")
        assert lines[n + 2].startswith("G4 P")
    for words in messages(lines):
        assert words.startswith("spindle off, wait until it stands still")
        assert words.endswith("hands clear, then press start")
        assert "unplugged" not in words
    head = " ".join(lines[: next(n for n, line in enumerate(lines) if line.startswith("M3 "))])
    assert ("made unable to start" in head) == (card != "shop-mill-macros")  # a changer needs no hand at the collet


@pytest.mark.slow
def test_what_is_not_risky_comes_first_and_the_rest_is_chance(here: Path, gclint: Gclint) -> None:
    epoxy = ("--material", "cured-epoxy", *ASKED[2:], "--entry", "ramp", "--cuts", "12")
    for name, seed in (("one", "1"), ("same", "1"), ("other", "2")):
        assert gclint("trial", "plan", name, *epoxy, "--seed", seed)[0] == 0
    plans = {name: read_plan(here / name / "plan.toml") for name in ("one", "same", "other")}
    assert plans["one"].cut == plans["same"].cut
    assert [cut.feed for cut in plans["one"].cut] != [cut.feed for cut in plans["other"].cut]
    for plan in plans.values():
        assert len(plan.cut) == 12
        risky = [bool(cut.risky) for cut in plan.cut]
        assert risky == sorted(risky)
        assert any(risky)
        assert not all(risky)
        feeds = [float(cut.feed) for cut in plan.cut]
        assert feeds not in (sorted(feeds), sorted(feeds, reverse=True))
    assert gclint("check", "one/test-cuts.nc")[0] == 0


def test_repeats_are_cut_like_the_ones_they_repeat(here: Path, gclint: Gclint) -> None:
    gclint("trial", "plan", "first", *FEW, "--repeats", "3")
    plan = read_plan(here / "first" / "plan.toml")
    again = [cut for cut in plan.cut if cut.repeat_of is not None]
    assert len(again) == 3
    for cut in again:
        first = plan.cut_of(cut.repeat_of or 0)
        assert first is not None
        for name in ("tool", "feed", "speed", "dial", "entry", "depth"):
            assert getattr(cut, name) == getattr(first, name)
        assert cut.at != first.at
    others = [(cut.feed, cut.dial) for cut in plan.cut if cut.repeat_of is None]
    assert len(set(others)) == len(others)


def test_a_full_grid(here: Path, gclint: Gclint) -> None:
    code, _out, _err = gclint("trial", "plan", "first", *FEW, "--design", "grid", "--repeats", "0", "--cuts", "9")
    plan = read_plan(here / "first" / "plan.toml")
    assert code == 0
    assert len(plan.cut) == 9
    by_mark = {mark: sorted(float(cut.feed) for cut in plan.cut if cut.dial == mark) for mark in "ABC"}
    assert [len(feeds) for feeds in by_mark.values()] == [3, 3, 3]
    for feeds in by_mark.values():
        assert feeds[1] ** 2 == pytest.approx(feeds[0] * feeds[2], rel=0.03)  # equal steps as factors


def test_risky_cuts_are_made_when_a_person_confirms_them(here: Path, gclint: Gclint) -> None:
    epoxy = ("--material", "cured-epoxy", *ASKED[2:], "--cuts", "12", "--entry", "ramp", "--entry", "straight")
    _code, out, _err = gclint("trial", "plan", "first", *epoxy)
    plan = read_plan(here / "first" / "plan.toml")
    risky = [cut.number for cut in plan.cut if cut.risky]
    safe = [cut.number for cut in plan.cut if not cut.risky]
    assert "straight-plunge" in " ".join(cut.risky for cut in plan.cut if cut.entry == "straight")
    assert f"RISKY ({len(risky)})" in out
    cut_numbers = re.compile(r"^\(cut (\d+):", re.MULTILINE)
    program = here / "first" / "test-cuts.nc"
    assert [int(n) for n in cut_numbers.findall(program.read_text())] == safe
    plan_file = here / "first" / "plan.toml"
    plan_file.write_text("# for the new sheet\n" + plan_file.read_text())
    code, out, err = gclint("trial", "plan", "first", "--confirm", f"{risky[0]},{risky[-1]}")
    assert (code, err) == (0, "")
    assert [int(n) for n in cut_numbers.findall(program.read_text())] == sorted([*safe, risky[0], risky[-1]])
    assert plan_file.read_text().startswith("# for the new sheet\n")
    again = read_plan(plan_file)
    assert [cut.number for cut in again.cut if cut.confirmed] == [risky[0], risky[-1]]
    assert f"{risky[0]}, {risky[-1]}" not in out
    sheet = (here / "first" / "sheet.html").read_text()
    assert sheet.count("not cut</tspan>") == len(risky) - 2
    job = here / "first" / "job.toml"
    accepts = tomllib.loads(job.read_text())["accept"]
    assert {row["rule"] for row in accepts} >= {"straight-plunge"}
    assert f"confirmed these test cuts: {risky[0]}" in accepts[0]["because"]
    code, out, _err = gclint("check", str(program))
    assert code == 0, out
    assert gclint("trial", "plan", "first", "--confirm", "none")[0] == 0
    assert "accept" not in tomllib.loads(job.read_text())
    assert [int(n) for n in cut_numbers.findall(program.read_text())] == safe
    code, _out, err = gclint("trial", "plan", "first", "--confirm", str(safe[0]))
    assert code == 2
    assert "is not risky, and is made anyway" in err
    program.write_text(program.read_text().replace("Z25.0", "Z35.0"))
    before = {path: path.read_bytes() for path in (here / "first").iterdir()}
    code, _out, err = gclint("trial", "plan", "first", "--confirm", "all")
    assert code == 2
    assert "this file is not as gclint trial plan wrote it" in err
    assert {path: path.read_bytes() for path in (here / "first").iterdir()} == before


def test_no_plunge_is_planned_where_the_card_allows_none(here: Path, gclint: Gclint) -> None:
    epoxy = ("--material", "cured-epoxy", *ASKED[2:], "--cuts", "12")
    _code, out, _err = gclint("trial", "plan", "first", *epoxy)
    plan = read_plan(here / "first" / "plan.toml")
    assert {cut.entry for cut in plan.cut} == {"ramp"}
    assert "the card of cured-epoxy allows no straight plunge" in " ".join(out.split())
    assert len(plan.cut) == 12


def test_a_plan_that_nothing_could_be_learned_from_is_told_when_it_is_made(here: Path, gclint: Gclint) -> None:
    epoxy = ("--material", "cured-epoxy", *ASKED[2:], "--cuts", "10", "--entry", "straight")
    _code, out, _err = gclint("trial", "plan", "first", *epoxy, "--confirm", "none")
    said = " ".join(out.split())
    assert "makes 0 cuts at 0 feeds per tooth, and 8 cuts at 3 feeds per tooth are the least to learn from" in said
    assert "confirm some of 1-10" in said
    assert "too little" not in gclint("trial", "plan", "first", "--confirm", "all")[1]


def test_a_person_at_the_terminal_is_asked(here: Path, gclint: Gclint, monkeypatch: pytest.MonkeyPatch) -> None:
    class Terminal(io.StringIO):
        def isatty(self) -> bool:
            return True

    epoxy = ("--material", "cured-epoxy", *ASKED[2:], "--cuts", "8", "--entry", "straight")
    monkeypatch.setattr("sys.stdin", Terminal("99\n\n2-3\n"))
    code, out, _err = gclint("trial", "plan", "first", *epoxy)
    assert code == 0
    assert "cut 99 is none of the plan; the risky ones are 1, 2" in out
    assert [cut.number for cut in read_plan(here / "first" / "plan.toml").cut if cut.confirmed] == [2, 3]
    monkeypatch.setattr("sys.stdin", Terminal("q\n"))
    assert "Nothing was written." in gclint("trial", "plan", "second", *epoxy)[1]
    assert not (here / "second").exists()


def test_a_new_material_needs_to_be_called_new(here: Path, gclint: Gclint) -> None:
    new = ("--material", "harbour mud (grey, dry\u00e9)", *FEW[2:])
    code, out, err = gclint("trial", "plan", "mud", *new)
    assert (code, out) == (2, "")
    assert "for a new material say --like CARD, or --like nothing" in err
    assert gclint("trial", "plan", "mud", *new, "--like", "hdpe")[0] == 0
    plan = read_plan(here / "mud" / "plan.toml")
    assert (plan.material, plan.like) == ("harbour mud (grey, dry\u00e9)", "hdpe")
    assert 'material = "hdpe"' in (here / "mud" / "job.toml").read_text()
    code, out, _err = gclint("trial", "plan", "bare", *new, "--like", "nothing", "--dial", "B", "--dial", "C")
    assert code == 0
    assert "no card gives a window" in " ".join(out.split())
    plan = read_plan(here / "bare" / "plan.toml")
    assert {cut.dial for cut in plan.cut} == {"B", "C"}
    assert "material" not in (here / "bare" / "job.toml").read_text().partition("\n")[2]
    assert gclint("trial", "plan", "bare", "--confirm", "none")[0] == 0


def test_spreading_says_what_it_needs(here: Path, gclint: Gclint, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, "scipy.stats", None)
    code, _out, err = gclint("trial", "plan", "first", *FEW)
    assert code == 2
    assert "pip install 'gclint[trial]', or ask for --design grid" in err
    assert gclint("trial", "plan", "first", *FEW, "--design", "grid")[0] == 0


def test_a_tool_of_one_line_where_there_is_no_shop(here: Path, shop: Path, gclint: Gclint) -> None:
    shop.unlink()
    line = ("--tool", "flat 3.175mm 2fl down-cut")
    code, _out, err = gclint("trial", "plan", "first", "--material", "hdpe", *line, *FEW[4:])
    assert (code, err) == (0, "")
    assert (here / "first" / "shop.toml").exists()
    assert gclint("check", "first/test-cuts.nc")[0] == 0
    plan = read_plan(here / "first" / "plan.toml")
    assert all(6000 <= cut.speed <= 30000 and cut.speed % 100 == 0 for cut in plan.cut)
    assert "G4 P4.0" in blocks(here / "first")


@pytest.mark.parametrize(("card", "wait"), [("shop-mill-macros", "G4 P3000"), ("shop-3-axis", "G4 P3.0")])
def test_the_wait_is_in_the_unit_of_the_card(card: str, wait: str, here: Path, shop: Path, gclint: Gclint) -> None:
    commanded(shop, card)
    assert gclint("trial", "plan", "first", *FEW, "--run-through", "--feed", "600 to 1500 mm/min")[0] == 0
    lines = blocks(here / "first")
    for line, after in pairwise(lines):
        if line.startswith("M3 "):
            assert after == wait
    assert "M0" not in lines
    assert all("." in word for line in lines if line[0] != "(" for word in line.split() if word[0] in "XYZIJF")


def test_nothing_that_exists_is_written_over(here: Path, gclint: Gclint) -> None:
    (here / "first").mkdir()
    (here / "first" / "sheet.html").write_text("mine")
    code, out, err = gclint("trial", "plan", "first", *FEW)
    assert (code, out) == (2, "")
    assert "nothing is written over it" in err
    assert {path.name for path in (here / "first").iterdir()} == {"sheet.html"}
    gclint("trial", "plan", "second", *FEW)
    before = {path: path.read_bytes() for path in (here / "second").iterdir()}
    assert gclint("trial", "plan", "second", *FEW, "--seed", "5")[0] == 2
    code, _out, err = gclint("trial", "plan", "second")
    assert "there is a plan in this folder already" in err
    assert {path: path.read_bytes() for path in (here / "second").iterdir()} == before


@pytest.mark.parametrize(
    ("change", "says"),
    [
        (("--tool", "9"), "the shop file has no tool 9; it has 1, 2, 3, 4"),
        (("--tool", "1"), "a tool is named twice"),
        (("--tool", "3"), 'tool 3 is "v"'),
        (("--tool", "4"), "the flutes of tool 4 are not declared"),
        (("--tool", "2: flat 6mm"), "shop.toml by its number; write a new one into it"),
        (("--blank", "60 x 20 x 15 mm"), "do not fit on this blank: there is room for 1 of"),
        (("--blank", "10 x 10 x 15 mm"), "there is room for none"),
        (("--blank", "big"), "does not hold three sizes"),
        (("--cuts", "4"), "at least 5"),
        (("--depth", "14 mm"), "leaves too thin a floor"),
        (("--depth", "deep"), "--depth"),
        (("--depth", "3"), "no unit"),
        (("--dial", "Z"), 'the spindle has no mark "Z"'),
        (("--speed", "9000 to 12000"), "this spindle has a dial"),
        (("--feed", "600"), 'a range is written "600 to 2000 mm/min"'),
        (("--feed", "900 to 600 mm/min"), "is more than"),
        (("--feed", "1 to 2 mm/min"), "with the feeds that are possible here"),
        (("--confirm", "1"), "cut 1 is not risky"),
        (("--confirm", "x"), "write numbers such as 3,7-9"),
        (("--like", "hdpee"), 'nearest: "hdpe"'),
        (("--shop", "none.toml"), "there is no such shop file"),
    ],
)  # fmt: skip
def test_what_is_asked_wrongly_is_told_and_nothing_is_written(
    change: tuple[str, ...], says: str, here: Path, gclint: Gclint
) -> None:
    code, _out, err = gclint("trial", "plan", "first", *FEW, *change)
    assert code == 2
    assert says in err
    assert err.count("\n") == 1
    assert not (here / "first").exists()


def test_a_controller_that_cannot_stop_is_told(here: Path, shop: Path, gclint: Gclint) -> None:
    (here / "ours.toml").write_text(
        'name = "ours"\ntitle = "ours"\nsource = "invented"\nprogram_stop = "ignores"\n[arcs]\ntolerance = "0.005 mm"\n'
    )
    shop.write_text(shop.read_text().replace("hobby-3-axis", "ours.toml"))
    code, _out, err = gclint("trial", "plan", "first", *FEW)
    assert code == 2
    assert "does not stop at M0" in err
    one = ("--dial", "B", "--run-through", "--repeats", "0")
    assert gclint("trial", "plan", "first", *FEW, *one)[0] == 0
    assert "M0" not in blocks(here / "first")


def test_a_machine_with_little_travel(here: Path, shop: Path, gclint: Gclint) -> None:
    shop.write_text(shop.read_text().replace('"90 mm"', '"20 mm"'))
    assert gclint("trial", "plan", "first", *FEW)[0] == 0
    assert "G0 Z10.0" in blocks(here / "first")
    shop.write_text(shop.read_text().replace('"600 mm"', '"100 mm"'))
    code, _out, err = gclint("trial", "plan", "second", *FEW)
    assert code == 2
    assert "these cuts cannot be made here: outside-travel" in err
    assert not (here / "second").exists()


def test_numbers_are_told_in_runs() -> None:
    assert listed([9, 1, 2, 3, 5, 6]) == "1-3, 5, 6, 9"
    assert risks([]) == []
    with pytest.raises(Problem, match="is no cut"):
        numbers_of("3-", _plan())


def _plan() -> Plan:
    import datetime

    from gclint.toml.quantity import Length, Position

    three = (Length(1), Length(1), Length(1))
    return Plan("x", datetime.date(2026, 11, 25), "hdpe", "x.nc", three, (Position(0), Position(0)), three[:2])
