"""One program on its way: its draft, what was found in it, and what menders ask about it."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cached_property

import numpy as np
from msgspec import Struct

from gclint.columns import Ints
from gclint.mend.draft import Draft, Edit
from gclint.mend.modes import Modes
from gclint.mend.style import Style, style_of
from gclint.run import Run, Tables
from gclint.tables.finding import Finding
from gclint.tables.motion import INCH, RAPID, Motion
from gclint.tables.program import EXPRESSION, FLOW, Program
from gclint.tables.setup import Setup


class Proposal(Struct, frozen=True):
    """What one mender would do at one place. `lines`: of the draft, where the finding it answers stands.

    `words`: it changes F and S words that go on ruling lines nobody edits. `floor`: mm; below it the surface may
    differ.
    `boxes`: lowest and highest X, lowest and highest Y, mm, within which more may be left.
    `starts`: the spindle turns where it stood before. `lenient`: it writes otherwise what the controller refuses.
    `others`: the next best, tried in order where this one is not proved.
    """

    rule: str
    kind: str
    lines: tuple[int, ...]
    edits: tuple[Edit, ...]
    because: str
    words: bool = False
    floor: float = -math.inf
    boxes: tuple[tuple[float, float, float, float], ...] = ()
    starts: bool = False
    lenient: bool = False
    others: tuple[Proposal, ...] = ()

    @property
    def touched(self) -> frozenset[int]:
        return frozenset(edit.line for edit in self.edits)


class Refused(Struct, frozen=True):
    """A place that a mender leaves alone, and why. `lines` are of the draft."""

    rule: str
    lines: tuple[int, ...]
    because: str


Offer = Proposal | Refused


@dataclass(frozen=True)
class Case:
    """A program as it stands now. Lines are those of the draft, which are those of the tables."""

    draft: Draft
    run: Run
    asked: tuple[str, ...] = ()  # rules that were named: what is only to be considered is mended if it was asked for

    @property
    def tables(self) -> Tables:
        assert self.run.tables is not None
        return self.run.tables

    @property
    def motion(self) -> Motion:
        return self.tables.motion

    @property
    def program(self) -> Program:
        return self.tables.program

    @property
    def setup(self) -> Setup:
        return self.tables.setup

    @cached_property
    def findings(self) -> tuple[Finding, ...]:
        """Open findings: no one has accepted them."""
        return tuple(f for f in self.run.checked.findings if f.accepted is None)

    @cached_property
    def style(self) -> Style:
        return style_of(self.program, bool((self.motion.flags & INCH).any()))

    @cached_property
    def modes(self) -> Modes:
        return Modes(self.program)

    @cached_property
    def rows_of(self) -> dict[int, list[int]]:
        """Moves of each line, in the order of execution."""
        made: dict[int, list[int]] = {}
        for row, line in enumerate(self.motion.line.tolist()):
            made.setdefault(line, []).append(row)
        return made

    def text(self, line: int) -> bytes:
        return self.draft.text(line)

    def plain(self, line: int) -> bool:
        """Whether a block has neither parameters nor expressions nor flow."""
        block = int(np.searchsorted(self.program.block_line, line))
        if block >= len(self.program.block_line) or int(self.program.block_line[block]) != line:
            return True
        return not int(self.program.block_flags[block]) & (EXPRESSION | FLOW)

    @cached_property
    def straight_through(self) -> bool:
        """Whether the program runs from its first line to its last: no loops, no calls, no expressions."""
        return not (self.program.block_flags & (EXPRESSION | FLOW)).any()

    def unit(self, row: int) -> float:
        """mm in one unit of length of the program at a move."""
        return 25.4 if int(self.motion.flags[row]) & INCH else 1.0

    def words(self, line: int) -> list[tuple[str, float, int, int]]:
        """(letter, number, first byte, byte behind it) of the words of a line, bytes counted within its text."""
        p = self.program
        block = int(np.searchsorted(p.block_line, line))
        if block >= len(p.block_line) or int(p.block_line[block]) != line:
            return []
        first, last = int(p.block_word[block]), int(p.block_word[block + 1])
        start = int(self.draft.start[line - 1])
        raw = self.draft.raw(line)
        if line == 1 and raw.startswith(b"\xef\xbb\xbf"):
            start += 3
        return [
            (
                chr(int(p.word_letter[k])),
                float(p.word_value[k]),
                int(p.word_start[k]) - start,
                int(p.word_end[k]) - start,
            )
            for k in range(first, last)
        ]

    def next_feed(self, row: int) -> int:
        """The next move at feed behind a move; -1 where there is none."""
        rest = np.flatnonzero(self.motion.kind[row + 1 :] != RAPID)
        return row + 1 + int(rest[0]) if len(rest) else -1

    def safe_z(self) -> float | None:
        """The highest Z, mm, to which the program itself lifts with a rapid; None where it never does."""
        m = self.motion
        rapids = m.kind == RAPID
        heights = m.z1[rapids & np.isfinite(m.z1) & (m.flags & 1 == 0)]
        return float(heights.max()) if len(heights) else None

    def in_frame(self, rows: Iterable[int]) -> bool:
        """Whether the program's X, Y and Z words of these moves are the coordinates of the tables (no shift between),
        absolute, and of one unit."""
        rows = list(rows)
        absolute = all(self.modes.code_at("distance", int(self.motion.line[row]), 900) == 900 for row in rows)
        return absolute and self._words_are(rows, increments=False)

    def counts(self, rows: Iterable[int]) -> str:
        """How the X, Y and Z words of these moves count, told from where the moves go: "absolute" in the coordinates of
        the tables, "increments", or "" where they do neither."""
        rows = list(rows)
        absolute, increments = (self._words_are(rows, increments=each) for each in (False, True))
        if absolute and increments:  # from zero, where both are the same
            if not self.straight_through or not rows:
                return ""
            increments = self.modes.code_at("distance", int(self.motion.line[rows[0]]), 900) == 910
        return "increments" if increments else "absolute" if absolute else ""

    def _words_are(self, rows: Iterable[int], increments: bool) -> bool:
        m = self.motion
        ends = {"X": (m.x0, m.x1), "Y": (m.y0, m.y1), "Z": (m.z0, m.z1)}
        for row in rows:
            unit = self.unit(row)
            for letter, value, _, _ in self.words(int(m.line[row])):
                if letter in ends:
                    start, end = (float(each[row]) for each in ends[letter])
                    if not math.isclose(value * unit, end - start if increments else end, abs_tol=2e-3):
                        return False
        return True

    @cached_property
    def own_text(self) -> bool:
        """Whether all that runs stands in this file: no part was read from files beside it."""
        return self.motion.beside is None

    def governing(self, rows: Ints) -> Ints:
        return self.motion.feed_line[rows]
