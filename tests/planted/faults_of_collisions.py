"""Ways into something: standing stock, clamps, the table, the machine's ends; and travel that is too low."""

from __future__ import annotations

from collections.abc import Iterator
from random import Random
from typing import Any

import numpy as np

from tests.planted.base import Base, Declared
from tests.planted.harness import ANYWHERE, Plant, Span, at, onward, plants

LEFT_STANDING = {
    "full-width-too-deep": "what was not cut is left to the next pass",
    "too-deep": "the same",
    "inside-corner": "the same",
    "opening-slot-too-fast": "the same",
    "chip-too-thick": "the same",
    "straight-plunge": "the way before it was not cut",
    "compression-too-shallow": "the next pass is the first",
}
LOST = {
    "word-missing": "an arc that follows has no G2 or G3 any more",
    "arc-does-not-close": "the same",
    "feed-missing": "the first feed stood on the line",
}


def _drawn(dice: Random, things: list[Any]) -> list[Any]:
    return dice.sample(things, len(things))


def _z_alone(base: Base, line: int) -> bool:
    return {w[0] for w in base.sheet().words(line)} <= set("NGZF")


# ---- rapids


@plants(
    "rapid-through-stock",
    LEFT_STANDING
    | {"program-stop-in-material": "a stop before the travel", "ends-in-material": "the program's last cut"},
)
def lift_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    """The tool goes to its next place at the depth it has just cut at."""
    m = base.tables.motion
    lifts = [
        k for k in base.moves((0,), cutting=False)
        if base.plain and 0 < k < len(m) - 1 and m.z1[k] > m.z0[k] and base.removed[k - 1] > 0 and m.kind[k + 1] == 0
        and m.x1[k] == m.x0[k] and m.y1[k] == m.y0[k] and _z_alone(base, base.line_of(k))
    ]  # fmt: skip
    for lift in _drawn(dice, lifts):
        travel = lift + 1
        while travel < len(m) and m.kind[travel] == 0 and m.z1[travel] > m.z0[lift] and m.z1[travel] != m.z0[travel]:
            travel += 1  # Z first, once more
        low = _standing_in_the_way(base, travel, float(m.z0[lift]), lift)
        if travel >= len(m) or m.kind[travel] or not base.once(travel) or low < 0.5:
            continue
        sheet = base.sheet()
        for k in range(lift, travel):
            sheet = base.explicit(sheet, base.line_of(travel))
            if base.line_of(k) != base.line_of(travel) and _z_alone(base, base.line_of(k)):
                sheet.delete(base.line_of(k))
        sheet.drop(base.line_of(travel), "Z")
        if sheet.has(base.line_of(travel)):
            says = f"no lift before the travel, {low:.1f} mm of standing stock"
            cut = sheet.now(base.line_of(lift - 1))
            yield Plant(sheet.bytes(), at(sheet, base.line_of(travel)), says, follows=onward(cut))


def _standing_in_the_way(base: Base, move: int, z: float, until: int) -> float:
    """How much stock (mm above z) stands in the end on the straight way of a move."""
    m, e = base.tables.motion, base.tables.engagement
    tool = base.tool_of(until)
    if move >= len(m) or e.box is None or e.box.x is None or e.box.y is None or tool is None or not e.cut.size:
        return 0.0
    ny, nx = e.cut.shape
    share = np.linspace(0, 1, 60)
    x, y = m.x0[move] + share * (m.x1[move] - m.x0[move]), m.y0[move] + share * (m.y1[move] - m.y0[move])
    if not (np.isfinite(x).all() and np.isfinite(y).all()):
        return 0.0
    i = ((x - e.box.x[0]) / (e.box.x[1] - e.box.x[0]) * nx).astype(int)
    j = ((y - e.box.y[0]) / (e.box.y[1] - e.box.y[0]) * ny).astype(int)
    inside = (i >= 0) & (i < nx) & (j >= 0) & (j < ny)
    if not inside.any():
        return 0.0
    return float(base.top - e.cut[j[inside], i[inside]].min() - z)


LED_IN = {"outside-stock": "the way in from beside the blank leads to no cut any more"}


@plants("rapid-through-stock", LEFT_STANDING | LOST | LED_IN
    | {"depth-step-suspect": "a lap at feed is missing at this depth"})
