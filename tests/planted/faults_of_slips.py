"""Slips of the hand: one number that stands against its like, a word left on or left out, blocks in the wrong place."""

from __future__ import annotations

import re
from collections.abc import Iterator
from random import Random

import numpy as np

from tests.planted.base import Base
from tests.planted.faults_of_text import NOT_DONE, TOO_LARGE
from tests.planted.harness import ANYWHERE, Plant, at, onward, plants
from tests.planted.sheet import Sheet

ASTRAY = NOT_DONE | TOO_LARGE | {
    "arc-does-not-close": "the next arc begins at another place",
    "cuts-fixture": "the tool runs out to the clamps",
    "rapid-through-stock": "the way to and from the wrong place goes through the blank",
    "chip-too-thick": "the way there cuts what was meant for other moves",
    "chip-too-thin": "the same",
    "odd-lap-feed": "the same",
    "down-cut-packs-slot": "the same",
    "tool-bends": "the same",
    "tool-breaks": "the same",
    "conventional-cut": "the same",
    "part-comes-loose": "the way there cuts through a tab, or around the part",
    "holder-hits-stock": "it goes too deep",
    "cuts-floor": "the same",
    "not-cut-through": "what should have been cut there stands",
    "cuts-only-air": "the way there is in the air",
    "never-cuts": "the same",
    "inside-corner": "the corners lie elsewhere",
    "bores-with-router-bit": "it goes straight down ten times as deep",
    "units-suspect": "all spreads far beyond the blank",
    "steep-ramp": "it goes down ten times as far on the same way",
    "depth-step-suspect": "a lap is missing at this depth",
}  # fmt: skip


def _drawn(dice: Random, lines: list[int]) -> list[int]:
    return dice.sample(lines, len(lines))


def _places(base: Base, letter: str) -> dict[int, float]:
    """Absolute places of one axis (mm) by the line that writes them, of lines that make one plain move."""
    sheet, m, made = base.sheet(), base.tables.motion, {}
    for move in base.moves((0, 1, 2, 3)):
        line = base.line_of(move)
        value = sheet.word(line, letter)
        end = float({"X": m.x1, "Y": m.y1, "Z": m.z1}[letter][move])
        if value is not None and abs(value * base.unit - end) < 1e-4:
            made[line] = end
    return made


def _wide(base: Base) -> float:
    """Twice the diameter of the largest tool that is used, 8 mm at least: what lies nearer is a lead-in."""
    used = set(base.tables.motion.tool.tolist())
    return max(8.0, *(2 * tool.diameter for n, tool in base.tables.setup.tools.items() if n in used), 0)


def _straight(base: Base) -> set[int]:
    """Lines of straight cuts that no compensation shifts."""
    sheet = base.sheet()
    on, off = (sheet.lines_with("G", code) for code in (41, 40))
    ends = {first: min([end for end in off if end > first], default=sheet.last) for first in on}
    shifted = {n for first, end in ends.items() for n in range(first, end + 1)}
    return {base.line_of(k) for k in base.moves((1,), cutting=True)} - shifted


# ---- coordinates


@plants("coordinate-suspect", ASTRAY)
def point_of_a_coordinate_lost(base: Base, dice: Random) -> Iterator[Plant]:
    """One X or Y ten times as far, where that lies far from all others."""
    for letter in dice.sample("XY", 2):
        places = _places(base, letter)
        for line in _drawn(dice, sorted(_straight(base) & set(places))):
            others = [value for other, value in places.items() if other != line]
            wrong, span = 10 * places[line], max(others) - min(others)
            gap = max(wrong - max(others), min(others) - wrong)
            if len(places) >= 14 and gap > max(3 * span, 2 * _wide(base)):
                sheet = base.sheet().set(line, letter, wrong / base.unit)
                says = f"{letter}{wrong:g} for {letter}{places[line]:g}"
                yield Plant(sheet.bytes(), (line, line), says, follows=ANYWHERE)


