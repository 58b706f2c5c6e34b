"""Feeds and speeds that do not suit the tooth: chips, edges, the machine's own limits, the unit of the feed."""

from __future__ import annotations

from collections.abc import Iterator
from random import Random
from typing import Any

import numpy as np

from tests.planted.base import Base, Declared
from tests.planted.harness import ANYWHERE, Plant, at, plants
from tests.planted.sheet import Sheet

HARDER = {
    "tool-bends": "thicker chips push harder",
    "tool-breaks": "the same",
    "spindle-stalls": "they take more power",
    "inside-corner": "in the corner the chip is thickest",
    "opening-slot-too-fast": "at full width it is",
}
FASTER = HARDER | {
    "plunge-too-fast": "a way down at this F goes down faster too",
    "feed-over-machine": "the feed is more than an axis does",
}
UNIT = {"feed-unit-suspect": "wrong by a round factor, it looks like another unit"}


def _by_tool(base: Base) -> dict[int, tuple[list[int], Any]]:
    """Of each tool, the lines of its F words and its pieces (rows) whose chips can be judged."""
    loads, pieces, m = base.tables.cutting.loads, base.tables.engagement.pieces, base.tables.motion
    tools = m.tool[pieces.move]
    found = {}
    for tool in np.unique(tools).tolist():
        rows = np.flatnonzero((tools == tool) & (loads.chip_judged > 0) & np.isfinite(loads.h_ex))
        lines = sorted({int(n) for n in loads.governs[tools == tool]} & set(base.sheet().lines_with("F")))
        declared = base.tables.setup.tools.get(tool)
        if declared is not None and declared.shape in ("ball", "tapered-ball"):
            continue  # what a ball takes as it finishes a surface is not held against a window
        long = float(pieces.length[rows].sum()) if len(rows) else 0.0
        every = float(pieces.length[tools == tool].sum())
        if lines and long > 0.3 * every and np.isfinite(loads.chip_high[rows]).any():
            found[tool] = (lines, rows)
    return found


def _middle(base: Base, values: Any, rows: Any) -> float:
    """The value that half of the cut length lies under."""
    length = base.tables.engagement.pieces.length[rows]
    order = np.argsort(values[rows])
    run = np.cumsum(length[order])
    return float(values[rows][order][int(np.searchsorted(run, run[-1] / 2))])


def _chip(base: Base, rows: Any, end: str) -> float:
    """How many times that end of its window the chip is, over the middle of the tool's cuts."""
    loads = base.tables.cutting.loads
    return _middle(base, loads.h_ex / (loads.chip_low if end == "low" else loads.chip_high), rows)


def _scaled(sheet: Sheet, lines: list[int], letter: str, by: float) -> Sheet:
    for line in lines:
        sheet.set(line, letter, round((sheet.word(line, letter) or 0) * by, 1))
    return sheet


def _feed_room(base: Base, sheet: Sheet, lines: list[int]) -> float:
    """How many times faster the fastest of these feeds may be before the machine cannot do it."""
    limit = base.tables.setup.machine.feed_limit
    most = min([v for v in (limit.x, limit.y) if v] or [1e9]) if limit else 1e9
    return most / (max(sheet.word(n, "F") or 0 for n in lines) * base.unit)


@plants("chip-too-thin", UNIT)
def feeds_divided(base: Base, dice: Random) -> Iterator[Plant]:
    """All feeds of one tool, so that its chips are a quarter of what they should be at least, or less."""
    for lines, rows in _by_tool(base).values():
        if not base.tables.setup.material.thin_judged:
            continue
        for _ in range(2):
            by = dice.uniform(0.1, 0.4) / _chip(base, rows, "low")
            if by > 0.05:  # so little looks like another unit
                sheet = _scaled(base.sheet(), lines, "F", by)
                yield Plant(sheet.bytes(), at(sheet, *lines), f"every feed of a tool times {by:.2f}")


