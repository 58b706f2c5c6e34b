"""Kinds of invented shops whose truth is known and is not the model that is fitted, and what they would grade.

Each fault sets in over or under a feed per tooth that depends on edge speed along a bent line; a tool may sing at one
speed; words come about by a logistic, a normal or a hardly spread threshold, by a wandering one, or by a slip.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass, field

import numpy as np

from gclint.setup.declared import ToolTable
from gclint.toml.quantity import Length
from gclint.trial.plan import FAULTS
from gclint.trial.scales import scales
from gclint.trial.seen import Seen, Trial

DIAMETER = 3.175
SPEEDS = (8500.0, 10200.0, 12000.0, 14450.0, 18000.0)
KINDS = (
    "plain", "normal", "sharp", "wandering", "slips", "bent", "sings at 1", "sings at 2", "sings at 3", "sings at 4",
    "sings at 5", "sings by chip", "few cuts", "all good", "all bad", "contradictory", "drifting", "wrong words",
)  # fmt: skip


@dataclass
class Cause:
    """Logits for twice the chip and edge speed around a limit (mm) at 100 m/min; `bend`: for twice the edge speed,
    more, over 100 m/min; `sings`: at speeds."""

    word: int
    limit: float
    chip: float
    edge: float = 0.0
    bend: float = 0.0
    straight: float = 0.0
    apart: float = 2.0
    sings: dict[float, float] = field(default_factory=dict)
    width: float = 0.08  # of a resonance, binary logarithm of the speed

    def eta(self, fz: float, speed: float, straight: bool = False) -> float:
        away = math.log2(edge_of(speed) / 100.0)
        more = self.edge * away + self.bend * max(away, 0.0) + self.straight * straight
        more += sum(high * math.exp(-0.5 * (math.log2(speed / at) / self.width) ** 2)
                    for at, high in self.sings.items())  # fmt: skip
        return self.chip * math.log2(fz / self.limit) + more

    def limit_fz(self, speed: float) -> float:
        """Where it is as likely as not, by a ramp."""
        return self.limit * 2 ** (-self.eta(self.limit, speed) / self.chip)


@dataclass
class Shop:
    kind: str
    causes: dict[str, Cause]
    noise: str
    slips: float
    drift: float  # logits of dust from the first cut to the last
    cuts: int
    speeds: tuple[float, ...]

    def bad(self, fz: float, speed: float) -> float:
        """The greatest logit of any fault by a ramp, with the wear of the middle of the job."""
        worst = [cause.eta(fz, speed) + (self.drift / 2 if fault == "dust" else 0.0)
                 for fault, cause in self.causes.items()]  # fmt: skip
        return max(worst)


def edge_of(speed: float) -> float:
    return math.pi * DIAMETER * speed / 1000


NOISES: dict[str, Callable[[np.random.Generator], float]] = {
    "logistic": lambda rng: rng.logistic(),
    "normal": lambda rng: 1.7 * rng.standard_normal(),
    "sharp": lambda rng: 0.5 * rng.standard_normal(),
    "wandering": lambda rng: rng.standard_t(3),
    "coin": lambda rng: 4.0 * rng.standard_normal(),
}


def shop_of(kind: str, rng: np.random.Generator) -> Shop:
    low = 0.05 * math.exp(rng.uniform(-0.35, 0.25))
    high = low * rng.uniform(1.7, 2.8)
    causes = {
        "dust": Cause(2, low, -rng.uniform(3, 8), rng.uniform(1, 6), apart=rng.uniform(1.5, 3)),
        "melting": Cause(2, low * rng.uniform(0.6, 1.0), -rng.uniform(2, 6), rng.uniform(1, 5)),
        "chatter": Cause(2, high, rng.uniform(3, 8), rng.uniform(-2, 2), apart=rng.uniform(1.5, 3)),
        "chipping": Cause(2, high * rng.uniform(1.0, 1.6), rng.uniform(2, 5), straight=rng.uniform(1, 6)),
    }
    cuts, noise, slips, drift = int(rng.choice([20, 24, 30, 36])), "logistic", 0.0, 0.0
    speeds = SPEEDS if rng.random() < 0.5 else SPEEDS[:4]
    if kind in ("normal", "sharp", "wandering"):
        noise = kind
    elif kind == "slips":
        slips = 0.04
    elif kind == "bent":
        causes["dust"].bend, causes["dust"].edge = rng.uniform(2, 6), rng.uniform(0, 2)
        causes["chatter"].bend = -rng.uniform(0, 4)
    elif kind.startswith("sings at"):
        speeds = SPEEDS
        causes["chatter"].sings = {SPEEDS[int(kind[-1]) - 1]: rng.uniform(15, 25)}
        causes["chatter"].width = rng.uniform(0.04, 0.11)
    elif kind == "sings by chip":
        causes["chatter"].sings = {float(rng.choice(speeds)): causes["chatter"].chip * rng.uniform(0.6, 1.2)}
    elif kind == "few cuts":
        cuts, speeds = int(rng.integers(9, 15)), SPEEDS[1:4]
    elif kind == "all good":
        for fault, times in (("dust", 0.25), ("melting", 0.25), ("chatter", 5.0), ("chipping", 8.0)):
            causes[fault].limit *= times
            causes[fault].straight = 0.0
    elif kind == "all bad":
        causes["chatter"].limit *= 0.1
        causes["dust"].limit *= rng.uniform(1, 6)
    elif kind == "contradictory":
        noise = "coin"
    elif kind == "drifting":
        drift = rng.uniform(3, 6)
    elif kind == "wrong words":
        slips = 0.12
    return Shop(kind, causes, noise, slips, drift, cuts, speeds)


def design(shop: Shop, rng: np.random.Generator) -> list[tuple[float, float, bool]]:
    """(fz, rev/min, straight): feeds on a grid at each speed, some cut twice, in random order, a third are plunges."""
    each = max(shop.cuts // (len(shop.speeds) + 1), 3)
    grid = [(float(fz) * math.exp(rng.normal(0, 0.03)), speed) for speed in shop.speeds
            for fz in np.geomspace(0.022, 0.18, each)]  # fmt: skip
    rng.shuffle(grid)
    grid = (grid * 2)[: shop.cuts]
    return [(fz, speed, k % 3 == 2) for k, (fz, speed) in enumerate(grid)]


def trial_of(shop: Shop, rng: np.random.Generator) -> Trial:
    """What this shop would have graded."""
    seen, cuts = [], design(shop, rng)
    for number, (fz, speed, straight) in enumerate(cuts, 1):
        level = dict.fromkeys(FAULTS, 0)
        for fault, cause in shop.causes.items():
            eta = cause.eta(fz, speed, straight) + shop.drift * (fault == "dust") * number / len(cuts)
            eta += NOISES[shop.noise](rng)
            words = len(scales()[fault].words)
            level[fault] = sum(eta > cause.apart * (word - cause.word) for word in range(1, words))
            if rng.random() < shop.slips:
                level[fault] = int(rng.integers(words))
        entry = "straight" if straight else "ramp"
        feed = round(fz * speed * 2, 6)
        seen.append(Seen("a trial", number, 1, entry, fz, edge_of(speed), speed, speed, feed, 1.5, "", level))
    tool = ToolTable(1, "flat", Length(DIAMETER), flutes=2)
    return Trial("cured-epoxy", {1: tool}, tuple(seen), ("a trial",), len(seen))
