"""Small tables for tests of the cutting room, made by hand: every column has a harmless default."""

from __future__ import annotations

import math
from typing import Any

import numpy as np

from gclint.columns import Column
from gclint.faults import Faults
from gclint.stock.contact import MIDDLE, MM, NO_BAND, NONE, SECTOR, Contact
from gclint.stock.contact import empty as empty_contact
from gclint.tables.engagement import SIDE, TIP, Engagement, Entries, Passes, Pieces
from gclint.tables.motion import LINE, Motion
from gclint.tables.setup import Controller, Hold, Machine, Setup, Spindle, Tool
from gclint.tables.timing import Timing

DTYPES = {
    "Floats": np.float64,
    "Floats32": np.float32,
    "Ints": np.int32,
    "Longs": np.int64,
    "Bytes": np.uint8,
    "Bits": np.uint16,
    "Column": np.int8,
}


def empty(table: type, rows: int, **columns: Any) -> dict[str, Any]:
    """Every column of a table class, zero where `columns` does not give it (a number is repeated)."""
    made: dict[str, Any] = {}
    for name, kind in table.__annotations__.items():
        dtype = DTYPES.get(str(kind))
        if dtype is not None:
            column: Column = np.broadcast_to(np.asarray(columns.get(name, 0)), (rows,)).astype(dtype)
            made[name] = column
    return made


def faults() -> Faults:
    return Faults(**empty(Faults, 0))


def motion(rows: int = 1, **columns: Any) -> Motion:
    made = {"line": np.arange(rows) + 1, "kind": LINE, "plane": 17, "cu": np.nan, "cv": np.nan, "length": 10.0}
    made |= {"feed": 1000.0, "speed": 10000.0, "tool": 1, "feed_line": 1, "speed_line": 1, "spindle": 1}
    values = empty(Motion, rows, **(made | columns))
    for name in ("event_kind", "event_line", "event_move", "event_value"):
        values[name] = values[name][:0]
    return Motion(**values, faults=faults(), stopped_at=0, stopped_because="", ended=True)


def timing(of: Motion) -> Timing:
    return Timing(reached=of.feed.copy(), peak=of.feed.copy(), seconds=np.ones(len(of)), dwell=0.0, assumed=())


def contact(ae: Any, ap: Any, radius: Any = 3.0, around: float = 90.0) -> Contact:
    """Profiles of level contact ae wide and ap deep, one for each row: from the rim at `around` degrees inward."""
    ae, ap, radius = np.broadcast_arrays(np.atleast_1d(ae), ap, radius)
    made = empty_contact(len(ae))
    for row, (wide, deep, r) in enumerate(zip(ae.tolist(), ap.tolist(), radius.tolist(), strict=True)):
        made.depth[row], made.edges[row], made.above[row], made.disc[row] = 0, NONE, NO_BAND, 0
        made.reach[row] = round(min(r, 100.0) / float(MM))
        if not (wide > 0 and deep > 0):
            continue
        last = around
        first = math.degrees(math.asin(max(-1.0, math.sin(math.radians(last)) - wide / r)))
        made.edges[row, :2] = round(first * 100), round(last * 100)
        met = (first < MIDDLE + SECTOR / 2) & (last > MIDDLE - SECTOR / 2)
        made.depth[row, met] = round(min(max(deep / float(MM), 1), 60000))
    return made


def engagement(rows: int = 1, radius: Any = 3.0, **columns: Any) -> Engagement:
    """One pass of `rows` pieces, one per move, each 5 mm long, 2 mm deep, 1 mm wide, with a tool of this radius."""
    made = {"move": np.arange(rows), "end": 1.0, "length": 5.0, "travel": 5.0, "ap": 2.0, "ae": 1.0, "angle": 60.0}
    made |= {"touch": TIP | SIDE, "depth": 2.0, "profile": np.arange(rows)}
    made |= columns
    whole = empty(Passes, 1, last_piece=rows - 1, tool=1, length=5.0 * rows)
    return Engagement(
        box=None,
        cell=0.1,
        cell_wanted=0.1,
        pieces=Pieces(**empty(Pieces, rows, **made)),
        contact=contact(np.broadcast_to(made["ae"], (rows,)), made["ap"], radius),
        entries=Entries(**empty(Entries, 0)),
        passes=Passes(**whole),
        cut=np.zeros((1, 1), np.float32),
        assumed=(),
        not_judged=(),
    )


def setup(*tools: Tool, material: object | None = None, **others: Any) -> Setup:
    values: dict[str, Any] = {
        "machine": Machine(),
        "spindle": Spindle(),
        "controller": Controller(),
        "tools": {tool.number: tool for tool in tools},
        "material": material,
        "stock": None,
        "z_zero": None,
        "dial": None,
        "hold": Hold(),
    }
    return Setup(**(values | others))
