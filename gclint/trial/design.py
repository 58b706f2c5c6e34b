"""Which cuts are made: a full grid where there is room for one, else points spread evenly over feed, speed and depth.

Both entries, where both are asked for, are cut at every point, so that they can be compared like with like.
"""

from __future__ import annotations

from collections.abc import Iterator

from msgspec import Struct

from gclint.problem import Problem
from gclint.trial.asked import Asked
from gclint.trial.layout_numbers import plan_number
from gclint.trial.levels import STEP, Levels, Speed

FEWEST = 3  # points for a tool: fewer show no trend
MOST_FEEDS = 6  # at each speed of a grid
GRID_SPEEDS = 3  # where the spindle has no marks


class Cell(Struct, frozen=True):
    """A cut that has no number yet."""

    tool: int
    speed: Speed
    feed: float  # mm/min
    entry: str
    depth: float
    middle: float  # how far from the middle of the feeds, 0 to 1


class Chosen(Struct, frozen=True):
    cells: tuple[Cell, ...]
    repeats: int  # how many of them are to be cut twice
    notes: tuple[str, ...]


def choose(levels: tuple[Levels, ...], asked: Asked, most: float) -> Chosen:
    """`most`: the greatest feed of the test shape, mm/min. Raises Problem where the cuts are too few."""
    repeats = asked.repeats if asked.repeats is not None else max(2, round(asked.cuts * plan_number("repeats")))
    points = (asked.cuts - repeats) // (len(levels) * len(asked.entries))
    if points < FEWEST:
        least = FEWEST * len(levels) * len(asked.entries) + repeats
        says = f"{asked.cuts} cuts are too few for {len(levels)} tool{'s' if len(levels) > 1 else ''}"
        says += f" and {len(asked.entries)} kind{'s' if len(asked.entries) > 1 else ''} of entry"
        raise Problem(f"{says}, {repeats} of them repeats: at least {least}", "--cuts")
    cells: list[Cell] = []
    notes: list[str] = []
    for each in levels:
        used = _reachable(each, most, notes)
        made = list(_points(used, asked, points, most))
        cells += [Cell(each.tool.number, s, f, e, d, m) for s, f, d, m in _apart(made) for e in asked.entries]
    repeats = min(asked.cuts - len(cells), len(cells)) if asked.repeats is None else repeats
    return Chosen(tuple(cells), repeats, tuple(notes))


def _reachable(each: Levels, most: float, notes: list[str]) -> Levels:
    """Without the speeds at which even the thinnest chip asks for more feed than the machine gets to on the shape."""
    from msgspec.structs import replace

    left, dropped, cut_short = [], [], []
    for speed in each.speeds:
        low, high = each.feed_range(speed.true, most)
        if low > high * 0.95:
            dropped.append(speed)
        else:
            left.append(speed)
            if high < each.feed_range(speed.true, float("inf"))[1] * 0.999:
                cut_short.append(speed)
    if not left:
        raise Problem(f"at no speed does {each.tool.called} get a chip with the feeds that are possible here", "--feed")
    for some, says in (
        (dropped, "is left out: even the thinnest chip needs more feed than is reached on the test shape"),
        (cut_short, f"is tried up to {most:.0f} mm/min only, the feed that is reached on the test shape"),
    ):
        if some and each.dial:
            notes.append(f"{each.tool.called}: mark {', '.join(str(speed.mark) for speed in some)} {says}")
        elif some:
            notes.append(f"{each.tool.called}: {', '.join(f'S{speed.set:g}' for speed in some)} {says}")
    if not each.dial and len(left) == 1 and len(each.speeds) == 2:
        left = [left[0]]
    return replace(each, speeds=tuple(left))


Point = tuple[Speed, float, float, float]  # speed, feed, depth, distance from the middle


def _points(each: Levels, asked: Asked, points: int, most: float) -> Iterator[Point]:
    speeds = _grid_speeds(each)
    feeds = min(points // (len(speeds) * len(each.depths)), MOST_FEEDS)
    if asked.design == "grid" and feeds < 2:
        needs = 2 * len(speeds) * len(each.depths)
        raise Problem(f"a grid of {len(speeds)} speeds and {len(each.depths)} depths needs {needs} points", "--design")
    if asked.design == "grid" or (asked.design is None and feeds >= plan_number("grid")):
        for speed in speeds:
            for depth in each.depths:
                for n in range(feeds):
                    yield _point(each, speed, n / (feeds - 1), depth, most)
        return
    for row in _spread(points, 3, asked.seed + each.tool.number):
        depth = each.depths[min(int(row[2] * len(each.depths)), len(each.depths) - 1)]
        yield _point(each, _speed_at(each, row[1]), row[0], depth, most)


def _point(each: Levels, speed: Speed, share: float, depth: float, most: float) -> Point:
    low, high = each.feed_range(speed.true, most)
    feed = typed(low * (high / low) ** share) if low > 0 else typed(high * max(share, 0.1))
    return speed, feed, depth, abs(2 * share - 1)


def typed(feed: float) -> float:
    """A feed as a person would type it."""
    step = 10.0 if feed >= 200 else 5.0 if feed >= 50 else 1.0
    return max(round(feed / step) * step, step)


def _apart(points: list[Point]) -> Iterator[Point]:
    """Points that fall together after rounding are moved apart by what people set."""
    seen: set[tuple[float, float, float]] = set()
    for speed, feed, depth, middle in points:
        while (speed.set, feed, depth) in seen:
            feed -= 10.0 if feed > 300 else 1.0
        seen.add((speed.set, feed, depth))
        yield speed, feed, depth, middle


def _grid_speeds(each: Levels) -> tuple[Speed, ...]:
    if each.dial or len(each.speeds) < 2:
        return each.speeds
    return tuple(dict.fromkeys(_speed_at(each, n / (GRID_SPEEDS - 1)) for n in range(GRID_SPEEDS)))


def _speed_at(each: Levels, share: float) -> Speed:
    if each.dial or len(each.speeds) < 2:
        return each.speeds[min(int(share * len(each.speeds)), len(each.speeds) - 1)]
    low, high = each.speeds[0].set, each.speeds[-1].set
    n = round(low * (high / low) ** share / STEP) * STEP
    return Speed(n, n)


def _spread(count: int, dimensions: int, seed: int) -> list[list[float]]:
    """Rows in the unit cube, evenly spread in every single direction and in all together (a Latin hypercube)."""
    try:
        from scipy.stats import qmc
    except ImportError:
        says = "spreading the cuts needs the scipy library: pip install 'gclint[trial]', or ask for --design grid"
        raise Problem(says) from None
    sampler = qmc.LatinHypercube(d=dimensions, optimization="random-cd", rng=seed)
    return [[float(value) for value in row] for row in sampler.random(count)]
