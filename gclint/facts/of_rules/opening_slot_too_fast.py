"""Gives the facts that opening-slot-too-fast alone looks at."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from gclint.columns import Bools, Column, Floats, numbered
from gclint.facts.context import Context, once
from gclint.facts.fact import Fact, number
from gclint.knowledge.numbers import model_number
from gclint.tables.cutting import OPERATION
from gclint.tables.motion import RAPID


def narrow_rest(context: Context) -> Floats:
    """[pieces] of the cuts of this tool at this F that are no slots, the share of length that is narrow; 0 if none."""
    return _of_feed(context, lambda slot, narrow: (narrow & ~slot, ~slot))


def slot_part(context: Context) -> Floats:
    """[pieces] of the level cuts of this tool at this F, the share of length at full width."""
    return _of_feed(context, lambda slot, narrow: (slot, slot | ~slot))


def _of_feed(context: Context, parts: Callable[[Bools, Bools], tuple[Bools, Bools]]) -> Floats:
    """[pieces] of the level cuts of the same tool and F, the length of the first part over that of the second."""
    pieces, loads, m = context.engagement.pieces, context.cutting.loads, context.motion
    if len(pieces) == 0:
        return np.zeros(0)
    move = pieces.move
    level = (loads.operation <= OPERATION["finish"]) & (m.kind[move] != RAPID)
    slot = loads.operation == OPERATION["slot"]
    narrow = pieces.ae <= model_number("narrow_share") * loads.effective_diameter
    group = _tool_and_feed(context)
    of, whole = parts(slot, narrow)
    length = np.where(level, pieces.length, 0.0)
    part, all_of = np.bincount(group, length * of), np.bincount(group, length * whole)
    with np.errstate(divide="ignore", invalid="ignore"):
        return np.where(all_of > 0, part / all_of, 0.0)[group]


@once
def _tool_and_feed(context: Context) -> Column:
    """[pieces] a number for each pair of tool and F."""
    m, move = context.motion, context.engagement.pieces.move
    feeds, of_feed = numbered(np.nan_to_num(m.feed[move], nan=-1.0))
    return numbered(m.tool[move].astype(np.int64) * len(feeds) + of_feed)[1]


FACTS: dict[str, dict[str, Fact]] = {
    "pieces": {
        "narrow_rest": number("", "of the cuts of this tool at this F that are no slots, the share that is narrow",
                              narrow_rest),
        "slot_part": number("", "of the level cuts of this tool at this F, the share at full width", slot_part),
    },
}  # fmt: skip
