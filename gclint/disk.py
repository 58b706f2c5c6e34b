"""Every question that a check asks of the disk beside the program itself; who listens hears them with their answers.

Declarations, cards, packs and subprograms are looked for and read through here and nowhere else. A result that was
kept is used again only where each of its questions still has the answer it had (`gclint/folder/cache.py`).
"""

from __future__ import annotations

import hashlib
import os
import stat
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager, suppress
from contextvars import ContextVar
from dataclasses import replace
from pathlib import Path

from gclint.sent import NotAFile, Question, Told, absolute, sent_answers, told_of
from gclint.shipped import folder as shipped

__all__ = ["NotAFile", "Question", "absolute"]  # beside what is made here

# ("content", path, most), ("is-file", "exists", "there" or "real", path), ("beside", folder, most, *names)
MOST_ENTRIES = 20_000  # of a folder that are looked at
NONE = "none"
CHANGED = "changed while it was read"  # an answer that is never given again

_SHIPPED = f"{shipped()}{os.sep}"
# of each thread its own; who starts a thread for a part of a check gives it a copy of the context (`gclint/threads.py`)
_listening: ContextVar[dict[Question, str] | None] = ContextVar("listening", default=None)
_unsaved: ContextVar[Mapping[str, bytes] | None] = ContextVar("unsaved", default=None)


@contextmanager
def listening() -> Iterator[dict[Question, str]]:
    """Hear the questions asked within, with their answers: those of this check alone, whatever other threads ask."""
    heard: dict[Question, str] = {}
    before = _listening.set(heard)
    try:
        yield heard
    finally:
        _listening.reset(before)


@contextmanager
def unsaved(texts: Mapping[str, bytes]) -> Iterator[None]:
    """Within, these files read as an editor holds them: contents by absolute name, also of files that are not there."""
    before = _unsaved.set(texts)
    try:
        yield
    finally:
        _unsaved.reset(before)


def _held(path: Path) -> bytes | None:
    """What an editor holds of a file; None where the disk counts."""
    texts = _unsaved.get()
    return texts.get(os.path.normpath(path.absolute())) if texts else None  # links are not followed: it is a name


@contextmanager
def overhearing() -> Iterator[dict[Question, str]]:
    """The questions asked within, with their answers; whoever listens outside hears them too."""
    asked: dict[Question, str] = {}
    try:
        with listening() as heard:
            asked = heard
            yield asked
    finally:
        for question, answer in asked.items():
            _heard(question, answer)


def _heard(question: Question, answer: str) -> None:
    if question[1].startswith(_SHIPPED):  # part of this gclint, and read once in a process
        return
    heard = _listening.get()
    if heard is not None and heard.setdefault(question, answer) != answer:
        heard[question] = CHANGED


def _told(question: Question) -> Told | None:
    """The answer of the machine that sent this check here; None where this one's disk is asked."""
    sent = sent_answers()
    if sent is None or question[1].startswith(_SHIPPED):
        return None
    told = sent.told(question)
    _heard(question, told.says)
    return told


def content(path: Path, most: int) -> bytes:
    """The first `most` bytes of a plain file. Raises OSError, NotAFile among them, and ValueError for a NUL."""
    question = ("content", str(path), str(most))
    told = _told(question)
    if told is not None:
        return told.read()
    held = _held(path)
    if held is not None:
        _heard(question, digest(held[:most]))
        return held[:most]
    try:
        if not stat.S_ISREG(path.stat().st_mode):
            raise NotAFile
        with path.open("rb") as file:
            data = file.read(most)
    except (OSError, ValueError) as problem:
        _heard(question, f"{NONE}: {type(problem).__name__}")
        raise
    _heard(question, digest(data))
    return data


def is_file(path: Path) -> bool:
    told = _told(("is-file", str(path)))
    if told is not None:
        return told.says == "True"
    there = _held(path) is not None or path.is_file()
    _heard(("is-file", str(path)), str(there))
    return there


def exists(path: Path) -> bool:
    """Whether anything bears this name, be it a file or not."""
    told = _told(("exists", str(path)))
    if told is not None:
        return told.says == "True"
    there = _held(path) is not None or path.exists()
    _heard(("exists", str(path)), str(there))
    return there


def there(path: Path) -> bool:
    """Say whether the folder has an entry of this name, be it a link that leads nowhere."""
    told = _told(("there", str(path)))
    if told is not None:
        return told.says == "True"
    entry = _held(path) is not None or os.path.lexists(path)
    _heard(("there", str(path)), str(entry))
    return entry


def real(path: Path) -> str:
    """The file's real name, behind every link."""
    told = _told(("real", str(path)))
    if told is not None:
        return told.says
    name = os.path.realpath(path)
    _heard(("real", str(path)), name)
    return name


def beside(folder: Path, names: frozenset[str], most: int) -> tuple[str, bytes] | None:
    """The first file of a folder with one of these names (lower-case here, any case there): (name, `most` bytes).

    Only a plain file that lies in the folder itself: a link that leads out of it is passed over.
    """
    question = ("beside", str(folder), str(most), *sorted(names))
    told = _told(question)
    if told is not None:
        return (told.name, told.read()) if told.says != NONE else None
    found = _beside(folder, names, most)
    _heard(question, NONE if found is None else f"{digest(found[1])} {found[0]}")
    return found


def _beside(folder: Path, names: frozenset[str], most: int) -> tuple[str, bytes] | None:
    try:
        home = folder.resolve()
        there = []
        for count, entry in enumerate(folder.iterdir()):
            if count >= MOST_ENTRIES:
                break
            if entry.name.lower() in names:
                there.append(entry)
        for entry in sorted(there):
            whole = entry.resolve()
            if whole.parent == home and whole.is_file():
                held = _held(entry)
                if held is not None:
                    return entry.name, held[:most]
                with whole.open("rb") as file:
                    return entry.name, file.read(most)
    except (OSError, RuntimeError):
        return None
    return None


def digest(data: bytes) -> str:
    return hashlib.sha256(data).hexdigest()


def tell(question: Question) -> Told:
    """The answer as it is now with what was read, to be sent to another machine."""
    if question[0] == "beside":
        with listening() as heard:
            found = beside(Path(question[1]), frozenset(question[3:]), int(question[2]))
        return Told(heard[question], *(reversed(found) if found is not None else ()))
    if question[0] == "content":
        with listening() as heard:
            made = told_of("", lambda: content(Path(question[1]), int(question[2])))
        return replace(made, says=heard[question])
    return Told(ask_again(question))


def ask_again(question: Question) -> str:
    """The answer as it is now."""
    asking: dict[str, Callable[[], object]] = {
        "content": lambda: content(Path(question[1]), int(question[2])),
        "is-file": lambda: is_file(Path(question[1])),
        "exists": lambda: exists(Path(question[1])),
        "there": lambda: there(Path(question[1])),
        "real": lambda: real(Path(question[1])),
        "beside": lambda: beside(Path(question[1]), frozenset(question[3:]), int(question[2])),
    }
    with listening() as heard, suppress(OSError, ValueError):
        asking[question[0]]()
    return heard[question]
