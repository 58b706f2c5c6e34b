"""Facts about moves, speeds and tool changes."""

from __future__ import annotations

from typing import Any

import numpy as np

from gclint.columns import Bools, Column, Floats, one_of
from gclint.facts.context import Context, once
from gclint.facts.cut import shared
from gclint.facts.fact import Fact, Table, number, text, texts, truth
from gclint.facts.keep_outs import into_keep_out
from gclint.facts.outside_blank import BESIDE
from gclint.facts.runs import TURNED
from gclint.facts.setup import STOCK
from gclint.facts.stops import ENDING
from gclint.facts.travel import MOVING
from gclint.motion.feed_planning import axis_shares
from gclint.tables.motion import EVENT, HOME, LINE, RAPID, X_WORD, Y_WORD, Z_WORD
from gclint.tables.setup import DialMark

_FEED_LIMIT = "the machine's feed limits (`[machine] feed_limit` in shop.toml)"


def _rows(context: Context) -> Column:
    return np.arange(len(context.motion))


def _at(name: str) -> Any:
    return lambda context: getattr(context.motion, name)


def _first_across(context: Context) -> Bools:
    """The first move that travels in X or Y, where the tool was not lifted before: no Z was ever named."""
    m = context.motion
    first = np.zeros(len(m), dtype=bool)
    across = np.flatnonzero((m.flags & (X_WORD | Y_WORD)) != 0)
    if len(across):
        row = int(across[0])
        before = m.flags[: row + 1]
        lifted = ((before & Z_WORD) != 0) | ((before & HOME) != 0)
        first[row] = not lifted.any()
    return first


def _dives_in(context: Context) -> Floats:
    """How far a rapid from a place that is not known, before anything is cut, ends below the top of the blank, mm.

    0 for all other moves, and where its end is not over the blank. The stock model removes nothing along such a move.
    """
    m, box = context.motion, context.box
    deep = np.zeros(len(m))
    if box is None or box.top is None or box.x is None or box.y is None:
        return deep
    cut = np.flatnonzero(context.in_contact | (m.kind != RAPID))
    first = slice(0, int(cut[0]) if len(cut) else len(m))
    unknown = ~np.isfinite(m.x0[first] + m.y0[first] + m.z0[first])
    x, y, z = m.x1[first], m.y1[first], m.z1[first]
    over = (x >= box.x[0]) & (x <= box.x[1]) & (y >= box.y[0]) & (y <= box.y[1])
    deep[first] = np.where(unknown & over, np.nan_to_num(np.maximum(box.top - z, 0.0)), 0.0)
    return deep


# Moves whose place is not known (the first ones of a program, moves in machine coordinates) are left alone by the
# rules on place: no declaration would help, and what can be said of them is said elsewhere.


def _below_bottom(context: Context) -> Any:
    """How far the tip goes below the blank's underside, mm."""
    stock = context.setup.stock
    if stock is None or stock.bottom is None:
        return None
    return np.fmax(stock.bottom - context.lowest, -np.inf)


def _keep_out_depth(context: Context) -> Floats:
    return into_keep_out(context)[0]


def _keep_out_name(context: Context) -> tuple[Column, tuple[str, ...]]:
    names = tuple(box.name or f"keep-out {n}" for n, box in enumerate(context.setup.keep_out, 1))
    return (into_keep_out(context)[1] if names else np.full(len(context.motion), -1, dtype=np.int32)), names


def _clearance(context: Context) -> Any:
    """Height of a level rapid above the declared blank it passes over, mm; a large number for all other moves."""
    stock, m = context.setup.stock, context.motion
    if stock is None or not stock.declared or stock.top is None:
        return None
    height = context.lowest - stock.top
    travels = (m.kind == RAPID) & (m.z0 == m.z1) & ((m.x1 != m.x0) | (m.y1 != m.y0)) & context.placed & (height > -1e-9)
    if stock.x is not None and stock.y is not None:
        for start, end, span in ((m.x0, m.x1, stock.x), (m.y0, m.y1, stock.y)):
            travels &= (np.fmin(start, end) < span[1]) & (np.fmax(start, end) > span[0])
    return np.where(travels, height, np.inf)


@once
def _over_axis(context: Context) -> tuple[Column, Floats, Floats]:
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


def _at_most_limit(context: Context) -> Floats:
    """[moves] set feed at which no axis passes its limit, mm/min."""
    _, asked, limit = _over_axis(context)
    with np.errstate(divide="ignore", invalid="ignore"):
        return context.motion.feed * limit / asked


