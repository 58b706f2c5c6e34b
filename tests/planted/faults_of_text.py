"""Faults of the text: units, modes, words, arcs, comments, flow, the file's end."""

from __future__ import annotations

import re
from collections.abc import Iterator
from random import Random

import numpy as np

from tests.planted.base import Base
from tests.planted.harness import ANYWHERE, Plant, Span, at, onward, plants
from tests.planted.sheet import Sheet

NOT_DONE = {
    "full-width-too-deep": "the line is not executed: what it should have cut is left to the next pass",
    "too-deep": "the same",
    "chip-too-thick": "a corner that is cut less is met harder by the next lap; or the feed before stays in force",
    "chip-too-thin": "the feed before stays in force",
    "plunge-too-fast": "the feed before stays in force",
    "opening-slot-too-fast": "the next lap opens the slot",
    "inside-corner": "the same",
    "rapid-through-stock": "what should have been cut stands in the way",
    "straight-plunge": "the way before it is not cut",
    "compression-too-shallow": "the next pass is the first",
    "steep-ramp": "the ramp begins elsewhere",
    "feed-unit-suspect": "the feed before stays in force",
    "word-missing": "the arc mode of before stays in force",
    "hidden-plunge": "the way before it is not cut",
    "travel-too-low": "where the tool stands is not known",
    "not-followed": "the same",
}


def _drawn(dice: Random, lines: list[int]) -> list[int]:
    return dice.sample(lines, len(lines))


def _moving(base: Base, cutting: bool = True, letters: str = "XY") -> list[int]:
    """Lines of one plain move that carry any of these words."""
    sheet, made = base.sheet(), []
    for move in base.moves((0, 1, 2, 3), cutting=cutting):
        line = base.line_of(move)
        words = {name for name, _, _, _ in sheet.words(line)}
        if words & set(letters) and not {28.0, 53.0} & set(sheet.codes(line)):
            made.append(line)
    return made


# ---- units and modes


def _first_length(sheet: Sheet) -> Span:
    """From the first S or F, which needs a unit too, to the first line that goes somewhere."""
    lines = [n for letter in "XYZS" for n in sheet.lines_with(letter)]
    return at(sheet, min(lines), min(n for letter in "XY" for n in sheet.lines_with(letter)))


@plants("units-unstated")
def unit_word_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    sheet = base.sheet()
    for line in sheet.lines_with("G", 21):
        yield Plant(sheet.drop_code(line, "G", 21).bytes(), _first_length(sheet), "no G21")


@plants(
    "units-unstated",
    {"units-suspect": "the inch program's numbers are read as millimetres, and do not fit",
     "feed-unit-suspect": "nor do its feeds"},
)  # fmt: skip
def inch_word_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    sheet = base.sheet()
    for line in sheet.lines_with("G", 20):
        yield Plant(sheet.drop_code(line, "G", 20).bytes(), _first_length(sheet), "no G20", follows=ANYWHERE)


TOO_LARGE = {
    "outside-travel": "every length is 25.4 times what was meant: it is larger than the machine",
    "outside-stock": "it goes far outside the blank",
    "cuts-table": "it goes far below it",
    "cuts-fixture": "it reaches the clamps",
    "feed-over-machine": "feeds are 25.4 times as high as well",
    "feed-unit-suspect": "the same",
    "plunge-too-fast": "the same",
    "full-width-too-deep": "its depths",
    "too-deep": "the same",
    "nut-hits-stock": "the same",
    "shank-rubs": "the same",
    "down-cut-packs-slot": "the same",
    "spindle-stalls": "the same",
    "offcut-comes-loose": "it goes through",
    "never-cuts": "the path is around the blank, not on it",
    "tool-not-as-declared": "a diameter in a comment is read in the program's unit",
}


