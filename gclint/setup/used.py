"""The declaration files a verdict rests on, with a fingerprint each: the same verdict needs the same files."""

from __future__ import annotations

import hashlib
from pathlib import Path

from gclint.setup.declare import Declared
from gclint.shipped import folder
from gclint.tables.material import Material
from gclint.tables.setup import UsedFile


def used_files(declared: Declared, material: Material | None, controller_card: Path | None) -> tuple[UsedFile, ...]:
    """In the order in which they count; cards that ship are not among them. Raises Problem."""
    made = [
        _used(what, file.path, file.text)
        for what, file in (("job file", declared.job_file), ("shop file", declared.shop_file))
        if file is not None
    ]
    own: list[tuple[str, str]] = [("rule pack", path) for path in declared.packs]
    if material is not None and not Path(material.path).is_relative_to(folder()):
        own.append(("material card", material.path))
    if controller_card is not None:
        own.append(("controller card", str(controller_card)))
    return (*made, *(_read(what, path) for what, path in own))


def _read(what: str, path: str) -> UsedFile:
    from gclint.toml.file import read_text

    return _used(what, path, read_text(Path(path), what))


def _used(what: str, path: str, text: str) -> UsedFile:
    """Of the text, so that a change of line ends alone leaves the fingerprint as it is."""
    return UsedFile(what, path, "sha256:" + hashlib.sha256(text.encode("utf-8", "surrogatepass")).hexdigest())
