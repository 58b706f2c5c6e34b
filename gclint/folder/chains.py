"""Programs of one job that cut one blank in turn: a folder run checks them in their order, by one worker."""

from __future__ import annotations

import os
from contextlib import suppress
from pathlib import Path

from msgspec import Struct

from gclint.folder.outcome import Task
from gclint.folder.source import STANDARD_INPUT
from gclint.problem import Problem
from gclint.setup.declare import Options, declare
from gclint.setup.order import steps_of


class Place(Struct, frozen=True):
    """Where a program stands: in which chain, behind how many others; their bytes, which may have to be cut first."""

    chain: str
    at: int
    before: int


ALONE = Place("", 0, 0)


class Chains:
    """Reads each folder's job once."""

    def __init__(self) -> None:
        self.folders: dict[tuple[str, Options], dict[str, Place]] = {}

    def of(self, task: Task) -> Place:
        """A program that no chain names, or whose declarations are wrong, stands alone: its check says what is."""
        name = task.source.name
        if name == STANDARD_INPUT:
            return ALONE
        key = str(Path(name).parent), task.options
        if key not in self.folders:
            self.folders[key] = _places(name, task.options)
        places = self.folders[key]
        return places.get(os.path.realpath(name), ALONE) if places else ALONE


def _places(name: str, options: Options) -> dict[str, Place]:
    try:
        declared = declare(options, name)
        job, file = declared.job, declared.job_file
        if job is None or file is None or not (job.after or isinstance(job.program, tuple)):
            return {}
        steps = steps_of(job, file, name)
    except Problem:
        return {}
    places, before = {}, 0
    chain = f"{os.path.realpath(file.path)} {options!r}"
    for at, step in enumerate(steps):
        places[os.path.realpath(step.path)] = Place(chain, at, before)
        with suppress(OSError, ValueError):
            before += Path(step.path).stat().st_size
    return places if len(places) > 1 else {}
