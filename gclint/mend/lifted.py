"""Where the tip stands when a line begins."""

from __future__ import annotations

import math

import numpy as np

from gclint.mend.case import Case


def row_before(case: Case, line: int) -> int:
    """The last move before a line's own first move or event; -1 where none has been made."""
    m = case.motion
    own = np.flatnonzero(m.line >= line)
    if len(own):
        return int(own[0]) - 1
    return len(m) - 1


def position_at(case: Case, line: int) -> tuple[float, float, float]:
    """Where the tip stands when a line begins, mm; NaN where that is not known."""
    row = row_before(case, line)
    if row < 0:
        return math.nan, math.nan, math.nan
    m = case.motion
    return float(m.x1[row]), float(m.y1[row]), float(m.z1[row])


def top_of_blank(case: Case) -> float:
    box = case.tables.engagement.box
    return box.top if box is not None and box.top is not None else 0.0


def lifted_at(case: Case, line: int, by: float = 0.5) -> bool:
    """Whether the tip is known to stand above the blank (by so many mm) when a line begins."""
    return position_at(case, line)[2] >= top_of_blank(case) + by
