"""Facts about runs of moves at feed: stretches between two rapids that cut nothing, and arcs that turn back."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from gclint.columns import Bools, Column, Floats
from gclint.facts.context import Context, once
from gclint.facts.fact import Build, Table, number, text, truth
from gclint.facts.finished import surface
from gclint.facts.followed import lost
from gclint.knowledge.numbers import model_number
from gclint.tables.motion import ARC_CCW, ARC_CW, EVENT, LINE, RAPID

KINDS = ("cut again", "above", "elsewhere")


class Idle(NamedTuple):
    """A run of moves at feed below the top, or down towards it, that removes nothing."""

    line: int
    move: int
    last_line: int
    length: float
    kind: str
    like: int  # runs of the same tool that do cut


@once
def idle_runs(context: Context) -> list[Idle]:
    """Each run of feed moves, from one rapid to the next, that travels or goes down at feed and removes nothing.

    Left out: short ways, what cannot be modelled, a last lap repeated in one run (a spring pass), and slow travel above
    the work. Only where other runs of the program do cut.
    """
    m, box = context.motion, context.box
    if box is None or box.top is None or not context.in_contact.any():
        return []
    feeds = (m.kind != RAPID) & np.isfinite(m.x1) & np.isfinite(m.y1) & np.isfinite(m.z1) & ~lost(context)
    run = np.cumsum(np.concatenate(([True], (feeds[1:] != feeds[:-1]) | (m.tool[1:] != m.tool[:-1]))))
    first = np.flatnonzero(np.concatenate(([True], np.diff(run) != 0)))
    last = np.concatenate((first[1:], [len(m)])) - 1
    cuts = np.bincount(run - 1, weights=context.in_contact, minlength=len(first)) > 0
    known = {n for n in context.setup.tools if context.setup.tools[n].shape != "drag"}
    cutting: dict[int, list[tuple[float, float]]] = {}
    made = []
    for a, b, cut in zip(first.tolist(), last.tolist(), cuts.tolist()):
        if not feeds[a]:
            continue
        tool = int(m.tool[a])
        if tool not in known:
            continue
        if cut:
            cutting.setdefault(tool, []).append((float(m.z1[a : b + 1].min()), float(m.length[a : b + 1].sum())))
        else:
            made.append((a, b, tool))
    if not made:
        return []
    begins = np.array([a for a, _, _ in made])
    lowest = np.minimum.reduceat(m.z1, first)[run[begins] - 1]
    ways = np.concatenate(([0.0], np.cumsum(np.nan_to_num(np.hypot(np.diff(m.x1), np.diff(m.y1))))))
    found = []
    for (a, b, tool), low in zip(made, lowest.tolist()):
        across = float(ways[b] - ways[a - 1]) if a else 0.0
        idle = _idle(context, a, b, box.top, cutting.get(tool, []), low, across)
        if idle is not None:
            found.append(idle)
    return found


def _idle(
    context: Context, a: int, b: int, top: float, like: list[tuple[float, float]], low: float, across: float
) -> Idle | None:
    """low, across: lowest Z of the run and its way in X and Y, mm."""
    m = context.motion
    rows = slice(a, b + 1)
    down = float(m.z0[a]) - low
    diameter = context.setup.tools[int(m.tool[a])].diameter
    line, last = int(m.line[a]), int(m.line[b])
    if low < top - model_number("idle_depth"):
        # below the top: where it passes, the work is gone already, or never was
        if across > model_number("idle_diameters") * diameter and like:
            return Idle(line, a, last, across, "cut again" if _over_blank(context, rows) else "elsewhere", len(like))
        return None
    # at or above the top: a hole or cut that goes the wrong way, where its like go down
    single = b == a and abs(float(m.x1[a] - m.x0[a])) + abs(float(m.y1[a] - m.y0[a])) < 1e-6
    enough = len(like) >= 1 and ((single and down <= 1e-6) or across > model_number("idle_diameters") * diameter)
    if enough and _over_blank(context, rows) and (single or down > 1e-6):
        return Idle(line, a, last, across, "above", len(like))
    return None


def _over_blank(context: Context, rows: slice) -> bool:
    m, box = context.motion, context.box
    assert box is not None
    for values, span in ((m.x1[rows], box.x), (m.y1[rows], box.y)):
        if span is not None and not ((values > span[0]) & (values < span[1])).any():
            return False
    return True


def _of(rows: Build, name: str, kind: type = float) -> Build:
    return lambda context: np.array([getattr(row, name) for row in rows(context)], dtype=kind)


IDLE = Table(
    "idle_runs",
    "runs of moves at feed, between two rapids, that remove nothing though others of the program do",
    {
        "line": number("", "line of its first move", _of(idle_runs, "line")),
        "length": number("mm", "its way in X and Y", _of(idle_runs, "length")),
        "kind": text("cut again (over material that is gone already), above (it stays above the work) or elsewhere",
                     lambda c: (np.array([KINDS.index(row.kind) for row in idle_runs(c)], dtype=np.int32), KINDS),
                     words=KINDS),
        "like": number("", "runs of the same tool that do cut", _of(idle_runs, "like")),
    },
    lambda c: len(idle_runs(c)),
    lambda c: c.motion.tool[_of(idle_runs, "move", int)(c)],
    _of(idle_runs, "move", int),
)  # fmt: skip


# arcs that turn back


def _heading(context: Context, rows: Column, end: bool) -> tuple[Floats, Floats]:
    """Direction of travel at the start or the end of each move in XY, of length 1 (NaN where it has none)."""
    m = context.motion
    x, y = m.x1[rows] - m.x0[rows], m.y1[rows] - m.y0[rows]
    arc = (m.kind[rows] >= ARC_CW) & (m.plane[rows] == 17)
    at_x, at_y = (m.x1[rows], m.y1[rows]) if end else (m.x0[rows], m.y0[rows])
    way = np.where(m.kind[rows] == ARC_CCW, 1.0, -1.0)
    x = np.where(arc, -(at_y - m.cv[rows]) * way, x)
    y = np.where(arc, (at_x - m.cu[rows]) * way, y)
    long = np.hypot(x, y)
    with np.errstate(divide="ignore", invalid="ignore"):
        return x / np.where(long > 1e-9, long, np.nan), y / np.where(long > 1e-9, long, np.nan)


@once
def turned_back(context: Context) -> Bools:
    return _joined(context)[0]


@once
def _joined(context: Context) -> tuple[Bools, int]:
    """([moves] turned back, how many other arcs of the program join both neighbours smoothly).

    Turned back are arcs, in the XY plane and no full circles, that leave the move before and meet the one after
    backward, where the other direction joins both. An arc behind a plunge, or before a lift, has one neighbour: there
    only one that goes round the long way counts.
    """
    m = context.motion
    made = np.zeros(len(m), bool)
    arcs = np.flatnonzero((m.kind >= ARC_CW) & (m.plane == 17) & (np.hypot(m.x1 - m.x0, m.y1 - m.y0) > 1e-3))
    arcs = arcs[(arcs > 0) & (arcs < len(m) - 1) & (np.abs(m.sweep[arcs]) < 359)]
    # a ramp goes forth and back on its way on purpose
    arcs = arcs[np.abs(m.z1[arcs] - m.z0[arcs]) < 1e-6]
    if not len(arcs):
        return made, 0
    level = np.abs(m.z1 - m.z0) < 1e-6
    beside = level & (m.kind != RAPID) & ((np.hypot(m.x1 - m.x0, m.y1 - m.y0) > 1e-6) | (m.kind >= ARC_CW))
    upright = ~level & (np.hypot(m.x1 - m.x0, m.y1 - m.y0) < 1e-6)
    before, after = _heading(context, arcs - 1, True), _heading(context, arcs + 1, False)
    start, end = _heading(context, arcs, False), _heading(context, arcs, True)
    back = np.cos(np.radians(180.0 - model_number("turns_back")))
    with np.errstate(invalid="ignore"):
        leaves = before[0] * start[0] + before[1] * start[1]
        meets = end[0] * after[0] + end[1] * after[1]
        from_, to = beside[arcs - 1], beside[arcs + 1]
        both = from_ & to & (leaves <= back) & (meets <= back)
        one = (upright[arcs - 1] & to & (meets <= back)) | (from_ & upright[arcs + 1] & (leaves <= back))
        made[arcs] = both | (one & (np.abs(m.sweep[arcs]) > 180))
        smooth = int(np.count_nonzero(from_ & to & (leaves >= -back) & (meets >= -back)))
    return made, smooth


def _smooth_share(context: Context) -> float:
    turned, smooth = _joined(context)
    return smooth / max(1, smooth + int(np.count_nonzero(turned)))


TURNED = {
    "turns_back": truth("whether it is an arc that leaves the move before and meets the one after backward, where the "
                        "other direction would join both; behind a plunge one neighbour counts", turned_back),
    "smooth_share": number("", "of the arcs between two moves at feed that join both neighbours smoothly or turn back "
                           "from both: the share that joins smoothly", lambda c: _smooth_share(c)),
    "smooth_arcs": number("", "how many arcs join both neighbours smoothly", lambda c: float(_joined(c)[1])),
}  # fmt: skip


# tools changed in the cut


class Changed(NamedTuple):
    line: int
    move: int
    depth: float
    tool: int


@once
def changed_low(context: Context) -> list[Changed]:
    """Each tool change that comes while the tip is known to stand below the blank's top, over the blank, mm."""
    m, box = context.motion, context.box
    made: list[Changed] = []
    if box is None or box.top is None:
        return made
    for row in np.flatnonzero(m.event_kind == EVENT["change"]).tolist():
        move = int(m.event_move[row]) - 1
        if move < 0 or not np.isfinite(m.z1[move]) or not context.placed[move]:
            continue
        depth = box.top - float(m.z1[move])
        inside = all(
            span is None or span[0] < float(at) < span[1]
            for at, span in ((m.x1[move], box.x), (m.y1[move], box.y))
        )  # fmt: skip
        if depth > 0 and inside:
            made.append(Changed(int(m.event_line[row]), move, depth, int(m.event_value[row])))
    return made


