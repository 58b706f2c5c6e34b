"""The planner alone, against a plain Python loop that times each of the same moves by itself, from rest to rest.

python tests/bench/bench_feed_planning.py [--lines N] [--runs N]

Every figure is a ratio of two things timed in this run. The floor: planning ahead is at least as fast as that loop.
"""

from __future__ import annotations

import argparse
import math
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))
sys.path.insert(0, str(Path(__file__).parent))
from bench_read import seconds
from bench_whole import report
from make_program import finishing_program


def alone(lengths: list[float], feeds: list[float], a: float) -> float:
    """Seconds of all moves, each from rest to rest."""
    total = 0.0
    for length, v in zip(lengths, feeds):
        total += length / v + v / a if length * a >= v * v else 2 * math.sqrt(max(length, 0.0) / a)
    return total


def main() -> int:
    ask = argparse.ArgumentParser(description=(__doc__ or "").split("\n")[0])
    ask.add_argument("--lines", type=int, default=1_000_000)
    ask.add_argument("--runs", type=int, default=5)
    options, _ = ask.parse_known_args()

    from gclint.motion.feed_planning import plan_feed
    from gclint.motion.interpret import interpret
    from gclint.program.read import read
    from gclint.tables.setup import Axes, Controller, Hold, Machine, Setup, Spindle

    limits = Machine(
        rapid=Axes(3000, 3000, 1000), feed_limit=Axes(2500, 2500, 800), acceleration=Axes(200, 200, 150),
        corner_deviation=0.02,
    )  # fmt: skip
    setup = Setup(limits, Spindle(), Controller(), {}, None, None, None, None, Hold())
    motion = interpret(read(finishing_program(options.lines), "bench"), setup.controller)
    lengths, feeds = motion.length.tolist(), (motion.feed / 60.0).tolist()
    plain, planned = seconds(lambda: alone(lengths, feeds, 200.0), lambda: plan_feed(motion, setup), runs=options.runs)
    met = report(
        f"plan {len(motion):,} moves ahead, faster than a Python loop times each alone",
        plain / planned,
        1,
        True,
        f"{planned * 1000:.0f} ms ({len(motion) / planned / 1e6:.1f} million moves/s), loop {plain * 1000:.0f} ms",
    )
    return 0 if met else 1


if __name__ == "__main__":
    raise SystemExit(main())
