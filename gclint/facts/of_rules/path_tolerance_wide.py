"""Gives the facts that path-tolerance-wide alone looks at."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from gclint.facts.context import Context, once
from gclint.facts.fact import number, of_rows, table_of
from gclint.tables.motion import EVENT, INCH


class Tolerance(NamedTuple):
    line: int
    move: int
    wide: float


@once
def tolerances(context: Context) -> list[Tolerance]:
    """Each G64 with a P that comes into force, mm."""
    p, m = context.program, context.motion
    made = []
    for row in np.flatnonzero((m.event_kind == EVENT["path-mode"]) & (np.abs(m.event_value - 64) < 1e-6)).tolist():
        line, move = int(m.event_line[row]), int(m.event_move[row])
        block = int(np.searchsorted(p.block_line, line))
        if block >= len(p.block_line) or int(p.block_line[block]) != line:
            continue
        words = slice(int(p.block_word[block]), int(p.block_word[block + 1]))
        given = p.word_value[words][p.word_letter[words] == ord("P")]
        if len(given) and np.isfinite(given[0]) and len(m):
            inch = bool(m.flags[min(move, len(m) - 1)] & INCH)
            made.append(Tolerance(line, min(move, len(m) - 1), float(given[0]) * (25.4 if inch else 1.0)))
    return made


TOLERANCES = table_of(
    tolerances,
    "path_tolerances",
    "each G64 with a P: how far the path may leave the programmed one",
    {
        "line": number("", "line of the word", of_rows(tolerances, "line")),
        "tolerance": number("mm", "how far the path may leave the programmed one", of_rows(tolerances, "wide")),
    },
)

TABLES = (TOLERANCES,)
