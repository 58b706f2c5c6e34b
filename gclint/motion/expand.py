"""Programs with parameters, expressions or flow: feeds the follower what it asks for and hears what is wrong."""

from __future__ import annotations

import re
from array import array
from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import numpy as np

from gclint.columns import Column
from gclint.faults import CODE, FaultRows
from gclint.motion.flow import MOST_STRUCTURE, Padded, Plan, main_of, padded, plan, text_of
from gclint.motion.subprogram_files import find
from gclint.problem import Problem
from gclint.program.code import FUNCTIONS, OP, OPERATORS, Code, Unreadable, bare, form_of, parse_alike
from gclint.tables.motion import Beside, Followed
from gclint.tables.program import FLOW, WORDS_OF_A_BLOCK, Program, decode
from gclint.tables.setup import Assumed, Limits

MOST_GLOBALS, MOST_LOCALS, MOST_LOOPS = 1000, 250, 1000
MOST_FILES = 100  # subprograms in files beside
FIXED = {"structure": MOST_STRUCTURE, "names": MOST_LOCALS, "words": WORDS_OF_A_BLOCK}
COLUMNS = ("kind", "line", "start", "end", "a", "b")
LONGEST_SHOWN = 100  # bytes of a file beside that are shown with a fault
MOST_PLACES = 1 << 30  # lines of files beside, once for each line that calls
MOST_TOLD = 1000  # faults of one kind on one line, in a loop
# A line with expressions or flow counts as one for each so many characters, as less where one alike was parsed.
CHARACTERS, ALIKE = 15, 0.25

# What following lacks, by why it stops.
NEEDS = {
    "branch-unknown": "nothing: which way the program goes from here depends on a value that is known only when "
    "it runs",
    "flow-unmatched": "what this line calls or jumps to, or the partner of what it opens or closes",
    "unreadable": "a line that can be read",
    "names": "at most {most:,} named parameters of its own in a program, and 1,000 of all programs and loops",
    "words": "at most {most:,} words on a line",
    "blocks": "an end within {most:,} blocks, a long expression counted as several "
    "(`[limits] blocks` in shop.toml raises it)",
    "calls": "at most {most:,} calls inside each other (`[limits] calls` in shop.toml raises it)",
    "expressions": "at most {most:,} different lines of 15 characters with expressions or flow "
    "(`[limits] expressions` in shop.toml raises it)",
    "structure": "at most {most:,} O words, loops and branches",
    "": "a line that gclint follows (no macro at every move, no call without P)",
}
# What a block does that neither leads elsewhere nor ends anything.
PLAIN = {OP[name] for name in (
    "const", "load", "loadx", "named", "exists", "existsx", "existsn", *OPERATORS, *FUNCTIONS, "atan2", "negate", "set",
    "setx", "setn", "word", "step",
)}  # fmt: skip
STOPS = ("", "", "flow-unmatched", "expressions", "unreadable")  # by the number of a stop in code


class FaultsOnce(FaultRows):
    """As FaultRows; of one kind and place only the first 1000 are kept, since a loop tells the same again."""

    def __init__(self) -> None:
        super().__init__()
        self.told: dict[tuple[int, int, int], int] = {}

    def add(self, kind: int, line: int, start: int, end: int, a: float = np.nan, b: float = np.nan) -> None:
        count = self.told[kind, line, start] = self.told.get((kind, line, start), 0) + 1
        if count <= MOST_TOLD:
            super().add(kind, line, start, end, a, b)


