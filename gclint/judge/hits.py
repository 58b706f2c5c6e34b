"""What one rule found in one program, before acceptances are applied and places are grouped into findings."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

from gclint.columns import Bools, Column
from gclint.facts.registry import View
from gclint.packs.pack import Rule


@dataclass
class Hits:
    """Rows of its table that one rule found, before they are grouped."""

    rule: Rule
    view: View  # of the chosen rows
    accepted: Column = field(
        default_factory=lambda: np.empty(0, dtype=np.int64)
    )  # index of the acceptance in the setup, -1 = not accepted

    def __post_init__(self) -> None:
        if not len(self.accepted):
            self.accepted = np.full(self.view.length, -1, dtype=np.int64)

    def keep(self, rows: Bools) -> Hits:
        """Those for which `rows` is true."""
        return Hits(self.rule, self.view.choose(np.flatnonzero(rows)), self.accepted[rows])
