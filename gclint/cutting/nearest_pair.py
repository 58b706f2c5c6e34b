"""From a pair of speed and feed that breaks a limit to one that the machine can run and that breaks none."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable

from msgspec import Struct
from msgspec.structs import replace

from gclint.columns import Column
from gclint.cutting.window import SAME, Pair, Window, aim, runnable
from gclint.knowledge.numbers import model_number

ROUND_SPEED = 500.0  # rev/min: a speed that is chosen anew is a round number
ROUND_FEED = 100.0  # mm/min, over 1000


class Part(Struct, frozen=True, eq=False):
    """All places that run with one feed, mm/min; `speeds`: the true speed at each, rev/min; `lines`: of its F words."""

    feed: float
    window: Window
    speeds: Column
    lines: tuple[int, ...] = ()


class Feeds(Struct, frozen=True):
    """Feeds that are inside at the speed as it is, and the one to set; None where none is."""

    low: float
    high: float
    to: float | None


def same_speed(part: Part, inch: bool = False, wanted: float | None = None) -> Feeds:
    """What feed to run at the speed as it is; `wanted`: rather this one."""
    low, high = part.window.feeds(part.speeds)
    return Feeds(low, high, runnable(aim(part.feed if wanted is None else wanted, low, high), low, high, inch))


def without_broken(part: Part, but: tuple[str, ...]) -> Part:
    """The part without the limits that it breaks already, but for those named: one thing is mended at a time."""
    window = part.window
    kept = [one for one in window.limits if one.name in but or window.only([one]).takes(part.speeds, part.feed)]
    return replace(part, window=window.only(kept))


def marks_that_do(parts: Iterable[Part], dial: str | None, speed: float) -> tuple[Pair, ...]:
    """Marks at which every part is inside with its feed as it is, the nearest first."""
    parts = tuple(parts)
    spindle = parts[0].window.spindle
    found = [
        Pair(mark.true, parts[0].feed, mark.mark)
        for mark in spindle.dial
        if mark.mark != dial and abs(mark.true - speed) > SAME * speed
        and all(part.window.inside(mark.true, part.feed) for part in parts)
    ]  # fmt: skip
    return tuple(sorted(found, key=lambda pair: abs(pair.speed - speed)))


class Pairs(Struct, frozen=True):
    """A speed to set, and the feed of each part with it, mm/min."""

    speed: float
    mark: str
    feeds: tuple[float, ...]


def other_speed(
    parts: tuple[Part, ...], order: Callable[[float], float], inch: bool = False, scaled_from: float | None = None
) -> Pairs | None:
    """The speed first in `order` at which every part has a feed inside, with some room; None where no speed does.

    `scaled_from`: the feeds go with the speed from here, so that the chip stays; else they stay where they are inside.
    """
    allowed = {one.speed: one for one in parts[0].window.allowed()}
    for part in parts[1:]:
        allowed = {one.speed: one for one in part.window.allowed() if one.speed in allowed}
    choices = sorted(allowed.values(), key=lambda one: order(one.speed))
    if scaled_from is None and parts[0].window.spindle.kind != "dial":
        choices = [one for one in choices if one.speed % ROUND_SPEED == 0] + choices
    for roomy in (True, False):
        for one in choices:
            feeds = [_feed(part, one.speed, inch, scaled_from, roomy) for part in parts]
            if all(feed is not None for feed in feeds):
                return Pairs(one.speed, one.mark, tuple(feed for feed in feeds if feed is not None))
    return None


def _feed(part: Part, speed: float, inch: bool, scaled_from: float | None, roomy: bool) -> float | None:
    low, high = part.window.feeds(speed)
    if roomy and part.window.feeds(speed * model_number("open_window"))[0] == math.inf:
        return None  # what is never reached would still be only just thick enough
    if scaled_from is not None:
        return runnable(aim(part.feed * speed / scaled_from, low, high), low, high, inch)
    wanted = aim(part.feed, low, high)
    if not inch and ROUND_FEED * 10 <= wanted < math.inf and wanted != part.feed:
        whole = math.floor(wanted / ROUND_FEED) if wanted < part.feed else math.ceil(wanted / ROUND_FEED)
        if low <= whole * ROUND_FEED <= high:
            return whole * ROUND_FEED
    return runnable(wanted, low, high, inch)


def nearest_to(speed: float) -> Callable[[float], float]:
    """An order for `other_speed`: the smallest change first."""
    return lambda n: abs(math.log(n / speed)) if n > 0 and speed > 0 else math.inf


def fastest(n: float) -> float:
    """An order for `other_speed`."""
    return -n
