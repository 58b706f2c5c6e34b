"""Acceptances: findings a person knows and has found fine, with the reason. Those that accept nothing are told.

An acceptance covers a finding of grade halt only where it says so. One with `places` or `found` covers no more places
and no worse figure than those: what is new is told again.
"""

from __future__ import annotations

import numpy as np
from msgspec import Struct
from msgspec.structs import replace

from gclint.columns import Column, distinct, one_of
from gclint.facts.context import Context
from gclint.judge.grouping import grades_of, groups_of, measured_at, place_lines, places_of, tool_number
from gclint.judge.hits import Hits
from gclint.knowledge.numbers import model_number
from gclint.problem import Problem, nearest
from gclint.tables.finding import Acceptance, Change, Finding, Found, Limits
from gclint.tables.setup import GRADES, Accept, Setup


class Outcome(Struct, frozen=True):
    """`covers`: places; `beyond`: what else the rule finds that the acceptance does not reach to, "" if nothing."""

    accept: Accept
    covers: int = 0
    beyond: str = ""


def check_names(setup: Setup, names: list[str]) -> None:
    """A rule that a declaration accepts must exist; in a program's comment it becomes a finding instead."""
    for accept in setup.accepts:
        if accept.line is None and accept.rule not in names:
            raise Problem(
                f'accept: there is no rule "{accept.rule}"{nearest(accept.rule, names)}', accept.where or None
            )


def apply(hits: list[Hits], context: Context) -> list[Outcome]:
    """Mark the rows that are accepted: in the program's own words first, then by the job, the narrow ones last."""
    known = {found.rule.name: found for found in hits}
    accepts = context.setup.accepts
    order = sorted(range(len(accepts)), key=lambda n: (accepts[n].line is None, accepts[n].narrow, n))
    alike: dict[tuple[str, ...], int] = {}  # those of one rule with the same words cover one finding together
    placed: dict[str, tuple[Column, Column]] = {}
    outcomes: dict[int, Outcome] = {}
    for n in order:
        accept = accepts[n]
        number = alike.setdefault((accept.rule, accept.because, accept.by, accept.grade), n)
        found = known.get(accept.rule)
        if found is None:
            outcomes[n] = Outcome(accept)
        elif accept.line is None:
            outcomes[n] = _cover(accept, number, _rows_of(accept, found, context), found, context)
        else:
            rows = _next_block(accept.line, found, placed)
            outcomes[n] = _cover(accept, number, rows, found, context)
    return [outcomes[n] for n in range(len(accepts))]


def cover_entries(entries: list[Finding], outcomes: list[Outcome]) -> tuple[list[Finding], list[Outcome]]:
    """The entries for what hangs on an assumption, and the outcomes, where a person has accepted such an entry."""
    made, after = list(entries), list(outcomes)
    for n, outcome in enumerate(outcomes):
        accept = outcome.accept
        for k, entry in enumerate(made):
            meant = _meant(accept, entry) and entry.accepted is None
            if meant and (accept.places is None or entry.count <= accept.places):
                made[k] = replace(entry, accepted=accept.because, accepted_in=accept.where)
                after[n] = Outcome(accept, outcome.covers + entry.count, outcome.beyond)
    return made, after


def _rows_of(accept: Accept, found: Hits, context: Context) -> Column:
    """Rows of the accepted tool that nothing has accepted yet."""
    rows = np.flatnonzero(found.accepted < 0)
    if accept.tool is None:
        return rows
    tools = found.view.column("tool")[rows]
    return rows[one_of(tools, [n for n in distinct(tools).tolist() if tool_number(n, context) == accept.tool])]


def _next_block(line: int, found: Hits, placed: dict[str, tuple[Column, Column]]) -> Column:
    """Rows on the first line at or behind `line` on which the rule finds something."""
    if found.rule.name not in placed:
        place = place_lines(found.rule, found.view)
        order = np.argsort(place, kind="stable")
        placed[found.rule.name] = place[order], order
    lines, order = placed[found.rule.name]
    first = int(np.searchsorted(lines, line))
    if first == len(lines):
        return order[:0]
    return order[first : int(np.searchsorted(lines, lines[first], side="right"))]


def _cover(accept: Accept, number: int, rows: Column, found: Hits, context: Context) -> Outcome:
    if not len(rows):
        return Outcome(accept)
    covered, beyond = _reach(accept, rows, found, context)
    places = places_of(found.rule, found.view, covered)
    if accept.places is not None and places > accept.places:
        return Outcome(accept, 0, f"it covers {_places(accept.places)} at most, and there are {places}")
    found.accepted[covered[found.accepted[covered] < 0]] = number
    return Outcome(accept, places, beyond)


