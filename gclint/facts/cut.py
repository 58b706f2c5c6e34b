"""Facts about the cut: pieces of path in contact, entries into the stock, passes."""

from __future__ import annotations

from typing import Any

import numpy as np

from gclint.columns import Bools, Column, Floats, one_of
from gclint.cutting import mechanics
from gclint.facts.context import ON, Context, once
from gclint.facts.fact import Build, Fact, Table, number, text, truth
from gclint.facts.path import (
    angle_after,
    angle_before,
    angle_peak,
    bores,
    diameters,
    first_peck,
    narrow_rest,
    next_peck,
    pecks,
    slot_part,
    turn,
)
from gclint.facts.reach import nut_contact, shank_contact
from gclint.facts.surface import bent_wall, conventional_wall, lifts_top_edge, slot_walls
from gclint.stock import contact
from gclint.tables.cutting import OPERATIONS
from gclint.tables.engagement import ENTRY_KINDS
from gclint.tables.motion import CYCLE, HOME, INCH, LINE, MACHINE, RAPID, X_WORD, Y_WORD, Z_WORD

_FLUTES = "the tool (`[[tool]]` in shop.toml, or --tool) with its flutes, the spindle's speed and a feed"
_MATERIAL = "the material (`material` in job.toml, or --material)"
_CHIP = "the material (`material` in job.toml, or --material), with a chip window for a tool of this size"
_FORCE = "a cutting force (`[force]`) on the material's card, the tool with its flutes, the spindle's speed and a feed"
_BEND = "`stickout`, `flute_length`, `shank` and `made_of` of the tool in shop.toml, and a cutting force on the card"


def _piece(name: str) -> Build:
    return lambda context: getattr(context.engagement.pieces, name)


def _load(name: str) -> Build:
    return lambda context: getattr(context.cutting.loads, name)


def _effort(name: str) -> Build:
    return lambda context: getattr(context.cutting.loads.effort, name)


def _entry(name: str) -> Build:
    return lambda context: getattr(context.engagement.entries, name)


def _pass(name: str) -> Build:
    return lambda context: getattr(context.engagement.passes, name)


def _piece_move(context: Context) -> Column:
    return context.engagement.pieces.move


def _entry_move(context: Context) -> Column:
    return context.engagement.entries.first_move


def _pass_move(context: Context) -> Column:
    pieces, passes = context.engagement.pieces, context.engagement.passes
    return pieces.move[passes.first_piece] if len(passes) else np.empty(0, dtype=np.int32)


def of_move(name: str, move: Build) -> Build:
    """A column of Motion by the row's move."""
    return lambda context: getattr(context.motion, name)[move(context)]


def line_of(move: Build) -> dict[str, Fact]:
    """Give the one fact that every row has that belongs to a move: its line."""
    return {"line": number("", "line of the program", of_move("line", move))}


def shared(move: Build) -> dict[str, Fact]:
    """Give what every row has that is a motion of the tool: line, feed, speed, cycle."""
    return {
        **line_of(move),
        "set_feed": number("mm/min", "feed the program sets", of_move("feed", move)),
        "set_speed": number("rev/min", "speed the program sets", of_move("speed", move)),
        "true_speed": number("rev/min", "speed the spindle really turns", lambda c: c.cutting.true_speed_of[move(c)],
                             "the dial mark (`dial` in job.toml)"),
        "cycle": number("", "canned cycle that made the move (81 for G81), else 0", of_move("cycle", move)),
        "rapid": truth("whether the move is a rapid", lambda c: c.motion.kind[move(c)] == RAPID),
        "inch": truth("whether the program speaks inches here", lambda c: (c.motion.flags[move(c)] & INCH) != 0),
    }  # fmt: skip


def _chip_at_set(context: Context) -> Floats:
    """h_ex if the spindle turned as the program says."""
    loads, m = context.cutting.loads, context.motion
    speed = m.speed[_piece_move(context)]
    with np.errstate(divide="ignore", invalid="ignore"):
        return np.where(speed > 0, loads.h_ex * loads.true_speed / speed, np.nan)


@once
def _mean_feed(context: Context) -> Floats:
    """[pieces] mm/min; the set feed where the time of the move is not known."""
    reached = context.timing.reached[_piece_move(context)]
    return np.where(np.isnan(reached), context.cutting.loads.feed, reached)


def _chip_at(context: Context, feed: Floats) -> Floats:
    """[pieces] h_ex at another feed, mm."""
    loads = context.cutting.loads
    with np.errstate(divide="ignore", invalid="ignore"):
        return np.where(loads.feed > 0, loads.h_ex * feed / loads.feed, np.nan)


