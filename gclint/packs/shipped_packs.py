"""The packs that ship: compiled when the package is built, so that a plain check needs no parser."""

from __future__ import annotations

import hashlib
from functools import cache
from pathlib import Path

import msgspec

from gclint.packs.load import check_together, compile_group
from gclint.packs.pack import GROUP_FILE, Pack, Shipped, as_json

FORM = "1"  # of the compiled expressions; a new form makes older files stale


def sources(folder: Path) -> dict[str, str]:
    """Text of every rule in the folder of shipped rules, and of what heads each group, by GROUP/FILE."""
    groups = sorted(path.parent for path in folder.glob(f"*/{GROUP_FILE}"))
    return {
        f"{group.name}/{path.name}": path.read_text(encoding="utf-8")
        for group in groups
        for path in sorted(group.glob("*.toml"))
    }


def load_group(folder: Path) -> Pack:
    """Read, check and compile a pack whose rules are files beside a `group.toml`. Raises Problem."""
    from gclint.toml.file import read_text  # a check by compiled rules does not need it

    named = sorted(path for path in folder.iterdir() if path.suffix == ".toml")
    return compile_group({path.name: read_text(path, "rule") for path in named}, folder.as_posix())


def fingerprint(texts: dict[str, str]) -> str:
    """SHA-256 of the packs as they are written and of the code that says what their expressions mean."""
    said = hashlib.sha256(FORM.encode())
    for name, text in texts.items():
        said.update(f"\0{name}\0{text}".encode())
    package = Path(__file__).parent.parent
    for room in ("language", "facts", "packs"):
        for path in sorted((package / room).rglob("*.*")):
            if path.suffix in (".py", ".lark"):
                said.update(path.read_bytes())
    return said.hexdigest()


def compile_texts(texts: dict[str, str]) -> tuple[Pack, ...]:
    groups: dict[str, dict[str, str]] = {}
    for name, text in texts.items():
        group, _, file = name.partition("/")
        groups.setdefault(group, {})[file] = text
    packs = tuple(compile_group(files, f"rules/{group}") for group, files in groups.items())
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
