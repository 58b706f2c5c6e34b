"""Gives the facts that outside-stock alone looks at: how far outside the blank a move at feed works, and how far is
usual there."""

from __future__ import annotations

from typing import Any

import numpy as np

from gclint.columns import Column, Floats
from gclint.facts.context import Context, once
from gclint.facts.fact import Fact, number, text
from gclint.facts.setup import STOCK, STOCK_PLACE
from gclint.knowledge.numbers import model_number
from gclint.tables.motion import COMPENSATED, PROBE, RAPID

ROLES = ("none", "pass", "leading", "leaving", "within")


@once
def _ends_outside(context: Context) -> tuple[Floats, Floats] | None:
    """[moves] how far start and end lie outside the blank's outline, mm; 0 where that is not known."""
    box, m = context.setup.stock, context.motion
    if box is None or not box.placed or box.x is None or box.y is None:
        return None
    known = context.placed & ((m.flags & (COMPENSATED | PROBE)) == 0)
    if context.setup.work_offset is not None:
        known &= (m.offset == 0) | (m.offset == round(10 * float(context.setup.work_offset[1:])))
    made = []
    for x, y in ((m.x0, m.y0), (m.x1, m.y1)):
        dx = np.maximum(np.maximum(box.x[0] - x, x - box.x[1]), 0.0)
        dy = np.maximum(np.maximum(box.y[0] - y, y - box.y[1]), 0.0)
        made.append(np.where(known, np.nan_to_num(np.hypot(dx, dy)), 0.0))
    return made[0], made[1]


@once
def _depths(context: Context) -> Floats | None:
    """[moves] depth of the lower end below the blank's top of moves straight down, of the higher end of all others."""
    top, m = (context.box.top if context.box else None), context.motion
    if top is None:
        return None
    down = (m.x0 == m.x1) & (m.y0 == m.y1) & (m.sweep == 0)
    return np.asarray(np.fmax(top - np.where(down, m.z1, np.maximum(m.z0, m.z1)), -np.inf))


@once
def _roles(context: Context) -> Column | None:
    """[moves] what a feed move below the top does in its run of such moves: index into ROLES.

    pass: nothing of the run is cut; leading: it comes before the first cut of the run, or behind the last; leaving: it
    cuts, and one end is far outside; within: it lies between two cuts and cuts nothing.
    """
    depths, m = _depths(context), context.motion
    if depths is None:
        return None
    roles = np.zeros(len(m), np.int32)
    inside = (m.kind != RAPID) & (depths > 0)
    if not inside.any():
        return roles
    run = np.cumsum(np.concatenate(([True], inside[1:] != inside[:-1])))
    cuts = context.in_contact & inside
    rows = np.flatnonzero(inside)
    first, last = np.full(run[-1] + 1, len(m)), np.full(run[-1] + 1, -1)
    np.minimum.at(first, run[cuts], np.flatnonzero(cuts))
    np.maximum.at(last, run[cuts], np.flatnonzero(cuts))
    roles[rows] = np.where(
        last[run[rows]] < 0,
        1,
        np.where(cuts[rows], 3, np.where((rows < first[run[rows]]) | (rows > last[run[rows]]), 2, 4)),
    )
    return roles


def _outside(context: Context) -> Any:
    """[moves] how far outside the blank it works: mm: the far end of a move that leaves it, the nearer of others."""
    ends, roles = _ends_outside(context), _roles(context)
    if ends is None or roles is None:
        return None
    return np.where(roles == 0, 0.0, np.where(roles == 3, ends[1], np.minimum(*ends)))


def _usual(context: Context) -> Any:
    """[moves] how far outside is usual there, mm."""
    roles = _roles(context)
    if roles is None:
        return None
    diameter = np.full(len(context.motion), np.nan)
    for n, tool in context.setup.tools.items():
        diameter[context.motion.tool == n] = tool.diameter
    away = np.maximum(model_number("lead_diameters") * diameter, model_number("lead_length"))
    half, far = model_number("pass_outside") * diameter, model_number("cut_outside") * diameter
    return np.choose(roles, [np.full(len(roles), np.inf), half, away, away, far])


def _deep(context: Context) -> Any:
    return _depths(context)


FACTS: dict[str, dict[str, Fact]] = {
    "moves": {
        "outside": number("mm", "how far outside the blank it works below the top: the far end where it leaves the "
                          "blank, the nearer end of others", _outside, STOCK_PLACE),
        "usual_outside": number("mm", "how far outside is usual there", _usual, "the tool"),
        "role": text("what a feed move below the top does: pass (nothing of its run of such moves is cut), leading "
                     "(before the first cut of the run or behind the last), leaving (it cuts), "
                     "within (between two cuts)",
                     lambda c: None if _roles(c) is None else (_roles(c), ROLES), STOCK, ROLES),
        "works_at": number("mm", "depth below the top at which it works: of a move straight down its lower end", _deep,
                           STOCK),
    },
}  # fmt: skip
