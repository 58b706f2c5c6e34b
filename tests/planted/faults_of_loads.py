"""Depths, lengths and powers: what the tool or the spindle cannot carry."""

from __future__ import annotations

import re
from collections.abc import Iterator
from random import Random
from typing import Any

import numpy as np

from gclint.tables.cutting import OPERATION
from tests.planted.base import Base
from tests.planted.harness import ANYWHERE, Plant, Span, at, onward, plants

DEEPER = {
    "steep-ramp": "the ramp goes further down over the same way",
    "straight-plunge": "the way down goes further into solid",
    "plunge-too-fast": "the same",
    "hidden-plunge": "the same",
    "feed-over-machine": "the steeper ramp asks more of Z",
    "inside-corner": "in the corner as well",
    "tool-bends": "the deeper cut pushes harder",
    "tool-breaks": "the same",
    "spindle-stalls": "it takes more power",
    "down-cut-packs-slot": "and packs the slot",
    "bores-with-router-bit": "a helix that has become a bore",
    "part-comes-loose": "its tabs are cut into",
    "outside-stock": "the laps after it are left nothing to cut beside the blank",
}
SOFT = ("pvc-foam-board", "machinable-wax", "tooling-board")
BOTH = {"too-deep": "where it cuts beside standing stock", "full-width-too-deep": "where it cuts at full width"}


def _levels(base: Base) -> list[float]:
    """Heights of level cuts from the highest down, in the program's units."""
    m = base.tables.motion
    level = (base.removed > 1) & (m.z0 == m.z1) & (m.kind > 0) & (m.cycle == 0)
    return sorted({round(float(z) / base.unit, 4) for z in m.z1[level]}, reverse=True)


def _sunk(base: Base, dice: Random, slot: bool) -> Iterator[Plant]:
    """The first pass begins at the depth of a later one: the levels between are left out."""
    levels, m, pieces = _levels(base), base.tables.motion, base.tables.engagement.pieces
    if not base.plain or len(levels) < 2 or len(levels) > 20:
        return
    limits = {tool: w.depth_slot if slot else w.depth_side for tool, w in base.tables.cutting.windows.items()}
    wide = np.bincount(pieces.move, pieces.length * (pieces.angle >= 150), len(m)) > 0.6 * m.length
    clean = base.sheet()
    depths = {n: clean.word(n, "Z") or 0.0 for n in clean.lines_with("Z")}
    most = np.zeros(len(m))
    np.maximum.at(most, pieces.move, pieces.ap)
    long = [k for k in base.moves((1, 2, 3), cutting=True, level=True, least=8) if bool(wide[k]) == slot]
    for upper, lower in dice.sample(pairs := [(a, b) for a in levels for b in levels if b < a], len(pairs)):
        cuts = [
            k for k in long if abs(m.z1[k] / base.unit - upper) < 1e-3 and base.removed[k] > 0.3 * m.length[k]
        ]  # fmt: skip
        ap = np.array([float(most[k]) + (upper - lower) * base.unit for k in cuts])
        limit = [limits[t].high if limits.get(t := int(m.tool[k])) else 1e9 for k in cuts]
        lines = [n for n, z in depths.items() if abs(z - upper) < 1e-3]
        if not cuts or not lines or (ap < 1.15 * np.array(limit)).any() or len(cuts) < 2:
            continue
        sheet = base.sheet()
        for line in lines:
            sheet.set(line, "Z", lower)
        moves = [base.line_of(k) for k in cuts]
        says = f"Z{lower:g} for Z{upper:g}: {ap.max():.1f} mm at once"
        yield Plant(sheet.bytes(), at(sheet, min(lines), *moves), says, follows=onward(min(lines) - 4))


@plants("full-width-too-deep", DEEPER | BOTH | {"compression-too-shallow": "the next pass is the first"}
    | {"steep-ramp": "the ramp goes down as far as the passes left out"})
def passes_of_a_slot_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    yield from _sunk(base, dice, slot=True)


@plants("too-deep", DEEPER | BOTH)
def passes_of_a_side_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    yield from _sunk(base, dice, slot=False)


