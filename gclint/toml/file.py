"""Reads one TOML file into its struct; what is wrong becomes a Problem with file, line, column and what to write."""

from __future__ import annotations

import tomllib
from pathlib import Path
from typing import Any, TypeVar

import msgspec

from gclint import disk
from gclint.lazy_regex import Later
from gclint.problem import Problem, nearest
from gclint.toml.quantity import from_text

T = TypeVar("T")
LARGEST_FILE = 1_000_000  # bytes; a declaration of a whole shop is a few thousand
DEEPEST_NAME = 100  # parts of a dotted name; the time to read one grows with their square
TEXTS = Later(r"""\"[^"\\\n]*(?:\\.[^"\\\n]*)*\"|'[^'\n]*'""")
BETWEEN_COMMAS = Later(r"[^,=\[\]{}\n#]+")
Key = tuple[str | int, ...]


def read_text(path: Path, called: str) -> str:
    """The text of a declaration file. `called` names it for people: "shop file", "job file", "material card"."""
    try:
        data = disk.content(path, LARGEST_FILE + 1)
        if len(data) > LARGEST_FILE:
            raise Problem(f"this {called} is larger than {LARGEST_FILE // 1_000_000} MB", str(path))
        return data.decode("utf-8-sig").replace("\r\n", "\n")
    except disk.NotAFile:
        raise Problem(f"this {called} is not a file", str(path)) from None
    except FileNotFoundError:
        raise Problem(f"there is no such {called}", str(path)) from None
    except UnicodeDecodeError as error:
        raise Problem(f"this {called} is not UTF-8 text (byte {error.start})", str(path)) from None
    except (OSError, ValueError) as error:
        reason = error.strerror if isinstance(error, OSError) else "the path is not usable"
        raise Problem(f"this {called} cannot be read: {reason}", str(path)) from None


def load(path: Path, into: type[T], called: str) -> T:
    return decode(read_text(path, called), into, str(path))


def decode(text: str, into: type[T], path: str) -> T:
    """`text` as a struct of type `into`."""
    if text.count(".") > DEEPEST_NAME:
        for run in BETWEEN_COMMAS.finditer(TEXTS.sub("s", text)):
            if run[0].count(".") > DEEPEST_NAME:
                raise Problem(f"a name in this file has over {DEEPEST_NAME} parts", path)
    try:
        found = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        says, line, column = _syntax(str(error), text)
        raise Problem(says, path, line, column) from None
    except (RecursionError, ValueError):
        raise Problem("this file is nested too deeply or holds a number no shop needs", path) from None
    try:
        return msgspec.convert(found, into, dec_hook=from_text)
    except (msgspec.ValidationError, Problem) as error:
        raise _explained(found, into, text, path, str(error)) from None


def faults_of(found: dict[str, Any], into: type, most: int = 20) -> list[tuple[Key, str]]:
    """Everything that does not fit a struct, each with its key; `found` loses what is wrong."""
    import msgspec.inspect as inspect

    wanted = inspect.type_info(into)
    faults: list[tuple[Key, str]] = []
    while len(faults) < most:
        fault = _fault(wanted, found, ())
        if fault is None or any(fault[0] == key for key, _ in faults):
            break
        faults.append(fault[:2])
        if not _taken_out(found, fault[0]):
            break
    return faults


def _taken_out(found: Any, key: Key) -> bool:
    """Whether what stands at `key` could be left out; of a list nothing can, the rest would change places."""
    for part in key[:-1]:
        found = found[part]
    if not key or not isinstance(found, dict) or key[-1] not in found:
        return False
    del found[key[-1]]
    return True


def problem_at(text: str, path: str, key: Key, says: str, on_key: bool = False) -> Problem:
    """A Problem placed at a key path of a TOML text that reads well but makes no sense."""
    from gclint.toml.place import places_of  # only when something is wrong

    place = places_of(text).of(key, on_key)
    line, column = place if place else (None, None)
    return Problem(f"{written(key)}: {says}" if key else says, path, line, column)


def written(key: Key) -> str:
    """machine.travel.x; the place in an array is left to the line number."""
    return ".".join(part if part.replace("-", "").replace("_", "").isalnum() else f'"{part}"'
                    for part in key if isinstance(part, str))


def _syntax(message: str, text: str) -> tuple[str, int | None, int | None]:
    says, _, place = message.partition(" (at ")
    numbers = [int(word) for word in place.replace(",", " ").replace(")", " ").split() if word.isdigit()]
    if len(numbers) == 2:
        line, column = numbers
    else:
        line, column = text.count("\n") + 1, len(text) - (text.rfind("\n") + 1) + 1
    return f"this is not TOML: {says[:1].lower()}{says[1:]}", line, column


def _explained(found: dict[str, Any], into: type, text: str, path: str, otherwise: str) -> Problem:
    import msgspec.inspect as inspect

    fault = _fault(inspect.type_info(into), found, ())
    if fault is None:
        return Problem(otherwise, path)
    key, says, on_key = fault
    return problem_at(text, path, key, says, on_key)


