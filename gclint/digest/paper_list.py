"""The paper list: what must be known at the machine, worked out once for the sheet, the page and the JSON."""

from __future__ import annotations

import math

import numpy as np

from gclint.columns import Column, Floats, Longs, distinct, one_of
from gclint.digest import summary
from gclint.digest.tool_facts import described, dial_marks
from gclint.digest.words import Lengths
from gclint.motion.restart import RestartLine, restart_lines, restart_moves
from gclint.run import Tables
from gclint.tables.finding import Extent, ToolRow
from gclint.tables.material import Material
from gclint.tables.motion import EVENT, RAPID, Motion
from gclint.tables.program import Program, decode
from gclint.tables.setup import Setup, Stock, Tool
from gclint.tables.setup_sheet import GoodChip, PaperList, PaperTool, ProgramStop, Restart, Sides, Zero

MOST_STOPS = 40
MOST_RESTARTS = 12  # as many as a person can use; the first of each tool, the others spread over the time
SAME_PLACE = 0.1  # mm; a zero this near a corner of the blank is meant to lie on it
NEVER_ABOVE = "the tool is never above the stock between two cuts at a place that is known"
LONGEST_COMMENT = 120  # characters
WAITS = {EVENT["stop"]: "M0", EVENT["optional-stop"]: "M1", EVENT["pallet-stop"]: "M60"}


def paper_list(tables: Tables, rows: tuple[ToolRow, ...], extent: Extent) -> PaperList:
    """`rows` and `extent` are those of `gclint.digest.summary`."""
    setup, motion, box = tables.setup, tables.motion, tables.engagement.box or tables.setup.stock
    passed = _passed(tables)
    bottom = box.bottom if box else None
    top = box.top if box else None
    found, why = restart_moves(tables.program, motion, top)
    chosen = restart_lines(
        tables.program, motion, _spread(found, motion, passed), setup.controller.tool_change in ("does", "stops")
    )
    material = setup.material if isinstance(setup.material, Material) else None
    tools = tuple(
        _tool(tables, number, row) for number, row in zip(summary.order_of_use(motion), rows)
    )
    marks = {number: tool.dial_marks for number, tool in zip(summary.order_of_use(motion), tools)}
    lengths = Lengths(summary.units(motion) == "inch")
    stops = _stops_of(motion)
    low, high = extent.min[2], extent.max[2]
    declared = setup.stock is not None and setup.stock.declared
    thickness = box.top - box.bottom if box and box.top is not None and box.bottom is not None else None
    return PaperList(
        zero=_zero(setup, box, bottom),
        blank=_sides(box.x, box.y) if box else None,
        blank_assumed=not (declared and setup.stock is not None and setup.stock.placed),
        tip=_sides((extent.min[0], extent.max[0]), (extent.min[1], extent.max[1])),
        cut=_cut(tables),
        thickness_mm=_rounded(thickness),
        lowest_z_mm=low,
        lowest_above_table_mm=_rounded(low - bottom) if low is not None and bottom is not None else None,
        highest_z_mm=high,
        tools=tools,
        stops=tuple(
            _stop(tables.program, motion, setup, passed, rows, goes_in, marks.get(tool, ()), lengths)
            for rows, goes_in, tool in stops[:MOST_STOPS]
        ),
        stops_left_out=max(0, len(stops) - MOST_STOPS),
        restarts=tuple(_restart(each, setup, passed) for each in chosen),
        restarts_left_out=len(found) - len(chosen),
        no_restart=why if why or len(found) else NEVER_ABOVE,
        material=material.title if material else "",
        good_chip=_good_chip(material),
        tick=_boxes(tables, tools, thickness, lengths),
    )


def _passed(tables: Tables) -> Floats:
    """[moves + 1] seconds from the start; legs of unknown length have no time to sum."""
    m, seconds = tables.motion, tables.timing.seconds.astype(np.float64)
    return np.concatenate(([0.0], np.cumsum(np.where(np.isfinite(m.length) & (m.length > 0), seconds, 0.0))))


