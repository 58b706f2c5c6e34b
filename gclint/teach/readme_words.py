"""Writes the glossary part of the README from rules/words: the words a beginner needs before all others."""

from __future__ import annotations

from pathlib import Path

from gclint.knowledge.glossary import glossary

BEGIN, END = "<!-- written by `python -m gclint.teach.readme_words` from rules/words -->", "<!-- end of the words -->"


def words_part() -> str:
    """Markdown: a line for each of the first words, then where the others are."""
    first = sorted((word.first, name) for name, word in glossary().items() if word.first)
    lines = [f"- **{word.term}**: {' '.join(word.means.split())}" for word in (glossary()[name] for _, name in first)]
    return "\n".join([*lines, "", f"`gclint word TERM` explains these and {len(glossary()) - len(lines)} more, "
                      "with numbers and drawings; `gclint word` lists them."])  # fmt: skip


def with_words(readme: str) -> str:
    """The README with its glossary part as it is now. Raises ValueError where its marks are missing."""
    before, rest = readme.split(BEGIN, 1)
    after = rest.split(END, 1)[1]
    return f"{before}{BEGIN}\n\n{words_part()}\n\n{END}{after}"


if __name__ == "__main__":
    file = Path(__file__).parents[2] / "README.md"
    file.write_text(with_words(file.read_text(encoding="utf-8")), encoding="utf-8")
