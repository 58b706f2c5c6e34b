"""Time of `engage` on a 3-axis finishing pass with a 6 mm ball (the surface of make_program.py), for N and 2 N moves.

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

STEP = 0.2  # mm
BEST_OF = 3  # a shared machine is noisy


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


def timed(moves: int) -> float:
    from gclint.stock import engage as stage
    from gclint.tables.setup import Tool
    from tests.stock.build import setup

    motion, ball = finishing(moves), setup(Tool(1, "ball", 6.0))
    took = math.inf
    for _ in range(BEST_OF):
        begin = time.perf_counter()
        found = stage.engage(motion, ball)
        took = min(took, time.perf_counter() - begin)
    size = f"cell {found.cell:.4g} mm, {found.cut.size} cells, {len(found.pieces)} pieces, {len(found.entries)} entries"
    print(f"{moves} moves, {size}: {took:.2f} s")
    return took


def main() -> None:
    sys.path.insert(0, str(Path(__file__).parents[2]))  # the checkout, for tests.stock.build
    from gclint.stock import grid

    given = [word for word in sys.argv[1:] if not word.startswith("-")]  # --lines N as the other benchmarks take it
    moves = int(given[0]) if given else 500_000
    for cell in (grid.CELL_HIGH, float(given[1]) if len(given) > 1 else 0.1):
        grid.CELL_LOW, grid.CELL_HIGH = min(grid.CELL_LOW, cell), cell
        once = timed(moves)
        print(f"twice the moves: {timed(2 * moves) / once:.2f} x the time (floor 2.2)")
    print(f"peak memory {resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024:.0f} MB")


if __name__ == "__main__":
    main()
