"""The spindle's start before the cut, and the wait until it turns at its speed, in the unit of the card."""

from __future__ import annotations

import math

import numpy as np

from gclint.mend.case import Case, Offer, Proposal, Refused
from gclint.mend.draft import Edit
from gclint.mend.lifted import lifted_at
from gclint.mend.style import NoRoom, numbered
from gclint.tables.finding import Finding
from gclint.tables.motion import EVENT

ON = (EVENT["spindle-cw"], EVENT["spindle-ccw"])


def offers(case: Case, finding: Finding) -> list[Offer]:
    made: list[Offer] = []
    seen: set[int] = set()
    for line in finding.lines or (finding.line,):
        try:
            offer = _wait(case, finding, line) if finding.rule == "no-spin-up-time" else _start(case, finding, line)
        except (ValueError, NoRoom) as problem:
            made.append(Refused(finding.rule, (line,), str(problem)))
            continue
        place = min(offer.touched)
        if place not in seen:  # one start serves every cut behind it
            seen.add(place)
            made.append(offer)
    return made


def _needs_card(case: Case) -> None:
    if case.setup.controller.name == "any":
        raise ValueError("the controller has to be declared: what it does with dwells and M codes is not known")
    if not case.straight_through:
        raise ValueError("the program has loops, calls or expressions, and a path is mended only where it runs once")


def dwell(case: Case, seconds: float) -> bytes:
    """G4 with its wait in the card's unit. Raises ValueError where the card has none."""
    card = case.setup.controller
    if card.state("G4") != "does":
        raise ValueError("the controller's card has no dwell (G4)")
    wait = math.ceil(seconds * 10 - 1e-6) / 10
    value = round(wait * 1000) if card.dwell_unit == "ms" else wait
    letter = "p" if case.style.lower else "P"
    return case.style.line(case.style.code("G", 4), f"{letter}{value:g}")


def _first_row(case: Case, line: int) -> int:
    rows = case.rows_of.get(line)
    if not rows:
        raise ValueError("no move stands on this line")
    return rows[0]


def _wait(case: Case, finding: Finding, line: int) -> Proposal:
    _needs_card(case)
    m, spin_up = case.motion, case.setup.spindle.spin_up
    if not spin_up:
        raise ValueError("how long the spindle needs is not declared (`spin_up`)")
    row = _first_row(case, line)
    starts = np.flatnonzero(np.isin(m.event_kind, ON) & (m.event_move <= row))
    if not len(starts):
        raise ValueError("the program does not start the spindle")
    start = int(m.event_line[int(starts[-1])])
    after = numbered(case.style, case.draft, start, (dwell(case, spin_up),), behind=True)
    because = f"It waits {spin_up:g} s behind M3 on line {start}, until the spindle turns at its speed."
    return Proposal(finding.rule, "dwell", (line,), (Edit(start, after=after),), because)


def start_blocks(case: Case, speed: float) -> list[bytes]:
    """Blocks that start the spindle and wait for it."""
    style = case.style
    blocks = [style.line(style.code("M", 3), style.word("S", speed))]
    if case.setup.spindle.spin_up:
        blocks.append(dwell(case, case.setup.spindle.spin_up))
    return blocks


def _start(case: Case, finding: Finding, line: int) -> Proposal:
    _needs_card(case)
    m = case.motion
    if case.setup.spindle.started != "program":
        raise ValueError('whether the program or a hand starts the spindle is not declared (`started = "program"`)')
    row = _first_row(case, line)
    speed = float(m.speed[row])
    if not speed > 0:
        raise ValueError("the program gives no speed (S)")
    if case.setup.controller.state("M3") != "does":
        raise ValueError("the controller's card has no M3")
    # the first line behind the last move of another tool, a stop or a change, at which the tip stands above the blank
    before = np.flatnonzero((m.tool[:row] != m.tool[row]) | (m.spindle[:row] != m.spindle[row]))
    first = int(before[-1]) + 1 if len(before) else 0
    place = 0
    for k in range(first, row + 1):
        own = int(m.line[k])
        # at the start the height is not known: the spindle is started there as every program does; and another S must
        # not come into force at moves before it
        if float(m.speed[k]) == speed and (k == 0 or lifted_at(case, own)):
            place = own
            break
    if not place:
        raise ValueError("the tool is in the blank when the spindle would have to start")
    before_blocks = numbered(case.style, case.draft, place, tuple(start_blocks(case, speed)))
    because = f"The spindle is started before line {place}, with the speed that the program gives (S{speed:g})."
    return Proposal(finding.rule, "spindle", (line,), (Edit(place, before=before_blocks),), because, starts=True)
