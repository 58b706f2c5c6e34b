"""Gives the facts that units-switched alone looks at."""

from __future__ import annotations

from gclint.facts.fact import Fact, text
from gclint.facts.program import unit_switch

FACTS: dict[str, dict[str, Fact]] = {
    "program": {
        "units_first": text("the unit of its first cuts", lambda c: unit_switch(c)[1], "", ("", "mm", "inches")),
        "units_last": text("the unit in which it ends", lambda c: unit_switch(c)[2], "", ("", "mm", "inches")),
    },
}  # fmt: skip
