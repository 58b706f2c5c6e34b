"""Facts about words that stay in force: the feed mode, the path tolerance, a length that is cancelled, a tool that is
only selected."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from gclint.columns import Column, Floats, numbered, one_of
from gclint.facts.context import ON, Context, once
from gclint.facts.fact import Build, Table, number, text, truth
from gclint.tables.motion import EVENT, HOME, INCH, INVERSE_TIME, MACHINE, PER_REV, RAPID, Z_WORD

FEED_MODES = ("G93", "G95")


class FeedMode(NamedTuple):
    """A stretch of moves at feed under G93 or G95; `feed`: the largest F there, in the program's units."""

    mode: str
    line: int
    move: int
    feed: float
    per_rev: float  # mm per revolution, largest; NaN under G93
    own: float  # share of its moves at feed with an F of their own
    same: float  # share of them that have the commonest F
    spread: float  # their longest tenth over their shortest tenth


@once
def feed_modes(context: Context) -> list[FeedMode]:
    m = context.motion
    made = []
    for name, flag in (("G93", INVERSE_TIME), ("G95", PER_REV)):
        rows = np.flatnonzero((m.flags & flag != 0) & (m.kind != RAPID))
        if not len(rows):
            continue
        move = int(rows[0])
        own = float(np.mean(m.feed_line[rows] == m.line[rows]))
        with np.errstate(invalid="ignore", divide="ignore"):
            per_rev = m.feed[rows] / m.speed[rows]
        largest = float(np.fmax.reduce(per_rev, initial=np.nan)) if flag == PER_REV else np.nan
        fastest = float(np.fmax.reduce(m.feed[rows]))
        said = rows[(m.feed_line[rows] == m.line[rows]) & (m.length[rows] > 0)]
        words = m.feed[said] / m.length[said] if flag == INVERSE_TIME else m.feed[said]
        same, spread = _constant(words, m.length[said])
        made.append(FeedMode(name, _word_line(context, name, move), move, fastest, largest, own, same, spread))
    return made


def _constant(words: Floats, lengths: Floats) -> tuple[float, float]:
    """(share of the F words that are the commonest one, ratio of long moves to short ones); 0 and 1 of fewer than 5."""
    known = np.isfinite(words) & np.isfinite(lengths)
    if np.count_nonzero(known) < 5:
        return 0.0, 1.0
    _, place = numbered(np.round(words[known], 3))
    short, long = np.percentile(lengths[known], (10, 90))
    return float(np.bincount(place).max() / np.count_nonzero(known)), float(long / short)


def _word_line(context: Context, code: str, move: int) -> int:
    """The last line up to that of a move on which the program writes this G code; the move's where it never does."""
    here = int(context.motion.line[move])
    return last_line_of(context, code, here) or here


def last_line_of(context: Context, code: str, here: int) -> int:
    """The last line up to `here` on which the program writes this G code; 0 where it does not."""
    p = context.program
    words = np.flatnonzero((p.word_letter == ord("G")) & (np.abs(p.word_value - float(code[1:])) < 1e-6))
    lines = p.block_line[np.searchsorted(p.block_word, words, side="right") - 1]
    lines = lines[lines <= here]
    return int(lines[-1]) if len(lines) else 0


def _of(rows: Build, name: str, kind: type = float) -> Build:
    return lambda context: np.array([getattr(row, name) for row in rows(context)], dtype=kind)


FEEDS = Table(
    "feed_modes",
    "stretches of moves at feed under G93 (inverse time) or G95 (feed per revolution), one row for each of the two",
    {
        "line": number("", "line of the word", _of(feed_modes, "line")),
        "mode": text("G93 or G95", lambda c: (
            np.array([FEED_MODES.index(row.mode) for row in feed_modes(c)], dtype=np.int32), FEED_MODES),
            words=FEED_MODES),
        "per_rev": number("mm", "largest feed per revolution under G95", _of(feed_modes, "per_rev"), "an S"),
        "own": number("", "share of its moves at feed that carry an F of their own", _of(feed_modes, "own")),
        "same": number("", "share of these F words that are the commonest one; 0 of fewer than five",
                       _of(feed_modes, "same")),
        "spread": number("", "the longest tenth of these moves over the shortest", _of(feed_modes, "spread")),
    },
    lambda c: len(feed_modes(c)),
    lambda c: c.motion.tool[_of(feed_modes, "move", int)(c)],
    _of(feed_modes, "move", int),
)  # fmt: skip


# path tolerances: G64 P


class Tolerance(NamedTuple):
    line: int
    move: int
    wide: float


@once
def tolerances(context: Context) -> list[Tolerance]:
    """Each G64 with a P that comes into force, mm."""
    p, m = context.program, context.motion
    made = []
    for row in np.flatnonzero((m.event_kind == EVENT["path-mode"]) & (np.abs(m.event_value - 64) < 1e-6)).tolist():
        line, move = int(m.event_line[row]), int(m.event_move[row])
        block = int(np.searchsorted(p.block_line, line))
        if block >= len(p.block_line) or int(p.block_line[block]) != line:
            continue
        words = slice(int(p.block_word[block]), int(p.block_word[block + 1]))
        given = p.word_value[words][p.word_letter[words] == ord("P")]
        if len(given) and np.isfinite(given[0]) and len(m):
            inch = bool(m.flags[min(move, len(m) - 1)] & INCH)
            made.append(Tolerance(line, min(move, len(m) - 1), float(given[0]) * (25.4 if inch else 1.0)))
    return made


