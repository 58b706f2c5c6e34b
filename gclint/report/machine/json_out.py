"""The JSON document of a run and its schema."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import msgspec

from gclint.clean_text import json_text
from gclint.json_schema import schema_of, write
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
    return json_text(bytes(encoded(document)))


def schema() -> dict[str, Any]:
    """Make the JSON Schema of the document from the structs themselves."""
    return schema_of(Document, "What gclint found in a run of `gclint check --as json`")


if __name__ == "__main__":  # python -m gclint.report.machine.json_out  writes the shipped schema anew
    write({SCHEMA_FILE.name: schema()}, str(SCHEMA_FILE))
