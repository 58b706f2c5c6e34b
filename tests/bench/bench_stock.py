"""Processor time of `engage` on a 3-axis pass over the wavy surface of make_program.py, for N and 2 N moves of a 6 mm
ball, and of other tools beside it; then of helices of many turns.

python tests/bench/bench_stock.py [N] [CELL]    N: 500,000 if none; cells as chosen from the tool, and at CELL (0.1 mm)
"""

from __future__ import annotations

import math
import resource
import sys
import time
from pathlib import Path
from typing import TYPE_CHECKING

import numpy as np

if TYPE_CHECKING:
    from gclint.tables.motion import Motion
    from gclint.tables.setup import Tool

STEP = 0.2  # mm
BEST_OF = 3  # a shared machine is noisy
TURNS = 100  # of each helix


def finishing(moves: int) -> Motion:
    from tests.stock.build import columns

    per_row = max(2, math.isqrt(moves))
    n = np.arange(moves + 1)
    row, place = n // per_row, n % per_row
    x = np.where(row % 2 == 0, place, per_row - 1 - place) * STEP
    y = row * STEP
    z = -1.8 + 0.9 * np.sin(x * 0.12) * np.cos(y * 0.09) + 0.6 * np.sin((x + y) * 0.31)
    length = np.sqrt(np.diff(x) ** 2 + np.diff(y) ** 2 + np.diff(z) ** 2)
    return columns(x0=x[:-1], y0=y[:-1], z0=z[:-1], x1=x[1:], y1=y[1:], z1=z[1:], length=length)


def timed(motion: Motion, tool: Tool) -> float:
    from gclint.stock import engage as stage
    from tests.stock.build import setup

    took = math.inf
    for _ in range(BEST_OF):
        begin = time.process_time()
        found = stage.engage(motion, setup(tool))
        took = min(took, time.process_time() - begin)
    size = f"cell {found.cell:.4g} mm, {len(found.pieces)} pieces, {len(found.contact)} profiles"
    print(f"{len(motion)} moves, {tool.shape}, {size}: {took:.2f} s", flush=True)
    return took


def helices(count: int) -> Motion:
    from tests.stock.build import Path as Moves

    path = Moves((25.0, 20.0, 0.0))
    for k in range(1, count + 1):
        path.arc((20.0, 20.0), -360.0 * TURNS, z=-10.0 * k / count)
    return path.motion()


def main() -> None:
    sys.path.insert(0, str(Path(__file__).parents[2]))  # the checkout, for tests.stock.build
    from gclint.stock import grid
    from gclint.tables.setup import Tool

    given = [word for word in sys.argv[1:] if not word.startswith("-")]  # --lines N as the other benchmarks take it
    moves = int(given[0]) if given else 500_000
    once, twice, ball = finishing(moves), finishing(2 * moves), Tool(1, "ball", 6.0)
    for cell in (grid.CELL_HIGH, float(given[1]) if len(given) > 1 else 0.1):
        grid.CELL_LOW, grid.CELL_HIGH = min(grid.CELL_LOW, cell), cell
        took = timed(once, ball)
        print(f"twice the moves: {timed(twice, ball) / took:.2f} x the time (floor 2.2)")
        for tool in (Tool(1, "flat", 6.0), Tool(1, "v", 6.0, angle=90.0), Tool(1, "bull-nose", 6.0, corner_radius=1.0)):
            print(f"{tool.shape}: {timed(once, tool) / took:.2f} x the ball's time")
    took = timed(helices(50), Tool(1, "flat", 6.0))
    print(f"twice the turns: {timed(helices(100), Tool(1, 'flat', 6.0)) / took:.2f} x the time (floor 2.2)")
    print(f"peak memory {resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024:.0f} MB")


if __name__ == "__main__":
    main()
