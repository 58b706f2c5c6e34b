"""The spindle, its speed and its waits; tools and their changes; the machine's own words."""

from __future__ import annotations

from collections.abc import Iterator
from random import Random
from typing import Any

import numpy as np

from tests.planted.base import Base
from tests.planted.harness import ANYWHERE, Plant, Span, at, onward, plants
from tests.planted.sheet import Sheet

NO_LONGER_UP = {"no-spin-up-time": "the spindle is started later, and its wait stands before"}
OTHER_SPEED = {
    "chip-too-thin": "the chip follows the speed",
    "chip-too-thick": "the chip follows the speed",
    "edge-too-fast": "the edge follows the speed",
    "rim-too-fast": "the rim follows the speed",
    "opening-slot-too-fast": "the chip follows the speed",
    "inside-corner": "the chip follows the speed",
    "plunge-too-fast": "the feed that suits the speed is lower",
    "tool-bends": "thicker chips push harder",
    "tool-breaks": "thicker chips push harder",
    "feed-never-reached": "the chip at the feed that is reached follows the speed",
    "feed-unit-suspect": "the chip is off by a round factor",
    "spindle-stalls": "less power at a low speed",
}


def _by_program(base: Base) -> bool:
    return bool(base.tables.setup.spindle.started != "by-hand")


def _starts(base: Base) -> list[int]:
    return base.sheet().lines_with("M", 3)


def _first_cut_after(base: Base, line: int) -> int | None:
    """Line of the first cut that is made after a line."""
    m = base.tables.motion
    return next((int(m.line[k]) for k in np.flatnonzero(base.removed > 0) if m.line[k] > line), None)


def _cut(base: Base, sheet: Sheet, line: int) -> Span:
    """Where the first cut after a line stands: in a subprogram, where no line comes after it."""
    found = _first_cut_after(base, line)
    return at(sheet, found) if found else onward(sheet.now(line))


@plants("spindle-not-running")
def start_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    for line in _starts(base) if _by_program(base) else []:
        sheet = base.sheet().drop_code(line, "M", 3)
        yield Plant(sheet.bytes(), _cut(base, sheet, line), "no M3")


@plants("spindle-not-running", NO_LONGER_UP)
def start_after_the_cut(base: Base, dice: Random) -> Iterator[Plant]:
    for line in _starts(base) if _by_program(base) and base.plain else []:
        cut = _first_cut_after(base, line)
        if cut:
            sheet = base.sheet().drop_code(line, "M", 3)
            sheet.after(cut, "M3")
            yield Plant(sheet.bytes(), at(sheet, cut), "M3 behind the first cut", follows=onward(sheet.now(cut)))


@plants("spindle-not-running")
def stopped_on_the_way(base: Base, dice: Random) -> Iterator[Plant]:
    for line in dice.sample(base.gaps, len(base.gaps)) if _by_program(base) else []:
        sheet = base.sheet().before(line, "M5")
        yield Plant(sheet.bytes(), _cut(base, sheet, line), "M5 before the last cut")


@plants("spindle-not-running")
def not_started_again_after_a_stop(base: Base, dice: Random) -> Iterator[Plant]:
    """On a controller whose M0 stops the spindle too."""
    if not _by_program(base) or base.shop is None or base.shop["machine"].get("controller"):
        return
    told = base.told(shop=lambda shop: shop["machine"].update(controller="shop-3-axis"))
    for line in dice.sample(base.gaps, len(base.gaps)):
        sheet = base.sheet().before(line, "M0")
        yield Plant(sheet.bytes(), _cut(base, sheet, line), "M0 and no M3 behind it", **told)


@plants("spindle-turns-backward")
def started_backward(base: Base, dice: Random) -> Iterator[Plant]:
    for line in _starts(base) if _by_program(base) else []:
        sheet = base.sheet()
        sheet.set(line, "M", 4, sheet.codes(line, "M").index(3))
        yield Plant(sheet.bytes(), _cut(base, sheet, line), "M4 for M3")


def _slow(base: Base) -> tuple[dict[str, Any], Sheet, list[int]]:
    """A spindle so slow to start that no travel could be wait enough, the program that waits for it, and where."""
    sheet = base.sheet()
    if not base.tables.setup.spindle.spin_up or not _by_program(base):
        return {}, sheet, []
    waits = [n for n in sheet.lines_with("G", 4) if any(start < n <= start + 5 for start in _starts(base))]
    per_second = 1 / base.tables.setup.controller.dwell_seconds
    for line in waits:
        sheet.set(line, "P", 60 * per_second)
    return base.told(shop=lambda shop: shop["spindle"].update(spin_up="60 s")), sheet, waits


