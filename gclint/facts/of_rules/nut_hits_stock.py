"""Gives the facts that nut-hits-stock alone looks at."""

from __future__ import annotations

from typing import Any

import numpy as np

from gclint.columns import Column
from gclint.facts.context import Context, once
from gclint.facts.fact import Fact, number
from gclint.knowledge.numbers import model_number
from gclint.motion.along import point_at
from gclint.stock.assume import outline


def highest_within(context: Context, x: float, y: float, radius: float) -> float:
    """Z of the highest point of the finished surface within `radius` of a point, mm; -inf where there is none."""
    box, cut, cell = context.engagement.box, context.engagement.surface, context.engagement.cell
    if box is None or box.top is None or cell <= 0 or not cut.size:
        return -np.inf
    x_low, _, y_low, _ = outline(box)
    rows, columns = (
        np.arange(max(0, int((at - radius) / cell)), min(size, int((at + radius) / cell) + 1))
        for at, size in ((y - y_low, cut.shape[0]), (x - x_low, cut.shape[1]))
    )
    if not len(rows) or not len(columns):
        return -np.inf
    window = cut[rows[0] : rows[-1] + 1, columns[0] : columns[-1] + 1]
    dx = x_low + (columns + 0.5) * cell - x
    dy = y_low + (rows + 0.5) * cell - y
    near = dx[None, :] ** 2 + dy[:, None] ** 2 <= radius * radius
    least = float(window[near].min()) if near.any() else np.inf
    z = box.top - least
    return -np.inf if box.bottom is not None and z <= box.bottom else z


MOST_LOOKED = 2000  # pieces looked at, the deepest first


@once
def nut_contact(context: Context) -> Any:
    """[pieces] mm by which the nut stands below material that is left beside the tool; 0 where it does not.

    NaN where the stickout is not declared and the tool goes deeper than its flutes (else the nut is far enough away).
    Of the nut only as much is taken as the smallest has; its own size is not declared.
    """
    pieces, box = context.engagement.pieces, context.engagement.box
    contact = np.zeros(len(pieces))
    if not len(pieces) or box is None or box.top is None:
        return contact
    number: Column = context.motion.tool[pieces.move]
    radius = model_number("nut_radius")
    for tool in context.tools:
        declared = context.tool(tool)
        if declared is None:
            continue
        mine = number == tool
        if declared.stickout is None:
            flutes = declared.flute_length
            contact[mine & (pieces.depth > (flutes if flutes is not None else np.inf))] = np.nan
            continue
        rows = np.flatnonzero(mine & (pieces.depth > declared.stickout))
        for row in rows[np.argsort(-pieces.depth[rows], kind="stable")][:MOST_LOOKED].tolist():
            x, y, _ = point_at(context.motion, int(pieces.move[row]), float(pieces.end[row]))
            nut = box.top - float(pieces.depth[row]) + declared.stickout
            contact[row] = max(0.0, highest_within(context, x, y, radius) - nut)
    return contact


FACTS: dict[str, dict[str, Fact]] = {
    "pieces": {
        "nut_contact": number("mm", "how far the spindle's nut stands below the material beside the tool; 0 if it does "
                              "not", nut_contact, "`stickout` of the tool in shop.toml"),
    },
}  # fmt: skip
