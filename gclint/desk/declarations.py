"""The declarations of a program as the desk shows and saves them: the files that `check` finds, remarks kept."""

from __future__ import annotations

import hashlib
import tomllib
from itertools import pairwise
from pathlib import Path
from typing import Any

from msgspec import Struct

from gclint.atomic_file import write_unchanged
from gclint.desk.names import inside, is_within, shown
from gclint.problem import Problem
from gclint.setup.declare import JOB_FILE, SHOP_FILE, files_around
from gclint.setup.declared import Job, Shop
from gclint.toml.file import LARGEST_FILE, Key, decode, faults_of, read_text, written
from gclint.toml.named import declaration

NAMES: dict[str, tuple[str, type, str]] = {"job": (JOB_FILE, Job, "job file"), "shop": (SHOP_FILE, Shop, "shop file")}
FIRST = {
    "job": "One job: its program, material, blank and hold. Written at the desk; edit it by hand as you like.",
    "shop": "The machine, its spindle and its tools. Written at the desk; edit it by hand as you like.",
}
MOST_CHANGES = 200  # in one save
MOST_ROWS = 500  # of a list of tables
LONGEST = 300  # characters of a value


class Wrong(Problem):
    """Values that cannot stand: `fields` has a sentence for each key."""

    def __init__(self, says: str, fields: dict[str, str], path: str | None = None) -> None:
        super().__init__(says, path)
        self.fields = fields


class Changed(Problem):
    """The file is not the one that was shown."""


class Above(Problem):
    """The file lies above the desk's folder, and nobody has said yes to writing it."""


class Place(Struct, frozen=True):
    """Where a declaration is, or would be."""

    which: str
    path: Path
    there: bool


def places(root: Path, program: str) -> tuple[Place, Place]:
    """(job file, shop file) that `check` uses for a program; one that is missing would stand beside it."""
    file = inside(root, program) if program else root / "none"
    job, shop = files_around(str(file))
    job_place = Place("job", job or file.parent / JOB_FILE, job is not None)
    if job is not None:
        named = _shop_named(job)
        if named is not None:
            shop = declaration(job.parent, named)
    beside = (job.parent if job is not None else file.parent) / SHOP_FILE
    return job_place, Place("shop", shop or beside, shop is not None and shop.is_file())


def _shop_named(job: Path) -> str | None:
    try:
        named = tomllib.loads(read_text(job, "job file")).get("shop")
    except (tomllib.TOMLDecodeError, Problem, RecursionError, ValueError):
        return None
    return named if isinstance(named, str) else None


