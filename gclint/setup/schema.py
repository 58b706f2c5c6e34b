"""JSON Schemas of shop.toml, job.toml, material cards and controller cards, made from the structs.

`python -m gclint.setup.schema` writes them.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from gclint.cards.controller import ControllerCard
from gclint.cards.material import Card
from gclint.json_schema import schema_of, write
from gclint.setup.declared import Job, Shop
from gclint.toml.quantity import Quantity
from gclint.toml.units import KINDS, NUMBER

FILES = {
    "shop.schema.json": Shop,
    "job.schema.json": Job,
    "material.schema.json": Card,
    "controller.schema.json": ControllerCard,
}


def schemas(files: Mapping[str, type] = FILES) -> dict[str, dict[str, Any]]:
    """Make the JSON Schema of each kind of TOML file; the name of its file is the key."""
    return {
        file: schema_of(kind, f"gclint {file.partition('.')[0]}.toml", _quantity) for file, kind in files.items()
    }


def _quantity(kind: type) -> dict[str, Any]:
    """A quantity is a text of a number and a unit; where DESIGN shows plain numbers, a number too."""
    if not issubclass(kind, Quantity):
        raise NotImplementedError(kind)
    name, example, units = KINDS[kind.kind]
    spelled = "|".join(_escaped(unit) for unit in units)
    text = {"type": "string", "pattern": rf"^\s*{NUMBER}\s*({spelled}){'?' if kind.bare else ''}\s*$"}
    said = {"description": f"{name}, such as {example.format(n='10', in_='0.394')}"}
    return {"anyOf": [{"type": "number"}, text], **said} if kind.bare else {**text, **said}


def _escaped(unit: str) -> str:
    return "".join(f"\\{c}" if c in "^/." else c for c in unit).replace("\\/", "/")


if __name__ == "__main__":
    write(schemas(), __file__)
