"""A lift before the first travel, before travel that is too low or through the blank, and before the tool leaves."""

from __future__ import annotations

import math

from gclint.mend.case import Case, Offer, Proposal, Refused
from gclint.mend.draft import Edit
from gclint.mend.lifted import top_of_blank
from gclint.mend.style import STAR, NoRoom, numbered, without_number
from gclint.tables.finding import Finding
from gclint.tables.motion import CYCLE, RAPID

OVER = 1.0  # mm over every keep-out
LEVEL = 1e-6


def offers(case: Case, finding: Finding) -> list[Offer]:
    made: list[Offer] = []
    for line in finding.lines or (finding.line,):
        try:
            made.append(
                _first(case, finding, line) if finding.rule == "first-move-low" else _travel(case, finding, line)
            )
        except (ValueError, NoRoom) as problem:
            made.append(Refused(finding.rule, (line,), str(problem)))
    return made


def _safe(case: Case, line: int) -> float:
    """mm: the height to which the program itself lifts, over the blank and all keep-outs."""
    safe = case.safe_z()
    high = max([top_of_blank(case), *(each.high[2] for each in case.setup.keep_out)])
    if safe is None or safe < high + OVER:
        raise ValueError("the program itself never lifts high enough, so a height above everything is not known")
    if case.modes.code_at("distance", line, 900) != 900:
        raise ValueError("the program counts in increments here (G91)")
    if not case.straight_through:
        raise ValueError("the program has loops, calls or expressions, and a path is mended only where it runs once")
    return safe


def _first(case: Case, finding: Finding, line: int) -> Proposal:
    safe = _safe(case, line)
    m = case.motion
    row = case.rows_of.get(line, [-1])[0]
    if row < 0 or int(m.kind[row]) != RAPID:
        raise ValueError("the line makes no rapid")
    if math.isfinite(float(m.z1[row])) and any(letter == "Z" for letter, *_ in case.words(line)):
        raise ValueError("the rapid itself ends in the blank: how it should go down is for its maker to say")
    style = case.style
    block = style.line(style.code("G", 0), style.word("Z", safe / case.unit(row)))
    before = numbered(style, case.draft, line, (block,))
    because = f"It lifts first, to the height at which the program travels (Z {safe / case.unit(row):g})."
    return Proposal(finding.rule, "lift", (line,), (Edit(line, before=before),), because)


def _travel(case: Case, finding: Finding, line: int) -> Proposal:
    m, style, text = case.motion, case.style, case.text(line)
    rows = case.rows_of.get(line, [])
    if len(rows) != 1 or int(m.kind[rows[0]]) != RAPID or int(m.flags[rows[0]]) & CYCLE:
        raise ValueError("the line does not make one rapid")
    row = rows[0]
    leaving = not (m.kind[row + 1 :] != RAPID).any()
    absolute = case.modes.code_at("distance", line, 900) == 900
    safe = _safe(case, line) if absolute or not leaving else _safe(case, max(1, line - 1))
    z0, z1 = float(m.z0[row]), float(m.z1[row])
    if not math.isfinite(z0) or safe <= z0 + LEVEL:
        raise ValueError("where the tool stands when it travels is not known, or is high already")
    level = abs(z1 - z0) <= LEVEL
    if not level and not leaving and (not math.isfinite(z1) or z1 > safe or not absolute):
        raise ValueError("the rapid goes up or down while it travels, to a height that is not known")
    if STAR.search(text):
        raise ValueError("the line has a checksum")
    unit = case.unit(row)
    up = style.line(style.code("G", 0), style.word("Z", safe / unit))
    own = without_number(text).lstrip()
    if not level and not leaving:  # it goes over first, and down behind that
        words = [w for w in case.words(line) if w[0] in "XY"]
        if any(w[0] not in "GXYZ" or (w[0] == "G" and w[1] != 0) for w in case.words(line)) or not words:
            raise ValueError("the rapid says more than where it goes")
        own = style.line(*(style.word(w[0], w[1]) for w in words), style.word("Z", safe / unit))
    after = [own]
    behind = _straight_up_behind(case, row)
    down = (level or not leaving) and not (leaving and (behind or row + 1 == len(m)))
    if down and (level or z1 < safe - LEVEL):
        after.append(style.line(style.word("Z", (z0 if level else z1) / unit)))
    number = text[: len(text) - len(without_number(text))]
    edits = [Edit(line, text=number + up, after=numbered(style, case.draft, line, tuple(after), behind=True))]
    if behind and not down:  # the lift that follows starts where the tool stands already
        edits.append(Edit(behind, otherwise=True))
    because = f"It lifts to Z {safe / unit:g} before it travels" + (
        ", and goes down again where it arrives." if down else "."
    )
    return Proposal(finding.rule, "lift", (line,), tuple(edits), because)


def _straight_up_behind(case: Case, row: int) -> int:
    """The line of the next move where it is a lift and nothing else; 0 where it is not."""
    m = case.motion
    k = row + 1
    if k >= len(m) or int(m.kind[k]) != RAPID or not float(m.z1[k]) > float(m.z0[k]):
        return 0
    level = abs(float(m.x1[k] - m.x0[k])) < LEVEL and abs(float(m.y1[k] - m.y0[k])) < LEVEL
    return int(m.line[k]) if level else 0
