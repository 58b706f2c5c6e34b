"""Facts about dwells: whether the tool stands and turns in material meanwhile."""

from __future__ import annotations

import numpy as np

from gclint.columns import Bools, Floats
from gclint.facts.context import Context, once
from gclint.knowledge.numbers import model_number
from gclint.tables.motion import RAPID


@once
def cuts_to_end(context: Context) -> Bools:
    """[moves] whether a move at feed cuts up to its end, so that the edge stays on what it has just cut."""
    pieces, m = context.engagement.pieces, context.motion
    ends = np.zeros(len(m), bool)
    ends[pieces.move[(pieces.end > model_number("to_the_end")) & (pieces.removed > 0)]] = True
    ends &= m.kind != RAPID
    return ends


@once
def depth_at_end(context: Context) -> Floats:
    """[moves] depth of the tip below the stock's top at the end of each move, mm; 0 above it or where unknown."""
    box = context.engagement.box
    top = box.top if box is not None and box.top is not None else np.nan
    return np.nan_to_num(np.maximum(0.0, top - context.motion.z1))
