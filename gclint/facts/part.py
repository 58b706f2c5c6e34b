"""Facts about the part: what is cut free, which bridges are left, what is not cut through, and laps that stand out.

All but the laps' feeds are read from what is left standing in the stock model when the program has run. Where the
blank's underside is not known, one row whose facts are unknown stands for what cannot be judged.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import numpy as np

from gclint.columns import Column, Floats, Longs, numbered
from gclint.facts.context import Context, once
from gclint.facts.cut import line_of
from gclint.facts.fact import Build, Table, number, truth
from gclint.knowledge.numbers import model_number
from gclint.stock.laps import Laps, laps_of
from gclint.stock.standing import Left, left_standing
from gclint.stock.walls import Walls, thin_walls
from gclint.tables.motion import RAPID

STOCK = "the stock with its thickness (`[stock] size` in job.toml, or --stock), and where Z zero lies"


@once
def _left(context: Context) -> Left:
    return left_standing(context.motion, context.engagement, context.setup)


def _unknown(context: Context) -> bool:
    """Whether something is cut and the blank's underside is not known."""
    box = context.engagement.box
    return box is not None and box.bottom is None and bool(context.in_contact.any())


def _last_cut(context: Context) -> Longs:
    return np.array([int(context.engagement.pieces.move[-1])], dtype=np.int64)


def _table(name: str, of: Callable[[Context], Any]) -> Build:
    """A column of one of the tables; one NaN where the blank's underside is not known."""

    def build(context: Context) -> Column:
        return np.array([np.nan]) if _unknown(context) else np.asarray(getattr(of(context), name))

    return build


def _flag(name: str, of: Callable[[Context], Any]) -> Build:
    def build(context: Context) -> Column:
        return np.ones(1, dtype=np.int8) if _unknown(context) else np.asarray(getattr(of(context), name))

    return build


def _rows(name: str, of: Callable[[Context], Any]) -> Build:
    """Rows of Motion; of pieces that no move is known to have freed, the last cut."""

    def build(context: Context) -> Longs:
        if _unknown(context):
            return _last_cut(context)
        rows = np.asarray(getattr(of(context), name), dtype=np.int64)
        return np.where(rows >= 0, rows, _last_cut(context)[0]) if len(rows) else rows

    return build


def _standing(context: Context) -> Any:
    return _left(context).standing


def _lifts(context: Context) -> Any:
    return _left(context).lifts


def _grooves(context: Context) -> Any:
    return _left(context).grooves


def _size(axis: int) -> Build:
    def build(context: Context) -> Floats:
        if _unknown(context):
            return np.array([np.nan])
        pieces = _standing(context)
        size: Floats = np.round(pieces.high[:, axis] - pieces.low[:, axis], 1)  # the model's cells know no better
        return size

    return build


def _freed_share(context: Context) -> Floats:
    """Of the way around the piece, the share that the pass which freed it cuts; of its box, so nearly."""
    if _unknown(context):
        return np.array([np.nan])
    pieces = _standing(context)
    around = 2 * (pieces.high - pieces.low).sum(axis=1)
    share: Floats = pieces.freed_length / np.maximum(around, 1e-9)
    return share


_FREED = _rows("freed_by", _standing)

STANDING = Table(
    "standing",
    "pieces of the blank that are cut free all around when the program has run; what is left of the blank is none",
    {
        **line_of(_FREED),
        "area": number("mm^2", "size as seen from above", _table("area", _standing), STOCK),
        "size_x": number("mm", "size in X", _size(0), STOCK),
        "size_y": number("mm", "size in Y", _size(1), STOCK),
        "height": number("mm", "height", _table("height", _standing), STOCK),
        "at_edge": truth("whether it reaches the blank's outline", _flag("at_edge", _standing), STOCK),
        "clamped": truth("whether a declared keep-out (a clamp) lies over it", _flag("clamped", _standing), STOCK),
        "inside": truth("whether it lies within a wider lap that cuts as deep: the slug of a hole in a part",
                        _flag("inside", _standing), STOCK),
        "lifts": number("", "lifts for bridges (tabs) beside it", _table("lifts", _standing), STOCK),
        "lifts_kept": number("", "of them those long enough to leave a bridge, which a later pass cut away",
                             _table("lifts_kept", _standing), STOCK),
        "freed_share": number("", "share of the way around it that the last pass cuts", _freed_share, STOCK),
    },
    lambda c: 1 if _unknown(c) else len(_standing(c)),
    lambda c: c.motion.tool[_FREED(c)],
    _FREED,
)  # fmt: skip

_RISES = _rows("move", _lifts)

BRIDGES = Table(
    "bridges",
    "lifts over the blank's underside within a closed lap that cuts through: where a bridge (tab) should stay",
    {
        **line_of(_RISES),
        "lift": number("mm", "length of the lift in X and Y", _table("length", _lifts), STOCK),
        "bridge": number("mm", "width of what is left there at its narrowest when the program has run, 0 if nothing is",
                         _table("bridge", _lifts), STOCK),
        "bridge_height": number("mm", "height of what is left there", _table("height", _lifts), STOCK),
        "made": number("mm", "width that the lift leaves: its length less the tool's diameter",
                       _table("made", _lifts), STOCK),
    },
    lambda c: 1 if _unknown(c) else len(_lifts(c)),
    lambda c: c.motion.tool[_RISES(c)],
    _RISES,
)  # fmt: skip

_FLOORS = _rows("move", _grooves)

