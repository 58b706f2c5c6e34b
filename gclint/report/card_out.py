"""Material cards as text."""

from __future__ import annotations

from gclint.report.paper import Paper
from gclint.report.words import STANDING_WORDS, count
from gclint.setup.card import Material, describe, material, names
from gclint.setup.card_proof import Doubt


def card_list(paper: Paper) -> None:
    """Every card that ships, with the other words by which it is found."""
    paper.text_block("MATERIAL CARDS", style="head")
    cards = [material(name) for name in names()]
    paper.table(("name", "material", "also called"), [(c.name, c.title, ", ".join(c.aliases)) for c in cards], left=3)
    paper.blank()
    paper.text_block("`gclint material NAME` shows a card; `--material NAME` uses it.")


def card(shown: Material, paper: Paper) -> None:
    """Every number of a card; sources stand below, each once."""
    paper.ends("MATERIAL CARD", shown.kind)
    paper.field("material", shown.title)
    paper.field("name", ", ".join((shown.name, *shown.aliases)))
    habits = [word for word, so in (("brittle", shown.brittle), ("melts", shown.melts), ("burns", shown.burns)) if so]
    paper.field("habits", ", ".join(habits) or "none noted")
    paper.field("thin", f"what a chip that is too thin looks like: {shown.thin_words}")
    paper.field("thick", f"what a chip that is too thick looks like: {shown.thick_words}")
    paper.field("fast", f"what an edge that is too fast looks like: {shown.fast_words}")
    rows = describe(shown)
    sources = list(dict.fromkeys(row.source for row in rows))
    paper.blank()
    paper.heading("NUMBERS")
    paper.table(
        ("what", "value", "standing", "source"),
        [
            (
                row.what, f"{row.value} {row.unit}".rstrip(), STANDING_WORDS.get(row.standing, row.standing),
                str(sources.index(row.source) + 1),
            )
            for row in rows
        ],
        left=3,
    )
    paper.text_block("D is the tool's diameter. Limits are where trouble begins, not best values.")
    paper.blank()
    paper.heading("SOURCES")
    for number, source in enumerate(sources, 1):
        paper.field(str(number), source)
    if shown.cautions:
        paper.blank()
        paper.heading("CAUTIONS")
        for caution in shown.cautions:
            paper.bullet(caution)


def proof(shown: Material, doubts: tuple[Doubt, ...], path: str, paper: Paper) -> None:
    """What was checked on a card, and what is doubtful about it, by line."""
    rows = describe(shown)
    paper.ends(f"MATERIAL CARD {shown.name}", count(len(rows), "number"))
    paper.text_block(shown.title)
    for standing, word in STANDING_WORDS.items():
        own = sum(row.standing == standing for row in rows)
        if own:
            paper.bullet(f"{word}: {count(own, 'number')}")
    for doubt in doubts:
        paper.bullet(f"{path}, line {doubt.line}, column {doubt.column}: {doubt.says}")
    paper.text_block(
        f"{count(len(doubts), 'thing')} on this card cannot be right." if doubts
        else "Keys, units, standings, sources and words are in order, and the limits rise with the diameter."
    )
