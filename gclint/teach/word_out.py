"""The glossary as text: one entry in full, or all of them in groups."""

from __future__ import annotations

from gclint.digest.words import behind, count
from gclint.knowledge.glossary import Word, glossary, groups, plain
from gclint.report.text.text_sheet import TextSheet


def word_list(paper: TextSheet) -> None:
    """Every entry with its sentence, in groups."""
    paper.ends("GLOSSARY", count(len(glossary()), "word"))
    for group in groups():
        paper.blank()
        paper.heading(group.about.upper())
        for name, word in sorted(group.words.items()):
            paper.text_block(name, style="head")
            paper.text_block(" ".join(word.means.split()), 4)
    paper.blank()
    paper.text_block("`gclint word TERM` says more about one of them; other names for the same thing are found too.")


def word_page(name: str, word: Word, asked: str, paper: TextSheet) -> None:
    """One entry; `asked` is what the reader typed, which may be another name for it."""
    paper.ends(word.term, "glossary")
    if plain(asked) in {plain(other) for other in word.also}:
        paper.text_block(f'"{asked}" is another name for it.')
    paper.text_block(" ".join(word.means.split()), style="head")
    if word.drawing:
        paper.blank()
        for line in word.drawing.strip("\n").splitlines():
            paper.text_block(line, 2)
    for paragraph in word.more.strip().split("\n\n") if word.more else ():
        paper.blank()
        paper.text_block(" ".join(paragraph.split()))
    paper.blank()
    if word.also:
        paper.field("also", ", ".join(word.also))
    if word.related:
        paper.field("related", f"{', '.join(word.related)} (`gclint word TERM`)")
    if word.rules:
        paper.field("rules", f"{', '.join(word.rules)} (`gclint why RULE`)")
    if word.standing:
        paper.field("standing", behind(word.standing, word.source))
