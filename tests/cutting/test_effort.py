"""Force, power and bending of pieces of path, on tables made by hand."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from msgspec.structs import replace

from gclint.cards.material import material
from gclint.cutting import formulas, mechanics
from gclint.cutting.load import load
from gclint.tables.cutting import Cutting, Effort
from gclint.tables.motion import RAPID
from gclint.tables.setup import Machine, Spindle, Tool
from tests.cutting import tables

TOOL = Tool(1, "flat", 6.0, flutes=2, flute_length=20.0, stickout=30.0, shank=6.0, made_of="carbide")


def cut(tool: Tool, name: str = "beech", **columns: Any) -> Cutting:
    """Pieces 5 mm long; `section` gives the volume, else it is ae ap. F1000, 10,000 rev/min."""
    rows = max([1, *(np.size(value) for value in columns.values())])
    moves = {key: columns.pop(key) for key in ("kind", "feed", "speed") if key in columns}
    others = {key: columns.pop(key) for key in ("spindle", "machine") if key in columns}
    ae, ap = np.asarray(columns.get("ae", 1.0)), np.asarray(columns.get("ap", 2.0))
    columns.setdefault("removed", ae * ap * 5.0)
    motion = tables.motion(rows, **moves)
    setup = tables.setup(tool, material=material(name), **others)
    return load(motion, tables.timing(motion), tables.engagement(rows, **columns), setup)


def effort(tool: Tool, name: str = "beech", **columns: Any) -> Effort:
    return cut(tool, name, **columns).loads.effort


def test_power_is_the_volume_cut_by_the_range_of_the_card() -> None:
    made = effort(TOOL, ae=6.0, ap=3.0, angle=180.0)
    card = material("beech").force
    assert card is not None
    assert card.low is not None
    assert card.high is not None
    assert made.power_low == pytest.approx(6 * 3 * 1000 * float(card.low) / 60000)
    assert made.power_high == pytest.approx(6 * 3 * 1000 * float(card.high) / 60000)


def test_force_of_one_tooth_between_a_straight_and_a_slanting_edge() -> None:
    made = effort(TOOL, ae=6.0, ap=3.0, angle=180.0)
    straight = effort(replace(TOOL, helix="straight"), ae=6.0, ap=3.0, angle=180.0)
    card = material("beech").force
    assert card is not None
    assert card.high is not None
    assert card.low is not None
    assert made.force_high == pytest.approx(float(card.high) * 3.0 * 0.05)
    assert straight.force_high == pytest.approx(made.force_high)
    assert made.force_low < straight.force_low
    assert straight.force_mean == pytest.approx(float(card.low) * 3.0 * 0.05 / 2)  # z / 4 of a slot
    up_cut = effort(replace(TOOL, helix="up-cut"), ae=6.0, ap=3.0, angle=180.0)
    assert up_cut.force_low <= up_cut.force_high < straight.force_high


def test_the_section_that_is_cut_counts_not_the_box_around_it() -> None:
    """A ball's section is less than ae times ap; and the force comes from what each place of the rim takes off."""
    full, half = (effort(TOOL, ae=3.0, ap=2.0, removed=volume) for volume in (30.0, 15.0))
    assert half.power_low == pytest.approx(full.power_low / 2)
    engagement = tables.engagement(1, ae=3.0, ap=2.0)
    engagement.contact.depth[:] //= 2
    motion, setup = tables.motion(1), tables.setup(replace(TOOL, helix="straight"), material=material("beech"))
    shallow = load(motion, tables.timing(motion), engagement, setup).loads.effort
    deep = effort(replace(TOOL, helix="straight"), ae=3.0, ap=2.0)
    assert shallow.force_high == pytest.approx(deep.force_high / 2, rel=1e-3)
    assert shallow.force_mean == pytest.approx(deep.force_mean / 2, rel=1e-3)


@pytest.mark.parametrize("ae", [0.3, 1.0, 3.0, 4.5, 6.0])
@pytest.mark.parametrize("flutes", [1, 2, 4])
def test_force_of_a_side_cut_is_that_of_its_closed_form(ae: float, flutes: int) -> None:
    """Geometry: h = fz sin(phi) along the arc of a side cut; a straight edge at its thickest, the mean of a turn."""
    made = effort(replace(TOOL, helix="straight", flutes=flutes), ae=ae, ap=2.0)
    card = material("beech").force
    assert card is not None
    assert card.low is not None
    fz, phi = 1000 / (10000 * flutes), float(formulas.engagement_angle(ae, 6.0))
    one = float(card.low) * 2.0 * fz * float(mechanics.share_of_edge(phi))
    assert made.force_low[0] >= one * 0.995
    if flutes < 4 or phi <= 90:
        assert made.force_low[0] == pytest.approx(one, rel=0.02)
    mean = float(card.low) * 2.0 * fz * float(mechanics.share_of_sum(phi, flutes))
    assert made.force_mean[0] == pytest.approx(mean, rel=0.12 if ae < 1 else 0.03)


