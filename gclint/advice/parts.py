"""The windows of what a finding's words govern: all places that one F, or one S, brings with it."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import numpy as np

from gclint.columns import Bools, Column, distinct
from gclint.cutting.cut_limits import Bounds, of_pieces, window_at
from gclint.cutting.mechanics import law_of
from gclint.cutting.nearest_pair import Part
from gclint.facts.context import Context, once
from gclint.facts.registry import View
from gclint.knowledge.numbers import model_number
from gclint.motion.feed_planning import plan_feed
from gclint.packs.pack import Limit
from gclint.tables.cutting import OPERATION
from gclint.tables.material import Sourced

MOST_PLACES = 4000  # of more, every second or third is looked at
NO_END = 1e9  # mm/min: an F that holds nothing back
BALLS = ("ball", "tapered-ball")


@cache
def bounds() -> Bounds:
    """Give the limits that shipped rules hold a cut against: those that say so by their key `bounds`."""
    from gclint.packs.shipped_packs import shipped_packs

    limits = [limit for pack in shipped_packs() for rule in pack.rules for limit in rule.text.limits.values()]
    return Bounds(**{limit.bounds: _sourced(limit) for limit in limits if limit.bounds})


def _sourced(found: Limit) -> Sourced:
    from gclint.language.expression import quantity

    value, unit = quantity(found.value) if isinstance(found.value, str) else (float(found.value), "")
    value *= 0.01 if unit == "%" else 1.0
    return Sourced(value, found.standing, found.source)


def parts_of(row: View, moved: Bools, one: bool, replanned: bool = False) -> tuple[Part, ...]:
    """Milled pieces of the moves in `moved`, as one part, or as one for each set feed.

    `replanned`: the path is planned once more, to know what feeds higher ones than the present can bring about; else
    that is known only where the present ones are not reached. `row` is any row of the table of pieces. Empty where
    nothing is milled there or nothing of it is known.
    """
    context = row.context
    pieces, loads, m = context.engagement.pieces, context.cutting.loads, context.motion
    known = np.isfinite(loads.h_ex) & (loads.h_ex > 0) & (loads.fz > 0) & np.isfinite(loads.true_speed)
    rows = np.flatnonzero(moved[pieces.move] & known & (loads.operation <= OPERATION["finish"]))
    if not len(rows):
        return ()
    feeds = m.feed[pieces.move[rows]]
    if one:
        worst = float(np.max(feeds)) if row.length != 1 else float(row.value("set_feed")[0])
        return (_part(row, rows, worst, replanned),)
    return tuple(_part(row, rows[feeds == feed], float(feed), replanned) for feed in distinct(feeds))


def _part(row: View, rows: Column, feed: float, replanned: bool) -> Part:
    context = row.context
    pieces, loads, m = context.engagement.pieces, context.cutting.loads, context.motion
    lines = distinct(loads.governs[rows])
    step = -(-len(rows) // MOST_PLACES)
    rows = rows[::step]
    number = m.tool[pieces.move[rows]]
    wall = _walls(row, rows)
    law = law_of(context.setup.material.force) if context.setup.material else None
    places = of_pieces(
        loads, rows, number, pieces.length[rows] * step, _can(context, rows, replanned), _skims(row, rows, number),
        wall, context.setup, bounds(),
    )  # fmt: skip
    known = [context.setup.tools[int(n)].diameter for n in distinct(number) if int(n) in context.setup.tools]
    short = model_number("short_excess") * min(known, default=0.0)
    window = window_at(places, law, context.setup, bounds(), model_number("run_in"), short)
    speeds = loads.true_speed[rows].astype(np.float64)
    return Part(feed, window, speeds, tuple(int(line) for line in lines[lines > 0]))


def _can(context: Context, rows: Column, replanned: bool) -> tuple[Column, Column]:
    """For pieces: (fastest feed, feed on average that counts as thick enough), mm/min, that any F can bring about."""
    moves = context.engagement.pieces.move[rows]
    if not replanned:
        feed = context.cutting.loads.feed[rows].astype(np.float64)
        reached = np.where(feed < context.motion.feed[moves] * (1 - 1e-3), feed, np.inf)
        return reached, reached
    peak, mean = (feeds[moves] for feeds in _freed(context))
    material = context.setup.material
    return peak, np.minimum(peak, mean / (1.0 - (material.thin_by.value if material else 0.0)))


@once
def _freed(context: Context) -> tuple[Column, Column]:
    """[moves] the fastest feed and that on average, were the whole path planned with no F to hold it back."""
    unbound = plan_feed(replace(context.motion, feed=np.full(len(context.motion), NO_END)), context.setup)
    peak, mean = (np.where(feed < NO_END, feed, np.inf) for feed in (unbound.peak, unbound.reached))
    return peak, mean


def _walls(row: View, rows: Column) -> Bools:
    """Where a wall stays; where the tool hardly bends as it is nobody has looked, so there as well."""
    if "bent_wall" not in row.facts:
        return np.ones(len(rows), bool)
    looked = row.context.cutting.loads.effort.bend(high=True, rows=rows) > model_number("bends_at_all")
    return np.asarray((row.whole().value("bent_wall")[rows] == 1) | ~looked)


def _skims(row: View, rows: Column, number: Column) -> Bools:
    """Where the chip has no lower limit: dusty materials, and balls that finish a surface."""
    context = row.context
    pieces, operation = context.engagement.pieces, context.cutting.loads.operation
    material = context.setup.material
    if material is not None and not material.thin_judged:
        return np.ones(len(rows), bool)
    skims = np.zeros(len(rows), bool)
    for n in distinct(number):
        tool = context.setup.tools.get(int(n))
        if tool is not None and tool.shape in BALLS:
            mine = number == n
            light = pieces.ap[rows] <= 0.1 * tool.diameter
            skims |= mine & (light | (operation[rows] != OPERATION["slot"]))
    return skims
