"""Invented shops whose windows are known, and the grades that they would give to test cuts."""

from __future__ import annotations

import math
from dataclasses import dataclass, field

import numpy as np

from gclint.setup.declared import Length, ToolTable
from gclint.trial.plan import FAULTS
from gclint.trial.scales import scales
from gclint.trial.seen import Seen, Trial

DIAMETER = 3.175


@dataclass
class Cause:
    """How one fault comes about: logits for twice the chip and edge speed, for a plunge, for a tool; `limit` is the
    feed per tooth, mm, at which the word that spoils a cut is as likely as not, at `at` m/min."""

    word: int
    limit: float
    chip: float
    edge: float = 0.0
    at: float = 100.0
    straight: float = 0.0
    tool: dict[int, float] = field(default_factory=dict)
    batch: dict[str, float] = field(default_factory=dict)
    apart: float = 2.0  # logits between words

    def eta(self, fz: float, edge: float, straight: bool, tool: int = 1, batch: str = "") -> float:
        """Logits over the word that spoils a cut."""
        more = self.tool.get(tool, 0.0) + self.batch.get(batch, 0.0) + self.straight * straight
        return self.chip * math.log2(fz / self.limit) + self.edge * math.log2(edge / self.at) + more

    def level(self, words: int, rng: np.random.Generator, *cut: object) -> int:
        seen = self.eta(*cut) + rng.logistic()  # type: ignore[arg-type]
        return int(sum(seen > self.apart * (word - self.word) for word in range(1, words)))

    def limit_fz(self, edge: float) -> float:
        """Where it is as likely as not with a ramp and tool 1."""
        return self.limit * 2 ** (-self.eta(self.limit, edge, False) / self.chip)

    def limit_edge(self, fz: float) -> float:
        return self.at * 2 ** (-self.eta(fz, self.at, False) / self.edge)


def any_shop(rng: np.random.Generator) -> dict[str, Cause]:
    """Dust under a floor that rises with edge speed, chatter over a ceiling, chipping by thick chips and plunges."""
    low = 0.05 * math.exp(rng.uniform(-0.35, 0.25))
    high = low * rng.uniform(1.7, 2.6)
    return {
        "dust": Cause(2, low, -rng.uniform(3, 8), rng.uniform(1, 6), apart=rng.uniform(1.5, 3)),
        "melting": Cause(2, low * rng.uniform(0.6, 1.0), -rng.uniform(2, 6), rng.uniform(1, 5)),
        "chatter": Cause(2, high, rng.uniform(3, 8), rng.uniform(-2, 2), apart=rng.uniform(1.5, 3)),
        "chipping": Cause(2, high * rng.uniform(1.0, 1.6), rng.uniform(2, 5), straight=rng.uniform(1, 6)),
    }


def design(rng: np.random.Generator, cuts: int = 30, tools: tuple[int, ...] = (1,)) -> list[tuple[float, ...]]:
    """(fz, true rev/min, straight, tool): a grid in random order, every third cut a plunge."""
    speeds = np.geomspace(8000, 20000, 5)
    fz = np.geomspace(0.02, 0.2, max(cuts // len(speeds), 2))
    grid = [(float(f), float(n)) for f in fz for n in speeds][:cuts]
    while len(grid) < cuts:
        grid.append(grid[int(rng.integers(len(grid)))])
    rng.shuffle(grid)
    return [(f, n, float(k % 3 == 2), float(tools[k % len(tools)])) for k, (f, n) in enumerate(grid)]


def trial(shop: dict[str, Cause], cuts: list[tuple[float, ...]], rng: np.random.Generator, batch: str = "") -> Trial:
    """What this shop would have seen, had it made these cuts."""
    seen = []
    for number, (fz, speed, straight, tool) in enumerate(cuts, 1):
        edge = math.pi * DIAMETER * speed / 1000
        level = dict.fromkeys(FAULTS, 0)
        for fault, cause in shop.items():
            level[fault] = cause.level(len(scales()[fault].words), rng, fz, edge, bool(straight), int(tool), batch)
        entry = "straight" if straight else "ramp"
        feed = fz * speed * 2
        seen.append(Seen("a trial", number, int(tool), entry, fz, edge, speed, speed, feed, 1.5, batch, level))
    numbers = sorted({one.tool for one in seen})
    tools = {number: ToolTable(number, "flat", Length(DIAMETER), flutes=2) for number in numbers}
    return Trial("cured-epoxy", tools, tuple(seen), ("a trial",), len(seen))
