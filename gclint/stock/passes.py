"""Passes: unbroken runs of pieces of one tool in material."""

from __future__ import annotations

import numpy as np

from gclint.columns import Floats, Ints
from gclint.motion.table import RAPID, Motion
from gclint.stock.table import Passes, Pieces


def passes_of(motion: Motion, pieces: Pieces, radius: Floats) -> tuple[Passes, Ints]:
    """The passes, and for each piece the row of its pass (-1: a rapid, which opens none).

    radius: of each move's tool, mm. A run breaks at a tool change, at a rapid, and at more than a piece's length (half
    a radius) of path without contact.
    """
    n = len(pieces)
    length = np.minimum(np.nan_to_num(motion.length, nan=1e9, posinf=1e9), 1e9)
    before = np.concatenate(([0.0], np.cumsum(length)))
    tool, rapid = motion.tool[pieces.move], motion.kind[pieces.move] == RAPID
    begins = before[pieces.move] + pieces.start * length[pieces.move]
    ends = before[pieces.move] + pieces.end * length[pieces.move]
    breaks = np.ones(n, bool)
    if n:
        gap = 0.5 * radius[pieces.move[1:]] + 1e-3
        breaks[1:] = (begins[1:] - ends[:-1] > gap) | (tool[1:] != tool[:-1]) | rapid[1:] | rapid[:-1]
    opens = np.flatnonzero(breaks & ~rapid)
    stops = np.flatnonzero(breaks)
    behind = np.searchsorted(stops, opens, side="right")
    last = (np.concatenate((stops, [n]))[behind] - 1).astype(np.int32)
    row = np.full(n, -1, np.int32)
    row[~rapid] = (np.searchsorted(opens, np.flatnonzero(~rapid), side="right") - 1).astype(np.int32)
    feed = np.flatnonzero(~rapid)
    starts = np.searchsorted(feed, opens)  # rapids lie between passes only, so feed rows of a pass are one run
    tip = np.minimum(motion.z0, motion.z1)[pieces.move]

    def over(values: Floats, how: np.ufunc) -> np.ndarray[tuple[int], np.dtype[np.float32]]:
        return how.reduceat(values[feed], starts).astype(np.float32) if len(opens) else np.zeros(0, np.float32)

    table = Passes(
        first_piece=opens.astype(np.int32),
        last_piece=last,
        tool=tool[opens].astype(np.int32),
        length=over(pieces.length.astype(np.float64), np.add),
        ap=over(pieces.ap.astype(np.float64), np.maximum),
        ae=over(pieces.ae.astype(np.float64), np.maximum),
        lowest=over(tip, np.minimum),
        removed=over(pieces.removed.astype(np.float64), np.add),
    )
    return table, row
