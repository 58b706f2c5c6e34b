"""Gives the facts that first-move-low alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Bools, Floats
from gclint.facts.context import Context
from gclint.facts.fact import Fact, number, truth
from gclint.tables.motion import HOME, RAPID, X_WORD, Y_WORD, Z_WORD


def _first_across(context: Context) -> Bools:
    """The first move that travels in X or Y, where the tool was not lifted before: no Z was ever named."""
    m = context.motion
    first = np.zeros(len(m), dtype=bool)
    across = np.flatnonzero((m.flags & (X_WORD | Y_WORD)) != 0)
    if len(across):
        row = int(across[0])
        before = m.flags[: row + 1]
        lifted = ((before & Z_WORD) != 0) | ((before & HOME) != 0)
        first[row] = not lifted.any()
    return first


def _dives_in(context: Context) -> Floats:
    """How far a rapid from a place that is not known, before anything is cut, ends below the top of the blank, mm.

    0 for all other moves, and where its end is not over the blank. The stock model removes nothing along such a move.
    """
    m, box = context.motion, context.box
    deep = np.zeros(len(m))
    if box is None or box.top is None or box.x is None or box.y is None:
        return deep
    cut = np.flatnonzero(context.in_contact | (m.kind != RAPID))
    first = slice(0, int(cut[0]) if len(cut) else len(m))
    unknown = ~np.isfinite(m.x0[first] + m.y0[first] + m.z0[first])
    x, y, z = m.x1[first], m.y1[first], m.z1[first]
    over = (x >= box.x[0]) & (x <= box.x[1]) & (y >= box.y[0]) & (y <= box.y[1])
    deep[first] = np.where(unknown & over, np.nan_to_num(np.maximum(box.top - z, 0.0)), 0.0)
    return deep


FACTS: dict[str, dict[str, Fact]] = {
    "moves": {
        "first_across": truth("whether it is the first travel in X or Y, before any Z is named", _first_across),
        "dives_in": number("mm", "of a rapid from a place that is not known, before anything is cut: how far it ends "
                           "below the top of the blank", _dives_in),
    },
}  # fmt: skip
