"""Facts about moves, speeds and tool changes."""

from __future__ import annotations

from typing import Any

import numpy as np

from gclint.columns import Bools, Column, Floats, one_of
from gclint.facts.context import Context, once
from gclint.facts.cut import shared
from gclint.facts.fact import Fact, Table, number, text, texts, truth
from gclint.facts.keep_outs import into_keep_out
from gclint.motion.feed_planning import axis_shares
from gclint.tables.motion import EVENT, LINE, RAPID
from gclint.tables.setup import DialMark

_FEED_LIMIT = "the machine's feed limits (`[machine] feed_limit` in shop.toml)"


def _rows(context: Context) -> Column:
    return np.arange(len(context.motion))


def _at(name: str) -> Any:
    return lambda context: getattr(context.motion, name)


# Moves whose place is not known (the first ones of a program, moves in machine coordinates) are left alone by the
# rules on place: no declaration would help, and what can be said of them is said elsewhere.


def _keep_out_depth(context: Context) -> Floats:
    return into_keep_out(context)[0]


def _keep_out_name(context: Context) -> tuple[Column, tuple[str, ...]]:
    names = tuple(box.name or f"keep-out {n}" for n, box in enumerate(context.setup.keep_out, 1))
    return (into_keep_out(context)[1] if names else np.full(len(context.motion), -1, dtype=np.int32)), names


@once
def over_axis(context: Context) -> tuple[Column, Floats, Floats]:
    """[moves] (the axis that is asked for the most against its limit, -1 if none; what it is asked for and its limit,
    mm/min)."""
    m, limits = context.motion, context.setup.machine.feed_limit
    axis, asked, limit = np.full(len(m), -1, np.int32), np.full(len(m), np.nan), np.full(len(m), np.nan)
    known = [each or np.inf for each in (limits.x, limits.y, limits.z)] if limits else []
    rows = np.flatnonzero((m.kind != RAPID) & (m.feed > min(known, default=np.inf)) & (m.length > 0))
    if not len(rows):
        return axis, asked, limit
    over = axis_shares(m, rows) * m.feed[rows, None] / np.array(known)
    most = np.argmax(over, axis=1)
    axis[rows] = most
    limit[rows] = np.array(known)[most]
    asked[rows] = over[np.arange(len(rows)), most] * limit[rows]
    return axis, asked, limit


def _axis_feed(part: int) -> Any:
    """What the axis is asked for (1) or its limit (2); 0 and infinite where no axis can be near its limit."""

    def build(context: Context) -> Any:
        if context.setup.machine.feed_limit is None:
            return None
        return np.nan_to_num(over_axis(context)[part], nan=0.0 if part == 1 else np.inf)

    return build


MOVES = Table(
    "moves",
    "straight and circular motions, rapid or feed",
    {
        **shared(_rows),
        **{f"start_{axis}": number("mm", f"{axis.upper()} of the tip at the start", _at(f"{axis}0")) for axis in "xyz"},
        **{axis: number("mm", f"{axis.upper()} of the tip at the end", _at(f"{axis}1")) for axis in "xyz"},
        "arc": truth("whether it is an arc or a helix", lambda c: c.motion.kind > LINE),
        "lowest": number("mm", "lowest Z of the tip along the move", lambda c: c.lowest),
        "length": number("mm", "length along the path", lambda c: np.nan_to_num(c.motion.length)),
        "axis": text("the axis that the set feed asks for the most against its limit",
                     lambda c: (over_axis(c)[0], ("X", "Y", "Z"))),
        "axis_feed": number("mm/min", "what the set feed asks of that axis", _axis_feed(1), _FEED_LIMIT),
        "axis_limit": number("mm/min", "the declared feed limit of that axis", _axis_feed(2), _FEED_LIMIT),
        "straight_down": truth("whether the tool goes down without travel",
                               lambda c: (c.motion.z1 < c.motion.z0) & (c.motion.x1 == c.motion.x0)
                               & (c.motion.y1 == c.motion.y0) & (c.motion.sweep == 0)),
        "in_contact": truth("whether the move removes material", lambda c: c.in_contact),
        "start_known": truth("whether its start is known in X and Y",
                             lambda c: np.isfinite(c.motion.x0) & np.isfinite(c.motion.y0)),
        "keep_out_depth": number("mm", "how far the tool passes below the top of a keep-out box it crosses",
                                 _keep_out_depth),
        "keep_out": text("the keep-out box", _keep_out_name),
    },
    lambda c: len(c.motion),
    lambda c: c.motion.tool,
    _rows,
    neighbours=True,
)  # fmt: skip


# speeds: one row per S in force during cuts


@once
def speed_moves(context: Context) -> Column:
    """First cutting move under each S word (and under each value that no word of the program sets)."""
    m = context.motion
    cutting = np.flatnonzero(context.cuts)
    if len(cutting) == 0:
        return cutting
    line, speed = m.speed_line[cutting], np.nan_to_num(m.speed[cutting], nan=-1.0)
    change = (line[1:] != line[:-1]) | (speed[1:] != speed[:-1])
    return cutting[np.concatenate(([True], change))]


