"""The side view: Z against the way of the tip, with what stands there before and after the moves."""

from __future__ import annotations

import math

import numpy as np

from gclint.columns import Floats
from gclint.facts.context import Context
from gclint.stock.profile import Profile, profile
from gclint.tables.motion import RAPID
from gclint.tables.setup import KeepOut, Tool
from gclint.teach.canvas import WIDTH, Canvas, Drawing
from gclint.teach.ground import Ground, Point, ground, heading, way
from gclint.teach.scale import Scale

ROWS = 15
SAMPLES = 400
MOST_DRAWN = 2000  # moves
_Range = tuple[float, float]
SOLID, TAKEN, TABLE, CLAMP = "#", ":", "=", "%"
FEED, FAST = "*", "+"


def side_view(context: Context, first: int, last: int, scale: Scale) -> Drawing | None:
    """The moves `first` to `last` unrolled: distance to the right, Z upward. None where their place is not known."""
    made = _way(context, first, min(last, first + MOST_DRAWN))
    if made is None:
        return None
    tool = context.tool(int(context.motion.tool[first]))
    shape = profile(tool) if tool is not None else None
    outer = shape if isinstance(shape, Profile) else None
    radius = tool.diameter / 2 if tool is not None else 1.0
    along, x, y, z, fast = made
    s, xs, ys, shift = _axis(context, first, last, along, x, y, max(radius, 0.02 * float(along[-1])), radius)
    margin = 2 * radius
    window = (float(xs.min()) - margin, float(xs.max()) + margin, float(ys.min()) - margin, float(ys.max()) + margin)
    before = ground(context, first, window)
    after = ground(context, last + 1, window)
    stands = before.height(xs, ys) if before else np.full(len(xs), -np.inf)
    left = after.height(xs, ys) if after else stands
    low, high = _heights(context, xs, ys, z, stands, before)
    canvas = Canvas(WIDTH, ROWS)
    span = float(s[-1] - s[0])
    of_z = Heights(low, high, ROWS)
    for column in range(WIDTH):
        at = min(int((column + 0.5) / WIDTH * len(s)), len(s) - 1)
        for row in range(ROWS):
            canvas.put(column, row, _matter(of_z.middle(row), float(stands[at]), float(left[at]), before, of_z.height))
        for box in context.setup.keep_out:
            _clamp(canvas, column, box, float(xs[at]), float(ys[at]), of_z)

    def place(distance: float, height: float) -> tuple[float, float]:
        return (distance - float(s[0])) / span * (WIDTH - 1), of_z.row(height)

    if outer is not None:
        _tool(canvas, outer, place(float(along[-1]) + shift, float(z[-1])), span / WIDTH, of_z)
    for i in range(len(along) - 1):
        canvas.line(
            place(float(along[i]) + shift, float(z[i])), place(float(along[i + 1]) + shift, float(z[i + 1])),
            FAST if fast[i] else FEED,
        )
    return _finished(canvas, of_z, span, scale, tool)


class Heights:
    """Rows of a picture from `high` down to `low`."""

    def __init__(self, low: float, high: float, rows: int) -> None:
        self.low, self.high, self.rows = low, high, rows
        self.height = (high - low) / rows

    def middle(self, row: int) -> float:
        return self.high - (row + 0.5) * self.height

    def row(self, z: float) -> float:
        """The row in whose height a Z lies; one that lies above the picture is on its first row."""
        return max(0.0, min(self.rows - 1.0, math.floor((self.high - z) / self.height + 1e-9)))


