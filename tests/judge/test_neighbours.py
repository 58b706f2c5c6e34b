"""What a condition knows of the rows beside its own: the one before and behind of the same tool, first and last."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from gclint.check import trace
from gclint.facts.context import Context
from gclint.facts.fact import number, text, truth
from gclint.facts.registry import View, facts_of, tables
from gclint.setup.declare import Options
from gclint.shipped import folder

PROGRAM = """G21 G90 G94 G17 G54
T1 M6
M3 S12000
G0 Z5
G0 X0 Y0
G1 Z-1 F300
G1 X30 F1300
M0
T2 M6
G0 X5 Y5
G1 X30 F1300
T1 M6
G0 X8 Y8
G1 Z-2 F300
G2 X8 Y8 I5
M60
G0 Z5
G1 Z-3
T2 M6
T1 M6
M30
"""
TOOLS = ("1: flat 6mm 2fl", "2: flat 3mm 2fl")


def context(program: str = PROGRAM, **more: Any) -> Context:
    tables = trace(program.encode(), "a.nc", Options("beech", TOOLS, "60 x 60 x 10 mm at 0 0", **more))
    return Context(tables.program, tables.motion, tables.timing, tables.engagement, tables.cutting, tables.setup)


def values(view: View, name: str) -> list[Any]:
    value = view.value(name)
    if isinstance(value, tuple):
        return [None if code < 0 else value[1][code] for code in value[0].tolist()]
    array = np.asarray(value)
    if array.dtype == np.int8:
        return [{0: False, 1: None, 2: True}[each] for each in array.tolist()]
    return [None if np.isnan(each) else each for each in array.tolist()]


def test_rows_beside_are_those_of_the_same_tool() -> None:
    moves = View.of("moves", context())
    assert values(moves, "line") == [4, 5, 6, 7, 10, 11, 13, 14, 15, 17, 18]
    assert values(moves, "previous.line") == [None, 4, 5, 6, None, 10, 7, 13, 14, 15, 17]
    assert values(moves, "next.line") == [5, 6, 7, 13, 11, None, 14, 15, 17, 18, None]
    assert values(moves, "previous.rapid") == [None, True, True, False, None, True, False, True, False, False, True]
    assert values(moves, "next.z")[:3] == [5, -1, -1]
    assert [n for n, first in enumerate(values(moves, "first_of_tool")) if first] == [0, 4]
    assert [n for n, last in enumerate(values(moves, "last_of_tool")) if last] == [5, 10]
    assert [n for n, first in enumerate(values(moves, "first_of_program")) if first] == [0]
    assert [n for n, last in enumerate(values(moves, "last_of_program")) if last] == [10]
    assert values(moves, "arc") == [False] * 8 + [True] + [False] * 2
    assert values(moves, "start_x")[3:6] == [0, 30, 5]
    entries = View.of("entries", context())
    assert values(entries, "previous.kind") == [None, *values(entries, "kind")[:-1]]


def test_chosen_rows_keep_their_own_neighbours() -> None:
    moves = View.of("moves", context()).choose(np.array([5, 6]))
    assert values(moves, "previous.line") == [10, 7]
    assert values(moves.choose(np.array([1])), "previous.line") == [7]


def test_a_program_without_rows_has_no_neighbours() -> None:
    empty = View.of("pieces", context("G21 G90\nM30\n"))
    for name in ("previous.depth", "next.operation", "first_of_tool", "last_of_program", "next.rapid"):
        assert values(empty, name) == []


@pytest.mark.parametrize("table", list(tables()))
def test_every_fact_gives_one_value_for_each_row(table: str) -> None:
    view = View.of(table, context())
    for name in facts_of(table):
        value = view.value(name)
        array = np.asarray(value[0] if isinstance(value, tuple) else value)
        assert array.shape in ((), (view.length,)), name


def slow(tools: list[int], row: int, step: int) -> int | None:
    at = row + step
    while 0 <= at < len(tools):
        if tools[at] == tools[row]:
            return at
        at += step
    return None


@given(st.lists(st.integers(-1, 3), max_size=40))
def test_neighbours_agree_with_a_search_row_by_row(tools: list[int]) -> None:
    from gclint.facts.fact import Table
    from gclint.facts.registry import neighbour_facts

    column = np.array(tools, dtype=np.int64)
    own = {
        "n": number("", "row", lambda c: np.arange(len(tools))),
        "odd": truth("odd", lambda c: np.arange(len(tools)) % 2 == 1),
        "word": text("word", lambda c: (np.arange(len(tools), dtype=np.int32) % 2, ("a", "b"))),
        "one": number("", "one value for all", lambda c: 7.0),
    }
    table = Table("made", "made", own, lambda c: len(tools), lambda c: column, neighbours=True)
    view = View(table, None, len(tools), None, {}, {**own, **neighbour_facts(table)})  # type: ignore[arg-type]
    for side, step in (("previous", -1), ("next", 1)):
        beside = [slow(tools, row, step) for row in range(len(tools))]
        assert values(view, f"{side}.n") == beside
        assert values(view, f"{side}.odd") == [None if n is None else n % 2 == 1 for n in beside]
        assert values(view, f"{side}.word") == [None if n is None else "ab"[n % 2] for n in beside]
        assert values(view, f"{side}.one") == [None if n is None else 7.0 for n in beside]
        end = "first_of_tool" if step < 0 else "last_of_tool"
        assert values(view, end) == [n is None for n in beside]


def test_a_stop_counts_before_the_change_that_follows_it_and_no_other() -> None:
    changes = View.of("changes", context())
    assert values(changes, "line") == [2, 9, 12, 19, 20]
    # M60 stands before the cut on line 18, so it is none for line 19
    assert values(changes, "stop_word_before") == [False, True, False, False, False]


def test_a_stop_that_the_controller_passes_over_is_none(tmp_path: Any) -> None:
    (tmp_path / "shop.toml").write_text('[machine]\ncontroller = "ours.toml"\n')
    card = (folder() / "controllers" / "any.toml").read_text()
    (tmp_path / "ours.toml").write_text(card.replace('program_stop = "stops"', 'program_stop = "ignores"'))
    changes = View.of("changes", context(shop=str(tmp_path / "shop.toml")))
    assert values(changes, "stop_word_before") == [False] * 5
