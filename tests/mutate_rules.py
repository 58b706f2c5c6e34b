"""Breaks the condition of every shipped rule and sees whether the rule's own examples notice.

    python tests/mutate_rules.py [RULE ...]     (on as many processes as there are processors)

A mutant is the condition negated, or one of its bounds (what a comparison holds a value against) or of the rule's
limits put to 0 or to infinity. It is killed when some example of the rule no longer comes out as written (what must
be found is not found, or stands on another line or with another grade, or what must be left alone is found), or when
a sample program no longer has the findings that tests/samples expects of it. Prints a table: rule, mutants, killed,
survivors; exit code 1 where one survives.
"""

from __future__ import annotations

import math
import os
import sys
from collections.abc import Iterator
from concurrent.futures import ProcessPoolExecutor
from pathlib import Path
from typing import Any

import numpy as np
from msgspec.structs import replace

if __name__ == "__main__":  # run as a script: the tree it stands in comes first
    sys.path.insert(0, str(Path(__file__).parent.parent))

from gclint.check import trace
from gclint.facts.context import Context
from gclint.facts.registry import View
from gclint.judge.grouping import findings_of, grades_of
from gclint.judge.judge import judge
from gclint.language.evaluate import TRUE, truth
from gclint.language.expression import Expression, Name
from gclint.packs.compile_rule import _Compile
from gclint.packs.pack import CORE, Example, Limit, Pack, Rule
from gclint.packs.shipped_packs import shipped_packs, sources
from gclint.rule_proof import tables_of
from gclint.run import Tables
from gclint.setup.declare import Options
from gclint.shipped import folder
from tests.samples import make_samples

ORDER = ("<", "<=", ">", ">=")
ENDS = (("0", 0.0), ("infinity", math.inf))
MOST_PROCESSES = 8


class Proof:
    """A rule's examples, each traced once, with the facts that its conditions have asked for."""

    def __init__(self, rule: Rule) -> None:
        self.rule = rule
        self.cases: list[tuple[Example, View, bool]] = []
        for must, examples in ((True, rule.text.must_find), (False, rule.text.must_leave)):
            for example in examples:
                t = tables_of(example)
                context = Context(t.program, t.motion, t.timing, t.engagement, t.cutting, t.setup)
                self.cases.append((example, View.of(rule.text.looks_at, context), must))
        # alone, some examples do not come out as with the whole pack (`instead_of`): those prove nothing here
        self.cases = [case for case in self.cases if self._holds(rule, *case)]

    def kills(self, mutant: Rule) -> bool:
        with np.errstate(all="ignore"):
            return not all(self._holds(mutant, *case) for case in self.cases)

    @staticmethod
    def _holds(rule: Rule, example: Example, view: View, must: bool) -> bool:
        assert rule.when is not None
        rows = np.flatnonzero(truth(rule.when.code, view) == TRUE) if view.length else np.empty(0, dtype=int)
        if not must or not len(rows):
            return must == bool(len(rows))
        chosen = view.choose(rows)
        found = findings_of(rule, chosen, np.full(len(rows), -1), view.context)
        return (
            (example.line is None or any(f.line == example.line for f in found))
            and (example.grade is None or any(f.grade == example.grade for f in found))
            and (example.findings is None or len(found) == example.findings)
        )


class Samples:
    """The programs of the Lowtide workshop, each traced once; tests/samples names all that must be found in them."""

    def __init__(self) -> None:
        self.tables: list[Tables] = []
        for path in sorted(make_samples.SAMPLES / name for name in make_samples.PROGRAMS):
            self.tables.append(trace(path.read_bytes(), path.name, Options(), str(path)))
        self.contexts = [Context(t.program, t.motion, t.timing, t.engagement, t.cutting, t.setup) for t in self.tables]
        self.views: dict[tuple[str, int], View] = {}

    def kills(self, rule: Rule, mutant: Rule) -> bool:
        """First what the rule alone says of its rows; only where that differs, all rules together."""
        for number, t in enumerate(self.tables):
            key = (rule.text.looks_at, number)
            view = self.views.get(key) or self.views.setdefault(key, View.of(key[0], self.contexts[number]))
            with np.errstate(all="ignore"):
                if view.length and self._said(rule, view) != self._said(mutant, view):
                    whole = [self._judged(t, rule, each) for each in (rule, mutant)]
                    if whole[0] != whole[1]:
                        return True
        return False

    @staticmethod
    def _said(rule: Rule, view: View) -> Any:
        assert rule.when is not None
        found = truth(rule.when.code, view) == TRUE
        return found.tobytes(), grades_of(rule, view.choose(np.flatnonzero(found))).tobytes()

    @staticmethod
    def _judged(t: Tables, rule: Rule, instead: Rule) -> list[tuple[str, int]]:
        """What the test of the samples looks at, with one rule put in the place of another."""
        packs = [
            replace(pack, rules=tuple(instead if each.name == rule.name else each for each in pack.rules))
            for pack in shipped_packs()
        ]
        said = judge(t.program, t.motion, t.timing, t.engagement, t.cutting, t.setup, packs)
        return sorted((f.rule, f.line) for f in said.findings if f.grade in ("halt", "change"))


