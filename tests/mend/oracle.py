"""A second opinion on copies that shares no code with the model: a small reader of plain blocks, and columns of
material lowered by the tool at dense places along its way."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass, field

import numpy as np

WORD = re.compile(r"([A-Za-z])\s*([-+]?[0-9]*\.?[0-9]+)")
STEP = 0.04  # mm between places along the way
CELL = 0.06  # mm a wall may stand off


@dataclass
class Ran:
    """Feed moves as dense places [n, 3] in mm, and the feed, speed and place behind every block that moves."""

    places: list[np.ndarray] = field(default_factory=list)
    states: dict[int, tuple[float, ...]] = field(default_factory=dict)  # by line, from 1

    @property
    def points(self) -> np.ndarray:
        return np.concatenate(self.places) if self.places else np.zeros((0, 3))


def ran(data: bytes) -> Ran:
    """Run a program of G0 to G3 with I and J, absolute, in one unit."""
    made = Ran()
    unit, mode, feed, speed = 1.0, 0, math.nan, math.nan
    at = [math.nan, math.nan, math.nan]
    for number, raw in enumerate(re.split(rb"\r\n|\n|\r", data), 1):
        text = re.sub(r"\([^)]*\)|;.*", "", raw.decode("latin-1"))
        words = [(letter.upper(), float(value)) for letter, value in WORD.findall(text)]
        codes = [value for letter, value in words if letter == "G"]
        unit = 25.4 if 20 in codes else 1.0 if 21 in codes else unit
        mode = next((int(code) for code in codes if code in (0, 1, 2, 3)), mode)
        values = {letter: value for letter, value in words if letter != "G"}
        feed, speed = values.get("F", feed), values.get("S", speed)
        if not {"X", "Y", "Z", "I", "J"} & set(values) or {4, 28} & set(codes):
            continue
        end = [values[axis] * unit if axis in values else at[n] for n, axis in enumerate("XYZ")]
        if mode and all(map(math.isfinite, at)):
            made.places.append(_along(at, end, mode, values.get("I", 0) * unit, values.get("J", 0) * unit))
        at = end
        made.states[number] = (*at, mode, feed if mode else 0.0, speed)
    return made


def _along(a: list[float], b: list[float], mode: int, i: float, j: float) -> np.ndarray:
    if mode == 1:
        n = max(1, math.ceil(math.dist(a, b) / STEP))
        t = np.linspace(0, 1, n + 1)[:, None]
        return np.array(a) + (np.array(b) - np.array(a)) * t
    cx, cy = a[0] + i, a[1] + j
    start, end = math.atan2(a[1] - cy, a[0] - cx), math.atan2(b[1] - cy, b[0] - cx)
    turn = (end - start) % (2 * math.pi) if mode == 3 else -((start - end) % (2 * math.pi))
    if math.hypot(a[0] - b[0], a[1] - b[1]) < 1e-3:
        turn = 2 * math.pi if mode == 3 else -2 * math.pi
    radius = math.hypot(i, j)
    n = max(1, math.ceil(abs(turn) * radius / STEP))
    t = np.linspace(0, 1, n + 1)
    angle = start + turn * t
    return np.stack((cx + radius * np.cos(angle), cy + radius * np.sin(angle), a[2] + (b[2] - a[2]) * t), axis=1)


def lowest(points: np.ndarray, radius: float, at: np.ndarray) -> np.ndarray:
    """[n] lowest Z that a flat tool reaches over places in plan [n, 2]; +inf where it never comes."""
    found = np.full(len(at), np.inf)
    for k in range(0, len(points), 500):
        part = points[k : k + 500]
        near = (
            (at[:, 0] > part[:, 0].min() - radius)
            & (at[:, 0] < part[:, 0].max() + radius)
            & (at[:, 1] > part[:, 1].min() - radius)
            & (at[:, 1] < part[:, 1].max() + radius)
        )
        rows = np.flatnonzero(near)
        if len(rows):
            off = (at[rows, None, 0] - part[None, :, 0]) ** 2 + (at[rows, None, 1] - part[None, :, 1]) ** 2
            z = np.where(off <= radius * radius, part[None, :, 2], np.inf).min(axis=1)
            found[rows] = np.minimum(found[rows], z)
    return found


def worst_difference(old: bytes, new: bytes, radius: float, count: int = 1500, seed: int = 1) -> float:
    """mm by which the surfaces of two programs differ at random places on and beside their ways, walls off by a cell
    allowed for."""
    a, b = ran(old).points, ran(new).points
    rng = np.random.default_rng(seed)
    every = np.concatenate((a, b))
    at = every[rng.integers(0, len(every), count), :2] + rng.uniform(-1.3 * radius, 1.3 * radius, (count, 2))
    around = [np.array((x, y)) * CELL for x in (-1, 0, 1) for y in (-1, 0, 1)]
    worst = 0.0
    for one, other in ((a, b), (b, a)):
        own = lowest(one, radius, at)
        fields = [lowest(other, radius, at + shift) for shift in around]
        low, high = np.min(fields, axis=0), np.max(fields, axis=0)
        with np.errstate(invalid="ignore"):
            off = np.nan_to_num(np.maximum(np.where(own < low, low - own, 0), np.where(own > high, own - high, 0)))
        worst = max(worst, float(off.max()))
    return worst
