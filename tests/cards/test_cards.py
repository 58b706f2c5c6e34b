"""The material cards, and what their loader refuses."""

from __future__ import annotations

from itertools import pairwise
from pathlib import Path

import pytest

from gclint.cards.material import describe, material, material_from, names
from gclint.problem import Problem
from gclint.shipped import folder
from gclint.tables.setup import STANDINGS

AT_LEAST = {
    "aluminium-6061", "beech", "birch-plywood", "brass", "cast-acrylic", "cured-epoxy", "extruded-acrylic",
    "glass-filled-laminate", "hdpe", "machinable-wax", "mdf", "oak", "polycarbonate", "pvc-foam-board", "softwood",
    "tooling-board", "walnut",
}  # fmt: skip


def test_the_materials_there_must_be() -> None:
    assert set(names()) >= AT_LEAST


@pytest.mark.parametrize("name", names())
def test_card(name: str) -> None:
    card = material(name)
    assert card.name == name
    assert card.title
    assert card.cautions
    assert card.thin_words
    assert card.thick_words
    assert card.fast_words
    for below, above in pairwise(card.chip):
        assert below.diameter < above.diameter
        assert below.low < above.low
        assert below.high < above.high
    for narrow, wide in pairwise(card.edge):
        assert (narrow.high or 0) < (wide.high or 0)
    assert 0 < card.thin_by.value < 1
    assert 0 < card.finish_share.value < 1
    assert card.ramp_advised is not None
    assert card.ramp_limit is not None
    assert 0 < card.ramp_advised.value < card.ramp_limit.value < 90
    assert card.plunge_feed_share is not None
    assert 0 < card.plunge_feed_share.value < 1
    assert card.depth_slot is not None
    assert card.depth_side is not None
    assert card.depth_slot.value <= card.depth_side.value
    assert (card.plunge == "yes") == (card.plunge_depth is not None)


@pytest.mark.parametrize("name", names())
def test_every_number_has_its_standing_and_source(name: str) -> None:
    rows = describe(material(name))
    assert len(rows) >= 14
    for row in rows:
        assert row.standing in STANDINGS
        assert row.source
        assert row.value


def test_dusty_materials_say_so() -> None:
    for name in ("mdf", "cured-epoxy", "glass-filled-laminate", "tooling-board"):
        assert isinstance(material(name).dust, str)


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("aluminium", "aluminium-6061"),
        ("aluminum-6061", "aluminium-6061"),
        ("Cured Epoxy", "cured-epoxy"),
        ("ply", "birch-plywood"),
    ],
)
def test_other_names(said: str, meant: str) -> None:
    assert material(said).name == meant


@pytest.mark.parametrize("said", ["acrylic", "hardwood"])
def test_a_name_of_several_materials_asks(said: str) -> None:
    with pytest.raises(Problem) as caught:
        material(said)
    assert "can mean more than one card" in caught.value.says
    assert " or " in caught.value.says


@pytest.mark.parametrize(
    ("said", "tail"), [("bech", 'nearest: "beech"'), ("zzzz", "known: aluminium-6061"), ("", "known:")]
)
def test_an_unknown_name(said: str, tail: str) -> None:
    with pytest.raises(Problem) as caught:
        material(said)
    assert tail in caught.value.says


@pytest.mark.parametrize(
    ("old", "new", "says"),
    [
        ('low = "0.030 mm"', 'low = "0.030"', "has no unit"),
        ('low = "0.030 mm"', 'low = "0.9 mm"', "not under the high one"),
        ('diameter = "6 mm"', 'diameter = "2 mm"', "must rise from row to row"),
        ('kind = "wood"', 'kind = "timber"', "is none of its values"),
        ("[ramp]", "[rmap]", 'nearest: "ramp"'),
        ('standing = "memory"', 'standing = "heard"', "is none of its values"),
        ('title = "beech"', "", 'the key "title" is missing'),
    ],
)
def test_a_card_that_is_not_sound(tmp_path: Path, old: str, new: str, says: str) -> None:
    text = (folder() / "materials" / "beech.toml").read_text(encoding="utf-8")
    assert old in text
    path = tmp_path / "card.toml"
    path.write_text(text.replace(old, new, 1), encoding="utf-8")
    with pytest.raises(Problem) as caught:
        material_from(path)
    assert caught.value.path == str(path)
    assert says in caught.value.says
    if "missing" not in says:
        assert caught.value.line


def test_a_card_of_ones_own(tmp_path: Path) -> None:
    path = tmp_path / "bog-oak.toml"
    text = (folder() / "materials" / "oak.toml").read_text(encoding="utf-8")
    path.write_text(text.replace('name = "oak"', 'name = "bog-oak"'), encoding="utf-8")
    assert material(str(path)).name == "bog-oak"


def test_a_material_is_named_in_a_sentence_without_its_addition() -> None:
    assert [material(name).named for name in ("softwood", "cured-epoxy", "mdf")] == ["softwood", "cured epoxy", "MDF"]
    assert not any(mark in material(name).named for name in names() for mark in ",()")
