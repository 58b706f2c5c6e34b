"""Findings that hang on an assumption: taken out of their rules and told as one entry that asks for the declaration."""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np

from gclint.advice.words_at_fault import column_of
from gclint.columns import Bools, Column, distinct
from gclint.facts.context import Context
from gclint.judge.grouping import MOST_LINES, line_of, places_of, tool_number
from gclint.judge.hits import Hits
from gclint.packs.pack import Rule
from gclint.tables.assumption import Assumption
from gclint.tables.finding import Change, Finding, Found

MOST_NAMED = 8  # rules, and lines of a rule, that are named


def take_out(
    hits: list[Hits], assumptions: Iterable[Assumption], context: Context
) -> list[tuple[Assumption, list[Hits]]]:
    """Takes the rows that hang on an assumption from the hits, and gives them by assumption: a row hangs on the first
    that concerns it. What is accepted stays: a person has decided it."""
    taken = []
    for assumption in assumptions:
        mine = []
        for found in hits:
            hangs = _hanging(assumption, found)
            if hangs.any():
                mine.append(found.keep(hangs))
                kept = found.keep(~hangs)
                found.view, found.accepted = kept.view, kept.accepted
        if mine or assumption.always:
            taken.append((assumption, mine))
    hits[:] = [found for found in hits if found.view.length]
    return taken


def _hanging(assumption: Assumption, found: Hits) -> Bools:
    """[rows] of the hits."""
    rows = assumption.rows.get(found.rule.text.looks_at)
    if rows is None or found.rule.text.subject in assumption.spares:
        return np.zeros(found.view.length, dtype=bool)
    return np.asarray(found.view.pick(rows) & (found.accepted < 0))


def entry_of(assumption: Assumption, hits: list[Hits], rules: dict[str, Rule], context: Context) -> Finding:
    """One finding, never graver than `consider`, for all that hangs on the assumption."""
    text = rules[assumption.entry].text
    happens = f"{text.happens}"
    lines, tools, places = np.ones(1, np.int64) * max(assumption.line, 1), np.zeros(0, np.int64), 1
    if hits:
        lines = distinct(np.concatenate([line_of(each.rule, each.view) for each in hits]))
        lines = lines[lines > 0] if (lines > 0).any() else np.ones(1, np.int64)
        tools = distinct(np.concatenate([each.view.column("tool") for each in hits]))
        places = sum(places_of(each.rule, each.view, np.arange(each.view.length)) for each in hits)
        named = [_told(each) for each in hits[:MOST_NAMED]]
        if len(hits) > MOST_NAMED:
            named.append(f"{len(hits) - MOST_NAMED} more")
        happens += f" What hangs on it: {'; '.join(named)}."
    first = assumption.line or int(lines[0])
    other = " or ".join(assumption.alternatives)
    happens += f" Taken as given: {assumption.value}; as likely: {other}."
    return Finding(
        rule=assumption.entry, grade="consider", line=first, last_line=max(int(lines[-1]), first),
        lines=tuple(lines[:MOST_LINES].tolist()), worst_line=first, column=column_of(context.program, first, ()),
        count=places, tool=tool_number(int(tools[0]), context) if len(tools) == 1 else None,
        found=Found(assumption.what, assumption.value, ""), window=None, happens=happens,
        change=Change(f"{text.change}"), rests_on=(assumption.what,),
    )  # fmt: skip


def _told(found: Hits) -> str:
    lines = distinct(line_of(found.rule, found.view))
    lines = lines[lines > 0]
    return f"{found.rule.name} ({_lines(lines)})" if len(lines) else found.rule.name


def _lines(lines: Column) -> str:
    if len(lines) == 1:
        return f"line {lines[0]}"
    shown = ", ".join(str(line) for line in lines[:MOST_NAMED].tolist())
    return f"lines {shown} and {len(lines) - MOST_NAMED} more" if len(lines) > MOST_NAMED else f"lines {shown}"
