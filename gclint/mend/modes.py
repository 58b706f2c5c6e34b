"""What is in force at every block of a program as written: each modal group, F, S and T."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np

from gclint.columns import Ints, Longs
from gclint.tables.program import BEHIND_END, BROKEN, DELETED, Program

# modal groups (NIST RS274/NGC, table 4), as tenths of code numbers
G_GROUPS: dict[str, tuple[int, ...]] = {
    "motion": (0, 10, 20, 30, 330, 382, 383, 384, 385, 730, 740, 760, 800, *range(810, 900, 10)),
    "plane": (170, 180, 190),
    "distance": (900, 910),
    "centres": (901, 911),
    "feed mode": (930, 940, 950),
    "units": (200, 210, 700, 710),
    "compensation": (400, 410, 411, 420, 421),
    "length": (430, 431, 440, 490),
    "offset": (540, 550, 560, 570, 580, 590, 591, 592, 593),
    "path": (610, 611, 640),
    "return": (980, 990),
    "speed mode": (960, 970),
}
M_GROUPS: dict[str, tuple[int, ...]] = {"spindle": (30, 40, 50), "coolant": (70, 80, 90), "overrides": (480, 490)}
LETTERS = ("F", "S", "T", "D", "H")
SKIPPED = DELETED | BROKEN | BEHIND_END


@dataclass(frozen=True)
class Modes:
    """Rows are blocks; a value is that in force while the block runs (its own words count); -1: none yet."""

    program: Program

    @cached_property
    def _words(self) -> tuple[Longs, Longs, Longs]:
        """(block, letter, tenths of the number) of every word that is executed."""
        p = self.program
        block = np.repeat(np.arange(len(p.block_line)), np.diff(p.block_word))
        with np.errstate(invalid="ignore"):
            value = p.word_value * 10
            tenths = np.where(np.abs(value) < 1e6, np.rint(np.where(np.abs(value) < 1e6, value, 0)), -1)
        ok = (p.block_flags[block] & SKIPPED) == 0 if len(block) else np.zeros(0, bool)
        tenths = np.where(ok, tenths, -2).astype(np.int64)
        return block, p.word_letter.astype(np.int64), tenths

    def word_of(self, name: str) -> Longs:
        """[blocks] row of the word that rules a group or a letter; -1 where none has been read."""
        block, letter, tenths = self._words
        if name in LETTERS:
            mine = (letter == ord(name)) & (tenths != -2)
        else:
            codes, own = (G_GROUPS[name], "G") if name in G_GROUPS else (M_GROUPS[name], "M")
            mine = (letter == ord(own)) & np.isin(tenths, codes)
        last = np.full(len(self.program.block_line), -1, np.int64)
        rows = np.flatnonzero(mine)
        last[block[rows]] = rows
        return np.maximum.accumulate(last) if len(last) else last

    def code_at(self, name: str, line: int, default: int = -1) -> int:
        """The code x 10 in force while a line runs; `default` where none has been read."""
        row = self._row_at(name, line)
        return default if row < 0 else int(self._words[2][row])

    def value_at(self, letter: str, line: int) -> float:
        """The number of F, S, T in force while a line runs; NaN where none has been read."""
        row = self._row_at(letter, line)
        return float("nan") if row < 0 else float(self.program.word_value[row])

    def _row_at(self, name: str, line: int) -> int:
        block = int(np.searchsorted(self.program.block_line, line, side="right")) - 1
        return -1 if block < 0 else int(self._kept(name)[block])

    def _kept(self, name: str) -> Longs:
        made = self._cache.get(name)
        if made is None:
            made = self._cache[name] = self.word_of(name)
        return made

    @cached_property
    def _cache(self) -> dict[str, Longs]:
        return {}

    def line_of(self, rows: Longs) -> Ints:
        """The line on which each word stands; 0 for -1."""
        p = self.program
        block = np.searchsorted(p.block_word, rows, side="right") - 1
        lines = p.block_line[np.maximum(block, 0)] if len(p.block_line) else np.zeros(len(rows), np.int32)
        return np.where(rows >= 0, lines, 0).astype(np.int32)
