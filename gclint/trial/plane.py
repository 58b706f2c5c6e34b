"""The plane of speed and feed for one tool: where a cut lies inside the window, and every cut that was graded."""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from gclint.columns import Column
from gclint.trial.expected import expected
from gclint.trial.learn import Lesson, reached, rows_at
from gclint.trial.plan import FAULTS
from gclint.trial.scales import scales
from gclint.trial.seen import Seen

ROOM = 0.08  # of the range, around the cuts


class Plane(Struct, frozen=True, eq=False):
    """`inside` (feed, speed): share of the draws in which the pair is in the window; NaN beyond what was cut."""

    speeds: Column  # rev/min, true
    feeds: Column  # mm/min
    inside: Column
    cuts: tuple[Seen, ...]


def plane_of(lesson: Lesson, tool: int, columns: int, rows: int) -> Plane:
    cuts = tuple(cut for cut in lesson.trial.cuts if cut.tool == tool)
    window = lesson.windows[tool]
    speed, feed = (np.array([getattr(cut, key) for cut in cuts]) for key in ("speed", "feed"))
    room = max(ROOM * float(np.ptp(speed)), 0.04 * float(speed.max()))
    speeds = np.linspace(speed.min() - room, speed.max() + room, columns)
    feeds = np.linspace(0, feed.max() * (1 + ROOM), rows + 1)[1:] - feed.max() * (1 + ROOM) / rows / 2
    per_speed = cuts[0].edge / cuts[0].speed
    teeth = cuts[0].feed / (cuts[0].speed * cuts[0].fz)
    inside = np.full((rows, columns), np.nan)
    for c, n in enumerate(speeds):
        if not speed.min() * 0.999 <= n <= speed.max() * 1.001:
            continue
        edge = float(n * per_speed)
        fz = feeds / (n * teeth)
        low, high = reached(cuts, edge)
        cut = np.flatnonzero((fz >= low * 0.999) & (fz <= high * 1.001))
        if len(cut):
            x = rows_at(lesson, tool, fz[cut], np.full(len(cut), edge), window.entry, window.depth)
            inside[cut, c] = (lesson.margins(x) > 0).mean(axis=0)
    return Plane(speeds, feeds, inside, cuts)


def spoilt_by(cut: Seen) -> str:
    """The fault that spoilt a cut most, "" where none did."""
    over = {fault: cut.level[fault] - scales()[fault].index(expected().fault[fault].from_)
            for fault in FAULTS if fault in cut.level}  # fmt: skip
    worst = max(over, key=lambda fault: over[fault], default="")
    return worst if worst and over[worst] >= 0 else ""
