"""A second opinion on copies that shares no code with the model: a small reader of plain blocks, and columns of
material lowered by the tool at dense places along its way."""

from __future__ import annotations

import math
import re
from collections.abc import Callable
from dataclasses import dataclass, field

import numpy as np

WORD = re.compile(r"([A-Za-z])\s*([-+]?(?:[0-9]+\.?[0-9]*|\.[0-9]+))")
STEP = 0.04  # mm between places along the way
CELL = 0.06  # mm a wall may stand off
AXES = {17: (0, 1, 2), 18: (2, 0, 1), 19: (1, 2, 0)}  # of an arc: first, second, and the one along the helix

Height = Callable[[np.ndarray], np.ndarray]  # of the tool above its tip, by the squared distance from its axis


@dataclass
class Ran:
    """Feed moves as dense places [n, 3] in mm, and the feed, speed and place behind every block that moves."""

    places: list[np.ndarray] = field(default_factory=list)
    lines: list[int] = field(default_factory=list)  # of each move at feed, from 1
    states: dict[int, tuple[float, ...]] = field(default_factory=dict)  # by line, from 1

    @property
    def points(self) -> np.ndarray:
        return np.concatenate(self.places) if self.places else np.zeros((0, 3))


def ran(data: bytes) -> Ran:
    """Run a program of G0 to G3 (by I, J, K or R, in each plane), absolute or in increments."""
    made = Ran()
    unit, mode, plane, step, feed, speed = 1.0, 0, 17, False, math.nan, math.nan
    at = [math.nan, math.nan, math.nan]
    for number, raw in enumerate(re.split(rb"\r\n|\n|\r", data), 1):
        text = re.sub(r"\([^)]*\)|\([^)]*$|;.*", "", raw.decode("latin-1"))
        words = [(letter.upper(), float(value)) for letter, value in WORD.findall(text)]
        codes = [value for letter, value in words if letter == "G"]
        unit = 25.4 if 20 in codes else 1.0 if 21 in codes else unit
        step = True if 91 in codes else False if 90 in codes else step
        mode = next((int(code) for code in codes if code in (0, 1, 2, 3)), mode)
        plane = next((int(code) for code in codes if code in AXES), plane)
        values = {letter: value for letter, value in words if letter != "G"}
        feed, speed = values.get("F", feed), values.get("S", speed)
        if any(letter == "M" and value in (2, 30) for letter, value in words):
            break
        if {28, 30, 53} & set(codes):
            at = [math.nan, math.nan, math.nan]
            continue
        if not {"X", "Y", "Z", "I", "J", "K"} & set(values) or {4, 10, 92} & set(codes):
            continue
        end = [
            (values[axis] * unit + (at[n] if step else 0.0)) if axis in values else at[n]
            for n, axis in enumerate("XYZ")
        ]
        if mode and all(map(math.isfinite, at)):
            made.places.append(_along(at, end, mode, plane, values, unit))
            made.lines.append(number)
        at = end
        made.states[number] = (*at, mode, feed if mode else 0.0, speed)
    return made


def _along(a: list[float], b: list[float], mode: int, plane: int, values: dict[str, float], unit: float) -> np.ndarray:
    """Places along a move [n, 3]."""
    if mode == 1:
        n = max(1, math.ceil(math.dist(a, b) / STEP))
        t = np.linspace(0, 1, n + 1)[:, None]
        return np.array(a) + (np.array(b) - np.array(a)) * t
    u, v, w = AXES[plane]
    ccw = mode == 3
    if "R" in values:
        r, du, dv = abs(values["R"]) * unit, b[u] - a[u], b[v] - a[v]
        chord = math.hypot(du, dv)
        high = math.sqrt(max(r * r - chord * chord / 4, 0.0))
        side = 1 if ccw == (values["R"] > 0) else -1
        cu = (a[u] + b[u]) / 2 - side * dv / chord * high
        cv = (a[v] + b[v]) / 2 + side * du / chord * high
    else:
        cu, cv = a[u] + values.get("IJK"[u], 0) * unit, a[v] + values.get("IJK"[v], 0) * unit
    start, end = math.atan2(a[v] - cv, a[u] - cu), math.atan2(b[v] - cv, b[u] - cu)
    turn = (end - start) % (2 * math.pi) if ccw else -((start - end) % (2 * math.pi))
    if math.hypot(a[u] - b[u], a[v] - b[v]) < 1e-3:
        turn = 2 * math.pi if ccw else -2 * math.pi
    r0, r1 = math.hypot(a[u] - cu, a[v] - cv), math.hypot(b[u] - cu, b[v] - cv)
    t = np.linspace(0, 1, max(1, math.ceil(math.hypot(abs(turn) * r0, b[w] - a[w]) / STEP)) + 1)
    radius, angle = r0 + (r1 - r0) * t, start + turn * t
    made = np.empty((len(t), 3))
    made[:, u], made[:, v] = cu + radius * np.cos(angle), cv + radius * np.sin(angle)
    made[:, w] = a[w] + (b[w] - a[w]) * t
    return made


def lowest(points: np.ndarray, radius: float, at: np.ndarray, height: Height | None = None) -> np.ndarray:
    """[n] lowest Z that a tool (flat, or of that shape) reaches over places in plan [n, 2]; +inf where it never
    comes."""
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
            own = part[None, :, 2] + (height(off) if height is not None else 0.0)
            found[rows] = np.minimum(found[rows], np.where(off <= radius * radius, own, np.inf).min(axis=1))
    return found


def worst_difference(
    old: bytes, new: bytes, radius: float, count: int = 1500, seed: int = 1, height: Height | None = None
) -> float:
    """mm by which the surfaces of two programs differ at random places, most of them on and beside what is cut
    otherwise; walls off by a cell allowed for."""
    a, b = ran(old).points, ran(new).points
    rng = np.random.default_rng(seed)
    every = np.concatenate((a, b))
    _, first, times = np.unique(np.rint(every * 1e4).astype(np.int64), axis=0, return_index=True, return_counts=True)
    other = every[first[times == 1]]
    where = np.concatenate((every[rng.integers(0, len(every), count)],
                            other[rng.integers(0, len(other), count)] if len(other) else other))  # fmt: skip
    at = where[:, :2] + rng.uniform(-1.3 * radius, 1.3 * radius, (len(where), 2))
    around = [np.array((x, y)) * CELL for x in (-1, 0, 1) for y in (-1, 0, 1)]
    worst = 0.0
    for one, other in ((a, b), (b, a)):
        own = lowest(one, radius, at, height)
        fields = [lowest(other, radius, at + shift, height) for shift in around]
        low, high = np.min(fields, axis=0), np.max(fields, axis=0)
        with np.errstate(invalid="ignore"):
            off = np.nan_to_num(np.maximum(np.where(own < low, low - own, 0), np.where(own > high, own - high, 0)))
        worst = max(worst, float(off.max()))
    return worst
