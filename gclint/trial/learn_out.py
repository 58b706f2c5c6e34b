"""What was learned from test cuts as a sheet of text."""

from __future__ import annotations

import math
import textwrap

from gclint import __version__
from gclint.digest.words import Lengths, figure
from gclint.report.text.cautions import in_short
from gclint.report.text.text_sheet import TextSheet
from gclint.trial import learn_words as words
from gclint.trial.learn import Lesson, ToolWindow
from gclint.trial.plan import FAULTS
from gclint.trial.plane import Plane, plane_of, spoilt_by

ROWS, LEFT = 20, 9
INSIDE, MAYBE = 0.9, 0.5


def sheet(lesson: Lesson, paper: TextSheet, lengths: Lengths) -> None:
    trial = lesson.trial
    paper.ends("WHAT THE TEST CUTS TEACH", f"gclint {__version__}")
    paper.field("material", trial.material)
    batches = sorted({cut.batch for cut in trial.cuts} - {""})
    if batches:
        paper.field("batch", ", ".join(batches))
    paper.field("plans", ", ".join(trial.plans))
    paper.field("cuts", f"{len(trial.cuts)} graded of {trial.planned}")
    for number, tool in trial.tools.items():
        paper.blank()
        paper.heading(words.tool_words(tool, lengths).upper())
        if number in lesson.windows:
            _window(lesson, lesson.windows[number], paper, lengths)
        else:
            paper.text_block("Too little to conclude anything about this tool. Missing:")
        for said in words.missing_words(lesson, number):
            paper.bullet(said)
    checks = words.check_words(lesson)
    if checks:
        paper.blank()
        paper.heading("WHAT DOES NOT AGREE")
        for said in checks:
            paper.bullet(said)
    if lesson.windows:
        paper.blank()
        paper.heading("ENTRIES")
        for said in words.entry_words(lesson):
            paper.text_block(said)
        paper.blank()
        paper.heading("WHAT MAKES EACH FAULT LIKELIER")
        for name, said in words.cause_words(lesson):
            paper.hanging(f"{name:<14}", said)
    if trial.assumed:
        paper.blank()
        paper.heading("TAKEN AS GIVEN")
        for said in trial.assumed:
            paper.bullet(said)
    paper.cautions(in_short(trial.cautions))


def _window(lesson: Lesson, window: ToolWindow, paper: TextSheet, lengths: Lengths) -> None:
    for name, said in words.window_lines(window, lengths):
        paper.field(name, said)
    paper.text_block(words.how_words(window, lengths))
    paper.blank()
    for line in drawing(plane_of(lesson, window.tool, paper.width - LEFT - 2, ROWS), window, lengths):
        paper.text_block(line)
    rows = words.next_rows(lesson, window.tool, lengths)
    if rows:
        paper.blank()
        paper.text_block("The next five cuts that would narrow these limits most:")
        paper.table(words.next_titles(lengths), rows)


def drawing(plane: Plane, window: ToolWindow, lengths: Lengths) -> list[str]:
    """Feeds upward, true speeds to the right."""
    columns, rows = len(plane.speeds), len(plane.feeds)
    cells = [[" "] * columns for _ in range(rows)]
    for r in range(rows):
        for c in range(columns):
            share = plane.inside[r, c]
            cells[r][c] = " " if math.isnan(share) else "=" if share >= INSIDE else "-" if share >= MAYBE else " "
    taken: set[tuple[int, int]] = set()
    first, last, step = float(plane.speeds[0]), float(plane.speeds[-1]), float(plane.feeds[1] - plane.feeds[0])

    def put(speed: float, feed: float, sign: str) -> None:
        c = round((speed - first) / (last - first) * (columns - 1))
        r = min(max(int(feed / step), 0), rows - 1)
        while (r, c) in taken and c < columns - 1:
            c += 1
        taken.add((r, c))
        cells[r][c] = sign

    for cut in plane.cuts:
        fault = spoilt_by(cut)
        sign = words.SIGNS[fault] if fault else "O"
        put(cut.speed, cut.feed, sign.lower() if cut.entry == "straight" else sign)
    if window.use:
        put(window.pair_speed, window.pair_feed, "*")
    lines = [f"{lengths.unit + '/min':>{LEFT}}"]
    for r in range(rows - 1, -1, -1):
        label = figure(r * step * lengths.scale, 3) if r % 4 == 0 and r else ""
        lines.append(f"{label:>{LEFT - 1}} |" + "".join(cells[r]).rstrip())
    lines.append(" " * LEFT + "+" + "-" * columns)
    lines.append(f"{'rev/min':>{LEFT}} " + _axis(plane, columns))
    seen = {spoilt_by(cut) for cut in plane.cuts} - {""}
    signs = ", ".join(f"{words.SIGNS[fault]} {words.NAMES[fault]}" for fault in FAULTS if fault in seen)
    said = f"O good cut{', ' if signs else ''}{signs}; small letters: straight down; ="
    said += " inside the window (90 %), - likely inside" + (", * the pair to use" if window.use else "")
    return [*lines, *(" " * (LEFT + 1) + line for line in textwrap.wrap(said, columns))]


def _axis(plane: Plane, columns: int) -> str:
    """Each speed that was cut, by its mark or its rev/min, as far as there is room."""
    first, last = float(plane.speeds[0]), float(plane.speeds[-1])
    row = [" "] * (columns + LEFT)
    end = -1
    for speed, dial in sorted({(round(cut.speed), cut.dial) for cut in plane.cuts}, key=lambda one: one[0]):
        text = f"{dial}:{speed}" if dial else f"{speed}"
        at = round((speed - first) / (last - first) * (columns - 1))
        at = max(min(at, columns - len(text)), 0)
        if at > end and at + len(text) < columns + 1:
            row[at : at + len(text)] = list(text)
            end = at + len(text)
    return "".join(row).rstrip()
