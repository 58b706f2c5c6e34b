"""Gives the facts that tool-change-without-stop alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Bools, Floats
from gclint.facts.context import Context
from gclint.facts.fact import Fact, number, truth
from gclint.facts.moves import change_events, tool_called


def _tool_before(context: Context) -> Floats:
    """Number of the tool called before; NaN at the first change."""
    values = tool_called(context)
    return np.concatenate(([np.nan], values[:-1]))[: len(values)]


def _change_stopped(context: Context) -> Bools:
    """Whether the machine waits for a person between the cuts before and after the change."""
    m, cutting = context.motion, np.flatnonzero(context.cuts)
    stops = m.event_move[context.stop_events]
    answer = np.zeros(len(change_events(context)), dtype=bool)
    for row, event in enumerate(change_events(context).tolist()):
        place = int(np.searchsorted(cutting, m.event_move[event]))
        last = int(cutting[place - 1]) if place else -1
        after = int(cutting[place]) if place < len(cutting) else len(m)
        answer[row] = bool(((stops > last) & (stops <= after)).any())
    return answer


def _cut_before(context: Context) -> Bools:
    first = int(np.argmax(context.cuts)) if context.cuts.any() else len(context.motion)
    return np.asarray(context.motion.event_move[change_events(context)] > first)


def _cut_after(context: Context) -> Bools:
    cutting = np.flatnonzero(context.cuts)
    return np.asarray(context.motion.event_move[change_events(context)] <= (cutting[-1] if len(cutting) else -1))


FACTS: dict[str, dict[str, Fact]] = {
    "changes": {
        "tool_before": number("", "number of the tool called before; unknown at the first change", _tool_before),
        "stopped": truth("whether the machine waits for a person between the cuts before and after", _change_stopped),
        "cut_before": truth("whether the program has cut before it", _cut_before),
        "cut_after": truth("whether the program cuts after it", _cut_after),
    },
}  # fmt: skip