def _way(context: Context, first: int, last: int) -> tuple[Floats, Floats, Floats, Floats, list[bool]] | None:
    """Distance in X and Y, X, Y, Z at points along the moves, and for each step whether it is a rapid."""
    m = context.motion
    each = max(2, SAMPLES // (last - first + 1))
    points: list[Point] = []
    fast: list[bool] = []
    for row in range(first, last + 1):
        steps = each if m.sweep[row] else 2 if last - first > 20 else max(2, each // 4)
        own = way(context, row, steps)[0 if row == first else 1 :]
        points += own
        fast += [bool(m.kind[row] == RAPID)] * len(own)
    x, y, z = (np.array(axis) for axis in zip(*points))
    if not np.isfinite(z).any():
        return None
    if not (np.isfinite(x).all() and np.isfinite(y).all() and np.isfinite(z).all()):
        known = np.isfinite(x) & np.isfinite(y)
        if not known.any() or not np.isfinite(z[-1]):
            return None
        x, y = np.where(known, x, x[known][0]), np.where(known, y, y[known][0])
        box = context.engagement.box
        above = (box.top if box is not None and box.top is not None else 0.0) + 5.0
        z = np.where(np.isfinite(z), z, max(above, float(z[np.isfinite(z)].max())))
    along = np.concatenate(([0.0], np.cumsum(np.hypot(np.diff(x), np.diff(y)))))
    return along, x, y, z, fast[1:] + fast[-1:]


def _axis(
    context: Context, first: int, last: int, along: Floats, x: Floats, y: Floats, margin: float, radius: float
) -> tuple[Floats, Floats, Floats, float]:
    """Distances of the picture with their X and Y, and what is added to a distance along the way."""
    length = float(along[-1])
    count = 4 * WIDTH
    if length < 0.25 * radius:  # straight down: a cut through the place, along the way that goes on
        dx, dy = _onward(context, first, last)
        s = np.linspace(-3.2 * radius, 3.2 * radius, count)
        return s, x[-1] + s * dx, y[-1] + s * dy, -length
    s = np.linspace(-1.6 * margin, length + 1.6 * margin, count)
    inner = np.clip(s, 0.0, length)
    steps = np.concatenate(([True], np.diff(along) > 1e-9))
    xs, ys = np.interp(inner, along[steps], x[steps]), np.interp(inner, along[steps], y[steps])
    start, end = heading(context.motion, first, 0.0), heading(context.motion, last, 1.0)
    start, end = start or end or (1.0, 0.0), end or start or (1.0, 0.0)
    over, under = np.maximum(s - length, 0.0), np.minimum(s, 0.0)
    return s, xs + over * end[0] + under * start[0], ys + over * end[1] + under * start[1], 0.0


def _onward(context: Context, first: int, last: int) -> tuple[float, float]:
    """Direction of the next move that goes sideways, else of the last one before."""
    for row in (*range(last + 1, min(last + 20, len(context.motion))), *range(first - 1, max(first - 20, -1), -1)):
        way = heading(context.motion, row, 0.5)
        if way is not None:
            return way
    return 1.0, 0.0


def _heights(context: Context, xs: Floats, ys: Floats, z: Floats, stands: Floats, before: Ground | None) -> _Range:
    """Lowest and highest Z of the picture: the way's lower part, the blank's top, clamps on the way."""
    low, ends = float(z.min()), float(z.max())
    solid = bool(np.isfinite(stands).any())
    tops = [before.top] if before is not None and solid else []
    for box in context.setup.keep_out:
        met = (xs >= box.low[0]) & (xs <= box.high[0]) & (ys >= box.low[1]) & (ys <= box.high[1])
        tops += [box.high[2]] if met.any() else []
    top = max(tops, default=ends)
    deep = max(abs(top - low), abs(min(tops, default=top) - low), 0.5)
    low = min([low, *tops])
    high = max(top + 0.7 * deep, low + 0.5 * deep, min(ends + 0.1 * deep, top + 1.2 * deep + 1.0))
    bottom = before.box.bottom if before is not None and solid else None
    low -= 0.35 * deep
    if bottom is not None and bottom > low - 0.6 * deep:
        low = min(low, bottom - 0.25 * deep)
    return low, high


def _matter(z: float, stands: float, left: float, before: Ground | None, height: float) -> str:
    bottom = before.box.bottom if before is not None else None
    if bottom is not None and z < bottom:
        return TABLE if z > bottom - 3 * height else " "
    if z > stands:
        return " "
    return SOLID if z <= left else TAKEN


def _clamp(canvas: Canvas, column: int, box: KeepOut, x: float, y: float, of_z: Heights) -> None:
    if box.low[0] <= x <= box.high[0] and box.low[1] <= y <= box.high[1]:
        for row in range(of_z.rows):
            if box.low[2] <= of_z.middle(row) <= box.high[2]:
                canvas.put(column, row, CLAMP)


def _tool(canvas: Canvas, shape: Profile, tip: tuple[float, float], per_column: float, of_z: Heights) -> None:
    """The tool's outline with its tip at a (column, row)."""
    bottom = int(tip[1])
    for row in range(bottom, -1, -1):
        half = shape.radius_at((bottom - row + 0.5) * of_z.height) / per_column
        left, right = round(tip[0] - half), round(tip[0] + half)
        if right - left < 2:
            canvas.put(round(tip[0]), row, "|")
            continue
        if row == bottom:
            canvas.put(left + 1, row, "_" * (right - left - 1))
        canvas.put(left, row, "|" if half * per_column >= shape.radius - 1e-6 or shape.cone == 0 else "\\")
        canvas.put(right, row, "|" if half * per_column >= shape.radius - 1e-6 or shape.cone == 0 else "/")


def _finished(canvas: Canvas, of_z: Heights, span: float, scale: Scale, tool: Tool | None) -> Drawing:
    named = {int(of_z.row(z)): z for z in scale.ticks(of_z.low, of_z.high, 4)}
    lines = [f"{scale.mark(named.get(row)):>9} {line}".rstrip() for row, line in enumerate(canvas.lines)]
    legend = [
        (SOLID, "material that stays"), (TAKEN, "material that is taken away here"),
        (TABLE, "the table or spoilboard"), (CLAMP, "a declared keep-out"),
        (FEED, "way of the tip at feed"), (FAST, "way of the tip as a rapid"),
    ]
    if tool is not None:
        legend.append(("|_|", "the tool at the end of it"))
    each = f"a column is {scale.length(span / WIDTH)} of way, a row {scale.length(of_z.height)} of height"
    return Drawing(
        "From the side: height Z against the way of the tip", tuple(lines),
        tuple((sign, means) for sign, means in legend if sign[0] in canvas.used), each,
    )
