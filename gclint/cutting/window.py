"""The operating window: which pairs of speed and feed keep every limit, and which of them to run.

At each speed the limits leave the feeds from `low` to `high`; the speeds are bounded by limits of their own. So the
region in the (speed, feed) plane is known exactly at every speed, and its corners lie where two limits meet.

A window may stand for many places that run with the same feed and speed (the lines and the arcs of one tool). Then it
leaves the pairs at which all places are inside, but for a short length of cut: `thin` is the share that may lie under
a least feed (where the tool runs into or out of a cut its chip says little), `thick` the length that may lie over a
greatest one.
"""

from __future__ import annotations

import math
from collections.abc import Iterable

import numpy as np
from msgspec import Struct
from msgspec.structs import replace

from gclint.columns import Column, distinct
from gclint.cutting.limits import Limit, Speed
from gclint.knowledge.numbers import model_number
from gclint.tables.setup import DialMark, Spindle

SAME = 1e-6  # rounding of columns of single precision
GRID = 256  # speeds at which limits are looked at for crossings
SPEED_STEP = 100.0  # rev/min, what people set


class Pair(Struct, frozen=True):
    """What the machine can run: rev/min, mm/min; `mark` on a dial."""

    speed: float
    feed: float
    mark: str = ""


class Broken(Struct, frozen=True):
    """A limit that a pair breaks; `times`: how many times too much (over 1) or too little (under 1) it is."""

    limit: Limit
    times: float


class Corner(Struct, frozen=True):
    """A corner of the region, and the limit along which the outline goes on from it."""

    speed: float
    feed: float
    limit: str


