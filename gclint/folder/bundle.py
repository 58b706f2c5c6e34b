"""A check that goes to another machine with all it asks for: the program, its declarations, packs, cards, subprograms.

Nobody knows beforehand what a check will ask. What its neighbours in the folder asked is sent along; a check that asks
for more says so, is given it, and begins anew.
"""

from __future__ import annotations

import pickle
from contextlib import suppress
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from gclint import disk
from gclint.disk import Question
from gclint.folder.outcome import Maker, Task
from gclint.folder.run import Tried, finished, tried
from gclint.folder.source import read_bytes
from gclint.problem import Problem
from gclint.sent import Sent, Told, Unanswered, answering
from gclint.stock_store import StockStore

LARGE = 1 << 20  # bytes of a file above which it is read again for the next program
MOST_KEPT = 64 << 20  # bytes of files that are kept for the next


class Bundle(Task, frozen=True):
    """A task with what its check may ask; `folder` is the one in which gclint was started."""

    data: bytes
    answers: dict[Question, Told]
    folder: str
    makers: tuple[Maker, ...] = ()


@dataclass(frozen=True)
class Reply:
    """One of the two: what a check came to, or the question that it asked and got no answer to."""

    tried: Tried | None
    asks: Question | None = None


def reply_to(bundle: Bundle) -> bytes:
    """Check a program by what was sent along, on the machine that it was sent to: a pickled Reply."""
    try:
        with answering(Sent(bundle.answers, bundle.folder)):
            made = tried(Task(bundle.source, bundle.options), _shelf(), bundle.data)
            outcome = finished(made, bundle.source, "", bundle.makers)
        return pickle.dumps(Reply(Tried(outcome, None, made.content, made.heard)))
    except Unanswered as missing:
        return pickle.dumps(Reply(None, missing.question))


@cache
def _shelf() -> StockStore:
    return StockStore()


class Packer:
    """Makes bundles. What was asked in a folder before is asked for the next program in it at once."""

    def __init__(self, makers: tuple[Maker, ...]) -> None:
        self.makers = makers
        self.kept: dict[Question, Told] = {}
        self.size = 0
        self.asked: dict[str, tuple[str, list[Question]]] = {}  # by folder: a program, and what its check asked

    def pack(self, task: Task) -> Bundle:
        """Raises Unreadable for the program, and what `tell` raises for a question that has no answer."""
        data = read_bytes(task.source.name)
        answers = {question: self.tell(question) for question in self._expected(task)}
        return Bundle(task.source, task.options, data, answers, str(Path.cwd()), self.makers)

    def more(self, bundle: Bundle, question: Question) -> Bundle:
        answers = {**bundle.answers, question: self.tell(question)}
        return Bundle(bundle.source, bundle.options, bundle.data, answers, bundle.folder, bundle.makers)

    def tell(self, question: Question) -> Told:
        told = self.kept.get(question)
        if told is None:
            told = disk.tell(question)
            if len(told.data) <= LARGE and self.size < MOST_KEPT:
                self.kept[question] = told
                self.size += len(told.data) + 200
        return told

    def learn(self, task: Task, heard: dict[Question, str]) -> None:
        """Remember what the check of a program asked."""
        self.asked[str(Path(task.source.name).parent)] = (task.source.name, list(heard))

    def _expected(self, task: Task) -> list[Question]:
        name = task.source.name
        known = self.asked.get(str(Path(name).parent))
        if known is not None:
            before, questions = known
            return [tuple(name if part == before else part for part in question) for question in questions]
        from gclint.setup.declare import declare
        from gclint.setup.order import order_of
        from gclint.setup.resolve import shop_setup

        with disk.listening() as heard, suppress(Problem, OSError, ValueError):
            declared = declare(task.options, task.source.path)
            order_of(declared)
            shop_setup(declared)
        return list(heard)

