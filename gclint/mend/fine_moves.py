"""Fine moves that starve the feed are joined into longer ones within a stated tolerance."""

from __future__ import annotations

import numpy as np

from gclint.columns import Floats
from gclint.knowledge.numbers import model_number
from gclint.mend.case import Case, Offer, Proposal, Refused
from gclint.mend.draft import Edit
from gclint.mend.put import edited_line
from gclint.tables.finding import Finding
from gclint.tables.motion import CYCLE, INCH, INVERSE_TIME, LINE, PER_REV

LETTERS = frozenset("GXYZ")
MOST_JOINED = 64  # moves that become one
MOST_LINES = 500_000


def offers(case: Case, finding: Finding) -> list[Offer]:
    lines = tuple(finding.lines or (finding.line,))
    if not case.straight_through or case.style.checksums:
        return [Refused(finding.rule, lines, "lines with flow or with checksums cannot be taken out")]
    m = case.motion
    own = set(lines)
    # those lines, and, where not all are told, every line between the first and the last
    inside = (m.line >= finding.line) & (m.line <= finding.last_line) if len(own) >= 1000 else np.isin(m.line, lines)
    edits: list[Edit] = []
    tolerance = model_number("joined_moves")
    rows = np.flatnonzero(inside & (m.kind == LINE) & (m.flags & (CYCLE | INVERSE_TIME | PER_REV) == 0))[:MOST_LINES]
    ends = np.stack((m.x1, m.y1, m.z1), axis=1)
    starts = np.stack((m.x0, m.y0, m.z0), axis=1)
    k = 0
    while k < len(rows):
        first = last = int(rows[k])
        n = k + 1
        if _plain(case, first, joined=False):
            while n < len(rows) and int(rows[n]) == last + 1 and n - k < MOST_JOINED and _plain(case, int(rows[n])):
                row = int(rows[n])
                if (
                    m.feed[row] != m.feed[first]
                    or m.tool[row] != m.tool[first]
                    or not _near(ends[first:row], starts[first], ends[row], tolerance)
                ):
                    break
                last = row
                n += 1
        if last > first:
            # the first line keeps its feed and goes where the last one ended
            unit = 25.4 if int(m.flags[first]) & INCH else 1.0
            end = {axis: float(ends[last][i]) / unit for i, axis in enumerate("XYZ")
                   if abs(ends[last][i] - starts[first][i]) > 1e-6
                   or any(w[0] == axis for w in case.words(int(m.line[first])))}  # fmt: skip
            text = edited_line(case, int(m.line[first]), end)
            if text is not None:
                edits.append(Edit(int(m.line[first]), text=text, otherwise=True))
                edits += [Edit(int(m.line[row]), drop=True) for row in range(first + 1, last + 1)]
        k = max(n, k + 1)
    if not edits:
        return [Refused(finding.rule, lines, f"no moves lie within {tolerance:g} mm of one line")]
    count = sum(edit.drop for edit in edits)
    because = f"{count:,} fine moves are joined with their neighbours; none of their ends lies {tolerance:g} mm off."
    return [Proposal(finding.rule, "joined", lines, tuple(edits), because)]


def _plain(case: Case, row: int, joined: bool = True) -> bool:
    """Whether a line holds one straight move and nothing else (the first may also hold its F)."""
    m = case.motion
    line = int(m.line[row])
    words = case.words(line)
    text = case.text(line)
    letters = LETTERS if joined else LETTERS | {"F"}
    return (
        len(case.rows_of[line]) == 1
        and b"(" not in text
        and b";" not in text
        and all(w[0] in letters and (w[0] != "G" or w[1] == 1.0) for w in words)
        and case.in_frame([row])
    )


def _near(points: Floats, a: Floats, b: Floats, tolerance: float) -> bool:
    """Whether all points lie so near the line from a to b, one behind the other along it."""
    way = b - a
    length = float(np.linalg.norm(way))
    if length < 1e-9:
        return False
    along = (points - a) @ way / length
    off = np.linalg.norm((points - a) - along[:, None] * way / length, axis=1)
    order = np.diff(np.concatenate(([0.0], along, [length])))
    return bool((off <= tolerance).all() and (order >= -1e-9).all())
