"""What is known of one text: the check of it, by the call that `gclint check` makes."""

from __future__ import annotations

import os
import threading
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from gclint import disk
from gclint.check import NoProgram, run
from gclint.problem import Problem
from gclint.run import Run
from gclint.setup.declare import Options
from gclint.stock_store import StockStore


class Superseded(BaseException):
    """The text has changed: this check ends between two steps. No failure, so that nothing takes it for one."""


@dataclass(frozen=True)
class Answer:
    """One of the two: `run`, or `problem`, which kept the program from being judged. `none`: it is no program."""

    source: str
    run: Run | None
    asked: frozenset[disk.Question]
    problem: Problem | None = None
    none: bool = False

    def uses(self, path: str) -> bool:
        """Whether the check asked for this file, be it there or not."""
        name = Path(path).name.lower()
        for kind, where, *more in self.asked:
            place = os.path.normpath(Path(where).absolute())
            if place == path or (kind == "beside" and name in more and place == str(Path(path).parent)):
                return True
        return False


def answer_of(
    source: str, path: str | None, name: str, unsaved: Mapping[str, bytes], stop: threading.Event, shelf: StockStore
) -> Answer:
    """Check a text that stands for the file `path`, with what the editor holds of other files.

    Raises Superseded when `stop` is set meanwhile.
    """

    def told(step: str) -> None:
        if stop.is_set():
            raise Superseded

    with disk.unsaved(unsaved), disk.listening() as heard:
        try:
            done = run(source.encode("utf-8", "replace"), name, Options(), path, told, shelf)
            return Answer(source, done, frozenset(heard))
        except Problem as problem:
            return Answer(source, None, frozenset(heard), problem, none=isinstance(problem, NoProgram))
