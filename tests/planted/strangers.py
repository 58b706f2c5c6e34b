# ruff: noqa: E501
"""Plants single faults in programs that nobody here wrote, and counts what is found and what is named by its cause.

    python -m tests.planted --corpus FOLDER [--every N] [--each N] [--seed N] [KIND...]

The programs are read where they lie and are never kept here; no test needs them. What is declared for each is plausible
and derived from the program: its tool from its comments, a blank around its cuts, a spindle that the program starts.
"""

from __future__ import annotations

import multiprocessing
import random
import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

import numpy as np

from gclint.check import trace
from gclint.problem import Problem
from gclint.setup.declare import Options
from gclint.tables.finding import Finding
from tests.planted.base import Base, Declared, judged
from tests.planted.sheet import Sheet

MOST_BYTES = 150_000  # larger programs are left to the benchmarks
STOPS = ("halt", "change")
NEAR = 12  # lines around the fault on which a finding still speaks of it

TOOLS = (
    (re.compile(r"D=(\d+\.?\d*)"), "flat", 1.0),
    (re.compile(r"(\d+\.?\d*)\s*mm[_ ]Endmill", re.I), "flat", 1.0),
    (re.compile(r"Endmill, (\d+\.?\d*)\s*mm", re.I), "flat", 1.0),
    (re.compile(r"(1/\d+)\s*inch Bit", re.I), "flat", 25.4),
    (re.compile(r"(1/\d+)\"", re.I), "flat", 25.4),
)
V_TOOL = re.compile(r"V[ _]?bit", re.I)


def _tool(text: str) -> Declared:
    keys: Declared = {"shape": "flat", "diameter": "3.175 mm", "flutes": 2}
    if V_TOOL.search(text):
        keys = {"shape": "v", "diameter": "6 mm", "angle": "30 deg", "flutes": 1}
    for pattern, shape, unit in TOOLS:
        found = pattern.search(text)
        if found and not V_TOOL.search(text):
            top, _, low = found[1].partition("/")
            keys = {"shape": shape, "diameter": f"{float(top) / float(low or 1) * unit:g} mm", "flutes": 2}
            break
    return keys | {"made_of": "carbide", "centre_cutting": True}


def declared(path: Path) -> Base | None:
    """The program with what its owner would plausibly declare; None where that cannot be told from it."""
    data = path.read_bytes()
    try:
        data.decode()
        tables = trace(data, path.name, Options())
    except (UnicodeDecodeError, Problem):
        return None
    m = tables.motion
    cutting = (m.kind != 0) & (m.z1 < -0.001)
    if len(data) > MOST_BYTES or not cutting.any() or m.stopped_at or m.followed is not None:
        return None
    text = data.decode()
    tool = _tool(text)
    numbers = sorted({int(n) for n in m.tool.tolist() if n >= 0}) or [1]
    wide = float(tool["diameter"].split()[0]) / 2 + 5
    x = np.concatenate((m.x0[cutting], m.x1[cutting]))
    y = np.concatenate((m.y0[cutting], m.y1[cutting]))
    x, y = x[np.isfinite(x)], y[np.isfinite(y)]
    deep = float(-np.nanmin(m.z1[cutting]))
    if not len(x) or not len(y) or deep > 60:
        return None
    size = [np.ptp(x) + 2 * wide, np.ptp(y) + 2 * wide, deep + 2]
    board = "glass-filled-laminate" if "inch Bit" in text else "birch-plywood"
    job: Declared = {
        "material": board,
        "z_zero": "stock-top",
        "stock": {
            "size": [f"{n:.3f} mm" for n in size],
            "corner": [f"{x.min() - wide:.3f} mm", f"{y.min() - wide:.3f} mm"],
        },
        "hold": {"by": "clamps", "spoilboard": "1 mm"},
    }
    shop: Declared = {
        "machine": {
            "travel": {"x": "2000 mm", "y": "2000 mm", "z": "300 mm"},
            "rapid": {"x": "6000 mm/min", "y": "6000 mm/min", "z": "3000 mm/min"},
            "feed_limit": {"x": "5000 mm/min", "y": "5000 mm/min", "z": "2500 mm/min"},
        },
        "spindle": {"kind": "commanded", "range": [1000, 30000], "started": "program", "spin_up": "3 s"},
        "tool": [{"number": n} | tool for n in numbers],
    }
    base = Base(path.name, data, job, shop)
    return base if not base.run.failed else None


@dataclass(frozen=True)
class Fault:
    sheet: Sheet
    lines: tuple[int, ...]  # of the planted text; empty: of the program as a whole
    job: Declared | None = None
    shop: Declared | None = None


