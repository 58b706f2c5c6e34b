"""`gclint trial compare`"""

from __future__ import annotations

import sys
from pathlib import Path

import click


@click.command(short_help="Two tools, entries or batches: which is better at which fault.")
@click.argument("plans", nargs=-1, required=True, metavar="PLAN...")
@click.option("--by", type=click.Choice(["tool", "entry", "batch"]), help="What is compared; usually what differs.")
@click.option("--between", nargs=2, metavar="ONE TWO", help="Which two, where there are more.")
@click.option("--picture", metavar="FILE", help="Draw it as well: .png or .svg.")
@click.option("--out", metavar="FILE", help="Write the answer there instead of to the screen.")
def compare(
    plans: tuple[str, ...], by: str | None, between: tuple[str, str] | None, picture: str | None, out: str | None
) -> int:
    """Compare two tools, two entries or two batches of the material by the grades of test cuts.

    Which has less of each fault, and how surely, is reckoned over the same cuts, as if they had been made with the one
    and with the other. Two batches are two plans whose `batch` differs. It needs the extra `gclint[trial]`.

    \b
    Examples:
      gclint trial compare trial --by entry
      gclint trial compare trial --by tool --between 1 2 --picture bits.png
      gclint trial compare trial-1 trial-2 --by batch
    """
    from gclint.cli.output import deliver, refuse_overwrite
    from gclint.report.picture.picture_form import form_of
    from gclint.report.text.text_sheet import text_sheet_for
    from gclint.trial.compare import compare as compared
    from gclint.trial.compare import what_differs
    from gclint.trial.compare_out import picture_of, sheet
    from gclint.trial.learn import learn
    from gclint.trial.seen import read_trial

    refuse_overwrite(out, [*plans, picture])
    refuse_overwrite(picture, plans, "--picture")
    ending = form_of(picture) if picture else ""
    lesson = learn(read_trial(tuple(Path(plan) for plan in plans)))
    made = compared(lesson, by or what_differs(lesson), between)
    paper = text_sheet_for(sys.stdout)
    sheet(lesson, made, paper)
    if picture:
        deliver(picture_of(lesson, made, ending), picture)
    deliver(paper.text, out)
    return 0
