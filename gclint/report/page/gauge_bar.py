"""A window drawn as a bar: where the value lies on it, told by place and form, not by colour alone."""

from __future__ import annotations

import math

from markupsafe import Markup

from gclint.digest.words import figure
from gclint.tables.finding import Finding

WIDE, HIGH = 300, 34
SIDE = 75  # of the bar, on each side of the window: from nothing to its low end, and up to twice its high end


def gauge_bar(finding: Finding) -> Markup:
    """Draw what was found against its window; empty where the two cannot be drawn on one line."""
    found, window = finding.found, finding.window
    if found is None or window is None or not isinstance(found.value, (int, float)) or found.unit != window.unit:
        return Markup()
    value, low, high = float(found.value), window.low, window.high
    if not math.isfinite(value) or (low is None and not high):
        return Markup()
    left = SIDE if low is not None else 0
    right = WIDE - SIDE if high is not None else WIDE
    at = _place(value, low, high, left, right)
    ends = [(left, figure(low), "start")] if low is not None else []
    if high is not None and high != low:
        ends.append((right, figure(high), "end"))
    words = "".join(
        Markup('<text x="{}" y="32" text-anchor="{}">{}</text>').format(x, anchor, text) for x, text, anchor in ends
    )
    return Markup(
        '<svg class="gauge" viewBox="-8 0 {w} {h}" width="{w}" height="{h}" aria-hidden="true">'
        '<path class="all" d="M0 14H{wide}"/><rect class="window" x="{left}" y="8" width="{span}" height="12"/>'
        '<path class="value" d="M{at} 20l-6 -10h12z"/><path class="value" d="M{at} 3v18"/>{words}</svg>'
    ).format(w=WIDE + 16, h=HIGH, wide=WIDE, left=left, span=max(right - left, 3), at=round(at, 1), words=Markup(words))


def _place(value: float, low: float | None, high: float | None, left: float, right: float) -> float:
    """Where the value lies on the bar; what is far over its end lies at it."""
    if low is not None and value < low:
        return left * max(0.0, value / low if low > 0 else 0.0)
    if high is not None and value > high:
        over = (value - high) / high if high > 0 else 1.0
        return right + (WIDE - right) * min(over, 1.0)
    bottom = low or 0.0
    if high is None or high <= bottom:
        return (left + right) / 2
    return left + (right - left) * (value - bottom) / (high - bottom)
