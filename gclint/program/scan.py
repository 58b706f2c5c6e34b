"""The scan kernel: one pass over the bytes of a program into columns of blocks, words and comments.

Compiled by Cython; there is no interpreted twin. The grammar is that of NIST RS274/NGC section 3.3 with the habits of
many post-processors: white space counts nowhere outside comments, either case, `( )` and `;` comments, `%`, block
delete, checksums, any line end.
"""

from __future__ import annotations

import cython

if not cython.compiled:
    raise ImportError("gclint.program.scan is a kernel and must be compiled")

from gclint.faults import CODE

# The flags of gclint.tables.program, as C numbers.
DELETED = cython.declare(cython.int, 1)
EXPRESSION = cython.declare(cython.int, 2)
MOST_EXPRESSIONS = cython.declare(cython.Py_ssize_t, 1000)  # that are told as faults; block_flags has them all
FLOW = cython.declare(cython.int, 4)
BROKEN = cython.declare(cython.int, 8)
BEHIND_END = cython.declare(cython.int, 16)
LONGEST = cython.declare(cython.int, 256)  # characters of a line, NIST 3.3

FLOW_WORDS = frozenset(
    b"SUB ENDSUB CALL RETURN DO WHILE ENDWHILE IF ELSEIF ELSE ENDIF REPEAT ENDREPEAT BREAK CONTINUE "
    b"GOTO GOTOF GOTOB THEN END FOR ENDFOR LOOP ENDLOOP UNTIL".split()
)
FUNCTIONS = frozenset(b"SIN COS TAN ASIN ACOS ATAN ABS FIX FUP ROUND EXP LN SQRT EXISTS".split())

# Each of these is a double exactly, so one division of integers below 2**53 by one of them is correctly rounded.
POWER = cython.declare(cython.double[23])
for _n in range(23):
    POWER[_n] = float(10**_n)


def measure(data: cython.const[cython.uchar][::1]) -> tuple[int, int, int]:
    """(line ends, letters, comment marks): no program has more lines, words and comments than that.

    Counted in bytes over 128 at a time, which compilers turn into vector instructions. The offsets end at `whole`
    times 128, so the pointer needs no check.
    """
    n: cython.Py_ssize_t = data.shape[0]
    whole: cython.Py_ssize_t = n // 128
    i: cython.Py_ssize_t
    k: cython.Py_ssize_t
    c: cython.uchar
    ends8: cython.uchar
    letters8: cython.uchar
    marks8: cython.uchar
    ends: cython.Py_ssize_t = 0
    letters: cython.Py_ssize_t = 0
    marks: cython.Py_ssize_t = 0
    if n == 0:
        return 0, 0, 0
    p: cython.p_const_uchar = cython.address(data[0])
    for i in range(whole):
        ends8 = letters8 = marks8 = 0
        for k in range(128):
            c = p[128 * i + k]
            # one comparison per sum: what is joined by `or` is not turned into vectors
            ends8 += c == 10
            ends8 += c == 13
            letters8 += cython.cast(cython.uchar, (c & 0xDF) - 65) < 26
            marks8 += c == 40  # (
            marks8 += c == 59  # ;
            marks8 += c == 37  # %
            marks8 += c == 47  # /
        ends += ends8
        letters += letters8
        marks += marks8
    rest: cython.Py_ssize_t = n - 128 * whole  # taken as if every byte of it were each of them
    return ends + rest, letters + rest, marks + rest


@cython.cfunc
@cython.inline
def is_letter(c: cython.uchar) -> cython.bint:
    return 65 <= (c & 0xDF) <= 90


@cython.cfunc
@cython.inline
def is_blank(c: cython.uchar) -> cython.bint:
    return c == 32 or c == 9 or c == 26  # 26: the end-of-file mark old editors leave


@cython.cfunc
def line_end(data: cython.const[cython.uchar][::1], i: cython.Py_ssize_t) -> cython.Py_ssize_t:
    while i < data.shape[0] and data[i] != 10 and data[i] != 13:
        i += 1
    return i


@cython.cfunc
def mixed(
    data: cython.const[cython.uchar][::1], begin: cython.Py_ssize_t, end: cython.Py_ssize_t
) -> cython.int:
    """The checksum of a line: its bytes before the star, each mixed into the last by exclusive or."""
    sum: cython.int = 0
    while begin < end:
        sum ^= data[begin]
        begin += 1
    return sum


@cython.cfunc
def decimal(
    data: cython.const[cython.uchar][::1], begin: cython.Py_ssize_t, end: cython.Py_ssize_t
) -> cython.double:
    value: cython.double = 0.0
    while begin < end:
        value = value * 10 + (data[begin] - 48)
        begin += 1
    return value


