"""Gives the facts that not-followed alone looks at."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from gclint.columns import Column, one_of
from gclint.facts.context import Context, once
from gclint.facts.fact import Build, Table, number, text
from gclint.facts.followed import last_line_of, placeless, too_many_turns, too_much_work
from gclint.facts.keep_outs import beyond_looks
from gclint.faults import CODE, KINDS
from gclint.tables.motion import COMPENSATED, EVENT, OTHER_FRAME, RAPID

CAUSES = (
    "incremental", "frame", "offset", "compensation", "parameter", "value", "text", "refused", "arc", "home",
    "never-named", "home-left-incremental", "work", "turns", "keep-outs",
)  # fmt: skip


_OF_FAULT = {
    "parameter-unset": "parameter", "parameter-impossible": "parameter", "expression-impossible": "parameter",
    "value-unknown": "value", "number-unreadable": "text", "character-unknown": "text", "word-conflict": "text",
    "comment-leftover": "text", "expression-unreadable": "text", "value-out-of-range": "text", "word-missing": "text",
    "no-motion-mode": "text", "code-refused": "refused", "code-unknown": "refused", "cycle-refused": "refused",
    "arc-does-not-close": "arc", "arc-radius-impossible": "arc", "arc-without-plane": "arc",
    "arc-centre-suspect": "arc", "arc-plane-suspect": "arc",
    "position-unknown": "incremental", "frame-turned": "frame", "flow-unmatched": "text",
}  # fmt: skip


class Unfollowed(NamedTuple):
    """`line`: where the place was lost; `move`: the first feed move that could not be followed; `share` of them all."""

    line: int
    move: int
    cause: str
    share: float
    moves: int


@once
def unfollowed(context: Context) -> list[Unfollowed]:
    """One row where feed moves have no known place, and one for each bound of work that was reached."""
    m = context.motion
    feeds = max(int(np.count_nonzero(m.kind != RAPID)), 1)
    found = []
    for cause, moves in (
        ("", np.flatnonzero(placeless(context))),
        ("turns", np.flatnonzero(too_many_turns(context))),
        ("work", np.flatnonzero(too_much_work(context))),
        ("keep-outs", beyond_looks(context)),
    ):
        if not len(moves):
            continue
        move = int(moves[0])
        line, why = (int(m.line[move]), cause) if cause else _cause(context, move)
        found.append(Unfollowed(line, move, why, len(moves) / feeds, len(moves)))
    return found


def _cause(context: Context, move: int) -> tuple[int, str]:
    """(line, cause) of the last thing before this move, or on its line, that made its place unknown."""
    m = context.motion
    here = int(m.line[move])
    if m.flags[move] & COMPENSATED:
        return _event(context, move, "compensation-on") or here, "compensation"
    faults = m.faults
    known = [CODE[kind] for kind in _OF_FAULT]
    before = np.flatnonzero(one_of(faults.kind, known) & (faults.line <= here))
    last = int(before[-1]) if len(before) else -1
    if m.flags[move] & OTHER_FRAME:
        framed = np.flatnonzero((faults.kind == CODE["frame-turned"]) & (faults.line <= here))
        if len(framed):
            return int(faults.line[framed[-1]]), "frame"
        return _event(context, move, "offset") or here, "offset"
    read = context.program.faults
    unread = np.flatnonzero(one_of(read.kind, known) & (read.line <= here))
    if last >= 0 or len(unread):
        line = int(faults.line[last]) if last >= 0 else 0
        cause = _OF_FAULT[KINDS[int(faults.kind[last])]] if last >= 0 else ""
        if len(unread) and int(read.line[unread[-1]]) > line:
            line, cause = int(read.line[unread[-1]]), _OF_FAULT[KINDS[int(read.kind[unread[-1]])]]
        return line, cause
    home = _event(context, move, "machine-move")
    left = last_line_of(context, "G91", here)
    if home and 0 < last_line_of(context, "G90", home - 1) < left <= home and last_line_of(context, "G90", here) < left:
        return left, "home-left-incremental"
    return (home, "home") if home else (here, "never-named")


def _event(context: Context, move: int, name: str) -> int:
    """Line of the last such event before a move; 0 if there is none."""
    m = context.motion
    rows = np.flatnonzero((m.event_kind == EVENT[name]) & (m.event_move <= move))
    return int(m.event_line[rows[-1]]) if len(rows) else 0


def _column(name: str, kind: type) -> Build:
    return lambda context: np.array([getattr(row, name) for row in unfollowed(context)], dtype=kind)


def _causes(context: Context) -> tuple[Column, tuple[str, ...]]:
    return np.array([CAUSES.index(row.cause) for row in unfollowed(context)], dtype=np.int32), CAUSES


UNFOLLOWED = Table(
    "unfollowed",
    "what could not be followed: one row where feed moves' place is not known, one for each bound of work reached",
    {
        "line": number("", "line where the place was lost or the bound was reached", _column("line", float)),
        "cause": text("why", _causes, words=CAUSES),
        "share": number("", "share of the moves at feed that could not be followed", _column("share", float)),
        "count": number("", "how many moves at feed", _column("moves", float)),
    },
    lambda context: len(unfollowed(context)),
    lambda context: context.motion.tool[_column("move", int)(context)],
    _column("move", int),
)

TABLES = (UNFOLLOWED,)
