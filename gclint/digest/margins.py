"""How near what was found is to each limit, tool by tool: so that a sheet without findings still says something.

Of chips and edge speeds the lowest and highest tenth of the judged length is left out, as runs in and out of a cut say
little. Nothing is judged here: rules decide what is a finding.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import NamedTuple

import numpy as np

from gclint.advice.parts import bounds, parts_of
from gclint.columns import Bools, Column
from gclint.cutting.mechanics import tool_material
from gclint.cutting.nearest_pair import Part
from gclint.digest.margins_of_reach import reach_of
from gclint.facts.context import Context
from gclint.facts.registry import View
from gclint.run import Tables
from gclint.tables.cutting import OPERATION
from gclint.tables.finding import Margin, Mark
from gclint.tables.motion import RAPID
from gclint.tables.setup import DialMark, Window

TENTH = 0.1
SHORT = 2.0  # mm of cut that may be deeper or heavier: a corner, a run-in
SKIM = 0.15  # of the diameter: what is narrower may use the whole edge
STEPS = 400  # per factor e, in which ratios are sorted
BALLS = ("ball", "tapered-ball")
LEAST_PART = 0.1  # of a tool's cut length: feeds that cut less do not decide which mark suits
SIDES = ("least", "most")


class Limit(NamedTuple):
    """What a value is held against, on one of `SIDES`; without the bound, which may differ from piece to piece."""

    what: str
    side: str
    unit: str
    standing: str
    source: str


def margins_of(tables: Tables, tool: int) -> tuple[Margin, ...]:
    """The limits that are known for this tool of the program, in this order: chip, edge, depth, loads, reach."""
    return (*_of_cut(tables, tool), *reach_of(tables, tool))


def _of_cut(tables: Tables, tool: int) -> tuple[Margin, ...]:
    """Chip, edge, depth and loads."""
    pieces, loads, m = tables.engagement.pieces, tables.cutting.loads, tables.motion
    windows, declared = tables.cutting.windows.get(tool), tables.setup.tools.get(tool)
    if declared is None or not len(pieces):
        return ()
    mine = (m.tool[pieces.move] == tool) & (m.kind[pieces.move] != RAPID)
    if not mine.any():
        return ()
    judged = mine & (loads.chip_judged != 0)
    made: list[Margin | None] = []
    chip = windows.chip if windows else {}
    standing, source = next(((w.standing, w.source) for w in chip.values()), ("", ""))
    material = tables.setup.material
    thin = judged if material is None or material.thin_judged else np.zeros(len(judged), bool)
    if declared.shape in BALLS:
        thin = thin & (loads.operation == OPERATION["slot"]) & (pieces.ap > 0.1 * declared.diameter)
    drilled = mine & (loads.operation == OPERATION["drill"]) if declared.shape == "drill" else judged
    least, most = (Limit("chip", side, "mm", standing, source) for side in SIDES)
    made.append(_tenth(tables, least, loads.h_ex, loads.chip_low, thin))
    made.append(_tenth(tables, most, loads.h_thick, loads.chip_high, drilled))
    edge = windows.edge_speed if windows else None
    if edge is not None:
        for side, bound in zip(SIDES, (loads.edge_low, loads.edge_high)):
            limit = Limit("edge speed", side, "m/min", edge.standing, edge.source)
            made.append(_tenth(tables, limit, loads.edge_speed, bound, judged))
    if windows:
        for name, operation, window in (
            ("depth of a slot", "slot", windows.depth_slot), ("depth beside a wall", "side", windows.depth_side),
        ):  # fmt: skip
            cuts = mine & (loads.operation == OPERATION[operation]) & (pieces.ae > SKIM * declared.diameter)
            made.append(_largest(tables, name, pieces.ap, cuts, window))
    made += _loads(tables, mine, declared.made_of)
    return tuple(one for one in made if one is not None)


def _loads(tables: Tables, mine: Bools, made_of: str | None) -> list[Margin | None]:
    """Bending, stress and power, at the middle of their ranges."""
    effort, limits = tables.cutting.loads.effort, bounds()
    rows = np.flatnonzero(mine)

    def middle(low: Column, high: Column) -> Column:
        full = np.full(len(mine), np.nan, np.float32)
        with np.errstate(invalid="ignore", over="ignore"):
            full[rows] = np.sqrt(np.asarray(low, np.float64) * np.asarray(high, np.float64))
        return full

    bend = middle(effort.bend(False, rows), effort.bend(True, rows))
    stress = middle(effort.stress(False, rows), effort.stress(True, rows))
    power = middle(effort.power_low[rows], effort.power_high[rows])
    strong = tool_material(made_of)
    spindle = tables.setup.spindle.power
    most = np.nanmax(bend) if np.isfinite(bend).any() else math.nan
    wall = limits.wall if not most > limits.wall.value else limits.rough
    bent = Window(None, wall.value, "mm", wall.standing, wall.source)
    stressed = pulled = None
    if strong:
        high = strong.stress * limits.stress.value
        stressed = Window(None, high, "N/mm2", limits.stress.standing, limits.stress.source)
    if spindle:
        pulled = Window(None, spindle * limits.power.value, "W", limits.power.standing, limits.power.source)
    return [
        _largest(tables, "bending", bend, mine, bent),
        _largest(tables, "stress", stress, mine, stressed),
        _largest(tables, "power", power, mine, pulled),
    ]


def _largest(tables: Tables, what: str, value: Column, rows: Bools, window: Window | None) -> Margin | None:
    """The largest but for `SHORT` mm of cut, held against one limit."""
    if window is None or not window.high:
        return None
    known = np.flatnonzero(rows & np.isfinite(value) & (value > 0))
    if not len(known):
        return None
    order = known[np.argsort(-value[known], kind="stable")]
    length = np.cumsum(tables.engagement.pieces.length[order], dtype=np.float64)
    at = int(order[np.searchsorted(length, min(SHORT, 0.5 * length[-1]))])
    limit = Limit(what, "most", window.unit, window.standing, window.source)
    return _margin(tables, limit, float(value[at]), window.high, at)


def _tenth(tables: Tables, limit: Limit, value: Column, bound: Column, rows: Bools) -> Margin | None:
    """The tenth of the length that is nearest to its bound on the limit's side; None where nothing is known."""
    at = _at_tenth(value, bound, rows, tables, low=limit.side == "least")
    return None if at is None else _margin(tables, limit, float(value[at]), float(bound[at]), at)


