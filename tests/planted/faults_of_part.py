"""What becomes of the part: its tabs, its walls, what is cut free, what is not cut through; and its edges."""

from __future__ import annotations

import math
from collections.abc import Iterator
from random import Random
from typing import Any

import numpy as np

from tests.planted.base import Base
from tests.planted.harness import ANYWHERE, Plant, at, onward, plants
from tests.planted.sheet import Sheet

# ---- through or not


@plants("not-cut-through")
def last_depth_short(base: Base, dice: Random) -> Iterator[Plant]:
    """The last lap stays over the underside by some tenths: the label's thickness, not the calliper's."""
    m, sheet = base.tables.motion, base.sheet()
    if base.bottom is None or not base.plain or base.job.get("hold", {}).get("by") in ("tabs", "skin"):
        return
    lowest = float(np.nanmin(m.z1))
    lines = [n for n in sheet.lines_with("Z") if abs((sheet.word(n, "Z") or 0) * base.unit - lowest) < 1e-3]
    for _ in range(3 if lowest < base.bottom else 0):
        left = dice.uniform(0.15, 0.09 * (base.top - base.bottom))
        changed = base.sheet()
        for n in lines:
            changed.set(n, "Z", (base.bottom + left) / base.unit)
        yield Plant(changed.bytes(), onward(min(lines)), f"{left:.2f} mm left under the last lap")


@plants("not-cut-through")
def thicker_blank(base: Base, dice: Random) -> Iterator[Plant]:
    m = base.tables.motion
    if base.bottom is None or base.job.get("hold", {}).get("by") in ("tabs", "skin"):
        return
    deep = base.top - float(np.nanmin(m.z1))
    for _ in range(3 if deep > base.top - base.bottom else 0):
        thick = deep + dice.uniform(0.15, 0.08 * deep)
        told = base.with_job("stock", measured_thickness=f"{thick:.2f} mm")
        lines = m.line[(m.z1 <= base.top - deep + 1e-6) & (m.kind > 0)]
        yield Plant(base.data, (int(lines.min()), int(lines.max())), f"the blank is {thick:.2f} mm thick", **told)


# ---- tabs


def _tabs(base: Base) -> list[tuple[int, int, int]]:
    """(rise, flat, fall): moves over a tab at the lowest level."""
    m = base.tables.motion
    if base.bottom is None or not base.plain:
        return []
    low = float(np.nanmin(m.z1))
    return [
        (k, k + 1, k + 2) for k in range(len(m) - 2)
        if abs(m.z0[k] - low) < 1e-6 and m.z1[k] > low + 0.3 and m.z1[k] < base.top and m.z1[k + 1] == m.z0[k + 1]
        and abs(m.z1[k + 2] - low) < 1e-6 and all(base.once(j) and m.kind[j] == 1 for j in (k, k + 1, k + 2))
    ]  # fmt: skip


@plants("tab-too-short")
def tab_shortened(base: Base, dice: Random) -> Iterator[Plant]:
    """The flat of a tab is hardly longer than the tool is wide."""
    m, tabs = base.tables.motion, _tabs(base)
    for rise, flat, fall in dice.sample(tabs, len(tabs)):
        tool, sheet = base.tool_of(flat), base.sheet()
        letter = "X" if abs(m.x1[flat] - m.x0[flat]) > abs(m.y1[flat] - m.y0[flat]) else "Y"
        begin, end = (m.x0[flat], m.x1[flat]) if letter == "X" else (m.y0[flat], m.y1[flat])
        if tool is None or sheet.word(base.line_of(flat), letter) is None:
            continue
        wide = tool.diameter + dice.uniform(0.2, 1.6)
        sheet.set(base.line_of(flat), letter, (float(begin) + math.copysign(wide, float(end - begin))) / base.unit)
        # straight up before it and straight down behind it
        feed, slow = float(m.feed[flat]) / base.unit, float(m.feed[flat]) * 0.12 / base.unit
        up, down = (sheet.number(float(z) / base.unit) for z in (m.z1[rise], m.z1[fall]))
        line = base.line_of(rise)
        sheet.drop(line, "Z").set(line, letter, float(begin) / base.unit)
        sheet.after(line, f"G1 Z{up} F{slow:.0f}").set(base.line_of(flat), "F", feed)
        sheet.after(base.line_of(flat), f"G1 Z{down} F{slow:.0f}").set(base.line_of(fall), "F", feed)
        where = at(sheet, line, base.line_of(fall))
        yield Plant(sheet.bytes(), where, f"a tab of {wide - tool.diameter:.1f} mm at its narrowest")


