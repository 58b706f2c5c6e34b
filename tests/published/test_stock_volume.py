"""Removed volume and swept area against shapely (2.5D paths) and manifold3d (ball and V tools)."""

from __future__ import annotations

import math
from itertools import pairwise

import manifold3d
import numpy as np
import pytest
import shapely

from gclint.stock.engage import engage
from gclint.tables.setup import Tool
from tests.stock.build import Path, box, setup

BOX = shapely.box(0, 0, 60, 40)


def polyline(seed: int, corners: int = 6) -> list[tuple[float, float]]:
    rng = np.random.default_rng(seed)
    return [
        (float(x), float(y)) for x, y in zip(rng.uniform(-5, 65, corners), rng.uniform(-5, 45, corners), strict=True)
    ]


@pytest.mark.parametrize("diameter", [3.0, 6.0, 12.0])
@pytest.mark.parametrize("seed", range(4))
def test_area_and_volume_of_a_level_path(seed: int, diameter: float) -> None:
    # shapely: the path widened by the radius, cut to the blank
    points = polyline(seed)
    path = Path((*points[0], -2.5)).through([(*point, -2.5) for point in points[1:]])
    found = engage(path.motion(), setup(Tool(1, "flat", diameter), stock=box((0, 60), (0, 40))))
    area = shapely.LineString(points).buffer(diameter / 2, quad_segs=64).intersection(BOX).area
    assert np.count_nonzero(found.cut) * found.cell**2 == pytest.approx(area, rel=0.005)
    assert found.pieces.removed.sum() == pytest.approx(2.5 * area, rel=0.005)


@pytest.mark.parametrize("seed", range(3))
def test_two_levels_and_a_wider_lap(seed: int) -> None:
    # two paths at two depths: volume is that of the union of two prisms
    first, second = polyline(seed), polyline(seed + 100)
    path = Path((*first[0], -1.0)).through([(*point, -1.0) for point in first[1:]])
    path.rapid(z=5).rapid(*second[0]).rapid(z=-3.0).through([(*point, -3.0) for point in second[1:]])
    found = engage(path.motion(), setup(Tool(1, "flat", 6.0), stock=box((0, 60), (0, 40))))
    high = shapely.LineString(first).buffer(3, quad_segs=64).intersection(BOX)
    low = shapely.LineString(second).buffer(3, quad_segs=64).intersection(BOX)
    volume = 3.0 * low.area + 1.0 * high.difference(low).area
    assert found.pieces.removed.sum() == pytest.approx(volume, rel=0.006)


def test_a_skim_thinner_than_a_cell_removes_its_own_volume() -> None:
    # a round pocket wall widened by 0.05 mm; the cell is 0.19 mm
    path = Path((40, 20, -2)).arc((30, 20), 360).line(x=40.05).arc((30, 20), 360)
    found = engage(path.motion(), setup(Tool(1, "flat", 6.0), stock=box((0, 60), (0, 40))))
    ring = (
        shapely.Point(30, 20).buffer(13.05, quad_segs=512).area - shapely.Point(30, 20).buffer(13.0, quad_segs=512).area
    )
    assert found.pieces.removed[found.pieces.move == 2].sum() == pytest.approx(2 * ring, rel=0.1)


def ball_at(x: float, y: float, z: float, radius: float) -> manifold3d.Manifold:
    """A ball tool with its tip at (x, y, z), and its shaft."""
    ball = manifold3d.Manifold.sphere(radius, 96).translate([0, 0, radius])
    shaft = manifold3d.Manifold.cylinder(40, radius, radius, 96).translate([0, 0, radius])
    return (ball + shaft).translate([x, y, z])


def v_at(x: float, y: float, z: float, radius: float, angle: float) -> manifold3d.Manifold:
    high = radius / math.tan(math.radians(angle / 2))
    cone = manifold3d.Manifold.cylinder(high, 1e-4, radius, 128)
    shaft = manifold3d.Manifold.cylinder(40, radius, radius, 128).translate([0, 0, high])
    return (cone + shaft).translate([x, y, z])


@pytest.mark.parametrize(
    ("tool", "solid"),
    [
        (Tool(1, "ball", 6.0), lambda x, y, z: ball_at(x, y, z, 3.0)),
        (Tool(1, "v", 8.0, angle=90.0), lambda x, y, z: v_at(x, y, z, 4.0, 90.0)),
        (Tool(1, "v", 6.0, angle=60.0), lambda x, y, z: v_at(x, y, z, 3.0, 60.0)),
    ],
    ids=["ball", "v 90", "v 60"],
)
@pytest.mark.parametrize("seed", range(3))
def test_sloped_paths_against_a_solid_modeller(tool: Tool, solid, seed: int) -> None:  # type: ignore[no-untyped-def]
    # manifold3d: the hull of the tool at both ends of each move is what a convex tool sweeps; the blank loses the union
    rng = np.random.default_rng(seed)
    points = [
        (float(x), float(y), float(z))
        for x, y, z in zip(rng.uniform(0, 30, 4), rng.uniform(0, 20, 4), rng.uniform(-4, 1, 4), strict=True)
    ]
    found = engage(Path(points[0]).through(points[1:]).motion(), setup(tool, stock=box((0, 30), (0, 20), 10.0)))
    swept = manifold3d.Manifold()
    for a, b in pairwise(points):
        swept += (solid(*a) + solid(*b)).hull()
    blank = manifold3d.Manifold.cube([30, 20, 10]).translate([0, 0, -10])
    removed = blank.volume() - (blank - swept).volume()
    assert found.pieces.removed.sum() == pytest.approx(removed, rel=0.01)
