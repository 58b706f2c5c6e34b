"""The kernel that follows parameters, expressions and flow: it runs the code of blocks and drives the interpreter.

Compiled by Cython; there is no interpreted twin. Code comes from `gclint.program.code` by way of `host.code_of`, one
block at a time and only once; words with their values are written behind the program's own words, where
`Interpreter.step` takes them. Section numbers are those of NIST RS274/NGC; O words and macros are later habits.

A value that is not known before the run is NaN. A parameter that nothing has set is UNSET; #0, and an argument that
was not given to a macro, is VACANT: a word of that value is left out.
"""

from __future__ import annotations

import cython

if not cython.compiled:
    raise ImportError("gclint.motion.follow is a kernel and must be compiled")

import numpy as np
from cython.cimports.libc.math import (
    acos,
    asin,
    atan2,
    ceil,
    cos,
    exp,
    fabs,
    floor,
    fmod,
    isfinite,
    isnan,
    log,
    pow,
    sin,
    sqrt,
    tan,
)

from gclint.program.code import OP

NAN = cython.declare(cython.double, float("nan"))
UNSET = cython.declare(cython.double, float("-inf"))
VACANT = cython.declare(cython.double, float("inf"))
DEGREE = cython.declare(cython.double, 3.141592653589793 / 180)
NEAR = cython.declare(cython.double, 0.0001)  # of an integer, 3.3.2.1
LOCALS = cython.declare(cython.int, 34)  # #1 .. #33 belong to the call
NUMBERED = cython.declare(cython.int, 10_000)
STACK = cython.declare(cython.int, 4096)
OPERATIONS = cython.declare(cython.int, 64)  # of a long block count as one block more
PENDING = cython.declare(cython.int, 2048)
LINE = cython.declare(cython.int, 1000)  # bytes of a line that is read by its form
FORMS = cython.declare(cython.int, 20_000)  # that are kept
CODE_KEPT = cython.declare(cython.Py_ssize_t, 2_000_000)  # operations; behind it a line is made each time it comes
TENS = cython.declare(cython.double[23])
for _n in range(23):
    TENS[_n] = 10.0**_n  # exact, as is a quotient of it and a whole number of 15 digits
ONCE = cython.declare(cython.int, -2)  # a block that was made by its form and not kept

_end = cython.declare(cython.int, OP["end"])
_const = cython.declare(cython.int, OP["const"])
_load = cython.declare(cython.int, OP["load"])
_loadx = cython.declare(cython.int, OP["loadx"])
_named = cython.declare(cython.int, OP["named"])
_exists = cython.declare(cython.int, OP["exists"])
_existsx = cython.declare(cython.int, OP["existsx"])
_existsn = cython.declare(cython.int, OP["existsn"])
_plus = cython.declare(cython.int, OP["+"])
_minus = cython.declare(cython.int, OP["-"])
_times = cython.declare(cython.int, OP["*"])
_over = cython.declare(cython.int, OP["/"])
_power = cython.declare(cython.int, OP["**"])
_mod = cython.declare(cython.int, OP["MOD"])
_and = cython.declare(cython.int, OP["AND"])
_or = cython.declare(cython.int, OP["OR"])
_xor = cython.declare(cython.int, OP["XOR"])
_eq = cython.declare(cython.int, OP["EQ"])
_ne = cython.declare(cython.int, OP["NE"])
_gt = cython.declare(cython.int, OP["GT"])
_ge = cython.declare(cython.int, OP["GE"])
_lt = cython.declare(cython.int, OP["LT"])
_le = cython.declare(cython.int, OP["LE"])
_sin = cython.declare(cython.int, OP["SIN"])
_cos = cython.declare(cython.int, OP["COS"])
_tan = cython.declare(cython.int, OP["TAN"])
_asin = cython.declare(cython.int, OP["ASIN"])
_acos = cython.declare(cython.int, OP["ACOS"])
_atan = cython.declare(cython.int, OP["ATAN"])
_abs = cython.declare(cython.int, OP["ABS"])
_fix = cython.declare(cython.int, OP["FIX"])
_fup = cython.declare(cython.int, OP["FUP"])
_round = cython.declare(cython.int, OP["ROUND"])
_exp = cython.declare(cython.int, OP["EXP"])
_ln = cython.declare(cython.int, OP["LN"])
_sqrt = cython.declare(cython.int, OP["SQRT"])
_atan2 = cython.declare(cython.int, OP["atan2"])
_negate = cython.declare(cython.int, OP["negate"])
_set = cython.declare(cython.int, OP["set"])
_setx = cython.declare(cython.int, OP["setx"])
_setn = cython.declare(cython.int, OP["setn"])
_word = cython.declare(cython.int, OP["word"])
_step = cython.declare(cython.int, OP["step"])
_jump = cython.declare(cython.int, OP["jump"])
_jump_if_not = cython.declare(cython.int, OP["jump-if-not"])
_jump_if = cython.declare(cython.int, OP["jump-if"])
_else_if_not = cython.declare(cython.int, OP["else-if-not"])
_end_if_not = cython.declare(cython.int, OP["end-if-not"])
_goto = cython.declare(cython.int, OP["goto"])
_stage = cython.declare(cython.int, OP["stage"])
_call = cython.declare(cython.int, OP["call"])
_program = cython.declare(cython.int, OP["program"])
_macro = cython.declare(cython.int, OP["macro"])
_return = cython.declare(cython.int, OP["return"])
_back = cython.declare(cython.int, OP["back"])
_repeat = cython.declare(cython.int, OP["repeat"])
_again = cython.declare(cython.int, OP["again"])
_stop = cython.declare(cython.int, OP["stop"])


