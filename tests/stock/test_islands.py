"""The kernel that tells pieces apart, against the slow obvious way, and thin walls whose thickness is known."""

from __future__ import annotations

import math
from collections import deque

import numpy as np
import pytest

from gclint.columns import Bytes, Ints
from gclint.stock.islands import EIGHTHS, ISLAND_COLUMNS, label, thin


def spread(solid: Bytes, corners: bool) -> Ints:
    """The oracle: pieces found by walking from cell to cell."""
    found = np.zeros(solid.shape, np.int32)
    steps = [(0, 1), (0, -1), (1, 0), (-1, 0)] + [(a, b) for a in (-1, 1) for b in (-1, 1) if corners]
    pieces = 0
    for j, i in np.argwhere(solid):
        if found[j, i]:
            continue
        pieces += 1
        found[j, i] = pieces
        todo = deque([(int(j), int(i))])
        while todo:
            a, b = todo.popleft()
            for da, db in steps:
                c, d = a + da, b + db
                if 0 <= c < solid.shape[0] and 0 <= d < solid.shape[1] and solid[c, d] and not found[c, d]:
                    found[c, d] = pieces
                    todo.append((c, d))
    return found


@pytest.mark.parametrize("corners", [False, True])
@pytest.mark.parametrize("share", [0.3, 0.55, 0.62, 0.9])
def test_pieces_are_those_found_by_walking(corners: bool, share: float) -> None:
    draw = np.random.default_rng(7)
    for shape in ((1, 9), (9, 1), (23, 31), (40, 17)):
        solid = (draw.random(shape) < share).astype(np.uint8)
        surface = draw.random(shape).astype(np.float32)
        labels = np.full(shape, -5, np.int32)
        table = label(solid, surface, labels, corners)
        expected = spread(solid, corners)
        assert np.array_equal(labels, expected)
        assert len(table) == expected.max()
        for n, row in enumerate(table, 1):
            cells = np.argwhere(expected == n)
            told = dict(zip(ISLAND_COLUMNS, row, strict=True))
            assert told["cells"] == len(cells)
            assert (told["first_row"], told["first_column"]) == tuple(cells.min(axis=0))
            assert (told["last_row"], told["last_column"]) == tuple(cells.max(axis=0))
            assert told["least"] == pytest.approx(surface[expected == n].min())


def test_nothing_and_everything() -> None:
    none, labels = np.zeros((4, 5), np.uint8), np.zeros((4, 5), np.int32)
    assert len(label(none, np.zeros((4, 5), np.float32), labels, False)) == 0
    assert len(label(none + np.uint8(1), np.zeros((4, 5), np.float32), labels, False)) == 1
    with pytest.raises(ValueError, match="one shape"):
        label(none, np.zeros((4, 4), np.float32), labels, False)


def wall(degrees: float, thickness: float) -> Bytes:
    """A straight wall through the middle of a field of 120 x 120 cells."""
    y, x = np.mgrid[0:120, 0:120] - 59.5
    across = x * math.sin(math.radians(degrees)) - y * math.cos(math.radians(degrees))
    return np.ascontiguousarray((np.abs(across) < thickness / 2).astype(np.uint8))


@pytest.mark.parametrize("degrees", [0, 17, 45, 70, 90])
@pytest.mark.parametrize("thickness", [6.0, 11.0])
def test_a_straight_wall_is_as_thick_as_it_is_whichever_way_it_runs(degrees: float, thickness: float) -> None:
    solid, out = wall(degrees, thickness), np.zeros((120, 120), np.uint8)
    assert thin(solid, thickness + 2, out) > 0
    middle = out[40:80, 40:80]
    assert np.median(middle[middle > 0]) / EIGHTHS == pytest.approx(thickness, abs=1.2)
    assert thin(solid, thickness - 2, np.zeros((120, 120), np.uint8)) < 0.05 * solid.sum()


def test_what_ends_at_the_border_of_the_field_has_no_end_there() -> None:
    solid, out = np.zeros((30, 30), np.uint8), np.zeros((30, 30), np.uint8)
    solid[:, :4] = 1  # the edge of a wide piece of which the field shows four cells
    assert thin(solid, 8, out) == 0
    solid[:, 10:14] = 1
    assert thin(solid, 8, out) == 4 * 30
