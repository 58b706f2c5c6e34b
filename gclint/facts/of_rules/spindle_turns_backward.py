"""Gives the facts that spindle-turns-backward alone looks at."""

from __future__ import annotations

from gclint.facts.cut import pass_move
from gclint.facts.fact import Fact, truth

FACTS: dict[str, dict[str, Fact]] = {
    "passes": {
        "backward": truth("whether the spindle turns counter-clockwise (M4) as the pass begins",
                          lambda c: c.motion.spindle[pass_move(c)] == -1),
    },
}  # fmt: skip
