"""Findings that follow from another one, its root: told with it as one entry, with the gravest grade of them all.

A rule names what follows from it (`cause_of`) and how far that goes (`reaches`). Nothing is taken away: followers stay
among the findings and say which one they follow.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from msgspec.structs import replace

from gclint.packs.pack import REACHES, Pack, RuleText
from gclint.tables.finding import Finding
from gclint.tables.setup import GRADES

MOST_NAMED = 6  # followers that a root names
LINES_NAMED = 3  # of each


def with_ids(findings: Iterable[Finding]) -> tuple[Finding, ...]:
    """Each with a name of its own: rule and line, and a number where that is not enough."""
    seen: dict[str, int] = {}
    made = []
    for finding in findings:
        name = f"{finding.rule}@{finding.line}"
        seen[name] = seen.get(name, 0) + 1
        made.append(replace(finding, id=name if seen[name] == 1 else f"{name}.{seen[name]}"))
    return tuple(made)


def follow(findings: Sequence[Finding], packs: Iterable[Pack]) -> tuple[Finding, ...]:
    """The same findings, in the same order: followers name their root, and each root has the gravest grade of all of
    them and names them. What is accepted neither follows nor has followers."""
    texts = {rule.name: (rule.text, pack.name) for pack in packs for rule in pack.rules}
    roots = [n for n, one in enumerate(findings) if one.accepted is None and _cause_of(one, texts)]
    if not roots:
        return tuple(findings)
    roots.sort(key=lambda n: (REACHES.index(texts[findings[n].rule][0].reaches), n))
    root_of: dict[int, int] = {}
    for root in roots:
        for n, one in enumerate(findings):
            if n == root or n in root_of or one.accepted is not None:
                continue
            if _top(root, root_of) != n and _follows(one, findings[root], texts):
                root_of[n] = root
    tops = {n: _top(n, root_of) for n in root_of}
    made = list(findings)
    for n, top in tops.items():
        made[n] = replace(made[n], follows=findings[top].id)
    for top in sorted(set(tops.values())):
        mine = [findings[n] for n in sorted(tops) if tops[n] == top]
        grade = min((findings[top].grade, *(one.grade for one in mine)), key=GRADES.index)
        others = [one for one in mine if one.rule != findings[top].rule]
        same = [one for one in mine if one.rule == findings[top].rule]
        happens = findings[top].happens
        happens += f" It brings with it: {_named(others)}." if others else ""
        happens += f" The same again on {_where(same)}." if same else ""
        made[top] = replace(findings[top], grade=grade, happens=happens)
    return tuple(made)


def _top(n: int, root_of: dict[int, int]) -> int:
    while n in root_of:
        n = root_of[n]
    return n


def _cause_of(one: Finding, texts: dict[str, tuple[RuleText, str]]) -> tuple[str, ...]:
    """Rules and packs whose findings may follow from this one."""
    if one.rule not in texts:
        return ()
    text, found = texts[one.rule][0], str(one.found.value) if one.found else ""
    further = [names for begin, names in text.cause_of_found.items() if found.startswith(begin)]
    return (*text.cause_of, *(name for names in further for name in names))


def _follows(one: Finding, root: Finding, texts: dict[str, tuple[RuleText, str]]) -> bool:
    """Whether all of a finding lies where the root reaches."""
    text = texts[root.rule][0]
    names = {one.rule} if one.rule == root.rule else {one.rule, texts[one.rule][1] if one.rule in texts else ""}
    if names.isdisjoint(_cause_of(root, texts)):
        return False
    if text.reaches == "program":
        return True
    if text.reaches == "tool":
        return root.tool is not None and one.tool == root.tool
    if text.reaches == "behind":
        return min(one.lines, default=one.line) >= root.line or one.worst_line >= root.line >= one.line
    mine = set(root.lines)
    return mine.issuperset(one.lines) or one.worst_line in mine or not mine.isdisjoint(one.set_on.values())


def _named(findings: Sequence[Finding]) -> str:
    by_rule: dict[str, list[Finding]] = {}
    for one in findings:
        by_rule.setdefault(one.rule, []).append(one)
    named = [f"{rule} ({_where(of)})" for rule, of in list(by_rule.items())[:MOST_NAMED]]
    if len(by_rule) > MOST_NAMED:
        named.append(f"{len(by_rule) - MOST_NAMED} more")
    return "; ".join(named)


def _where(findings: Sequence[Finding]) -> str:
    lines = sorted({line for one in findings for line in one.lines})
    shown = ", ".join(str(line) for line in lines[:LINES_NAMED])
    rest = len(lines) - LINES_NAMED
    return f"line{'' if len(lines) == 1 else 's'} {shown}{f' and {rest:,} more' if rest > 0 else ''}"
