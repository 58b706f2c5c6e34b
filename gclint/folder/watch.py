"""Watches a folder: what settles is checked, and its report and verdict are kept beside it.

One loop, in which nothing waits for long: changes come in, files settle, programs that they concern go to the workers,
answers become files. A program that changes while it is being checked is checked again before anything is written.
"""

from __future__ import annotations

import hashlib
import os
import threading
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import partial
from pathlib import Path

import msgspec
from msgspec.structs import replace

from gclint.digest.sheet_words import verdict
from gclint.folder.cache import Cache
from gclint.folder.find import REPORTS, find
from gclint.folder.outcome import Outcome, Source, Task
from gclint.folder.reports import Form, Place, not_checked, written_as
from gclint.folder.run import answer, patience_for
from gclint.folder.settle import Settling, Sight, see
from gclint.folder.workers import Job, Workers
from gclint.problem import Problem
from gclint.run import Run
from gclint.setup.declare import Options

TICK_MS = 100  # between two looks at what has settled
TRY_AGAIN = 30.0  # s after which files that could not be written are tried again
LOOK_OUTSIDE = 1.0  # s between two looks at declarations that lie outside the folder
CHANGED = "it, or what it is checked by, has changed since its report was written; it is being checked again"
GONE = "this program is gone; the report beside this line is about what it was"


@dataclass(frozen=True)
class Watching:
    """What to watch, and how; `said` hears each verdict, `complained` each thing that went wrong."""

    folder: Path
    out: Path | None
    form: Form
    options: Options
    cache: Cache | None
    cores: int
    seconds: float | None
    quiet: float
    said: Callable[[str], None]
    complained: Callable[[str], object]


class Report(msgspec.Struct, frozen=True):
    """Has workers make the report of each program."""

    form: Form

    def made(self, source: Source, run: Run, state: str) -> str:
        return written_as(run, self.form)

    def stands(self, source: Source, state: str) -> None:
        """Told by the mark of the file, before a worker is asked."""


def watch(what: Watching, changes: Callable[[threading.Event], Iterator[set[str]]], stop: threading.Event) -> None:
    """Run until `stop` is set. `changes` yields the paths that were touched, an empty set when nothing happens."""
    with Workers(what.cores, partial(answer, what.cache, (Report(what.form),)), fresh=True) as workers:
        loop = _Loop(what, workers)
        loop.begin()
        for touched in changes(stop):
            if stop.is_set():
                return
            loop.turn(touched, time.monotonic())


