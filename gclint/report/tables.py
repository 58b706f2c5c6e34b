"""What the chain made of one program: all its tables in one value, and what was found."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from gclint.cutting.table import Cutting
from gclint.judge.finding import Checked
from gclint.motion.table import Motion
from gclint.motion.timing import Timing
from gclint.program.table import Program
from gclint.setup.types import Setup
from gclint.stock.table import Engagement


@dataclass(frozen=True, slots=True, eq=False)
class Tables:
    """The table of every step."""

    program: Program
    motion: Motion
    setup: Setup
    timing: Timing
    engagement: Engagement
    cutting: Cutting


@dataclass(frozen=True, slots=True, eq=False)
class Run:
    """What one program gave: the result, the tables behind it (None if a step failed), the grade to fail at."""

    checked: Checked
    tables: Tables | None
    fail_at: str
    failed: bool = False
    titles: Mapping[str, str] = field(default_factory=dict)  # of the rules, by name

    @property
    def material_cautions(self) -> tuple[str, ...]:
        """What the material's card warns of, each with the material's name."""
        from gclint.setup.card import Material

        material = self.tables.setup.material if self.tables else None
        if not isinstance(material, Material):
            return ()
        name = material.title.partition(",")[0]
        return tuple(f"{name[:1].upper()}{name[1:]}: {caution}" for caution in material.cautions)
