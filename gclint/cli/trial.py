"""`gclint trial`"""

from __future__ import annotations

import click

from gclint.cli.lazy import LazyGroup

STEPS = {
    "plan": "Lay out test cuts; write their program, a plan and a sheet to grade them on.",
    "grade": "Enter what was seen at each cut; can be broken off and gone on with.",
    "learn": "The window that graded cuts leave, and how well it is known.",
    "compare": "Two tools, entries or batches: which is better at which fault.",
}


@click.group(
    cls=LazyGroup, verbs=STEPS, prefix="gclint.cli.trial_", heading="Steps", missing="in a trial",
    invoke_without_command=True, short_help="Test cuts: plan them, grade them, learn from them.",
)
@click.pass_context
def trial(context: click.Context) -> None:
    """Test cuts: for a new material no chart is right, so try it on a piece of it.

    A plan of grooves at different feeds, speeds, entries and depths is cut into one piece; each groove is graded by
    what was seen; the grades become this shop's own window, by which the next program is judged.
    """
    if context.invoked_subcommand is None:
        click.echo(context.get_help())