def _deepest(context: Context) -> Column:
    """[pieces] mm; of pieces that go straight down what they go down in solid."""
    engagement, pieces = context.engagement, context.engagement.pieces
    rim = contact.deepest(engagement.contact, pieces.profile)
    return np.where(rim > 0, rim, np.where(pieces.drop > 0, np.minimum(pieces.ap, pieces.drop), pieces.ap))


def _sunk(context: Context) -> Floats:
    """[pieces] how deep the whole move goes down in material, mm, at the deepest place under the tip."""
    engagement, pieces = context.engagement, context.engagement.pieces
    most = contact.under_most(engagement.contact, pieces.profile, pieces.drop)
    if not len(pieces):
        return np.zeros(0)
    sums: Floats = np.bincount(pieces.move, most, len(context.motion)).astype(np.float64)
    return sums[pieces.move]


def _move_width(context: Context) -> Floats:
    """[pieces] the largest width of cut along the whole move, mm."""
    pieces = context.engagement.pieces
    if not len(pieces):
        return np.zeros(0)
    begins = np.flatnonzero(np.concatenate(([True], pieces.move[1:] != pieces.move[:-1])))
    widest = np.maximum.reduceat(pieces.ae, begins)
    return np.repeat(widest, np.diff(np.concatenate((begins, [len(pieces)])))).astype(np.float64)


def _path_radius(context: Context) -> Floats:
    """[pieces] mm; NaN on straight moves."""
    m, move = context.motion, _piece_move(context)
    with np.errstate(divide="ignore", invalid="ignore"):
        turned = np.abs(np.radians(m.sweep[move]))
        flat = np.where(m.kind[move] > LINE, np.sqrt(np.maximum(m.length[move] ** 2 - _rise(context, move) ** 2, 0)), 0)
        return np.where(turned > 0, flat / turned, np.nan)


def _rise(context: Context, move: Column) -> Floats:
    """How far an arc goes along its plane's third axis, mm."""
    m = context.motion
    steps = (m.z1[move] - m.z0[move], m.y1[move] - m.y0[move], m.x1[move] - m.x0[move])
    return np.nan_to_num(np.choose(m.plane[move] - 17, steps, mode="clip"))


def _edge_at_slowest(context: Context) -> Any:
    spindle = context.setup.spindle
    slowest = min((mark.true for mark in spindle.dial), default=spindle.low)
    return None if slowest is None else np.pi * context.cutting.loads.effective_diameter * slowest / 1000


def _torque(context: Context) -> Column:
    loads = context.cutting.loads
    return mechanics.torque(loads.effort.power_high, loads.true_speed)


def _spindle_power(context: Context) -> Any:
    spindle = context.setup.spindle
    if spindle.power is None and not spindle.power_curve:
        return None
    return mechanics.spindle_power(spindle.power_curve, spindle.power, context.cutting.loads.true_speed)


def _rim_speed(context: Context) -> Floats:
    speed = context.cutting.true_speed_of[_piece_move(context)]
    return np.pi * diameters(context) * speed / 60_000  # mm/min to m/s


def _measured_window(context: Context) -> Bools:
    """[pieces] whether the chip window comes from the shop's own test cuts."""
    number, operation = context.motion.tool[_piece_move(context)], context.cutting.loads.operation
    measured = np.zeros(len(number), bool)
    for tool, windows in context.setup.measured_windows.items():
        own = range(len(OPERATIONS)) if "" in windows else [OPERATIONS.index(n) for n in windows if n in OPERATIONS]
        measured |= (number == tool) & one_of(operation, list(own))
    return measured


