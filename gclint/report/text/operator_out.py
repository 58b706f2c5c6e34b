"""The sheet for the one who stands at the machine: what to set, where it stops, where to start again, what to tick."""

from __future__ import annotations

from typing import Any

from rich.text import Text

from gclint.digest import hands
from gclint.digest.sheet_words import (
    by_grade,
    not_judged_by_need,
    sentence,
    short_fingerprint,
    time_words,
    title_words,
    tool_name,
    where_words,
)
from gclint.digest.words import GRADE_WORDS, Lengths, behind, count
from gclint.report.text.setup_sheet_words import setup_sheet
from gclint.report.text.terminal import in_short
from gclint.report.text.text_sheet import TextSheet
from gclint.run import Run
from gclint.tables.finding import Checked, Finding
from gclint.tables.setup_sheet import SetupSheet, Sides

INDENT = 4
SKETCH_WIDE, SKETCH_HIGH = 44, 14  # characters, the numbers around it left out
BOX = "[ ]"


def operator_sheet(run: Run, paper: TextSheet, version: str) -> None:
    """Write one program's sheet. Findings only where they concern running it: halt and change, in short."""
    checked = run.checked
    paper.ends("MACHINE SHEET", f"gclint {version}")
    paper.field("program", checked.path)
    paper.field("file", f"fingerprint {short_fingerprint(checked.fingerprint)}: the file that runs must be this one")
    if checked.paper is not None and checked.paper.material:
        paper.field("material", checked.paper.material)
    paper.field("time", time_words(checked))
    in_short(run, paper)
    _before_running(run, paper)
    words = setup_sheet(checked)
    if checked.paper is None or words is None:
        return
    _zero(checked.paper, words, checked, paper)
    _tools(words, paper)
    _before_the_start(checked.paper, paper)
    _stops(words, paper)
    _restarts(words, paper)
    _good_chip(checked.paper, paper)
    _not_judged(checked, paper)


def _before_running(run: Run, paper: TextSheet) -> None:
    graded = dict(by_grade(run.checked))
    mild = len(graded.pop("consider", ()))
    for grade, of_grade in graded.items():
        paper.blank()
        paper.heading(f"{GRADE_WORDS[grade].upper()} ({len(of_grade)})", grade)
        for finding in of_grade:
            paper.tick(_short(finding, grade, run))
    known = sum(finding.accepted is not None for finding in run.checked.findings)
    rest = [count(mild, "thing") + " to consider"] if mild else []
    rest += [count(known, "finding") + " known and accepted"] if known else []
    if rest:
        paper.blank()
        paper.text_block(f"Not told here: {', '.join(rest)}; see gclint check --for author.")


def _short(finding: Finding, grade: str, run: Run) -> str:
    tool = f", tool {tool_name(finding.tool, run)}" if finding.tool is not None else ""
    what = f"{title_words(finding.rule, run)} ({where_words(finding)}{tool})"
    if grade == "halt":
        return f"Do not run until this is put right: {what}. {sentence(finding.happens)} {finding.change.text}"
    return f"{what}. {sentence(finding.happens)}"


def _zero(made: SetupSheet, words: dict[str, Any], checked: Checked, paper: TextSheet) -> None:
    paper.blank()
    paper.heading("WHERE ZERO IS, AND HOW FAR IT GOES")
    for label, text in words["facts"]:
        paper.field(label, text)
    sides = made.blank or made.tip
    if sides is not None:
        paper.blank()
        for line in sketch(sides, made.cut, Lengths(checked.units == "inch")):
            paper.console.print(Text(f"    {line}"))
        shown = "the blank" if made.blank is not None else "what the tip reaches"
        guess = " (assumed, not declared)" if made.blank is not None and made.blank_assumed else ""
        paper.text_block(f"From above: O is zero, the outline is {shown}{guess}, the dots are what is cut.", INDENT)