@plants("tab-too-thin")
def tabs_lowered(base: Base, dice: Random) -> Iterator[Plant]:
    """The tool goes over its tabs nearly as low as beside them."""
    tabs = _tabs(base)
    for _ in range(3 if tabs and base.bottom is not None else 0):
        sheet, high = base.sheet(), dice.uniform(0.1, 0.5)
        for rise, _, _ in tabs:
            sheet.set(base.line_of(rise), "Z", ((base.bottom or 0) + high) / base.unit)
        lines = [base.line_of(tab[0]) for tab in tabs]
        yield Plant(sheet.bytes(), (min(lines), max(lines) + 3), f"tabs of {high:.1f} mm")


@plants("part-comes-loose")
def tabs_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    """The lap over the tabs stays down."""
    tabs = _tabs(base)
    if tabs:
        sheet = base.sheet()
        for rise, _, fall in tabs:
            sheet.drop(base.line_of(rise), "Z").drop(base.line_of(fall), "Z")
        lines = [base.line_of(tab[0]) for tab in tabs]
        yield Plant(sheet.bytes(), (min(lines) - 8, sheet.last), f"{len(tabs)} tabs are cut off")


@plants("part-comes-loose")
def tabs_too_low(base: Base, dice: Random) -> Iterator[Plant]:
    """The tabs are where they should be, and lower than the blank's underside."""
    tabs, m = _tabs(base), base.tables.motion
    for _ in range(2 if tabs and base.bottom is not None else 0):
        sheet = base.sheet()
        for rise, _, _ in tabs:
            z = (base.bottom or 0) - dice.uniform(0.02, 0.2)
            sheet.set(base.line_of(rise), "Z", max(z, float(m.z0[rise])) / base.unit)
        lines = [base.line_of(tab[0]) for tab in tabs]
        yield Plant(sheet.bytes(), (min(lines) - 8, sheet.last), "tabs lower than the blank's underside")


@plants("part-comes-loose")
def no_tabs_where_tabs_hold(base: Base, dice: Random) -> Iterator[Plant]:
    """The part is cut free all around, and the job says that tabs or clamps at the edge hold it."""
    if base.job.get("hold", {}).get("by") == "vacuum" and base.bottom is not None:
        for by in ("tabs", "clamps"):
            told = base.with_job("hold", by=by)
            yield Plant(base.data, onward(1), f"held by {by}, and nothing holds it", **told)


@plants("offcut-comes-loose", {"tab-too-short": "the ring has none", "chip-too-thin": "one more cut"})
def round_hole_cut_as_a_ring(base: Base, dice: Random) -> Iterator[Plant]:
    """A hole more inside the part, cut out as a ring and with nothing to hold its slug."""
    m = base.tables.motion
    if not _tabs(base) or base.bottom is None:
        return
    feeds = m.feed[(base.removed > 0) & (m.kind > 0)]
    for line in dice.sample(base.gaps, len(base.gaps)):
        tool = base.tool_of(int((m.line == line).argmax()))
        if tool is None or tool.diameter < 5:
            continue
        radius, n = dice.uniform(9, 14), base.sheet().number
        middle = next(iter(_inside(base, dice, radius + tool.diameter)), None)
        if middle is None:
            continue
        x, y = middle
        turns, low = 10, float(np.nanmin(m.z1))
        words = [f"G0 X{n(x + radius)} Y{n(y)}", f"G0 Z{n(base.top + 1)}"]
        words.append(f"G1 Z{n(base.top)} F{0.2 * feeds.min():.0f}")
        first = base.top
        for turn in range(1, turns + 1):
            z = first + (low - first) * turn / turns
            words.append(f"G3 X{n(x + radius)} Y{n(y)} Z{n(z)} I{n(-radius)} J0 F{np.median(feeds):.0f}")
        words.append(f"G3 X{n(x + radius)} Y{n(y)} I{n(-radius)} J0")
        sheet = base.aside(line, *words)
        new = sheet.now(line)
        yield Plant(sheet.bytes(), (new - 16, new), f"a ring of {radius:.0f} mm radius inside the part")


