"""Gives the facts that home-unknown alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Column, Ints
from gclint.facts.context import Context, once
from gclint.facts.fact import Table, number, text
from gclint.tables.motion import EVENT


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

TABLES = (MACHINE_MOVES,)