def state(root: Path, program: str) -> dict[str, Any]:
    """Both declarations as they stand on the disk now, and by what a change of the program is seen."""
    seen = inside(root, program).stat()
    made: dict[str, Any] = {place.which: told(root, place) for place in places(root, program)}
    return made | {"program": [seen.st_mtime_ns // 1000, seen.st_size]}


def told(root: Path, place: Place) -> dict[str, Any]:
    name, kind, called = NAMES[place.which]
    made: dict[str, Any] = {
        "name": shown(root, place.path), "there": place.there, "within": is_within(root, place.path),
        "fingerprint": "", "values": {}, "wrong": "", "line": None, "fields": {},
    }  # fmt: skip
    if not place.there:
        return made
    try:
        made["fingerprint"] = fingerprint(place.path.read_bytes())
        text = read_text(place.path, called)
        made["values"] = _plain(tomllib.loads(text)) if len(text) < LARGEST_FILE else {}
        decode(text, kind, place.path.name)
    except Problem as problem:
        made["wrong"], made["line"] = problem.says, problem.line
        made["fields"] = {written_key(key): says for key, says in faults_of(dict(made["values"]), kind)}
    except tomllib.TOMLDecodeError:
        made["wrong"] = _syntax(place.path, kind, name)
    except (OSError, RecursionError, ValueError) as problem:
        made["wrong"] = f"this {called} cannot be read: {problem}"
    return made


def _syntax(path: Path, kind: type, name: str) -> str:
    try:
        decode(read_text(path, name), kind, name)
    except Problem as problem:
        return str(problem)
    return ""


def fingerprint(data: bytes | None) -> str:
    return "" if data is None else hashlib.sha256(data).hexdigest()


def save(
    root: Path, program: str, which: str, seen: str, changes: list[dict[str, Any]], yes: bool = False,
) -> dict[str, Any]:  # fmt: skip
    """Write changes into a declaration that reads `seen`; give its `before` and `after`, to be taken back by.

    Raises Wrong, Changed, Above, or Problem.
    """
    place = next(each for each in places(root, program) if each.which == which)
    if not is_within(root, place.path) and not yes:
        raise Above(f"this file lies outside the desk's folder: {place.path}", str(place.path))
    before = place.path.read_bytes() if place.there else None
    if fingerprint(before) != seen:
        raise Changed("this file has been changed since it was shown here; nothing was saved", str(place.path))
    made = with_changes(before, which, changes, place.path.name)
    if made != before:
        write_unchanged(made, place.path, before)
    return {"name": str(place.path), "before": _text(before), "after": fingerprint(made)}


def take_back(root: Path, program: str, which: str, name: str, before: str | None, after: str) -> dict[str, Any]:
    """Give a declaration back what it held before a save, where nothing else has changed it since."""
    place = next((each for each in places(root, program) if each.which == which), None)
    if place is None or str(place.path) != name:
        raise Changed("another file is used by now; nothing was taken back")
    now = place.path.read_bytes() if place.path.is_file() else None
    if fingerprint(now) != after or now is None:
        raise Changed("this file has been changed since it was saved here; nothing was taken back", name)
    if before is None:
        place.path.unlink()
    else:
        write_unchanged(before.encode("utf-8", "surrogateescape"), place.path, now)
    return {"name": name}


def _text(data: bytes | None) -> str | None:
    return None if data is None else data.decode("utf-8", "surrogateescape")


def with_changes(before: bytes | None, which: str, changes: list[dict[str, Any]], name: str) -> bytes:
    """The bytes of a declaration with `changes`, [{"key": [...], "value": ...}], None taking a key out."""
    import tomlkit
    from tomlkit.exceptions import TOMLKitError

    kind = NAMES[which][1]
    end = "\r\n" if before is not None and b"\r\n" in before else "\n"
    text = f"# {FIRST[which]}\n" if before is None else before.decode("utf-8-sig").replace("\r\n", "\n")
    if before is not None:
        decode(text, dict, name)  # its own sentence, with the line, where this is no TOML
    if len(changes) > MOST_CHANGES:
        raise Problem("more changes than one save takes")
    try:
        document = tomlkit.parse(text)
        for change in changes:
            _put(document, _key_of(change), _value_of(change.get("value")))
        made = tomlkit.dumps(document)
    except (TOMLKitError, TypeError, AttributeError, KeyError, IndexError) as problem:
        raise Problem(f"this cannot be written into the file as it stands ({problem}); change it by hand") from None
    faults = faults_of(_plain(tomllib.loads(made)), kind)
    if faults:
        fields = {written_key(key): says for key, says in faults}
        raise Wrong("; ".join(f"{written(key)}: {says}" if key else says for key, says in faults), fields, name)
    data = made.replace("\n", end).encode("utf-8")
    if before is not None and before.startswith(b"\xef\xbb\xbf"):
        data = b"\xef\xbb\xbf" + data
    if len(data) > LARGEST_FILE:
        raise Problem(f"this file would be larger than {LARGEST_FILE // 1_000_000} MB")
    return data


def written_key(key: Key) -> str:
    return ".".join(map(str, key))


def _key_of(change: dict[str, Any]) -> list[str | int]:
    key = change.get("key")
    if not isinstance(key, list) or not 1 <= len(key) <= 6:
        raise Problem("a change names its key")
    for part in key:
        whole = isinstance(part, int) and not isinstance(part, bool) and 0 <= part < MOST_ROWS
        if not whole and not (isinstance(part, str) and 0 < len(part) <= 60 and part.isprintable()):
            raise Problem("a change names its key")
    return key


def _value_of(value: Any, depth: int = 0) -> Any:
    """What may stand in a declaration. Raises Problem for anything else."""
    if isinstance(value, str):
        if len(value) > LONGEST or not value.isprintable():
            raise Problem(f"a text of a declaration is a line of at most {LONGEST} characters")
        return value
    if value is None or isinstance(value, bool | int | float):
        return value
    if isinstance(value, list) and len(value) <= MOST_ROWS and depth < 4:
        return [_value_of(each, depth + 1) for each in value]
    if isinstance(value, dict) and len(value) <= 40 and depth < 4:
        return {str(key): _value_of(each, depth + 1) for key, each in value.items() if each is not None}
    raise Problem("this is no value of a declaration")


def _put(document: Any, key: list[str | int], value: Any) -> None:
    import tomlkit

    at = document
    for part, following in pairwise(key):
        if isinstance(part, int):
            if part == len(at):
                at.append(tomlkit.table() if isinstance(at, tomlkit.items.AoT) else tomlkit.inline_table())
        elif part not in at:
            if value is None:
                return
            at[part] = tomlkit.aot() if isinstance(following, int) else _new_table(at)
        at = at[part]
    last = key[-1]
    if value is None:
        if isinstance(last, int) or last in at:
            del at[last]
    elif isinstance(last, int):
        row = _item(value, isinstance(at, tomlkit.items.AoT))
        if last == len(at):
            at.append(row)
        else:
            at[last] = row
    else:
        at[last] = _item(value, False)


def _new_table(at: Any) -> Any:
    import tomlkit

    within = isinstance(at, tomlkit.items.InlineTable | tomlkit.items.Table)
    return tomlkit.inline_table() if within else tomlkit.table()


def _item(value: Any, table: bool) -> Any:
    import tomlkit

    if isinstance(value, dict):
        made: Any = tomlkit.table() if table else tomlkit.inline_table()
        for key, each in value.items():
            made[key] = _item(each, False)
        return made
    if isinstance(value, list):
        rows = tomlkit.array()
        for each in value:
            rows.append(_item(each, False))
        return rows.multiline(True) if any(isinstance(each, dict) for each in value) else rows
    return value


def _plain(found: Any) -> Any:
    """Values as JSON has them; a date becomes its text."""
    if isinstance(found, dict):
        return {key: _plain(each) for key, each in found.items()}
    if isinstance(found, list):
        return [_plain(each) for each in found]
    return found if isinstance(found, str | int | float | bool) else str(found)
