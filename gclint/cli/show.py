"""`gclint show`"""

from __future__ import annotations

import sys
from typing import TYPE_CHECKING

import click

from gclint.cli.options import declarations
from gclint.problem import Problem

if TYPE_CHECKING:
    from gclint.cli.progress import Progress
    from gclint.setup.declare import Options


@click.command(short_help="What each tool of a program does.")
@click.argument("program", metavar="PROGRAM")
@declarations
@click.option("--as", "form", type=click.Choice(["text", "json"]), default="text", help="How to report.")
@click.option("--out", metavar="FILE", help="Write to a file instead of the screen.")
@click.option("--picture", metavar="FILE", help="Instead: draw the path and what is found, .png or .svg.")
@click.option(
    "--second-reader", is_flag=True,
    help="Instead: read every plain block again with an independent library and list any difference.",
)
def show(
    program: str,
    material: str | None,
    tools: tuple[str, ...],
    stock: str | None,
    shop: str | None,
    job: str | None,
    dial: str | None,
    form: str,
    out: str | None,
    picture: str | None,
    second_reader: bool,
) -> int:
    """Show what each tool of a program does; nothing is judged.

    Entries by kind (how the tool gets into solid material), passes and their depths, set and true speed with the dial
    mark, chips, lengths and times.

    With --second-reader it shows instead what an independent library reads differently in the program (words, modes,
    ends of moves), and what that library could not be asked; the exit code is 1 where something differs.

    With --picture it draws instead: the path from above and from the front in its blank, the cuts by depth, rapids
    dashed, what `gclint check` finds marked with numbers and listed below. It needs the extra `gclint[picture]`.

    \b
    An example from the Lowtide workshop (an invented one):
      gclint show tide-dial.nc --material cured-epoxy \\
          --tool "1: flat 3.175mm 2fl down-cut" --stock "120 x 80 x 18 mm at 0 0"
    """
    from gclint.check import trace
    from gclint.cli.options import options_of
    from gclint.cli.output import deliver, refuse_overwrite
    from gclint.cli.progress import Progress
    from gclint.folder.source import path_of, read_bytes, shown_as
    from gclint.report.picture.picture_form import form_of

    refuse_overwrite(out, (path_of(program), shop, job))
    if picture:
        refuse_overwrite(picture, (path_of(program), shop, job), "--picture")
        form_of(picture)
    data = read_bytes(program)
    with Progress() as progress:
        progress.begin(shown_as(program), len(data))
        options = options_of(material, tools, stock, shop, job, dial)
        if picture:
            return draw(data, program, options, picture, progress)
        if second_reader:
            return say_second_reading(data, shown_as(program), options, path_of(program), form, out, progress)
        tables = trace(data, shown_as(program), options, path_of(program), progress)
    if form == "json":
        from gclint.report.text.show_out import to_json

        deliver(to_json(tables), out, for_machines=True)
        return 0
    from gclint.report.text.show_out import tool_sheets
    from gclint.report.text.text_sheet import TextSheet, text_sheet_for

    paper = TextSheet() if out else text_sheet_for(sys.stdout)
    tool_sheets(tables, paper)
    deliver(paper.text, out)
    return 0


def draw(data: bytes, program: str, options: Options, target: str, progress: Progress) -> int:
    """Judged as `gclint check` does it: what is marked is what it finds."""
    from gclint.check import run
    from gclint.cli.output import deliver
    from gclint.folder.source import path_of, shown_as
    from gclint.report.picture.picture import picture
    from gclint.report.picture.picture_form import form_of

    done = run(data, shown_as(program), options, path_of(program), progress)
    if done.tables is None:
        raise Problem("gclint itself failed on this program, so there is no picture; `gclint check` says more", program)
    progress("drawing")
    deliver(picture(done, form_of(target)), target)
    return 0


def say_second_reading(
    data: bytes, name: str, options: Options, path: str | None, form: str, out: str | None, progress: Progress
) -> int:
    """Only read and followed, as no controller in particular would: the second reader knows none."""
    from gclint.cards.controller import controller
    from gclint.check import folder_of
    from gclint.cli.output import deliver
    from gclint.motion.interpret import interpret
    from gclint.motion.second_reader import read_again, second_reader
    from gclint.program.read import read
    from gclint.report.answers.second_out import to_json, to_sheet
    from gclint.report.text.text_sheet import TextSheet, text_sheet_for
    from gclint.setup.declare import declare
    from gclint.setup.resolve import limits_of

    second_reader()  # says at once that it is missing
    limits = limits_of(declare(options, path))
    program = read(data, name)
    compared = read_again(program, interpret(program, controller("any"), limits, folder_of(path)), progress)
    if form == "json":
        deliver(to_json(compared, name), out, for_machines=True)
    else:
        paper = TextSheet() if out else text_sheet_for(sys.stdout)
        to_sheet(compared, name, paper)
        deliver(paper.text, out)
    return int(compared.found > 0)
