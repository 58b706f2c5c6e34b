"""Paths under G41 and G42 against shapely's offset curves: contours of lines and arcs, both sides, many radii."""

from __future__ import annotations

import math
import random

import numpy as np
import pytest
import shapely
from shapely.geometry import LineString, Polygon

from gclint.tables.motion import COMPENSATED
from tests.motion.compensated import Point, compensated, points
from tests.motion.run import STATED, faults

HEAD = STATED + "T1 M6\nG0 X500 Y500 Z5\n"


def star(seed: int, corners: int, dent: float) -> list[Point]:
    """A polygon round the origin, counter-clockwise, whose corners lie between 60 - dent and 60 mm out."""
    pick = random.Random(seed)
    out = []
    for n in range(corners):
        angle = 2 * math.pi * (n + pick.uniform(-0.25, 0.25)) / corners
        far = 60 - pick.uniform(0, dent)
        out.append((round(far * math.cos(angle), 3), round(far * math.sin(angle), 3)))
    return out


def program(shape: list[Point], bulges: list[float], code: str) -> tuple[str, list[Point]]:
    """One lap from the middle of the first edge (always straight) and back; and the lap as fine points."""
    bulges = [0.0, *bulges[1:]]
    middle = ((shape[0][0] + shape[1][0]) / 2, (shape[0][1] + shape[1][1]) / 2)
    lines = [f"G1 X{middle[0]:.6f} Y{middle[1]:.6f} F500"]
    fine: list[Point] = [middle]
    path = [*shape[1:], shape[0], middle]
    for at, (to, bulge) in enumerate(zip(path, [*bulges[1:], 0.0, 0.0])):
        begin = fine[-1]
        if at == 0 or abs(bulge) < 0.05 or to is middle:
            lines.append(f"G1 X{to[0]:.6f} Y{to[1]:.6f}")
            fine.append(to)
            continue
        chord = math.dist(begin, to)
        radius = round(chord / 2 / math.sin(min(abs(bulge), 1.4)), 4)
        off = math.sqrt(max(radius**2 - chord**2 / 4, 0))
        side = 1 if bulge > 0 else -1  # counter-clockwise: the centre lies to the left
        nx, ny = -(to[1] - begin[1]) / chord, (to[0] - begin[0]) / chord
        cx, cy = (begin[0] + to[0]) / 2 + side * off * nx, (begin[1] + to[1]) / 2 + side * off * ny
        centre = f"I{cx - begin[0]:.6f} J{cy - begin[1]:.6f}"
        lines.append(f"{'G3' if side > 0 else 'G2'} X{to[0]:.6f} Y{to[1]:.6f} {centre}")
        sweep = side * 2 * math.asin(min(1.0, chord / 2 / radius))
        angle = math.atan2(begin[1] - cy, begin[0] - cx)
        fine += [
            (cx + radius * math.cos(angle + sweep * k / 100), cy + radius * math.sin(angle + sweep * k / 100))
            for k in range(1, 101)
        ]
    # in from the tool's side, a little against the way of the lap, so that the entry cuts no corner
    along = ((shape[1][0] - shape[0][0]) / 2, (shape[1][1] - shape[0][1]) / 2)
    side = 1 if code == "G41" else -1
    far = 20 / math.hypot(*along)
    begin = (middle[0] + far * (along[0] / 4 - side * along[1]), middle[1] + far * (along[1] / 4 + side * along[0]))
    return HEAD + f"G0 X{begin[0]:.4f} Y{begin[1]:.4f}\n{code} D1\n" + "\n".join(lines) + "\nG40 G1 X0 Y0\n", fine


def lap(text: str, diameter: float) -> LineString | None:
    """The path beside the lap, without its entry and leaving moves; None where the tool does not fit."""
    motion = compensated(text, diameter)
    if any(kind == "contour-too-tight" for kind, _ in faults(motion)):
        return None
    assert faults(motion) == []
    assert not (motion.flags & COMPENSATED).any()
    return LineString(points(motion, 3, len(motion) - 1))


