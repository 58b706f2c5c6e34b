"""`gclint trial plan`"""

from __future__ import annotations

import datetime
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

if TYPE_CHECKING:
    from gclint.trial.asked import Asked
    from gclint.trial.files import Files
    from gclint.trial.plan import Plan

ENTRIES = click.Choice(["ramp", "straight"])


@click.command(short_help="Lay out test cuts, write their program and a sheet to grade them on.")
@click.argument("folder", metavar="FOLDER")
@click.option("--material", metavar="NAME", help="What is tried: a card's name, or with --like a new name.")
@click.option("--like", metavar="CARD", help='Plan a new material by this card, or by none: "nothing".')
@click.option("--tool", "tools", multiple=True, metavar="NUMBER", help="A tool of the shop file; once per tool.")
@click.option("--blank", metavar="TEXT", help='The piece to cut: "200 x 100 x 18 mm at 0 0" (lowest X and Y).')
@click.option("--cuts", type=click.IntRange(4, 400), default=24, help="How many, repeats among them; usually 24.")
@click.option("--entry", "entries", multiple=True, type=ENTRIES, help="How the tool goes down; both, if the card does.")
@click.option("--depth", "depths", multiple=True, metavar="LENGTH", help='Such as "1.2 mm"; once per depth.')
@click.option("--dial", "marks", multiple=True, metavar="MARK", help="A mark of the dial to try; once per mark.")
@click.option("--speed", metavar="RANGE", help='Speeds to try where there is no dial: "12000 to 18000".')
@click.option("--feed", metavar="RANGE", help='Feeds to try: "600 to 2000 mm/min".')
@click.option("--repeats", type=click.IntRange(0, 100), help="How many cuts are made twice, to see the scatter.")
@click.option("--design", type=click.Choice(["grid", "spread"]), help="A full grid, or evenly spread.")
@click.option("--seed", type=click.IntRange(0, 999_999), default=1, help="Another number, another order by chance.")
@click.option("--batch", default="", metavar="TEXT", help="Of the material; two batches can be compared.")
@click.option("--run-through", is_flag=True, help="Do not stop behind each cut to have it looked at.")
@click.option("--shop", metavar="FILE", help="Machine, spindle, controller and tools; the nearest if not said.")
@click.option("--confirm", metavar="CUTS", help='Risky cuts that may be made: "3,7-9", all or none.')
def plan(folder: str, confirm: str | None, **given: Any) -> int:
    """Plan test cuts into FOLDER: a program, plan.toml, a grading sheet to print, grades.toml, job.toml.

    Each cut is a groove with a straight part and a curve, at a feed that this machine really reaches. Speeds are marks
    where the spindle has a dial, with a stop before each change. What gclint finds nothing against comes first, in an
    order by chance. A cut with a finding of grade change or halt is risky: it is written into the program only if a
    person confirms it, when asked or with --confirm; for a plan that exists, FOLDER and --confirm are enough.

    \b
    An example from the Lowtide workshop (an invented one):
      gclint trial plan epoxy-trial --material cured-epoxy --tool 1 \\
          --blank "200 x 100 x 18 mm at 0 0" --cuts 24 --shop bench-router.toml
      gclint trial plan epoxy-trial --confirm 8,9
    Nothing that exists is written over.
    """
    from gclint.trial.files import Files
    from gclint.trial.grading import PLAN_FILE

    target = Path(folder)
    if (target / PLAN_FILE).exists() and not _asks_anew(given):
        return _confirm(target, confirm)
    asked = _asked(**given)
    files = Files(target, asked.program)
    files.refuse_existing()
    return _plan(asked, files, confirm)


def _asks_anew(given: dict[str, Any]) -> bool:
    return bool(given["material"] or given["tools"] or given["blank"])


def _plan(asked: Asked, files: Files, confirm: str | None) -> int:
    from gclint.cli.output import deliver
    from gclint.cli.progress import Progress
    from gclint.report.text.text_sheet import text_sheet_for
    from gclint.trial.make import confirmed, make, numbers_of
    from gclint.trial.plan_out import after, table

    with Progress() as progress:
        progress.name = "plan"
        made = make(asked, files.folder, datetime.date.today(), progress)
    paper = text_sheet_for(sys.stdout)
    table(made, paper)
    deliver(paper.text, None)
    planned = made.plan
    numbers = numbers_of(confirm, planned) if confirm is not None else _ask(planned)
    if numbers is None:
        click.echo("Nothing was written.")
        return 0
    planned = confirmed(planned, numbers)
    files.write(planned, made.bench)
    paper = text_sheet_for(sys.stdout)
    after(planned, files.folder, paper)
    deliver(paper.text, None)
    return 0


