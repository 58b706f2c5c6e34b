"""Acceptances as they are written: [[accept]] in job.toml, and in a program
(gclint accept straight-plunge because the holes are drilled first)."""

from __future__ import annotations

import re
from pathlib import Path
from typing import TYPE_CHECKING

from gclint import disk
from gclint.lazy_regex import Later
from gclint.problem import Problem
from gclint.tables.program import decode
from gclint.tables.setup import Accept

if TYPE_CHECKING:
    from gclint.setup.declare import Declared
    from gclint.tables.program import Program

_ACCEPT = Later(r"\s*gclint\s+accept\b\s*(.*)", re.IGNORECASE | re.DOTALL)


def accepts_in(program: Program) -> tuple[Accept, ...]:
    """Acceptances written in comments. Raises Problem, with its place, for one that lacks its rule or its reason."""
    import numpy as np

    accepts: dict[int, Accept] = {}
    if not len(program.comment_start):
        return ()
    first, last = int(program.comment_start[0]), int(program.comment_end[-1])
    for word in (b"gclint", b"GCLINT"):  # some posts write every comment in capitals
        at = program.data.find(word, first, last)
        while at >= 0:
            row = int(np.searchsorted(program.comment_start, at, side="right")) - 1
            if row >= 0 and row not in accepts and at < program.comment_end[row]:
                start = int(program.comment_start[row])
                match = _ACCEPT.fullmatch(decode(program.data[start : int(program.comment_end[row])]))
                if match:
                    accepts[row] = _accept(program, match[1], start)
            at = program.data.find(word, at + 1, last)
    return tuple(accepts[row] for row in sorted(accepts))


def _accept(program: Program, text: str, start: int) -> Accept:
    first, _, rest = text.strip().partition(" ")
    halt = first.lower() == "halt"
    rule, _, rest = rest.strip().partition(" ") if halt else (first, "", rest)
    said = re.fullmatch(r"\s*(?:by\s+(.*?\S)\s+)?because\s+(.*\S)\s*", rest, re.IGNORECASE | re.DOTALL)
    line, column = program.place(start)
    if not rule or said is None:
        says = "an acceptance needs a rule and a reason: (gclint accept straight-plunge because the holes are drilled)"
        raise Problem(says, program.name, line, column)
    grade = "halt" if halt else "change"
    return Accept(rule.lower(), said[2], None, line, f"{program.name} line {line}", by=said[1] or "", grade=grade)


def accepts_of_job(declared: Declared) -> tuple[Accept, ...]:
    """The job's acceptances that are for this program. Raises Problem for one without its reason."""
    job, file, made = declared.job, declared.job_file, []
    if job is None or file is None:
        return ()
    here = disk.real(Path(declared.program_path)) if declared.program_path else None
    for n, table in enumerate(job.accept):
        if not table.because.strip():
            raise file.wrong(("accept", n, "because"), "an acceptance needs its reason")
        if table.program is not None and not _for(table.program, Path(file.path).parent, here):
            continue
        made.append(
            Accept(
                table.rule, table.because.strip(), table.tool, None, file.line_of(("accept", n, "rule")),
                by=(table.by or "").strip(), grade=table.grade or "change", places=table.places, found=table.found,
            )
        )  # fmt: skip
    return tuple(made)


def _for(name: str, folder: Path, here: str | None) -> bool:
    """Whether the program that an acceptance names is the one at hand (`here`: its real path)."""
    if here is None or "\0" in name:
        return False
    return name.replace("\\", "/").rpartition("/")[2] == Path(here).name and (
        disk.real(folder / name) == here
    )
