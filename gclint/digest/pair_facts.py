"""Whether the pairs of speed and feed of each tool are inside every limit that is known."""

from __future__ import annotations

import math

import msgspec
import numpy as np

from gclint.advice.parts import parts_of
from gclint.columns import numbered
from gclint.cutting.nearest_pair import Part
from gclint.cutting.window import SAME
from gclint.digest.words import Lengths, figure
from gclint.facts.context import Context
from gclint.facts.registry import View
from gclint.run import Tables

MOST = 3  # pairs of one tool: those that cut most


class PairFacts(msgspec.Struct, frozen=True):
    """One feed of a tool at one true speed; `feeds_mm_min`: least and greatest that are inside there, None: none is."""

    tool: int | None
    feed_mm_min: float
    speed_rpm: float
    inside: bool
    broken: tuple[str, ...]
    feeds_mm_min: tuple[float, float | None] | None


def pair_facts(tables: Tables) -> tuple[PairFacts, ...]:
    context = Context(tables.program, tables.motion, tables.timing, tables.engagement, tables.cutting, tables.setup)
    pieces, m = tables.engagement.pieces, tables.motion
    if not len(pieces):
        return ()
    view, made = View.of("pieces", context), []
    length = np.bincount(pieces.move, pieces.length, minlength=len(m))
    for tool in context.tools:
        mine = m.tool == tool
        rows = np.flatnonzero(mine & (length > 0) & (m.feed > 0) & (context.cutting.true_speed_of > 0))
        pairs, which = numbered((m.feed + 1j * context.cutting.true_speed_of)[rows])
        most = np.argsort(-np.bincount(which, length[rows], len(pairs)), kind="stable")[:MOST]
        for feed, speed in ((float(pairs[k].real), float(pairs[k].imag)) for k in most):
            moved = mine & (m.feed == feed) & (context.cutting.true_speed_of == speed)
            for part in parts_of(view, moved, one=False):
                made.append(_facts(part, tool, speed))
    return tuple(made)


def _facts(part: Part, tool: int, speed: float) -> PairFacts:
    low, high = part.window.feeds(speed)
    window, feed = part.window, part.feed
    broken = tuple(one.name for one in window.limits if not window.only([one]).inside(speed, feed))
    feeds = (round(low, 2), None if math.isinf(high) else round(high, 2)) if low <= high * (1 + SAME) else None
    return PairFacts(tool if tool >= 0 else None, part.feed, speed, not broken, broken, feeds)


def pair_words(facts: PairFacts, lengths: Lengths) -> str:
    """'F1500 at 26500 rev/min is outside (thinnest chip); inside there: F1855 to F2500'."""

    def shown(feed: float, up: bool) -> str:
        return "F" + figure(feed * lengths.scale * (1 + (1e-4 if up else -1e-4)), 4)

    pair = f"{'F' + figure(facts.feed_mm_min * lengths.scale, 4)} at {facts.speed_rpm:g} rev/min"
    verdict = "is inside every limit that is known" if facts.inside else f"is outside ({', '.join(facts.broken)})"
    if facts.feeds_mm_min is None:
        return f"{pair} {verdict}; no feed there is inside"
    low, high = facts.feeds_mm_min
    if not low and high is None:
        return f"{pair} {verdict}"
    ends = f"{shown(low, True)} or more" if high is None else f"{shown(low, True)} to {shown(high, False)}"
    if not low and high is not None:
        ends = f"up to {shown(high, False)}"
    return f"{pair} {verdict}; inside there: {ends}"
