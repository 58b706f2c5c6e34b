"""How fast each move really goes and how long it takes."""

from __future__ import annotations

import numpy as np

from gclint.columns import Floats
from gclint.motion.table import EVENT, RAPID, Motion
from gclint.motion.timing import Timing
from gclint.setup.types import Assumed, Setup


def pace(motion: Motion, setup: Setup) -> Timing:
    """Reached feed (mm/min) and time (s) of every move.

    Acceleration is not modelled: every cut reaches its set feed at once. A rapid takes as long as its slowest axis at
    the machine's declared rapid rates, and is unknown (NaN) where they are not declared.
    """
    rates = rapid_rates(motion, setup)
    reached = np.where(motion.kind == RAPID, rates, motion.feed)
    with np.errstate(divide="ignore", invalid="ignore"):
        seconds = np.where(motion.length == 0, 0.0, motion.length / reached * 60.0)
    return Timing(
        reached=reached,
        seconds=seconds,
        dwell=dwell_seconds(motion, setup),
        assumed=(Assumed("reached feed", "the set feed, at once", "acceleration is not modelled"),),
    )


def rapid_rates(motion: Motion, setup: Setup) -> Floats:
    """mm/min along the path of each rapid, so that no axis is faster than its own rapid rate; NaN for cuts."""
    rate = np.full(len(motion), np.nan)
    declared = setup.machine.rapid
    if declared is None or not len(motion):
        return rate
    rapids = np.flatnonzero(motion.kind == RAPID)
    slowest = np.zeros(len(rapids))  # min
    for limit, start, end in (
        (declared.x, motion.x0, motion.x1),
        (declared.y, motion.y0, motion.y1),
        (declared.z, motion.z0, motion.z1),
    ):
        distance = np.abs(end[rapids] - start[rapids])
        # An axis whose place is unknown at both ends does not move, unless the length is unknown as well.
        distance[np.isnan(distance) & ~np.isnan(motion.length[rapids])] = 0.0
        slowest = np.maximum(slowest, np.where(distance == 0, 0.0, distance / (limit if limit else np.nan)))
    with np.errstate(divide="ignore", invalid="ignore"):
        rate[rapids] = motion.length[rapids] / slowest
    return rate


def dwell_seconds(motion: Motion, setup: Setup) -> float:
    """All dwells together, in the controller's unit; a dwell with no time counts as none."""
    values = motion.event_value[motion.event_kind == EVENT["dwell"]]
    return float(np.nansum(values)) / (1000.0 if setup.controller.dwell_unit == "ms" else 1.0)
