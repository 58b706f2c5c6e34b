"""The planner against a general time-optimal path library (toppra), on random paths under the same limits.

The library is given the path as a smooth curve: straight pieces and arcs, each corner replaced by the circle that the
declared deviation allows. It optimises over the whole curve on a grid; the planner works piece by piece.
"""

from __future__ import annotations

import logging
import math
from typing import Any

import numpy as np
import pytest
from numpy.typing import NDArray

from gclint.motion.feed_planning import plan_feed
from gclint.tables.setup import Axes, Controller, Hold, Machine, Setup, Spindle
from tests.motion.run import STATED, run

logging.getLogger("toppra").setLevel(logging.ERROR)
toppra = pytest.importorskip("toppra")
import toppra.algorithm as algorithm  # noqa: E402
import toppra.constraint as constraint  # noqa: E402
from toppra.interpolator import AbstractGeometricPath  # noqa: E402

Vector = NDArray[np.float64]
DEVIATION = 0.02
SLOWER, FASTER = 1.05, 0.99  # shares of the library's time the planner may take; its grid costs it the difference to 1


class Curve(AbstractGeometricPath):  # type: ignore[misc]
    """Pieces (length, start, first direction, normal, curvature), by path length; curvature 0: straight."""

    def __init__(self, pieces: list[tuple[float, Vector, Vector, Vector, float]]) -> None:
        self.pieces = pieces
        self.begins = np.concatenate(([0.0], np.cumsum([piece[0] for piece in pieces])))

    @property
    def path_interval(self) -> Vector:
        return np.array([0.0, self.begins[-1]])

    @property
    def dof(self) -> int:
        return 3

    @property
    def waypoints(self) -> None:
        return None

    def __call__(self, at: Any, order: int = 0) -> Vector:
        if np.ndim(at):
            return np.array([self(each, order) for each in at])
        row = int(np.clip(np.searchsorted(self.begins, at, side="right") - 1, 0, len(self.pieces) - 1))
        _, start, along, normal, bend = self.pieces[row]
        s = at - self.begins[row]
        if bend == 0:
            return (start + s * along, along, np.zeros(3))[order]
        c, n = math.cos(bend * s), math.sin(bend * s)
        return (
            start + (n * along + (1 - c) * normal) / bend,
            c * along + n * normal,
            bend * (c * normal - n * along),
        )[order]

    def curvature(self, at: float) -> float:
        row = int(np.clip(np.searchsorted(self.begins, at, side="right") - 1, 0, len(self.pieces) - 1))
        return self.pieces[row][4]


def fastest(curve: Curve, feed: float, a: tuple[float, float, float], norm: bool) -> float:
    """Seconds along the curve by the library, from rest to rest. feed in mm/s, a in mm/s2.

    `norm`: on arcs the whole acceleration, not that of each axis, is bound (a polygon of 32 sides about the circle);
    the library can only tell arcs by the position, so these are given a Z of 1.
    """

    def speeds(s: float) -> Vector:
        most = feed
        if norm and curve.curvature(s):
            most = min(most, math.sqrt(min(a) / curve.curvature(s)))
        share = np.maximum(np.abs(curve(s, 1)), 1e-4)
        return np.column_stack((-most * share, most * share))

    speed = constraint.JointVelocityConstraintVarying(speeds)
    limits: list[Any] = [speed, constraint.JointAccelerationConstraint(np.column_stack((-np.array(a), a)))]
    if norm:
        turns = np.linspace(0, 2 * math.pi, 32, endpoint=False)
        sides = np.column_stack((np.cos(turns), np.sin(turns), np.zeros(32)))
        limits.append(
            constraint.SecondOrderConstraint(
                lambda q, v, w: np.asarray(w), lambda q: sides, lambda q: np.full(32, min(a) if q[2] > 0.5 else 1e6), 3
            )
        )
    grid = np.concatenate(
        [
            begin + np.linspace(0, piece[0], max(30, min(300, int(piece[0] / 0.05))), endpoint=False)
            for begin, piece in zip(curve.begins, curve.pieces)
        ]
        + [[curve.begins[-1]]]
    )
    solver = algorithm.TOPPRA(limits, curve, gridpoints=grid, solver_wrapper="seidel")
    _, sd, _ = solver.compute_parameterization(0, 0)
    assert sd is not None
    return float(np.sum(2 * np.diff(grid) / (sd[1:] + sd[:-1])))


