"""What the charts of one tool show: its cut along the run, its entries from the side, its pairs in their window."""

from __future__ import annotations

import math
from typing import Any

import numpy as np

from gclint.advice.parts import parts_of
from gclint.columns import Column, Longs, numbered
from gclint.cutting.nearest_pair import Part
from gclint.digest.packed_columns import short
from gclint.digest.path import chords
from gclint.digest.words import ENTRY_WORDS
from gclint.facts.context import Context
from gclint.facts.registry import View
from gclint.motion.along import points_at
from gclint.run import Tables
from gclint.tables.engagement import ENTRY_KINDS
from gclint.tables.motion import RAPID
from gclint.tables.setup import Tool

STEPS = 320  # of one chart along the run
STEPS_OF_MANY = 120  # where there are more than MANY tools
MANY = 8
PAIRS = 8  # of one tool: those that cut most
WINDOWS = 3  # drawn for one tool
SPEEDS = 60  # at which a window is drawn
POINTED = ("v", "drill")  # shapes drawn with a point (setup assumes the angle of a drill that declares none)
CORNERS = 160  # of one drawn entry


def run_of(tables: Tables, tool: int, steps: int) -> dict[str, Any] | None:
    """Cut length, mm, and in each step of it the least and greatest value and the strictest window; None without cuts.

    `worst`: the move of the chip farthest from its window in the step, else of the deepest cut.
    """
    motion, pieces, loads = tables.motion, tables.engagement.pieces, tables.cutting.loads
    rows = np.flatnonzero((motion.tool[pieces.move] == tool) & (motion.kind[pieces.move] != RAPID))
    if not len(rows):
        return None
    run = np.cumsum(pieces.length[rows], dtype=np.float64)
    if not run[-1] > 0:
        return None
    step = np.minimum((run - pieces.length[rows] / 2) / run[-1] * steps, steps - 1).astype(np.int64)
    starts = np.flatnonzero(np.diff(step, prepend=-1))
    judged = np.where(loads.chip_judged[rows] != 0, loads.h_ex[rows], np.nan)
    low = np.where(np.isfinite(judged), loads.chip_low[rows], np.nan)
    high = np.where(np.isfinite(judged), loads.chip_high[rows], np.nan)
    move = pieces.move[rows]
    return {
        "to": _shorts(np.append(run[starts[1:] - 1], run[-1])),
        "chip_low": _least(loads.h_ex[rows], starts),
        "chip_high": _most(loads.h_ex[rows], starts),
        "window_low": _most(low, starts),
        "window_high": _least(high, starts),
        "set": _most(motion.feed[move], starts),
        "feed_low": _least(tables.timing.reached[move], starts),
        "feed_high": _most(tables.timing.peak[move], starts),
        "depth": _most(pieces.ap[rows], starts),
        "worst": [int(move[row]) for row in _worst(judged, low, high, pieces.ap[rows], starts)],
    }


def _shorts(values: Column) -> list[float | None]:
    return [short(float(v), 4) for v in values]


def _least(values: Column, starts: Longs) -> list[float | None]:
    return _shorts(np.fmin.reduceat(values.astype(np.float64), starts))


def _most(values: Column, starts: Longs) -> list[float | None]:
    return _shorts(np.fmax.reduceat(values.astype(np.float64), starts))


def _worst(chip: Column, low: Column, high: Column, depth: Column, starts: Longs) -> list[int]:
    with np.errstate(invalid="ignore", divide="ignore"):
        thin, thick = np.nan_to_num(low / chip, nan=0.0), np.nan_to_num(chip / high, nan=0.0)
    bad = np.maximum(thin, thick) + 1e-6 * np.nan_to_num(depth)
    ends = np.append(starts[1:], len(chip))
    return [int(begin + np.argmax(bad[begin:end])) for begin, end in zip(starts, ends)]


# --- entries ----------------------------------------------------------------------------------------------------------


