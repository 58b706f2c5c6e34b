"""The rule language: what it computes, and what it refuses, with the place of the fault."""

from __future__ import annotations

import pytest

from gclint.language.dimensions import UNITS
from gclint.language.expression import (
    MOST_STEPS,
    NUMBER,
    TEXT,
    TRUTH,
    Name,
    Wrong,
    compile_expression,
    extent,
    facts_in,
    literals,
    quantity,
)

NAMES = {
    "solid": Name(NUMBER, "mm"),
    "feed": Name(NUMBER, "mm/min"),
    "speed": Name(NUMBER, "rev/min"),
    "edge": Name(NUMBER, "m/min"),
    "flutes": Name(NUMBER),
    "slope": Name(NUMBER, "deg"),
    "wait": Name(NUMBER, "s"),
    "removed": Name(NUMBER, "mm^3"),
    "order": Name(NUMBER),
    "kind": Name(TEXT, words=("straight", "ramp")),
    "centre": Name(TRUTH),
    "tool.diameter": Name(NUMBER, "mm"),
}


def refused(text: str, want: str | None = None, unit: str | None = None) -> tuple[str, int]:
    with pytest.raises(Wrong) as caught:
        compile_expression(text, NAMES, want, unit)
    return caught.value.says, caught.value.at


@pytest.mark.parametrize(
    ("text", "kind", "unit"),
    [
        ("solid > 3 mm", TRUTH, ""),
        ("feed / (speed * flutes)", NUMBER, "mm"),
        ("0.2 * tool.diameter", NUMBER, "mm"),
        ("0.9 * edge", NUMBER, "m/min"),
        ("solid * tool.diameter", NUMBER, "mm^2"),
        ("sqrt(solid * tool.diameter)", NUMBER, "mm"),
        ("atan(solid / tool.diameter)", NUMBER, "deg"),
        ("tan(slope)", NUMBER, ""),
        ("feed * wait", NUMBER, "mm"),
        ("max(solid, 0.2 mm)", NUMBER, "mm"),
        ("known(solid) and not centre", TRUTH, ""),
        ("kind in ['straight', 'ramp']", TRUTH, ""),
        ("order not in [1, 2]", TRUTH, ""),
        ("0 mm < solid <= 1 in", TRUTH, ""),
        ("share(solid > 1 mm, centre)", NUMBER, ""),
        ("total(centre)", NUMBER, "mm"),
        ("kind", TEXT, ""),
    ],
)
def test_expressions_have_kinds_and_units(text: str, kind: str, unit: str) -> None:
    made = compile_expression(text, NAMES)
    assert (made.kind, made.unit) == (kind, unit)


@pytest.mark.parametrize(
    ("text", "says", "at"),
    [
        ("solid > 3", "give the number its unit, such as 3 mm", 8),
        ("solid > 3 s", "a length cannot be compared with a time", 8),
        ("solid + feed", "a length cannot be added to a feed", 8),
        ("solid - 1", "give the number its unit", 8),
        ("solid > 3 mn", 'there is no unit "mn"', 10),
        ("solod > 3 mm", 'there is no fact "solod"; nearest: "solid"', 0),
        ("centre and solid", '"and" joins conditions, and this is a number', 11),
        ("not solid", '"not" joins conditions', 4),
        ("centre < centre", "has no order", 0),
        ("kind == 'rampp'", 'it is never "rampp"; nearest: "ramp"', 8),
        ("kind == kind", "only be compared with a text in quotes", 8),
        ("kind in [1]", "a text cannot be compared with a number", 9),
        ("kind > 'ramp'", "has no order", 0),
        ("solid >", "ends too early", 7),
        ("(solid > 1 mm", "ends too early", 13),
        ("solid > 1 mm)", "does not belong here", 12),
        ("solid ? 1 mm", "does not belong here", 6),
        ("floor(solid)", 'there is no function "floor"', 0),
        ("max(solid)", "max takes 2 to 9 values, here are 1: max(a, b, ...)", 0),
        ("tan(solid)", "tan needs an angle, and this is a length", 4),
        ("sqrt(solid)", "has no square root", 5),
        ("max(solid, feed)", "a length cannot be put beside a feed", 11),
        ("-centre > 0", "needs a number", 1),
        ("tan(slope, slope)", "tan takes 1 value, here are 2", 0),
        ("solid = 1 mm", '"=" does not belong here; write "=="', 6),
        ("centre & centre", 'write "and"', 7),
        ("solid > 'x'", "a number cannot be compared with a text", 8),
        ("centre in [1]", "cannot be compared", 11),
        ("solid in [1]", "give the number its unit", 10),
        ("share(centre)", "share takes 2 values, here are 1: share(condition, among)", 0),
        ("run(solid)", "run needs conditions, and this is a number", 4),
        ("abs(kind)", "abs needs numbers, and this is a text", 4),
        ("atan(solid)", "atan needs a plain number, and this is a length", 5),
        ("solid * kind", '"*" needs numbers', 8),
        ("kind in []", "does not belong here; expected", 9),
        ("solid > 1 mm and", "ends too early; expected", 16),
        ("nowhere.near.this > 1", "`gclint pack facts TABLE` lists what there is", 0),
        ("solid[0]", '"[" does not belong here', 5),
        ("kind == 'ra", "does not belong here", 8),
        ("import os", "does not belong here", 7),
        ("__import__('os')", '"_" does not belong here', 0),
        ("solid.__class__ == 1", "does not belong here", 5),
        ("min(solid for solid in solid)", '"for" does not belong here', 10),
        ("lambda: solid", '":" does not belong here', 6),
        ("", "", 0),
    ],
)
def test_faults_are_named_with_their_place(text: str, says: str, at: int) -> None:
    said, place = refused(text)
    assert says in said
    assert place == at


