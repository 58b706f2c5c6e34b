"""`gclint trial learn`"""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

import click

from gclint.problem import Problem

if TYPE_CHECKING:
    from gclint.trial.learn import Lesson
    from gclint.trial.seen import Trial


@click.command(short_help="The window that graded cuts leave, and how well it is known.")
@click.argument("plans", nargs=-1, required=True, metavar="PLAN...")
@click.option("--write", is_flag=True, help="Write the windows into the shop file.")
@click.option("--shop", metavar="FILE", help="The shop file to write; usually the one that the plan names.")
@click.option("--unit", type=click.Choice(["mm", "in"]), default="mm", help="Of the answer.")
@click.option("--picture", metavar="FILE", help="Draw the windows with every cut as well: .png or .svg.")
@click.option("--page", metavar="FILE", help="Write the answer with its pictures as one HTML file as well.")
@click.option("--as", "form", type=click.Choice(["text", "json"]), default="text", help="text (the usual) or json.")
@click.option("--out", metavar="FILE", help="Write the answer there instead of to the screen.")
def learn(
    plans: tuple[str, ...], write: bool, shop: str | None, unit: str, picture: str | None, page: str | None,
    form: str, out: str | None,
) -> int:
    """Learn from graded test cuts: which feeds and speeds a tool can run in this material, and how sure that is.

    PLAN is a plan.toml, or its folder, with its grades.toml beside it; more plans of the same material are taken
    together. Every fault is fitted to how the cuts were made; a limit lies where a fault is as likely as not, and its
    interval says how well it is known. Nothing is said beyond what was cut, and too little is said to be too little.
    Chatter may come at one speed and not at the next. A pair of feed and speed is recommended only where cuts near it
    were good; they are shown with it. Where there is none, it says so, and what to change.

    The exit code is 1 where no tool has a pair to use.

    With --write the windows go into the shop file as measured, with date, number of cuts and intervals; what else
    stands there stays as it is. `gclint check` then judges by them before the material's card.

    It needs the extra `gclint[trial]`.

    \b
    Examples:
      gclint trial learn trial
      gclint trial learn trial trial-2 --picture window.png
      gclint trial learn trial --write
      gclint trial learn trial --as json
    """
    from gclint.cli.output import deliver, refuse_overwrite
    from gclint.digest.words import Lengths
    from gclint.report.picture.picture_form import form_of
    from gclint.report.text.text_sheet import text_sheet_for
    from gclint.trial.learn import learn as taught
    from gclint.trial.learn_out import sheet
    from gclint.trial.seen import read_trial

    for file, option in ((out, "--out"), (picture, "--picture"), (page, "--page")):
        refuse_overwrite(file, [*plans, shop, *(other for other in (out, picture, page) if other is not file)], option)
    if picture or page:
        form_of(picture or "page.svg")
    trial = read_trial(tuple(Path(plan) for plan in plans))
    target = _shop_file(trial, shop) if write else None
    lesson, lengths = taught(trial), Lengths(unit == "in")
    paper = text_sheet_for(sys.stdout)
    sheet(lesson, paper, lengths)
    if target is not None:
        paper.blank()
        paper.heading("WRITTEN")
        for said in _write(lesson, target):
            paper.text_block(said)
    if page:
        from gclint.trial.learn_page import page as page_of

        deliver(page_of(lesson, lengths), page)
    if picture and not lesson.windows:
        paper.text_block(f"Nothing to draw: {picture} was not written.")
    elif picture:
        from gclint.trial.learn_picture import picture_of

        deliver(picture_of(lesson, lengths, Path(picture).suffix.lower()), picture)
    if form == "json":
        from gclint.trial.learn_json import learn_json

        deliver(learn_json(lesson), out)
    else:
        deliver(paper.text, out)
    return 0 if any(window.use for window in lesson.windows.values()) else 1


def _shop_file(trial: Trial, given: str | None) -> Path:
    if given is not None:
        return Path(given)
    if trial.shop is None:
        raise Problem("these plans name no one shop file; say which to write: --shop FILE")
    return trial.shop


def _write(lesson: Lesson, target: Path) -> list[str]:
    """What was written and what not. Raises Problem; the file is written whole or not at all."""
    from gclint.atomic_file import write_unchanged
    from gclint.problem import reason
    from gclint.toml.file import read_text
    from gclint.trial.into_shop import shop_text, writable

    windows, left = writable(lesson)
    said = [f"Not written: {why}." for why in left]
    if not windows:
        return [*said, f"Nothing was written to {target}."]
    read_text(target, "shop file")  # its own sentences where it cannot be read
    try:
        before = target.read_bytes()
    except OSError as problem:
        raise Problem(f"this shop file cannot be read: {reason(problem)}", str(target)) from None
    made = shop_text(before.decode("utf-8-sig"), str(target), lesson, windows)
    write_unchanged(made.encode("utf-8"), target, before)
    tools = ", ".join(str(window.tool) for window in windows)
    word = "tool" if len(windows) == 1 else "tools"
    name = f'[windows."{lesson.trial.material}"]'
    said.append(f"{name} of {word} {tools} in {target}; gclint check judges by it from now.")
    return [*said, *_without_card(lesson.trial.material, target.parent)]


def _without_card(name: str, folder: Path) -> list[str]:
    """What a new material needs beside its window: jobs name a material by its card."""
    from gclint.cards.material import material

    try:
        material(name)
    except Problem:
        if not (folder / f"{name}.toml").exists():
            said = f'There is no card for "{name}" yet, by which jobs name a material: copy one that resembles it'
            return [f"{said} (`gclint material` lists them) beside the shop file as {name}.toml, then check that file."]
    return []
