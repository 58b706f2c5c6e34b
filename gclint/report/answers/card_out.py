"""Material cards as text."""

from __future__ import annotations

from gclint.cards.material import describe, material, names
from gclint.cards.proof import Doubt
from gclint.digest.words import STANDING_WORDS, behind, count
from gclint.report.text.text_sheet import TextSheet
from gclint.tables.material import Material


def card_list(paper: TextSheet) -> None:
    """Every card that ships, with the other words by which it is found."""
    paper.text_block("MATERIAL CARDS", style="head")
    cards = [material(name) for name in names()]
    paper.table(("name", "material", "also called"), [(c.name, c.title, ", ".join(c.aliases)) for c in cards], left=3)
    paper.blank()
    paper.text_block("`gclint material NAME` shows a card; `--material NAME` uses it.")


def card(shown: Material, paper: TextSheet) -> None:
    """Every number of a card; sources stand below, each once."""
    paper.ends("MATERIAL CARD", shown.kind)
    paper.field("material", shown.title)
    paper.field("name", ", ".join((shown.name, *shown.aliases)))
    habits = [word for word, so in (("brittle", shown.brittle), ("melts", shown.melts), ("burns", shown.burns)) if so]
    paper.field("habits", ", ".join(habits) or "none noted")
    paper.blank()
    paper.heading("WHAT IS SEEN")
    paper.field("too thin", shown.thin_words)
    paper.field("too thick", shown.thick_words)
    paper.field("too fast", shown.fast_words)
    paper.text_block("A chip that is too thin or too thick, an edge that runs too fast.")
    if shown.good_chip:
        good = shown.good_chip
        paper.field("good", f"{good.looks}. It sounds like this: {good.sounds} ({behind(good.standing, good.source)})")
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
    paper.text_block(
        "A chip is the thickest slice that one tooth takes. D is the tool's diameter; a skim is narrower than 0.1 D. "
        "Limits are where trouble begins, not best values."
    )
    paper.blank()
    paper.heading("SOURCES")
    for number, source in enumerate(sources, 1):
        paper.field(str(number), source)
    if shown.cautions:
        paper.blank()
        paper.heading("CAUTIONS")
        for caution in shown.cautions:
            paper.bullet(caution)


def proof(shown: Material, doubts: tuple[Doubt, ...], path: str, paper: TextSheet) -> None:
    """What was checked on a card, and what is doubtful about it, by line."""
    rows = describe(shown)
    paper.ends(f"MATERIAL CARD {shown.name}", count(len(rows), "number"))
    paper.field("file", path)
    paper.field("material", shown.title)
    counts = ((word, sum(row.standing == standing for row in rows)) for standing, word in STANDING_WORDS.items())
    paper.field("numbers", "; ".join(f"{own} {word}" for word, own in counts if own))
    paper.blank()
    if not doubts:
        paper.text_block("Keys, units, standings, sources and words are in order; the limits rise with the diameter.")
        return
    paper.heading(f"{count(len(doubts), 'thing').upper()} CANNOT BE RIGHT")
    for doubt in doubts:
        paper.bullet(f"line {doubt.line}, column {doubt.column}: {doubt.says}")
