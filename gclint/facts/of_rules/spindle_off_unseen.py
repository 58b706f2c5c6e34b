"""Gives the facts that spindle-off-unseen alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Column, one_of
from gclint.facts.context import ON, Context, once
from gclint.facts.cut import line_of
from gclint.facts.fact import Table, truth
from gclint.facts.followed import placeless


@once
def _unseen(context: Context) -> Column:
    """[rows] the first of each run of feed moves that could not be followed and whose tool, spindle and S are the same.

    Whether the spindle turns, and how fast, is known there all the same.
    """
    m = context.motion
    rows = np.flatnonzero(placeless(context))
    if not len(rows):
        return rows
    state = np.stack((m.tool[rows], context.turning[rows], np.nan_to_num(m.speed[rows]) > 0))
    begins = np.concatenate(([True], (np.diff(state) != 0).any(axis=0)))
    return rows[begins]


UNSEEN = Table(
    "unseen_feeds",
    "runs of feed moves whose place could not be followed, though the state of the spindle is known",
    {
        **line_of(_unseen),
        "turning": truth("whether the spindle turns", lambda c: c.turning[_unseen(c)] == 1),
        "ever_started": truth("whether the program starts the spindle anywhere",
                              lambda c: bool(one_of(c.motion.event_kind, ON).any())),
        "speed_given": truth("whether a speed above zero is in force",
                             lambda c: np.nan_to_num(c.motion.speed[_unseen(c)]) > 0),
    },
    lambda c: len(_unseen(c)),
    lambda c: c.motion.tool[_unseen(c)],
    _unseen,
)

TABLES = (UNSEEN,)
