"""Gives the facts that feed-mode-left-on alone looks at."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from gclint.columns import Floats, numbered
from gclint.facts.context import Context, once
from gclint.facts.fact import number, of_rows, table_of, text
from gclint.facts.followed import last_line_of
from gclint.tables.motion import INVERSE_TIME, PER_REV, RAPID

FEED_MODES = ("G93", "G95")


class FeedMode(NamedTuple):
    """A stretch of moves at feed under G93 or G95; `feed`: the largest F there, in the program's units."""

    mode: str
    line: int
    move: int
    feed: float
    per_rev: float  # mm per revolution, largest; NaN under G93
    own: float  # share of its moves at feed with an F of their own
    same: float  # share of them that have the commonest F
    spread: float  # their longest tenth over their shortest tenth


@once
def feed_modes(context: Context) -> list[FeedMode]:
    m = context.motion
    made = []
    for name, flag in (("G93", INVERSE_TIME), ("G95", PER_REV)):
        rows = np.flatnonzero((m.flags & flag != 0) & (m.kind != RAPID))
        if not len(rows):
            continue
        move = int(rows[0])
        own = float(np.mean(m.feed_line[rows] == m.line[rows]))
        with np.errstate(invalid="ignore", divide="ignore"):
            per_rev = m.feed[rows] / m.speed[rows]
        largest = float(np.fmax.reduce(per_rev, initial=np.nan)) if flag == PER_REV else np.nan
        fastest = float(np.fmax.reduce(m.feed[rows]))
        said = rows[(m.feed_line[rows] == m.line[rows]) & (m.length[rows] > 0)]
        words = m.feed[said] / m.length[said] if flag == INVERSE_TIME else m.feed[said]
        same, spread = _constant(words, m.length[said])
        made.append(FeedMode(name, _word_line(context, name, move), move, fastest, largest, own, same, spread))
    return made


def _constant(words: Floats, lengths: Floats) -> tuple[float, float]:
    """(share of the F words that are the commonest one, ratio of long moves to short ones); 0 and 1 of fewer than 5."""
    known = np.isfinite(words) & np.isfinite(lengths)
    if np.count_nonzero(known) < 5:
        return 0.0, 1.0
    _, place = numbered(np.round(words[known], 3))
    short, long = np.percentile(lengths[known], (10, 90))
    return float(np.bincount(place).max() / np.count_nonzero(known)), float(long / short)


def _word_line(context: Context, code: str, move: int) -> int:
    """The last line up to that of a move on which the program writes this G code; the move's where it never does."""
    here = int(context.motion.line[move])
    return last_line_of(context, code, here) or here


FEEDS = table_of(
    feed_modes,
    "feed_modes",
    "stretches of moves at feed under G93 (inverse time) or G95 (feed per revolution), one row for each of the two",
    {
        "line": number("", "line of the word", of_rows(feed_modes, "line")),
        "mode": text("G93 or G95", lambda c: (
            np.array([FEED_MODES.index(row.mode) for row in feed_modes(c)], dtype=np.int32), FEED_MODES),
            words=FEED_MODES),
        "per_rev": number("mm", "largest feed per revolution under G95", of_rows(feed_modes, "per_rev"), "an S"),
        "own": number("", "share of its moves at feed that carry an F of their own", of_rows(feed_modes, "own")),
        "same": number("", "share of these F words that are the commonest one; 0 of fewer than five",
                       of_rows(feed_modes, "same")),
        "spread": number("", "the longest tenth of these moves over the shortest", of_rows(feed_modes, "spread")),
    },
)  # fmt: skip

TABLES = (FEEDS,)
