"""`gclint check --also FORM=FILE`: the same run, told in further forms."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING, NamedTuple

import click

from gclint.cli.forms import FORMS
from gclint.internal_fault import REPORT, place_of
from gclint.problem import Problem

if TYPE_CHECKING:
    from gclint.cli.many import Many
    from gclint.cli.writers import Writer
    from gclint.folder.find import Found
    from gclint.report.page.page_out import Reader
    from gclint.run import Run

FOR_HOSTS = ("lines", "sarif", "junit", "annotations", "quality")  # say themselves that a program could not be read


class Form(NamedTuple):
    name: str
    out: str


def _forms(context: click.Context, option: click.Parameter, given: tuple[str, ...]) -> tuple[Form, ...]:
    made = tuple(Form(form, out) for form, _, out in (each.partition("=") for each in given))
    for form, text in zip(made, given):
        if form.name not in FORMS or not form.out:
            says = f'"{text}" is none; write a form ({", ".join(FORMS)}), "=" and a file'
            raise click.BadParameter(says, context, option)
    return made


also_option = click.option(
    "--also", multiple=True, callback=_forms, metavar="FORM=FILE",
    help="Report in this form as well, to a file (pages: a folder, such as page=pages/). Once for each form.",
)


class Further(NamedTuple):
    """A report beside the one that is asked for by --as."""

    form: str
    out: str
    writer: Writer


def further_reports(
    also: Sequence[Form], out: str | None, reader: Reader, found: Found, many: Many, inputs: Iterable[str | None]
) -> list[Further]:
    """The reports of --also. Raises Problem where one cannot be written to its file."""
    from gclint.cli.output import refuse_overwrite
    from gclint.cli.pages import page_target
    from gclint.cli.writers import writer

    inputs, taken = list(inputs), {_place(out)} if out else set()
    made = []
    for form, file in also:
        pages = 2 if many.part else len(found.sources)
        target = (page_target(file, pages, "--also") if form == "page" else None) or file
        refuse_overwrite(target, inputs, "--also")
        if _place(target) in taken:
            raise Problem("two reports of this run go to this file; name another", target)
        taken.add(_place(target))
        made.append(Further(form, target, writer(form, target, reader, False, found, many)))
    return made


class Together:
    """A writer that hands each program to several; its own text is that of the first."""

    def __init__(self, first: Writer, further: Sequence[Further]) -> None:
        self.first, self.further = first, further
        self.all = [first, *(each.writer for each in further)]
        self.makers = tuple(writer.maker for writer in self.all if writer.maker is not None)

    def add(self, done: Run) -> list[Problem]:
        """Give each writer what its own maker made; a form that fails on this program says so, as what is returned."""
        made = iter(done.made)
        faults = []
        for writer in self.all:
            own = replace(done, made=() if writer.maker is None else (next(made),))
            try:
                writer.add(own)
            except (Problem, OSError):
                raise
            except Exception as fault:
                says = f"gclint itself failed on a report of it: {place_of(fault)}; {REPORT}"
                faults.append(Problem(says, done.checked.path))
                writer.missed(faults[-1])
        return faults

    def missed(self, problem: Problem) -> None:
        for writer in self.all:
            writer.missed(problem)

    def text(self, code: int) -> str:
        return self.first.text(code)

    def deliver_further(self, code: int, some_read: bool) -> list[Problem]:
        """Write the files of --also; where nothing could be read, those alone that say so themselves.

        Gives what could not be made: no other report waits for it.
        """
        from gclint.cli.output import deliver

        faults = []
        for form, out, writer in self.further:
            if some_read or form in FOR_HOSTS:
                try:
                    made = writer.text(code)
                except (Problem, OSError):
                    raise
                except Exception as fault:
                    says = f"gclint itself failed on this report ({form}), which was not written"
                    faults.append(Problem(f"{says}: {place_of(fault)}; {REPORT}", out))
                    continue
                deliver(made, out)
        return faults


def _place(out: str) -> Path:
    return Path(out).absolute()