def mutants(source: str, pack: Pack, number: int) -> Iterator[tuple[str, Rule]]:
    """(what was broken, the rule with it broken) of rule `number` of a pack."""
    rule = pack.rules[number]
    assert rule.when is not None
    code, kind = rule.when.code, rule.when.kind
    yield "negated", replace(rule, when=Expression(["not", code], kind))
    for place, bound in enumerate(_bounds(code)):
        for said, end in ENDS:
            if bound[2] != ["number", end]:
                changed = _with(code, bound, [bound[0], bound[1], ["number", end]])
                yield f"bound {place + 1} ({_words(bound)}) = {said}", replace(rule, when=Expression(changed, kind))
    for name in rule.text.limits:
        for said, end in ENDS:
            made = _Broken(source, pack.file_of(rule.name), pack.name, 0, rule.text, name, end).rule()
            if any(_decides(made, part) != _decides(rule, part) for part in ("when", "grades")):
                yield f"limit {name} = {said}", made


def _decides(rule: Rule, part: str) -> Any:
    if part == "when":
        return rule.when.code if rule.when else None
    return [case.when.code if case.when else None for case in rule.grades]


class _Broken(_Compile):
    """Compiles a rule with one of its limits put to another value."""

    def __init__(self, source: str, path: str, pack: str, number: int, text: Any, broken: str, to: float) -> None:
        super().__init__(source, path, pack, number, text)
        self.broken, self.to = broken, to

    def limit(self, name: str, limit: Limit) -> Name:
        made = super().limit(name, limit)
        return replace(made, value=self.to) if name == self.broken else made


def _bounds(code: list[Any]) -> list[list[Any]]:
    """Every comparison by order within, each once (a definition used twice is one)."""
    found: dict[str, list[Any]] = {}

    def look(part: list[Any]) -> None:
        if part[0] in ORDER:
            found.setdefault(repr(part), part)
        for inner in part[1:]:
            if isinstance(inner, list) and inner and isinstance(inner[0], str):
                look(inner)

    look(code)
    return list(found.values())


def _with(code: list[Any], old: list[Any], new: list[Any]) -> list[Any]:
    if code == old:
        return new
    return [_with(part, old, new) if isinstance(part, list) else part for part in code]


def _words(code: list[Any]) -> str:
    """A comparison in short words."""
    if code[0] == "fact":
        return str(code[1])
    if code[0] == "number":
        return f"{code[1]:.6g}"
    if code[0] in ORDER or code[0] in ("+", "-", "*", "/"):
        return f"{_words(code[1])} {code[0]} {_words(code[2])}"
    parts = [_words(part) for part in code[1:] if isinstance(part, list) and part and isinstance(part[0], str)]
    return f"{code[0]}({', '.join(parts)})"


def survivors(rule: Rule, pack: Pack, source: str, samples: Samples) -> tuple[int, list[str]]:
    """How many mutants a rule has, and which of them no example and no sample program notices."""
    proof, made = Proof(rule), list(mutants(source, pack, pack.rules.index(rule)))
    return len(made), [said for said, mutant in made if not proof.kills(mutant) and not samples.kills(rule, mutant)]


def _share(names: list[str]) -> dict[str, tuple[int, list[str]]]:
    samples, texts = Samples(), sources(folder())
    return {
        rule.name: survivors(rule, pack, texts[pack.file_of(rule.name).removeprefix("rules/")], samples)
        for pack in shipped_packs()
        for rule in pack.rules
        if rule.name in names
    }


def of_all(chosen: list[str]) -> dict[str, tuple[int, list[str]]]:
    """The survivors of each rule that is chosen, of every rule where none is; one share of the rules a process."""
    every = [rule.name for pack in shipped_packs() for rule in pack.rules if rule.text.looks_at != CORE]
    if unknown := set(chosen) - set(every):
        raise SystemExit(f"no shipped rule has a condition under the name {', '.join(sorted(unknown))}")
    names = [name for name in every if not chosen or name in chosen]
    shares = min(os.cpu_count() or 1, len(names), MOST_PROCESSES)
    found: dict[str, tuple[int, list[str]]] = {}
    with ProcessPoolExecutor(shares) as pool:
        for part in pool.map(_share, [names[n::shares] for n in range(shares)]):
            found.update(part)
    return {name: found[name] for name in names}


def table(found: dict[str, tuple[int, list[str]]]) -> str:
    wide = max(map(len, found), default=4)
    lines = [f"{'rule':{wide}}  mutants  killed  survivors"]
    for name, (count, alive) in found.items():
        lines.append(f"{name:{wide}}  {count:7}  {count - len(alive):6}  {'; '.join(alive)}".rstrip())
    total, alive = sum(count for count, _ in found.values()), sum(len(each) for _, each in found.values())
    return "\n".join([*lines, f"{'all':{wide}}  {total:7}  {total - alive:6}  {alive or ''}".rstrip()])


if __name__ == "__main__":
    found = of_all(sys.argv[1:])
    print(table(found))
    sys.exit(int(any(alive for _, alive in found.values())))