@plants("units-suspect", TOO_LARGE)
def unit_word_swapped(base: Base, dice: Random) -> Iterator[Plant]:
    first = next(base.line_of(k) for k in range(len(base.removed)) if base.tables.motion.kind[k] > 0)
    for old, new in ((21, 20),):  # the other way round it is a small part, and small parts are made
        sheet = base.sheet()
        for line in sheet.lines_with("G", old):
            nth = sheet.codes(line).index(old)
            sheet.set(line, "G", new, nth)
            where = (sheet.now(line), sheet.now(first)) if base.plain else onward(line)
            yield Plant(sheet.bytes(), where, f"G{new} for G{old}", follows=ANYWHERE)


SWITCHED = TOO_LARGE | NOT_DONE | {
    "arc-does-not-close": "an arc begins at a place that was told in the other unit",
    "part-comes-loose": "tabs told in the other unit are elsewhere",
}


@plants("units-switched", SWITCHED | {"coordinate-suspect": "the places are 25.4 times off"})
def other_unit_from_here_on(base: Base, dice: Random) -> Iterator[Plant]:
    """A header of another program, pasted between two cuts."""
    if not base.sheet().lines_with("G", 21):
        return
    for line in dice.sample(base.gaps, len(base.gaps)):
        sheet = base.sheet().before(line, "G20")
        yield Plant(sheet.bytes(), onward(sheet.now(line) - 1), f"G20 before line {line}", follows=ANYWHERE)


@plants("state-unstated")
def mode_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    arcs = bool((base.tables.motion.kind > 1).any())
    for code in [90, *([17] if arcs else [])]:
        sheet = base.sheet()
        lines = sheet.lines_with("G", code)
        if len(lines) == 1 and not base.tables.setup.controller.start_state:
            first = min(n for letter in "XYZ" for n in sheet.lines_with(letter))
            arc = min([n for c in (2, 3) for n in sheet.lines_with("G", c)], default=first)
            sheet.drop_code(lines[0], "G", code)
            yield Plant(sheet.bytes(), at(sheet, first if code == 90 else arc, first), f"no G{code}")


@plants("work-offset-suspect", {"outside-stock": "the places are told from the other zero"}
    | {"not-followed": "where the other offset lies is not known"})
def other_work_offset(base: Base, dice: Random) -> Iterator[Plant]:
    for code in dice.sample([55, 56, 57, 59], 2):
        sheet = base.sheet()
        lines = sheet.lines_with("G", 54)
        for line in lines:
            sheet.set(line, "G", code, sheet.codes(line).index(54))
        told = base.told(job=lambda job: job.update(work_offset="G54"))
        says = f"G{code}, and the job has its zero in G54"
        yield Plant(sheet.bytes(), (lines[0], lines[0]), says, follows=ANYWHERE, **told)


# ---- feeds and words


@plants("feed-missing")
def first_feed_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    sheet, m = base.sheet(), base.tables.motion
    lines = sheet.lines_with("F")
    first = next((base.line_of(k) for k in range(len(m)) if m.kind[k] > 0), None)
    if base.plain and lines and lines[0] == first:
        yield Plant(sheet.drop(first, "F").bytes(), at(sheet, first), "no feed before the first cut")


@plants("feed-missing")
def feed_of_nothing(base: Base, dice: Random) -> Iterator[Plant]:
    for line in _drawn(dice, sorted(set(base.sheet().lines_with("F")) & set(_moving(base)))):
        sheet = base.sheet().set(line, "F", 0)
        yield Plant(sheet.bytes(), (line, line), "F0")


@plants("word-conflict", NOT_DONE | {"depth-step-suspect": "a lap is not executed"})
def word_doubled(base: Base, dice: Random) -> Iterator[Plant]:
    for line in _drawn(dice, _moving(base)):
        sheet = base.sheet()
        letter = dice.choice([w[0] for w in sheet.words(line) if w[0] in "XYF"])
        value = sheet.word(line, letter)
        assert value is not None
        sheet.write(line, f"{sheet.text(line)} {letter}{sheet.number(value + dice.choice([-2, 1.5, 4]))}")
        yield Plant(sheet.bytes(), (line, line), f"{letter} twice on one line", follows=onward(line))


