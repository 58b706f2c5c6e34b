"""Runs a checked expression over whole columns, with three-valued truth.

Values: numbers are float arrays in mm, s, degrees, N with NaN for unknown; truth is int8 with FALSE, UNKNOWN, TRUE in
this
order, so that `and` is the smaller, `or` the larger and `not` the mirror image (Kleene); text is (codes, words) with
code
-1 for unknown. A value that is the same in every row may be a scalar.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, Protocol

import numpy as np

from gclint.columns import Column, one_of

FALSE, UNKNOWN, TRUE = 0, 1, 2
FEW = 4  # where fewer than one row in so many is still open, the rest of an `and` is worked out for these alone

Code = list[Any]


class Rows(Protocol):
    """What an expression is run over."""

    @property
    def length(self) -> int: ...

    def value(self, name: str, /) -> Any:
        """The column of a fact as described above, in the fact's own unit."""

    def choose(self, rows: Column, /) -> Rows:
        """The rows with these numbers."""

    def whole(self) -> Rows:
        """The table these rows were chosen from."""

    def pick(self, column: Column, /) -> Column:
        """Of a column of the whole table, the chosen rows."""

    def group(self) -> tuple[Column, int, Column]:
        """(group number of each row, number of groups, weight of each row) for `share` and `total`."""

    def kept(self, key: str, make: Callable[[], Column], /) -> Column:
        """A column of the whole table that the sentences of every finding need again."""

    def deeper(self, what: str, limit: Column, /) -> Column:
        """Of the profile of contact of each row, what lies deeper than `limit` mm: arc_deeper or width_deeper."""

    def breaks(self) -> Column:
        """bool [length]: whether a row does not follow on the row before, for `run`."""


def truth(code: Code, rows: Rows) -> Column:
    """int8 array [rows.length] of FALSE, UNKNOWN, TRUE."""
    return np.broadcast_to(np.asarray(_run(code, rows), dtype=np.int8), (rows.length,))


def numbers(code: Code, rows: Rows) -> Column:
    """Float array [rows.length], mm, s, degrees, N; NaN where unknown."""
    return np.broadcast_to(np.asarray(_run(code, rows), dtype=np.float64), (rows.length,))


def words(code: Code, rows: Rows) -> list[str | None]:
    """Text of each row; None where unknown."""
    codes, known = _run(code, rows)
    return [known[c] if c >= 0 else None for c in np.broadcast_to(codes, (rows.length,)).tolist()]


def blame(code: Code, rows: Rows) -> dict[str, int]:
    """Facts that leave the answer open, with the number of the given rows in which each is the unknown part."""
    found: dict[str, int] = {}
    _blame(code, rows, np.ones(rows.length, dtype=bool), found)
    return found


def _blame(code: Code, rows: Rows, where: Column, found: dict[str, int]) -> None:
    op = code[0]
    if op in ("and", "or", "not"):
        for part in code[1:]:
            _blame(part, rows, where & (truth(part, rows) == UNKNOWN), found)
    elif op == "fact":
        count = int((where & _unknown(rows.value(code[1]), rows.length)).sum())
        if count:
            found[code[1]] = found.get(code[1], 0) + count
    elif op in ("known", "share", "total", "run"):
        return
    elif op in _COMPARE and len(code) == 3:
        for part in code[1:]:
            _blame(part, rows, where, found)
    elif op == "either":
        _blame(code[1], rows, where & np.isnan(numbers(code, rows)), found)
    else:
        for part in code[1:]:
            if isinstance(part, list) and part and isinstance(part[0], str) and op not in ("in", "number", "text"):
                _blame(part, rows, where, found)
        if op == "in":
            _blame(code[1], rows, where, found)


def _unknown(value: Any, length: int) -> Column:
    if isinstance(value, tuple):
        return np.broadcast_to(np.asarray(value[0]) < 0, (length,))
    array = np.asarray(value)
    if array.dtype == np.int8:
        return np.broadcast_to(array == UNKNOWN, (length,))
    return np.broadcast_to(np.isnan(array), (length,))