@plants("no-spin-up-time")
def wait_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    for line in _slow(base)[2]:
        told, sheet, _ = _slow(base)
        sheet.delete(line)
        yield Plant(sheet.bytes(), _cut(base, sheet, line), "no wait for the spindle", **told)


@plants("no-spin-up-time", {"dwell-unit-suspect": "the same word, seen for itself"})
def wait_in_the_wrong_unit(base: Base, dice: Random) -> Iterator[Plant]:
    short = 0.001 if base.tables.setup.controller.dwell_unit == "s" else 0.01
    for line in _slow(base)[2]:
        told, sheet, _ = _slow(base)
        sheet.set(line, "P", (sheet.word(line, "P") or 0) * short)
        here = at(sheet, line)
        yield Plant(sheet.bytes(), _cut(base, sheet, line), "a wait too short by far", follows=here, **told)


@plants("no-spin-up-time")
def wait_before_the_start(base: Base, dice: Random) -> Iterator[Plant]:
    for wait in _slow(base)[2]:
        told, moved, _ = _slow(base)
        start = max(n for n in _starts(base) if n < wait)
        text = moved.text(wait)
        moved.delete(wait).before(start, text)
        yield Plant(moved.bytes(), _cut(base, moved, wait), "the wait stands before M3", **told)


@plants("dwell-unit-suspect", {"no-spin-up-time": "the wait is too short"})
def wait_for_an_hour(base: Base, dice: Random) -> Iterator[Plant]:
    controller = base.tables.setup.controller
    by = 1000.0 if controller.dwell_unit == "s" else 0.001
    for line in base.sheet().lines_with("G", 4):
        sheet = base.sheet()
        count = sheet.word(line, "P")
        assert count
        cut = _cut(base, sheet, line)
        says = f"P{count * by:g} for P{count:g}"
        yield Plant(sheet.set(line, "P", count * by).bytes(), at(sheet, line), says, follows=cut)


@plants("dwell-in-material")
def wait_in_the_cut(base: Base, dice: Random) -> Iterator[Plant]:
    per_second = 1 / base.tables.setup.controller.dwell_seconds
    cuts = list(base.moves((1, 2, 3), cutting=True, level=True, least=3))
    for move in dice.sample(cuts, len(cuts)):
        line = base.line_of(move)
        if move + 1 < len(base.removed) and base.removed[move + 1] > 0.5 and base.tool_of(move).shape != "v":
            seconds = dice.choice([2, 3, 5])
            sheet = base.sheet().after(line, f"G4 P{seconds * per_second:g}")
            new = sheet.now(line) + 1
            yield Plant(sheet.bytes(), (new, new), f"a wait of {seconds} s in the cut")


@plants("program-stop-in-material", {"spindle-not-running": "a stop may stop the spindle too"})
def stop_in_the_cut(base: Base, dice: Random) -> Iterator[Plant]:
    cuts = list(base.moves((1, 2, 3), cutting=True, level=True, least=3))
    for move in dice.sample(cuts, len(cuts)):
        line = base.line_of(move)
        if move + 1 < len(base.removed) and base.removed[move + 1] > 0.5 and base.tool_of(move).shape != "v":
            sheet = base.sheet().after(line, "M0")
            new = sheet.now(line) + 1
            yield Plant(sheet.bytes(), (new, new), "M0 in the middle of a cut")


# ---- speeds


@plants("speed-over-spindle", OTHER_SPEED | {"speed-suspect": "the speed stands against the others"})
def speed_out_of_range(base: Base, dice: Random) -> Iterator[Plant]:
    spindle = base.tables.setup.spindle
    if spindle.kind == "commanded" and spindle.high and spindle.low:
        for line in base.sheet().lines_with("S"):
            for speed in (spindle.high * dice.uniform(1.1, 1.6), spindle.low * dice.uniform(0.3, 0.8)):
                sheet = base.sheet().set(line, "S", round(speed))
                says = f"S{speed:.0f}, and the spindle does {spindle.high:.0f}"
                yield Plant(sheet.bytes(), (line, line), says, follows=onward(line))