@plants("word-conflict", NOT_DONE | {"depth-step-suspect": "a lap is not executed"})
def two_motions_on_a_line(base: Base, dice: Random) -> Iterator[Plant]:
    for line in _drawn(dice, _moving(base)):
        sheet = base.explicit(base.sheet(), line)
        kind = next(c for c in sheet.codes(line) if c < 4)
        sheet.write(line, f"{sheet.text(line)} G{0 if kind else 1}")
        yield Plant(sheet.bytes(), (line, line), "two motion codes on one line", follows=onward(line))


@plants("number-unreadable", NOT_DONE)
def decimal_comma(base: Base, dice: Random) -> Iterator[Plant]:
    for line in _drawn(dice, _moving(base)):
        text = base.sheet().text(line)
        comma = re.sub(r"([XYxy]-?\d+)\.(\d+)", r"\1,\2", text, count=1)
        if comma != text:
            yield Plant(base.sheet().write(line, comma).bytes(), (line, line), "a decimal comma", follows=onward(line))


@plants("number-unreadable", NOT_DONE | {"depth-step-suspect": "a lap is not executed"})
def garbled_number(base: Base, dice: Random) -> Iterator[Plant]:
    for line in _drawn(dice, _moving(base)):
        sheet = base.sheet()
        _, _, start, end = next(w for w in sheet.words(line) if w[0] in "XY")
        text = sheet.text(line)
        wrong = dice.choice(["1.2.5", "--3", "4.-1", "1..5"])
        sheet.write(line, text[: start + 1] + wrong + text[end:])
        yield Plant(sheet.bytes(), (line, line), f"X{wrong}", follows=onward(line))


@plants("blank-in-number")
def blank_in_a_number(base: Base, dice: Random) -> Iterator[Plant]:
    for line in _drawn(dice, _moving(base)):
        sheet, text = base.sheet(), base.sheet().text(line)
        for letter, _, start, end in sheet.words(line):
            split = re.search(r"(?<=\d)(?=\d)", text[start:end])
            if letter in "XY" and split:
                sheet.write(line, text[: start + split.start()] + "  " + text[start + split.start() :])
                yield Plant(sheet.bytes(), (line, line), "a blank within a number")
                break


@plants("word-missing", NOT_DONE | {"arc-does-not-close": "an arc without a centre"})
def arc_without_centre(base: Base, dice: Random) -> Iterator[Plant]:
    for move in dice.sample(found := list(base.moves((2, 3), cutting=True)), len(found)):
        sheet, line = base.sheet(), base.line_of(move)
        sheet.drop(line, "I", "J", "R")
        if sheet.has(line):
            says = "an arc without I, J or R"
            yield Plant(sheet.bytes(), at(sheet, line), says, follows=onward(sheet.now(line)))


@plants("word-missing")
def cycle_without_its_height(base: Base, dice: Random) -> Iterator[Plant]:
    for code in (81, 82, 83):
        for line in base.sheet().lines_with("G", code):
            for letter in "RZ":
                yield Plant(base.sheet().drop(line, letter).bytes(), (line, line + 12), f"G{code} without {letter}")


@plants("code-unknown")
def code_nobody_knows(base: Base, dice: Random) -> Iterator[Plant]:
    for code, line in zip(("G37.9", "M177"), _drawn(dice, _moving(base))):
        sheet = base.sheet().before(line, code)
        new = sheet.now(line) - 1
        yield Plant(sheet.bytes(), (new, new), code)


# ---- arcs


def _centred(base: Base) -> list[int]:
    """Moves that are arcs of less than a turn, by I and J."""
    m, sheet = base.tables.motion, base.sheet()
    return [
        move for move in base.moves((2, 3), cutting=True)
        if sheet.word(base.line_of(move), "I") is not None and 5 < abs(m.sweep[move]) < 355
    ]  # fmt: skip


