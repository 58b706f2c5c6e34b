"""What a tool meets, found from its places alone: no field, no cells, no code of the sweep.

A program is so many places of the tip, one every few hundredths of a millimetre. Whether a point of the stock is still
there is asked of every place so far: it is gone where some place had the tool's body over it.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from gclint.columns import Bools, Floats
from gclint.tables.motion import ARC_CW, Motion
from gclint.tables.setup import Tool

STEP = 0.02  # mm between two places
ANGLES = np.radians(np.arange(-90, 90, 0.25) + 0.125)


def height(tool: Tool, r: Floats) -> Floats:
    """The tool's surface above its tip at a distance from its axis, mm; infinite outside it."""
    radius = tool.diameter / 2
    corner = {"ball": radius, "bull-nose": tool.corner_radius or 0.0}.get(tool.shape, 0.0)
    if tool.shape == "v":
        assert tool.angle is not None
        tip = (tool.tip_diameter or 0.0) / 2
        high = np.maximum(0.0, r - tip) / math.tan(math.radians(tool.angle / 2))
    else:
        beyond = np.clip(r - (radius - corner), 0.0, corner)
        high = corner - np.sqrt(np.maximum(0.0, corner**2 - beyond**2))
    return np.where(r <= radius, high, np.inf)


@dataclass(frozen=True)
class Trace:
    """Places of the tip in order: x, y, z [n], the move of each and the share of the move that is behind it."""

    x: Floats
    y: Floats
    z: Floats
    move: Floats
    share: Floats

    def until(self, move: int, share: float) -> Trace:
        """The places up to a share of a move."""
        so_far = (self.move < move) | ((self.move == move) & (self.share <= share + 1e-9))
        return Trace(*(getattr(self, name)[so_far] for name in ("x", "y", "z", "move", "share")))


def trace(motion: Motion, step: float = STEP) -> Trace:
    """Lines and arcs about Z of a Motion, from its columns."""
    parts = []
    for row in range(len(motion)):
        length = float(motion.length[row])
        share = np.linspace(0.0, 1.0, max(2, math.ceil(length / step) + 1))
        z = motion.z0[row] + share * (motion.z1[row] - motion.z0[row])
        if motion.kind[row] >= ARC_CW:
            dx, dy = motion.x0[row] - motion.cu[row], motion.y0[row] - motion.cv[row]
            angle = math.atan2(dy, dx) + share * math.radians(motion.sweep[row])
            x = motion.cu[row] + math.hypot(dx, dy) * np.cos(angle)
            y = motion.cv[row] + math.hypot(dx, dy) * np.sin(angle)
        else:
            x = motion.x0[row] + share * (motion.x1[row] - motion.x0[row])
            y = motion.y0[row] + share * (motion.y1[row] - motion.y0[row])
        parts.append((x, y, z, np.full(len(share), row), share))
    return Trace(*(np.concatenate(each) for each in zip(*parts, strict=True)))


def surface(tool: Tool, places: Trace, x: Floats, y: Floats, box: tuple[float, float, float, float]) -> Floats:
    """Z of the stock's surface (its top is 0) at points after these places; -inf outside the blank."""
    z = np.zeros(len(x))
    radius = tool.diameter / 2
    for begin in range(0, len(x), 64):
        part = slice(begin, begin + 64)
        px, py = x[part], y[part]
        near = (places.x > px.min() - radius) & (places.x < px.max() + radius)
        near &= (places.y > py.min() - radius) & (places.y < py.max() + radius)
        r = np.hypot(px[:, None] - places.x[near], py[:, None] - places.y[near])
        if r.size:
            z[part] = np.minimum(0.0, (places.z[near] + height(tool, r)).min(axis=1))
    outside = (x < box[0]) | (x > box[1]) | (y < box[2]) | (y > box[3])
    return np.where(outside, -np.inf, z)