def _inside(base: Base, dice: Random, room: float) -> Iterator[tuple[float, float]]:
    """Untouched places well inside the outline that the last lap cuts."""
    m = base.tables.motion
    low = np.abs(m.z1 - np.nanmin(m.z1)) < 1e-6
    x, y = (float(v.min()) for v in (m.x1[low], m.y1[low])), (float(v.max()) for v in (m.x1[low], m.y1[low]))
    (left, front), (right, back) = tuple(x), tuple(y)
    for spot in base.spots(dice, room):
        if left + room < spot[0] < right - room and front + room < spot[1] < back - room:
            yield spot


# ---- walls


@plants("wall-too-thin")
def groove_beside_a_groove(base: Base, dice: Random) -> Iterator[Plant]:
    """Two grooves with next to nothing between them."""
    m = base.tables.motion
    if not base.plain or base.job.get("material") is None:
        return
    feeds = m.feed[(base.removed > 0) & (m.kind > 0) & (m.z0 == m.z1)]
    metal = str(base.job["material"]).startswith(("alu", "brass"))
    for line in dice.sample(base.gaps, len(base.gaps)):
        tool = base.tool_of(int((m.line == line).argmax()))
        if tool is None or tool.shape != "flat" or not np.isfinite(feeds).any():
            continue
        wall = dice.uniform(0.25, 0.45) if metal else dice.uniform(0.4, 0.8)
        # thin walls are looked for at 0.45 and 0.9 of the deepest cut of the program, and over 3 mm
        deep = max((10 if metal else 5.5) * wall, 3.3, 0.5 * (base.top - float(np.nanmin(m.z1))))
        spot = next(iter(base.spots(dice, 1.3 * tool.diameter + 14)), None)
        if spot is None or deep > (tool.flute_length or 0) or deep > 2.5 * tool.diameter:
            continue
        words, n, feed = [], base.sheet().number, float(np.nanmedian(feeds)) / base.unit
        off = (tool.diameter + wall) / 2
        for y in (spot[1] - off, spot[1] + off):
            words.append(f"G0 X{n((spot[0] - 12) / base.unit)} Y{n(y / base.unit)}")
            words.append(f"G0 Z{n((base.top + 0.5) / base.unit)}")
            words.append(f"G1 Z{n(base.top / base.unit)} F{feed * 0.1:.1f}")
            steps = int(deep / 0.8) + 1
            for step in range(1, steps + 2):
                z = base.top - deep * min(step, steps) / steps
                x = spot[0] + (12 if step % 2 else -12)
                words.append(f"G1 X{n(x / base.unit)} Z{n(z / base.unit)} F{feed:.1f}")
            words.append(f"G0 Z{n((base.top + 5) / base.unit)}")
        sheet = base.aside(line, *words)
        new = sheet.now(line)
        where = (new - len(words) - 3, new)
        yield Plant(sheet.bytes(), where, f"a wall of {wall:.2f} mm, {deep:.1f} mm high")


