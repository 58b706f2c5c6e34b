"""Reads, checks and compiles expressions of the rule language.

`compile_expression` turns a text into an `Expression`: nested lists that JSON can hold and `evaluate` runs.
Everything that can be wrong is found here, with the place in the text: words that do not exist, dimensions that do not
match, a truth where a number is needed, an expression that would take too long. Only this file imports lark; packs that
ship are compiled when the package is built.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from functools import cache
from itertools import accumulate
from pathlib import Path
from typing import TYPE_CHECKING, Any

import msgspec

from gclint.language.dimensions import PLAIN, UNITS, Dimension, dimension_name, shown_unit, times
from gclint.problem import nearest

if TYPE_CHECKING:
    from lark import Lark, Token, Tree

NUMBER, TRUTH, TEXT = "number", "truth", "text"
_KIND = {NUMBER: "a number", TRUTH: "a truth (yes or no)", TEXT: "a text"}


DEEPEST = 40  # brackets within each other
LONGEST = 4_000  # characters of one expression
MOST_STEPS = 1_000  # columns worked out for one expression, definitions written out
DEEPEST_CODE = 150  # steps within each other, definitions written out


RESERVED = ("and", "or", "not", "in", "true", "false")


class Name(msgspec.Struct, frozen=True):
    """What a name in an expression stands for."""

    kind: str  # NUMBER, TRUTH, TEXT
    unit: str = ""  # the unit its column is kept in
    words: tuple[str, ...] = ()  # of a text: all it may say; empty = anything
    value: float | None = None  # of a limit of the rule: its value in `unit`
    grouped: bool = True  # whether its table can be added up by tool
    code: list[Any] | None = None  # of a definition of the rule: what it stands for


class Expression(msgspec.Struct, frozen=True):
    """A checked expression. `code` is computed in mm, s, degrees, N; `unit` is the one people read it in."""

    code: list[Any]
    kind: str
    unit: str = ""
    places: int | None = None  # decimals it is shown with, noughts too; None: as many as matter


class Wrong(Exception):
    """What is wrong with an expression, at which character of it (from 0).

    `of_unit`: with the unit asked for; `missing`: the fact that is not in this table.
    """

    def __init__(self, says: str, at: int, of_unit: bool = False, missing: str = "") -> None:
        super().__init__(says)
        self.says, self.at, self.of_unit, self.missing = says, at, of_unit, missing


class Node(msgspec.Struct, frozen=True):
    """One checked part of an expression with its span in the text."""

    code: list[Any]
    kind: str
    dimension: Dimension
    unit: str
    start: int
    end: int
    words: tuple[str, ...] = ()
    literal: bool = False


class Function(msgspec.Struct, frozen=True):
    """How a function is called, what it says, and how many values it takes (least, most)."""

    call: str
    says: str
    takes: tuple[int, int] = (1, 1)


SEVERAL = (2, 9)
FUNCTIONS: dict[str, Function] = {
    "min": Function("min(a, b, ...)", "the smallest of two or more numbers of one dimension", SEVERAL),
    "max": Function("max(a, b, ...)", "the largest of two or more numbers of one dimension", SEVERAL),
    "abs": Function("abs(a)", "a number without its sign"),
    "sqrt": Function("sqrt(a)", "square root of a plain number or of an area (a length)"),
    "sin": Function("sin(a)", "sine of an angle"),
    "cos": Function("cos(a)", "cosine of an angle"),
    "tan": Function("tan(a)", "tangent of an angle"),
    "atan": Function("atan(a)", "the angle whose tangent is a plain number"),
    "known": Function("known(a)", "whether a fact is known; never unknown itself"),
    "either": Function("either(a, b, ...)", "the first of two or more numbers that is known", SEVERAL),
    "arc_deeper": Function("arc_deeper(d)", "engagement angle, in degrees, of what a piece cuts deeper than d"),
    "width_deeper": Function("width_deeper(d)", "radial width of what a piece cuts deeper than d"),
    "share": Function(
        "share(condition, among)", "of the cut length of the row's tool where `among` holds, the condition's part",
        (2, 2),
    ),
    "total": Function("total(condition)", "cut length of the row's tool where the condition holds"),
    "run": Function(
        "run(condition)", "length of the unbroken run of cut around the row in which the condition holds, else 0"
    ),
}  # fmt: skip

PROFILE = {"arc_deeper": "deg", "width_deeper": "mm"}  # asked of a piece's profile of contact; the unit of the answer


@cache
def _parser() -> Lark:
    from lark import Lark

    return Lark(
        Path(__file__).with_name("expression.lark").read_text(encoding="utf-8"),
        parser="lalr",
        propagate_positions=True,
        maybe_placeholders=False,
    )


def compile_expression(
    text: str, names: Mapping[str, Name], want: str | None = None, unit: str | None = None
) -> Expression:
    """Check `text` against the names it may use; raises Wrong. `want` is the kind asked for, `unit` the unit to show
    it in."""
    node = parse(text, names)
    size, depth = extent(node.code)
    if size > MOST_STEPS or depth > DEEPEST_CODE:
        raise Wrong(
            f"this is too much for one expression: {MOST_STEPS} steps, and {DEEPEST_CODE} within each other, are the "
            "most, with every definition written out", 0
        )  # fmt: skip
    if want is not None and node.kind != want:
        raise Wrong(f"{_KIND[want]} is needed here, and this is {_KIND[node.kind]}", node.start)
    if unit is not None and node.kind == NUMBER:
        if unit not in UNITS:
            raise Wrong(f'there is no unit "{unit}"{nearest(unit, tuple(UNITS)[1:])}', 0, True)
        if UNITS[unit][1] != node.dimension:
            raise Wrong(f'this is {dimension_name(node.dimension)}, which cannot be shown in "{unit}"', 0, True)
        return Expression(node.code, node.kind, unit)
    return Expression(node.code, node.kind, node.unit)


def extent(code: list[Any]) -> tuple[int, int]:
    """(steps, steps within each other) of an expression. Definitions are shared parts, so each is counted once."""
    counted: dict[int, tuple[int, int]] = {}

    def of(part: list[Any]) -> tuple[int, int]:
        if id(part) not in counted:
            inner = [of(each) for each in part[1:] if isinstance(each, list) and each and isinstance(each[0], str)]
            counted[id(part)] = (
                1 + sum(size for size, _ in inner),
                1 + max((depth for _, depth in inner), default=0),
            )
        return counted[id(part)]

    return of(code)


def parse(text: str, names: Mapping[str, Name]) -> Node:
    """The checked tree of an expression."""
    from lark import UnexpectedInput

    if len(text) > LONGEST:
        raise Wrong(f"this is longer than {LONGEST} characters; split it with [rule.define]", 0)
    depth = list(accumulate((char == "(") - (char == ")") for char in text))
    if max(depth, default=0) > DEEPEST:
        raise Wrong(f"this is nested too deeply; {DEEPEST} brackets within each other are the most", 0)
    try:
        return _Check(names).node(_parser().parse(text))
    except UnexpectedInput as fault:
        raise _unexpected(fault, text) from None
    except RecursionError:
        raise Wrong("this is nested too deeply", 0) from None


def literals(text: str) -> list[tuple[str, int]]:
    """The numbers an expression judges by, with their place: each must be a limit that says where it comes from.

    Left out: 0 of any unit, 1, and what stands in a list (which names things, such as tools, and measures none).
    """
    found = []
    listed = False
    for token in _parser().lex(text):
        listed = token.type == "LSQB" or (listed and token.type != "RSQB")
        if token.type == "NUMBER" and not listed:
            digits, unit = _split(str(token))
            if digits != 0 and (digits, unit) != (1, ""):
                found.append((str(token), token.start_pos or 0))
    return found


def _split(token: str) -> tuple[float, str]:
    """"0.1 mm" as (0.1, "mm")."""
    size = len(token) - len(token.lstrip("0123456789."))
    return float(token[:size]), token[size:].strip()


def names_in(text: str) -> set[str]:
    """Every name an expression that parses mentions."""
    return {str(token) for token in _parser().lex(text) if token.type == "NAME"}


_PLAIN = re.compile(r"(-?[0-9]+(?:\.[0-9]+)?)[ \t]*([^\s0-9.]*)")


def quantity(text: str) -> tuple[float, str]:
    """(value, unit) of a text such as "0.1 mm", "20 %" or "1.5"; raises Wrong."""
    plain = _PLAIN.fullmatch(text.strip())
    if plain and plain[2] in UNITS:  # without the parser, which costs more to load than all the rest of a check's rules
        return float(plain[1]), plain[2]
    node = parse(text.lstrip("-").strip(), {})
    if not node.literal or node.kind != NUMBER:
        raise Wrong('a number with its unit is needed here, such as "0.1 mm"', 0)
    value = node.code[1] / UNITS[node.unit][0]
    return (-value if text.strip().startswith("-") else value), node.unit


def _unexpected(fault: Any, text: str) -> Wrong:
    at = fault.pos_in_stream if fault.pos_in_stream is not None and fault.pos_in_stream >= 0 else len(text)
    token = getattr(fault, "token", None)
    if token is not None and token.type == "NAME" and text[:at].rstrip()[-1:].isdigit():
        return Wrong(f'there is no unit "{token}"{nearest(str(token), tuple(UNITS)[1:])}', at)
    if text[at : at + 1] in _INSTEAD:
        return Wrong(f'"{text[at]}" does not belong here; write "{_INSTEAD[text[at]]}"', at)
    what = f'"{token}"' if token is not None else f'"{text[at : at + 1]}"'
    wanted = sorted(set(getattr(fault, "expected", None) or getattr(fault, "allowed", None) or ()))
    plain = {"NAME": "a name", "NUMBER": "a number", "TEXT": "a text in quotes", "COMPARE": "a comparison",
             "LPAR": '"("', "RPAR": '")"', "PLUS": '"+" or "-"', "TIMES": '"*" or "/"', "LSQB": '"["',
             "RSQB": '"]"', "COMMA": '","',
             "AND": '"and"', "OR": '"or"', "NOT": '"not"', "IN": '"in"', "MINUS": '"-"', "TRUTH": "true or false",
             "$END": "the end"}  # fmt: skip
    expected = list(dict.fromkeys(plain[name] for name in wanted if name in plain))
    if token is not None and token.type == "$END":
        return Wrong(f"the expression ends too early; expected {', '.join(expected)}", len(text.rstrip()))
    return Wrong(f"{what} does not belong here; expected {', '.join(expected)}", at)


_STEP = r"\s*(?:1|0\.(0{0,5}1))(?![\w.])"  # "0.01" before a unit: shown in such steps
_INSTEAD = {"=": "==", "&": "and", "|": "or", "!": "not", "^": "*"}  # habits of other languages


def _like(word: str, names: Mapping[str, Name]) -> str:
    """The nearest name; of hundreds of names a list would help nobody."""
    if not names:
        return "; only numbers can stand here"
    near = nearest(word, tuple(names))
    return near if near.startswith("; nearest") else "; `gclint pack facts TABLE` lists what there is"


class _Check:
    def __init__(self, names: Mapping[str, Name]) -> None:
        self.names = names

    def node(self, tree: Tree[Token] | Token) -> Node:
        made: Node = getattr(self, tree.data)(tree)  # type: ignore[union-attr]
        return made

    def _parts(self, tree: Tree[Token]) -> list[Node]:
        return [self.node(child) for child in tree.children]

    def _made(
        self, code: list[Any], kind: str, parts: list[Node], dimension: Dimension = PLAIN, unit: str = ""
    ) -> Node:
        return Node(code, kind, dimension, unit, parts[0].start, parts[-1].end)

    def _logic(self, op: str, tree: Tree[Token]) -> Node:
        parts = self._parts(tree)
        if len(parts) == 1 and op != "not":
            return parts[0]
        for part in parts:
            self._need(part, TRUTH, f'"{op}" joins conditions')
        return self._made([op, *(part.code for part in parts)], TRUTH, parts)

    def or_(self, tree: Tree[Token]) -> Node:
        return self._logic("or", tree)

    def and_(self, tree: Tree[Token]) -> Node:
        return self._logic("and", tree)

    def not_(self, tree: Tree[Token]) -> Node:
        return self._logic("not", tree)

    def _need(self, part: Node, kind: str, because: str) -> None:
        if part.kind != kind:
            raise Wrong(f"{because}, and this is {_KIND[part.kind]}", part.start)

    def compare(self, tree: Tree[Token]) -> Node:
        if len(tree.children) == 1:
            return self.node(tree.children[0])
        parts = [self.node(child) for child in tree.children[::2]]
        links: list[list[Any]] = []
        for left, op, right in zip(parts, tree.children[1::2], parts[1:]):
            self._same(left, right, str(op))
            links.append([str(op), left.code, right.code])
        return self._made(links[0] if len(links) == 1 else ["and", *links], TRUTH, parts)

    def _same(self, left: Node, right: Node, op: str) -> None:
        if left.kind != right.kind:
            raise Wrong(f"{_KIND[left.kind]} cannot be compared with {_KIND[right.kind]}", right.start)
        if left.kind != NUMBER and op not in ("==", "!="):
            raise Wrong(f'{_KIND[left.kind]} has no order; use == or != instead of "{op}"', left.start)
        if left.kind == TEXT and not left.literal and not right.literal:
            raise Wrong("a text can only be compared with a text in quotes", right.start)
        for fact, said in ((left, right), (right, left)):
            if fact.kind == TEXT and said.literal and fact.words and said.code[1] not in fact.words:
                raise Wrong(f'it is never "{said.code[1]}"{nearest(said.code[1], fact.words)}', said.start)
        if left.kind == NUMBER and left.dimension != right.dimension:
            self._mismatch(left, right, "compared with")

    def _mismatch(self, left: Node, right: Node, verb: str) -> None:
        said = f"{dimension_name(left.dimension)} cannot be {verb} {dimension_name(right.dimension)}"
        for number, other in ((left, right), (right, left)):
            if number.literal and number.dimension == PLAIN and shown_unit(other.dimension):
                said += f"; give the number its unit, such as {number.code[1]:g} {shown_unit(other.dimension)}"
                raise Wrong(said, number.start)
        raise Wrong(said, right.start)

    def among(self, tree: Tree[Token]) -> Node:
        value = self.node(tree.children[0])
        items = self._parts(tree.children[1])  # type: ignore[arg-type]
        for item in items:
            self._same(value, item, "==")
        if value.kind == TRUTH:
            raise Wrong('"in" needs a text or a number on its left', value.start)
        end = items[-1].end + 1
        code = ["in", value.code, [item.code[1] for item in items]]
        return Node(code, TRUTH, PLAIN, "", value.start, end)

    def not_among(self, tree: Tree[Token]) -> Node:
        inside = self.among(tree)
        return Node(["not", inside.code], TRUTH, PLAIN, "", inside.start, inside.end)

    def arithmetic(self, tree: Tree[Token]) -> Node:
        left, op, right = self.node(tree.children[0]), str(tree.children[1]), self.node(tree.children[2])
        for part in (left, right):
            self._need(part, NUMBER, f'"{op}" needs numbers')
        if op in "+-":
            if left.dimension != right.dimension:
                self._mismatch(left, right, "added to" if op == "+" else "taken from")
            return self._made(
                [op, left.code, right.code], NUMBER, [left, right], left.dimension, left.unit or right.unit
            )
        dimension = times(left.dimension, right.dimension, 1 if op == "*" else -1)
        unit = shown_unit(dimension)
        for part, other in ((left, right), (right, left)):  # 0.2 * edge speed stays in m/min
            if other.dimension == PLAIN and part.dimension == dimension and (op == "*" or part is left):
                unit = part.unit
        return self._made([op, left.code, right.code], NUMBER, [left, right], dimension, unit)

    def negative(self, tree: Tree[Token]) -> Node:
        part = self.node(tree.children[0])
        self._need(part, NUMBER, '"-" needs a number')
        if part.literal:
            start = tree.meta.start_pos
            return Node(["number", -part.code[1]], NUMBER, part.dimension, part.unit, start, part.end, (), True)
        return self._made(["negative", part.code], NUMBER, [part], part.dimension, part.unit)

    def number(self, tree: Tree[Token]) -> Node:
        token: Any = tree.children[0]
        value, unit = _split(str(token))
        scale, dimension = UNITS[unit]
        return Node(["number", value * scale], NUMBER, dimension, unit, token.start_pos, token.end_pos, (), True)

    def text(self, tree: Tree[Token]) -> Node:
        token: Any = tree.children[0]
        return Node(["text", str(token)[1:-1]], TEXT, PLAIN, "", token.start_pos, token.end_pos, (), True)

    def truth(self, tree: Tree[Token]) -> Node:
        token: Any = tree.children[0]
        return Node(["truth", str(token) == "true"], TRUTH, PLAIN, "", token.start_pos, token.end_pos, (), True)

    def name(self, tree: Tree[Token]) -> Node:
        token: Any = tree.children[0]
        fact = self.names.get(str(token))
        if fact is None:
            says = f'there is no fact "{token}"{_like(str(token), self.names)}'
            raise Wrong(says, token.start_pos, missing=str(token))
        if fact.code is not None:
            return Node(
                fact.code, fact.kind, UNITS[fact.unit][1], fact.unit, token.start_pos, token.end_pos, fact.words
            )
        if fact.kind != NUMBER:
            return Node(["fact", str(token), 1], fact.kind, PLAIN, "", token.start_pos, token.end_pos, fact.words)
        scale, dimension = UNITS[fact.unit]
        code = ["fact", str(token), scale] if fact.value is None else ["number", fact.value * scale]
        return Node(code, NUMBER, dimension, fact.unit, token.start_pos, token.end_pos)

    def call(self, tree: Tree[Token]) -> Node:
        token: Any = tree.children[0]
        name = str(token)
        if name not in FUNCTIONS:
            raise Wrong(f'there is no function "{name}"{nearest(name, tuple(FUNCTIONS))}', token.start_pos)
        parts = [self.node(child) for child in tree.children[1:]]
        least, most = FUNCTIONS[name].takes
        if not least <= len(parts) <= most:
            count = f"{least} to {most} values" if most > least else f"{least} value{'s' if least > 1 else ''}"
            raise Wrong(f"{name} takes {count}, here are {len(parts)}: {FUNCTIONS[name].call}", token.start_pos)
        code = [name, *(part.code for part in parts)]
        if name == "known":
            return self._made(code, TRUTH, parts)
        if name in ("share", "total", "run"):
            for part in parts:
                self._need(part, TRUTH, f"{name} needs conditions")
            if not all(known.grouped for known in self.names.values()):
                raise Wrong(f"{name} can only be used on pieces", token.start_pos)
            return self._made(
                code, NUMBER, parts, PLAIN if name == "share" else UNITS["mm"][1], "" if name == "share" else "mm"
            )
        for part in parts:
            self._need(part, NUMBER, f"{name} needs numbers")
        first = parts[0]
        if name in PROFILE:
            if not all(known.grouped for known in self.names.values()):
                raise Wrong(f"{name} can only be used on pieces", token.start_pos)
            if first.dimension != UNITS["mm"][1]:
                raise Wrong(f"{name} needs a length, and this is {dimension_name(first.dimension)}", first.start)
            return self._made(code, NUMBER, parts, UNITS[PROFILE[name]][1], PROFILE[name])
        if name in ("min", "max", "either"):
            for part in parts[1:]:
                if part.dimension != first.dimension:
                    self._mismatch(first, part, "put beside")
            return self._made(
                code, NUMBER, parts, first.dimension, next((p.unit for p in parts if not p.literal), first.unit)
            )
        if name == "abs":
            return self._made(code, NUMBER, parts, first.dimension, first.unit)
        if name == "sqrt":
            if any(power % 2 for power in first.dimension):
                raise Wrong(f"{dimension_name(first.dimension)} has no square root here", first.start)
            a, b, c, d = (power // 2 for power in first.dimension)
            return self._made(code, NUMBER, parts, (a, b, c, d), shown_unit((a, b, c, d)))
        wanted = PLAIN if name == "atan" else UNITS["deg"][1]
        if first.dimension != wanted:
            raise Wrong(
                f"{name} needs {dimension_name(wanted)}, and this is {dimension_name(first.dimension)}", first.start
            )
        given = UNITS["deg"][1] if name == "atan" else PLAIN
        return self._made(code, NUMBER, parts, given, shown_unit(given))


def facts_in(code: list[Any]) -> set[str]:
    """Names of the facts an expression reads."""
    if code and code[0] == "fact":
        return {code[1]}
    found: set[str] = set()
    for part in code[1:]:
        if isinstance(part, list):
            found |= facts_in(part)
    return found


def template(text: str, compile_part: Callable[[str, str | None], Expression]) -> list[str | Expression]:
    """Split "drops {solid} at {feed | mm/min}" into texts and checked expressions; raises Wrong at its place in the
    text. "{depth | 0.01 mm}" is shown with two decimals, whatever they are."""
    parts: list[str | Expression] = []
    at = 0
    while True:
        opening, stray = text.find("{", at), text.find("}", at)
        if stray >= 0 and (opening < 0 or stray < opening):
            raise Wrong('"}" has no "{" before it', stray)
        if opening < 0:
            parts.append(text[at:])
            return [part for part in parts if part != ""]
        closing = text.find("}", opening)
        if closing < 0:
            raise Wrong('"{" is never closed', opening)
        inside, bar, unit = text[opening + 1 : closing].partition("|")
        if not inside.strip() or (bar and not unit.strip()):
            raise Wrong('expected "{fact}", "{fact | unit}" or "{fact | 0.01 unit}"', opening)
        parts.append(text[at:opening])
        step = re.match(_STEP, unit)
        name = unit[step.end() if step else 0 :]
        try:
            part = compile_part(inside, name.strip() or None)
        except Wrong as wrong:
            behind = len(inside) + 1 + len(unit) - len(name.lstrip()) if wrong.of_unit else wrong.at
            raise Wrong(wrong.says, opening + 1 + behind, missing=wrong.missing) from None
        if step and part.kind != NUMBER:
            raise Wrong(f"{inside.strip()} is no number, so it has no decimals", opening + 1 + len(inside) + 1)
        parts.append(msgspec.structs.replace(part, places=len(step[1] or "")) if step else part)
        at = closing + 1