PIECES = Table(
    "pieces",
    "pieces of path in contact with the stock, each at most about a quarter of the tool's diameter long",
    {
        **shared(_piece_move),
        "length": number("mm", "length along the path", _piece("length")),
        "travel": number("mm", "travel in X and Y", _piece("travel")),
        "sunk": number("mm", "how deep the whole move of the piece goes down in material under the tip", _sunk),
        "drop": number("mm", "how far the tip goes down, negative where it rises", _piece("drop")),
        "removed": number("mm^3", "volume removed", _piece("removed")),
        "ap": number("mm", "axial depth of cut", _piece("ap")),
        "ap_deepest": number("mm", "depth that the deepest tenth of the arc of contact reaches at least", _deepest),
        "ae": number("mm", "radial width of cut", _piece("ae")),
        "move_width": number("mm", "largest radial width of cut along the whole move of the piece", _move_width),
        "angle": number("deg", "engagement angle", _piece("angle")),
        "climb": number("", "share of the cut that is climb milling", _piece("climb")),
        "under": number("", "share of the tool's disc on uncut material as it goes down", _piece("under")),
        "shank_contact": number("mm", "height of wall that the shank meets above the flutes", shank_contact,
                                "`flute_length` of the tool in shop.toml"),
        "depth": number("mm", "depth of the tip below the stock's top", _piece("depth")),
        "operation": text("how the tool is used here",
                          lambda c: (c.cutting.loads.operation.astype(np.int32), OPERATIONS), "", OPERATIONS),
        "feed": number("mm/min", "fastest feed reached on the move", _load("feed"), "a feed in the program"),
        "mean_feed": number("mm/min", "feed reached on average over the move", _mean_feed, "a feed in the program"),
        "fz": number("mm", "feed per tooth", _load("fz"), _FLUTES),
        "h_ex": number("mm", "largest chip thickness", _load("h_ex"), _FLUTES),
        "h_thick": number("mm", "largest chip thickness of the tooth that stands out farthest, by the tool's declared "
                          "`runout`", _load("h_thick"), _FLUTES),
        "h_m": number("mm", "mean chip thickness", _load("h_m"), _FLUTES),
        "h_ex_at_set_speed": number("mm", "largest chip thickness if the spindle turned as the program says",
                                    _chip_at_set),
        "h_ex_at_set_feed": number("mm", "largest chip thickness if the feed the program sets were reached",
                                   lambda c: _chip_at(c, c.motion.feed[_piece_move(c)]), _FLUTES),
        "h_ex_at_mean_feed": number("mm", "largest chip thickness at the feed reached on average over the move",
                                    lambda c: _chip_at(c, _mean_feed(c)), _FLUTES),
        "path_radius": number("mm", "radius of the arc, unknown on straight moves", _path_radius),
        "effective_diameter": number("mm", "diameter that cuts at this depth", _load("effective_diameter")),
        "edge_speed": number("m/min", "speed of the cutting edge", _load("edge_speed"), _FLUTES),
        "edge_at_slowest": number("m/min", "edge speed at the slowest the spindle turns", _edge_at_slowest,
                                  "`[spindle] dial` or `range` in shop.toml"),
        "chip_low": number("mm", "thinnest chip the window allows", _load("chip_low"), _CHIP),
        "chip_high": number("mm", "thickest chip the window allows", _load("chip_high"), _CHIP),
        "edge_low": number("m/min", "slowest edge speed the card allows", _load("edge_low"), _MATERIAL),
        "edge_high": number("m/min", "fastest edge speed the card allows", _load("edge_high"), _MATERIAL),
        "chip_judged": truth("whether the chip can be judged here (no entry, drill, V tool or skim)",
                             lambda c: c.cutting.loads.chip_judged != 0),
        "force_mean": number("N", "force on the tool across its axis, on average over a turn, at least",
                             _effort("force_mean"), _FORCE),
        "force_low": number("N", "largest force in a turn across the tool, at least", _effort("force_low"), _FORCE),
        "force_high": number("N", "largest force in a turn across the tool, at most", _effort("force_high"), _FORCE),
        "power_low": number("W", "power the cut takes, at least", _effort("power_low"), _FORCE),
        "power_high": number("W", "power the cut takes, at most", _effort("power_high"), _FORCE),
        "torque_high": number("N m", "torque the cut takes, at most", _torque, _FORCE),
        "bend_low": number("mm", "how far the tip of the tool bends aside, at least",
                           lambda c: c.cutting.loads.effort.bend(high=False), _BEND),
        "bend_high": number("mm", "how far the tip of the tool bends aside, at most",
                            lambda c: c.cutting.loads.effort.bend(high=True), _BEND),
        "stress_low": number("N/mm^2", "bending stress in the tool, at least",
                             lambda c: c.cutting.loads.effort.stress(high=False), _BEND),
        "stress_high": number("N/mm^2", "bending stress in the tool, at most",
                              lambda c: c.cutting.loads.effort.stress(high=True), _BEND),
        "spindle_power": number("W", "power the spindle has at its true speed here", _spindle_power,
                                "`power` or `power_curve` of [spindle] in shop.toml"),
        "bent_wall": number("", "1 where the tool bends beside a wall that stands at the end of the program, else 0",
                            bent_wall),
        "angle_after": number("deg", "engagement angle about one diameter of path after; 180 where the pass ends",
                              angle_after),
        "angle_before": number("deg", "engagement angle about one diameter of path before; 180 where the pass began "
                               "later", angle_before),
        "angle_peak": number("deg", "largest engagement angle within the piece", angle_peak),
        "turn": number("deg", "how far the path turns around the piece", turn),
        "narrow_rest": number("", "of the cuts of this tool at this F that are no slots, the share that is narrow",
                              narrow_rest),
        "slot_part": number("", "of the level cuts of this tool at this F, the share at full width", slot_part),
        "slot_walls": number("mm", "height of the lower of the two walls that stand close beside a slot of a down-cut "
                             "tool at the end, else 0", slot_walls),
        "conventional_wall": number("mm", "height of the wall on the left that stands at the end, else 0",
                                    conventional_wall),
        "rim_speed": number("m/s", "speed of the tool's rim at its full diameter", _rim_speed, "the spindle's speed"),
        "lifts_top_edge": truth("whether edges that lift their chips (of an up-cut tool, the lower ones of a "
                                "compression tool) cut the stock's top here, and it stays beside the cut",
                                lifts_top_edge),
        "nut_contact": number("mm", "how far the spindle's nut stands below the material beside the tool; 0 if it does "
                              "not", nut_contact, "`stickout` of the tool in shop.toml"),
        "shop_window": truth("whether the chip window comes from this shop's test cuts", _measured_window),
    },
    lambda c: len(c.engagement.pieces),
    of_move("tool", _piece_move),
    _piece_move,
    lambda c: c.engagement.pieces.length.astype(np.float64),
    neighbours=True,
)  # fmt: skip


