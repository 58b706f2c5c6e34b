"""What one rule found in one program, before acceptances are applied and places are grouped into findings."""

from __future__ import annotations

import numpy as np

from gclint.columns import Bools, Column
from gclint.facts.registry import View
from gclint.packs.pack import Rule


class Hits:
    """Rows of its table that one rule found, before they are grouped."""

    __slots__ = ("accepted", "rule", "view")

    def __init__(self, rule: Rule, view: View, accepted: Column | None = None) -> None:
        self.rule = rule
        self.view = view  # of the chosen rows
        # index of the acceptance in the setup, -1 = not accepted
        self.accepted: Column = np.full(view.length, -1, np.int64) if accepted is None else accepted

    def keep(self, rows: Bools) -> Hits:
        """Those for which `rows` is true."""
        return Hits(self.rule, self.view.choose(np.flatnonzero(rows)), self.accepted[rows])
