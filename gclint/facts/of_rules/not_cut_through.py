"""Gives the facts that not-cut-through alone looks at."""

from __future__ import annotations

from typing import Any

from gclint.facts.context import Context
from gclint.facts.cut import line_of
from gclint.facts.fact import Table, number, truth
from gclint.facts.part import STOCK, column_of, flag_of, left_of, rows_of, underside_unknown


def _grooves(context: Context) -> Any:
    return left_of(context).grooves


_FLOORS = rows_of("move", _grooves)


GROOVES = Table(
    "grooves",
    "closed laps between two walls that go down nine tenths of the blank's thickness or more",
    {
        **line_of(_FLOORS),
        "share": number("", "share of the thickness that the lap goes down", column_of("share", _grooves), STOCK),
        "left": number("mm", "thickness left under the lap when the program has run", column_of("left", _grooves),
                       STOCK),
        "own_floor": truth("whether no later cut goes deeper there", flag_of("own", _grooves), STOCK),
    },
    lambda c: 1 if underside_unknown(c) else len(_grooves(c)),
    lambda c: c.motion.tool[_FLOORS(c)],
    _FLOORS,
)  # fmt: skip

TABLES = (GROOVES,)