def test_teeth_in_the_cut_together_are_added() -> None:
    """Eight teeth in a slot: one dead ahead, two at 45 degrees on either side, added as vectors."""
    made = effort(replace(TOOL, helix="straight", flutes=8), ae=6.0, ap=2.0)
    card = material("beech").force
    assert card is not None
    assert card.low is not None
    alone = float(card.low) * 2.0 * 1000 / (10000 * 8)
    angles = np.radians(np.array([-90, -45, 0, 45, 90]))
    together = np.hypot((np.cos(angles) * np.sin(angles)).sum(), (np.cos(angles) ** 2).sum())
    assert made.force_low[0] == pytest.approx(alone * together, rel=0.02)


def test_a_tool_that_runs_out_is_loaded_by_its_thickest_tooth() -> None:
    true, out = (effort(replace(TOOL, helix="straight", runout=r), ae=6.0, ap=2.0) for r in (None, 0.02))
    assert out.force_high == pytest.approx(true.force_high * (0.05 + 0.02) / 0.05, rel=1e-3)
    assert out.force_mean == pytest.approx(true.force_mean)


def test_aluminium_by_the_power_law() -> None:
    made = effort(TOOL, "aluminium-6061", ae=6.0, ap=3.0, angle=180.0)
    hm = 0.05 * 2 / np.pi
    card = material("aluminium-6061").force
    assert card is not None
    assert card.low is not None
    assert card.high is not None
    assert card.exponent is not None
    for power, kc11 in ((made.power_low, card.low), (made.power_high, card.high)):
        kc = float(mechanics.specific_force(float(kc11), card.exponent, hm))
        assert power == pytest.approx(6 * 3 * 1000 * kc / 60000, rel=1e-5)


def test_a_stiff_machine_bends_least() -> None:
    alone, soft = effort(TOOL, ae=3.0), effort(TOOL, ae=3.0, machine=Machine(stiffness=300.0))
    assert soft.bend(high=True) - alone.bend(high=True) == pytest.approx(alone.force_high / 300.0, rel=1e-4)
    assert np.all(alone.bend(high=False) <= alone.bend(high=True))
    assert np.all(alone.stress(high=False) <= alone.stress(high=True))


def test_plunges_bend_nothing_and_take_power() -> None:
    made = effort(TOOL, ae=6.0, ap=2.0, drop=2.0, travel=0.0, length=2.0, removed=np.pi * 9 * 2)
    assert np.isnan(made.force_high).all()
    assert made.power_high > 0


def test_rapids_and_dragged_tools_have_no_figures() -> None:
    made = effort(TOOL, ae=3.0, kind=RAPID)
    assert np.isnan(made.power_low).all()
    assert np.isnan(effort(Tool(1, "drag", 1.0), ae=1.0).power_low).all()


def test_what_is_missing_is_named() -> None:
    made = cut(Tool(1, "flat", 6.0, flutes=2))
    assert ("tool-bends", "`stickout`, `flute_length`, `shank`, `made_of` of tool 1 in shop.toml", 1) in made.not_judged
    assert np.isnan(made.loads.effort.bend(high=True)).all()
    assert np.isfinite(made.loads.effort.force_high).all()
    strange = cut(replace(TOOL, made_of="cheese")).not_judged
    assert any('"carbide", "hss"' in needs for _, needs, _ in strange)


def test_what_is_taken_as_true_is_told() -> None:
    made = cut(TOOL, spindle=Spindle(power=700.0))
    assert {"power of the spindle", "stiffness of the machine"} <= {taken.what for taken in made.assumed}
    told = cut(TOOL, spindle=Spindle(power_curve=((8000.0, 700.0),)), machine=Machine(stiffness=500.0)).assumed
    assert not {"power of the spindle", "stiffness of the machine"} & {taken.what for taken in told}


def test_force_grows_with_depth_width_and_feed() -> None:
    rises = np.linspace(0.1, 6.0, 60)
    for columns in ({"ap": rises}, {"ae": rises}, {"feed": rises * 500}):
        made = effort(TOOL, **columns)
        for column in (made.force_high, made.power_low, made.bend(high=True), made.stress(high=True)):
            assert np.all(np.diff(column) >= -1e-6 * column.max())
            assert column[-1] > column[0]


def test_zeros_and_unknowns_make_no_noise() -> None:
    made = effort(TOOL, "brass", ae=[0.0, np.nan, 1.0], ap=[1.0, 0.0, np.nan], length=[0.0, 1.0, 1.0], removed=0.0)
    assert not np.isinf(made.force_high).any()
    assert not np.isinf(made.bend(high=True)).any()
    assert float(formulas.engagement_angle(6.0, 6.0)) == pytest.approx(180.0)


def test_huge_and_tiny_values_make_no_noise() -> None:
    huge = effort(TOOL, "brass", ae=6.0, ap=[1e-30, 1e30], removed=[1e-30, 3e38], length=[1e-30, 1e-9], feed=1e30)
    assert len(huge.force_high) == 2
