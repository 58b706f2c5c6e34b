"""Everything the page's script is given: the figure, the charts, the findings' places, the lines of the program."""

from __future__ import annotations

from typing import Any

import numpy as np

from gclint.columns import Bools, Column, Longs
from gclint.digest import summary
from gclint.digest.packed_columns import MICRONS, Columns, packed, packed_json, short
from gclint.digest.path import CUT, RAPID_CUT, Path, path_of
from gclint.digest.simplify import simplified
from gclint.digest.strips import strips
from gclint.digest.words import Lengths
from gclint.report.page.field import field_of
from gclint.report.page.listing import kept_lines, text_of
from gclint.run import Tables
from gclint.tables.finding import Finding
from gclint.tables.motion import Motion

FINE, COARSE = 200_000, 12_000  # pieces of the path: of the figure, and of what is drawn for paper
LINES_PINNED = 100  # of one finding, whose points are never simplified away
MOVES_PINNED = 20  # of one line
ROWS_SHOWN = 4000  # pieces of one finding that are lit up


def model_of(tables: Tables, findings: tuple[Finding, ...]) -> dict[str, str]:
    """{"model", "columns", "text"} as they stand in the page."""
    motion, columns = tables.motion, Columns()
    whole, hidden = path_of(tables)
    places = [_moves(motion, finding) for finding in findings]
    fine, off = simplified(whole, _pinned(whole, motion, places), FINE)
    coarse, _ = simplified(fine, np.zeros(len(fine.x), bool), COARSE)
    tools = summary.order_of_use(motion)
    inch = summary.units(motion) == "inch"
    made = strips(tables, tools, inch)
    for strip in made:
        if strip["run"]:
            strip["run"]["worst"] = [int(row) for row in _rows(fine, np.array(strip["run"]["worst"]))]
        for entry in strip["entries"]:
            entry["row"] = int(_rows(fine, np.array([entry.pop("move")]))[0])
    pointed = np.array(sorted({line for finding in findings for line in (*finding.lines[:LINES_PINNED],
                                                                          finding.worst_line)}), np.int64)  # fmt: skip
    lines = kept_lines(tables.program, pointed, _lines_of(motion, coarse, fine))
    lengths = Lengths(inch)
    model = {
        "unit": lengths.unit,
        "scale": lengths.scale,
        "field": field_of(tables, columns),
        "keep_out": [{"name": box.name, "low": box.low, "high": box.high} for box in tables.setup.keep_out],
        "paths": [_packed_path(path, motion, columns) for path in (fine, coarse)],
        "off": short(off), "moves": len(motion), "hidden": hidden,
        "most": {name: _top(getattr(whole, name)) for name in ("depth", "force", "chip")},
        "tools": made,
        "findings": [_told(one, columns) | _place(fine, moves, columns) for one, moves in zip(findings, places)],
        "lines": tables.program.lines,
        "kept": None if len(lines) == tables.program.lines else columns.add(lines, delta=True),
    }  # fmt: skip
    return {
        "model": packed_json(model),
        "columns": columns.text(),
        "text": packed(text_of(tables.program, (int(line) for line in lines))),
    }


def _lines_of(motion: Motion, *paths: Path) -> Column:
    return np.concatenate([motion.line[path.first_move] for path in paths])


def _moves(motion: Motion, finding: Finding) -> Longs:
    """Moves on the lines of a finding, those of its worst line first."""
    found = []
    order = motion.line if bool((np.diff(motion.line) >= 0).all()) else None
    for line in dict.fromkeys((finding.worst_line, *finding.lines)):
        if order is not None:
            first, last = np.searchsorted(order, (line, line + 1))
            found.append(np.arange(first, last))
        elif len(found) < LINES_PINNED:  # lines executed more than once are looked for one by one
            found.append(np.flatnonzero(motion.line == line))
    return np.concatenate(found).astype(np.int64) if found else np.zeros(0, np.int64)


def _pinned(path: Path, motion: Motion, places: list[Longs]) -> Bools:
    """Points that must stay: the ends of what stands for the first lines of each finding."""
    pinned = np.zeros(len(path.x), bool)
    for moves in places:
        rows = _rows(path, moves[: LINES_PINNED * MOVES_PINNED])
        pinned[rows] = True
        pinned[np.minimum(rows + 1, len(path.x) - 1)] = True
    return pinned


def _rows(path: Path, moves: Column) -> Longs:
    """The piece of the path that stands for each move (its first one)."""
    if not len(path):
        return np.zeros(0, np.int64)
    first = np.searchsorted(path.first_move, moves, side="left")
    exact = (first < len(path)) & (path.first_move[np.minimum(first, len(path) - 1)] == moves)
    return np.where(exact, first, np.maximum(first - 1, 0)).astype(np.int64)


def _told(finding: Finding, columns: Columns) -> dict[str, Any]:
    return {
        "rule": finding.rule, "grade": finding.grade, "line": finding.worst_line, "tool": finding.tool,
        "lines": columns.add(np.array(finding.lines, np.int64), delta=True),
    }  # fmt: skip


def _place(path: Path, moves: Longs, columns: Columns) -> dict[str, Any]:
    """Where a finding lies: the piece that is flown to, and the pieces that are lit up."""
    if not len(path) or not len(moves):
        return {"row": None, "rows": None}
    begin = _rows(path, moves)
    end = np.searchsorted(path.first_move, moves, side="right")
    rows = np.unique(np.concatenate([np.arange(a, max(b, a + 1)) for a, b in zip(begin, end)][:ROWS_SHOWN]))
    rows = rows[path.drawn[rows]][:ROWS_SHOWN]
    if not len(rows):
        return {"row": None, "rows": None}
    worst = np.arange(begin[0], max(end[0], begin[0] + 1))
    touching = worst[(path.kind[worst] == CUT) | (path.kind[worst] == RAPID_CUT)]
    at = touching[len(touching) // 2] if len(touching) else worst[len(worst) // 2]
    return {"row": int(at), "rows": columns.add(rows, delta=True)}


def _packed_path(path: Path, motion: Motion, columns: Columns) -> dict[str, Any]:
    return {
        "x": columns.add(path.x, MICRONS, delta=True),
        "y": columns.add(path.y, MICRONS, delta=True),
        "z": columns.add(path.z, MICRONS, delta=True),
        "line": columns.add(motion.line[path.first_move], delta=True),
        "tool": columns.add(path.tool, delta=True),
        "kind": columns.add(np.where(path.drawn, path.kind, 4), wide=False),
        "place": columns.add(path.place, 80, wide=False),
        "share": columns.add(np.minimum(path.share, 1.0), 200, wide=False),
        "chip": columns.add(path.chip, 254 / _top(path.chip), wide=False),
        "depth": columns.add(path.depth, 254 / _top(path.depth), wide=False),
        "force": columns.add(path.force, 254 / _top(path.force), wide=False),
    }


def _top(values: Column) -> float:
    known = values[np.isfinite(values)]
    return float(known.max()) if len(known) and known.max() > 0 else 1.0
