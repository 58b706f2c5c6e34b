"""Rule packs: how they are written in TOML, and the checked form that judging runs.

A pack that ships is compiled when the package is built (`compile_packs`); house packs and a source checkout are
compiled
here, in memory. Whatever is wrong in a pack is a Problem with file, line, column and what was expected.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any, Literal, TypeVar

import msgspec
from msgspec import Struct

from gclint.judge.language import NUMBER, TEXT, TRUTH, Expression, Name, Wrong, compile_expression, quantity, template
from gclint.judge.units import UNITS
from gclint.problem import Problem, nearest

Grade = Literal["halt", "change", "consider"]
Standing = Literal["measured", "published", "practice", "memory"]
# What is at fault, and so where a finding stands and what makes one finding of many places: the move, the F word, all
# F words of the tool together, the S word, the Z word that set the depth, each line for itself, the program as a whole.
Cause = Literal["move", "feed", "tool", "speed", "depth", "line", "found", "once"]
MAY_BE_ASSUMED = ("", "stock", "spoilboard")  # behind "declared." in a window's `of`
CORE = "core"  # looks_at of the rules that gclint's own machinery finds


class Part(Struct, frozen=True, forbid_unknown_fields=True):
    """Every table of a pack: unknown keys are refused."""


class Limit(Part, frozen=True):
    """A number a condition uses, by name, with where it comes from."""

    value: str | float
    standing: Standing
    source: str


class GradeCase(Part, frozen=True):
    grade: Grade
    when: str = ""


class TextCase(Part, frozen=True):
    text: str
    when: str = ""


class FoundText(Part, frozen=True):
    name: str
    value: str
    unit: str = ""


class WindowText(Part, frozen=True):
    """`of` says where standing and source come from: "limits.NAME", "card.NAME", "chip", or "declared".

    "declared.stock" and "declared.spoilboard" are told as assumed where nobody declared them.
    """

    of: str
    low: str = ""
    high: str = ""


class Example(Part, frozen=True):
    """A small program with its declarations; in must_find, `line` is where the finding stands."""

    says: str
    program: str
    line: int | None = None
    grade: Grade | None = None
    material: str | None = None
    tools: tuple[str, ...] = ()
    stock: str | None = None
    shop: str | None = None
    job: str | None = None
    files: dict[str, str] = {}  # further files beside the program, such as a material card


class RuleText(Part, frozen=True):
    """One rule as its pack writes it."""

    name: str
    title: str
    looks_at: str
    grade: Grade | tuple[GradeCase, ...]
    happens: str | tuple[TextCase, ...]
    why: str
    standing: Standing
    source: str
    owner: str
    when: str = ""
    cause: Cause = "move"
    points_at: tuple[str, ...] = ()  # letters of the word at fault, the likeliest first
    line: str = ""  # where the finding stands, for tables whose rows have no line of their own
    found: FoundText | None = None
    window: WindowText | None = None
    worst: str = ""
    worst_after: str = ""  # share of the cut length that is passed over before the worst place is told
    change: str | tuple[TextCase, ...] = ""
    advice: str = ""
    instead_of: tuple[str, ...] = ()
    instead_when: str = ""
    limits: dict[str, Limit] = {}
    define: dict[str, str] = {}  # names for parts of conditions, each may use those before it
    must_find: tuple[Example, ...] = ()
    must_leave: tuple[Example, ...] = ()


class PackText(Part, frozen=True):
    pack: str
    about: str
    rule: tuple[RuleText, ...]


Template = list[str | Expression]


class Cased(Struct, frozen=True):
    """One case of a grade or a text; the first whose condition holds counts."""

    when: Expression | None
    grade: str = ""
    text: Template = []


class Rule(Struct, frozen=True):
    """A rule in its checked form, with its text beside it."""

    text: RuleText
    grades: tuple[Cased, ...]
    happens: tuple[Cased, ...]
    change: tuple[Cased, ...]
    when: Expression | None = None
    line: Expression | None = None
    found: Expression | None = None
    low: Expression | None = None
    high: Expression | None = None
    worst: Expression | None = None
    worst_after: Expression | None = None
    instead_when: Expression | None = None

    @property
    def name(self) -> str:
        return self.text.name


class Pack(Struct, frozen=True):
    name: str
    about: str
    path: str
    rules: tuple[Rule, ...]


def load_pack(path: Path) -> Pack:
    """Read, check and compile one pack file. Raises Problem."""
    from gclint.setup.toml_file import read_text

    return compile_pack(read_text(path, "rule pack"), str(path))


def compile_pack(source: str, path: str) -> Pack:
    """The checked form of a pack's TOML text; `path` is named in messages."""
    from gclint.setup.toml_file import decode

    written = decode(source, PackText, path)
    rules = tuple(_Compile(source, path, number, rule).rule() for number, rule in enumerate(written.rule))
    seen: dict[str, int] = {}
    for number, rule in enumerate(rules):
        if rule.name in seen:
            raise _placed(source, path, ("rule", number, "name"), f'the rule "{rule.name}" stands in this pack twice')
        seen[rule.name] = number
    return Pack(written.pack, written.about, path, rules)


