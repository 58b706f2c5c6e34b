"""A rule's bad and good example, each with its program and drawn from what the model makes of it."""

from __future__ import annotations

from gclint.digest.sheet_words import found_words, sentence, settings_words
from gclint.digest.words import Glossary
from gclint.packs.pack import Example, Pack, Rule
from gclint.report.text.text_sheet import TextSheet
from gclint.teach.canvas import Drawing
from gclint.teach.drawings import drawings
from gclint.teach.example import Shown, pair, shown
from gclint.teach.listing import HERE, listing, named_lines


def examples(rule: Rule, packs: tuple[Pack, ...], paper: TextSheet) -> None:
    """Both examples, the bad one first. Raises Problem on a faulty one."""
    bad, good = pair(rule)
    explained: set[str] = set()
    for title, example in (("FOUND IN", bad), ("LEFT ALONE IN", good)):
        if example is not None:
            _example(title, rule, example, shown(rule, example, packs), paper, explained)


def _example(title: str, rule: Rule, example: Example, made: Shown, paper: TextSheet, explained: set[str]) -> None:
    paper.blank()
    paper.heading(title)
    paper.text_block(sentence(example.says) + ".")
    given = [part for part in (example.material, *example.tools, example.stock and f"blank {example.stock}") if part]
    if given:
        paper.field("with", "; ".join(given))
    for name, text in (("shop.toml", example.shop), ("job.toml", example.job)):
        if text:
            paper.field(name[:9], " ".join(text.split()))
    finding = made.finding
    paper.blank()
    draw(listing(made.context.program, named_lines(finding) if finding else _here(made)), paper, explained)
    if finding is not None:
        paper.blank()
        if finding.found is not None:
            paper.field("found", found_words(finding))
        paper.field("happens", Glossary()(sentence(finding.happens)))
        paper.field("change", finding.change.text)
        for line in settings_words(finding.change.set):
            paper.field("", line)
    for drawing in drawings(made.place, finding, leave=("listing",)):
        paper.blank()
        draw(drawing, paper, explained)


def _here(made: Shown) -> dict[int, str]:
    """The line of a good example that is drawn."""
    place = made.place
    if place is None or not 0 <= place.move < len(made.context.motion):
        return {}
    return {int(made.context.motion.line[place.move]): HERE}


def draw(drawing: Drawing, paper: TextSheet, explained: set[str]) -> None:
    """A drawing under its title, with its scale and what its signs mean; what stands in `explained` is not repeated."""
    paper.text_block(drawing.title, style="label")
    for line in drawing.lines:
        paper.text_block(line, 2)
    fresh = [(sign, means) for sign, means in drawing.legend if f"{sign} {means}" not in explained]
    explained |= {f"{sign} {means}" for sign, means in fresh}
    if fresh:
        paper.text_block("; ".join(f"{sign} {means}" for sign, means in fresh), 2, "label")
    if drawing.scale:
        paper.text_block(f"({drawing.scale})", 2, "label")
