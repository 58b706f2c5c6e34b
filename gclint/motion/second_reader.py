"""Reads the plain blocks of a program again with pygcode, an independent library, and tells where the two differ.

Words are compared block by block, from the text of the line; where a block moves, its end and the modes in force are
compared with those of pygcode's own machine. That machine models less than a controller does, so what it does not model
is passed over and counted with the reason, and the machine is then placed where gclint stands. It is helped in three
things: a change of units scales its position, codes are handed to it before the words they use, and what M6 and a stop
do to the spindle is not held against it.
"""

from __future__ import annotations

import re
import warnings
from collections.abc import Callable
from dataclasses import dataclass, field
from math import isclose, isnan
from typing import Any

import numpy as np

from gclint.faults import KINDS
from gclint.problem import Problem
from gclint.tables.motion import (
    COMPENSATED,
    CYCLE,
    HOME,
    INCH,
    INVERSE_TIME,
    LINE,
    MACHINE,
    OTHER_FRAME,
    PER_REV,
    PROBE,
    Motion,
)
from gclint.tables.program import BEHIND_END, BROKEN, DELETED, EXPRESSION, FLOW, Program

MOST_BLOCKS = 200_000  # read again; pygcode takes about 0.2 ms for each
LONGEST_LINE = 1_000  # bytes; pygcode's time grows with the square of a line's length
MOST_TOLD = 1_000  # differences kept; all are counted
SAME_PLACE = 1e-6  # mm, and the share of a number that rounding may take

# Why something was not compared.
NOT_PLAIN = "it uses parameters, expressions, calls or loops, which pygcode does not read"
SKIPPED = "it is switched off with '/'; pygcode would read it like any other"
UNREADABLE = "gclint cannot read it either, and says so among its findings"
BEHIND = "it stands behind the end of the program"
NUMBER = "a number is written in a way pygcode does not read: a plus sign, white space or a comma within it"
COMMENT = "it holds a comment pygcode takes for code: an unclosed bracket, or ';' or '%' inside one"
MARK = "it holds a program number, a checksum or a stray mark, over which pygcode drops words or refuses the line"
LONG = f"its line is longer than {LONGEST_LINE:,} bytes, and pygcode's time grows with the square of that"
REFUSED = "pygcode refuses it: a code it does not know, or a word that its code has no use for"
OURS_REFUSED = "gclint refuses it, and says so among its findings; pygcode does not check what it is asked for"
CYCLES = "a canned cycle: pygcode keeps no sticky words and follows none of its motions"
HOMES = "a move in machine coordinates or a home move (G53, G28, G30): pygcode moves as if it were an ordinary one"
PROBES = "a probe move: where it ends is not known before it is run"
FRAMES = "it stands behind a change of coordinates (G10, G52, G92, G54 to G59.3), of which pygcode keeps none"
COMPENSATION = "cutter compensation is on: pygcode follows the programmed path, gclint the tool's"
DWELLS = "a dwell with X or U, or with no P: pygcode takes X for a move"
FLOWS = "it stands behind a call, a loop or a jump, so the order of execution is not that of the lines"

FLOAT = re.compile(rb"\s*-?(\d+\.?\d*|\.\d+)\s*")
WRITTEN = {  # what pygcode reads of a number, by letter
    ord("G"): re.compile(rb"\s*\d+(\.\d?0*)?\s*"), ord("M"): re.compile(rb"\s*\d+(\.\d?0*)?\s*"),
    ord("T"): re.compile(rb"\s*\d+(\.0*)?\s*"), ord("L"): re.compile(rb"\s*\d+(\.0*)?\s*"),
}  # fmt: skip
BRACKETS = re.compile(rb"\([^()]*\)")
GOOD_TEXT = re.compile(rb"[A-NP-Za-np-z0-9.\s+-]*")
AXES = "XYZ"
KEPT = frozenset("FSTGM")  # letters of modes; the others belong to the code they stand with
FIRST = {"F": 0, "S": 0, "T": 0, "M": 3}  # the order in which words are handed over; G is 1, 1.5 for a motion
FRAME_CODES = frozenset((10, 16, 51, 51.1, 52, 68, 92, 92.1, 92.2, 92.3))
OFFSETS = frozenset((54, 55, 56, 57, 58, 59, 59.1, 59.2, 59.3))
CYCLE_CODES = frozenset((73, 76, *range(81, 90)))
NOT_MODELLED = frozenset((4, 28, 28.1, 30, 30.1, 53)) | FRAME_CODES | CYCLE_CODES
NOT_EXECUTED = frozenset(KINDS.index(kind) for kind in ("word-conflict", "value-out-of-range", "code-unknown"))


