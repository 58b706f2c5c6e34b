"""Gives the facts that dial-change-without-stop alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Bools
from gclint.facts.context import Context
from gclint.facts.fact import Fact, truth
from gclint.facts.moves import nearest_mark, speed_moves


def _other_mark(context: Context) -> Bools:
    """Whether the nearest mark differs from that of the speed before."""
    speeds = context.motion.speed[speed_moves(context)]
    marks = [mark.mark if (mark := nearest_mark(context, float(s))) else "" for s in speeds]
    before = ["", *marks]
    return np.array([bool(mark and was) and mark != was for mark, was in zip(marks, before)], dtype=bool)


def _stopped_before(context: Context) -> Bools:
    """Whether the machine waits for a person between the last cut at the speed before and this one."""
    moves = speed_moves(context)
    cutting = np.flatnonzero(context.cuts)
    stops = context.motion.event_move[context.stop_events]
    answer = np.zeros(len(moves), dtype=bool)
    for row, move in enumerate(moves.tolist()):
        place = int(np.searchsorted(cutting, move))
        last = int(cutting[place - 1]) if place else -1
        answer[row] = bool(((stops > last) & (stops <= move)).any())
    return answer


FACTS: dict[str, dict[str, Fact]] = {
    "speeds": {
        "other_mark": truth("whether the nearest mark differs from that of the speed before", _other_mark),
        "stopped_before": truth("whether the machine waits for a person before this speed is used", _stopped_before),
    },
}  # fmt: skip
