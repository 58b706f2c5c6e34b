"""From a chip that is too thin or too thick to a feed or a speed that this machine can run."""

from __future__ import annotations

import math

from msgspec import Struct

from gclint.setup.numbers import model_number
from gclint.setup.types import Machine, Spindle


class Advice(Struct, frozen=True):
    """`feed` mm/min and `speed` rev/min to set together; None: leave it as it is; both None: nothing works."""

    feed: float | None
    speed: float | None
    marks: tuple[tuple[str, float], ...]  # dial marks that do with the feed as it is, nearest first, and their chip
    text: str


def feed_for_chip(h: float, h_per_fz: float, flutes: float, speed: float) -> float:
    """Feed, mm/min, at which the chip is `h` mm thick; h_per_fz = h / fz of the piece."""
    return h / h_per_fz * flutes * speed


def advise_chip(
    too_thin: bool,
    piece_fz: float,
    piece_h: float,
    flutes: int,
    true_speed: float,
    set_feed: float,
    window_low: float | None,
    window_high: float | None,
    spindle: Spindle,
    machine: Machine,
    dial: str | None = None,
    inch: bool = False,
) -> Advice:
    """What brings the worst piece (its fz, h in mm at `set_feed` mm/min and `true_speed` rev/min) inside its window.

    `dial` is the mark in use, `inch` makes the text speak inches per minute; the numbers stay mm/min.
    """
    low = window_low if window_low is not None and math.isfinite(window_low) else 0.0
    high = window_high if window_high is not None and math.isfinite(window_high) else math.inf
    ratio = piece_h / piece_fz if piece_fz > 0 else math.nan
    if not (ratio > 0 and flutes > 0 and true_speed > 0 and low < high):
        return Advice(None, None, (), "Nothing can be advised: the chip is not known.")
    limit = low if too_thin else high
    aim = _aim(too_thin, low, high)
    edge = feed_for_chip(limit, ratio, flutes, true_speed)  # the feed at the broken limit
    most = _feed_limit(machine)
    feed: float | None = _tidy(min(feed_for_chip(aim, ratio, flutes, true_speed), most), up=too_thin, most=most)
    if too_thin and most < edge:
        feed = None
    marks = _marks(piece_h, true_speed, low, high, spindle, dial)
    texts = []
    if feed is not None:
        word = "or more" if too_thin else "or less"
        at = f" at dial {dial}" if dial else ""
        texts.append(f"F{_shown(edge, too_thin, inch)} {word}{at}")
    if marks:
        chip = f"{marks[0][1] / 25.4:.4f} in" if inch else f"{marks[0][1]:.3f} mm"
        texts.append(f"dial {marks[0][0]} with the feed as it is (chip {chip})")
    if texts:
        return Advice(feed, None, marks, ", or ".join(texts))
    if spindle.kind == "dial":
        return _with_mark(aim, ratio, flutes, most, low, true_speed, spindle, inch)
    return _with_speed(aim, ratio, flutes, most, low, spindle, inch)


def _with_mark(
    aim: float, ratio: float, flutes: float, most: float, low: float, true_speed: float, spindle: Spindle, inch: bool
) -> Advice:
    """No feed does at this mark and no mark at this feed: the nearest mark at which some feed of this machine does."""
    for mark in sorted(spindle.dial, key=lambda mark: abs(mark.true - true_speed)):
        feed = min(feed_for_chip(aim, ratio, flutes, mark.true), most)
        if feed >= feed_for_chip(low, ratio, flutes, mark.true):
            feed = _tidy(feed, up=False, most=most)
            return Advice(feed, None, (), f"F{_shown(feed, False, inch)} at dial {mark.mark}")
    return Advice(None, None, (), "No feed and no dial mark of this machine brings the chip into its window.")


def _with_speed(
    aim: float, ratio: float, flutes: float, most: float, low: float, spindle: Spindle, inch: bool
) -> Advice:
    """The machine's feed limit is too low at this speed: run at the limit and turn slower."""
    floor = spindle.low or 0.0
    speed = max(most * ratio / (aim * flutes), floor)
    chip = most * ratio / (speed * flutes)
    if chip < low:
        return Advice(None, None, (), "No feed at any speed of this spindle brings the chip into its window.")
    speed = math.floor(speed / 100.0) * 100.0 if speed - floor >= 100.0 else math.ceil(speed)
    feed = math.floor(most)
    return Advice(float(feed), float(speed), (), f"F{_shown(feed, False, inch)} with S{speed:g}")


def _aim(too_thin: bool, low: float, high: float) -> float:
    if math.isinf(high):
        return low * 1.25
    return low + (high - low) * model_number("aim") if too_thin else high - (high - low) * model_number("aim")


def _feed_limit(machine: Machine) -> float:
    """mm/min that both X and Y can run; a move along one axis might go faster, a corner not."""
    axes = machine.feed_limit
    limits = [value for value in (axes.x, axes.y) if value is not None] if axes else []
    return min(limits) if limits else math.inf


def _marks(
    h: float, true_speed: float, low: float, high: float, spindle: Spindle, dial: str | None
) -> tuple[tuple[str, float], ...]:
    if spindle.kind != "dial":
        return ()
    chips = [(mark, h * true_speed / mark.true) for mark in spindle.dial if mark.mark != dial and mark.true > 0]
    fits = [(mark, chip) for mark, chip in chips if low <= chip <= high]
    fits.sort(key=lambda pair: abs(pair[0].true - true_speed))
    return tuple((mark.mark, chip) for mark, chip in fits)


def _tidy(feed: float, up: bool, most: float) -> float:
    """A feed a person would type: to 10 mm/min (1 below 100), never over the machine's limit."""
    step = 10.0 if feed >= 100.0 else 1.0 if feed >= 10.0 else 0.1
    rounded = (math.ceil(feed / step - 1e-6) if up else math.floor(feed / step + 1e-6)) * step
    return rounded if rounded <= most else math.floor(most)


def _shown(feed: float, up: bool, inch: bool) -> str:
    """The limit itself, rounded to the safe side, in the program's unit."""
    value = feed / 25.4 if inch else feed
    step = 0.1 if inch else 1.0
    rounded = (math.ceil(value / step - 1e-6) if up else math.floor(value / step + 1e-6)) * step
    return f"{rounded:.1f}".rstrip("0").rstrip(".")
