"""Windows of a card, read at a tool's diameter."""

from __future__ import annotations

from pathlib import Path

import pytest
from msgspec.structs import replace

from gclint.cards.material import material, material_from
from gclint.cutting.windows import edge_window, floors_for, windows_for
from gclint.shipped import folder
from gclint.tables.setup import Tool, Window

OWN = Window(0.02, 0.05, "mm", "measured", "test cuts")


def low_high(window: Window | None) -> tuple[float | None, float | None]:
    assert window is not None
    return window.low, window.high


def test_between_two_diameters_the_limits_lie_on_a_straight_line() -> None:
    window = windows_for(material("beech"), Tool(1, "flat", 4.5875)).chip["side"]  # half way from 3.175 to 6
    assert low_high(window) == pytest.approx((0.024, 0.10))
    assert (window.standing, window.unit) == ("practice", "mm")


@pytest.mark.parametrize(
    ("diameter", "known"), [(1.0, True), (12.7, True), (0.999, False), (12.71, False), (0.8, False)]
)
def test_nothing_is_extrapolated(diameter: float, known: bool) -> None:
    assert bool(windows_for(material("beech"), Tool(1, "flat", diameter)).chip) == known


def test_a_finishing_cut_has_its_own_floor() -> None:
    chip = windows_for(material("beech"), Tool(1, "flat", 6.0)).chip
    assert low_high(chip["finish"]) == pytest.approx((0.25 * 0.030, 0.13))


@pytest.mark.parametrize("shape", ["drill", "v", "burr", "drag"])
def test_no_milling_window_for_what_is_no_mill(shape: str) -> None:
    assert set(windows_for(material("beech"), Tool(1, shape, 6.0)).chip) == ({"drill"} if shape == "drill" else set())


def test_a_card_may_give_a_window_to_one_operation(tmp_path: Path) -> None:
    text = (folder() / "materials" / "beech.toml").read_text(encoding="utf-8")
    row = '{ diameter = "6 mm", low = "0.03 mm", high = "0.08 mm", standing = "memory", source = "invented" }'
    own = f"slot = [{row}]\n"
    path = tmp_path / "own.toml"
    path.write_text(text.replace("drill = [", f"{own}drill = [", 1), encoding="utf-8")
    chip = windows_for(material_from(path), Tool(1, "flat", 6.0)).chip
    assert low_high(chip["slot"]) == pytest.approx((0.03, 0.08))
    assert low_high(chip["side"]) == pytest.approx((0.030, 0.13))
    assert "drill" not in chip
    drill = windows_for(material_from(path), Tool(1, "drill", 6.0)).chip["drill"]
    assert low_high(drill) == pytest.approx((0.036, 0.24))


def test_the_shops_own_windows_win() -> None:
    chip = windows_for(material("beech"), Tool(1, "flat", 6.0), {"": OWN}).chip
    assert low_high(chip["slot"]) == pytest.approx(low_high(OWN))
    assert low_high(chip["finish"]) == pytest.approx((0.005, 0.05))
    chip = windows_for(material("beech"), Tool(1, "flat", 6.0), {"slot": OWN}).chip
    assert low_high(chip["slot"]) == pytest.approx(low_high(OWN))
    assert (chip["slot"].standing, chip["side"].standing) == ("measured", "practice")
    assert chip["slot"].source == f"{OWN.source}; the material's card has 0.03 to 0.13 mm"
    assert windows_for(material("beech"), Tool(1, "flat", 0.5), {"": OWN}).chip["side"] is OWN


def test_where_own_cuts_ended_without_a_fault_a_wider_card_holds() -> None:
    tool = Tool(1, "flat", 6.0)
    own = Window(0.04, 0.1, "mm", "measured", "ours", open_low=True, open_high=True)
    assert low_high(windows_for(material("beech"), tool, {"slot": own}).chip["slot"]) == pytest.approx((0.03, 0.13))
    wide = Window(0.02, 0.2, "mm", "measured", "ours", open_low=True, open_high=True)
    assert low_high(windows_for(material("beech"), tool, {"slot": wide}).chip["slot"]) == pytest.approx((0.02, 0.2))


def test_own_edge_speed_wins_and_needs_no_card() -> None:
    own, tool = Window(60.0, 128.0, "m/min", "measured", "ours"), Tool(1, "flat", 3.175)
    edge = windows_for(material("cured-epoxy"), tool, {"edge": own}).edge_speed
    assert edge is not None
    assert (edge.high, edge.standing) == (pytest.approx(128.0), "measured")
    assert "60 to 130 m/min" in edge.source
    assert windows_for(None, tool, {"edge": own}).edge_speed is own
    assert "edge" not in windows_for(material("cured-epoxy"), tool, {"edge": own}).chip


def test_a_rising_floor_holds_but_where_the_shop_has_its_own() -> None:
    tool, own = Tool(1, "flat", 3.175), Window(0.04, 0.1, "mm", "measured", "ours")
    epoxy = material("cured-epoxy")
    for measured, holds in ((None, True), ({"slot": own}, False), ({"edge": own}, True)):
        (floor,) = floors_for(epoxy, tool, measured)
        assert ("slot" in floor.operations) == holds
        assert "side" in floor.operations
    assert floors_for(epoxy, tool, {"": own}) == ()
    rising = replace(own, floor=((85.0, 0.035), (120.0, 0.045)))
    first, second = floors_for(epoxy, tool, {"slot": rising})
    assert (first.edge_speed, first.low, first.operations) == ((85.0, 120.0), (0.035, 0.045), ("slot",))
    assert "slot" not in second.operations


def test_lengths_scale_with_the_diameter() -> None:
    windows = windows_for(material("beech"), Tool(1, "flat", 6.0))
    assert low_high(windows.depth_slot) == (None, pytest.approx(6.0))
    assert low_high(windows.depth_side) == (None, pytest.approx(12.0))
    assert low_high(windows.plunge_depth) == (None, pytest.approx(3.0))
    assert low_high(windows.ramp_limit) == (None, pytest.approx(20.0))


def test_without_a_material_nothing_is_known() -> None:
    windows = windows_for(None, Tool(1, "flat", 6.0))
    assert (windows.chip, windows.edge_speed, windows.plunge) == ({}, None, None)


def test_edge_speed() -> None:
    assert edge_window(material("beech"), 6.0) is None
    assert low_high(edge_window(material("brass"), 6.0)) == (None, pytest.approx(300.0))
    assert low_high(edge_window(material("cured-epoxy"), 3.175)) == pytest.approx((60.0, 130.0))
    assert edge_window(material("cured-epoxy"), 20.0) is None


def test_the_rising_floor_is_only_for_its_diameter() -> None:
    epoxy = material("cured-epoxy")
    assert len(floors_for(epoxy, Tool(1, "flat", 3.175))) == 1
    assert floors_for(epoxy, Tool(1, "flat", 6.0)) == ()
    assert floors_for(epoxy, Tool(1, "flat", 3.175), {"": OWN}) == ()
    assert floors_for(material("beech"), Tool(1, "flat", 3.175)) == ()


def test_tooling_board_knows_no_lower_limit() -> None:
    assert windows_for(material("tooling-board"), Tool(1, "flat", 6.0)).chip["side"].low is None
