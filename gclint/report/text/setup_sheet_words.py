"""The paper list in words, and the sketch of where zero lies."""

from __future__ import annotations

from typing import Any

from gclint.digest.words import Lengths, behind, duration, span
from gclint.tables.finding import Checked
from gclint.tables.setup_sheet import ProgramStop, SetupSheet, Sides

CORNERS = {
    "front-left": "the front left corner of the blank", "front-right": "the front right corner of the blank",
    "back-left": "the back left corner of the blank", "back-right": "the back right corner of the blank",
    "centre": "the middle of the blank", "edge": "an edge of the blank", "inside": "inside the blank's outline",
    "outside": "outside the blank's outline", "not-known": "not known: the blank's place is not declared",
}  # fmt: skip
HEIGHTS = {
    "stock-top": "on the top of the blank", "table": "on the table", "above-table": "at a height above the table",
    "not-declared": "not declared; taken as the top of the blank",
}
WIDE, HIGH, EDGE = 200.0, 150.0, 42.0  # of the sketch, px: its largest drawing, and the room for numbers around it
LETTER = 7.0  # px that a letter of them takes


def setup_sheet(checked: Checked) -> dict[str, Any] | None:
    """Values for the template; None where nothing was worked out."""
    paper = checked.paper
    if paper is None:
        return None
    lengths = Lengths(checked.units == "inch")
    sides = paper.blank or paper.tip
    return {
        "sketch": _sketch(sides, lengths) if sides else None,
        "facts": _facts(paper, lengths),
        "tools": [
            {
                "name": "not named" if tool.tool is None else f"{tool.tool}", "described": tool.name or tool.described,
                "stickout": lengths.length(tool.stickout_mm) if tool.stickout_mm is not None else "?",
                "speed": f"dial {', '.join(tool.dial_marks)}" if tool.dial_marks else
                         span(*tool.set_speed_rpm, "rev/min", 5) if tool.set_speed_rpm else "?",
                "line": tool.first_line, "time": duration(tool.time_s),
            }
            for tool in paper.tools
        ],
        "stops": [
            {"line": stop.line, "words": _asked(stop), "here": stop.here, "do": stop.do, "says": stop.says,
             "time": duration(stop.time_s) if stop.time_s else ""}
            for stop in paper.stops
        ],
        "stops_left_out": paper.stops_left_out,
        "restarts": [
            {"line": each.line, "tool": "" if each.tool is None else each.tool, "words": " | ".join(each.words),
             "at": " ".join(f"{axis} {lengths.place(value)}" for axis, value in zip("XYZ", each.start_mm)),
             "left": duration(each.left_s) if each.left_s is not None else "?"}
            for each in paper.restarts
        ],
        "restarts_left_out": paper.restarts_left_out,
        "no_restart": paper.no_restart,
        "good_chip": paper.good_chip,
        "good_chip_behind": behind(paper.good_chip.standing, paper.good_chip.source) if paper.good_chip else "",
        "material": paper.material,
        "tick": paper.tick,
    }  # fmt: skip


def _asked(stop: ProgramStop) -> str:
    return f"T{stop.tool}" if stop.words == "T" and stop.tool is not None else stop.words


def _facts(paper: SetupSheet, lengths: Lengths) -> list[tuple[str, str]]:
    height = HEIGHTS[paper.zero.height]
    if paper.zero.above_table_mm is not None and paper.zero.height != "table":
        height += f", {lengths.length(paper.zero.above_table_mm)} above the table"
    rows = [("zero", f"{CORNERS[paper.zero.corner]}; Z {height}")]
    for label, sides in (("blank", paper.blank), ("the tip", paper.tip), ("the cut", paper.cut)):
        if sides is not None:
            assumed = " (assumed)" if label == "blank" and paper.blank_assumed else ""
            rows.append((label, f"from zero {_reach(sides, lengths)}{assumed}"))
    if paper.thickness_mm is not None:
        rows.append(("thickness", lengths.length(paper.thickness_mm)))
    if paper.lowest_z_mm is not None:
        rows.append(("lowest", f"Z {lengths.place(paper.lowest_z_mm)} {lengths.unit}{_above(paper, lengths)}"))
    if paper.highest_z_mm is not None:
        rows.append(("highest", f"Z {lengths.place(paper.highest_z_mm)} {lengths.unit}"))
    return rows


def _above(paper: SetupSheet, lengths: Lengths) -> str:
    over = paper.lowest_above_table_mm
    if over is None:
        return "; how far above the table is not known"
    if over < 0:
        return f", {lengths.length(-over)} into the table"
    return f", {lengths.length(over)} above the table" if over else ", on the table"


def _reach(sides: Sides, lengths: Lengths) -> str:
    """'left 10, right 100, front 10, back 60 mm'; 'X 10 to 60, Y 5 to 40 mm' where zero is not among it."""
    if min(sides.left, sides.right, sides.front, sides.back) < 0:
        x = f"X {lengths.place(-sides.left)} to {lengths.place(sides.right)}"
        return f"{x}, Y {lengths.place(-sides.front)} to {lengths.place(sides.back)} {lengths.unit}"
    parts = [f"{name} {lengths.place(getattr(sides, name))}" for name in ("left", "right", "front", "back")]
    return f"{', '.join(parts)} {lengths.unit}"


def _sketch(sides: Sides, lengths: Lengths) -> dict[str, Any]:
    """Places in px: the blank (or what the tip reaches), zero and the numbers; zero always lies in the drawing."""
    x0, x1 = min(-sides.left, 0.0), max(sides.right, 0.0)
    y0, y1 = min(-sides.front, 0.0), max(sides.back, 0.0)
    scale = min(WIDE / max(x1 - x0, 1e-6), HIGH / max(y1 - y0, 1e-6))
    numbers = {name: lengths.place(getattr(sides, name)) for name in ("left", "right", "front", "back")}
    beside = max(EDGE, LETTER * (max(len(numbers["left"]), len(numbers["right"])) + len("right ")) + 8)
    wide, high = (x1 - x0) * scale + 2 * beside, (y1 - y0) * scale + 2 * EDGE

    def place(x: float, y: float) -> tuple[float, float]:
        return round(beside + (x - x0) * scale, 1), round(high - EDGE - (y - y0) * scale, 1)

    left, top = place(-sides.left, sides.back)
    right, bottom = place(sides.right, -sides.front)
    zero_x, zero_y = place(0.0, 0.0)
    return {
        "wide": round(wide), "high": round(high), "left": left, "top": top, "right": right, "bottom": bottom,
        "zero_x": zero_x, "zero_y": zero_y,
        "numbers": numbers,
        "unit": lengths.unit,
    }  # fmt: skip