@plants("chip-too-thin")
def more_flutes_than_meant(base: Base, dice: Random) -> Iterator[Plant]:
    """The tool in the spindle has so many teeth that each takes next to nothing."""
    for tool, (lines, rows) in _by_tool(base).items():
        declared = base.tables.setup.tools.get(tool)
        if declared is None or declared.flutes is None or base.shop is None:
            continue
        flutes = int(np.ceil(declared.flutes * _chip(base, rows, "low") / 0.4))
        told = base.with_tool(tool, flutes=flutes)
        if flutes <= 8 and base.tables.setup.material.thin_judged:
            yield Plant(base.data, at(base.sheet(), *lines), f"{flutes} flutes where {declared.flutes} are", **told)


@plants("chip-too-thick", FASTER)
def feeds_multiplied(base: Base, dice: Random) -> Iterator[Plant]:
    for lines, rows in _by_tool(base).values():
        sheet = base.sheet()
        by = dice.uniform(1.6, 3) / _chip(base, rows, "high")
        if by < _feed_room(base, sheet, lines) and _long(base, rows):
            _scaled(sheet, lines, "F", by)
            yield Plant(sheet.bytes(), at(sheet, *lines), f"every feed of a tool times {by:.2f}", follows=ANYWHERE)


@plants("chip-beyond-tool", FASTER | UNIT)
def a_tenth_of_the_speed_and_no_material(base: Base, dice: Random) -> Iterator[Plant]:
    """Where no card says how thick a chip may be."""
    for lines, rows in _by_tool(base).values():
        m, pieces = base.tables.motion, base.tables.engagement.pieces
        tool = base.tool_of(int(pieces.move[rows[0]]))
        if tool is None or tool.shape != "flat" or not tool.flutes or base.tables.setup.spindle.kind != "commanded":
            continue
        level = pieces.move[rows][m.length[pieces.move[rows]] > 15]
        with np.errstate(invalid="ignore", divide="ignore"):
            tooth = m.feed[level] / (m.speed[level] * tool.flutes)
        if not len(level) or not np.nanmin(tooth) > 0:
            continue
        sheet = base.sheet()
        _scaled(sheet, lines, "F", 0.15 * tool.diameter / float(np.nanmin(tooth)))
        yield Plant(sheet.bytes(), at(sheet, *lines), "0.15 of the diameter per tooth", follows=ANYWHERE,
                    **base.with_job(material=None))  # fmt: skip


@plants("feed-out-of-reach")
def a_machine_that_speeds_up_slowly(base: Base, dice: Random) -> Iterator[Plant]:
    """No material, so that nothing is said of chips."""
    m, pieces = base.tables.motion, base.tables.engagement.pieces
    rows = pieces.move[m.kind[pieces.move] != 0]
    if base.shop is None or not len(rows):
        return
    with np.errstate(invalid="ignore"):
        gain = 0.04 * float(np.nanmedian((m.feed[rows] / 60) ** 2 / m.length[rows]))  # v^2 / s: half of F in the middle
    if not gain > 0:
        return
    slow = f"{max(gain, 0.01):.3f} mm/s^2"
    told = base.with_job(material=None) | base.with_shop("machine", acceleration={"x": slow, "y": slow, "z": slow})
    yield Plant(base.data, ANYWHERE, f"axes that gain {slow}", follows=ANYWHERE, **told)


def _long(base: Base, rows: Any, least: float = 15) -> bool:
    """Whether most of these pieces lie on moves long enough to come up to speed."""
    pieces, m = base.tables.engagement.pieces, base.tables.motion
    return bool((m.length[pieces.move[rows]] > least).mean() > 0.6)


@plants("chip-too-thick", HARDER | UNIT)
def spindle_too_slow_for_the_feed(base: Base, dice: Random) -> Iterator[Plant]:
    """The feeds stay, and the speed comes down: a program for another spindle."""
    spindle = base.tables.setup.spindle
    for lines, rows in _by_tool(base).values():
        speeds = base.sheet().lines_with("S")
        by = _chip(base, rows, "high") / dice.uniform(1.6, 3)
        if spindle.kind == "commanded" and len(speeds) == 1 and spindle.low:
            sheet = base.sheet()
            if (sheet.word(speeds[0], "S") or 0) * by > spindle.low:
                _scaled(sheet, speeds, "S", by)
                yield Plant(sheet.bytes(), at(sheet, *lines), f"the speed times {by:.2f}", follows=ANYWHERE)


