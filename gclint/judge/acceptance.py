"""Acceptances: findings a person knows and has found fine, with the reason. Those that accept nothing are told."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from gclint.judge.chain import Chain
from gclint.judge.finding import Change, Finding
from gclint.judge.grouping import place_lines
from gclint.problem import Problem, nearest
from gclint.setup.types import Accept, Setup

if TYPE_CHECKING:
    from gclint.judge.judge import Hits


def check_names(setup: Setup, names: list[str]) -> None:
    """A rule that a declaration accepts must exist; in a program's comment it becomes a finding instead."""
    for accept in setup.accepts:
        if accept.line is None and accept.rule not in names:
            raise Problem(
                f'accept: there is no rule "{accept.rule}"{nearest(accept.rule, names)}', accept.where or None
            )


def apply(hits: list[Hits], chain: Chain, names: list[str]) -> list[Finding]:
    """Mark the rows that are accepted; the findings returned are about acceptances that cover nothing."""
    known = {found.rule.name: found for found in hits}
    return [
        _about(accept, names)
        for accept in chain.setup.accepts
        if accept.rule not in known or not _cover(accept, known[accept.rule])
    ]


def _cover(accept: Accept, found: Hits) -> bool:
    """Whether the acceptance covers any row; marks them."""
    rows = np.arange(found.view.length)
    if accept.tool is not None:
        rows = rows[found.view.column("tool")[rows] == accept.tool]
    if accept.line is not None and len(rows):
        place = place_lines(found.rule, found.view)
        later = place[rows][place[rows] >= accept.line]
        rows = rows[place[rows] == later.min()] if len(later) else rows[:0]
    if accept.because not in found.reasons:
        found.reasons.append(accept.because)
    fresh = rows[found.accepted[rows] < 0]
    found.accepted[fresh] = found.reasons.index(accept.because)
    return len(rows) > 0


def _about(accept: Accept, names: list[str]) -> Finding:
    line = accept.line or 1
    scope = f" for tool {accept.tool}" if accept.tool is not None else ""
    if accept.rule in names:
        name = "acceptance-stale"
        happens = (
            f'The acceptance of "{accept.rule}"{scope} ({accept.where}) accepts nothing: the rule finds nothing there.'
        )
        change = "Take the acceptance out, so that it cannot hide a finding that comes later."
    else:
        name, near = "acceptance-unknown", nearest(accept.rule, tuple(names))
        happens = (
            f'The comment accepts "{accept.rule}", and there is no rule of that name{near}, so nothing is accepted.'
        )
        change = "Write the name of the rule as the finding shows it."
    return Finding(name, "consider", line, line, (line,), line, 1, 1, accept.tool, None, None, happens, Change(change))
