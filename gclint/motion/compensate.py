"""Cutter compensation: moves under G41 and G42 become the path of the tool's centre."""

from __future__ import annotations

from dataclasses import fields, replace
from typing import Any

import numpy as np

from gclint.columns import Bools, Column, Floats, Longs
from gclint.faults import CODE, Faults
from gclint.problem import NotBuilt
from gclint.tables.motion import (
    ARC_CCW,
    ARC_CW,
    COMPENSATED,
    EVENT,
    HOME,
    INVERSE_TIME,
    MACHINE,
    PROBE,
    RIGHT,
    X_WORD,
    Y_WORD,
    Beside,
    Motion,
)
from gclint.tables.program import Program
from gclint.tables.setup import Assumed, Setup

# What the kernel calls wrong, as faults: (kind, what `a` is).
WRONG = (
    ("none", "radius"),
    ("corner-refused", "radius"),
    ("contour-too-tight", "radius"),
    ("contour-too-tight", "radius"),
    ("entry-too-short", "radius"),
    ("compensation-refused", "code"),
    ("compensation-refused", "code"),
)
NOT_FOLLOWED = MACHINE | HOME | PROBE  # moves that no contour can hold


def compensate(motion: Motion, setup: Setup, program: Program) -> Motion:
    """The same motion with the tool's centre beside the contours of G41 and G42, as the controller of `setup` runs it.

    Arcs round outside corners are added as moves of the line that follows them. What D names is looked up in
    `setup.diameter_offsets`, then among the tools by number; without a D it is the tool in the spindle. Moves whose
    real path is not known keep their flag COMPENSATED; the faults say why. Never raises for what a program says.
    """
    flagged = motion.flags & COMPENSATED != 0
    if not flagged.any():
        return motion
    try:
        from gclint.motion.tool_path import Path
    except ImportError as error:
        raise NotBuilt("gclint.motion.tool_path") from error
    radius, unresolved, assumed = _radii(motion, setup, flagged)
    given: dict[str, Column] = {
        "kind": motion.kind, "x0": motion.x0, "y0": motion.y0, "x1": motion.x1, "y1": motion.y1,
        "cu": motion.cu, "cv": motion.cv, "radius": radius,
        "named": (motion.flags & (X_WORD | Y_WORD)).astype(np.uint8) // X_WORD,
    }  # fmt: skip
    made: dict[str, Column] = {
        "sx": motion.x0.copy(), "sy": motion.y0.copy(), "ex": motion.x1.copy(), "ey": motion.y1.copy(),
        "sweep": motion.sweep.copy(), "corner": np.zeros(len(motion)),
        "wrong": np.zeros(len(motion), np.uint8), "room": np.full(len(motion), np.nan),
    }  # fmt: skip
    meets = setup.controller.compensation_rules != "report"
    Path(given, made, meets, setup.controller.resolution / 2).follow()
    unknown = (flagged & ~np.isfinite(radius)) | (made["wrong"] != 0)
    # a move straight up or down stands where the one before it ends
    upright = flagged & (motion.sweep == 0) & (motion.x0 == motion.x1) & (motion.y0 == motion.y1)
    unknown |= upright & unknown[np.maximum.accumulate(np.where(upright, 0, np.arange(len(motion))))]
    faults, rows, order = _faults(motion, radius, made, unresolved, program)
    moved = _assembled(motion, made, unknown)
    beside = _beside(moved.beside, motion, rows, order)
    return replace(moved, faults=faults, beside=beside, assumed=(*motion.assumed, *assumed))


def _beside(beside: Beside | None, motion: Motion, rows: Longs, order: Longs) -> Beside | None:
    """The places of the faults as they lie now: those of `motion` and one for each of the moves `rows`, in `order`."""
    if beside is None or motion.beside is None or not len(rows):
        return beside
    lines = np.concatenate((beside.fault_line, motion.beside.line[rows]))[order]
    now = np.argsort(order)
    return replace(beside, fault_line=lines, fault_text={int(now[r]): text for r, text in beside.fault_text.items()})