@plants("stepover-leaves-fin", {"opening-slot-too-fast": "the first row is a slot"})
def rows_farther_apart_than_the_tool(base: Base, dice: Random) -> Iterator[Plant]:
    m = base.tables.motion
    if not base.plain:
        return
    feeds = m.feed[(base.removed > 0) & (m.kind > 0) & (m.z0 == m.z1)]
    for line in dice.sample(base.gaps, len(base.gaps)):
        tool = base.tool_of(int((m.line == line).argmax()))
        if tool is None or tool.shape != "flat" or not np.isfinite(feeds).any():
            continue
        wide, n, feed = tool.diameter, base.sheet().number, 0.5 * float(np.nanmin(feeds)) / base.unit
        spot = next(iter(base.spots(dice, 3.2 * wide)), None)
        if spot is None:
            continue
        step, z = wide * dice.uniform(1.08, 1.2), base.top - max(0.3, 0.1 * wide)
        left, right = (n((spot[0] + side * 1.6 * wide) / base.unit) for side in (-1, 1))
        low, high = (n((spot[1] + side * step / 2) / base.unit) for side in (-1, 1))
        sheet = base.aside(line, f"G0 X{left} Y{low}", f"G0 Z{n((base.top + 0.5) / base.unit)}",
                           f"G1 Z{n(base.top / base.unit)} F{feed * 0.6:.1f}", f"G1 X{right} Z{n(z / base.unit)}",
                           f"G1 X{left} F{feed:.1f}", f"G1 X{right}", f"G1 Y{high}", f"G1 X{left}",
                           f"G0 Z{n((base.top + 5) / base.unit)}")  # fmt: skip
        new = sheet.now(line)
        yield Plant(sheet.bytes(), (new - 12, new), f"two rows {step:.2f} mm apart with a tool of {wide:g} mm")


@plants("tabs-hold-nothing")
def tabs_named_for_a_pocket(base: Base, dice: Random) -> Iterator[Plant]:
    m = base.tables.motion
    low = m.z1[(m.kind != 0) & (base.removed > 0)]
    by = base.job.get("hold", {}).get("by")
    if base.bottom is not None and len(low) and float(low.min()) - base.bottom > 1 and by and m.followed is None:
        told = base.with_job("hold", by="tabs")
        yield Plant(base.data, ANYWHERE, "tabs hold the part, and no lap goes through", **told)


# ---- edges


def _cutting_tools(base: Base) -> Iterator[tuple[int, Any]]:
    m = base.tables.motion
    for number, tool in base.tables.setup.tools.items():
        if base.shop and tool.shape == "flat" and bool((base.removed[m.tool == number] > 1).any()):
            yield number, tool


@plants("up-cut-on-brittle-top")
def up_cut_for_down_cut(base: Base, dice: Random) -> Iterator[Plant]:
    material = base.tables.setup.material
    for number, tool in _cutting_tools(base):
        if material and material.up_cut_frays_top and tool.helix != "up-cut":
            lines = base.tables.motion.line[(base.tables.motion.tool == number) & (base.removed > 1)]
            told = base.with_tool(number, helix="up-cut")
            yield Plant(base.data, (int(lines.min()), int(lines.max())), "an up-cut tool", **told)


@plants("compression-too-shallow")
def compression_tool_with_longer_up_cut_edges(base: Base, dice: Random) -> Iterator[Plant]:
    """A compression tool whose lower edges reach over the top in the first pass."""
    pieces, m = base.tables.engagement.pieces, base.tables.motion
    material = base.tables.setup.material
    for number, _ in _cutting_tools(base):
        level = (m.z0 == m.z1)[pieces.move]
        rows = (m.tool[pieces.move] == number) & (pieces.depth > 1) & (pieces.angle > 150) & level
        first = rows & (pieces.ap > pieces.depth - 0.2)  # from the top down
        if not first.any() or not material or material.kind in ("metal", "foam", "wax"):
            continue
        if pieces.length[first].sum() < 30:
            continue
        up = float(pieces.ap[first].max()) * dice.uniform(1.2, 1.9)
        told = base.with_tool(number, helix="compression", up_cut_length=f"{up:.2f} mm")
        lines = m.line[pieces.move[first]]
        where = (int(lines.min()) - 2, int(m.line[pieces.move[rows]].max()))
        yield Plant(base.data, where, f"up-cut edges of {up:.1f} mm", **told)


@plants("down-cut-packs-slot")
def down_cut_in_a_deep_slot(base: Base, dice: Random) -> Iterator[Plant]:
    pieces, m = base.tables.engagement.pieces, base.tables.motion
    for number, tool in _cutting_tools(base):
        deep = (m.tool[pieces.move] == number) & (pieces.depth > 2.2 * tool.diameter) & (pieces.angle > 150)
        if pieces.length[deep].sum() > 30 and tool.helix != "down-cut":
            told = base.with_tool(number, helix="down-cut")
            lines = m.line[pieces.move[deep]]
            yield Plant(base.data, (int(lines.min()), int(lines.max())), "a down-cut tool", **told)


