"""The writers of `gclint check`: what each form of report does with the programs of a run, one by one."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from importlib import import_module
from typing import TYPE_CHECKING, Any, Protocol

import click
from msgspec import Struct

from gclint.cli.forms import FORMS
from gclint.cli.many import FEW

if TYPE_CHECKING:
    from gclint.cli.many import Many
    from gclint.folder.find import Found
    from gclint.folder.outcome import Maker, Source
    from gclint.problem import Problem
    from gclint.report.page.page_out import Reader
    from gclint.run import Run
    from gclint.tables.finding import Left


FOR_PEOPLE = ("text", "page")  # forms that are worded for a reader


def refuse_apart(forms: Sequence[str], reader: Reader, teach: bool) -> None:
    """Raises UsageError for options that do not go together; the first form is that of --as."""
    if teach and forms[0] != "text":
        raise click.UsageError(f"--teach explains on the screen or in a text file, not --as {forms[0]}")
    if reader != "author" and teach:
        raise click.UsageError(f"--for {reader} makes a sheet of its own, not with --teach")
    if reader != "author" and not any(form in FOR_PEOPLE for form in forms):
        says = f"--for {reader} makes a sheet on the screen, in a text file or a page, not --as {forms[0]}"
        raise click.UsageError(says)


def writer(form: str, out: str | None, reader: Reader, teach: bool, found: Found, many: Many) -> Writer:
    """The writer of a form, in the words for a reader where it has any."""
    if FORMS[form]:
        file, _, name = FORMS[form].partition(".")
        made: Writer = getattr(import_module(f"gclint.report.machine.{file}"), name)()
        return made
    if form == "page":
        from gclint.cli.pages import Pages

        return Pages(out, reader, found.sources)
    if form == "json":
        return _Json(found)
    of_each = teach or reader != "author" or many.sheets or len(found.sources) <= FEW
    return _Sheets(out, reader, teach, found, many.passed) if of_each else _List(out, found, many.passed)


class Writer(Protocol):
    """What a form of report does with each program; `code` is the exit code of the run.

    What needs tables is made by its `maker`, where the program is checked: then `add` has it as `done.made`.
    """

    @property
    def maker(self) -> Maker | None: ...
    def add(self, done: Run) -> None: ...
    def missed(self, problem: Problem) -> None: ...
    def text(self, code: int) -> str: ...


class _Json:
    """One document for all programs."""

    maker = None

    def __init__(self, found: Found) -> None:
        self.found = found
        self.programs: list[Any] = []
        self.materials: dict[str, None] = {}
        self.not_read: list[Left] = []

    def add(self, done: Run) -> None:
        from gclint.report.machine.json_out import encoded

        self.programs.append(encoded(done.checked))
        self.materials.update(dict.fromkeys(done.material_cautions))

    def missed(self, problem: Problem) -> None:
        from gclint.problem import Problem
        from gclint.tables.finding import Left

        said = str(Problem(problem.says, None, problem.line, problem.column))
        self.not_read.append(Left(problem.path or "", said))

    def text(self, code: int) -> str:
        from gclint import __version__
        from gclint.report.machine.json_out import to_json
        from gclint.report.text.cautions import cautions
        from gclint.tables.finding import Document

        return to_json(
            Document(
                __version__, tuple(self.programs), cautions(tuple(self.materials)),
                not_read=tuple(self.not_read), passed_over=tuple(self.found.passed),
            )
        )


class _Sheet(Struct, frozen=True):
    """Makes the sheet of one program."""

    reader: Reader
    teach: bool
    width: int
    colour: bool

    def made(self, source: Source, run: Run, state: str) -> str:
        """What is asked for; where it fails the author's sheet, and where that fails what was found, a line each."""
        from gclint.internal_fault import left_out
        from gclint.report.text.terminal import bare

        said = ""
        for write in (self._asked, self._sheet):
            try:
                return said + write(run)
            except Exception as fault:
                said += left_out("this sheet", fault) + "\n\n"
        return said + bare(run.checked)

    def _asked(self, run: Run) -> str:
        from gclint import __version__
        from gclint.report.text.text_sheet import TextSheet

        paper = TextSheet(self.width, self.colour)
        if self.teach:
            from gclint.teach.lesson_out import lessons

            lessons(run, paper)
        elif self.reader == "operator":
            from gclint.report.text.operator_out import operator_sheet

            operator_sheet(run, paper, __version__)
        elif self.reader == "instructor":
            from gclint.report.text.instructor_out import instructor_sheet

            instructor_sheet(run, paper, __version__)
        else:
            return self._sheet(run)
        return paper.text

    def _sheet(self, run: Run) -> str:
        from gclint import __version__
        from gclint.report.text.terminal import sheet
        from gclint.report.text.text_sheet import TextSheet

        paper = TextSheet(self.width, self.colour)
        sheet(run, paper, __version__)
        return paper.text

    def stands(self, source: Source, state: str) -> None:
        """Sheets are not kept."""


class _Sheets:
    """A sheet per program, then the cautions once."""

    def __init__(self, out: str | None, reader: Reader, teach: bool, found: Found, each_passed: bool) -> None:
        from gclint.report.text.text_sheet import TextSheet, text_sheet_for

        self.paper = TextSheet() if out else text_sheet_for(sys.stdout)
        self.maker = _Sheet(reader, teach, self.paper.width, self.paper.colour)
        self.found, self.each_passed = found, each_passed
        self.sheets: list[str] = []
        self.verdicts: list[tuple[str, str]] = []
        self.materials: dict[str, None] = {}

    def add(self, done: Run) -> None:
        from gclint.digest.sheet_words import verdict

        self.sheets += done.made
        self.verdicts.append((done.checked.path, verdict(done.checked)))
        self.materials.update(dict.fromkeys(done.material_cautions))

    def missed(self, problem: Problem) -> None:
        """Told on standard error alone."""

    def text(self, code: int) -> str:
        from gclint.report.text.cautions import cautions
        from gclint.report.text.terminal import closing

        if self.verdicts:
            if self.found.passed:
                from gclint.report.text.folder_out import passed_over

                passed_over(self.paper, self.found.passed, self.each_passed)
            closing(self.paper, cautions(tuple(self.materials)), self.verdicts)
        return "\n\n".join(self.sheets) + self.paper.text


class _List:
    """A line per program, then what they have in common."""

    maker = None

    def __init__(self, out: str | None, found: Found, each_passed: bool) -> None:
        from gclint import __version__
        from gclint.report.text.folder_out import FolderSheet
        from gclint.report.text.text_sheet import TextSheet, text_sheet_for

        self.paper = TextSheet() if out else text_sheet_for(sys.stdout)
        self.found, self.each_passed = found, each_passed
        self.sheet = FolderSheet(self.paper, __version__, [source.shown for source in found.sources])
        self.materials: dict[str, None] = {}

    def add(self, done: Run) -> None:
        self.sheet.add(done)
        self.materials.update(dict.fromkeys(done.material_cautions))

    def missed(self, problem: Problem) -> None:
        self.sheet.not_read(problem)

    def text(self, code: int) -> str:
        from gclint.report.text.cautions import cautions

        try:
            self.sheet.write(self.found.passed, self.each_passed, cautions(tuple(self.materials)))
        except Exception as fault:
            from gclint.internal_fault import left_out

            return f"{self.paper.text}\n{left_out('the rest of this list', fault)}\n\n{self.sheet.bare()}"
        return self.paper.text