@plants("chip-too-thick", HARDER)
def fewer_flutes_than_meant(base: Base, dice: Random) -> Iterator[Plant]:
    for tool, (lines, rows) in _by_tool(base).items():
        declared = base.tables.setup.tools.get(tool)
        if declared is None or not declared.flutes or declared.flutes == 1 or base.shop is None:
            continue
        if _chip(base, rows, "high") * declared.flutes > 1.5:
            told = base.with_tool(tool, flutes=1)
            where = at(base.sheet(), *lines)
            yield Plant(base.data, where, f"one flute where {declared.flutes} are", follows=ANYWHERE, **told)


@plants("chip-too-thick", {"feed-over-machine": "the feed is more than the Z axis does"})
def drill_pushed(base: Base, dice: Random) -> Iterator[Plant]:
    """The feed of a drill's cycle, as for a router bit."""
    sheet, loads, pieces = base.sheet(), base.tables.cutting.loads, base.tables.engagement.pieces
    for line in [n for code in (81, 82, 83) for n in sheet.lines_with("G", code)]:
        rows = np.flatnonzero(base.tables.motion.line[pieces.move] == line)
        rows = rows[np.isfinite(loads.h_ex[rows] / loads.chip_high[rows])]
        if len(rows) and sheet.word(line, "F"):
            by = dice.uniform(1.6, 4) / float(np.median(loads.h_ex[rows] / loads.chip_high[rows]))
            changed = _scaled(base.sheet(), [line], "F", by)
            yield Plant(changed.bytes(), (line, line), f"a drill's feed times {by:.1f}", follows=(line, line))


# ---- the edge


def _edge(base: Base, end: str) -> float | None:
    """How many times that end of its window the edge's speed is."""
    loads = base.tables.cutting.loads
    limit = loads.edge_low if end == "low" else loads.edge_high
    rows = np.flatnonzero((loads.chip_judged > 0) & np.isfinite(limit) & (limit > 0))
    return _middle(base, loads.edge_speed / limit, rows) if len(rows) else None


def _at_another_speed(base: Base, by: float) -> tuple[Sheet, Declared, float] | None:
    """The program at about `by` times its speed and its cutting feeds with it, or None where the spindle cannot."""
    spindle, sheet, told = base.tables.setup.spindle, base.sheet(), {}
    speeds = sheet.lines_with("S")
    if len(speeds) != 1:
        return None
    now = sheet.word(speeds[0], "S") or 0
    if spindle.kind == "dial":
        true = {mark.stated: mark.true for mark in spindle.dial}
        if now not in true:
            return None
        fits = [m for m in spindle.dial if (m.true > true[now] * by if by > 1 else m.true < true[now] * by)]
        if not fits:
            return None
        mark = min(fits, key=lambda mark: abs(mark.true - true[now]))
        by = mark.true / true[now]
        sheet.set(speeds[0], "S", mark.stated)
        told = base.with_job(dial=mark.mark)
    elif not (spindle.low or 0) <= now * by <= (spindle.high or 1e9):
        return None
    else:
        sheet.set(speeds[0], "S", round(now * by))
    lines = sheet.lines_with("F")
    return (_scaled(sheet, lines, "F", by), told, by) if by < _feed_room(base, base.sheet(), lines) else None


@plants("edge-too-fast", {"feed-over-machine": "the feeds go with the speed", "plunge-too-fast": "the same",
                          "chip-too-thin": "the least chip of some materials rises with the edge's speed"})  # fmt: skip
def edge_speed_raised(base: Base, dice: Random) -> Iterator[Plant]:
    """The speed is raised and the feeds with it, so that the chips stay."""
    edge = _edge(base, "high")
    for _ in range(2 if edge else 0):
        changed = _at_another_speed(base, dice.uniform(1.15, 1.9) / (edge or 1))
        if changed:
            sheet, told, by = changed
            speed = at(sheet, *sheet.lines_with("S"))
            yield Plant(sheet.bytes(), speed, f"speed and feeds times {by:.2f}", follows=ANYWHERE, **told)


@plants("edge-too-slow", {"plunge-too-fast": "the feeds go with the speed"})
def edge_speed_lowered(base: Base, dice: Random) -> Iterator[Plant]:
    edge = _edge(base, "low")
    tool = next((t for t in base.tables.setup.tools.values() if t.diameter >= 6), None)
    for _ in range(9 if edge and tool else 0):  # few of the amounts drawn are within the spindle's range
        changed = _at_another_speed(base, dice.uniform(0.3, 0.8) / (edge or 1))
        if changed:
            sheet, told, by = changed
            yield Plant(sheet.bytes(), at(sheet, *sheet.lines_with("S")), f"speed and feeds times {by:.2f}", **told)


