"""Findings that follow from another one, its root: told with it as one entry, with the gravest grade of them all.

A rule names what follows from it (`cause_of`) and how far that goes (`reaches`). Nothing is taken away: followers stay
among the findings and say which one they follow.
"""

from __future__ import annotations

from bisect import bisect_left
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
    index = _Index(findings, texts)
    for root in roots:
        top = _top(root, root_of)
        for n in index.take(findings[root], (root, top)):
            root_of[n] = root
    tops = {n: _top(n, root_of) for n in root_of}
    made, below = list(findings), dict[int, list[Finding]]()
    for n, top in sorted(tops.items()):
        made[n] = replace(made[n], follows=findings[top].id)
        below.setdefault(top, []).append(findings[n])
    for top, mine in sorted(below.items()):
        grade = min((findings[top].grade, *(one.grade for one in mine)), key=GRADES.index)
        others = [one for one in mine if one.rule != findings[top].rule]
        same = [one for one in mine if one.rule == findings[top].rule]
        happens = findings[top].happens
        happens += f" It brings with it: {_named(others)}." if others else ""
        happens += f" The same again on {_where(same)}." if same else ""
        made[top] = replace(findings[top], grade=grade, happens=happens)
    return tuple(made)


class _Index:
    """The findings that follow nothing yet, by what a root asks for: their rule or pack, and where they stand.

    A program may have thousands of roots and thousands of findings, and each of them is looked at a few times only.
    """

    def __init__(self, findings: Sequence[Finding], texts: dict[str, tuple[RuleText, str]]) -> None:
        self.findings, self.texts = findings, texts
        self.taken: set[int] = set()
        self.rows: dict[tuple[object, ...], list[int]] = {}
        self.behind: dict[str, list[tuple[int, int]]] = {}  # by worst line, ascending
        wanted = {name for rule in {one.rule for one in findings} for name in _all_causes(rule, texts)}
        for n, one in enumerate(findings):
            if one.accepted is not None:
                continue
            pack = texts[one.rule][1] if one.rule in texts else ""
            places = {min(one.lines, default=one.line), one.worst_line, *one.set_on.values()}
            for name in {one.rule, pack} & wanted:
                self.behind.setdefault(name, []).append((one.worst_line, n))
                self._add((name,), n)
                self._add((name, "tool", one.tool), n)
                for line in places:
                    self._add((name, "line", line), n)

        for rows in self.behind.values():
            rows.sort()

    def _add(self, key: tuple[object, ...], n: int) -> None:
        self.rows.setdefault(key, []).append(n)

    def take(self, root: Finding, but: tuple[int, int]) -> list[int]:
        """Those that follow from a root, `but` itself and its own; none of them is given again."""
        text, lines, made = self.texts[root.rule][0], set(root.lines), list[int]()

        def mine(free: Iterable[int]) -> tuple[list[int], list[int]]:
            """Of those that follow nothing yet: the ones that follow from this root, and the others."""
            apart: tuple[list[int], list[int]] = ([], [])
            for n in free:
                if n not in self.taken:
                    apart[n in but or not _follows(self.findings[n], root, lines, name, text)].append(n)
            self.taken.update(apart[0])
            made.extend(apart[0])
            return apart

        for name in _cause_of(root, self.texts):
            if text.reaches == "behind":  # nothing behind it has its worst place before it
                rows = self.behind.get(name, [])
                first = bisect_left(rows, (root.line,))
                left = set(mine(n for _, n in rows[first:])[1])
                rows[first:] = [row for row in rows[first:] if row[1] in left]
                continue
            keys: list[tuple[object, ...]] = [(name,)]
            if text.reaches == "tool":
                keys = [(name, "tool", root.tool)]
            elif text.reaches == "places":
                keys = [(name, "line", line) for line in root.lines]
            for key in keys:
                if key in self.rows:
                    self.rows[key] = mine(self.rows[key])[1]
        return made


def _all_causes(rule: str, texts: dict[str, tuple[RuleText, str]]) -> tuple[str, ...]:
    if rule not in texts:
        return ()
    text = texts[rule][0]
    return (*text.cause_of, *(name for names in text.cause_of_found.values() for name in names))


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


def _follows(one: Finding, root: Finding, lines: set[int], name: str, text: RuleText) -> bool:
    """Whether all of a finding, whose rule or pack a root names, lies where the root reaches; `lines`: the root's."""
    if one.rule == root.rule and name != one.rule:  # a pack with all of its rules, but for the root's own
        return False
    if text.reaches == "program":
        return True
    if text.reaches == "tool":
        return root.tool is not None and one.tool == root.tool
    if text.reaches == "behind":
        return min(one.lines, default=one.line) >= root.line or one.worst_line >= root.line >= one.line
    return lines.issuperset(one.lines) or one.worst_line in lines or not lines.isdisjoint(one.set_on.values())


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
