"""Facts about the part: what is cut free, which bridges are left, what is not cut through, and laps that stand out.

All but the laps' feeds are read from what is left standing in the stock model when the program has run. Where the
blank's underside is not known, one row whose facts are unknown stands for what cannot be judged.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import numpy as np

from gclint.columns import Column, Floats, Longs
from gclint.facts.context import Context, once
from gclint.facts.cut import line_of
from gclint.facts.fact import Build, Table, number, truth
from gclint.stock.standing import Left, left_standing

STOCK = "the stock with its thickness (`[stock] size` in job.toml, or --stock), and where Z zero lies"


@once
def left_of(context: Context) -> Left:
    return left_standing(context.motion, context.engagement, context.setup)


def underside_unknown(context: Context) -> bool:
    """Whether something is cut and the blank's underside is not known."""
    box = context.engagement.box
    return box is not None and box.bottom is None and bool(context.in_contact.any())


def _last_cut(context: Context) -> Longs:
    return np.array([int(context.engagement.pieces.move[-1])], dtype=np.int64)


def column_of(name: str, of: Callable[[Context], Any]) -> Build:
    """A column of one of the tables; one NaN where the blank's underside is not known."""

    def build(context: Context) -> Column:
        return np.array([np.nan]) if underside_unknown(context) else np.asarray(getattr(of(context), name))

    return build


def flag_of(name: str, of: Callable[[Context], Any]) -> Build:
    def build(context: Context) -> Column:
        return np.ones(1, dtype=np.int8) if underside_unknown(context) else np.asarray(getattr(of(context), name))

    return build


def rows_of(name: str, of: Callable[[Context], Any]) -> Build:
    """Rows of Motion; of pieces that no move is known to have freed, the last cut."""

    def build(context: Context) -> Longs:
        if underside_unknown(context):
            return _last_cut(context)
        rows = np.asarray(getattr(of(context), name), dtype=np.int64)
        return np.where(rows >= 0, rows, _last_cut(context)[0]) if len(rows) else rows

    return build


def _standing(context: Context) -> Any:
    return left_of(context).standing


def _size(axis: int) -> Build:
    def build(context: Context) -> Floats:
        if underside_unknown(context):
            return np.array([np.nan])
        pieces = _standing(context)
        size: Floats = np.round(pieces.high[:, axis] - pieces.low[:, axis], 1)  # the model's cells know no better
        return size

    return build


def _freed_share(context: Context) -> Floats:
    """Of the way around the piece, the share that the pass which freed it cuts; of its box, so nearly."""
    if underside_unknown(context):
        return np.array([np.nan])
    pieces = _standing(context)
    around = 2 * (pieces.high - pieces.low).sum(axis=1)
    share: Floats = pieces.freed_length / np.maximum(around, 1e-9)
    return share


_FREED = rows_of("freed_by", _standing)

STANDING = Table(
    "standing",
    "pieces of the blank that are cut free all around when the program has run; what is left of the blank is none",
    {
        **line_of(_FREED),
        "area": number("mm^2", "size as seen from above", column_of("area", _standing), STOCK),
        "size_x": number("mm", "size in X", _size(0), STOCK),
        "size_y": number("mm", "size in Y", _size(1), STOCK),
        "height": number("mm", "height", column_of("height", _standing), STOCK),
        "at_edge": truth("whether it reaches the blank's outline", flag_of("at_edge", _standing), STOCK),
        "clamped": truth("whether a declared keep-out (a clamp) lies over it", flag_of("clamped", _standing), STOCK),
        "inside": truth("whether it lies within a wider lap that cuts as deep: the slug of a hole in a part",
                        flag_of("inside", _standing), STOCK),
        "lifts": number("", "lifts for bridges (tabs) beside it", column_of("lifts", _standing), STOCK),
        "lifts_kept": number("", "of them those long enough to leave a bridge, which a later pass cut away",
                             column_of("lifts_kept", _standing), STOCK),
        "freed_share": number("", "share of the way around it that the last pass cuts", _freed_share, STOCK),
    },
    lambda c: 1 if underside_unknown(c) else len(_standing(c)),
    lambda c: c.motion.tool[_FREED(c)],
    _FREED,
)  # fmt: skip


def _lifts(context: Context) -> Any:
    return left_of(context).lifts


_RISES = rows_of("move", _lifts)

BRIDGES = Table(
    "bridges",
    "lifts over the blank's underside within a closed lap that cuts through: where a bridge (tab) should stay",
    {
        **line_of(_RISES),
        "lift": number("mm", "length of the lift in X and Y", column_of("length", _lifts), STOCK),
        "bridge": number("mm", "width of what is left there at its narrowest when the program has run, 0 if nothing is",
                         column_of("bridge", _lifts), STOCK),
        "bridge_height": number("mm", "height of what is left there", column_of("height", _lifts), STOCK),
        "made": number("mm", "width that the lift leaves: its length less the tool's diameter",
                       column_of("made", _lifts), STOCK),
    },
    lambda c: 1 if underside_unknown(c) else len(_lifts(c)),
    lambda c: c.motion.tool[_RISES(c)],
    _RISES,
)  # fmt: skip

TABLES = (STANDING, BRIDGES)
