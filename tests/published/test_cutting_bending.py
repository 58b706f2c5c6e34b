"""Bending of tools against outside numbers, named beside each check."""

from __future__ import annotations

import numpy as np
import pytest

from gclint.columns import Column
from gclint.cutting import mechanics as m
from gclint.knowledge.numbers import model_number
from gclint.tables.setup import Tool

CARBIDE, HSS = 600e3, 200e3


def plain(length: float, d: float, E: float) -> m.Beam:
    return m.Beam((m.Section(0.0, length, d),), E)


@pytest.mark.parametrize(
    ("newton", "length", "diameter", "share", "E", "micrometre"),
    [
        (10, 20, 3.175, 0.8, CARBIDE, 21.8), (10, 20, 3.175, 1.0, CARBIDE, 8.9), (10, 20, 3.175, 0.7, CARBIDE, 37.1),
        (50, 30, 6.0, 0.8, CARBIDE, 28.8), (50, 30, 6.0, 1.0, CARBIDE, 11.8), (50, 30, 6.0, 0.8, HSS, 86.3),
    ],
)  # fmt: skip
def test_tip_deflection(
    newton: float, length: float, diameter: float, share: float, E: float, micrometre: float
) -> None:
    """F L^3 / (3 E pi De^4 / 64), reckoned (beam theory of Euler and Bernoulli). De / D about 0.80: Kops and Vo,
    Determination of the Equivalent Diameter of an End Mill Based on its Compliance, CIRP Annals 39 (1), 1990, abstract.
    """
    bend = newton * float(plain(length, share * diameter, E).bend_per_newton())
    assert bend * 1000 == pytest.approx(micrometre, abs=0.06)


def test_flutes_and_scaling() -> None:
    """Computed: (1 / 0.8)^4 = 2.441, (1 / 0.7)^4 = 4.165; twice as long x 8, twice as thick / 16."""
    base = float(plain(20.0, 6.0, CARBIDE).bend_per_newton())
    assert float(plain(20.0, 0.8 * 6, CARBIDE).bend_per_newton()) / base == pytest.approx(2.441, abs=0.001)
    assert float(plain(20.0, 0.7 * 6, CARBIDE).bend_per_newton()) / base == pytest.approx(4.165, abs=0.001)
    assert float(plain(40.0, 6.0, CARBIDE).bend_per_newton()) / base == pytest.approx(8.0)
    assert float(plain(20.0, 12.0, CARBIDE).bend_per_newton()) / base == pytest.approx(1 / 16)


def test_shank_and_flutes() -> None:
    """F / (3 E) ((L^3 - Lf^3) / I1 + Lf^3 / I2): 50 N, L 30, flutes 15 at 0.8 D, D 6, E 600 GPa: 13.9 um."""
    tool = Tool(1, "flat", 6.0, flutes=2, flute_length=15.0, stickout=30.0, shank=6.0, made_of="carbide")
    beam = m.beam_of(tool)
    assert beam is not None
    assert model_number("carbide_modulus") == pytest.approx(CARBIDE)
    assert model_number("equivalent_diameter") == pytest.approx(0.8)
    assert 50 * float(beam.bend_per_newton()) * 1000 == pytest.approx(13.9, abs=0.06)


@pytest.mark.parametrize("at", [0.0, 1.5, 6.0])
def test_a_stepped_cantilever_against_the_differential_equation(at: float) -> None:
    """E I y'' = M integrated twice along the bar from the nut down: flutes, neck and shank of three thicknesses."""
    beam = m.Beam((m.Section(0, 8, 2.4), m.Section(8, 18, 2.9), m.Section(18, 35, 6.0)), CARBIDE)

    s = np.linspace(0.0, 35.0, 350_001)  # from the nut down
    x = 35.0 - s
    d = np.where(x <= 8, 2.4, np.where(x <= 18, 2.9, 6.0))
    bent = _summed(_summed(np.maximum(x - at, 0.0) / (CARBIDE * np.pi * d**4 / 64), s), s)
    assert float(beam.bend_per_newton(at)) == pytest.approx(bent[-1], rel=1e-4)


def _summed(values: Column, at: Column) -> Column:
    """The running integral by the trapezium rule."""
    return np.concatenate(([0.0], np.cumsum((values[1:] + values[:-1]) / 2 * np.diff(at))))


def test_least_chip() -> None:
    """Int J Adv Manuf Technol 97, 3119-3128, 2018 (abstract): 0.14 to 0.43 of the edge radius; 5 and 10 um computed."""
    assert m.least_chip(0.005) == pytest.approx((0.0007, 0.00215))
    assert m.least_chip(0.010) == pytest.approx((0.0014, 0.0043))
