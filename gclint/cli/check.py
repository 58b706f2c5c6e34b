"""`gclint check`"""

from __future__ import annotations

import sys
from typing import TYPE_CHECKING, Protocol

import click

from gclint.cli.accept import Acceptance, acceptance_options, accepting
from gclint.cli.options import declarations

if TYPE_CHECKING:
    from gclint.judge.finding import Checked
    from gclint.problem import Problem
    from gclint.report.tables import Run

GRADES = ("halt", "change", "consider")
FORMS = ("text", "json", "sarif", "junit", "page")
FOR_HOSTS = ("sarif", "junit")  # say themselves that a program could not be read


@click.command(short_help="Read programs, model the cut, say what to change.")
@click.argument("programs", nargs=-1, metavar="PROGRAM...")
@declarations
@click.option("--as", "form", type=click.Choice(FORMS), default="text", help="How to report.")
@click.option("--out", metavar="FILE", help="Write to a file instead of the screen; several pages: to a folder.")
@acceptance_options
@click.option("--teach", is_flag=True, help="Explain what is found, in the order in which to put it right.")
@click.option("--fail-at", type=click.Choice(GRADES), help="The mildest grade that gives exit code 1 (usual: change).")
def check(
    programs: tuple[str, ...],
    material: str | None,
    tools: tuple[str, ...],
    stock: str | None,
    shop: str | None,
    job: str | None,
    form: str,
    out: str | None,
    teach: bool,
    fail_at: str | None,
    acceptance: Acceptance,
) -> int:
    """Check programs: files, folders of files, or - for standard input. None: those that --job names.

    \b
    With what the Lowtide workshop (an invented one) has on its bench:
      gclint check tide-dial.nc --material cured-epoxy \\
          --tool "1: flat 3.175mm 2fl down-cut" --stock "120 x 80 x 18 mm at 0 0"
    With shop.toml and job.toml beside the program, or in a folder above:
      gclint check tide-dial.nc
    For another program to read, and to look at:
      gclint check tide-dial.nc --as json --out tide-dial.json
      gclint check tide-dial.nc --as page --out tide-dial.html
    To learn from what is found, at length, with drawings:
      gclint check tide-dial.nc --teach
    So that an old folder starts clean and shows only what is new:
      gclint check old --accept-all-as "ran well for years" --into old/job.toml

    Findings come in three grades: "halt" (do not run this), "change" (will cut badly or wear), "consider". Every
    number it judges by has a source; what was assumed and what could not be judged is listed.

    Exit code 0: nothing at or above the fail grade; 1: something was; 2: a program could not be read, or a declaration
    or an option is wrong.
    """
    from gclint.check import Unreadable, run
    from gclint.cli.input import declared_programs, path_of, programs_in, read_bytes, shown_as
    from gclint.cli.main import complain
    from gclint.cli.options import options_of
    from gclint.cli.output import deliver, refuse_overwrite
    from gclint.cli.progress import Progress

    options = options_of(material, tools, stock, shop, job, fail_at)
    names = programs_in(programs or declared_programs(options))
    if form == "page":
        from gclint.cli.pages import page_target

        out = page_target(out, len(names))
    refuse_overwrite(out, [*(path_of(name) for name in names), shop, job])
    accept = accepting(acceptance, options, form, out)
    report = accept or _writer(form, out, teach)
    problems: list[str] = []
    worst = 0
    with Progress() as progress:
        for name in names:
            try:
                data = read_bytes(name)
                progress.begin(shown_as(name), len(data))
                done = run(data, shown_as(name), options, path_of(name), progress)
            except Unreadable as problem:
                report.missed(problem)
                problems.append(str(problem))
                continue
            report.add(done)
            done = accept.left_open(done) if accept else done
            worst = max(worst, 2 if done.failed else _code(done.checked, done.fail_at))
    if out is None or len(problems) < len(names) or form in FOR_HOSTS:
        deliver(report.text(2 if problems else worst), out)
    for sentence in problems:
        worst = complain(sentence)
    return worst


def _code(checked: Checked, fail_at: str) -> int:
    failing = GRADES[: GRADES.index(fail_at) + 1]
    return int(any(f.grade in failing and f.accepted is None for f in checked.findings))


def _writer(form: str, out: str | None, teach: bool) -> Writer:
    if teach and form != "text":
        raise click.UsageError(f"--teach explains on the screen or in a text file, not --as {form}")
    if form == "sarif":
        from gclint.report.sarif_out import Sarif

        return Sarif()
    if form == "junit":
        from gclint.report.junit_out import Junit

        return Junit()
    if form == "page":
        from gclint.cli.pages import Pages

        return Pages(out)
    return _Json() if form == "json" else _Sheets(out, teach)


class Writer(Protocol):
    """What a form of report does with each program; `code` is the exit code of the run."""

    def add(self, done: Run) -> None: ...
    def missed(self, problem: Problem) -> None: ...
    def text(self, code: int) -> str: ...


class _Json:
    """One document for all programs."""

    def __init__(self) -> None:
        self.programs: list[Checked] = []
        self.materials: list[str] = []

    def add(self, done: Run) -> None:
        self.programs.append(done.checked)
        self.materials += done.material_cautions

    def missed(self, problem: Problem) -> None:
        """Told on standard error alone."""

    def text(self, code: int) -> str:
        from gclint import __version__
        from gclint.judge.finding import Document
        from gclint.report.cautions import cautions
        from gclint.report.json_out import to_json

        return to_json(Document(__version__, tuple(self.programs), cautions(tuple(self.materials))))


class _Sheets:
    """A sheet per program, then the cautions once; tables are let go as soon as their sheet is written."""

    def __init__(self, out: str | None, teach: bool) -> None:
        from gclint.report.paper import Paper, paper_for

        self.paper = Paper() if out else paper_for(sys.stdout)
        self.teach = teach
        self.verdicts: list[tuple[str, str]] = []
        self.materials: list[str] = []

    def add(self, done: Run) -> None:
        from gclint import __version__
        from gclint.report.sheet_words import verdict
        from gclint.report.terminal import sheet

        if self.verdicts:
            self.paper.blank()
            self.paper.blank()
        if self.teach:
            from gclint.teach.lesson_out import lessons

            lessons(done, self.paper)
        else:
            sheet(done, self.paper, __version__)
        self.verdicts.append((done.checked.path, verdict(done.checked)))
        self.materials += done.material_cautions

    def missed(self, problem: Problem) -> None:
        """Told on standard error alone."""

    def text(self, code: int) -> str:
        from gclint.report.cautions import cautions
        from gclint.report.terminal import closing

        if self.verdicts:
            closing(self.paper, cautions(tuple(self.materials)), self.verdicts)
        return self.paper.text