def _zero(setup: Setup, box: Stock | None, bottom: float | None) -> Zero:
    corner = "not-known"
    if setup.stock is not None and setup.stock.placed and box is not None and box.x is not None and box.y is not None:
        corner = _corner(_end(box.x, "left", "right"), _end(box.y, "front", "back"))
    height = setup.z_zero if isinstance(setup.z_zero, str) else "not-declared"
    if isinstance(setup.z_zero, float):
        height = "above-table"
    return Zero(corner, height, _rounded(-bottom) if bottom is not None else None)


def _end(span: tuple[float, float], low: str, high: str) -> str:
    if abs(span[0]) <= SAME_PLACE:
        return low
    if abs(span[1]) <= SAME_PLACE:
        return high
    if abs(span[0] + span[1]) <= 2 * SAME_PLACE:
        return "centre"
    return "inside" if span[0] < 0 < span[1] else "outside"


def _corner(across: str, along: str) -> str:
    ends = {"left", "right", "front", "back"}
    if across in ends and along in ends:
        return f"{along}-{across}"
    if "outside" in (across, along):
        return "outside"
    if across == along == "centre":
        return "centre"
    return "edge" if {across, along} & ends else "inside"


def _sides(x: tuple[float | None, float | None] | None, y: tuple[float | None, float | None] | None) -> Sides | None:
    if x is None or y is None or None in (*x, *y):
        return None
    left, right, front, back = (round(float(v or 0.0), 3) + 0.0 for v in (*x, *y))
    return Sides(-left + 0.0, right, -front + 0.0, back)


def _cut(tables: Tables) -> Sides | None:
    """Box of the tool's rim over the feed moves that meet material."""
    m, pieces = tables.motion, tables.engagement.pieces
    touched = np.zeros(len(m), dtype=bool)
    touched[pieces.move] = True
    rows = np.flatnonzero(touched & (m.kind != RAPID))
    if not len(rows):
        return None
    radius = np.zeros(len(rows))
    for number in distinct(m.tool[rows]).tolist():
        tool = tables.setup.tools.get(number)
        radius[m.tool[rows] == number] = tool.diameter / 2 if tool else 0.0
    spans: list[tuple[float, float]] = []
    bulges = summary.arc_bulges(m, touched & (m.kind != RAPID))
    wide = float(radius.max())
    for axis, (start, end) in enumerate(((m.x0, m.x1), (m.y0, m.y1))):
        low = [np.nanmin(np.fmin(start[rows], end[rows]) - radius)]
        high = [np.nanmax(np.fmax(start[rows], end[rows]) + radius)]
        if len(bulges[axis]):
            low.append(bulges[axis].min() - wide)
            high.append(bulges[axis].max() + wide)
        spans.append((float(min(low)), float(max(high))))
    return _sides(*spans) if all(math.isfinite(v) for span in spans for v in span) else None


def _tool(tables: Tables, number: int, row: ToolRow) -> PaperTool:
    m, tool = tables.motion, tables.setup.tools.get(number)
    moves = np.flatnonzero(m.tool == number)
    timed = moves[np.isfinite(m.length[moves]) & (m.length[moves] > 0)]
    seconds = float(tables.timing.seconds[timed].sum(dtype=np.float64))
    return PaperTool(
        tool=row.tool,
        name=row.name,
        described=described(tool, summary.units(m) == "inch"),
        stickout_mm=float(tool.stickout) if tool and tool.stickout is not None else None,
        dial_marks=dial_marks(tables.setup, row.true_speed_rpm),
        set_speed_rpm=row.set_speed_rpm,
        first_line=int(m.line[moves[0]]),
        time_s=round(seconds, 1) if math.isfinite(seconds) else None,
    )


# stops


