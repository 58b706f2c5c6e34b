"""The JSON document of a run and its schema."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import msgspec

from gclint.judge.finding import Document

SCHEMA_FILE = Path(__file__).with_name("check.schema.json")


def to_json(document: Document) -> str:
    """One JSON document, two blanks of indentation, with a line end."""
    try:
        made = msgspec.json.encode(document)
    except UnicodeEncodeError:  # the bytes of a file's name are no Unicode
        made = json.dumps(msgspec.to_builtins(document), ensure_ascii=False).encode("utf-8", "replace")
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


if __name__ == "__main__":  # python -m gclint.report.json_out  writes the shipped schema anew
    SCHEMA_FILE.write_text(schema_text(), encoding="utf-8")
