"""`gclint job`"""

from __future__ import annotations

import click

from gclint.cli.common import quiet_option
from gclint.cli.lazy import Group


@click.group(
    cls=Group, missing="to do with a job file", invoke_without_command=True,
    short_help="Write or check the file that declares material, blank and hold.",
)
@click.pass_context
def job(context: click.Context) -> None:
    """The job file: program, material, blank, hold, fixtures and acceptances.

    \b
    An example from the Lowtide workshop (an invented one):
      program = "tide-dial.nc"
      shop = "shop.toml"
      material = "cured-epoxy"
      z_zero = "stock-top"
      dial = "B"
    \b
      [stock]
      size = ["120 mm", "80 mm", "18 mm"]
      measured_thickness = "17.4 mm"
      corner = ["-10 mm", "-10 mm"]
    """
    if context.invoked_subcommand is None:
        click.echo(context.get_help())


@job.command(short_help="Say whether a job file is sound, and what more it could say.")
@click.argument("file", metavar="FILE")
@quiet_option
def check(file: str) -> int:
    """Read a job file and the shop file it names, say what they declare and what more they could say."""
    from gclint.cli.options import options_of
    from gclint.cli.setup_check import say_setup

    return say_setup(options_of(None, (), None, None, file), file, whole_job=True)


@job.command(short_help="Write a job file by answering questions.")
@click.argument("file", metavar="[FILE]", default="job.toml")
def new(file: str) -> None:
    """Ask for material, blank and hold one by one, and write FILE (job.toml if none is named).

    Enter leaves a question open. A file that exists stays as it is; broken off, nothing is written.
    """
    from gclint.cli.job_new import ask_job

    ask_job(file)
