"""Checks the rules of one pack, key by key, and compiles their expressions; every fault is a Problem at its place."""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Any, TypeVar

from gclint.language.dimensions import UNITS
from gclint.language.expression import (
    NUMBER,
    TEXT,
    TRUTH,
    Expression,
    Name,
    Wrong,
    compile_expression,
    extent,
    literals,
    names_in,
    quantity,
    template,
)
from gclint.packs.advice_names import ADVICE_ON
from gclint.packs.pack import (
    CORE,
    MAY_BE_ASSUMED,
    SCOPES,
    Cased,
    Example,
    FoundText,
    Limit,
    NarrowText,
    PackText,
    RegradeText,
    Rule,
    RuleText,
)
from gclint.packs.placed import placed
from gclint.problem import Problem, nearest

MOST_RULES = 300  # of one pack
MOST_STEPS_OF_PACK = 10_000  # columns worked out for all its conditions
_NAME = re.compile(r"[a-z]+(-[a-z]+)*")
_LIMIT_NAME = re.compile(r"[a-z][a-z0-9_]*")
_WORD_AT_FAULT = re.compile(r"[A-Z](\d+(\.\d+)?)?")

T = TypeVar("T")
Key = tuple[str | int, ...]


def compile_rules(written: PackText, source: str, path: str) -> tuple[Rule, ...]:
    """The checked rules of a pack whose TOML text is `source`. Raises Problem."""
    if len(written.rule) > MOST_RULES:
        raise Problem(f"a pack may hold {MOST_RULES} rules; this one holds {len(written.rule)}", path)
    rules = tuple(_Compile(source, path, written.pack, number, rule).rule() for number, rule in enumerate(written.rule))
    seen: dict[str, int] = {}
    for number, rule in enumerate(rules):
        if rule.name in seen:
            raise placed(source, path, ("rule", number, "name"), f'the rule "{rule.name}" stands in this pack twice')
        seen[rule.name] = number
    _check_house(written, source, path)
    if sum(extent(rule.when.code)[0] for rule in rules if rule.when) > MOST_STEPS_OF_PACK:
        raise Problem(f"the conditions of this pack come to more than {MOST_STEPS_OF_PACK} steps; split it", path)
    return rules


def compile_rule_file(written: tuple[RuleText, ...], source: str, path: str, pack: str) -> Rule:
    """The one checked rule of a file that bears its name; `pack` is the group it belongs to. Raises Problem."""
    if len(written) != 1:
        raise Problem(f"a file of this folder holds one rule; this one holds {len(written)}", path)
    rule = _Compile(source, path, pack, 0, written[0]).rule()
    if path.rpartition("/")[2] != f"{rule.name}.toml":
        raise placed(source, path, ("rule", 0, "name"), f'the file of this rule is named "{rule.name}.toml"')
    return rule


def _check_house(written: PackText, source: str, path: str) -> None:
    """Every change to another pack's rule has its reason and, where it narrows, something to narrow to."""
    for kind in ("regrade", "narrow"):
        entries: tuple[RegradeText | NarrowText, ...] = getattr(written, kind)
        for number, entry in enumerate(entries):
            if not entry.because.strip():
                says = "a reason is needed here; every report will show it"
                raise placed(source, path, (kind, number, "because"), says)
            if isinstance(entry, NarrowText) and not any(getattr(entry, key) for key in SCOPES):
                says = f"expected where the rule counts: {', '.join(SCOPES[:-1])} or {SCOPES[-1]}"
                raise placed(source, path, (kind, number), says, on_key=True)
    if not (written.rule or written.regrade or written.narrow):
        raise Problem("this pack says nothing: expected [[rule]], [[regrade]] or [[narrow]]", path)


