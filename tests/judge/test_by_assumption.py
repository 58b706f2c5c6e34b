"""What hangs on an assumption is at most `consider` and one entry: the edge of an undeclared blank, another set-up."""

from __future__ import annotations

import random

import pytest

from gclint.judge.set_up_stops import speaks_of_set_up
from gclint.tables.finding import Checked, Finding
from tests.judge.try_judge import tried

HEAD = "G21 G90 G94 G17 G40 G49 G80 G54\nT1 M6\nS16000 M3\nG4 P4\nG0 Z20\nG43 H1 Z20\n"
END = "G0 Z20\nM5\nM30\n"
SIX = "1: flat 6mm 2fl"
FRONT = "G0 X20 Y20\nG0 Z2\nG1 Z0 F400\nG1 X60 Z-3 F1200\nG1 X20\nG0 Z20\n"
BEHIND = "S16000 M3\nG4 P4\nG0 X-40 Y30\nG0 Z-3\nG1 X90 F1200\nG0 Z20\nG0 X60 Y45\nG0 Z-4\nG1 X70\n"
# a part cut out, entered from 10 mm beside it: the blank may end anywhere between
BESIDE = "G0 X-10 Y30\nG0 Z-3\nG1 X0 F900\nG1 Y60\nG1 X80\nG1 Y0\nG1 X0\nG1 Y30\nG1 X-10\n"
FACING = "G0 X-8 Y0\nG0 Z-1\n" + "".join(f"G1 X{108 if n % 2 == 0 else -8} F1500\nG1 Y{4 * n + 4}\n" for n in range(10))


def told(body: str, **given: str) -> Checked:
    return tried(HEAD + body + END, SIX, material="birch-plywood", **given)  # type: ignore[arg-type]


def of(checked: Checked, *rules: str) -> list[Finding]:
    return [finding for finding in checked.findings if finding.rule in rules]


@pytest.mark.parametrize("body", [BESIDE, FACING])
def test_coming_down_beside_the_cuts_is_one_entry_that_asks_for_the_blank(body: str) -> None:
    checked = told(body)
    (entry,) = of(checked, "blank-not-declared")
    assert entry.grade == "consider"
    assert "rapid-through-stock" in entry.happens
    assert "--stock" in entry.change.text
    assert not of(checked, "rapid-through-stock")
    assert "the blank's edge" in [each.what for each in checked.assumed]


def test_the_declared_blank_settles_it_either_way() -> None:
    wide, narrow = "200 x 160 x 18 mm at -60 -60", "84 x 64 x 18 mm at -2 -2"
    assert [f.grade for f in of(told(BESIDE, stock=wide), "rapid-through-stock")] == ["halt"]
    assert not of(told(BESIDE, stock=narrow), "rapid-through-stock")
    for stock in (wide, narrow):
        assert not of(told(BESIDE, stock=stock), "blank-not-declared")


def test_a_rapid_down_inside_the_cuts_is_a_halt_without_a_blank() -> None:
    """Inside a part that is cut out, and on its very outline, no plausible blank is without material."""
    for x, y in ((40, 30), (0, 30), (80, 20), (40, 60)):
        around = "G0 X0 Y0\nG0 Z2\nG1 Z0 F400\nG1 X80 Z-2 F900\nG1 Y60\nG1 X0\nG1 Y0\nG1 X80\nG0 Z5\n"
        checked = told(f"{around}G0 X{x} Y{y}\nG0 Z-6\nG1 Y{y + 4} F900\n")
        assert [f.grade for f in of(checked, "rapid-through-stock")] == ["halt"], (x, y)
        assert not of(checked, "blank-not-declared")


def test_holes_hang_on_no_edge() -> None:
    """A tool that only goes down comes from no side."""
    holes = "".join(f"G0 X{x} Y40\nG0 Z-4\nG0 Z5\n" for x in (20, 40, 60))
    checked = told(f"{holes}G0 X20 Y40\nG0 Z2\nG1 Z-1 F200\nG1 X60 F900\nG0 Z5\n")
    assert len(of(checked, "rapid-through-stock")) == 3


