"""Programs as they come to a school workshop, on two invented machines of Lowtide."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.judge.try_judge import found, names, tried

HEAD = "G21 G90 G94 G17 G54\n"

MACHINE_A = """
[machine]
name = "A"
travel = { x = "600 mm", y = "400 mm", z = "90 mm" }
rapid = { x = "5000 mm/min", y = "5000 mm/min", z = "2000 mm/min" }
feed_limit = { x = "2500 mm/min", y = "2500 mm/min", z = "800 mm/min" }
homes = false
controller = "hobby-3-axis"

[spindle]
kind = "dial"
dial = [
    { mark = "A", stated = 9500 }, { mark = "B", stated = 12500 }, { mark = "C", stated = 16000 },
    { mark = "D", stated = 19500 }, { mark = "E", stated = 23000 }, { mark = "F", stated = 26500 },
]
started = "by-hand"
"""
MACHINE_B = """
[machine]
name = "B"
rapid = { x = "5000 mm/min", y = "5000 mm/min", z = "2000 mm/min" }
homes = true
controller = "stops-at-tool-change.toml"

[spindle]
kind = "commanded"
range = [6000, 24000]
started = "program"
"""
SIX = """
[[tool]]
number = 1
shape = "flat"
diameter = "6 mm"
flutes = 2
flute_length = "25 mm"
helix = "up-cut"
centre_cutting = true
"""
B = MACHINE_B.replace('controller = "stops-at-tool-change.toml"\n', "")


def test_1_a_straight_plunge_counts_only_the_depth_in_material() -> None:
    checked = tried(
        HEAD + "M3 S12000\nG0 Z5\nG0 X40 Y30\nG1 X40.000 Y30.000 Z-3.000 F900\nG0 Z5\nM30\n",
        material="cured-epoxy", stock="120 x 80 x 20 mm at 0 0", shop=B + SIX,
    )  # fmt: skip
    straight, hidden = found(checked, "straight-plunge"), found(checked, "hidden-plunge")
    assert [f.line for f in straight] == [f.line for f in hidden] == [5]
    assert straight[0].found is not None
    assert straight[0].found.value == pytest.approx(3.0, abs=0.01)
    assert hidden[0].found is not None
    assert hidden[0].found.value == pytest.approx(0.0, abs=1e-6)
    assert "900 mm/min" in straight[0].happens
    assert not found(checked, "chip-too-thin", "chip-too-thick")


@pytest.mark.parametrize(
    ("cut", "expected"),
    [
        ("G0 X40 Y30\nG1 Z0 F900\nG1 X90 Z-3", set()),
        ("G0 X40 Y30\nG1 Z0 F300\nG1 X42 Z-3", {"hidden-plunge", "straight-plunge"}),
        ("G0 X40 Y30\nG1 Z0 F600\nG2 X40 Y30 Z-1 I3 J0\nG2 X40 Y30 Z-2 I3 J0\nG2 X40 Y30 I3 J0", set()),
        (
            "G0 X40 Y30\nG1 Z0 F300\nG2 X40 Y30 Z-1 I0.05 J0\nG2 X40 Y30 Z-2 I0.05 J0",
            {"straight-plunge", "hidden-plunge"},
        ),
    ],
    ids=["long ramp", "short ramp", "helix", "helix of no radius"],
)  # fmt: skip
def test_2_slopes(cut: str, expected: set[str]) -> None:
    checked = tried(
        HEAD + f"M3 S12000\nG0 Z5\n{cut}\nG1 X80 F900\nG0 Z5\nM30\n",
        material="cured-epoxy", stock="120 x 80 x 20 mm at 0 0", shop=B + SIX,
    )  # fmt: skip
    assert {f.rule for f in found(checked, "straight-plunge", "hidden-plunge", "steep-ramp")} == expected


def test_2e_turns_that_the_controller_passes_over() -> None:
    """Machine A ignores the turn count: 5 mm in one lap (14.9 degrees) instead of five laps of 1 mm (3.0 degrees)."""
    cut = HEAD + "M3 S12500\nG0 Z5\nG0 X40 Y30\nG1 Z0 F300\nG2 X40 Y30 Z-5 I3 J0 P5\nG2 X40 Y30 I3 J0\nG0 Z5\nM30\n"
    stock = "120 x 80 x 20 mm at 0 0"
    there = tried(cut, material="cured-epoxy", stock=stock, shop=MACHINE_A + SIX)
    (ignored,) = found(there, "code-ignored")
    assert (ignored.line, ignored.grade) == (6, "change")
    assert "one turn only" in ignored.happens
    (steep,) = found(there, "steep-ramp")
    assert steep.found is not None
    assert steep.found.value == pytest.approx(14.86, abs=0.1)  # atan(5 / (2 pi 3))
    counted = tried(cut, material="cured-epoxy", stock=stock, shop=B + SIX)
    assert not found(counted, "code-ignored", "steep-ramp")


BAND = '[windows."birch-plywood".1]\nfz = ["0.035 mm", "0.10 mm"]\n'
PLY = HEAD + "M3 S18000\nG0 Z5\nG0 X-10 Y40\nG1 Z-2 F1500\nG1 X130\nG1 Y60\nG1 X-10\nG0 Z5\nM30\n"


def test_3_the_dial_decides_the_chip() -> None:
    checked = tried(
        PLY, material="birch-plywood", stock="120 x 80 x 18 mm at 0 0", shop=MACHINE_A + SIX + BAND, job='dial = "F"'
    )
    about = found(checked, "speed-not-on-dial", "chip-too-thin", "chip-too-thick")
    assert [(f.rule, f.line) for f in about] == [("chip-too-thin", 5)]
    finding = about[0]
    assert "26500 rev/min" in finding.happens
    assert "0.0283 mm at 1500 mm/min, not 0.0417 mm" in finding.happens
    feeds = [word.to for word in finding.change.set if word.word == "F"]
    assert feeds
    assert min(feeds) >= 1855
    assert "F1855 or more" in finding.change.text
    assert "dial D" in finding.change.text
    assert "dial E" not in finding.change.text


def test_3_without_a_dial_it_is_said_once_that_the_chip_is_not_judged() -> None:
    checked = tried(PLY, material="birch-plywood", stock="120 x 80 x 18 mm at 0 0", shop=MACHINE_A + SIX + BAND)
    assert len(found(checked, "speed-not-on-dial")) == 1
    assert not found(checked, "chip-too-thin")
    thin = [row for row in checked.not_judged if row.rule == "chip-too-thin"]
    assert len(thin) == 1
    assert "dial" in thin[0].needs


@pytest.mark.parametrize(
    ("arc", "refused"),
    [
        ("G0 X20.00 Y10.00\nG1 Z-1 F300\nG2 X20.35 Y10.12 I0.19 J0.00 F600", True),
        ("G0 X0 Y0\nG1 Z-1 F300\nG2 X150 Y150.010 I150 J0 F600", False),
        ("G0 X0 Y0\nG1 Z-1 F300\nG2 X0.1 Y0.104 I0.1 J0 F600", False),
    ],
    ids=["radii 0.190 and 0.200", "0.010 of 150", "under 0.005"],
)
def test_6_arcs_of_few_decimals(arc: str, refused: bool) -> None:
    about = found(tried(HEAD + f"M3 S16000\nG0 Z5\n{arc}\nG0 Z5\nM30\n", shop=MACHINE_A + SIX),
                  "arc-does-not-close", "arc-centre-suspect")  # fmt: skip
    assert [(f.rule, f.line) for f in about] == ([("arc-does-not-close", 6)] if refused else [])
    if refused:
        assert about[0].found is not None
        assert about[0].found.value == pytest.approx(0.010, abs=1e-6)
        assert "a difference of 0.010 mm (5.3 % of the radius)" in about[0].happens
        assert "The cause is rounding: the numbers have 2 decimals" in about[0].happens
        assert "two decimals are not enough" in about[0].change.text


def test_6_a_wrong_digit_is_no_rounding() -> None:
    arc = "G0 X20.00 Y10.00\nG1 Z-1 F300\nG2 X25.35 Y10.12 I0.19 J0.00 F600"
    (wrong,) = found(tried(HEAD + f"M3 S16000\nG0 Z5\n{arc}\nG0 Z5\nM30\n", shop=MACHINE_A + SIX), "arc-does-not-close")
    assert "rounding" not in wrong.happens
    assert "wrong digit" in wrong.change.text


CUT = "G1 Z-1 F300\nG1 X60 F1500\nG0 Z40\nM30\n"
CLAMP = '[[keep_out]]\nname = "left clamp"\nfrom = ["-40 mm", "0 mm", "0 mm"]\nto = ["-12 mm", "60 mm", "{} mm"]\n'


def test_8_first_moves() -> None:
    first = tried(HEAD + "M3 S16000\nG0 X30 Y40\nG0 Z5\n" + CUT, shop=MACHINE_A + SIX)
    assert [(f.line, f.grade) for f in found(first, "first-move-low")] == [(3, "consider")]
    assert "before the program says any Z" in found(first, "first-move-low")[0].happens
    machine_up = tried(HEAD + "M3 S16000\nG53 G0 Z-5\nG0 X30 Y40\nG0 Z5\n" + CUT, shop=B + SIX)
    assert not found(machine_up, "first-move-low", "travel-too-low")


@pytest.mark.parametrize(("height", "low"), [(12, False), (20, True)])
def test_8_travel_over_clamps(height: int, low: bool) -> None:
    checked = tried(HEAD + "M3 S16000\nG0 Z15\nG0 X30 Y40\n" + CUT, shop=MACHINE_A + SIX, job=CLAMP.format(height))
    about = found(checked, "travel-too-low")
    assert bool(about) is low
    if low:
        assert about[0].line == 4
        assert "5 mm below the top of left clamp" in about[0].happens


START = "M3 S16000\nG0 Z15\nG0 X30 Y40\nG1 Z-1 F300\nG1 X60 F1500\nG0 Z15\n"


def test_8e_home_on_a_machine_that_has_none() -> None:
    """A card may say that M3 does nothing: that is told once, not at every start."""
    program = HEAD + START + START + "G28\nM30\n"
    there = tried(program, shop=MACHINE_A + SIX)
    assert [(f.line, f.grade) for f in found(there, "home-unknown")] == [(14, "change")]
    assert "G28" in found(there, "home-unknown")[0].happens
    assert not found(there, "code-ignored", "code-refused", "spindle-not-running")
    assert not found(tried(program, shop=B + SIX), "home-unknown")


def test_8e_a_spindle_start_without_effect_is_told_once(tmp_path: Path) -> None:
    (tmp_path / "halts.toml").write_text(CARD + '\n[[ignores]]\ncodes = ["spindle"]\nsource = "invented"\n')
    shop = MACHINE_A.replace('"hobby-3-axis"', f'"{tmp_path / "halts.toml"}"') + SIX
    (told,) = found(tried(HEAD + START + START + "M30\n", shop=shop), "code-ignored")
    assert told.found is not None
    assert (told.found.value, told.count, told.grade) == ("M3", 2, "consider")
    assert "has no effect" in told.happens


def test_11_slow_travel_in_the_air_is_no_cut() -> None:
    checked = tried(
        HEAD + "M3 S18000\nG1 Z5 F1000\nG1 X0 Y-10 F1000\nG1 X20\nG1 Z-2 F400\nG1 Y90 F2000\nG1 Z5 F1000\n"
        "G1 X60 Y-10 F1000\nG1 Z-2 F400\nG1 Y90 F2000\nG1 Z5 F1000\nG1 X0 Y0 F1000\nM5\nM30\n",
        material="oak", stock="120 x 80 x 20 mm at 0 0", shop=B + SIX,
    )  # fmt: skip
    assert names(checked, milder=True) == set()


def test_11_a_ball_that_finishes_a_surface() -> None:
    lines = "".join(f"G1 Y{y / 10:.1f}\nG1 X{100 if y % 8 else 10}\n" for y in range(100, 140, 4))
    checked = tried(
        HEAD + f"M3 S18000\nG0 Z5\nG0 X-10 Y10\nG1 Z-0.3 F600\nG1 X10 F2000\n{lines}G0 Z5\nM5\nM30\n",
        material="oak", stock="120 x 80 x 20 mm at 0 0",
        shop=B + '[[tool]]\nnumber = 1\nshape = "ball"\ndiameter = "6 mm"\nflutes = 2\n'
        '[windows.oak.1]\nfz = ["0.04 mm", "0.10 mm"]\n',
    )  # fmt: skip
    assert not found(checked, "chip-too-thin", "chip-too-thick", "steep-ramp", "straight-plunge", "plunge-too-fast")


def test_11_a_drag_tool_does_not_turn() -> None:
    checked = tried(
        HEAD + "G0 Z5\nG0 X10 Y10\nG1 Z-0.2 F300\nG1 X60 F900\nG1 Y50\nG0 Z5\nM30\n", "1: drag 1mm",
        material="oak", stock="120 x 80 x 20 mm at 0 0",
    )  # fmt: skip
    assert names(checked, milder=True) == set()


ONE = "T1 M6\nM3 S16000\nG0 Z5\nG0 X-10 Y20\nG1 Z-1 F300\nG1 X60 F1500\nG0 Z5\n"
TWO = "G0 X-10 Y60\nG1 Z-1 F300\nG1 X60 F1500\nG0 Z5\nM5\nM30\n"
SECOND = SIX.replace("number = 1", "number = 2")


def test_12_a_tool_change_that_is_passed_over() -> None:
    both = tried(HEAD + ONE + "T2 M6\nM3 S16000\n" + TWO, shop=MACHINE_A + SIX + SECOND)
    assert [(f.line, f.grade) for f in found(both, "tool-change-without-stop")] == [(9, "halt")]
    alone = tried(HEAD + ONE + "M30\n", shop=MACHINE_A + SIX + SECOND)
    assert not found(alone, "tool-change-without-stop")


CARD = """
name = "halts"
title = "a controller whose stop also stops the spindle (invented)"
source = "invented"
tool_change = "stops"
program_stop = "stops-spindle"