def _axis_feed(part: int) -> Any:
    """What the axis is asked for (1) or its limit (2); 0 and infinite where no axis can be near its limit."""

    def build(context: Context) -> Any:
        if context.setup.machine.feed_limit is None:
            return None
        return np.nan_to_num(_over_axis(context)[part], nan=0.0 if part == 1 else np.inf)

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
                     lambda c: (_over_axis(c)[0], ("X", "Y", "Z"))),
        "axis_feed": number("mm/min", "what the set feed asks of that axis", _axis_feed(1), _FEED_LIMIT),
        "axis_limit": number("mm/min", "the declared feed limit of that axis", _axis_feed(2), _FEED_LIMIT),
        "feed_within_limits": number("mm/min", "feed at which no axis passes its limit", _at_most_limit),
        "straight_down": truth("whether the tool goes down without travel",
                               lambda c: (c.motion.z1 < c.motion.z0) & (c.motion.x1 == c.motion.x0)
                               & (c.motion.y1 == c.motion.y0) & (c.motion.sweep == 0)),
        "in_contact": truth("whether the move removes material", lambda c: c.in_contact),
        "first_across": truth("whether it is the first travel in X or Y, before any Z is named", _first_across),
        "dives_in": number("mm", "of a rapid from a place that is not known, before anything is cut: how far it ends "
                           "below the top of the blank", _dives_in),
        "start_known": truth("whether its start is known in X and Y",
                             lambda c: np.isfinite(c.motion.x0) & np.isfinite(c.motion.y0)),
        **BESIDE,
        **TURNED,
        "below_bottom": number("mm", "how far the tip goes below the blank's underside", _below_bottom, STOCK),
        "keep_out_depth": number("mm", "how far the tool passes below the top of a keep-out box it crosses",
                                 _keep_out_depth),
        "keep_out": text("the keep-out box", _keep_out_name),
        "clearance": number("mm", "height of a level rapid above the declared blank it passes over", _clearance,
                            STOCK),
        **ENDING,
        **MOVING,
    },
    lambda c: len(c.motion),
    lambda c: c.motion.tool,
    _rows,
    neighbours=True,
)  # fmt: skip


# speeds: one row per S in force during cuts


@once
def _speed_moves(context: Context) -> Column:
    """First cutting move under each S word (and under each value that no word of the program sets)."""
    m = context.motion
    cutting = np.flatnonzero(context.cuts)
    if len(cutting) == 0:
        return cutting
    line, speed = m.speed_line[cutting], np.nan_to_num(m.speed[cutting], nan=-1.0)
    change = (line[1:] != line[:-1]) | (speed[1:] != speed[:-1])
    return cutting[np.concatenate(([True], change))]


def _speed_line(context: Context) -> Column:
    m, moves = context.motion, _speed_moves(context)
    return np.where(m.speed_line[moves] > 0, m.speed_line[moves], m.line[moves])


def _nearest(context: Context, speed: float) -> DialMark | None:
    dial = context.setup.spindle.dial
    return min(dial, key=lambda mark: abs(mark.stated - speed)) if dial and np.isfinite(speed) else None


def _aimed(context: Context) -> list[DialMark | None]:
    """The mark each speed is held against: the job's, else the nearest one."""
    speeds = context.motion.speed[_speed_moves(context)]
    return [context.chosen_mark or _nearest(context, float(s)) for s in speeds]


def _stated(context: Context) -> Floats:
    return np.array([mark.stated if mark else np.nan for mark in _aimed(context)], dtype=np.float64)


def _off_by(context: Context) -> Floats:
    speeds = context.motion.speed[_speed_moves(context)]
    with np.errstate(divide="ignore", invalid="ignore"):
        off = np.abs(speeds - _stated(context)) / _stated(context)
    return np.where(np.isnan(speeds), 0.0, off)  # no S: nothing that could differ


def _other_mark(context: Context) -> Bools:
    """Whether the nearest mark differs from that of the speed before."""
    speeds = context.motion.speed[_speed_moves(context)]
    marks = [mark.mark if (mark := _nearest(context, float(s))) else "" for s in speeds]
    before = ["", *marks]
    return np.array([bool(mark and was) and mark != was for mark, was in zip(marks, before)], dtype=bool)


def _stopped_before(context: Context) -> Bools:
    """Whether the machine waits for a person between the last cut at the speed before and this one."""
    moves = _speed_moves(context)
    cutting = np.flatnonzero(context.cuts)
    stops = context.motion.event_move[context.stop_events]
    answer = np.zeros(len(moves), dtype=bool)
    for row, move in enumerate(moves.tolist()):
        place = int(np.searchsorted(cutting, move))
        last = int(cutting[place - 1]) if place else -1
        answer[row] = bool(((stops > last) & (stops <= move)).any())
    return answer


def _first_chip(name: str) -> Any:
    """A column of Loads at the judged piece with the thinnest chip under each speed; NaN where there is none."""

    def build(context: Context) -> Floats:
        moves, pieces, loads = _speed_moves(context), context.engagement.pieces, context.cutting.loads
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


