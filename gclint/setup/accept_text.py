"""The text of a job file with acceptances in it: a new one, or an existing one kept as it is with more at its end."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import Any

import tomli_w

from gclint.problem import Problem
from gclint.setup.declared import Job
from gclint.toml.file import LARGEST_FILE, decode

LINES_NAMED = 6
NEW = """# A job file written by gclint check --accept-all-as.
# Look through it: it says what is used, and what is known and fine.
"""
HEAD = """
# Accepted together, as found then. Each covers what was found and no more: more places, a worse figure,
# a worse grade or another tool are told again. What is graded halt is never accepted in this way.
"""


def job_text(
    before: bytes | None, keys: dict[str, Any], tables: dict[str, dict[str, Any]], accepts: Sequence[dict[str, Any]],
    lines: Sequence[Sequence[int]], path: str,
) -> bytes:
    """The bytes of the job file at `path`: `before` byte for byte (or, where that is None, `keys` and `tables`), then
    `accepts`, each under a remark that names its `lines`. Raises Problem where that would be no sound job file."""
    end = b"\r\n" if before is not None and b"\r\n" in before else b"\n"
    parts = [HEAD]
    for accept, where in zip(accepts, lines):
        parts.append(f"\n{_remark(where)}[[accept]]\n{tomli_w.dumps(accept)}")
    try:
        added = "".join(parts).encode("utf-8").replace(b"\n", end)
        if before is None:
            own = tomli_w.dumps(keys) + "".join(f"\n[{name}]\n{tomli_w.dumps(rows)}" for name, rows in tables.items())
            before = f"{NEW}\n{own}".encode()
    except UnicodeEncodeError:
        raise Problem("a program's name is no Unicode text, so no job file can name it; rename the program") from None
    if before and not before.endswith(b"\n"):
        before += end
    made = before + added
    if len(made) > LARGEST_FILE:
        says = f"the job file would be larger than {LARGEST_FILE // 1_000_000} MB; accept in one file for each folder"
        raise Problem(says, path)
    _prove(made, len(accepts), path)
    return made


def _remark(lines: Sequence[int]) -> str:
    named = ", ".join(str(line) for line in lines[:LINES_NAMED])
    more = " and more" if len(lines) > LINES_NAMED else ""
    return f"# line{'' if len(lines) == 1 else 's'} {named}{more}\n" if lines else ""


def _prove(made: bytes, count: int, path: str) -> None:
    """The text must read as a job with so many acceptances at its end: `accept = [...]` cannot be added to."""
    try:
        job = decode(made.decode("utf-8-sig").replace("\r\n", "\n"), Job, path)
    except Problem:
        job = None
    if job is None or len(job.accept) < count:
        says = "its acceptances stand in a list (accept = [...]); write each as a table of its own, [[accept]]"
        raise Problem(says, path)


def relative(path: str, folder: Path) -> str:
    """A path as a declaration in `folder` names it."""
    import os

    return os.path.relpath(os.path.realpath(path), os.path.realpath(folder)).replace(os.sep, "/")
