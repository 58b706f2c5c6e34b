"""The window that graded cuts leave: which feeds per tooth and edge speeds spoil no cut, and how well that is known.

A limit lies where a fault is as likely as not. It is worked out in every draw of the regressions, so that its interval
holds all that is uncertain, also which fault sets it. Nothing is said beyond what was cut.
"""

from __future__ import annotations

import datetime
import itertools
import math

import numpy as np
from msgspec import Struct

from gclint.columns import Column
from gclint.trial.expected import Tails, expected
from gclint.trial.fitted import Columns, Fitted, columns_of, fit_all
from gclint.trial.near import (
    Contradiction,
    OutOfLine,
    beside,
    contradictions,
    out_of_line,
    same_speed,
    spoils,
    stand_for,
)
from gclint.trial.seen import Seen, Trial

STEPS = 41  # feeds looked at for the pair to use
BETWEEN = 8  # edge speeds looked at from one that was cut to the next
CAREFUL = 0.1  # of the draws lie under the margin by which pairs are compared


class Limit(Struct, frozen=True):
    """One end. `found`: it surely lies within what was cut; without `fault` there is no sign of it there."""

    value: float
    low: float  # of the interval
    high: float
    found: bool
    sure: float  # share of the draws in which it lies within what was cut
    fault: str = ""  # that sets it most often; "" where there is hardly a sign of one


class Range(Struct, frozen=True):
    low: Limit
    high: Limit
    ends: tuple[float, float]  # of what was cut
    empty: float = 0.0  # share of the draws in which nothing is left between them


class ToolWindow(Struct, frozen=True):
    """What one tool may do; mm, m/min. `fz` holds at the edge speed of the pair; past `edge` no chip is good.

    The pair is one to use only where `why_not` is ""; else it is the least bad, and the place that the limits are
    stated for."""

    tool: int
    entry: str  # that it holds for
    depth: float
    cuts: int
    fz: Range
    edge: Range | None  # None: one speed was cut
    pair_fz: float
    pair_edge: float
    pair_speed: float  # rev/min, true
    pair_feed: float  # mm/min
    pair_dial: str | None
    pair_good: float  # chance that no fault spoils a cut there
    inside: float  # share of the draws in which the pair is in the window
    floor: tuple[tuple[float, float], ...] = ()  # (m/min, mm): the lower limit at other edge speeds, as far as is known
    near: tuple[Seen, ...] = ()  # the cuts that stand for the pair, nearest first
    why_not: str = ""  # "all-spoilt", "near-spoilt", "unlikely"
    spoilt: int = 0  # of `cuts`, by any fault, whatever their entry
    worst: tuple[tuple[str, int], ...] = ()  # faults, with the cuts that each spoilt, the most first
    not_known: tuple[str, ...] = ()  # faults that too few cuts were graded for: nothing here holds for them

    @property
    def use(self) -> bool:
        """Whether the pair is one to use."""
        return not self.why_not


class Effect(Struct, frozen=True):
    """What one thing does to a fault: logits, and the chance that it makes it worse."""

    fault: str
    what: str  # a column
    logits: float
    low: float
    high: float
    worse: float


class Lesson(Struct, frozen=True, eq=False):
    """What a trial has taught."""

    trial: Trial
    columns: Columns
    fitted: dict[str, Fitted]
    windows: dict[int, ToolWindow]
    missing: dict[int, tuple[str, ...]]  # tool -> why there is no window, or what would make it better
    effects: tuple[Effect, ...]
    date: datetime.date | None
    contradictions: tuple[Contradiction, ...] = ()
    out_of_line: tuple[OutOfLine, ...] = ()

    def margins(self, x: Column) -> Column:
        """(draw, cut): the smallest margin under any fault's limit."""
        least: Column = np.min(np.stack([one.margin(x) for one in self.fitted.values()]), axis=0)
        return least


def learn(trial: Trial) -> Lesson:
    """All that can be said; a tool of which too little was graded has no window, but a list of what is missing."""
    columns = columns_of(trial) if trial.cuts else Columns((), 1.0, 1.0, 1.0)
    fitted = fit_all(trial, columns)
    dates = [cut.date for cut in trial.cuts if cut.date is not None]
    lesson = Lesson(
        trial, columns, fitted, {}, {}, _effects(columns, fitted), max(dates, default=None),
        contradictions(trial.cuts), out_of_line(trial.cuts, columns, fitted),
    )  # fmt: skip
    for number in trial.tools:
        cuts = tuple(cut for cut in trial.cuts if cut.tool == number)
        missing = too_little(cuts)
        if not missing:
            lesson.windows[number] = _window(lesson, number, cuts)
        lesson.missing[number] = missing
    return lesson