CHANGED = Table(
    "changes_in_cut",
    "tool changes while the tip stands below the top of the blank",
    {
        "line": number("", "line of the change", _of(changed_low, "line")),
        "depth": number("mm", "how far the tip stands below the top", _of(changed_low, "depth")),
        "next_tool": number("", "number of the tool that is called", _of(changed_low, "tool")),
    },
    lambda c: len(changed_low(c)),
    lambda c: c.motion.tool[_of(changed_low, "move", int)(c)],
    _of(changed_low, "move", int),
)

# rapids that do the work of a feed


class Descent(NamedTuple):
    line: int
    move: int
    depth: float
    with_feed: bool
    times: int


@once
def rapid_descents(context: Context) -> list[Descent]:
    """In a program with no move at feed: the rapids that end below Z0 with the spindle turning, as one row."""
    m = context.motion
    if not len(m) or (m.kind != RAPID).any():
        return []
    turning = (np.abs(m.spindle) == 1) & context.placed
    low = np.flatnonzero(turning & (m.z1 < 0) & (m.z1 < np.nan_to_num(m.z0, nan=np.inf)))
    if not len(low):
        return []
    fed = set(m.event_line[m.event_kind == EVENT["feed"]].tolist())
    with_feed = any(int(line) in fed for line in m.line[low].tolist())
    move = int(low[0])
    return [Descent(int(m.line[move]), move, float(-m.z1[low].min()), with_feed, len(low))]


