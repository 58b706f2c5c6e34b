"""Gives the facts that tool-changed-in-cut alone looks at."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from gclint.facts.context import Context, once
from gclint.facts.fact import number, of_rows, table_of
from gclint.tables.motion import EVENT


class Changed(NamedTuple):
    line: int
    move: int
    depth: float
    tool: int


@once
def changed_low(context: Context) -> list[Changed]:
    """Each tool change that comes while the tip is known to stand below the blank's top, over the blank, mm."""
    m, box = context.motion, context.box
    made: list[Changed] = []
    if box is None or box.top is None:
        return made
    for row in np.flatnonzero(m.event_kind == EVENT["change"]).tolist():
        move = int(m.event_move[row]) - 1
        if move < 0 or not np.isfinite(m.z1[move]) or not context.placed[move]:
            continue
        depth = box.top - float(m.z1[move])
        inside = all(
            span is None or span[0] < float(at) < span[1]
            for at, span in ((m.x1[move], box.x), (m.y1[move], box.y))
        )  # fmt: skip
        if depth > 0 and inside:
            made.append(Changed(int(m.event_line[row]), move, depth, int(m.event_value[row])))
    return made


CHANGED = table_of(
    changed_low,
    "changes_in_cut",
    "tool changes while the tip stands below the top of the blank",
    {
        "line": number("", "line of the change", of_rows(changed_low, "line")),
        "depth": number("mm", "how far the tip stands below the top", of_rows(changed_low, "depth")),
        "next_tool": number("", "number of the tool that is called", of_rows(changed_low, "tool")),
    },
)

TABLES = (CHANGED,)