TOLERANCES = Table(
    "path_tolerances",
    "each G64 with a P: how far the path may leave the programmed one",
    {
        "line": number("", "line of the word", _of(tolerances, "line")),
        "tolerance": number("mm", "how far the path may leave the programmed one", _of(tolerances, "wide")),
    },
    lambda c: len(tolerances(c)),
    lambda c: c.motion.tool[_of(tolerances, "move", int)(c)],
    _of(tolerances, "move", int),
)


# lengths that are cancelled


class Cancelled(NamedTuple):
    line: int
    move: int
    same_line: bool


@once
def cancelled(context: Context) -> list[Cancelled]:
    """Each G49 while a length is in force, where the next Z in work coordinates comes before another length or change.

    A move to the machine's own coordinates in between makes it harmless.
    """
    m = context.motion
    kinds = m.event_kind
    made = []
    for row in np.flatnonzero(kinds == EVENT["length-off"]).tolist():
        before = np.flatnonzero((kinds[:row] == EVENT["length-on"]) | (kinds[:row] == EVENT["length-off"]))
        if not len(before) or kinds[before[-1]] != EVENT["length-on"]:
            continue
        after = np.flatnonzero((kinds[row + 1 :] == EVENT["length-on"]) | (kinds[row + 1 :] == EVENT["change"]))
        until = int(m.event_move[row + 1 + after[0]]) if len(after) else len(m)
        moves = slice(int(m.event_move[row]), until)
        named = np.flatnonzero((m.flags[moves] & (Z_WORD | HOME | MACHINE)) != 0)
        if not len(named):
            continue
        first = int(m.event_move[row]) + int(named[0])
        if m.flags[first] & (HOME | MACHINE) == 0:
            line = int(m.event_line[row])
            made.append(Cancelled(line, first, int(m.line[first]) == line))
    return made


CANCELLED = Table(
    "lengths_off",
    "each G49 behind which Z is named in work coordinates before a length is set again",
    {"line": number("", "line of G49", _of(cancelled, "line")),
     "same_line": truth("whether Z stands on the same line", _of(cancelled, "same_line", bool))},
    lambda c: len(cancelled(c)),
    lambda c: c.motion.tool[_of(cancelled, "move", int)(c)],
    _of(cancelled, "move", int),
)  # fmt: skip


# tools that are only selected


class Selected(NamedTuple):
    line: int
    move: int
    asked: int
    in_spindle: int
    length_too: bool  # G43 takes the length of the tool asked for
    restarted: bool  # the spindle is stopped and started again behind it


@once
def selected(context: Context) -> list[Selected]:
    """Each T, in a program that changes tools by M6, behind which cuts come before any M6: the old tool cuts on."""
    m = context.motion
    kinds = m.event_kind
    changes = np.flatnonzero(kinds == EVENT["change"])
    cutting = np.flatnonzero(context.cuts)
    made: list[Selected] = []
    if not len(changes) or not len(cutting):
        return made
    for row in np.flatnonzero(kinds == EVENT["select"]).tolist():
        if row < changes[0]:
            continue
        later = changes[changes > row]
        until = int(m.event_move[later[0]]) if len(later) else len(m)
        last = int(later[0]) if len(later) else len(kinds)
        moves = cutting[(cutting >= m.event_move[row]) & (cutting < until)]
        asked = int(m.event_value[row])
        if not len(moves) or int(m.tool[moves[0]]) in (asked, -1):
            continue
        between = slice(row + 1, last)
        lengths = m.event_value[between][kinds[between] == EVENT["length-on"]]
        restarted = bool(one_of(kinds[between], ON).any()) and _stopped(kinds, row)
        move = int(moves[0])
        made.append(
            Selected(int(m.event_line[row]), move, asked, int(m.tool[move]), bool((lengths == asked).any()), restarted)
        )
    return made


def _stopped(kinds: Column, row: int) -> bool:
    """Whether M5 is the last word about the spindle before this event."""
    about = np.flatnonzero(one_of(kinds[:row], (*ON, EVENT["spindle-off"], EVENT["change"])))
    return bool(len(about)) and int(kinds[about[-1]]) == EVENT["spindle-off"]


def _spindle_tool(context: Context) -> Floats:
    return _of(selected, "in_spindle")(context)  # type: ignore[no-any-return]


SELECTED = Table(
    "selected_tools",
    "each T, in a program that changes tools by M6, behind which cuts come before any M6",
    {
        "line": number("", "line of T", _of(selected, "line")),
        "asked": number("", "number of the tool that T names", _of(selected, "asked")),
        "in_spindle": number("", "number of the tool that goes on cutting", _spindle_tool),
        "length_too": truth("whether G43 takes the length of the tool that T names", _of(selected, "length_too", bool)),
        "restarted": truth("whether the spindle is stopped before it and started behind it",
                           _of(selected, "restarted", bool)),
    },
    lambda c: len(selected(c)),
    lambda c: c.motion.tool[_of(selected, "move", int)(c)],
    _of(selected, "move", int),
)  # fmt: skip

TABLES = (FEEDS, TOLERANCES, CANCELLED, SELECTED)
