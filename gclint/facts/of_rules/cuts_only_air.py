"""Gives the facts that cuts-only-air alone looks at."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from gclint.facts.context import Context, once
from gclint.facts.fact import number, of_rows, table_of, text
from gclint.facts.followed import lost
from gclint.knowledge.numbers import model_number
from gclint.tables.motion import RAPID

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


IDLE = table_of(
    idle_runs,
    "idle_runs",
    "runs of moves at feed, between two rapids, that remove nothing though others of the program do",
    {
        "line": number("", "line of its first move", of_rows(idle_runs, "line")),
        "length": number("mm", "its way in X and Y", of_rows(idle_runs, "length")),
        "kind": text("cut again (over material that is gone already), above (it stays above the work) or elsewhere",
                     lambda c: (np.array([KINDS.index(row.kind) for row in idle_runs(c)], dtype=np.int32), KINDS),
                     words=KINDS),
        "like": number("", "runs of the same tool that do cut", of_rows(idle_runs, "like")),
    },
)  # fmt: skip

TABLES = (IDLE,)