def too_little(cuts: tuple[Seen, ...]) -> tuple[str, ...]:
    """What is missing before anything can be concluded of one tool."""
    least = expected().least
    said = []
    if len(cuts) < least.cuts:
        said.append(f"{least.cuts - len(cuts)} more graded cuts: {len(cuts)} are graded, {least.cuts} are the least")
    chips = _different(np.array([cut.fz for cut in cuts]))
    if chips < least.chips:
        wanted = least.chips - chips
        said.append(f"cuts at {wanted} more feeds per tooth: {chips} were cut, {least.chips} are the least")
    return tuple(said)


def _different(values: Column, apart: float = 0.05) -> int:
    ordered = np.sort(np.log(values)) if len(values) else values
    return len(ordered) and 1 + int((np.diff(ordered) > apart).sum())


def main_entry(cuts: tuple[Seen, ...]) -> str:
    """The entry a window is stated for: a ramp, where ramps were cut."""
    return "ramp" if any(cut.entry == "ramp" for cut in cuts) else "straight"


def rows_at(lesson: Lesson, tool: int, fz: Column, edge: Column, entry: str, depth: float) -> Column:
    count = len(fz)
    batch = sorted({cut.batch for cut in lesson.trial.cuts})[0]
    return lesson.columns.rows(
        fz, edge, np.full(count, tool), np.full(count, entry == "straight"), np.full(count, depth),
        np.full(count, batch),
    )  # fmt: skip


def _window(lesson: Lesson, tool: int, cuts: tuple[Seen, ...]) -> ToolWindow:
    entry = main_entry(cuts)
    depth = float(np.median([cut.depth for cut in cuts]))
    fz, like, why_not = _best(lesson, tool, cuts, entry, depth)
    edge = like.edge
    edges = np.array([cut.edge for cut in cuts])
    x = rows_at(lesson, tool, np.array([fz]), np.array([edge]), entry, depth)
    margin = lesson.margins(x)[:, 0]
    ends = reached(cuts, edge)
    across = _different(edges) >= expected().least.speeds and lesson.columns.place("edge") is not None
    range_fz = _range(lesson, x, "chip", fz, ends)
    range_edge = _edges(lesson, tool, cuts, entry, depth, edge) if across else None
    by = [fault for fault in (spoils(cut, cut.entry) for cut in cuts) if fault]
    return ToolWindow(
        tool, entry, depth, len(cuts), range_fz, range_edge, fz, edge, like.speed,
        like.speed * fz * (like.feed / (like.speed * like.fz)), like.dial, _good(lesson, x),
        float((margin > 0).mean()), _floor(lesson, x, cuts, fz, edge, range_fz) if range_edge else (),
        beside(cuts, fz, edge, entry), why_not, len(by),
        tuple(sorted(((fault, by.count(fault)) for fault in dict.fromkeys(by)), key=lambda one: -one[1])),
        tuple(fault for fault, one in lesson.fitted.items() if not one.enough),
    )  # fmt: skip


def _floor(
    lesson: Lesson, x: Column, cuts: tuple[Seen, ...], fz: float, edge: float, known: Range
) -> tuple[tuple[float, float], ...]:
    """The lower limit of the chip at each edge speed that was cut, where it lies within what was cut there."""
    column = lesson.columns.place("edge")
    if not known.low.found or column is None:
        return ()
    rows = []
    for other in sorted({round(cut.edge, 3) for cut in cuts}):
        there = x.copy()
        there[0, column] += math.log2(other / edge)
        limit = _range(lesson, there, "chip", fz, reached(cuts, other)).low
        if limit.found:
            rows.append((other, limit.value))
    return tuple(rows) if len(rows) > 1 else ()


