"""Gives the facts that units-suspect alone looks at."""

from __future__ import annotations

from gclint.facts.context import Context
from gclint.facts.fact import Fact, text
from gclint.tables.motion import EVENT


def _units_said(context: Context) -> str:
    """Which units the program names: "mm", "inch", "both" or "none"."""
    m = context.motion
    said = set(m.event_value[m.event_kind == EVENT["units"]].tolist())
    if any("G21" in (code, code.replace("G71", "G21")) for code in context.setup.controller.start_state):
        said.add(1.0)
    return "both" if len(said) > 1 else {1.0: "mm", 25.4: "inch"}.get(next(iter(said), 0.0), "none")


FACTS: dict[str, dict[str, Fact]] = {
    "program": {
        "units_said": text("which units the program names", _units_said, "", ("none", "mm", "inch", "both")),
    },
}  # fmt: skip