def nearest_mark(context: Context, speed: float) -> DialMark | None:
    dial = context.setup.spindle.dial
    return min(dial, key=lambda mark: abs(mark.stated - speed)) if dial and np.isfinite(speed) else None


def aimed_marks(context: Context) -> list[DialMark | None]:
    """The mark each speed is held against: the job's, else the nearest one."""
    speeds = context.motion.speed[speed_moves(context)]
    return [context.chosen_mark or nearest_mark(context, float(s)) for s in speeds]


def _first_chip(name: str) -> Any:
    """A column of Loads at the judged piece with the thinnest chip under each speed; NaN where there is none."""

    def build(context: Context) -> Floats:
        moves, pieces, loads = speed_moves(context), context.engagement.pieces, context.cutting.loads
        judged = np.flatnonzero((loads.chip_judged != 0) & np.isfinite(loads.h_ex) & np.isfinite(loads.chip_low))
        value = np.full(len(moves), np.nan)
        owner = np.searchsorted(moves, pieces.move[judged], side="right") - 1
        for row in range(len(moves)):
            own = judged[owner == row]
            if len(own):
                order = own[np.argsort(loads.h_ex[own], kind="stable")]
                value[row] = float(getattr(loads, name)[order[len(order) // 2]])
        return value

    return build


def _speed_line(context: Context) -> Column:
    m, moves = context.motion, speed_moves(context)
    return np.where(m.speed_line[moves] > 0, m.speed_line[moves], m.line[moves])


SPEEDS = Table(
    "speeds",
    "speeds the program cuts at, one row each time the S in force changes",
    {
        **shared(speed_moves),
        "line": number("", "line of the S word, else of the first cut", _speed_line),
        "mark": text("the job's dial mark, else the one nearest to S",
                     lambda c: texts([m.mark if m else None for m in aimed_marks(c)])),
        "chip": number("mm", "middle of the largest chip thicknesses at this speed", _first_chip("h_ex")),
        "chip_low": number("mm", "thinnest chip the window allows there", _first_chip("chip_low")),
        "chip_high": number("mm", "thickest chip the window allows there", _first_chip("chip_high")),
    },
    lambda c: len(speed_moves(c)),
    lambda c: c.motion.tool[speed_moves(c)],
    speed_moves,
    neighbours=True,
)  # fmt: skip


# changes: one row per M6; where a program has none, one per T (which then puts its tool in)


def change_events(context: Context) -> Column:
    made = np.flatnonzero(context.motion.event_kind == EVENT["change"])
    return made if len(made) else np.flatnonzero(context.motion.event_kind == EVENT["select"])


def _move_after(context: Context) -> Column:
    """The move that follows the change (the last one where none does, -1 where there is no move)."""
    after: Column = np.minimum(context.motion.event_move[change_events(context)], len(context.motion) - 1)
    return after


def tool_called(context: Context) -> Floats:
    """The tool each change asks for: the last T before it (a controller that passes over M6 keeps the old one)."""
    m = context.motion
    selects = np.flatnonzero(m.event_kind == EVENT["select"])
    place = np.searchsorted(selects, change_events(context), side="right") - 1
    if len(selects) == 0:
        return m.event_value[change_events(context)]
    return np.where(place >= 0, m.event_value[selects[np.maximum(place, 0)]], m.event_value[change_events(context)])


def _stop_word_before(context: Context) -> Bools:
    """Whether M0 or M60 is given, and obeyed, behind the last cut and the last change before each change."""
    m, changes = context.motion, change_events(context)
    if context.setup.controller.program_stop in ("ignores", "refuses"):
        return np.zeros(len(changes), dtype=bool)
    stops = np.flatnonzero(one_of(m.event_kind, (EVENT["stop"], EVENT["pallet-stop"])))
    cutting = np.concatenate(([-1], np.flatnonzero(context.cuts)))
    last_cut = cutting[np.searchsorted(cutting, m.event_move[changes]) - 1]
    before = np.concatenate(([-1], stops))[np.searchsorted(stops, changes)]  # the last stop before each change
    since = np.concatenate(([-1], changes))[: len(changes)]
    answer: Bools = (before > since) & (before >= 0) & (m.event_move[np.maximum(before, 0)] > last_cut)
    return answer


def cuts_before_next(context: Context) -> Bools:
    moves, cutting = context.motion.event_move[change_events(context)], np.flatnonzero(context.cuts)
    place = np.searchsorted(cutting, np.concatenate((moves, [len(context.motion)])))
    return np.asarray(np.diff(place) > 0)


_CHANGE_FACTS: dict[str, Fact] = {
    "line": number("", "line of the program", lambda c: c.motion.event_line[change_events(c)]),
    "new_tool": number("", "number of the tool called", tool_called),
    "first": truth("whether it is the program's first tool change", lambda c: np.arange(len(change_events(c))) == 0),
    "stop_word_before": truth("whether M0 or M60 stands before it, behind the last cut, and the controller obeys it",
                              _stop_word_before),
}

CHANGES = Table(
    "changes",
    "tool changes",
    _CHANGE_FACTS,
    lambda c: len(change_events(c)),
    lambda c: np.nan_to_num(tool_called(c), nan=-1).astype(np.int64),
    _move_after,
)

TABLES = (MOVES, SPEEDS, CHANGES)