def check_together(packs: tuple[Pack, ...]) -> None:
    """Refuse a rule that two packs define."""
    owner: dict[str, str] = {}
    for pack in packs:
        for rule in pack.rules:
            if rule.name in owner and owner[rule.name] != pack.path:
                raise Problem(
                    f'the rule "{rule.name}" also stands in {owner[rule.name]}; give it a name of its own', pack.path
                )
            owner[rule.name] = pack.path


def _placed(
    source: str, path: str, key: tuple[str | int, ...], says: str, at: int = 0, on_key: bool = False
) -> Problem:
    """A Problem at character `at` of the value behind a key."""
    from gclint.setup.toml_place import Places

    place = Places(source).of(key, on_key)
    named = ".".join(part for part in key if isinstance(part, str) and part != "rule")
    if place is None:
        return Problem(f"{named}: {says}", path)
    line, column = place
    offset = sum(len(row) + 1 for row in source.split("\n")[: line - 1]) + column - 1
    for quotes in ('"""\n', "'''\n", '"""', "'''", '"', "'"):
        if source.startswith(quotes, offset):
            offset += len(quotes) + at
            before = source[:offset]
            return Problem(f"{named}: {says}", path, before.count("\n") + 1, offset - (before.rfind("\n") + 1) + 1)
    return Problem(f"{named}: {says}", path, line, column)


T = TypeVar("T")


