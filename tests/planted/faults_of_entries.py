"""Wrong ways down into the material."""

from __future__ import annotations

import math
from collections.abc import Iterator
from random import Random

from tests.planted.base import Base
from tests.planted.harness import ANYWHERE, Plant, at, plants
from tests.planted.sheet import Sheet

HARD_ON_A_ROUTER_BIT = {
    "bores-with-router-bit": "a straight plunge of two diameters is a bore as well",
    "full-width-too-deep": "what the ramp would have taken along is left to the first pass",
}
HIDDEN = HARD_ON_A_ROUTER_BIT | {"straight-plunge": "that is what hides behind the words"}
FAST = {
    "plunge-too-fast": "the feed of a gentle way down, on a steep one",
    "feed-over-machine": "the steeper the way, the more of the feed is asked of the Z axis",
}


def _entries(base: Base, dice: Random, *kinds: str) -> list[tuple[int, int]]:
    """(entry, its one ramping move) in a drawn order."""
    if not base.plain:
        return []
    e, m = base.tables.engagement.entries, base.tables.motion
    found = []
    for row in base.entries(*kinds):
        falling = [
            k for k in range(int(e.first_move[row]), int(e.last_move[row]) + 1)
            if m.z1[k] < m.z0[k] - 0.1 and base.removed[k] > 0.5 and m.length[k] > 1.01 * (m.z0[k] - m.z1[k])
        ]  # fmt: skip
        if falling and base.once(falling[0]) and e.under[row] >= 0.6 and base.tool_of(falling[0]):
            found.append((row, falling[0]))
    dice.shuffle(found)
    return found


def _limit(base: Base, move: int) -> float | None:
    """Deepest plunge (mm) that the material allows this tool: 0 for none, None where it is not said."""
    window = base.windows(move)
    if window is None or window.plunge is None:
        return None
    if window.plunge in ("no", "drill", "peck"):
        return 0.0
    return float(window.plunge_depth.high) if window.plunge_depth else None


def _gentle(base: Base, move: int) -> str:
    """A feed that no plunge is too fast at, as a word."""
    return f"F{max(float(base.tables.motion.feed[move]) * 0.12, 40) / base.unit:.1f}".removesuffix(".0")


def _plunged(base: Base, move: int, words: str) -> tuple[Sheet, tuple[int, int]]:
    """The sheet with a line of these words before the move, whose own line is level from then on."""
    m, line = base.tables.motion, base.line_of(move)
    sheet = base.explicit(base.sheet(), line)
    sheet.before(line, words)
    sheet.drop(line, "Z")
    if sheet.has(line):
        sheet.set(line, "F", float(m.feed[move]) / base.unit)
    new = sheet.now(line) - 1
    return sheet, (new, new)


def _straight(base: Base, dice: Random) -> Iterator[tuple[int, float]]:
    """Moves that may become plunges, with the depth to go to."""
    e, m = base.tables.engagement.entries, base.tables.motion
    for row, move in _entries(base, dice, "ramp", "helix"):
        limit, tool = _limit(base, move), base.tool_of(move)
        solid = min(float(e.solid[row]), float(m.z0[move] - m.z1[move]))
        material = base.tables.setup.material
        least = 0.06 if material is None or material.brittle else 0.11  # what is not brittle takes small steps
        if limit is None or tool.shape in ("drill", "drag") or solid < max(0.25, least * tool.diameter):
            continue
        if solid < max(1.1 * limit, 0.55 if tool.shape in ("v", "ball", "tapered-ball") else 0):
            continue
        yield move, float(m.z1[move])


@plants("straight-plunge", HARD_ON_A_ROUTER_BIT)
def plunge_for_ramp(base: Base, dice: Random) -> Iterator[Plant]:
    for move, z in _straight(base, dice):
        sheet = base.sheet()
        planted, where = _plunged(base, move, f"G1 Z{sheet.number(z / base.unit)} {_gentle(base, move)}")
        yield Plant(planted.bytes(), where, "a straight plunge for a ramp")