@cython.cfunc
def past_blanks(data: cython.const[cython.uchar][::1], i: cython.Py_ssize_t) -> cython.Py_ssize_t:
    while i < data.shape[0] and is_blank(data[i]):
        i += 1
    return i


@cython.cfunc
def past_letters(data: cython.const[cython.uchar][::1], i: cython.Py_ssize_t) -> cython.Py_ssize_t:
    while i < data.shape[0] and is_letter(data[i]):
        i += 1
    return i


@cython.cfunc
def past_number(data: cython.const[cython.uchar][::1], i: cython.Py_ssize_t) -> cython.Py_ssize_t:
    """Behind everything that looks like a botched number: digits, signs, points, commas, exponents."""
    c: cython.uchar
    while i < data.shape[0]:
        c = data[i]
        if not (48 <= c <= 57 or 43 <= c <= 46):  # 0-9 + , - .
            if (c | 32) != 101 or i + 1 >= data.shape[0]:
                break
            c = data[i + 1]
            if not (48 <= c <= 57 or c == 43 or c == 45):
                break
        i += 1
    return i


@cython.cfunc
def past_digits(data: cython.const[cython.uchar][::1], i: cython.Py_ssize_t) -> cython.Py_ssize_t:
    while i < data.shape[0] and 48 <= data[i] <= 57:
        i += 1
    return i


@cython.cfunc
def runs_on(data: cython.const[cython.uchar][::1], i: cython.Py_ssize_t, last: cython.Py_ssize_t) -> cython.bint:
    """Whether what stands at i goes on with the number that ended at `last`, so that the number is botched."""
    c: cython.uchar = data[i]
    ahead: cython.uchar = data[i + 1] if i + 1 < data.shape[0] else 10
    if c == 44:
        return 48 <= ahead <= 57  # a decimal comma
    if (c | 32) == 101:  # 1.2e-05, and 1e3; X1.5E0.25 is two words
        if i != last:
            return False
        if ahead == 43 or ahead == 45:
            return True
        i = past_digits(data, i + 1)
        return 48 <= ahead <= 57 and (i >= data.shape[0] or data[i] != 46)
    return True


@cython.cfunc
def past_brackets(data: cython.const[cython.uchar][::1], i: cython.Py_ssize_t) -> cython.Py_ssize_t:
    """Behind the `]` that closes the `[` at i, or at the end of the line."""
    depth: cython.Py_ssize_t = 0
    while i < data.shape[0] and data[i] != 10 and data[i] != 13:
        if data[i] == 91:
            depth += 1
        elif data[i] == 93:
            depth -= 1
            if depth == 0:
                return i + 1
        i += 1
    return i


@cython.cfunc
def past_value(data: cython.const[cython.uchar][::1], i: cython.Py_ssize_t) -> cython.Py_ssize_t:
    """Behind one value: a number, `#` with what it names, a bracketed expression or a function of one."""
    i = past_blanks(data, i)
    while i < data.shape[0] and (data[i] == 43 or data[i] == 45 or data[i] == 35):
        i = past_blanks(data, i + 1)
    if i >= data.shape[0]:
        return i
    if data[i] == 60:  # '<'
        while i < data.shape[0] and data[i] != 10 and data[i] != 13 and data[i] != 62:
            i += 1
        return i + 1 if i < data.shape[0] and data[i] == 62 else i
    if is_letter(data[i]):
        i = past_blanks(data, past_letters(data, i))
    if i < data.shape[0] and data[i] == 91:
        i = past_brackets(data, i)
        if past_blanks(data, i) < data.shape[0] and data[past_blanks(data, i)] == 47:  # ATAN[y]/[x]
            return past_brackets(data, past_blanks(data, i) + 1)
        return i
    return past_number(data, i)


@cython.cfunc
def names_value(data: cython.const[cython.uchar][::1], i: cython.Py_ssize_t, text: bytes) -> cython.bint:
    """Whether a parameter, an expression or a function of one begins at i."""
    while i < data.shape[0] and (data[i] == 43 or data[i] == 45 or is_blank(data[i])):
        i += 1
    if i >= data.shape[0]:
        return False
    if data[i] == 35 or data[i] == 91 or data[i] == 61:  # # [ =
        return True
    behind: cython.Py_ssize_t = past_letters(data, i)
    return behind > i + 1 and behind < data.shape[0] and text[i:behind].upper() in FUNCTIONS