def _stops_of(m: Motion) -> list[tuple[Column, int | None, int]]:
    """(rows of events, the tool that goes in, the tool that is then in) of each program stop and tool change.

    Those with no move between them are one.
    """
    changes = m.event_kind == EVENT["change"]
    if not changes.any() and (m.tool >= 0).any():
        changes = m.event_kind == EVENT["select"]  # each T puts its tool in
    events = np.flatnonzero(changes | one_of(m.event_kind, WAITS))
    wanted = _wanted(m)
    made: list[tuple[Column, int | None, int]] = []
    tool = -2
    for rows in _together(m, events):
        kinds = m.event_kind[rows].tolist()
        changed = [wanted[row] for row, kind in zip(rows.tolist(), kinds) if kind not in WAITS]
        goes_in = changed[-1] if changed and changed[-1] != tool else None
        if goes_in is None and not set(kinds) & set(WAITS):
            continue  # the same tool called again
        tool = tool if goes_in is None else goes_in
        made.append((rows, goes_in, tool))
    return made


def _wanted(m: Motion) -> list[int]:
    """[events] the tool the program wants at a change there: a controller that passes over M6 keeps the one it has."""
    own = np.arange(len(m.event_kind))
    selected = np.maximum.accumulate(np.where(m.event_kind == EVENT["select"], own, -1)) if len(own) else own
    values = np.clip(np.nan_to_num(m.event_value[np.where(selected >= 0, selected, own)], nan=-1.0), -1, 2**31)
    wanted: list[int] = values.astype(np.int64).tolist()
    return wanted


def _together(m: Motion, events: Longs) -> list[Column]:
    cuts = np.flatnonzero(np.diff(m.event_move[events]) != 0) + 1
    return [rows for rows in np.split(events, cuts) if len(rows)]


def _stop(
    program: Program, m: Motion, setup: Setup, passed: Floats, rows: Column, goes_in: int | None,
    marks: tuple[str, ...], lengths: Lengths,
) -> ProgramStop:
    controller = setup.controller
    kinds = [int(kind) for kind in m.event_kind[rows]]
    words = [WAITS.get(kind, "M6" if kind == EVENT["change"] else "T") for kind in kinds]
    halts = controller.program_stop in ("stops", "stops-spindle")
    waits = (halts and any(kind in WAITS for kind in kinds)) or (
        goes_in is not None and controller.tool_change in ("does", "stops")
    )
    line, move = int(m.event_line[rows[-1]]), int(m.event_move[rows[0]])
    first = goes_in is not None and not (m.kind[:move] != RAPID).any()
    says = next((text for row in rows.tolist() if (text := comment_beside(program, int(m.event_line[row])))), "")
    known = setup.tools.get(goes_in) if goes_in is not None else None
    return ProgramStop(
        line=line,
        words=" ".join(dict.fromkeys(words)),
        waits=waits,
        tool=None if goes_in is None or goes_in < 0 else goes_in,
        time_s=_rounded(float(passed[move]), 1),
        says=says,
        do=tuple(_to_do(setup, kinds, waits, first, goes_in, known, marks, says, lengths)),
    )


def _to_do(
    setup: Setup, kinds: list[int], waits: bool, first: bool, goes_in: int | None, tool: Tool | None,
    marks: tuple[str, ...], says: str, lengths: Lengths,
) -> list[str]:
    """What the person does there, in the order of doing it."""
    do: list[str] = []
    controller, by_hand = setup.controller, setup.spindle.started == "by-hand"
    if goes_in is not None and not first and not waits:
        do.append(
            "This machine does not wait here. Do not run past this line before the tool is changed: stop the program "
            "by hand, or run each tool from a file of its own."
        )
    elif EVENT["optional-stop"] in kinds and goes_in is None:
        do.append("The machine waits here only if its switch for optional stops is on.")
    elif goes_in is None and not waits:
        do.append("This machine does not wait here, although the program asks it to.")
    if goes_in is not None:
        called = tool.called if tool else f"tool {goes_in}" if goes_in >= 0 else "the tool"
        out = f", {lengths.length(tool.stickout)} out of the nut" if tool and tool.stickout else ""
        do.append(f"{'Have' if first else 'Put'} {called} in{out}. Set Z zero with it; leave X and Y as they are.")
        if setup.spindle.kind == "dial":
            do.append(f"Set the dial to {marks[0]}." if len(marks) == 1 else "Set the dial: this sheet knows no mark.")
        if by_hand:
            do.append("Start the spindle by hand and let it come up to speed before you go on.")
    elif waits:
        if not says:
            do.append("The program does not say what to do here: find out before you start it.")
        turns = "stands still" if controller.program_stop == "stops-spindle" and not by_hand else "goes on turning"
        do.append(f"The spindle {turns} while the machine waits.")
    return do


