"""The lines of the program that the page carries: all of a usual one, of a long one those that something points at."""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np

from gclint.columns import Column, Longs
from gclint.tables.program import Program

WHOLE = 6_000_000  # characters; a longer program is kept in parts
LONGEST = 300  # characters of one line
AROUND = 6  # lines on each side of a line of a finding
ENDS = 60  # lines at the start and at the end


def kept_lines(program: Program, pointed: Column, told: Column) -> Longs:
    """`pointed`: lines that findings name, kept with their neighbours; `told`: others, while there is room."""
    if not program.lines:
        return np.zeros(0, np.int64)
    every = np.arange(1, program.lines + 1)
    length = np.minimum(np.diff(program.line_start), LONGEST)
    if int(length.sum()) <= WHOLE:
        return every
    wanted = np.zeros(program.lines, bool)
    wanted[:ENDS] = wanted[-ENDS:] = True
    for shift in range(-AROUND, AROUND + 1):
        near = pointed + shift
        wanted[near[(near >= 1) & (near <= program.lines)] - 1] = True
    room = WHOLE - int(length[wanted].sum())
    told = np.unique(told[(told >= 1) & (told <= program.lines)])
    told = told[~wanted[told - 1]]
    step = max(1, -(-int(length[told - 1].sum()) // max(room, 1)))
    wanted[told[::step] - 1] = True
    return every[wanted]


def text_of(program: Program, lines: Iterable[int]) -> bytes:
    """The lines, parted by line ends; what cannot be printed shows as '?'."""
    return "\n".join(_clean(program.line_text(line)) for line in lines).encode("utf-8", "replace")


def _clean(text: str) -> str:
    text = text if len(text) <= LONGEST else f"{text[: LONGEST - 4]} ..."
    return text if text.isprintable() else "".join(c if c.isprintable() else " " if c == "\t" else "?" for c in text)
