"""Gives the facts that length-cancelled-low alone looks at."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from gclint.facts.context import Context, once
from gclint.facts.fact import number, of_rows, table_of, truth
from gclint.tables.motion import EVENT, HOME, MACHINE, Z_WORD


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


CANCELLED = table_of(
    cancelled,
    "lengths_off",
    "each G49 behind which Z is named in work coordinates before a length is set again",
    {"line": number("", "line of G49", of_rows(cancelled, "line")),
     "same_line": truth("whether Z stands on the same line", of_rows(cancelled, "same_line", bool))},
)  # fmt: skip

TABLES = (CANCELLED,)