@cython.cfunc
def is_flow(data: cython.const[cython.uchar][::1], behind: cython.Py_ssize_t, word: bytes) -> cython.bint:
    """Whether a word of letters that ends at `behind` is one of flow; DO and END have a number, or they are text."""
    if word not in FLOW_WORDS:
        return False
    behind = past_blanks(data, behind)
    return word not in (b"DO", b"END") or (behind < data.shape[0] and 48 <= data[behind] <= 57)


def scan(
    text: bytes,
    data: cython.const[cython.uchar][::1],
    line_start: cython.longlong[::1],
    block_line: cython.int[::1],
    block_word: cython.int[::1],
    block_flags: cython.uchar[::1],
    block_number: cython.int[::1],
    word_letter: cython.uchar[::1],
    word_value: cython.double[::1],
    word_start: cython.int[::1],
    word_end: cython.int[::1],
    comment_line: cython.int[::1],
    comment_start: cython.int[::1],
    comment_end: cython.int[::1],
    faults,
) -> tuple[int, int, int, int]:
    """Fill the columns; (lines, blocks, words, comments) say how much of each is filled.

    `data` is `text` as a view. Faults go to `faults.add(kind, line, start, end, a)`; at most one number, letter or
    character fault per block.
    """
    unreadable: cython.int = CODE["number-unreadable"]
    unclosed: cython.int = CODE["comment-unclosed"]
    leftover: cython.int = CODE["comment-leftover"]
    unknown: cython.int = CODE["character-unknown"]
    expression: cython.int = CODE["expression"]
    flow: cython.int = CODE["flow"]
    too_long: cython.int = CODE["line-too-long"]
    deleted: cython.int = CODE["block-unmoving"]
    wrong_sum: cython.int = CODE["checksum-wrong"]

    n: cython.Py_ssize_t = data.shape[0]
    i: cython.Py_ssize_t = 0
    s: cython.Py_ssize_t
    k: cython.Py_ssize_t
    behind: cython.Py_ssize_t
    last: cython.Py_ssize_t
    begin: cython.Py_ssize_t
    slash: cython.Py_ssize_t
    expression_at: cython.Py_ssize_t
    expressions: cython.Py_ssize_t = 0
    lines: cython.Py_ssize_t = 0
    blocks: cython.Py_ssize_t = 0
    words: cython.Py_ssize_t = 0
    comments: cython.Py_ssize_t = 0
    first_word: cython.Py_ssize_t
    flags: cython.int
    number: cython.int
    something: cython.bint
    opened: cython.bint = False  # a '%' line has been seen
    over: cython.bint = False  # behind the closing '%'
    c: cython.uchar
    letter: cython.uchar
    negative: cython.bint
    point: cython.bint
    nested: cython.bint
    mantissa: cython.ulonglong
    digits: cython.int
    significant: cython.int
    decimals: cython.int
    value: cython.double
    code: cython.int

    while i < n:
        begin = i
        line_start[lines] = begin
        lines += 1
        if lines == 1 and n >= 3 and data[0] == 0xEF and data[1] == 0xBB and data[2] == 0xBF:
            i = 3
        first_word = words
        flags = BEHIND_END if over else 0
        number = -1
        something = False
        slash = -1
        expression_at = -1

        while i < n:
            c = data[i]
            if c == 32 or c == 9 or c == 26:
                i += 1
                continue
            if c == 10 or c == 13:
                break

            if 65 <= (c & 0xDF) <= 90 and not flags & FLOW:
                # a word: a letter and a number, white space anywhere
                letter = c & 0xDF
                s = i
                i += 1
                negative = False
                point = False
                mantissa = 0
                digits = 0
                significant = 0
                decimals = 0
                last = i
                while i < n and is_blank(data[i]):
                    i += 1
                if i < n and (data[i] == 45 or data[i] == 43):
                    negative = data[i] == 45
                    i += 1
                    last = i
                c = 10
                while i < n:
                    c = data[i]
                    if 48 <= c <= 57:
                        digits += 1
                        decimals += point
                        if mantissa or c != 48:
                            significant += 1
                            if significant <= 18:
                                mantissa = mantissa * 10 + (c - 48)
                        i += 1
                        last = i
                    elif c == 46 and not point:
                        point = True
                        i += 1
                        last = i
                    elif c == 32 or c == 9:
                        i += 1
                    else:
                        break
                if i >= n:
                    c = 10

                if digits and (43 <= c <= 46 or (c | 32) == 101) and runs_on(data, i, last):
                    # 12,5 or 1.2.3 or 5-3 or 1e-5: one fault over the whole of it
                    i = past_number(data, i)
                    last = i
                    digits = 0
                    if not flags & (BROKEN | BEHIND_END | EXPRESSION):
                        faults.add(unreadable, lines, s, i)
                    if not flags & EXPRESSION:  # whether that can be read is for the parser of expressions to say
                        flags |= BROKEN
                elif digits:
                    pass
                elif letter == 79 and s + 1 < n and data[s + 1] == 60:  # O<name>
                    flags |= FLOW
                    if not flags & BEHIND_END:
                        faults.add(flow, lines, s, line_end(data, s))
                    continue
                elif names_value(data, s + 1, text):
                    i = past_blanks(data, s + 1)
                    if data[i] == 61:
                        i += 1
                    i = past_value(data, i)
                    last = i
                    flags |= EXPRESSION
                    if expression_at < 0:
                        expression_at = s
                else:
                    behind = past_letters(data, s)
                    if behind > s + 1:
                        if is_flow(data, behind, text[s:behind].upper()):
                            flags |= FLOW
                            if not flags & BEHIND_END:
                                faults.add(flow, lines, s, line_end(data, s))
                            i = behind
                            continue
                        c = data[behind] if behind < n else 10
                        if 48 <= c <= 57 or c == 43 or c == 45 or c == 46:
                            behind -= 1  # the last letter of XY5 begins a word
                    if behind == s + 1:
                        behind = last  # with its sign or its point
                    i = behind
                    last = i
                    if not flags & (BROKEN | BEHIND_END | EXPRESSION):
                        faults.add(unreadable, lines, s, i)
                    if not flags & EXPRESSION:  # whether that can be read is for the parser of expressions to say
                        flags |= BROKEN
                    if is_letter(data[i - 1]) and i > s + 1:
                        something = True
                        continue  # running text, not a word

                if digits:
                    if significant <= 15 and decimals <= 22:
                        value = cython.cast(cython.double, mantissa) / POWER[decimals]
                    else:
                        value = float(text[s + 1 : last].translate(None, b" \t\x1a+-"))
                    if negative:
                        value = -value
                    if value - value != 0.0:  # more digits than a double holds
                        digits = 0
                        if not flags & (BROKEN | BEHIND_END):
                            faults.add(unreadable, lines, s, last)
                        flags |= BROKEN
                if not digits:
                    value = float("nan")

                if letter == 78:  # N
                    if digits and 0 <= value < 2e9:
                        number = cython.cast(cython.int, value)
                    continue
                if letter == 79:  # O: a program number, unless a word of flow follows
                    if digits and words > first_word and not flags & EXPRESSION and (
                        48 <= data[s - 1] <= 57 or data[s - 1] == 46 or data[s - 1] == 45
                    ):
                        # a letter O within a number, X1O.5: a program number stands alone at the line's beginning
                        if not flags & (BROKEN | BEHIND_END):
                            faults.add(unreadable, lines, word_start[words - 1], last)
                        flags |= BROKEN
                        continue
                    if digits and i + 1 < n and is_letter(data[i]) and is_letter(data[i + 1]):
                        flags |= FLOW
                        if not flags & BEHIND_END:
                            faults.add(flow, lines, s, line_end(data, s))
                    continue
                if digits and (letter == 71 or letter == 77) and 64.5 < value < 99.5:
                    code = cython.cast(cython.int, value + 0.5)
                    if (letter == 71 and (code == 65 or code == 66)) or (letter == 77 and 97 <= code <= 99):
                        if not flags & (FLOW | BEHIND_END):
                            faults.add(flow, lines, s, line_end(data, s))
                        word_letter[words] = letter
                        word_value[words] = value
                        word_start[words] = s
                        word_end[words] = last
                        words += 1
                        flags |= FLOW
                        continue
                word_letter[words] = letter
                word_value[words] = value
                word_start[words] = s
                word_end[words] = last
                words += 1

            elif c == 40:  # '(': comments do not nest, so the first ')' ends it
                s = i
                i += 1
                nested = False
                while i < n and data[i] != 41 and data[i] != 10 and data[i] != 13:
                    nested |= data[i] == 40
                    i += 1
                comment_line[comments] = lines
                comment_start[comments] = s + 1
                comment_end[comments] = i
                comments += 1
                if i >= n or data[i] != 41:
                    if not flags & BEHIND_END:
                        faults.add(unclosed, lines, s, i)
                    break
                i += 1
                if nested:
                    # what stands before the outer ')' was meant as comment and is read as code
                    k = i
                    behind = -1
                    while k < n and data[k] != 10 and data[k] != 13 and data[k] != 40:
                        if data[k] == 41:
                            behind = k + 1
                        k += 1
                    if behind > 0:
                        if not flags & BEHIND_END:
                            faults.add(leftover, lines, i, behind)
                        while i < behind:
                            if data[i] != 41 and not is_blank(data[i]):
                                flags |= BROKEN
                                something = True
                            i += 1

            elif c == 0:  # what a paper tape or a sender puts before and behind a program
                i += 1

            elif c == 59:  # ';'
                s = i
                i = line_end(data, i)
                comment_line[comments] = lines
                comment_start[comments] = s + 1
                comment_end[comments] = i
                comments += 1

            elif flags & FLOW:
                i += 1

            elif c == 35 or c == 91:  # '#' or '['
                if expression_at < 0:
                    expression_at = i
                flags |= EXPRESSION
                i = past_value(data, i)

            elif c == 61 or c == 93:  # '=' or ']'
                if expression_at < 0:
                    expression_at = i
                flags |= EXPRESSION
                i = past_value(data, i + 1) if c == 61 else i + 1

            elif c == 37 and words == first_word and not flags & EXPRESSION:  # '%'
                k = past_blanks(data, i + 1)
                if k >= n or data[k] == 10 or data[k] == 13 or data[k] == 40 or data[k] == 59:
                    if opened or blocks:
                        over = True
                    opened = True
                    i += 1
                else:  # a line of text, or a line put out of use
                    comment_line[comments] = lines
                    comment_start[comments] = i + 1
                    i = line_end(data, i)
                    comment_end[comments] = i
                    comments += 1

            elif c == 47 and words == first_word and not flags & EXPRESSION:  # '/'
                if flags & DELETED:  # '//': free text
                    comment_line[comments] = lines
                    comment_start[comments] = i + 1
                    i = line_end(data, i)
                    comment_end[comments] = i
                    comments += 1
                    slash = -1
                else:
                    flags |= DELETED
                    something = True
                    slash = i
                    i += 1
                    if i < n and 49 <= data[i] <= 57:  # a numbered switch
                        i += 1

            elif (
                not flags & EXPRESSION
                and (c == 42 or (c == 58 and words == first_word))
                and past_digits(data, i + 1) > i + 1
            ):
                s = i
                i = past_digits(data, i + 1)  # a checksum '*33', or a program number ':1234'
                if c == 42 and not flags & BEHIND_END and decimal(data, s + 1, i) != mixed(data, begin, s):
                    faults.add(wrong_sum, lines, s, i, decimal(data, s + 1, i), mixed(data, begin, s))

            elif c == 41:  # a bracket that closes nothing
                if not flags & (BROKEN | BEHIND_END):
                    faults.add(leftover, lines, i, i + 1)
                i += 1

            elif flags & EXPRESSION:  # an operator
                i += 1

            else:
                s = i
                if c == 36 or c == 34:  # '$' and '"': a line for the controller itself, or quoted text
                    i = line_end(data, i)
                    flags |= BROKEN if flags & (BROKEN | BEHIND_END) else 0
                elif 48 <= c <= 57 or 43 <= c <= 46:
                    i = past_number(data, i)
                elif c >= 128:
                    while i < n and data[i] >= 128:
                        i += 1
                else:
                    i += 1
                if not flags & (BROKEN | BEHIND_END):
                    faults.add(unknown, lines, s, i)
                something = True
                # A stray number or a slash leaves open what the words beside it mean; a stray mark does not.
                if 43 <= c <= 57 or c == 36 or c == 34 or c == 37:
                    flags |= BROKEN

        if expression_at >= 0:
            something = True
            if not flags & (BEHIND_END | FLOW):
                k = i
                while k > expression_at and is_blank(data[k - 1]):
                    k -= 1
                if expressions < MOST_EXPRESSIONS:
                    faults.add(expression, lines, expression_at, k)
                expressions += 1
        if slash >= 0 and words > first_word and not flags & BEHIND_END:
            faults.add(deleted, lines, slash, i)
        if i - begin > LONGEST and not flags & BEHIND_END:
            faults.add(too_long, lines, begin, i, i - begin)
        if words > first_word or something or flags & (FLOW | BROKEN):
            block_line[blocks] = lines
            block_word[blocks] = first_word
            block_flags[blocks] = flags
            block_number[blocks] = number
            blocks += 1
        if i < n:
            i += 1
            if data[i - 1] == 13 and i < n and data[i] == 10:
                i += 1

    line_start[lines] = n
    block_word[blocks] = words
    return lines, blocks, words, comments