class Window(Struct, frozen=True, eq=False):
    """All limits of one cut, or of all places that share a feed; `reached`: mm/min no place can exceed, else inf;
    `held`: that no place can keep up on average."""

    limits: tuple[Limit, ...]
    spindle: Spindle
    reached: Column
    weight: Column  # mm of cut at each place
    thin: float = 0.0  # share of the length
    thick: float = 0.0  # mm
    held: Column | None = None  # as `reached` where it is not known

    def feeds(self, n: Column | float) -> tuple[float, float]:
        """(least, greatest) feed at a speed (or at one speed for each place), mm/min; least > greatest: none does."""
        low, high = np.zeros(self.reached.shape), np.full(self.reached.shape, np.inf)
        for limit in self.limits:
            if limit.least:
                low = np.fmax(low, limit.at(n))
            else:
                high = np.fmin(high, limit.at(n))
        low = np.where(low > (self.reached if self.held is None else self.held) * (1 + SAME), np.inf, low)
        high = np.where(high > self.reached, np.inf, high)  # a feed that is never reached does no harm
        return self._least(low), self._greatest(high)

    def _least(self, low: Column) -> float:
        if len(low) == 1:
            return float(low[0])
        order = np.argsort(-low, kind="stable")
        left = np.cumsum(self.weight[order]) > self.thin * float(self.weight.sum()) + SAME
        return float(low[order[int(np.argmax(left))]]) if left.any() else 0.0

    def _greatest(self, high: Column) -> float:
        if len(high) == 1:
            return float(high[0])
        order = np.argsort(high, kind="stable")
        left = np.cumsum(self.weight[order]) > self.thick + SAME
        return float(high[order[int(np.argmax(left))]]) if left.any() else math.inf

    def speeds(self) -> tuple[float, float]:
        """(slowest, fastest) speed that the limits of speed allow, rev/min."""
        low, high = 0.0, math.inf
        for limit in self.limits:
            if isinstance(limit, Speed):
                bounds = np.asarray(limit.speed)
                bounds = bounds[np.isfinite(bounds)]
                if not bounds.size:
                    continue
                if limit.least:
                    low = max(low, float(bounds.max()))
                else:
                    high = min(high, float(bounds.min()))
        return low, high

    def only(self, limits: Iterable[Limit]) -> Window:
        """The same places with these limits alone."""
        return replace(self, limits=tuple(limits))

    def inside(self, n: float, vf: float) -> bool:
        return self.takes(n, vf) and self.turns(n)

    def takes(self, n: Column | float, vf: float) -> bool:
        """Whether the feed is inside at a speed, whatever the limits of speed say."""
        low, high = self.feeds(n)
        return low * (1 - SAME) <= vf <= high * (1 + SAME)

    def turns(self, n: float) -> bool:
        """Whether the speed is within the limits of speed."""
        slowest, fastest = self.speeds()
        return slowest * (1 - SAME) <= n <= fastest * (1 + SAME)

    def broken(self, n: float, vf: float) -> tuple[Broken, ...]:
        """Limits that a pair breaks at some place, the worst first."""
        found = []
        for limit, times in self._times(n, vf):
            if (times < 1 - SAME) if limit.least else (times > 1 + SAME):
                found.append(Broken(limit, times))
        return tuple(sorted(found, key=lambda one: -abs(math.log(max(one.times, 1e-12)))))

    def _times(self, n: float, vf: float) -> Iterable[tuple[Limit, float]]:
        """Each limit with the pair as a multiple of it, at the place where it is nearest to being broken."""
        for limit in self.limits:
            value, bound = (n, np.asarray(limit.speed)) if isinstance(limit, Speed) else (vf, limit.at(n))
            bound = bound[np.isfinite(bound)]
            if bound.size:
                with np.errstate(divide="ignore", invalid="ignore"):
                    yield limit, float(value / np.float64(bound.max() if limit.least else bound.min()))

    def choices(self) -> tuple[Pair, ...]:
        """Speeds that can be set, the slowest first (feed 0): marks of the dial, or steps of 100 rev/min."""
        if self.spindle.kind == "dial":
            marks = sorted(self.spindle.dial, key=lambda mark: mark.true)
            return tuple(Pair(mark.true, 0.0, mark.mark) for mark in marks)
        slowest = self.spindle.low or model_number("slowest_spindle")
        fastest = self.spindle.high or max(model_number("fastest_spindle"), slowest)
        first = math.ceil(slowest / SPEED_STEP - SAME) * SPEED_STEP
        count = int((fastest - first) / SPEED_STEP + SAME) + 1
        if count <= 0:
            return (Pair(slowest, 0.0),)
        return tuple(Pair(first + k * SPEED_STEP, 0.0) for k in range(count))

    def allowed(self) -> tuple[Pair, ...]:
        """`choices` within the limits of speed."""
        return tuple(one for one in self.choices() if self.turns(one.speed))

    def margin(self, n: float, vf: float) -> float:
        """Smallest distance to a limit where trouble begins, as ln of a factor; the machine's own ends do not count,
        but those of a range of speeds that is only taken do: nobody knows whether this spindle runs there."""
        room = math.inf
        if self.spindle.kind != "dial":
            if not self.spindle.low:
                room = math.log(n / model_number("slowest_spindle"))
            if not self.spindle.high:
                room = min(room, math.log(model_number("fastest_spindle") / n))
        for limit, times in self._times(n, vf):
            if not limit.end and 0 < times < math.inf:
                room = min(room, math.log(times) if limit.least else -math.log(times))
        return room

    def best(self, inch: bool = False) -> Pair | None:
        """The pair farthest from all limits, in ln of speed and feed; of those as far within 5 %, the fastest."""
        found: list[tuple[float, Pair]] = []
        for one in self.allowed():
            low, high = self.feeds(one.speed)
            feed = runnable(self._middle(low, high), low, high, inch)
            if feed is not None:
                found.append((self.margin(one.speed, feed), Pair(one.speed, feed, one.mark)))
        if not found:
            return None
        most = max(room for room, _ in found)
        return max((pair for room, pair in found if room >= most - 0.05), key=lambda pair: (pair.feed, -pair.speed))

    def _middle(self, low: float, high: float) -> float:
        if low <= 0 or math.isinf(high):
            return low * model_number("open_window") if low > 0 else high / model_number("no_floor")
        return math.sqrt(low * high)

    def same_speed(self, n: float, vf: float, inch: bool = False) -> float | None:
        """The feed nearest to `vf` that is well inside at speed n: a third of the window from the limit it breaks."""
        low, high = self.feeds(n)
        if not self.turns(n):
            return None
        return runnable(aim(vf, low, high), low, high, inch)

    def same_feed(self, n: float, vf: float) -> Pair | None:
        """The speed nearest to `n` that is inside with this feed."""
        fits = [one for one in self.allowed() if self.takes(one.speed, vf)]
        nearest = min(fits, key=lambda one: abs(math.log(one.speed / n)), default=None)
        return Pair(nearest.speed, vf, nearest.mark) if nearest else None

    def marks(self, vf: float | None = None, inch: bool = False) -> tuple[tuple[DialMark, float | None], ...]:
        """For each mark of the dial the feed nearest to `vf` (else the middle) that is inside; None where none is."""
        made = []
        for mark in sorted(self.spindle.dial, key=lambda mark: mark.true):
            low, high = self.feeds(mark.true)
            feed = None
            if self.turns(mark.true):
                wanted = self._middle(low, high) if vf is None else aim(vf, low, high)
                feed = runnable(wanted, low, high, inch)
            made.append((mark, feed))
        return tuple(made)

    def region(self, slowest: float, fastest: float, most: float) -> tuple[tuple[Corner, ...], ...]:
        """The outlines of the region between two speeds and under the feed `most`, corners in turn; one cut only.

        Exact where limits are straight; a curve (power, a rising floor) is followed in steps of a 256th of the range.
        """
        low_speed, high_speed = self.speeds()
        slowest, fastest = max(slowest, low_speed), min(fastest, high_speed)
        if not 0 < slowest < fastest:
            return ()
        at = self._crossings(np.geomspace(slowest, fastest, GRID), most)
        lows, highs, under, over = self._bounds(at, most)
        open_ = lows <= highs * (1 + 1e-9)
        outlines, start = [], None
        for k in range(len(at) + 1):
            if k < len(at) and open_[k]:
                start = k if start is None else start
            elif start is not None:
                if k - start > 1:
                    cut = slice(start, k)
                    outlines.append(self._outline(at[cut], lows[cut], highs[cut], under[cut], over[cut]))
                start = None
        return tuple(outlines)

    def _lines(self) -> tuple[list[Limit], list[Limit]]:
        lines = [limit for limit in self.limits if not isinstance(limit, Speed)]
        return [limit for limit in lines if limit.least], [limit for limit in lines if not limit.least]

    def _bounds(self, at: Column, most: float) -> tuple[Column, Column, list[str], list[str]]:
        """(low, high, name of the limit that is low, that is high) at each speed."""
        least, greatest = self._lines()
        low, high = np.zeros(len(at)), np.full(len(at), most)
        under, over = [""] * len(at), [""] * len(at)
        for limit in least:
            value = np.ravel(limit.at(at[:, None]))
            for k in np.flatnonzero(value > low):
                low[k], under[k] = value[k], limit.name
        for limit in greatest:
            value = np.ravel(limit.at(at[:, None]))
            for k in np.flatnonzero(value < high):
                high[k], over[k] = value[k], limit.name
        return low, high, under, over

    def _crossings(self, grid: Column, most: float) -> Column:
        """The grid and every speed at which two limits meet."""
        least, greatest = self._lines()
        lines = [*least, *greatest]
        found = [grid]
        for k, one in enumerate(lines):
            first = np.ravel(one.at(grid[:, None])) - most
            found.append(_meet(grid, first, lambda n, one=one: float(np.ravel(one.at(n))[0]) - most))
            for other in lines[k + 1 :]:
                apart = np.ravel(one.at(grid[:, None])) - np.ravel(other.at(grid[:, None]))
                gap = lambda n, one=one, other=other: float(np.ravel(one.at(n))[0] - np.ravel(other.at(n))[0])  # noqa: E731
                found.append(_meet(grid, apart, gap))
        return distinct(np.concatenate(found))

    def _outline(self, at: Column, low: Column, high: Column, under: list[str], over: list[str]) -> tuple[Corner, ...]:
        bottom = [Corner(float(n), float(vf), name) for n, vf, name in zip(at, low, under)]
        top = [Corner(float(n), float(vf), name) for n, vf, name in zip(at, high, over)]
        return (*_straight(bottom), *reversed(_straight(top)))


