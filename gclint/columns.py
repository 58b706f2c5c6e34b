"""Array types shared by every table: one name per element type, so that signatures say what a column holds."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]
Floats32 = NDArray[np.float32]
Ints = NDArray[np.int32]
Longs = NDArray[np.int64]
Bytes = NDArray[np.uint8]
Bits = NDArray[np.uint16]
Bools = NDArray[np.bool_]
Column = NDArray[Any]


def distinct(values: Column) -> Column:
    """The different values of a column, ascending (np.unique would load numpy's masked arrays, 10 ms at a start)."""
    ordered = np.sort(values, axis=None)
    return ordered[np.concatenate(([True], ordered[1:] != ordered[:-1]))] if len(ordered) else ordered


def one_of(values: Column, choices: Iterable[float]) -> Bools:
    """Whether each value is one of a few choices (np.isin would load numpy's masked arrays, 6 ms at a start)."""
    found: Bools = np.zeros(np.shape(values), dtype=bool)
    for choice in choices:
        found |= values == choice
    return found


def firsts(values: Column) -> tuple[Column, Column]:
    """(the different values of a column, ascending; for each the row where it comes first)."""
    order = np.argsort(values, kind="stable")
    ordered = values[order]
    fresh = np.ones(len(values), dtype=bool)
    fresh[1:] = ordered[1:] != ordered[:-1]
    return ordered[fresh], order[fresh]


LONG = 100_000  # rows; below it a column of one value is left as it is


def lean(values: Column) -> Column:
    """The column; where a long one has the same value (or NaN) in every row, that value for all rows, not to write."""
    if len(values) < LONG or values.strides[0] == 0:
        return values
    first, rest = values[0], values[:: len(values) // 100]
    for part in (rest, values):
        if not bool((part == first).all()) and not (first != first and bool(np.isnan(part).all())):
            return values
    return np.broadcast_to(values[:1].copy(), values.shape)


def numbered(values: Column) -> tuple[Column, Column]:
    """(the different values, for each row the place of its value among them); not sorted where all are the same."""
    if len(values) and bool((values == values[0]).all()):
        return values[:1], np.zeros(len(values), dtype=np.int64)
    order = np.argsort(values, kind="stable")
    ordered = values[order]
    fresh = np.ones(len(values), dtype=bool)
    fresh[1:] = ordered[1:] != ordered[:-1]
    place = np.empty(len(values), dtype=np.int64)
    place[order] = np.cumsum(fresh) - 1
    return ordered[fresh], place
