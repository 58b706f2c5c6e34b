"""Condenses the tables of a run to what reports show: a row per tool, the extent, the time, the units."""

from __future__ import annotations

from typing import Any

import numpy as np

from gclint.columns import Bools, Column, Floats, Longs, numbered
from gclint.cutting.mechanics import torque
from gclint.faults import CODE
from gclint.knowledge.numbers import model_number
from gclint.run import Tables
from gclint.tables.engagement import ENTRY_KINDS, Pieces
from gclint.tables.finding import Extent, Range, ToolRow
from gclint.tables.motion import ARC_CCW, ARC_CW, EVENT, HOME, INCH, MACHINE, OTHER_FRAME, RAPID, Motion
from gclint.tables.setup import Setup
from gclint.tables.timing import Timing


def tool_rows(tables: Tables) -> tuple[ToolRow, ...]:
    """One row per tool in the order of first use; moves before any tool count only if they feed.

    Ranges are over the pieces of feed moves in material. A sum of times is None as soon as one of its moves has a known
    length but no known rate.
    """
    motion, pieces, entries, passes = (
        tables.motion, tables.engagement.pieces, tables.engagement.entries, tables.engagement.passes,
    )
    loads = tables.cutting.loads
    feeding = motion.kind != RAPID
    in_feed = feeding[pieces.move]
    piece_tool = motion.tool[pieces.move]
    of_move, of_piece = _rows_by(motion.tool), _rows_by(piece_tool)
    of_entry, of_pass = _rows_by(motion.tool[entries.first_move]), _rows_by(passes.tool)
    none = np.zeros(0, np.int64)
    share = pieces.end.astype(np.float64) - pieces.start
    rows = []
    for tool in order_of_use(motion):
        moves = of_move[tool]
        touching = of_piece.get(tool, none)
        cutting = touching[in_feed[touching]]
        cutting_moves = pieces.move[cutting]
        kinds = np.bincount(entries.kind[of_entry.get(tool, none)], minlength=len(ENTRY_KINDS))
        rapids = moves[~feeding[moves]]
        declared = tables.setup.tools.get(tool)
        rows.append(
            ToolRow(
                tool=number_of(tool, tables.setup),
                name=declared.name if declared else "",
                passes=len(of_pass.get(tool, none)),
                entries={kind: int(kinds[i]) for i, kind in enumerate(ENTRY_KINDS)},
                cut_length_mm=round(float(pieces.length[cutting].sum(dtype=np.float64)), 3),
                cut_time_s=_total(tables.timing.seconds[cutting_moves] * share[cutting]),
                rapid_time_s=_time(rapids, motion, tables.timing),
                set_feed_mm_min=bounds(motion.feed[cutting_moves], 3),
                reached_feed_mm_min=_reached(tables.timing, cutting_moves),
                set_speed_rpm=bounds(motion.speed[cutting_moves], 1),
                true_speed_rpm=bounds(tables.cutting.true_speed_of[cutting_moves], 1),
                fz_mm=bounds(loads.fz[cutting], 5),
                h_ex_mm=_thinnest_to_thickest(loads.h_ex[cutting], loads.h_thick[cutting]),
                ap_max_mm=most(depth_at_once(pieces, cutting)),
                ae_max_mm=most(pieces.ae[cutting]),
                removed_mm3=round(float(pieces.removed[touching].sum(dtype=np.float64)), 1),
                **_heaviest(tables, cutting),
            )
        )
    return tuple(rows)


def depth_at_once(pieces: Pieces, rows: Longs) -> Floats:
    """[rows] depth of the cut, mm; of a move straight down the depth of all its pieces together: a peck, a plunge."""
    deep = pieces.ap[rows].astype(np.float64)
    down = (pieces.drop[rows] > 0) & (pieces.travel[rows] <= model_number("straight_share") * pieces.drop[rows])
    moves, of_move = numbered(pieces.move[rows][down])
    deep[down] = np.bincount(of_move, np.minimum(pieces.drop[rows][down], deep[down]), len(moves))[of_move]
    return deep


def _heaviest(tables: Tables, rows: Longs) -> dict[str, Any]:
    """Largest force, power, torque, bending and stress: the largest low end and the largest high end."""
    loads = tables.cutting.loads
    effort, speed = loads.effort, loads.true_speed[rows]
    power = effort.power_low[rows], effort.power_high[rows]
    return {
        "force_n": _largest(effort.force_low[rows], effort.force_high[rows], 2),
        "power_w": _largest(*power, 1),
        "torque_nm": _largest(torque(power[0], speed), torque(power[1], speed), 4),
        "bend_mm": _largest(effort.bend(high=False, rows=rows), effort.bend(high=True, rows=rows), 5),
        "stress_n_mm2": _largest(effort.stress(high=False, rows=rows), effort.stress(high=True, rows=rows), 1),
    }


def _thinnest_to_thickest(chip: Column, thick: Column) -> Range | None:
    """From the thinnest chip of a tool that runs true to the thickest of one that runs out as declared."""
    ends = bounds(chip, 5), bounds(thick, 5)
    return (ends[0][0], ends[1][1]) if ends[0] and ends[1] else None


def _largest(low: Column, high: Column, digits: int) -> Range | None:
    ends = bounds(low, digits), bounds(high, digits)
    return (ends[0][1], ends[1][1]) if ends[0] and ends[1] else None


def order_of_use(motion: Motion) -> list[int]:
    """Program tool numbers in the order of first use; -1 (no tool seen) only where it feeds."""
    changes = np.flatnonzero(motion.tool[1:] != motion.tool[:-1]) + 1
    used = dict.fromkeys([*motion.tool[:1].tolist(), *motion.tool[changes].tolist()])
    return [n for n in used if n >= 0 or bool(np.any((motion.tool == n) & (motion.kind != RAPID)))]


