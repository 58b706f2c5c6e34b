"""Turns a list of points into a Motion, without reading a program."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Any

import numpy as np

from gclint.faults import Faults
from gclint.stock.contact import MIDDLE, MM, NO_BAND, NONE, SHARE, Contact, empty
from gclint.tables.motion import ARC_CCW, ARC_CW, LINE, RAPID, Motion
from gclint.tables.setup import Controller, Hold, Machine, Setup, Spindle, Stock, Tool

Point = tuple[float, float, float]


class Path:
    """Moves one after another: path.rapid(...), path.line(...), path.arc(...); None keeps a coordinate."""

    def __init__(self, start: Point = (0.0, 0.0, 5.0), tool: int = 1, feed: float = 1000.0) -> None:
        self.at, self.tool, self.feed = start, tool, feed
        self.rows: list[dict[str, Any]] = []

    def _to(self, kind: int, x: float | None, y: float | None, z: float | None, **more: Any) -> Path:
        end = tuple(now if new is None else new for new, now in zip((x, y, z), self.at, strict=True))
        row = {"kind": kind, "plane": 17, "cu": math.nan, "cv": math.nan, "sweep": 0.0, "flags": 0, **more}
        row.setdefault("length", math.dist(self.at, end))
        row |= dict(zip(("x0", "y0", "z0", "x1", "y1", "z1"), (*self.at, *end), strict=True))
        row |= {"tool": self.tool, "feed": math.nan if kind == RAPID else self.feed}
        self.rows.append(row)
        self.at = end  # type: ignore[assignment]
        return self

    def rapid(self, x: float | None = None, y: float | None = None, z: float | None = None, **more: Any) -> Path:
        return self._to(RAPID, x, y, z, **more)

    def line(self, x: float | None = None, y: float | None = None, z: float | None = None, **more: Any) -> Path:
        return self._to(LINE, x, y, z, **more)

    def through(self, points: Sequence[Sequence[float]]) -> Path:
        for point in points:
            self.line(*point)
        return self

    def arc(self, centre: tuple[float, float], sweep: float, z: float | None = None, plane: int = 17) -> Path:
        """An arc about `centre` (on the plane's two axes, as Motion.cu and cv) through `sweep` degrees."""
        u, v, w = {17: (0, 1, 2), 18: (2, 0, 1), 19: (1, 2, 0)}[plane]
        radius = math.hypot(self.at[u] - centre[0], self.at[v] - centre[1])
        angle = math.atan2(self.at[v] - centre[1], self.at[u] - centre[0]) + math.radians(sweep)
        end = list(self.at)
        if abs(sweep) % 360:
            end[u], end[v] = centre[0] + radius * math.cos(angle), centre[1] + radius * math.sin(angle)
        if z is not None:
            end[2] = z
        length = math.hypot(radius * math.radians(abs(sweep)), end[w] - self.at[w])
        kind = ARC_CCW if sweep > 0 else ARC_CW
        return self._to(kind, *end, plane=plane, cu=centre[0], cv=centre[1], sweep=sweep, length=length)

    def motion(self) -> Motion:
        return columns(**{name: [row[name] for row in self.rows] for name in (self.rows[0] if self.rows else ())})


def columns(**given: Any) -> Motion:
    """A Motion from columns; those not given get a harmless value."""
    n = len(given.get("x0", ()))
    types: dict[str, Any] = {
        "kind": np.uint8,
        "plane": np.uint8,
        "spindle": np.int8,
        "tool": np.int32,
        "offset": np.uint16,
        "flags": np.uint16,
        "cycle": np.uint8,
    }
    types |= dict.fromkeys(("line", "feed_line", "speed_line", "tool_line"), np.int32)
    values: dict[str, Any] = {
        "line": np.arange(1, n + 1),
        "plane": 17,
        "kind": LINE,
        "sweep": 0,
        "tool": 1,
        "feed": 1000,
        "speed": 12000,
        "spindle": 1,
        "offset": 540,
    }
    names = [name for name in Motion.__slots__ if not name.startswith("event_")][: Motion.__slots__.index("event_kind")]
    values |= {"cu": np.nan, "cv": np.nan} | given
    table = {
        name: np.ascontiguousarray(np.broadcast_to(np.asarray(values.get(name, 0), types.get(name, np.float64)), (n,)))
        for name in names
    }
    none, far, whole = np.zeros(0, np.uint8), np.zeros(0), np.zeros(0, np.int32)
    faults = Faults(none, whole, whole.astype(np.int64), whole.astype(np.int64), far, far)
    return Motion(
        **table,
        event_kind=none,
        event_line=whole,
        event_move=whole,
        event_value=far,
        faults=faults,
        stopped_at=0,
        stopped_because="",
        ended=True,
    )


def setup(*tools: Tool, stock: Stock | None = None, **more: Any) -> Setup:
    return Setup(
        machine=Machine(), spindle=Spindle(), controller=Controller(), tools={tool.number: tool for tool in tools},
        material=None, stock=stock, z_zero=more.pop("z_zero", None), dial=None, hold=Hold(), **more,
    )  # fmt: skip


def box(x: tuple[float, float], y: tuple[float, float], depth: float = 20.0, top: float = 0.0) -> Stock:
    return Stock(x, y, top, top - depth, declared=True, placed=True)


def flat(diameter: float = 6.0, **more: Any) -> Tool:
    return Tool(1, "flat", diameter, **more)


def contact_of(
    runs: Sequence[Sequence[tuple[float, float, float]]], reach: float = 3.0, disc: Sequence[float] = (0, 0, 0, 0, 0)
) -> Contact:
    """One profile for each list of (first degree, last degree, depth in mm); at most two runs of each depth.

    disc: share of the disc that met material, then as shares of the drop the median, what came off under half and a
    tenth of the disc, and the most.
    """
    made = empty(len(runs))
    made.depth[:], made.edges[:], made.above[:] = 0, NONE, NO_BAND
    made.reach[:], made.disc[:] = min(65535, round(reach / MM)), np.round(np.asarray(disc) / SHARE)
    for row, each in enumerate(runs):
        levels = sorted({depth for _, _, depth in each})
        for band, level in enumerate(levels):
            inside = sorted((first, last) for first, last, depth in each if depth >= level)
            joined: list[list[float]] = []
            for first, last in inside:
                if joined and first <= joined[-1][1]:
                    joined[-1][1] = max(joined[-1][1], last)
                else:
                    joined.append([first, last])
            for run, (first, last) in enumerate(joined):
                made.edges[row, 4 * band + 2 * run : 4 * band + 2 * run + 2] = round(100 * first), round(100 * last)
                middle = (first <= MIDDLE) & (last >= MIDDLE)
                middle[int(min(23, ((first + last) / 2 + 90) // 7.5))] = True
                made.depth[row, middle] = min(65535, round(level / MM))
            if band:
                made.above[row, band - 1] = min(65534, round((levels[band - 1] + level) / 2 / MM))
    return made
