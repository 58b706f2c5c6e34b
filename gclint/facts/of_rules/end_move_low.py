"""Gives the facts that end-move-low alone looks at: the way from the last cut to the end of the program."""

from __future__ import annotations

import numpy as np

from gclint.columns import Bools, Floats
from gclint.facts.context import Context
from gclint.facts.fact import Fact, number, truth
from gclint.tables.motion import HOME, MACHINE, RAPID, X_WORD, Y_WORD, Z_WORD


def _behind_cuts(context: Context) -> Bools:
    """[moves] whether the move comes after the last one that cuts."""
    cutting = np.flatnonzero(context.cuts)
    last = int(cutting[-1]) if len(cutting) else len(context.motion)
    behind: Bools = np.arange(len(context.motion)) > last
    return behind


def _leaves_at(context: Context) -> Floats:
    """[moves] height above the blank's top, mm, at which a move behind the last cut travels over the blank by rapid.

    Infinite for all other moves: those that lift, end lower than they begin, or pass beside the blank. Of a move to the
    machine's home in X or Y (G28), the height at which it begins.
    """
    m, box = context.motion, context.box
    height = np.full(len(m), np.inf)
    if box is None or box.top is None or box.x is None or box.y is None:
        return height
    rows = np.flatnonzero(_behind_cuts(context) & (m.kind == RAPID))
    homes = (m.flags[rows] & (HOME | MACHINE)) != 0
    level = (np.abs(m.z1[rows] - m.z0[rows]) < 1e-6) & ~homes & context.placed[rows]
    over = np.ones(len(rows), dtype=bool)
    for start, end, span in ((m.x0, m.x1, box.x), (m.y0, m.y1, box.y)):
        over &= (np.fmin(start[rows], end[rows]) < span[1]) & (np.fmax(start[rows], end[rows]) > span[0])
    home = homes & ((m.flags[rows] & (X_WORD | Y_WORD)) != 0) & ((m.flags[rows] & Z_WORD) == 0)
    height[rows] = np.where(level & over | home, m.z0[rows] - box.top, np.inf)
    return np.where(np.isnan(height), np.inf, height)


FACTS: dict[str, dict[str, Fact]] = {
    "moves": {
        "leaves_at": number("mm", "height above the blank's top at which a rapid behind the last cut travels level "
                            "over the blank; a large number for all other moves", _leaves_at),
        "across": number("mm", "travel in X and Y",
                         lambda c: np.nan_to_num(np.hypot(c.motion.x1 - c.motion.x0, c.motion.y1 - c.motion.y0))),
        "to_home": truth("whether it is a move to the machine's home",
                         lambda c: (c.motion.flags & (HOME | MACHINE)) != 0),
    },
}  # fmt: skip