def number_of(tool: int, setup: Setup) -> int | None:
    """The number people know the tool by: of the one declared tool where the program names none; None if unknown."""
    if tool >= 0:
        return tool
    assumed = setup.tools.get(tool)
    return assumed.number if assumed is not None and assumed.number >= 0 else None


def extent(motion: Motion) -> Extent:
    """Box of the tool tip in work coordinates, mm, bulges of arcs included; None on an axis that is never known."""
    here = (motion.flags & (MACHINE | HOME | OTHER_FRAME)) == 0
    low: list[float | None] = []
    high: list[float | None] = []
    bulges = arc_bulges(motion, here)
    for axis, (start, end) in enumerate(((motion.x0, motion.x1), (motion.y0, motion.y1), (motion.z0, motion.z1))):
        ends = [_ends(values) for values in (start[here], end[here], bulges[axis])]
        lowest, highest = min(each[0] for each in ends), max(each[1] for each in ends)
        low.append(round(lowest, 4) + 0.0 if lowest <= highest else None)
        high.append(round(highest, 4) + 0.0 if lowest <= highest else None)
    return Extent(min=(low[0], low[1], low[2]), max=(high[0], high[1], high[2]))


def total_time(motion: Motion, timing: Timing) -> float | None:
    """Seconds for the whole program, dwells included; None where a rate is not known."""
    if not len(motion):
        return None
    moving = _time(np.arange(len(motion)), motion, timing)
    return None if moving is None or not np.isfinite(timing.dwell) else round(moving + timing.dwell, 2)


def units(motion: Motion) -> str:
    """'mm', 'inch', 'mixed', or 'unstated' where the program moves before it says."""
    if np.any(motion.faults.kind == CODE["units-unstated"]):
        return "unstated"
    if len(motion):
        inch = (motion.flags & INCH) != 0
        return "inch" if inch.all() else "mixed" if inch.any() else "mm"
    said = motion.event_value[motion.event_kind == EVENT["units"]]
    return "unstated" if not len(said) else "inch" if said[-1] > 1 else "mm"


def _rows_by(keys: Column) -> dict[int, Longs]:
    """Rows of each key, ascending, by one sort: programs with many tools stay linear."""
    if not len(keys):
        return {}
    if bool((keys == keys[0]).all()):
        return {int(keys[0]): np.arange(len(keys))}
    order = np.argsort(keys, kind="stable")
    ordered = keys[order]
    cuts = np.flatnonzero(np.diff(ordered)) + 1
    return {int(keys[rows[0]]): rows for rows in np.split(order, cuts)}


def _time(moves: Longs, motion: Motion, timing: Timing) -> float | None:
    """Legs of unknown length (from an unknown place, in machine coordinates) are left out: they have no time to sum."""
    known = moves[np.isfinite(motion.length[moves]) & (motion.length[moves] > 0)]
    return _total(timing.seconds[known])


def _total(seconds: Column) -> float | None:
    total = float(seconds.sum(dtype=np.float64))
    return round(total, 2) if np.isfinite(total) else None


def _reached(timing: Timing, moves: Longs) -> Range | None:
    """From the lowest mean of a move to the fastest that any of them gets."""
    low, high = bounds(timing.reached[moves], 3), bounds(timing.peak[moves], 3)
    return (low[0], max(low[0], high[1])) if low and high else None


def bounds(values: Column, digits: int) -> Range | None:
    """(lowest, highest) of the known values, None if there are none."""
    low, high = _ends(values)
    return (round(low, digits), round(high, digits)) if low <= high else None


def _ends(values: Column) -> tuple[float, float]:
    """(lowest, highest) of the finite values; (inf, -inf) if there are none."""
    low, high = float(np.fmin.reduce(values, initial=np.inf)), float(np.fmax.reduce(values, initial=-np.inf))
    if low == -np.inf or high == np.inf:
        return _ends(values[np.isfinite(values)])
    return low, high


def most(values: Column) -> float | None:
    """Largest known value."""
    low, high = _ends(values)
    return round(high, 5) + 0.0 if low <= high else None


def least(values: Column) -> float | None:
    """Smallest known value."""
    low, high = _ends(values)
    return round(low, 5) + 0.0 if low <= high else None


def arc_bulges(motion: Motion, here: Bools) -> tuple[Any, Any, Any]:
    """Points where arcs touch their bounding box between their ends, per axis X, Y, Z."""
    reached: tuple[list[Any], list[Any], list[Any]] = ([], [], [])
    arcs = here & ((motion.kind == ARC_CW) | (motion.kind == ARC_CCW))
    starts = (motion.x0, motion.y0, motion.z0)
    for plane, first, second in ((17, 0, 1), (18, 2, 0), (19, 1, 2)):
        rows = np.flatnonzero(arcs & (motion.plane == plane))
        if not len(rows):
            continue
        du, dv = starts[first][rows] - motion.cu[rows], starts[second][rows] - motion.cv[rows]
        radius, begin, sweep = np.hypot(du, dv), np.degrees(np.arctan2(dv, du)), motion.sweep[rows]
        for quarter, axis, centre, sign in (
            (0.0, first, motion.cu, 1.0), (90.0, second, motion.cv, 1.0),
            (180.0, first, motion.cu, -1.0), (270.0, second, motion.cv, -1.0),
        ):
            turned = np.mod(np.where(sweep >= 0, quarter - begin, begin - quarter), 360.0)
            passed = turned <= np.abs(sweep)
            reached[axis].append((centre[rows] + sign * radius)[passed])
    x, y, z = (np.concatenate(points) if points else np.zeros(0) for points in reached)
    return x, y, z
