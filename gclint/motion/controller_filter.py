"""The program as one controller takes it: what its card refuses is not executed, what it ignores is not there.

Works on the columns of a program before it is interpreted, so that the interpreter need not know any controller.
Faults code-refused and code-ignored say what was touched, at most MOST of each name.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from functools import cached_property

import numpy as np

from gclint.cards.codes import CYCLES, KIND, LETTERS, WORD, family_of, spelled, tenths
from gclint.columns import Bools, Column, Ints, distinct, one_of
from gclint.faults import CODE, FaultRows
from gclint.lazy_regex import Later
from gclint.tables.program import BEHIND_END, BROKEN, DELETED, EXPRESSION, FLOW, Program
from gclint.tables.setup import Assumed, Controller

MOST = 1000  # places of one name that are told
LENGTHS = tuple(ord(letter) for letter in "UVWXYZIJKQR")  # letters whose number is a length
INCH_STEP = 0.0001  # in; what a number without a point counts in where the program speaks inches
ALL_CYCLES = tuple(tenths(code) for code in CYCLES)
MOTIONS = (0, 10, 20, 30, 382, 383, 384, 385, 800, *ALL_CYCLES)
OTHER_P = (40, 100, 640, 650, *ALL_CYCLES)  # codes whose P is no number of turns
SKIPPED = DELETED | BROKEN | BEHIND_END
# Habits that leave no column: where they begin in the bytes.
IN_TEXT = {
    "checksums": Later(rb"\*[ \t]*[0-9]+[ \t]*(?=[\r\n;]|\Z)"),
    "program-numbers": Later(rb"(?m)^[ \t]*[Oo:][ \t]*[0-9]+(?=[ \t]*[\r\n(;]|[ \t]*\Z)"),
    "percent": Later(rb"(?m)^[ \t]*%"),
    "macro-words": Later(rb"(?im)^[ \t]*(?:N[0-9]+[ \t]*)?(?:IF|WHILE|GOTO|DO|END|THEN)[ \t]*[0-9\[]"),
    "flow-by-number": Later(rb"(?im)^[ \t]*(?:N[0-9]+[ \t]*)?O[ \t]*(?:[0-9]+|<[^>\r\n]*>)[ \t]*[A-Z]"),
}


def filter_program(
    program: Program, controller: Controller, faults: FaultRows, inch: bool = False
) -> tuple[Program, tuple[Assumed, ...]]:
    """What `controller` makes of a program, and what was taken for granted in it.

    The same program comes back where the card has nothing to say of it. `inch` says that inches are in force before
    its first line, as they may be in a file that is called.
    """
    own = _Taken(program, controller, faults)
    if controller.states or controller.other_codes != "does" or "refuses" in controller.tool_change:
        _codes(own)
        _letters(own)
        _arcs(own)
        _habits(own)
    if controller.program_stop in ("refuses", "ignores"):
        own.treat(controller.program_stop, "stops", own.coded("M", (0, 10, 600)), drop=False)
    if controller.no_point == "resolution":
        _points(own, inch)
    _old_units(own)
    return own.left(), tuple(own.assumed)


class _Taken:
    """The columns while they are being changed; nothing is copied before something changes."""

    def __init__(self, program: Program, controller: Controller, faults: FaultRows) -> None:
        self.program, self.controller, self.faults = program, controller, faults
        self.assumed: list[Assumed] = []
        self.value, self.flags = program.word_value, program.block_flags
        self.gone: Bools | None = None

    def of(self, letter: str) -> Column:
        return np.flatnonzero(self.program.word_letter == ord(letter))

    def tenths(self, words: Column) -> Column:
        """Code numbers x 10; -1 for what is no number."""
        value = self.program.word_value[words] * 10
        with np.errstate(invalid="ignore"):
            fits = np.abs(value) < 1e6
        return np.where(fits, np.rint(np.where(fits, value, 0.0)), -1).astype(np.int64)

    def coded(self, letter: str, codes: Iterable[int]) -> Column:
        words = self.of(letter)
        return words[one_of(self.tenths(words), codes)]

    def block(self, words: Column) -> Column:
        return np.searchsorted(self.program.block_word, words, side="right") - 1

    def holds(self, words: Column) -> Bools:
        """[blocks] whether one of the words stands in the block."""
        mask = np.zeros(len(self.program.block_line), dtype=bool)
        mask[self.block(words)] = True
        return mask

    @cached_property
    def motion(self) -> Ints:
        """[blocks] the motion code x 10 in force behind each block, as written; -1 before the first."""
        words = self.coded("G", MOTIONS)
        last = np.full(len(self.program.block_line), -1)
        last[self.block(words)] = words
        last = np.maximum.accumulate(last) if len(last) else last
        codes = np.full(len(last), -1, dtype=np.int32)
        codes[last >= 0] = self.tenths(last[last >= 0])
        return codes

    @cached_property
    def arcs(self) -> Bools:
        """[blocks] under G2 or G3, with words of a centre or a radius."""
        letters = self.program.word_letter
        words = np.flatnonzero(np.isin(letters, np.frombuffer(b"IJKR", np.uint8)))
        return self.holds(words) & np.isin(self.motion, (20, 30)) & ~self.holds(self.coded("G", OTHER_P))

    def in_force(self, words: Column) -> Column:
        """Those that stand in a block which would be executed."""
        return words[(self.program.block_flags[self.block(words)] & SKIPPED) == 0] if len(words) else words

    def treat(self, state: str, about: str, words: Column, drop: bool = True) -> Column:
        """Refuse or ignore these words; what is executed of them is told. Gives the words that were in force.

        `about` is the family, the habit or WORD.
        """
        words = self.in_force(words)
        blocks = self.block(words)
        program = self.program
        self.tell(state, about, program.block_line[blocks], program.word_start[words], program.word_end[words])
        if state == "refuses":
            self.stop(blocks)
        elif state == "ignores" and drop:
            if self.gone is None:
                self.gone = np.zeros(len(self.program.word_letter), dtype=bool)
            self.gone[words] = True
        return words

    def tell(self, state: str, about: str, line: Column, start: Column, end: Column) -> None:
        kind = CODE["code-refused" if state == "refuses" else "code-ignored"]
        for row in zip(line[:MOST].tolist(), start[:MOST].tolist(), end[:MOST].tolist()):
            self.faults.add(kind, *row, KIND[about])

    def stop(self, blocks: Column) -> None:
        """These blocks are not executed."""
        if len(blocks):
            self.flags = self.flags.copy()
            self.flags[blocks] = (self.flags[blocks] & (0xFF ^ FLOW ^ EXPRESSION)) | BROKEN

    def change(self, words: Column, factor: float) -> None:
        if len(words):
            self.value = self.value.copy()
            self.value[words] *= factor

    def left(self) -> Program:
        program = self.program
        if self.value is not program.word_value or self.flags is not program.block_flags:
            program = replace(program, word_value=self.value, block_flags=self.flags)
        if self.gone is None or not self.gone.any():
            return program
        keep = ~self.gone
        before = np.concatenate(([0], np.cumsum(keep))).astype(np.int32)
        return replace(
            program,
            block_word=before[program.block_word],
            word_letter=program.word_letter[keep],
            word_value=program.word_value[keep],
            word_start=program.word_start[keep],
            word_end=program.word_end[keep],
        )


def _codes(own: _Taken) -> None:
    controller = own.controller
    lost: list[Column] = []
    for letter in "GM":
        words = own.of(letter)
        numbers = own.tenths(words)
        for number in distinct(numbers).tolist():
            code = spelled(letter, number) if number >= 0 else ""
            state = controller.tool_change if code == "M6" else controller.state(code) if code else "does"
            if code in ("", "M0", "M1", "M60") or state in ("does", "stops") or (code == "M6" and state == "ignores"):
                continue
            treated = own.treat(state, family_of(code), words[numbers == number])
            if state == "refuses" and letter == "G" and number in MOTIONS:
                lost.append(own.block(treated))
    if not lost:
        return
    # Lines that go on with a refused motion code are not executed either, until another motion code comes.
    words = own.coded("G", MOTIONS)
    latest = np.full(len(own.program.block_line), -1)
    latest[own.block(words)] = own.block(words)
    latest = np.maximum.accumulate(latest)
    own.stop(np.flatnonzero(np.isin(latest, np.concatenate(lost))))


def _letters(own: _Taken) -> None:
    for letter in LETTERS:
        state = own.controller.state(letter)
        if state != "does":
            own.treat(state, WORD, own.of(letter))


def _arcs(own: _Taken) -> None:
    """P as turns, R, and centres with one word, on lines under G2 or G3."""
    for habit, letter in (("arc-turns", "P"), ("arc-radius", "R")):
        state = own.controller.state(habit)
        if state == "does":
            continue
        words = own.of(letter)
        if habit == "arc-turns":
            words = words[own.program.word_value[words] > 1]
        own.treat(state, habit, words[own.arcs[own.block(words)]])
    letters = own.program.word_letter
    if (state := own.controller.state("one-centre-word")) != "does":
        centre = np.flatnonzero(np.isin(letters, np.frombuffer(b"IJK", np.uint8)))
        count = np.zeros(len(own.program.block_line), dtype=np.int64)
        np.add.at(count, own.block(centre), 1)
        alone = own.arcs & (count == 1) & ~own.holds(own.of("R"))
        own.treat(state, "one-centre-word", centre[alone[own.block(centre)]], drop=False)
    if (state := own.controller.state("full-circles")) != "does":
        centre = np.flatnonzero(np.isin(letters, np.frombuffer(b"IJ", np.uint8)))
        ends = np.flatnonzero(np.isin(letters, np.frombuffer(b"XY", np.uint8)))
        closed = own.arcs & ~own.holds(ends)
        own.treat(state, "full-circles", centre[closed[own.block(centre)]])


def _habits(own: _Taken) -> None:
    program, lines = own.program, own.program.line_start
    if (state := own.controller.state("expressions")) != "does":
        blocks = np.flatnonzero(((program.block_flags & EXPRESSION) != 0) & ((program.block_flags & SKIPPED) == 0))
        _tell_lines(own, state, "expressions", program.block_line[blocks])
        own.stop(blocks)
    if (state := own.controller.state("semicolon-comments")) != "does":
        marks = np.frombuffer(program.data, np.uint8)[program.comment_start - 1] == ord(";")
        start = program.comment_start[marks] - 1
        own.tell(state, "semicolon-comments", program.comment_line[marks], start, start + 1)
    if (state := own.controller.state("block-delete")) == "refuses":
        _tell_lines(own, state, "block-delete", program.block_line[(program.block_flags & DELETED) != 0])
    for habit, pattern in IN_TEXT.items():
        state = own.controller.state(habit)
        if state == "does":
            continue
        found = [match.span() for _, match in zip(range(MOST), pattern.finditer(program.data))]
        if not found:
            continue
        start, end = np.array(found).T
        line = np.searchsorted(lines, start, side="right")
        own.tell(state, habit, line, start, end)
        if habit in ("macro-words", "flow-by-number"):
            own.stop(np.flatnonzero(((program.block_flags & FLOW) != 0) & np.isin(program.block_line, line)))


def _tell_lines(own: _Taken, state: str, about: str, line: Column) -> None:
    start = own.program.line_start[line - 1]
    ends = own.program.line_start[line]
    own.tell(state, about, line, start, np.maximum(ends - 1, start + 1))


def _points(own: _Taken, inch: bool) -> None:
    """Numbers without a decimal point count in steps of the resolution.

    A program that has numbers of both kinds was not written for such a controller: that is told, and it is followed as
    it was meant.
    """
    words = np.flatnonzero(np.isin(own.program.word_letter, LENGTHS))
    points = np.flatnonzero(np.frombuffer(own.program.data, np.uint8) == ord("."))
    first = np.searchsorted(points, own.program.word_start[words])
    has = first < np.searchsorted(points, own.program.word_end[words])
    bare = own.in_force(words[~has & np.isfinite(own.program.word_value[words]) & (own.value[words] != 0)])
    if has.any() and len(bare):
        word = int(bare[0])
        line = int(own.program.block_line[own.block(bare[:1])[0]])
        start, end = int(own.program.word_start[word]), int(own.program.word_end[word])
        own.faults.add(CODE["point-missing"], line, start, end, len(bare))
        return
    inch = len(own.coded("G", (200, 700))) > 0 or (inch and not len(own.coded("G", (210, 710))))
    own.change(words[~has], INCH_STEP if inch else own.controller.resolution)


def _old_units(own: _Taken) -> None:
    """G70 and G71 of ISO 6983-1 are G20 and G21; on few controllers are they something else."""
    words = own.of("G")
    words = words[np.isin(own.program.word_value[words], (70.0, 71.0))]
    there = own.program.word_value[own.in_force(words)].tolist()
    told = [said for code, said in ((70.0, "G70 as inch"), (71.0, "G71 as mm")) if code in there]
    if told:
        own.assumed.append(Assumed("units", " and ".join(told), "ISO 6983-1 writes them so"))
