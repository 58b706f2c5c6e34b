"""What a path does to the cut: corners, openings, pecks, walls beside slots, dwells. Expected values are geometry."""

from __future__ import annotations

import math

import numpy as np
import pytest

from gclint.check import check, trace
from gclint.facts import path as facts_path
from gclint.facts.context import Context
from gclint.facts.of_rules.down_cut_packs_slot import slot_walls
from gclint.facts.of_rules.inside_corner import angle_before, angle_peak
from gclint.facts.registry import View
from gclint.setup.declare import Options
from tests.judge.try_judge import found, tried

STOCK = "120 x 80 x 20 mm at 0 0"
HEAD = "G21 G90 G94 G17 G54\nM3 S16000\nG0 Z5\n"
SIX = "1: flat 6mm 2fl up-cut"


def context(program: str, tool: str = SIX, material: str | None = "aluminium-6061") -> Context:
    t = trace((HEAD + program + "G0 Z5\nM30\n").encode(), "try.nc", Options(material, (tool,), STOCK))
    return Context(t.program, t.motion, t.timing, t.engagement, t.cutting, t.setup)


def pocket(step: float, feed: float) -> str:
    """A pocket of 60 x 40 mm, 3 mm deep, opened by a ramp, cut in lanes, its walls gone round at the end."""
    lines = ["G0 X20 Y20", "G1 Z0.1 F500", "G1 X60 Z-1.5", "G1 X20 Z-3", f"G1 X80 F{feed:g}"]
    for n in range(1, int(40 / step)):
        lines += [f"G1 Y{20 + n * step:.3f}", f"G1 X{20 if n % 2 else 80}"]
    return "\n".join([*lines, "G1 X80", "G1 Y20", "G1 X20", "G1 Y60", ""])


def told(step: float, feed: float) -> set[str]:
    checked = tried(HEAD + pocket(step, feed) + "G0 Z5\nM30\n", SIX, material="aluminium-6061", stock=STOCK)
    return {f.rule for f in found(checked, "inside-corner", "opening-slot-too-fast", "chip-too-thick")}


@pytest.mark.parametrize(
    ("step", "feed", "expected"),
    [
        (2.7, 1000, set()),
        (2.7, 3000, {"chip-too-thick"}),  # every lane is too fast: neither the corner nor the opening is the cause
        (0.6, 1000, set()),
        (0.6, 3000, {"inside-corner", "opening-slot-too-fast"}),
        (0.6, 5500, {"chip-too-thick"}),
    ],
)
def test_a_pocket_is_told_the_cause(step: float, feed: float, expected: set[str]) -> None:
    assert told(step, feed) == expected


def test_the_peak_in_a_corner_is_that_of_both_walls() -> None:
    """A layer of 0.6 mm: arccos(1 - 2 ae / D) = 36.9 degrees, and 90 more in a square corner."""
    laps = "G0 X20 Y20\nG1 Z0.1 F500\nG1 X60 Z-1.5\nG1 X20 Z-3\nG1 X60 F900\nG1 Y50\nG1 X20\nG1 Y20\nG1 X60\nG1 Y35\n"
    c = context(laps + "G1 X60.6\nG1 Y50.6\nG1 X19.4\nG1 Y19.4\n")
    peak, before = angle_peak(c), angle_before(c)
    last = c.engagement.pieces.move >= len(c.motion) - 4
    along = math.degrees(math.acos(1 - 2 * 0.6 / 6))
    assert np.median(before[last & (before < 180)]) == pytest.approx(along, abs=2)
    assert peak[last & (facts_path.turn(c) > 45) & (before < 180)].max() == pytest.approx(along + 90, abs=6)


@pytest.mark.parametrize(
    ("way", "first", "later", "pecked"),
    [
        ("G1 Z-9 F100\n", 9.0, 0.0, False),
        ("G83 X20 Y20 Z-9 R1 Q3 F100\nG80\n", 3.0, 3.0, True),  # the first goes from R: 2 mm in solid, then 3 and more
        ("G1 Z-2 F100\nG0 Z1\nG0 Z-1.5\nG1 Z-6\nG0 Z1\nG0 Z-5.5\nG1 Z-7\n", 2.0, 4.0, True),
        ("G1 Z-2 F100\nG1 Z-4 F50\n", 4.0, 0.0, False),
    ],
)
def test_pecks(way: str, first: float, later: float, pecked: bool) -> None:
    c = context(f"G0 X20 Y20\nG0 Z1\n{way}", "1: flat 3mm 2fl", "beech")
    assert len(c.engagement.entries) == 1
    step = 2.0 if "G83" in way else first
    assert facts_path.first_peck(c)[0] == pytest.approx(step, abs=0.05)
    assert facts_path.next_peck(c)[0] == pytest.approx(later, abs=0.05)
    assert bool(facts_path.pecks(c)[0]) is pecked
    assert facts_path.bores(c)[0]


def test_a_plunge_before_a_cut_is_no_bore() -> None:
    c = context("G0 X20 Y20\nG1 Z-5 F100\nG1 X60 F900\n", material="beech")
    assert not facts_path.bores(c)[0]


def test_walls_beside_a_slot() -> None:
    slot = "G0 X-10 Y40\nG1 Z-5 F300\nG1 X130 F1500\nG1 Z-9 F300\nG1 X-10 F1500\n"
    walls = slot_walls(context(slot, "1: flat 6mm 2fl down-cut", "oak"))
    assert walls.max() == pytest.approx(9.0, abs=0.05)
    assert walls[walls > 0].min() == pytest.approx(5.0, abs=0.05)
    assert slot_walls(context(slot, SIX, "oak")).max() == pytest.approx(0.0)
    wider = slot + "G1 Y43 F1500\nG1 X130\n"
    assert slot_walls(context(wider, "1: flat 6mm 2fl down-cut", "oak")).max() == pytest.approx(0.0)


def test_a_dwell_in_the_air_is_none_in_material() -> None:
    c = context("G4 P3\nG0 X20 Y40\nG1 Z-3 F300\nG4 P1\nG1 X60 F900\nG0 Z5\nG4 P2\n", material="beech")
    view = View.of("dwells", c)
    assert view.value("seconds").tolist() == pytest.approx([3.0, 1.0, 2.0])
    assert [int(v) for v in view.value("in_cut")] == [0, 2, 0]


@pytest.mark.parametrize("wide", [22.5, 28.5, 30.0, 33.0, 38.5])
def test_the_last_cell_at_the_edge_of_a_blank_of_any_size_is_the_last(wide: float) -> None:
    """At some sizes cells x width / width is a little more than cells: a place in the outline lay beside the model."""
    rows = "".join(f"G1 X{40 if n % 2 == 0 else -10} F1500\nG1 Y{4 * n + 4}\n" for n in range(5))
    program = f"G21 G90 G94 G17 G54\nM3 S12000\nG0 Z5\nG0 X-10 Y0\nG0 Z-0.5\n{rows}G0 Z5\nM30\n"
    options = Options("cured-epoxy", ("1: flat 6mm 2fl up-cut",), f"{wide} x 20 x 20 mm at 0 0")
    rules = {finding.rule for finding in check(program.encode(), "edge.nc", options).findings}
    assert "internal-error" not in rules
    assert "up-cut-on-brittle-top" not in rules