@plants("hidden-plunge", HIDDEN)
def plunge_that_names_x_and_y(base: Base, dice: Random) -> Iterator[Plant]:
    for move, z in _straight(base, dice):
        m, n = base.tables.motion, base.sheet().number
        x, y = float(m.x0[move]) / base.unit, float(m.y0[move]) / base.unit
        words = f"G1 X{n(x)} Y{n(y)} Z{n(z / base.unit)} {_gentle(base, move)}"
        planted, where = _plunged(base, move, words)
        yield Plant(planted.bytes(), where, "a plunge that repeats the X and Y the tool stands at")


@plants("hidden-plunge", HIDDEN | {"steep-ramp": "a helix of next to no radius is steep"})
def helix_of_no_radius(base: Base, dice: Random) -> Iterator[Plant]:
    for move, z in _straight(base, dice):
        m, n = base.tables.motion, base.sheet().number
        x, y = float(m.x0[move]) / base.unit, float(m.y0[move]) / base.unit
        small = dice.choice([0.02, 0.04, 0.06]) / base.unit
        words = f"G3 X{n(x)} Y{n(y)} Z{n(z / base.unit)} I{n(-small)} J{n(0)} {_gentle(base, move)}"
        planted, where = _plunged(base, move, words)
        yield Plant(planted.bytes(), where, "a helix whose radius shrank to nothing")


@plants("plunge-without-centre-edge", HIDDEN | {"plunge-too-fast": "a plunge at any feed is"}
    | {"depth-step-suspect": "the steps of depth are others"})
def plunge_of_a_tool_without_centre_edge(base: Base, dice: Random) -> Iterator[Plant]:
    e, m = base.tables.engagement.entries, base.tables.motion
    for row, move in _entries(base, dice, "ramp", "helix"):
        tool = base.tool_of(move)
        if base.shop is None or tool.shape not in ("flat", "bull-nose") or e.solid[row] < 0.3 or not e.centre[row]:
            continue
        told = base.told(shop=lambda shop: [t.update(centre_cutting=False) for t in shop["tool"]])
        z = base.sheet().number(float(m.z1[move]) / base.unit)
        planted, where = _plunged(base, move, f"G1 Z{z} {_gentle(base, move)}")
        yield Plant(planted.bytes(), where, "a plunge with a tool that has no edge in its middle",
                    follows=ANYWHERE, **told)  # fmt: skip


@plants("plunge-too-fast", {"feed-over-machine": "the feed down is more than the axis can do"})
def plunge_at_cutting_feed(base: Base, dice: Random) -> Iterator[Plant]:
    m = base.tables.motion
    for _, move in _entries(base, dice, "ramp", "helix"):
        limit, tool = _limit(base, move), base.tool_of(move)
        if not limit or tool.shape != "flat" or float(m.z0[move] - m.z1[move]) < 0.4:
            continue
        down = min(0.9 * limit, 0.9 * float(m.z0[move] - m.z1[move]))
        n, line = base.sheet().number, base.line_of(move)
        feed = float(m.feed[move]) / base.unit
        sheet = base.explicit(base.sheet(), line)
        sheet.before(line, f"G1 Z{n((float(m.z0[move]) - down) / base.unit)} F{feed:.0f}")
        new = sheet.now(line) - 1
        yield Plant(sheet.bytes(), (new, new), "a plunge at the cutting feed")


@plants("steep-ramp", FAST)
def ramp_made_steeper(base: Base, dice: Random) -> Iterator[Plant]:
    m = base.tables.motion
    for row, move in _entries(base, dice, "ramp"):
        window, tool = base.windows(move), base.tool_of(move)
        if window is None or window.ramp_limit is None or int(m.kind[move]) != 1 or tool.shape != "flat":
            continue
        drop, limit = float(m.z0[move] - m.z1[move]), float(window.ramp_limit.high)
        allowed = _limit(base, move)
        if drop < max(1.1 * (allowed or 0), 0.3) or not base.tables.engagement.entries.centre[row]:
            continue
        angle = min(limit * dice.uniform(1.5, 2.5), 43)
        run = drop / math.tan(math.radians(angle))
        whole = math.hypot(m.x1[move] - m.x0[move], m.y1[move] - m.y0[move])
        if angle < limit + 2 or run > 0.8 * whole or run < 0.12 * tool.diameter:
            continue
        x = float(m.x0[move] + (m.x1[move] - m.x0[move]) * run / whole) / base.unit
        y = float(m.y0[move] + (m.y1[move] - m.y0[move]) * run / whole) / base.unit
        n = base.sheet().number
        feed = f"F{float(m.feed[move]) / base.unit:.0f}"
        planted, where = _plunged(base, move, f"G1 X{n(x)} Y{n(y)} Z{n(float(m.z1[move]) / base.unit)} {feed}")
        yield Plant(planted.bytes(), where, f"a ramp of {angle:.0f} degrees where {limit:.0f} are allowed")


