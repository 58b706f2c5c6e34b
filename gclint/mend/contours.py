"""Cutter compensation that the controller refuses, worked out to the path of the tool's centre."""

from __future__ import annotations

import numpy as np

from gclint.mend.case import Case, Offer, Proposal, Refused
from gclint.mend.draft import Edit
from gclint.mend.lenient import meant, plain_motion
from gclint.mend.path import Leg, Pen, step_of
from gclint.mend.style import STAR, NoRoom, numbered
from gclint.tables.finding import Finding
from gclint.tables.motion import COMPENSATED, RAPID

WORDS = frozenset("GXYZIJRFD")
CODES = frozenset((0.0, 1.0, 2.0, 3.0, 40.0, 41.0, 42.0, 17.0, 90.0, 94.0))
MOST_BLOCKS = 50_000


def offers(case: Case, finding: Finding) -> list[Offer]:
    lines = tuple(finding.lines or (finding.line,))
    if not any(letter == "G" and value in (41, 42, 41.1, 42.1) for n in lines for letter, value, _, _ in case.words(n)):
        return []
    try:
        return [_contours(case, finding, lines)]
    except (ValueError, NoRoom) as problem:
        return [Refused(finding.rule, lines, str(problem))]


def _contours(case: Case, finding: Finding, lines: tuple[int, ...]) -> Proposal:
    if not case.straight_through:
        raise ValueError("the program has loops, calls or expressions, and a path is mended only where it runs once")
    as_written, intended = plain_motion(case), meant(case)
    m = intended.motion
    if (m.flags & COMPENSATED).any():
        raise ValueError("the path beside the contour cannot be worked out: what D stands for has to be declared")
    inside = set(as_written.line[as_written.flags & COMPENSATED != 0].tolist())
    says = {line for line in range(1, case.draft.lines + 1)
            if any(w[0] == "G" and w[1] in (40, 41, 42) for w in case.words(line))}  # fmt: skip
    # the move of G40 leads away from the contour
    touched = sorted(inside | {line for line in says if line >= min(inside, default=0)} | set(lines))
    edits = []
    count = 0
    for line in touched:
        edit = _line(case, intended, line)
        count += len(edit.after)
        edits.append(edit)
    if not inside or count > MOST_BLOCKS:
        raise ValueError("no contour is compensated, or it would become too many blocks")
    because = "The path of the tool's centre is written out, since the controller takes no compensation (G41, G42)."
    return Proposal(finding.rule, "compensation", lines, tuple(edits), because, lenient=True)


def _line(case: Case, intended: Case, line: int) -> Edit:
    m, rows = intended.motion, intended.rows_of.get(line, [])
    text, words = case.text(line), case.words(line)
    if not words or STAR.search(text) or not case.plain(line):
        raise ValueError("a line of the contour cannot be edited")
    if any(w[0] not in WORDS or (w[0] == "G" and w[1] not in CODES) for w in words):
        raise ValueError("a line of the contour says more than a move")
    lead, tail = text[: words[0][2]], text[words[-1][3] :]
    style = case.style
    kept = [style.code("G", w[1]) for w in words if w[0] == "G" and w[1] in (17.0, 90.0, 94.0)]
    feed = next((w[1] for w in words if w[0] == "F"), None)
    blocks: list[bytes] = []
    for row in rows:
        step = step_of(m, row)
        if step is None or np.isnan(m.z0[row]):
            raise ValueError("a move of the contour has no known place in X and Y")
        if int(m.kind[row]) == RAPID:
            ends = zip("XYZ", (step.x1, step.y1, float(m.z1[row])))
            unit = intended.unit(row)
            blocks.append(style.line(style.code("G", 0), *(style.word(axis, end / unit) for axis, end in ends)))
            continue
        pen = Pen(case, intended.unit(row), arcs=True)
        made, _ = pen.legs([Leg((step,), float(m.z0[row]), float(m.z1[row]))], feed, -1)
        feed = None
        blocks += made
    if feed is not None:
        blocks.append(style.line(style.word("F", feed)))
    if kept:
        blocks.insert(0, style.line(*kept))
    if not blocks:
        return Edit(line, text=(lead + style.comment("compensation worked out") + tail).rstrip())
    after = numbered(style, case.draft, line, tuple(blocks[1:]), behind=True)
    return Edit(line, text=lead + blocks[0] + tail, after=after)
