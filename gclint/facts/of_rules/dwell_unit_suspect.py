"""Gives the facts that dwell-unit-suspect alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Column, Floats
from gclint.facts.context import Context, once
from gclint.facts.fact import Table, number
from gclint.tables.motion import EVENT


@once
def _waits(context: Context) -> Column:
    return np.flatnonzero((context.motion.event_kind == EVENT["dwell"]) & np.isfinite(context.motion.event_value))


def _count(context: Context) -> Floats:
    return context.motion.event_value[_waits(context)]


def _seconds(context: Context) -> Floats:
    return _count(context) * context.setup.controller.dwell_seconds


WAITS = Table(
    "waits",
    "dwells in the two units they may be meant in",
    {
        "line": number("", "line of the program", lambda c: c.motion.event_line[_waits(c)]),
        "seconds": number("s", "how long this controller waits", _seconds),
        "as_seconds": number("s", "how long it would wait if the number were seconds", _count),
        "as_milliseconds": number("s", "how long it would wait if the number were milliseconds",
                                  lambda c: _count(c) * 0.001),
    },
    lambda c: len(_waits(c)),
)  # fmt: skip

TABLES = (WAITS,)
