"""Gives the facts that arc-does-not-close alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Floats
from gclint.facts.context import Context
from gclint.facts.fact import Fact, number
from gclint.facts.program import decimals_on_line, of_faults
from gclint.tables.motion import EVENT


def _last_place(context: Context) -> Floats:
    """[faults] what one in the last of these decimals is, mm."""
    m = context.motion
    units = np.flatnonzero(m.event_kind == EVENT["units"])
    before = np.searchsorted(m.event_line[units], of_faults("line")(context), side="right")
    scale = np.concatenate(([1.0], m.event_value[units]))[before]  # in the order of the text
    return np.asarray(scale * 0.1 ** decimals_on_line(context))


FACTS: dict[str, dict[str, Fact]] = {
    "faults": {
        "last_place": number("mm", "what one in the last of these decimals is", _last_place),
    },
}  # fmt: skip