def _declared(base: Base) -> Iterator[tuple[int, Any, Any]]:
    """(number, tool, its pieces) of declared tools that cut."""
    pieces, m = base.tables.engagement.pieces, base.tables.motion
    for number, tool in base.tables.setup.tools.items():
        rows = np.flatnonzero((m.tool[pieces.move] == number) & (m.kind[pieces.move] > 0))
        if len(rows) and base.shop is not None and any(t["number"] == number for t in base.shop["tool"]):
            yield number, tool, rows


def _where(base: Base, rows: Any) -> Span:
    lines = base.tables.motion.line[base.tables.engagement.pieces.move[rows]]
    if not base.plain:  # a lift may stand before the call that cuts
        return 1, base.sheet().last
    return int(lines.min()), int(lines.max()) + 2  # up to the lift out of it


@plants("shank-rubs")
def shorter_flutes(base: Base, dice: Random) -> Iterator[Plant]:
    """The tool in the spindle has shorter flutes than the cut is deep."""
    pieces = base.tables.engagement.pieces
    for number, tool, rows in _declared(base):
        level = rows[(pieces.drop[rows] >= 0) & (pieces.touch[rows] > 0)]
        deep = float(pieces.depth[level].max()) if len(level) else 0
        least = max(1.6 * tool.diameter, 2)
        if tool.shape != "flat" or deep - least < 1.5 or not tool.shank or tool.shank < tool.diameter:
            continue
        flutes = dice.uniform(0.5 * least, deep - 1.6)
        told = base.with_tool(number, flute_length=f"{flutes:.2f} mm")
        yield Plant(base.data, _where(base, rows), f"flutes of {flutes:.1f} mm, {deep:.1f} mm deep", **told)


@plants("nut-hits-stock", {"shank-rubs": "no flutes reach so far either"})
def tool_pushed_into_the_collet(base: Base, dice: Random) -> Iterator[Plant]:
    pieces = base.tables.engagement.pieces
    for number, tool, rows in _declared(base):
        walled = rows[pieces.angle[rows] > 150]
        deep = float(pieces.depth[walled].max()) if len(walled) else 0
        if tool.shape != "flat" or deep < 3:  # where a ball has gone layer by layer, nothing stands beside it
            continue
        out = dice.uniform(0.5, 0.9) * deep
        flutes = f"{min(out, tool.flute_length or out):.2f} mm"
        told = base.with_tool(number, stickout=f"{out:.2f} mm", flute_length=flutes)
        yield Plant(base.data, _where(base, rows), f"{out:.1f} mm out of the nut, {deep:.1f} mm deep", **told)


def _worst(low: Any, high: Any, base: Base, tool: Any, rows: Any) -> float:
    """What the heaviest diameter's length of cuts reaches, in the middle of its range; 0 where nothing is known."""
    value = np.sqrt(low * high)
    length = base.tables.engagement.pieces.length[rows]
    good = np.isfinite(value)
    if not good.any():
        return 0.0
    order = np.argsort(-value[good])
    run = np.cumsum(length[good][order])
    reach = int(np.searchsorted(run, 6 * tool.diameter))
    return float(value[good][order][reach]) if reach < len(run) else 0.0


LONG = {"tool-breaks": "a long tool is loaded more as well", "tool-bends": "a long tool bends as well",
        "inside-corner": "in the corner it is loaded most"}  # fmt: skip


def _longer(base: Base, dice: Random, power: int, now: float, limit: float, tool: Any, number: int) -> Any:
    """The tool that far out that bending (power 3) or stress (1) passes the limit well, or None where it is absurd."""
    by = (dice.uniform(1.6, 3) * limit / now) ** (1 / power) if now > 0 else 1e9
    out = (tool.stickout or 1e9) * max(by, 1.2)
    if out > 18 * tool.diameter or not tool.stickout:
        return None
    thin = {"shank": f"{tool.diameter} mm"}  # as thin all along
    return out, base.with_tool(number, stickout=f"{out:.1f} mm", **thin)