def _straight(chain: list[Corner]) -> list[Corner]:
    """Without the corners that lie on the line between their neighbours."""
    kept = chain[:1]
    for k in range(1, len(chain) - 1):
        a, b, c = kept[-1], chain[k], chain[k + 1]
        on = a.feed + (c.feed - a.feed) * (b.speed - a.speed) / (c.speed - a.speed) if c.speed > a.speed else b.feed
        if abs(b.feed - on) > 1e-9 * max(abs(b.feed), 1e-9) or b.limit != a.limit:
            kept.append(b)
    return [*kept, chain[-1]] if len(chain) > 1 else kept


def _meet(grid: Column, apart: Column, gap: object) -> Column:
    """Where a difference changes its sign, by halving."""
    made = []
    with np.errstate(invalid="ignore"):
        turns = np.flatnonzero(np.sign(apart[:-1]) * np.sign(apart[1:]) < 0)
    for k in turns:
        a, b, sign = float(grid[k]), float(grid[k + 1]), apart[k] > 0
        for _ in range(60):
            middle = (a + b) / 2
            if (gap(middle) > 0) == sign:  # type: ignore[operator]
                a = middle
            else:
                b = middle
        made.append((a + b) / 2)
    return np.array(made)


def aim(vf: float, low: float, high: float) -> float:
    """`vf` where it is inside; else a third of the window (at most) inside the limit that it breaks."""
    if low <= vf <= high:
        return vf
    if vf < low:
        return low * model_number("open_window") if math.isinf(high) else low + (high - low) * model_number("aim")
    return high / model_number("open_window") if low <= 0 else high - (high - low) * model_number("aim")


def runnable(vf: float, low: float, high: float, inch: bool = False) -> float | None:
    """The feed as a person would type it, inside low to high, in steps of 10, 1 or 0.1 of its unit; else None."""
    unit = 25.4 if inch else 1.0
    if not (math.isfinite(vf) and vf > 0 and low <= high * (1 + SAME)):
        return None
    for step in _steps(vf / unit):
        near = round(vf / unit / step)
        for count in sorted((near, near - 1, near + 1), key=lambda k: abs(k * step * unit - vf)):
            feed = round(count * step, 4)
            if feed > 0 and low * (1 - SAME) <= feed * unit <= high * (1 + SAME):
                return feed * unit
    return None


def _steps(value: float) -> Iterable[float]:
    return (10.0, 1.0, 0.1, 0.01) if value >= 100 else (1.0, 0.1, 0.01) if value >= 10 else (0.1, 0.01, 0.001)
