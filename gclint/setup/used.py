"""The declaration files a verdict rests on, with a fingerprint each: the same verdict needs the same files."""

from __future__ import annotations

import hashlib
import re
from pathlib import Path

from gclint.setup.declare import Declared
from gclint.shipped import folder
from gclint.tables.material import Material
from gclint.tables.setup import UsedFile

SIGNED = re.compile(r"\s*\[\[\s*signed\s*\]\]")


def used_files(declared: Declared, material: Material | None, controller_card: Path | None) -> tuple[UsedFile, ...]:
    """In the order in which they count; cards that ship are not among them. Raises Problem."""
    made = [
        _used(what, file.path, unsigned(file.text) if what == "job file" else file.text)
        for what, file in (("job file", declared.job_file), ("shop file", declared.shop_file))
        if file is not None
    ]
    own: list[tuple[str, str]] = [("rule pack", path) for path in declared.packs]
    if material is not None and not Path(material.path).is_relative_to(folder()):
        own.append(("material card", material.path))
    if controller_card is not None:
        own.append(("controller card", str(controller_card)))
    return (*made, *(_read(what, path) for what, path in own))


def unsigned(text: str) -> str:
    """The text of a job file without its `[[signed]]`: what a signature is of cannot hold the signature."""
    kept: list[str] = []
    skipping = False
    for line in text.split("\n"):
        if line.lstrip().startswith("["):
            skipping = bool(SIGNED.match(line))
        if not skipping:
            kept.append(line)
    return "\n".join(kept).rstrip() + "\n"


def of_all(used: tuple[UsedFile, ...]) -> str:
    """One fingerprint of all declaration files, whatever their names and places."""
    said = "\n".join(sorted(f"{each.what} {each.fingerprint}" for each in used))
    return "sha256:" + hashlib.sha256(said.encode()).hexdigest()


def _read(what: str, path: str) -> UsedFile:
    from gclint.toml.file import read_text

    return _used(what, path, read_text(Path(path), what))


def _used(what: str, path: str, text: str) -> UsedFile:
    """Of the text, so that a change of line ends alone leaves the fingerprint as it is."""
    return UsedFile(what, path, "sha256:" + hashlib.sha256(text.encode("utf-8", "surrogatepass")).hexdigest())