def test_what_is_wanted_is_checked() -> None:
    assert "a truth (yes or no) is needed here" in refused("solid", TRUTH)[0]
    assert "cannot be shown in" in refused("solid", NUMBER, "s")[0]
    assert 'there is no unit "furlong"' in refused("solid", NUMBER, "furlong")[0]


@pytest.mark.parametrize(
    "text", ["(" * 1900 + "centre" + ")" * 1900, "not " * 900 + "centre", "-" * 3900 + "solid", "(((" * 14 + "centre"]
)
def test_deep_nesting_is_refused(text: str) -> None:
    said = refused(text)[0]
    assert "nested too deeply" in said or "too much for one expression" in said


def test_long_expressions_are_refused() -> None:
    assert "longer than 4000 characters" in refused("centre or " * 500 + "centre")[0]
    compile_expression("centre or " * 300 + "centre", NAMES)


def test_definitions_that_grow_without_end_are_refused() -> None:
    """Each doubles the one before; written out, the last would have a million steps."""
    names = dict(NAMES)
    code = compile_expression("solid > 1 mm", names).code
    while 2 * extent(code)[0] + 1 <= MOST_STEPS:
        names["before"] = Name(TRUTH, code=code)
        code = compile_expression("before and before", names).code
    names["before"] = Name(TRUTH, code=code)
    with pytest.raises(Wrong, match="too much for one expression"):
        compile_expression("before and before", names)


def test_share_needs_a_table_that_adds_up() -> None:
    names = {"centre": Name(TRUTH, grouped=False)}
    with pytest.raises(Wrong, match="only be used on pieces"):
        compile_expression("share(centre, centre) > 0", names)


@pytest.mark.parametrize("unit", [unit for unit in UNITS if unit])
def test_every_unit_is_read_behind_a_number(unit: str) -> None:
    assert quantity(f"2.5 {unit}") == (2.5, unit)


@pytest.mark.parametrize(("text", "value", "unit"), [("20 %", 20.0, "%"), ("-1 mm", -1.0, "mm"), ("1.5", 1.5, "")])
def test_quantities(text: str, value: float, unit: str) -> None:
    assert quantity(text) == (pytest.approx(value), unit)


@pytest.mark.parametrize("text", ["mm", "1 mm + 1 mm", "solid", "", "three mm"])
def test_a_quantity_is_a_number_with_its_unit(text: str) -> None:
    with pytest.raises(Wrong):
        quantity(text)


def test_limits_and_definitions_stand_in_for_what_they_mean() -> None:
    inner = compile_expression("solid > least", NAMES | {"least": Name(NUMBER, "in", value=1.0)})
    assert inner.code == [">", ["fact", "solid", 1.0], ["number", 25.4]]
    outer = compile_expression("deep and centre", NAMES | {"deep": Name(TRUTH, code=inner.code)})
    assert outer.code == ["and", inner.code, ["fact", "centre", 1]]
    assert facts_in(outer.code) == {"solid", "centre"}


def test_numbers_that_judge_are_told_apart_from_those_that_only_name() -> None:
    text = "solid > 3 mm and order in [1, 2] and slope >= 0 deg and flutes == 1 or solid < 1 mm"
    assert literals(text) == [("3 mm", 8), ("1 mm", text.index("1 mm"))]
