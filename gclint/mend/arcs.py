"""Arcs that the controller refuses, written as lines (an end that does not close) or as quarters by I and J."""

from __future__ import annotations

import math
from itertools import pairwise

from gclint.cards.codes import HABITS
from gclint.mend.case import Case, Offer, Proposal, Refused
from gclint.mend.draft import Edit
from gclint.mend.lenient import meant
from gclint.mend.path import Leg, Pen, Step, step_of
from gclint.mend.style import STAR, NoRoom, numbered
from gclint.tables.finding import Finding

# habits of writing arcs that a controller may refuse, as a finding names them
ARCS = frozenset(HABITS[name] for name in ("arc-turns", "arc-radius", "one-centre-word", "full-circles"))
QUARTER = 90.0
WORDS = frozenset("GXYZIJRFP")
MOST_BLOCKS = 2000


def offers(case: Case, finding: Finding) -> list[Offer]:
    named = finding.found.value if finding.found is not None else None
    if finding.rule != "arc-does-not-close" and named not in ARCS:
        return []
    made: list[Offer] = []
    intended = meant(case)
    for line in finding.lines or (finding.line,):
        try:
            made.append(_arc(case, intended, finding, line))
        except (ValueError, NoRoom) as problem:
            made.append(Refused(finding.rule, (line,), str(problem)))
    return made


def _arc(case: Case, intended: Case, finding: Finding, line: int) -> Proposal:
    m, rows = intended.motion, intended.rows_of.get(line, [])
    if not case.straight_through or len(rows) != 1:
        raise ValueError("the line does not make one move")
    row = rows[0]
    step = step_of(m, row)
    if step is None or not step.sweep or not intended.in_frame([row]):
        raise ValueError("what the arc is meant to be is not known: its end lies too far from its circle")
    text, words = case.text(line), case.words(line)
    if any(w[0] not in WORDS for w in words) or STAR.search(text) or not case.plain(line):
        raise ValueError("the line says more than an arc")
    lines_only = finding.rule == "arc-does-not-close"
    pen = Pen(case, intended.unit(row), arcs=not lines_only)
    parts = _chords(step) if lines_only else _quarters(step)
    feed = next((value for letter, value, _, _ in words if letter == "F"), None)
    z0, z1 = float(m.z0[row]), float(m.z1[row])
    blocks, _ = pen.legs([Leg(parts, z0, z1)], feed, -1)
    if len(blocks) > MOST_BLOCKS:
        raise ValueError("it would become too many blocks")
    first = text[: words[0][2]] + blocks[0] + text[words[-1][3] :]
    edit = Edit(line, text=first, after=numbered(case.style, case.draft, line, tuple(blocks[1:]), behind=True))
    what = "short lines" if lines_only else "smaller arcs by I and J"
    because = f"The arc is written as {what}, within 0.005 mm of its way, since the controller refuses it as it stands."
    return Proposal(finding.rule, "arc", (line,), (edit,), because, lenient=True)


def _quarters(step: Step) -> tuple[Step, ...]:
    count = max(2, math.ceil(abs(step.sweep) / QUARTER - 1e-9))
    points = [step.at(k / count) for k in range(count)] + [(step.x1, step.y1)]
    return tuple(Step(*a, *b, step.cx, step.cy, step.sweep / count) for a, b in pairwise(points))


def _chords(step: Step) -> tuple[Step, ...]:
    """Lines from start to end whose distance to the centre goes over from the one radius to the other."""
    chords = step.chords()
    r0, r1 = step.radius, math.hypot(step.x1 - step.cx, step.y1 - step.cy)
    count = len(chords)
    points = []
    for k in range(count + 1):
        x, y = step.at(k / count)
        scale = 1 + (r1 / r0 - 1) * k / count
        points.append((step.cx + (x - step.cx) * scale, step.cy + (y - step.cy) * scale))
    points[0], points[-1] = (step.x0, step.y0), (step.x1, step.y1)
    return tuple(Step(*a, *b) for a, b in pairwise(points))
