"""Where no pair of speed and feed is inside: which limit to move, and by how much."""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
from msgspec import Struct
from msgspec.structs import replace

from gclint.cutting.cut_limits import Bounds, Cut, window_of
from gclint.cutting.window import SAME, Window
from gclint.knowledge.numbers import model_number
from gclint.tables.setup import Setup, Tool

HALVINGS = 24
ROOM = 0.98  # a number to work with, not the last one that just does


class Way(Struct, frozen=True):
    """One thing to change, alone, that opens the window: from what to what, mm or flutes."""

    what: str  # "depth", "width", "flutes", "stickout"
    was: float
    to: float
    unit: str


def any_pair(window: Window) -> bool:
    """Whether some speed that can be set leaves a feed; of one cut."""
    allowed = window.allowed()
    if not allowed:
        return False
    n = np.array([one.speed for one in allowed])[:, None]
    low, high = np.zeros(len(n)), np.full(len(n), np.inf)
    for limit in window.limits:
        bound = np.ravel(limit.at(n))
        low, high = (np.fmax(low, bound), high) if limit.least else (low, np.fmin(high, bound))
    return bool(np.any(low <= high * (1 + SAME)))


def ways_out(cut: Cut, tool: Tool, setup: Setup, bounds: Bounds) -> tuple[Way, ...]:
    """Each change that alone makes some pair inside, the smallest that does; empty where a pair is inside already."""

    def opens(changed: Cut, with_tool: Tool = tool) -> bool:
        return any_pair(window_of(changed, with_tool, setup, bounds))

    if opens(cut):
        return ()
    found = []
    least = model_number("shallow")
    depth = _most(lambda share: opens(replace(cut, ap=cut.ap * share)), least / cut.ap)
    if depth is not None:
        found.append(Way("depth", cut.ap, cut.ap * depth, "mm"))
    width = _most(lambda share: opens(replace(cut, ae=cut.ae * share)), least / cut.ae)
    if width is not None:
        found.append(Way("width", cut.ae, cut.ae * width, "mm"))
    for fewer in range((tool.flutes or 1) - 1, 0, -1):
        if opens(cut, replace(tool, flutes=fewer)):
            found.append(Way("flutes", tool.flutes or 0, fewer, ""))
            break
    if tool.stickout:
        shortest = max(cut.ap, tool.diameter) / tool.stickout

        def shorter(share: float) -> bool:
            out = tool.stickout * share if tool.stickout else 0.0
            flutes = None if tool.flute_length is None else min(tool.flute_length, out)
            return opens(cut, replace(tool, stickout=out, flute_length=flutes))

        out = _most(shorter, shortest)
        if out is not None:
            found.append(Way("stickout", float(tool.stickout), tool.stickout * out, "mm"))
    return tuple(found)


def _most(opens: Callable[[float], bool], least: float) -> float | None:
    """The greatest share under 1 that opens the window, by halving; None where not even `least` does."""
    if not 0 < least < 1 or not opens(least):
        return None
    low, high = least, 1.0
    for _ in range(HALVINGS):
        middle = math.sqrt(low * high)
        low, high = (middle, high) if opens(middle) else (low, middle)
    share = low * ROOM
    return share if share > least and opens(share) else low
