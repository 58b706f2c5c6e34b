"""Files of the desk's folder by the names that its page gives: nothing outside it, through no link."""

from __future__ import annotations

import os
from pathlib import Path, PurePosixPath

from gclint.problem import Problem
from gclint.program import ENDINGS

LONGEST_NAME = 1000  # characters of a name with its folders
LONGEST_OWN = 120  # of a dropped file's own name
FORBIDDEN = '<>:"/\\|?*'  # in a name that every system takes
DEVICES = {"con", "prn", "aux", "nul", *(f"{port}{n}" for port in ("com", "lpt") for n in range(1, 10))}


class Outside(Problem):
    """A name that leads out of the folder."""


class Missing(Problem):
    """A name of nothing that is there."""


def inside(root: Path, name: str, folder: bool = False) -> Path:
    """The file (or folder) of this name below `root`, whose own name is real. Raises Outside or Missing."""
    parts = PurePosixPath(name).parts
    if "\0" in name or "\\" in name or len(name) > LONGEST_NAME or name.startswith("/") or ".." in parts:
        raise Outside("this name leads out of the desk's folder")
    if any(part.startswith(".") for part in parts) or (os.name == "nt" and ":" in name):
        raise Outside("this name leads out of the desk's folder")
    path = root.joinpath(*parts)
    try:
        real = path.resolve()
        there = real.is_dir() if folder else real.is_file()
    except (OSError, RuntimeError, ValueError):
        raise Missing(f'there is no "{name[:80]}" in this folder') from None
    if not real.is_relative_to(root):
        raise Outside("this is a link that leads out of the desk's folder")
    if not there:
        raise Missing(f'there is no "{name[:80]}" in this folder')
    return path


def shown(root: Path, path: Path) -> str:
    """'jobs/tide-ring.nc' for what lies below `root`, else the whole path."""
    whole = Path(os.path.normpath(path))
    return whole.relative_to(root).as_posix() if whole.is_relative_to(root) else str(whole)


def is_within(root: Path, path: Path) -> bool:
    """Whether a declaration, be it there or not, really lies below `root`."""
    try:
        return path.parent.resolve().is_relative_to(root) and not path.is_symlink()
    except (OSError, RuntimeError):
        return False


def name_for_drop(given: str) -> str:
    """The name under which a dropped program is kept. Raises Problem for one that a file should not have."""
    name = given.strip()
    if not name or len(name) > LONGEST_OWN or not name.isprintable() or name.startswith((".", "-")):
        raise Problem("the name of a program is 1 to 120 characters that can be seen, and begins with neither . nor -")
    if any(mark in name for mark in FORBIDDEN) or name.endswith((".", " ")):
        raise Problem(f"the name of a program holds none of {' '.join(FORBIDDEN)}, and ends in neither point nor space")
    if name.partition(".")[0].lower() in DEVICES:
        raise Problem(f'"{name[:40]}" is the name of a device on some machines; give the file another')
    if not name.lower().endswith(ENDINGS):
        raise Problem(f'"{name[:60]}" does not end as a program does: {", ".join(ENDINGS)}')
    return name
