"""The one writer of JSON Schemas: from the structs, and the same whatever version of the library made them."""

from __future__ import annotations

import inspect
import json
from collections.abc import Callable, Mapping
from pathlib import Path
from typing import Any

import msgspec

DRAFT = "https://json-schema.org/draft/2020-12/schema"
Hook = Callable[[type], dict[str, Any]]


def schema_of(kind: type, title: str, hook: Hook | None = None) -> dict[str, Any]:
    """Make the JSON Schema (draft 2020-12) of a struct; `hook` gives that of a type that msgspec does not know."""
    return {"$schema": DRAFT, "title": title, **_settled(msgspec.json.schema(kind, schema_hook=hook))}


def text_of(schema: Mapping[str, Any]) -> str:
    """Give a schema the text that its file has."""
    return json.dumps(schema, indent=2, ensure_ascii=False) + "\n"


def write(schemas: Mapping[str, Mapping[str, Any]], module: str) -> None:
    """Write schemas, by the names of their files, beside a module."""
    for file, schema in schemas.items():
        Path(module).with_name(file).write_text(text_of(schema), encoding="utf-8")


def _settled(part: Any, within: str = "") -> Any:
    """Settle what versions of msgspec and Python word differently and mean alike.

    That is the indentation of a docstring's later lines, the order of an enumeration and that of alternatives.
    """
    if isinstance(part, dict):
        named = within in ("$defs", "properties")  # the keys are names of ours here, not words of the standard
        made = {key: _settled(each, "" if named else key) for key, each in part.items()}
        if not named and isinstance(made.get("description"), str):
            made["description"] = inspect.cleandoc(made["description"])
        return made
    if isinstance(part, (list, tuple)):
        made_list = [_settled(each) for each in part]
        return sorted(made_list, key=_last_null) if within in ("enum", "anyOf") else made_list
    return part


def _last_null(part: Any) -> tuple[bool, str]:
    return part in (None, {"type": "null"}), json.dumps(part, sort_keys=True)
