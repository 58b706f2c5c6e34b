"""Gives the facts that arc-turns-back alone looks at: arcs that leave and meet their neighbours backward."""

from __future__ import annotations

import numpy as np

from gclint.columns import Bools, Column, Floats
from gclint.facts.context import Context, once
from gclint.facts.fact import Fact, number, truth
from gclint.knowledge.numbers import model_number
from gclint.tables.motion import ARC_CCW, ARC_CW, RAPID

SMOOTH = float(np.cos(np.radians(10.0)))
BREAK = float(np.cos(np.radians(60.0)))


def _heading(context: Context, rows: Column, end: bool) -> tuple[Floats, Floats]:
    """Direction of travel at the start or the end of each move in XY, of length 1 (NaN where it has none)."""
    m = context.motion
    x, y = m.x1[rows] - m.x0[rows], m.y1[rows] - m.y0[rows]
    arc = (m.kind[rows] >= ARC_CW) & (m.plane[rows] == 17)
    at_x, at_y = (m.x1[rows], m.y1[rows]) if end else (m.x0[rows], m.y0[rows])
    way = np.where(m.kind[rows] == ARC_CCW, 1.0, -1.0)
    x = np.where(arc, -(at_y - m.cv[rows]) * way, x)
    y = np.where(arc, (at_x - m.cu[rows]) * way, y)
    long = np.hypot(x, y)
    with np.errstate(divide="ignore", invalid="ignore"):
        return x / np.where(long > 1e-9, long, np.nan), y / np.where(long > 1e-9, long, np.nan)


@once
def turned_back(context: Context) -> Bools:
    return _joined(context)[0]


@once
def _joined(context: Context) -> tuple[Bools, int]:
    """([moves] turned back, how many other arcs of the program join both neighbours smoothly).

    Turned back are arcs, in the XY plane and no full circles, that leave the move before and meet the one after
    backward, where the other direction joins both. An arc behind a plunge, or before a lift, has one neighbour: there
    only one that goes round the long way counts.
    """
    m = context.motion
    made = np.zeros(len(m), bool)
    arcs = np.flatnonzero((m.kind >= ARC_CW) & (m.plane == 17) & (np.hypot(m.x1 - m.x0, m.y1 - m.y0) > 1e-3))
    arcs = arcs[(arcs > 0) & (arcs < len(m) - 1) & (np.abs(m.sweep[arcs]) < 359)]
    # a ramp goes forth and back on its way on purpose
    arcs = arcs[np.abs(m.z1[arcs] - m.z0[arcs]) < 1e-6]
    if not len(arcs):
        return made, 0
    level = np.abs(m.z1 - m.z0) < 1e-6
    beside = level & (m.kind != RAPID) & ((np.hypot(m.x1 - m.x0, m.y1 - m.y0) > 1e-6) | (m.kind >= ARC_CW))
    upright = ~level & (np.hypot(m.x1 - m.x0, m.y1 - m.y0) < 1e-6)
    before, after = _heading(context, arcs - 1, True), _heading(context, arcs + 1, False)
    start, end = _heading(context, arcs, False), _heading(context, arcs, True)
    back = np.cos(np.radians(180.0 - model_number("turns_back")))
    with np.errstate(invalid="ignore"):
        leaves = before[0] * start[0] + before[1] * start[1]
        meets = end[0] * after[0] + end[1] * after[1]
        from_, to = beside[arcs - 1], beside[arcs + 1]
        both = from_ & to & (leaves <= back) & (meets <= back)
        one = (upright[arcs - 1] & to & (meets <= back)) | (from_ & upright[arcs + 1] & (leaves <= back))
        made[arcs] = both | (one & (np.abs(m.sweep[arcs]) > 180))
        smooth = int(np.count_nonzero(from_ & to & (leaves >= -back) & (meets >= -back)))
    return made, smooth


@once
def swapped(context: Context) -> Bools:
    """[moves] arcs in the XY plane that break from both neighbours by a wide angle, and would join both smoothly with
    I and J changed over: of a quarter arc both centres lie as far from both ends, so that either closes."""
    m = context.motion
    made = np.zeros(len(m), bool)
    arcs = np.flatnonzero((m.kind >= ARC_CW) & (m.plane == 17) & (np.hypot(m.x1 - m.x0, m.y1 - m.y0) > 1e-3))
    arcs = arcs[(arcs > 0) & (arcs < len(m) - 1)]
    arcs = arcs[(m.kind[arcs - 1] != RAPID) & (m.kind[arcs + 1] != RAPID) & (np.abs(m.sweep[arcs]) < 359)]
    if not len(arcs):
        return made
    before, after = _heading(context, arcs - 1, True), _heading(context, arcs + 1, False)
    start, end = _heading(context, arcs, False), _heading(context, arcs, True)
    i, j = m.cu[arcs] - m.x0[arcs], m.cv[arcs] - m.y0[arcs]
    way = np.where(m.kind[arcs] == ARC_CCW, 1.0, -1.0)
    radius = np.hypot(i, j)
    x, y = m.x1[arcs] - (m.x0[arcs] + j), m.y1[arcs] - (m.y0[arcs] + i)  # from the other centre to the end
    with np.errstate(invalid="ignore", divide="ignore"):
        closes = np.abs(np.hypot(x, y) - radius) <= 0.01 * radius
        joins = (before[0] * i - before[1] * j) * way / radius >= SMOOTH
        joins &= (after[1] * x - after[0] * y) * way / radius >= SMOOTH
        leaves = before[0] * start[0] + before[1] * start[1] <= BREAK
        meets = end[0] * after[0] + end[1] * after[1] <= BREAK
        made[arcs] = closes & joins & leaves & meets
    return made


def _smooth_share(context: Context) -> float:
    turned, smooth = _joined(context)
    return smooth / max(1, smooth + int(np.count_nonzero(turned)))


FACTS: dict[str, dict[str, Fact]] = {
    "moves": {
        "turns_back": truth("whether it is an arc that leaves the move before and meets the one after backward, where "
                            "the other direction would join both; behind a plunge one neighbour counts", turned_back),
        "swapped_centre": truth("whether it is an arc that breaks from both neighbours, and would join both smoothly "
                                "with I and J changed over", swapped),
        "smooth_share": number("", "of the arcs between two moves at feed that join both neighbours smoothly or turn "
                               "back from both: the share that joins smoothly", lambda c: _smooth_share(c)),
        "smooth_arcs": number("", "how many arcs join both neighbours smoothly", lambda c: float(_joined(c)[1])),
    },
}  # fmt: skip
