"""All the tables of one run in one value: what the chain made of one program."""

from __future__ import annotations

from dataclasses import dataclass

from gclint.cutting.table import Cutting
from gclint.motion.table import Motion
from gclint.motion.timing import Timing
from gclint.program.table import Program
from gclint.setup.types import Setup
from gclint.stock.table import Engagement


@dataclass(frozen=True, slots=True, eq=False)
class Tables:
    program: Program
    motion: Motion
    setup: Setup
    timing: Timing
    engagement: Engagement
    cutting: Cutting