def _at(lines: Column, line: int) -> int:
    """Where a line stands among lines; a number of another type would have numpy copy the whole column first."""
    return int(np.searchsorted(lines, lines.dtype.type(line)))


def comment_beside(program: Program, line: int) -> str:
    """The comment on a line, else the one on the line before it if that holds nothing else; "" if there is none."""
    text = _comment_on(program, line)
    at = _at(program.block_line, line - 1)
    alone = not (at < len(program.block_line) and program.block_line[at] == line - 1)
    return text or (_comment_on(program, line - 1) if alone else "")


def _comment_on(program: Program, line: int) -> str:
    row = _at(program.comment_line, line)
    if row >= len(program.comment_line) or program.comment_line[row] != line:
        return ""
    start, end = int(program.comment_start[row]), int(program.comment_end[row])
    said = " ".join(decode(program.data[start : min(end, start + 4 * LONGEST_COMMENT)]).split())
    shown = "".join(c if c.isprintable() else "?" for c in said)
    return shown if len(shown) <= LONGEST_COMMENT else f"{shown[: LONGEST_COMMENT - 3]}..."


# restarts


def _spread(found: Longs, motion: Motion, passed: Floats) -> Longs:
    """The first of each tool, then those that lie nearest to equal steps of time, in the order of the program."""
    if len(found) <= MOST_RESTARTS:
        return found
    at = passed[found]
    at = np.where(np.isfinite(at), at, np.arange(len(found)))
    tools = motion.tool[found]
    chosen = {int(np.argmax(tools == tool)) for tool in distinct(tools)}
    chosen = set(sorted(chosen)[:MOST_RESTARTS])
    for goal in np.linspace(at[0], at[-1], MOST_RESTARTS):
        if len(chosen) < MOST_RESTARTS:
            chosen.add(int(np.argmin(np.abs(at - goal))))
    return found[sorted(chosen)]


def _restart(each: RestartLine, setup: Setup, passed: Floats) -> Restart:
    left = float(passed[-1] - passed[each.move])
    return Restart(
        line=each.line,
        tool=summary.number_of(each.tool, setup),
        start_mm=(round(each.start[0], 4), round(each.start[1], 4), round(each.start[2], 4)),
        words=each.words,
        left_s=_rounded(left, 1),
    )


# what to see and hear, what to tick


def _good_chip(material: Material | None) -> GoodChip | None:
    said = material.good_chip if material else None
    return GoodChip(said.looks, said.sounds, said.standing, said.source) if said else None


def _boxes(
    tables: Tables, tools: tuple[PaperTool, ...], thickness: float | None, lengths: Lengths
) -> tuple[str, ...]:
    setup = tables.setup
    boxes = [f"thickness measured (taken as {lengths.length(thickness)})" if thickness else "thickness measured"]
    marks = list(dict.fromkeys(mark for tool in tools for mark in tool.dial_marks))
    if len(marks) == 1:
        boxes.append(f"dial set to {marks[0]}")
    elif setup.spindle.kind == "dial":
        boxes.append(f"dial set for each tool ({', '.join(marks)})" if marks else "dial set (mark not known)")
    boxes.append("X and Y zero set")
    boxes.append("Z zero set with the first tool")
    if setup.hold.by:
        boxes.append(f"held by {setup.hold.by}, looked at")
    else:
        boxes.append("blank held, clamps out of the way")
    boxes.append("fingerprint compared")
    boxes.append("initials")
    return tuple(boxes)


def _rounded(value: float | None, digits: int = 3) -> float | None:
    return None if value is None or not math.isfinite(value) else round(value, digits) + 0.0
