"""Gives the facts that tool-only-selected alone looks at."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from gclint.columns import Column, Floats, one_of
from gclint.facts.context import ON, Context, once
from gclint.facts.fact import number, of_rows, table_of, truth
from gclint.tables.motion import EVENT


class Selected(NamedTuple):
    line: int
    move: int
    asked: int
    in_spindle: int
    length_too: bool  # G43 takes the length of the tool asked for
    restarted: bool  # the spindle is stopped and started again behind it


@once
def selected(context: Context) -> list[Selected]:
    """Each T, in a program that changes tools by M6, behind which cuts come before any M6: the old tool cuts on."""
    m = context.motion
    kinds = m.event_kind
    changes = np.flatnonzero(kinds == EVENT["change"])
    cutting = np.flatnonzero(context.cuts)
    made: list[Selected] = []
    if not len(changes) or not len(cutting):
        return made
    for row in np.flatnonzero(kinds == EVENT["select"]).tolist():
        if row < changes[0]:
            continue
        later = changes[changes > row]
        until = int(m.event_move[later[0]]) if len(later) else len(m)
        last = int(later[0]) if len(later) else len(kinds)
        moves = cutting[(cutting >= m.event_move[row]) & (cutting < until)]
        asked = int(m.event_value[row])
        if not len(moves) or int(m.tool[moves[0]]) in (asked, -1):
            continue
        between = slice(row + 1, last)
        lengths = m.event_value[between][kinds[between] == EVENT["length-on"]]
        restarted = bool(one_of(kinds[between], ON).any()) and _stopped(kinds, row)
        move = int(moves[0])
        made.append(
            Selected(int(m.event_line[row]), move, asked, int(m.tool[move]), bool((lengths == asked).any()), restarted)
        )
    return made


def _stopped(kinds: Column, row: int) -> bool:
    """Whether M5 is the last word about the spindle before this event."""
    about = np.flatnonzero(one_of(kinds[:row], (*ON, EVENT["spindle-off"], EVENT["change"])))
    return bool(len(about)) and int(kinds[about[-1]]) == EVENT["spindle-off"]


def _spindle_tool(context: Context) -> Floats:
    return of_rows(selected, "in_spindle")(context)  # type: ignore[no-any-return]


SELECTED = table_of(
    selected,
    "selected_tools",
    "each T, in a program that changes tools by M6, behind which cuts come before any M6",
    {
        "line": number("", "line of T", of_rows(selected, "line")),
        "asked": number("", "number of the tool that T names", of_rows(selected, "asked")),
        "in_spindle": number("", "number of the tool that goes on cutting", _spindle_tool),
        "length_too": truth("whether G43 takes the length of the tool that T names",
                            of_rows(selected, "length_too", bool)),
        "restarted": truth("whether the spindle is stopped before it and started behind it",
                           of_rows(selected, "restarted", bool)),
    },
)  # fmt: skip

TABLES = (SELECTED,)