Make = Callable[[Base, random.Random], Iterator[Fault]]


@dataclass(frozen=True)
class Kind:
    name: str
    causes: frozenset[str]  # rules that name the fault itself
    make: Make


KINDS: list[Kind] = []


def kind(causes: str) -> Callable[[Make], Make]:
    def kept(make: Make) -> Make:
        KINDS.append(Kind(make.__name__.replace("_", "-"), frozenset(causes.split()), make))
        return make

    return kept


def _draw(dice: random.Random, rows: object, most: int = 40) -> list[int]:
    chosen = [int(n) for n in rows]  # type: ignore[attr-defined]
    return dice.sample(chosen, min(most, len(chosen)))


def _lines(base: Base, want: object) -> list[int]:
    """Lines of moves chosen by a mask, each a line that makes one move."""
    m = base.tables.motion
    rows = np.flatnonzero(np.asarray(want))
    sheet = base.sheet()
    return [line for row in rows if base.once(int(row)) and sheet.has(line := int(m.line[row]))]


def _feeds(base: Base, *letters: str, cutting: bool = True) -> list[int]:
    m = base.tables.motion
    sheet = base.sheet()
    mask = m.kind != 0
    if cutting:
        mask = mask & (base.removed > 0.02)
    return [n for n in _lines(base, mask) if all(sheet.word(n, letter) is not None for letter in letters)]


def _changed(base: Base, line: int, letter: str, value: float) -> Fault:
    sheet = base.sheet().set(line, letter, value)
    return Fault(sheet, (sheet.now(line),))


def _without(base: Base, line: int) -> Fault:
    sheet = base.sheet().delete(line)
    return Fault(sheet, (max(1, sheet.now(line)),))


COORDINATE = "coordinate-suspect outside-stock outside-travel units-suspect cuts-fixture arc-does-not-close"