SPEEDS = Table(
    "speeds",
    "speeds the program cuts at, one row each time the S in force changes",
    {
        **shared(_speed_moves),
        "line": number("", "line of the S word, else of the first cut", _speed_line),
        "off_by": number("", "how far S is from what its dial mark states, as a share", _off_by),
        "stated": number("rev/min", "what the dial mark states", _stated),
        "mark": text("the job's dial mark, else the one nearest to S",
                     lambda c: texts([m.mark if m else None for m in _aimed(c)])),
        "other_mark": truth("whether the nearest mark differs from that of the speed before", _other_mark),
        "stopped_before": truth("whether the machine waits for a person before this speed is used", _stopped_before),
        "chip": number("mm", "middle of the largest chip thicknesses at this speed", _first_chip("h_ex")),
        "chip_low": number("mm", "thinnest chip the window allows there", _first_chip("chip_low")),
        "chip_high": number("mm", "thickest chip the window allows there", _first_chip("chip_high")),
    },
    lambda c: len(_speed_moves(c)),
    lambda c: c.motion.tool[_speed_moves(c)],
    _speed_moves,
    neighbours=True,
)  # fmt: skip


# changes: one row per M6; where a program has none, one per T (which then puts its tool in)


def _changes(context: Context) -> Column:
    made = np.flatnonzero(context.motion.event_kind == EVENT["change"])
    return made if len(made) else np.flatnonzero(context.motion.event_kind == EVENT["select"])


def _move_after(context: Context) -> Column:
    """The move that follows the change (the last one where none does, -1 where there is no move)."""
    after: Column = np.minimum(context.motion.event_move[_changes(context)], len(context.motion) - 1)
    return after


def _called(context: Context) -> Floats:
    """The tool each change asks for: the last T before it (a controller that passes over M6 keeps the old one)."""
    m = context.motion
    selects = np.flatnonzero(m.event_kind == EVENT["select"])
    place = np.searchsorted(selects, _changes(context), side="right") - 1
    if len(selects) == 0:
        return m.event_value[_changes(context)]
    return np.where(place >= 0, m.event_value[selects[np.maximum(place, 0)]], m.event_value[_changes(context)])


def _tool_before(context: Context) -> Floats:
    """Number of the tool called before; NaN at the first change."""
    values = _called(context)
    return np.concatenate(([np.nan], values[:-1]))[: len(values)]


def _change_stopped(context: Context) -> Bools:
    """Whether the machine waits for a person between the cuts before and after the change."""
    m, cutting = context.motion, np.flatnonzero(context.cuts)
    stops = m.event_move[context.stop_events]
    answer = np.zeros(len(_changes(context)), dtype=bool)
    for row, event in enumerate(_changes(context).tolist()):
        place = int(np.searchsorted(cutting, m.event_move[event]))
        last = int(cutting[place - 1]) if place else -1
        after = int(cutting[place]) if place < len(cutting) else len(m)
        answer[row] = bool(((stops > last) & (stops <= after)).any())
    return answer


def _stop_word_before(context: Context) -> Bools:
    """Whether M0 or M60 is given, and obeyed, behind the last cut and the last change before each change."""
    m, changes = context.motion, _changes(context)
    if context.setup.controller.program_stop in ("ignores", "refuses"):
        return np.zeros(len(changes), dtype=bool)
    stops = np.flatnonzero(one_of(m.event_kind, (EVENT["stop"], EVENT["pallet-stop"])))
    cutting = np.concatenate(([-1], np.flatnonzero(context.cuts)))
    last_cut = cutting[np.searchsorted(cutting, m.event_move[changes]) - 1]
    before = np.concatenate(([-1], stops))[np.searchsorted(stops, changes)]  # the last stop before each change
    since = np.concatenate(([-1], changes))[: len(changes)]
    answer: Bools = (before > since) & (before >= 0) & (m.event_move[np.maximum(before, 0)] > last_cut)
    return answer


def _cut_before(context: Context) -> Bools:
    first = int(np.argmax(context.cuts)) if context.cuts.any() else len(context.motion)
    return np.asarray(context.motion.event_move[_changes(context)] > first)


def _cut_after(context: Context) -> Bools:
    cutting = np.flatnonzero(context.cuts)
    return np.asarray(context.motion.event_move[_changes(context)] <= (cutting[-1] if len(cutting) else -1))


def _cuts_before_next(context: Context) -> Bools:
    moves, cutting = context.motion.event_move[_changes(context)], np.flatnonzero(context.cuts)
    place = np.searchsorted(cutting, np.concatenate((moves, [len(context.motion)])))
    return np.asarray(np.diff(place) > 0)


