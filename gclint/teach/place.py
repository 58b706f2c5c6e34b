"""Where in the tables a finding has its worst place, and the place of a good example that is nearest to being bad."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from gclint.facts.context import Context
from gclint.facts.registry import View
from gclint.judge.grouping import line_of
from gclint.language.dimensions import UNITS
from gclint.language.evaluate import TRUE, numbers, truth
from gclint.language.expression import TEXT
from gclint.packs.pack import Rule
from gclint.packs.wording import in_program_units
from gclint.tables.finding import Finding
from gclint.tables.motion import INCH


@dataclass(frozen=True, slots=True, eq=False)
class Place:
    """A row of the table a rule looks at, in one program."""

    context: Context
    rule: Rule
    table: str
    row: int
    move: int  # row of Motion; -1 where it belongs to no move
    view: View  # the one row


def worst_place(rule: Rule, finding: Finding, context: Context) -> Place | None:
    """The row whose value the finding tells; None where it cannot be told again (gclint's own findings)."""
    if rule.when is None:
        return None
    view = View.of(rule.text.looks_at, context)
    if view.length == 0:
        return None
    rows = np.flatnonzero(truth(rule.when.code, view) == TRUE)
    if not len(rows):
        return None
    here = rows[np.maximum(line_of(rule, view.choose(rows)), 1) == finding.worst_line]
    rows = here if len(here) else rows
    if rule.found is not None and rule.found.kind != TEXT and finding.found is not None:
        told = finding.found.value
        if isinstance(told, (int, float)):
            value = numbers(rule.found.code, view.choose(rows)) / UNITS[rule.found.unit][0]
            moves = view.choose(rows).column("move")
            inch = bool(moves[0] >= 0 and len(context.motion) and context.motion.flags[moves[0]] & INCH)
            one, _ = in_program_units(1.0, rule.found.unit, inch)
            away = np.abs(value * (one or 1.0) - told)
            away = np.where(np.isfinite(away), away, np.inf)
            rows = rows[away <= away.min() + 1e-6 * abs(told)]
    return _place(rule, view, int(rows[len(rows) // 2]))  # of many alike the one in the middle of the cut


def nearest_place(rule: Rule, context: Context) -> Place | None:
    """Of a program in which the rule finds nothing, the row that comes nearest to it; of pieces the usual one."""
    if rule.when is None:
        return None
    view = View.of(rule.text.looks_at, context)
    if view.length == 0:
        return None
    row = view.length // 2
    measured = rule.worst or (rule.found if rule.found is not None and rule.found.kind != TEXT else None)
    if measured is not None:
        value = numbers(measured.code, view)
        low = rule.low is not None and rule.worst is None
        value = np.where(np.isfinite(value), -value if low else value, -np.inf)
        known = np.flatnonzero(np.isfinite(value))
        if len(known):
            order = known[np.argsort(value[known], kind="stable")]
            row = int(order[len(order) // 2 if view.table.weight is not None else -1])
    return _place(rule, view, row)


def _place(rule: Rule, view: View, row: int) -> Place:
    one = view.choose(np.array([row]))
    return Place(view.context, rule, view.table.name, row, int(one.column("move")[0]), one)