@pytest.mark.parametrize("seed", range(6))
def test_what_does_not_hang_is_found_with_every_plausible_edge(seed: int) -> None:
    """Against the same program with blanks declared: every edge between the outline of the cuts and one diameter
    outside them."""
    draw = random.Random(seed)
    turns = [(draw.uniform(0, 80), draw.uniform(0, 60)) for _ in range(4)]
    cuts = "G0 X0 Y0\nG0 Z2\nG1 Z0 F400\nG1 X80 Z-2 F900\nG1 Y60\nG1 X0\nG1 Y0\nG1 X80\nG0 Z5\n"
    drops = "".join(f"G0 X{x:.3f} Y{y:.3f}\nG0 Z-5\nG1 X{x + 3:.3f} F900\nG0 Z5\n" for x, y in turns)
    lead = f"G0 X{-4 - draw.uniform(0, 6):.3f} Y{draw.uniform(10, 50):.3f}\nG0 Z-6\nG1 X30 F900\nG0 Z5\n"
    free = told(cuts + drops + lead)
    halts = {line for f in of(free, "rapid-through-stock") for line in f.lines}
    for room in (3.0, 5.0, 9.0):
        stock = f"{80 + 2 * room} x {60 + 2 * room} x 18 mm at {-room} {-room}"
        declared = told(cuts + drops + lead, stock=stock)
        assert halts <= {line for f in of(declared, "rapid-through-stock") for line in f.lines}, room
    (entry,) = of(free, "blank-not-declared")
    assert len(halts) >= 3
    assert not halts & set(entry.lines)


def test_a_program_that_begins_deep_down_may_come_behind_another() -> None:
    """A finishing lap at Z-24 with a 6 mm tool and no blank declared; a plunge from the top is no such thing."""
    deep = "G0 X20 Y20\nG0 Z-24\nG1 X60 F900\nG1 Y50\nG1 X20\nG1 Y20\n"
    checked = told(deep)
    assert [f.grade for f in of(checked, "earlier-cuts-unknown")] == ["consider"]
    assert not [f for f in checked.findings if f.grade == "halt"]
    assert not of(told(deep, stock="120 x 80 x 30 mm at 0 0"), "earlier-cuts-unknown")
    assert not of(told(deep.replace("G0 Z-24", "G0 Z-6")), "earlier-cuts-unknown")
    assert not of(told(deep.replace("G0 Z-24", "G0 Z2\nG1 Z-24 F200")), "earlier-cuts-unknown")


@pytest.mark.parametrize(
    "stop",
    ["M0 (FLIP PART, SET G54 ANEW)", "M0\n(turn the part over)", "(SECOND SIDE)\nM1",
     "M60 (new set-up: zero X and Y again)", "(MSG, rotate workpiece)\nM0"],
)  # fmt: skip
def test_a_stop_for_another_set_up_ends_what_is_known(stop: str) -> None:
    checked = told(f"{FRONT}M5\n{stop}\n{BEHIND}", stock="120 x 80 x 18 mm at 0 0")
    assert not [f for f in checked.findings if f.grade == "halt"]
    (entry,) = of(checked, "another-set-up")
    assert entry.grade == "consider"
    assert "rapid-through-stock" in entry.happens


@pytest.mark.parametrize("stop", ["M0 (CLEAR CHIPS)", "M0", "M0 (FLIP UP DUST SHOE)", "M0 (SET Z ZERO OF NEW TOOL)"])
def test_another_stop_ends_nothing(stop: str) -> None:
    checked = told(f"{FRONT}M5\n{stop}\n{BEHIND}", stock="120 x 80 x 18 mm at 0 0")
    assert [f.rule for f in checked.findings if f.grade == "halt"] == ["rapid-through-stock"]
    assert not of(checked, "another-set-up")


def test_the_spindle_behind_such_a_stop_is_judged_all_the_same() -> None:
    silent = BEHIND.replace("S16000 M3\n", "")
    checked = told(f"{FRONT}M5\nM0 (FLIP PART)\n{silent}", stock="120 x 80 x 18 mm at 0 0")
    assert of(checked, "spindle-not-running")


def test_an_entry_is_accepted_like_any_finding() -> None:
    job = '[[accept]]\nrule = "another-set-up"\nbecause = "the jig holds both sides alike"\n'
    checked = told(f"{FRONT}M5\nM0 (FLIP PART)\n{BEHIND}", stock="120 x 80 x 18 mm at 0 0", job=job)
    assert [f.accepted for f in of(checked, "another-set-up")] == ["the jig holds both sides alike"]
    assert not of(checked, "acceptance-stale")


@pytest.mark.parametrize("text", ["flip", "Turn the stock over", "OTHER SIDE", "set G55 anew", "next part"])
def test_words_for_another_set_up(text: str) -> None:
    assert speaks_of_set_up(text) is not None


@pytest.mark.parametrize("text", ["", "turn spindle off", "flip the switch", "inside pocket", "set g54 z", "side mill"])
def test_words_for_something_else(text: str) -> None:
    assert speaks_of_set_up(text) is None