@dataclass(frozen=True)
class Met:
    """What the rim meets at one place: degrees from the travel (left positive), depth taken off there, reach in mm."""

    degrees: Floats
    depth: Floats
    reach: float

    def arc(self, deeper: float = 0.01) -> float:
        return float((self.depth > deeper).sum() * 0.25)

    def width(self, deeper: float = 0.01) -> float:
        inside = self.depth > deeper
        return float(self.reach * (np.cos(np.radians(self.degrees)) * inside).sum() * math.radians(0.25))

    def cosine(self, deeper: float = 0.01) -> float:
        inside = self.depth > deeper
        return float(np.cos(np.radians(self.degrees))[inside].max(initial=0.0))


def met(tool: Tool, places: Trace, heading: float, box: tuple[float, float, float, float]) -> Met:
    """What the tool's rim meets just ahead of the last of these places; heading: direction of travel, radians.

    Of a flat tool the rim itself is asked; of another shape every radius of it, and the highest place that touches
    counts.
    """
    x, y, z = places.x[-1], places.y[-1], places.z[-1]
    before = Trace(*(getattr(places, name)[:-1] for name in ("x", "y", "z", "move", "share")))
    radius = tool.diameter / 2
    if tool.shape == "flat":
        ahead = radius + 1e-3
        top = surface(tool, before, x + ahead * np.cos(heading + ANGLES), y + ahead * np.sin(heading + ANGLES), box)
        return Met(np.degrees(ANGLES), np.where(top > z, np.minimum(top, 0) - z, 0.0), radius)
    angles = ANGLES[2::4]
    depth = np.zeros(len(angles))
    for r in np.append(np.linspace(radius / 120, radius * (1 - 1e-6), 120), radius * (1 + 1e-4)):
        wall = r > radius
        own = z + float(height(tool, np.array([min(r, radius)]))[0])
        top = surface(tool, before, x + r * np.cos(heading + angles), y + r * np.sin(heading + angles), box)
        touches = top > own + 1e-5
        depth[touches] = np.maximum(depth[touches], np.minimum(top[touches], 0) - z if wall else own - z)
    depth = np.repeat(depth, 4)
    high = float(depth.max())
    return Met(np.degrees(ANGLES), depth, _radius_at(tool, high))


def _radius_at(tool: Tool, high: float) -> float:
    r = np.linspace(0, tool.diameter / 2, 2001)
    return float(r[height(tool, r) <= high + 1e-9].max(initial=0.0))


def under(tool: Tool, start: Trace, end: Trace, box: tuple[float, float, float, float]) -> tuple[float, Floats]:
    """(share of the disc under the last place that came off between two times, the depths taken off there)."""
    radius = tool.diameter / 2
    grid = np.arange(-radius + radius / 60, radius, radius / 30)
    dx, dy = (each.ravel() for each in np.meshgrid(grid, grid))
    inside = np.hypot(dx, dy) < radius
    x, y = end.x[-1] + dx[inside], end.y[-1] + dy[inside]
    gone = surface(tool, start, x, y, box) - surface(tool, end, x, y, box)
    gone = np.nan_to_num(gone, nan=0.0)
    return float((gone > 1e-3).mean()), gone


def volume(tool: Tool, places: Trace, box: tuple[float, float, float, float], cell: float = 0.05) -> float:
    """mm3 gone after these places, over fine square columns."""
    x = np.arange(box[0] + cell / 2, box[1], cell)
    y = np.arange(box[2] + cell / 2, box[3], cell)
    field = np.zeros((len(y), len(x)))
    radius = tool.diameter / 2
    for px, py, pz in zip(places.x, places.y, places.z, strict=True):
        if pz >= 0:
            continue
        columns = slice(*np.searchsorted(x, [px - radius, px + radius]))
        rows = slice(*np.searchsorted(y, [py - radius, py + radius]))
        r = np.hypot(x[columns][None, :] - px, y[rows][:, None] - py)
        np.minimum(field[rows, columns], pz + height(tool, r), out=field[rows, columns])
    return float(-field.sum() * cell * cell)


def steady(values: Floats, most: float) -> Bools:
    """Whether each row of values stays within `most`."""
    found: Bools = values.max(axis=-1) - values.min(axis=-1) <= most
    return found