def _over(context: Context, values: Column, reduce: Any) -> Column:
    """A reduction over the moves of every entry; `values` has one row for each row of `chain.entry_moves`."""
    starts = context.entry_moves[1]
    return np.asarray(reduce.reduceat(values, starts)) if len(starts) else np.empty(0)


def _sideways(context: Context) -> Floats:
    """Widest X-Y distance the entry's moves span, mm: 2 x radius for a full circle."""
    m, rows = context.motion, context.entry_moves[0]
    spans = []
    for start, end in ((m.x0[rows], m.x1[rows]), (m.y0[rows], m.y1[rows])):
        low = _over(context, np.fmin(start, end), np.fmin)
        spans.append(_over(context, np.fmax(start, end), np.fmax) - low)
    # the widest chord of an arc; only G17 arcs keep their centre in X and Y
    radius = np.hypot(m.x0[rows] - m.cu[rows], m.y0[rows] - m.cv[rows])
    widest = 2 * radius * np.sin(np.radians(np.minimum(abs(m.sweep[rows]), 180) / 2))
    chord = np.where((m.kind[rows] > LINE) & (m.plane[rows] == 17), widest, 0.0)
    return np.asarray(np.fmax(np.hypot(*spans), _over(context, np.nan_to_num(chord), np.fmax)))


def _down(context: Context) -> Floats:
    """[moves of entries] how far each goes down, mm; 0 where it does not."""
    m, rows = context.motion, context.entry_moves[0]
    return np.nan_to_num(np.maximum(m.z0[rows] - m.z1[rows], 0.0))


def _reads_as_travel(context: Context) -> Floats:
    """[entries] share of the descent made by lines that name X or Y, or by arcs; canned cycles apart."""
    m, rows, down = context.motion, context.entry_moves[0], _down(context)
    flags = m.flags[rows]
    named = (((flags & (X_WORD | Y_WORD)) != 0) | (m.kind[rows] > LINE)) & ((flags & CYCLE) == 0)
    return _share(_over(context, down * named, np.add), _over(context, down, np.add))


def _level_names_z(context: Context) -> Floats:
    """[entries] of the level moves at feed, the share whose line names a Z all the same; 0 if there are none."""
    m = context.motion
    level = (m.kind != RAPID) & (m.z0 == m.z1) & ((m.flags & CYCLE) == 0)
    named = level & ((m.flags & Z_WORD) != 0)
    return np.full(len(context.engagement.entries), named.sum() / max(int(level.sum()), 1))


def _share(part: Floats, whole: Floats) -> Floats:
    with np.errstate(divide="ignore", invalid="ignore"):
        return np.where(whole > 0, part / whole, np.nan)


def _is_arc(context: Context) -> Bools:
    return _over(context, context.motion.kind[context.entry_moves[0]] > LINE, np.logical_or).astype(bool)


