"""Subprograms in files beside the program: found by name in its folder, and nowhere else."""

from __future__ import annotations

from pathlib import Path

from gclint.problem import Problem
from gclint.program import ENDINGS
from gclint.program.read import refuse_unreadable, tabulate
from gclint.program.table import Program

LARGEST = 16 << 20  # bytes of one file beside
MOST_ENTRIES = 20_000  # of the folder that are looked at


def find(folder: Path | None, names: tuple[str, ...]) -> Program | None:
    """The first file of the folder with one of these names (any case, a usual ending); None where there is none.

    Only a plain file that lies in the folder itself is read: a name with a path in it matches nothing, and a link that
    leads out of the folder is passed over. Raises Problem for a file that is no program.
    """
    if folder is None:
        return None
    wanted = {(name + ending).lower() for name in names for ending in ("", *ENDINGS)}
    try:
        home = folder.resolve()
        there = []
        for count, entry in enumerate(folder.iterdir()):
            if count >= MOST_ENTRIES:
                break
            if entry.name.lower() in wanted:
                there.append(entry)
        for entry in sorted(there):
            whole = entry.resolve()
            if whole.parent != home or not whole.is_file():
                continue
            with whole.open("rb") as file:
                data = file.read(LARGEST + 1)
            if len(data) > LARGEST:
                raise Problem("this subprogram is over 16 MiB", entry.name)
            refuse_unreadable(data, entry.name)
            return tabulate(data, entry.name)
    except (OSError, RuntimeError):
        return None
    return None
