"""The slow obvious version of the sweep: every cell against many places of the tool along every move."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

import numpy as np

from gclint.stock.profile import Profile

Point = tuple[float, float, float]


def height(tool: Profile, r: float) -> float:
    """Height of the tool's surface above its tip; infinite outside the tool."""
    if r > tool.radius:
        return math.inf
    if r <= tool.flat:
        return 0.0
    if r <= tool.join_r:
        return tool.torus - math.sqrt(max(0.0, tool.torus**2 - (r - tool.flat) ** 2))
    return tool.join_z + tool.cone * (r - tool.join_r)


def depths(
    tool: Profile, points: Sequence[Point], xs: Sequence[float], ys: Sequence[float], places: int = 400
) -> np.ndarray:
    """Depth below Z0 at every centre (x, y), after the tip has gone from point to point."""
    found = np.zeros((len(ys), len(xs)))
    for a, b in pairwise(points):
        for k in range(places + 1):
            s = k / places
            px, py, pz = (p + s * (q - p) for p, q in zip(a, b, strict=True))
            for j, y in enumerate(ys):
                for i, x in enumerate(xs):
                    r = math.hypot(x - px, y - py)
                    if r <= tool.radius:
                        found[j, i] = max(found[j, i], -pz - height(tool, r))
    return found


def distance(points: Sequence[Point], x: float, y: float) -> float:
    """From (x, y) to the nearest place of the path, seen from above."""
    least = math.inf
    for a, b in pairwise(points):
        dx, dy = b[0] - a[0], b[1] - a[1]
        long = dx * dx + dy * dy
        s = 0.0 if long == 0 else min(1.0, max(0.0, ((x - a[0]) * dx + (y - a[1]) * dy) / long))
        least = min(least, math.hypot(x - a[0] - s * dx, y - a[1] - s * dy))
    return least
