"""Facts about contours: runs of moves under cutter compensation (G41, G42)."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from gclint.columns import Bools, Floats, one_of
from gclint.facts.context import Context, once
from gclint.facts.fact import Build, Table, number
from gclint.tables.motion import EVENT, RAPID, Motion


class Contour(NamedTuple):
    """From the G41 or G42 that turns compensation on to the place where it goes off, or should have gone off before."""

    on_line: int
    left_on: str  # one of LEFT_ON
    line: int
    move: int
    number: float = float("nan")  # D in force; NaN where none is named
    on_move: int = 0


@once
def contours(context: Context) -> list[Contour]:
    """Every contour, in the order of execution."""
    m = context.motion
    kinds, moves, lines = m.event_kind, m.event_move, m.event_line
    wanted = [EVENT[name] for name in ("compensation-on", "compensation-off", "change", "end")]
    found: list[Contour] = []
    on: int | None = None  # the event that turned it on
    for row in np.flatnonzero(one_of(kinds, wanted)).tolist():
        kind = int(kinds[row])
        if kind == EVENT["compensation-on"]:
            on = row if on is None else on
        elif on is not None:
            travel = _travel(m, int(moves[on]), int(moves[row]))
            left_on = {EVENT["change"]: "tool-change", EVENT["end"]: "end"}.get(kind, "no")
            begun = (float(m.event_value[on]), int(moves[on]))
            if travel is not None:
                found.append(Contour(int(lines[on]), "travel", int(m.line[travel]), travel, *begun))
            else:
                found.append(Contour(int(lines[on]), left_on, int(lines[row]), max(int(moves[row]) - 1, 0), *begun))
            on = None
    if on is not None:
        last = len(m) - 1
        travel = _travel(m, int(moves[on]), len(m))
        at = travel if travel is not None else max(last, 0)
        ended = m.ended and not m.stopped_at
        left_on = "travel" if travel is not None else ("end" if ended else "no")
        line = int(m.line[at]) if last >= 0 else int(lines[on])
        found.append(Contour(int(lines[on]), left_on, line, at, float(m.event_value[on]), int(moves[on])))
    return found


def _travel(m: Motion, first: int, behind: int) -> int | None:
    """A rapid in XY between two cuts of one contour, above them all; None where there is none."""
    rows = slice(first, behind)
    across: Bools = (m.sweep[rows] != 0) | (np.hypot(m.x1[rows] - m.x0[rows], m.y1[rows] - m.y0[rows]) > 1e-6)
    cuts = np.flatnonzero(across & (m.kind[rows] != RAPID))
    if len(cuts) < 2:
        return None
    top = np.nanmax(np.fmax(m.z0[rows][cuts], m.z1[rows][cuts]), initial=-np.inf)
    over = across & (m.kind[rows] == RAPID) & (np.fmin(m.z0[rows], m.z1[rows]) > top)
    over[: cuts[0]] = over[cuts[-1] :] = False
    return first + int(np.argmax(over)) if over.any() else None


def _column(name: str) -> Build:
    return lambda context: np.array([getattr(contour, name) for contour in contours(context)], dtype=np.int64)


def numbers_named(context: Context) -> Floats:
    return np.array([contour.number for contour in contours(context)], dtype=np.float64)


CONTOURS = Table(
    "contours",
    "runs of moves under cutter compensation (G41, G42)",
    {
        "line": number("", "line where compensation goes off, or is found left on", _column("line")),
        "on_line": number("", "line that turns compensation on", _column("on_line")),
    },
    lambda c: len(contours(c)),
    lambda c: c.motion.tool[_column("move")(c)] if len(c.motion) else np.full(len(contours(c)), -1),
    lambda c: _column("move")(c) if len(c.motion) else np.full(len(contours(c)), -1),
)

TABLES = (CONTOURS,)
