"""Gives the facts that subprogram-without-end alone looks at."""

from __future__ import annotations

import re

import numpy as np

from gclint.facts.context import Context, once
from gclint.facts.fact import Table, number
from gclint.tables.program import BEHIND_END

CALL = re.compile(rb"M0*98[^\n(;]*?P\s*(\d{1,9})", re.IGNORECASE)


HEAD = re.compile(rb"^[ \t]*(?:N\d+[ \t]*)?[O:][ \t]*(\d{1,9})(?![\d.]|[ \t]*(?:SUB|CALL|WHILE|IF|DO|REPEAT))",
                  re.IGNORECASE | re.MULTILINE)  # fmt: skip


RETURN = re.compile(rb"M0*99(?!\d)", re.IGNORECASE)


COMMENT = re.compile(rb"\([^)\n]*\)|;[^\n]*")


@once
def endless(context: Context) -> list[tuple[int, int]]:
    """(line of its O word, its number) of each called subprogram of this file that runs on into what stands behind."""
    data = COMMENT.sub(lambda m: b" " * len(m[0]), context.program.data) if b"98" in context.program.data else b""
    called = {int(n) for found in CALL.findall(data) for n in (found, found[-4:])}
    if not called:
        return []
    behind = np.flatnonzero(context.program.block_flags & BEHIND_END)
    closed = int(context.program.block_line[behind[0]]) if len(behind) else context.program.lines + 1
    heads = [found for found in HEAD.finditer(data) if context.program.place(found.start(1))[0] < closed]
    made = []
    for found, after in zip(heads, [*(other.start() for other in heads[1:]), len(data)]):
        if int(found[1]) in called and not RETURN.search(data, found.end(), after):
            made.append((context.program.place(found.start(1))[0], int(found[1])))
    return made


SUBPROGRAMS = Table(
    "endless_subprograms",
    "numbered subprograms that are called (M98) and have no M99",
    {
        "line": number("", "line of its O word", lambda c: np.array([float(line) for line, _ in endless(c)])),
        "number": number("", "its number", lambda c: np.array([float(n) for _, n in endless(c)])),
    },
    lambda c: len(endless(c)),
)

TABLES = (SUBPROGRAMS,)
