"""What one rule found in one program, before acceptances are applied and places are grouped into findings."""

from __future__ import annotations

import numpy as np

from gclint.columns import Column
from gclint.facts.registry import View
from gclint.packs.pack import Rule


class Hits:
    """Rows of its table that one rule found, before they are grouped."""

    __slots__ = ("accepted", "rule", "view")

    def __init__(self, rule: Rule, view: View) -> None:
        self.rule = rule
        self.view = view  # of the chosen rows
        self.accepted: Column = np.full(view.length, -1, np.int64)  # index of the acceptance in the setup, -1 = none
