"""`gclint pack`"""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

import click

from gclint.cli.common import quiet_option
from gclint.cli.lazy import Group

if TYPE_CHECKING:
    from gclint.packs.pack import Pack


@click.group(
    cls=Group, missing="to do with a pack", invoke_without_command=True,
    short_help="Load and prove a rule pack by its own examples.",
)
@click.pass_context
def pack(context: click.Context) -> None:
    """Rule packs: files of rules in TOML, the shipped ones and those of your house.

    \b
    A rule of the Lowtide workshop (an invented one), in house.toml:
      pack = "lowtide"
      about = "What the Lowtide workshop asks of every program."
    \b
      [[rule]]
      name = "below-the-board"
      looks_at = "moves"
      when = "lowest < floor"
      limits.floor = { value = "-18 mm", standing = "practice", source = "ours" }
      ...

    A rule needs programs that must be found and programs that must be left alone; `gclint pack check` runs them.
    `gclint pack facts --as markdown` prints the whole reference, from which a pack can be written. Editors
    that complete TOML find the keys in packs/pack.schema.json, in the folder where gclint is installed.
    """
    if context.invoked_subcommand is None:
        click.echo(context.get_help())


@pack.command(short_help="Load, type-check and prove a pack.")
@click.argument("file", metavar="PACK")
@quiet_option
def check(file: str) -> int:
    """Read a pack, check every expression, and run every rule's own examples. Exit code 1: an example failed.

    PACK is a file. Of the rules that ship it is a folder (rules/entries), or the file of one rule in it.
    """
    from gclint.cli.output import deliver
    from gclint.digest.words import count
    from gclint.packs.load import check_together, load_pack
    from gclint.packs.pack import GROUP_FILE
    from gclint.packs.shipped_packs import load_group, shipped_packs
    from gclint.packs.shop_pack import scope_words
    from gclint.report.text.text_sheet import text_sheet_for
    from gclint.rule_proof import unproved

    path = Path(file)
    group = path if path.is_dir() else path.parent
    if path.exists() and (group / GROUP_FILE).is_file():  # rules as they ship: a folder, or one file of it
        loaded = load_group(group)
        known = [_without(pack, loaded) for pack in shipped_packs()]
        only = None if path.is_dir() or path.name == GROUP_FILE else path.stem
    else:
        loaded, known, only = load_pack(path), list(shipped_packs()), None
    proved = [rule for rule in loaded.rules if only in (None, rule.name)]
    check_together((*known, loaded))
    paper = text_sheet_for(sys.stdout)
    paper.ends(f"PACK {loaded.name}", count(len(proved), "rule"))
    paper.text_block(loaded.about)
    failed = 0
    for rule in proved:
        wrong = unproved(loaded, rule)
        failed += bool(wrong)
        found, left = len(rule.text.must_find), len(rule.text.must_leave)
        paper.bullet(f"{rule.name}: {'NOT PROVED' if wrong else 'proved'}, {found} to find, {left} to leave alone")
        for sentence in wrong:
            paper.text_block(sentence, 4)
    for entry in loaded.regrades:
        paper.bullet(f"{entry.rule}: {entry.grade} from now on, because {entry.because}")
    for scope in loaded.narrows:
        paper.bullet(f"{scope.rule}: counts {scope_words(scope)}, because {scope.because}")
    if proved:
        paper.text_block(f"{count(failed, 'rule')} not proved." if failed else "Every rule does what its examples say.")
    deliver(paper.text, None)
    return int(failed > 0)


@pack.command(short_help="List what expressions can use.")
@click.argument("table", required=False, metavar="[TABLE]")
@click.option("--as", "form", type=click.Choice(["text", "markdown"]), default="text", help="How to write it.")
@click.option("--out", metavar="FILE", help="Write to a file instead of the screen.")
def facts(table: str | None, form: str, out: str | None) -> int:
    """List the tables a rule can look at, or the facts of one table with their units and meanings.

    With --as markdown and no table, the whole reference of the rule language: how a pack is written, what expressions
    are made of, how rules of other packs are changed, and every fact.
    """
    from gclint.cli.output import deliver
    from gclint.facts.registry import tables
    from gclint.problem import Problem, nearest
    from gclint.report.answers.language_out import fact_lists, page, table_part
    from gclint.report.text.text_sheet import TextSheet, text_sheet_for

    known = tables()
    if table is not None and table not in known:
        raise Problem(f'there is no table "{table[:60]}"{nearest(table[:60], list(known))}')
    if form == "markdown":
        deliver(page() if table is None else table_part(known[table]), out)
        return 0
    paper = TextSheet() if out else text_sheet_for(sys.stdout)
    for title, rows in fact_lists(table):
        paper.heading(title)
        paper.table(("fact", "unit or kind", "meaning"), rows, left=3)
        paper.blank()
    deliver(paper.text, out)
    return 0


def _without(pack: Pack, worked_on: Pack) -> Pack:
    """A shipped pack without the rules of a folder that is being worked on (itself, or a copy of some of its files)."""
    if pack.name != worked_on.name:
        return pack
    from msgspec.structs import replace

    names = {rule.name for rule in worked_on.rules}
    return replace(pack, rules=tuple(rule for rule in pack.rules if rule.name not in names))