@plants("coordinate-suspect", ASTRAY)
def sign_of_a_coordinate_lost(base: Base, dice: Random) -> Iterator[Plant]:
    """One X or Y on the other side of zero, where all others lie on one side and the places beside it are near."""
    m = base.tables.motion
    for letter in dice.sample("XY", 2):
        places = _places(base, letter)
        if len(places) < 14:
            continue
        one_side = min(places.values()) >= 0 or max(places.values()) <= 0
        for line in _drawn(dice, sorted(_straight(base) & set(places))):
            move = int(np.flatnonzero(m.line == line)[0])
            begins, ends = (m.x0, m.x1) if letter == "X" else (m.y0, m.y1)
            beside = [float(begins[move]), float(ends[min(move + 1, len(m) - 1)])]
            far = [abs(-places[line] - other) for other in beside]
            if not sum(abs(places[line] - other) for other in beside) < 0.3 * sum(far):
                continue
            if one_side and abs(places[line]) > max(1.5 * _wide(base), 0.5 * np.ptp(list(places.values()))):
                sheet = base.sheet().set(line, letter, -places[line] / base.unit)
                says = f"{letter}{-places[line]:g} for {letter}{places[line]:g}"
                yield Plant(sheet.bytes(), (line, line), says, follows=ANYWHERE)


def _depths(base: Base) -> dict[int, float]:
    """Places of Z below zero by line, of moves at feed."""
    feeds = {base.line_of(k) for k in base.moves((1, 2, 3))}
    return {line: z for line, z in _places(base, "Z").items() if z < 0 and line in feeds}


@plants("coordinate-suspect", ASTRAY)
def point_of_a_depth_lost(base: Base, dice: Random) -> Iterator[Plant]:
    depths = _depths(base)
    for line in _drawn(dice, sorted(_straight(base) & set(depths))):
        others = [z for other, z in depths.items() if other != line]
        if depths[line] in others and 10 * depths[line] < 2.2 * min(others):
            sheet = base.sheet().set(line, "Z", 10 * depths[line] / base.unit)
            says = f"Z{10 * depths[line]:g} for Z{depths[line]:g}"
            yield Plant(sheet.bytes(), (line, line), says, follows=ANYWHERE)


@plants("coordinate-suspect", ASTRAY)
def sign_of_a_depth_lost(base: Base, dice: Random) -> Iterator[Plant]:
    depths, m = _depths(base), base.tables.motion
    heights = set(np.round(m.z1[np.isfinite(m.z1)], 3).tolist())
    for line in _drawn(dice, sorted(_straight(base) & set(depths))):
        z, move = depths[line], int(np.flatnonzero(m.line == line)[0])
        if list(depths.values()).count(z) > 1 and round(-z, 3) not in heights and m.z1[move + 1] == m.z1[move]:
            sheet = base.sheet().set(line, "Z", -z / base.unit)
            yield Plant(sheet.bytes(), (line, line), f"Z{-z:g} for Z{z:g}", follows=ANYWHERE)


def _laps(base: Base) -> list[list[int]]:
    """Runs of descents (moves) by equal steps, each from the place where the one before began."""
    m, runs = base.tables.motion, []
    for move in np.flatnonzero((m.kind == 1) & (m.z0 <= 0) & (m.z1 < m.z0 - 0.1)).tolist():
        last = runs[-1][-1] if runs else -1
        if last >= 0 and base.once(move) and move > last + 1 and (
            abs((m.z0[move] - m.z1[move]) - (m.z0[last] - m.z1[last])) < 1e-6
            and abs(m.z0[move] - m.z1[last]) < 1e-6
            and np.hypot(m.x0[move] - m.x0[last], m.y0[move] - m.y0[last]) < 1e-6
        ):
            runs[-1].append(move)
        else:
            runs.append([move])
    return [run for run in runs if len(run) > 4]