def cut_written_as_rapid(base: Base, dice: Random) -> Iterator[Plant]:
    """G0 where G1 was meant, on one line of a cut."""
    m = base.tables.motion
    cuts = [k for k in base.moves((1,), cutting=True, level=True, least=5) if base.removed[k] > 5 and base.plain]
    for move in _drawn(dice, cuts):
        sheet, line, after = base.sheet(), base.line_of(move), base.next_line(move)
        if after is None or m.kind[move + 1] > 1:
            continue
        base.explicit(sheet, after)
        base.explicit(sheet, line)
        sheet.set(line, "G", 0, next(n for n, c in enumerate(sheet.codes(line)) if c in (0, 1)))
        yield Plant(sheet.bytes(), at(sheet, line), "G0 for G1", follows=onward(line - 3))


@plants("rapid-through-stock", {"plunge-too-fast": "the cut begins where the rapid ends"})
def rapid_down_into_the_blank(base: Base, dice: Random) -> Iterator[Plant]:
    """A rapid that ends below the top, over stock that nothing has cut: Z given as a depth and not as a height."""
    for line in _drawn(dice, base.gaps) if base.plain else []:
        move = int((base.tables.motion.line == line).argmax())
        tool = base.tool_of(move)
        spot = next(base.spots(dice, tool.diameter / 2 + 0.3), None) if tool else None
        if spot is None:
            continue
        n, deep = base.sheet().number, dice.uniform(0.6, 3)
        x, y, z = (n(v / base.unit) for v in (*spot, base.top - deep))
        sheet = base.aside(line, f"G0 X{x} Y{y}", f"G0 Z{z}")
        new = sheet.now(line)
        yield Plant(sheet.bytes(), (new - 3, new - 3), f"a rapid {deep:.1f} mm into the blank")


