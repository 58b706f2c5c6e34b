"""What a tool does, in more detail than the JSON contract of `check` asks: for the tool strip and for `gclint show`."""

from __future__ import annotations

import msgspec
import numpy as np

from gclint.columns import Column, Longs, numbered
from gclint.cutting.mechanics import spindle_power, tool_material
from gclint.digest import summary
from gclint.digest.words import MM_PER_INCH
from gclint.run import Tables
from gclint.tables.cutting import OPERATIONS
from gclint.tables.engagement import ENTRY_KINDS
from gclint.tables.finding import Limits, Range, ToolRow
from gclint.tables.motion import RAPID
from gclint.tables.setup import Setup, Tool


class EntryFacts(msgspec.Struct, frozen=True):
    """All entries of one kind; the worst of each figure, and the line of the deepest one."""

    kind: str
    count: int
    first_line: int
    deepest_line: int
    solid_mm: float
    steepest_degrees: float | None
    feed_mm_min: Range | None
    z_feed_mm_min: Range | None


class LevelFacts(msgspec.Struct, frozen=True):
    """Passes that reach the same lowest Z."""

    lowest_z_mm: float
    passes: int
    first_line: int
    length_mm: float
    ap_max_mm: float
    ae_max_mm: float
    removed_mm3: float


class ToolFacts(msgspec.Struct, frozen=True):
    row: ToolRow
    described: str
    first_line: int
    dial_marks: tuple[str, ...]
    operation_mm: dict[str, float]
    chip_operation: str
    chip_usual_mm: Range | None  # of the judged cuts of that operation, without the lowest and highest tenth of length
    chip_window: Limits | None
    edge_speed_m_min: Range | None
    deepest_mm: float | None
    deepest_cut_mm: Range | None  # (depth, width) of the deepest cut, and of the widest one (of several the deepest)
    widest_cut_mm: Range | None
    runout_mm: float | None
    entries: tuple[EntryFacts, ...]
    levels: tuple[LevelFacts, ...]
    levels_left_out: int
    spindle_power_w: float | None  # least that the spindle has where this tool cuts
    stress_allowed_n_mm2: float | None


MOST_LEVELS = 40
SAME_WIDTH = 0.99  # share of the largest width that counts as it


def tool_facts(tables: Tables, rows: tuple[ToolRow, ...] | None = None) -> tuple[ToolFacts, ...]:
    """One value per tool in the order of use."""
    motion, pieces, loads = tables.motion, tables.engagement.pieces, tables.cutting.loads
    rows = summary.tool_rows(tables) if rows is None else rows
    piece_tool = motion.tool[pieces.move]
    feeding = motion.kind[pieces.move] != RAPID
    inch = summary.units(motion) == "inch"
    entry_tool = motion.tool[tables.engagement.entries.first_move]
    facts = []
    for tool, row in zip(summary.order_of_use(motion), rows):
        cutting = np.flatnonzero((piece_tool == tool) & feeding)
        lengths = np.bincount(loads.operation[cutting], pieces.length[cutting], minlength=len(OPERATIONS))
        declared = tables.setup.tools.get(tool)
        drilled = loads.operation[cutting] == OPERATIONS.index("drill")
        drilled &= declared is not None and declared.shape == "drill"
        judged = cutting[(loads.chip_judged[cutting] != 0) | drilled]
        judged_length = np.bincount(loads.operation[judged], pieces.length[judged], minlength=len(OPERATIONS))
        main = int(judged_length.argmax()) if len(judged) else -1
        levels, left_out = _levels(tables, tool)
        cuts = _largest_cuts(tables, cutting)
        facts.append(
            ToolFacts(
                row=row,
                described=described(declared, inch),
                first_line=int(motion.line[np.flatnonzero(motion.tool == tool)[0]]),
                dial_marks=dial_marks(tables.setup, row.true_speed_rpm),
                operation_mm={
                    name: round(float(lengths[i]), 2) for i, name in enumerate(OPERATIONS) if lengths[i] > 0
                },
                chip_operation=OPERATIONS[main] if main >= 0 else "",
                chip_usual_mm=_usual(loads.h_ex, pieces.length, judged[loads.operation[judged] == main]),
                chip_window=_chip_window(tables, tool, judged, main),
                edge_speed_m_min=summary.bounds(loads.edge_speed[cutting], 1),
                deepest_mm=summary.most(pieces.depth[cutting]),
                deepest_cut_mm=cuts[0],
                widest_cut_mm=cuts[1],
                runout_mm=declared.runout if declared else None,
                entries=_entries(tables, np.flatnonzero(entry_tool == tool)),
                levels=levels,
                levels_left_out=left_out,
                spindle_power_w=_spindle_power(tables.setup, row.true_speed_rpm),
                stress_allowed_n_mm2=_stress_allowed(declared),
            )
        )
    return tuple(facts)


def described(tool: Tool | None, inch: bool = False) -> str:
    """'flat, 3.175 mm, 2 flutes, down-cut'; 'not declared' where nothing is known."""
    if tool is None:
        return "not declared"
    parts = [tool.shape, f"{tool.diameter / MM_PER_INCH:.4g} in" if inch else f"{tool.diameter:g} mm"]
    if tool.flutes is not None:
        parts.append(f"{tool.flutes} flute{'' if tool.flutes == 1 else 's'}")
    if tool.helix is not None:
        parts.append(tool.helix)
    return ", ".join(parts)


