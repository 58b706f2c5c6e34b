"""What the rules say of the ways into the material and of depth and width: one place, one number, both sides."""

from __future__ import annotations

import pytest

from gclint.check import trace
from gclint.digest.tool_facts import EntryFacts, tool_facts
from gclint.setup.declare import Options
from gclint.tables.finding import Checked, Finding
from tests.judge.try_judge import found, names, tried

PLY = "birch-plywood"
SIX = "1: flat 6mm 2fl"
BOARD = "120 x 80 x 20 mm at 0 0"
HEAD = "G21 G90 G94 G17 G54|T1 M6|S12000 M3|G0 Z5|G0 X20 Y20|"
ENTRIES = ("straight-plunge", "hidden-plunge", "steep-ramp", "plunge-too-fast", "plunge-without-centre-edge")


def judged(program: str, tool: str = SIX, material: str = PLY, stock: str = BOARD) -> Checked:
    return tried((HEAD + program + "|G0 Z20|M5|M30").replace("|", "\n"), tool, material=material, stock=stock)


def entries(program: str, tool: str = SIX, material: str = PLY) -> tuple[EntryFacts, ...]:
    text = (HEAD + program + "|G0 Z20|M5|M30").replace("|", "\n").encode()
    return tool_facts(trace(text, "try.nc", Options(material, (tool,), BOARD, None, None)))[0].entries


def one(checked: Checked, rule: str) -> Finding:
    (finding,) = found(checked, rule)
    return finding


# one number


@pytest.mark.parametrize("depth", [7, 8, 9.7, 12])
def test_the_depth_told_is_what_the_z_words_say_everywhere(depth: float) -> None:
    program = f"G1 Z-{depth} F300|G1 X60 F1200"
    finding = one(judged(program), "straight-plunge")
    assert finding.line == 6
    assert finding.found is not None
    assert finding.found.value == pytest.approx(depth, abs=0.005)
    assert f"drops {depth:g} mm" in finding.happens
    (straight,) = entries(program)
    assert (straight.kind, straight.deepest_line) == ("straight", 6)
    assert straight.solid_mm == pytest.approx(depth, abs=0.005)


def test_a_rounded_end_is_no_part_of_the_plunge() -> None:
    program = "G1 Z-9.7 F300|G18 G2 X20.3 Z-10 I0.3 K0 F1800|G17|G1 X60"
    finding = one(judged(program), "straight-plunge")
    assert finding.found is not None
    assert finding.found.value == pytest.approx(9.7, abs=0.005)
    assert "300 mm/min" in finding.happens
    assert [entry.kind for entry in entries(program)] == ["straight"]


def test_sums_of_moves_cross_no_limit() -> None:
    program = "G1 Z-5.5 F200|G18 G2 X21.5 Z-7 I1.5 K0 F1800|G17|G1 X60"
    assert not found(judged(program), *ENTRIES)
    assert entries(program)[0].solid_mm == pytest.approx(5.5, abs=0.005)


def test_what_a_rapid_goes_through_is_no_part_of_the_entry() -> None:
    program = "G1 Z-5.5 F300|G0 Z5|G0 Z-8|G1 Z-8.5 F300"
    checked = judged(program)
    assert not found(checked, "straight-plunge")
    crash = one(checked, "rapid-through-stock")
    assert (crash.line, crash.grade) == (8, "halt")
    assert crash.found is not None
    assert crash.found.value == pytest.approx(2.5, abs=0.01)
    (straight,) = entries(program)
    assert straight.count == 2
    assert straight.solid_mm == pytest.approx(5.5, abs=0.005)


def test_pecks_of_one_hole_are_one_entry_of_its_whole_depth() -> None:
    program = "G1 Z-3 F300|G0 Z1|G0 Z-2.5|G1 Z-6 F300|G0 Z1|G0 Z-5.5|G1 Z-9 F300"
    (straight,) = entries(program)
    assert straight.count == 1
    assert straight.solid_mm == pytest.approx(9.0, abs=0.005)


# the steepest stretch


EIGHTH = "1: flat 1/8in 2fl"


@pytest.mark.parametrize("behind", ["", "|G1 X78.192 Z-1.995"])
def test_a_gentle_end_does_not_make_up_for_a_steep_ramp(behind: str) -> None:
    program = f"G1 Z0 F300|G1 X21.192 Z-1 F1200{behind}"
    finding = one(judged(program, EIGHTH, "cured-epoxy"), "steep-ramp")
    assert finding.line == 7
    assert finding.found is not None
    assert finding.found.value == pytest.approx(40.0, abs=0.05)
    assert "goes 1 mm down" in finding.happens
    (ramp,) = entries(program, EIGHTH, "cured-epoxy")
    assert ramp.steepest_degrees == pytest.approx(40.0, abs=0.05)


def test_a_steep_end_of_a_gentle_ramp_is_told_with_its_line() -> None:
    program = "G1 Z0 F300|G1 X77 Z-1 F1200|G1 X78.192 Z-2"
    finding = one(judged(program, EIGHTH, "cured-epoxy"), "steep-ramp")
    assert finding.line == 7
    assert "From line 8 on" in finding.happens


