"""Passes: unbroken runs of pieces of one tool in material."""

from __future__ import annotations

import numpy as np

from gclint.columns import Column, Floats, Floats32, Ints
from gclint.tables.engagement import Passes, Pieces
from gclint.tables.motion import RAPID, Motion


def passes_of(motion: Motion, pieces: Pieces, radius: Floats) -> tuple[Passes, Ints]:
    """The passes, and for each piece the row of its pass (-1: a rapid, which opens none).

    radius: of each move's tool, mm. A run breaks at a tool change, at a rapid, and at more than a piece's length (half
    a radius) of path without contact.
    """
    n, move = len(pieces), pieces.move
    rapid = motion.kind[move] == RAPID
    breaks = np.ones(n, bool)
    if n:
        breaks[1:] = _gaps(motion, pieces) > 0.5 * radius[move[1:]] + 1e-3
        breaks[1:] |= (motion.tool[move[1:]] != motion.tool[move[:-1]]) | rapid[1:] | rapid[:-1]
    opens = np.flatnonzero(breaks & ~rapid)
    stops = np.flatnonzero(breaks)
    behind = np.searchsorted(stops, opens, side="right")
    last = (np.concatenate((stops, [n]))[behind] - 1).astype(np.int32)
    row = (np.cumsum(breaks & ~rapid, dtype=np.int32) - 1).astype(np.int32, copy=False)
    row[rapid] = -1
    feed = np.flatnonzero(~rapid) if rapid.any() else slice(None)
    # rapids lie between passes only, so the feed rows of a pass are one run
    starts = opens if isinstance(feed, slice) else np.searchsorted(feed, opens)

    def over(values: Column, how: np.ufunc) -> Floats32:
        if not len(opens):
            return np.zeros(0, np.float32)
        return how.reduceat(values[feed], starts, dtype=np.float64).astype(np.float32)

    table = Passes(
        first_piece=opens.astype(np.int32),
        last_piece=last,
        tool=motion.tool[move[opens]].astype(np.int32),
        length=over(pieces.length, np.add),
        ap=over(pieces.ap, np.maximum),
        ae=over(pieces.ae, np.maximum),
        lowest=over(np.minimum(motion.z0, motion.z1)[move], np.minimum),
        removed=over(pieces.removed, np.add),
    )
    return table, row


def _gaps(motion: Motion, pieces: Pieces) -> Floats:
    """[pieces - 1] length of path between the end of a piece and the start of the next, mm, in few copies."""
    length = np.nan_to_num(motion.length, nan=1e9, posinf=1e9)
    np.minimum(length, 1e9, out=length)
    before = np.cumsum(length)
    before -= length
    at = before[pieces.move]
    gaps = at[1:] - at[:-1]
    del before, at
    own = length[pieces.move]
    gaps += pieces.start[1:] * own[1:]
    gaps -= pieces.end[:-1] * own[:-1]
    return gaps