@plants("steep-ramp", FAST)
def turns_left_out_of_a_helix(base: Base, dice: Random) -> Iterator[Plant]:
    """Every second turn or more is taken out, so that each of the rest goes down further."""
    m = base.tables.motion
    for _, first in _entries(base, dice, "helix"):
        window = base.windows(first)
        turns, k = [first], first + 1
        while base.once(k) and m.z1[k] < m.z0[k] and m.sweep[k] == m.sweep[first]:
            turns.append(k)
            k += 1
        if window is None or window.ramp_limit is None or len(turns) < 2:
            continue
        turn = 2 * math.pi * math.hypot(m.x0[first] - m.cu[first], m.y0[first] - m.cv[first])
        limit, drop = float(window.ramp_limit.high), float(m.z0[first] - m.z1[turns[-1]])
        most = [n for n in range(1, len(turns)) if limit + 3 < math.degrees(math.atan(drop / n / turn)) < 44]
        if not most or abs(float(m.sweep[first])) != 360:
            continue
        keep = dice.choice(most)
        kept = [turns[math.ceil(len(turns) * (n + 1) / keep) - 1] for n in range(keep)]
        sheet = base.explicit(base.sheet(), base.line_of(kept[0]))
        sheet.set(base.line_of(kept[0]), "F", float(m.feed[first]) / base.unit)
        for move in turns:
            if move not in kept:
                sheet.delete(base.line_of(move))
        lines = [base.line_of(k) for k in kept]
        yield Plant(sheet.bytes(), at(sheet, *lines), f"a helix of {keep} turns where there were {len(turns)}")


@plants("bores-with-router-bit", {"straight-plunge": "a bore is a plunge"})
def hole_bored_in_one_go(base: Base, dice: Random) -> Iterator[Plant]:
    if not base.gaps or base.bottom is None or not base.plain:
        return
    m = base.tables.motion
    for line in dice.sample(base.gaps, len(base.gaps)):
        move = int((m.line == line).argmax())
        tool, window = base.tool_of(move), base.windows(move)
        deep = dice.uniform(2.2, 2.8) * tool.diameter if tool else 0
        if tool is None or tool.shape != "flat" or window is None or window.plunge in (None, "no"):
            continue
        if deep > base.top - base.bottom - 0.5 or deep > (tool.flute_length or deep):
            continue
        spot = next(base.spots(dice, tool.diameter / 2 + 0.5), None)
        if spot is None:
            continue
        n = base.sheet().number
        x, y, over, floor = (n(v / base.unit) for v in (*spot, base.top + 0.5, base.top - deep))
        feed = max(m.feed[m.feed == m.feed].min() * 0.2, 60) / base.unit
        sheet = base.aside(line, f"G0 X{x} Y{y}", f"G0 Z{over}", f"G1 Z{floor} F{feed:.0f}")
        new = sheet.now(line)
        yield Plant(sheet.bytes(), (new - 5, new - 1), f"a hole of {deep / tool.diameter:.1f} diameters bored at once")


@plants("peck-too-deep", {"chip-too-thick": "the drill's feed is unchanged"})
def pecks_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    sheet = base.sheet()
    for line in sheet.lines_with("G", 83):
        move = int((base.tables.motion.line == line).argmax())
        tool, z, r = base.tool_of(move), sheet.word(line, "Z"), sheet.word(line, "R")
        if tool is None or z is None or (base.top / base.unit - z) * base.unit < 3.3 * tool.diameter:
            continue
        whole = base.sheet().drop(line, "Q")
        yield Plant(whole.write(line, whole.text(line).replace("G83", "G81")).bytes(), (line, line), "G81 for G83")
        depth = (base.top - z * base.unit) / base.unit
        yield Plant(base.sheet().set(line, "Q", depth).bytes(), (line, line), f"pecks of {depth:.0f} ({r})")
