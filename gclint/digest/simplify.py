"""A long path told with fewer pieces, to within a stated distance, the worst of what is merged kept.

Points that stand for a finding are never dropped, and cuts, feeds in the air, rapids and tools are never mixed unless
nothing else brings the number down.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from gclint.columns import Bools, Column, Floats
from gclint.digest.path import Path

# (mm beside the true path, how far the values of one piece may lie apart as a share of their range), tried in turn
STEPS = (
    (0.0005, 0.02), (0.002, 0.04), (0.005, 0.07), (0.01, 0.1), (0.02, 0.15), (0.05, 0.2), (0.1, 0.3), (0.2, 0.5),
    (0.5, 1.0), (1.0, 1.0), (2.0, 1.0), (5.0, 1.0), (20.0, 1.0), (100.0, 1.0), (1e9, 1.0),
)  # fmt: skip
PASSES = 24


class _Work:
    """The path as it is merged, with the ranges of each piece's values."""

    def __init__(self, path: Path, pinned: Bools) -> None:
        self.path = path
        self.pinned = pinned  # by point
        self.error = np.zeros(len(path), np.float32)
        top = {"place": 3.0, "share": 1.0, "depth": _most(path.depth)}
        self.range = {}
        for name, most in top.items():
            value = np.nan_to_num(getattr(path, name), nan=0.0) / most
            self.range[name] = (value, value.copy())

    def merge(self, mm: float, apart: float, mixed: bool) -> bool:
        """One pass: of two points side by side at most one goes. Whether it was worth while."""
        p = self.path
        if len(p) < 3:
            return False
        off = _beside(p) + np.maximum(self.error[:-1], self.error[1:])
        goes = (off <= mm) & ~self.pinned[1:-1] & (p.tool[1:] == p.tool[:-1]) & (p.drawn[1:] & p.drawn[:-1])
        if not mixed:
            goes &= p.kind[1:] == p.kind[:-1]
        for low, high in self.range.values():
            goes &= np.maximum(high[1:], high[:-1]) - np.minimum(low[1:], low[:-1]) <= apart
        goes &= _every_other(goes)
        gone = np.flatnonzero(goes)  # point gone + 1 goes; piece gone + 1 is merged into piece gone
        if len(gone) * 100 < len(p):
            return False
        keep = np.ones(len(p), bool)
        keep[gone + 1] = False
        self.error[gone] = off[gone]
        self.error = self.error[keep]
        for name, (low, high) in self.range.items():
            low[gone], high[gone] = np.minimum(low[gone], low[gone + 1]), np.maximum(high[gone], high[gone + 1])
            self.range[name] = (low[keep], high[keep])
        points = np.append(keep, True)
        points[gone + 1], points[-1] = False, True
        self.pinned = self.pinned[points]
        self.path = replace(
            p, x=p.x[points], y=p.y[points], z=p.z[points],
            **{name: merged(name, getattr(p, name), gone)[keep] for name in p.rows()},
        )  # fmt: skip
        return True


def simplified(path: Path, pinned: Bools, most: int) -> tuple[Path, float]:
    """(the path in at most `most` pieces, mm by which it may lie beside the true one)."""
    work, off = _Work(path, pinned), 0.0
    for mixed in (False, True):
        for mm, apart in STEPS:
            for _ in range(PASSES):
                if len(work.path) <= most:
                    return work.path, off
                off = mm
                if not work.merge(mm, apart, mixed):
                    break
    return work.path, off


def merged(name: str, column: Column, gone: Column) -> Column:
    """The column with each piece `gone` standing for itself and the one behind it."""
    if name in ("first_move", "tool", "drawn"):
        return column
    made, a, b = column.copy(), column[gone], column[gone + 1]
    if name == "place":
        made[gone] = np.where((np.abs(b - 1.5) > np.abs(a - 1.5)) | np.isnan(a), b, a)
    elif name == "share":
        made[gone] = np.fmin(a, b)
    else:
        made[gone] = np.fmax(a, b)
    return made


def _beside(p: Path) -> Floats:
    """Distance of each inner point from the straight line between its neighbours, mm."""
    ax, ay, az = (np.diff(c)[:-1] for c in (p.x, p.y, p.z))
    cx, cy, cz = (c[2:] - c[:-2] for c in (p.x, p.y, p.z))
    long = cx * cx + cy * cy + cz * cz
    with np.errstate(invalid="ignore", divide="ignore"):
        along = np.clip(np.nan_to_num((ax * cx + ay * cy + az * cz) / long), 0, 1)
    return np.asarray(np.sqrt((ax - along * cx) ** 2 + (ay - along * cy) ** 2 + (az - along * cz) ** 2))


def _every_other(goes: Bools) -> Bools:
    """True at the first, third, fifth ... row of each run of True."""
    rows = np.arange(len(goes))
    last_false = np.maximum.accumulate(np.where(goes, -1, rows))
    return np.asarray((rows - last_false) % 2 == 1)


def _most(values: Column) -> float:
    known = values[np.isfinite(values)]
    return float(known.max()) if len(known) and known.max() > 0 else 1.0
