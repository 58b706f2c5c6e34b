"""The operating window against outside numbers, named beside each check."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from gclint.cards.material import material
from gclint.cutting.cut_limits import Bounds, Cut, window_of
from gclint.cutting.limits import Power, Ray, Speed
from gclint.tables.material import Sourced
from gclint.tables.setup import Controller, Hold, Machine, Setup, Spindle, Tool, Window

BOUNDS = Bounds(*(Sourced(value, "practice", "invented") for value in (0.05, 0.15, 1.0, 0.9)))
CARDS = Path(__file__).parents[2] / "rules" / "materials"


def setup_of(card: str, spindle: Spindle, band: tuple[float, float] | None = None) -> Setup:
    measured = {} if band is None else {1: {"": Window(*band, "mm", "published", "the book")}}
    return Setup(
        Machine(), spindle, Controller(), {}, material(card), None, None, None, Hold(), measured_windows=measured
    )


def test_textbook_slot_mill(tmp_path: Path) -> None:
    """El-Hofy, Fundamentals of Machining Processes, 2nd ed., p. 189: a slot 30 wide and 4 deep, z 8, fz 0.1, 150
    rev/min, 120 mm/min, 1000 N/mm2: 0.24 kW; with a motor of 0.267 kW at an efficiency of 0.9
    that is its greatest feed."""
    text = (CARDS / "brass.toml").read_text("utf-8")
    card = tmp_path / "book.toml"
    force = '[force]\nlow = "1000 N/mm^2"\nhigh = "1000 N/mm^2"\nstanding = "published"\nsource = "the book"\n'
    card.write_text(text[: text.index("[force]")] + force, "utf-8")
    spindle = Spindle("commanded", 100, 200, power=0.24e3 / 0.9)
    window = window_of(Cut("slot", 30.0, 4.0), Tool(1, "flat", 30.0, flutes=8), setup_of(str(card), spindle), BOUNDS)
    (power,) = (limit for limit in window.limits if isinstance(limit, Power))
    assert float(power.at(150.0)[0]) == pytest.approx(120, abs=0.1)


@pytest.mark.parametrize(("share", "factor"), [(0.10, 1.667), (0.05, 2.294), (0.25, 1.155), (0.5, 1.0), (1.0, 1.0)])
def test_radial_chip_thinning(share: float, factor: float) -> None:
    """Geometry: fz = h / sqrt(1 - (1 - 2 ae/D)^2) below half the diameter; the chip limits rise by that factor."""
    tool = Tool(1, "flat", 6.0, flutes=2)
    setup = setup_of("birch-plywood", Spindle("commanded", 8000, 24000), (0.035, 0.10))
    window = window_of(Cut("side", share * 6.0, 3.0), tool, setup, BOUNDS)
    slopes = {limit.name: float(limit.slope[0]) for limit in window.limits if isinstance(limit, Ray)}
    assert slopes["thinnest chip"] == pytest.approx(0.035 * 2 * factor, rel=1e-3)
    assert slopes["thickest chip"] == pytest.approx(0.10 * 2 * factor, rel=1e-3)


def test_the_fastest_edge_as_a_speed() -> None:
    """Computed: n = 1000 vc / (pi D); 339.3 m/min with 6 mm is 18,000 rev/min."""
    tool = Tool(1, "flat", 6.0, flutes=2)
    window = window_of(Cut("slot", 6.0, 3.0), tool, setup_of("cured-epoxy", Spindle()), BOUNDS)
    (fastest,) = (limit for limit in window.limits if isinstance(limit, Speed) and not limit.least)
    edge = {row.diameter: row.high for row in material("cured-epoxy").edge}[6.0]
    assert edge is not None
    assert float(np.ravel(fastest.speed)[0]) == pytest.approx(18000 * float(edge) / 339.292, rel=1e-4)
