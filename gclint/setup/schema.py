"""JSON Schemas of shop.toml, job.toml, material cards and controller cards, made from the structs.

`python -m gclint.setup.schema` writes them.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import msgspec

from gclint.cards.controller import ControllerCard
from gclint.cards.material import Card
from gclint.setup.declared import Job, Shop
from gclint.toml.quantity import Quantity
from gclint.toml.units import KINDS, NUMBER

FILES = {
    "shop.schema.json": Shop,
    "job.schema.json": Job,
    "material.schema.json": Card,
    "controller.schema.json": ControllerCard,
}


def schema_of(kind: type, file: str) -> dict[str, Any]:
    """JSON Schema (draft 2020-12) of a kind of file; `file` is the schema's name."""
    made = msgspec.json.schema(kind, schema_hook=_quantity)
    title = file.partition(".")[0]
    return {"$schema": "https://json-schema.org/draft/2020-12/schema", "title": f"gclint {title}.toml", **made}


def text_of(kind: type, file: str) -> str:
    """The file's text."""
    return json.dumps(schema_of(kind, file), indent=2, ensure_ascii=False) + "\n"


def write(files: Mapping[str, type], module: str) -> None:
    """The schemas of a room, beside its module."""
    for file, kind in files.items():
        Path(module).with_name(file).write_text(text_of(kind, file), encoding="utf-8")


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
    write(FILES, __file__)
