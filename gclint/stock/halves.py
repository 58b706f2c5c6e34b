"""Where a long program can be cut in two, so that both halves are swept side by side on two fields.

The second half needs the stock as the first leaves it, but only where it works itself. So it begins by going again
through those moves of the first half that come near its own; of a program that works its way over the blank these are
few. Where the split lies depends on the program alone, never on the machine that checks it.
"""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from gclint.columns import Bools, Floats, Floats32, Ints, Longs
from gclint.motion.along import starts_in_plane
from gclint.stock.grid import Grid
from gclint.tables.motion import Motion
from gclint.threads import LONG

BLOCKS = 1024  # of moves that are looked at as one
TILES = 128  # along the longer side of the field
WORTH = 0.75  # of the work of one sweep: where the second half has more, there is one sweep


class Halves(Struct, frozen=True, eq=False):
    """The first half are the moves before `at`; `again` [moves] tells which of them the second goes through too."""

    at: int
    again: Bools
    tiles: Bools  # [rows, columns] of tiles in which the second half's field is the later one
    tile: int  # cells along a tile's side

    def join(self, first: Floats32, second: Floats32) -> None:
        """Puts into the first half's field what the second has changed."""
        columns = first.shape[1]
        for row, mine in enumerate(self.tiles):
            span = slice(row * self.tile, (row + 1) * self.tile)
            np.copyto(first[span], second[span], where=np.repeat(mine, self.tile)[:columns])


def halves_of(motion: Motion, tool: Ints, reach: Floats, grid: Grid, work: Floats) -> Halves | None:
    """None where one sweep is as good.

    tool, work [moves]: -1 = not swept; mm of path that cuts. reach [tools]: how far from its axis a tool meets cells.
    """
    n = len(motion)
    if n < LONG:
        return None
    size = -(-n // BLOCKS)
    begins = np.arange(0, n, size)
    tile = max(1, -(-max(grid.shape) // TILES))
    tiles = -(-np.array(grid.shape) // tile)
    around = np.where(work > 0, reach[tool], np.nan)  # what stays above the stock meets nothing
    span = _tiles_of(motion, around, begins, grid, grid.cell * tile, tiles)
    touched_last = np.full(tuple(tiles), -1)
    boxes = [(slice(front, back), slice(left, right)) for left, right, front, back in span.tolist()]
    for block, box in enumerate(boxes):
        touched_last[box] = block
    later = np.array([touched_last[box].max(initial=-1) for box in boxes])
    of_block = np.add.reduceat(work, begins)
    done = np.concatenate(([0.0], np.cumsum(of_block)))
    best, cost = 0, WORTH * done[-1]
    for block in range(int(np.searchsorted(done, 0.25 * done[-1])), int(np.searchsorted(done, 0.75 * done[-1]))):
        again = of_block[:block][later[:block] >= block].sum()
        longer = max(done[block], done[-1] - done[block] + again)
        if longer < cost:
            best, cost = block, longer
    if not best:
        return None
    again = np.zeros(len(begins), dtype=bool)
    again[:best] = later[:best] >= best
    return Halves(int(begins[best]), np.repeat(again, size)[:n], touched_last >= best, tile)


def _tiles_of(m: Motion, around: Floats, begins: Longs, grid: Grid, tile: float, most: Longs) -> Longs:
    """[blocks, 4] tiles that a block's moves may meet: columns from, to, rows from, to.

    around [moves]: mm to each side of the path; NaN for moves that meet none. tile: mm; most: rows and columns of them.
    """
    arcs = np.flatnonzero(m.kind >= 2)
    if len(arcs):  # no point of an arc is farther from its start than twice the radius, in whatever plane
        first, second, _ = starts_in_plane(m, arcs)
        around[arcs] += np.nan_to_num(2 * np.hypot(first - m.cu[arcs], second - m.cv[arcs]), nan=0.0)
    spans = []
    for start, end, low, count in ((m.x0, m.x1, grid.x_low, most[1]), (m.y0, m.y1, grid.y_low, most[0])):
        least = np.fmin.reduceat(np.fmin(start, end) - around, begins)
        largest = np.fmax.reduceat(np.fmax(start, end) + around, begins)
        spans.append(np.clip(np.nan_to_num(np.floor((least - low) / tile), nan=0), 0, count))
        spans.append(np.clip(np.nan_to_num(np.floor((largest - low) / tile) + 1, nan=0), 0, count))
    return np.column_stack(spans).astype(np.int64)