def agree(path: LineString | None, contour: Polygon, outward: float) -> bool:
    """Whether the case can be compared; fails where it can and the two differ by more than 0.01 mm."""
    wanted = contour.buffer(outward, quad_segs=64)
    if wanted.geom_type != "Polygon" or wanted.is_empty or len(wanted.interiors):
        return False
    # where the tool is too large for an inside corner, the path crosses itself or there is none
    if path is None or not LineString([*path.coords[:-1]]).is_simple:
        return False
    ring = LineString(wanted.exterior.coords)
    assert farthest(path, ring) < 0.01
    assert farthest(ring, path) < 0.01
    return True


def farthest(corners: LineString, line: LineString) -> float:
    """How far the farthest corner of one line lies from the other, mm."""
    with np.errstate(invalid="ignore"):  # its older versions warn of numbers that come out right
        return float(shapely.distance(shapely.points(corners.coords), line).max())


CASES = [(seed, corners, dent) for seed, (corners, dent) in enumerate([(3, 0), (4, 20), (5, 30), (7, 30), (9, 20)] * 3)]


@pytest.mark.parametrize("side", ["outside", "inside"])
@pytest.mark.parametrize(("seed", "corners", "dent"), CASES)
def test_polygons(seed: int, corners: int, dent: float, side: str) -> None:
    shape = star(seed, corners, dent)
    compared = 0
    for turned in (False, True):
        way = shape[::-1] if turned else shape
        code = "G42" if (side == "outside") != turned else "G41"
        text, fine = program(way, [0.0] * corners, code)
        for radius in (0.1, 1.0, 3.0, 6.35):
            outward = radius if side == "outside" else -radius
            compared += agree(lap(text, 2 * radius), Polygon(fine), outward)
    assert compared >= 4


@pytest.mark.parametrize("side", ["outside", "inside"])
@pytest.mark.parametrize(("seed", "corners", "dent"), CASES)
def test_contours_with_arcs(seed: int, corners: int, dent: float, side: str) -> None:
    """Edges that bulge in or out: corners between lines and arcs and between arcs, of every kind."""
    pick = random.Random(1000 + seed)
    shape = star(seed, corners, dent / 2)
    compared = 0
    for turned in (False, True):
        way = shape[::-1] if turned else shape
        bulges = [pick.choice((0.0, pick.uniform(-0.6, 0.6))) for _ in range(corners)]
        code = "G42" if (side == "outside") != turned else "G41"
        text, fine = program(way, bulges, code)
        contour = Polygon(fine)
        assert contour.is_valid
        for radius in (0.2, 1.0, 2.5):
            outward = radius if side == "outside" else -radius
            compared += agree(lap(text, 2 * radius), contour, outward)
    assert compared >= 3


@pytest.mark.parametrize("code", ["G41", "G42"])
@pytest.mark.parametrize("seed", range(12))
def test_open_polylines(seed: int, code: str) -> None:
    """An open run of lines against the offset curve of the same side."""
    pick = random.Random(seed)
    run: list[Point] = [(0.0, 0.0)]
    for _ in range(8):
        heading = pick.uniform(-1.1, 1.1)
        far = pick.uniform(12, 30)
        run.append((run[-1][0] + far * math.cos(heading), run[-1][1] + far * math.sin(heading)))
    text = HEAD + f"G0 X-30 Y0\n{code} D1\n"
    text += "".join(f"G1 X{x:.6f} Y{y:.6f} F500\n" for x, y in run) + "G40 G1 X300 Y0\n"
    motion = compensated(text, 4.0)
    assert faults(motion) == []
    # the entry's tangent point is followed by an arc into the first move, or it is the first move's own start
    first = next(row for row in range(len(motion)) if motion.line[row] == 7)
    path = LineString(points(motion, first, len(motion) - 1))
    wanted = LineString(run).offset_curve(2.0 if code == "G41" else -2.0, quad_segs=64, join_style="round")
    assert farthest(wanted, path) < 0.01
    # the path begins with an arc round the first point, which the offset curve has not
    round_start = shapely.Point(run[0]).buffer(2.01)
    own = [at for at in path.coords if not round_start.contains(shapely.Point(at))]
    assert farthest(LineString(own), wanted) < 0.01
