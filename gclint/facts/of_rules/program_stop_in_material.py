"""Gives the facts that program-stop-in-material alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Column, Ints
from gclint.facts.context import Context, once
from gclint.facts.cut import line_of
from gclint.facts.dwell import cuts_to_end, depth_at_end
from gclint.facts.fact import Table, number, text, truth
from gclint.tables.motion import EVENT

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

TABLES = (STOPS,)