class _Compile:
    def __init__(self, source: str, path: str, number: int, text: RuleText) -> None:
        self.source, self.path, self.number, self.text = source, path, number, text
        self.names: dict[str, Name] = {}

    def wrong(self, key: tuple[str | int, ...], says: str, at: int = 0, on_key: bool = False) -> Problem:
        return _placed(self.source, self.path, ("rule", self.number, *key), says, at, on_key)

    def rule(self) -> Rule:
        from gclint.judge.change import ADVICE
        from gclint.judge.facts import names_of, tables

        text = self.text
        if not _plain(text.name):
            raise self.wrong(("name",), "a rule is named by plain words in small letters, joined with hyphens")
        if text.looks_at != CORE and text.looks_at not in tables():
            raise self.wrong(
                ("looks_at",), f'there is no table "{text.looks_at}"{nearest(text.looks_at, tuple(tables()))}'
            )
        if text.advice and text.advice not in ADVICE:
            raise self.wrong(("advice",), f'there is no advice "{text.advice}"{nearest(text.advice, tuple(ADVICE))}')
        if text.looks_at == CORE:
            return Rule(text, self.grades(), self.texts("happens"), self.texts("change"))
        if not text.when:
            raise self.wrong((), 'the key "when" is missing', on_key=True)
        self.names = dict(names_of(text.looks_at))
        for name, limit in text.limits.items():
            self.names[name] = self.limit(name, limit)
        for name, meaning in text.define.items():
            self.names[name] = self.definition(name, meaning)
        found = text.found
        return Rule(
            text,
            self.grades(),
            self.texts("happens"),
            self.texts("change"),
            self.expression(("when",), text.when, TRUTH),
            self.expression(("line",), text.line, NUMBER),
            self.found(found) if found else None,
            self.window("low"),
            self.window("high"),
            self.expression(("worst",), text.worst, NUMBER),
            self.expression(("worst_after",), text.worst_after, NUMBER),
            self.expression(("instead_when",), text.instead_when, TRUTH),
        )

    def limit(self, name: str, limit: Limit) -> Name:
        if name in self.names:
            raise self.wrong(("limits", name), f'"{name}" is a fact already; give the limit another name', on_key=True)
        if not isinstance(limit.value, str):
            return Name(NUMBER, "", (), float(limit.value))
        try:
            value, unit = quantity(limit.value)
        except Wrong as wrong:
            raise self.wrong(("limits", name, "value"), wrong.says, wrong.at) from None
        return Name(NUMBER, unit, (), value)

    def definition(self, name: str, meaning: str) -> Name:
        if name in self.names:
            raise self.wrong(
                ("define", name), f'"{name}" is a fact or a limit already; give it another name', on_key=True
            )
        made = self.expression(("define", name), meaning)
        if made is None:
            raise self.wrong(("define", name), "an expression is needed here")
        return Name(made.kind, made.unit, code=made.code)

    def found(self, found: FoundText) -> Expression:
        if found.unit not in UNITS:
            raise self.wrong(
                ("found", "unit"), f'there is no unit "{found.unit}"{nearest(found.unit, tuple(UNITS)[1:])}'
            )
        compiled = self.expression(("found", "value"), found.value)
        assert compiled is not None
        if compiled.kind == TEXT:
            return compiled
        compiled = self.expression(("found", "value"), found.value, NUMBER, found.unit)
        assert compiled is not None
        return compiled

    def window(self, side: str) -> Expression | None:
        window, found = self.text.window, self.text.found
        if window is None:
            return None
        if found is None:
            raise self.wrong(("window",), "a window needs something found to hold against it", on_key=True)
        kind, _, name = window.of.partition(".")
        if kind == "limits" and name not in self.text.limits:
            raise self.wrong(("window", "of"), f'there is no limit "{name}"{nearest(name, tuple(self.text.limits))}')
        if kind not in ("limits", "card", "chip", "declared") or (kind == "declared" and name not in MAY_BE_ASSUMED):
            says = 'expected "limits.NAME", "card.NAME", "chip", "declared", "declared.stock" or "declared.spoilboard"'
            raise self.wrong(("window", "of"), says)
        return self.expression(("window", side), getattr(window, side), NUMBER, found.unit)

    def expression(
        self, key: tuple[str | int, ...], text: str, want: str | None = None, unit: str | None = None
    ) -> Expression | None:
        if not text.strip():
            return None
        return self.guarded(key, lambda: compile_expression(text, self.names, want, unit))

    def guarded(self, key: tuple[str | int, ...], make: Callable[[], T]) -> T:
        try:
            return make()
        except Wrong as wrong:
            raise self.wrong(key, wrong.says, wrong.at) from None

    def grades(self) -> tuple[Cased, ...]:
        given = self.text.grade
        if isinstance(given, str):
            return (Cased(None, given),)
        if not given or given[-1].when:
            raise self.wrong(("grade",), 'the last grade must stand without a "when"')
        return tuple(
            Cased(self.expression(("grade", n, "when"), case.when, TRUTH), case.grade) for n, case in enumerate(given)
        )

    def texts(self, key: str) -> tuple[Cased, ...]:
        given: Any = getattr(self.text, key)
        if isinstance(given, str):
            return (Cased(None, "", self.guarded((key,), lambda: template(given, self.part))),)
        if not given or given[-1].when:
            raise self.wrong((key,), 'the last text must stand without a "when"')
        made = []
        for n, case in enumerate(given):
            text = self.guarded((key, n, "text"), lambda case=case: template(case.text, self.part))  # type: ignore[misc]
            made.append(Cased(self.expression((key, n, "when"), case.when, TRUTH), "", text))
        return tuple(made)

    def part(self, text: str, unit: str | None) -> Expression:
        return compile_expression(text, self.names, None, unit)


def _plain(name: str) -> bool:
    return name == "-".join(name.split("-")) and all(part.isalpha() and part.islower() for part in name.split("-"))


def unnamed_numbers(rule: RuleText) -> list[str]:
    """Numbers that stand in a rule's conditions without a name in its limits; 0 and 1 need none."""
    from gclint.judge.language import literals

    grades = () if isinstance(rule.grade, str) else rule.grade
    conditions = (rule.when, rule.instead_when, *rule.define.values(), *(case.when for case in grades))
    free = {"0", "1", "0 mm", "0 mm^3", "0 s", "0 deg", "0 mm/min", "0 rev/min"}
    return [said for text in conditions if text for said, _ in literals(text) if said not in free]


def as_json(packs: tuple[Pack, ...], fingerprint: str) -> bytes:
    return msgspec.json.encode(Shipped(fingerprint, packs))


class Shipped(Struct, frozen=True):
    """The packs that ship, as the build wrote them; `fingerprint` is of the TOML texts and of the facts."""

    fingerprint: str
    packs: tuple[Pack, ...]
