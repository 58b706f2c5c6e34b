"""Gives the facts that no-spin-up-time alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Floats, one_of
from gclint.facts.context import ON, Context, once
from gclint.facts.cut import pass_move
from gclint.facts.fact import Fact, number
from gclint.tables.motion import CYCLE, HOME, MACHINE, RAPID, X_WORD, Y_WORD, Z_WORD


def _waited(context: Context) -> Floats:
    return _waits(context)[0]


def _waited_surely(context: Context) -> Floats:
    return _waits(context)[1]


@once
def _waits(context: Context) -> tuple[Floats, Floats]:
    """[passes] seconds from the spindle's start to the first pass after it (dwells, travel, descent), and the part of
    them that is known; else infinite.

    Where the time of some travel is unknown: the known part if that is enough, else the most it can be if that is not
    enough either, else NaN.
    """
    m, moves = context.motion, np.asarray(pass_move(context), dtype=np.int64)
    waited = np.full(len(moves), np.inf)
    surely = waited.copy()
    kinds = m.event_kind
    turning = False
    need = context.setup.spindle.spin_up or 0.0
    dwelt = np.concatenate(([0.0], np.cumsum(context.dwell)))
    for event in np.flatnonzero(one_of(kinds, (*ON, *context.spindle_stops))).tolist():
        if kinds[event] in context.spindle_stops:
            turning = False
            continue
        if turning:
            continue
        turning = True
        start = int(m.event_move[event])
        first = int(np.searchsorted(moves, start))
        if first == len(moves):
            continue
        until = int(moves[first])
        last = int(np.searchsorted(m.event_move, until, side="right"))
        seconds = context.clock[until] - context.clock[start] + dwelt[last] - dwelt[event]
        seconds += _before_piece(context, first, until)
        surely[first] = min(surely[first], seconds)
        if seconds < need and context.untimed[until] > context.untimed[start]:
            longest = seconds + _longest_rapids(context, start, until)
            seconds = longest if longest < need else np.nan
        waited[first] = min(waited[first], seconds) if seconds == seconds else np.nan
    return waited, surely


def _longest_rapids(context: Context, start: int, until: int) -> float:
    """The most that the moves of unknown time from `start` to before `until` can take, s; NaN if that is not known.

    A rapid whose rate is not declared is no slower than the fastest feed of the program, from rest to rest. One whose
    start is not known goes all the declared travel of each axis that it moves, at most.
    """
    m, axes = context.motion, context.setup.machine.acceleration
    rows = start + np.flatnonzero(np.isnan(context.timing.seconds[start:until]))
    if not bool((m.kind[rows] == RAPID).all()):
        return np.nan
    unknown = np.isnan(m.length[rows])
    across = sum((_across_the_machine(context, int(row)) for row in rows[unknown]), 0.0)
    rows = rows[~unknown]
    if not len(rows):
        return across
    feeds = m.feed[np.isfinite(m.feed)]
    v = float(feeds.max()) / 60 if len(feeds) else 0.0
    if not v > 0:
        return np.nan
    weakest = min((each for each in (axes.x, axes.y, axes.z) if each), default=np.inf) if axes else np.inf
    return across + float((m.length[rows] / v + v / weakest).sum())


def _across_the_machine(context: Context, row: int) -> float:
    """Seconds that a rapid from a place that is not known takes at most: the slowest of its axes, all the way."""
    m, machine = context.motion, context.setup.machine
    travel, rapid, starts = machine.travel, machine.rapid, machine.acceleration
    if travel is None or rapid is None:
        return np.nan
    seconds = 0.0
    for axis, begin, end, word in (("x", m.x0, m.x1, X_WORD), ("y", m.y0, m.y1, Y_WORD), ("z", m.z0, m.z1, Z_WORD)):
        known = bool(np.isfinite(begin[row]) and np.isfinite(end[row]))
        if not (known or m.flags[row] & (word | HOME | MACHINE | CYCLE)):
            continue
        far = abs(float(end[row] - begin[row])) if known else getattr(travel, axis)
        rate, gain = getattr(rapid, axis), getattr(starts, axis) if starts else None
        if far == 0.0:
            continue
        if far is None or rate is None:
            return np.nan
        seconds = max(seconds, 60 * far / rate + (rate / 60 / gain if gain else 0.0))
    return seconds


def _waited_needs(context: Context) -> str:
    """What would tell how long the spindle has turned: of rates, travel and start, what is not known."""
    machine = context.setup.machine
    if machine.rapid is None:
        return "the machine's rapid rates (`[machine] rapid` in shop.toml)"
    if machine.travel is None:
        return "the machine's travel (`[machine] travel` in shop.toml), as the place of the tool at M3 is not known"
    return "the place of the tool when the spindle starts (move to X, Y and Z before M3), or a dwell (G4) behind M3"


def _before_piece(context: Context, row: int, move: int) -> float:
    """Seconds of the pass's first move before it meets material."""
    start = float(context.engagement.pieces.start[context.engagement.passes.first_piece[row]])
    return float(np.nan_to_num(context.timing.seconds[move])) * start


FACTS: dict[str, dict[str, Fact]] = {
    "passes": {
        "waited": number("s", "time between the spindle's start and the pass, for the first pass after a start",
                         _waited,
                         "the machine's rapid rates (`[machine] rapid` in shop.toml)", _waited_needs),
        "waited_surely": number("s", "of that time the part that is known, without travel whose time is not",
                                _waited_surely),
    },
}  # fmt: skip
