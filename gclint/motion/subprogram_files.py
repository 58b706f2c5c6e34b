"""Subprograms in files beside the program: found by name in its folder, and nowhere else."""

from __future__ import annotations

from pathlib import Path

from gclint import disk
from gclint.problem import Problem
from gclint.program import ENDINGS
from gclint.program.read import refuse_unreadable, tabulate
from gclint.tables.program import Program

LARGEST = 16 << 20  # bytes of one file beside


def find(folder: Path | None, names: tuple[str, ...]) -> Program | None:
    """The first file of the folder with one of these names (any case, a usual ending); None where there is none.

    Only a plain file that lies in the folder itself is read: a name with a path in it matches nothing, and a link that
    leads out of the folder is passed over. Raises Problem for a file that is no program.
    """
    if folder is None:
        return None
    wanted = frozenset((name + ending).lower() for name in names for ending in ("", *ENDINGS))
    found = disk.beside(folder, wanted, LARGEST + 1)
    if found is None:
        return None
    name, data = found
    if len(data) > LARGEST:
        raise Problem("this subprogram is over 16 MiB", name)
    refuse_unreadable(data, name)
    return tabulate(data, name)
