"""Gives the facts that dwell-in-material alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Bools, Column, one_of
from gclint.facts.context import ON, Context, once
from gclint.facts.dwell import cuts_to_end, depth_at_end
from gclint.facts.fact import Table, number, truth
from gclint.tables.motion import EVENT


@once
def _events(context: Context) -> Column:
    """Dwells that some move comes before."""
    m = context.motion
    return np.flatnonzero((m.event_kind == EVENT["dwell"]) & (m.event_move > 0))


def _move(context: Context) -> Column:
    """The move before each dwell."""
    return context.motion.event_move[_events(context)].astype(np.int64) - 1


def _in_cut(context: Context) -> Bools:
    moves = _move(context)
    stands: Bools = cuts_to_end(context)[moves] & (depth_at_end(context)[moves] > 0)
    return stands


def _turning(context: Context) -> Bools:
    """By the last word on the spindle before the dwell; a spindle that is started by hand always turns."""
    kinds = context.motion.event_kind
    said = np.where(one_of(kinds, (*ON, *context.spindle_stops)), np.arange(len(kinds)), -1)
    last = np.maximum.accumulate(said)[_events(context)] if len(kinds) else said
    on: Bools = (last >= 0) & one_of(kinds[np.maximum(last, 0)], ON)
    return on | (context.setup.spindle.started == "by-hand")


DWELLS = Table(
    "dwells",
    "dwells (G4, or the P of a canned cycle)",
    {
        "line": number("", "line of the dwell", lambda c: c.motion.event_line[_events(c)]),
        "seconds": number("s", "how long it lasts on this controller", lambda c: c.dwell[_events(c)]),
        "turning": truth("whether the spindle turns meanwhile", _turning),
        "in_cut": truth("whether the tool stands on what it has just cut", _in_cut),
        "depth": number("mm", "depth of the tip below the stock's top", lambda c: depth_at_end(c)[_move(c)]),
    },
    lambda c: len(_events(c)),
    lambda c: c.motion.tool[_move(c)],
    _move,
    neighbours=True,
)  # fmt: skip

TABLES = (DWELLS,)