@once
def _expected(context: Context) -> Floats:
    """[changes] the tool that comes next by the job's list; -1 behind its end, NaN where nothing else is cut with.

    The list may hold other programs' tools: where it is longer, it counts from where this one's first tool stands.
    """
    order, called = context.setup.tool_order, _called(context)
    expected = np.full(len(called), np.nan)
    rows = [row for row in np.flatnonzero(_cuts_before_next(context)).tolist() if np.isfinite(called[row])]
    rows = [row for row, before in zip(rows, [None, *rows]) if before is None or called[row] != called[before]]
    if not rows or not order:
        return expected
    first = int(called[rows[0]])
    at = order.index(first) if first in order and len(rows) < len(order) else 0
    behind = [*order[at:], *[-1] * len(rows)]
    expected[rows] = behind[: len(rows)]
    return expected


@once
def _lengths(context: Context) -> tuple[Column, Floats]:
    """(number of length words between each change and the first cut behind it, H of the last of them; NaN if none)."""
    m, cutting, changes = context.motion, np.flatnonzero(context.cuts), _changes(context)
    words = np.flatnonzero(m.event_kind == EVENT["length-on"])
    count, height = np.zeros(len(changes), dtype=np.int64), np.full(len(changes), np.nan)
    for row, event in enumerate(changes.tolist()):
        place = int(np.searchsorted(cutting, m.event_move[event]))
        until = int(cutting[place]) if place < len(cutting) else len(m)
        behind = int(changes[row + 1]) if row + 1 < len(changes) else len(m.event_kind)  # the next change ends it
        last = int(np.searchsorted(m.event_move[words], until, side="right"))
        own = words[:last]
        own = own[(own > event) & (own < behind)]
        count[row] = len(own)
        if len(own):
            height[row] = m.event_value[own[-1]]
    return count, height


def _length_of_another(context: Context) -> Bools:
    """Whether H names another tool that the program changes to or that is declared.

    Not where H and T differ by the same number at every change: then that is how the shop keeps its table.
    """
    height, called = _lengths(context)[1], _called(context)
    tools = [*called[np.isfinite(called)].tolist(), *context.setup.tools]
    return np.asarray(one_of(height, tools) & _length_differs(context))


def _length_differs(context: Context) -> Bools:
    """Whether H is another number than T, and not by the same number at every change of two or more."""
    height, called = _lengths(context)[1], _called(context)
    apart = height - called
    known = apart[np.isfinite(apart)]
    habit = len(known) > 1 and bool((known == known[0]).all())
    return np.asarray(np.isfinite(apart) & (apart != 0) & (not habit))


def _lengths_agree(context: Context) -> bool:
    """Whether H and T are one number at some change."""
    return bool((_lengths(context)[1] == _called(context)).any())


_CHANGE_FACTS: dict[str, Fact] = {
    "line": number("", "line of the program", lambda c: c.motion.event_line[_changes(c)]),
    "new_tool": number("", "number of the tool called", _called),
    "tool_before": number("", "number of the tool called before; unknown at the first change", _tool_before),
    "first": truth("whether it is the program's first tool change", lambda c: np.arange(len(_changes(c))) == 0),
    "stopped": truth("whether the machine waits for a person between the cuts before and after", _change_stopped),
    "stop_word_before": truth("whether M0 or M60 stands before it, behind the last cut, and the controller obeys it",
                              _stop_word_before),
    "cut_before": truth("whether the program has cut before it", _cut_before),
    "cut_after": truth("whether the program cuts after it", _cut_after),
    "cuts_before_next": truth("whether the program cuts between it and the next change", _cuts_before_next),
    "order_declared": truth("whether the job lists the tools in the order in which they are put in",
                            lambda c: bool(c.setup.tool_order)),
    "off_order": truth("whether the program cuts with it, and the list says another tool",
                       lambda c: np.isfinite(_expected(c)) & (_expected(c) != _called(c))),
    "expected_tool": number("", "the tool that comes next by the job's list; -1 behind its end", _expected,
                            "`tool_order` in job.toml"),
    "length_set": truth("whether a length (G43) is set between the change and the next cut",
                        lambda c: _lengths(c)[0] > 0),
    "length_elsewhere": truth("whether a length (G43) is set behind any change of the program",
                              lambda c: bool((_lengths(c)[0] > 0).any())),
    "length_number": number("", "H of that length; unknown where the word has none", lambda c: _lengths(c)[1]),
    "length_of_another": truth("whether H names another tool of the program or of the shop", _length_of_another),
    "length_differs": truth("whether H is another number than T, and not by the same number at every change",
                            _length_differs),
    "lengths_agree": truth("whether H and T are one number at some change", _lengths_agree),
}

CHANGES = Table(
    "changes",
    "tool changes",
    _CHANGE_FACTS,
    lambda c: len(_changes(c)),
    lambda c: np.nan_to_num(_called(c), nan=-1).astype(np.int64),
    _move_after,
)

TABLES = (MOVES, SPEEDS, CHANGES)
