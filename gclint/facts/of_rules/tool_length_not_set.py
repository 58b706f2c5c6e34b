"""Gives the facts that tool-length-not-set alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Bools, Column, Floats, one_of
from gclint.facts.context import Context, once
from gclint.facts.fact import Fact, number, truth
from gclint.facts.moves import change_events, cuts_before_next, tool_called
from gclint.tables.motion import EVENT


@once
def _lengths(context: Context) -> tuple[Column, Floats]:
    """(number of length words between each change and the first cut behind it, H of the last of them; NaN if none)."""
    m, cutting, changes = context.motion, np.flatnonzero(context.cuts), change_events(context)
    words = np.flatnonzero(m.event_kind == EVENT["length-on"])
    count, height = np.zeros(len(changes), dtype=np.int64), np.full(len(changes), np.nan)
    for row, event in enumerate(changes.tolist()):
        place = int(np.searchsorted(cutting, m.event_move[event]))
        until = int(cutting[place]) if place < len(cutting) else len(m)
        behind = int(changes[row + 1]) if row + 1 < len(changes) else len(m.event_kind)  # the next change ends it
        last = int(np.searchsorted(m.event_move[words], until, side="right"))
        own = words[:last]
        own = own[(own > event) & (own < behind)]
        count[row] = len(own)
        if len(own):
            height[row] = m.event_value[own[-1]]
    return count, height


def _length_of_another(context: Context) -> Bools:
    """Whether H names another tool that the program changes to or that is declared.

    Not where H and T differ by the same number at every change: then that is how the shop keeps its table.
    """
    height, called = _lengths(context)[1], tool_called(context)
    tools = [*called[np.isfinite(called)].tolist(), *context.setup.tools]
    return np.asarray(one_of(height, tools) & _length_differs(context))


def _length_differs(context: Context) -> Bools:
    """Whether H is another number than T, and not by the same number at every change of two or more."""
    height, called = _lengths(context)[1], tool_called(context)
    apart = height - called
    known = apart[np.isfinite(apart)]
    habit = len(known) > 1 and bool((known == known[0]).all())
    return np.asarray(np.isfinite(apart) & (apart != 0) & (not habit))


def _lengths_agree(context: Context) -> bool:
    """Whether H and T are one number at some change."""
    return bool((_lengths(context)[1] == tool_called(context)).any())


FACTS: dict[str, dict[str, Fact]] = {
    "changes": {
        "cuts_before_next": truth("whether the program cuts between it and the next change", cuts_before_next),
        "length_set": truth("whether a length (G43) is set between the change and the next cut",
                            lambda c: _lengths(c)[0] > 0),
        "length_elsewhere": truth("whether a length (G43) is set behind any change of the program",
                                  lambda c: bool((_lengths(c)[0] > 0).any())),
        "length_number": number("", "H of that length; unknown where the word has none", lambda c: _lengths(c)[1]),
        "length_of_another": truth("whether H names another tool of the program or of the shop", _length_of_another),
        "length_differs": truth("whether H is another number than T, and not by the same number at every change",
                                _length_differs),
        "lengths_agree": truth("whether H and T are one number at some change", _lengths_agree),
    },
}  # fmt: skip
