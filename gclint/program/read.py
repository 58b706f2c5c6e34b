"""Bytes to Program: what cannot be a program is refused here, everything else is read to its end."""

from __future__ import annotations

import numpy as np

from gclint.faults import FaultRows
from gclint.problem import NotBuilt, Problem
from gclint.program import LARGEST
from gclint.program.kind import NoProgram, refuse_other_kinds
from gclint.tables.program import WORDS_OF_A_BLOCK, Program

LONGEST_LINE = 1_000_000  # bytes


def read(data: bytes, name: str) -> Program:
    """Read one program file; `name` is used in messages only. Faults of the text are in the table, not raised.

    Raises NoProgram for what is no milling program at all: binary, a line of over 1,000,000 characters, or a file for
    another kind of machine. Raises Problem for what is empty, full of zero bytes, stored as UTF-16 or over 1 GiB.
    """
    refuse_unreadable(data, name)
    program = tabulate(data, name)
    refuse_other_kinds(program)
    return program


def refuse_unreadable(data: bytes, name: str) -> None:
    """Raise Problem for bytes that no column is worth allocating for; looks at a bounded part or by fast search."""
    if len(data) > LARGEST:
        raise Problem("this file is over 1 GiB; gclint reads programs up to 1 GiB", name)
    if not data or data.isspace():
        raise Problem("this file is empty; there is nothing to check", name)
    if _is_wide_text(data):
        raise Problem("this file is stored as UTF-16, which no controller reads; save it as plain text", name)
    if not data[:64].strip(b"\0"):
        says = "this file begins with zero bytes, as after a copy that was cut off; copy it again, or export it again"
        raise Problem(says, name)
    if data[:2] in (b"\xff\xfe", b"\xfe\xff"):
        raise NoProgram("this file is binary, not the text of a program", name)
    if 0 in data and 0 in data.strip(b"\0"):
        raise NoProgram("this file is binary, not the text of a program", name)
    head = data[:65536]
    control = len(head) - len(head.translate(None, bytes(range(1, 9)) + bytes(range(14, 26)) + bytes(range(27, 32))))
    if control * 10 > len(head):
        raise NoProgram("this file is binary, not the text of a program", name)

    start = 0
    while len(data) - start > LONGEST_LINE:
        window = start + LONGEST_LINE + 1
        behind = max(data.rfind(b"\n", start, window), data.rfind(b"\r", start, window))
        if behind < 0:
            line = data.count(b"\n", 0, start) + 1
            raise NoProgram("this line has over 1,000,000 characters; this is not the text of a program", name, line)
        start = behind + 1


def _is_wide_text(data: bytes) -> bool:
    """Whether the head reads as text of two bytes a character, most of it of the plain letters that programs use."""
    head = data[:4096]
    marked = head[:2] in (b"\xff\xfe", b"\xfe\xff")
    if not marked and (len(head) < 2 or 0 not in head[:64]):
        return False
    order = "utf-16" if marked else "utf-16-be" if head[0] == 0 else "utf-16-le"
    text = head[: len(head) & ~1].decode(order, "replace")
    readable = sum(c.isprintable() or c in "\t\r\n" for c in text)
    return len(text) > 0 and readable == len(text) and sum(c < "\x7f" for c in text) * 2 >= len(text)


def tabulate(data: bytes, name: str) -> Program:
    """The table of one program whose bytes are known to be text."""
    try:
        from gclint.program.scan import measure, scan
    except ImportError as error:
        raise NotBuilt("gclint.program.scan") from error

    # Upper bounds; memory that is never touched costs nothing.
    lines, words, comments = measure(data)
    lines += 2
    words += WORDS_OF_A_BLOCK  # for the words of one block more, where parameters are followed
    line_start = np.empty(lines + 1, np.int64)
    block_line, block_word = np.empty(lines, np.int32), np.empty(lines + 1, np.int32)
    block_flags, block_number = np.empty(lines, np.uint8), np.empty(lines, np.int32)
    word_letter, word_value = np.empty(words, np.uint8), np.empty(words, np.float64)
    word_start, word_end = np.empty(words, np.int32), np.empty(words, np.int32)
    comment_line, comment_start = np.empty(comments, np.int32), np.empty(comments, np.int32)
    comment_end = np.empty(comments, np.int32)
    faults = FaultRows()
    lines, blocks, words, comments = scan(
        data,
        data,
        line_start,
        block_line,
        block_word,
        block_flags,
        block_number,
        word_letter,
        word_value,
        word_start,
        word_end,
        comment_line,
        comment_start,
        comment_end,
        faults,
    )
    return Program(
        name=name,
        data=data,
        line_start=line_start[: lines + 1],
        block_line=block_line[:blocks],
        block_word=block_word[: blocks + 1],
        block_flags=block_flags[:blocks],
        block_number=block_number[:blocks],
        word_letter=word_letter[:words],
        word_value=word_value[:words],
        word_start=word_start[:words],
        word_end=word_end[:words],
        comment_line=comment_line[:comments],
        comment_start=comment_start[:comments],
        comment_end=comment_end[:comments],
        faults=faults.columns(),
    )
