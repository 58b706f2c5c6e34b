"""Gives the facts that outside-travel alone looks at."""

from __future__ import annotations

from functools import partial
from typing import Any

import numpy as np

from gclint.columns import Column, Floats
from gclint.facts.context import Context
from gclint.facts.fact import Table, number, text


def _ends(context: Context, pick: Any) -> Floats:
    m, placed = context.motion, context.placed
    if not placed.any():
        return np.full(3, np.nan)
    return np.array([pick(values if placed.all() else values[placed]) for values in (m.x1, m.y1, m.z1)])


def _travel(context: Context) -> Floats:
    axes = context.setup.machine.travel
    return np.array([np.nan if v is None else v for v in (axes.x, axes.y, axes.z)] if axes else [np.nan] * 3)


def _zero(context: Context) -> Floats:
    axes = context.setup.work_zero
    return np.array([np.nan if v is None else v for v in (axes.x, axes.y, axes.z)] if axes else [np.nan] * 3)


def _over_travel(context: Context) -> Floats:
    """How far the axis must leave its travel, mm: by size where work zero is unknown, else by place."""
    low, high, travel, zero = _ends(context, np.min), _ends(context, np.max), _travel(context), _zero(context)
    size = high - low - travel
    place = np.maximum(-(zero + low), zero + high - travel)
    return np.where(np.isnan(zero), size, np.maximum(place, size))


def _farthest_move(context: Context) -> Column:
    """The move that reaches the end of the axis that is farther from the middle of the travel."""
    m, rows = context.motion, np.flatnonzero(context.placed)
    if len(rows) == 0:
        return np.full(3, -1)
    low, high, travel, zero = _ends(context, np.min), _ends(context, np.max), _travel(context), _zero(context)
    picked = []
    for axis, values in enumerate((m.x1, m.y1, m.z1)):
        below = -(zero[axis] + low[axis]) > zero[axis] + high[axis] - travel[axis]  # False where zero is unknown
        picked.append(rows[np.argmin(values[rows]) if below else np.argmax(values[rows])])
    return np.array(picked)


AXES = Table(
    "axes",
    "the machine's axes, with what the program asks of each",
    {
        "line": number("", "line that goes farthest", lambda c: np.where(
            _farthest_move(c) >= 0, c.motion.line[np.maximum(_farthest_move(c), 0)] if len(c.motion) else 1, 1)),
        "axis": text("the axis", lambda c: (np.arange(3, dtype=np.int32), ("X", "Y", "Z")), "", ("X", "Y", "Z")),
        "size": number("mm", "from the lowest to the highest position the program asks for",
                       lambda c: _ends(c, np.max) - _ends(c, np.min), "a move whose position is known"),
        "low": number("mm", "lowest position in work coordinates", partial(_ends, pick=np.min)),
        "high": number("mm", "highest position in work coordinates", partial(_ends, pick=np.max)),
        "travel": number("mm", "travel of the axis", _travel, "`[machine] travel` in shop.toml"),
        "over": number("mm", "how far the axis must leave its travel", _over_travel, "`[machine] travel` in shop.toml"),
    },
    lambda c: 3,
    None,
    _farthest_move,
)  # fmt: skip

TABLES = (AXES,)
