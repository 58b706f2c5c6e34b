"""A made-up run of two tools, small enough to reckon by hand."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest

from gclint.faults import Faults
from gclint.run import Run, Tables
from gclint.stock.contact import empty as no_contact
from gclint.tables.cutting import Cutting, Effort, Loads, ToolWindows
from gclint.tables.engagement import Engagement, Entries, Passes, Pieces
from gclint.tables.finding import AssumedOut, Change, Checked, Finding, Found, Limits, NotJudged, SetWord
from gclint.tables.motion import Motion
from gclint.tables.program import Program
from gclint.tables.setup import Controller, DialMark, Hold, Machine, Setup, Spindle, Tool, Window
from gclint.tables.timing import Timing

TEXT = b"""G21 G90 G17 G94
T1 M6
M3 S18000
G0 X0 Y0 Z5
G1 Z-2 F200
G1 X40 F400
G2 X60 Y20 I0 J20
G0 Z5
T2 M6
G0 X10
G1 Z-1 F300
M30
"""
NAN = float("nan")


def empty(made: type, /, **columns: Any) -> Any:
    """A table of arrays: the columns given, all others of the same length filled with zeros."""
    length = len(next(iter(columns.values())))
    known = {name: value if hasattr(value, "__slots__") else np.asarray(value) for name, value in columns.items()}
    return made(**{name: known.get(name, np.zeros(length)) for name in made.__annotations__})


@pytest.fixture
def tables() -> Tables:
    lines = np.array([0, *(np.flatnonzero(np.frombuffer(TEXT, np.uint8) == 10) + 1)])
    nothing = Faults(*(np.zeros(0) for _ in range(6)))
    program = _program(lines, nothing)
    motion = _motion(nothing)
    pieces = empty(
        Pieces,
        move=np.array([1, 2, 3, 6], np.int32), start=np.array([0.5, 0, 0, 0.8], np.float32),
        end=np.ones(4, np.float32), length=np.array([2, 40, 31.416, 1], np.float32),
        removed=np.array([16, 240, 190, 8], np.float32), ap=np.array([2, 2, 2, 1], np.float32),
        ae=np.array([3, 3, 1.5, 3], np.float32), depth=np.array([2, 2, 2, 1], np.float32),
    )
    entries = empty(
        Entries,
        kind=np.array([0, 0], np.uint8), first_move=np.array([1, 6], np.int32), last_move=np.array([1, 6], np.int32),
        solid=np.array([2, 1], np.float32), slope=np.array([90, 90], np.float32), feed=np.array([200, 300], np.float32),
        z_feed=np.array([200, 300], np.float32),
    )
    passes = empty(
        Passes,
        first_piece=np.array([0, 3]), last_piece=np.array([2, 3]), tool=np.array([1, 2], np.int32),
        length=np.array([73.416, 1], np.float32), ap=np.array([2, 1], np.float32), ae=np.array([3, 3], np.float32),
        lowest=np.array([-2, -1], np.float32), removed=np.array([446, 8], np.float32),
    )
    cut = np.zeros((1, 1), np.float32)
    engagement = Engagement(None, 0.1, 0.1, pieces, no_contact(1), entries, passes, cut, (), ())
    loads = empty(
        Loads,
        operation=np.array([4, 0, 1, 4], np.uint8), fz=np.array([NAN, 0.0075, 0.0075, NAN]),
        h_ex=np.array([NAN, 0.0075, 0.0065, NAN]), h_thick=np.array([NAN, 0.0075, 0.0065, NAN]),
        chip_low=np.array([NAN, 0.042, 0.042, NAN]), chip_high=np.array([NAN, 0.1, 0.1, NAN]),
        chip_judged=np.array([0, 1, 1, 0], np.uint8),
        edge_speed=np.array([264.0, 264, 264, NAN]), true_speed=np.array([26500.0, 26500, 26500, NAN]),
        effort=empty(
            Effort,
            force_mean=np.array([NAN, 1.0, 2.0, NAN]),
            force_low=np.array([NAN, 2.0, 3.0, NAN]), force_high=np.array([NAN, 8.0, 7.0, NAN]),
            power_low=np.array([1.0, 4.0, 5.0, NAN]), power_high=np.array([2.0, 12.0, 11.0, NAN]),
            bend_per_newton=np.array([NAN, 0.001, 0.002, NAN]), stress_per_newton=np.array([NAN, 10.0, 10.0, NAN]),
        ),
    )
    window = Window(0.042, 0.1, "mm", "practice", "workshop habit")
    windows = ToolWindows({"slot": window}, None, None, None, None, None, None, None, None)
    cutting = Cutting(loads, {1: windows}, np.array([26500.0] * 5 + [NAN] * 2), ("F",), (), ())
    setup = Setup(
        machine=Machine(), controller=Controller(), material=None, stock=None, z_zero=None, dial="F", hold=Hold(),
        spindle=Spindle("dial", dial=(DialMark("A", 9500, None), DialMark("F", 26500, None))),
        tools={1: Tool(1, "flat", 3.175, "eighth down-cut", 2, helix="down-cut")}, sources=("job.toml", "shop.toml"),
    )
    seconds = motion.length / np.where(np.isfinite(motion.feed), motion.feed, 5000) * 60
    timing = Timing(motion.feed, motion.feed, seconds, 3.0, ())
    return Tables(program, motion, setup, timing, engagement, cutting)


def _program(lines: Any, faults: Faults) -> Program:
    values = {name: np.zeros(0, np.int32) for name in Program.__dataclass_fields__}
    return Program(**{**values, "name": "tide-dial.nc", "data": TEXT, "line_start": lines, "faults": faults})


def _motion(faults: Faults) -> Motion:
    values: dict[str, Any] = {name: np.zeros(7) for name in Motion.__dataclass_fields__}
    values |= {name: np.zeros(0) for name in values if name.startswith("event_")}
    values |= {
        "line": np.array([4, 5, 6, 7, 8, 10, 11], np.int32),
        "kind": np.array([0, 1, 1, 3, 0, 0, 1], np.uint8),
        "plane": np.full(7, 17, np.uint8),
        "x0": np.array([NAN, 0, 0, 40, 60, 60, 10]), "x1": np.array([0, 0, 40, 60, 60, 10, 10.0]),
        "y0": np.array([NAN, 0, 0, 0, 20, 20, 20.0]), "y1": np.array([0, 0, 0, 20, 20, 20, 20.0]),
        "z0": np.array([NAN, 5, -2, -2, -2, 5, 5]), "z1": np.array([5, -2, -2, -2, 5, 5, -1.0]),
        "cu": np.array([NAN, NAN, NAN, 40, NAN, NAN, NAN]), "cv": np.array([NAN, NAN, NAN, 20, NAN, NAN, NAN]),
        "sweep": np.array([0, 0, 0, 90.0, 0, 0, 0]),
        "length": np.array([NAN, 7, 40, 31.416, 7, 50, 6]),
        "feed": np.array([NAN, 200, 400, 400, NAN, NAN, 300]), "speed": np.full(7, 18000.0),
        "tool": np.array([1, 1, 1, 1, 1, 2, 2], np.int32), "flags": np.zeros(7, np.uint16),
        "faults": faults, "stopped_at": 0, "stopped_because": "", "ended": True,
    }
    return Motion(**values)


def finding(rule: str = "chip-too-thin", grade: str = "change", **other: Any) -> Finding:
    values: dict[str, Any] = {
        "rule": rule, "grade": grade, "line": 6, "last_line": 7, "lines": (6, 7), "worst_line": 6, "column": 8,
        "count": 2, "tool": 1, "found": Found("chip thickness", 0.0075, "mm"),
        "window": Limits(0.042, 0.1, "mm", "practice", "workshop habit"),
        "happens": "The tooth rubs instead of cutting; the material warms and melts.",
        "change": Change("Feed faster.", (SetWord(6, "F", 400, 2226),)), **other,
    }
    return Finding(**values)


@pytest.fixture
def make_finding() -> Any:
    return finding


@pytest.fixture
def make_run(tables: Tables) -> Any:
    def make(*findings: Finding, path: str = "tide-dial.nc", units: str = "mm") -> Run:
        from gclint.digest import summary

        checked = Checked(
            path=path, lines=12, findings=findings,
            not_judged=(
                NotJudged(
                    "cuts-table", "The tool cuts into the table",
                    "the blank's thickness: --stock, or [stock] in job.toml", 1,
                ),
            ),
            assumed=(AssumedOut("stock top", "Z 0 (work zero)", "no stock is declared"),),
            tools=summary.tool_rows(tables), extent_mm=summary.extent(tables.motion), units=units,
            time_s=summary.total_time(tables.motion, tables.timing), fingerprint="sha256:" + "3f" * 32,
            texts=dict(enumerate(TEXT.decode().splitlines(), 1)),
        )
        return Run(checked, tables, "change")

    return make