@plants("arc-does-not-close", NOT_DONE | {"coordinate-suspect": "words in another order close the arc as well"})
def centre_rounded(base: Base, dice: Random) -> Iterator[Plant]:
    m = base.tables.motion
    for move in dice.sample(found := _centred(base), len(found)):
        sheet, line = base.sheet(), base.line_of(move)
        radius = float(np.hypot(m.x0[move] - m.cu[move], m.y0[move] - m.cv[move]))
        off = dice.uniform(0.03, 0.4) + 0.005 * radius
        along = (m.x1[move] - m.x0[move], m.y1[move] - m.y0[move])  # off towards the end: the radii must differ
        letter, step = ("I", along[0]) if abs(along[0]) > abs(along[1]) else ("J", along[1])
        value = sheet.word(line, letter)
        if value is not None:
            sheet.set(line, letter, value + float(np.sign(step)) * off / base.unit)
            yield Plant(sheet.bytes(), (line, line), f"a centre {off:.2f} mm off", follows=onward(line))


@plants("arc-does-not-close", NOT_DONE)
def radius_too_small(base: Base, dice: Random) -> Iterator[Plant]:
    m = base.tables.motion
    for move in dice.sample(found := list(base.moves((2, 3), cutting=True)), len(found)):
        sheet, line = base.sheet(), base.line_of(move)
        chord = float(np.hypot(m.x1[move] - m.x0[move], m.y1[move] - m.y0[move])) / base.unit
        if sheet.word(line, "R") is not None and chord > 0.1:
            small = chord / 2 * dice.uniform(0.5, 0.9)
            says = f"R {small:.2f}, chord {chord:.2f}"
            yield Plant(sheet.set(line, "R", small).bytes(), (line, line), says, follows=onward(line))


@plants(
    "arc-centre-suspect",
    {"arc-does-not-close": "the arcs that are not followed", "straight-plunge": "a helix that is not followed",
     "hidden-plunge": "the same", "part-comes-loose": "the tabs between two arcs are not seen",
     "chip-too-thick": "the laps between are left to the next"}
    | {"not-followed": "arcs that do not close are not followed", "plunge-too-fast": "an entry is read as another"},
)  # fmt: skip
def arc_centres_absolute(base: Base, dice: Random) -> Iterator[Plant]:
    sheet, m = base.sheet(), base.tables.motion
    arcs = [k for k in base.moves((2, 3)) if sheet.word(base.line_of(k), "I") is not None]
    part = [k for k in arcs if abs(m.sweep[k]) < 355]  # a whole turn closes whatever its centre
    if len(part) < 3 or any(np.hypot(m.x0[k], m.y0[k]) < 1 for k in arcs):
        return
    for move in arcs:
        line = base.line_of(move)
        for letter, centre in (("I", m.cu[move]), ("J", m.cv[move])):
            if sheet.word(line, letter) is not None:
                sheet.set(line, letter, float(centre) / base.unit)
    lines = [base.line_of(k) for k in arcs]
    yield Plant(sheet.bytes(), at(sheet, *lines), "all arc centres absolute", follows=onward(min(lines)))


# ---- comments


def _comments(base: Base) -> list[int]:
    return [n for n, text in base.sheet().rows if "(" in text and text.rstrip().endswith(")")]


@plants("comment-leftover")
def bracket_left_open(base: Base, dice: Random) -> Iterator[Plant]:
    for line in _drawn(dice, _comments(base)):
        sheet = base.sheet()
        yield Plant(sheet.write(line, sheet.text(line).rstrip()[:-1]).bytes(), (line, line), "a comment not closed")


