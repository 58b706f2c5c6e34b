"""Answers of one machine's disk that are sent with a program to another: a check there asks them, and nothing else.

Questions are those of `gclint/disk.py`. One whose answer was not sent ends the check with `Unanswered`; it is sent
then, and the check begins anew.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from dataclasses import dataclass
from pathlib import Path

Question = tuple[str, ...]


class Unanswered(BaseException):
    """What was asked has not been sent along. No failure, so that nothing takes it for one."""

    def __init__(self, question: Question) -> None:
        super().__init__(question)
        self.question = question


class NotAFile(OSError):
    """A device, a pipe, a folder: reading it need never end."""


@dataclass(frozen=True)
class Told:
    """An answer: as it is written down (`says`), and what was read, or why that could not be."""

    says: str
    data: bytes = b""
    name: str = ""
    fault: tuple[str, int | None, str] | None = None  # what kind, its number in the system, its text

    def read(self) -> bytes:
        """What was read. Raises what reading raised."""
        if self.fault is None:
            return self.data
        kind, number, text = self.fault
        if kind == "ValueError":
            raise ValueError(text)
        if kind == "NotAFile":
            raise NotAFile
        raise OSError(number, text)  # of the class that this number has


def told_of(says: str, read: Callable[[], bytes]) -> Told:
    """An answer with what `read` gives or raises."""
    try:
        return Told(says, read())
    except NotAFile:
        return Told(says, fault=("NotAFile", None, ""))
    except OSError as problem:
        return Told(says, fault=("OSError", problem.errno, problem.strerror or str(problem)))
    except ValueError as problem:
        return Told(says, fault=("ValueError", None, str(problem)))


@dataclass(frozen=True)
class Sent:
    """All that may be asked, and the folder in which the asking machine works."""

    answers: Mapping[Question, Told]
    folder: str

    def told(self, question: Question) -> Told:
        found = self.answers.get(question)
        if found is None:
            raise Unanswered(question)
        return found


_sent: ContextVar[Sent | None] = ContextVar("sent", default=None)


@contextmanager
def answering(sent: Sent) -> Iterator[None]:
    """Within, the disk is that of the machine which sent this."""
    before = _sent.set(sent)
    try:
        yield
    finally:
        _sent.reset(before)


def sent_answers() -> Sent | None:
    """What was sent along; None where this machine's own disk is asked."""
    return _sent.get()


def absolute(path: Path) -> Path:
    """The absolute name that a file has on the machine where it lies."""
    sent = _sent.get()
    return path.absolute() if sent is None else Path(sent.folder + os.sep) / path
