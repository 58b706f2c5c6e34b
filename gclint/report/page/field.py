"""The stock as it is left, as few enough heights to be drawn."""

from __future__ import annotations

from typing import Any

import numpy as np

from gclint.columns import Floats32
from gclint.report.page.pack import Columns
from gclint.report.tables import Tables

MOST_CELLS = 260  # along one side


def field_of(tables: Tables, columns: Columns) -> dict[str, Any] | None:
    """The blank and the depth of its surface below the top, mm, the row of the lowest Y first; None without a blank."""
    engagement = tables.engagement
    box = engagement.box
    if box is None or box.x is None or box.y is None or box.top is None:
        return None
    cut = _fewer(engagement.surface)
    thick = box.top - box.bottom if box.bottom is not None else None
    deepest = float(cut.max()) if cut.size else 0.0
    told: dict[str, Any] = {
        "x": box.x, "y": box.y, "top": box.top, "thick": thick, "declared": box.declared, "placed": box.placed,
        "deepest": deepest,
    }  # fmt: skip
    if cut.size > 1:
        if thick is not None:
            cut = np.minimum(cut, thick)
        told |= {"nx": cut.shape[1], "ny": cut.shape[0], "cut": columns.add(cut.ravel(), 1000.0, delta=True)}
        start = fewer(engagement.surface_at_start)
        if start is not None and start.shape == cut.shape:
            start = start if thick is None else np.minimum(start, thick)
            told["start"] = columns.add(start.ravel(), 1000.0, delta=True)
    return told


def fewer(cut: Floats32 | None, most: int = MOST_CELLS) -> Floats32 | None:
    """At most so many cells along a side: the deepest of those that become one, so that no groove is lost."""
    return None if cut is None else _fewer(cut, most)


def _fewer(cut: Floats32, most: int = MOST_CELLS) -> Floats32:
    step = max(1, -(-max(cut.shape) // most))
    if step == 1:
        return cut
    rows, cols = np.arange(0, cut.shape[0], step), np.arange(0, cut.shape[1], step)
    return np.asarray(np.maximum.reduceat(np.maximum.reduceat(cut, rows, axis=0), cols, axis=1))
