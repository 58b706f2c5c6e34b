"""Three-valued truth, and whole columns against one row at a time."""

from __future__ import annotations

import math
from itertools import product
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from gclint.language.evaluate import FALSE, TRUE, UNKNOWN, blame, numbers, truth, words
from gclint.language.expression import NUMBER, TEXT, TRUTH, Name, compile_expression

NAMES = {
    "a": Name(TRUTH), "b": Name(TRUTH), "c": Name(TRUTH),
    "x": Name(NUMBER, "mm"), "y": Name(NUMBER, "mm"), "v": Name(NUMBER, "mm/min"), "n": Name(NUMBER),
    "kind": Name(TEXT, words=("ramp", "helix")),
}  # fmt: skip
THREE = {FALSE: False, UNKNOWN: None, TRUE: True}


class Made:
    """Columns as an expression sees them."""

    def __init__(self, length: int, **columns: Any) -> None:
        self.length, self.columns = length, columns
        self.rows: Any = None  # of all of them, the chosen ones
        self.total = length

    def choose(self, rows: Any) -> Made:
        made = Made(len(rows), **self.columns)
        made.rows, made.total = rows if self.rows is None else self.rows[rows], self.total
        return made

    def value(self, name: str) -> Any:
        value = self.columns[name]
        return (self.pick(value[0]), value[1]) if isinstance(value, tuple) else self.pick(value)

    def whole(self) -> Made:
        return Made(self.total, **self.columns)

    def pick(self, column: Any) -> Any:
        return column if self.rows is None or np.ndim(column) == 0 else column[self.rows]

    def group(self) -> Any:
        tool = self.columns.get("tool", np.zeros(self.length, dtype=int))
        return tool, int(tool.max(initial=0)) + 1, self.columns.get("weight", np.ones(self.length))

    def kept(self, key: str, make: Any) -> Any:
        return make()

    def breaks(self) -> Any:
        return np.arange(self.length) == 0


def run(text: str, rows: Made) -> list[bool | None]:
    return [THREE[int(value)] for value in truth(compile_expression(text, NAMES, TRUTH).code, rows)]


def and_(p: bool | None, q: bool | None) -> bool | None:
    return False if p is False or q is False else None if p is None or q is None else True


def or_(p: bool | None, q: bool | None) -> bool | None:
    return True if p is True or q is True else None if p is None or q is None else False


def not_(p: bool | None) -> bool | None:
    return None if p is None else not p


@pytest.mark.parametrize(("p", "q"), list(product(THREE, THREE)))
def test_kleene_tables(p: int, q: int) -> None:
    rows = Made(1, a=np.array([p], dtype=np.int8), b=np.array([q], dtype=np.int8))
    assert run("a and b", rows) == [and_(THREE[p], THREE[q])]
    assert run("a or b", rows) == [or_(THREE[p], THREE[q])]
    assert run("not a", rows) == [not_(THREE[p])]
    assert run("a == b", rows) == [None if UNKNOWN in (p, q) else p == q]


three = st.sampled_from([FALSE, UNKNOWN, TRUE])


@settings(deadline=None)
@given(st.lists(st.tuples(three, three, three), min_size=1, max_size=40))
def test_the_laws_of_three_valued_truth(rows: list[tuple[int, int, int]]) -> None:
    a, b, c = (np.array(column, dtype=np.int8) for column in zip(*rows))
    made = Made(len(rows), a=a, b=b, c=c)
    for left, right in (
        ("not (a and b)", "not a or not b"),
        ("a and (b or c)", "a and b or a and c"),
        ("a or b and c", "(a or b) and (a or c)"),
        ("not not a", "a"),
        ("a and b and c", "c and b and a"),
    ):
        assert run(left, made) == run(right, made)


maybe = st.one_of(st.none(), st.floats(-50, 50).map(lambda value: round(value, 1)))
row = st.fixed_dictionaries(
    {"x": maybe, "y": maybe, "v": maybe, "n": maybe, "a": three, "kind": st.sampled_from([None, "ramp", "helix"])}
)
TEXTS = (
    "x > y + 1 mm and not a",
    "kind == 'ramp' or x < y",
    "kind not in ['ramp'] and n in [0, 1, 2.5]",
    "known(x) and abs(x) >= max(y, 2 mm)",
    "x / y > n",
    "v * 2 > 30 mm/min or known(v) and a",
    "-5 mm < x <= y",
    "either(x, y) > 0 mm",
    "min(x, y) != x",
)