@plants(
    "comment-leftover",
    {"number-unreadable": "what is left of the comment is read as code", "word-missing": "the same",
     "word-conflict": "the same", "code-refused": "the same", "tool-change-without-stop": "its M0 is not executed"},
)  # fmt: skip
def bracket_in_a_bracket(base: Base, dice: Random) -> Iterator[Plant]:
    if base.shop is None or base.shop["machine"].get("controller") != "hobby-3-axis":
        return
    for line in _drawn(dice, _comments(base)):
        sheet = base.sheet()
        text = sheet.text(line).rstrip()
        sheet.write(line, f"{text[:-1]} (2) copy)")
        yield Plant(sheet.bytes(), (line, line), "brackets in brackets", follows=onward(line))


# ---- flow and parameters


@plants("expression-wrong", {"not-read-to-end": "the loop counts no more", "not-followed": "too much to cut"})
def expression_broken(base: Base, dice: Random) -> Iterator[Plant]:
    for line, text in base.sheet().rows:
        if re.match(r"#\d+\s*=\s*#", text):
            bare = text.split("(")[0].rstrip()
            for wrong in (f"{bare}]", f"{bare}*", f"{bare}/0", f"{bare}+SQRT[-2]"):
                yield Plant(base.sheet().write(line, wrong).bytes(), (line, line), wrong, follows=ANYWHERE)


@plants(
    "flow-unmatched",
    {"not-read-to-end": "the loop has no end", "program-cut-short": "it is followed no further",
     "ends-in-material": "the same", "never-cuts": "the same"},
)
def end_of_a_loop_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    for line, text in base.sheet().rows:
        if re.match(r"END\d", text):
            begins = next(n for n, other in base.sheet().rows if other.endswith(text.replace("END", "DO")))
            yield Plant(base.sheet().delete(line).bytes(), (begins, line), f"no {text}", follows=ANYWHERE)


@plants("not-read-to-end", {"never-cuts": "it goes round at one height", "not-followed": "too much to cut"})
def loop_that_never_ends(base: Base, dice: Random) -> Iterator[Plant]:
    for line, text in base.sheet().rows:
        if match := re.match(r"(#\d+)\s*=\s*\1", text):
            same = base.sheet().write(line, f"{match[1]}={match[1]}")
            begins = max(n for n, other in same.rows if re.search(r"DO\d", other) and n < line)
            yield Plant(same.bytes(), onward(begins), "a loop that counts nothing", follows=ANYWHERE)


@plants("point-missing")
def point_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    if base.tables.setup.controller.no_point == "resolution":
        for line, text in base.sheet().rows:
            if re.search(r"[XYZ]-?\d+\.(?!\d)", text) and not text.startswith(("(", "O")):
                wrong = re.sub(r"([XYZ]-?\d+)\.(?!\d)", r"\1", text, count=1)
                yield Plant(base.sheet().write(line, wrong).bytes(), (line, line), wrong)


# ---- the end of the file


def _last_cut(base: Base) -> int:
    """The line of the last cutting move."""
    return base.line_of(int(np.flatnonzero(base.removed > 0.5)[-1]))


