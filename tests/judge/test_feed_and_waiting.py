"""What limited acceleration does to the chip, and what it adds to the wait for the spindle, from program to finding."""

from __future__ import annotations

from pathlib import Path

import pytest

from gclint.check import check
from gclint.setup.declare import Options
from gclint.tables.finding import Checked

BAND = """name = "band"
title = "an invented acrylic"
kind = "plastic"
melts = true
chip = [ { diameter = "3 mm", low = "0.03 mm", high = "0.08 mm", standing = "practice", source = "invented" } ]
edge = []
[seen]
thin = "melted swarf"
thick = "chips"
fast = "melts"
[thin]
by = { value = 0.1, standing = "practice", source = "invented" }
finish_share = { value = 0.25, standing = "practice", source = "invented" }
"""
MACHINE = """[machine]
acceleration = { x = "200 mm/s^2", y = "200 mm/s^2", z = "200 mm/s^2" }
corner_deviation = "0.02 mm"
[spindle]
range = [6000, 24000]
[[tool]]
number = 1
shape = "flat"
diameter = "3 mm"
flutes = 2
"""
STOPS = """[machine]
controller = "shop-3-axis"
[spindle]
started = "program"
spin_up = "8 s"
[[tool]]
number = 1
shape = "flat"
diameter = "6 mm"
flutes = 2
"""
HEAD = "G21 G90 G94 G17 G54\nM3 S18000\nG4 P9\nG0 Z5\nG0 X10 Y40\nG1 Z-1 F300\n"


def judged(tmp_path: Path, program: str, shop: str, material: str) -> Checked:
    (tmp_path / "band.toml").write_text(BAND)
    (tmp_path / "shop.toml").write_text(shop)
    options = Options(material=material, shop=str(tmp_path / "shop.toml"), stock="120 x 80 x 18 mm at 0 0")
    return check(program.encode(), "quay.nc", options, str(tmp_path / "quay.nc"))


def wavy(arcs: int, straight: float, feed: int) -> str:
    """Half circles of 0.8 mm radius, then a straight cut."""
    half = "".join(f"G{2 + n % 2} X{10 + 1.6 * (n + 1):g} Y40 I0.8 J0\n" for n in range(arcs))
    return HEAD + f"F{feed}\n{half}G1 X{10 + 1.6 * arcs + straight:g}\nG0 Z5\nM5\nM30\n"


def rules(checked: Checked) -> list[str]:
    return [f.rule for f in checked.findings if f.rule.startswith(("feed-", "chip-", "no-spin", "spindle-"))]


def test_most_of_the_way_in_small_arcs(tmp_path: Path) -> None:
    """62 % arcs of 0.8 mm radius: sqrt(200 x 0.8) = 12.65 mm/s = 759 mm/min; 759 / (18000 x 2) = 0.0211 mm."""
    checked = judged(tmp_path, wavy(26, 40.0, 2400), MACHINE, str(tmp_path / "band.toml"))
    assert rules(checked) == ["feed-never-reached"]
    found = next(f for f in checked.findings if f.rule == "feed-never-reached")
    assert found.tool == 1
    assert found.found is not None
    assert found.found.value == pytest.approx(0.0211, abs=1e-4)
    assert "759 mm/min" in found.happens
    assert "62 %" in found.happens
    assert {(word.word, word.to) for word in found.change.set} == {("S", 10000), ("F", 1200)}


def test_a_few_small_arcs(tmp_path: Path) -> None:
    checked = judged(tmp_path, wavy(1, 90.0, 2400), MACHINE, str(tmp_path / "band.toml"))
    assert rules(checked) == []


def test_a_thin_chip_stays_a_thin_chip(tmp_path: Path) -> None:
    """Where the set feed itself is too low, the arcs are not the cause."""
    checked = judged(tmp_path, wavy(26, 40.0, 700), MACHINE, str(tmp_path / "band.toml"))
    assert rules(checked) == ["chip-too-thin"]


@pytest.mark.parametrize(("restart", "found"), [("", "spindle-not-running"), ("M3 S16000\n", "no-spin-up-time")])
def test_cut_on_after_a_stop_that_halts_the_spindle(tmp_path: Path, restart: str, found: str) -> None:
    """The rapid rates are not declared, but 60 mm of travel cannot take 8 s on a machine that cuts at 1500 mm/min."""
    text = HEAD + f"G1 X60 F1500\nG0 Z5\nM0\n{restart}G0 X10 Y60\nG1 Z-1 F1500\nX60\nG0 Z5\nM5\nM30\n"
    assert rules(judged(tmp_path, text, STOPS, "birch-plywood")) == [found]


def test_a_long_wait_and_one_that_nobody_can_tell(tmp_path: Path) -> None:
    text = HEAD + "G1 X60 F1500\nG0 Z5\nM0\nM3 S16000\n{}G0 X10 Y60\nG1 Z-1 F150\nX60 F1500\nG0 Z5\nM5\nM30\n"
    assert rules(judged(tmp_path, text.format("G4 P8\n"), STOPS, "birch-plywood")) == []
    slow = text.replace("F1500", "F150").replace("F300", "F150").format("")
    checked = judged(tmp_path, slow, STOPS, "birch-plywood")
    assert "no-spin-up-time" not in rules(checked)
    assert any(each.rule == "no-spin-up-time" for each in checked.not_judged)


def waiting_for_a_start(tmp_path: Path, rates: str) -> Checked:
    shop = tmp_path / "shop.toml"
    shop.write_text(
        f'[machine]\n{rates}\n[spindle]\nkind = "commanded"\nrange = [6000, 24000]\nstarted = "program"\n'
        'spin_up = "3 s"\n[[tool]]\nnumber = 1\nshape = "flat"\ndiameter = "6 mm"\nflutes = 2\n'
    )
    program = b"G21 G90 G94 G17 G54\nM3 S16000\nG0 Z5\nG0 X10 Y40\nG1 Z-1 F600\nG1 X50 F1500\nG0 Z5\nM30\n"
    return check(program, "a.nc", Options(shop=str(shop), stock="120 x 80 x 18 mm at 0 0"))


def test_the_wait_is_not_judged_without_the_rapid_rates(tmp_path: Path) -> None:
    made = waiting_for_a_start(tmp_path, "")
    [blind] = [each for each in made.not_judged if each.rule == "no-spin-up-time"]
    assert "`[machine] rapid`" in blind.needs


@pytest.mark.parametrize("travel", ["", 'travel = { x = "600 mm", y = "400 mm", z = "90 mm" }'])
def test_a_way_from_an_unknown_place_is_no_sure_wait(travel: str, tmp_path: Path) -> None:
    """The tool may start just above the work: whether the way takes 3 s is for the person to say."""
    rapid = 'rapid = { x = "6000 mm/min", y = "6000 mm/min", z = "3000 mm/min" }\n'
    made = waiting_for_a_start(tmp_path, rapid + travel)
    [told] = [each for each in made.findings if each.rule == "no-spin-up-time"]
    assert told.grade == "consider"
    assert "from a place that is not known" in told.happens
    assert not [each for each in made.not_judged if each.rule == "no-spin-up-time"]
