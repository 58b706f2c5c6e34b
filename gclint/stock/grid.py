"""The cells of the height field: how fine, how many, and where they lie."""

from __future__ import annotations

import math

import numpy as np
from msgspec import Struct

from gclint.columns import Bools, Floats, Ints
from gclint.stock.assume import outline
from gclint.stock.profile import Profile
from gclint.tables.setup import Stock

MOST_CELLS = 40e6  # 160 MB of depths, at most 480 MB with a wall in every cell
CELL_LOW, CELL_HIGH = 0.05, 0.5  # mm


class Grid(Struct, frozen=True):
    """Rows and columns of cells, the field's lowest corner and the cell in mm, and the stock's top."""

    shape: tuple[int, int]
    x_low: float
    y_low: float
    cell: float
    top: float


def cell_wanted(tool: Ints, tools: list[Profile], lowest: Floats, cuts: Bools, top: float) -> float | None:
    """D/32 of the smallest tool that cuts, or an eighth of what it cuts if narrower; None where nothing cuts.

    tool, lowest, cuts [moves]: row of `tools`; lowest Z, mm; whether the move cuts.
    """
    wanted = None
    for row, each in enumerate(tools):
        mine = cuts & (tool == row)
        if not mine.any():
            continue
        deepest = top - float(lowest[mine].min())
        narrow = min(2 * each.radius / 32, 2 * each.radius_at(deepest) / 8)
        narrow = min(max(narrow, CELL_LOW), CELL_HIGH)
        wanted = narrow if wanted is None else min(wanted, narrow)
    return wanted


def grid_over(box: Stock, wanted: float) -> Grid:
    """Over a blank whose outline is known."""
    x_low, x_high, y_low, y_high = outline(box)
    wide, high = x_high - x_low, y_high - y_low
    cell = _cell(wide, high, wanted)
    return Grid((max(1, round(high / cell)), max(1, round(wide / cell))), x_low, y_low, cell, box.top or 0.0)


def widened(grid: Grid, box: Stock) -> Grid | None:
    """The same cells and more around them, so that they cover the box as well; None where they would be too many."""
    x_low, x_high, y_low, y_high = outline(box)
    rows, columns = grid.shape
    left, front = (max(0, math.ceil((a - b) / grid.cell - 1e-6)) for a, b in ((grid.x_low, x_low), (grid.y_low, y_low)))
    right = max(0, math.ceil((x_high - grid.x_low) / grid.cell - columns - 1e-6))
    back = max(0, math.ceil((y_high - grid.y_low) / grid.cell - rows - 1e-6))
    shape = rows + front + back, columns + left + right
    if shape[0] * shape[1] > MOST_CELLS:
        return None
    return Grid(shape, grid.x_low - left * grid.cell, grid.y_low - front * grid.cell, grid.cell, grid.top)


def _cell(wide: float, high: float, wanted: float) -> float:
    """mm: up to a twentieth smaller than wanted, so that whole cells fill the blank; larger at the cap."""
    cell = wanted
    while max(1, round(wide / cell)) * max(1, round(high / cell)) > 0.9 * MOST_CELLS:
        cell *= 1.01
    tried = cell * np.linspace(1.0, 0.95, 101)
    left_over = sum(np.abs(size - np.maximum(1, np.round(size / tried)) * tried) for size in (wide, high))
    return float(tried[np.argmin(left_over)])
