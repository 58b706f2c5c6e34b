"""Gives the facts that reads-too-slowly alone looks at: moves that come faster than they can be read."""

from __future__ import annotations

import numpy as np

from gclint.columns import Floats
from gclint.facts.context import Context, once
from gclint.facts.fact import Fact, number
from gclint.knowledge.numbers import model_number

_RATE = "`characters_per_second` on the controller's card"


@once
def _seconds(context: Context) -> Floats:
    """[moves] time of the moves up to this one, as many as are held ready, s; infinite where unknown.

    Infinite also where the program is followed through calls and loops: the controller does not read it line by line.
    """
    held = int(model_number("moves_held_ready"))
    n = len(context.motion)
    seconds = np.full(n, np.inf)
    if context.motion.followed is None and n > held:
        clock = context.clock
        np.subtract(clock[held + 1 :], clock[1 : n - held + 1], out=seconds[held:])
        unknown = context.untimed
        if unknown[-1]:
            seconds[held:][unknown[held + 1 :] != unknown[1 : n - held + 1]] = np.inf
    return seconds


def _lines_per_second(context: Context) -> Floats:
    held = int(model_number("moves_held_ready"))
    seconds, line = _seconds(context), context.motion.line
    lines = np.zeros(len(line), np.int32)
    np.cumsum(line[1:] != line[:-1], out=lines[1:])
    rate = np.zeros(len(line))
    with np.errstate(divide="ignore", invalid="ignore"):
        np.divide(lines[held:] - lines[:-held], seconds[held:], out=rate[held:])
    return _of_moving(rate, seconds)


def _of_moving(rate: Floats, seconds: Floats) -> Floats:
    """0 where the moves take no time."""
    if not seconds.all():
        rate[seconds == 0] = 0.0
    return rate


def _reading_share(context: Context) -> Floats:
    """Time to read over time to move; where the rate is not known, NaN if many lines are asked for, else 0."""
    held = int(model_number("moves_held_ready"))
    rate = context.setup.controller.characters_per_second
    if rate is None:
        return np.where(_lines_per_second(context) > model_number("worth_reading"), np.nan, 0.0)
    seconds, line = _seconds(context), np.clip(context.motion.line, 1, context.program.lines)
    read = context.program.line_start[line]
    share = np.zeros(len(line))
    with np.errstate(divide="ignore", invalid="ignore"):
        np.divide(np.maximum(read[held:] - read[:-held], 0) / rate, seconds[held:], out=share[held:])
    return _of_moving(share, seconds)


def _at_reading_speed(context: Context) -> Floats:
    """Feed at which these moves come no faster than they can be read, mm/min."""
    share = _reading_share(context)
    with np.errstate(divide="ignore", invalid="ignore"):
        return np.where(share > 0, context.motion.feed / share, np.inf)


FACTS: dict[str, dict[str, Fact]] = {
    "moves": {
        "lines_per_second": number("", "lines a second that the last moves up to this one ask for, as many as are held "
                                   "ready", _lines_per_second),
        "reading_share": number("", "time the controller needs to read these moves, over the time they take",
                                _reading_share, _RATE),
        "feed_at_reading_speed": number("mm/min", "feed at which these moves come no faster than they can be read",
                                        _at_reading_speed, _RATE),
    },
}  # fmt: skip
