"""The stock as it is left, as few enough heights to be drawn."""

from __future__ import annotations

from typing import Any

import numpy as np

from gclint.digest.packed_columns import Columns
from gclint.run import Tables
from gclint.tables.field import fewer

MOST_CELLS = 260  # along one side


def field_of(tables: Tables, columns: Columns) -> dict[str, Any] | None:
    """The blank and the depth of its surface below the top, mm, the row of the lowest Y first; None without a blank."""
    engagement = tables.engagement
    box = engagement.box
    if box is None or box.x is None or box.y is None or box.top is None:
        return None
    cut = fewer(engagement.surface, MOST_CELLS)
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
        start = engagement.surface_at_start
        if start is not None:
            start = fewer(start, MOST_CELLS)
            start = start if thick is None else np.minimum(start, thick)
            told["start"] = columns.add(start.ravel(), 1000.0, delta=True)
    return told
