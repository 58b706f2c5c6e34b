"""`gclint why`"""

from __future__ import annotations

import sys
from pathlib import Path

import click


@click.command(short_help="What a rule looks for, why, its source, examples.")
@click.argument("name", required=False, metavar="[RULE|QUANTITY]")
@click.option("--pack", "house", multiple=True, metavar="FILE", help="Look in this house pack and say what it changes.")
def why(name: str | None, house: tuple[str, ...]) -> int:
    """Say what a rule looks for, why, with a bad and a good example drawn as the tool sees it, and by which limits.

    Or say how a figure of the reports is worked out: reached-feed, true-speed, chip, force, power, bending. Without a
    name, all are listed.

    \b
    Examples:
      gclint why
      gclint why straight-plunge
      gclint why force
    """
    from gclint.cli.output import deliver
    from gclint.knowledge.quantities import quantities
    from gclint.packs.load import load_pack
    from gclint.packs.shipped_packs import shipped_packs
    from gclint.problem import Problem, nearest
    from gclint.report.answers.rule_out import (
        MODEL,
        model_page,
        quantity_page,
        rule_head,
        rule_here,
        rule_list,
        rule_terms,
    )
    from gclint.report.text.text_sheet import text_sheet_for

    packs = (*shipped_packs(), *(load_pack(Path(file)) for file in house))
    paper = text_sheet_for(sys.stdout)
    known = {each.name: (each, pack) for pack in packs for each in pack.rules}
    if name is None:
        rule_list(packs, paper)
    elif name in known:
        from gclint.packs.load import check_together
        from gclint.packs.shop_pack import told
        from gclint.teach.why_out import examples

        check_together(packs)
        rule, pack = known[name]
        rule_head(rule, pack, paper)
        examples(rule, packs, paper)
        rule_terms(rule, paper)
        rule_here([each for each in told(packs, (), {}) if each.rule == name and each.does != "adds"], paper)
    elif name in quantities():
        quantity_page(name, quantities()[name], known, paper)
    elif name == MODEL:
        model_page(paper)
    else:
        near = nearest(name[:60], [*known, *quantities(), MODEL])
        tail = near if near.startswith("; nearest") else ""
        raise Problem(f'there is no rule or quantity "{name[:60]}"{tail}; `gclint why` lists them all')
    deliver(paper.text, None)
    return 0
