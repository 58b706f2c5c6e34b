"""The cut through the tool across its feed: flutes, shank and nut beside what stands around them."""

from __future__ import annotations

import math

import numpy as np

from gclint.facts.context import Context
from gclint.motion.along import point_at
from gclint.stock.profile import Profile, profile
from gclint.tables.setup import Tool
from gclint.teach.canvas import WIDTH, Canvas, Drawing
from gclint.teach.ground import ground, heading
from gclint.teach.scale import Scale
from gclint.teach.side import SOLID, TABLE, TAKEN, Heights

ROWS = 18
NUT_RADIUS = 8.0  # mm, drawn where the stickout is declared
FLUTES, SHANK, NUT = "/", "|", "N"


def section_view(context: Context, piece: int, scale: Scale) -> Drawing | None:
    """What a piece of path looks like along its feed: to the right is right of the way."""
    pieces, m = context.engagement.pieces, context.motion
    move = int(pieces.move[piece])
    share = 0.5 * (float(pieces.start[piece]) + float(pieces.end[piece]))
    tool = context.tool(int(m.tool[move]))
    shape = profile(tool) if tool is not None else None
    if tool is None or not isinstance(shape, Profile):
        return None
    way = heading(m, move, share) or (1.0, 0.0)
    x, y, z = point_at(m, move, share)
    reach = max(2.2 * shape.radius, 1.3 * shape.shank_radius if math.isfinite(shape.shank_radius) else 0.0)
    before = ground(context, move, (x - reach, x + reach, y - reach, y + reach), share)
    if before is None:
        return None
    across = np.linspace(-reach, reach, WIDTH)
    stands = before.height(x + across * way[1], y - across * way[0])
    of_z = Heights(*_heights(z, before.top, before.box.bottom, tool), ROWS)
    canvas = Canvas(WIDTH, ROWS)
    bottom = before.box.bottom
    for column in range(WIDTH):
        inside = abs(float(across[column]))
        floor = z + _above(shape, inside)
        for row in range(ROWS):
            at = of_z.middle(row)
            sign = SOLID if at <= stands[column] else " "
            if sign == SOLID and at > floor:
                sign = TAKEN
            if bottom is not None and at < bottom:
                sign = TABLE
            drawn = _tool_at(tool, shape, inside, at - z)
            canvas.put(column, row, sign if drawn == " " or (sign == TAKEN and drawn == FLUTES) else drawn)
    named = {int(of_z.row(height)): height for height in scale.ticks(of_z.low, of_z.high, 4)}
    lines = tuple(f"{scale.mark(named.get(row)):>9} {line}".rstrip() for row, line in enumerate(canvas.lines))
    flutes = f", {scale.length(tool.flute_length)} long" if tool.flute_length else ""
    legend = [
        (SOLID, "material that stays"), (TAKEN, "material that is taken away here"),
        (FLUTES, f"the tool's cutting edges{flutes}, out of the material"),
        (SHANK, "its shank"), (NUT, "the nut"), (TABLE, "the table or spoilboard"),
    ]
    each = f"a column is {scale.length(2 * reach / WIDTH)}, a row {scale.length(of_z.height)}"
    return Drawing(
        "A cut across the way, seen along the feed", lines,
        tuple((sign, means) for sign, means in legend if sign in canvas.used), each,
    )


def _above(shape: Profile, radius: float) -> float:
    """Height of the tool's outline over its tip at a radius, mm; infinite outside it."""
    if radius > shape.radius:
        return math.inf
    if radius <= shape.flat:
        return 0.0
    if shape.torus > 0 and radius <= shape.join_r:
        off = radius - shape.flat
        return shape.torus - math.sqrt(max(0.0, shape.torus**2 - off**2))
    return shape.join_z + shape.cone * max(0.0, radius - shape.join_r)


def _tool_at(tool: Tool, shape: Profile, radius: float, height: float) -> str:
    if tool.stickout is not None and height >= tool.stickout and radius <= max(NUT_RADIUS, shape.radius):
        return NUT
    flutes = tool.flute_length if tool.flute_length is not None else math.inf
    if height <= flutes:
        return FLUTES if height >= _above(shape, radius) else " "
    shank = shape.shank_radius if math.isfinite(shape.shank_radius) else shape.radius
    return SHANK if radius <= shank else " "


def _heights(z: float, top: float, bottom: float | None, tool: Tool) -> tuple[float, float]:
    deep = max(top - z, 0.3)
    high = top + 0.5 * deep
    for above in (tool.flute_length, tool.stickout):
        if above is not None and z + above < top + 1.5 * deep:
            high = max(high, z + above + 0.3 * deep)
    low = z - 0.35 * deep
    if bottom is not None and bottom > z - 0.8 * deep:
        low = min(low, bottom - 0.2 * deep)
    return low, high
