"""`gclint material`"""

from __future__ import annotations

import sys

import click


@click.command(short_help="The material cards: every number with its standing.")
@click.argument("name", required=False, metavar="[NAME]")
def material(name: str | None) -> int:
    """List the material cards, or show one with the standing of every number.

    A number is "measured" (by this shop's own test cuts), "published", "common practice" (no source), or "from memory".

    \b
    Examples:
      gclint material
      gclint material cured-epoxy
      gclint material our-board.toml    a card of your own; it is checked too
    """
    from gclint.cli.output import deliver
    from gclint.report.card_out import card, card_list
    from gclint.report.paper import paper_for

    paper = paper_for(sys.stdout)
    if name is None:
        card_list(paper)
    else:
        from gclint.setup.card import material as find

        card(find(name), paper)
    deliver(paper.text, None)
    return 0
