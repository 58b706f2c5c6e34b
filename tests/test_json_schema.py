"""The writer of schemas: what versions of the library word differently comes out alike, and nothing else is touched."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any, Literal

import msgspec
import pytest

from gclint.json_schema import schema_of, text_of, write


class Clamp(msgspec.Struct):
    """A thing to keep out of.

    Its second paragraph
        and an indented line.
    """

    by: Literal["tape", "screws"]
    enum: Literal[3, 1]
    beside: Clamp | None = None


def reworded(made: Any) -> Any:
    """As another version would have it: later lines of a docstring indented, enumerations and alternatives turned."""
    if isinstance(made, dict):
        made = {key: each if key == "required" else reworded(each) for key, each in made.items()}
        if isinstance(made.get("description"), str):
            made["description"] = made["description"].replace("\n", "\n    ")
        return made
    return [reworded(each) for each in reversed(made)] if isinstance(made, list) else made


def test_versions_of_the_library_make_one_schema(monkeypatch: pytest.MonkeyPatch) -> None:
    made = schema_of(Clamp, "clamp")
    original = msgspec.json.schema
    other = reworded(original(Clamp))
    assert other != original(Clamp)
    monkeypatch.setattr(msgspec.json, "schema", lambda *_, **__: other)
    assert schema_of(Clamp, "clamp") == made


def test_the_schema_is_dedented_and_sorted() -> None:
    clamp = schema_of(Clamp, "clamp")["$defs"]["Clamp"]
    assert clamp["description"] == "A thing to keep out of.\n\nIts second paragraph\n    and an indented line."
    assert clamp["properties"]["by"] == {"enum": ["screws", "tape"]}
    assert clamp["properties"]["enum"] == {"enum": [1, 3]}  # a key of ours that is a word of the standard too
    assert clamp["properties"]["beside"]["anyOf"] == [{"$ref": "#/$defs/Clamp"}, {"type": "null"}]
    assert clamp["required"] == ["by", "enum"]


def test_what_is_written_reads_back(tmp_path: Path) -> None:
    made = schema_of(Clamp, "clamp with a µ")
    write({"clamp.schema.json": made}, str(tmp_path / "module.py"))
    text = (tmp_path / "clamp.schema.json").read_text(encoding="utf-8")
    assert text == text_of(made)
    assert json.loads(text) == made
