"""Margins in words, for every sheet."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from gclint.digest.margins_of_reach import DISTANCES
from gclint.digest.words import Lengths, figure, measure, span
from gclint.tables.finding import Margin, Mark, ToolRow

ENDS = {
    ("chip", "least"): "the thinnest", ("chip", "most"): "the thickest",
    ("edge speed", "least"): "the slowest", ("edge speed", "most"): "the fastest",
    ("depth of a slot", "most"): "the deepest", ("depth beside a wall", "most"): "the deepest",
}  # fmt: skip
LOADS = ("bending", "stress", "power")
FAR_LOAD = 0.8  # a load with more room than this is told in a word
LEVEL = 0.005  # mm within which a cut ends at the lowest it may go
AT = 0.005  # share by which a value may differ from its limit to be told as being at it
ALIKE = 0.02  # share by which two values may differ to be told as one
FAR = 1.0  # as a share: from here on a least limit is told as "2.4 times"


def margin_words(row: ToolRow, lengths: Lengths) -> list[str]:
    """['chip 0.055 mm: 31 % above the thinnest, 45 % under the thickest', ...], one for each quantity."""
    by_what: dict[str, list[Margin]] = {}
    for one in row.margins:
        by_what.setdefault(one.what, []).append(one)
    made, far = [], []
    for what, sides in by_what.items():
        if what in LOADS and sides[0].room >= FAR_LOAD:
            far.append(what)
            continue
        if what in DISTANCES:
            continue
        made.append(f"{what} {_both(sides, lengths)}: {', '.join(_room(one) for one in sides)}")
    if far:
        made.append(f"{', '.join(far)}: over {FAR_LOAD * 100:.0f} % under the most")
    return made + _distances(by_what, lengths)


def _distances(by_what: Mapping[str, list[Margin]], lengths: Lengths) -> list[str]:
    """['lowest cut 16 mm deep: 2 mm above the table', 'height of rapids 5 mm', 'travel: X 120 of 600 mm, ...']."""
    made = []
    if low := by_what.get("lowest cut"):
        left = low[0].limit - low[0].found
        place = "at" if abs(left) < LEVEL else f"{lengths.length(abs(left))} {'above' if left > 0 else 'below'}"
        made.append(f"lowest cut {lengths.length(low[0].found)} deep: {place} the lowest it may go")
    if high := by_what.get("height of rapids"):
        made.append(f"rapids {lengths.length(high[0].found)} or more above the stock: {_room(high[0])}")
    axes = [(what[-1], sides[0]) for what, sides in by_what.items() if what.startswith("travel in ")]
    if axes:
        told = ", ".join(f"{axis} {lengths.length(one.found)} of {lengths.length(one.limit)}" for axis, one in axes)
        made.append(f"travel: {told}")
    return made


def nearest_words(rows: Iterable[ToolRow], lengths: Lengths) -> list[str]:
    """['tool 1: chip 37 % under the thickest, 0.0441 mm on line 13']: the limit that is nearest, for each tool."""
    made = []
    for row in rows:
        shares = [margin for margin in row.margins if margin.what not in DISTANCES]
        if not shares:
            continue
        one = min(shares, key=lambda margin: margin.room)
        label = "the tool" if row.tool is None else f"tool {row.tool}"
        made.append(f"{label}: {one.what} {_room(one)}, {_shown(one, lengths)} on line {one.line}")
    return made


def mark_words(marks: tuple[Mark, ...], lengths: Lengths) -> str:
    """'2 or 3 suits these feeds; not 1 (thickest chip), 4 (thinnest chip)'; '' where none is in question."""
    if not marks:
        return ""
    good = [mark.mark for mark in marks if mark.suits]
    bad = [f"{mark.mark} ({_why(mark, lengths)})" for mark in marks if not mark.suits]
    first = f"{' or '.join(good)} suits these feeds" if good else "none suits these feeds"
    return f"{first}; not {', '.join(bad)}" if bad else first


def _why(mark: Mark, lengths: Lengths) -> str:
    feed = f", F{figure(mark.feed_mm_min * lengths.scale, 4)} would" if mark.feed_mm_min else ""
    return f"{' and '.join(mark.breaks) or 'no limit alone'}{feed}"


def _both(sides: list[Margin], lengths: Lengths) -> str:
    """What was found: one value where both limits are held against about the same."""
    low, high = min(sides, key=lambda one: one.found), max(sides, key=lambda one: one.found)
    if high.found - low.found <= ALIKE * high.found:
        return _shown(high, lengths)
    return lengths.lengths(low.found, high.found) if low.unit == "mm" else span(low.found, high.found, low.unit)


def _shown(one: Margin, lengths: Lengths) -> str:
    return lengths.length(one.found) if one.unit == "mm" else measure(one.found, one.unit)


def _room(one: Margin) -> str:
    end = ENDS.get((one.what, one.side), "the least" if one.side == "least" else "the most")
    if abs(one.room) < AT:
        return f"at {end}"
    if one.room < -FAR and one.side == "most":
        return f"{figure(1 - one.room, 2)} times {end}"
    if one.side == "least":
        if one.room > FAR:
            return f"{figure(one.room + 1, 2)} times {end}"
        return f"{_percent(one.room)} {'above' if one.room >= 0 else 'under'} {end}"
    return f"{_percent(one.room)} {'under' if one.room >= 0 else 'over'} {end}"


def _percent(share: float) -> str:
    return f"{abs(share) * 100:.0f} %"