def _radii(motion: Motion, setup: Setup, flagged: Bools) -> tuple[Floats, list[tuple[int, float]], list[Assumed]]:
    """[moves] signed radius, mm: above 0 with the tool to the left, 0 not compensated, NaN not known.

    Also the first move of each D whose diameter is not known, with that D, and what was taken for granted.
    """
    rows = np.flatnonzero(flagged)
    on = np.flatnonzero(motion.event_kind == EVENT["compensation-on"])
    at = np.searchsorted(motion.event_move[on], rows, side="right") - 1
    index = np.full(len(rows), np.nan)
    index[at >= 0] = motion.event_value[on[at[at >= 0]]]
    key, tools = np.where(np.isnan(index), -1.0, index), motion.tool[rows]
    change = np.ones(len(rows), bool)
    change[1:] = (key[1:] != key[:-1]) | (tools[1:] != tools[:-1])
    runs = np.flatnonzero(change)
    of_run = np.empty(len(runs))
    unresolved: dict[float, int] = {}
    assumed: dict[Assumed, None] = {}
    for n, first in enumerate(runs.tolist()):
        named, tool = float(index[first]), int(motion.tool[rows[first]])
        of_run[n], taken = _diameter(named, tool, setup)
        if np.isnan(of_run[n]):
            unresolved.setdefault(named if named == named else -1.0, int(rows[first]))
        elif taken and len(assumed) < 100:
            assumed[taken] = None
    radius = np.zeros(len(motion))
    found = of_run[np.cumsum(change) - 1] / 2
    found[(motion.plane[rows] != 17) | (motion.flags[rows] & NOT_FOLLOWED != 0)] = np.nan
    radius[rows] = np.where(motion.flags[rows] & RIGHT != 0, -found, found)
    return radius, [(row, named if named >= 0 else np.nan) for named, row in unresolved.items()], list(assumed)


def _diameter(named: float, tool: int, setup: Setup) -> tuple[float, Assumed | None]:
    """mm (NaN: not known) of a D word (NaN: none) with this tool in the spindle, and what is thereby assumed."""
    if np.isnan(named):
        if (own := setup.tools.get(tool)) is None:
            return np.nan, None
        because = "G41 or G42 with no D uses the tool in the spindle (NIST RS274/NGC, section 3.5.10)"
        return own.diameter, Assumed("cutter compensation", f"{own.diameter:g} mm, {own.called}", because)
    number = int(named)
    what = f"D{number}"
    if number in setup.diameter_offsets:
        return setup.diameter_offsets[number], None
    if number == 0:
        return 0.0, Assumed(what, "no shift: the path as programmed", "D0 names no tool")
    if (own := setup.tools.get(number)) is None:
        return np.nan, None
    return own.diameter, Assumed(
        what, f"the whole diameter of {own.called}, {own.diameter:g} mm", "`diameter_offsets` in shop.toml does not say"
    )


def _assembled(motion: Motion, made: dict[str, Column], unknown: Bools) -> Motion:
    """The table with new ends, and a row before each move that begins with an arc round a corner."""
    corner = made["corner"] > 0
    columns = {name: getattr(motion, name) for name in _MOVE_COLUMNS}
    columns["flags"] = np.where(unknown, motion.flags | COMPENSATED, motion.flags & ~np.uint16(COMPENSATED))
    columns["x0"], columns["y0"], columns["x1"], columns["y1"] = made["sx"], made["sy"], made["ex"], made["ey"]
    columns["sweep"] = made["sweep"]
    beside = motion.beside
    if corner.any():
        times = 1 + corner.astype(np.uint8)
        own = np.cumsum(times, dtype=np.int64) - 1  # where each old row lies now
        for name, column in columns.items():
            columns[name] = np.repeat(column, times)
        rows = np.flatnonzero(corner)
        _add_corners(columns, motion, made, rows, own[rows] - 1, own)
        place = np.concatenate(([0], own + 1))[motion.event_move].astype(np.int32)  # an arc comes behind the event
        if beside is not None:
            beside = replace(
                beside, line=np.repeat(beside.line, times), feed_line=np.repeat(beside.feed_line, times)
            )
    else:
        times, place = None, motion.event_move
    columns["length"] = _lengths(columns, columns["length"])
    if (columns["flags"] & INVERSE_TIME).any():
        source = np.arange(len(motion)) if times is None else np.repeat(np.arange(len(motion)), times)
        whole = np.bincount(source, columns["length"], len(motion))
        with np.errstate(divide="ignore", invalid="ignore"):
            scale = np.where(motion.length > 0, whole / motion.length, 1.0)[source]
        # G93: the move and its corner together take the time that was given
        columns["feed"] = np.where(columns["flags"] & INVERSE_TIME != 0, columns["feed"] * scale, columns["feed"])
    moves: dict[str, Any] = columns
    return replace(motion, **moves, event_move=place, beside=beside)