GROOVES = Table(
    "grooves",
    "closed laps between two walls that go down nine tenths of the blank's thickness or more",
    {
        **line_of(_FLOORS),
        "length": number("mm", "length of the lap", _table("length", _grooves), STOCK),
        "share": number("", "share of the thickness that the lap goes down", _table("share", _grooves), STOCK),
        "left": number("mm", "thickness left under the lap when the program has run", _table("left", _grooves), STOCK),
        "own_floor": truth("whether no later cut goes deeper there", _flag("own", _grooves), STOCK),
    },
    lambda c: 1 if _unknown(c) else len(_grooves(c)),
    lambda c: c.motion.tool[_FLOORS(c)],
    _FLOORS,
)  # fmt: skip


@once
def _walls(context: Context) -> Walls:
    return thin_walls(context.motion, context.engagement)


_BESIDE = _rows("move", _walls)

WALLS = Table(
    "walls",
    "thin walls that stand between two cuts when the program has run",
    {
        **line_of(_BESIDE),
        "thickness": number("mm", "thickness of the wall", _table("thickness", _walls), STOCK),
        "at_most": number("mm", "thickness of the wall and a cell of the stock model: it is no thicker than that",
                          lambda c: _table("thickness", _walls)(c) + c.engagement.cell, STOCK),
        "height": number("mm", "height it stands on both sides, at least", _table("height", _walls), STOCK),
        "length": number("mm", "length of the wall", _table("length", _walls), STOCK),
    },
    lambda c: 1 if _unknown(c) else len(_walls(c)),
    lambda c: c.motion.tool[_BESIDE(c)],
    _BESIDE,
)  # fmt: skip


# laps: closed laps that go over the same outline, and their feeds



@once
def _laps(context: Context) -> Laps:
    """None where every tool cuts at one feed: no lap can stand out then."""
    m = context.motion
    cuts = context.cuts & (m.z0 == m.z1)
    feeds, tools = m.feed[cuts], m.tool[cuts]
    differs = any(
        len(own := feeds[(tools == tool) & np.isfinite(feeds)]) and own.max() > model_number("one_feed") * own.min()
        for tool in context.tools
    )
    top = context.box.top if context.box else None
    return laps_of(m, top) if differs else laps_of(m, top, -np.inf)


@once
def _lap_feeds(context: Context) -> tuple[Floats, Floats, Longs, Floats, Longs]:
    """[laps] (feed, the feed of the other laps over the same outline, their number, removed volume over theirs, the
    first cut at that feed as a row of Motion)."""
    m, laps = context.motion, _laps(context)
    n = len(laps)
    feed, usual, removed = np.full(n, np.nan), np.full(n, np.nan), np.zeros(n)
    share, others, at = np.full(n, np.nan), np.zeros(n, np.int64), laps.first.copy()
    volume = np.bincount(context.engagement.pieces.move, context.engagement.pieces.removed, len(m))
    for row in range(n):
        span = slice(int(laps.first[row]), int(laps.last[row]) + 1)
        own = np.flatnonzero((m.kind[span] != RAPID) & np.isfinite(m.feed[span]) & (volume[span] > 0))
        removed[row] = volume[span].sum()
        if len(own):
            own = own[np.argsort(-m.feed[span][own], kind="stable")]
            length = np.cumsum(np.nan_to_num(m.length[span][own]))
            place = int(np.searchsorted(length, model_number("lap_feed_share") * length[-1]))
            feed[row] = float(m.feed[span][own][min(place, len(own) - 1)])
            at[row] = laps.first[row] + int(own[m.feed[span][own] >= feed[row]].min())
    outline = np.rint(np.column_stack((laps.low, laps.high)) / model_number("same_outline")).astype(np.int64)
    key = np.zeros(n, np.int64)
    for column in (*outline.T, m.tool[laps.first]):
        values, code = numbered(column)
        key = numbered(key * len(values) + code)[1]
    order = np.argsort(key, kind="stable")
    starts = np.flatnonzero(np.concatenate(([n > 0], np.diff(key[order]) != 0)))
    for start, end in zip(starts.tolist(), [*starts[1:].tolist(), n]):
        rows = order[start:end]
        rows = rows[np.isfinite(feed[rows])]
        for row in rows.tolist():
            rest = rows[rows != row]
            others[row] = len(rest)
            if len(rest):
                usual[row] = float(np.median(feed[rows]))  # its own too: of three, the two that agree are the usual
                share[row] = removed[row] / max(float(np.median(removed[rest])), 1e-9)
    return feed, usual, others, share, at


def _lap_rows(context: Context) -> Longs:
    return _lap_feeds(context)[4]


LAPS = Table(
    "laps",
    "closed laps, of tools that cut at more than one feed",
    {
        **line_of(_lap_rows),
        "feed": number("mm/min", "feed at or over which a fifth of the lap's cuts run", lambda c: _lap_feeds(c)[0]),
        "usual_feed": number("mm/min", "of all laps of this tool over the same outline, that of the one in the middle",
                             lambda c: np.nan_to_num(_lap_feeds(c)[1], nan=np.inf)),
        "same_laps": number("", "number of those other laps", lambda c: _lap_feeds(c)[2]),
        "removed_share": number("", "volume the lap removes, over what those others remove",
                                lambda c: np.nan_to_num(_lap_feeds(c)[3])),
        "level": number("mm", "Z of the lap", lambda c: _laps(c).level),
    },
    lambda c: len(_laps(c)),
    lambda c: c.motion.tool[_lap_rows(c)],
    _lap_rows,
)  # fmt: skip

TABLES = (STANDING, BRIDGES, GROOVES, WALLS, LAPS)