class _Loop:
    def __init__(self, what: Watching, workers: Workers) -> None:
        self.what, self.workers = what, workers
        self.settling = Settling(what.quiet)
        self.known: dict[str, Source] = {}  # programs, by their absolute path
        self.queue: dict[str, float] = {}  # paths of programs to check, and from when on
        self.working: dict[int, str] = {}  # path by job number
        self.uses: dict[str, frozenset[str]] = {}  # by program, the files and folders its check asked about
        self.outside: dict[str, Sight] = {}  # those that do not lie in the folder, as they were last seen
        self.looked, self.number = 0.0, 0

    def begin(self) -> None:
        """Everything that is there is checked, unless its report is of this very state."""
        self.known = self._programs()
        self.queue = dict.fromkeys(self.known, 0.0)

    def turn(self, touched: set[str], now: float) -> None:
        mine = {path for path in touched if self._counts(path)}
        self.settling.touch(mine, now)
        for path in mine & self.known.keys():
            self._stale(path, CHANGED)
        if now - self.looked >= LOOK_OUTSIDE:
            self.looked = now
            changed = {path for path, before in self.outside.items() if see(path) != before}
            self.settling.touch(changed, now)
            self.outside.update((path, see(path)) for path in changed)
        settled = self.settling.settled(now)
        if settled:
            self._concern(settled, now)
        self._give(now)
        for number, data in self.workers.answers(0.0):
            self._answered(self.working.pop(number), msgspec.json.decode(data, type=Outcome), now)

    def _programs(self) -> dict[str, Source]:
        if not self.what.folder.is_dir():
            raise Problem("this folder is gone, or cannot be read", str(self.what.folder))
        sources = find((str(self.what.folder),), self.what.out).sources
        return {str(Path(source.name).absolute()): source for source in sources}

    def _counts(self, path: str) -> bool:
        """Whether a change of this path can concern a program."""
        inside = Path(os.path.relpath(path, self.what.folder.absolute()))
        name = inside.name
        if name.endswith(REPORTS) or any(part.startswith(".") and part != "." for part in inside.parts):
            return False
        return self.what.out is None or not Path(path).is_relative_to(self.what.out.absolute())

    def _concern(self, settled: set[str], now: float) -> None:
        """Queue what settled files concern; take note of what is new and what is gone."""
        if self.what.cache is not None:
            self.what.cache.forget()
        before, self.known = self.known, self._programs()
        real = {_real(path) for path in settled}
        real |= {f"{Path(path).parent}{os.sep}" for path in real}
        for path in self.known:
            if path in settled or not self.uses.get(path, frozenset()).isdisjoint(real):
                self.queue[path] = 0.0
                self._stale(path, CHANGED)
            elif path not in before and path not in self.settling.waiting:
                self.settling.touch((path,), now)  # it came with a folder; it may still be growing
        for path in before.keys() - self.known.keys():
            self.uses.pop(path, None)
            self.queue.pop(path, None)
            if not Path(path).exists():
                self._stale(path, GONE, before[path])

    def _give(self, now: float) -> None:
        """Hand queued programs to idle workers; one whose files are of this very state is done already."""
        for path, due in list(self.queue.items()):
            if not self.workers.free:
                return
            if due > now or path in self.working.values() or path in self.settling.waiting:
                continue
            del self.queue[path]
            task = Task(self.known[path], self.what.options)
            content = _content(path)
            if self._stands(path, task, content):
                continue
            self.number += 1
            self.working[self.number] = path
            size = (see(path) or (0, 0, 0))[0]
            self.workers.give(Job(self.number, task, self.what.seconds or patience_for(size), size))

    def _stands(self, path: str, task: Task, content: str) -> bool:
        cache = self.what.cache
        if cache is None or not content or not self._place(path).marked(cache.answered(task, content)):
            return False
        outcome = cache.look(task, content)
        if outcome is None:
            return False
        self._use(path, outcome)
        return True

    def _answered(self, path: str, outcome: Outcome, now: float) -> None:
        if path in self.settling.waiting or path in self.queue or path not in self.known:
            return  # it has changed since, or is gone
        source = self.known[path]
        self._use(path, outcome)
        if outcome.kind == "skipped":
            self._stale(path, f"this is no milling program: {outcome.says}")
            return
        key = ""
        if outcome.checked is not None:
            said = f"{verdict(outcome.checked)} Read as {outcome.checked.fingerprint.partition(':')[2][:12]}."
            key = self._key(source, outcome)
        else:
            said = f"not checked: {Problem(outcome.says, None, outcome.line, outcome.column)}"
        try:
            text = outcome.made[0] if outcome.made else not_checked(source.shown, said, self.what.form)
            self._place(path).write(text, f"{source.shown}: {said}", key)
        except Problem as problem:
            self.what.complained(str(problem))
            self.queue[path] = now + TRY_AGAIN
        self.what.said(f"{source.shown}: {said}")

    def _key(self, source: Source, outcome: Outcome) -> str:
        """What names the state this outcome is of; "" where that has gone by already, or nothing is kept."""
        cache = self.what.cache
        if cache is None or outcome.checked is None:
            return ""
        cache.forget()
        task, content = Task(source, self.what.options), outcome.checked.fingerprint.partition(":")[2]
        return cache.answered(task, content) if cache.look(task, content) == replace(outcome, made=()) else ""

    def _use(self, path: str, outcome: Outcome) -> None:
        """Remember which files and folders the check of a program asked about."""
        asked = {_real(question[1]) + (os.sep if question[0] == "beside" else "") for question in outcome.asked}
        self.uses[path] = frozenset(asked)
        home = str(self.what.folder.absolute())
        for file in asked:
            if not file.startswith((home, os.path.realpath(home))):
                self.outside.setdefault(file, see(file))

    def _place(self, path: str, source: Source | None = None) -> Place:
        name = (source or self.known[path]).name
        return Place(Path(name), self.what.folder, self.what.out, self.what.form)

    def _stale(self, path: str, says: str, source: Source | None = None) -> None:
        source = source or self.known[path]
        try:
            self._place(path, source).stale(f"{source.shown}: {says}")
        except Problem as problem:
            self.what.complained(str(problem))


def _real(path: str) -> str:
    """The file's place behind links to folders; it need not exist."""
    whole = Path(path).absolute()
    return str(Path(os.path.realpath(whole.parent)) / whole.name)


def _content(path: str) -> str:
    try:
        with Path(path).open("rb") as file:
            return hashlib.file_digest(file, "sha256").hexdigest()
    except (OSError, ValueError):
        return ""