def _mirrored(base: Base, about: float) -> Sheet:
    """The program with X turned round about this X (program's units): what climbs in it now goes against the teeth."""
    sheet, other = base.sheet(), {2.0: 3.0, 3.0: 2.0, 41.0: 42.0, 42.0: 41.0}
    for line, _ in list(sheet.rows):
        codes = sheet.codes(line)
        if {28.0, 53.0} & set(codes):
            continue
        if sheet.word(line, "X") is not None:
            sheet.set(line, "X", 2 * about - (sheet.word(line, "X") or 0))
        if sheet.word(line, "I") is not None:
            sheet.set(line, "I", -(sheet.word(line, "I") or 0))
        for nth, code in enumerate(codes):
            if code in other:
                sheet.set(line, "G", other[code], nth)
    return sheet


@plants("conventional-cut")
def mirrored_program(base: Base, dice: Random) -> Iterator[Plant]:
    """Mirrored in the drawing instead of turned over: every climb cut becomes a conventional one."""
    material, box, pieces = base.tables.setup.material, base.tables.engagement.box, base.tables.engagement.pieces
    if not material or not material.climb_walls or not base.plain or box is None or box.x is None:
        return
    # walls are left by cuts beside standing stock; a slot leaves one of each kind
    beside = (pieces.angle > 20) & (pieces.angle < 140) & (pieces.ap > 0.3) & (pieces.ae > 0.05)
    if pieces.length[beside & (pieces.climb > 0.9)].sum() > 0.9 * pieces.length[beside].sum():
        sheet = _mirrored(base, sum(box.x) / 2 / base.unit)
        yield Plant(sheet.bytes(), (1, sheet.last), "the whole program mirrored")


# ---- entries


@plants("helix-too-tight")
def helix_hardly_wider_than_nothing(base: Base, dice: Random) -> Iterator[Plant]:
    m = base.tables.motion
    for line in dice.sample(base.gaps, len(base.gaps)) if base.plain else []:
        move = int((m.line == line).argmax())
        tool, window = base.tool_of(move), base.windows(move)
        spot = next(base.spots(dice, tool.diameter + 1), None) if tool and tool.shape == "flat" else None
        if spot is None or window is None or not np.isfinite(m.feed[:move]).any():
            continue
        radius, n = dice.uniform(0.055, 0.09) * tool.diameter, base.sheet().number
        limit = float(window.ramp_limit.high) if window.ramp_limit else 10.0
        step = min(0.7 * math.tan(math.radians(limit)) * 2 * math.pi * radius, 0.5)
        feed = float(np.nanmin(m.feed)) / base.unit
        x, y = (v / base.unit for v in (spot[0] + radius, spot[1]))
        words = [f"G0 X{n(x)} Y{n(y)}", f"G0 Z{n((base.top + 0.5) / base.unit)}"]
        words.append(f"G1 Z{n(base.top / base.unit)} F{feed:.1f}")
        for turn in range(1, int(1.5 / step) + 2):
            z = n((base.top - turn * step) / base.unit)
            words.append(f"G3 X{n(x)} Y{n(y)} Z{z} I{n(-radius / base.unit)} J{n(0)}")
        sheet = base.aside(line, *words)
        new = sheet.now(line)
        yield Plant(sheet.bytes(), (new - len(words) - 2, new), f"a helix of {radius:.2f} mm radius")


# ---- hold


@plants("held-by-tape")
def tape_under_what_it_does_not_hold(base: Base, dice: Random) -> Iterator[Plant]:
    """The same program with the blank on tape, in a material whose card says that tape does not hold it."""
    material = base.tables.setup.material
    if material is None or material.tape_holds or base.tables.setup.hold.by in (None, "tape"):
        return
    told = base.with_job("hold", by="tape")
    yield Plant(base.data, (1, base.sheet().last), f"{material.named} held by tape", **told)