@plants("tool-bends", LONG)
def tool_far_out_of_the_nut(base: Base, dice: Random) -> Iterator[Plant]:
    effort = base.tables.cutting.loads.effort
    for number, tool, rows in _declared(base):
        if tool.shape not in ("flat", "bull-nose", "ball"):
            continue
        now = _worst(effort.bend(False, rows), effort.bend(True, rows), base, tool, rows)
        longer = _longer(base, dice, 3, now, 0.15, tool, number)
        if longer:
            out, told = longer
            says = f"{out:.0f} mm out of the nut for {tool.stickout:.0f}"
            yield Plant(base.data, (1, base.sheet().last), says, **told)


THINNER = LONG | {
    "tool-not-as-declared": "the comment names the tool that was meant",
    "chip-too-thick": "the chips of the thicker tool",
    "full-width-too-deep": "the depths of the thicker tool",
    "too-deep": "the same",
    "opening-slot-too-fast": "the same",
    "steep-ramp": "its ramps",
    "straight-plunge": "its helices are wider than the tool",
    "plunge-too-fast": "its feeds",
    "not-cut-through": "what stays beside a narrower cut",
    "rapid-through-stock": "the same",
    "compression-too-shallow": "the same",
    "down-cut-packs-slot": "a slot is deeper for a thinner tool",
    "bores-with-router-bit": "the same",
    "peck-too-deep": "the same",
    "outside-stock": "it does not reach to the blank",
    "part-comes-loose": "its laps are other laps",
    "offcut-comes-loose": "what stands in the middle of a wider helix",
    "tool-length-not-set": "of another tool",
}


@plants("tool-breaks", THINNER)
def thin_tool_in_the_spindle(base: Base, dice: Random) -> Iterator[Plant]:
    """A tool half as thick and further out of the nut than the one that was meant."""
    effort = base.tables.cutting.loads.effort
    for number, tool, rows in _declared(base):
        if tool.shape != "flat" or tool.made_of != "carbide" or not tool.stickout or base.unit > 1:
            continue
        now = _worst(effort.stress(False, rows), effort.stress(True, rows), base, tool, rows)
        share = dice.uniform(0.3, 0.5)  # of the diameter: a slot pushes about as hard, the neck bears the cube of it
        longer = 1500 * dice.uniform(1.6, 2.5) / (now / share**3) if now else 99
        if longer > 2.2:
            continue
        out, wide = tool.stickout * max(longer, 1), f"{share * tool.diameter:.2f} mm"
        told = base.with_tool(number, diameter=wide, shank=wide, stickout=f"{out:.1f} mm", made_of="carbide")
        says = f"{wide} thick and {out:.0f} mm out of the nut"
        yield Plant(base.data, (1, base.sheet().last), says, **told)


@plants("spindle-stalls")
def weaker_spindle(base: Base, dice: Random) -> Iterator[Plant]:
    effort = base.tables.cutting.loads.effort
    for _, tool, rows in _declared(base):
        now = _worst(effort.power_low[rows], effort.power_high[rows], base, tool, rows)
        if now > 8:
            power = now / dice.uniform(1.3, 3)
            told = base.with_shop("spindle", power=f"{power:.0f} W", power_curve=None)
            yield Plant(base.data, (1, base.sheet().last), f"a spindle of {power:.0f} W, {now:.0f} W asked", **told)


@plants("long-tool", {"too-deep": "deeper", "full-width-too-deep": "deeper"})
def long_tool_of_nobody_knows_what(base: Base, dice: Random) -> Iterator[Plant]:
    """A tool whose bending cannot be reckoned, as its material is not told, eight diameters and more out of the nut."""
    pieces = base.tables.engagement.pieces
    for number, tool, rows in _declared(base):
        heavy = (pieces.ap[rows] >= 0.5 * tool.diameter) & (pieces.ae[rows] >= 0.5 * tool.diameter)
        if tool.shape not in ("flat", "ball", "bull-nose") or pieces.length[rows][heavy].sum() < 30:
            continue
        if base.job.get("material") in SOFT:
            continue
        out = dice.uniform(9, 12) * tool.diameter
        told = base.with_tool(number, made_of=None, shank=f"{tool.diameter} mm", stickout=f"{out:.1f} mm")
        yield Plant(base.data, _where(base, rows), f"{out / tool.diameter:.0f} diameters out of the nut", **told)


