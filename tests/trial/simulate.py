"""Simulated trials: how often a stated interval holds the truth, and a recommended pair lies in the true window.

python -m tests.trial.simulate [TRIALS] [CUTS]
"""

from __future__ import annotations

import math
import sys
from dataclasses import dataclass, field

import numpy as np

from gclint.trial.learn import Lesson, Limit, learn, reached
from tests.trial.shops import Cause, any_shop, design, trial


@dataclass
class Tally:
    held: dict[str, list[bool]] = field(default_factory=dict)
    inside: list[bool] = field(default_factory=list)
    wide: dict[str, list[float]] = field(default_factory=dict)

    def add(self, what: str, limit: Limit, truth: float, ends: tuple[float, float]) -> None:
        """A limit that truly lies within what was cut."""
        if ends[0] < truth < ends[1]:
            self.held.setdefault(what, []).append(limit.low <= truth <= limit.high)
            self.wide.setdefault(what, []).append(math.log2(limit.high / limit.low))

    @property
    def all(self) -> list[bool]:
        return [one for held in self.held.values() for one in held]


def simulate(trials: int, cuts: int, seed: int = 7) -> Tally:
    tally = Tally()
    for k in range(trials):
        rng = np.random.default_rng((seed, k))
        shop = any_shop(rng)
        lesson = learn(trial(shop, design(rng, cuts), rng))
        window = lesson.windows[1]
        under, over = ("dust", "melting"), ("chatter", "chipping")
        edge, fz = window.pair_edge, window.pair_fz
        ends = reached(lesson.trial.cuts, edge)
        tally.add("least chip", window.fz.low, max(shop[f].limit_fz(edge) for f in under), ends)
        tally.add("greatest chip", window.fz.high, min(shop[f].limit_fz(edge) for f in over), ends)
        if window.edge is not None:
            edges = [cut.edge for cut in lesson.trial.cuts]
            tally.add("greatest edge speed", window.edge.high, _top(shop, edge, lesson), (min(edges), max(edges)))
        tally.inside.append(all(cause.eta(fz, edge, False) < 0 for cause in shop.values()))
    return tally


def _top(shop: dict[str, Cause], edge: float, lesson: Lesson) -> float:
    """The edge speed up from `edge` past which no chip that was cut is good."""
    speeds = np.geomspace(edge, max(cut.edge for cut in lesson.trial.cuts), 400)
    for speed in speeds:
        fz = np.geomspace(*reached(lesson.trial.cuts, speed), 100)
        if not any(all(cause.eta(f, speed, False) < 0 for cause in shop.values()) for f in fz):
            return float(speed)
    return math.inf


def main() -> int:
    trials, cuts = (int(word) for word in (sys.argv[1:] + ["200", "30"][len(sys.argv) - 1 :]))
    tally = simulate(trials, cuts)
    print(f"{trials} simulated trials of {cuts} cuts")
    for what, held in tally.held.items():
        print(f"  {what}: {np.mean(held):.1%} of {len(held)} intervals of 80 % hold the truth, "
              f"a factor of {2 ** np.median(tally.wide[what]):.2f} wide")  # fmt: skip
    covered, inside = float(np.mean(tally.all)), float(np.mean(tally.inside))
    print(f"  all intervals: {covered:.1%} (72 to 88 % asked)")
    print(f"  recommended pair inside the true window: {inside:.1%} (90 % asked)")
    return int(not (0.72 <= covered <= 0.88 and inside >= 0.90))


if __name__ == "__main__":
    sys.exit(main())
