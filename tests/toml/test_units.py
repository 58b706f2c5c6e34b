"""Quantities as people write them."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gclint.problem import Problem
from gclint.toml.units import KINDS, quantity
from tests.strategies import STEADY


@pytest.mark.parametrize(
    ("text", "kind", "value"),
    [
        ("600 mm", "length", 600.0),
        ("3.175mm", "length", 3.175),
        ("1/8 in", "length", 3.175),
        ("3 1/2 in", "length", 88.9),
        ("3-1/2 in", "length", 88.9),
        ('1/4"', "length", 6.35),
        ("2 inch", "length", 50.8),
        ("-10 mm", "length", -10.0),
        ("-1/2 in", "length", -12.7),
        (".5 cm", "length", 5.0),
        ("2 MM", "length", 2.0),
        ("5000 mm/min", "feed", 5000.0),
        ("100 in/min", "feed", 2540.0),
        ("60 ipm", "feed", 1524.0),
        ("10 mm/s", "feed", 600.0),
        ("200 mm/s^2", "acceleration", 200.0),
        ("10 in/s^2", "acceleration", 254.0),
        ("300 N/mm", "stiffness", 300.0),
        ("700 W", "power", 700.0),
        ("1.5 kW", "power", 1500.0),
        ("1 hp", "power", 745.69987),
        ("4 s", "time", 4.0),
        ("250 ms", "time", 0.25),
        ("60 deg", "angle", 60.0),
        ("9500 rpm", "speed", 9500.0),
        ("120 m/min", "edge_speed", 120.0),
        ("2 m/s", "edge_speed", 120.0),
    ],
)
def test_value_in_the_internal_unit(text: str, kind: str, value: float) -> None:
    assert quantity(text, kind, bare=kind == "speed") == pytest.approx(value)


def test_plain_numbers_only_where_they_are_allowed() -> None:
    assert quantity(9500, "speed", bare=True) == pytest.approx(9500.0)
    with pytest.raises(Problem, match=r'600 has no unit; write "600 mm" or "23\.6 in"'):
        quantity(600, "length")


@pytest.mark.parametrize(
    ("text", "kind", "says"),
    [
        ("600", "length", '"600" has no unit; write "600 mm" or "23.6 in"'),
        ("600 mm/min", "length", "but a length is wanted"),
        ("600 mm", "feed", 'nearest: "mm/s"'),
        ("fast", "feed", '"fast" is not a feed'),
        ("1/0 in", "length", "divides by zero"),
        ("3,175 mm", "length", "decimal comma"),
        ("", "length", "is not a length"),
        ("9" * 50 + " mm", "length", "no sensible number"),
        ("99999999999 mm", "length", "too large"),
        (True, "length", "got true or false"),
        (None, "length", "got nothing"),
        ([1], "length", "got a list"),
    ],
)
def test_what_is_wrong_is_said(text: object, kind: str, says: str) -> None:
    with pytest.raises(Problem) as caught:
        quantity(text, kind)
    assert says in str(caught.value)


@STEADY
@given(st.text(max_size=60), st.sampled_from(sorted(KINDS)), st.booleans())
def test_any_text_gives_a_finite_number_or_a_problem(text: str, kind: str, bare: bool) -> None:
    try:
        value = quantity(text, kind, bare)
    except Problem:
        return
    assert abs(value) < 1e13


@STEADY
@given(
    st.decimals(min_value=0, max_value=100000, places=3, allow_nan=False),
    st.sampled_from([(kind, unit) for kind, (_, _, units) in KINDS.items() for unit in units]),
)
def test_every_unit_is_read_back(number: object, kind_and_unit: tuple[str, str]) -> None:
    kind, unit = kind_and_unit
    factor = KINDS[kind][2][unit]
    for space in ("", " "):
        assert quantity(f"{number}{space}{unit}", kind) == pytest.approx(float(str(number)) * factor)
