"""A proposal (`--clip`): cuts into the table end at the underside of the blank, or as deep below it as the board under
it may be cut. The surface differs below that height alone."""

from __future__ import annotations

import numpy as np

from gclint.mend.case import Case, Offer, Proposal, Refused
from gclint.mend.put import put_words
from gclint.tables.finding import Finding
from gclint.tables.motion import CYCLE


def offers(case: Case, finding: Finding) -> list[Offer]:
    box, lines = case.setup.stock, tuple(finding.lines)
    if box is None or box.bottom is None or not box.declared:
        return [Refused(finding.rule, lines, "where the underside of the blank lies is not declared")]
    floor = box.bottom - (case.setup.hold.spoilboard or 0.0)
    m = case.motion
    low = np.flatnonzero(m.z1 < floor - 1e-6)
    if (m.flags[low] & CYCLE).any() or not case.in_frame(low.tolist()):
        return [Refused(finding.rule, lines, "the cut is made by cycles, in increments or in another frame")]
    sets = []
    for row in low.tolist():
        line = int(m.line[row])
        if any(letter == "Z" and value * case.unit(row) < floor for letter, value, _, _ in case.words(line)):
            # rounded up, so that it ends no deeper than the underside
            unit, digits = case.unit(row), 10**case.style.decimals
            sets.append((line, "Z", float(np.ceil(floor / unit * digits - 1e-6) / digits)))
    edits = put_words(case, dict.fromkeys(sets))
    if not edits:
        return [Refused(finding.rule, lines, "the words of Z cannot be edited")]
    because = f"Proposal: the deepest cuts end at Z {floor:g} mm, where the blank (and what may be cut below it) ends."
    return [Proposal(finding.rule, "clip", lines, edits, because, floor=floor)]