class _Compile:
    """One rule. `names` is what its expressions may use, `used` what they do use."""

    def __init__(self, source: str, path: str, pack: str, number: int, text: RuleText) -> None:
        self.source, self.path, self.pack, self.number, self.text = source, path, pack, number, text
        self.names: dict[str, Name] = {}
        self.used: set[str] = set()

    def wrong(self, key: Key, says: str, at: int = 0, on_key: bool = False) -> Problem:
        return placed(self.source, self.path, ("rule", self.number, *key), says, at, on_key)

    def rule(self) -> Rule:
        from gclint.facts.registry import names_of

        text = self.text
        self.plain_keys()
        if text.looks_at == CORE:
            return Rule(text, self.grades(), self.texts("happens"), self.texts("change"))
        if not text.when.strip():
            raise self.wrong((), 'the key "when" is missing', on_key=True)
        facts = names_of(text.looks_at)
        self.names = dict(facts)
        for name, limit in text.limits.items():
            self.names[name] = self.limit(name, limit)
        for name, meaning in text.define.items():
            self.names[name] = self.definition(name, meaning)
        made = Rule(
            text,
            self.grades(),
            self.texts("happens"),
            self.texts("change"),
            self.condition(("when",), text.when),
            self.expression(("line",), text.line, NUMBER),
            self.found(text.found) if text.found else None,
            self.window("low"),
            self.window("high"),
            self.expression(("worst",), text.worst, NUMBER),
            self.expression(("worst_after",), text.worst_after, NUMBER),
            self.condition(("instead_when",), text.instead_when),
        )
        if not text.line and "line" not in facts:
            raise self.wrong(("looks_at",), f'the rows of "{text.looks_at}" have no line of their own; give "line"')
        self.nothing_idle()
        return made

    def plain_keys(self) -> None:
        """What can be wrong with the keys that hold no expression."""
        from gclint.facts.registry import tables

        text, known = self.text, tables()
        if not _NAME.fullmatch(text.name):
            raise self.wrong(("name",), "a rule is named by plain words in small letters, joined with hyphens")
        if text.looks_at not in known and not (text.looks_at == CORE and self.pack == CORE):
            says = f'there is no table "{text.looks_at}"{nearest(text.looks_at, tuple(known))}'
            raise self.wrong(("looks_at",), says)
        for key in ("title", "why", "source", "owner"):
            if not getattr(text, key).strip():
                raise self.wrong((key,), "a few words are needed here")
        if text.advice and text.advice not in ADVICE_ON:
            raise self.wrong(("advice",), f'there is no advice "{text.advice}"{nearest(text.advice, tuple(ADVICE_ON))}')
        if text.advice and text.looks_at != ADVICE_ON[text.advice]:
            says = f'"{text.advice}" is worked out for rows of "{ADVICE_ON[text.advice]}"'
            raise self.wrong(("advice",), says)
        for place, letter in enumerate(text.points_at):
            if not _WORD_AT_FAULT.fullmatch(letter):
                says = 'expected a letter of a word, such as "Z", or a whole word, such as "G4"'
                raise self.wrong(("points_at", place), says)
        if text.cause == "sort" and text.looks_at != "faults":
            raise self.wrong(("cause",), '"sort" is of rows of "faults"')
        if text.cause == "axis" and text.looks_at != "moves":
            raise self.wrong(("cause",), '"axis" is of rows of "moves"')
        if text.cause == "found" and text.found is None:
            raise self.wrong(("cause",), '"found" needs the key found: what is found is the cause')
        if text.worst_after and known[text.looks_at].weight is None:
            raise self.wrong(("worst_after",), "only pieces have a cut length that could be passed over")
        for kind, examples in (("must_find", text.must_find), ("must_leave", text.must_leave)):
            for place, example in enumerate(examples):
                self.example((kind, place), example)

    def example(self, key: Key, example: Example) -> None:
        """An example's line must be one of its program."""
        lines = example.program.count("\n") + 1
        if example.line is not None and not 1 <= example.line <= lines:
            raise self.wrong((*key, "line"), f"the program of this example has {lines} lines")

    def limit(self, name: str, limit: Limit) -> Name:
        if name in self.names:
            raise self.wrong(("limits", name), f'"{name}" is a fact already; give the limit another name', on_key=True)
        self.named(("limits", name), name)
        if not limit.source.strip():
            raise self.wrong(("limits", name, "source"), "a few words are needed here: where the number comes from")
        if not isinstance(limit.value, str):
            return Name(NUMBER, "", (), float(limit.value))
        try:
            value, unit = quantity(limit.value)
        except Wrong as wrong:
            raise self.wrong(("limits", name, "value"), wrong.says, wrong.at) from None
        return Name(NUMBER, unit, (), value)

    def named(self, key: Key, name: str) -> None:
        from gclint.language.expression import FUNCTIONS, RESERVED

        if not _LIMIT_NAME.fullmatch(name) or name in RESERVED or name in FUNCTIONS:
            says = f'"{name}" cannot be a name: expected small letters, digits and "_", and no word of the language'
            raise self.wrong(key, says, on_key=True)

    def definition(self, name: str, meaning: str) -> Name:
        if name in self.names:
            says = f'"{name}" is a fact or a limit already; give it another name'
            raise self.wrong(("define", name), says, on_key=True)
        self.named(("define", name), name)
        made = self.condition(("define", name), meaning, None)
        if made is None:
            raise self.wrong(("define", name), "an expression is needed here")
        return Name(made.kind, made.unit, code=made.code)

    def found(self, found: FoundText) -> Expression | None:
        if found.unit not in UNITS:
            says = f'there is no unit "{found.unit}"{nearest(found.unit, tuple(UNITS)[1:])}'
            raise self.wrong(("found", "unit"), says)
        compiled = self.expression(("found", "value"), found.value)
        if compiled is None:
            raise self.wrong(("found", "value"), "an expression is needed here")
        if compiled.kind == TEXT:
            return compiled
        return self.expression(("found", "value"), found.value, NUMBER, found.unit)

    def window(self, side: str) -> Expression | None:

        from gclint.tables.cutting import ToolWindows

        window, found = self.text.window, self.text.found
        if window is None:
            return None
        if found is None:
            raise self.wrong(("window",), "a window needs something found to hold against it", on_key=True)
        kind, _, name = window.of.partition(".")
        if kind == "limits" and name not in self.text.limits:
            known = tuple(self.text.limits)
            tail = nearest(name, known) if known else "; this rule has no [rule.limits]"
            raise self.wrong(("window", "of"), f'there is no limit "{name}"{tail}')
        of_card = tuple(name for name in ToolWindows.__struct_fields__ if name != "chip")
        if kind == "card" and name not in of_card:
            says = f'a card has no window "{name}"{nearest(name, of_card)}'
            raise self.wrong(("window", "of"), says)
        if kind not in ("limits", "card", "chip", "declared") or (kind == "declared" and name not in MAY_BE_ASSUMED):
            says = 'expected "limits.NAME", "card.NAME", "chip", "declared", "declared.stock" or "declared.spoilboard"'
            raise self.wrong(("window", "of"), says)
        if not (window.low.strip() or window.high.strip()):
            raise self.wrong(("window",), 'expected "low", "high" or both', on_key=True)
        if kind == "limits":
            self.used.add(name)
        return self.expression(("window", side), getattr(window, side), NUMBER, found.unit)

    def condition(self, key: Key, text: str, want: str | None = TRUTH) -> Expression | None:
        """An expression by which the rule judges: each of its numbers must be a limit."""
        made = self.expression(key, text, want)
        for said, at in literals(text) if made is not None else ():
            says = f"the number {said} needs a standing and a source: put it under [rule.limits] and use its name here"
            raise self.wrong(key, says, at)
        return made

    def expression(self, key: Key, text: str, want: str | None = None, unit: str | None = None) -> Expression | None:
        if not text.strip():
            return None
        made = self.guarded(key, lambda: compile_expression(text, self.names, want, unit))
        self.used |= names_in(text)
        return made

    def guarded(self, key: Key, make: Callable[[], T]) -> T:
        try:
            return make()
        except Wrong as wrong:
            raise self.wrong(key, wrong.says + _elsewhere(wrong.missing), wrong.at) from None

    def grades(self) -> tuple[Cased, ...]:
        given = self.text.grade
        if isinstance(given, str):
            return (Cased(None, given),)
        self.cases(("grade",), [case.when for case in given])
        return tuple(Cased(self.condition(("grade", n, "when"), case.when), case.grade) for n, case in enumerate(given))

    def texts(self, key: str) -> tuple[Cased, ...]:
        given: Any = getattr(self.text, key)
        if isinstance(given, str):
            if key == "happens" and not given.strip():
                raise self.wrong((key,), "a few words are needed here")
            return (Cased(None, "", self.guarded((key,), lambda: template(given, self.part))),)
        self.cases((key,), [case.when for case in given])
        made = []
        for n, case in enumerate(given):
            text = self.guarded((key, n, "text"), lambda case=case: template(case.text, self.part))  # type: ignore[misc]
            made.append(Cased(self.expression((key, n, "when"), case.when, TRUTH), "", text))
        return tuple(made)

    def cases(self, key: Key, conditions: list[str]) -> None:
        """All cases but the last have a condition."""
        if not conditions:
            raise self.wrong(key, "expected at least one case")
        for place, condition in enumerate(conditions[:-1]):
            if not condition.strip():
                raise self.wrong((*key, place), 'every case but the last needs a "when"')
        if conditions[-1].strip():
            raise self.wrong((*key, len(conditions) - 1), 'the last case must stand without a "when"')

    def part(self, text: str, unit: str | None) -> Expression:
        made = compile_expression(text, self.names, None, unit)
        self.used |= names_in(text)
        return made

    def nothing_idle(self) -> None:
        """A limit or a definition that nothing uses is a slip of the pen."""
        for kind, names in (("limits", self.text.limits), ("define", self.text.define)):
            for name in names:
                if name not in self.used:
                    raise self.wrong((kind, name), f'nothing in this rule uses "{name}"', on_key=True)


def _elsewhere(fact: str) -> str:
    """Which tables have a fact that this one lacks; "" where none has."""
    from gclint.facts.registry import tables

    having = [name for name, table in tables().items() if fact in table.facts]
    if not having:
        return ""
    return f'; the table{"s" if len(having) > 1 else ""} {", ".join(having)} {"have" if len(having) > 1 else "has"} it'