def dial_marks(setup: Setup, speeds: Range | None) -> tuple[str, ...]:
    """Marks of a dial spindle whose speed this tool cuts at, slowest first."""
    if setup.spindle.kind != "dial" or speeds is None:
        return ()
    low, high = speeds
    near = [m for m in setup.spindle.dial if min(abs(m.true - low), abs(m.true - high)) <= 0.001 * m.true + 1]
    return tuple(m.mark for m in sorted(near, key=lambda m: m.true))


def _spindle_power(setup: Setup, speeds: Range | None) -> float | None:
    spindle = setup.spindle
    if speeds is None:
        return spindle.power if not spindle.power_curve else None
    return summary.least(spindle_power(spindle.power_curve, spindle.power, np.array(speeds)))


def _stress_allowed(tool: Tool | None) -> float | None:
    made = tool_material(tool.made_of) if tool else None
    return made.stress if made else None


def _chip_window(tables: Tables, tool: int, judged: Longs, operation: int) -> Limits | None:
    """The strictest window met in the operation with the longest judged cut."""
    if operation < 0:
        return None
    loads = tables.cutting.loads
    rows = judged[loads.operation[judged] == operation]
    low, high = summary.most(loads.chip_low[rows]), summary.least(loads.chip_high[rows])
    if OPERATIONS[operation] == "drill":
        low = None  # no rule holds a drill against a lower limit
    if low is None and high is None:
        return None
    windows = tables.cutting.windows.get(tool)
    window = windows.chip.get(OPERATIONS[operation]) if windows else None
    return Limits(low, high, "mm", window.standing if window else "", window.source if window else "")


def _usual(values: Column, lengths: Column, rows: Longs) -> Range | None:
    """Values at a tenth and nine tenths of the length."""
    rows = rows[np.isfinite(values[rows])]
    if not len(rows):
        return None
    rows = rows[np.argsort(values[rows], kind="stable")]
    reached = np.cumsum(lengths[rows], dtype=np.float64)
    low, high = np.searchsorted(reached, (0.1 * reached[-1], 0.9 * reached[-1]))
    last = len(rows) - 1
    return summary.bounds(values[rows[[min(low, last), min(high, last)]]], 5)


def _largest_cuts(tables: Tables, rows: Longs) -> tuple[Range | None, Range | None]:
    """(depth, width) of the deepest and of the widest of these pieces, mm: each pair from one place."""
    pieces = tables.engagement.pieces
    deep, wide = summary.depth_at_once(pieces, rows), pieces.ae[rows]
    if not len(rows):
        return None, None
    deepest, widest = int(np.argmax(deep)), np.flatnonzero(wide >= SAME_WIDTH * wide.max())
    other = int(widest[np.argmax(deep[widest])])
    pairs = [(round(float(deep[row]), 5), round(float(wide[row]), 5)) for row in (deepest, other)]
    return pairs[0], pairs[1]


def _entries(tables: Tables, rows: Longs) -> tuple[EntryFacts, ...]:
    entries, line = tables.engagement.entries, tables.motion.line
    facts = []
    for code, kind in enumerate(ENTRY_KINDS):
        of_kind = rows[entries.kind[rows] == code]
        if not len(of_kind):
            continue
        solid = entries.solid[of_kind]
        deepest = of_kind[int(np.nanargmax(solid))] if np.isfinite(solid).any() else of_kind[0]
        facts.append(
            EntryFacts(
                kind=kind,
                count=len(of_kind),
                first_line=int(line[entries.first_move[of_kind[0]]]),
                deepest_line=int(line[entries.first_move[deepest]]),
                solid_mm=summary.most(solid) or 0.0,
                steepest_degrees=summary.most(entries.slope[of_kind]),
                feed_mm_min=summary.bounds(entries.feed[of_kind], 2),
                z_feed_mm_min=summary.bounds(entries.z_feed[of_kind], 2),
            )
        )
    return tuple(facts)


def _levels(tables: Tables, tool: int) -> tuple[tuple[LevelFacts, ...], int]:
    """Passes by their lowest Z (to 0.01 mm), highest first; a finishing program of many levels shows the first ones."""
    passes, motion = tables.engagement.passes, tables.motion
    rows = np.flatnonzero(passes.tool == tool)
    if not len(rows):
        return (), 0
    level = np.round(passes.lowest[rows].astype(np.float64), 2)
    heights, group = numbered(-level)
    order = np.argsort(group, kind="stable")
    cuts = np.flatnonzero(np.diff(group[order])) + 1
    facts = [
        LevelFacts(
            lowest_z_mm=float(-heights[int(group[members[0]])]) + 0.0,
            passes=len(members),
            first_line=int(motion.line[tables.engagement.pieces.move[passes.first_piece[rows[members[0]]]]]),
            length_mm=_sum(passes.length[rows[members]], 2),
            ap_max_mm=summary.most(passes.ap[rows[members]]) or 0.0,
            ae_max_mm=summary.most(passes.ae[rows[members]]) or 0.0,
            removed_mm3=_sum(passes.removed[rows[members]], 1),
        )
        for members in np.split(order, cuts)[:MOST_LEVELS]
    ]
    return tuple(facts), max(0, len(heights) - MOST_LEVELS)


def _sum(values: Column, digits: int) -> float:
    return round(float(values.sum(dtype=np.float64)), digits)