def sketch(blank: Sides, cut: Sides | None, lengths: Lengths) -> list[str]:
    """Lines of characters, back at the top: outline, cut area, zero, and how far the outline reaches on each side."""
    x0, x1 = min(-blank.left, 0.0), max(blank.right, 0.0)
    y0, y1 = min(-blank.front, 0.0), max(blank.back, 0.0)
    wide, high = max(x1 - x0, 1e-6), max(y1 - y0, 1e-6)
    across = min((SKETCH_WIDE - 1) / wide, 2.0 * (SKETCH_HIGH - 1) / high)  # characters are twice as high as wide
    columns = max(6, round(wide * across)) + 1
    rows = max(3, round(high * across / 2)) + 1
    grid = [[" "] * columns for _ in range(rows)]

    def place(x: float, y: float) -> tuple[int, int]:
        column, row = round((x - x0) / wide * (columns - 1)), round((y1 - y) / high * (rows - 1))
        return min(max(column, 0), columns - 1), min(max(row, 0), rows - 1)

    (left, top), (right, bottom) = place(-blank.left, blank.back), place(blank.right, -blank.front)
    if cut is not None:
        (first, upper), (last, lower) = place(-cut.left, cut.back), place(cut.right, -cut.front)
        for row in range(upper, lower + 1):
            for column in range(first, last + 1):
                grid[row][column] = "."
    for column in range(left, right + 1):
        grid[top][column] = grid[bottom][column] = "-"
    for row in range(top, bottom + 1):
        grid[row][left] = grid[row][right] = "|"
    for row, column in ((top, left), (top, right), (bottom, left), (bottom, right)):
        grid[row][column] = "+"
    column, row = place(0.0, 0.0)
    grid[row][column] = "O"
    names = {name: f"{name} {lengths.place(getattr(blank, name))}" for name in ("left", "right", "front", "back")}
    margin = " " * (len(names["left"]) + 1)
    lines = [f"{margin}{names['back']:^{columns}}".rstrip()]
    for number, line in enumerate(grid):
        text = "".join(line).rstrip() if number != rows // 2 else "".join(line)
        beside = names["left"] + " " if number == rows // 2 else margin
        lines.append(f"{beside}{text}{' ' + names['right'] if number == rows // 2 else ''}")
    unit = "inches" if lengths.inch else "mm"
    return [*lines, f"{margin}{names['front']:^{columns}}".rstrip(), f"{margin}({unit} from zero)"]


def _tools(words: dict[str, Any], paper: TextSheet) -> None:
    if not words["tools"]:
        return
    paper.blank()
    paper.heading("TOOLS")
    paper.table(
        ("tool", "what", "out of the nut", "speed", "from line", "time", "Z zeroed"),
        [
            (each["name"], each["described"], each["stickout"], each["speed"], str(each["line"]), each["time"], BOX)
            for each in words["tools"]
        ],
        left=2,
    )


def _before_the_start(made: SetupSheet, paper: TextSheet) -> None:
    paper.blank()
    paper.heading("BEFORE YOU PRESS START")
    for text in made.tick:
        paper.tick(f"{text}{' ' + '_' * 12 if text.startswith(('thickness', 'initials')) else ''}")


def _stops(words: dict[str, Any], paper: TextSheet) -> None:
    if not words["stops"]:
        return
    paper.blank()
    paper.heading("WHERE THERE IS SOMETHING TO DO")
    for stop in words["stops"]:
        after = f", after {stop['time']}" if stop["time"] else ""
        says = f' The program says: "{stop["says"]}".' if stop["says"] else ""
        paper.text_block(f"line {stop['line']} ({stop['words']}{after}): {stop['here']}{says}")
        for step in stop["do"]:
            paper.tick(step, INDENT)
    if words["stops_left_out"]:
        paper.text_block(f"and {count(words['stops_left_out'], 'more stop')}.")


def _restarts(words: dict[str, Any], paper: TextSheet) -> None:
    paper.blank()
    paper.heading("IF IT IS BROKEN OFF")
    if words["restarts"]:
        paper.text_block(
            f"{hands.OFF} Lift the tool by hand first; where the machine may have lost its place, home it or set zero "
            "again. Hands clear. Then "
            "give the words (| parts the blocks) one after the other, and start at the line. The moves among them take "
            "the tip over the place where that line begins, above the blank."
        )
        rows = [
            (str(each["line"]), str(each["tool"]), each["words"], each["left"]) for each in words["restarts"]
        ]
        paper.table(("line", "tool", "words to give first", "still to run"), rows, left=3)
        if words["restarts_left_out"]:
            paper.text_block(f"There are {words['restarts_left_out']} more such lines.")
    if words["no_restart"]:
        first = "Not after the last of these" if words["restarts"] else "Start it from the beginning"
        paper.text_block(f"{first}: {words['no_restart']}.")


def _good_chip(made: SetupSheet, paper: TextSheet) -> None:
    if made.good_chip is None:
        return
    good = made.good_chip
    paper.blank()
    paper.heading("A GOOD CHIP")
    paper.field("looks", f"{good.looks} ({behind(good.standing, good.source)})")
    paper.field("sounds", good.sounds)
    paper.field("else", "stop; spindle off, wait until it stands still; then look at feed, speed and the bit")


def _not_judged(checked: Checked, paper: TextSheet) -> None:
    if not checked.not_judged:
        return
    paper.blank()
    paper.heading("NOT JUDGED: LOOK AT THESE YOURSELF")
    for needs, rules in not_judged_by_need(checked).items():
        paper.bullet(f"{', '.join(rules)}: needs {needs}")
