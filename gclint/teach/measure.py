"""What was found beside the limits it is held against, as bars on one scale."""

from __future__ import annotations

from gclint.digest.words import STANDING_WORDS, figure
from gclint.tables.finding import Found, Limits
from gclint.teach.canvas import Drawing

BAR = 44
MOST_OVER = 3.0  # times the larger limit; a bar that is longer is broken


def measure_view(found: Found, window: Limits | None, others: tuple[tuple[str, float], ...] = ()) -> Drawing | None:
    """Bars from 0: the value, its window, and other lengths to compare (name, value in the same unit)."""
    value = found.value
    if not isinstance(value, (int, float)) or window is None or value < 0:
        return None
    low, high = window.low, window.high
    ends = [end for end in (low, high) if end is not None]
    if not ends or min(ends) < 0 or (window.unit != found.unit):
        return None
    most = max(ends) * MOST_OVER if max(ends) > 0 else float(value)
    full = max(*ends, min(float(value), most), *(v for _, v in others)) * 1.04
    if full <= 0:
        return None

    def columns(length: float) -> int:
        return round(min(length / full, 1.0) * BAR)

    left, right = columns(low or 0.0), columns(high) if high is not None else BAR
    good = " " * left + "[" + "=" * max(0, right - left - 1) + (">" if high is None else "]")
    if high == 0:
        good = "|"
    rows = [("found", _bar(float(value), full), f"{figure(float(value))} {found.unit}"), ("good", good, _said(window))]
    rows += [(name, _bar(size, full), f"{figure(size)} {found.unit}") for name, size in others]
    wide = max(len(name) for name, _, _ in rows)
    lines = tuple(f"{name:<{wide}}  {bar:<{BAR + 2}} {said}".rstrip() for name, bar, said in rows)
    broken = "; ...> is a bar that goes on" if any("...>" in line for line in lines) else ""
    standing = STANDING_WORDS.get(window.standing, window.standing)
    return Drawing(f"Measured: {found.name}", lines, (), f"the limits: {standing}{broken}")


def _bar(value: float, full: float) -> str:
    length = round(min(value / full, 1.0) * BAR)
    return "X" * max(length, 1) + ("...>" if value > full * 1.0001 else "")


def _said(window: Limits) -> str:
    if window.low is not None and window.high is not None:
        return f"{figure(window.low)} to {figure(window.high)} {window.unit}"
    if window.high == 0:
        return "none"
    if window.high is not None:
        return f"up to {figure(window.high)} {window.unit}"
    return f"from {figure(window.low or 0)} {window.unit}"
