"""`gclint check`"""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

import click

from gclint.cli.accept import Acceptance, acceptance_options, accepting
from gclint.cli.also import FOR_HOSTS, Form, Together, also_option, further_reports
from gclint.cli.common import quiet_option
from gclint.cli.forms import FORMS
from gclint.cli.many import Many, folder_options
from gclint.cli.options import declarations
from gclint.problem import Problem
from gclint.screen import QUIET
from gclint.tables.setup import GRADES

if TYPE_CHECKING:
    from gclint.folder.outcome import Source
    from gclint.report.page.page_out import Reader

READERS = ("author", "operator", "instructor")


@click.command(short_help="Read programs, model the cut, say what to change.")
@click.argument("programs", nargs=-1, metavar="PROGRAM...")
@declarations
@click.option(
    "--stdin-name", metavar="FILE",
    help="The file that standard input (-) stands for: declarations are looked for beside it, and reports name it.",
)
@click.option("--as", "form", type=click.Choice(FORMS), default="text", help="How to report.")
@click.option("--out", metavar="FILE", help="Write to a file instead of the screen; several pages: to a folder.")
@also_option
@acceptance_options
@click.option(
    "--for", "reader", type=click.Choice(READERS), default="author",
    help="Who reads the sheet or the page: who made the program, who stands at the machine, who signs for others.",
)
@click.option("--teach", is_flag=True, help="Explain what is found, in the order in which to put it right.")
@folder_options
@click.option("--compare-with", metavar="OLD_SHOP", help="Tell which verdicts differ under that shop file's windows.")
@click.option("--fail-at", type=click.Choice(GRADES), help="The mildest grade that gives exit code 1 (usual: change).")
@quiet_option
def check(
    programs: tuple[str, ...],
    material: str | None,
    tools: tuple[str, ...],
    stock: str | None,
    shop: str | None,
    job: str | None,
    dial: str | None,
    stdin_name: str | None,
    form: str,
    out: str | None,
    reader: Reader,
    also: tuple[Form, ...],
    teach: bool,
    compare_with: str | None,
    fail_at: str | None,
    acceptance: Acceptance,
    many: Many,
) -> int:
    """Check programs: files, folders of files, or - for standard input. Without any: those that --job names.

    \b
    With what the Lowtide workshop (an invented one) has on its bench:
      gclint check tide-dial.nc --material cured-epoxy \\
          --tool "1: flat 3.175mm 2fl down-cut" --stock "120 x 80 x 18 mm at 0 0"
    With shop.toml and job.toml beside the program, or in a folder above:
      gclint check tide-dial.nc
    A line for each finding, "file:line:column: grade: rule: text":
      gclint check tide-dial.nc --as lines
    What an editor has not saved yet:
      gclint check - --stdin-name jobs/tide-dial.nc < unsaved
    For another program to read, and to look at:
      gclint check tide-dial.nc --as json --out tide-dial.json
      gclint check tide-dial.nc --as page --out tide-dial.html
    All of it in one run, for a code host:
      gclint check jobs --also sarif=gclint.sarif --also junit=gclint.xml
    To learn from what is found, at length, with drawings:
      gclint check tide-dial.nc --teach
    A fifth of it, on a host beside four others:
      gclint check jobs --part 2/5 --as json --out part-2.json
    Which jobs change with the windows that were measured since:
      gclint check jobs --compare-with shop-before.toml
    So that an old folder starts clean and shows only what is new:
      gclint check old --accept-all-as "ran well for years" --into old/job.toml

    Findings come in three grades: "halt" (do not run this), "change" (will cut badly or wear), "consider". Every
    number it judges by has a source; what was assumed and what could not be judged is listed.

    Exit code 0: nothing at or above the fail grade; 1: something was; 2: a program could not be read, or a declaration
    or an option is wrong.
    """
    from gclint import memory
    from gclint.cli.input import declared_programs
    from gclint.cli.main import complain
    from gclint.cli.many import alone, by_workers, find_programs, in_sentences
    from gclint.cli.options import options_of
    from gclint.cli.output import deliver, refuse_overwrite
    from gclint.cli.writers import refuse_apart, writer
    from gclint.digest.sheet_words import failing

    memory.keep()
    refuse_apart([form, *(each.name for each in also)], reader, teach)
    options = options_of(material, tools, stock, shop, job, dial, fail_at)
    found = find_programs(programs or declared_programs(options), options, many)
    if form == "page":
        from gclint.cli.pages import page_target

        out = page_target(out, 2 if many.part else len(found.sources))
    if stdin_name is not None:
        found.sources = _called(found.sources, stdin_name)
    inputs = [*(source.path for source in found.sources), shop, job]
    refuse_overwrite(out, inputs)
    if compare_with is not None:
        from gclint.cli.compared import compared

        if also:
            raise Problem("--compare-with has a report of its own; leave --also away")
        return compared(found, options, many, compare_with, form, out)
    if many.part is not None and acceptance.because is not None:
        raise Problem("--accept-all-as takes all that is found; leave --part away")
    accept = accepting(acceptance, options, form, out or (also[0].out if also else None))
    report = Together(
        accept or writer(form, out, reader, teach, found, many), further_reports(also, out, reader, found, many, inputs)
    )
    problems: list[Problem] = []
    faults: list[Problem] = []  # of gclint's own, in one of the reports
    worst = checked = 0
    makers = report.makers
    one = len(found.sources) == 1 and many.part is None and many.engine is None  # a part tells all as the whole does
    each = alone(found, options, makers) if one else by_workers(found, options, many, makers)
    for problem in found.problems:
        report.missed(problem)
        problems.append(problem)
    if many.since is not None and not found.sources and not QUIET.get():
        print(f"gclint: no program is concerned by a change since {many.since}", file=sys.stderr)
    for source, done in each:
        if isinstance(done, Problem):
            report.missed(done)
            problems.append(_of_program(done, source))
            continue
        faults += report.add(done)
        checked += 1
        done = accept.left_open(done) if accept else done
        worst = max(worst, 2 if done.failed else int(bool(failing(done.checked, done.fail_at))))
    if found.passed and not checked and not problems and many.since is None and many.part is None:
        first = found.passed[0]
        raise Problem(f"{first.because} (passed over; nothing else that was named is a milling program)", first.path)
    code, some_read = 2 if problems or faults else worst, not problems or len(problems) < len(found.sources)
    faults += report.deliver_further(code, some_read)
    if out is None or some_read or form in FOR_HOSTS:
        deliver(report.text(code), out, for_machines=form != "text")
    for sentence in in_sentences([*problems, *faults]):
        worst = complain(sentence)
    return worst


def _called(sources: list[Source], name: str) -> list[Source]:
    """The sources, standard input by its name. Raises UsageError where it is not among them, or the file is as well."""
    from gclint.folder.outcome import Source
    from gclint.folder.source import STANDARD_INPUT

    names = [source.name for source in sources]
    if STANDARD_INPUT not in names:
        raise click.UsageError("--stdin-name goes with -, the program that comes in by standard input")
    if not name or name == STANDARD_INPUT or Path(name).is_dir():
        raise click.UsageError("--stdin-name takes the name of a file")
    return [Source(each.name, each.named, name) if each.name == STANDARD_INPUT else each for each in sources]


def _of_program(problem: Problem, source: Source) -> Problem:
    """What is wrong, at its place in the program; in another file, which is then named behind the program."""
    if problem.path in (source.name, source.shown):
        return Problem(problem.says, source.shown, problem.line, problem.column)
    return Problem(str(problem), source.shown)
