"""The packs that ship: compiled when the package is built, so that a plain check needs no parser."""

from __future__ import annotations

import hashlib
from functools import cache
from pathlib import Path

import msgspec

from gclint.judge.packs import Pack, Shipped, as_json, check_together, compile_pack

FORM = "1"  # of the compiled expressions; a new form makes older files stale


def sources(folder: Path) -> dict[str, str]:
    """Text of every pack in the folder of shipped rules, by file name."""
    return {path.name: path.read_text(encoding="utf-8") for path in sorted(folder.glob("*.toml"))}


def fingerprint(texts: dict[str, str]) -> str:
    """SHA-256 of the packs as they are written and of the code that says what their expressions mean."""
    said = hashlib.sha256(FORM.encode())
    for name, text in texts.items():
        said.update(f"\0{name}\0{text}".encode())
    here = Path(__file__).parent
    code = ("compile_rule.py", "packs.py", "units.py")
    for path in sorted([*here.glob("facts*.py"), *here.glob("language.*"), *(here / name for name in code)]):
        if path.suffix in (".py", ".lark"):
            said.update(path.read_bytes())
    return said.hexdigest()


def compile_texts(texts: dict[str, str]) -> tuple[Pack, ...]:
    packs = tuple(compile_pack(text, f"rules/{name}") for name, text in texts.items())
    check_together(packs)
    return packs


def compile_shipped(folder: Path) -> bytes:
    """The content of gclint/rules_compiled.json for the packs in `folder`. Raises Problem where a pack is wrong."""
    texts = sources(folder)
    return as_json(compile_texts(texts), fingerprint(texts))


@cache
def shipped_packs() -> tuple[Pack, ...]:
    """The packs that ship. A compiled file that does not match the texts beside it is not used."""
    from gclint.shipped import folder

    texts = sources(folder())
    compiled = Path(__file__).parent.parent / "rules_compiled.json"
    if compiled.is_file():
        try:
            kept = msgspec.json.decode(compiled.read_bytes(), type=Shipped)
        except (msgspec.DecodeError, OSError):
            kept = None
        if kept is not None and kept.fingerprint == fingerprint(texts):
            return kept.packs
    return compile_texts(texts)
