"""`gclint trial`"""

from __future__ import annotations

from importlib import import_module

import click

STEPS = {
    "plan": "Lay out test cuts; write their program, a plan and a sheet to grade them on.",
    "grade": "Enter what was seen at each cut; can be broken off and gone on with.",
    "learn": "The window that graded cuts leave, and how well it is known.",
    "compare": "Two tools, entries or batches: which is better at which fault.",
}


class Steps(click.Group):
    """A step's module is imported when it is used."""

    def list_commands(self, context: click.Context) -> list[str]:
        return list(STEPS)

    def get_command(self, context: click.Context, name: str) -> click.Command | None:
        if name not in STEPS:
            return None
        command: click.Command = getattr(import_module(f"gclint.cli.trial_{name}"), name)
        return command

    def resolve_command(
        self, context: click.Context, args: list[str]
    ) -> tuple[str | None, click.Command | None, list[str]]:
        if args and args[0] not in STEPS and not args[0].startswith("-"):
            from gclint.problem import nearest

            raise click.UsageError(f'there is no "{args[0]}" in a trial{nearest(args[0], list(STEPS))}')
        return super().resolve_command(context, args)

    def format_commands(self, context: click.Context, formatter: click.HelpFormatter) -> None:
        with formatter.section("Steps"):
            formatter.write_dl(list(STEPS.items()))


@click.group(cls=Steps, invoke_without_command=True, short_help="Test cuts: plan them, grade them, learn from them.")
@click.pass_context
def trial(context: click.Context) -> None:
    """Test cuts: for a new material no chart is right, so try it on a piece of it.

    A plan of grooves at different feeds, speeds, entries and depths is cut into one piece; each groove is graded by
    what was seen; the grades become this shop's own window, by which the next program is judged.
    """
    if context.invoked_subcommand is None:
        click.echo(context.get_help())
