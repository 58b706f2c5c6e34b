"""Keeps outcomes on disk by content, so that what has not changed is not checked again.

An entry is found in two steps. What a program is (its bytes, its file's name, the options, and this very gclint) leads
to the questions that its check asked of the disk; those with the answers they have now lead to the outcome. Both are
kept without the place (`gclint/folder/portable.py`), so that a copy in another folder or on another machine finds them;
a result that cannot be told without it is found again in that place alone.

Entries are flat files with a checksum, in a store (`gclint/folder/store.py`): one that is missing, cut off or altered
means a slow run and nothing else.
"""

from __future__ import annotations

import hashlib
import os
import platform
import re
import threading
from collections.abc import Callable, Iterable, Iterator
from contextlib import suppress
from importlib.metadata import PackageNotFoundError, version
from pathlib import Path
from typing import NamedTuple

import msgspec

from gclint import __version__, disk, shipped
from gclint.disk import Question
from gclint.folder.outcome import Outcome, Task
from gclint.folder.portable import (
    answers_of,
    home_of,
    in_place,
    questions_here,
    questions_of,
    repeats_its_place,
    without_place,
)
from gclint.folder.store import FarStore, FolderStore, Store, prune
from gclint.problem import Problem
from gclint.stock_store import StockStore

FORM = "1"  # of the entries; another form is another cache
MOST_BYTES = 512 << 20
SIZE = re.compile(r"(\d+(?:\.\d+)?) *([KMGT]?)B?", re.IGNORECASE)
NO_CACHE = "none"
ENDINGS = (".py", ".so", ".pyd", ".toml", ".lark", ".json", ".j2", ".js", ".css")  # of what makes a result or a page
ENGINES = ("numpy", "msgspec", "lark")  # libraries whose version may change a result


def cache_of(given: str | None, say: Callable[[str], None] = lambda says: None) -> Cache | None:
    """The cache as given, else as GCLINT_CACHE says, else where the system keeps caches; None for "none".

    `say` hears what a person should know of one that is elsewhere. Raises Problem.
    """
    size_of_cache()  # a wrong one is told before the work
    wanted = given if given is not None else os.environ.get("GCLINT_CACHE", "")
    if "://" not in wanted:
        place = folder_of_cache(given)
        return None if place is None else Cache(place)
    store = FarStore(wanted, FORM)
    if not store.reaches():
        say(f"{store.address} does not answer: nothing is kept, and nothing that was kept is used")
        return None
    say(f"results, with lines of the programs, are kept at {store.address}")
    return Cache(store)


def size_of_cache() -> int:
    """How many bytes a cache may hold: GCLINT_CACHE_SIZE, such as 30GB, else 512 MB. Raises Problem."""
    wanted = os.environ.get("GCLINT_CACHE_SIZE", "").strip()
    if not wanted:
        return MOST_BYTES
    found = SIZE.fullmatch(wanted)
    if found is None or len(wanted) > 20:
        raise Problem(f'"{wanted[:30]}" is no size; write 800MB or 30GB', "GCLINT_CACHE_SIZE")
    return int(float(found[1]) * 1000 ** " KMGT".index(found[2].upper() or " "))


def folder_of_cache(given: str | None) -> Path | None:
    """The folder of a cache that is in one; None for "none"."""
    wanted = given if given is not None else os.environ.get("GCLINT_CACHE", "")
    if wanted == NO_CACHE:
        return None
    if wanted:
        if Path(wanted).exists() and not Path(wanted).is_dir():
            raise Problem("--cache names something that is not a folder", wanted)
        return Path(wanted)
    from platformdirs import user_cache_dir  # reads XDG_CACHE_HOME and knows the other systems' places

    return Path(user_cache_dir("gclint", appauthor=False))


