"""Facts about stops between moves, about moves to places only the machine knows, and about the way home at the end."""

from __future__ import annotations

import numpy as np

from gclint.columns import Bools, Column, Floats, Ints
from gclint.facts.context import Context, once
from gclint.facts.cut import line_of
from gclint.facts.dwell import cuts_to_end, depth_at_end
from gclint.facts.fact import Table, number, text, truth
from gclint.tables.motion import EVENT, HOME, MACHINE, RAPID, X_WORD, Y_WORD, Z_WORD

# stops: program stops and tool changes at which the machine waits for a person, and the spindle's stop

STOP_WORDS = ("program-stop", "tool-change", "spindle-stop")


@once
def _stops(context: Context) -> Column:
    """Rows of the events, in the order of execution, that some move comes before and some move comes after."""
    m = context.motion
    chosen = np.zeros(len(m.event_kind), dtype=bool)
    chosen[context.stop_events] = True
    chosen |= m.event_kind == EVENT["spindle-off"]
    return np.flatnonzero(chosen & (m.event_move > 0) & (m.event_move < len(m)))


def _stop_move(context: Context) -> Column:
    """The move before each stop."""
    return context.motion.event_move[_stops(context)].astype(np.int64) - 1


def _stop_word(context: Context) -> tuple[Ints, tuple[str, ...]]:
    kinds = context.motion.event_kind[_stops(context)]
    word = np.where(kinds == EVENT["change"], 1, np.where(kinds == EVENT["spindle-off"], 2, 0))
    return word.astype(np.int32), STOP_WORDS


STOPS = Table(
    "stops",
    "program stops, tool changes and spindle stops between moves",
    {
        **line_of(_stop_move),
        "line": number("", "line of the stop", lambda c: c.motion.event_line[_stops(c)]),
        "does": text("what stops", _stop_word, "", STOP_WORDS),
        "in_cut": truth("whether the tool stands on what it has just cut",
                        lambda c: cuts_to_end(c)[_stop_move(c)] & (depth_at_end(c)[_stop_move(c)] > 0)),
        "depth": number("mm", "depth of the tip below the stock's top", lambda c: depth_at_end(c)[_stop_move(c)]),
    },
    lambda c: len(_stops(c)),
    lambda c: c.motion.tool[_stop_move(c)],
    _stop_move,
)  # fmt: skip


# machine moves: G28, G30, G53


@once
def _machine_moves(context: Context) -> Column:
    return np.flatnonzero(context.motion.event_kind == EVENT["machine-move"])


def _code(context: Context) -> tuple[Ints, tuple[str, ...]]:
    values = context.motion.event_value[_machine_moves(context)]
    place = np.where(values == 28, 0, np.where(values == 30, 1, 2))
    return place.astype(np.int32), ("G28", "G30", "G53")


MACHINE_MOVES = Table(
    "machine_moves",
    "blocks that go to a place the machine knows only after it has found its home (G28, G30, G53)",
    {
        "line": number("", "line of the program", lambda c: c.motion.event_line[_machine_moves(c)]),
        "code": text("the code", _code, "", ("G28", "G30", "G53")),
    },
    lambda c: len(_machine_moves(c)),
)


# the way from the last cut to the end of the program


def _behind_cuts(context: Context) -> Bools:
    """[moves] whether the move comes after the last one that cuts."""
    cutting = np.flatnonzero(context.cuts)
    last = int(cutting[-1]) if len(cutting) else len(context.motion)
    behind: Bools = np.arange(len(context.motion)) > last
    return behind


def _leaves_at(context: Context) -> Floats:
    """[moves] height above the blank's top, mm, at which a move behind the last cut travels over the blank by rapid.

    Infinite for all other moves: those that lift, end lower than they begin, or pass beside the blank. Of a move to the
    machine's home in X or Y (G28), the height at which it begins.
    """
    m, box = context.motion, context.box
    height = np.full(len(m), np.inf)
    if box is None or box.top is None or box.x is None or box.y is None:
        return height
    rows = np.flatnonzero(_behind_cuts(context) & (m.kind == RAPID))
    homes = (m.flags[rows] & (HOME | MACHINE)) != 0
    level = (np.abs(m.z1[rows] - m.z0[rows]) < 1e-6) & ~homes & context.placed[rows]
    over = np.ones(len(rows), dtype=bool)
    for start, end, span in ((m.x0, m.x1, box.x), (m.y0, m.y1, box.y)):
        over &= (np.fmin(start[rows], end[rows]) < span[1]) & (np.fmax(start[rows], end[rows]) > span[0])
    home = homes & ((m.flags[rows] & (X_WORD | Y_WORD)) != 0) & ((m.flags[rows] & Z_WORD) == 0)
    height[rows] = np.where(level & over | home, m.z0[rows] - box.top, np.inf)
    return np.where(np.isnan(height), np.inf, height)


ENDING = {
    "leaves_at": number("mm", "height above the blank's top at which a rapid behind the last cut travels level over "
                        "the blank; a large number for all other moves", _leaves_at),
    "across": number("mm", "travel in X and Y",
                     lambda c: np.nan_to_num(np.hypot(c.motion.x1 - c.motion.x0, c.motion.y1 - c.motion.y0))),
    "to_home": truth("whether it is a move to the machine's home",
                     lambda c: (c.motion.flags & (HOME | MACHINE)) != 0),
}  # fmt: skip

TABLES = (STOPS, MACHINE_MOVES)
