"""A program stop at a tool change that the controller passes over, with a message; the spindle off before it and on
again behind it where the program starts it."""

from __future__ import annotations

import numpy as np

from gclint.mend.case import Case, Offer, Proposal, Refused
from gclint.mend.draft import Edit
from gclint.mend.lifted import lifted_at, row_before
from gclint.mend.spindle import ON, start_blocks
from gclint.mend.style import NoRoom, numbered
from gclint.tables.finding import Finding
from gclint.tables.motion import RAPID


def offers(case: Case, finding: Finding) -> list[Offer]:
    made: list[Offer] = []
    for line in finding.lines or (finding.line,):
        try:
            made.append(_stop(case, finding, line))
        except (ValueError, NoRoom) as problem:
            made.append(Refused(finding.rule, (line,), str(problem)))
    return made


def _stop(case: Case, finding: Finding, line: int) -> Proposal:
    m, card, spindle, style = case.motion, case.setup.controller, case.setup.spindle, case.style
    if card.name == "any" or card.program_stop not in ("stops", "stops-spindle"):
        raise ValueError("the declared controller does not stop at M0")
    if not case.straight_through:
        raise ValueError("the program has loops, calls or expressions, and a stop is put in only where it runs once")
    if not lifted_at(case, line):
        raise ValueError("the tool is not known to stand above the blank at this line")
    number = _tool_after(case, line)
    name = case.setup.tools[number].name if number in case.setup.tools else ""
    row = row_before(case, line)
    turning = int(m.spindle[row]) in (1, -1)
    notes = [f"put in tool {number}" + (f": {name}" if name else "")]
    blocks: list[bytes] = []
    by_hand = spindle.started == "by-hand" or spindle.kind == "dial"
    if by_hand:
        notes.insert(0, "stop the spindle by hand")
    speed = _speed_after(case, row)
    if spindle.kind == "dial":
        mark = next((each for each in spindle.dial if speed and abs(each.stated - speed) <= 0.02 * each.stated), None)
        if mark is not None and case.setup.dial is None:
            notes.append(f"set the dial to {mark.mark}")
    if by_hand:
        notes.append("start the spindle, then go on")
    if turning and not by_hand and spindle.started == "program" and card.program_stop == "stops":
        blocks.append(style.line(style.code("M", 5)))
    blocks += [style.comment(note) for note in notes]
    blocks.append(style.line(style.code("M", 0)))
    stopped = turning and not by_hand and (card.program_stop == "stops-spindle" or spindle.started == "program")
    if stopped and not _starts_again(case, line):
        if not speed:
            raise ValueError("the program gives no speed (S) to start the spindle with behind the stop")
        if spindle.started != "program":
            raise ValueError('who starts the spindle again is not declared (`started = "program"`)')
        blocks += start_blocks(case, speed)
    before = numbered(style, case.draft, line, tuple(blocks))
    because = (
        f"A stop before line {line}: the controller passes over T and M6, so a person puts tool {number} in there."
    )
    return Proposal(finding.rule, "stop", (line,), (Edit(line, before=before),), because, starts=stopped)


def _tool_after(case: Case, line: int) -> int:
    value = case.modes.value_at("T", line)
    if not value >= 0:
        raise ValueError("which tool is meant is not plain")
    return int(value)


def _speed_after(case: Case, row: int) -> float:
    m = case.motion
    feed = np.flatnonzero(m.kind[row + 1 :] != RAPID)
    speed = float(m.speed[row + 1 + int(feed[0])]) if len(feed) else float("nan")
    return speed if speed > 0 else 0.0


def _starts_again(case: Case, line: int) -> bool:
    """Whether the program itself starts the spindle behind this line, before the next move at feed."""
    m = case.motion
    row = row_before(case, line)
    feed = np.flatnonzero(m.kind[row + 1 :] != RAPID)
    last = row + 1 + int(feed[0]) if len(feed) else len(m)
    own = np.isin(m.event_kind, ON) & (m.event_line >= line) & (m.event_move > row) & (m.event_move <= last)
    return bool(own.any())