@plants("depth-step-suspect", ASTRAY)
def lap_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    """The lines of one lap of several at equal steps of depth are gone."""
    m = base.tables.motion
    for run in _laps(base) if base.plain else []:
        for n in dice.sample(range(1, len(run) - 2), len(run) - 3):
            sheet, after = base.sheet(), base.line_of(run[n + 1])
            words = [{w[0] for w in sheet.words(base.line_of(k))} for k in (run[n], run[n + 1])]
            if words[0] == words[1]:
                for move in range(run[n], run[n + 1]):
                    sheet.delete(base.line_of(move))
                says = f"the lap at Z{m.z1[run[n]]:g} is gone"
                yield Plant(sheet.bytes(), at(sheet, after), says, follows=onward(sheet.now(after)))


# ---- feeds and speeds


FEED_WRONG = {
    "chip-too-thick": "ten times the feed", "plunge-too-fast": "the same", "opening-slot-too-fast": "the same",
    "feed-over-machine": "the same", "feed-unit-suspect": "the same", "odd-lap-feed": "the same",
    "tool-breaks": "the same", "tool-bends": "the same", "spindle-stalls": "the same", "steep-ramp": "the same",
    "conventional-cut": "the same", "drill-feed": "the same", "full-width-too-deep": "the same",
    "corner-too-fast": "the same", "chip-too-thin": "a tenth of the feed", "too-deep": "the same",
    "inside-corner": "ten times the feed",
}  # fmt: skip


@plants("feed-suspect", FEED_WRONG)
def point_of_a_feed_moved(base: Base, dice: Random) -> Iterator[Plant]:
    """One F ten times, or a tenth of, what three like moves or more have."""
    m, sheet = base.tables.motion, base.sheet()
    across, drop = np.hypot(m.x1 - m.x0, m.y1 - m.y0), m.z0 - m.z1
    for line in _drawn(dice, [n for n in sheet.lines_with("F") if base.plain]):
        of = (m.feed_line == line) & (m.kind != 0)
        for sort in (drop > across, (np.abs(drop) <= across) & (across > 0)):
            rows = of & sort
            if not rows.any():
                continue
            like = sort & (m.kind != 0) & ~of & (m.tool == m.tool[rows][0])
            feed, others = float(m.feed[rows][0]), m.feed[like]
            enough = np.count_nonzero(others == feed) >= max(3, 10 * np.count_nonzero(rows))
            for factor in (0.1, 10.0):
                wrong = feed * factor
                apart = enough and (wrong > 5 * others.max() if factor > 1 else wrong < 0.2 * others.min())
                if apart and round(wrong / base.unit, 1) == wrong / base.unit:
                    says = f"F{wrong / base.unit:g} for F{feed / base.unit:g}"
                    text = base.sheet().set(line, "F", wrong / base.unit)
                    yield Plant(text.bytes(), (line, line), says, follows=onward(line))
            break


SPEED_WRONG = FEED_WRONG | {
    "speed-over-spindle": "the spindle does not turn so fast", "speed-under-spindle": "nor so slowly",
    "edge-too-fast": "ten times the speed", "edge-too-slow": "a tenth of the speed", "rim-too-fast": "the same",
    "speed-not-on-dial": "the dial has no such mark", "heats-edge": "ten times the speed",
}  # fmt: skip


@plants("speed-suspect", SPEED_WRONG)
def zero_of_a_speed_lost(base: Base, dice: Random) -> Iterator[Plant]:
    lines = base.sheet().lines_with("S")
    for line in _drawn(dice, lines if len(lines) > 2 else []):
        for factor in (0.1, 10):
            wrong = factor * (base.sheet().word(line, "S") or 0)
            yield Plant(base.sheet().set(line, "S", wrong).bytes(), (line, line), f"S{wrong:g}", follows=onward(line))


# ---- words that are left on, left out, or another's


@plants("not-followed", {"state-unstated": "no G90 is left"})
def incremental_from_nowhere(base: Base, dice: Random) -> Iterator[Plant]:
    sheet = base.sheet()
    for line in sheet.lines_with("G", 90)[:1]:
        sheet.set(line, "G", 91, sheet.codes(line).index(90))
        yield Plant(sheet.bytes(), onward(line), "G91 for G90", follows=ANYWHERE)


