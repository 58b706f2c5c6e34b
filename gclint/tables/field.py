"""The stock as a height field that outlives a program: a top and an underside, turned over, made wider, packed."""

from __future__ import annotations

import zlib
from dataclasses import dataclass
from typing import Any, Literal

import numpy as np

from gclint.columns import Bools, Floats32

GONE = 1e-4  # mm; what is thinner is cut through
MOST_PACKED = 64 << 20  # bytes; a larger field is not kept on disk


@dataclass(frozen=True, slots=True, eq=False)
class Side:
    """What was cut from one side, [ny, nx] each: see gclint/stock/sweep.py.

    cut: depth below this side's face, mm; share, other: the smaller part of a cell through which a wall runs, and its
    depth.
    """

    cut: Floats32
    share: Floats32
    other: Floats32

    def turned(self, axis: str) -> Side:
        """As it lies when the blank was turned over about an axis along X or Y."""
        mirror = (slice(None, None, -1), slice(None)) if axis == "x" else (slice(None), slice(None, None, -1))
        return Side(*(np.ascontiguousarray(each[mirror]) for each in (self.cut, self.share, self.other)))

    def wider(self, left: int, front: int, shape: tuple[int, int]) -> Side:
        """Within a larger field of `shape`, so many columns and rows from its lowest corner; uncut around it."""
        made = []
        for each in (self.cut, self.share, self.other):
            whole = np.zeros(shape, np.float32)
            whole[front : front + each.shape[0], left : left + each.shape[1]] = each
            made.append(whole)
        return Side(*made)


@dataclass(frozen=True, slots=True, eq=False)
class Field:
    """What is left of a blank. `under` is None where nothing was cut from below; its cells are those of `top`, so that
    one place has one row and column on both sides."""

    cell: float
    top: Side
    under: Side | None = None

    @property
    def shape(self) -> tuple[int, int]:
        return self.top.cut.shape[0], self.top.cut.shape[1]

    @property
    def size(self) -> int:
        """What it takes in memory."""
        return self.top.cut.nbytes * (3 if self.under is None else 6)

    def turned(self, axis: Literal["x", "y"]) -> Field:
        """Turned over about an axis along X or Y: what was the underside is seen from above."""
        shape = self.shape
        face = self.under or Side(*(np.zeros(shape, np.float32) for _ in range(3)))
        return Field(self.cell, face.turned(axis), self.top.turned(axis))

    def floor(self, thick: float) -> Floats32 | None:
        """[ny, nx] depth below the top, mm, at which the material ends because it was cut from below; infinite
        elsewhere, None where nothing was.

        A cell through which a wall of the underside runs counts as cut: a rim of half a cell is left out, lest a tool
        that meets the same outline from above finds slivers there.
        """
        if self.under is None:
            return None
        deep = np.where(self.under.share > 0, np.maximum(self.under.cut, self.under.other), self.under.cut)
        if not deep.any():
            return None
        floor: Floats32 = np.maximum(np.float32(thick) - deep, np.float32(0))
        floor[deep <= 0] = np.inf
        return floor

    def pack(self) -> bytes | None:
        """In few bytes; None where it would still be too many to keep."""
        parts = [np.array([self.cell, *self.shape, 0 if self.under is None else 1], np.float64).tobytes()]
        packer, size = zlib.compressobj(1), 0
        for side in (self.top, *(() if self.under is None else (self.under,))):
            for each in (side.cut, side.share, side.other):
                for row in each:
                    parts.append(packer.compress(row.tobytes()))
                    size += len(parts[-1])
                if size > MOST_PACKED:
                    return None
        return b"".join([*parts, packer.flush()])

    @staticmethod
    def unpack(data: bytes, shape: tuple[int, int]) -> Field | None:
        """What `pack` made of a field of that shape; None where it is not that."""
        head = np.frombuffer(data[:32], np.float64)
        if len(head) != 4 or (int(head[1]), int(head[2])) != shape or head[3] not in (0, 1):
            return None
        sides, cells = (1 + int(head[3])), shape[0] * shape[1]
        try:
            opener = zlib.decompressobj()
            raw = opener.decompress(data[32:], 12 * cells * sides + 1)
        except zlib.error:
            return None
        if len(raw) != 12 * cells * sides:
            return None
        whole: Any = np.frombuffer(raw, np.float32).reshape(sides, 3, *shape)
        made = [Side(*(np.array(each) for each in side)) for side in whole]
        return Field(float(head[0]), made[0], made[1] if len(made) > 1 else None)


def gone(cut: Floats32, under: Floats32 | None, thick: float) -> Bools:
    """[ny, nx] where nothing is left between the two sides."""
    deep = cut if under is None else cut + under
    return np.asarray(deep >= thick - GONE)


def fewer(cut: Floats32, most: int) -> Floats32:
    """At most so many cells along a side: the deepest of those that become one, so that no groove is lost."""
    step = max(1, -(-max(cut.shape) // most))
    if step == 1:
        return cut
    rows, columns = np.arange(0, cut.shape[0], step), np.arange(0, cut.shape[1], step)
    return np.asarray(np.maximum.reduceat(np.maximum.reduceat(cut, rows, axis=0), columns, axis=1))
