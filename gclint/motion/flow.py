"""The plan of one file with flow: where loops and branches lead, where subprograms and line numbers are."""

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Iterator
from dataclasses import dataclass, field
from itertools import islice

import numpy as np

from gclint.columns import Column
from gclint.program.code import OP, Code, Parsed, Unreadable, bare, parse
from gclint.tables.program import BEHIND_END, BROKEN, DELETED, FLOW, WORDS_OF_A_BLOCK, Program

MOST_STRUCTURE = 10_000  # O words, loops and branches of one file
MOST_CHARACTERS = 250_000  # of their lines
STRUCTURE = re.compile(r"O(?:[0-9]|<)|WHILE|DO|END")
BYTE_ORDER_MARK = b"\xef\xbb\xbf"
NUMBERS = re.compile(
    rb"(?:^(?:\xef\xbb\xbf)?|(?<=\r))[ \t]*(?:/[ \t]*)?"
    rb"(?:([NO:])[ \t]*([0-9][0-9 \t]{0,9}))(?:[ \t]*O[ \t]*([0-9]{1,9}))?",
    re.M | re.I,
)
PROGRAM_NUMBER = re.compile(rb"[Oo:][ \t]*[0-9]")
JUMPS = re.compile(rb"GO[ \t]*TO|M[ \t]*0*[ \t]*9[ \t]*9", re.I)  # without any, N numbers lead nowhere
CALLED = re.compile(rb"(?:M[ \t]*0*[ \t]*98|G[ \t]*0*[ \t]*65)[^\r\n(;P]*P[ \t]*([0-9]+)", re.I)
AT_A_TIME = 100_000
FLOW_BEHIND = re.compile(
    rb"[ \t]*(?:sub|endsub|call|return|if|elseif|else|endif|while|endwhile|do|repeat|endrepeat|break|continue)", re.I
)


@dataclass
class Padded:
    """The columns of a program with room for one more block behind, into which words with values are written."""

    block_line: Column
    block_word: Column
    block_flags: Column
    word_letter: Column
    word_value: Column
    word_start: Column
    word_end: Column


def padded(program: Program) -> Padded:
    words = int(program.block_word[-1]) if len(program.block_word) else 0

    def longer(column: Column, more: int) -> Column:
        whole, until = column.base, len(column) + more
        if isinstance(whole, np.ndarray) and whole.ctypes.data == column.ctypes.data and len(whole) >= until:
            return whole[:until]  # as read, with room behind that nothing else looks at
        return np.concatenate((column, np.zeros(more, column.dtype)))

    return Padded(
        longer(program.block_line, 1),
        _ends_with(longer(program.block_word, 1), words),
        program.block_flags,
        longer(program.word_letter, WORDS_OF_A_BLOCK),
        longer(program.word_value, WORDS_OF_A_BLOCK),
        longer(program.word_start, WORDS_OF_A_BLOCK),
        longer(program.word_end, WORDS_OF_A_BLOCK),
    )


def _ends_with(column: Column, value: int) -> Column:
    column[-1] = value
    return column


@dataclass
class Plan:
    """What `flow` says of each block with structure: its code, and the entry of one reached from above."""

    program: Program
    flow: dict[int, tuple[Code, int]] = field(default_factory=dict)
    subs: dict[str, int] = field(default_factory=dict)  # O word to the block behind `sub`
    lines: dict[int, list[int]] = field(default_factory=dict)  # N numbers to blocks
    numbers: dict[int, int] = field(default_factory=dict)  # program numbers to blocks
    loops: int = 0
    whole: bool = True  # False: a bound was reached, and partners may lie behind it

    def target(self, number: float, block: int) -> int:
        """The block with this line number, the next below or else the first; -1 where there is none."""
        places = self.lines.get(round(number), []) if abs(number) < 1e9 else []
        if not places:
            return -1
        return places[bisect_right(places, block) % len(places)]


def text_of(program: Program, block: int) -> tuple[str, int]:
    """The line a block stands on, one character for each byte, and the byte offset of its first."""
    line = int(program.block_line[block])
    start = int(program.line_start[line - 1])
    if start == 0 and program.data.startswith(BYTE_ORDER_MARK):
        start = len(BYTE_ORDER_MARK)
    return program.data[start : int(program.line_start[line])].decode("latin-1"), start


