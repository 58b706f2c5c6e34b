"""How fast each move really goes and how long it takes."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from gclint.columns import Bytes, Floats, Longs
from gclint.knowledge.numbers import model_number
from gclint.problem import NotBuilt
from gclint.tables.motion import EVENT, HOME, LINE, MACHINE, PROBE, RAPID, Motion
from gclint.tables.setup import Assumed, Axes, Setup
from gclint.tables.timing import Timing

if TYPE_CHECKING:
    from gclint.motion.look_ahead import Planner

FASTEST = 1e9  # mm/s; what a rapid asks for: the axes' rapid rates decide

# The machine stands still at these before it goes on.
STANDS = ("change", "spindle-cw", "spindle-ccw", "spindle-off", "stop", "optional-stop", "pallet-stop", "dwell", "end")
PEOPLE = ("change", "stop", "optional-stop", "pallet-stop")  # and nobody knows for how long
KEEPS = {61.1: 1, 61.0: 2}  # path modes: what `_rests` says of the moves under them
STARTS = ("spindle-cw", "spindle-ccw")


def plan_feed(motion: Motion, setup: Setup) -> Timing:
    """Mean and fastest feed (mm/min) and time (s) of every move.

    No axis is faster than its declared feed limit (rapid rate, in a rapid). With declared accelerations the whole path
    is planned ahead: see gclint.motion.look_ahead. Without them every cut has its set feed at once. The time of a rapid
    is unknown (NaN) where a rapid rate it needs is not declared.
    """
    planner_of = _kernel()
    machine = setup.machine
    rapid = motion.kind == RAPID
    seconds = np.where(rapid, FASTEST, motion.feed / 60.0)
    peak = np.empty(len(motion))
    planner_of(
        motion,
        _rests(motion),
        np.empty(len(motion) + 1),
        np.empty(len(motion) + 1),
        seconds,
        peak,
        None if machine.acceleration is None else _three(machine.acceleration, np.inf),
        _three(machine.feed_limit, np.inf, 60.0),
        _three(machine.rapid, np.nan, 60.0),
        model_number("corner_deviation") if machine.corner_deviation is None else machine.corner_deviation,
        model_number("corner_span"),
    ).run()
    set_feed = np.where(rapid, np.nan, motion.feed)
    timed = seconds > 0
    with np.errstate(divide="ignore", invalid="ignore"):
        reached = np.where(timed, motion.length / seconds * 60.0, set_feed)
    return Timing(
        reached=reached,
        peak=np.where(timed, peak * 60.0, set_feed),
        seconds=seconds,
        dwell=dwell_seconds(motion, setup),
        assumed=_assumed(motion, setup),
    )


def _kernel() -> type[Planner]:
    try:
        from gclint.motion.look_ahead import Planner
    except ImportError:
        raise NotBuilt("gclint.motion.look_ahead") from None
    return Planner


def _three(axes: Axes | None, missing: float, by: float = 1.0) -> list[float]:
    """X, Y and Z of a declaration divided by `by`; `missing` where there is none."""
    return [each / by if each else missing for each in ((axes.x, axes.y, axes.z) if axes else (None, None, None))]


def _rests(motion: Motion) -> Bytes:
    """[moves + 1] 1 where the machine stands before the move, 2 where it stands if the path has a corner there."""
    rests = np.zeros(len(motion) + 1, np.uint8)
    modes = np.flatnonzero(motion.event_kind == EVENT["path-mode"])
    for event, until in zip(modes, [*motion.event_move[modes[1:]], len(motion)]):
        rests[motion.event_move[event] + 1 : until + 1] = KEEPS.get(round(float(motion.event_value[event]), 1), 0)
    rests[motion.event_move[np.isin(motion.event_kind, [EVENT[name] for name in STANDS])]] = 1
    alone = np.flatnonzero(motion.flags & (MACHINE | HOME | PROBE))
    rests[alone] = rests[alone + 1] = 1
    return rests


def axis_shares(motion: Motion, rows: Longs) -> Floats:
    """[rows, 3] largest share of the speed along the path that X, Y and Z ever take on each of these moves."""
    starts, ends = (motion.x0, motion.y0, motion.z0), (motion.x1, motion.y1, motion.z1)
    with np.errstate(divide="ignore", invalid="ignore"):
        shares = np.column_stack(
            [np.abs(np.nan_to_num(end[rows] - start[rows])) / motion.length[rows] for start, end in zip(starts, ends)]
        )
    for plane, first, second in ((17, 0, 1), (18, 2, 0), (19, 1, 2)):
        arcs = np.flatnonzero((motion.kind[rows] > LINE) & (motion.plane[rows] == plane))
        own = rows[arcs]
        offsets = [
            [place[axis][own] - centre[own] for place in (starts, ends)]
            for axis, centre in ((first, motion.cu), (second, motion.cv))
        ]
        radius = np.hypot(offsets[0][0], offsets[1][0])
        turn = np.radians(np.abs(motion.sweep[own]))
        flat = turn * radius / motion.length[own]
        for axis, (at_start, at_end) in ((first, offsets[1]), (second, offsets[0])):
            # the speed along an axis goes with the other axis' distance from the centre
            within = np.maximum(np.abs(at_start), np.abs(at_end)) / radius
            other = offsets[0 if axis == first else 1]
            passes = (turn >= np.pi) | (other[0] * other[1] < 0)
            shares[arcs, axis] = np.where(passes, 1.0, np.minimum(within, 1.0)) * flat
    return shares


def dwell_seconds(motion: Motion, setup: Setup) -> float:
    """All dwells together, in the controller's unit; a dwell with no time counts as none."""
    values = motion.event_value[motion.event_kind == EVENT["dwell"]]
    return float(np.nansum(values)) * setup.controller.dwell_seconds


def _assumed(motion: Motion, setup: Setup) -> tuple[Assumed, ...]:
    machine, taken = setup.machine, []
    if machine.acceleration is None:
        taken.append(Assumed("reached feed", "the set feed, at once", "no acceleration is declared"))
    else:
        for axis in ("x", "y", "z"):
            if not getattr(machine.acceleration, axis):
                taken.append(Assumed(f"acceleration of {axis.upper()}", "no limit", "it is not declared"))
        if machine.corner_deviation is None:
            away = f"{model_number('corner_deviation'):g} mm"
            taken.append(Assumed("corner deviation", away, "no corner_deviation is declared"))
    if np.isin(motion.event_kind, [EVENT[name] for name in PEOPLE]).any():
        taken.append(Assumed("time at tool changes and stops", "none", "how long people take is not known"))
    if setup.spindle.spin_up and np.isin(motion.event_kind, [EVENT[name] for name in STARTS]).any():
        taken.append(Assumed("time for the spindle to start", "the dwells alone", "the controller may not wait for it"))
    return tuple(taken)