[arcs]
tolerance = "0.002 mm"
"""


@pytest.mark.parametrize(("again", "rules", "line"), [
    ("M0\n", {"spindle-not-running"}, 13),
    ("M0\nM3 S16000\n", {"no-spin-up-time"}, 14),
    ("M0\nM3 S16000\nG4 P8\n", set(), None),
])  # fmt: skip
def test_12_the_spindle_behind_a_stop(tmp_path: Path, again: str, rules: set[str], line: int | None) -> None:
    (tmp_path / "halts.toml").write_text(CARD)
    shop = MACHINE_B.replace("stops-at-tool-change.toml", str(tmp_path / "halts.toml")) + 'spin_up = "8 s"\n' + SIX
    first = ONE.replace("M3 S16000\n", "M3 S16000\nG4 P8\n")
    checked = tried(HEAD + first + again + TWO, shop=shop, stock="120 x 80 x 20 mm at 0 0")
    about = found(checked, "spindle-not-running", "no-spin-up-time")
    assert {f.rule for f in about} == rules
    assert [f.line for f in about] == ([line] if line else [])


@pytest.mark.parametrize(("program", "rule", "line"), [
    ("G90 G94 G17 G54\nM3 S16000\nG0 Z5\nG0 X0 Y0\n" + CUT, "units-unstated", 3),
    (HEAD + "(Pocket (2))\nM3 S16000\nG0 Z5\n" + CUT, "comment-leftover", 2),
    (HEAD + "M3 S16000\nG0 Z5\nG1 X12,5 F300\n" + CUT, "number-unreadable", 4),
])  # fmt: skip
def test_14_the_wrong_file(program: str, rule: str, line: int) -> None:
    checked = tried(program, shop=MACHINE_A + SIX, stock="300 x 200 x 18 mm at 0 0")
    assert [f.line for f in found(checked, rule)] == [line]


SMALL = "M3 S16000\nG0 Z0.5\nG0 X0 Y0\nG1 Z-0.1 F300\nG1 X11.8 F1500\nG1 Y7.8\nG1 X0\nG1 Y0\nG0 Z0.5\nM30\n"


def test_14a_no_unit_and_a_blank_that_only_inches_fill() -> None:
    checked = tried("G90 G94 G17 G54\n" + SMALL, shop=MACHINE_A + SIX, stock="300 x 200 x 18 mm at 0 0")
    assert len(found(checked, "units-unstated")) == 1
    (suspect,) = found(checked, "units-suspect")
    assert suspect.grade == "change"
    assert "as inches, 299.7 x 198.1 mm, that fills the blank" in suspect.happens
    assert "as mm it uses 0.15 % of it" in suspect.happens
    stated = tried(HEAD + SMALL, shop=MACHINE_A + SIX, stock="400 x 300 x 18 mm at 0 0")
    assert not found(stated, "units-suspect", "units-unstated")  # a small real part, its unit stated


def test_14b_a_feed_that_is_a_sixtieth() -> None:
    """F25 where F1500 is right: the suspicion about the unit, and no second finding that the tool rubs."""
    program = HEAD + "M3 S18000\nG0 Z5\nG0 X-10 Y40\nG1 Z-2 F25\nG1 X130\nG1 Y60\nG1 X-10\nG0 Z5\nM30\n"
    commanded = B.replace("[machine]", '[machine]\ncontroller = "hobby-3-axis"')
    for shop in (commanded, MACHINE_A):  # on A, 18000 is no mark of the dial: right at none of them
        checked = tried(program, material="birch-plywood", stock="300 x 200 x 18 mm at 0 0", shop=shop + SIX + BAND)
        (suspect,) = found(checked, "feed-unit-suspect")
        assert suspect.line == 5
        assert "exactly 1/60 of 1500 mm/min" in suspect.happens
        assert not found(checked, "chip-too-thin")


def test_14d_a_wait_of_half_an_hour() -> None:
    program = HEAD + "M3 S16000\nG4 P2000\nG0 Z5\nG0 X0 Y0\n" + CUT
    (suspect,) = found(tried(program, shop=MACHINE_A + SIX), "dwell-unit-suspect")
    assert (suspect.line, suspect.grade) == (3, "change")
    assert suspect.found is not None
    assert suspect.found.value == pytest.approx(2000)
    assert "2000 s" in suspect.happens


def test_14c_a_drill_cycle_is_refused() -> None:
    program = HEAD + "M3 S16000\nG0 Z5\nG81 X10 Y10 Z-3 R2 F300\nX20\nG80\n" + CUT
    refused = found(tried(program, shop=MACHINE_A + SIX), "code-refused")
    assert [(f.line, f.grade, f.found.value if f.found else None) for f in refused] == [(4, "change", "G81")]


def test_14_cancel_words_are_no_fault() -> None:
    checked = tried(HEAD + "G40 G49 G80\nM3 S16000\nG0 Z5\nG0 X0 Y0\n" + CUT, shop=MACHINE_A + SIX)
    assert names(checked, milder=True) == set()


def test_an_undeclared_shank_leaves_one_rule_unjudged() -> None:
    checked = tried(HEAD + "M3 S16000\nG0 Z5\nG0 X-10 Y20\n" + CUT, shop=MACHINE_A + SIX)
    assert [row.rule for row in checked.not_judged if row.needs == "`shank` of tool 1 in shop.toml"] == ["shank-rubs"]
