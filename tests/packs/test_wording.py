"""Numbers in sentences."""

from __future__ import annotations

import pytest

from gclint.packs.wording import amount, in_inches, one_unit


@pytest.mark.parametrize(
    ("said", "shorter"),
    [
        ("with 3 N to 8.5 N aside", "with 3 to 8.5 N aside"),
        ("takes 86 N to 86 N.", "takes 86 N."),
        ("0.13 mm to 0.131 mm", "0.13 to 0.131 mm"),
        ("37 N/mm^2 to 117 N/mm^2; near", "37 to 117 N/mm^2; near"),
        ("0.1 N m to 0.2 N m", "0.1 to 0.2 N m"),
        ("F300 mm/min to F400 mm/min", "F300 mm/min to F400 mm/min"),
        ("from 3 mm to 2 in", "from 3 mm to 2 in"),
        ("lower it from 1500 mm/min to 900 mm/min2", "lower it from 1500 mm/min to 900 mm/min2"),
        ("an unknown amount to 3 mm", "an unknown amount to 3 mm"),
        ("a blank of 300 mm x 200 mm", "a blank of 300 x 200 mm"),
        ("4 mm x 4 mm", "4 x 4 mm"),
    ],
)
def test_a_range_names_its_unit_once(said: str, shorter: str) -> None:
    assert one_unit(said) == shorter


@pytest.mark.parametrize(
    ("value", "unit", "places", "inch", "shown"),
    [
        (0.01, "mm", 3, False, "0.010 mm"),
        (0.01, "mm", None, False, "0.01 mm"),
        (5.263, "%", 1, False, "5.3 %"),
        (-0.0001, "mm", 2, False, "0.00 mm"),
        (25.4, "mm", 1, True, "1.00 in"),
    ],
)
def test_decimals_that_a_rule_asks_for(value: float, unit: str, places: int | None, inch: bool, shown: str) -> None:
    assert amount(value, unit, inch, places) == shown


@pytest.mark.parametrize(
    ("said", "told"),
    [
        ("Z 0.000 mm (work zero)", "Z 0 in (work zero)"),
        ("-1.270 to 203.200 mm (the cuts and one tool diameter)", "-0.05 to 8 in (the cuts and one tool diameter)"),
        ("flat, 6.35 mm, 2 flutes", "flat, 0.25 in, 2 flutes"),
        ("1500 W at every speed, 0.3 mm/min", "1500 W at every speed, 0.3 mm/min"),
    ],
)
def test_what_is_taken_as_given_is_told_in_inches(said: str, told: str) -> None:
    assert in_inches(said) == told
