"""The whole job from above: the blank, keep-outs, the way of the tool, and the place in it."""

from __future__ import annotations

import math
from itertools import pairwise

import numpy as np

from gclint.facts.context import Context
from gclint.tables.motion import RAPID
from gclint.teach.canvas import WIDTH, Canvas, Drawing
from gclint.teach.ground import way
from gclint.teach.scale import Scale

ROWS = 20
MOST_MOVES = 4000
EDGE, CUT, FAST, HERE, CLAMP, ZERO = "B", ".", "-", "*", "%", "0"


def plan_view(context: Context, first: int, last: int, scale: Scale) -> Drawing | None:
    """Equal scale both ways; the moves `first` to `last` stand out. None where no place is known."""
    m, box = context.motion, context.box
    known = np.isfinite(m.x0) & np.isfinite(m.y0) & np.isfinite(m.x1) & np.isfinite(m.y1)
    rows = np.flatnonzero(context.placed & known)
    if not len(rows):
        return None
    xs, ys = [m.x0[rows], m.x1[rows]], [m.y0[rows], m.y1[rows]]
    ends = [float(v) for pair in (xs, ys) for v in (min(a.min() for a in pair), max(a.max() for a in pair))]
    if box is not None and box.x is not None and box.y is not None:
        ends = [min(ends[0], box.x[0]), max(ends[1], box.x[1]), min(ends[2], box.y[0]), max(ends[3], box.y[1])]
    for clamp in context.setup.keep_out:
        ends = [
            min(ends[0], clamp.low[0]), max(ends[1], clamp.high[0]),
            min(ends[2], clamp.low[1]), max(ends[3], clamp.high[1]),
        ]
    wide, high = max(ends[1] - ends[0], 0.1), max(ends[3] - ends[2], 0.1)
    per_column = max(wide / (WIDTH - 4), high / (2 * (ROWS - 2)))
    columns, lines = math.ceil(wide / per_column) + 3, math.ceil(high / (2 * per_column)) + 3
    canvas = Canvas(min(columns, WIDTH), min(lines, ROWS))

    def at(x: float, y: float) -> tuple[float, float]:
        return 1 + (x - ends[0]) / per_column, 1 + (ends[3] - y) / (2 * per_column)

    if box is not None and box.x is not None and box.y is not None:
        (left, right), (front, rear) = box.x, box.y
        corners = [at(x, y) for x, y in ((left, front), (right, front), (right, rear), (left, rear))]
        for a, b in zip(corners, [*corners[1:], corners[0]]):
            canvas.line(a, b, EDGE)
    for clamp in context.setup.keep_out:
        first_column, top = at(clamp.low[0], clamp.high[1])
        last_column, bottom = at(clamp.high[0], clamp.low[1])
        for row in range(round(top), round(bottom) + 1):
            canvas.put(round(first_column), row, CLAMP * (round(last_column) - round(first_column) + 1))
    step = -(-len(rows) // MOST_MOVES)
    drawn = [(int(row), FAST if m.kind[row] == RAPID else CUT) for row in rows[::step]]
    here = rows[(rows >= first) & (rows <= last)][:MOST_MOVES]
    drawn += [(int(row), HERE) for row in here]
    for row, sign in drawn:
        turns = 24 if m.sweep[row] else 1
        points = way(context, row, turns)
        for one, other in pairwise(points):
            canvas.line(at(one[0], one[1]), at(other[0], other[1]), sign)
    zero = at(0.0, 0.0)
    canvas.put(round(zero[0]), round(zero[1]), ZERO)
    clamps = ", ".join(f'"{clamp.name}"' for clamp in context.setup.keep_out)
    legend = [
        (EDGE, "edge of the blank"), (CUT, "way of the tool at feed"), (FAST, "rapids"),
        (HERE, "the moves this is about"), (CLAMP, f"keep-out {clamps}"), (ZERO, "work zero"),
    ]
    return Drawing(
        "The whole job from above: X to the right, Y upward", canvas.lines,
        tuple((sign, means) for sign, means in legend if sign in canvas.used),
        f"a column is {scale.length(per_column)}, a row {scale.length(2 * per_column)}",
    )
