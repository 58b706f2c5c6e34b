"""The JSON document of a run and its schema."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import msgspec

from gclint.tables.finding import Checked, Document

SCHEMA_FILE = Path(__file__).parents[1] / "check.schema.json"


def encoded(part: Checked | Document) -> msgspec.Raw:
    """JSON without blanks; a document may hold programs that are encoded already, which takes the least memory."""
    try:
        return msgspec.Raw(msgspec.json.encode(part))
    except UnicodeEncodeError:  # the bytes of a file's name are no Unicode
        return msgspec.Raw(json.dumps(msgspec.to_builtins(part), ensure_ascii=False).encode("utf-8", "replace"))


def to_json(document: Document) -> str:
    """One JSON document, two blanks of indentation, with a line end."""
    made = bytes(encoded(document))
    return msgspec.json.format(made, indent=2).decode() + "\n"


def schema() -> dict[str, Any]:
    """JSON Schema (draft 2020-12) of the document, made from the structs themselves."""
    made: dict[str, Any] = msgspec.json.schema(Document)
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "What gclint found in a run of `gclint check --as json`",
        **made,
    }


def schema_text() -> str:
    return json.dumps(schema(), indent=2) + "\n"


if __name__ == "__main__":  # python -m gclint.report.machine.json_out  writes the shipped schema anew
    SCHEMA_FILE.write_text(schema_text(), encoding="utf-8")
