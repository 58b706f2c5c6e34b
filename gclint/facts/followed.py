"""Which moves could not be followed: their place is not known, or a bound of work was reached."""

from __future__ import annotations

import numpy as np

from gclint.columns import Bools
from gclint.facts.context import Context, once
from gclint.tables.motion import COMPENSATED, OTHER_FRAME, PROBE, RAPID


@once
def lost(context: Context) -> Bools:
    """[moves] feed moves of which nobody knows what they cut: their place is not known, or they were too much work."""
    beyond: Bools = placeless(context) | too_many_turns(context) | too_much_work(context)
    return beyond


def too_much_work(context: Context) -> Bools:
    """[moves] feed moves below the top behind the bound of work at which the stock was given up."""
    beyond = np.zeros(len(context.motion), bool)
    swept = context.engagement.swept_moves
    if swept is not None:
        top = context.box.top if context.box is not None and context.box.top is not None else 0.0
        beyond[swept:] = ((context.motion.kind != RAPID) & (context.lowest < top))[swept:]
    return beyond


def too_many_turns(context: Context) -> Bools:
    """[moves] arcs that were left out of the stock for their many turns."""
    arcs = np.zeros(len(context.motion), bool)
    if context.engagement.turns is not None:
        arcs[context.engagement.turns] = True
    return arcs


@once
def placeless(context: Context) -> Bools:
    """[moves] feed moves whose end is not known, or known only in a frame of its own."""
    m = context.motion
    placed = np.isfinite(m.x1) & np.isfinite(m.y1) & np.isfinite(m.z1)
    apart = (m.flags & (OTHER_FRAME | COMPENSATED)) != 0
    top = context.box.top if context.box is not None and context.box.top is not None else 0.0
    placed |= ~(m.z1 < max(top, 0.0)) & np.isfinite(m.z1)  # above the work nothing is cut, wherever it is
    return np.asarray((m.kind != RAPID) & (m.flags & PROBE == 0) & (~placed | apart))


def last_line_of(context: Context, code: str, here: int) -> int:
    """The last line up to `here` on which the program writes this G code; 0 where it does not."""
    p = context.program
    words = np.flatnonzero((p.word_letter == ord("G")) & (np.abs(p.word_value - float(code[1:])) < 1e-6))
    lines = p.block_line[np.searchsorted(p.block_word, words, side="right") - 1]
    lines = lines[lines <= here]
    return int(lines[-1]) if len(lines) else 0
