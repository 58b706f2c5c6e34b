"""JSON Schemas of the answers of `gclint mend` and `gclint compare`; `python -m gclint.mend.schema` writes them."""

from __future__ import annotations

import json
from pathlib import Path

import msgspec

from gclint.json_schema import schema_of, text_of
from gclint.mend.result import Compared, Document

FILES: dict[str, tuple[type[msgspec.Struct], str]] = {
    "mend.schema.json": (Document, "What `gclint mend --as json` answers"),
    "compare.schema.json": (Compared, "What `gclint compare --as json` answers"),
}


def schema_text(name: str) -> str:
    """The schema (draft 2020-12) of one of FILES."""
    kind, title = FILES[name]
    return text_of(schema_of(kind, title))


def to_json(document: Document | Compared) -> str:
    """One JSON document, two blanks of indentation, with a line end."""
    try:
        made = msgspec.json.encode(document)
    except UnicodeEncodeError:  # the bytes of a file's name are no Unicode
        made = json.dumps(msgspec.to_builtins(document), ensure_ascii=False).encode("utf-8", "replace")
    return msgspec.json.format(made, indent=2).decode() + "\n"


if __name__ == "__main__":
    for each in FILES:
        Path(__file__).with_name(each).write_text(schema_text(each), encoding="utf-8")
