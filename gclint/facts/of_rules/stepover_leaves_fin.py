"""Gives the facts that stepover-leaves-fin alone looks at."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from gclint.facts.context import Context, once
from gclint.facts.fact import number, of_rows, table_of
from gclint.facts.finished import surface
from gclint.knowledge.numbers import model_number
from gclint.tables.motion import LINE


class Fin(NamedTuple):
    line: int
    move: int
    step: float
    width: float
    height: float


@once
def fins(context: Context) -> list[Fin]:
    """Where two rows beside each other in one run at feed lie farther apart than the tool is wide, by less than a
    quarter of it, so that a fin of material stands between them at the end; mm.

    Rows: level straight moves in opposite directions, joined by one straight step square to both, each at least two
    diameters long. Where three steps or more are like that, the rows are meant as grooves, and none is told.
    """
    m, box = context.motion, context.box
    if box is None or box.top is None or len(m) < 3:
        return []
    x, y = m.x1 - m.x0, m.y1 - m.y0
    long = np.hypot(x, y)
    level = (m.kind == LINE) & (np.abs(m.z1 - m.z0) < 1e-6) & context.placed
    a, b, c = slice(0, -2), slice(1, -1), slice(2, None)
    with np.errstate(invalid="ignore", divide="ignore"):
        square = np.abs(x[a] * x[b] + y[a] * y[b]) < 1e-3 * long[a] * long[b]
        turns = x[a] * x[c] + y[a] * y[c] < -0.999 * long[a] * long[c]
    rows = np.flatnonzero(level[a] & level[b] & level[c] & square & turns & (m.tool[a] == m.tool[c])) + 1
    made: list[Fin] = []
    for row in rows.tolist():
        tool = context.tool(int(m.tool[row]))
        if tool is None or tool.shape not in ("flat", "bull-nose", "facing"):
            continue
        width = float(long[row]) - tool.diameter
        least = model_number("fin_rows") * tool.diameter
        if not 0.05 < width < model_number("fin_widest") * tool.diameter or min(long[row - 1], long[row + 1]) < least:
            continue
        height = _stands_between(context, row)
        if height > 0.1:
            made.append(Fin(int(m.line[row]), row, float(long[row]), width, height))
    return made if len(made) < 3 else []


def _stands_between(context: Context, row: int) -> float:
    """How high material stands at the end in the middle between the rows before and after a step, mm."""
    m = context.motion
    x = (m.x0[row] + m.x1[row]) / 2 - (m.x1[row - 1] - m.x0[row - 1]) * np.array([0.3, 0.5, 0.7])
    y = (m.y0[row] + m.y1[row]) / 2 - (m.y1[row - 1] - m.y0[row - 1]) * np.array([0.3, 0.5, 0.7])
    return float(surface(context, x, y).max()) - float(m.z1[row])


FINS = table_of(
    fins,
    "fins",
    "steps between two rows of one run at feed that are wider than the tool, so that a fin stands between them",
    {
        "line": number("", "line of the step", of_rows(fins, "line")),
        "step": number("mm", "how far the rows lie apart", of_rows(fins, "step")),
        "width": number("mm", "how wide the fin is", of_rows(fins, "width")),
        "height": number("mm", "how high it stands at the end", of_rows(fins, "height")),
    },
)

TABLES = (FINS,)