@plants("rapid-not-straight", {"dwell-unit-suspect": "the wait before it is long on this controller"})
def all_axes_at_once(base: Base, dice: Random) -> Iterator[Plant]:
    """From above the blank to beside it and below its top in one line, where each axis goes at its own rate."""
    box = base.tables.engagement.box
    if base.shop is None or not base.plain or box is None or box.x is None or box.y is None or base.job.get("keep_out"):
        return
    for line in _drawn(dice, base.gaps):
        move = int((base.tables.motion.line == line).argmax())
        tool = base.tool_of(move)
        if tool is None:
            continue
        beside = box.x[1] + tool.diameter / 2 + dice.uniform(4, 8)
        cut = base.tables.engagement.cut
        whole = np.flatnonzero(cut[:, -max(1, cut.shape[1] // 50) :].max(axis=1) == 0)  # the edge stands there
        if not len(whole):
            continue
        y = box.y[0] + (box.y[1] - box.y[0]) * (float(dice.choice(whole.tolist())) + 0.5) / cut.shape[0]
        x, z, over = beside, base.top - dice.uniform(1, 3), base.top + 70
        inside = box.x[1] - tool.diameter / 2 - dice.uniform(5, 15)
        n = base.sheet().number
        begin = f"G0 X{n(inside / base.unit)} Y{n(y / base.unit)}"
        down = f"G0 X{n(x / base.unit)} Z{n(z / base.unit)}"
        told = base.with_shop("machine", controller="bent.toml")
        sheet = base.aside(line, f"G0 Z{n(over / base.unit)}", begin, down)
        new = sheet.now(line)
        yield Plant(sheet.bytes(), (new - 3, new - 3), "down beside the blank, all axes at once", follows=ANYWHERE,
                    files={"bent.toml": BENT}, **told)  # fmt: skip


BENT = """
name = "bent"
title = "a controller whose axes go each at its own rate"
about = "Invented for the tests."
source = "invented"
standing = "practice"
rapids = "each-axis"
tool_change = "does"
program_stop = "stops"
dwell_unit = "s"
resolution = "0.001 mm"
end_required = false
start_state = []
[arcs]
tolerance = "0.005 mm"
share = 0.001
most = "0.5 mm"
centres = "incremental"
"""


# ---- heights of travel


@plants("first-move-low", {"travel-too-low": "the tool travels at whatever height it was left"})
def first_lift_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    """The first travel in X and Y comes before any Z."""
    m = base.tables.motion
    moving = {n for letter in "XY" for n in base.sheet().lines_with(letter)}
    across = next((k for k in range(len(m)) if base.line_of(k) in moving), None)
    if across is None or not base.plain or not base.once(across) or m.kind[across] > 1:
        return
    line, sheet = base.line_of(across), base.sheet()
    before = [n for n in sheet.lines_with("Z") if n < line]
    if not before or {28.0, 53.0} & set(sheet.codes(line)):
        return  # it has none as it is
    base.explicit(sheet, line)
    text = sheet.text(line)
    n = base.next_line(across)
    if n:
        base.explicit(sheet, n)
    sheet.before(before[0], text)
    where = sheet.now(before[0]) - 1
    yield Plant(sheet.bytes(), (where, where), "X and Y before the first Z")


@plants("travel-too-low")
def travel_just_over_the_blank(base: Base, dice: Random) -> Iterator[Plant]:
    """The height between two cuts is a fraction of a millimetre."""
    m, sheet = base.tables.motion, base.sheet()
    if not base.plain or base.run.tables is None or "stock" not in base.job:
        return
    box = base.tables.engagement.box
    for line in _drawn(dice, base.gaps):
        move = int((m.line == line).argmax())
        low = base.top + dice.uniform(0.1, 0.8)
        if box is None or box.x is None or box.y is None or sheet.word(line, "Z") is not None or m.kind[move]:
            continue
        if not (box.x[0] < m.x1[move] < box.x[1] and box.y[0] < m.y1[move] < box.y[1]):
            continue
        n = base.sheet().number
        planted = base.explicit(base.sheet(), line)
        back = sheet.number(float(m.z1[move]) / base.unit)
        planted.before(line, f"G0 Z{n(low / base.unit)}").after(line, f"G0 Z{back}")
        after = base.next_line(move)
        if after:
            planted = base.explicit(planted, after)
        yield Plant(planted.bytes(), at(planted, line), f"travel {low - base.top:.1f} mm over the blank")


def _clamp(base: Base, x: float, y: float, low: float, high: float, size: float) -> dict[str, Declared]:
    """A box around a point of the tool's way, as one more keep-out."""
    corner = [[f"{v - size / 2:.3f} mm" for v in (x, y)], [f"{v + size / 2:.3f} mm" for v in (x, y)]]
    box = {"name": "a clamp", "from": [*corner[0], f"{low:.3f} mm"], "to": [*corner[1], f"{high:.3f} mm"]}
    return base.told(job=lambda job: job.update(keep_out=[*job.get("keep_out", []), box]))


def _passing(base: Base, x: float, y: float, height: float, size: float) -> list[int]:
    """Lines of moves that come near the box, and near or below its top."""
    m, lines = base.tables.motion, []
    for k in range(len(m)):
        tool = base.tool_of(k)
        reach = size + (tool.diameter if tool else 0) / 2 + 1 + (abs(m.sweep[k]) > 0) * 1e3
        xs, ys = sorted((m.x0[k], m.x1[k])), sorted((m.y0[k], m.y1[k]))
        near = not (xs[1] < x - reach or xs[0] > x + reach or ys[1] < y - reach or ys[0] > y + reach)
        if near and not min(m.z0[k], m.z1[k]) > height:
            lines.append(base.line_of(k))
    return lines


LOW_TRAVEL = {"travel-too-low": "rapids pass it too", "cuts-fixture": "cuts pass it too",
              "first-move-low": "there is something to run into now"}  # fmt: skip


@plants("cuts-fixture", LOW_TRAVEL)
def clamp_on_the_way_of_a_cut(base: Base, dice: Random) -> Iterator[Plant]:
    m = base.tables.motion
    for move in _drawn(dice, list(base.moves((1, 2, 3), cutting=True, least=2))):
        x, y, size = float(m.x1[move]), float(m.y1[move]), dice.uniform(8, 25)
        high = base.top + dice.uniform(5, 25)
        lines = _passing(base, x, y, high, size)
        told = _clamp(base, x, y, base.top - 5, high, size)
        line = base.line_of(move)
        yield Plant(base.data, (line, line), "a clamp stands where the tool cuts", follows=(1, max(lines)), **told)


def _span(lines: list[int]) -> Span:
    return min(lines), max(lines)


@plants("travel-too-low", LOW_TRAVEL)
def clamp_on_the_way_of_travel(base: Base, dice: Random) -> Iterator[Plant]:
    """A clamp higher than the tool travels, under a rapid between two cuts."""
    m = base.tables.motion
    for line in _drawn(dice, base.gaps):
        move = int((m.line == line).argmax())
        if m.length[move] < 15 or m.kind[move] != 0 or not np.isfinite(m.x0[move] + m.y0[move]):
            continue
        share, high = dice.uniform(0.3, 0.7), float(m.z0[move]) + dice.uniform(2, 15)
        x = float(m.x0[move] + share * (m.x1[move] - m.x0[move]))
        y = float(m.y0[move] + share * (m.y1[move] - m.y0[move]))
        told = _clamp(base, x, y, base.top, high, 6)
        lines = _passing(base, x, y, high, 6)
        yield Plant(base.data, (line, line), "a clamp stands higher than the travel", follows=_span(lines), **told)


@plants("end-move-low", {"rapid-through-stock": "on its way it meets what stands"})
def last_lift_too_low(base: Base, dice: Random) -> Iterator[Plant]:
    """The last cut ends with a lift of next to nothing, or none, and the tool travels home."""
    m, box = base.tables.motion, base.tables.engagement.box
    cutting = np.flatnonzero(base.removed > 0.5)
    if not base.plain or box is None or box.x is None or box.y is None or not len(cutting):
        return
    last = int(cutting[-1])
    if m.cycle[last] or not (box.x[0] < m.x1[last] < box.x[1] and box.y[0] < m.y1[last] < box.y[1]):
        return
    for height in (dice.uniform(0.2, 0.5), dice.uniform(0.5, 0.9)):
        sheet, line = base.sheet(), base.line_of(last)
        for n, _ in list(sheet.rows):
            if n > line and {w[0] for w in sheet.words(n)} & set("XYZ"):
                sheet.delete(n)
        far = box.x[1] - 5 if m.x1[last] < np.mean(box.x) else box.x[0] + 5
        z, x = (sheet.number(v / base.unit) for v in (max(base.top + height, float(m.z1[last])), far))
        sheet.after(line, f"G0 Z{z}", f"G0 X{x}")
        new = sheet.now(line)
        yield Plant(sheet.bytes(), (new + 1, new + 2), f"home at {height:.1f} mm over the blank")


# ---- the table and the machine


@plants("cuts-table", {"shank-rubs": "the same depth", "too-deep": "the last pass takes more",
                       "full-width-too-deep": "the same", "nut-hits-stock": "the same depth", "tool-bends": "the same",
                       "steep-ramp": "the last ramp goes deeper", "feed-over-machine": "the same"})  # fmt: skip
def last_depth_too_deep(base: Base, dice: Random) -> Iterator[Plant]:
    """Every Z that is the program's lowest goes further, into the table."""
    m, sheet = base.tables.motion, base.sheet()
    if not base.plain or base.bottom is None:
        return
    lowest = float(np.nanmin(m.z1))
    lines = [n for n in sheet.lines_with("Z") if abs((sheet.word(n, "Z") or 0) * base.unit - lowest) < 1e-3]
    board = base.job.get("hold", {}).get("spoilboard", "0 mm")
    allowed = float(str(board).split()[0]) * (25.4 if str(board).endswith("in") else 1)
    for past in (dice.uniform(0.1, 0.9), dice.uniform(1.5, 5)):
        changed = base.sheet()
        for line in lines:
            changed.set(line, "Z", (base.bottom - allowed - past) / base.unit)
        if lines and lowest - base.bottom < 2:
            where = at(changed, min(lines), changed.last)
            yield Plant(changed.bytes(), where, f"{past:.1f} mm into the table")


@plants("cuts-table", {"part-comes-loose": "it is cut through", "offcut-comes-loose": "the same",
                       "tab-too-short": "its tabs are cut into", "tab-too-thin": "the same"})  # fmt: skip
def thinner_blank(base: Base, dice: Random) -> Iterator[Plant]:
    """The blank is thinner than the program thinks, by calliper, and the depths stay."""
    m = base.tables.motion
    lowest = float(np.nanmin(m.z1))
    depth = base.top - lowest
    if base.bottom is None or base.tables.setup.spindle is None or base.job.get("z_zero") != "stock-top":
        return
    for past in (dice.uniform(0.7, 1.2), dice.uniform(1.5, 2.8)):
        thick = depth - past
        told = base.with_job("stock", measured_thickness=f"{thick:.3f} mm")
        lines = sorted({int(n) for n in m.line[np.minimum(m.z0, m.z1) < base.top - thick + 0.02]})
        if thick > 1:
            yield Plant(base.data, _span(lines), f"a blank of {thick:.1f} mm", follows=ANYWHERE, **told)


@plants("outside-travel")
def smaller_machine_than_the_job(base: Base, dice: Random) -> Iterator[Plant]:
    m = base.tables.motion
    if base.shop is None:
        return
    for axis, low, high in (("x", m.x0, m.x1), ("y", m.y0, m.y1)):
        span = float(np.nanmax([low, high]) - np.nanmin([low, high]))
        travel = base.shop["machine"]["travel"] | {axis: f"{span * dice.uniform(0.5, 0.95):.1f} mm"}
        told = base.with_shop("machine", travel=travel)
        yield Plant(base.data, ANYWHERE, f"a machine too small in {axis.upper()}", **told)


@plants("outside-travel")
def work_zero_too_near_an_end(base: Base, dice: Random) -> Iterator[Plant]:
    """The blank is clamped so near the end of an axis that the program runs past it."""
    m = base.tables.motion
    if base.shop is None or not base.shop["machine"].get("travel"):
        return
    for axis, begin, end in (("x", m.x0, m.x1), ("y", m.y0, m.y1)):
        lowest = float(np.nanmin([begin, end]))
        past = dice.uniform(1, 40)
        told = base.with_job(work_zero={axis: f"{-lowest - past:.1f} mm"})
        lines = sorted({int(n) for n in m.line[np.fmin(begin, end) < lowest + past]})
        yield Plant(base.data, _span(lines), f"{past:.0f} mm past the end of {axis.upper()}", **told)


SLIPPED = {
    "outside-stock": "it is far beside the blank",
    "cuts-fixture": "and on its way there",
    "travel-too-low": "the same",
    "units-suspect": "read as millimetres it would fit",
} | LEFT_STANDING


@plants("outside-travel", SLIPPED | {"arc-does-not-close": "an arc that begins there"}
    | {"coordinate-suspect": "the place stands against its like"})
def decimal_point_slipped(base: Base, dice: Random) -> Iterator[Plant]:
    """X631.75 for X63.175."""
    sheet, m = base.sheet(), base.tables.motion
    travel = base.tables.setup.machine.travel
    if not base.plain or not travel:
        return
    for move in _drawn(dice, list(base.moves((0, 1)))):
        line = base.line_of(move)
        letter = dice.choice("XY")
        value, most = sheet.word(line, letter), {"X": travel.x, "Y": travel.y}[letter]
        after = base.next_line(move)
        if value is None or most is None or abs(value) * base.unit * 9 < 1.5 * most or not after:
            continue
        if {28.0, 53.0} & set(sheet.codes(line)) or m.kind[move + 1] > 1:
            continue
        changed = base.sheet().set(line, letter, value * 10)
        says = f"{letter}{value * 10:g} for {letter}{value:g}"
        yield Plant(changed.bytes(), (line, after), says, follows=ANYWHERE)


# ---- beside the blank


@plants("outside-stock", {"never-cuts": "all of it is beside the blank", "cuts-table": "there is the table",
                          "travel-too-low": "what stands elsewhere now", "not-cut-through": "other places are cut",
                          "rapid-through-stock": "elsewhere the blank now is"} | LEFT_STANDING)  # fmt: skip
def blank_clamped_elsewhere(base: Base, dice: Random) -> Iterator[Plant]:
    """Work zero is at the wrong corner: the blank lies far to one side of the path."""
    stock, box = base.job.get("stock", {}), base.tables.engagement.box
    if not stock.get("corner") or box is None or box.x is None or box.y is None:
        return
    for axis in dice.sample((0, 1), 2):
        wide = (box.x[1] - box.x[0], box.y[1] - box.y[0])[axis]
        corner = [box.x[0], box.y[0]]
        corner[axis] += dice.choice((-1, 1)) * wide * dice.uniform(1.1, 1.6)
        told = base.with_job("stock", corner=[f"{v:.3f} mm" for v in corner])
        yield Plant(base.data, ANYWHERE, f"the blank lies {wide:.0f} mm away", **told)


@plants("outside-stock", {"cuts-fixture": "a clamp stands there", "travel-too-low": "the same"})
def pass_beside_the_blank(base: Base, dice: Random) -> Iterator[Plant]:
    """One groove of a row of them lies beside the blank: one too many in a pattern."""
    box = base.tables.engagement.box
    if not base.plain or box is None or box.x is None or box.y is None:
        return
    for line in _drawn(dice, base.gaps):
        tool = base.tool_of(int((base.tables.motion.line == line).argmax()))
        if tool is None:
            continue
        n, off = base.sheet().number, dice.uniform(0.7, 3) * tool.diameter
        x, y = dice.uniform(box.x[0], box.x[1] - 10), box.y[1] + off
        deep = base.top - dice.uniform(0.5, 2)
        begin, end, down = (n(v / base.unit) for v in (x, x + 10, deep))
        feed = float(np.nanmin(base.tables.motion.feed)) / base.unit
        sheet = base.aside(line, f"G0 X{begin} Y{n(y / base.unit)}", f"G1 Z{down} F{feed:.1f}", f"G1 X{end}")
        new = sheet.now(line)
        says = f"a groove {off:.1f} mm beside the blank"
        yield Plant(sheet.bytes(), (new - 4, new - 3), says, follows=(new - 5, new))
