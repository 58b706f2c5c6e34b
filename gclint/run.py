"""What the steps made of one program: all its tables in one value, and what was found."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from gclint.tables.finding import Checked

if TYPE_CHECKING:  # a result that another process or an earlier run made is told without loading what made it
    from gclint.packs.pack import RuleText
    from gclint.tables.cutting import Cutting
    from gclint.tables.engagement import Engagement
    from gclint.tables.motion import Motion
    from gclint.tables.program import Program
    from gclint.tables.setup import Setup
    from gclint.tables.timing import Timing


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
    """What one program gave: the result and all that writers tell beside it; the tables where they are still there.

    `tables` is None where a step failed, and where another process or an earlier run made the result. What a writer
    needs tables for is made beside them (`Maker` in `gclint/folder/outcome.py`), and comes here as `made`.
    """

    checked: Checked
    tables: Tables | None
    fail_at: str  # the mildest grade that makes the exit code 1
    failed: bool = False
    titles: Mapping[str, str] = field(default_factory=dict)  # of the rules, by name
    material_cautions: tuple[str, ...] = ()  # what the material's card warns of, each with the material's name
    house: tuple[RuleText, ...] = ()  # the rules of the job's own packs
    made: tuple[str, ...] = ()
