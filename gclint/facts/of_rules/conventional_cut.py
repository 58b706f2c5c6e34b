"""Gives the facts that conventional-cut alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Floats, one_of
from gclint.facts.context import Context
from gclint.facts.fact import Fact, number
from gclint.facts.surface import wall_beside
from gclint.tables.cutting import OPERATION


def conventional_wall(context: Context) -> Floats:
    """[pieces] height of the wall on the left of a level cut that stands there at the end, mm; 0 if there is none.

    With a clockwise spindle the left wall is cut conventionally. Not looked at in a material that does not mind.
    """
    pieces, loads, material = context.engagement.pieces, context.cutting.loads, context.setup.material
    found = np.zeros(len(pieces))
    if material is not None and not material.climb_walls:
        return found
    rows = np.flatnonzero(one_of(loads.operation, (OPERATION["side"], OPERATION["finish"])))
    found[rows] = wall_beside(context, rows, loads.effective_diameter[rows] / 2)
    return found


FACTS: dict[str, dict[str, Fact]] = {
    "pieces": {
        "conventional_wall": number("mm", "height of the wall on the left that stands at the end, else 0",
                                    conventional_wall),
    },
}  # fmt: skip