ENTRIES = Table(
    "entries",
    "places where the tip starts down into solid material, or starts to cut after open space",
    {
        **shared(_entry_move),
        "kind": text("how the tool goes in", lambda c: (c.engagement.entries.kind.astype(np.int32), ENTRY_KINDS), "",
                     ENTRY_KINDS),
        "solid": number("mm", "depth of solid gone through at feed under at least half of the tool's disc; where there "
                        "is hardly any, under at least a tenth of it", _entry("solid")),
        "descent": number("mm", "whole descent, air included", _entry("descent")),
        "travel": number("mm", "X-Y travel while in solid", _entry("travel")),
        "slope": number("deg", "slope of its steepest stretch of about half a diameter; 90 is straight down",
                        _entry("slope")),
        "steep_drop": number("mm", "how far that stretch goes down", _entry("steep_drop")),
        "steep_travel": number("mm", "how far it travels in X and Y meanwhile", _entry("steep_travel")),
        "steep_line": number("", "line of the program at which it begins",
                             lambda c: c.motion.line[c.engagement.entries.steep_move]),
        "under": number("", "share of the tool's disc that is on solid over the depth `solid`", _entry("under")),
        "centre": truth("whether the middle of the tip met uncut material", lambda c: c.engagement.entries.centre != 0),
        "feed": number("mm/min", "highest set feed in solid", _entry("feed"), "a feed in the program"),
        "depth": number("mm", "depth below the stock's top at the end", _entry("depth")),
        "radius": number("mm", "radius of the helix", _entry("radius")),
        "sideways": number("mm", "widest X-Y distance the entry spans", _sideways),
        "reads_as_travel": number("", "share of the descent made by lines that name X or Y, or by arcs",
                                  _reads_as_travel),
        "level_names_z": number("", "of the program's level moves at feed, the share whose line names a Z all the same",
                                _level_names_z),
        "down_feed": number("mm/min", "highest downward share of the feed in solid", _entry("z_feed"),
                            "a feed in the program"),
        "arc": truth("whether the entry is written as an arc", _is_arc),
        "pecks": truth("whether the tool goes down in pecks (G73, G83, or written out)", pecks),
        "first_peck": number("mm", "depth of the first peck in solid; of an entry without pecks its whole depth",
                             first_peck),
        "next_peck": number("mm", "deepest step of the pecks behind the first; 0 if there is none", next_peck),
        "bores": truth("whether the tool comes up again without a cut to the side", bores),
    },
    lambda c: len(c.engagement.entries),
    of_move("tool", _entry_move),
    _entry_move,
    neighbours=True,
)  # fmt: skip


def _waited(context: Context) -> Floats:
    return _waits(context)[0]


def _waited_surely(context: Context) -> Floats:
    return _waits(context)[1]


@once
def _waits(context: Context) -> tuple[Floats, Floats]:
    """[passes] seconds from the spindle's start to the first pass after it (dwells, travel, descent), and the part of
    them that is known; else infinite.

    Where the time of some travel is unknown: the known part if that is enough, else the most it can be if that is not
    enough either, else NaN.
    """
    m, moves = context.motion, np.asarray(_pass_move(context), dtype=np.int64)
    waited = np.full(len(moves), np.inf)
    surely = waited.copy()
    kinds = m.event_kind
    turning = False
    need = context.setup.spindle.spin_up or 0.0
    dwelt = np.concatenate(([0.0], np.cumsum(context.dwell)))
    for event in np.flatnonzero(one_of(kinds, (*ON, *context.spindle_stops))).tolist():
        if kinds[event] in context.spindle_stops:
            turning = False
            continue
        if turning:
            continue
        turning = True
        start = int(m.event_move[event])
        first = int(np.searchsorted(moves, start))
        if first == len(moves):
            continue
        until = int(moves[first])
        last = int(np.searchsorted(m.event_move, until, side="right"))
        seconds = context.clock[until] - context.clock[start] + dwelt[last] - dwelt[event]
        seconds += _before_piece(context, first, until)
        surely[first] = min(surely[first], seconds)
        if seconds < need and context.untimed[until] > context.untimed[start]:
            longest = seconds + _longest_rapids(context, start, until)
            seconds = longest if longest < need else np.nan
        waited[first] = min(waited[first], seconds) if seconds == seconds else np.nan
    return waited, surely