def test_a_gentle_ramp_is_left_alone() -> None:
    assert not found(judged("G1 Z0 F300|G1 X78.192 Z-1.995 F1200", EIGHTH, "cured-epoxy"), *ENTRIES)


@pytest.mark.parametrize(("x", "rule"), [(22.9, "straight-plunge"), (23.2, "steep-ramp")])
def test_from_45_degrees_on_it_is_a_plunge_whatever_follows(x: float, rule: str) -> None:
    checked = judged(f"G1 Z0 F300|G1 X{x} Z-3 F300|G1 X80 Z-3.5 F900", SIX, "cured-epoxy")
    told = names(checked) & {"straight-plunge", "steep-ramp"}
    assert told == {rule}
    kind = entries(f"G1 Z0 F300|G1 X{x} Z-3 F300|G1 X80 Z-3.5 F900")[0].kind
    assert kind == ("straight" if rule == "straight-plunge" else "ramp")


# the share of the disc


@pytest.mark.parametrize(("beside", "grade"), [(0.05, None), (0.15, None), (2.0, "consider"), (5.0, "change")])
def test_a_plunge_beside_a_slot_counts_by_the_share_of_the_disc(beside: float, grade: str | None) -> None:
    slot = "G1 X60 Z-5 F600|G1 X20|G1 X60|G0 Z5"
    checked = judged(f"{slot}|G0 X40 Y{20 + beside}|G1 Z-5 F1200|G1 X50")
    assert [finding.grade for finding in found(checked, "plunge-too-fast")] == ([grade] if grade else [])


def test_a_ball_beside_its_own_groove_goes_into_nothing() -> None:
    checked = judged("G0 Z2|G1 Z0 F400|G1 X60 Z-3 F1200|G1 X20|G1 X60|G0 Z2|G0 X40 Y20.005|G1 Z-3 F1200|G1 X50",
                     "1: ball 6mm 2fl", stock="120 x 60 x 18 mm at 0 0")  # fmt: skip
    assert not [finding for finding in found(checked, *ENTRIES) if finding.line > 11]


def test_a_v_rides_down_into_corners() -> None:
    checked = judged("G0 Z2|G1 Z-2 F100|G1 X40 F500|G1 X40.2 Y20.2 Z-2.7|G1 X40.4 Y20.4 Z-3.7|G1 X40 Y20 Z-2|G1 Y40",
                     "1: v 3mm 15deg 1fl", "walnut", "120 x 60 x 18 mm at 0 0")  # fmt: skip
    assert not [finding for finding in found(checked, *ENTRIES) if finding.line > 7]


# rapids


@pytest.mark.parametrize(("beside", "grades"), [(0.1, []), (1.0, ["halt"])])
def test_a_rapid_down_beside_a_slot_counts_by_the_share_of_the_disc(beside: float, grades: list[str]) -> None:
    checked = judged(f"G0 Z2|G1 Z0 F400|G1 X60 Z-4 F1200|G1 X20|G1 X60|G0 Z2|G0 X40 Y{20 + beside}|G0 Z-4|G1 X50 F1200")
    assert [finding.grade for finding in found(checked, "rapid-through-stock")] == grades


# depth and width of one place


SLOTS = "G0 Z2|G1 Z0 F400|" + "|".join(f"G1 X80 Z-{z} F1200|G1 X20" for z in (3, 6, 9, 12, 15, 17.5))


@pytest.mark.parametrize("aside", [0, 0.05, 0.2, 0.5])
def test_a_thin_floor_and_a_thin_wall_are_no_deep_slot(aside: float) -> None:
    checked = judged(f"{SLOTS}|G1 Z-18 F300|G1 X45 Y{20 + aside} F1200|G1 X80", stock="120 x 80 x 18 mm at 0 0")
    assert not found(checked, "full-width-too-deep", "too-deep")


def test_a_deep_slot_is_told_with_its_depth() -> None:
    checked = judged("G1 Z-10 F200|G1 X60 F600", stock="120 x 80 x 18 mm at 0 0")
    finding = one(checked, "full-width-too-deep")
    assert finding.found is not None
    assert finding.found.value == pytest.approx(10.0, abs=0.1)


def test_a_rising_way_out_is_no_deeper_than_what_stands() -> None:
    laps = "|".join(
        f"G0 X20|G1 Z-{k * 3.1:g} F800|"
        f"G1 X35 Z-{(k + 1) * 3.1:g}|G1 X20|G1 X60 F1200|G2 X68 Z{8 - (k + 1) * 3.1:g} I0 K8|"
        "G0 Z2"
        for k in range(3)
    )
    text = (HEAD + f"G0 Z2|G18|{laps}|G17|G0 Z20|M5|M30").replace("|", "\n").encode()
    options = Options(PLY, ("1: flat 3.175mm 2fl",), "120 x 60 x 18 mm at 0 0", None, None)
    facts = tool_facts(trace(text, "try.nc", options))[0]
    assert facts.row.ap_max_mm == pytest.approx(3.1, rel=0.04)
