"""Declarations in an editor: which kind a TOML file is, what is wrong in it, what can stand where, where a tool is."""

from __future__ import annotations

import json
import re
import tomllib
from collections.abc import Iterable, Mapping
from functools import cache
from importlib.resources import files
from pathlib import Path
from typing import Any

from lsprotocol.types import CompletionItem, CompletionItemKind, Location, Position

from gclint import disk
from gclint.editor.answer import Answer
from gclint.editor.text import Text
from gclint.problem import Problem
from gclint.toml.place import places_of

KINDS = ("shop", "job", "material", "controller", "pack")
HEADER = re.compile(r"^\s*\[{1,2}\s*([^\]#]*)")
KEY = re.compile(r"^\s*([A-Za-z0-9_.\"-]*)$")
VALUE = re.compile(r"^\s*([A-Za-z0-9_-]+)\s*=\s*\[?\s*(?:\"[^\"]*\"\s*,\s*)*(\"?)([^\",]*)$")


@cache
def schema(kind: str) -> dict[str, Any]:
    """The JSON Schema of a kind of declaration, as it ships beside the module that reads it."""
    room = "packs" if kind == "pack" else "setup"
    made: dict[str, Any] = json.loads(files(f"gclint.{room}").joinpath(f"{kind}.schema.json").read_bytes())
    return made


def kind_of(path: str, source: str) -> str | None:
    """Which of KINDS a TOML file is: by its usual name, else by the keys it has; None for a file of something else."""
    name = Path(path).name
    if name in ("shop.toml", "job.toml"):
        return name.removesuffix(".toml")
    keys = set(re.findall(r"^\s*\[{0,2}\s*([A-Za-z0-9_-]+)", source, re.MULTILINE))
    shares = {kind: len(keys & set(_properties(schema(kind), schema(kind)))) for kind in KINDS}
    best = max(KINDS, key=lambda kind: shares[kind])
    return best if shares[best] >= 2 else None


def problem_in(path: str, source: str, unsaved: Mapping[str, bytes]) -> Problem | None:
    """The first thing that is wrong with a declaration, or with one that it names."""
    kind = kind_of(path, source)
    if kind is None:
        return None
    with disk.unsaved(unsaved):
        try:
            _read(kind, path)
        except Problem as problem:
            return problem
        except Exception as fault:  # told as itself: an editor must not lose the server for one file
            says = f"gclint itself failed on this file: {type(fault).__name__}: {fault}; please report this"
            return Problem(says, path)
    return None


def _read(kind: str, path: str) -> None:
    from gclint.setup.declare import Options, declare
    from gclint.setup.resolve import shop_setup

    if kind == "shop":
        shop_setup(declare(Options(shop=path), None))
    elif kind == "job":
        shop_setup(declare(Options(job=path), None))
    elif kind == "material":
        from gclint.cards.material import material_from

        material_from(Path(path))
    elif kind == "controller":
        from gclint.cards.controller import controller_from

        controller_from(Path(path))
    else:
        from gclint.packs.load import load_pack

        load_pack(Path(path))


def tool_place(answer: Answer, number: int, encoding: str, held: Mapping[str, bytes]) -> Location | None:
    """Where the shop file declares the tool that a program calls by this number."""
    from pygls.uris import from_fs_path

    if answer.run is None or answer.run.tables is None:
        return None
    tool = answer.run.tables.setup.tools.get(number)
    for used in answer.run.tables.setup.sources if tool is not None else ():
        data = held.get(str(Path(used).absolute()))
        source = data.decode("utf-8", "replace") if data is not None else Path(used).read_text(encoding="utf-8")
        for row, each in enumerate(tomllib.loads(source).get("tool", ())):
            if isinstance(each, dict) and tool is not None and each.get("number") == tool.number:
                place = places_of(source).of(("tool", row), key=True)
                uri = from_fs_path(str(Path(used).absolute()))
                if place is not None and uri is not None:
                    text = Text(source, encoding)
                    return Location(uri, text.whole_line(place[0] - 1))
    return None


