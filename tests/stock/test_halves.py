"""A program swept in two halves side by side gives what one sweep gives."""

from __future__ import annotations

import math
from dataclasses import fields

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from gclint import threads as beside
from gclint.stock import halves, sweeps
from gclint.stock.engage import engage
from gclint.tables.engagement import Engagement
from gclint.tables.motion import Motion
from gclint.tables.setup import Tool
from tests.stock.build import Path, box, setup

NEAR = 40  # moves: the ones before the split may have been swept in one group with those behind it


def both(
    motion: Motion, tool: Tool, monkeypatch: pytest.MonkeyPatch, worth: float
) -> tuple[Engagement, Engagement, int]:
    """(one sweep, two halves, where they were split; 0 if they were not)."""
    at = [0]
    found = halves.halves_of

    def noted(*given: object) -> halves.Halves | None:
        made = found(*given)  # type: ignore[arg-type]
        at[0] = made.at if made else 0
        return made

    with monkeypatch.context() as patch:
        patch.setattr(halves, "LONG", 10**9)
        one = engage(motion, setup(tool, stock=box((0, 60), (0, 40))))
        patch.setattr(halves, "LONG", 2)
        patch.setattr(beside, "LONG", 2)
        patch.setattr(halves, "WORTH", worth)
        patch.setattr(sweeps, "halves_of", noted)
        return one, engage(motion, setup(tool, stock=box((0, 60), (0, 40)))), at[0]


def assert_same(one: Engagement, two: Engagement, at: int) -> None:
    assert np.allclose(one.cut, two.cut, rtol=0, atol=1e-5)
    assert np.array_equal(one.pieces.move, two.pieces.move)
    far = (one.pieces.move < at - NEAR) | (one.pieces.move >= at + NEAR)
    for column in fields(one.pieces):
        a, b = getattr(one.pieces, column.name), getattr(two.pieces, column.name)
        assert np.allclose(a[far], b[far], rtol=1e-3, atol=1e-4), column.name
        assert np.allclose(a, b, rtol=0.1, atol=0.05), column.name
    assert one.not_judged == two.not_judged


def raster(rows: int, tool: float) -> Path:
    path = Path((2.0, 2.0, 5.0)).line(z=-1.0)
    for row in range(rows):
        y = 2 + row * tool / 5
        xs = np.linspace(2, 58, 113)[:: 1 if row % 2 == 0 else -1]
        path = path.through([(float(x), y, -1.5 + math.sin(x / 5) * math.cos(y / 4)) for x in xs])
    return path


@pytest.mark.parametrize("shape", ["ball", "flat"])
def test_a_raster(shape: str, monkeypatch: pytest.MonkeyPatch) -> None:
    one, two, at = both(raster(40, 3.0).motion(), Tool(1, shape, 3.0, flutes=2), monkeypatch, 0.75)
    assert at > 0
    assert_same(one, two, at)


lines = st.tuples(st.floats(-5, 65), st.floats(-5, 45), st.floats(-3, 1))
arcs = st.tuples(st.floats(-8, 8), st.floats(-8, 8), st.floats(-400, 400), st.sampled_from((17, 18, 19)))


@settings(max_examples=40, deadline=None,
          suppress_health_check=[HealthCheck.too_slow, HealthCheck.function_scoped_fixture])  # fmt: skip
@given(st.lists(lines | arcs, min_size=8, max_size=30))
def test_any_path(monkeypatch: pytest.MonkeyPatch, steps: list[tuple[float, ...]]) -> None:
    path = Path((5.0, 5.0, 1.0))
    for step in steps:
        if len(step) == 3:
            path = path.line(*step)
            continue
        beside, behind, turn, plane = step
        u, v = {17: (0, 1), 18: (2, 0), 19: (1, 2)}[int(plane)]
        path = path.arc((path.at[u] + beside, path.at[v] + behind), turn, plane=int(plane))
    one, two, at = both(path.motion(), Tool(1, "ball", 3.0, flutes=2), monkeypatch, 9.0)
    assert_same(one, two, at)
