"""Faults of whole runs: a retract left out, a run written twice, an arc turned round, rapids for feed moves."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise
from random import Random

import numpy as np

from tests.planted.base import Base
from tests.planted.faults_of_slips import ASTRAY
from tests.planted.harness import ANYWHERE, Plant, at, plants
from tests.planted.sheet import Sheet


def _swapped(sheet: Sheet, line: int, was: float, now: str) -> bool:
    """Another G code in the stead of one on this line; whether it stood there."""
    spot = next((w for w in sheet.words(line) if w[0] == "G" and w[1] == was), None)
    if spot is None:
        return False
    text = sheet.text(line)
    sheet.write(line, text[: spot[2]] + now + text[spot[3] :])
    return True


@plants("drill-dragged-sideways", ASTRAY | {
    "rapid-through-stock": "it stands in a slot of its own now", "ends-in-material": "the retract is another's",
    "feed-over-machine": "it goes aside at the feed of the hole", "coordinate-suspect": "the place is a slip",
    "edge-too-fast": "a drill's rim is no edge", "full-width-too-deep": "it cuts a slot", "too-deep": "the same",
    "opening-slot-too-fast": "the same",
})  # fmt: skip
def a_retract_left_out_between_holes(base: Base, dice: Random) -> Iterator[Plant]:
    m = base.tables.motion
    for move in base.moves((1,), cutting=True):
        tool, line = base.tool(move), base.line_of(move)
        down = m.z1[move] < base.top - 1 and m.x0[move] == m.x1[move] and m.y0[move] == m.y1[move]
        if tool is None or tool.shape != "drill" or not down:
            continue
        sheet = base.sheet()
        x = sheet.number(float(m.x1[move] + 2 * tool.diameter) / base.unit)
        back = sheet.number(float(m.x1[move]) / base.unit)
        sheet.after(line, f"G1 X{x}", f"G1 X{back}")
        yield Plant(sheet.bytes(), at(sheet, line, slack=2), "the drill goes aside at the bottom of a hole")


@plants("cuts-only-air")
def a_run_written_twice(base: Base, dice: Random) -> Iterator[Plant]:
    if not base.plain:
        return
    gaps = sorted(base.gaps)
    for first, behind in pairwise(gaps):
        sheet = base.sheet()
        texts = [sheet.text(n) for n in range(first, behind) if sheet.has(n)]
        words = [word for n in range(first, behind) if sheet.has(n) for word in sheet.words(n)]
        codes = {(letter, value) for letter, value, _, _ in words}
        plain = not any(letter in "TMSHDN" or (letter == "G" and value > 3) for letter, value in codes)
        feeds = any(("G", g) in codes for g in (1.0, 2.0, 3.0))
        m, box = base.tables.motion, base.tables.engagement.box
        rows = np.flatnonzero((m.line >= first) & (m.line < behind) & (m.kind != 0))
        inside = box is not None and all(
            span and span[0] < end[rows].min() and end[rows].max() < span[1]
            for end, span in ((m.x1, box.x), (m.y1, box.y)) if len(rows)
        )  # fmt: skip
        way = np.hypot(m.x1[rows] - m.x0[rows], m.y1[rows] - m.y0[rows]).sum()
        if not inside or way < 40:
            continue  # a hole again clears its chips
        if len(texts) < 60 and plain and feeds and {0.0} & {v for c, v in codes if c == "G"}:
            sheet.before(behind, *texts)
            where = at(sheet, behind)
            yield Plant(sheet.bytes(), (where[0] - len(texts), where[1]), "a run stands in the program twice")


@plants("arc-turns-back", ASTRAY | {
    "full-width-too-deep": "the loop cuts a slot", "too-deep": "the same", "opening-slot-too-fast": "the same",
    "outside-stock": "the loop leaves the blank", "wall-too-thin": "the loop cuts near a wall",
    "cuts-table": "the loop goes over the edge", "feed-over-machine": "the loop is long",
    "contour-too-tight": "the loop turns the other way", "outside-travel": "the loop is wide",
})  # fmt: skip
def an_arc_turned_round(base: Base, dice: Random) -> Iterator[Plant]:
    m = base.tables.motion
    if base.sheet().lines_with("G", 41.0) or base.sheet().lines_with("G", 42.0):
        return  # the tool's own path is another
    for move in base.moves((2, 3), cutting=True):
        line = base.line_of(move)
        neighbours = 0 < move < len(m) - 1 and m.kind[move - 1] == 1 and m.kind[move + 1] == 1
        level = m.z0[move] == m.z1[move] and m.z0[move - 1] == m.z1[move - 1]
        if not neighbours or not level or m.plane[move] != 17 or abs(m.sweep[move]) > 181 or m.flags[move] & 256:
            continue
        way = np.array([m.x1[move - 1] - m.x0[move - 1], m.y1[move - 1] - m.y0[move - 1]])
        spoke = np.array([m.x0[move] - m.cu[move], m.y0[move] - m.cv[move]])
        after = np.array([m.x1[move + 1] - m.x0[move + 1], m.y1[move + 1] - m.y0[move + 1]])
        end = np.array([m.x1[move] - m.cu[move], m.y1[move] - m.cv[move]])
        if not all(np.hypot(*v) > 0.2 for v in (way, after, spoke)):
            continue
        tangent = all(abs(a @ b) < 0.05 * np.hypot(*a) * np.hypot(*b) for a, b in ((way, spoke), (after, end)))
        sheet = base.sheet()
        if not tangent or sheet.word(line, "R") is not None:
            continue
        if _swapped(sheet, line, 2.0, "G3") or _swapped(sheet, line, 3.0, "G2"):
            yield Plant(sheet.bytes(), at(sheet, line), "an arc goes the other way round", follows=ANYWHERE)


@plants("tool-changed-in-cut", {
    "no-spin-up-time": "the spindle starts anew in the cut", "tool-length-not-set": "the length is not set again",
    "spindle-not-running": "the spindle starts anew", "tool-order-changed": "the change is one more",
    "tool-change-without-stop": "the machine goes on", "compensation-left-on": "the change comes on a contour",
    "program-stop-in-material": "the change is a stop", "speed-not-on-dial": "the same speed",
    "compensation-without-radius": "the D goes with the change",
})  # fmt: skip
def a_change_in_the_cut(base: Base, dice: Random) -> Iterator[Plant]:
    m = base.tables.motion
    if base.tables.setup.controller.tool_change not in ("does", "stops") or not base.plain:
        return
    for move in base.moves((1,), cutting=True, least=2):
        tool = int(m.tool[move])
        if tool < 0 or m.z1[move] > base.top - 0.5 or m.flags[move] & 256 or not np.isfinite(m.speed[move]):
            continue
        box = base.tables.engagement.box
        spans = ((m.x1[move], box and box.x), (m.y1[move], box and box.y))
        if not all(span and span[0] < value < span[1] for value, span in spans):
            continue  # its end lies beside the blank
        sheet, line = base.sheet(), base.line_of(move)
        speed = f"{float(m.speed[move]):.0f}"
        sheet.after(line, f"T{tool} M6", f"S{speed} M3")
        yield Plant(sheet.bytes(), at(sheet, line, slack=2), "the tool is changed in the cut", follows=ANYWHERE)


@plants("no-feed-move", {
    "never-cuts": "nothing is at feed", "rapid-through-stock": "all of it is a rapid", "runs-too-long": "the same",
    "first-move-low": "the same", "cuts-table": "the same", "ends-in-material": "the same", "feed-missing": "the same",
    "rapid-not-straight": "the same", "travel-too-low": "the same", "cuts-fixture": "the same",
    "tool-not-declared": "no tool is at feed", "spindle-not-running": "the same", "z-zero-suspect": "the same",
})  # fmt: skip
def every_feed_move_a_rapid(base: Base, dice: Random) -> Iterator[Plant]:
    if not base.plain or (base.tables.motion.kind >= 2).any() or base.tables.motion.cycle.any():
        return
    sheet = base.sheet()
    lines = sheet.lines_with("G", 1.0)
    if lines and all(_swapped(sheet, line, 1.0, "G0") for line in lines):
        yield Plant(sheet.bytes(), ANYWHERE, "every G1 is a G0")
