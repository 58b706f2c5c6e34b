"""Gives the facts that hidden-plunge alone looks at."""

from __future__ import annotations

from typing import Any

import numpy as np

from gclint.columns import Bools, Column, Floats
from gclint.facts.context import Context
from gclint.facts.fact import Fact, number, truth
from gclint.tables.motion import CYCLE, LINE, RAPID, X_WORD, Y_WORD, Z_WORD


def _over(context: Context, values: Column, reduce: Any) -> Column:
    """A reduction over the moves of every entry; `values` has one row for each row of `chain.entry_moves`."""
    starts = context.entry_moves[1]
    return np.asarray(reduce.reduceat(values, starts)) if len(starts) else np.empty(0)


def _sideways(context: Context) -> Floats:
    """Widest X-Y distance the entry's moves span, mm: 2 x radius for a full circle."""
    m, rows = context.motion, context.entry_moves[0]
    spans = []
    for start, end in ((m.x0[rows], m.x1[rows]), (m.y0[rows], m.y1[rows])):
        low = _over(context, np.fmin(start, end), np.fmin)
        spans.append(_over(context, np.fmax(start, end), np.fmax) - low)
    # the widest chord of an arc; only G17 arcs keep their centre in X and Y
    radius = np.hypot(m.x0[rows] - m.cu[rows], m.y0[rows] - m.cv[rows])
    widest = 2 * radius * np.sin(np.radians(np.minimum(abs(m.sweep[rows]), 180) / 2))
    chord = np.where((m.kind[rows] > LINE) & (m.plane[rows] == 17), widest, 0.0)
    return np.asarray(np.fmax(np.hypot(*spans), _over(context, np.nan_to_num(chord), np.fmax)))


def _down(context: Context) -> Floats:
    """[moves of entries] how far each goes down, mm; 0 where it does not."""
    m, rows = context.motion, context.entry_moves[0]
    return np.nan_to_num(np.maximum(m.z0[rows] - m.z1[rows], 0.0))


def _reads_as_travel(context: Context) -> Floats:
    """[entries] share of the descent made by lines that name X or Y, or by arcs; canned cycles apart."""
    m, rows, down = context.motion, context.entry_moves[0], _down(context)
    flags = m.flags[rows]
    named = (((flags & (X_WORD | Y_WORD)) != 0) | (m.kind[rows] > LINE)) & ((flags & CYCLE) == 0)
    return _share(_over(context, down * named, np.add), _over(context, down, np.add))


def _level_names_z(context: Context) -> Floats:
    """[entries] of the level moves at feed, the share whose line names a Z all the same; 0 if there are none."""
    m = context.motion
    level = (m.kind != RAPID) & (m.z0 == m.z1) & ((m.flags & CYCLE) == 0)
    named = level & ((m.flags & Z_WORD) != 0)
    return np.full(len(context.engagement.entries), named.sum() / max(int(level.sum()), 1))


def _share(part: Floats, whole: Floats) -> Floats:
    with np.errstate(divide="ignore", invalid="ignore"):
        return np.where(whole > 0, part / whole, np.nan)


def _is_arc(context: Context) -> Bools:
    return _over(context, context.motion.kind[context.entry_moves[0]] > LINE, np.logical_or).astype(bool)


FACTS: dict[str, dict[str, Fact]] = {
    "entries": {
        "sideways": number("mm", "widest X-Y distance the entry spans", _sideways),
        "reads_as_travel": number("", "share of the descent made by lines that name X or Y, or by arcs",
                                  _reads_as_travel),
        "level_names_z": number("", "of the program's level moves at feed, the share whose line names a Z all the same",
                                _level_names_z),
        "arc": truth("whether the entry is written as an arc", _is_arc),
    },
}  # fmt: skip
