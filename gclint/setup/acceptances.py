"""Acceptances written in a program: (gclint accept straight-plunge because the holes are drilled first)."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from gclint.problem import Problem
from gclint.program.table import decode
from gclint.setup.types import Accept

if TYPE_CHECKING:
    from gclint.program.table import Program

_ACCEPT = re.compile(r"\s*gclint\s+accept\b\s*(.*)", re.IGNORECASE | re.DOTALL)


def accepts_in(program: Program) -> tuple[Accept, ...]:
    """Acceptances written in comments. Raises Problem, with its place, for one that lacks its rule or its reason."""
    import numpy as np

    accepts: dict[int, Accept] = {}
    for word in (b"gclint", b"GCLINT"):  # some posts write every comment in capitals
        at = program.data.find(word)
        while at >= 0:
            row = int(np.searchsorted(program.comment_start, at, side="right")) - 1
            if row >= 0 and row not in accepts and at < program.comment_end[row]:
                start = int(program.comment_start[row])
                match = _ACCEPT.fullmatch(decode(program.data[start : int(program.comment_end[row])]))
                if match:
                    accepts[row] = _accept(program, match[1], start)
            at = program.data.find(word, at + 1)
    return tuple(accepts[row] for row in sorted(accepts))


def _accept(program: Program, text: str, start: int) -> Accept:
    rule, _, rest = text.strip().partition(" ")
    because = re.fullmatch(r"\s*because\s+(.*\S)\s*", rest, re.IGNORECASE | re.DOTALL)
    line, column = program.place(start)
    if not rule or because is None:
        says = "an acceptance needs a rule and a reason: (gclint accept straight-plunge because the holes are drilled)"
        raise Problem(says, program.name, line, column)
    return Accept(rule.lower(), because[1], None, line, f"{program.name} line {line}")