@plants("rim-too-fast")
def tool_made_for_less(base: Base, dice: Random) -> Iterator[Plant]:
    """The box of the tool names a highest speed, and the program turns it faster."""
    if base.shop is None:
        return
    speeds = base.tables.cutting.true_speed_of
    for tool, _ in base.tables.setup.tools.items():
        used = speeds[(base.tables.motion.tool == tool) & (base.removed > 0)]
        if not len(used) or not np.isfinite(used).any():
            continue
        top = round(float(np.nanmax(used)) * dice.uniform(0.5, 0.95))
        told = base.with_tool(tool, top_speed=top)
        lines = at(base.sheet(), *base.sheet().lines_with("S"))
        yield Plant(base.data, lines, f"a tool made for {top} rev/min", **told)


@plants("rim-too-fast")
def wide_cutter_at_a_router_speed(base: Base, dice: Random) -> Iterator[Plant]:
    if base.shop is None or base.tables.setup.spindle.kind != "commanded":
        return
    sheet = base.sheet()
    for line in sheet.lines_with("S"):
        tool = base.tool(next((k for k in np.flatnonzero(base.removed > 0) if base.line_of(k) > line), 0))
        fast = dice.uniform(46, 50) * 60_000 / np.pi / tool.diameter if tool else 1e9
        if tool and tool.diameter >= 20 and fast < base.tables.setup.spindle.high:
            sheet.set(line, "S", round(fast))
            yield Plant(sheet.bytes(), at(sheet, line), f"S{fast:.0f} for {tool.diameter:.0f} mm")


# ---- what the machine does with the feed


@plants("feed-never-reached")
def slow_machine(base: Base, dice: Random) -> Iterator[Plant]:
    """The program on a machine that speeds up so slowly that most of its moves end before the feed is reached."""
    if base.shop is None or not base.shop["machine"].get("acceleration") or not base.tables.setup.material.thin_judged:
        return
    m, pieces = base.tables.motion, base.tables.engagement.pieces
    for lines, rows in _by_tool(base).values():
        long = _middle(base, m.length[pieces.move].astype(float), rows)
        chip = _chip(base, rows, "low")
        feed = _middle(base, m.feed[pieces.move].astype(float), rows) / 60
        if chip < 0.7:
            continue
        wanted = dice.uniform(0.15, 0.3) / chip * feed  # on average over the move: at its middle half as much again
        pull = wanted * wanted / long
        told = base.with_shop("machine", acceleration=_all(f"{pull:.2f} mm/s^2"))
        yield Plant(base.data, at(base.sheet(), *lines), f"a machine that speeds up with {pull:.1f} mm/s2", **told)


def _all(value: str) -> Declared:
    return dict.fromkeys("xyz", value)


@plants(
    "feed-over-machine", FASTER | {"chip-too-thick": "the chip follows the feed", "odd-lap-feed": "one lap is faster"}
)
def feed_of_a_faster_machine(base: Base, dice: Random) -> Iterator[Plant]:
    """One F word, far over what the machine does."""
    sheet, limit = base.sheet(), base.tables.setup.machine.feed_limit
    lines = [base.line_of(k) for k in base.moves((1, 2, 3), cutting=True, level=True, least=8)]
    lines = [n for n in lines if sheet.word(n, "F")]
    if not limit or not limit.x or not limit.y:
        return
    for line in dice.sample(lines, len(lines)):
        # whichever way the move goes, one of its two axes does at least 0.7 of the feed
        feed = dice.uniform(1.6, 3) * max(limit.x, limit.y) / base.unit
        changed = base.sheet().set(line, "F", round(feed, 1))
        until = next((n for n in sheet.lines_with("F") if n > line), sheet.last)
        yield Plant(changed.bytes(), (line, line), f"F{feed:.0f}", follows=(line, until))


