"""The published schema of rule packs: true to the structs, to every pack that ships, and against what is wrong."""

from __future__ import annotations

import json
import tomllib
from pathlib import Path

import jsonschema
import pytest

from gclint.packs.schema import FILES
from gclint.setup.schema import schemas

ROOT = Path(__file__).parents[2]
(FILE,) = FILES
SCHEMA = jsonschema.Draft202012Validator(schemas(FILES)[FILE])
HOUSE = (ROOT / "sample_programs" / "lowtide-house.toml").read_text(encoding="utf-8")


def test_the_shipped_schema_is_the_one_the_structs_make() -> None:
    shipped = json.loads((ROOT / "gclint" / "packs" / FILE).read_text(encoding="utf-8"))
    assert shipped == SCHEMA.schema, "run  python -m gclint.packs.schema"
    jsonschema.Draft202012Validator.check_schema(SCHEMA.schema)


@pytest.mark.parametrize("group", sorted((ROOT / "rules").glob("*/group.toml")), ids=lambda path: path.parent.name)
def test_every_pack_that_ships_fits(group: Path) -> None:
    """Its head and its rules, put together, are a pack as a shop writes one."""
    rules = sorted(path for path in group.parent.glob("*.toml") if path != group)
    assert rules
    SCHEMA.validate(tomllib.loads("".join(path.read_text(encoding="utf-8") for path in (group, *rules))))


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ('pack = "lowtide"\n', ""),
        ('grade = "change"', 'grade = "fatal"'),
        ('looks_at = "pieces"', 'looks = "pieces"'),
        ("value = 2,", "valu = 2,"),
        ('standing = "practice"', 'standing = "hearsay"'),
    ],
)
def test_what_is_wrong_in_a_house_pack_does_not_fit(old: str, new: str) -> None:
    SCHEMA.validate(tomllib.loads(HOUSE))
    assert old in HOUSE
    assert not SCHEMA.is_valid(tomllib.loads(HOUSE.replace(old, new, 1)))
