"""Which boxes moves cross, against shapely: the box widened by the tool, cut by the path seen from above."""

from __future__ import annotations

import random

import numpy as np
import pytest
import shapely

from gclint.motion.boxes import Boxes

MANY = 1_000_000_000


def crossed(low: np.ndarray, high: np.ndarray, ends: np.ndarray, r: float, most: int = MANY) -> tuple[list[float], int]:
    """[moves] depth below the tops of boxes; straight moves from and to x y z; how many moves were looked at."""
    n = len(ends)
    columns = [np.ascontiguousarray(ends[:, k]) for k in range(6)]
    zero, depth, which = np.zeros(n), np.full(n, -np.inf), np.full(n, -1, np.int32)
    done = Boxes(low, high).crossed(
        np.arange(n), *columns, zero, zero, zero, np.full(n, 17, np.uint8), zero,
        np.minimum(ends[:, 2], ends[:, 5]), np.full(n, r), depth, which, most,
    )  # fmt: skip
    return depth.tolist(), done


def test_depths_are_those_of_a_geometry_library() -> None:
    chance = random.Random(11)
    corner = np.array([[chance.uniform(0, 300), chance.uniform(0, 300), 0.0] for _ in range(400)])
    size = np.array([[chance.uniform(1, 30), chance.uniform(1, 30), chance.uniform(1, 20)] for _ in range(400)])
    low, high, r = corner, corner + size, 3.0
    ends = np.array([[chance.uniform(-20, 330) if k % 3 < 2 else chance.uniform(-2, 22) for k in range(6)]
                     for _ in range(300)])  # fmt: skip
    found, done = crossed(low, high, ends, r)
    assert done == 300
    tree = shapely.STRtree(shapely.box(low[:, 0] - r, low[:, 1] - r, high[:, 0] + r, high[:, 1] + r))
    for row, (x0, y0, z0, x1, y1, z1) in enumerate(ends.tolist()):
        path, deepest = shapely.LineString([(x0, y0), (x1, y1)]), -np.inf
        for box in tree.query(path, predicate="intersects").tolist():
            part = shapely.intersection(path, tree.geometries[box])
            shares = [path.project(shapely.Point(at), normalized=True) for at in shapely.get_coordinates(part)]
            z = min(z0 + share * (z1 - z0) for share in shares)
            deepest = max(deepest, high[box, 2] - z) if high[box, 2] > z else deepest
        assert max(found[row], 0.0) == pytest.approx(max(deepest, 0.0), abs=1e-6)


def test_the_work_is_counted_and_bounded() -> None:
    low, high = np.zeros((1000, 3)), np.full((1000, 3), 10.0)
    ends = np.tile([0.0, 5.0, 1.0, 9.0, 5.0, 1.0], (1000, 1))
    assert crossed(low, high, ends, 1.0)[1] == 1000
    assert crossed(low, high, ends, 1.0, most=50_000)[1] < 100