def _longest_rapids(context: Context, start: int, until: int) -> float:
    """The most that the moves of unknown time from `start` to before `until` can take, s; NaN if that is not known.

    A rapid whose rate is not declared is no slower than the fastest feed of the program, from rest to rest. One whose
    start is not known goes all the declared travel of each axis that it moves, at most.
    """
    m, axes = context.motion, context.setup.machine.acceleration
    rows = start + np.flatnonzero(np.isnan(context.timing.seconds[start:until]))
    if not bool((m.kind[rows] == RAPID).all()):
        return np.nan
    unknown = np.isnan(m.length[rows])
    across = sum((_across_the_machine(context, int(row)) for row in rows[unknown]), 0.0)
    rows = rows[~unknown]
    if not len(rows):
        return across
    feeds = m.feed[np.isfinite(m.feed)]
    v = float(feeds.max()) / 60 if len(feeds) else 0.0
    if not v > 0:
        return np.nan
    weakest = min((each for each in (axes.x, axes.y, axes.z) if each), default=np.inf) if axes else np.inf
    return across + float((m.length[rows] / v + v / weakest).sum())


def _across_the_machine(context: Context, row: int) -> float:
    """Seconds that a rapid from a place that is not known takes at most: the slowest of its axes, all the way."""
    m, machine = context.motion, context.setup.machine
    travel, rapid, starts = machine.travel, machine.rapid, machine.acceleration
    if travel is None or rapid is None:
        return np.nan
    seconds = 0.0
    for axis, begin, end, word in (("x", m.x0, m.x1, X_WORD), ("y", m.y0, m.y1, Y_WORD), ("z", m.z0, m.z1, Z_WORD)):
        known = bool(np.isfinite(begin[row]) and np.isfinite(end[row]))
        if not (known or m.flags[row] & (word | HOME | MACHINE | CYCLE)):
            continue
        far = abs(float(end[row] - begin[row])) if known else getattr(travel, axis)
        rate, gain = getattr(rapid, axis), getattr(starts, axis) if starts else None
        if far == 0.0:
            continue
        if far is None or rate is None:
            return np.nan
        seconds = max(seconds, 60 * far / rate + (rate / 60 / gain if gain else 0.0))
    return seconds


def _waited_needs(context: Context) -> str:
    """What would tell how long the spindle has turned: of rates, travel and start, what is not known."""
    machine = context.setup.machine
    if machine.rapid is None:
        return "the machine's rapid rates (`[machine] rapid` in shop.toml)"
    if machine.travel is None:
        return "the machine's travel (`[machine] travel` in shop.toml), as the place of the tool at M3 is not known"
    return "the place of the tool when the spindle starts (move to X, Y and Z before M3), or a dwell (G4) behind M3"


def _before_piece(context: Context, row: int, move: int) -> float:
    """Seconds of the pass's first move before it meets material."""
    start = float(context.engagement.pieces.start[context.engagement.passes.first_piece[row]])
    return float(np.nan_to_num(context.timing.seconds[move])) * start


PASSES = Table(
    "passes",
    "unbroken runs of moves of one tool in material",
    {
        **shared(_pass_move),
        "length": number("mm", "cut length", _pass("length")),
        "ap": number("mm", "largest axial depth", _pass("ap")),
        "ae": number("mm", "largest radial width", _pass("ae")),
        "lowest": number("mm", "Z of the lowest tip", _pass("lowest")),
        "removed": number("mm^3", "volume removed", _pass("removed")),
        "turning": truth("whether the spindle turns as the pass begins", lambda c: c.turning[_pass_move(c)] == 1),
        "backward": truth("whether the spindle turns counter-clockwise (M4) as the pass begins",
                          lambda c: c.motion.spindle[_pass_move(c)] == -1),
        "ever_started": truth("whether the program starts the spindle anywhere",
                              lambda c: bool(one_of(c.motion.event_kind, ON).any())),
        "speed_given": truth("whether a speed above zero is in force",
                             lambda c: np.nan_to_num(c.motion.speed[_pass_move(c)]) > 0),
        "waited": number("s", "time between the spindle's start and the pass, for the first pass after a start",
                         _waited,
                         "the machine's rapid rates (`[machine] rapid` in shop.toml)", _waited_needs),
        "waited_surely": number("s", "of that time the part that is known, without travel whose time is not",
                                _waited_surely),
    },
    lambda c: len(c.engagement.passes),
    lambda c: c.engagement.passes.tool,
    _pass_move,
    neighbours=True,
)  # fmt: skip

TABLES = (PIECES, ENTRIES, PASSES)