def rounded(points: list[Vector]) -> Curve:
    """A polyline whose corners are the circles that miss them by DEVIATION."""
    pieces = []
    at = points[0]
    for before, corner, after in zip(points, points[1:], points[2:]):
        one = (corner - before) / np.linalg.norm(corner - before)
        two = (after - corner) / np.linalg.norm(after - corner)
        turn = math.acos(float(np.clip(one @ two, -1, 1)))
        s = math.cos(turn / 2)
        r = DEVIATION * s / (1 - s)
        reach = r * math.tan(turn / 2)
        begin = corner - reach * one
        normal = two - (one @ two) * one
        pieces.append((float(np.linalg.norm(begin - at)), at, one, np.zeros(3), 0.0))
        pieces.append((r * turn, begin, one, normal / np.linalg.norm(normal), 1 / r))
        at = corner + reach * two
    last = points[-1] - at
    pieces.append((float(np.linalg.norm(last)), at, last / np.linalg.norm(last), np.zeros(3), 0.0))
    return Curve(pieces)


def planned(text: str, feed: float, a: tuple[float, float, float], first: int) -> float:
    machine = Machine(acceleration=Axes(*a), corner_deviation=DEVIATION)
    setup = Setup(machine, Spindle(), Controller(), {}, None, None, None, None, Hold())
    timing = plan_feed(run(STATED + f"F{feed * 60:.6f}\n" + text), setup)
    return float(timing.seconds[first:].sum())


@pytest.mark.parametrize("seed", range(5))
def test_random_polylines(seed: int) -> None:
    chance = np.random.default_rng(seed)
    a = (300.0, 200.0, 150.0)
    feed = float(chance.uniform(10, 80))
    points = [np.round(chance.uniform(0, 40, 3) * (1, 1, 0.3), 3)]
    while len(points) < 12:
        step = chance.normal(size=3) * (1, 1, 0.3)
        points.append(np.round(points[-1] + step / np.linalg.norm(step) * chance.uniform(1.5, 25), 3))
    text = "".join(f"G{n > 0:d} X{p[0]:.3f} Y{p[1]:.3f} Z{p[2]:.3f}\n" for n, p in enumerate(points))
    ours = planned(text, feed, a, 1)
    theirs = fastest(rounded(points), feed, a, norm=False)
    assert theirs * FASTER < ours < theirs * SLOWER


@pytest.mark.slow
@pytest.mark.parametrize("seed", range(5))
def test_random_chains_of_lines_and_arcs(seed: int) -> None:
    """Tangent to each other, so that no corner hides what the arcs do."""
    chance = np.random.default_rng(100 + seed)
    a = (250.0, 250.0, 250.0)
    feed = float(chance.uniform(20, 80))
    at, heading = np.zeros(3), 0.0
    text, pieces = "G0 X0 Y0 Z0\n", []
    for n in range(14):
        along = np.array([math.cos(heading), math.sin(heading), 0.0])
        if n % 2 == 0:
            length = float(chance.uniform(0.5, 20))
            pieces.append((length, at, along, np.zeros(3), 0.0))
            at = at + length * along
            text += f"G1 X{at[0]:.6f} Y{at[1]:.6f}\n"
            continue
        side = 1 if chance.random() < 0.5 else -1
        r, turn = float(np.exp(chance.uniform(-0.7, 2.3))), float(chance.uniform(0.3, 5.5))
        normal = side * np.array([-along[1], along[0], 0.0])
        pieces.append((r * turn, at + np.array([0, 0, 1.0]), along, normal, 1 / r))
        end = at + r * (math.sin(turn) * along + (1 - math.cos(turn)) * normal)
        text += f"G{3 if side > 0 else 2} X{end[0]:.6f} Y{end[1]:.6f} I{r * normal[0]:.6f} J{r * normal[1]:.6f}\n"
        at, heading = end, heading + side * turn
    ours, curve = planned(text, feed, a, 1), Curve(pieces)
    theirs = fastest(curve, feed, a, norm=True)
    assert theirs * FASTER < ours < theirs * SLOWER
    assert ours < fastest(curve, feed, a, norm=False) * SLOWER  # which may use two axes at once
