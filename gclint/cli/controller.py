"""`gclint controller`"""

from __future__ import annotations

import sys
from pathlib import Path

import click

from gclint.cli.common import quiet_option


@click.command(short_help="The controller cards: what each does with codes, words and habits.")
@click.argument("words", nargs=-1, metavar="[NAME | FILE | check FILE]")
@quiet_option
def controller(words: tuple[str, ...]) -> int:
    """List the controller cards, show one, or check a card of your own.

    A card says what a class of controllers does with each code, word and habit of writing: does it, refuses it (and
    stops), or ignores it (takes it and does nothing, the dangerous one). Name it in shop.toml: `[machine] controller`.

    \b
    Examples:
      gclint controller
      gclint controller hobby-3-axis
      gclint controller ours.toml          a card of your own
      gclint controller check ours.toml    is it sound?
    """
    from gclint.cards.controller import controller as find
    from gclint.cards.controller import controller_from
    from gclint.cli.output import deliver
    from gclint.report.answers.controller_out import card, card_list
    from gclint.report.text.text_sheet import text_sheet_for

    paper = text_sheet_for(sys.stdout)
    if not words:
        card_list(paper)
    elif words[0] == "check":
        if len(words) != 2:
            raise click.UsageError("say which file: gclint controller check FILE")
        card(controller_from(Path(words[1])), paper, words[1])
    elif len(words) > 1:
        raise click.UsageError(f'one card at a time; "{words[1]}" is one too many')
    else:
        card(controller_from(Path(words[0])) if words[0].endswith(".toml") else find(words[0]), paper)
    deliver(paper.text, None)
    return 0
