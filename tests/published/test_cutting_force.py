"""Cutting force and power against outside numbers, named beside each check."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from gclint.check import trace
from gclint.cutting import formulas as f
from gclint.cutting import mechanics as m
from gclint.setup.declare import Options
from gclint.tables.cutting import OPERATION
from gclint.tables.motion import LINE
from gclint.toml.units import quantity


def test_the_whole_example() -> None:
    """Computed from the law with kc1.1 700, mc 0.25: D 6, two teeth, 18,000 rev/min, fz 0.04, ap 3, a slot."""
    vf = 0.04 * 18000.0 * 2
    assert vf == pytest.approx(1440.0)
    assert f.cutting_speed(6.0, 18000.0) == pytest.approx(339.3, abs=0.05)
    hm = float(f.chip_thickness_mean(0.04, 6.0, 6.0))
    assert hm == pytest.approx(0.02546, abs=1e-5)
    kc = float(m.specific_force(700.0, 0.25, hm))
    assert kc == pytest.approx(1752, abs=0.6)
    power = float(m.cutting_power(3.0 * 6.0, vf, kc))
    assert power == pytest.approx(757, abs=0.6)
    assert float(m.torque(power, 18000.0)) == pytest.approx(0.402, abs=0.001)


@pytest.mark.parametrize(("kc", "power"), [(32.0, 138.2), (37.6, 162.4)])
def test_particleboard(kc: float, power: float) -> None:
    """Cutting Forces in Peripheral Up-Milling of Particleboard, Materials 14, 2208, 2021 (abstract): mean specific
    force 32.0 and 37.6 N/mm2; here a 6 mm slot, 6 deep, at 7200 mm/min."""
    assert float(m.cutting_power(6.0 * 6.0, 7200.0, kc)) == pytest.approx(power, abs=0.1)


def test_textbook_slot_mill(tmp_path: Path) -> None:
    """El-Hofy, Fundamentals of Machining Processes, 2nd ed., p. 189: a slot 30 wide and 4 deep, 300 long (321 of
    travel), z 8, fz 0.1, 120 mm/min, 1000 N/mm2: 2.68 min, 150 rev/min, 14.13 m/min, 1019 N, 0.24 kW; motor 0.27 kW
    at 0.9.

    By the formulas, and by the whole chain from a program to the loads.
    """
    power = float(m.cutting_power(4.0 * 30.0, 120.0, 1000.0))
    assert power == pytest.approx(240.0)
    assert power / 0.9 == pytest.approx(267, abs=0.5)
    assert float(m.mean_force(power, f.cutting_speed(30.0, 150.0))) == pytest.approx(1019, abs=1)

    text = (Path(__file__).parents[2] / "rules" / "materials" / "brass.toml").read_text("utf-8")
    card = tmp_path / "book.toml"
    force = '[force]\nlow = "1000 N/mm^2"\nhigh = "1000 N/mm^2"\nstanding = "published"\nsource = "the book"\n'
    card.write_text(text[: text.index("[force]")] + force, "utf-8")
    program = b"G21 G90 G94 G17 G54\nM3 S150\nG0 Z5\nG0 X-18 Y50\nG0 Z-4\nG1 X303 F120\nG0 Z5\nM30\n"
    made = trace(program, "slot.nc", Options(str(card), ("1: flat 30mm 8fl",), "300 x 100 x 20 mm at 0 0"))
    cut = int(np.flatnonzero(made.motion.kind == LINE)[0])
    assert made.timing.seconds[cut] / 60 == pytest.approx(2.68, abs=0.006)
    loads = made.cutting.loads
    whole = np.flatnonzero((loads.operation == OPERATION["slot"]) & (made.engagement.pieces.length > 1.0))[3:-3]
    assert loads.edge_speed[whole] == pytest.approx(14.137, abs=0.002)
    assert loads.fz[whole] == pytest.approx(0.1)
    assert loads.effort.power_low[whole] == pytest.approx(240, rel=0.02)
    assert loads.effort.power_high[whole] == pytest.approx(240, rel=0.02)
    assert m.mean_force(loads.effort.power_high[whole], loads.edge_speed[whole]) == pytest.approx(1019, rel=0.02)


@pytest.mark.parametrize(("hp", "joule"), [(0.63, 1.72), (1.00, 2.73), (1.14, 3.11), (0.41, 1.12)])
def test_power_constants_of_a_handbook(hp: float, joule: float) -> None:
    """Machinery's Handbook, 31st ed., 2020, p. 1147, table 1b: hp/(in3/min) and kW/(cm3/s), which are J/mm3."""
    assert quantity(f"{hp} hp min/in^3", "pressure") / 1000 == pytest.approx(joule, abs=0.006)
    assert quantity(f"{joule} J/mm^3", "pressure") == pytest.approx(1000 * joule)