def reached(cuts: tuple[Seen, ...], edge: float) -> tuple[float, float]:
    """(least, greatest) feed per tooth cut at an edge speed: between the speeds beside it, as far as both go."""
    at: dict[float, list[float]] = {}
    for cut in cuts:
        at.setdefault(round(math.log(cut.edge), 2), []).append(cut.fz)
    keys, wanted = sorted(at), round(math.log(edge), 2)
    below = max((key for key in keys if key <= wanted), default=keys[0])
    above = min((key for key in keys if key >= wanted), default=keys[-1])
    share = 0.0 if above == below else (wanted - below) / (above - below)
    ends = []
    for choose in (min, max):
        a, b = math.log(choose(at[below])), math.log(choose(at[above]))
        ends.append(math.exp(a + (b - a) * share))
    return ends[0], ends[1]


def _best(
    lesson: Lesson, tool: int, cuts: tuple[Seen, ...], entry: str, depth: float
) -> tuple[float, Seen, str]:
    """The pair, the cut it is like in speed, and why it is none to use.

    At a speed that was cut, the feed with most room under every limit, carefully reckoned, of those that cuts near
    them stand for; where there is none, of all.
    """
    speeds = {round(cut.edge, 3): cut for cut in cuts}
    barred = [one.edge for one in lesson.out_of_line if one.tool == tool and one.speed]
    tried = []
    for cut in speeds.values():
        low, high = reached(cuts, cut.edge)
        fz = np.geomspace(low, high, STEPS)
        margin = lesson.margins(rows_at(lesson, tool, fz, np.full(STEPS, cut.edge), entry, depth))
        room = np.quantile(margin, CAREFUL, axis=0) - 1e-6 * np.abs(np.arange(STEPS) - STEPS // 2)
        spoilt_here = any(same_speed(cut.edge, edge) for edge in barred)
        for k in range(STEPS):  # the middle where all are alike
            borne = not spoilt_here and stand_for(beside(cuts, float(fz[k]), cut.edge, entry), entry)
            tried.append((borne, float(room[k]), float(fz[k]), cut, float((margin[:, k] > 0).mean())))
    borne, _, fz_best, like, inside = max(tried, key=lambda one: one[:2])
    own = [cut for cut in cuts if cut.entry == entry]
    if all(spoils(cut, entry) for cut in own):
        why_not = "all-spoilt"
    elif not borne:
        why_not = "near-spoilt"
    else:
        why_not = "" if inside >= expected().least.pair else "unlikely"
    return fz_best, like, why_not


def _range(lesson: Lesson, x: Column, name: str, here: float, ends: tuple[float, float]) -> Range:
    """The limits along one column through the row x, clipped to what was cut."""
    least, most = (math.log2(end / here) for end in ends)
    lows, highs, low_by, high_by = bounds(lesson, x, name)
    return Range(
        _limit(lows, low_by, least, most, here, expected().calibrated.chip_low),
        _limit(highs, high_by, least, most, here, expected().calibrated.chip_high), ends,
        float((lows >= highs).mean()),
    )  # fmt: skip


def _edges(lesson: Lesson, tool: int, cuts: tuple[Seen, ...], entry: str, depth: float, here: float) -> Range:
    """How far from the pair's edge speed some chip that was cut is good, in draws, in steps of a `SPEEDS`th."""
    ends = min(cut.edge for cut in cuts), max(cut.edge for cut in cuts)
    known = expected()
    sides = []
    for end, way, tails in zip(ends, (-1, 1), (known.calibrated.edge_low, known.calibrated.edge_high)):
        found, by = reach(lesson, tool, cuts, entry, depth, here, end, way)
        least, most = sorted((0.0, math.log2(end / here)))
        sides.append(_limit(found, by, least, most, here, tails))
    return Range(sides[0], sides[1], ends)


def reach(
    lesson: Lesson, tool: int, cuts: tuple[Seen, ...], entry: str, depth: float, here: float, end: float, way: int
) -> tuple[Column, Column]:
    """Of each draw (the binary logarithm of the factor from `here` up to which some chip is good, the fault there).

    What chip and edge speed do is followed between the speeds that were cut. A fault of one speed alone sets in
    somewhere between it and the one before, as likely here as there.
    """
    count = expected().draws
    found, by = np.full(count, way * np.inf), np.full(count, "", dtype=object)
    left, rng = np.ones(count, dtype=bool), np.random.default_rng(1)
    knots = sorted({round(cut.edge, 6) for cut in cuts if min(here, end) < cut.edge < max(here, end)} | {here, end})
    knots = knots if way > 0 else knots[::-1]
    for one, following in itertools.pairwise(knots):
        speeds = np.geomspace(one, following, BETWEEN + 1)[1:]
        for k, edge in enumerate([*speeds, following]):
            x = rows_at(lesson, tool, np.array([1.0]) * reached(cuts, edge)[0], np.array([edge]), entry, depth)
            smooth = k < len(speeds)
            if smooth:
                at_one = rows_at(lesson, tool, np.array([1.0]), np.array([one]), entry, depth)
                x[:, len(lesson.columns.names) :] = at_one[:, len(lesson.columns.names) :]
            bad, fault = _nothing_good(lesson, x, math.log2(reached(cuts, edge)[1] / reached(cuts, edge)[0]))
            new = left & bad
            place = math.log2(edge / here) - 0.5 * math.log2(speeds[1] / speeds[0]) if smooth else \
                math.log2(one / here) + rng.random(count) * math.log2(following / one)  # fmt: skip
            found[new], by[new] = np.broadcast_to(place, count)[new], fault[new]
            left &= ~bad
    return found, by


def _nothing_good(lesson: Lesson, x: Column, wide: float) -> tuple[Column, Column]:
    """Of each draw whether no chip is good from that of the row x to 2 ** `wide` times it, and by which fault."""
    lows, highs, low_by, high_by = bounds(lesson, x, "chip")
    bad = np.maximum(lows, 0.0) >= np.minimum(highs, wide)
    flat = np.zeros(len(bad), dtype=bool)
    column = lesson.columns.place("chip")
    if column is None:
        flat = lesson.margins(x)[:, 0] <= 0
    return bad | flat, np.where(np.maximum(lows, 0.0) > wide - np.minimum(highs, wide), low_by, high_by)


def bounds(lesson: Lesson, x: Column, name: str) -> tuple[Column, Column, Column, Column]:
    """Of each draw (lowest, highest, the fault that sets the one, the other) along a column through the row x, as
    binary logarithms of a factor; without end where no fault sets in."""
    column, count = lesson.columns.place(name), expected().draws
    lows, highs = np.full(count, -np.inf), np.full(count, np.inf)
    low_by, high_by = np.full(count, "", dtype=object), np.full(count, "", dtype=object)
    for fault, one in lesson.fitted.items():
        if one.draws is None or column is None:
            continue
        slope = one.draws.slope[:, column]
        with np.errstate(divide="ignore", invalid="ignore"):
            bound = one.margin(x)[:, 0] / slope
        nearer = (slope < 0) & (bound > lows)
        lows[nearer], low_by[nearer] = bound[nearer], fault
        nearer = (slope > 0) & (bound < highs)
        highs[nearer], high_by[nearer] = bound[nearer], fault
    return lows, highs, low_by, high_by


def _limit(found: Column, by: Column, least: float, most: float, here: float, tails: Tails) -> Limit:
    known = expected()
    within = (found > least) & (found < most) & np.isfinite(found)
    clipped = here * 2.0 ** np.clip(found, least, most)
    low, value, high = (float(q) for q in np.quantile(clipped, (tails.low, tails.value, tails.high)))
    names, counts = np.unique(by[within].astype(str), return_counts=True)
    sure = float(within.mean())
    by_most = str(names[np.argmax(counts)]) if sure > 1 - known.interval else ""
    return Limit(value, low, high, bool(by_most) and sure >= known.least.sure, sure, by_most)


def _good(lesson: Lesson, x: Column) -> float:
    """Chance that no fault spoils a cut at the row x."""
    good = np.ones(expected().draws)
    for one in lesson.fitted.values():
        if one.draws is not None:
            good *= 1 - one.draws.share(x, one.word)[:, 0]
    return float(good.mean())


def _effects(columns: Columns, fitted: dict[str, Fitted]) -> tuple[Effect, ...]:
    tail = (1 - expected().interval) / 2
    made = []
    for fault, one in fitted.items():
        if one.draws is None:
            continue
        for column, what in enumerate(columns.names):
            slope = one.draws.slope[:, column]
            low, value, high = (float(q) for q in np.quantile(slope, (tail, 0.5, 1 - tail)))
            made.append(Effect(fault, what, value, low, high, float((slope > 0).mean())))
    return tuple(made)