DESCENTS = Table(
    "rapid_descents",
    "of a program with no move at feed: rapids that end below Z0 with the spindle turning, as one row",
    {
        "line": number("", "line of the first", _of(rapid_descents, "line")),
        "depth": number("mm", "how far the lowest ends below Z0", _of(rapid_descents, "depth")),
        "with_feed": truth("whether an F stands beside any of them", _of(rapid_descents, "with_feed", bool)),
        "count": number("", "how many there are", _of(rapid_descents, "times")),
    },
    lambda c: len(rapid_descents(c)),
    lambda c: c.motion.tool[_of(rapid_descents, "move", int)(c)],
    _of(rapid_descents, "move", int),
)

# rows of a pocket that lie farther apart than the tool is wide


class Fin(NamedTuple):
    line: int
    move: int
    step: float
    width: float
    height: float


@once
def fins(context: Context) -> list[Fin]:
    """Where two rows beside each other in one run at feed lie farther apart than the tool is wide, by less than a
    quarter of it, so that a fin of material stands between them at the end; mm.

    Rows: level straight moves in opposite directions, joined by one straight step square to both, each at least two
    diameters long. Where three steps or more are like that, the rows are meant as grooves, and none is told.
    """
    m, box = context.motion, context.box
    if box is None or box.top is None or len(m) < 3:
        return []
    x, y = m.x1 - m.x0, m.y1 - m.y0
    long = np.hypot(x, y)
    level = (m.kind == LINE) & (np.abs(m.z1 - m.z0) < 1e-6) & context.placed
    a, b, c = slice(0, -2), slice(1, -1), slice(2, None)
    with np.errstate(invalid="ignore", divide="ignore"):
        square = np.abs(x[a] * x[b] + y[a] * y[b]) < 1e-3 * long[a] * long[b]
        turns = x[a] * x[c] + y[a] * y[c] < -0.999 * long[a] * long[c]
    rows = np.flatnonzero(level[a] & level[b] & level[c] & square & turns & (m.tool[a] == m.tool[c])) + 1
    made: list[Fin] = []
    for row in rows.tolist():
        tool = context.tool(int(m.tool[row]))
        if tool is None or tool.shape not in ("flat", "bull-nose", "facing"):
            continue
        width = float(long[row]) - tool.diameter
        least = model_number("fin_rows") * tool.diameter
        if not 0.05 < width < model_number("fin_widest") * tool.diameter or min(long[row - 1], long[row + 1]) < least:
            continue
        height = _stands_between(context, row)
        if height > 0.1:
            made.append(Fin(int(m.line[row]), row, float(long[row]), width, height))
    return made if len(made) < 3 else []


def _stands_between(context: Context, row: int) -> float:
    """How high material stands at the end in the middle between the rows before and after a step, mm."""
    m = context.motion
    x = (m.x0[row] + m.x1[row]) / 2 - (m.x1[row - 1] - m.x0[row - 1]) * np.array([0.3, 0.5, 0.7])
    y = (m.y0[row] + m.y1[row]) / 2 - (m.y1[row - 1] - m.y0[row - 1]) * np.array([0.3, 0.5, 0.7])
    return float(surface(context, x, y).max()) - float(m.z1[row])


FINS = Table(
    "fins",
    "steps between two rows of one run at feed that are wider than the tool, so that a fin stands between them",
    {
        "line": number("", "line of the step", _of(fins, "line")),
        "step": number("mm", "how far the rows lie apart", _of(fins, "step")),
        "width": number("mm", "how wide the fin is", _of(fins, "width")),
        "height": number("mm", "how high it stands at the end", _of(fins, "height")),
    },
    lambda c: len(fins(c)),
    lambda c: c.motion.tool[_of(fins, "move", int)(c)],
    _of(fins, "move", int),
)

TABLES = (IDLE, CHANGED, DESCENTS, FINS)
