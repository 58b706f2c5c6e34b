"""`gclint why`"""

from __future__ import annotations

import sys
from pathlib import Path

import click


@click.command(short_help="What a rule looks for, why, its source, examples.")
@click.argument("rule", required=False, metavar="[RULE]")
@click.option("--pack", "house", multiple=True, metavar="FILE", help="Look in this house pack as well.")
def why(rule: str | None, house: tuple[str, ...]) -> int:
    """Say what a rule looks for, when, why, by which limits and source, with a bad and a good example.

    Without a rule, all rules are listed.

    \b
    Examples:
      gclint why
      gclint why straight-plunge
    """
    from gclint.cli.output import deliver
    from gclint.judge.compile_packs import shipped_packs
    from gclint.judge.packs import load_pack
    from gclint.problem import Problem, nearest
    from gclint.report.paper import paper_for
    from gclint.report.rule_out import rule_list, rule_page

    packs = (*shipped_packs(), *(load_pack(Path(file)) for file in house))
    paper = paper_for(sys.stdout)
    if rule is None:
        rule_list(packs, paper)
    else:
        known = {each.name: (each, pack) for pack in packs for each in pack.rules}
        if rule not in known:
            raise Problem(f'there is no rule "{rule[:60]}"{nearest(rule[:60], list(known))}')
        rule_page(*known[rule], paper)
    deliver(paper.text, None)
    return 0
