"""Passes that are too deep become more laps of the same way, each in the direction of the original.

The blocks of the pass are written again, with every Z held at the depth of the lap; the original blocks are the last
lap. A closed way goes on from lap to lap; an open one lifts, travels back to its start and goes down again.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from msgspec.structs import replace

from gclint.mend.case import Case, Offer, Proposal, Refused
from gclint.mend.draft import Edit
from gclint.mend.lifted import top_of_blank
from gclint.mend.put import edited_line
from gclint.mend.style import STAR, NoRoom, numbered, without_number
from gclint.motion.along import points_at
from gclint.tables.finding import Finding
from gclint.tables.motion import ARC_CCW, ARC_CW, CYCLE, INVERSE_TIME, PER_REV, RAPID

BY_DEPTH = ("too-deep", "full-width-too-deep")
MOST_LAPS = 20
MOST_NEW_LINES = 20_000
CODES = frozenset((0.0, 1.0, 2.0, 3.0, 17.0, 18.0, 19.0, 90.0, 94.0, 40.0, 49.0, 80.0))
LETTERS = frozenset("GXYZIJKRF")
DIP = 8  # chords of an arc that dips
LEVEL = 1e-6


@dataclass(frozen=True, slots=True)
class _Pass:
    """Moves at feed from `first` to `last` (rows), their lines, and the depth of material that they meet at most."""

    first: int
    last: int
    lines: tuple[int, ...]
    ap: float
    lowest: float


def offers(case: Case, finding: Finding) -> list[Offer]:
    made: list[Offer] = []
    done: set[int] = set()
    for line in finding.lines or (finding.line,):
        for row in case.rows_of.get(line, [])[:1]:
            try:
                own = _pass_at(case, row)
                if own.first in done:
                    continue
                done.add(own.first)
                made.append(_offer(case, finding, own))
            except (ValueError, NoRoom) as problem:
                made.append(Refused(finding.rule, (line,), str(problem)))
    return made


def _offer(case: Case, finding: Finding, own: _Pass) -> Proposal:
    box = case.tables.engagement.box
    if box is None or not box.declared:
        raise ValueError("the blank has to be declared (`[stock]` in job.toml, or --stock)")
    if finding.rule in BY_DEPTH and finding.window is not None and finding.window.high:
        limit = finding.window.high * (25.4 if finding.window.unit in ("in", "inch") else 1.0)
        least = math.ceil(own.ap / limit - 1e-6)
    else:
        least = 2
    counts = [count for count in (least, least + 1, least + 2, 2 * least) if 2 <= count <= MOST_LAPS]
    if not counts:
        raise ValueError(f"it would take more than {MOST_LAPS} laps; another tool is the answer")
    choices = [each for each in (_laps(case, finding, own, count) for count in dict.fromkeys(counts)) if each]
    if not choices:
        raise ValueError("its blocks cannot be written again with another Z")
    return replace(choices[0], others=tuple(choices[1:]))


def _pass_at(case: Case, row: int) -> _Pass:
    """The pass in which a move lies: from the way down into it to the next lift, or to where it goes deeper."""
    m = case.motion
    if not case.straight_through:
        raise ValueError("the program has loops, calls or expressions, and a path is mended only where it runs once")
    if int(m.kind[row]) == RAPID:
        raise ValueError("a rapid cuts here")
    tool = int(m.tool[row])
    first = last = row
    while first > 0 and int(m.kind[first - 1]) != RAPID and int(m.tool[first - 1]) == tool:
        first -= 1
    while last + 1 < len(m) and int(m.kind[last + 1]) != RAPID and int(m.tool[last + 1]) == tool:
        last += 1
    falls = [k for k in range(first, last + 1) if float(m.z0[k]) - float(m.z1[k]) > LEVEL]
    before = [k for k in falls if k <= row]
    if before:  # the last way down before the move, with the moves down that lead to it
        start = before[-1]
        while start - 1 in falls:
            start -= 1
        floor = float(np.min(m.z1[start : row + 1]))
        deeper = [k for k in falls if k > row and float(m.z1[k]) < floor - LEVEL]
        end = deeper[0] - 1 if deeper else last
        if end == last or _closed(case, start, end):
            first, last = start, end
    rows = range(first, last + 1)
    if any(int(m.flags[k]) & (CYCLE | INVERSE_TIME | PER_REV) for k in rows) or not case.in_frame(rows):
        raise ValueError("the pass is made by cycles, in increments, or in another frame than the tables")
    lines = tuple(int(m.line[k]) for k in rows)
    if list(lines) != sorted(set(lines)):
        raise ValueError("lines of the pass make several moves")
    pieces = case.tables.engagement.pieces
    mine = (pieces.move >= first) & (pieces.move <= last)
    if not mine.any():
        raise ValueError("the pass meets no material")
    return _Pass(first, last, lines, float(pieces.ap[mine].max()), float(np.min(m.z1[first : last + 1])))


def _closed(case: Case, first: int, last: int) -> bool:
    m = case.motion
    return math.hypot(float(m.x0[first] - m.x1[last]), float(m.y0[first] - m.y1[last])) < 1e-3


def _laps(case: Case, finding: Finding, own: _Pass, count: int) -> Proposal | None:
    m, style = case.motion, case.style
    unit = case.unit(own.first)
    if len(own.lines) * (count - 1) > MOST_NEW_LINES:
        return None
    closed = _closed(case, own.first, own.last) and float(m.z1[own.last]) <= own.lowest + LEVEL
    head = own.lines[0]
    blocks: list[bytes] = []
    # what the first block inherits, it must say itself when other blocks run before it
    says = {letter for letter, *_ in case.words(head)}
    mode = case.modes.code_at("motion", head)
    feed = case.modes.value_at("F", head)
    if mode < 0 or not math.isfinite(feed):
        return None
    opening = style.code("G", mode / 10) if not _says_motion(case, head) else ""
    for lap in range(1, count):
        depth = style.rounded((own.lowest + own.ap * (count - lap) / count) / unit) * unit
        lost = False  # whether chords stand where an arc has set the mode
        for n, line in enumerate(own.lines):
            dip = _dip(case, own.first + n, line, depth, unit)
            if dip is not None:
                if n == 0:
                    dip[0] = _opened(case, dip[0], "", None if "F" in says else feed)
                blocks += dip
                lost = True
                continue
            text = _held(case, line, depth, unit)
            if text is None:
                return None
            if lost and text and not _says_motion(case, line):
                text = _opened(case, text, style.code("G", case.modes.code_at("motion", line) / 10), None)
            lost = lost and not text
            if n == 0:
                text = _opened(case, text, opening, None if "F" in says else feed)
            if text:
                blocks.append(text)
        before, behind = (case.modes.code_at("plane", at, 170) for at in (head, own.lines[-1]))
        if before != behind:  # the next lap starts in the plane of the first
            blocks.append(style.line(style.code("G", before / 10)))
        if not closed:
            blocks += _back_to_start(case, own, unit)
    edits: list[Edit]
    if closed:  # the last lap starts where the one before it ended: its first block says all that it needs
        text = case.text(head)
        if opening or "F" not in says:
            if STAR.search(text):
                return None
            first_word = case.words(head)[0][2]
            lead = text[:first_word]
            text = lead + _opened(case, text[first_word:], opening, None if "F" in says else feed)
        edits = [Edit(head, before=numbered(style, case.draft, head, tuple(blocks)), text=text, otherwise=True)]
    else:
        if "F" not in says:
            blocks.append(style.line(style.word("F", feed)))
        own_text = None
        if opening:  # the way back has changed the mode that the first block took over
            if STAR.search(case.text(head)):
                return None
            at = case.words(head)[0][2]
            own_text = case.text(head)[:at] + _opened(case, case.text(head)[at:], opening, None)
        edits = [Edit(head, before=numbered(style, case.draft, head, tuple(blocks)), text=own_text)]
    because = (
        f"{count} laps of {own.ap / count / unit:.4g} {'in' if unit > 1 else 'mm'} instead of one of "
        f"{own.ap / unit:.4g}, all in the same direction" + ("." if closed else ", with a lift and a way back between.")
    )
    return Proposal(finding.rule, "laps", own.lines, tuple(edits), because)


def _says_motion(case: Case, line: int) -> bool:
    return any(letter == "G" and value in (0, 1, 2, 3) for letter, value, _, _ in case.words(line))


def _opened(case: Case, text: bytes, opening: str, feed: float | None) -> bytes:
    gap = case.style.gap.encode()
    made = (opening.encode() + gap if opening else b"") + text
    return made + gap + case.style.word("F", feed).encode() if feed is not None else made


def _dip(case: Case, row: int, line: int, depth: float, unit: float) -> list[bytes] | None:
    """An arc in a plane with Z that goes below a depth, as chords that stay above it, its other words kept; None for
    all other moves."""
    m, style = case.motion, case.style
    if int(m.kind[row]) not in (ARC_CW, ARC_CCW) or int(m.plane[row]) == 17:
        return None
    x, y, z = points_at(m, np.full(DIP + 1, row), np.linspace(0, 1, DIP + 1))
    if float(z.min()) >= depth - LEVEL:
        return None
    words = case.words(line)
    if any(letter not in LETTERS or (letter == "G" and value not in CODES) for letter, value, _, _ in words):
        return None
    kept = [style.code("G", value) for letter, value, _, _ in words if letter == "G" and value not in (0, 1, 2, 3)]
    feed = [style.word("F", value) for letter, value, _, _ in words if letter == "F"]
    made: list[bytes] = []
    for k in range(1, DIP + 1):
        end = (style.word("X", x[k] / unit), style.word("Y", y[k] / unit), style.word("Z", max(z[k], depth) / unit))
        made.append(style.line(*(kept if k == 1 else ()), style.code("G", 1), *end, *(feed if k == 1 else ())))
    return made


def _held(case: Case, line: int, depth: float, unit: float) -> bytes | None:
    """The block of a line with its Z no deeper than a depth, without its number and comments."""
    words = case.words(line)
    if any(letter not in LETTERS or (letter == "G" and value not in CODES) for letter, value, _, _ in words):
        return None
    text = case.text(line)
    if STAR.search(text) or text.lstrip()[:1] == b"/":
        return None
    z = next((value for letter, value, _, _ in words if letter == "Z"), None)
    if z is not None and z * unit < depth - LEVEL:
        edited = edited_line(case, line, {"Z": depth / unit})
        if edited is None:
            return None
        text = edited
    body = without_number(text).strip()
    for opening in (b"(", b";"):
        cut = body.find(opening)
        if cut >= 0:
            if opening == b"(" and body[body.rfind(b")") + 1 :].strip():
                return None
            body = body[:cut].rstrip()
    return body


def _back_to_start(case: Case, own: _Pass, unit: float) -> list[bytes]:
    """Lift as the program does behind the pass, travel to the start, go down to where the feed began."""
    m, style = case.motion, case.style
    behind = own.last + 1
    high = math.nan
    if behind < len(m) and int(m.kind[behind]) == RAPID:
        high = float(m.z1[behind])
    safe = case.safe_z()
    if not (math.isfinite(high) and high >= top_of_blank(case) + 1.0):
        high = safe if safe is not None else math.nan
    keep_out = max([-math.inf, *(each.high[2] for each in case.setup.keep_out)])
    if not math.isfinite(high) or high < top_of_blank(case) + 0.5 or (keep_out > high and safe != high):
        raise ValueError("the program never lifts high enough for a way back to the start of the pass")
    x, y, z = (float(each[own.first]) for each in (m.x0, m.y0, m.z0))
    made = [
        style.line(style.code("G", 0), style.word("Z", high / unit)),
        style.line(style.word("X", x / unit), style.word("Y", y / unit)),
    ]
    if z < high - LEVEL:
        made.append(style.line(style.word("Z", z / unit)))
    return made
