"""Finds the word at fault on a line of the program, and the text of the lines that findings name."""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np
from msgspec import Struct

from gclint.packs.mendable import WHOLE_LINES, menders_of
from gclint.tables.finding import Finding
from gclint.tables.program import Program

MOST_TEXTS = 10_000  # lines
LONGEST_TEXT = 1_000  # characters of a line


class Word(Struct, frozen=True):
    letter: str
    value: float
    line: int
    column: int  # from 1, in characters

    @property
    def written(self) -> float | None:
        """Its number; None where an expression stands there."""
        return self.value if self.value == self.value else None


def find_word(program: Program, line: int, letters: tuple[str, ...]) -> Word | None:
    """The last word on `line` with the first of `letters` that stands there; None where none does."""
    block = int(np.searchsorted(program.block_line, line))
    if block >= len(program.block_line) or program.block_line[block] != line:
        return None
    first, last = int(program.block_word[block]), int(program.block_word[block + 1])
    there = program.word_letter[first:last].tolist()
    for letter in letters:
        for row in range(last - first - 1, -1, -1):
            if there[row] == ord(letter[0]) and (
                len(letter) == 1 or program.word_value[first + row] == float(letter[1:])
            ):
                start = int(program.word_start[first + row])
                return Word(letter[0], float(program.word_value[first + row]), line, program.place(start)[1])
    return None


def column_of(program: Program, line: int, letters: tuple[str, ...]) -> int:
    """Column of the word at fault, else of the first word of the line."""
    word = find_word(program, line, letters)
    if word is not None:
        return word.column
    block = int(np.searchsorted(program.block_line, line))
    if block < len(program.block_line) and program.block_line[block] == line:
        first = int(program.block_word[block])
        if first < int(program.block_word[block + 1]):
            return program.place(int(program.word_start[first]))[1]
    return 1


def texts_of(program: Program, findings: Iterable[Finding]) -> dict[int, str]:
    """Text of the lines on which findings stand, are worst or set a word, ascending and bounded."""
    named: set[int] = set()
    for finding in findings:
        named |= {finding.line, finding.worst_line, *(word.line for word in finding.change.set)}
        if WHOLE_LINES in menders_of(finding.rule):
            named.update(finding.lines)
    lines = sorted(line for line in named if 1 <= line <= program.lines)
    return {line: program.line_text(line)[:LONGEST_TEXT] for line in lines[:MOST_TEXTS]}