@plants("speed-not-on-dial", OTHER_SPEED)
def speed_off_the_dial(base: Base, dice: Random) -> Iterator[Plant]:
    spindle = base.tables.setup.spindle
    if spindle.kind == "dial":
        for speed in dice.sample([18000, 14200, 11000, 21000, 25000, 8000], 2):
            sheet = base.sheet()
            lines = sheet.lines_with("S")
            for other in lines:
                sheet.set(other, "S", speed)
            told = base.told(job=lambda job: job.pop("dial", None))
            yield Plant(sheet.bytes(), at(sheet, lines[0]), f"S{speed}, and the dial is set to its mark")
            yield Plant(sheet.bytes(), at(sheet, lines[0]), f"S{speed} is on no mark", **told)


@plants("dial-change-without-stop", OTHER_SPEED)
def dial_turned_on_the_way(base: Base, dice: Random) -> Iterator[Plant]:
    spindle = base.tables.setup.spindle
    if spindle.kind == "dial":
        told = base.told(job=lambda job: job.pop("dial", None))
        now = base.sheet().word(base.sheet().lines_with("S")[0], "S")
        stops = base.sheet().lines_with("M", 0)
        for line in dice.sample(base.gaps, len(base.gaps)):
            if any(stop < line <= stop + 8 for stop in stops):  # the dial can be turned at the stop
                continue
            mark = dice.choice([mark for mark in spindle.dial if abs(mark.stated - now) > 2000])
            sheet = base.sheet().before(line, f"S{mark.stated:.0f}")
            new = sheet.now(line) - 1
            says = f"S{mark.stated:.0f} between two cuts"
            yield Plant(sheet.bytes(), (new, new), says, follows=onward(new), **told)


# ---- tools


@plants(
    "tool-not-declared",
    {"tool-length-not-set": "the length is that of the tool that was meant",
     "rapid-through-stock": "what the tool cuts away is not known"},
)  # fmt: skip
def tool_nobody_declared(base: Base, dice: Random) -> Iterator[Plant]:
    for line in base.sheet().lines_with("T"):
        sheet = base.sheet().set(line, "T", dice.choice([9, 12, 23]))
        yield Plant(sheet.bytes(), (line, line), "a tool that is not declared")


@plants("tool-not-as-declared")
def other_diameter_in_the_comment(base: Base, dice: Random) -> Iterator[Plant]:
    for line, text in base.sheet().rows:
        for old, new in (("D=6.", "D=3."), ("D=4.", "D=8."), ("D=6 ", "D=10 "), ("40 MM", "25 MM")):
            if "(" in text and old in text and "BY D1" not in text:  # which of the two D is meant cannot be told
                wrong = base.sheet().write(line, text.replace(old, new))
                yield Plant(wrong.bytes(), (line, line), f"{new} in the comment")


def _change_before(base: Base, line: int) -> int:
    """The line of the tool change that a line's tool came by."""
    return max(n for n in base.sheet().lines_with("T") if n <= line)


@plants("tool-length-not-set")
def length_of_another_tool(base: Base, dice: Random) -> Iterator[Plant]:
    for line in base.sheet().lines_with("H"):
        number = base.sheet().word(line, "H")
        others = {base.sheet().word(n, "H") for n in base.sheet().lines_with("H")} - {number}
        for other in others:
            sheet = base.sheet().set(line, "H", other or 0)
            yield Plant(sheet.bytes(), (_change_before(base, line), line), "the other tool's length")


@plants("tool-length-not-set")
def length_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    sheet = base.sheet()
    if len(sheet.lines_with("H")) > 1:
        for line in sheet.lines_with("H"):
            left = base.sheet().drop(line, "H")
            where = (_change_before(base, line), line)
            yield Plant(left.drop_code(line, "G", 43).bytes(), where, "no G43 for one of the tools")


@plants("tool-change-without-stop")
def stop_for_the_tool_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    sheet = base.sheet()
    if base.tables.setup.controller.tool_change == "ignores" and len(sheet.lines_with("T")) > 1:
        for line in sheet.lines_with("M", 0):
            changed = base.sheet().delete(line)
            change = min(n for n in sheet.lines_with("T") if n > line)
            yield Plant(changed.bytes(), at(changed, change), "no M0 before the second tool")


@plants("home-unknown")
def home_of_a_machine_without_one(base: Base, dice: Random) -> Iterator[Plant]:
    if base.tables.setup.machine.homes is False:
        for text in ("G28 G91 Z0", "G53 G0 Z0"):
            sheet = base.sheet()
            end = (sheet.lines_with("M", 30) or sheet.lines_with("M", 2))[0]
            sheet.before(end, text, "G90")
            yield Plant(sheet.bytes(), at(sheet, end, slack=3), text)


# ---- what the controller does not do