@kind(COORDINATE)
def point_lost_in_a_coordinate(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    for line in _draw(dice, _feeds(base)):
        for letter in "XY":
            value = sheet.word(line, letter)
            if value is not None and value != int(value) and abs(value) > 1:
                digits = f"{abs(value):.3f}".rstrip("0").partition(".")[2]
                yield _changed(base, line, letter, value * 10 ** len(digits))
                break


@kind(COORDINATE)
def point_moved_in_a_coordinate(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    for line in _draw(dice, _feeds(base)):
        for letter in "XY":
            value = sheet.word(line, letter)
            if value is not None and abs(value) > 15:
                yield _changed(base, line, letter, value * 10)
                break


@kind("coordinate-suspect cuts-table coordinate-suspect depth-step-suspect too-deep full-width-too-deep straight-plunge tool-breaks")
def point_moved_in_a_depth(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    for line in _draw(dice, _feeds(base, "Z")):
        value = sheet.word(line, "Z") or 0
        if value < -0.3:
            yield _changed(base, line, "Z", value * 10)


@kind("feed-suspect chip-too-thin feed-unit-suspect")
def point_moved_left_in_a_feed(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    for line in _draw(dice, _feeds(base, "F")):
        yield _changed(base, line, "F", (sheet.word(line, "F") or 0) / 10)


@kind("feed-suspect chip-too-thick chip-beyond-tool plunge-too-fast feed-over-machine opening-slot-too-fast feed-unit-suspect odd-lap-feed")
def zero_too_many_in_a_feed(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    for line in _draw(dice, _feeds(base, "F")):
        yield _changed(base, line, "F", (sheet.word(line, "F") or 0) * 10)


@kind("speed-over-spindle speed-not-on-dial edge-too-fast rim-too-fast speed-suspect")
def zero_too_many_in_the_speed(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    for line in _draw(dice, sheet.lines_with("S")):
        if sheet.word(line, "S"):
            yield Fault(sheet.copy().set(line, "S", (sheet.word(line, "S") or 0) * 10), ())


@kind("speed-suspect edge-too-slow chip-too-thick chip-beyond-tool feed-unit-suspect speed-over-spindle speed-under-spindle")
def zero_lost_in_the_speed(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    for line in _draw(dice, sheet.lines_with("S")):
        if (sheet.word(line, "S") or 0) > 900:
            yield Fault(sheet.copy().set(line, "S", (sheet.word(line, "S") or 0) / 10), ())


@kind("spindle-not-running spindle-speed-missing")
def no_m3(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    lines = sheet.lines_with("M", 3.0)
    if lines:
        for line in lines:
            sheet.drop_code(line, "M", 3.0)
        yield Fault(sheet, ())


@kind("spindle-not-running spindle-speed-missing")
def no_speed(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    lines = sheet.lines_with("S")
    if lines:
        for line in lines:
            sheet.drop(line, "S")
        yield Fault(sheet, ())


@kind("spindle-turns-backward")
def m4_for_m3(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    lines = sheet.lines_with("M", 3.0)
    if lines:
        line = lines[0]
        spots = [w for w in sheet.words(line) if w[0] == "M" and w[1] == 3.0]
        text = sheet.text(line)
        sheet.write(line, text[: spots[0][2]] + "M4" + text[spots[0][3] :])
        yield Fault(sheet, ())


@kind("spindle-not-running")
def m5_in_the_middle(base: Base, dice: random.Random) -> Iterator[Fault]:
    lines = _feeds(base)
    if base.sheet().lines_with("M", 3.0):
        for line in _draw(dice, lines[len(lines) // 4 : len(lines) * 3 // 4]):
            sheet = base.sheet().after(line, "M5")
            yield Fault(sheet, (sheet.now(line) + 1,))


@kind("coordinate-suspect cuts-only-air never-cuts z-zero-suspect coordinate-suspect not-cut-through")
def sign_of_a_depth_lost(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    for line in _draw(dice, _feeds(base, "Z")):
        value = sheet.word(line, "Z") or 0
        if value < -0.05:
            yield _changed(base, line, "Z", -value)


@kind(COORDINATE)
def sign_of_a_coordinate_turned(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    for line in _draw(dice, _feeds(base)):
        for letter in "XY":
            value = sheet.word(line, letter)
            if value is not None and abs(value) > 8:
                yield _changed(base, line, letter, -value)
                break


@kind("rapid-through-stock drill-dragged-sideways full-width-too-deep cuts-fixture")
def retract_left_out(base: Base, dice: random.Random) -> Iterator[Fault]:
    m, sheet = base.tables.motion, base.sheet()
    n = len(m)
    up = (m.z0 < -0.05) & (m.z1 > 0) & (np.arange(n) < n - 2)
    nxt = np.concatenate((m.kind[1:] == 0, [False])) & np.concatenate(
        (np.hypot(m.x1 - m.x0, m.y1 - m.y0)[1:] > 2, [False])
    )
    for line in _draw(dice, _lines(base, up & nxt)):
        if not any(sheet.word(line, c) is not None for c in "XY"):
            yield _without(base, line)


@kind("rapid-through-stock travel-too-low")
def retract_too_low(base: Base, dice: random.Random) -> Iterator[Fault]:
    m, sheet = base.tables.motion, base.sheet()
    up = (m.z0 < -0.5) & (m.z1 > 0.5) & np.concatenate((m.kind[1:] == 0, [False]))
    flat = np.concatenate((np.hypot(m.x1 - m.x0, m.y1 - m.y0)[1:] > 5, [False]))
    for line in _draw(dice, _lines(base, up & flat)):
        if sheet.word(line, "Z"):
            yield _changed(base, line, "Z", -(sheet.word(line, "Z") or 0) * 0 - 0.4 / base.unit)


@kind("rapid-through-stock")
def g0_for_g1(base: Base, dice: random.Random) -> Iterator[Fault]:
    m = base.tables.motion
    for line in _draw(dice, _lines(base, (m.kind == 1) & (base.removed > 1))):
        sheet = base.sheet()
        spots = [w for w in sheet.words(line) if w[0] == "G" and w[1] == 1.0]
        if spots:
            text = sheet.text(line)
            sheet.write(line, text[: spots[0][2]] + "G0" + text[spots[0][3] :])
            yield Fault(sheet, (sheet.now(line), sheet.now(line) + 1))


@kind("units-suspect")
def inch_for_millimetre(base: Base, dice: random.Random) -> Iterator[Fault]:
    for was, now in ((21.0, "G20"), (20.0, "G21")):
        sheet = base.sheet()
        lines = sheet.lines_with("G", was)
        if lines and base.run.checked.units in ("mm", "inch"):
            for line in lines:
                spot = next(w for w in sheet.words(line) if w[0] == "G" and w[1] == was)
                text = sheet.text(line)
                sheet.write(line, text[: spot[2]] + now + text[spot[3] :])
            yield Fault(sheet, ())


@kind("units-unstated")
def units_left_out(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    lines = [n for value in (20.0, 21.0) for n in sheet.lines_with("G", value)]
    if lines:
        for line in lines:
            for value in (20.0, 21.0):
                if sheet.has(line):
                    sheet.drop_code(line, "G", value)
        yield Fault(sheet, ())


@kind("not-followed distance-mode-suspect")
def g91_for_g90(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    lines = sheet.lines_with("G", 90.0)
    if lines and not sheet.lines_with("G", 91.0):
        line = lines[0]
        spot = next(w for w in sheet.words(line) if w[0] == "G" and w[1] == 90.0)
        text = sheet.text(line)
        sheet.write(line, text[: spot[2]] + "G91" + text[spot[3] :])
        yield Fault(sheet, ())


@kind("not-followed distance-mode-suspect outside-stock outside-travel cuts-table coordinate-suspect")
def g91_left_on(base: Base, dice: random.Random) -> Iterator[Fault]:
    m = base.tables.motion
    high = (m.z1 > 0) & (m.kind == 0) & (np.arange(len(m)) > 5) & (np.arange(len(m)) < len(m) * 0.8)
    for line in _draw(dice, _lines(base, high)):
        sheet = base.sheet().after(line, "G91")
        yield Fault(sheet, ())


@kind("arc-turns-back arc-does-not-close arc-centre-suspect")
def arc_turned_round(base: Base, dice: random.Random) -> Iterator[Fault]:
    m = base.tables.motion
    chord = np.hypot(m.x1 - m.x0, m.y1 - m.y0)
    for line in _draw(dice, _lines(base, (m.kind >= 2) & (chord > 0.5) & (base.removed > 0.1))):
        sheet = base.sheet()
        for was, now in ((2.0, "G3"), (3.0, "G2")):
            spots = [w for w in sheet.words(line) if w[0] == "G" and w[1] == was]
            if spots:
                text = sheet.text(line)
                sheet.write(line, text[: spots[0][2]] + now + text[spots[0][3] :])
                yield Fault(sheet, (sheet.now(line),))
                break


@kind("arc-does-not-close arc-centre-suspect arc-turns-back coordinate-suspect")
def sign_of_a_centre_turned(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet, m = base.sheet(), base.tables.motion
    for line in _draw(dice, _lines(base, m.kind >= 2)):
        for letter in "IJ":
            value = sheet.word(line, letter)
            if value is not None and abs(value) > 0.2:
                yield _changed(base, line, letter, -value)
                break


@kind("arc-does-not-close word-missing arc-centre-suspect arc-turns-back coordinate-suspect")
def centre_word_left_out(base: Base, dice: random.Random) -> Iterator[Fault]:
    m = base.tables.motion
    for line in _draw(dice, _lines(base, m.kind >= 2)):
        for letter in "IJR":
            if abs(base.sheet().word(line, letter) or 0) * base.unit > 0.05:  # less moves the arc by nothing
                sheet = base.sheet().drop(line, letter)
                yield Fault(sheet, (sheet.now(line),))
                break


@kind("plane-suspect arc-does-not-close word-missing")
def g18_for_g17(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    lines = sheet.lines_with("G", 17.0)
    if lines and (base.tables.motion.kind >= 2).any():
        for line in lines:
            spot = next(w for w in sheet.words(line) if w[0] == "G" and w[1] == 17.0)
            text = sheet.text(line)
            sheet.write(line, text[: spot[2]] + "G18" + text[spot[3] :])
        yield Fault(sheet, ())


@kind("plunge-too-fast feed-suspect straight-plunge feed-over-machine")
def plunge_at_the_cutting_feed(base: Base, dice: random.Random) -> Iterator[Fault]:
    m = base.tables.motion
    fast = float(np.nanmax(np.where((m.kind != 0) & (base.removed > 0.1), m.feed, np.nan)))
    down = (m.kind == 1) & (m.z0 - m.z1 > 0.8) & (np.hypot(m.x1 - m.x0, m.y1 - m.y0) < 0.01) & (base.removed > 0.1)
    for line in _draw(dice, _lines(base, down & (m.feed < 0.6 * fast))):
        yield _changed(base, line, "F", fast / base.unit)


@kind("feed-missing")
def no_feed_at_all(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    lines = sheet.lines_with("F")
    if lines:
        for line in lines:
            sheet.drop(line, "F")
        yield Fault(sheet, ())


@kind("feed-mode-left-on")
def inverse_time_left_on(base: Base, dice: random.Random) -> Iterator[Fault]:
    lines = _feeds(base)
    if lines:
        sheet = base.sheet().before(lines[0], "G93")
        yield Fault(sheet, ())


@kind("feed-mode-left-on")
def feed_per_revolution_left_on(base: Base, dice: random.Random) -> Iterator[Fault]:
    lines = _feeds(base)
    if lines:
        sheet = base.sheet().before(lines[0], "G95")
        yield Fault(sheet, ())


@kind("program-cut-short ends-in-material ends-without-stop")
def cut_off_in_the_middle(base: Base, dice: random.Random) -> Iterator[Fault]:
    lines = _feeds(base)
    for line in _draw(dice, lines[len(lines) // 3 :]):
        sheet = base.sheet().cut_off(line, max(3, len(base.sheet().text(line)) - 3))
        yield Fault(sheet, ())


@kind("comment-unclosed comment-leftover word-conflict")
def comment_not_closed(base: Base, dice: random.Random) -> Iterator[Fault]:
    for line in _draw(dice, _feeds(base)):
        sheet = base.sheet()
        sheet.before(line, "(look here")
        yield Fault(sheet, (sheet.now(line) - 1,))


@kind("number-unreadable comment-leftover word-conflict")
def decimal_comma(base: Base, dice: random.Random) -> Iterator[Fault]:
    for line in _draw(dice, _feeds(base)):
        sheet = base.sheet()
        spots = [w for w in sheet.words(line) if w[0] in "XYZ" and "." in sheet.text(line)[w[2] : w[3]]]
        if spots:
            text = sheet.text(line)
            word = text[spots[0][2] : spots[0][3]].replace(".", ",")
            sheet.write(line, text[: spots[0][2]] + word + text[spots[0][3] :])
            yield Fault(sheet, (sheet.now(line),))


@kind("number-unreadable comment-leftover word-conflict")
def letter_o_for_zero(base: Base, dice: random.Random) -> Iterator[Fault]:
    for line in _draw(dice, _feeds(base)):
        sheet = base.sheet()
        spots = [w for w in sheet.words(line) if w[0] in "XYZ" and "0" in sheet.text(line)[w[2] + 1 : w[3]]]
        if spots:
            text = sheet.text(line)
            word = text[spots[0][2]] + text[spots[0][2] + 1 : spots[0][3]].replace("0", "O", 1)
            sheet.write(line, text[: spots[0][2]] + word + text[spots[0][3] :])
            yield Fault(sheet, (sheet.now(line),))


@kind("word-conflict")
def word_twice(base: Base, dice: random.Random) -> Iterator[Fault]:
    for line in _draw(dice, _feeds(base, "X")):
        sheet = base.sheet()
        sheet.write(line, sheet.text(line).rstrip() + f" X{sheet.number((sheet.word(line, 'X') or 0) + 5)}")
        yield Fault(sheet, (sheet.now(line),))


@kind("tool-not-declared tool-not-as-declared tool-length-not-set")
def wrong_tool_number(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    lines = sheet.lines_with("T")
    if lines:
        yield _changed(base, lines[0], "T", 77)


@kind("tool-length-not-set")
def wrong_length_offset(base: Base, dice: random.Random) -> Iterator[Fault]:
    for line in base.sheet().lines_with("H")[:2]:
        yield _changed(base, line, "H", 42)


@kind("work-offset-suspect work-offset-switched")
def offset_switched_in_the_middle(base: Base, dice: random.Random) -> Iterator[Fault]:
    m = base.tables.motion
    high = (m.z1 > 0) & (m.kind == 0) & (np.arange(len(m)) > 5) & (np.arange(len(m)) < len(m) * 0.8)
    for line in _draw(dice, _lines(base, high)):
        sheet = base.sheet().after(line, "G55")
        yield Fault(sheet, (sheet.now(line) + 1,))


@kind("dwell-unit-suspect dwell-in-material")
def dwell_in_the_wrong_unit(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    lines = sheet.lines_with("M", 3.0)
    if lines:
        sheet.after(lines[0], "G4 P3000")
        yield Fault(sheet, (sheet.now(lines[0]) + 1,), **base.with_shop("machine", controller="hobby-3-axis"))


@kind("straight-plunge steep-ramp hidden-plunge")
def ramp_made_a_plunge(base: Base, dice: random.Random) -> Iterator[Fault]:
    m = base.tables.motion
    level = np.hypot(m.x1 - m.x0, m.y1 - m.y0)
    ramp = (m.kind == 1) & (m.z0 - m.z1 > 0.8) & (level > 3 * (m.z0 - m.z1)) & (base.removed > 1)
    for line in _draw(dice, _lines(base, ramp)):
        if base.sheet().word(line, "Z") is not None:
            sheet = base.sheet().drop(line, "X", "Y")
            yield Fault(sheet, (sheet.now(line), sheet.now(line) + 1))


@kind("depth-step-suspect too-deep full-width-too-deep straight-plunge coordinate-suspect cuts-table peck-too-deep")
def depth_doubled(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    for line in _draw(dice, _feeds(base, "Z")):
        value = sheet.word(line, "Z") or 0
        if value * base.unit < -3:
            yield _changed(base, line, "Z", value * 2)


@kind("cuts-fixture")
def a_clamp_in_the_way(base: Base, dice: random.Random) -> Iterator[Fault]:
    m = base.tables.motion
    for row in _draw(dice, np.flatnonzero((m.kind != 0) & (base.removed > 1))):
        x, y = float(m.x1[row]), float(m.y1[row])
        box = {"from": [f"{x - 6:.2f} mm", f"{y - 6:.2f} mm", "-2 mm"], "to": [f"{x + 6:.2f} mm", f"{y + 6:.2f} mm", "9 mm"]}
        yield Fault(base.sheet(), (), **base.told(job=lambda job, box=box: job.update({"keep_out": [{"name": "clamp"} | box]})))


@kind("cuts-table")
def blank_thinner_than_thought(base: Base, dice: random.Random) -> Iterator[Fault]:
    deep = float(base.job["stock"]["size"][2].split()[0]) - 2
    if deep > 3:
        yield Fault(base.sheet(), (), **base.told(
            job=lambda job: job["stock"]["size"].__setitem__(2, f"{deep - 2.2:.2f} mm")))


@kind("outside-stock")
def blank_too_short(base: Base, dice: random.Random) -> Iterator[Fault]:
    long = float(base.job["stock"]["size"][0].split()[0])
    if long > 60:
        yield Fault(base.sheet(), (), **base.told(
            job=lambda job: job["stock"]["size"].__setitem__(0, f"{long * 0.5:.2f} mm")))


@kind("tool-not-as-declared chip-too-thick tool-breaks")
def a_much_thinner_tool(base: Base, dice: random.Random) -> Iterator[Fault]:
    assert base.shop is not None
    for tool in base.shop["tool"][:1]:
        if tool["shape"] == "flat" and "D=" in base.data.decode():
            yield Fault(base.sheet(), (), **base.with_tool(tool["number"], diameter="0.8 mm"))


@kind("compensation-without-radius compensation-left-on")
def g41_without_d(base: Base, dice: random.Random) -> Iterator[Fault]:
    lines = _feeds(base)
    if len(lines) > 10:
        line = lines[len(lines) // 2]
        sheet = base.sheet().before(line, "G41")
        yield Fault(sheet, (sheet.now(line) - 1,))


@kind("home-through-stock rapid-through-stock")
def home_at_depth(base: Base, dice: random.Random) -> Iterator[Fault]:
    m = base.tables.motion
    deep = (m.z1 < -0.5) & (m.kind != 0) & (base.removed > 0.5)
    for line in _draw(dice, _lines(base, deep)):
        sheet = base.sheet().after(line, "G28 X0 Y0")
        yield Fault(sheet, (sheet.now(line) + 1,))


@kind("z-zero-suspect never-cuts cuts-table straight-plunge rapid-through-stock")
def zero_on_the_table(base: Base, dice: random.Random) -> Iterator[Fault]:
    yield Fault(base.sheet(), (), **base.with_job(z_zero="table"))


@kind("coordinate-suspect outside-stock")
def x_and_y_swapped(base: Base, dice: random.Random) -> Iterator[Fault]:
    for line in _draw(dice, _feeds(base, "X", "Y")):
        sheet = base.sheet()
        x, y = sheet.word(line, "X"), sheet.word(line, "Y")
        if x is not None and y is not None and abs(x - y) > 20:
            sheet.set(line, "X", y).set(line, "Y", x)
            yield Fault(sheet, (sheet.now(line),))


@kind("word-missing number-unreadable comment-leftover blank-in-number")
def letter_lost(base: Base, dice: random.Random) -> Iterator[Fault]:
    for line in _draw(dice, _feeds(base, "Y")):
        sheet = base.sheet()
        spot = next(w for w in sheet.words(line) if w[0] == "Y")
        text = sheet.text(line)
        sheet.write(line, text[: spot[2]] + " " + text[spot[2] + 1 :])
        yield Fault(sheet, (sheet.now(line),))


@kind("tool-changed-in-cut tool-not-declared tool-change-without-stop spindle-not-running")
def tool_changed_in_the_cut(base: Base, dice: random.Random) -> Iterator[Fault]:
    m = base.tables.motion
    deep = (m.z1 < -0.5) & (m.kind != 0) & (base.removed > 0.5)
    for line in _draw(dice, _lines(base, deep)):
        sheet = base.sheet().after(line, "T1 M6")
        yield Fault(sheet, (sheet.now(line) + 1,))


@kind("no-feed-move rapid-through-stock")
def every_feed_move_a_rapid(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    lines = sheet.lines_with("G", 1.0)
    if lines and not (base.tables.motion.kind >= 2).any():
        for line in lines:
            spot = next(w for w in sheet.words(line) if w[0] == "G" and w[1] == 1.0)
            text = sheet.text(line)
            sheet.write(line, text[: spot[2]] + "G0" + text[spot[3] :])
        yield Fault(sheet, ())


@kind("spindle-not-running tool-not-declared tool-change-without-stop")
def second_tool_and_no_start(base: Base, dice: random.Random) -> Iterator[Fault]:
    m = base.tables.motion
    high = (m.z1 > 0) & (m.kind == 0) & (np.arange(len(m)) > len(m) * 0.3) & (np.arange(len(m)) < len(m) * 0.8)
    high &= np.concatenate((np.cumsum((base.removed > 0.1)[::-1])[::-1][1:], [0])) > 0  # something is cut after it
    for line in _draw(dice, _lines(base, high)):
        sheet = base.sheet().after(line, "M5", "T2 M6")
        yield Fault(sheet, ())


def _scaled(base: Base, letter: str, by: float, more: float = 0.0) -> Sheet:
    """Every number behind a letter times `by`, plus `more`, in the program's own units."""
    sheet = base.sheet()
    for line in sheet.lines_with(letter):
        sheet.set(line, letter, round((sheet.word(line, letter) or 0) * by + more, 4))
    return sheet


@kind("chip-too-thin feed-unit-suspect chip-too-thick feed-never-reached")
def every_feed_a_twentieth(base: Base, dice: random.Random) -> Iterator[Fault]:
    if base.sheet().lines_with("F") and base.job["material"] != "birch-plywood":  # wood forgives a thin chip
        yield Fault(_scaled(base, "F", 0.05), ())


@kind("feed-over-machine chip-too-thick chip-beyond-tool plunge-too-fast feed-unit-suspect")
def every_feed_twenty_times(base: Base, dice: random.Random) -> Iterator[Fault]:
    feeds = base.tables.motion.feed[base.removed > 0.1]
    if base.sheet().lines_with("F") and len(feeds) and float(np.nanmax(feeds)) > 100:  # one that crawls stays harmless
        yield Fault(_scaled(base, "F", 20), ())


@kind("cuts-table straight-plunge full-width-too-deep first-move-low rapid-through-stock z-zero-suspect")
def everything_ten_millimetres_lower(base: Base, dice: random.Random) -> Iterator[Fault]:
    if base.sheet().lines_with("Z") and not base.sheet().lines_with("K"):
        yield Fault(_scaled(base, "Z", 1, -10 / base.unit), ())


@kind("never-cuts z-zero-suspect cuts-only-air")
def everything_above_the_work(base: Base, dice: random.Random) -> Iterator[Fault]:
    deep = float(-np.nanmin(base.tables.motion.z1))
    if base.sheet().lines_with("Z") and not base.sheet().lines_with("K"):
        yield Fault(_scaled(base, "Z", 1, (deep + 5) / base.unit), ())


@kind("outside-stock")
def blank_put_elsewhere(base: Base, dice: random.Random) -> Iterator[Fault]:
    corner, size = base.job["stock"]["corner"], base.job["stock"]["size"]
    aside = f"{float(corner[0].split()[0]) + 0.6 * float(size[0].split()[0]):.2f} mm"
    yield Fault(base.sheet(), (), **base.told(job=lambda job: job["stock"]["corner"].__setitem__(0, aside)))


@kind("blocks-behind-end")
def m30_in_the_middle(base: Base, dice: random.Random) -> Iterator[Fault]:
    m = base.tables.motion
    high = (m.z1 > 0) & (m.kind == 0) & (np.arange(len(m)) > len(m) * 0.3) & (np.arange(len(m)) < len(m) * 0.7)
    for line in _draw(dice, _lines(base, high)):
        sheet = base.sheet().after(line, "M30")
        yield Fault(sheet, (sheet.now(line) + 1,))


@kind("rapid-through-stock first-move-low")
def approach_by_rapid_too_low(base: Base, dice: random.Random) -> Iterator[Fault]:
    m = base.tables.motion
    down = (m.kind == 0) & (m.z1 < m.z0) & (m.z1 > 0) & np.concatenate((base.removed[1:] > 0.1, [False]))
    for line in _draw(dice, _lines(base, down)):
        if base.sheet().word(line, "Z") is not None:
            yield _changed(base, line, "Z", -1 / base.unit)


@kind("tool-bends tool-breaks shank-rubs nut-hits-stock long-tool too-deep full-width-too-deep")
def flutes_too_short(base: Base, dice: random.Random) -> Iterator[Fault]:
    assert base.shop is not None
    deep = float(-np.nanmin(base.tables.motion.z1))
    tool = base.shop["tool"][0]
    if tool["shape"] == "flat" and deep > 3:
        wide = float(tool["diameter"].split()[0])
        short = {"flute_length": f"{deep / 2:.2f} mm", "shank": f"{2 * wide:.2f} mm", "stickout": f"{deep + 20:.2f} mm"}
        yield Fault(base.sheet(), (), **base.told(shop=lambda shop: [one.update(short) for one in shop["tool"]]))


@dataclass(frozen=True)
class Outcome:
    base: str
    kind: str
    lines: tuple[int, ...]
    found: bool  # at halt or change
    considered: bool
    named: bool
    told: tuple[tuple[str, str, int], ...]  # new findings: rule, grade, line


def attempt(base: Base, what: Kind, fault: Fault) -> Outcome:
    run = judged(fault.sheet.bytes(), base.name, fault.job or base.job, fault.shop or base.shop, base.files)
    already = {(f.rule, f.grade, f.happens): len(f.lines) for f in base.findings}

    def fresh(finding: Finding) -> bool:
        """Whether it is new, or has one more place that is the fault's own line."""
        key = (finding.rule, finding.grade, finding.happens)
        grown = len(finding.lines) > already.get(key, 0)
        return key not in already or (grown and bool(set(finding.lines) & set(fault.lines)))

    new = [f for f in run.checked.findings if fresh(f)]

    def near(finding: Finding) -> bool:
        places = (finding.line, finding.worst_line, *finding.lines[:200])
        return not fault.lines or any(abs(line - at) <= NEAR for line in places for at in fault.lines)

    close = [f for f in new if near(f)]
    return Outcome(
        base.name, what.name, fault.lines,
        any(f.grade in STOPS for f in close), bool(close), any(f.rule in what.causes for f in new),
        tuple((f.rule, f.grade, f.line) for f in new[:8]),
    )  # fmt: skip


def _task(job: tuple[str, tuple[str, ...], int, int]) -> list[Outcome]:
    path, only, each, seed = job
    base = declared(Path(path))
    if base is None:
        return []
    made = []
    for what in KINDS:
        if only and what.name not in only:
            continue
        dice = random.Random(f"{what.name} in {base.name}, {seed}")
        for number, fault in enumerate(what.make(base, dice)):
            if number >= each:
                break
            made.append(attempt(base, what, fault))
    return made


def table(folder: Path, only: tuple[str, ...] = (), each: int = 1, seed: int = 0, every: int = 1, processes: int = 2) -> int:
    """Prints recall and causes named, by kind, over the programs of a folder; each `every`-th program is taken."""
    paths = sorted(p for p in folder.iterdir() if p.suffix in (".nc", ".gcode", ".ngc", ".tap"))[seed % every :: every]
    with multiprocessing.get_context("fork").Pool(processes) as pool:
        done = pool.map(_task, [(str(p), only, each, seed) for p in paths], chunksize=1)
    outcomes = [one for some in done for one in some]
    print(f"{'kind':<34}{'planted':>8}{'found':>7}{'consider':>9}{'named':>7}")
    for what in KINDS:
        mine = [o for o in outcomes if o.kind == what.name]
        if mine:
            found, mild, named = (sum(getattr(o, key) for o in mine) for key in ("found", "considered", "named"))
            print(f"{what.name:<34}{len(mine):>8}{found:>7}{mild - found:>9}{named:>7}")
    n = max(1, len(outcomes))
    found, named = sum(o.found for o in outcomes), sum(o.named for o in outcomes)
    print(f"{len(outcomes)} planted in {len({o.base for o in outcomes})} programs: {found} found at halt or change "
          f"({100 * found / n:.1f} %), {named} named by their cause ({100 * named / n:.1f} %)")  # fmt: skip
    for o in outcomes:
        if not o.found or not o.named:
            missed = "missed" if not o.found else "cause not named"
            print(f"  {missed}: {o.kind} in {o.base} at {o.lines or 'all'}: {list(o.told)[:5]}")
    return 0