def installation() -> str:
    """Digest of this gclint: its code, kernels, rules and cards, and the libraries that compute for it."""
    said = hashlib.sha256(f"{FORM} {__version__} {platform.python_version()} {platform.machine()}".encode())
    for name in ENGINES:
        try:
            said.update(f" {name} {version(name)}".encode())
        except PackageNotFoundError:
            said.update(f" {name} unknown".encode())
    for home in (Path(__file__).parent.parent, shipped.folder()):
        for path in _files(str(home)):
            said.update(f"\0{os.path.relpath(path, home)}\0".encode("utf-8", "surrogateescape"))
            with Path(path).open("rb") as file:
                said.update(hashlib.file_digest(file, "sha256").digest())
    return said.hexdigest()


def _files(folder: str) -> Iterator[str]:
    with os.scandir(folder) as entries:
        for entry in sorted(entries, key=lambda each: each.name):
            if entry.is_dir(follow_symlinks=False):
                if entry.name != "__pycache__":
                    yield from _files(entry.path)
            elif entry.name.endswith(ENDINGS):
                yield entry.path


class Cache:
    """The results kept in one place, as one run sees them: the same question is asked of the disk once."""

    def __init__(self, place: Path | Store) -> None:
        """A folder, or a store."""
        self.kept = FolderStore(place / f"results-{FORM}") if isinstance(place, Path) else place
        self.build = installation()
        self.this = f"{self.build} {Path.cwd()}"
        self.answers: dict[Question, str] = {}
        self.real: dict[str, list[str]] = {}  # what lies behind the links of folders
        self.last = _Last()

    def key(self, task: Task, content: str) -> str:
        """What the program is; `content` is the digest of its bytes."""
        said = hashlib.sha256(self.this.encode("utf-8", "surrogateescape"))
        said.update(task.source.name.encode("utf-8", "surrogateescape"))
        said.update(f"\0{task.source.named} {content}\0".encode())
        said.update(msgspec.json.encode(task.options))
        return said.hexdigest()

    def store(self) -> StockStore:
        """Where the stock between the programs of a job is kept beside the results."""

        def name(key: str) -> str:
            return hashlib.sha256(f"{self.this} {key}".encode("utf-8", "surrogateescape")).hexdigest()

        def write(key: str, data: bytes) -> None:
            with suppress(OSError):
                self._write(name(key), "stock", data)

        return StockStore(lambda key: self._read(name(key), "stock"), write)

    def forget(self) -> None:
        """The disk is asked anew from here on."""
        self.answers.clear()
        self.real.clear()
        self.last = _Last()

    def answered(self, task: Task, content: str) -> str:
        """What names this state of the program and of all its check asked about; "" where that is not known."""
        moved = self._moved(task, content)
        if moved is not None:
            return _answered(self.key(task, content), moved.heard.items())
        key = self.key(task, content)
        asked = self._read(key, "asked")
        if asked is None:
            return ""
        try:
            questions = msgspec.json.decode(asked, type=tuple[Question, ...])
            return _answered(key, ((each, self._answer(each)) for each in questions))
        except (msgspec.DecodeError, ValueError, KeyError, IndexError):
            return ""

    def look(self, task: Task, content: str) -> Outcome | None:
        """The outcome of the very same check; None where there is none, or none that can be trusted."""
        moved = self._moved(task, content)
        if moved is not None:
            return moved.outcome
        answered = self.answered(task, content)
        data = self._read(answered, "said") if answered else None
        try:
            return None if data is None else msgspec.json.decode(data, type=Outcome)
        except (msgspec.DecodeError, ValueError):
            return None

    def keep(self, task: Task, content: str, heard: dict[Question, str], outcome: bytes) -> str:
        """Keep an encoded outcome with the questions that led to it, and give the name of this state as `answered`.

        What cannot be written is not kept, and has the name "".
        """
        if disk.CHANGED in heard.values():
            return ""
        key = self.key(task, content)
        state = _answered(key, heard.items())
        if self._keep_moved(task, content, heard, outcome):
            return state
        try:
            self._write(state, "said", outcome)
            self._write(key, "asked", msgspec.json.encode(list(heard)))
        except (OSError, UnicodeEncodeError):  # the latter: a name on the way is no text
            return ""
        return state

    def _moved_key(self, task: Task, content: str) -> str:
        """What the program is, wherever it lies."""
        said = hashlib.sha256(f"{self.build}\0{task.source.named}\0{content}\0".encode())
        said.update(Path(task.source.name).name.encode("utf-8", "surrogateescape"))
        said.update(b"\0" + msgspec.json.encode(task.options))
        return said.hexdigest()

    def _keep_moved(self, task: Task, content: str, heard: dict[Question, str], outcome: bytes) -> bool:
        """Keep an outcome without its place; False where that cannot be."""
        home = home_of(task, self.real)
        questions = None if home is None else questions_of(home, heard)
        if home is None or questions is None or repeats_its_place(home, task.source.name, heard):
            return False
        data = without_place(home, msgspec.json.decode(outcome, type=Outcome))
        if data is None:
            return False
        key = self._moved_key(task, content)
        try:
            self._write(_moved_state(key, answers_of(home, heard)), "found", data)
            self._write(key, "where", msgspec.json.encode(questions))
        except (OSError, UnicodeEncodeError):
            return False
        return True

    def _moved(self, task: Task, content: str) -> _Found | None:
        """What is kept of this very program wherever it lay, in the words of this place."""
        name, at, found = self.last.seen
        if (name, at) == (task.source.name, content):
            return found
        found = self._look_moved(task, content)
        if found is not None:
            self.last.seen = task.source.name, content, found
        return found

    def _look_moved(self, task: Task, content: str) -> _Found | None:
        home = home_of(task, self.real)
        key = "" if home is None else self._moved_key(task, content)
        where = self._read(key, "where") if key else None
        if home is None or where is None:
            return None
        try:
            heard = questions_here(home, msgspec.json.decode(where, type=tuple[Question, ...]), self._answer)
            data = None if heard is None else self._read(_moved_state(key, answers_of(home, heard)), "found")
            outcome = None if data is None or heard is None else in_place(home, data, heard)
        except (msgspec.DecodeError, ValueError, KeyError, IndexError, TypeError):
            return None
        return None if outcome is None or heard is None else _Found(outcome, heard)

    def _answer(self, question: Question) -> str:
        answer = self.answers.get(question)
        if answer is None:
            answer = self.answers[question] = disk.ask_again(question)
        return answer

    def _read(self, key: str, kind: str) -> bytes | None:
        head, _, payload = (self.kept.read(f"{key[:2]}/{key[2:]}.{kind}") or b"").partition(b"\n")
        return payload if head == _checksum(key, kind, payload) else None

    def _write(self, key: str, kind: str, payload: bytes) -> None:
        self.kept.write(f"{key[:2]}/{key[2:]}.{kind}", _checksum(key, kind, payload) + b"\n" + payload)

    def prune(self, most: int | None = None) -> None:
        """Remove what was used longest ago where the cache has outgrown its size, and what killed runs left."""
        prune(self.kept, size_of_cache() if most is None else most)


class _Last(threading.local):
    """What a thread found last: it asks for the outcome and for the name of its state in turn."""

    seen: tuple[str, str, _Found | None] = ("", "", None)

    def __reduce__(self) -> tuple[type[_Last], tuple[()]]:
        return _Last, ()  # another process has seen nothing


class _Found(NamedTuple):
    outcome: Outcome
    heard: dict[Question, str]


def _moved_state(key: str, answers: list[str]) -> str:
    return hashlib.sha256("\0".join((key, *answers)).encode("utf-8", "surrogateescape")).hexdigest()


def _answered(key: str, answers: Iterable[tuple[Question, str]]) -> str:
    said = hashlib.sha256(key.encode())
    for question, answer in sorted(answers):
        said.update("\0".join((*question, answer, "")).encode("utf-8", "surrogateescape"))
    return said.hexdigest()


def _checksum(key: str, kind: str, payload: bytes) -> bytes:
    return hashlib.sha256(f"{key} {kind} ".encode() + payload).hexdigest().encode()