def _run(code: Code, rows: Rows) -> Any:
    op = code[0]
    if op == "number":
        return code[1]
    if op == "truth":
        return np.int8(TRUE if code[1] else FALSE)
    if op == "text":
        return np.int32(0), (code[1],)
    if op == "fact":
        value = rows.value(code[1])
        return value if isinstance(value, tuple) or code[2] == 1 else value * code[2]
    if op == "and":
        value = _run(code[1], rows)
        for place, part in enumerate(code[2:], 2):
            left = np.count_nonzero(value)
            if not left:  # already false in every row: the rest cannot change it
                return value
            if np.ndim(value) and left < rows.length // FEW:
                chosen = np.flatnonzero(value)
                value = np.array(value)
                value[chosen] = np.minimum(value[chosen], truth(["and", *code[place:]], rows.choose(chosen)))
                return value
            value = np.minimum(value, _run(part, rows))
        return value
    if op == "or":
        value = _run(code[1], rows)
        for part in code[2:]:
            value = np.maximum(value, _run(part, rows))
        return value
    if op == "not":
        return (np.int8(TRUE) - _run(code[1], rows)).astype(np.int8)
    if op == "in":
        return _member(_run(code[1], rows), code[2])
    if op in _COMPARE:
        return _compare(op, _run(code[1], rows), _run(code[2], rows))
    if op == "known":
        value = _run(code[1], rows)
        return (
            np.where(_unknown(value, np.size(value[0] if isinstance(value, tuple) else value)), FALSE, TRUE)
            .astype(np.int8)
            .reshape(np.shape(value[0] if isinstance(value, tuple) else value))
        )
    if op in ("share", "total", "run"):
        return rows.pick(rows.kept(str(code), lambda: _by_group(code, rows.whole())))
    parts = [_run(part, rows) for part in code[1:]]
    if op in ("arc_deeper", "width_deeper"):
        return rows.deeper(op, np.broadcast_to(np.asarray(parts[0], dtype=np.float64), (rows.length,)))
    if op == "either":
        value = parts[0]
        for other in parts[1:]:
            value = np.where(np.isnan(value), other, value)
        return value
    if op == "/":
        with np.errstate(divide="ignore", invalid="ignore"):
            value = np.true_divide(parts[0], parts[1])
        return np.where(np.isfinite(value), value, np.nan)
    if op in ("sin", "cos", "tan"):
        return getattr(np, op)(np.radians(parts[0]))
    if op == "atan":
        return np.degrees(np.arctan(parts[0]))
    return _ARITHMETIC[op](*parts)


_COMPARE = {
    "<": np.less, "<=": np.less_equal, ">": np.greater, ">=": np.greater_equal, "==": np.equal, "!=": np.not_equal,
}  # fmt: skip
_ARITHMETIC: dict[str, Any] = {
    "+": np.add, "-": np.subtract, "*": np.multiply, "min": np.minimum, "max": np.maximum, "abs": np.abs,
    "negative": np.negative, "sqrt": np.sqrt,
}  # fmt: skip


def _compare(op: str, left: Any, right: Any) -> Column:
    if isinstance(left, tuple):  # text against a literal word, whichever side it stands on
        if np.ndim(left[0]) == 0 and np.ndim(right[0]) > 0:
            left, right = right, left
        wanted = right[1][int(right[0])] if int(right[0]) >= 0 else None
        if wanted is None:
            return np.full(np.shape(left[0]), UNKNOWN, dtype=np.int8)
        same = _member(left, [wanted])
        return same if op == "==" else (np.int8(TRUE) - same).astype(np.int8)
    left, right = np.asarray(left), np.asarray(right)
    answer = np.asarray(_COMPARE[op](left, right)).astype(np.int8) * np.int8(TRUE)
    both_truth = left.dtype == np.int8 and right.dtype == np.int8
    for side in (left, right):
        open_ = side == UNKNOWN if both_truth else side != side
        if np.any(open_):
            answer = np.where(open_, np.int8(UNKNOWN), answer)
    return np.asarray(answer, dtype=np.int8)


def _member(value: Any, literals: list[Any]) -> Column:
    if isinstance(value, tuple):
        codes, known = value
        table = np.array([TRUE if word in literals else FALSE for word in known] + [UNKNOWN], dtype=np.int8)
        return np.asarray(table[codes])  # code -1 reads the last entry
    hit = one_of(value, literals)
    return np.where(np.isnan(value), UNKNOWN, np.where(hit, TRUE, FALSE)).astype(np.int8)


def _by_group(code: Code, rows: Rows) -> Column:
    """share(condition, among): part of the weight (cut length) of each row's tool; total(condition): the weight itself;
    run(condition): the weight of the unbroken run of rows around each row in which the condition holds, 0 elsewhere."""
    group, groups, weight = rows.group()
    holds = truth(code[1], rows) == TRUE
    if code[0] == "run":
        starts = rows.breaks() | np.concatenate(([True], holds[1:] != holds[:-1])) if len(holds) else holds
        number = np.cumsum(starts)
        return np.asarray(np.where(holds, np.bincount(number, weights=weight)[number], 0.0))
    if code[0] == "total":
        return np.asarray(np.bincount(group, weights=weight * holds, minlength=groups)[group])
    among = truth(code[2], rows) == TRUE
    part = np.bincount(group, weights=weight * (holds & among), minlength=groups)
    every = np.bincount(group, weights=weight * among, minlength=groups)
    return np.asarray((part / np.where(every > 0, every, 1.0))[group])