_PLAIN = {
    "StrType": "text in quotes",
    "BoolType": "true or false",
    "IntType": "a whole number",
    "FloatType": "a number",
    "StructType": "a table",
    "VarTupleType": "a list",
    "LiteralType": "text in quotes",
}


def _fault(wanted: Any, given: Any, key: Key) -> tuple[Key, str, bool] | None:
    """The first thing in `given` that does not fit `wanted` (of msgspec.inspect): its key, a sentence, at the key?"""
    name = type(wanted).__name__
    if name == "Metadata":  # a description
        return _fault(wanted.type, given, key)
    if name == "UnionType":
        return _union_fault(wanted, given, key)
    if name == "StructType":
        return _struct_fault(wanted, given, key)
    if name == "DictType":
        if not isinstance(given, dict):
            return key, f"expected a table, got {_shown(given)}", False
        return _first(_fault(wanted.value_type, value, (*key, inner)) for inner, value in given.items())
    if name in ("VarTupleType", "ListType", "TupleType"):
        return _list_fault(wanted, given, key, name)
    if name == "LiteralType":
        if given in wanted.values and isinstance(given, str):
            return None
        values = tuple(str(value) for value in wanted.values)
        tail = nearest(str(given), values) if isinstance(given, str) else f"; known: {', '.join(values)}"
        return key, f"{_shown(given)} is none of its values{tail}", False
    try:
        if name == "CustomType":
            from_text(wanted.cls, given)
        else:
            msgspec.convert(given, _builtin(wanted))
    except Problem as problem:
        return key, problem.says, False
    except msgspec.ValidationError as error:
        if name == "IntType" and isinstance(given, int) and not isinstance(given, bool):
            return key, f"{given} is out of range ({_bounds(wanted)})", False
        expected = _PLAIN.get(name, str(error).partition(" - at")[0].lower())
        return key, f"expected {expected}, got {_shown(given)}", False
    return None


def _builtin(wanted: Any) -> Any:
    from typing import Annotated

    plain = {"StrType": str, "BoolType": bool, "IntType": int, "FloatType": float}.get(type(wanted).__name__, object)
    if plain is int:
        return Annotated[int, msgspec.Meta(ge=wanted.ge, le=wanted.le)]
    return plain


def _bounds(wanted: Any) -> str:
    return f"{wanted.ge} to {wanted.le}" if wanted.le is not None else f"{wanted.ge} or more"


def _union_fault(wanted: Any, given: Any, key: Key) -> tuple[Key, str, bool] | None:
    choices = [choice for choice in wanted.types if type(choice).__name__ != "NoneType"]
    faults = [_fault(choice, given, key) for choice in choices]
    if any(fault is None for fault in faults):
        return None
    if len(choices) == 1:
        return faults[0]
    for choice, fault in zip(choices, faults):
        fits = {"StructType": dict, "LiteralType": str, "VarTupleType": list}.get(type(choice).__name__)
        if fits and isinstance(given, fits):
            return fault
    names = list(dict.fromkeys(_PLAIN.get(type(choice).__name__, "a value") for choice in choices))
    return key, f"expected {' or '.join(names)}, got {_shown(given)}", False


def _struct_fault(wanted: Any, given: Any, key: Key) -> tuple[Key, str, bool] | None:
    if not isinstance(given, dict):
        return key, f"expected a table, got {_shown(given)}", False
    fields = {field.encode_name: field for field in wanted.fields}
    for name in given:
        if name not in fields:
            return (*key, name), f"there is no such key{nearest(name, tuple(fields))}", True
    for name, field in fields.items():
        if name in given:
            fault = _fault(field.type, given[name], (*key, name))
            if fault:
                return fault
        elif field.required:
            return key, f'the key "{name}" is missing', True
    return None


def _list_fault(wanted: Any, given: Any, key: Key, name: str) -> tuple[Key, str, bool] | None:
    if not isinstance(given, list):
        return key, f"expected a list in square brackets, got {_shown(given)}", False
    if name == "TupleType":
        if len(given) != len(wanted.item_types):
            return key, f"expected a list of {len(wanted.item_types)}, got {len(given)}", False
        pairs = zip(wanted.item_types, given)
        return _first(_fault(kind, value, (*key, n)) for n, (kind, value) in enumerate(pairs))
    return _first(_fault(wanted.item_type, value, (*key, n)) for n, value in enumerate(given))


def _first(faults: Any) -> tuple[Key, str, bool] | None:
    return next((fault for fault in faults if fault is not None), None)


def _shown(given: Any) -> str:
    if isinstance(given, bool):
        return "true" if given else "false"
    if isinstance(given, str):
        return f'"{given if len(given) <= 40 else given[:37] + "..."}"'
    if isinstance(given, int | float):
        return str(given)[:40]
    return "a list" if isinstance(given, list) else "a table" if isinstance(given, dict) else "a date"