@plants("spindle-off-unseen", {"state-unstated": "no G90 is left", "not-followed": "no place is known"})
def incremental_from_nowhere_without_a_start(base: Base, dice: Random) -> Iterator[Plant]:
    sheet = base.sheet()
    starts = sheet.lines_with("M", 3)
    if starts and base.tables.setup.spindle.started != "by-hand":
        for line in sheet.lines_with("G", 90)[:1]:
            sheet.set(line, "G", 91, sheet.codes(line).index(90))
            for start in starts:
                sheet.drop_code(start, "M", 3)
            yield Plant(sheet.bytes(), ANYWHERE, "G91 for G90, and no M3", follows=ANYWHERE)


@plants("not-followed", NOT_DONE)
def second_offset_of_unknown_place(base: Base, dice: Random) -> Iterator[Plant]:
    for line in _drawn(dice, base.gaps[: 2 * len(base.gaps) // 3]):
        sheet = base.sheet().before(line, "G55")
        if not base.sheet().lines_with("G", 55):
            here = sheet.now(line) - 1
            yield Plant(sheet.bytes(), (here, here), f"G55 before line {line}", follows=ANYWHERE)


@plants("feed-mode-left-on", FEED_WRONG | {"word-missing": "every move needs an F of its own under G93",
                                           "feed-missing": "the same",
                                           "chip-beyond-tool": "F counts for each turn"})  # fmt: skip
def feed_mode_of_another_header(base: Base, dice: Random) -> Iterator[Plant]:
    """G93 where some moves have no F of their own, or G95."""
    m = base.tables.motion
    feeds = m.kind != 0
    own = bool((m.feed_line[feeds] == m.line[feeds]).all())
    for code in () if _small(base) else (95,) if own else (93, 95):
        sheet = base.sheet()
        for line in sheet.lines_with("G", 94)[:1]:
            sheet.set(line, "G", code, sheet.codes(line).index(94))
            yield Plant(sheet.bytes(), (line, line), f"G{code} for G94", follows=ANYWHERE)


@plants("path-tolerance-wide")
def path_tolerance_in_another_unit(base: Base, dice: Random) -> Iterator[Plant]:
    for line in [] if _small(base) else _units(base.sheet()):
        value = dice.choice([1.5, 3, 8])
        sheet = base.sheet().after(line, f"G64 P{base.sheet().number(value / base.unit)}")
        yield Plant(sheet.bytes(), (line + 1, line + 1), f"G64 with P of {value} mm")


def _small(base: Base) -> bool:
    """Whether the controller refuses G64 and G95."""
    return base.tables.setup.controller.name == "hobby-3-axis"


def _units(sheet: Sheet) -> list[int]:
    return (sheet.lines_with("G", 21) + sheet.lines_with("G", 20))[:1]


@plants("length-cancelled-low")
def length_cancelled_before_the_lift(base: Base, dice: Random) -> Iterator[Plant]:
    """G49 before the last lift above the blank."""
    sheet, m = base.sheet(), base.tables.motion
    lengths = sheet.lines_with("G", 43)
    for line in [n for n in base.sheet().lines_with("Z") if lengths and n > max(lengths)][::-1]:
        moves = np.flatnonzero(m.line == line)
        if len(moves) == 1 and m.kind[moves[0]] == 0 and m.z1[moves[0]] > base.top and 53 not in sheet.codes(line):
            changed = base.sheet().before(line, "G49")
            here = changed.now(line) - 1
            yield Plant(changed.bytes(), (here, here + 1), "G49 before the last lift", follows=onward(here))
            return


WRONG_TOOL = ASTRAY | {
    "drill-dragged-sideways": "the drill does the mill's work",
    "tool-length-not-set": "the length is another tool's",
    "bores-with-router-bit": "the mill does the drill's work",
    "peck-too-deep": "the same",
    "tool-not-as-declared": "the comment names the other tool",
    "mill-drills": "the mill does the drill's work",
    "edge-too-fast": "the speed is the other tool's",
    "edge-too-slow": "the same",
    "rim-too-fast": "the same",
    "hole-too-deep-for-flutes": "the mill does the drill's work",
}


@plants("tool-only-selected", WRONG_TOOL)
def change_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    """T stands, M6 is gone, and the length of the new tool is taken."""
    for line in base.sheet().lines_with("M", 6)[1:]:
        sheet = base.sheet().drop_code(line, "M", 6)
        if sheet.has(line) and sheet.word(line, "T") is not None:
            yield Plant(sheet.bytes(), (line, line), "T without M6", follows=onward(line))


@plants("plane-suspect", ASTRAY)
def plane_left_on(base: Base, dice: Random) -> Iterator[Plant]:
    """G18 or G19 before an arc in XY."""
    sheet = base.sheet()
    arcs = [base.line_of(k) for k in base.moves((2, 3), cutting=True)]
    for line in _drawn(dice, [n for n in arcs if sheet.word(n, "I") and sheet.word(n, "J")]):
        code = dice.choice([18, 19])
        changed = base.sheet().before(line, f"G{code}")
        here = changed.now(line)
        yield Plant(changed.bytes(), onward(here), f"G{code} before an arc in XY", follows=onward(here - 1))


@plants("compensation-without-radius", {"contour-too-tight": "the radius that is taken is not known"})
def diameter_word_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    sheet = base.sheet()
    on = sheet.lines_with("G", 41)
    for line in sheet.lines_with("D"):
        sheet.drop(line, "D")
    if on:
        yield Plant(sheet.bytes(), (on[0], on[-1]), "no D beside G41", follows=ANYWHERE)


@plants("compensation-of-another-tool", ASTRAY | {"contour-too-tight": "a larger radius", "entry-too-short": "the same",
                                                  "compensation-refused": "the same"})  # fmt: skip
def diameter_word_of_another_tool(base: Base, dice: Random) -> Iterator[Plant]:
    for line in base.sheet().lines_with("G", 41):
        for other in (6, 42):
            sheet = base.sheet().set(line, "D", other)
            yield Plant(sheet.bytes(), (line, line), f"D{other} for D1", follows=ANYWHERE)


# ---- the flow, the file


@plants(
    "blocks-behind-end",
    {"not-cut-through": "what follows is never cut", "ends-without-stop": "M5 comes too late",
     "part-comes-loose": "the tabs are never cut", "never-cuts": "nothing is cut before"}
)  # fmt: skip
def end_in_the_middle(base: Base, dice: Random) -> Iterator[Plant]:
    for line in _drawn(dice, base.gaps):
        sheet = base.sheet().before(line, "M5", dice.choice(["M2", "M30"]))
        here = sheet.now(line) - 1
        yield Plant(sheet.bytes(), (here, here), f"the end before line {line}", follows=ANYWHERE)


@plants("subprogram-without-end", {"ends-without-stop": "the program does not come back", "flow-unmatched": "no M99",
                                   "program-cut-short": "the program ends in the subprogram",
                                   "ends-in-material": "the same", "never-cuts": "the same"})  # fmt: skip
def return_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    sheet = base.sheet()
    for line in sheet.lines_with("M", 99):
        head = max(n for n, text in sheet.rows if re.match(r"[O:]\d", text) and n < line)
        yield Plant(base.sheet().drop_code(line, "M", 99).bytes(), (head, head), "no M99", follows=ANYWHERE)


@plants("points-all-missing", {"units-suspect": "all is a thousandth", "never-cuts": "the same",
                               "straight-plunge": "the same", "chip-too-thin": "feeds are as small",
                               "feed-unit-suspect": "the same", "not-cut-through": "the same",
                               "depth-step-suspect": "whole numbers make steps of two sizes"})  # fmt: skip
def every_point_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    """Whole numbers, without a point, where that counts in thousandths."""
    if base.tables.setup.controller.no_point == "resolution" and base.plain:
        sheet = base.sheet()
        for line, text in list(sheet.rows):
            code, bracket, comment = text.partition("(")
            sheet.write(line, re.sub(r"(\d)\.\d*", r"\1", code) + bracket + comment)
        yield Plant(sheet.bytes(), ANYWHERE, "no number has a point", follows=ANYWHERE)
