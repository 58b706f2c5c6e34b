"""One block of text to code for the expander: parsed by lark, once for each distinct text.

Code is a list of (operation, number) for a stack machine. The operations and their meaning stand in `OP`.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import cache
from typing import Any

LONGEST = 4000  # characters of a block that is parsed; NIST RS274/NGC 3.3 allows 256
DEEPEST = 60  # brackets in brackets, # before # and signs before signs: each is a call within the last

OPERATORS = ("+", "-", "*", "/", "**", "MOD", "AND", "OR", "XOR", "EQ", "NE", "GT", "GE", "LT", "LE")
FUNCTIONS = ("SIN", "COS", "TAN", "ASIN", "ACOS", "ATAN", "ABS", "FIX", "FUP", "ROUND", "EXP", "LN", "SQRT")
NAMES = (
    "end",  # of the block: parameter settings come into force, on to the next block
    "const",  # push the number
    "load",  # push parameter number; loadx: the index is on the stack; named: a slot
    "loadx",
    "named",
    "exists",  # push whether the parameter was ever set
    "existsx",
    "existsn",
    *OPERATORS,
    *FUNCTIONS,
    "atan2",
    "negate",
    "set",  # pop; comes into force behind the block. setx: index below the value on the stack; setn: a slot
    "setx",
    "setn",
    "word",  # pop; the number is the row of the word
    "step",  # execute the words
    "jump",  # to a block
    "jump-if-not",
    "jump-if",
    "else-if-not",  # to the next branch of an if, which begins with its own condition
    "end-if-not",  # on to the next block
    "goto",  # pop the line number
    "stage",  # pop an argument of a call
    "call",  # a subprogram of O words
    "program",  # M98: pop repeats, pop program number
    "macro",  # G65: the same, with arguments
    "return",  # from a subprogram; 1: with a value on the stack
    "back",  # M99; 1: with a line number on the stack
    "repeat",  # pop how often; the number is the loop
    "again",  # next time round of that loop
    "stop",  # what follows cannot be followed; the number is the reason
)
OP = {name: number for number, name in enumerate(NAMES)}

Code = list[tuple[int, float]]
# G65: letter to parameter. A habit of bracketed macros (from memory).
ARGUMENTS = {
    "A": 1, "B": 2, "C": 3, "I": 4, "J": 5, "K": 6, "D": 7, "E": 8, "F": 9, "H": 11, "M": 13, "Q": 17, "R": 18,
    "S": 19, "T": 20, "U": 21, "V": 22, "W": 23, "X": 24, "Y": 25, "Z": 26,
}  # fmt: skip


class Unreadable(Exception):
    """A block that cannot be parsed; `at` is an offset in the text that was given."""

    def __init__(self, at: int) -> None:
        self.at = at


@dataclass(frozen=True, slots=True)
class Parsed:
    """One block. `kind` is "items" or the flow word; `key` its O word or loop number; names are slots by order."""

    kind: str
    key: str = ""
    code: Code = ()  # type: ignore[assignment]
    words: tuple[tuple[str, int, int], ...] = ()  # letter, start and end in the text that was given
    names: tuple[str, ...] = ()  # slots in the code are indices of this
    more: Code = ()  # type: ignore[assignment]  # IF .. GOTO: the target


COMMENTS = re.compile(r"\([^)]*\)?|;.*|\x1a", re.DOTALL)
UPPER = re.compile("[a-z]+")


def bare(text: str) -> tuple[str, list[int]]:
    """The text without comments, white space, block delete and N word, in upper case; and where each character was."""
    hidden = COMMENTS.sub(lambda found: " " * len(found[0]), text)
    at = [place for place, mark in enumerate(hidden) if not mark.isspace()]
    whole = UPPER.sub(lambda found: found[0].upper(), "".join(hidden.split()))
    lead = re.match(r"/?[1-9]?(?:N[0-9]+)?", whole) if whole.startswith("/") else re.match(r"(?:N[0-9.]+)?", whole)
    cut = lead.end() if lead else 0
    tail = re.search(r"(?<![\]*])\*[0-9]+$", whole) if "=" not in whole else None  # a checksum
    end = tail.start() if tail else len(whole)
    return whole[cut:end], [*at[cut:end], len(text)]


ONES = str.maketrans("023456789", "1" * 9)
# A name, the number of a parameter, a plain number.
NUMBER = re.compile(r"<[^<>]*>|#?(?:[0-9]+\.?[0-9]*|\.[0-9]+)")
FLOW_WORDS = re.compile(r"O|IF|WHILE|DO|END|GOTO|.*(?:M0*9[89]|G0*6[567]|[GM](?![0-9]))")


def form_of(text: str) -> tuple[str, list[float]]:
    """The bare block with 1 for every digit of its plain numbers, and these numbers.

    Exporters write thousands of lines that differ in nothing else; a form is parsed once. Blocks with a word of flow
    are their own form.
    """
    if FLOW_WORDS.match(text):
        return text, []
    numbers: list[float] = []

    def ones(found: re.Match[str]) -> str:
        whole = found[0]
        if whole[0] in "<#":
            return whole
        numbers.append(float(whole))
        return ".".join("1" * len(part) for part in whole.split("."))

    return NUMBER.sub(ones, text), numbers


def parse_alike(text: str, form: str, numbers: list[float]) -> Parsed:
    """What `parse` makes of a text, by way of its form. Raises Unreadable."""
    parsed = parse(form)
    if not numbers:
        return parsed
    # Constants stand in the code in the order of the text.
    plain = [place for place, (operation, number) in enumerate(parsed.code) if operation == OP["const"]]
    if len(plain) != len(numbers):
        return parse(text)  # a parameter number like #12345 is a constant too
    code = list(parsed.code)
    for place, number in zip(plain, numbers):
        code[place] = (OP["const"], number)
    return replace(parsed, code=code)


def parse(text: str) -> Parsed:
    """Parse one bare block. Raises Unreadable."""
    if text in _parse_all():
        return _parse(text)
    if len(text) > LONGEST:
        raise Unreadable(0)
    outer: list[int] = []  # the depth before each bracket that is open
    depth = chain = 0
    for at, mark in enumerate(text):
        if mark == "[":
            outer.append(depth)
            depth, chain = depth + chain + 1, 0
        elif mark == "]":
            depth, chain = outer.pop() if outer else 0, 0
        else:
            chain = chain + 1 if mark in "#+-" else 0
        if depth + chain > DEEPEST:
            raise Unreadable(at)
    return _parse(text)


@cache
def _parser() -> Callable[[str], Parsed]:
    from importlib.resources import files

    import lark

    grammar = files("gclint.program").joinpath("block.lark").read_text()
    maker = _maker(lark)
    parser = lark.Lark(grammar, parser="lalr", lexer="contextual", maybe_placeholders=False)

    def read(text: str) -> Parsed:
        try:
            tree: Any = parser.parse(text)
        except lark.exceptions.UnexpectedInput as wrong:
            at = getattr(wrong, "pos_in_stream", None)
            raise Unreadable(len(text) if at is None or at < 0 else at) from None
        try:
            made: Parsed = maker(len(text)).transform(tree)
        except lark.exceptions.VisitError as wrong:  # lark wraps what a rule of ours raises
            raise (wrong.orig_exc if isinstance(wrong.orig_exc, Unreadable) else wrong) from None
        return made

    return read


@cache
def _parse_all() -> dict[str, Parsed | Unreadable]:
    return {}


def _parse(text: str) -> Parsed:
    known = _parse_all()
    found = known.get(text)
    if found is None:
        if len(known) > 20_000:  # what is parsed is kept, up to a bound
            known.clear()
        try:
            found = _parser()(text)
        except Unreadable as wrong:
            found = wrong
        known[text] = found
    if isinstance(found, Unreadable):
        raise Unreadable(found.at)
    return found


RANK = {"**": 0, "*": 1, "/": 1, "MOD": 1, "+": 2, "-": 2, "OR": 2, "XOR": 2, "AND": 2}
# Where a bracket compares, AND OR XOR bind loosest: a later habit, since the report has no comparisons.
LATER = {**RANK, "EQ": 3, "NE": 3, "GT": 3, "GE": 3, "LT": 3, "LE": 3, "AND": 4, "OR": 4, "XOR": 4}


def in_order(operands: list[tuple[str, Code]], operators: list[str]) -> Code:
    """A flat row of operands to code: higher rank first, equal ranks left to right (NIST 3.3.2.3)."""
    rank = LATER if any(each in ("EQ", "NE", "GT", "GE", "LT", "LE") for each in operators) else RANK
    made: Code = []
    waiting: list[str] = []
    skip = False
    for place, (kind, code) in enumerate(operands):
        if skip:
            skip = False
            continue
        made += code
        operator = operators[place] if place < len(operators) else None
        if kind == "atan" and operator == "/" and operands[place + 1][0] == "bracket":
            made.pop()
            made += [*operands[place + 1][1], (OP["atan2"], 0)]
            skip = True
            operator = operators[place + 1] if place + 1 < len(operators) else None
        while waiting and (operator is None or rank[waiting[-1]] <= rank[operator]):
            made.append((OP[waiting.pop()], 0))
        if operator is not None:
            waiting.append(operator)
    return made


def _maker(lark: Any) -> Any:
    """The transformer; a class made here, since lark is imported only where it is used."""

    class Maker(lark.Transformer):  # type: ignore[misc]
        def __init__(self, length: int) -> None:
            super().__init__()
            self.length = length
            self.names: dict[str, int] = {}
            self.words: list[tuple[str, int, int]] = []

        def slot(self, name: str) -> float:
            return self.names.setdefault(name.lower(), len(self.names))

        def done(self, kind: str, key: str = "", code: Code | None = None, more: Code | None = None) -> Parsed:
            ends = [start for _, start, _ in self.words[1:]] + [self.length]
            words = tuple((letter, start, end) for (letter, start, _), end in zip(self.words, ends))
            return Parsed(kind, key, code or [], words, tuple(self.names), more or [])

        # values: ("kind", code)
        def number(self, at: list[Any]) -> tuple[str, Code]:
            return "number", [(OP["const"], float(at[0]))]

        def named(self, at: list[Any]) -> tuple[str, Code]:
            return "name", [(OP["named"], self.slot(str(at[0])))]

        def parameter(self, at: list[Any]) -> tuple[str, Code]:
            kind, code = at[0]
            if kind == "name":
                return "named", code
            if kind == "number" and code[0][1] == int(code[0][1]) and code[0][1] < 10_000:
                return "fixed", [(OP["load"], code[0][1])]
            return "computed", code

        def load(self, at: list[Any]) -> tuple[str, Code]:
            kind, code = at[0]
            return "load", [*code, (OP["loadx"], 0)] if kind == "computed" else code

        def exists(self, at: list[Any]) -> tuple[str, Code]:
            kind, code = at[0]
            if kind == "computed":
                return "exists", [*code, (OP["existsx"], 0)]
            return "exists", [(OP["existsn" if kind == "named" else "exists"], code[0][1])]

        def bracket(self, at: list[Any]) -> tuple[str, Code]:
            return "bracket", at[0]

        def sum(self, at: list[Any]) -> Code:
            return in_order(at[::2], [str(each) for each in at[1::2]])

        def function(self, at: list[Any]) -> tuple[str, Code]:
            name = str(at[0])
            return ("atan" if name == "ATAN" else "function"), [*at[1][1], (OP[name], 0)]

        def ratio(self, at: list[Any]) -> tuple[str, Code]:
            if at[0] != "ATAN":
                raise Unreadable(at[0].start_pos)
            return "ratio", [*at[1][1], *at[3][1], (OP["atan2"], 0)]

        def signed(self, at: list[Any]) -> tuple[str, Code]:
            return "signed", [*at[1][1], (OP["negate"], 0)] if at[0] == "-" else at[1][1]

        # items: ("word" | "set", letter, code)
        def word(self, at: list[Any]) -> tuple[str, str, Code]:
            self.words.append((str(at[0]), at[0].start_pos, at[0].start_pos))
            return "word", str(at[0]), at[1][1]

        def setting(self, at: list[Any]) -> tuple[str, str, Code]:
            kind, code = at[0]
            if kind == "computed":
                return "set", "", [*code, *at[1], (OP["setx"], 0)]
            return "set", "", [*at[1], (OP["setn" if kind == "named" else "set"], code[0][1])]

        def name(self, at: list[Any]) -> str:
            text = str(at[0])
            return text.lower() if text.startswith("<") else text.lstrip("0") or "0"

        def items(self, at: list[Any]) -> Parsed:
            return self.done("items", "", block_code(at))

        def numbered_items(self, at: list[Any]) -> Parsed:
            return self.done("items", "", block_code(at[1:]))

        def if_then(self, at: list[Any]) -> Parsed:
            return self.done("items", "", [*at[0][1], (OP["end-if-not"], 0), *block_code(at[1:])])

        def goto(self, at: list[Any]) -> Parsed:
            return self.done("items", "", [*at[0][1], (OP["goto"], 0)])

        def if_goto(self, at: list[Any]) -> Parsed:
            return self.done("items", "", [*at[0][1], (OP["end-if-not"], 0), *at[1][1], (OP["goto"], 0)])

        def while_do(self, at: list[Any]) -> Parsed:
            return self.done("while", f"DO{at[1]}", at[0][1])

        def do_number(self, at: list[Any]) -> Parsed:
            return self.done("while", f"DO{at[0]}", [(OP["const"], 1.0)])

        def end_number(self, at: list[Any]) -> Parsed:
            return self.done("endwhile", f"DO{at[0]}")

        def call(self, at: list[Any]) -> Parsed:
            code: Code = []
            for place, (_, value) in enumerate(at[1:]):
                code += [*value, (OP["stage"], place + 1)]
            return self.done("call", at[0], code, [(len(at) - 1, 0.0)])

        def __default__(self, data: Any, children: list[Any], meta: Any) -> Parsed:
            kind = str(data).strip("_")
            return self.done(kind, children[0], children[1][1] if len(children) > 1 else [])

    return Maker


def block_code(items: list[tuple[str, str, Code]]) -> Code:
    """Words and settings of a block; M98, M99 and G65 take their words with them."""
    code: Code = []
    words = [(letter, value) for kind, letter, value in items if kind == "word"]
    special = [
        (letter, value[0][1])
        for letter, value in words
        if len(value) == 1 and value[0][0] == OP["const"] and (letter, value[0][1]) in SPECIAL
    ]
    what = special[0] if special else None
    taken = SPECIAL[what] if what else ""
    row = 0
    left = 0
    kept: dict[str, Code] = {}
    arguments: list[tuple[str, Code]] = []
    for kind, letter, value in items:
        if kind == "set":
            code += value
            continue
        own = what is not None and len(value) == 1 and (letter, value[0][1]) == what
        if own:
            pass
        elif what and letter in taken:
            kept[letter] = value
        elif what and what[0] == "G":
            arguments.append((letter, value))
        else:
            code += [*value, (OP["word"], row)]
            left += 1
        row += 1
    if left:
        code.append((OP["step"], 0))
    if what is None:
        return code
    if what == ("M", 99.0):
        return [*code, *kept.get("P", []), (OP["back"], float("P" in kept))]
    if what in (("G", 66.0), ("G", 67.0)):
        return [*code, (OP["stop"], 0)]
    level: dict[str, int] = {}
    for letter, value in arguments:
        number = ARGUMENTS.get(letter, 0)
        if letter in "IJK":  # I J K may come again: #7 #8 #9, #10 ...
            number += 3 * level.get(letter, 0)
            level[letter] = level.get(letter, 0) + 1
        if 0 < number <= 33:
            code += [*value, (OP["stage"], number)]
    if "P" not in kept:
        return [*code, (OP["stop"], 1)]
    code += [*kept["P"], *kept.get("L", [(OP["const"], 1.0)])]
    return [*code, (OP["macro" if what[0] == "G" else "program"], 0)]


# M98, M99, G65, and G66 G67 (a macro at every move: not followed), with the letters that belong to them.
SPECIAL = {("M", 98.0): "PL", ("M", 99.0): "PL", ("G", 65.0): "PL", ("G", 66.0): "PL", ("G", 67.0): ""}
