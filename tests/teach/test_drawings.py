"""Every rule's examples can be drawn by its subject on eighty plain columns, and show what the model holds."""

from __future__ import annotations

import pytest

from gclint.packs.pack import Rule
from gclint.packs.shipped_packs import shipped_packs
from gclint.teach.drawings import VIEWS, drawings
from gclint.teach.example import pair, shown
from gclint.teach.listing import HERE, listing, named_lines
from gclint.teach.subject import subject_of, subjects

RULES = {rule.name: rule for pack in shipped_packs() for rule in pack.rules}
DRAWN = (
    "straight-plunge", "chip-too-thin", "shank-rubs", "rapid-through-stock", "cuts-fixture", "too-deep", "steep-ramp",
)


def rows_of(rule: str, view: str) -> tuple[str, ...]:
    example = pair(RULES[rule])[0]
    assert example is not None
    made = shown(RULES[rule], example, shipped_packs())
    assert made.place is not None
    drawing = VIEWS[view](made.place, made.finding)
    assert drawing is not None
    return drawing.lines


def test_every_subject_is_drawn_by_views_there_are() -> None:
    for subject in subjects().values():
        assert set(subject.drawn_as) <= set(VIEWS)
    for rule in RULES.values():
        assert rule.text.subject in {"", *subjects()}, rule.name
        assert subject_of(rule.text).afterwards


@pytest.mark.parametrize("name", DRAWN)
def test_bad_examples_are_drawn_on_eighty_plain_columns(name: str) -> None:
    rule: Rule = RULES[name]
    bad, good = pair(rule)
    assert bad is not None
    assert good is not None
    made = shown(rule, bad, shipped_packs())
    assert made.finding is not None
    views = [*drawings(made.place, made.finding), listing(made.context.program, named_lines(made.finding))]
    assert len(views) >= 2
    for view in views:
        assert all(len(line) <= 76 and line.isascii() for line in view.lines)
        assert all(sign[0] in "".join(view.lines) for sign, _ in view.legend)
    assert any(line.startswith(HERE) for line in views[-1].lines)
    assert shown(rule, good, shipped_packs()).finding is None


def test_a_plunge_stands_over_solid_material_and_a_ramp_beside_it() -> None:
    plunge = rows_of("straight-plunge", "side")
    assert any(":" in row and "*" in row for row in plunge)  # what it takes lies under the tool
    columns = {row.index("*") for row in plunge if "*" in row}
    assert len(columns) == 1  # the tip goes down in one column
    ramp = rows_of("steep-ramp", "side")
    assert len({row.index("*") for row in ramp if "*" in row}) > 3


def test_a_slot_bites_over_half_the_rim_and_the_material_lies_ahead() -> None:
    rows = rows_of("chip-too-thin", "bite")
    middle = next(row for row in rows if "+" in row)
    assert middle.rstrip().endswith("#")
    assert middle.index("o") < middle.index("+") < middle.index("@")


def test_the_shank_is_drawn_over_the_edges_and_wider() -> None:
    rows = rows_of("shank-rubs", "section")
    shank = max(row.count("|") for row in rows)
    edges = max(row.count("/") for row in rows)
    assert shank > edges > 0
    assert next(i for i, row in enumerate(rows) if "|" in row) < next(i for i, row in enumerate(rows) if "/" in row)


def test_a_rapid_through_stock_is_drawn_below_its_top() -> None:
    rows = rows_of("rapid-through-stock", "side")
    way = next(i for i, row in enumerate(rows) if "++++" in row)
    top = next(i for i, row in enumerate(rows) if ":::" in row)
    assert top < way