def entries_of(tables: Tables, tool: int) -> list[dict[str, Any]]:
    """Of each kind the entry that goes through most solid material, as (travel, Z) unrolled; lengths in mm."""
    motion, entries = tables.motion, tables.engagement.entries
    of_tool = motion.tool[entries.first_move] == tool
    box, made = tables.engagement.box, []
    for code, kind in enumerate(ENTRY_KINDS):
        rows = np.flatnonzero(of_tool & (entries.kind == code))
        if not len(rows):
            continue
        row = int(rows[np.argmax(np.nan_to_num(entries.solid[rows]))])
        first, last = int(entries.first_move[row]), int(entries.last_move[row])
        travel, z, inside = _profile(tables, max(first - 1, 0), min(last + 1, len(motion) - 1), first, last)
        if len(travel) < 2:
            continue
        made.append({
            "kind": kind,
            "words": ENTRY_WORDS[kind],
            "count": len(rows),
            "line": int(motion.line[first]),
            "move": first,
            "travel": _shorts(travel),
            "z": [round(float(v), 4) for v in z],
            "inside": inside,
            "top": box.top if box is not None else None,
            "solid": short(float(entries.solid[row])),
            "slope": short(float(entries.slope[row]), 3),
            "feed": short(float(entries.feed[row])),
        })  # fmt: skip
    return made