@plants(
    "program-cut-short",
    {"number-unreadable": "the last line is half a line", "word-missing": "the same", "arc-does-not-close": "the same",
     "compensation-left-on": "its end is missing", "flow-unmatched": "the same",
     "outside-stock": "the tool went down beside the blank for a pass that is missing"},
)  # fmt: skip
def end_cut_off(base: Base, dice: Random) -> Iterator[Plant]:
    lines = _moving(base)
    lines = lines[len(lines) // 3 :]
    for line in _drawn(dice, lines):
        sheet = base.sheet()
        words = sheet.words(line)
        if len(words) > 1:
            sheet.cut_off(line, words[-1][2] + 1)
            data = sheet.bytes().rstrip(b"\r\n")
            yield Plant(data, (line - 1, line), "the file ends in the middle of a cut", follows=ANYWHERE)


@plants("ends-in-material")
def last_lift_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    if not base.plain:
        return
    sheet, last, m = base.sheet(), _last_cut(base), base.tables.motion
    move, box = int(np.flatnonzero(base.removed > 0.5)[-1]), base.tables.engagement.box
    if m.cycle[move] or box is None or box.x is None or box.y is None:
        return
    if not (box.x[0] < m.x1[move] < box.x[1] and box.y[0] < m.y1[move] < box.y[1]):
        return
    for line, _ in list(sheet.rows):
        if line > last and {w[0] for w in sheet.words(line)} & set("XYZ"):
            sheet.delete(line)
    yield Plant(sheet.bytes(), onward(sheet.now(last)), "nothing lifts the tool at the end")


@plants("ends-without-stop")
def end_words_left_out(base: Base, dice: Random) -> Iterator[Plant]:
    spindle = base.tables.setup.spindle
    judged = spindle.started != "by-hand" or base.tables.setup.controller.end_required
    if not judged or not base.plain:
        return
    sheet, last = base.sheet(), _last_cut(base)
    for line, text in list(sheet.rows):
        if text.strip() == "%" and line > 1:
            sheet.delete(line)
        elif line > last:
            for code in (5, 2, 30):
                if sheet.has(line) and code in sheet.codes(line, "M"):
                    sheet.drop_code(line, "M", code)
    yield Plant(sheet.bytes(), onward(sheet.now(last)), "no M5 and no M30")


# ---- Z


def _all_z(base: Base, change: dict[str, float]) -> Sheet:
    """Every Z of the program times `by`, plus `add`, at most `most` (in the program's units), cycles' R too."""
    sheet = base.sheet()
    for line, _ in list(sheet.rows):
        if {28.0, 53.0} & set(sheet.codes(line)):
            continue
        cycle = any(81 <= c <= 89 or c == 73 for c in sheet.codes(line))
        for letter in "ZR" if cycle else "Z":
            value = sheet.word(line, letter)
            if value is not None:
                value = value * change.get("by", 1) + change.get("add", 0)
                sheet.set(line, letter, max(value, change.get("least", -1e9)))
    return sheet


def _first_feed(base: Base) -> Span:
    """The first move that is no rapid: what is told of all Z stands there."""
    m = base.tables.motion
    line = next(base.line_of(k) for k in range(len(m)) if m.kind[k] > 0)
    return line, line


@plants("z-zero-suspect", {"plunge-too-fast": "its own descent"})
def zero_on_the_table(base: Base, dice: Random) -> Iterator[Plant]:
    lowest = float(np.nanmin(base.tables.motion.z1))
    if base.plain and base.bottom is not None and lowest > base.bottom:  # cut through it looks like a very thin skim
        thick = (base.top - base.bottom) / base.unit
        says = "Z counts from the table, and the job says the top"
        yield Plant(_all_z(base, {"add": thick}).bytes(), _first_feed(base), says, follows=ANYWHERE)


@plants("never-cuts", {"z-zero-suspect": "nothing goes below the top"})
def depth_lost(base: Base, dice: Random) -> Iterator[Plant]:
    if base.plain:
        yield Plant(_all_z(base, {"least": 0}).bytes(), _first_feed(base), "no Z is below the top", follows=ANYWHERE)


@plants(
    "z-counted-downward",
    {"rapid-through-stock": "every lift is a dive", "cuts-table": "the same", "nut-hits-stock": "the same",
     "shank-rubs": "the same", "word-missing": "a cycle's R lies below its bottom", "peck-too-deep": "the same"},
)  # fmt: skip
def z_turned_round(base: Base, dice: Random) -> Iterator[Plant]:
    lifts = [k for k in base.moves((0,), cutting=False) if base.tables.motion.z1[k] > base.tables.motion.z0[k]]
    if base.plain and len(lifts) > 2:  # one lift, or travel at feed, tells too little
        where = onward(_first_feed(base)[0])
        yield Plant(_all_z(base, {"by": -1}).bytes(), where, "every Z has the other sign", follows=ANYWHERE)
