"""Absurd positions, tools and stocks: bounded time, whole numbers, no exception."""

from __future__ import annotations

import math
from dataclasses import replace
from unittest import mock

import numpy as np
import pytest
from hypothesis import Phase, example, given, settings
from hypothesis import strategies as st

from gclint.problem import Problem
from gclint.stock.engage import engage
from gclint.tables.engagement import ENTRY_KINDS, Engagement
from gclint.tables.setup import SHAPES, Stock, Tool
from tests.stock.build import Path, box, columns, flat, setup

ANY = st.one_of(
    st.floats(-50, 50),
    st.sampled_from([0.0, -0.0, 1e-12, -1e-9, 1e3, -1e6, 1e9, -1e300, math.nan, math.inf, -math.inf]),
)
SIZE = st.one_of(st.floats(0.1, 20), st.sampled_from([0.0, 1e-9, 1e6, math.nan, -1.0]))


def sound(found: Engagement) -> None:
    """Every stored number is finite and within what its docstring allows."""
    pieces, entries = found.pieces, found.entries
    for name in pieces.__slots__:
        assert np.isfinite(getattr(pieces, name)).all(), name
    assert np.isfinite(found.cut).all()
    assert (found.cut >= 0).all()
    for name, high in (("climb", 1), ("under", 1), ("angle", 180.001), ("start", 1), ("end", 1)):
        values = getattr(pieces, name)
        assert ((values >= 0) & (values <= high)).all(), name
    assert (pieces.ae >= 0).all()
    assert (pieces.ap >= 0).all()
    assert (pieces.start <= pieces.end).all()
    for name in ("solid", "descent", "travel", "slope", "under", "depth"):
        assert np.isfinite(getattr(entries, name)).all(), name


@settings(max_examples=150, deadline=None, phases=(Phase.explicit, Phase.generate))
@given(
    st.lists(st.tuples(ANY, ANY, ANY, st.integers(0, 3), ANY, ANY, ANY, st.sampled_from([17, 18, 19])), max_size=8),
    st.sampled_from(SHAPES),
    SIZE,
    st.one_of(st.none(), SIZE),
    st.one_of(st.none(), st.floats(-10, 200)),
    st.booleans(),
)
@example([], "drill", 12.0, 1e-9, 5e-324, True)
@example([], "tapered-ball", 12.0, 1.0, 5e-324, True)
def test_nothing_breaks(
    rows: list[tuple[float, ...]],
    shape: str,
    diameter: float,
    corner: float | None,
    angle: float | None,
    declared: bool,
) -> None:
    tool = Tool(
        1, shape, diameter, corner_radius=corner, angle=angle, tip_diameter=corner, flute_length=corner, shank=diameter
    )
    path = Path((0, 0, 1))
    for x, y, z, kind, cu, cv, sweep, plane in rows:
        path._to(int(kind), x, y, z, cu=cu, cv=cv, sweep=sweep if kind >= 2 else 0.0, plane=plane)
    stock = box((-20, 20), (-20, 20)) if declared else None
    try:
        # small bounds, so that many examples take little time
        with mock.patch("gclint.stock.engage.MOST_WORK", 1e6), mock.patch("gclint.stock.grid.MOST_CELLS", 1e5):
            sound(engage(path.motion() if rows else columns(), setup(tool, stock=stock)))
    except Problem:
        assert not declared


@pytest.mark.parametrize("length", [1e4, 1e6, 9e6])
def test_a_line_from_far_away_costs_only_its_part_over_the_stock(length: float) -> None:
    path = Path((-length, 5, -1)).line(x=length)
    found = engage(path.motion(), setup(flat(6.0), stock=box((0, 20), (0, 10))))
    assert found.pieces.removed.sum() == pytest.approx(20 * 6, rel=0.02)
    assert len(found.pieces) < 30


def test_a_position_that_cannot_be_believed_is_counted() -> None:
    path = Path((-10, 5, -1)).line(x=1e9).line(x=5)
    found = engage(path.motion(), setup(flat(6.0), stock=box((0, 20), (0, 10))))
    assert len(found.pieces) == 0
    assert [count for _, _, count in found.not_judged] == [2]