@dataclass
class _Open:
    kind: str
    key: str
    block: int
    parsed: Parsed
    leaving: list[int] = field(default_factory=list)  # blocks with `break`
    again: list[int] = field(default_factory=list)  # blocks with `continue`
    branch: tuple[int, Parsed] | None = None  # the last if or elseif without its next branch
    ends: list[int] = field(default_factory=list)  # elseif and else: reached from above they go to the endif


def plan(program: Program, first_loop: int) -> Plan:
    """Match what opens and closes; a word of flow that finds no partner stops whoever comes to it."""
    made = Plan(program, loops=first_loop)
    _find_numbers(made)
    opened: list[_Open] = []
    lines = characters = 0
    flags = program.block_flags
    for block in np.flatnonzero((flags & FLOW != 0) & (flags & (DELETED | BROKEN | BEHIND_END) == 0)).tolist():
        line = text_of(program, block)[0]
        characters += len(line)
        lines += 1
        if lines > MOST_STRUCTURE or characters > max(MOST_CHARACTERS, len(line)):
            made.whole = False
            break
        text = bare(line)[0]
        if not STRUCTURE.match(text):
            continue
        try:
            parsed = parse(text)
        except Unreadable:
            continue
        _place(made, opened, block, parsed)
    for each in opened:
        made.flow[each.block] = ([(OP["stop"], 2)], 0)
    return made


def main_of(made: Plan) -> int:
    """The first block of the main program: the top of the file, unless a subprogram stands there.

    A numbered program is a subprogram if it ends with M99 and something in the file calls it; the main program is then
    the first one that ends with M2 or M30 and is not called.
    """
    program = made.program
    first_words = np.flatnonzero(program.block_word[1:] > program.block_word[:-1])
    starts = sorted((block, number) for number, block in made.numbers.items())
    if len(starts) < 2 or not len(first_words) or starts[0][0] > first_words[0]:
        return 0
    executed = program.block_flags & (DELETED | BROKEN | BEHIND_END) == 0
    words = np.flatnonzero((program.word_letter == ord("M")) & np.isin(program.word_value, (2, 30, 99)))
    blocks = np.searchsorted(program.block_word, words, side="right") - 1
    words, blocks = words[executed[blocks]], blocks[executed[blocks]]
    called = {int(number) for each in CALLED.findall(program.data) for number in (each[:9], each[-4:])}
    for place, (block, number) in enumerate(starts):
        row = int(np.searchsorted(blocks, block))
        ends = float(program.word_value[words[row]]) if row < len(words) else 0.0
        if place == 0 and not (ends == 99 and number in called):
            return 0
        if place and ends in (2, 30) and number not in called:
            return block
    return 0


def _find_numbers(made: Plan) -> None:
    program = made.program
    jumps = _jumps(program)
    matches = NUMBERS.finditer(program.data) if jumps else _named_lines(program.data)
    while found := [*islice(matches, AT_A_TIME)]:
        _note_numbers(made, found, jumps)


def _jumps(program: Program) -> bool:
    """Whether anything leads to an N number."""
    flags, rows = program.block_flags, program.block_line - 1
    for row in rows[flags & FLOW != 0].tolist():
        if JUMPS.search(program.data, int(program.line_start[row]), int(program.line_start[row + 1])):
            return True
    return False


def _named_lines(data: bytes) -> Iterator[re.Match[bytes]]:
    """The lines that NUMBERS finds and that have a program number; a search for all line starts takes far longer."""
    behind = 0
    for mark in PROGRAM_NUMBER.finditer(data):
        if mark.start() < behind:
            continue
        start = max(data.rfind(b"\n", behind, mark.start()), data.rfind(b"\r", behind, mark.start())) + 1
        found = NUMBERS.match(data, max(start, behind))
        if found:
            yield found
        behind = mark.end()


