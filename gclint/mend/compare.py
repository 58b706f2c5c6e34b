"""Two versions of one program: what is no longer found, what is found now, whether they cut the same part."""

from __future__ import annotations

from dataclasses import dataclass
from difflib import SequenceMatcher
from typing import TYPE_CHECKING

import numpy as np

from gclint.check import run
from gclint.mend.case import Case
from gclint.mend.draft import Draft, draft_of
from gclint.mend.mend import proof_of
from gclint.mend.proof import RANK
from gclint.mend.result import Compared, File, Made
from gclint.mend.surface import Difference, compare_surfaces
from gclint.problem import Problem

if TYPE_CHECKING:
    from gclint.setup.declare import Options

MOST_MATCHED = 20_000  # lines between the first and the last difference that are matched one by one


@dataclass(frozen=True)
class Comparison:
    old: Case
    new: Case
    surface: Difference
    document: Compared

    @property
    def failing(self) -> bool:
        """Whether something at the fail grade is new, or another part would come out."""
        limit = RANK[self.new.run.fail_at]
        return not self.surface.same or any(RANK[each.grade] <= limit for each in self.document.proof.new)


def lines_that_differ(comparison: Comparison) -> Made | None:
    """All lines that differ, as one change; None where none does."""
    draft = comparison.new.draft
    rows = np.flatnonzero(draft.changed)
    if not len(rows) and not draft.dropped:
        return None
    lines = sorted({*draft.anchor[rows].tolist(), *draft.dropped})
    return Made("lines that differ", "text", tuple(lines), tuple((rows + 1).tolist()), "")


def compare(old: tuple[bytes, str, str | None], new: tuple[bytes, str, str | None], options: Options) -> Comparison:
    """Compare two programs, each as (bytes, name, path), by the same declarations. Raises Problem."""
    from gclint import __version__

    cases = []
    for data, name, path in (old, new):
        made = run(data, name, options, path)
        if made.failed or made.tables is None:
            raise Problem("gclint itself failed on this program, so it cannot be compared", name)
        cases.append(Case(draft_of(data), made))
    before, after = cases[0], Case(matched(cases[0].draft, cases[1].draft), cases[1].run)
    surface = compare_surfaces(before.motion, after.motion, before.setup)
    files = [File(each[1], case.run.checked.fingerprint) for each, case in ((old, before), (new, after))]
    return Comparison(
        before, after, surface, Compared(__version__, files[0], files[1], proof_of(before, after, surface))
    )


def matched(old: Draft, new: Draft) -> Draft:
    """The new text as a draft whose lines know which line of the old text they are."""
    a = [old.raw(n).rstrip(b"\r\n") for n in range(1, old.lines + 1)]
    b = [new.raw(n).rstrip(b"\r\n") for n in range(1, new.lines + 1)]
    first = 0
    while first < min(len(a), len(b)) and a[first] == b[first]:
        first += 1
    last = 0
    while last < min(len(a), len(b)) - first and a[-1 - last] == b[-1 - last]:
        last += 1
    origin = np.zeros(len(b), np.int32)
    origin[:first] = np.arange(1, first + 1)
    if last:
        origin[-last:] = np.arange(len(a) - last + 1, len(a) + 1)
    changed = origin == 0
    inner_a, inner_b = a[first : len(a) - last], b[first : len(b) - last]
    if max(len(inner_a), len(inner_b)) <= MOST_MATCHED:
        for tag, a0, a1, b0, b1 in SequenceMatcher(None, inner_a, inner_b, autojunk=False).get_opcodes():
            if tag == "equal":
                origin[first + b0 : first + b1] = np.arange(first + a0 + 1, first + a1 + 1)
                changed[first + b0 : first + b1] = False
            elif tag == "replace":  # lines in the place of others stand for them, one by one
                for k in range(min(a1 - a0, b1 - b0)):
                    origin[first + b0 + k] = first + a0 + k + 1
    anchor = origin.copy()
    near = 0
    for row in range(len(b)):
        near = int(anchor[row]) or near
        anchor[row] = near or 1
    dropped = np.setdiff1d(np.arange(1, len(a) + 1), origin)
    return Draft(new.data, new.start, origin, anchor, changed, np.zeros(len(b), np.int32), tuple(dropped.tolist()))
