"""Invented shops whose windows are known, and the grades that they would give to test cuts."""

from __future__ import annotations

import datetime
import math
from dataclasses import dataclass, field
from pathlib import Path

import numpy as np

from gclint.setup.declared import ToolTable
from gclint.toml.quantity import Feed, Length, Position, Speed
from gclint.trial.plan import FAULTS, Cut, Plan
from gclint.trial.plan_file import GRADES_FILE, plan_text
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


DIAL = {"A": (10000, 8500), "B": (12000, 10200), "C": (14000, 11900), "D": (17000, 14450), "E": (20000, 17000)}
DOWN_CUT, UP_CUT, LONG, ONE_FLUTE = 1, 2, 3, 4  # Lowtide's tools


def lowtide() -> dict[str, Cause]:
    """The Lowtide workshop (invented) in cured epoxy with 1/8 in bits: as common practice has it, no source. Best at 40
    to 60 in/min and 10,000 to 14,000 rev/min as stated (85 % of it true); faster spindles make dust, twice the feed
    chatters, more so with a long bit; a plunge chips the edge, a ramp does not; a down-cut is cleaner than an up-cut,
    one flute cleaner than two."""
    return {
        "dust": Cause(2, 0.042, -5.0, 5.0, at=110.0, tool={ONE_FLUTE: -2.0}),
        "melting": Cause(2, 0.024, -4.0, 4.0, at=120.0, tool={ONE_FLUTE: -1.5}),
        "chatter": Cause(2, 0.100, 6.0, tool={LONG: 4.0}),
        "chipping": Cause(2, 0.150, 3.0, straight=8.0, tool={UP_CUT: 3.0}),
        "debris": Cause(2, 0.020, -1.5, 2.0, at=140.0, tool={ONE_FLUTE: -2.0, UP_CUT: -1.0}),
    }


def lowtide_cuts(tools: tuple[int, ...] = (DOWN_CUT,), count: int = 36, seed: int = 11) -> list[tuple[float, ...]]:
    """Feeds of 20 to 100 in/min at five dial marks, a third of them plunges."""
    rng = np.random.default_rng(seed)
    feeds = [20, 30, 40, 50, 60, 80, 100]
    grid = [(feed * 25.4, float(true)) for _, true in DIAL.values() for feed in feeds]
    rng.shuffle(grid)
    grid = (grid * 3)[:count]
    return [(feed / (2 * n), n, float(k % 3 == 1), float(tools[k % len(tools)])) for k, (feed, n) in enumerate(grid)]


SHOP = """# Lowtide workshop (invented)
[spindle]
kind = "dial"
dial = [  # measured with a strobe
    { mark = "A", stated = 10000, measured = 8500 }, { mark = "B", stated = 12000, measured = 10200 },
    { mark = "C", stated = 14000, measured = 11900 }, { mark = "D", stated = 17000, measured = 14450 },
    { mark = "E", stated = 20000, measured = 17000 },
]

[[tool]]
number = 1
shape = "flat"
diameter = "1/8 in"   # the good ones
flutes = 2
"""


def in_folder(made: Trial, folder: Path, name: str = "cured-epoxy 2026-11-25") -> Path:
    """plan.toml, grades.toml and shop.toml as people have them; the folder."""
    folder.mkdir(exist_ok=True)
    marks = {float(true): (mark, stated) for mark, (stated, true) in DIAL.items()}
    cuts = []
    for cut in made.cuts:
        mark, stated = marks.get(cut.speed, (None, cut.speed))
        place = Position(10 * cut.number), Position(0)
        cuts.append(Cut(cut.number, cut.tool, Feed(cut.feed), Speed(stated), cut.entry, Length(cut.depth), place, mark,
                        Speed(cut.speed)))  # type: ignore[arg-type]  # fmt: skip
    plan = Plan(
        plan=name, made=datetime.date(2026, 11, 25), material=made.material, program="plan.nc",
        coupon=(Length(400), Length(100), Length(18)), corner=(Position(0), Position(0)),
        field=(Length(40), Length(12)), batch=made.cuts[0].batch, shop="shop.toml", tool=tuple(made.tools.values()),
        cut=tuple(cuts),
    )  # fmt: skip
    (folder / "plan.toml").write_text(plan_text(plan), encoding="utf-8")
    rows = [f'plan = "{name}"']
    for cut in made.cuts:
        words = [f'{fault} = "{scales()[fault].words[level]}"' for fault, level in cut.level.items()]
        rows.append("\n".join(["[[grade]]", f"cut = {cut.number}", *words]))
    (folder / GRADES_FILE).write_text("\n\n".join(rows), encoding="utf-8")
    if not (folder / "shop.toml").exists():
        (folder / "shop.toml").write_text(SHOP, encoding="utf-8")
    return folder