def _ask(planned: Plan) -> set[int] | None:
    """Which risky cuts a person at the terminal confirms; none where nobody is there; None: nothing is wanted."""
    from gclint.problem import Problem
    from gclint.trial.make import numbers_of

    if not any(cut.risky for cut in planned.cut) or not sys.stdin.isatty():
        return set()
    while True:
        click.echo('Which risky cuts may be made? Numbers such as 8,10-12, "all", "none"; q writes nothing.')
        click.echo("> ", nl=False)
        answer = sys.stdin.readline()
        if not answer or answer.strip().lower() in ("q", "quit"):
            return None
        if not answer.strip():
            continue
        try:
            return numbers_of(answer, planned)
        except Problem as problem:
            click.echo(problem.says)


def _confirm(folder: Path, confirm: str | None) -> int:
    """Risky cuts of a plan that exists: program and sheet are written anew, if they are as gclint wrote them."""
    from gclint.cli.output import deliver
    from gclint.problem import Problem
    from gclint.report.text.text_sheet import text_sheet_for
    from gclint.trial.files import Files
    from gclint.trial.grading import PLAN_FILE
    from gclint.trial.make import confirmed, numbers_of
    from gclint.trial.plan_file import read_plan
    from gclint.trial.plan_out import after

    path = folder / PLAN_FILE
    before = read_plan(path)
    if confirm is None:
        says = "there is a plan in this folder already, and it stays; --confirm names risky cuts of it that may be made"
        raise Problem(f"{says}, or plan into another folder", str(path))
    files = Files(folder, before.program)
    planned = confirmed(before, numbers_of(confirm, before))
    files.write_again(before, planned)
    paper = text_sheet_for(sys.stdout)
    after(planned, folder, paper)
    deliver(paper.text, None)
    return 0


def _asked(
    material: str | None, like: str | None, tools: tuple[str, ...], blank: str | None, cuts: int,
    entries: tuple[str, ...], depths: tuple[str, ...], marks: tuple[str, ...], speed: str | None, feed: str | None,
    repeats: int | None, design: str | None, seed: int, batch: str, run_through: bool, shop: str | None,
) -> Asked:  # fmt: skip
    from gclint.problem import Problem
    from gclint.setup.tool_text import stock_from_text
    from gclint.trial.asked import Asked

    if not material:
        raise Problem("say what is tried: --material NAME; `gclint material` lists the cards, --like is for a new one")
    for name in (material, like or ""):
        if name.endswith(".toml"):
            raise Problem(f'"{name[:40]}" is a file; a card that lies beside the shop file is found by its name alone')
    if not tools:
        raise Problem("say which tool of the shop is tried: --tool NUMBER")
    if not blank:
        raise Problem('say how large the piece is: --blank "200 x 100 x 18 mm at 0 0"')
    size, corner = stock_from_text(blank, "--blank")
    return Asked(
        material=material, tools=tools, blank=(size, corner or (0.0, 0.0)), cuts=cuts,
        entries=tuple(dict.fromkeys(entries)),
        depths=tuple(_value(text, "length", "--depth") for text in depths), marks=tuple(dict.fromkeys(marks)),
        speeds=_range(speed, "speed", "--speed"), feeds=_range(feed, "feed", "--feed"), repeats=repeats, seed=seed,
        design=design, like=like or "", batch=batch, looks=not run_through, shop=shop,
    )  # fmt: skip


def _range(text: str | None, kind: str, option: str) -> tuple[float, float] | None:
    """ "600 to 2000 mm/min": two values, the unit behind the second counting for both."""
    from gclint.problem import Problem

    if text is None:
        return None
    first, to, second = text.partition(" to ")
    example = "12000 to 18000" if kind == "speed" else "600 to 2000 mm/min"
    if not to:
        raise Problem(f'a range is written "{example}"', option)
    unit = second.strip().lstrip("0123456789./ ")
    low = first.strip() if not first.strip().replace(".", "", 1).isdigit() else f"{first.strip()} {unit}".strip()
    values = _value(low, kind, option), _value(second.strip(), kind, option)
    if values[0] > values[1]:
        raise Problem(f"{first.strip()} is more than {second.strip()}", option)
    return values


def _value(text: str, kind: str, option: str) -> float:
    from gclint.problem import Problem
    from gclint.toml.units import quantity

    try:
        value = quantity(float(text) if text.replace(".", "", 1).isdigit() else text, kind, kind == "speed")
    except Problem as problem:
        raise Problem(problem.says, option) from None
    if not value > 0:
        raise Problem(f'"{text[:20]}" is not above zero', option)
    return value
