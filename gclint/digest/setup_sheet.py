"""The paper list: what must be known at the machine, worked out once for the sheet, the page and the JSON."""

from __future__ import annotations

import math

import numpy as np

from gclint.columns import Column, Floats, Longs, distinct, one_of
from gclint.digest import hands, summary
from gclint.digest.tool_facts import described, dial_marks
from gclint.digest.words import Lengths
from gclint.motion.restart import RestartLine, restart_lines, restart_moves
from gclint.run import Tables
from gclint.tables.finding import Extent, ToolRow
from gclint.tables.material import Material
from gclint.tables.motion import EVENT, RAPID, Motion
from gclint.tables.program import Program, decode
from gclint.tables.setup import Controller, Setup, Stock, Tool
from gclint.tables.setup_sheet import GoodChip, ProgramStop, Restart, SetupSheet, SetupSheetTool, Sides, Zero

MOST_STOPS = 40
MOST_RESTARTS = 12  # as many as a person can use; the first of each tool, the others spread over the time
SAME_PLACE = 0.1  # mm; a zero this near a corner of the blank is meant to lie on it
NEVER_ABOVE = "the tool is never above the stock between two cuts at a place that is known"
LONGEST_COMMENT = 120  # characters
WAITS = {EVENT["stop"]: "M0", EVENT["optional-stop"]: "M1", EVENT["pallet-stop"]: "M60"}
PIECE = 4096  # moves looked at together
SPINDLE_ON = (EVENT["spindle-cw"], EVENT["spindle-ccw"])
STAND_IN = "any"  # the card where no controller is declared: it tells nothing about the one at the machine


def setup_sheet_of(tables: Tables, rows: tuple[ToolRow, ...], extent: Extent) -> SetupSheet:
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
    return SetupSheet(
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
            stop
            for rows, goes_in, tool in stops[:MOST_STOPS]
            if (stop := _stop(tables.program, motion, setup, passed, rows, goes_in, marks.get(tool, ()), lengths))
        ),
        stops_left_out=max(0, len(stops) - MOST_STOPS),
        restarts=tuple(_restart(each, setup, passed) for each in chosen),
        restarts_left_out=len(found) - len(chosen),
        no_restart=why if why or len(found) else NEVER_ABOVE,
        material=material.title if material else "",
        good_chip=_good_chip(material),
        tick=_boxes(tables, tools, stops, thickness, lengths),
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


def _tool(tables: Tables, number: int, row: ToolRow) -> SetupSheetTool:
    m, tool = tables.motion, tables.setup.tools.get(number)
    moves = np.flatnonzero(m.tool == number)
    timed = moves[np.isfinite(m.length[moves]) & (m.length[moves] > 0)]
    seconds = float(tables.timing.seconds[timed].sum(dtype=np.float64))
    return SetupSheetTool(
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
) -> ProgramStop | None:
    """None where nothing is to be done at the line: the first tool, where the machine does not wait for it there."""
    kinds = [int(kind) for kind in m.event_kind[rows]]
    words = [WAITS.get(kind, "M6" if kind == EVENT["change"] else "T") for kind in kinds]
    waits = _waits(setup.controller, kinds)
    line, move = int(m.event_line[rows[-1]]), int(m.event_move[rows[0]])
    first = goes_in is not None and _is_first(m, move)
    if first and not waits and not set(kinds) & set(WAITS):
        return None
    says = _says(program, m, rows)
    known = setup.tools.get(goes_in) if goes_in is not None else None
    by_itself = not waits and goes_in is not None and _by_itself(setup.controller) and EVENT["change"] in kinds
    return ProgramStop(
        line=line,
        words=" ".join(dict.fromkeys(words)),
        waits=waits,
        here=_here(waits, by_itself, goes_in is not None, kinds),
        tool=None if goes_in is None or goes_in < 0 else goes_in,
        time_s=_rounded(float(passed[move]), 1),
        says=says,
        do=tuple(
            _if_by_hand(setup)
            if by_itself
            else _to_do(m, setup, rows, first, goes_in, known, marks, says, lengths)
        ),
    )


def _is_first(m: Motion, move: int) -> bool:
    """Whether nothing is cut before this move, so that the tool can be in when the program starts."""
    feed = _next_feed(m, 0)
    return feed is None or feed >= move


def _next_feed(m: Motion, move: int) -> int | None:
    """The first feed move from this one on, looked for piece by piece: a program may have millions."""
    for start in range(move, len(m.kind), PIECE):
        feeds = np.flatnonzero(m.kind[start : start + PIECE] != RAPID)
        if len(feeds):
            return start + int(feeds[0])
    return None


def _says(program: Program, m: Motion, rows: Column) -> str:
    return next((text for row in rows.tolist() if (text := comment_beside(program, int(m.event_line[row])))), "")


def _by_itself(controller: Controller) -> bool:
    """A card says that M6 changes the tool; the card that stands in where none is declared says nothing."""
    return controller.tool_change == "does" and controller.name != STAND_IN


def _waits(controller: Controller, kinds: list[int]) -> bool | None:
    """Whether this controller waits for a person at these events; None: not known."""
    declared = controller.name != STAND_IN
    if declared and EVENT["change"] in kinds and controller.tool_change == "stops":
        return True
    halts = controller.program_stop in ("stops", "stops-spindle")
    if halts and set(kinds) & {EVENT["stop"], EVENT["pallet-stop"]}:
        return True if declared else None
    if not declared or (halts and EVENT["optional-stop"] in kinds):
        return None
    return False


