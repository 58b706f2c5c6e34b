"""A window drawn as one line of text: where the value lies, low to high, readable without colour."""

from __future__ import annotations

import math

from gclint.digest.words import figure
from gclint.tables.finding import Finding

WIDTH = 40


def gauge_of(finding: Finding) -> str:
    """What was found against its window; empty where the two cannot be drawn on one line."""
    found, window = finding.found, finding.window
    if found is None or window is None or not isinstance(found.value, (int, float)) or found.unit != window.unit:
        return ""
    return gauge(float(found.value), window.low, window.high)


def gauge(value: float, low: float | None, high: float | None) -> str:
    """'......X.....[0.035 ======== 0.1]............'; X is the value, on the side of the window where it lies.

    The window takes the middle of the line; outside it the distance is drawn in proportion, up to the line's end.
    """
    point = low is not None and low == high  # one value alone is good
    if not math.isfinite(value) or (low is None and not high):
        return ""
    left = "|0 " if low is None else f"[{figure(low)} "
    right = " >" if high is None else f" {figure(high)}]"
    if point:
        left, right = left.rstrip(), " X]" if value == low else "]"
    middle = len(left) + len(right) if point else max(14, len(left) + len(right) + 4)
    window = left + "=" * (middle - len(left) - len(right)) + right
    side = (WIDTH - middle) // 2
    before, after = ("." * side if low is not None else ""), ("." * side if high is not None else "")
    if low is not None and value < low:
        # the whole left side stands for everything from nothing to the low limit
        at = round(max(0.0, value / low if low > 0 else 0.0) * (side - 1))
        before = _marked(before, min(at, side - 1))
    elif high is not None and value > high:
        # and the right side for everything up to twice the high limit
        over = (value - high) / high if high > 0 else 1.0
        after = _marked(after, min(round(over * (side - 1)), side - 1))
        if over > 1:
            after += ">"
    elif not point:
        inner = middle - len(left) - len(right)
        bottom = low or 0.0
        share = 0.5 if high is None or high <= bottom else max(0.0, (value - bottom) / (high - bottom))
        at = len(left) + min(round(share * (inner - 1)), inner - 1)
        window = _marked(window, at)
    return before + window + after


def _marked(text: str, at: int) -> str:
    return text[:at] + "X" + text[at + 1 :]