@dataclass(frozen=True, slots=True)
class Difference:
    line: int
    what: str  # "words", "end X", "feed", ...
    ours: str
    theirs: str


@dataclass(slots=True)
class PassedOver:
    """Blocks that were not compared, for one reason."""

    why: str
    blocks: int = 0
    first_line: int = 0


@dataclass(slots=True)
class Compared:
    """What came out; `words` of `blocks` were read again, and `ends` of `moving` followed."""

    reader: str
    blocks: int = 0
    words: int = 0
    moving: int = 0
    ends: int = 0
    found: int = 0  # differences, told or not
    left_out: int = 0  # blocks behind the bound
    differences: list[Difference] = field(default_factory=list)
    words_not_compared: dict[str, PassedOver] = field(default_factory=dict)
    ends_not_compared: dict[str, PassedOver] = field(default_factory=dict)


def second_reader() -> Any:
    """The package pygcode. Raises Problem where it is not installed."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # its patterns are not raw strings
        try:
            import pygcode
        except ImportError:
            raise Problem(
                "the second reader, pygcode, is not installed: run  pip install 'gclint[second-reader]'"
            ) from None
    return pygcode


def read_again(program: Program, motion: Motion, progress: Callable[[str], None] = lambda step: None) -> Compared:
    """Compare gclint's tables with pygcode's reading, at most of the first 200,000 blocks.

    `motion` is what the program says by itself (the card "any"): pygcode knows no controllers.
    """
    pygcode = second_reader()
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        return Comparison(program, motion, pygcode).run(progress)


class Comparison:
    """The state of both while the blocks are walked in the order of the text."""

    def __init__(self, program: Program, motion: Motion, pygcode: Any) -> None:
        from importlib.metadata import PackageNotFoundError, version

        try:
            self.out = Compared(f"pygcode {version('pygcode')}")
        except PackageNotFoundError:
            self.out = Compared("pygcode")
        self.program, self.motion = program, motion
        self.text2words, self.words2gcodes = pygcode.words.text2words, pygcode.gcodes.words2gcodes
        self.split_line, self.Word = pygcode.comment.split_line, pygcode.words.Word
        self.machine = pygcode.Machine()
        self.row_of: dict[int, int] = {}  # the last row of each line, of those it made when it was come to first
        for row, line in enumerate(motion.line.tolist()):
            if self.row_of.get(line, row - 1) == row - 1:
                self.row_of[line] = row
        executed = np.isin(motion.faults.kind, list(NOT_EXECUTED))
        self.refused = {int(line) for line in motion.faults.line[executed]}
        self.moved = self.cycle = self.over = self.flow = self.frames_lost = False
        self.offset = 0.0
        self.tool_by_t = any(taken.what == "tool changes" for taken in motion.assumed)
        self.unsure = {"tool"}  # modes that pygcode cannot know at present
        self.last: dict[str, tuple[str, str]] = {}

    def run(self, progress: Callable[[str], None]) -> Compared:
        blocks = len(self.program.block_line)
        self.out.left_out = max(0, blocks - MOST_BLOCKS)
        for b in range(min(blocks, MOST_BLOCKS)):
            if b % 5_000 == 0 and b:
                progress(f"reading again, block {b:,} of {min(blocks, MOST_BLOCKS):,}")
            self.block(b)
        return self.out

    def block(self, b: int) -> None:
        program, line = self.program, int(self.program.block_line[b])
        flags = int(program.block_flags[b])
        row = None if self.over or self.flow else self.row_of.get(line)
        self.out.blocks += 1
        self.out.moving += line in self.row_of
        why = next((why for flag, why in PLAIN_NOT if flags & flag), "")
        if why:
            self.not_compared(self.out.words_not_compared, why, line)
            self.follow_unread(b, flags, row, why)
            return
        why = self.not_written_for_it(b)
        words: list[Any] = []
        if not why:
            try:
                words = self.words_of(b)
            except Exception:  # whatever it stumbles on is an answer about pygcode, not about the program
                why = REFUSED
        if why:
            self.not_compared(self.out.words_not_compared, why, line)
            words = self.our_words(b)
        else:
            self.out.words += 1
            self.compare_words(b, words)
        self.follow(line, row, words)

    # -- words ---------------------------------------------------------------------------------------------------

    def words_of(self, b: int) -> list[Any]:
        """pygcode's words of a block, without N and O."""
        text = self.program.line_text(int(self.program.block_line[b])).lstrip("﻿").rstrip("\x1a \t")
        code, _comment = self.split_line(text)
        return [word for word in self.text2words(code) if word.letter not in "NO"]

    def our_words(self, b: int) -> list[Any]:
        """Our words of a block as pygcode's, as far as they are plain numbers."""
        first, last = self.program.block_word[b], self.program.block_word[b + 1]
        pairs = zip(self.program.word_letter[first:last], self.program.word_value[first:last].tolist())
        return [
            self.Word(chr(letter), str(int(value)) if letter in b"TL" else value)
            for letter, value in pairs
            if not isnan(value) and abs(value) < 1e9
        ]

    def not_written_for_it(self, b: int) -> str:
        """Why pygcode cannot be asked for the words of this line, "" if it can."""
        program, line = self.program, int(self.program.block_line[b])
        raw = program.data[int(program.line_start[line - 1]) : int(program.line_start[line])]
        if len(raw) > LONGEST_LINE:
            return LONG
        for w in range(program.block_word[b], program.block_word[b + 1]):
            written = program.data[int(program.word_start[w]) + 1 : int(program.word_end[w])]
            if not WRITTEN.get(int(program.word_letter[w]), FLOAT).fullmatch(written):
                return NUMBER
        bare = BRACKETS.sub(b"", raw.removeprefix(b"\xef\xbb\xbf").rstrip(b"\r\n\x1a \t"))
        code, semicolon, _comment = bare.partition(b";")
        if b"%" in raw or b"(" in code or b")" in code or (semicolon and raw.find(b";") < raw.find(b"(")):
            return COMMENT
        if any(b";" in comment for comment in BRACKETS.findall(raw)):
            return COMMENT
        return "" if GOOD_TEXT.fullmatch(code) else MARK

    def compare_words(self, b: int, words: list[Any]) -> None:
        first, last = self.program.block_word[b], self.program.block_word[b + 1]
        ours = list(zip(self.program.word_letter[first:last], self.program.word_value[first:last].tolist()))
        theirs = [(ord(word.letter), float(word.value)) for word in words]
        if len(ours) != len(theirs) or any(
            a != b or not isclose(x, y, rel_tol=1e-12, abs_tol=0.0) for (a, x), (b, y) in zip(ours, theirs)
        ):
            self.differ(int(self.program.block_line[b]), "words", _spoken(ours), _spoken(theirs))

    # -- modes and ends ------------------------------------------------------------------------------------------

    def follow_unread(self, b: int, flags: int, row: int | None, why: str) -> None:
        """A block pygcode never sees: the machine takes over what gclint knows."""
        line = int(self.program.block_line[b])
        if line in self.row_of:
            self.not_compared(self.out.ends_not_compared, FLOWS if self.flow else why, line)
        if flags & FLOW:
            self.flow = True
        elif flags & EXPRESSION and not flags & (DELETED | BROKEN | BEHIND_END) and not self.over:
            self.modes_only(self.our_words(b))
            self.unsure |= {"feed", "speed", "tool", "spindle", "motion"}
            if row is not None:
                self.place(row)

    def follow(self, line: int, row: int | None, words: list[Any]) -> None:
        codes = {word.value for word in words if word.letter == "G"}
        letters = {word.letter for word in words}
        stops = {word.value for word in words if word.letter == "M"}
        if line in self.row_of and row is None:
            self.not_compared(self.out.ends_not_compared, FLOWS if self.flow else BEHIND, line)
        if self.over or self.flow:
            return
        self.sure_of(letters, codes, stops)
        why = self.not_modelled(codes, letters, row, line)
        if why is None:
            try:
                self.process(words)
            except Exception:  # as above
                why = REFUSED
        if why is not None:
            self.change_frames(codes, words)
            if line not in self.refused or row is not None:
                self.modes_only(words)
            if line in self.row_of:
                self.not_compared(self.out.ends_not_compared, why, line)
            if row is not None:
                self.place(row)
        elif row is not None:
            self.out.ends += 1
            self.compare_state(line, row)
        self.moved |= row is not None
        self.over |= bool(stops & {2, 30})

    def not_modelled(self, codes: set[float], letters: set[str], row: int | None, line: int) -> str | None:
        """Why this block is not given to pygcode's machine as it stands; None where it is."""
        flags = int(self.motion.flags[row]) if row is not None else 0
        if codes & {0, 1, 2, 3, 80}:
            self.cycle = False
        if codes & CYCLE_CODES or self.cycle or flags & CYCLE:
            self.cycle = self.cycle or bool(codes & CYCLE_CODES)
            return CYCLES
        if codes & {28, 28.1, 30, 30.1, 53} or flags & (MACHINE | HOME):
            return HOMES
        if flags & PROBE or any(38 <= code < 39 for code in codes):
            return PROBES
        if flags & COMPENSATED:
            return COMPENSATION
        if 4 in codes and "P" not in letters:
            return DWELLS
        moved_offset = codes & OFFSETS and self.moved and next(iter(codes & OFFSETS)) != (self.offset or 54)
        self.offset = next(iter(codes & OFFSETS), self.offset)
        if codes & FRAME_CODES or moved_offset or flags & OTHER_FRAME:
            self.frames_lost |= self.moved or 52 in codes
            return FRAMES
        if self.frames_lost and letters & set(AXES):
            return FRAMES
        if row is None and letters & set(AXES):
            return OURS_REFUSED
        return None

    def sure_of(self, letters: set[str], codes: set[float], stops: set[float]) -> None:
        """What this block sets is known to both; what M6 and the stops do to the spindle only to gclint."""
        if stops & {0, 1, 6, 60}:
            self.unsure.add("spindle")
        if stops & {3, 4, 5}:
            self.unsure.discard("spindle")
        self.unsure -= {name for letter, name in (("F", "feed"), ("S", "speed")) if letter in letters}
        if codes & {93, 94, 95} and "F" not in letters:
            self.unsure.add("feed")
        if codes & {0, 1, 2, 3}:
            self.unsure.discard("motion")
        if "T" in letters and (6 in stops or self.tool_by_t):
            self.unsure.discard("tool")
        elif "T" in letters or 6 in stops:  # a tool selected before its change: pygcode knows no such difference
            self.unsure.add("tool")

    def process(self, words: list[Any]) -> None:
        """One block through pygcode's machine, codes before the words they use."""
        before = self.unit
        ordered = sorted(words, key=_turn)
        gcodes, modal = self.words2gcodes(ordered)
        self.rescale(before, {word.value for word in words if word.letter == "G"})
        self.machine.process_gcodes(*gcodes, modal_params=modal)

    def modes_only(self, words: list[Any]) -> None:
        """What a block that is passed over still sets."""
        for word in sorted(words, key=_turn):
            if word.letter in KEPT and not (
                word.letter == "G" and (word.value in NOT_MODELLED or 38 <= word.value < 39)
            ):
                try:
                    self.process([word])
                except Exception:  # a code pygcode does not know sets nothing
                    continue

    @property
    def unit(self) -> float:
        """mm per unit of pygcode's machine."""
        return 25.4 if self.machine.mode.units is not None and self.machine.mode.units.word.value == 20 else 1.0

    def rescale(self, before: float, codes: set[float]) -> None:
        """pygcode keeps its numbers over a change of units."""
        after = 25.4 if 20 in codes else 1.0 if 21 in codes else before
        if after != before:
            position = self.machine.pos
            position.update(**{axis: getattr(position, axis) * before / after for axis in AXES})
            self.machine.pos = position

    def place(self, row: int) -> None:
        """pygcode's machine stands where gclint does, on every axis that is known."""
        position, unit = self.machine.pos, self.unit
        ends = {axis: float(getattr(self.motion, f"{axis.lower()}1")[row]) for axis in AXES}
        position.update(**{axis: value / unit for axis, value in ends.items() if not isnan(value)})
        self.machine.pos = position

    def change_frames(self, codes: set[float], words: list[Any]) -> None:
        """Before the first move, G92 and G10 L20 only say where the tool stands."""
        if not self.moved and codes & {10, 92}:
            position = self.machine.pos
            position.update(**{word.letter: word.value for word in words if word.letter in AXES})
            self.machine.pos = position

    def compare_state(self, line: int, row: int) -> None:
        m, mode, unit = self.motion, self.machine.mode, self.unit
        flags, kind = int(m.flags[row]), int(m.kind[row])
        away = False
        for axis in AXES:
            ours = float(getattr(m, f"{axis.lower()}1")[row])
            theirs = float(getattr(self.machine.pos, axis)) * unit
            if not isnan(ours) and not isclose(ours, theirs, rel_tol=SAME_PLACE, abs_tol=SAME_PLACE):
                self.differ(line, f"end {axis}", f"{ours:.10g} mm", f"{theirs:.10g} mm")
                away = True
        if away:
            self.place(row)
        motion = _value(mode.motion)
        if "motion" not in self.unsure and not (kind == LINE and motion in (2, 3)):  # a circle of no radius
            self.same(line, "motion", kind, motion, "G")
        self.same(line, "plane", int(m.plane[row]), _value(mode.plane_selection), "G")
        self.same(line, "units", 20 if flags & INCH else 21, _value(mode.units), "G")
        feed_mode = 93 if flags & INVERSE_TIME else 95 if flags & PER_REV else 94
        self.same(line, "feed mode", feed_mode, _value(mode.feed_rate_mode), "G")
        if m.offset[row]:
            self.same(line, "work offset", int(m.offset[row]) / 10, _value(mode.coordinate_system), "G")
        self.compare_numbers(line, row, feed_mode)

    def compare_numbers(self, line: int, row: int, feed_mode: int) -> None:
        """Feed, speed, spindle and tool; feeds as the F number that gclint's feed comes from."""
        m, mode = self.motion, self.machine.mode
        feed, speed, length = float(m.feed[row]), float(m.speed[row]), float(m.length[row])
        scale = {93: length, 94: self.unit, 95: self.unit * speed}[feed_mode]
        if "feed" not in self.unsure and not isnan(feed) and not isnan(scale) and scale > 0:
            self.same(line, "feed", feed / scale, _value(mode.feed_rate), "F")
        if "speed" not in self.unsure and not isnan(speed):
            self.same(line, "speed", speed, _value(mode.spindle_speed), "S")
        if "spindle" not in self.unsure:
            turning = {1: 3, -1: 4, 0: 5, 2: 5}[int(m.spindle[row])]
            self.same(line, "spindle", turning, _value(mode.spindle), "M")
        if "tool" not in self.unsure and m.tool[row] >= 0:
            self.same(line, "tool", int(m.tool[row]), _value(mode.tool), "T")

    # -- telling -------------------------------------------------------------------------------------------------

    def same(self, line: int, what: str, ours: float, theirs: float | None, letter: str) -> None:
        """A mode that differs is told once, not again on every block behind it."""
        if theirs is not None and isclose(ours, theirs, rel_tol=1e-9, abs_tol=1e-12):
            self.last.pop(what, None)
            return
        pair = (f"{letter}{ours:.10g}", "none" if theirs is None else f"{letter}{theirs:.10g}")
        if self.last.get(what) != pair:
            self.last[what] = pair
            self.differ(line, what, *pair)

    def differ(self, line: int, what: str, ours: str, theirs: str) -> None:
        self.out.found += 1
        if len(self.out.differences) < MOST_TOLD:
            self.out.differences.append(Difference(line, what, ours, theirs))

    def not_compared(self, kept: dict[str, PassedOver], why: str, line: int) -> None:
        one = kept.setdefault(why, PassedOver(why, first_line=line))
        one.blocks += 1


PLAIN_NOT = ((BEHIND_END, BEHIND), (DELETED, SKIPPED), (FLOW | EXPRESSION, NOT_PLAIN), (BROKEN, UNREADABLE))


def _turn(word: Any) -> float:
    """The place of a word in its block as it is handed to pygcode."""
    if word.letter == "G":
        return 1.5 if word.value in (0, 1, 2, 3) else 1.0
    return FIRST.get(word.letter, 2.0)


def _value(code: Any) -> float | None:
    return None if code is None else float(code.word.value)


def _spoken(words: list[tuple[int, float]]) -> str:
    said = " ".join(f"{chr(letter)}{value:.10g}" for letter, value in words[:20])
    return f"{said} ..." if len(words) > 20 else said or "nothing"
