"""Gives the facts that tab-too-short alone looks at."""

from __future__ import annotations

from typing import Any

from gclint.facts.context import Context
from gclint.facts.cut import line_of
from gclint.facts.fact import Table, number
from gclint.facts.part import STOCK, column_of, left_of, rows_of, underside_unknown


def _lifts(context: Context) -> Any:
    return left_of(context).lifts


_RISES = rows_of("move", _lifts)


BRIDGES = Table(
    "bridges",
    "lifts over the blank's underside within a closed lap that cuts through: where a bridge (tab) should stay",
    {
        **line_of(_RISES),
        "lift": number("mm", "length of the lift in X and Y", column_of("length", _lifts), STOCK),
        "bridge": number("mm", "width of what is left there at its narrowest when the program has run, 0 if nothing is",
                         column_of("bridge", _lifts), STOCK),
        "bridge_height": number("mm", "height of what is left there", column_of("height", _lifts), STOCK),
        "made": number("mm", "width that the lift leaves: its length less the tool's diameter",
                       column_of("made", _lifts), STOCK),
    },
    lambda c: 1 if underside_unknown(c) else len(_lifts(c)),
    lambda c: c.motion.tool[_RISES(c)],
    _RISES,
)  # fmt: skip

TABLES = (BRIDGES,)
