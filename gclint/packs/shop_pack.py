"""House packs: what they add to the shipped rules, which grades they change, where they let a rule count, and why."""

from __future__ import annotations

import os
from collections.abc import Iterable
from fnmatch import fnmatchcase
from pathlib import PurePath
from typing import TYPE_CHECKING

import numpy as np
from msgspec.structs import replace

from gclint.columns import Column, one_of
from gclint.language.evaluate import FALSE, TRUE, UNKNOWN
from gclint.packs.pack import SCOPES, Cased, NarrowText, Pack, Regrade, Rule, Which
from gclint.tables.finding import Finding, HouseRule
from gclint.tables.setup import GRADES

if TYPE_CHECKING:
    from gclint.facts.registry import View

NEEDS_MATERIAL = "the material (`material` in job.toml, or --material)"
Narrows = tuple[tuple[NarrowText, str], ...]  # with the file each stands in


def shown(path: str) -> str:
    """A pack's file as people know it."""
    return os.path.normpath(path)


def rules_in_force(packs: Iterable[Pack]) -> list[Rule]:
    """Every rule with the grade that counts."""
    packs = tuple(packs)
    graded = {entry.rule: (entry, shown(pack.path)) for pack in packs for entry in pack.regrades}
    rules = []
    for rule in (rule for pack in packs for rule in pack.rules):
        if rule.name in graded:
            entry, by = graded[rule.name]
            own = Regrade(rule.grades, by, entry.because)
            rule = replace(rule, grades=(Cased(None, entry.grade),), regrade=own)
        rules.append(rule)
    return rules


def narrowed(packs: Iterable[Pack]) -> dict[str, Narrows]:
    """By rule, where it counts."""
    found: dict[str, Narrows] = {}
    for pack in packs:
        for entry in pack.narrows:
            found[entry.rule] = (*found.get(entry.rule, ()), (entry, shown(pack.path)))
    return found


def counts(entry: NarrowText, view: View) -> Column:
    """int8 [rows] FALSE, UNKNOWN, TRUE: whether the rule counts there by this entry."""
    setup = view.context.setup
    said = np.full(view.length, TRUE, dtype=np.int8)
    for wanted, inside in ((entry.tool, True), (entry.except_tool, False)):
        if wanted:
            named = _each(wanted)
            tools = [n for n, tool in setup.tools.items() if tool.number in named or (tool.name or None) in named]
            tools += [n for n in named if isinstance(n, int)]
            said = np.minimum(said, np.where(one_of(view.column("tool"), tools) == inside, TRUE, FALSE))
    for names, inside in ((entry.material, True), (entry.except_material, False)):
        if names:
            known = setup.material.name if setup.material else None
            one = UNKNOWN if known is None else TRUE if (known in _each(names)) == inside else FALSE
            said = np.minimum(said, one)
    for names, inside in ((entry.program, True), (entry.except_program, False)):
        if names:
            program = PurePath(view.context.program.name.replace("\\", "/")).name.lower()
            meant = any(fnmatchcase(program, str(name).lower()) for name in _each(names))
            said = np.minimum(said, TRUE if meant == inside else FALSE)
    return said.astype(np.int8)


def _each(wanted: Which) -> tuple[str | int, ...]:
    return wanted if isinstance(wanted, tuple) else (wanted,)


def scope_words(entry: NarrowText) -> str:
    """'only tool 1 and 2, except in mdf'."""
    parts = []
    before_each = ("only tool", "only in", "only in the program", "except tool", "except in", "except in the program")
    for key, before in zip(SCOPES, before_each):
        wanted = _each(getattr(entry, key)) if getattr(entry, key) else ()
        if wanted:
            words = [str(word) for word in wanted]
            parts.append(f"{before} {' and '.join([', '.join(words[:-1]), words[-1]] if words[1:] else words)}")
    return ", ".join(parts)


def told(packs: Iterable[Pack], findings: Iterable[Finding], left_out: dict[int, int]) -> tuple[HouseRule, ...]:
    """What every house pack does, and how much of it this program has met.

    `left_out`: by the id of an entry of `narrow`, how many places it left out.
    """
    packs, findings = tuple(packs), tuple(findings)
    places: dict[str, int] = {}
    for finding in findings:
        places[finding.rule] = places.get(finding.rule, 0) + 1
    written = {rule.name: rule.grades for pack in packs for rule in pack.rules}
    made = []
    for pack in packs:
        by = shown(pack.path)
        if pack.house:
            for rule in pack.rules:
                made.append(HouseRule(rule.name, "adds", "", by, rule.text.source, places.get(rule.name, 0)))
        for entry in pack.regrades:
            if entry.rule not in written:  # the pack is proved alone
                continue
            was = " or ".join(sorted({case.grade for case in written[entry.rule]}, key=GRADES.index))
            met = sum(finding.rule == entry.rule and finding.regraded is not None for finding in findings)
            made.append(HouseRule(entry.rule, "regrades", f"{entry.grade} instead of {was}", by, entry.because, met))
        for scope in pack.narrows:
            met = left_out.get(id(scope), 0)
            made.append(HouseRule(scope.rule, "narrows", scope_words(scope), by, scope.because, met))
    return tuple(made)