@dataclass
class Host:
    """What the follower asks; see `gclint.motion.follow`."""

    interpreter: Any
    faults: FaultRows
    limits: Limits
    folder: Path | None
    # what the controller makes of a file beside, and what it takes for granted; whether inches are in force
    taken: Callable[[Program, FaultRows, bool], tuple[Program, tuple[Assumed, ...]]]
    treated: bool  # whether the controller's card changes or drops words
    alike: bool = False  # whether the last block has the code of all that differ from it in plain numbers alone
    plans: list[Plan] = field(default_factory=list)
    tables: list[Padded] = field(default_factory=list)
    subs: list[tuple[int, int]] = field(default_factory=list)
    packed: float = 0.0  # repeats in front of the program number of M98
    known: dict[tuple[int, str], int] = field(default_factory=dict)
    slots: dict[str, int] = field(default_factory=lambda: {"<_value>": 0, "": 1})
    locals: dict[str, int] = field(default_factory=dict)
    assumed: list[Assumed] = field(default_factory=list)
    place: int = 0  # what is added to the lines of the file beside that is followed
    from_line: int = 0  # the line of the program itself that called
    places: dict[tuple[int, int], int] = field(default_factory=dict)  # (calling line, file): what is added
    next_place: int = 0
    unsaid: dict[int, list[tuple[Any, ...]]] = field(default_factory=dict)  # by file: faults of reading it
    work: float = 0.0  # lines with expressions or flow, see CHARACTERS
    forms: set[str] = field(default_factory=set)
    told: dict[tuple[str, int, int], int] = field(default_factory=dict)

    def add(self, program: Program) -> int:
        if not self.plans:
            self.next_place = program.lines
        self.tables.append(padded(program))
        self.plans.append(plan(program, self.plans[-1].loops if self.plans else 0))
        return len(self.plans) - 1

    # what the follower asks

    def enter(self, file: int, caller: int, block: int) -> Padded:
        """The columns of a file; rows made in a file beside have places of their own, see `table.Beside`."""
        if file == 0:
            self.place = 0
        else:
            if caller == 0 and block >= 0:
                self.from_line = int(self.plans[0].program.block_line[block])
            self.place = self._place(file)
        for kind, line, *span in self.unsaid.pop(file, ()):
            self.faults.add(kind, self.place + line, *span)
        self.interpreter.tell_from(self.place)
        self.interpreter.use(self.tables[file])
        # the last entry of block_word belongs to the block behind; `use` reads one block fewer
        return self.tables[file]

    def text(self, file: int) -> tuple[bytes, Column]:
        """The bytes of a file, and where each of its lines begins."""
        program = self.plans[file].program
        return program.data, program.line_start

    def _place(self, file: int) -> int:
        key = (self.from_line, file)
        if key not in self.places:
            lines = self.plans[file].program.lines
            if self.next_place + lines > MOST_PLACES:  # as if an earlier line had called it
                return next((at for (_, known), at in self.places.items() if known == file), self.next_place)
            self.places[key] = self.next_place
            self.next_place += lines
        return self.places[key]

    def code_of(self, file: int, block: int) -> tuple[Any, ...]:
        made, table = self.plans[file], self.tables[file]
        line = int(table.block_line[block])
        self.alike = False
        text, start = text_of(made.program, block)
        kept, at = bare(text)
        form, numbers = form_of(kept)
        self.work += max(1, len(text) / CHARACTERS) * (ALIKE if form in self.forms else 1)
        if self.work > self.limits.expressions:
            self.bound("expressions", file, block)
            return _ready(line, [(OP["stop"], 3)], 0, [], start, None)
        self.forms.add(form)
        try:
            parsed = parse_alike(kept, form, numbers)
        except Unreadable as wrong:
            place = start + at[min(wrong.at, len(at) - 1)]
            self._fault("expression-unreadable", file, block, place)
            flow = made.program.block_flags[block] & FLOW
            rows = range(int(table.block_word[block]), 0 if flow else int(table.block_word[block + 1]))
            words = [
                (chr(table.word_letter[w]), int(table.word_start[w]), int(table.word_end[w])) for w in rows
            ][:WORDS_OF_A_BLOCK]
            code: Code = [(OP["stop"], 4)] if flow else [
                each for row in range(len(words)) for each in ((OP["const"], np.nan), (OP["word"], row))
            ] + [(OP["step"], 0)] * bool(words)  # fmt: skip
            return _ready(line, code, 0, words, 0, None)
        if len(parsed.words) > WORDS_OF_A_BLOCK:
            self.bound("words", file, block)
            return _ready(line, [(OP["stop"], 3)], 0, [], start, at)
        entry = 0
        if block in made.flow:
            code, entry = made.flow[block]
        elif parsed.kind == "items":
            code = list(parsed.code)
            if code[-1:] == [(OP["goto"], 0)] and code[-2][0] == OP["const"]:
                to = self.target(file, block, code[-2][1])
                code[-2:] = [(OP["jump"], to)] if to >= 0 else [(OP["stop"], 2)]
        elif parsed.kind == "call":
            sub = self.sub(file, parsed.key)
            code = [*parsed.code, (OP["call"], sub)]
        else:
            code = [(OP["stop"], 2)]
        if any(operation == OP["stop"] and number == 2 for operation, number in code):
            if made.whole:
                self._fault("flow-unmatched", file, block)
            else:
                self.bound("structure", file, block)
        if self.plans[-1].loops > MOST_LOOPS or (parsed.names and not self._slots(parsed.names)):
            self.bound("names", file, block)
            return _ready(line, [(OP["stop"], 3)], 0, [], start, at)
        named = (OP["named"], OP["existsn"], OP["setn"])
        code = [
            (operation, float(self._slot(parsed.names[int(number)])) if operation in named else number)
            for operation, number in code
        ]
        if parsed.kind == "items" and block not in made.flow:
            code = self._obeyed(file, block, code, [start + at[first] for _, first, _ in parsed.words])
            self.alike = not self.treated and all(operation in PLAIN for operation, _ in code)
        return _ready(line, code, entry, list(parsed.words), start, at)

    def _obeyed(self, file: int, block: int, code: Code, starts: list[int]) -> Code:
        """Words written as plain numbers have the value that the controller's card gives them, or are not there."""
        if not self.treated:
            return code
        table = self.tables[file]
        rows = range(int(table.block_word[block]), int(table.block_word[block + 1]))
        values = {int(table.word_start[row]): float(table.word_value[row]) for row in rows}
        all_listed = not self.plans[file].program.block_flags[block] & FLOW
        before = (OP["word"], OP["set"], OP["setx"], OP["setn"], OP["end-if-not"], OP["stage"])
        made: Code = []
        for operation, number in code:
            made.append((operation, number))
            if operation != OP["word"]:
                continue
            start = starts[int(number)]
            if start not in values and all_listed:
                made[-1] = (OP["setn"], 1)  # a word that is ignored: its value goes where nobody looks
            elif made[-2][0] == OP["const"] and (len(made) == 2 or made[-3][0] in before):
                made[-2] = (OP["const"], values.get(start, made[-2][1]))
        return made

    def _slot(self, name: str) -> int:
        return self.slots[name] if name.startswith("<_") else MOST_GLOBALS + self.locals[name]

    def _slots(self, names: tuple[str, ...]) -> bool:
        for name in names:
            table = self.slots if name.startswith("<_") else self.locals
            table.setdefault(name, len(table))
        return len(self.slots) <= MOST_GLOBALS and len(self.locals) <= MOST_LOCALS

    def target(self, file: int, block: int, number: float) -> int:
        return self.plans[file].target(number, block)

    def sub(self, file: int, key: str) -> int:
        """A subprogram of O words, in this file, in any file read so far, or in a file beside that bears its name."""
        if (file, key) in self.known:
            return self.known[file, key]
        place = next(
            ((at, made.subs[key]) for at, made in self._from(file) if key in made.subs),
            None,
        )
        if place is None:
            name = key.strip("<>")
            beside = self._beside((name,) if key.startswith("<") else (f"o{name}", name))
            if beside is not None:
                place = (beside, self.plans[beside].subs.get(key, 0))
        return self._know((file, key), place)

    def program(self, file: int, block: int, number: float) -> int:
        """The program that M98 or G65 calls. A habit packs repeats before the last four digits of P (from memory)."""
        self.packed = 0.0
        if not 0 <= number < 1e9 or number != int(number):
            return -1
        found = self._program(file, int(number))
        if found < 0 and number >= 10_000:
            found = self._program(file, int(number) % 10_000)
            self.packed = float(int(number) // 10_000)
        return found

    def _program(self, file: int, number: int) -> int:
        key = f"P{number}"
        if (file, key) in self.known:
            return self.known[file, key]
        place = next(((at, made.numbers[number]) for at, made in self._from(file) if number in made.numbers), None)
        if place is None:
            beside = self._beside((f"o{number}", f"o{number:04d}", f"{number}", f"{number:04d}"))
            if beside is not None:
                place = (beside, self.plans[beside].numbers.get(number, 0))
        return self._know((file, key), place)

    def _from(self, file: int) -> list[tuple[int, Plan]]:
        return sorted(enumerate(self.plans), key=lambda each: (each[0] != file, each[0]))

    def _know(self, key: tuple[int, str], place: tuple[int, int] | None) -> int:
        if place is not None:
            self.subs.append(place)
        self.known[key] = len(self.subs) - 1 if place is not None else -1
        return self.known[key]

    def _beside(self, names: tuple[str, ...]) -> int | None:
        if len(self.plans) > MOST_FILES:
            return None
        try:
            program = find(self.folder, names)
        except Problem:
            return None
        if program is None or program.data == self.plans[0].program.data:
            return None
        rows = FaultRows()
        written = program
        program, taken = self.taken(program, rows, self.interpreter.scale != 1)
        self.treated |= program is not written
        told = [[getattr(each, name).tolist() for name in COLUMNS] for each in (program.faults, rows.columns())]
        self.unsaid[len(self.plans)] = [
            row for each in told for row in zip(*each) if row[0] not in (CODE["expression"], CODE["flow"])
        ][:MOST_TOLD]
        self.assumed += taken
        self.assumed.append(
            Assumed("subprogram", program.name, "it lies beside the program and is called by it")
        )
        return self.add(program)

    # what the follower tells

    def tell(self, kind: str, file: int, block: int, number: float) -> None:
        count = self.told[kind, file, block] = self.told.get((kind, file, block), 0) + 1
        if count <= MOST_TOLD:
            self._fault(kind, file, block, a=number)

    def stop(self, kind: str, file: int, block: int) -> None:
        if kind == "flow-unmatched" and not self.plans[file].whole:
            self.bound("structure", file, block)
        elif kind == "flow-unmatched":
            self._fault(kind, file, block)
        self._stop(kind, file, block, 0)

    def halt(self, number: int, file: int, block: int) -> None:
        """A block that `code_of` has marked with a stop; what is wrong with it has been told."""
        self._stop(STOPS[number], file, block, 0)

    def bound(self, which: str, file: int, block: int) -> None:
        most = FIXED[which] if which in FIXED else getattr(self.limits, which)
        self._fault("bound-reached", file, min(block, len(self.plans[file].program.block_line) - 1), a=most)
        self._stop(which, file, block, most)

    def main_ends(self, file: int, block: int) -> None:
        line = int(self.plans[file].program.block_line[block])
        again = Assumed("M99", "the end of the program", f"line {line} would start the program again and again")
        if again not in self.assumed:
            self.assumed.append(again)

    def _stop(self, why: str, file: int, block: int, most: int) -> None:
        program = self.plans[file].program
        line = int(program.block_line[min(block, len(program.block_line) - 1)])
        where = f" ({program.name} line {line})" if file else ""
        if not self.interpreter.stopped_at:
            self.interpreter.stopped_at = self.place + line
            self.interpreter.stopped_because = NEEDS[why].format(most=most) + where

    def _fault(self, kind: str, file: int, block: int, at: int = -1, a: float = np.nan) -> None:
        program = self.plans[file].program
        text, start = text_of(program, block)
        line, end = self.place + int(program.block_line[block]), start + len(text.rstrip())
        start = at if at >= 0 else start + len(text) - len(text.lstrip())
        self.faults.add(CODE[kind], line, start, max(end, start), a)


def _ready(
    line: int, code: Code, entry: int, words: list[tuple[str, int, int]], start: int, at: list[int] | None
) -> tuple[Any, ...]:
    code = [*code, (OP["end"], 0)]
    places = [(start + at[a], start + at[b - 1] + 1) if at else (a, b) for _, a, b in words]
    return (
        line,
        np.array([operation for operation, _ in code], np.uint8),
        np.array([number for _, number in code], np.float64),
        np.array([ord(letter) for letter, _, _ in words], np.uint8),
        np.array([a for a, _ in places], np.int32),
        np.array([b for _, b in places], np.int32),
        entry,
    )


def follow(
    program: Program, interpreter: Any, faults: FaultRows, limits: Limits, folder: Path | None,
    taken: Callable[[Program, FaultRows, bool], tuple[Program, tuple[Assumed, ...]]], treated: bool,
) -> tuple[Followed, Beside | None, list[Assumed]]:
    """Run the interpreter over a program that has parameters, expressions or flow.

    Gives what it came to, where rows of files beside stand, and what was taken for granted. `taken` makes of a file
    beside what the controller makes of it; `treated` says that its card changed or dropped words of this program.
    """
    from gclint.motion.follow import Follower

    host = Host(interpreter, faults, limits, folder, taken, treated)
    host.add(program)
    vacant = re.search(rb"#[ \t]*0(?![0-9.])", program.data) is not None
    interpreter.most = max(limits.moves, 4 * len(program.block_line))
    follower = Follower(host, interpreter, MOST_LOCALS, MOST_GLOBALS, MOST_LOOPS, limits.calls, vacant)
    first = main_of(host.plans[0])
    if first:
        line = int(program.block_line[first])
        because = "the program at the top ends with M99 and is called from there"
        host.assumed.append(Assumed("main program", f"the one that begins on line {line}", because))
    follower.run(limits.blocks, first)
    beside = _beside(host) if host.places else None
    files = tuple(each.program.name for each in host.plans[1:])
    came_to = Followed(follower.blocks + interpreter.executed, follower.calls, follower.deepest, files)
    return came_to, beside, host.assumed


def _beside(host: Host) -> Beside:
    """Where rows stand; the columns themselves get the line of the call."""
    run, faults = host.interpreter, host.faults
    moves = {name: run.table[name][: run.moves] for name in ("line", "feed_line", "speed_line", "tool_line")}
    events: Column = run.event_table["event_line"][: run.events]
    made = Beside(
        base=np.array([*host.places.values()], np.int64),
        call=np.array([line for line, _ in host.places], np.int64),
        file=tuple(host.plans[file].program.name for _, file in host.places),
        line=moves["line"].copy(),
        feed_line=moves["feed_line"].copy(),
        event_line=events.copy(),
        fault_line=np.array(faults.line, np.int32),
        fault_text={},
    )
    pairs = [*host.places]
    for row in np.flatnonzero(made.fault_line > made.base[0]).tolist():
        line, file = pairs[int(np.searchsorted(made.base, made.fault_line[row])) - 1]
        start, end = faults.start[row], faults.end[row]
        made.fault_text[row] = decode(host.plans[file].program.data[start : min(end, start + LONGEST_SHOWN)])
        main = host.plans[0].program
        start, end = int(main.line_start[line - 1]), int(main.line_start[line])
        faults.start[row], faults.end[row] = start, start + len(main.data[start:end].rstrip())
    for column in (*moves.values(), events):
        column[:] = made.calls(column)
    faults.line = array("i", made.calls(made.fault_line).tolist())
    run.stopped_at = int(made.calls(np.array([run.stopped_at]))[0])
    return made
