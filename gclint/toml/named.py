"""Files that a declaration names. A folder may come from somebody else: it must not lead a run to files of its choice.

What a declaration may name: another declaration, that is a file whose real name (behind every link) ends in .toml; and
programs that really lie in its own folder or below.
"""

from __future__ import annotations

import os
from pathlib import Path

from gclint import disk
from gclint.problem import Problem

LONGEST_NAME = 250  # characters
SHOWN = 60  # characters of a name that are repeated


def declaration(folder: Path, name: str) -> Path:
    """Where the declaration `name` lies, seen from `folder`. Raises Problem, without a place, for one not allowed."""
    path = _path(folder, name)
    if not name.endswith(".toml"):
        raise Problem(f'"{name[:SHOWN]}" is not the name of a declaration: such files end in .toml')
    really_toml(path)
    return path


def program(folder: Path, name: str) -> Path:
    """Where the program `name` of a job lies; the same Problem."""
    path = _path(folder, name)
    if os.path.normpath(name) in (".", "..") or name.endswith(("/", os.sep)):
        raise Problem(f'"{name[:SHOWN]}" is not the name of a program')
    if not Path(disk.real(path)).is_relative_to(disk.real(folder)):
        raise Problem(f'"{name[:SHOWN]}" lies outside the folder of this job; a job names programs of its own folder')
    return path


def really_toml(path: Path) -> None:
    """Raises Problem where a file that is called .toml is a link to something else."""
    if not disk.real(path).endswith(".toml"):
        raise Problem("this is a link to a file that does not end in .toml", str(path))


def readable(path: Path) -> Path:
    """Give back a declaration that was found by its name. Raises Problem where something of that name is no file.

    What is there and cannot be read is never passed over: the program would be judged as if nothing were declared.
    """
    if not disk.is_file(path):
        what = "it is a folder, a pipe or a device" if disk.exists(path) else "it is a link that leads nowhere"
        raise Problem(f"{path.name} is there but cannot be read: {what}", str(path))
    really_toml(path)
    return path


def _path(folder: Path, name: str) -> Path:
    if "\0" in name or len(name) > LONGEST_NAME:
        raise Problem("this is not the name of a file")
    return folder / name