def _reach(accept: Accept, rows: Column, found: Hits, context: Context) -> tuple[Column, str]:
    """(rows that are neither of a worse grade nor of a worse figure than is accepted, what the others are)."""
    if not accept.narrow:
        mild = grades_of(found.rule, found.view.choose(rows)) >= GRADES.index(accept.grade)
        return rows[mild], "" if mild.all() else _graver(accept)
    view, beyond = found.view.choose(rows), ""
    kept = [rows[:0]]
    for group in groups_of(found.rule, view, place_lines(found.rule, view), np.full(view.length, -1)):
        value, window = measured_at(found.rule, view, group.worst, context)
        if group.grade < GRADES.index(accept.grade):
            beyond = _graver(accept)
        elif accept.found is not None and (worse := _worse(accept.found, value, window)) is not None:
            beyond = worse or beyond
        else:
            kept.append(rows[group.rows])
    return np.concatenate(kept), beyond


def _graver(accept: Accept) -> str:
    if accept.grade == "change":
        how = f"gclint accept halt {accept.rule} because ..." if accept.line is not None else 'grade = "halt"'
        return f"what is found here is graded halt, which is accepted only by saying so ({how})"
    return f"what is found here has a worse grade than {accept.grade}"


def _worse(accepted: str, found: Found | None, window: Limits | None) -> str | None:
    """None where what was found is no worse than what is accepted; else why not, "" where it is another thing."""
    if found is None or found.value is None or isinstance(found.value, str):
        shown = "" if found is None or found.value is None else str(found.value)
        return None if " ".join(accepted.split()) == " ".join(shown.split()) else ""
    number, _, unit = accepted.strip().partition(" ")
    try:
        limit = float(number)
    except ValueError:
        return ""
    if unit.strip() != found.unit:
        return f"its figure is {accepted}, and what is found is counted in {found.unit or 'no unit'}"
    room = model_number("acceptance_leeway") * abs(limit)
    low = window.low if window else None
    high = window.high if window else None
    small_is_worse = low is not None and found.value < low and not (high is not None and found.value > high)
    worse = found.value < limit - room if small_is_worse else found.value > limit + room
    return f"it covers {accepted} at worst, and here are {found.value:.5g} {found.unit}".rstrip() if worse else None


def _places(number: int) -> str:
    return "1 place" if number == 1 else f"{number} places"


def told(outcomes: list[Outcome], findings: list[Finding], names: list[str]) -> list[Finding]:
    """The findings, those an acceptance does not reach to saying so, and one for each that covers nothing."""
    made = list(findings)
    extra = []
    for outcome in outcomes:
        noted = False
        for n, finding in enumerate(made):
            if outcome.beyond and finding.accepted is None and _meant(outcome.accept, finding):
                says = f"The acceptance in {outcome.accept.where} does not cover this: {outcome.beyond}."
                made[n] = replace(finding, happens=f"{finding.happens} {says}")
                noted = True
        if not outcome.covers and not noted:
            extra.append(_about(outcome, names))
    return made + extra


def _meant(accept: Accept, finding: Finding) -> bool:
    return accept.rule == finding.rule and accept.tool in (None, finding.tool) and (
        accept.line is None or finding.last_line >= accept.line
    )


def acceptances(outcomes: list[Outcome]) -> tuple[Acceptance, ...]:
    return tuple(
        Acceptance(
            each.accept.rule, each.accept.tool, each.accept.because, each.accept.by, each.accept.where,
            each.accept.grade, each.accept.places, each.accept.found, each.covers,
        )
        for each in outcomes
    )  # fmt: skip


def _about(outcome: Outcome, names: list[str]) -> Finding:
    accept = outcome.accept
    line = accept.line or 1
    scope = f" for tool {accept.tool}" if accept.tool is not None else ""
    if accept.rule in names:
        name = "acceptance-stale"
        why = outcome.beyond or "the rule finds nothing there that is not accepted already"
        happens = f'The acceptance of "{accept.rule}"{scope} ({accept.where}) accepts nothing: {why}.'
        change = "Take the acceptance out, so that it cannot hide a finding that comes later."
    else:
        name, near = "acceptance-unknown", nearest(accept.rule, tuple(names))
        happens = (
            f'The comment accepts "{accept.rule}", and there is no rule of that name{near}, so nothing is accepted.'
        )
        change = "Write the name of the rule as the finding shows it."
    return Finding(name, "consider", line, line, (line,), line, 1, 1, accept.tool, None, None, happens, Change(change))