def complete(path: str, text: Text, position: Position) -> list[CompletionItem]:
    """What can stand at a place: a table's name, a key that the table lacks, a value that its key takes."""
    kind = kind_of(path, text.source)
    if kind is None:
        return []
    whole = schema(kind)
    before = text.line(position.line)[: text.column(position)]
    if HEADER.match(before) and "]" not in before:
        return _headers(whole)
    table = _table(text, position.line)
    here = _at(whole, table)
    value = VALUE.match(before)
    if value is not None:
        found = _properties(whole, here).get(value[1])
        quoted = bool(value[2])
        own = _known_values(value[1], path, table)
        return [
            CompletionItem(each, kind=CompletionItemKind.Value, insert_text=each if quoted else f'"{each}"')
            for each in dict.fromkeys((*own, *_values(whole, found or {})))
        ]
    if KEY.match(before):
        there = _keys_of(text, position.line)
        return [
            CompletionItem(
                name, kind=CompletionItemKind.Property, detail=_says(whole, each), insert_text=f"{name} = "
            )
            for name, each in _properties(whole, here).items() if name not in there
        ]  # fmt: skip
    return []


def _table(text: Text, line: int) -> tuple[str, ...]:
    """The names of the header that a line stands below."""
    for number in range(line, -1, -1):
        header = HEADER.match(text.line(number))
        if header and "]" in text.line(number):
            return tuple(part.strip().strip('"') for part in re.findall(r'"[^"]*"|[^."\s]+', header[1]))
    return ()


def _keys_of(text: Text, line: int) -> set[str]:
    """The keys that stand in the table around a line, but on the line itself."""
    first = next((n for n in range(line, -1, -1) if HEADER.match(text.line(n))), -1)
    last = next((n for n in range(line + 1, len(text.lines)) if HEADER.match(text.line(n))), len(text.lines))
    found = (re.match(r"\s*([A-Za-z0-9_-]+)\s*=", text.line(n)) for n in range(first + 1, last) if n != line)
    return {match[1] for match in found if match}


def _resolved(whole: dict[str, Any], part: dict[str, Any]) -> list[dict[str, Any]]:
    """A part of a schema as the alternatives it has, references followed."""
    if "$ref" in part:
        return _resolved(whole, whole["$defs"][part["$ref"].rpartition("/")[2]])
    if "anyOf" in part:
        return [each for one in part["anyOf"] for each in _resolved(whole, one)]
    return [part]


def _properties(whole: dict[str, Any], part: dict[str, Any]) -> dict[str, Any]:
    return {name: each for one in _resolved(whole, part) for name, each in one.get("properties", {}).items()}


def _at(whole: dict[str, Any], table: tuple[str, ...]) -> dict[str, Any]:
    """The schema of the table of that name; of a list of tables that of one of them."""
    here = whole
    for name in table:
        found = _properties(whole, here).get(name)
        if found is None:
            more = [one["additionalProperties"] for one in _resolved(whole, here) if one.get("additionalProperties")]
            found = more[0] if more and isinstance(more[0], dict) else {}
        items = [one["items"] for one in _resolved(whole, found) if isinstance(one.get("items"), dict)]
        here = items[0] if items else found
    return here


def _headers(whole: dict[str, Any]) -> list[CompletionItem]:
    made = []
    for name, each in _properties(whole, whole).items():
        kinds = _resolved(whole, each)
        tables = any(one.get("properties") for one in kinds)
        lists = any(one.get("items") and _properties(whole, one["items"]) for one in kinds)
        if tables or lists:
            made.append(CompletionItem(name, kind=CompletionItemKind.Module, detail="[[ ]]" if lists else "[ ]"))
    return made


def _values(whole: dict[str, Any], part: dict[str, Any]) -> Iterable[str]:
    for one in _resolved(whole, part):
        yield from (str(value) for value in one.get("enum", ()) if isinstance(value, str))
        if isinstance(one.get("const"), str):
            yield one["const"]
        if isinstance(one.get("items"), dict):
            yield from _values(whole, one["items"])


def _known_values(key: str, path: str, table: tuple[str, ...]) -> Iterable[str]:
    """Names of things that lie elsewhere: materials, controllers, rules, programs, declarations."""
    from gclint.program import ENDINGS

    folder = Path(path).parent
    if key == "material":
        from gclint.cards.material import names as materials

        return materials()
    if key == "controller":
        from gclint.cards.controller import names as controllers

        return controllers()
    if key == "rule":
        from gclint.packs.shipped_packs import shipped_packs

        return sorted(rule.name for pack in shipped_packs() for rule in pack.rules)
    if key in ("program", "after", "before"):
        return sorted(each.name for each in folder.iterdir() if each.name.lower().endswith(ENDINGS))
    if key in ("shop", "packs"):
        return sorted(each.name for each in folder.glob("*.toml") if each.name != Path(path).name)
    return ()


def _says(whole: dict[str, Any], part: dict[str, Any]) -> str:
    told = part.get("description") or next((o["description"] for o in _resolved(whole, part) if "description" in o), "")
    return str(told)