@pytest.mark.parametrize("turns", [100, 1_000_000, 1_000_000_000])
def test_an_arc_of_very_many_turns_is_the_circle_or_the_bore_that_it_cuts(turns: int) -> None:
    stock = setup(flat(6.0), stock=box((0, 40), (0, 40)))
    level = engage(Path((30, 20, -1)).arc((20, 20), 360.0 * turns).motion(), stock)
    assert level.pieces.removed.sum() == pytest.approx(math.pi * (13**2 - 7**2), rel=0.01)
    assert level.not_judged == ()
    bore = engage(Path((22, 20, 0)).arc((20, 20), 360.0 * turns, z=-3).line(x=20).motion(), stock)
    assert bore.pieces.removed.sum() == pytest.approx(math.pi * 25 * 3, rel=0.01)
    length = bore.pieces.length[bore.pieces.move == 0].sum()
    assert length == pytest.approx(math.hypot(4 * math.pi * turns, 3), rel=0.01)
    assert [ENTRY_KINDS[kind] for kind in bore.entries.kind] == ["helix"]
    assert bore.entries.solid == pytest.approx([3], abs=0.06)


def test_a_tool_of_a_kilometre_faces_the_whole_blank() -> None:
    found = engage(Path((-2e6, 5, -1)).line(x=2e6).motion(), setup(flat(1e6), stock=box((0, 20), (0, 10))))
    assert found.pieces.removed.sum() == pytest.approx(200, rel=0.01)


def test_a_blank_of_a_kilometre_and_a_blank_of_a_hair() -> None:
    path = Path((5, 0, 1)).line(z=-1).line(x=15)
    for stock in (box((0, 1e6), (0, 1e6)), box((0, 1e6), (-1e-3, 1e-3)), box((7, 7.001), (-1e-3, 1e-3))):
        sound(engage(path.motion(), setup(flat(6.0), stock=stock)))


def test_work_without_end_stops_at_the_bound(monkeypatch: pytest.MonkeyPatch) -> None:
    from gclint.stock import engage as stage

    monkeypatch.setattr(stage, "MOST_WORK", 1e5)
    path = Path((0, 0, -1))
    for k in range(400):
        path.line(x=40.0 if k % 2 == 0 else 0.0, y=k * 0.1, z=-1 - k * 0.01)
    found = engage(path.motion(), setup(flat(6.0), stock=box((0, 40), (0, 40))))
    ((what, _, count),) = found.not_judged
    assert "bound of work" in what
    assert 300 < count < 400


def test_little_work_is_done_for_a_program_that_never_ends(monkeypatch: pytest.MonkeyPatch) -> None:
    from gclint.motion.interpret import interpret
    from gclint.program.read import read
    from gclint.stock import engage as stage
    from gclint.tables.setup import Controller, Limits

    program = read(b"G21 G90 G0 X0 Y0 Z-1\nO1 while [1]\nG1 X40 F100\nX0 Y[#5421 + 0.1]\nO1 endwhile\nM2\n", "endless")
    motion = interpret(program, Controller(), Limits(blocks=1000, calls=10, moves=1000))
    motion = replace(motion, tool=np.ones_like(motion.tool))
    declared = setup(flat(6.0), stock=box((0, 40), (0, 40)))
    assert not [what for what, _, _ in engage(motion, declared).not_judged if "bound of work" in what]
    monkeypatch.setattr(stage, "GIVEN_UP_WORK", 1e5)
    assert [what for what, _, _ in engage(motion, declared).not_judged if "bound of work" in what]


def test_more_pieces_than_one_table_holds(monkeypatch: pytest.MonkeyPatch) -> None:
    from gclint.stock import sweeps

    path = Path((0, 20, -1))
    for k in range(1, 4001):
        path.line(x=k * 0.01)
    whole = engage(path.motion(), setup(flat(6.0), stock=box((0, 40), (0, 40))))
    monkeypatch.setattr(sweeps, "ROOM", 32768 + 100)
    parts = engage(path.motion(), setup(flat(6.0), stock=box((0, 40), (0, 40))))
    for name in set(whole.pieces.__slots__) - {"profile"}:
        np.testing.assert_allclose(getattr(parts.pieces, name), getattr(whole.pieces, name))
    for name in whole.contact.__slots__:
        rows = (getattr(each.contact, name)[each.pieces.profile] for each in (parts, whole))
        np.testing.assert_array_equal(*rows)
    assert len(parts.pieces) > 3000


def test_the_moves_of_a_read_only_table_are_left_alone() -> None:
    motion = Path((0, 20, 5)).line(z=-1).line(x=40).motion()
    before = motion.x1.copy()
    motion.z0.setflags(write=False)
    engage(motion, setup(flat(6.0), stock=Stock((0, 40), (0, 40), 0.0, -5.0, True, True)))
    np.testing.assert_array_equal(motion.x1, before)
