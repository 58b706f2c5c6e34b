"""Cutting force and power against the trade's formulas: from memory or common practice, no source."""

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


def test_power_of_a_face_mill() -> None:
    """An example without a source; reckoned: vc 80, D 250, z 12, vf 280, ap 2, ae 80, kc 1800: 1.68 kW at 0.8."""
    n = f.speed_for(80.0, 250.0)
    assert n == pytest.approx(101.86, abs=0.01)
    assert f.feed_per_tooth(280.0, n, 12) == pytest.approx(0.229, abs=0.001)
    assert float(m.cutting_power(2.0 * 80.0, 280.0, 1800.0)) / 0.8 == pytest.approx(1680.0, abs=1)
