"""`gclint word`"""

from __future__ import annotations

import sys

import click


@click.command(short_help="The glossary: what a word of the trade means.")
@click.argument("words", nargs=-1, metavar="[TERM]")
def word(words: tuple[str, ...]) -> int:
    """Say what a word of the trade means, with numbers, a drawing where it helps, and the rules that speak of it.

    Other names for the same thing are found too. Without a term, all are listed.

    \b
    Examples:
      gclint word
      gclint word chip-load
      gclint word depth of cut
    """
    from gclint.cli.output import deliver
    from gclint.knowledge.glossary import entry
    from gclint.report.text.text_sheet import text_sheet_for
    from gclint.teach.word_out import word_list, word_page

    paper = text_sheet_for(sys.stdout)
    if words:
        asked = " ".join(words)
        word_page(*entry(asked), asked, paper)
    else:
        word_list(paper)
    deliver(paper.text, None)
    return 0
