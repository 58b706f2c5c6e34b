"""Gives the facts that spindle-not-running alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import one_of
from gclint.facts.context import ON
from gclint.facts.cut import pass_move
from gclint.facts.fact import Fact, truth

FACTS: dict[str, dict[str, Fact]] = {
    "passes": {
        "ever_started": truth("whether the program starts the spindle anywhere",
                              lambda c: bool(one_of(c.motion.event_kind, ON).any())),
        "speed_given": truth("whether a speed above zero is in force",
                             lambda c: np.nan_to_num(c.motion.speed[pass_move(c)]) > 0),
    },
}  # fmt: skip
