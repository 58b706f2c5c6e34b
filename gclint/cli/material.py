"""`gclint material`"""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

import click

from gclint.cli.common import quiet_option

if TYPE_CHECKING:
    from gclint.report.text.text_sheet import TextSheet
    from gclint.tables.material import Material


@click.command(short_help="The material cards: every number with its standing.")
@click.argument("words", nargs=-1, metavar="[NAME | FILE | check FILE]")
@click.option("--shop", metavar="FILE", help="Show what this shop has measured in the material beside the card.")
@quiet_option
def material(words: tuple[str, ...], shop: str | None) -> int:
    """List the material cards, show one with the standing of every number, or check a card of your own.

    A number is "measured" (by this shop's own test cuts), "published", "common practice" (no source), or "from memory".
    A card of your own beside shop.toml or job.toml is used by its name: our-board.toml as `material = "our-board"`.

    `material check` proves a card: its keys, units and standings, limits that rise with the diameter and can be true,
    named sources, words that fit the material. Exit code 1: something on it cannot be right.

    \b
    Examples:
      gclint material
      gclint material cured-epoxy
      gclint material cured-epoxy --shop shop.toml
      gclint material our-board.toml          a card of your own
      gclint material check our-board.toml    is it sound?
    """
    from gclint.cards.material import material as find
    from gclint.cli.output import deliver
    from gclint.report.answers.card_out import card, card_list, proof
    from gclint.report.text.text_sheet import text_sheet_for

    paper = text_sheet_for(sys.stdout)
    wrong = False
    if shop is not None and (len(words) != 1 or words[0] == "check"):
        raise click.UsageError("--shop goes with the name of one material")
    if not words:
        card_list(paper)
    elif words[0] == "check":
        if len(words) != 2:
            raise click.UsageError("say which file: gclint material check FILE")
        from gclint.cards.material import material_from
        from gclint.cards.proof import prove

        path = Path(words[1])
        doubts = prove(path)
        proof(material_from(path), doubts, words[1], paper)
        wrong = bool(doubts)
    elif len(words) > 1:
        raise click.UsageError(f'one card at a time; "{words[1]}" is one too many')
    else:
        shown = find(words[0])
        card(shown, paper)
        if shop is not None:
            _beside(shown, shop, paper)
    deliver(paper.text, None)
    return int(wrong)


def _beside(shown: Material, path: str, paper: TextSheet) -> None:
    from gclint.report.answers.own_out import own_windows
    from gclint.setup.declare import File
    from gclint.setup.declared import Shop
    from gclint.setup.own_windows import windows_in
    from gclint.toml.file import decode, read_text

    text = read_text(Path(path), "shop file")
    shop = decode(text, Shop, path)
    own_windows(shown, windows_in(shown, shop, File(path, text)), shop, paper)