def _here(waits: bool | None, by_itself: bool, changes: bool, kinds: list[int]) -> str:
    if waits:
        return "The program stops here."
    if by_itself:
        return "The machine changes the tool by itself: hands away until it goes on."
    if waits is None and EVENT["optional-stop"] in kinds and not changes:
        return "The machine waits here only if its switch for optional stops is on."
    if waits is None:
        does = "wait for you, change the tool itself or run on" if changes else "wait for you or run on"
        return f"No controller is declared, and yours may {does} here: find out before you start."
    if changes:
        return (
            "This machine does not wait here. Run each tool from a file of its own, or break the program off by hand "
            "before this line; then:"
        )
    return "This machine does not wait here, although the program asks it to."


def _if_by_hand(setup: Setup) -> list[str]:
    collet = hands.before_the_collet(setup.spindle)
    return [f"If it asks you to change by hand: {hands.OFF[:1].lower()}{hands.OFF[1:]} {collet}"]


def _to_do(
    m: Motion, setup: Setup, rows: Column, first: bool, goes_in: int | None, tool: Tool | None,
    marks: tuple[str, ...], says: str, lengths: Lengths,
) -> list[str]:
    """The steps of the person there, in their order: the spindle stands still before a hand does anything."""
    spindle = setup.spindle
    do = [hands.off(not hands.by_hand(spindle) and _left_on(m, setup, int(rows[-1])))]
    if goes_in is not None:
        do.append(hands.before_the_collet(spindle))
        out = f", {lengths.length(tool.stickout)} out of the nut" if tool and tool.stickout else ""
        do.append(f"{'Have' if first else 'Put'} {_called(tool, goes_in)} in{out}.")
        do.append("Set Z zero with it; leave X and Y as they are.")
        if spindle.kind == "dial":
            do.append(f"Set the dial to {marks[0]}." if len(marks) == 1 else "Set the dial: this sheet knows no mark.")
    else:
        do.append(
            "Do what the program says there."
            if says
            else "The program does not say what to do here: find out before you start it."
        )
    do.append(hands.go_on(spindle, goes_in is not None, _starts_again(m, int(rows[-1]))))
    return do


def _called(tool: Tool | None, number: int) -> str:
    return tool.called if tool else f"tool {number}" if number >= 0 else "the tool"


def _left_on(m: Motion, setup: Setup, row: int) -> bool:
    """Whether the spindle still turns, by the program and this controller, when an event has been executed."""
    kinds = m.event_kind[: row + 1]
    starts = np.flatnonzero(one_of(kinds, SPINDLE_ON))
    ends = [EVENT["spindle-off"]]
    if setup.controller.tool_change != "ignores":
        ends.append(EVENT["change"])
    if setup.controller.program_stop == "stops-spindle":
        ends += [EVENT["stop"], EVENT["pallet-stop"]]
    stops = np.flatnonzero(one_of(kinds, ends))
    return bool(len(starts)) and (not len(stops) or int(starts[-1]) > int(stops[-1]))


def _starts_again(m: Motion, row: int) -> bool | None:
    """Whether the program starts the spindle between an event and the next feed move; None: there is none."""
    feed = _next_feed(m, int(m.event_move[row]))
    if feed is None:
        return None
    later = slice(row + 1, None)
    return bool((one_of(m.event_kind[later], SPINDLE_ON) & (m.event_move[later] <= feed)).any())


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
    tables: Tables, tools: tuple[SetupSheetTool, ...], stops: list[tuple[Column, int | None, int]],
    thickness: float | None, lengths: Lengths,
) -> tuple[str, ...]:
    """What is done before the start, in its order: the first tool, the settings, and the hands away at last."""
    setup, m = tables.setup, tables.motion
    boxes = [hands.OFF, hands.before_the_collet(setup.spindle)]
    boxes += _tools_in(tables, tools, stops, lengths)
    boxes.append(f"thickness measured (taken as {lengths.length(thickness)})" if thickness else "thickness measured")
    marks = list(dict.fromkeys(mark for tool in tools for mark in tool.dial_marks))
    if len(marks) == 1:
        boxes.append(f"dial set to {marks[0]}")
    elif setup.spindle.kind == "dial" and tools and len(tools[0].dial_marks) == 1:
        boxes.append(f"dial set to {tools[0].dial_marks[0]} for the first tool (in all: {', '.join(marks)})")
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
    boxes.append(hands.go_on(setup.spindle, True, bool(one_of(m.event_kind, SPINDLE_ON).any())))
    return tuple(boxes)


def _tools_in(
    tables: Tables, tools: tuple[SetupSheetTool, ...], stops: list[tuple[Column, int | None, int]], lengths: Lengths
) -> list[str]:
    """The tool that must be in before the start, with what the program says of it; all of them for a changer."""
    setup, m = tables.setup, tables.motion
    if not tools:
        return []
    if _by_itself(setup.controller) and (m.event_kind == EVENT["change"]).any():
        named = ", ".join(str(tool.tool) for tool in tools if tool.tool is not None)
        which = f"tool{'s' if ',' in named else ''} {named}"
        return [f"in the changer, each with its length measured: {which}"] if named else []
    number = int(m.tool[0]) if len(m.tool) else -1
    rows, goes_in, _ = stops[0] if stops else (np.zeros(0, dtype=np.int64), None, -1)
    says = ""
    if goes_in is not None and _is_first(m, int(m.event_move[rows[0]])):
        number, says = goes_in, _says(tables.program, m, rows)
    if number < 0 and tools[0].tool is not None:
        number = tools[0].tool
    tool = setup.tools.get(number)
    out = f", {lengths.length(tool.stickout)} out of the nut" if tool and tool.stickout else ""
    return [f"{_called(tool, number)} in{out}" + (f'; the program says: "{says}"' if says else "")]


def _rounded(value: float | None, digits: int = 3) -> float | None:
    return None if value is None or not math.isfinite(value) else round(value, digits) + 0.0
