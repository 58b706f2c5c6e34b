"""Following a loop: moves a second of a loop of 100,000 rounds, beside a bare Python loop over the same count.

python tests/bench/bench_follow.py [--rounds N] [--runs N]

Both are timed in this run, in turn, on one core. Prints the floor; exits with 1 where it is missed.
"""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))
sys.path.insert(0, str(Path(__file__).parent))
from bench_read import seconds
from bench_whole import report


def loop(rounds: int) -> bytes:
    return (
        "G21 G90 G94 G17 G54\nG0 X0 Y0 Z5\n#1 = 0\n"
        f"O100 while [#1 LT {rounds}]\n#1 = [#1 + 1]\nG1 X[#1 * 0.001] Y[#1 MOD 3] F600\nO100 endwhile\nM30\n"
    ).encode()


def bare(rounds: int) -> list[tuple[float, float]]:
    """What the loop computes, written out in Python."""
    made = []
    n = 0
    while n < rounds:
        n += 1
        made.append((n * 0.001, n % 3))
    return made


def main() -> int:
    ask = argparse.ArgumentParser(description=(__doc__ or "").split("\n")[0])
    ask.add_argument("--rounds", type=int, default=100_000)
    ask.add_argument("--runs", type=int, default=7)
    options, _ = ask.parse_known_args()

    from gclint.motion.interpret import interpret
    from gclint.program.read import read
    from gclint.tables.setup import Controller

    program = read(loop(options.rounds), "bench")
    following, python = seconds(
        lambda: interpret(program, Controller()), lambda: bare(options.rounds), runs=options.runs
    )
    met = report(
        f"a loop of {options.rounds:,} rounds, 300,000 moves a second",
        options.rounds / following / 300_000,
        1,
        True,
        f"{options.rounds / following:,.0f} moves/s; {following * 1000:.0f} ms, "
        f"{following / python:.1f} x a bare Python loop of {python * 1000:.0f} ms",
    )
    return 0 if met else 1


if __name__ == "__main__":
    raise SystemExit(main())
