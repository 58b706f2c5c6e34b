"""Lines from which a broken-off program can be started again, with all that must be in force there."""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from gclint.columns import Bools, Column, Longs, one_of
from gclint.tables.motion import COMPENSATED, CYCLE, EVENT, HOME, INCH, MACHINE, OTHER_FRAME, PROBE, RAPID, Motion
from gclint.tables.program import BEHIND_END, BROKEN, DELETED, Program

# Groups of G words of which one is in force; of each the latest one before the line is told.
MODES = (
    (20, 21), (90, 91), (17, 18, 19), (93, 94, 95), (54, 55, 56, 57, 58, 59, 59.1, 59.2, 59.3), (61, 61.1, 64),
    (90.1, 91.1), (98, 99),
)  # fmt: skip
NOT_RUN = DELETED | BROKEN | BEHIND_END
OFFSET_SETTERS = (10, 52, 92, 92.1, 92.2, 92.3)
NOT_TELLING = "the program has loops, calls or parameters, so a line does not tell how far it has come"


class RestartLine(Struct, frozen=True):
    """The tip is above the stock at `start` (mm, work coordinates) when this line begins."""

    line: int
    move: int  # row of Motion
    tool: int
    start: tuple[float, float, float]
    words: tuple[str, ...]  # to be given before the line, in this order, in the program's own units
    inch: bool


def restart_moves(program: Program, motion: Motion, top: float | None) -> tuple[Longs, str]:
    """(rows of Motion in the order of the program, why there are none or why they end early, else "").

    One row for each stretch of travel above `top` (Z of the stock's top, mm) between two cuts: the first that stands
    in absolute coordinates, outside cycles and compensation, at a place that is known.
    """
    none: Longs = np.zeros(0, np.int64)
    if motion.followed is not None:
        return none, NOT_TELLING
    if top is None:
        return none, "where the stock's top lies is not known"
    if not len(motion):
        return none, "nothing moves"
    words = _Words(program)
    first, why = _first_of_each_stretch(motion, top), ""
    setter = words.first(OFFSET_SETTERS)
    if setter:
        why = f"from line {setter} on the program moves its own zero (G10, G52 or G92)"
        first = first[motion.line[first] < setter]
    return first[~words.in_force_at(91, (90, 91), motion.line[first])], why


def restart_lines(program: Program, motion: Motion, moves: Column, changes_tools: bool) -> tuple[RestartLine, ...]:
    """What must be in force at each of these rows of `restart_moves`; a program may have very many, so choose first.

    `changes_tools`: whether the controller does something at M6; else the tool is put in by hand and no word for it is
    given.
    """
    if not len(moves):
        return ()
    words = _Words(program)
    return tuple(_restart(words, motion, move, changes_tools) for move in moves.tolist())


def _first_of_each_stretch(m: Motion, top: float) -> Longs:
    """Rows of Motion: in each run of moves above the top, between cuts, the first from which one can start."""
    below: Bools = ~((m.z0 > top) & (m.z1 > top))
    cuts = below & (m.kind != RAPID)
    if not cuts.any():
        return np.zeros(0, np.int64)
    foreign = MACHINE | HOME | OTHER_FRAME | CYCLE | PROBE | COMPENSATED
    known = np.isfinite(m.x0) & np.isfinite(m.y0) & np.isfinite(m.x1) & np.isfinite(m.y1)
    begins = np.concatenate(([True], m.line[1:] != m.line[:-1]))
    first_cut, last_cut = int(np.argmax(cuts)), len(m) - 1 - int(np.argmax(cuts[::-1]))
    may = ~below & known & begins & ((m.flags & foreign) == 0) & (m.sweep == 0)
    may &= (m.offset == m.offset[first_cut]) & ~_compensating(m)
    may[:first_cut] = False  # before the first cut the program is simply started
    may[last_cut + 1 :] = False
    rows = np.flatnonzero(may)
    stretch = np.cumsum(below)[rows]
    fresh = np.ones(len(rows), dtype=bool)
    fresh[1:] = (stretch[1:] != stretch[:-1]) | (m.tool[rows][1:] != m.tool[rows][:-1])
    chosen: Longs = rows[fresh]
    return chosen


def _compensating(m: Motion) -> Bools:
    """[moves] whether G41 or G42 is in force."""
    on = np.zeros(len(m) + 1, dtype=np.int64)
    about = one_of(m.event_kind, (EVENT["compensation-on"], EVENT["compensation-off"]))
    state = 0
    for kind, move in zip(m.event_kind[about].tolist(), m.event_move[about].tolist()):
        now = int(kind == EVENT["compensation-on"])
        on[move] += now - state
        state = now
    return np.cumsum(on)[:-1] > 0