def _note_numbers(made: Plan, all_found: list[re.Match[bytes]], jumps: bool) -> None:
    program = made.program
    # One search for many: each copies the column to the type of what is looked for.
    lines = np.searchsorted(program.line_start, np.array([found.start(2) for found in all_found], np.int64), "right")
    blocks = np.searchsorted(program.block_line, lines.astype(np.int32)).tolist()
    behind = np.flatnonzero(program.block_flags & BEHIND_END)  # behind the closing %: read by no controller
    end = int(behind[0]) if len(behind) else len(program.block_flags) + 1
    for found, block in zip(all_found, blocks):
        if block >= end:
            return
        if found[1] in b"Nn":
            if jumps:
                made.lines.setdefault(int(found[2].replace(b" ", b"").replace(b"\t", b"")), []).append(block)
            number = found[3]
        else:
            number = found[2].replace(b" ", b"").replace(b"\t", b"")
        if number and not FLOW_BEHIND.match(program.data, found.end()):
            made.numbers.setdefault(int(number), block)


def _place(made: Plan, opened: list[_Open], block: int, parsed: Parsed) -> None:
    kind, key = parsed.kind, parsed.key
    stop: tuple[Code, int] = ([(OP["stop"], 2)], 0)
    if kind in ("sub", "if", "repeat", "do"):
        opened.append(_Open(kind, key, block, parsed, branch=(block, parsed) if kind == "if" else None))
        if kind == "do":
            made.flow[block] = ([], 0)
        elif kind == "sub":
            made.subs.setdefault(key, block + 1)
        return
    if kind == "while":
        if opened and opened[-1].kind == "do" and opened[-1].key == key:
            loop = opened.pop()
            made.flow[block] = ([*parsed.code, (OP["jump-if"], loop.block + 1)], 0)
            _leave(made, loop, block + 1, block)
        else:
            opened.append(_Open(kind, key, block, parsed))
        return
    if kind == "return":
        code: Code = [*parsed.code, (OP["return"], float(bool(parsed.code)))]
        made.flow[block] = (code, 0)
        return
    if kind in ("break", "continue"):
        for each in reversed(opened):
            if each.kind in ("while", "do", "repeat") and each.key == key:
                (each.leaving if kind == "break" else each.again).append(block)
                return
        made.flow[block] = stop
        return
    if kind not in ("endsub", "elseif", "else", "endif", "endwhile", "endrepeat"):
        return
    partner = {"endsub": "sub", "endwhile": "while", "endrepeat": "repeat"}.get(kind, "if")
    if not opened or opened[-1].kind != partner or opened[-1].key != key:
        made.flow[block] = stop
        return
    if kind in ("elseif", "else"):
        _branch(made, opened[-1], block, parsed)
        return
    last = opened.pop()
    if kind == "endsub":
        made.flow[last.block] = ([(OP["jump"], block + 1)], 0)
        made.flow[block] = ([*parsed.code, (OP["return"], float(bool(parsed.code)))], 0)
    elif kind == "endif":
        made.flow[block] = ([], 0)
        if last.branch is not None:
            _condition(made, last.branch, block)
        for end in last.ends:
            code, _ = made.flow[end]
            made.flow[end] = ([*code, (OP["end"], 0), (OP["jump"], block)], len(code) + 1)
    elif kind == "endwhile":
        made.flow[last.block] = ([*last.parsed.code, (OP["jump-if-not"], block + 1)], 0)
        made.flow[block] = ([(OP["jump"], last.block)], 0)
        _leave(made, last, block + 1, last.block)
    else:
        number = made.loops
        made.loops += 1
        made.flow[last.block] = ([*last.parsed.code, (OP["repeat"], block + 1), (OP["const"], number)], 0)
        made.flow[block] = ([(OP["again"], last.block + 1), (OP["const"], number)], 0)
        _leave(made, last, block + 1, block)


def _leave(made: Plan, loop: _Open, behind: int, again: int) -> None:
    for block in loop.leaving:
        made.flow[block] = ([(OP["jump"], behind)], 0)
    for block in loop.again:
        made.flow[block] = ([(OP["jump"], again)], 0)


def _condition(made: Plan, branch: tuple[int, Parsed], otherwise: int) -> None:
    made.flow[branch[0]] = ([*branch[1].code, (OP["else-if-not"], otherwise)], 0)


def _branch(made: Plan, opened: _Open, block: int, parsed: Parsed) -> None:
    if opened.branch is None:  # behind an else
        made.flow[block] = ([(OP["stop"], 2)], 0)
        return
    _condition(made, opened.branch, block)
    opened.branch = (block, parsed) if parsed.kind == "elseif" else None
    opened.ends.append(block)
    made.flow.setdefault(block, ([], 0))
