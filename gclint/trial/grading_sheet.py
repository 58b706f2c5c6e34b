"""The grading sheet: one HTML file to print, with a map of the blank, the scales, and a row for each cut."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from gclint.digest.hands import OFF, before_the_collet, by_hand, go_on
from gclint.report.templates import templates
from gclint.report.text.cautions import cautions, of_material
from gclint.tables.setup import Setup
from gclint.trial.groove import path_of
from gclint.trial.plan import FAULTS, Cut, Plan, Shape, risks
from gclint.trial.program import start_of
from gclint.trial.scales import scales

WIDE = 184.0  # mm of paper for the map
HIGH = 150.0
LABEL = 3.4  # mm of paper: a cut's number
ROOMY = 36.0  # mm of paper: fields at least as wide show how they are cut, not their numbers alone
AXIS = 9.0  # mm of paper round the blank


def sheet(plan: Plan, setup: Setup) -> str:
    """Return self-contained HTML that prints on A4 in black and white; `setup` is what the plan's program is for."""
    left_out = [cut for cut in plan.cut if cut.risky and not cut.confirmed]
    return templates(Path(__file__).parent).get_template("sheet.html.j2").render(
        plan=plan,
        coupon=" x ".join(f"{float(each):g}" for each in plan.coupon),
        corner=f"X{float(plan.corner[0]):g} Y{float(plan.corner[1]):g}",
        tools=[_tool(plan, number) for number in dict.fromkeys(cut.tool for cut in plan.cut)],
        rows=_rows([cut for cut in plan.cut if cut not in left_out], setup),
        off=OFF,
        hand_started=by_hand(setup.spindle),
        at_the_collet=before_the_collet(setup.spindle),
        cautions=cautions(of_material(setup.material)),
        risky=risks(cut for cut in plan.cut if cut.confirmed),
        left_out=risks(left_out),
        map=_map(plan),
        scales=[scales()[fault] for fault in FAULTS],
    )


def _tool(plan: Plan, number: int) -> str:
    tool = next(tool for tool in plan.tool if tool.number == number)
    parts = [tool.name or tool.shape, f"{float(tool.diameter):.4g} mm", _flutes(tool.flutes)]
    return f"tool {number}: {', '.join(part for part in (*parts, tool.helix or '') if part)}"


def _flutes(count: int | None) -> str:
    return "" if count is None else "1 flute" if count == 1 else f"{count} flutes"


def _rows(cuts: list[Cut], setup: Setup) -> list[dict[str, Any]]:
    """The cuts in their order, each with what hands do before it, a box for each."""
    rows = []
    changer = setup.controller.tool_change == "does" and setup.controller.name != "any" and not setup.spindle.dial
    for before, cut in zip([None, *cuts], cuts):
        steps: list[str] = []
        tool, dial = before is None or before.tool != cut.tool, cut.dial is not None
        if tool and changer:
            rows.append(_row(cut) | {"steps": [f"The machine puts tool {cut.tool} in by itself: hands away."]})
            continue
        if tool:
            steps += [before_the_collet(setup.spindle), f"Tool {cut.tool} in, Z zero set with it."]
        if dial and (tool or before is None or before.dial != cut.dial):
            steps.append(f"Dial set to {cut.dial}.")
        if steps:
            steps = [OFF, *steps, go_on(setup.spindle, tool, True)]
        rows.append(_row(cut) | {"steps": steps})
    return rows


def _row(cut: Cut) -> dict[str, Any]:
    speed = f"dial {cut.dial}" if cut.dial is not None else f"S{float(cut.speed):g}"
    return {
        "number": cut.number,
        "tool": cut.tool,
        "speed": speed,
        "true": f"{float(cut.true_speed):g}" if cut.true_speed is not None else "",
        "feed": f"{float(cut.feed):g}",
        "entry": cut.entry,
        "depth": f"{float(cut.depth):g}",
        "repeat_of": cut.repeat_of,
        "risky": cut.risky,
    }


def _map(plan: Plan) -> dict[str, Any]:
    """The blank from above in mm of paper, Y upward on the paper."""
    width, height = float(plan.coupon[0]), float(plan.coupon[1])
    scale = min(WIDE / width, HIGH / height)
    widest = max(float(tool.diameter) for tool in plan.tool)
    roomy = float(plan.field[0]) * scale >= ROOMY

    def place(x: float, y: float) -> tuple[float, float]:
        return (
            round((x - float(plan.corner[0])) * scale + AXIS, 2),
            round((float(plan.corner[1]) + height - y) * scale + AXIS, 2),
        )

    cuts = []
    for cut in plan.cut:
        made = cut.confirmed or not cut.risky
        tool = next(tool for tool in plan.tool if tool.number == cut.tool)
        start = start_of(cut, widest)
        x, y = place(float(cut.at[0]), float(cut.at[1]) + float(plan.field[1]))
        cuts.append({
            "number": cut.number,
            "made": made,
            "risky": bool(cut.risky),
            "path": _path(plan.shape, start, scale, place) if plan.shape else "",
            "stroke": round(float(tool.diameter) * scale, 2),
            "start": place(*start),
            "label": (round(x + 0.6, 2), round(y + LABEL + 0.2, 2)),
            "field": (x, y, round(float(plan.field[0]) * scale, 2), round(float(plan.field[1]) * scale, 2)),
            "words": _words(cut, roomy),
        })  # fmt: skip
    zero = place(0.0, 0.0)
    inside = all(-0.1 <= zero[n] - AXIS <= side * scale + 0.1 for n, side in enumerate((width, height)))
    return {
        "box": (round(width * scale + 2 * AXIS, 2), round(height * scale + 2 * AXIS, 2)),
        "blank": (AXIS, AXIS, round(width * scale, 2), round(height * scale, 2)),
        "cuts": cuts,
        "zero": zero if inside else None,
        "label": LABEL,
        "roomy": roomy,
        "small": round(min(2.1, 0.22 * float(plan.field[1]) * scale), 2),
        "scale": f"{scale:.2g}",
    }


def _words(cut: Cut, roomy: bool) -> str:
    """'B F1450 ramp =3'; where there is no room for it, '=3' alone."""
    speed = cut.dial if cut.dial is not None else f"S{float(cut.speed):g}"
    again = f" ={cut.repeat_of}" if cut.repeat_of is not None else ""
    if not roomy:
        return again.strip()
    return f"{speed} F{float(cut.feed):g} {cut.entry}{again}"


def _path(shape: Shape, start: tuple[float, float], scale: float, place: Any) -> str:
    """The tool's middle as an SVG path."""
    x, y = place(*start)
    words = [f"M{x} {y}"]
    radius = round(float(shape.radius) * scale, 2)
    for move in path_of(shape):
        x, y = place(start[0] + move.x, start[1] + move.y)
        words.append(f"L{x} {y}" if move.centre is None else f"A{radius} {radius} 0 0 {0 if move.left else 1} {x} {y}")
    return " ".join(words)