def _profile(tables: Tables, begin: int, end: int, first: int, last: int) -> tuple[Column, Column, list[int]]:
    """(travel in X and Y, Z, [first and last point of the entry itself]) of a few moves in a row."""
    motion = tables.motion
    moves = np.arange(begin, min(end, begin + CORNERS) + 1)
    moves = moves[np.isfinite(motion.length[moves])]
    if not len(moves):
        return np.zeros(0), np.zeros(0), [0, 0]
    arc = motion.sweep[moves] != 0
    each = np.ones(len(moves), np.int64)
    if arc.any():
        each[arc] = np.clip(chords(motion, moves[arc]), 1, CORNERS // max(int(arc.sum()), 1) + 1)
    owner = np.repeat(moves, each)
    number = np.arange(len(owner)) - np.repeat(np.cumsum(each) - each, each) + 1
    x, y, z = points_at(motion, owner, number / np.repeat(each, each))
    start = points_at(motion, moves[:1], np.zeros(1))
    x, y, z = (np.concatenate((a, b)) for a, b in zip(start, (x, y, z)))
    known = np.isfinite(x + y + z)
    x, y, z, owner = x[known], y[known], z[known], np.concatenate((owner[:1], owner))[known]
    travel = np.concatenate(([0.0], np.cumsum(np.hypot(np.diff(x), np.diff(y)))))
    mine = np.flatnonzero((owner >= first) & (owner <= last))
    inside = [int(max(mine[0] - 1, 0)), int(mine[-1])] if len(mine) else [0, len(travel) - 1]
    return travel, z, inside


def _round(tool: Tool | None) -> float | None:
    """Radius of the rim at the tip, mm."""
    if tool is None or tool.shape not in ("ball", "tapered-ball", "bull-nose"):
        return None
    return tool.diameter / 2 if tool.shape == "ball" else tool.corner_radius


# --- pairs ------------------------------------------------------------------------------------------------------------


def pairs_of(tables: Tables, context: Context, view: View, tool: int, inch: bool) -> list[dict[str, Any]]:
    """The pairs that cut most, by the window they share, with the feeds it leaves at each speed; rev/min and mm/min."""
    motion, pieces = tables.motion, tables.engagement.pieces
    true = tables.cutting.true_speed_of
    length = np.bincount(pieces.move, pieces.length, minlength=len(motion))
    mine = motion.tool == tool
    rows = np.flatnonzero(mine & (length > 0) & (motion.feed > 0) & (true > 0))
    pairs, which = numbered((motion.feed + 1j * true)[rows])
    cut = np.bincount(which, length[rows], len(pairs))
    most = np.argsort(-cut, kind="stable")[:PAIRS]
    parts = []
    for k in most:
        feed, speed = float(pairs[k].real), float(pairs[k].imag)
        moved = mine & (motion.feed == feed) & (true == speed)
        parts += [(part, speed, float(cut[k])) for part in parts_of(view, moved, one=False)]
    if not parts:
        return []
    speeds = _speeds([(part, speed) for part, speed, _ in parts])
    made: list[dict[str, Any]] = []
    for part, speed, long in parts:
        lows, highs = _feeds(part, speeds)
        pair = {"cut": short(long), **_pair(part, speed, inch)}
        same = next((one for one in made if _alike(one["low"], lows) and _alike(one["high"], highs)), None)
        if same is not None:
            same["pairs"].append(pair)
        elif len(made) < WINDOWS:
            dial = part.window.spindle.dial
            marks = [{"mark": m.mark, "speed": m.true} for m in dial if speeds[0] <= m.true <= speeds[-1]]
            made.append({"pairs": [pair], "marks": marks, "speeds": _shorts(speeds), "low": lows, "high": highs})
    return made


def _speeds(pairs: list[tuple[Part, float]]) -> Column:
    """Speeds at which the windows of a tool are drawn: around its own, as far as its limits of speed go."""
    bounds = [part.window.speeds() for part, _ in pairs]
    own = [speed for _, speed in pairs]
    from_, to = max(min(low for low, _ in bounds), min(own) * 0.3), min(max(high for _, high in bounds), max(own) * 2.5)
    from_, to = (from_, to) if from_ < to else (min(own) * 0.7, max(own) * 1.4)
    return np.linspace(from_, to, SPEEDS)


def _feeds(part: Part, speeds: Column) -> tuple[list[float | None], list[float | None]]:
    """(least, greatest) feed at each speed; None and None where none is inside, None alone where there is no limit."""
    window, lows, highs = part.window, [], []
    for n in speeds:
        low, high = window.feeds(float(n))
        inside = low <= high and window.turns(float(n))
        lows.append(short(low) if inside else None)
        highs.append(short(high) if inside else None)
    return lows, highs


def _alike(one: list[float | None], other: list[float | None]) -> bool:
    """Whether two curves would be drawn as one."""
    a, b = (np.array(curve, np.float64) for curve in (one, other))
    return bool(np.allclose(a, b, rtol=0.02, atol=0.0, equal_nan=True))


def _pair(part: Part, speed: float, inch: bool) -> dict[str, Any]:
    window, feed = part.window, part.feed
    inside = window.inside(speed, feed)
    near = None
    if not inside:
        same = window.same_speed(speed, feed, inch)
        other = None if same is not None else window.same_feed(speed, feed)
        if same is not None:
            near = {"speed": speed, "feed": same, "mark": ""}
        elif other is not None:
            near = {"speed": other.speed, "feed": other.feed, "mark": other.mark}
    dial = [] if inside else [(mark.mark, at) for mark, at in window.marks(feed, inch) if at is not None]
    return {
        "feed": feed, "speed": speed, "inside": inside, "near": near,
        "broken": [one.name for one in window.limits if not window.only([one]).inside(speed, feed)],
        "dial": [{"mark": mark, "feed": at} for mark, at in dial],
    }  # fmt: skip


def strips(tables: Tables, tools: list[int], inch: bool) -> list[dict[str, Any]]:
    """One value per tool."""
    context = Context(tables.program, tables.motion, tables.timing, tables.engagement, tables.cutting, tables.setup)
    view = View.of("pieces", context) if len(tables.engagement.pieces) else None
    steps = STEPS if len(tools) <= MANY else STEPS_OF_MANY
    made = []
    for tool in tools:
        declared = tables.setup.tools.get(tool)
        made.append({
            "tool": tool,
            "diameter": declared.diameter if declared and math.isfinite(declared.diameter) else None,
            "angle": declared.angle if declared and declared.shape in POINTED else None,
            "round": _round(declared),
            "run": run_of(tables, tool, steps),
            "entries": entries_of(tables, tool),
            "pairs": pairs_of(tables, context, view, tool, inch) if view is not None else [],
        })  # fmt: skip
    return made
