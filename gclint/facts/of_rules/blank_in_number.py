"""Gives the facts that blank-in-number alone looks at."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from gclint.columns import Bools, Column
from gclint.facts.context import Context, once
from gclint.facts.fact import Table, number, of_rows, text

BLANKS = (0x20, 0x09)
POINT = 0x2E
FIGURES = tuple(b"%c" % figure for figure in b"0123456789.")


@dataclass(frozen=True)
class _Broken:
    line: int
    written: str  # the word as it stands: "X30.85  15"
    first: str  # what stands before the blank: "X30.85"


@once
def broken(context: Context) -> list[_Broken]:
    """Words with a blank between two figures of their number."""
    p = context.program
    byte = np.frombuffer(p.data, np.uint8)
    if len(byte) < 3 or not len(p.word_start):
        return []
    blank = (byte == BLANKS[0]) | (byte == BLANKS[1])
    behind = np.flatnonzero(blank[1:-1] & _figure(byte[:-2])) + 1  # the first blank behind a figure
    inner = behind[_figure(byte[behind + 1]) | (byte[behind + 1] == POINT) | blank[behind + 1]]
    made = []
    word = np.searchsorted(p.word_start, inner, side="right") - 1
    within = (word >= 0) & (inner < p.word_end[np.maximum(word, 0)])
    for at in dict.fromkeys(word[within].tolist()):
        start, end = int(p.word_start[at]), int(p.word_end[at])
        raw = p.data[start:end]
        if not np.isfinite(p.word_value[at]):
            continue
        parts = raw[1:].split()
        if len(parts) > 1 and parts[0][-1:].isdigit() and parts[1][:1] in FIGURES:
            said = raw.decode("latin-1")
            made.append(_Broken(p.place(start)[0], said, said[0] + parts[0].decode("latin-1")))
    return made


def _figure(byte: Column) -> Bools:
    return np.asarray((byte >= 0x30) & (byte <= 0x39))


TABLES = (
    Table(
        "broken_numbers",
        "numbers with a blank between two of their figures",
        {
            "line": number("", "line of the program", of_rows(broken, "line")),
            "written": text("the word as it stands", lambda c: _texts([row.written for row in broken(c)])),
            "first": text("what stands before the blank", lambda c: _texts([row.first for row in broken(c)])),
        },
        lambda c: len(broken(c)),
    ),
)


def _texts(texts: list[str]) -> tuple[Column, tuple[str, ...]]:
    words = tuple(dict.fromkeys(texts))
    return np.array([words.index(one) for one in texts], dtype=np.int32), words
