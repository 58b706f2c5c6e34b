"""How near what was found is to each limit, tool by tool: so that a sheet without findings still says something.

Of chips and edge speeds the lowest and highest tenth of the judged length is left out, as runs in and out of a cut say
little. Nothing is judged here: rules decide what is a finding.
"""

from __future__ import annotations

import math

import numpy as np

from gclint.advice.parts import bounds, parts_of
from gclint.columns import Bools, Column
from gclint.cutting.mechanics import tool_material
from gclint.cutting.nearest_pair import Part
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


def margins_of(tables: Tables, tool: int) -> tuple[Margin, ...]:
    """The limits that are known for this tool of the program, in this order: chip, edge, depth, loads."""
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
    made.append(_least("chip", loads.h_ex, loads.chip_low, thin, tables, "mm", standing, source))
    made.append(_most("chip", loads.h_thick, loads.chip_high, drilled, tables, "mm", standing, source))
    edge = windows.edge_speed if windows else None
    if edge is not None:
        of = (tables, "m/min", edge.standing, edge.source)
        made.append(_least("edge speed", loads.edge_speed, loads.edge_low, judged, *of))
        made.append(_most("edge speed", loads.edge_speed, loads.edge_high, judged, *of))
    if windows:
        for name, operation, window in (
            ("depth of a slot", "slot", windows.depth_slot), ("depth beside a wall", "side", windows.depth_side),
        ):  # fmt: skip
            cuts = mine & (loads.operation == OPERATION[operation]) & (pieces.ae > SKIM * declared.diameter)
            made.append(_largest(name, pieces.ap, cuts, window, tables))
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
        _largest("bending", bend, mine, bent, tables), _largest("stress", stress, mine, stressed, tables),
        _largest("power", power, mine, pulled, tables),
    ]  # fmt: skip


def _largest(what: str, value: Column, rows: Bools, window: Window | None, tables: Tables) -> Margin | None:
    """The largest but for `SHORT` mm of cut, held against one limit."""
    if window is None or not window.high:
        return None
    known = np.flatnonzero(rows & np.isfinite(value) & (value > 0))
    if not len(known):
        return None
    order = known[np.argsort(-value[known], kind="stable")]
    length = np.cumsum(tables.engagement.pieces.length[order], dtype=np.float64)
    at = int(order[np.searchsorted(length, min(SHORT, 0.5 * length[-1]))])
    return _margin(what, "most", float(value[at]), window.high, at, tables, window.unit, window.standing, window.source)


def _least(
    what: str, value: Column, limit: Column, rows: Bools, tables: Tables, unit: str, standing: str, source: str
) -> Margin | None:
    at = _at_tenth(value, limit, rows, tables, low=True)
    if at is None:
        return None
    return _margin(what, "least", float(value[at]), float(limit[at]), at, tables, unit, standing, source)


def _most(
    what: str, value: Column, limit: Column, rows: Bools, tables: Tables, unit: str, standing: str, source: str
) -> Margin | None:
    at = _at_tenth(value, limit, rows, tables, low=False)
    if at is None:
        return None
    return _margin(what, "most", float(value[at]), float(limit[at]), at, tables, unit, standing, source)


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


def _margin(
    what: str, side: str, found: float, limit: float, at: int, tables: Tables, unit: str, standing: str, source: str
) -> Margin:
    room = found / limit - 1.0 if side == "least" else 1.0 - found / limit
    line = int(tables.motion.line[tables.engagement.pieces.move[at]])
    return Margin(what, side, round(found, 5), round(limit, 5), unit, round(room, 4), line, standing, source)


def marks_of(tables: Tables, tool: int) -> tuple[Mark, ...]:
    """Which marks of the dial keep this tool's feeds inside every limit, where it is not known which one is set."""
    from msgspec.structs import replace

    from gclint.cutting.load import load

    setup, m = tables.setup, tables.motion
    moved = (m.tool == tool) & (m.kind != RAPID)
    if setup.spindle.kind != "dial" or setup.dial is not None or setup.material is None or not moved.any():
        return ()
    if np.isfinite(tables.cutting.true_speed_of[moved]).all() or not len(tables.engagement.pieces):
        return ()
    dial = sorted(setup.spindle.dial, key=lambda mark: mark.true)
    turned = replace(setup, dial=dial[len(dial) // 2].mark)  # the ratio of chip and feed is the same at any speed
    cutting = load(m, tables.timing, tables.engagement, turned)
    made = Tables(tables.program, m, turned, tables.timing, tables.engagement, cutting)
    context = Context(made.program, m, made.timing, made.engagement, cutting, turned)
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