@cython.cclass
class Form:
    """The code of lines that differ only in their plain numbers: where these go, and which marks its words span."""

    operations: cython.uchar[::1]
    numbers: cython.double[::1]
    plain: cython.int[::1]  # places of the numbers of a line in `numbers`, in the order of the text
    letters: cython.uchar[::1]
    first: cython.int[::1]  # mark of the line where each word begins, and its last
    last: cython.int[::1]

    def __init__(self, operations, numbers, plain, letters, first, last) -> None:
        self.operations, self.numbers, self.plain = operations, numbers, plain
        self.letters, self.first, self.last = letters, first, last


@cython.cclass
class Follower:
    """Follows one program; `host` gives code, places of calls and labels, and is told what is wrong.

    host.code_of(file, block) -> (operations, numbers, letters, starts, ends): arrays of one block, and of its words;
    host.alike: whether that block has the code of any other that differs from it in plain numbers alone
    host.text(file) -> (bytes, where each line begins)
    host.enter(file, caller's file, block) -> its columns; host.target(file, block, line number) -> block or -1
    host.program(file, block, number) -> index in host.subs of (file, block), or -1
    host.tell(kind, file, block, number), host.stop(kind, file, block), host.halt(number of a stop, file, block),
    host.bound(which, file, block), host.main_ends()
    """

    host: object
    interpreter: object
    codes: list  # by file: where each block's code begins, -1 where it is not made yet
    now: cython.int[::1]  # of the file at hand
    operations: cython.uchar[::1]  # the code of all blocks, one after the other
    numbers: cython.double[::1]
    letters: cython.uchar[::1]  # the words that code refers to
    starts: cython.int[::1]
    ends: cython.int[::1]
    filled: cython.Py_ssize_t
    words_filled: cython.Py_ssize_t
    blocks = cython.declare(cython.Py_ssize_t, visibility="readonly")  # with code; the interpreter counts the others
    spent: cython.Py_ssize_t  # operations
    calls = cython.declare(cython.int, visibility="readonly")
    deepest = cython.declare(cython.int, visibility="readonly")
    values: cython.double[::1]  # numbered parameters
    names: cython.double[::1]  # named ones: globals, then those of each call
    globals_: cython.int
    locals_: cython.int
    loops: cython.int
    counters: cython.double[::1]
    kept: cython.double[::1]  # #1 .. #33 of the callers
    staged: cython.double[::1]
    stack: cython.double[::1]
    pending_what: cython.int[::1]
    pending_value: cython.double[::1]
    letter: cython.uchar[::1]
    value: cython.double[::1]
    start: cython.int[::1]
    end: cython.int[::1]
    base: cython.Py_ssize_t
    # callers
    most_calls: cython.int
    depth: cython.int
    back_file: cython.int[::1]
    back_block: cython.int[::1]
    back_kind: cython.int[::1]
    back_sub: cython.int[::1]
    back_times: cython.double[::1]
    file: cython.int
    macro_style: cython.bint
    # lines read by their form
    over: cython.bint  # the program has ended, or goes no further
    quick: cython.bint  # whether words have the values that are written
    text: cython.const[cython.uchar][::1]
    line_start: cython.const[cython.longlong][::1]
    block_line: cython.const[cython.int][::1]
    flags: cython.const[cython.uchar][::1]
    forms: dict
    shown: cython.uchar[::1]  # what is neither white space nor comment, in upper case, and its offsets
    at: cython.int[::1]
    marks: cython.int  # of the line at hand: its characters, a number counting as one
    form: cython.uchar[::1]
    mark_start: cython.int[::1]
    mark_end: cython.int[::1]
    found: cython.int  # plain numbers
    plain_value: cython.double[::1]

    def __init__(self, host, interpreter, names: int, globals_: int, loops: int, most_calls: int,
                 macro_style: bool) -> None:  # fmt: skip
        self.host, self.interpreter, self.codes = host, interpreter, []
        self.values = np.full(NUMBERED, UNSET)
        self.values[0] = VACANT
        self.most_calls = most_calls
        self.globals_, self.locals_, self.loops = globals_, names, loops
        self.names = np.full(globals_ + names * (most_calls + 1) + 1, UNSET)
        self.counters = np.zeros(loops * (most_calls + 1) + 1)
        self.kept = np.zeros(LOCALS * (most_calls + 1))
        self.staged = np.full(LOCALS, VACANT)
        self.stack = np.zeros(STACK)
        self.pending_what = np.zeros(PENDING, np.int32)
        self.pending_value = np.zeros(PENDING)
        self.back_file = np.zeros(most_calls + 1, np.int32)
        self.back_block = np.zeros(most_calls + 1, np.int32)
        self.back_kind = np.zeros(most_calls + 1, np.int32)
        self.back_sub = np.zeros(most_calls + 1, np.int32)
        self.back_times = np.zeros(most_calls + 1)
        self.blocks = self.spent = 0
        self.depth = self.calls = self.deepest = 0
        self.filled = self.words_filled = 0
        self.operations, self.numbers = np.zeros(1024, np.uint8), np.zeros(1024)
        self.letters = np.zeros(1024, np.uint8)
        self.starts, self.ends = np.zeros(1024, np.int32), np.zeros(1024, np.int32)
        self.file = -1
        self.macro_style = macro_style
        self.forms = {}
        self.shown, self.form = np.zeros(LINE + 1, np.uint8), np.zeros(LINE + 1, np.uint8)
        self.at, self.mark_start = np.zeros(LINE + 1, np.int32), np.zeros(LINE + 1, np.int32)
        self.mark_end, self.plain_value = np.zeros(LINE + 1, np.int32), np.zeros(LINE + 1)

    @cython.cfunc
    def enter(self, file: cython.int, caller: cython.Py_ssize_t = -1) -> cython.int:
        """Blocks are those of this file from here on; `caller` is the block of the file left that calls it."""
        if file == self.file:
            return 0
        table = self.host.enter(file, self.file, caller)
        self.file = file
        self.letter, self.value = table.word_letter, table.word_value
        self.start, self.end = table.word_start, table.word_end
        self.base = table.block_word[len(table.block_flags)]
        if len(self.codes) <= file:
            self.codes.extend([None] * (file + 1 - len(self.codes)))
        if self.codes[file] is None:
            self.codes[file] = np.full(len(table.block_flags), -1, np.int32)
        self.now = self.codes[file]
        self.text, self.line_start = self.host.text(file)
        self.block_line, self.flags = table.block_line, table.block_flags
        self.quick = not self.host.treated
        return 0

    @cython.cfunc
    def make(self, block: cython.Py_ssize_t) -> cython.Py_ssize_t:
        """Get a block's code: its line, its entry from above and its first word come before its operations."""
        key: object = None
        if self.quick and self.read_form(block):
            key = cython.cast(cython.p_char, cython.address(self.form[0]))[: self.marks]
            known = self.forms.get(key, self)
            if known is None:
                key = None
            elif known is not self:
                return self.fill(cython.cast(Form, known), block)
        line, operations, numbers, letters, starts, ends, entry = self.host.code_of(self.file, block)
        n: cython.Py_ssize_t = self.filled
        w: cython.Py_ssize_t = self.words_filled
        self.operations = longer(self.operations, n, operations, 3)
        self.numbers = longer(self.numbers, n, numbers, 3)
        self.numbers[n], self.numbers[n + 1], self.numbers[n + 2] = line, n + 3 + entry, w
        self.letters = longer(self.letters, w, letters, 0)
        self.starts, self.ends = longer(self.starts, w, starts, 0), longer(self.ends, w, ends, 0)
        self.filled = n + 3 + len(operations)
        self.words_filled = w + len(letters)
        self.now[block] = cython.cast(cython.int, n)
        self.quick = self.quick and not self.host.treated
        if key is not None and self.quick and len(self.forms) < FORMS:
            self.forms[key] = self.form_of(operations, numbers, letters, starts, ends) if self.host.alike else None
        return n

    @cython.cfunc
    def form_of(self, operations, numbers, letters, starts, ends) -> object:
        """The form of the line at hand with this code; None where its numbers do not lie in the code as they come."""
        plain = np.flatnonzero(operations == _const).astype(np.int32)
        own = np.asarray(self.plain_value)[: self.found]
        if len(plain) != self.found or not np.array_equal(numbers[plain], own):
            return None
        begins = {self.mark_start[k]: k for k in range(self.marks)}
        stops = {self.mark_end[k]: k for k in range(self.marks)}
        first = [begins.get(place, -1) for place in starts.tolist()]
        last = [stops.get(place, -1) for place in ends.tolist()]
        if -1 in first or -1 in last:
            return None
        return Form(operations, numbers, plain, letters, np.array(first, np.int32), np.array(last, np.int32))

    @cython.cfunc
    def fill(self, form: Form, block: cython.Py_ssize_t) -> cython.Py_ssize_t:
        """The code of the line at hand by its form; kept when it comes a second time, and there is room."""
        n: cython.Py_ssize_t = self.filled
        w: cython.Py_ssize_t = self.words_filled
        k: cython.Py_ssize_t
        size: cython.Py_ssize_t = form.operations.shape[0]
        words: cython.Py_ssize_t = form.letters.shape[0]
        if n + 3 + size > self.operations.shape[0]:
            self.operations, self.numbers = roomier(self.operations, size), roomier(self.numbers, size)
        if w + words > self.letters.shape[0]:
            self.letters = roomier(self.letters, words)
            self.starts, self.ends = roomier(self.starts, words), roomier(self.ends, words)
        self.numbers[n], self.numbers[n + 1], self.numbers[n + 2] = self.block_line[block], n + 3, w
        for k in range(size):
            self.operations[n + 3 + k], self.numbers[n + 3 + k] = form.operations[k], form.numbers[k]
        for k in range(self.found):
            self.numbers[n + 3 + form.plain[k]] = self.plain_value[k]
        for k in range(words):
            self.letters[w + k] = form.letters[k]
            self.starts[w + k] = self.mark_start[form.first[k]]
            self.ends[w + k] = self.mark_end[form.last[k]]
        if self.now[block] != ONCE or n > CODE_KEPT:
            self.now[block] = ONCE
            return n
        self.now[block] = cython.cast(cython.int, n)
        self.filled, self.words_filled = n + 3 + size, w + words
        return n

    @cython.cfunc
    def read_form(self, block: cython.Py_ssize_t) -> cython.bint:
        """Read the line of a block as marks and plain numbers; False where that says too little of its code.

        As `gclint.program.code` does: `bare` takes off white space, comments and the N word, `form_of` the numbers.
        """
        line: cython.int = self.block_line[block]
        i: cython.Py_ssize_t = self.line_start[line - 1]
        stop: cython.Py_ssize_t = self.line_start[line]
        c: cython.int
        k: cython.int
        n: cython.int = 0
        settings: cython.bint = False
        marks: cython.int = 0
        found: cython.int = 0
        first: cython.int
        digits: cython.int
        behind: cython.int
        whole: cython.longlong
        value: cython.double
        before: cython.int
        if stop - i > LINE:
            return False
        while i < stop:
            c = self.text[i]
            if c == 40:  # a comment in brackets
                while i < stop and self.text[i] != 41:
                    i += 1
            elif c == 59:
                break
            elif c > 32:
                if c > 126:
                    return False
                if 97 <= c <= 122:
                    c -= 32
                settings = settings or c == 61
                self.shown[n], self.at[n] = cython.cast(cython.uchar, c), cython.cast(cython.int, i)
                n += 1
            elif c != 32 and c != 9 and c != 10 and c != 13:
                return False
            i += 1
        self.shown[n] = 0
        k = 0
        if self.shown[0] == 78 and (digit(self.shown[1]) or self.shown[1] == 46):  # N
            k = 1
            while digit(self.shown[k]) or self.shown[k] == 46:
                k += 1
        c = self.shown[k]
        if n == k or c == 47 or c == 79:  # nothing, block delete, an O word
            return False
        if not settings and digit(self.shown[n - 1]):
            first = n - 1
            while first > k and digit(self.shown[first]):
                first -= 1
            if self.shown[first] == 42:  # a checksum
                return False
        before = 0
        while k < n:
            c = self.shown[k]
            self.mark_start[marks] = self.at[k]
            if c == 60:  # a name
                while k < n and self.shown[k] != 62:
                    self.form[marks] = self.shown[k]
                    self.mark_start[marks], self.mark_end[marks] = self.at[k], self.at[k] + 1
                    marks += 1
                    k += 1
                if k == n:
                    return False
                c = 62
                self.mark_start[marks] = self.at[k]
            elif before != 35 and (digit(c) or (c == 46 and digit(self.shown[k + 1]))):
                digits = behind = 0
                whole = 0
                while digit(self.shown[k]):
                    whole = whole * 10 + self.shown[k] - 48
                    digits += whole > 0
                    k += 1
                    if digits > 15:
                        return False
                if self.shown[k] == 46:
                    k += 1
                    while digit(self.shown[k]):
                        whole = whole * 10 + self.shown[k] - 48
                        digits += whole > 0
                        behind += 1
                        k += 1
                        if digits > 15 or behind > 22:
                            return False
                value = whole / TENS[behind]
                if (before == 77 and (value == 98 or value == 99)) or (before == 71 and 65 <= value <= 67):  # M G
                    return False
                self.plain_value[found] = value
                found += 1
                self.form[marks], self.mark_end[marks] = 1, self.at[k - 1] + 1
                marks += 1
                before = 1
                continue
            elif before == 35 and c == 46:
                return False
            if (before == 77 or before == 71) and (c == 91 or c == 43):
                return False
            self.form[marks], self.mark_end[marks] = cython.cast(cython.uchar, c), self.at[k] + 1
            marks += 1
            if before != 35 or not digit(c):  # the number of a parameter belongs to the form
                before = c
            k += 1
        self.marks, self.found = marks, found
        return True

    @cython.cfunc
    def slot(self, number: cython.int) -> cython.Py_ssize_t:
        """Place of a named parameter: those of the program as a whole come first."""
        if number < self.globals_:
            return number
        return number + self.locals_ * self.depth

    @cython.cfunc
    def index(self, value: cython.double) -> cython.int:
        """A parameter's number, within 0.0001 of an integer (3.3.2.1); -1 where it is none, -2 where not known."""
        if isnan(value):
            return -2
        if not (-NEAR <= value < NUMBERED - 0.5) or fabs(value - floor(value + 0.5)) > NEAR:
            return -1
        return cython.cast(cython.int, floor(value + 0.5))

    @cython.cfunc
    def get(self, n: cython.int, block: cython.Py_ssize_t) -> cython.double:
        """Parameter n; positions and offsets are asked of the interpreter (3.2.1)."""
        value: cython.double
        if n < 0:
            if n == -1:
                self.host.tell("parameter-impossible", self.file, block, NAN)
            return NAN
        value = self.values[n]
        if value != UNSET:
            return value
        if 5001 <= n <= 5999:
            value = self.interpreter.state(n)
            if isnan(value):
                self.host.tell("value-unknown", self.file, block, n)
                self.spent += OPERATIONS
            return value
        if n < LOCALS and self.macro_style:
            return VACANT
        self.host.tell("parameter-unset", self.file, block, n)
        self.spent += OPERATIONS
        return NAN

    @cython.cfunc
    def put(self, what: cython.int, value: cython.double, block: cython.Py_ssize_t) -> cython.int:
        if what < 0:
            self.names[self.slot(-1 - what)] = value
        elif what == 0:
            self.host.tell("parameter-impossible", self.file, block, 0)
        else:
            self.values[what] = value
            if 5001 <= what <= 5999:  # the machine's own: where things lie is another place now
                self.values[what] = UNSET
                self.host.tell("value-unknown", self.file, block, what)
                self.interpreter.forget()
        return 0

    @cython.cfunc
    def step(self, words: cython.int, line: cython.int, block: cython.Py_ssize_t) -> cython.int:
        """Execute the words of a block; a value that is not known makes what it names unknown."""
        w: cython.int
        n: cython.int = 0
        lost: cython.bint = False
        at: cython.Py_ssize_t
        to: cython.Py_ssize_t
        for w in range(words):
            at = self.base + w
            if self.value[at] == VACANT:
                continue
            to = self.base + n
            if self.value[at] != self.value[at]:
                if self.letter[at] == 70 or self.letter[at] == 83:  # F S
                    self.interpreter.unknown(self.letter[at])
                    continue
                lost = lost or not 88 <= self.letter[at] <= 90  # X Y Z
            self.letter[to], self.value[to] = self.letter[at], self.value[at]
            self.start[to], self.end[to] = self.start[at], self.end[at]
            n += 1
        if lost:
            self.interpreter.lose(line, n)
            self.over = self.interpreter.ended or self.interpreter.stopped_at
        elif n:
            self.over = self.interpreter.step(line, n)
        return 0

    def run(self, most_blocks: cython.Py_ssize_t, first: cython.Py_ssize_t) -> None:
        """Follow the program from block `first` until it ends, cannot be followed, or a bound is reached."""
        block: cython.Py_ssize_t = first
        entry: cython.Py_ssize_t = 0
        pc: cython.Py_ssize_t
        began: cython.Py_ssize_t
        first_word: cython.Py_ssize_t
        there_word: cython.Py_ssize_t
        op: cython.int
        top: cython.int
        waiting: cython.int
        words: cython.int
        line: cython.int
        what: cython.int
        n: cython.int
        k: cython.int
        a: cython.double
        b: cython.double
        there: cython.Py_ssize_t
        interpreter = self.interpreter
        interpreter.most_blocks = most_blocks
        executed: cython.Py_ssize_t = interpreter.executed
        self.over = False
        self.enter(0)
        while True:
            if self.over:
                return
            if executed + self.blocks + self.spent // OPERATIONS >= most_blocks:
                self.host.bound("blocks", self.file, block)
                return
            if block >= self.now.shape[0] or (
                self.now[block] == -1 and (not self.flags[block] & 6 or self.flags[block] & ~6)
            ):
                there = interpreter.run_plain(block)
                executed = interpreter.executed
                self.over = interpreter.ended or interpreter.stopped_at
                if there != block:
                    entry = 0
                    block = there
                    continue
            if block >= self.now.shape[0]:
                if not self.depth or self.back_kind[self.depth] == _call:
                    if self.depth:
                        self.host.stop("flow-unmatched", self.file, block - 1)
                    return
                block = self.leave(block)  # the end of a file beside is the end of its subprogram
                entry = 0
                continue
            self.blocks += 1
            pc = self.now[block]
            if pc < 0:
                pc = self.make(block)
            line = cython.cast(cython.int, self.numbers[pc])
            first_word = cython.cast(cython.Py_ssize_t, self.numbers[pc + 2])
            pc = pc + 3 if entry else cython.cast(cython.Py_ssize_t, self.numbers[pc + 1])
            entry = 0
            began = pc
            top = waiting = words = 0
            there = block + 1
            while True:
                op = self.operations[pc]
                a = self.numbers[pc]
                pc += 1
                if op == _end:
                    break
                if op == _const:
                    self.stack[top] = a
                    top += 1
                elif op == _load:
                    self.stack[top] = self.get(cython.cast(cython.int, a), block)
                    top += 1
                elif op == _loadx:
                    self.stack[top - 1] = self.get(self.index(self.stack[top - 1]), block)
                elif op == _named:
                    b = self.names[self.slot(cython.cast(cython.int, a))]
                    if b == UNSET:
                        self.host.tell("parameter-unset", self.file, block, NAN)
                        b = NAN
                    self.stack[top] = b
                    top += 1
                elif _exists <= op <= _existsn:
                    if op == _existsn:
                        b = self.names[self.slot(cython.cast(cython.int, a))]
                    else:
                        if op == _existsx:
                            top -= 1
                            a = self.stack[top]
                        n = self.index(a)
                        b = self.values[n] if n >= 0 else UNSET
                    self.stack[top] = 1.0 if fabs(b) != VACANT else 0.0
                    top += 1
                elif _plus <= op <= _le:
                    top -= 1
                    self.stack[top - 1] = self.binary(op, self.stack[top - 1], self.stack[top], block)
                elif _sin <= op <= _sqrt or op == _negate:
                    self.stack[top - 1] = self.unary(op, self.stack[top - 1], block)
                elif op == _atan2:
                    top -= 1
                    self.stack[top - 1] = atan2(plain(self.stack[top - 1]), plain(self.stack[top])) / DEGREE
                elif _set <= op <= _setn:
                    top -= 1
                    b = self.stack[top]
                    if op == _setx:
                        top -= 1
                        what = self.index(self.stack[top])
                        if what < 0:
                            self.host.tell(
                                "parameter-impossible" if what == -1 else "value-unknown", self.file, block, NAN
                            )
                            if what == -2:  # any of them may have been set
                                self.host.stop("branch-unknown", self.file, block)
                                return
                            continue
                    elif op == _setn:
                        what = -1 - cython.cast(cython.int, a)
                    else:
                        what = cython.cast(cython.int, a)
                    self.pending_what[waiting], self.pending_value[waiting] = what, b
                    waiting += 1
                elif op == _word:
                    top -= 1
                    there_word = first_word + cython.cast(cython.Py_ssize_t, a)
                    self.letter[self.base + words] = self.letters[there_word]
                    self.value[self.base + words] = self.stack[top]
                    self.start[self.base + words] = self.starts[there_word]
                    self.end[self.base + words] = self.ends[there_word]
                    words += 1
                elif op == _step:
                    self.step(words, line, block)
                elif op == _jump:
                    there = cython.cast(cython.Py_ssize_t, a)
                    break
                elif _jump_if_not <= op <= _end_if_not:
                    top -= 1
                    b = self.stack[top]
                    if isnan(b):
                        self.host.stop("branch-unknown", self.file, block)
                        return
                    if (plain(b) != 0) == (op == _jump_if):
                        if op == _end_if_not:
                            break
                        there = cython.cast(cython.Py_ssize_t, a)
                        entry = op == _else_if_not
                        break
                elif op == _goto:
                    top -= 1
                    b = self.stack[top]
                    if isnan(b):
                        self.host.stop("branch-unknown", self.file, block)
                        return
                    there = self.host.target(self.file, block, b)
                    if there < 0:
                        self.host.stop("flow-unmatched", self.file, block)
                        return
                    break
                elif op == _stage:
                    top -= 1
                    k = cython.cast(cython.int, a)
                    if 0 < k < LOCALS:
                        self.staged[k] = self.stack[top]
                elif _call <= op <= _macro:
                    b = 1.0
                    if op == _call:
                        n = cython.cast(cython.int, a)
                    else:
                        top -= 2
                        b = self.stack[top + 1]
                        if isnan(b) or isnan(self.stack[top]):
                            self.host.stop("branch-unknown", self.file, block)
                            return
                        n = self.host.program(self.file, block, self.stack[top])
                        if b == 1.0 and self.host.packed:
                            b = self.host.packed
                    if n < 0:
                        self.host.stop("flow-unmatched", self.file, block)
                        return
                    if self.depth >= self.most_calls:
                        self.host.bound("calls", self.file, block)
                        return
                    for k in range(waiting):
                        self.put(self.pending_what[k], self.pending_value[k], block)
                    waiting = 0
                    if b < 1:
                        break
                    there = self.go(op, n, b, there)
                    break
                elif op == _return:
                    if a == 1:
                        top -= 1
                        self.names[0] = self.stack[top]
                    if not self.depth or self.back_kind[self.depth] != _call:
                        self.host.stop("flow-unmatched", self.file, block)
                        return
                    there = self.leave(block)
                    break
                elif op == _back:
                    if not self.depth:
                        self.host.main_ends(self.file, block)
                        if a == 1:
                            there = self.host.target(self.file, block, self.stack[top - 1])
                            if there < 0:
                                self.host.stop("flow-unmatched", self.file, block)
                                return
                            break
                        interpreter.ended = True
                        return
                    b = self.stack[top - 1] if a == 1 else NAN
                    there = self.leave(block)
                    if a == 1:
                        there = self.host.target(self.file, block, b)
                        if there < 0:
                            self.host.stop("flow-unmatched", self.file, 0)
                            return
                    break
                elif op == _repeat:
                    top -= 1
                    b = self.stack[top]
                    if isnan(b):
                        self.host.stop("branch-unknown", self.file, block)
                        return
                    n = cython.cast(cython.int, self.numbers[pc])  # the loop; the block behind it is `a`
                    self.counters[n + self.loops * self.depth] = plain(b)
                    if plain(b) < 1:
                        there = cython.cast(cython.Py_ssize_t, a)
                    break
                elif op == _again:
                    n = cython.cast(cython.int, self.numbers[pc])
                    self.counters[n + self.loops * self.depth] -= 1
                    if self.counters[n + self.loops * self.depth] >= 1:
                        there = cython.cast(cython.Py_ssize_t, a)
                    break
                else:
                    self.host.halt(cython.cast(cython.int, a), self.file, block)
                    return
            for k in range(waiting):
                self.put(self.pending_what[k], self.pending_value[k], block)
            self.spent += pc - began
            block = there

    @cython.cfunc
    def go(
        self, kind: cython.int, sub: cython.int, times: cython.double, behind: cython.Py_ssize_t
    ) -> cython.Py_ssize_t:
        """Into a subprogram: O words and G65 give it locals of its own, M98 does not."""
        k: cython.int
        d: cython.int
        for k in range(LOCALS):
            self.kept[LOCALS * self.depth + k] = self.values[k]
        self.depth += 1
        d = self.depth
        self.calls += 1
        self.deepest = max(self.deepest, d)
        self.back_file[d], self.back_block[d] = self.file, cython.cast(cython.int, behind)
        self.back_kind[d], self.back_sub[d], self.back_times[d] = kind, sub, floor(times + NEAR)
        if kind != _program:
            for k in range(1, LOCALS):
                self.values[k] = self.staged[k]
                if kind == _call and k <= 30 and self.staged[k] == VACANT:
                    self.values[k] = 0.0
                self.staged[k] = VACANT
        for k in range(self.locals_):
            self.names[self.globals_ + self.locals_ * d + k] = UNSET
        return self.begin(sub)

    @cython.cfunc
    def begin(self, sub: cython.int) -> cython.Py_ssize_t:
        file: cython.int
        block: cython.Py_ssize_t
        file, block = self.host.subs[sub]
        self.enter(file, self.back_block[self.depth] - 1)
        return block

    @cython.cfunc
    def leave(self, block: cython.Py_ssize_t) -> cython.Py_ssize_t:
        """Out of a subprogram, or into it again while repeats are left."""
        k: cython.int
        d: cython.int = self.depth
        self.back_times[d] -= 1
        if self.back_times[d] >= 1:
            return self.begin(self.back_sub[d])
        self.depth = d - 1
        if self.back_kind[d] != _program:
            for k in range(LOCALS):
                self.values[k] = self.kept[LOCALS * self.depth + k]
        self.enter(self.back_file[d])
        return self.back_block[d]

    @cython.cfunc
    def wrong(self, block: cython.Py_ssize_t) -> cython.double:
        self.host.tell("expression-impossible", self.file, block, NAN)
        self.spent += OPERATIONS
        return NAN

    @cython.cfunc
    def binary(
        self, op: cython.int, a: cython.double, b: cython.double, block: cython.Py_ssize_t
    ) -> cython.double:
        made: cython.double
        if op == _eq and (a == VACANT or b == VACANT):
            return a == b
        if op == _ne and (a == VACANT or b == VACANT):
            return a != b
        a, b = plain(a), plain(b)
        if isnan(a) or isnan(b):
            return NAN
        if op == _plus:
            made = a + b
        elif op == _minus:
            made = a - b
        elif op == _times:
            made = a * b
        elif op == _over:
            made = a / b if b != 0 else NAN
        elif op == _power:
            made = pow(a, b)
        elif op == _mod:  # never negative, 3.3.2.3: as a number line is wrapped
            made = fmod(a, b) if b != 0 else NAN
            if made < 0:
                made += fabs(b)
        elif op == _and:
            return a != 0 and b != 0
        elif op == _or:
            return a != 0 or b != 0
        elif op == _xor:
            return (a != 0) != (b != 0)
        elif op == _eq:
            return a == b
        elif op == _ne:
            return a != b
        elif op == _gt:
            return a > b
        elif op == _ge:
            return a >= b
        elif op == _lt:
            return a < b
        else:
            return a <= b
        return made if isfinite(made) else self.wrong(block)

    @cython.cfunc
    def unary(self, op: cython.int, a: cython.double, block: cython.Py_ssize_t) -> cython.double:
        made: cython.double
        a = plain(a)
        if isnan(a):
            return NAN
        if op == _negate:
            return -a
        if op == _sin:
            made = sin(a * DEGREE)
        elif op == _cos:
            made = cos(a * DEGREE)
        elif op == _tan:
            made = tan(a * DEGREE)
        elif op == _asin:
            made = asin(a) / DEGREE if fabs(a) <= 1 else NAN
        elif op == _acos:
            made = acos(a) / DEGREE if fabs(a) <= 1 else NAN
        elif op == _atan:
            made = atan2(a, 1.0) / DEGREE
        elif op == _abs:
            made = fabs(a)
        elif op == _fix:
            made = floor(a)
        elif op == _fup:
            made = ceil(a)
        elif op == _round:
            made = floor(fabs(a) + 0.5) if a >= 0 else -floor(fabs(a) + 0.5)  # halves away from zero, from memory
        elif op == _exp:
            made = exp(a)
        elif op == _ln:
            made = log(a) if a > 0 else NAN
        else:
            made = sqrt(a) if a >= 0 else NAN
        return made if isfinite(made) else self.wrong(block)


@cython.cfunc
def longer(column, filled: cython.Py_ssize_t, more, gap: cython.Py_ssize_t):
    """The column with `more` written behind what is filled and a gap."""
    made = np.asarray(column)
    need: cython.Py_ssize_t = filled + gap + len(more)
    if need > len(made):
        made = np.concatenate((made[:filled], np.zeros(need + filled, made.dtype)))
    made[filled + gap : need] = more
    return made


@cython.cfunc
def roomier(column, more: cython.Py_ssize_t):
    """The column with as much room again, and `more`."""
    made = np.asarray(column)
    return np.concatenate((made, np.zeros(len(made) + more, made.dtype)))


@cython.cfunc
@cython.inline
def digit(c: cython.int) -> cython.bint:
    return 48 <= c <= 57


@cython.cfunc
@cython.inline
def plain(a: cython.double) -> cython.double:
    """A vacant value counts as nothing in a sum."""
    return 0.0 if a == VACANT else a
