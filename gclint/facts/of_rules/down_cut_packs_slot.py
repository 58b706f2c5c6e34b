"""Gives the facts that down-cut-packs-slot alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Floats, one_of
from gclint.facts.context import Context
from gclint.facts.fact import Fact, number
from gclint.facts.surface import wall_beside
from gclint.knowledge.numbers import model_number
from gclint.tables.cutting import OPERATION


def slot_walls(context: Context) -> Floats:
    """[pieces] height of the lower of the two walls that stand close beside a slot of a down-cut tool at the end, mm.

    0 where one of them is farther than a twentieth of the diameter from the rim, and for other tools and cuts.
    """
    pieces, loads = context.engagement.pieces, context.cutting.loads
    number = context.motion.tool[pieces.move]
    own = one_of(number, [n for n, tool in context.setup.tools.items() if tool.helix == "down-cut"])
    rows = np.flatnonzero(own & (loads.operation == OPERATION["slot"]))
    reach = loads.effective_diameter[rows] * model_number("chips_room")
    walls = np.full(len(rows), np.inf)
    for side in (-1.0, 1.0):
        walls = np.minimum(walls, wall_beside(context, rows, side * reach))
    found = np.zeros(len(pieces))
    found[rows] = walls
    return found


FACTS: dict[str, dict[str, Fact]] = {
    "pieces": {
        "slot_walls": number("mm", "height of the lower of the two walls that stand close beside a slot of a down-cut "
                             "tool at the end, else 0", slot_walls),
    },
}  # fmt: skip
