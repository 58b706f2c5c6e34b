"""`gclint shop`"""

from __future__ import annotations

import click

from gclint.cli.common import quiet_option
from gclint.cli.lazy import Group


@click.group(
    cls=Group, missing="to do with a shop file", invoke_without_command=True,
    short_help="Write or check the file that declares machine, spindle and tools.",
)
@click.pass_context
def shop(context: click.Context) -> None:
    """The shop file: machine, spindle, tools, and what this shop's own test cuts have shown.

    \b
    An example from the Lowtide workshop (an invented one):
      [spindle]
      kind = "dial"
      dial = [ { mark = "A", stated = 9500, measured = 8100 } ]
    \b
      [[tool]]
      number = 1
      shape = "flat"
      diameter = "1/8 in"
      flutes = 2
      helix = "down-cut"

    Only a tool's number, shape and diameter are needed; every other key lets more be judged.
    """
    if context.invoked_subcommand is None:
        click.echo(context.get_help())


@shop.command(short_help="Say whether a shop file is sound, and what more it could say.")
@click.argument("file", metavar="FILE")
@quiet_option
def check(file: str) -> int:
    """Read a shop file, say what it declares and what more it could say."""
    from gclint.cli.options import options_of
    from gclint.cli.setup_check import say_setup

    return say_setup(options_of(None, (), None, file, None), file, whole_job=False)


@shop.command(short_help="Write a shop file by answering questions.")
@click.argument("file", metavar="[FILE]", default="shop.toml")
def new(file: str) -> None:
    """Ask for machine, spindle and tools one by one, and write FILE (shop.toml if none is named).

    Enter leaves a question open. A file that exists stays as it is; broken off, nothing is written.
    """
    from gclint.cli.shop_new import ask_shop

    ask_shop(file)