def slow(text: str, r: dict[str, Any]) -> bool | None:
    """One row, with None for unknown, written out by hand."""
    x, y, v, n, kind, a = r["x"], r["y"], r["v"], r["n"], r["kind"], THREE[r["a"]]

    def less(p: float | None, q: float | None) -> bool | None:
        return None if p is None or q is None else p < q

    def plus(p: float | None, q: float) -> float | None:
        return None if p is None else p + q

    if text == TEXTS[0]:
        return and_(less(plus(y, 1.0), x), not_(a))
    if text == TEXTS[1]:
        return or_(None if kind is None else kind == "ramp", less(x, y))
    if text == TEXTS[2]:
        return and_(None if kind is None else kind != "ramp", None if n is None else n in (0, 1, 2.5))
    if text == TEXTS[3]:
        most = None if y is None else max(y, 2.0)
        return and_(x is not None, not_(less(None if x is None else abs(x), most)))
    if text == TEXTS[4]:
        ratio = None if x is None or y is None or y == 0 else x / y
        return less(n, ratio)
    if text == TEXTS[5]:
        fast = None if v is None else (v / 60) * 2 > 30 * (1 / 60)
        return or_(fast, and_(v is not None, a))
    if text == TEXTS[6]:
        return and_(less(-5.0, x), not_(less(y, x)))
    if text == TEXTS[7]:
        return less(0.0, x if x is not None else y)
    least = None if x is None or y is None else min(x, y)
    return None if least is None or x is None else least != x


def columns(rows: list[dict[str, Any]]) -> Made:
    made: dict[str, Any] = {
        name: np.array([math.nan if r[name] is None else r[name] for r in rows]) for name in ("x", "y", "v", "n")
    }
    made["a"] = np.array([r["a"] for r in rows], dtype=np.int8)
    made["kind"] = np.array([{None: -1, "ramp": 0, "helix": 1}[r["kind"]] for r in rows]), ("ramp", "helix")
    return Made(len(rows), **made)


@pytest.mark.slow
@settings(max_examples=150, deadline=None)
@given(st.lists(row, min_size=1, max_size=30), st.sampled_from(TEXTS))
def test_columns_agree_with_one_row_at_a_time(rows: list[dict[str, Any]], text: str) -> None:
    assert run(text, columns(rows)) == [slow(text, r) for r in rows]


def test_a_million_rows_at_once() -> None:
    x = np.arange(1_000_000, dtype=np.float64)
    x[::10] = math.nan
    answer = truth(compile_expression("x >= 500000 mm", NAMES).code, Made(len(x), x=x))
    assert [int((answer == value).sum()) for value in (FALSE, UNKNOWN, TRUE)] == [450_000, 100_000, 450_000]


def test_numbers_come_in_base_units_and_unknown_stays_unknown() -> None:
    made = Made(3, v=np.array([60.0, math.nan, 0.0]), x=np.array([1.0, 1.0, 1.0]))
    assert numbers(compile_expression("v", NAMES).code, made)[0] == pytest.approx(1.0)
    quotient = numbers(compile_expression("x / v", NAMES).code, made)
    assert quotient[0] == pytest.approx(1.0)
    assert np.isnan(quotient[1:]).all()


def test_scalars_fill_all_rows() -> None:
    made = Made(4, x=np.float64(2.0), kind=(np.int32(1), ("ramp", "helix")), a=np.int8(UNKNOWN))
    assert run("x > 1 mm", made) == [True] * 4
    assert run("kind == 'helix' and a", made) == [None] * 4
    assert words(compile_expression("kind", NAMES).code, made) == ["helix"] * 4


def test_shares_and_runs_of_cut_length() -> None:
    made = Made(
        5,
        a=np.array([TRUE, FALSE, TRUE, TRUE, UNKNOWN], dtype=np.int8),
        b=np.array([TRUE, TRUE, TRUE, TRUE, TRUE], dtype=np.int8),
        tool=np.array([0, 0, 0, 1, 1]),
        weight=np.array([1.0, 1.0, 2.0, 3.0, 1.0]),
    )
    share = numbers(compile_expression("share(a, b)", NAMES).code, made)
    assert share == pytest.approx([0.75, 0.75, 0.75, 0.75, 0.75])
    assert numbers(compile_expression("total(a)", NAMES).code, made) == pytest.approx([3, 3, 3, 3, 3])
    assert numbers(compile_expression("run(a)", NAMES).code, made) == pytest.approx([1, 0, 5, 5, 0])


def test_only_what_leaves_the_answer_open_is_blamed() -> None:
    nan = math.nan
    made = Made(
        4,
        x=np.array([nan, nan, 5.0, nan]),
        y=np.array([nan, 1.0, nan, nan]),
        a=np.array([FALSE, TRUE, TRUE, TRUE], dtype=np.int8),
        kind=(np.array([-1, 0, -1, 0]), ("ramp", "helix")),
    )
    code = compile_expression("a and (x > 1 mm or kind == 'helix') and either(y, 0 mm) < 2 mm", NAMES).code
    answer = truth(code, made)
    assert answer.tolist() == [FALSE, UNKNOWN, TRUE, UNKNOWN]

    assert blame(code, made.choose(np.flatnonzero(answer == UNKNOWN))) == {"x": 2}
