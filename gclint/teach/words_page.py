"""Writes the page of first words, gclint/docs/words.md, from rules/words: `python -m gclint.teach.words_page`."""

from __future__ import annotations

from pathlib import Path

from gclint.atomic_file import write_whole
from gclint.knowledge.glossary import glossary

FILE = Path(__file__).parents[1] / "docs" / "words.md"


def page() -> str:
    """Return the page in Markdown: a line for each word that a beginner needs first, then where the others are."""
    first = sorted((word.first, name) for name, word in glossary().items() if word.first)
    lines = [f"- **{word.term}**: {' '.join(word.means.split())}" for word in (glossary()[name] for _, name in first)]
    others = len(glossary()) - len(lines)
    return "\n".join([
        "<!-- written by `python -m gclint.teach.words_page` from rules/words -->", "", "# Words you need first", "",
        *lines, "",
        f"`gclint word TERM` explains these and {others} more, with numbers and drawings; `gclint word` lists them.",
        "",
    ])  # fmt: skip


if __name__ == "__main__":
    write_whole(FILE, page().encode())
