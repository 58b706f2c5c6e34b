"""Reading: the scan against counting newlines, and read, interpret and pace against pygcode's parse of the same lines.

python tests/bench/bench_read.py [--lines N] [--runs N] [--full]

Every figure is a ratio of two things timed in this run. Prints the floor beside each; exits with 1 where one is missed.
"""

from __future__ import annotations

import argparse
import sys
import time
from collections.abc import Callable
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))
sys.path.insert(0, str(Path(__file__).parent))
from bench_whole import pygcode_seconds, report
from make_program import finishing_program


def seconds(*works: Callable[[], object], runs: int) -> list[float]:
    """Best time of each of these, run in turn so that a busy machine slows all of them; the first round only warms."""
    best = [float("inf")] * len(works)
    for turn in range(runs + 1):
        for n, work in enumerate(works):
            begin = time.perf_counter()
            kept = work()
            took = time.perf_counter() - begin
            del kept
            if turn:
                best[n] = min(best[n], took)
    return best


def main() -> int:
    ask = argparse.ArgumentParser(description=(__doc__ or "").split("\n")[0])
    ask.add_argument("--lines", type=int, default=1_000_000)
    ask.add_argument("--runs", type=int, default=7)
    ask.add_argument("--full", action="store_true", help="let pygcode parse every line (minutes)")
    options, _ = ask.parse_known_args()

    from gclint.motion.feed_planning import plan_feed
    from gclint.motion.interpret import interpret
    from gclint.program.read import read
    from gclint.tables.setup import Axes, Controller, Hold, Machine, Setup, Spindle
    from gclint.tables.timing import Timing

    setup = Setup(
        machine=Machine(rapid=Axes(3000, 3000, 1000)),
        spindle=Spindle(),
        controller=Controller(),
        tools={},
        material=None,
        stock=None,
        z_zero=None,
        dial=None,
        hold=Hold(),
    )

    def whole(data: bytes) -> Timing:
        return plan_feed(interpret(read(data, "bench"), setup.controller), setup)

    data = finishing_program(options.lines)
    twice = finishing_program(2 * options.lines)
    counting, reading, three, double = seconds(
        lambda: data.count(b"\n"),
        lambda: read(data, "bench"),
        lambda: whole(data),
        lambda: whole(twice),
        runs=options.runs,
    )
    parsing, how = pygcode_seconds(data, options.lines, options.full)

    size = f"{options.lines:,} lines, {len(data) / 1e6:.0f} MB"
    met = [
        report(
            f"read {size}, to counting newlines",
            reading / counting,
            25,
            False,
            f"{reading * 1000:.0f} ms, newlines {counting * 1000:.1f} ms",
        ),
        report(
            "read, interpret and pace, faster than pygcode's parse",
            parsing / three,
            60,
            True,
            f"{three * 1000:.0f} ms, parse {parsing:.1f} s, {how}",
        ),
        report(
            "read, interpret and pace of twice the lines, to once",
            double / three,
            2.2,
            False,
            f"{double * 1000:.0f} ms, {three * 1000:.0f} ms",
        ),
    ]
    return 0 if all(met) else 1


if __name__ == "__main__":
    raise SystemExit(main())