# ---- engraving


@plants("v-too-deep", {"steep-ramp": "the ramps go further down", "straight-plunge": "the way down goes further",
                       "plunge-too-fast": "the same", "hidden-plunge": "the same", "feed-over-machine": "the same",
                       "nut-hits-stock": "so deep", "shank-rubs": "so deep"})  # fmt: skip
def engraved_ten_times_too_deep(base: Base, dice: Random) -> Iterator[Plant]:
    """A decimal point slipped in the depth of a V tool that is only a few millimetres high."""
    m, sheet = base.tables.motion, base.sheet()
    for number, tool, rows in _declared(base):
        if tool.shape != "v":
            continue
        lines = [
            n for n in sheet.lines_with("Z")
            if (sheet.word(n, "Z") or 0) < 0 and int(m.tool[int((m.line == n).argmax())]) == number
        ]  # fmt: skip
        wide = dice.uniform(2, 5)
        told = base.with_tool(number, diameter=f"{wide:.2f} mm", flute_length=f"{2 * wide:.2f} mm")
        changed = base.sheet()
        for n in lines:
            changed.set(n, "Z", 10 * (sheet.word(n, "Z") or 0))
        where = _where(base, rows)
        yield Plant(changed.bytes(), where, f"ten times as deep, the tool {wide:.1f} mm wide", **told)


# ---- feeds that suit another cut


def _shares(base: Base) -> dict[float, tuple[float, float]]:
    """Of each set feed (mm/min): length of its cuts at full width, and of its narrow ones."""
    loads, pieces, m = base.tables.cutting.loads, base.tables.engagement.pieces, base.tables.motion
    found = {}
    for feed in np.unique(m.feed[pieces.move][loads.chip_judged > 0]).tolist():
        rows = (m.feed[pieces.move] == feed) & (loads.chip_judged > 0)
        slot = rows & (loads.operation == OPERATION["slot"])
        narrow = rows & (pieces.ae < 0.3 * pieces.ae.max())
        found[float(feed)] = float(pieces.length[slot].sum()), float(pieces.length[narrow].sum())
    return found


@plants("opening-slot-too-fast", {"steep-ramp": "the ramps of the slot", "feed-over-machine": "the same",
                                  "plunge-too-fast": "the same", "chip-too-thick": "the first cuts along it",
                                  "inside-corner": "at its ends", "tool-bends": "so thick a chip pushes hard",
                                  "tool-breaks": "the same", "spindle-stalls": "the same"})  # fmt: skip
def slot_at_the_feed_of_the_laps(base: Base, dice: Random) -> Iterator[Plant]:
    """The feed that is written for the opening slot is left out: it runs at the feed of the narrow laps."""
    shares, sheet = _shares(base), base.sheet()
    pieces, m = base.tables.engagement.pieces, base.tables.motion
    full = (pieces.angle > 170) & (base.tables.cutting.loads.chip_judged > 0)
    deep = {f: float(pieces.ap[full & (m.feed[pieces.move] == f)].max(initial=0)) for f in shares}
    wide = float(pieces.ae.max(initial=0))
    slots = [f for f, (slot, narrow) in shares.items() if slot > 20 and slot > 3 * narrow and deep[f] > 0.3 * wide]
    laps = [f for f, (slot, narrow) in shares.items() if narrow > 60 and narrow > 3 * slot]
    for slow in slots:
        for fast in [f for f in laps if f > 1.5 * slow]:
            for by in (1.0, dice.uniform(0.97, 1), dice.uniform(0.97, 1)):  # of the feed of slot and laps
                changed = base.sheet()
                feeds = {n: (sheet.word(n, "F") or 0) * base.unit for n in sheet.lines_with("F")}
                lines = [n for n, feed in feeds.items() if abs(feed - slow) < 0.5]
                for n in [n for n, feed in feeds.items() if n in lines or abs(feed - fast) < 0.5]:
                    changed.set(n, "F", round(fast * by / base.unit, 1))
                says = f"the slot at F{fast * by:.0f}"
                yield Plant(changed.bytes(), at(changed, *lines), says, follows=onward(min(lines)))


