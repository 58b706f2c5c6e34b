"""Gives the facts that no-feed-move alone looks at."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from gclint.facts.context import Context, once
from gclint.facts.fact import number, of_rows, table_of, truth
from gclint.tables.motion import EVENT, RAPID


class Descent(NamedTuple):
    line: int
    move: int
    depth: float
    with_feed: bool
    times: int


@once
def rapid_descents(context: Context) -> list[Descent]:
    """In a program with no move at feed: the rapids that end below Z0 with the spindle turning, as one row."""
    m = context.motion
    if not len(m) or (m.kind != RAPID).any():
        return []
    turning = (np.abs(m.spindle) == 1) & context.placed
    low = np.flatnonzero(turning & (m.z1 < 0) & (m.z1 < np.nan_to_num(m.z0, nan=np.inf)))
    if not len(low):
        return []
    fed = set(m.event_line[m.event_kind == EVENT["feed"]].tolist())
    with_feed = any(int(line) in fed for line in m.line[low].tolist())
    move = int(low[0])
    return [Descent(int(m.line[move]), move, float(-m.z1[low].min()), with_feed, len(low))]


DESCENTS = table_of(
    rapid_descents,
    "rapid_descents",
    "of a program with no move at feed: rapids that end below Z0 with the spindle turning, as one row",
    {
        "line": number("", "line of the first", of_rows(rapid_descents, "line")),
        "depth": number("mm", "how far the lowest ends below Z0", of_rows(rapid_descents, "depth")),
        "with_feed": truth("whether an F stands beside any of them", of_rows(rapid_descents, "with_feed", bool)),
        "count": number("", "how many there are", of_rows(rapid_descents, "times")),
    },
)

TABLES = (DESCENTS,)
