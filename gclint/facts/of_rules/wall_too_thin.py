"""Gives the facts that wall-too-thin alone looks at."""

from __future__ import annotations

from gclint.facts.context import Context, once
from gclint.facts.cut import line_of
from gclint.facts.fact import Table, number
from gclint.facts.part import STOCK, column_of, rows_of, underside_unknown
from gclint.stock.walls import Walls, thin_walls


@once
def _walls(context: Context) -> Walls:
    return thin_walls(context.motion, context.engagement)


_BESIDE = rows_of("move", _walls)


WALLS = Table(
    "walls",
    "thin walls that stand between two cuts when the program has run",
    {
        **line_of(_BESIDE),
        "thickness": number("mm", "thickness of the wall", column_of("thickness", _walls), STOCK),
        "at_most": number("mm", "thickness of the wall and a cell of the stock model: it is no thicker than that",
                          lambda c: column_of("thickness", _walls)(c) + c.engagement.cell, STOCK),
        "height": number("mm", "height it stands on both sides, at least", column_of("height", _walls), STOCK),
        "length": number("mm", "length of the wall", column_of("length", _walls), STOCK),
    },
    lambda c: 1 if underside_unknown(c) else len(_walls(c)),
    lambda c: c.motion.tool[_BESIDE(c)],
    _BESIDE,
)  # fmt: skip

TABLES = (WALLS,)
