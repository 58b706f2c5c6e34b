"""The text of an editor by lines, with columns in its units and in characters.

Lines end as in the editor protocol: LF, CR or both. Lines and columns count from 0 here, as in the protocol; a finding
counts from 1.
"""

from __future__ import annotations

import re

from lsprotocol.types import Position, Range

from gclint.advice.edits import words_on

LINE_END = re.compile(r"\r\n|\n|\r")
WIDTH = {"utf-8": ("utf-8", 1), "utf-16": ("utf-16-le", 2), "utf-32": ("utf-32-le", 4)}


class Text:
    """`encoding` is how the editor counts columns: "utf-8", "utf-16" or "utf-32"."""

    def __init__(self, source: str, encoding: str) -> None:
        self.source, self.lines = source, LINE_END.split(source)
        self.codec, self.width = WIDTH[encoding]

    def line(self, number: int) -> str:
        return self.lines[number] if 0 <= number < len(self.lines) else ""

    def units(self, line: int, column: int) -> int:
        """The editor's column of a column in characters."""
        return len(self.line(line)[: max(column, 0)].encode(self.codec, "surrogatepass")) // self.width

    def column(self, position: Position) -> int:
        """The column in characters of a place in the editor."""
        count = 0
        for number, character in enumerate(self.line(position.line)):
            if count >= position.character:
                return number
            count += len(character.encode(self.codec, "surrogatepass")) // self.width
        return len(self.line(position.line))

    def span(self, line: int, start: int, end: int) -> Range:
        """A stretch of one line, from and to columns in characters."""
        return Range(Position(line, self.units(line, start)), Position(line, self.units(line, end)))

    def whole_line(self, line: int) -> Range:
        """A line without the blanks at its ends; of a line that is not there the last one."""
        line = min(max(line, 0), len(self.lines) - 1)
        text = self.line(line)
        return self.span(line, len(text) - len(text.lstrip()), len(text.rstrip()))

    def lines_from_to(self, first: int, last: int) -> Range:
        last = min(max(first, last), len(self.lines) - 1)
        first = min(max(first, 0), last)
        return Range(Position(first, 0), Position(last, self.units(last, len(self.line(last)))))

    def word_at(self, line: int, column: int | None) -> Range:
        """The word of a program that begins at a column (from 0); without one, the line."""
        text = self.line(line)
        if column is None or not 0 <= column < len(text.rstrip()):
            return self.whole_line(line)
        end = next((word.end for word in words_on(text) if word.start == column), len(text.rstrip()))
        return self.span(line, column, end)
