"""Cutting force and power against outside numbers, named beside each check."""

from __future__ import annotations

import pytest

from gclint.cutting import formulas as f
from gclint.cutting import mechanics as m


@pytest.mark.parametrize(
    ("kc11", "exponent", "h", "kc"),
    [
        (1700, 0.25, 0.1, 3023), (1700, 0.25, 0.3, 2297), (700, 0.25, 0.05, 1480), (700, 0.25, 0.1, 1245),
        (900, 0.2, 1.0, 900),
    ],
)  # fmt: skip
def test_specific_force(kc11: float, exponent: float, h: float, kc: float) -> None:
    """From memory: the power law kc = kc1.1 h^-mc; it gives kc1.1 at h = 1 mm."""
    assert float(m.specific_force(kc11, exponent, h)) == pytest.approx(kc, abs=0.6)


def test_the_whole_example() -> None:
    """Computed from the law with kc1.1 700, mc 0.25: D 6, two teeth, 18,000 rev/min, fz 0.04, ap 3, a slot."""
    vf = f.feed_for(0.04, 18000.0, 2)
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


def test_textbook_power() -> None:
    """Fundamentals of Machining Processes, 2nd ed., 2013, p. 189: 30 wide, 4 deep, 120 mm/min, 1000 N/mm2: 0.24 kW."""
    assert float(m.cutting_power(4.0 * 30.0, 120.0, 1000.0)) == pytest.approx(240.0)
