"""Gives the facts that state-unstated alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Floats
from gclint.facts.context import Context
from gclint.facts.fact import Fact, number, text, texts
from gclint.facts.program import missing_modes, state_faults


def _state_line(context: Context) -> Floats:
    rows = state_faults(context)
    return np.array([context.motion.faults.line[rows].min() if len(rows) else 1.0], dtype=np.float64)


FACTS: dict[str, dict[str, Fact]] = {
    "program": {
        "unstated": text("modes that the program needs and never states",
                         lambda c: texts([", ".join(missing_modes(c))])),
        "unstated_line": number("", "line of the first move that needs one", _state_line),
    },
}  # fmt: skip
