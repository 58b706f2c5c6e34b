"""The stock as it stood before one move: only what the earlier moves did near the place is swept again."""

from __future__ import annotations

import math
from dataclasses import dataclass, fields, replace

import numpy as np
from msgspec.structs import replace as changed

from gclint.columns import Floats, Floats32, Longs
from gclint.facts.context import Context
from gclint.motion.along import point_at, starts_in_plane
from gclint.stock.assume import outline
from gclint.stock.engage import engage
from gclint.tables.motion import RAPID, Motion
from gclint.tables.setup import Stock

Point = tuple[float, float, float]
MOST_MOVES = 200_000  # near one place; of more, the later ones are swept


@dataclass(frozen=True, slots=True, eq=False)
class Ground:
    """Depth below the stock's top in cells; `height` asks it at points."""

    box: Stock
    x: float
    y: float
    cell: float
    cut: Floats32

    @property
    def top(self) -> float:
        return self.box.top or 0.0

    def height(self, x: Floats, y: Floats) -> Floats:
        """Z of the material's surface at points, mm; -inf where none stands."""
        x_low, x_high, y_low, y_high = outline(self.box)
        inside = (x >= x_low) & (x <= x_high) & (y >= y_low) & (y <= y_high)
        z = np.where(inside, self.top, -np.inf)
        if self.cut.size:
            column = np.clip(((x - self.x) / self.cell).astype(np.int64), 0, self.cut.shape[1] - 1)
            row = np.clip(((y - self.y) / self.cell).astype(np.int64), 0, self.cut.shape[0] - 1)
            z = np.where(inside, self.top - self.cut[row, column], -np.inf)
        if self.box.bottom is not None:
            z = np.where(z <= self.box.bottom + 1e-6, -np.inf, z)
        return z


def ground(
    context: Context, before: int, window: tuple[float, float, float, float], share: float = 0.0
) -> Ground | None:
    """What stands in the window (lowest and highest X, lowest and highest Y) before a move, or before the part of it
    behind `share`. None where no stock is modelled there."""
    box = context.engagement.box
    if box is None or box.top is None or context.engagement.cell <= 0:
        return None
    x_low, x_high, y_low, y_high = outline(box)
    x = max(x_low, window[0]), min(x_high, window[1])
    y = max(y_low, window[2]), min(y_high, window[3])
    if not (x[0] < x[1] and y[0] < y[1]):
        return Ground(box, x_low, y_low, 1.0, np.zeros((0, 0), np.float32))
    near = Stock(x, y, box.top, box.bottom, box.declared, box.placed)
    motion = _near(context, before, (*x, *y), box.top, share)
    if not len(motion):
        return Ground(box, x_low, y_low, 1.0, np.zeros((0, 0), np.float32))
    made = engage(motion, changed(context.setup, stock=near))
    return Ground(box, x[0], y[0], made.cell or 1.0, made.cut)


def _near(context: Context, before: int, window: tuple[float, float, float, float], top: float, share: float) -> Motion:
    """The moves before one that can have cut something in the window."""
    m = context.motion
    widest = max((tool.diameter / 2 for tool in context.setup.tools.values()), default=0.0)
    radius = np.zeros(before)
    turned = np.flatnonzero(m.sweep[:before] != 0)
    radius[turned] = 2 * np.abs(_radius(m, turned))
    radius += widest
    with np.errstate(invalid="ignore"):
        inside = (
            (np.fmax(m.x0[:before], m.x1[:before]) + radius >= window[0])
            & (np.fmin(m.x0[:before], m.x1[:before]) - radius <= window[1])
            & (np.fmax(m.y0[:before], m.y1[:before]) + radius >= window[2])
            & (np.fmin(m.y0[:before], m.y1[:before]) - radius <= window[3])
            & ((np.fmin(m.z0[:before], m.z1[:before]) < top) | ((m.plane[:before] != 17) & (m.sweep[:before] != 0)))
        )
    rows = np.flatnonzero(inside)[-MOST_MOVES:]
    if share > 0:
        m, rows = _cut_off(m, before, share), np.append(rows, before)
    columns = {
        field.name: getattr(m, field.name)[rows]
        for field in fields(Motion)
        if isinstance(getattr(m, field.name), np.ndarray) and not field.name.startswith("event_")
    }
    return replace(m, **columns, assumed=(), beside=None, followed=None)


def _radius(m: Motion, rows: Longs) -> Floats:
    first, second, _ = starts_in_plane(m, rows)
    radius: Floats = np.hypot(first - m.cu[rows], second - m.cv[rows])
    return radius


def _cut_off(m: Motion, row: int, share: float) -> Motion:
    """The same motion with one move that ends at a share of its way."""
    x, y, z = point_at(m, row, share)
    columns = {}
    for name, value in (("x1", x), ("y1", y), ("z1", z), ("sweep", float(m.sweep[row]) * share)):
        columns[name] = getattr(m, name).copy()
        columns[name][row] = value
    return replace(m, **columns)


def way(context: Context, row: int, steps: int) -> list[Point]:
    """Points of the tip along a move. A rapid goes as the controller's card says: straight, or each axis by itself."""
    m = context.motion
    if m.kind[row] != RAPID or context.setup.controller.rapids != "each-axis":
        return [point_at(m, row, step / steps) for step in range(steps + 1)]
    start, end = point_at(m, row, 0.0), point_at(m, row, 1.0)
    rates = context.setup.machine.rapid
    speed = [(getattr(rates, axis) if rates is not None else None) or 1.0 for axis in "xyz"]
    needs = [abs(b - a) / v for a, b, v in zip(start, end, speed)]
    longest = max(needs)
    if not 0 < longest < math.inf:
        return [start, end]
    at = sorted({0.0, 1.0, *(n / longest for n in needs), *(step / steps for step in range(steps))})
    made = []
    for share in at:
        x, y, z = (a + (b - a) * min(1.0, share * longest / n if n else 1.0) for a, b, n in zip(start, end, needs))
        made.append((x, y, z))
    return made


def heading(m: Motion, row: int, share: float) -> tuple[float, float] | None:
    """Direction of the move in X and Y there, of length 1; None where it only goes up or down."""
    a, b = point_at(m, row, max(0.0, share - 0.01)), point_at(m, row, min(1.0, share + 0.01))
    dx, dy = b[0] - a[0], b[1] - a[1]
    length = math.hypot(dx, dy)
    return (dx / length, dy / length) if length > 1e-6 else None