_MOVE_COLUMNS = [f.name for f in fields(Motion)][: [f.name for f in fields(Motion)].index("event_kind")]


def _add_corners(
    columns: dict[str, Column], motion: Motion, made: dict[str, Column], rows: Longs, arcs: Longs, own: Longs
) -> None:
    """Fill the arcs, rows as their moves so far: round the programmed corner, at the height of the move behind."""
    # A tool that turns right round an outside corner has the contour on its right.
    left = motion.flags[rows] & RIGHT == 0
    angle = np.radians(made["corner"][rows]) * np.where(left, 1.0, -1.0)
    x, y = made["sx"][rows] - motion.x0[rows], made["sy"][rows] - motion.y0[rows]
    columns["x0"][arcs] = motion.x0[rows] + x * np.cos(angle) - y * np.sin(angle)
    columns["y0"][arcs] = motion.y0[rows] + x * np.sin(angle) + y * np.cos(angle)
    columns["x1"][arcs], columns["y1"][arcs], columns["z1"][arcs] = made["sx"][rows], made["sy"][rows], motion.z0[rows]
    columns["cu"][arcs], columns["cv"][arcs] = motion.x0[rows], motion.y0[rows]
    columns["sweep"][arcs] = np.where(left, -1.0, 1.0) * made["corner"][rows]
    columns["kind"][arcs] = np.where(left, ARC_CW, ARC_CCW)
    columns["plane"][arcs] = 17
    columns["flags"][arcs] &= ~np.uint16(COMPENSATED)


def _lengths(columns: dict[str, Column], old: Floats) -> Floats:
    """Along the path, mm; an axis that is unknown and does not move adds nothing, as before."""
    dx, dy, dz = (columns[f"{axis}1"] - columns[f"{axis}0"] for axis in "xyz")
    np.square(dx, out=dx)
    dx += np.square(dy, out=dy)
    rows = np.flatnonzero(columns["sweep"])
    cu, cv = columns["cu"][rows], columns["cv"][rows]
    radius = (
        np.hypot(columns["x0"][rows] - cu, columns["y0"][rows] - cv)
        + np.hypot(columns["x1"][rows] - cu, columns["y1"][rows] - cv)
    ) / 2
    dx[rows] = np.square(radius * np.radians(np.abs(columns["sweep"][rows])))
    dz[np.isnan(dz)] = 0.0
    dx += np.square(dz, out=dz)
    length: Floats = np.sqrt(dx, out=dx)
    kept = np.isnan(old) | np.isnan(length)
    kept[rows] |= columns["plane"][rows] != 17
    length[kept] = old[kept]
    return length


def _faults(
    motion: Motion, radius: Floats, made: dict[str, Column], unresolved: list[tuple[int, float]], program: Program
) -> tuple[Faults, Longs, Longs]:
    """Those of `motion` with those that were found here; the moves of these, and the order in which both lie now."""
    rows = np.flatnonzero(made["wrong"])
    kinds = [WRONG[kind] for kind in made["wrong"][rows].tolist()]
    code = np.where(motion.sweep[rows] > 0, 30.0, 20.0)
    new_rows = np.concatenate((rows, [row for row, _ in unresolved])).astype(np.int64)
    if not len(new_rows):
        return motion.faults, new_rows, np.arange(len(motion.faults))
    line = motion.line[new_rows]
    block = np.clip(np.searchsorted(program.block_line, line), 0, max(len(program.block_line) - 1, 0))
    first, last = program.block_word[block], program.block_word[block + 1] - 1
    some = np.flatnonzero(last >= first)
    start, end = (program.line_start[line - 1].copy() for _ in range(2))
    start[some], end[some] = program.word_start[first[some]], program.word_end[last[some]]
    added: dict[str, Column] = {
        "kind": np.array([CODE[k] for k, _ in kinds] + [CODE["compensation-unresolved"]] * len(unresolved), np.uint8),
        "line": line,
        "start": start,
        "end": end,
        "a": np.concatenate((
            np.where([what == "code" for _, what in kinds], code, np.abs(radius[rows])),
            [named for _, named in unresolved],
        )),
        "b": np.concatenate((made["room"][rows], np.full(len(unresolved), np.nan))),
    }  # fmt: skip
    order = np.argsort(np.concatenate((motion.faults.start, added["start"])), kind="stable")

    def joined(name: str) -> Any:
        old: Column = getattr(motion.faults, name)
        return np.concatenate((old, added[name].astype(old.dtype)))[order]

    return Faults(**{name: joined(name) for name in added}), new_rows, order
