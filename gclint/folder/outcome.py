"""What one program of many came to, small enough to be sent between processes and kept on disk."""

from __future__ import annotations

from typing import Literal, Protocol

import msgspec
from msgspec.structs import replace

from gclint.disk import Question
from gclint.folder.source import path_of, shown_as
from gclint.packs.pack import RuleText
from gclint.problem import Problem
from gclint.run import Run
from gclint.setup.declare import Options
from gclint.tables.finding import Checked

Kind = Literal["checked", "skipped", "problem"]


class Source(msgspec.Struct, frozen=True):
    """A program to check: `named` is True where a person named this very file, False where a folder held it.

    `called` is the file that standard input stands for, where that is said.
    """

    name: str
    named: bool = True
    called: str | None = None

    @property
    def shown(self) -> str:
        """The name as any output can write it."""
        return shown_as(self.called or self.name)

    @property
    def path(self) -> str | None:
        """What declarations are looked for beside; None for standard input without a name."""
        return self.called or path_of(self.name)


class Task(msgspec.Struct, frozen=True):
    """One check: the same source under other options is another task."""

    source: Source
    options: Options


class Outcome(msgspec.Struct, frozen=True):
    """`says` tells why a program is skipped or what is wrong with it; `asked` is what the check asked of the disk.

    `lasting` is False for what need not be so again: a file that could not be read, a process that died. What is kept
    has neither `made`, what each Maker made, nor `stopped_by`, what kept one from it: (what is wrong, with which file).
    """

    kind: Kind
    says: str = ""
    line: int | None = None  # of the program, where `says` is about one
    column: int | None = None
    checked: Checked | None = None
    fail_at: str = "change"
    failed: bool = False
    titles: dict[str, str] = {}
    material_cautions: tuple[str, ...] = ()
    house: tuple[RuleText, ...] = ()  # of the rules that found something
    asked: tuple[Question, ...] = ()
    lasting: bool = True
    made: tuple[str, ...] = ()
    stopped_by: tuple[str, str] | None = None

    def run(self) -> Run:
        """What writers take; only of a program that was checked."""
        assert self.checked is not None
        return Run(
            self.checked, None, self.fail_at, self.failed, self.titles, self.material_cautions, self.house, self.made
        )


class Maker(Protocol):
    """Makes what a report needs a program's tables for, where the program is checked; it may be handed to workers."""

    def made(self, source: Source, run: Run, state: str) -> str:
        """`state` names the program with all it was checked by; "" where that is not known.

        Raises Problem for what ends the whole run.
        """
        ...

    def stands(self, source: Source, state: str) -> str | None:
        """What an earlier run made of this very state, where it is still there."""
        ...


def outcome_of(run: Run, asked: tuple[Question, ...]) -> Outcome:
    found = {finding.rule for finding in run.checked.findings}
    titles = {rule: title for rule, title in run.titles.items() if rule in found}
    house = tuple(replace(rule, must_find=(), must_leave=()) for rule in run.house if rule.name in found)
    return Outcome(
        "checked", checked=run.checked, fail_at=run.fail_at, failed=run.failed, titles=titles,
        material_cautions=run.material_cautions, house=house, asked=asked, lasting=not run.failed,
    )  # fmt: skip


def outcome_of_problem(problem: Problem, source: Source, asked: tuple[Question, ...]) -> Outcome:
    """`says` stands behind the program's name; what is wrong in another file names that file."""
    if problem.path in (source.name, source.shown):
        return Outcome("problem", says=problem.says, line=problem.line, column=problem.column, asked=asked)
    return Outcome("problem", says=str(problem), asked=asked)