def _restart(words: _Words, m: Motion, move: int, changes_tools: bool) -> RestartLine:
    line, inch = int(m.line[move]), bool(m.flags[move] & INCH)
    scale = 1 / 25.4 if inch else 1.0
    start = (float(m.x0[move]), float(m.y0[move]), float(m.z0[move]))
    x, y, z = (_plain(value * scale) for value in start)
    tool, speed, spindle = int(m.tool[move]), float(m.speed[move]), int(m.spindle[move])
    modes = [f"G{value:g}" for group in MODES if (value := words.latest("G", group, line)) is not None]
    given = [" ".join(modes)] if modes else []
    if tool >= 0 and changes_tools:
        given.append(f"T{tool} M6" if words.latest("M", (6,), line) is not None else f"T{tool}")
    length = _latest_event(m, move, ("length-on", "length-off"))
    if length is not None and m.event_kind[length] == EVENT["length-on"]:
        number = float(m.event_value[length])
        given.append("G43" if np.isnan(number) else f"G43 H{number:g}")
    turning = {1: ["M3"], -1: ["M4"]}.get(spindle, [])
    spindle_words = ([] if np.isnan(speed) else [f"S{_plain(speed)}"]) + turning
    given += [" ".join(spindle_words)] if spindle_words else []
    coolant = words.latest("M", (7, 8, 9), line)
    if coolant in (7, 8):
        given.append(f"M{coolant:g}")
    feed = words.latest("F", None, line)
    if feed is not None:
        given.append(f"F{_plain(feed)}")
    given += [f"G0 Z{z}", f"X{x} Y{y}"]
    if not words.on_line("G", (0, 1, 2, 3), line):
        given.append("G0" if m.kind[move] == RAPID else "G1")
    return RestartLine(line, move, tool, start, tuple(given), inch)


def _latest_event(m: Motion, move: int, kinds: tuple[str, ...]) -> int | None:
    rows = np.flatnonzero(one_of(m.event_kind, [EVENT[kind] for kind in kinds]) & (m.event_move <= move))
    return int(rows[-1]) if len(rows) else None


class _Words:
    """The words of blocks that are executed, in the order of the program; found by line."""

    def __init__(self, program: Program) -> None:
        self.program = program
        self.letters: dict[str, Longs] = {}
        self.known: dict[tuple[str, tuple[float, ...] | None], tuple[Column, Column]] = {}

    def latest(self, letter: str, values: tuple[float, ...] | None, line: int) -> float | None:
        """Of these words the last one before `line`; None if there is none."""
        said, lines = self._said(letter, values)
        at = int(np.searchsorted(lines, line, side="left")) - 1
        return float(said[at]) if at >= 0 else None

    def on_line(self, letter: str, values: tuple[float, ...], line: int) -> bool:
        p = self.program
        first, end = np.searchsorted(p.block_line, (line, line + 1))
        words = slice(int(p.block_word[first]), int(p.block_word[end]))
        said = p.word_value[words][p.word_letter[words] == ord(letter)]
        return first < end and not int(p.block_flags[first]) & NOT_RUN and bool(_any_of(said, values).any())

    def in_force_at(self, value: float, group: tuple[float, ...], lines: Column) -> Bools:
        """For each line whether `value` is the latest word of its group, words on the line itself counted."""
        said, own = self._said("G", group)
        if not len(own):
            return np.zeros(len(lines), dtype=bool)
        at = np.searchsorted(own, lines, side="right") - 1
        return np.asarray((at >= 0) & (np.abs(said[np.maximum(at, 0)] - value) < 1e-3))

    def first(self, values: tuple[float, ...]) -> int:
        """Line of the first of these G words, 0 if there is none."""
        _, lines = self._said("G", values)
        return int(lines[0]) if len(lines) else 0

    def _said(self, letter: str, values: tuple[float, ...] | None) -> tuple[Column, Column]:
        """(values, lines) of these words."""
        key = (letter, values)
        if key not in self.known:
            p = self.program
            rows = self._of(letter)
            said = p.word_value[rows]
            rows = rows[np.isfinite(said) if values is None else _any_of(said, values)]
            block = np.searchsorted(p.block_word, rows, side="right") - 1
            runs = (p.block_flags[block] & NOT_RUN) == 0
            self.known[key] = p.word_value[rows[runs]], p.block_line[block[runs]]
        return self.known[key]

    def _of(self, letter: str) -> Longs:
        if letter not in self.letters:
            self.letters[letter] = np.flatnonzero(self.program.word_letter == ord(letter))
        return self.letters[letter]


def _any_of(said: Column, values: tuple[float, ...]) -> Bools:
    """Which of the words are one of these codes; one that could not be read is none."""
    found = np.zeros(len(said), dtype=bool)
    for value in values:
        found |= np.abs(said - value) < 1e-3
    return found


def _plain(value: float) -> str:
    text = f"{value:.4f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text
