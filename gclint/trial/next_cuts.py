"""Which cuts to make next: those expected to narrow the window's limits most.

The draws of limits and of each fault's margin at a candidate cut have a covariance. A graded cut tells of the margin
about as much as a weighed measurement of it (weight p (1 - p), the information of a logit), by which the covariance
shrinks; cuts are chosen one after the other, each as if those before had been made.
"""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from gclint.columns import Column
from gclint.trial.learn import Lesson, Range, ToolWindow, bounds, reached, rows_at
from gclint.trial.seen import Seen

HOW_MANY = 5
FEEDS = 15  # looked at, at each speed
BEYOND = 1.25  # of the last feed that was cut, where no limit was found
CALLED = {"tool": "tool wear", "stopped": "stops", "debris": "left debris"}  # faults by more than their name


class NextCut(Struct, frozen=True):
    """rev/min, mm/min, mm; `beyond`: outside what was cut, to find a limit that was not met."""

    tool: int
    speed: float
    dial: str | None
    feed: float
    fz: float
    entry: str
    depth: float
    beyond: bool
    narrows: float  # share by which the limits' variances (of logarithms) shrink
    why: str = ""


def next_cuts(lesson: Lesson, tool: int, how_many: int = HOW_MANY) -> tuple[NextCut, ...]:
    """The next cuts with a tool that has a window."""
    window = lesson.windows[tool]
    cuts = tuple(cut for cut in lesson.trial.cuts if cut.tool == tool)
    entry, depth = window.entry, window.depth
    like, fz = _candidates(cuts, window.fz, lesson.trial.feed_limit)
    x = rows_at(lesson, tool, fz, np.array([one.edge for one in like]), entry, depth)
    known = [one for one in lesson.fitted.values() if one.draws is not None]
    if not known:
        return tuple(_a_step_further(window, cuts, lesson.trial.feed_limit))
    margins = [one.margin(x) for one in known]
    targets = _targets(lesson, window)
    together = np.hstack([*margins, targets])
    covariance = np.cov(together, rowvar=False)
    means = np.stack([margin.mean(axis=0) for margin in margins])
    names = [fault for fault, one in lesson.fitted.items() if one.draws is not None]
    count, of_target = len(fz), slice(len(fz) * len(known), None)
    chance = [1 / (1 + np.exp(-margin.mean(axis=0))) for margin in margins]
    weight = np.concatenate([p * (1 - p) for p in chance])
    whole = float(np.trace(covariance[of_target, of_target]))
    chosen = _a_step_further(window, cuts, lesson.trial.feed_limit)
    for _ in range(how_many - len(chosen) if whole > 0 else 0):
        share = weight / (1 + weight * np.diag(covariance)[: len(weight)])
        gain = (covariance[of_target, : len(weight)] ** 2).sum(axis=0) * share
        best = int(np.argmax(gain.reshape(len(known), count).sum(axis=0)))
        before = float(np.trace(covariance[of_target, of_target]))
        for f in range(len(known)):
            k = f * count + best
            covariance = covariance - np.outer(covariance[:, k], covariance[k]) * (
                weight[k] / (1 + weight[k] * covariance[k, k])
            )
        low, high = reached(cuts, like[best].edge)
        beyond = not low * 0.999 <= fz[best] <= high * 1.001
        after = float(np.trace(covariance[of_target, of_target]))
        chosen.append(NextCut(
            tool, like[best].speed, like[best].dial, float(fz[best] * like[best].feed / like[best].fz), float(fz[best]),
            entry, depth, beyond, (before - after) / whole, _why(names[int(np.abs(means[:, best]).argmin())], beyond),
        ))  # fmt: skip
    return tuple(chosen)


def _why(fault: str, beyond: bool) -> str:
    """Say what a cut tells: of the fault that is least decided there."""
    told = f"limit of {CALLED.get(fault, fault)}"
    return f"{told}; beyond what was cut" if beyond else told


def _a_step_further(window: ToolWindow, cuts: tuple[Seen, ...], feed_limit: float | None) -> list[NextCut]:
    """At the pair's speed, where no fault at all set in on a side: what the regressions cannot know of."""
    like = next(cut for cut in cuts if cut.edge == window.pair_edge)
    per_chip = like.feed / like.fz
    made = []
    for end, times in ((window.fz.low, 1 / BEYOND), (window.fz.high, BEYOND)):
        if not end.fault:
            fz, why = end.value * times, "beyond what was cut: no fault met"
            if feed_limit is not None and fz * per_chip > feed_limit:
                fz = feed_limit / per_chip
                why = "the machine's own limit: no fault met"
            if times < 1 or fz > end.value * 1.02:
                made.append(NextCut(window.tool, like.speed, like.dial, fz * per_chip, fz, window.entry, window.depth,
                                    True, 0.0, why))  # fmt: skip
    return made


def _candidates(cuts: tuple[Seen, ...], limits: Range, feed_limit: float | None) -> tuple[list[Seen], Column]:
    """At each speed that was cut, feeds as far as was cut, and a step further where no limit was met; none that is
    faster than the machine feeds."""
    like, made = [], []
    for cut in {round(cut.edge, 3): cut for cut in cuts}.values():
        low, high = reached(cuts, cut.edge)
        low = low if limits.low.found else low / BEYOND
        high = high if limits.high.found else high * BEYOND
        if feed_limit is not None:
            high = max(min(high, feed_limit * cut.fz / cut.feed), low)
        made.append(np.geomspace(low, high, FEEDS))
        like += [cut] * FEEDS
    return like, np.concatenate(made)


def _targets(lesson: Lesson, window: ToolWindow) -> Column:
    """(draw, limit) of the chip at the pair's edge speed and where the window narrows to nothing, as binary
    logarithms, as far as a step beyond what was cut."""
    speeds = [window.pair_edge]
    if window.edge is not None:
        speeds += [end.value for end in (window.edge.low, window.edge.high) if end.fault]
    made = []
    for edge in speeds:
        x = rows_at(lesson, window.tool, np.array([window.pair_fz]), np.array([edge]), window.entry, window.depth)
        low, high, _, _ = bounds(lesson, x, "chip")
        ends = (np.log2(end / window.pair_fz * times) for end, times in zip(window.fz.ends, (1 / BEYOND, BEYOND)))
        least, most = ends
        made += [np.clip(low, least, most), np.clip(high, least, most)]
    return np.column_stack(made)