WITHOUT_CYCLES = {
    "tool-length-not-set": "G43 is refused",
    "tool-not-declared": "M6 is refused, and the tool stays the one before",
    "word-missing": "the lines of a cycle that is refused have no motion of their own",
    "dwell-unit-suspect": "a cycle's P stands alone",
}


@plants("code-refused", {"tool-length-not-set": "not done here"})
def code_the_controller_refuses(base: Base, dice: Random) -> Iterator[Plant]:
    controller = base.tables.setup.controller
    for text, code in (("G43 H1", "G43"), ("G64 P0.02", "G64"), ("G73", ""), ("M98 P100", "M98")):
        if code and controller.state(code) == "refuses" and base.gaps:
            line = dice.choice(base.gaps)
            sheet = base.sheet().before(line, text)
            new = sheet.now(line) - 1
            yield Plant(sheet.bytes(), (new, new), f"{code} on a controller that refuses it")


@plants("code-refused", WITHOUT_CYCLES | {"not-followed": "what the machine refuses is not followed"})
def wrong_machine(base: Base, dice: Random) -> Iterator[Plant]:
    """The program on a plain hobby controller: cycles, lengths, compensation and macros stop it."""
    sheet = base.sheet()
    needs = [n for c in (41, 43, 81, 82, 83) for n in sheet.lines_with("G", c)]
    needs += [n for code in (6, 98) for n in sheet.lines_with("M", code)]
    if needs and base.shop:
        told = base.told(shop=lambda shop: shop["machine"].update(controller="hobby-plain"))
        says = "on a controller that has neither cycles nor lengths"
        yield Plant(base.data, onward(min(needs)), says, follows=ANYWHERE, **told)


CARD = """
name = "deaf"
title = "a controller that passes over what it does not have"
about = "Invented for the tests."
source = "invented"
standing = "practice"
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
[[ignores]]
codes = ["cycles", "compensation"]
source = "invented"
"""


@plants(
    "code-ignored",
    {"rapid-through-stock": "without its cycle the hole's Z is a rapid down", "word-missing": "words of a cycle alone",
     "peck-too-deep": "no pecks without their cycle", "tool-length-not-set": "passed over as well"},
)  # fmt: skip
def code_passed_over(base: Base, dice: Random) -> Iterator[Plant]:
    sheet = base.sheet()
    for code in (41, 83):
        if sheet.lines_with("G", code) and base.shop:
            told = base.told(shop=lambda shop: shop["machine"].update(controller="deaf.toml"))
            lines = [n for c in ((41,) if code == 41 else (81, 82, 83)) for n in sheet.lines_with("G", c)]
            where, says = (min(lines), max(lines)), f"G{code} is passed over"
            yield Plant(base.data, where, says, files={"deaf.toml": CARD}, follows=ANYWHERE, **told)


@plants(
    "code-ignored",
    {"steep-ramp": "the whole helix in one turn", "plunge-too-fast": "the same", "feed-over-machine": "the same"}
    | {"coordinate-suspect": "the helix is one turn to a depth of its own"},
)
def turn_count_passed_over(base: Base, dice: Random) -> Iterator[Plant]:
    if base.tables.setup.controller.state("arc-turns") != "ignores":
        return
    m = base.tables.motion
    for first in base.moves((2, 3), cutting=True):
        turns, k = [first], first + 1
        while k < len(m) and base.once(k) and m.z1[k] < m.z0[k] and abs(m.sweep[k]) == 360 == abs(m.sweep[first]):
            turns.append(k)
            k += 1
        if len(turns) > 3 and m.z1[first - 1] >= m.z0[first]:
            sheet, line = base.sheet(), base.line_of(turns[0])
            sheet.set(line, "Z", float(m.z1[turns[-1]]) / base.unit).write(line, f"{sheet.text(line)} P{len(turns)}")
            for move in turns[1:]:
                sheet.delete(base.line_of(move))
            where = at(sheet, line)
            entry = (where[0] - 2, where[1])  # the way down to the material begins it
            yield Plant(sheet.bytes(), where, f"a helix of {len(turns)} turns on one line", follows=entry)


# ---- the order of the tools


@plants("tool-order-changed")
def list_in_another_order(base: Base, dice: Random) -> Iterator[Plant]:
    """The job's list is that of the export before."""
    cut = base.removed > 0
    used = list(dict.fromkeys(base.tables.motion.tool[cut].tolist()))
    if len(used) > 1:
        yield Plant(base.data, ANYWHERE, "the job lists the tools the other way round",
                    **base.with_job(tool_order=used[::-1]))  # fmt: skip