def _at_tenth(value: Column, limit: Column, rows: Bools, tables: Tables, low: bool) -> int | None:
    """The piece at the tenth of the length that is nearest to its limit; None where nothing is known."""
    with np.errstate(divide="ignore", invalid="ignore"):
        ratio = np.log(value.astype(np.float64) / limit)
    known = np.flatnonzero(rows & np.isfinite(ratio) & (limit > 0))
    if not len(known):
        return None
    steps = np.clip(np.rint(ratio[known] * STEPS), -20 * STEPS, 20 * STEPS).astype(np.int64)
    first = int(steps.min())
    length = np.bincount(steps - first, tables.engagement.pieces.length[known])
    below = np.cumsum(length if low else length[::-1])
    place = int(np.argmax(below >= TENTH * below[-1]))
    wanted = first + (place if low else len(length) - 1 - place)
    return int(known[np.argmax(steps == wanted)])


def _margin(tables: Tables, limit: Limit, found: float, bound: float, at: int) -> Margin:
    room = found / bound - 1.0 if limit.side == "least" else 1.0 - found / bound
    line = int(tables.motion.line[tables.engagement.pieces.move[at]])
    return Margin(
        limit.what, limit.side, round(found, 5), round(bound, 5), limit.unit, round(room, 4), line, limit.standing,
        limit.source,
    )  # fmt: skip


def at_middle_mark(tables: Tables) -> Context:
    """The program as it would run at the middle mark of the dial: the ratio of chip and feed is the same at any."""
    from msgspec.structs import replace

    from gclint.cutting.load import load

    dial = sorted(tables.setup.spindle.dial, key=lambda mark: mark.true)
    setup = replace(tables.setup, dial=dial[len(dial) // 2].mark)
    cutting = load(tables.motion, tables.timing, tables.engagement, setup)
    return Context(tables.program, tables.motion, tables.timing, tables.engagement, cutting, setup)


def marks_of(tables: Tables, tool: int, turned: Callable[[], Context] | None = None) -> tuple[Mark, ...]:
    """Which marks of the dial keep this tool's feeds inside every limit, where it is not known which one is set.

    turned: gives `at_middle_mark`, for one who asks for many tools.
    """
    setup, m = tables.setup, tables.motion
    moved = (m.tool == tool) & (m.kind != RAPID)
    if setup.spindle.kind != "dial" or setup.dial is not None or setup.material is None or not moved.any():
        return ()
    if np.isfinite(tables.cutting.true_speed_of[moved]).all() or not len(tables.engagement.pieces):
        return ()
    dial = sorted(setup.spindle.dial, key=lambda mark: mark.true)
    context = turned() if turned is not None else at_middle_mark(tables)
    parts = parts_of(View.of("pieces", context), moved, one=False)
    total = sum(float(part.window.weight.sum()) for part in parts)
    parts = tuple(part for part in parts if part.window.weight.sum() >= LEAST_PART * total)
    if not parts:
        return ()
    return tuple(_mark(mark, parts) for mark in dial)


def _mark(mark: DialMark, parts: tuple[Part, ...]) -> Mark:
    """A feed is told where all of the tool's cuts run with one."""
    broken = [
        limit.name
        for part in parts
        for limit in part.window.limits
        if not part.window.only([limit]).inside(mark.true, part.feed)
    ]
    suits = all(part.window.inside(mark.true, part.feed) for part in parts)
    feeds = dict(parts[0].window.marks(parts[0].feed)) if len(parts) == 1 else {}
    return Mark(mark.mark, float(mark.true), suits, () if suits else tuple(dict.fromkeys(broken)), feeds.get(mark))