@plants("feed-over-machine")
def smaller_machine(base: Base, dice: Random) -> Iterator[Plant]:
    """The whole program, on a machine that is slower than its cuts."""
    if base.shop is None:
        return
    lines = base.sheet().lines_with("F")
    fastest = max(base.sheet().word(n, "F") or 0 for n in lines)
    for _ in range(2):
        limit = _all(f"{fastest * base.unit * dice.uniform(0.3, 0.65):.0f} mm/min")
        told = base.with_shop("machine", feed_limit=limit)
        yield Plant(base.data, at(base.sheet(), *lines), f"on a machine that does {limit['x']}", **told)


@plants("feed-unit-suspect", {"chip-too-thin": "and the chips are next to nothing"})
def feeds_per_second(base: Base, dice: Random) -> Iterator[Plant]:
    """Exported in mm/s for a machine that reads mm/min."""
    if base.tables.setup.material.thin_judged and _by_tool(base):
        lines = base.sheet().lines_with("F")
        sheet = _scaled(base.sheet(), lines, "F", 1 / 60)
        yield Plant(sheet.bytes(), at(sheet, *lines), "every feed divided by 60")


@plants("feed-unit-suspect", FASTER | {"chip-too-thick": "other cuts of the same export"})
def millimetre_feeds_in_an_inch_program(base: Base, dice: Random) -> Iterator[Plant]:
    if base.unit > 1 and _by_tool(base):
        lines = base.sheet().lines_with("F")
        sheet = _scaled(base.sheet(), lines, "F", 25.4)
        yield Plant(sheet.bytes(), at(sheet, *lines), "every feed times 25.4", follows=ANYWHERE)


# ---- laps


def _closed(base: Base, run: list[int]) -> list[int]:
    """The longest part of a run of moves that comes back to where it begins."""
    m = base.tables.motion
    ways = [
        run[i : k + 1] for i in range(len(run)) for k in range(i + 2, len(run))
        if abs(m.x0[run[i]] - m.x1[run[k]]) + abs(m.y0[run[i]] - m.y1[run[k]]) < 0.02
    ]  # fmt: skip
    return max(ways, key=lambda way: float(m.length[way].sum()), default=[])


def _laps(base: Base) -> Iterator[tuple[list[list[int]], int]]:
    """Closed runs of level cutting moves of one tool over the same outline at several depths: (moves of each, tool)."""
    m = base.tables.motion
    runs: dict[tuple[object, ...], list[list[int]]] = {}
    run: list[int] = []
    for k in range(len(m) + 1):
        level = k < len(m) and m.kind[k] > 0 and m.z0[k] == m.z1[k] and base.removed[k] > 0 and base.once(k)
        if level and (not run or (m.z1[k] == m.z1[run[0]] and m.tool[k] == m.tool[run[0]])):
            run.append(k)
            continue
        run = _closed(base, run)
        if len(run) > 3:
            ends = tuple((round(float(m.x1[j]), 1), round(float(m.y1[j]), 1)) for j in run[:4])
            runs.setdefault((int(m.tool[run[0]]), *ends), []).append(run)
        run = [k] if level else []
    for key, laps in runs.items():
        if len(laps) > 2:
            yield laps, int(str(key[0]))


@plants("odd-lap-feed", FASTER | {"chip-too-thick": "the chip follows the feed"})
def one_lap_faster(base: Base, dice: Random) -> Iterator[Plant]:
    """One lap of several over the same outline runs at a much higher feed than its like."""
    m = base.tables.motion
    if not base.plain:
        return
    for laps, _ in _laps(base):
        for lap in dice.sample(laps, len(laps)):
            feed = float(m.feed[lap[0]]) / base.unit
            by = dice.uniform(1.5, 2.5)
            sheet = base.sheet()
            lines = [base.line_of(k) for k in lap]
            for line in [n for n in lines if sheet.word(n, "F")]:
                sheet.set(line, "F", round(feed * by, 1))
            sheet.set(lines[0], "F", round(feed * by, 1))
            after = base.next_line(lap[-1])
            if after and sheet.word(after, "F") is None and m.kind[lap[-1] + 1] > 0:
                sheet.set(after, "F", round(float(m.feed[lap[-1] + 1]) / base.unit, 1))
            where = at(sheet, *lines)
            yield Plant(sheet.bytes(), where, f"one lap at {by:.1f} times the feed of its like", follows=where)
