"""Facts about how far down a tool reaches: whether the nut that holds it meets the material beside it."""

from __future__ import annotations

from typing import Any

import numpy as np

from gclint.columns import Column
from gclint.facts.context import Context, once
from gclint.facts.finished import highest_within
from gclint.knowledge.numbers import model_number
from gclint.motion.along import point_at

MOST_LOOKED = 2000  # pieces looked at, the deepest first


def shank_contact(context: Context) -> Any:
    """[pieces] mm of wall that the shank meets above the flutes.

    NaN where the flutes' length is not declared and the tool goes deeper than the shortest flutes are long.
    """
    pieces = context.engagement.pieces
    contact = pieces.shank.astype(np.float64)
    number: Column = context.motion.tool[pieces.move]
    shortest = model_number("shortest_flutes")
    for tool in context.tools:
        declared = context.tool(tool)
        if declared is None or declared.flute_length is None:
            diameter = declared.diameter if declared else 0.0
            contact[(number == tool) & (pieces.depth > shortest * diameter)] = np.nan
    return contact


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
