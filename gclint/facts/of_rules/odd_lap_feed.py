"""Gives the facts that odd-lap-feed alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Floats, Longs, numbered
from gclint.facts.context import Context, once
from gclint.facts.cut import line_of
from gclint.facts.fact import Table, number
from gclint.knowledge.numbers import model_number
from gclint.stock.laps import Laps, laps_of
from gclint.tables.motion import RAPID


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

TABLES = (LAPS,)