@plants("inside-corner", {"chip-too-thick": "around the corner as well", "tool-bends": "the same",
                          "tool-breaks": "the same", "opening-slot-too-fast": "the same",
                          "spindle-stalls": "the same"})  # fmt: skip
def corner_not_slowed_down(base: Base, dice: Random) -> Iterator[Plant]:
    """The slower feed before a corner is left out: the laps go round at full feed."""
    sheet, m, pieces = base.sheet(), base.tables.motion, base.tables.engagement.pieces
    narrow = [f for f, (slot, thin) in _shares(base).items() if thin > 100 and thin > 3 * slot]
    if not narrow or not base.plain:
        return
    fast = max(narrow)
    corners = [
        k for k in base.moves((1,), cutting=True, level=True)
        if sheet.word(base.line_of(k), "F") and m.feed[k] < 0.6 * fast and m.length[k] < 15
        and (pieces.angle[pieces.move == k] > 120).any() and (pieces.ap[pieces.move == k] > 2.5).any()
    ]  # fmt: skip
    for move in dice.sample(corners, len(corners)):
        line, changed = base.line_of(move), base.sheet()
        tool = base.tool_of(move)
        first = move - 1
        while first > 0 and m.feed[first] < fast - 1 and m.kind[first] == 1 and m.z0[first] == m.z1[first]:
            first -= 1  # to the fast stretch that leads here
        after = base.next_line(move)
        if tool is None or after is None or m.feed[first] < fast - 1:
            continue
        for k in range(first + 1, move + 1):
            if sheet.word(base.line_of(k), "F"):
                changed.set(base.line_of(k), "F", fast / base.unit)
        if sheet.word(after, "F") is None and m.kind[move + 1] > 0:
            changed.set(after, "F", round(float(m.feed[move + 1]) / base.unit, 1))
        lines = [base.line_of(k) for k in range(first, move + 1)]
        yield Plant(changed.bytes(), (min(lines), line), f"F{fast:.0f} into a corner", follows=(min(lines), after))


# ---- time


@plants("runs-too-long")
def longer_than_the_job_allows(base: Base, dice: Random) -> Iterator[Plant]:
    """A night job for which somebody has an hour: a longest time that the program does not keep."""
    time = float(np.nansum(base.tables.timing.seconds))
    for _ in range(2):
        if time > 20:
            told = base.with_job(time_limit=f"{time * dice.uniform(0.3, 0.9):.0f} s")
            yield Plant(base.data, ANYWHERE, f"{time:.0f} s at least, and less is allowed", **told)


@plants("reads-too-slowly", {"chip-too-thick": "the feed is higher", "feed-over-machine": "the same"})
def path_in_tiny_lines(base: Base, dice: Random) -> Iterator[Plant]:
    """One straight cut exported as hundreds of short lines, for a controller that reads a serial line."""
    if base.shop is None or not base.plain:
        return
    told = {}
    if base.shop["machine"].get("controller") != "hobby-3-axis":
        if base.shop["machine"].get("controller") or re.search(rb"G4[13]|G8[123]|M6", base.data):
            return
        told = base.with_shop("machine", controller="hobby-3-axis")
    m = base.tables.motion
    longs = list(base.moves((1,), cutting=True, level=True, least=12))
    for move in dice.sample(longs, len(longs)):
        line, feed = base.line_of(move), float(m.feed[move])
        step = feed / 60 / dice.uniform(900, 1500)  # mm a line: so many lines a second
        count = int(min(10, m.length[move]) / step)
        if base.sheet().word(line, "Z") is not None or step > 0.3:
            continue
        sheet = base.explicit(base.sheet(), line)
        share = step * np.arange(1, count) / float(m.length[move])
        x, y = m.x0[move] + share * (m.x1[move] - m.x0[move]), m.y0[move] + share * (m.y1[move] - m.y0[move])
        rows = [f"G1 X{a / base.unit:.4f} Y{b / base.unit:.4f} F{feed / base.unit:.0f}" for a, b in zip(x, y)]
        sheet.before(line, *rows)
        new = sheet.now(line)
        yield Plant(sheet.bytes(), (min(base.sheet().lines_with("F")), new), f"lines of {step:.3f} mm", **told)
