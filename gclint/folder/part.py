"""`--part I/N`: one of N shares of a run, for hosts that work side by side without speaking to each other.

A program's share is found from its name alone: below the folder that was named, or from the working folder where the
file itself was. So every program is in exactly one share, whatever else the folder holds and wherever it lies.
"""

from __future__ import annotations

import hashlib
import os
import unicodedata
from pathlib import Path

from msgspec import Struct

from gclint.folder.find import Found
from gclint.problem import Problem

MOST_PARTS = 100_000


class Part(Struct, frozen=True):
    """Share `number` of `of`, from 1."""

    number: int
    of: int

    def holds(self, name: str) -> bool:
        """Whether the file with this relative name is in the share, however a system writes slashes and accents."""
        spelled = unicodedata.normalize("NFC", name.replace(os.sep, "/"))
        digest = hashlib.sha256(spelled.encode("utf-8", "surrogateescape")).digest()
        return int.from_bytes(digest[:8], "big") % self.of == self.number - 1

    def __str__(self) -> str:
        return f"part {self.number} of {self.of}"


def part_from(text: str) -> Part:
    """Read "2/5". Raises Problem."""
    number, bar, of = text.partition("/")
    if bar and number.isdecimal() and of.isdecimal() and len(text) < 20 and 1 <= int(number) <= int(of) <= MOST_PARTS:
        return Part(int(number), int(of))
    raise Problem(f'"{text[:30]}" is no part; write which of how many, such as 2/5', "--part")


def keep(part: Part, named: tuple[str, ...], found: Found) -> int:
    """Leave in `found` what belongs to the part, told files and folders too; give how many programs there were."""
    folders = [os.path.normpath(name) for name in named if Path(name).is_dir()]
    files = {name for name in named if not Path(name).is_dir()}
    whole = len(found.sources)
    found.sources = [each for each in found.sources if part.holds(_relative(each.name, folders, files))]
    found.passed = [each for each in found.passed if part.holds(_relative(each.path, folders, files))]
    found.problems = [each for each in found.problems if part.holds(_relative(each.path or "", folders, files))]
    return whole


def _relative(name: str, folders: list[str], files: set[str]) -> str:
    for folder in () if name in files else folders:
        inside = os.path.relpath(name, folder)
        if Path(inside).parts[:1] != (os.pardir,):
            return inside
    return os.path.relpath(name)
