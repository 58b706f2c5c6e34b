"""The bite from above: the tool's circle, the material that is still uncut, and the part of the rim that is in it."""

from __future__ import annotations

import math

import numpy as np

from gclint.columns import Floats
from gclint.facts.context import Context
from gclint.motion.along import point_at
from gclint.teach.canvas import Canvas, Drawing
from gclint.teach.ground import ground, heading
from gclint.teach.scale import Scale

ACROSS = 15  # columns of half the tool
ROWS = 21
UNCUT, FLOOR, RIM, BITING = "#", ".", "o", "@"
CLEAR = 0.02  # mm of height that counts as material


def bite_view(context: Context, piece: int, scale: Scale) -> Drawing | None:
    """A piece of path from above, turned so that the feed goes to the right. None where it only goes down."""
    pieces, m = context.engagement.pieces, context.motion
    move = int(pieces.move[piece])
    share = 0.5 * (float(pieces.start[piece]) + float(pieces.end[piece]))
    way, tool = heading(m, move, share), context.tool(int(m.tool[move]))
    if way is None or tool is None:
        return None
    x, y, z = point_at(m, move, share)
    cutting = float(context.cutting.loads.effective_diameter[piece])
    radius = cutting / 2 if math.isfinite(cutting) and cutting > 0 else tool.diameter / 2
    reach = 1.9 * radius
    before = ground(context, move, (x - 2 * reach, x + 2 * reach, y - 2 * reach, y + 2 * reach), share)
    if before is None:
        return None
    per_column = radius / ACROSS
    columns = 2 * int(2.05 * ACROSS) + 1
    canvas = Canvas(columns, ROWS)
    middle, centre = columns // 2, ROWS // 2

    def heights(ahead: Floats, right: Floats) -> Floats:
        return before.height(x + ahead * way[0] + right * way[1], y + ahead * way[1] - right * way[0])

    ahead: Floats = (np.arange(columns, dtype=np.float64) - middle) * per_column
    for row in range(ROWS):
        right = np.full(columns, (row - centre) * 2 * per_column)
        for column, height in enumerate(heights(ahead, right).tolist()):
            if height > z + CLEAR:
                canvas.put(column, row, UNCUT)
            elif math.isfinite(height):
                canvas.put(column, row, FLOOR)
    for row in range(ROWS):
        for column in range(columns):
            if math.hypot(ahead[column], (row - centre) * 2 * per_column) < radius * 0.97:
                canvas.put(column, row, " ")
    turn = np.radians(np.arange(0, 360, 3))
    rim = heights(1.03 * radius * np.cos(turn), 1.03 * radius * np.sin(turn))
    for angle, height in zip(turn.tolist(), rim.tolist()):
        biting = height > z + CLEAR and math.cos(angle) > -0.05
        column = round(middle + math.cos(angle) * ACROSS)
        row = round(centre + math.sin(angle) * ACROSS / 2)
        if biting or canvas.at(column, row) != BITING:
            canvas.put(column, row, BITING if biting else RIM)
    canvas.put(middle - 1, centre, "+ --->")
    turned = "anticlockwise" if int(m.spindle[move]) == -1 else "clockwise"
    towards = _towards(way)
    at = f"X {scale.place(x)}, Y {scale.place(y)}, Z {scale.place(z)}"
    legend = [
        (UNCUT, "material higher than the tip"), (FLOOR, "cut already, down to the tip or lower"),
        (BITING, "the part of the rim that bites"),
        (RIM, f"the rest of the rim, {scale.length(2 * radius)} across; it turns {turned}"),
        ("+ --->", f"the tool's middle ({at}) and the feed, {towards}"),
    ]
    return Drawing(
        "From above, turned so that the feed goes to the right", canvas.lines,
        tuple((sign, means) for sign, means in legend if sign[0] in canvas.used),
        f"a column is {scale.length(per_column)}, a row {scale.length(2 * per_column)}",
    )


def _towards(way: tuple[float, float]) -> str:
    """'towards X+ and Y-' of a direction."""
    parts = [f"{axis}{'+' if part > 0 else '-'}" for axis, part in zip("XY", way) if abs(part) > 0.1]
    return f"really towards {' and '.join(parts)}"
