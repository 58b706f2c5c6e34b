"""The program as read: blocks, words and comments as columns, each with its place in the bytes."""

from __future__ import annotations

from dataclasses import dataclass

from gclint.columns import Bytes, Floats, Ints, Longs
from gclint.faults import Faults

# block flags
DELETED = 1  # begins with '/': read and checked, not executed
EXPRESSION = 2  # holds '#', '[' or '=': needs expansion before it can be executed
FLOW = 4  # holds an O word, M98/M99/G65 or a word of a macro language
BROKEN = 8  # holds a number or a character that cannot be read: not executed
BEHIND_END = 16  # stands behind the closing '%' or behind M2/M30: never executed


WORDS_OF_A_BLOCK = 512  # at most, where its values are computed


@dataclass(frozen=True, slots=True, eq=False)
class Program:
    """One program file. A block is one line that holds at least one word, parameter setting or unreadable text.

    Words of block b are rows block_word[b] to block_word[b + 1]. The N word and a checksum (`*nn`) are not among the
    words; `block_number` keeps N (-1 where there is none). Columns of text are characters; `place` turns a byte offset
    into (line, column).
    """

    name: str
    data: bytes
    line_start: Longs  # [lines + 1] byte offset of each line's first byte; the last entry is len(data)
    block_line: Ints  # [blocks] line, from 1
    block_word: Ints  # [blocks + 1] first word of each block
    block_flags: Bytes  # [blocks]
    block_number: Ints  # [blocks] N word; -1 where there is none
    word_letter: Bytes  # [words] upper-case ASCII
    word_value: Floats  # [words] NaN where the number is unreadable or an expression
    word_start: Ints  # [words] byte offset of the letter
    word_end: Ints  # [words] byte offset behind the number
    comment_line: Ints  # [comments]
    comment_start: Ints  # [comments] byte offset behind the opening bracket or semicolon
    comment_end: Ints  # [comments] byte offset of the closing bracket or of the line end
    faults: Faults

    @property
    def lines(self) -> int:
        return len(self.line_start) - 1

    def line_text(self, line: int) -> str:
        """Text of a line (from 1) without its line end; bytes that are not UTF-8 are read as Latin-1."""
        raw = self.data[int(self.line_start[line - 1]) : int(self.line_start[line])].rstrip(b"\r\n")
        return decode(raw).removeprefix(BYTE_ORDER_MARK)

    def place(self, offset: int) -> tuple[int, int]:
        """(line, column), both from 1 and the column in characters, of a byte offset."""
        import numpy as np

        line = int(np.searchsorted(self.line_start, offset, side="right"))
        line = min(max(line, 1), max(self.lines, 1))
        before = self.data[int(self.line_start[line - 1]) : offset]
        return line, len(decode(before).removeprefix(BYTE_ORDER_MARK)) + 1


BYTE_ORDER_MARK = "\ufeff"  # no character of the first line


def decode(raw: bytes) -> str:
    try:
        return raw.decode("utf-8")
    except UnicodeDecodeError:
        return raw.decode("latin-1")
