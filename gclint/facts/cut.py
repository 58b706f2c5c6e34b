"""Facts about the cut: pieces of path in contact, entries into the stock, passes."""

from __future__ import annotations

import numpy as np

from gclint.columns import Bools, Column, Floats, one_of
from gclint.facts.context import Context, once
from gclint.facts.fact import Build, Fact, Table, number, text, truth
from gclint.facts.path import (
    bores,
    first_peck,
    next_peck,
    pecks,
    turn,
)
from gclint.facts.surface import lifts_top_edge
from gclint.stock import contact
from gclint.tables.cutting import OPERATIONS
from gclint.tables.engagement import ENTRY_KINDS
from gclint.tables.motion import INCH, LINE, RAPID

NEEDS_FLUTES = "the tool (`[[tool]]` in shop.toml, or --tool) with its flutes, the spindle's speed and a feed"
_MATERIAL = "the material (`material` in job.toml, or --material)"
_CHIP = "the material (`material` in job.toml, or --material), with a chip window for a tool of this size"
NEEDS_FORCE = (
    "a cutting force (`[force]`) on the material's card, the tool with its flutes, the spindle's speed and a feed"
)
NEEDS_BENDING = (
    "`stickout`, `flute_length`, `shank` and `made_of` of the tool in shop.toml, and a cutting force on the card"
)


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


def piece_move(context: Context) -> Column:
    return context.engagement.pieces.move


def _entry_move(context: Context) -> Column:
    return context.engagement.entries.first_move


def pass_move(context: Context) -> Column:
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
    speed = m.speed[piece_move(context)]
    with np.errstate(divide="ignore", invalid="ignore"):
        return np.where(speed > 0, loads.h_ex * loads.true_speed / speed, np.nan)


@once
def mean_feed(context: Context) -> Floats:
    """[pieces] mm/min; the set feed where the time of the move is not known."""
    reached = context.timing.reached[piece_move(context)]
    return np.where(np.isnan(reached), context.cutting.loads.feed, reached)


def chip_at(context: Context, feed: Floats) -> Floats:
    """[pieces] h_ex at another feed, mm."""
    loads = context.cutting.loads
    with np.errstate(divide="ignore", invalid="ignore"):
        return np.where(loads.feed > 0, loads.h_ex * feed / loads.feed, np.nan)


def _sunk(context: Context) -> Floats:
    """[pieces] how deep the whole move goes down in material, mm, at the deepest place under the tip."""
    engagement, pieces = context.engagement, context.engagement.pieces
    most = contact.under_most(engagement.contact, pieces.profile, pieces.drop)
    if not len(pieces):
        return np.zeros(0)
    sums: Floats = np.bincount(pieces.move, most, len(context.motion)).astype(np.float64)
    return sums[pieces.move]


def _path_radius(context: Context) -> Floats:
    """[pieces] mm; NaN on straight moves."""
    m, move = context.motion, piece_move(context)
    with np.errstate(divide="ignore", invalid="ignore"):
        turned = np.abs(np.radians(m.sweep[move]))
        flat = np.where(m.kind[move] > LINE, np.sqrt(np.maximum(m.length[move] ** 2 - _rise(context, move) ** 2, 0)), 0)
        return np.where(turned > 0, flat / turned, np.nan)


def _rise(context: Context, move: Column) -> Floats:
    """How far an arc goes along its plane's third axis, mm."""
    m = context.motion
    steps = (m.z1[move] - m.z0[move], m.y1[move] - m.y0[move], m.x1[move] - m.x0[move])
    return np.nan_to_num(np.choose(m.plane[move] - 17, steps, mode="clip"))


def _measured_window(context: Context) -> Bools:
    """[pieces] whether the chip window comes from the shop's own test cuts."""
    number, operation = context.motion.tool[piece_move(context)], context.cutting.loads.operation
    measured = np.zeros(len(number), bool)
    for tool, windows in context.setup.measured_windows.items():
        own = range(len(OPERATIONS)) if "" in windows else [OPERATIONS.index(n) for n in windows if n in OPERATIONS]
        measured |= (number == tool) & one_of(operation, list(own))
    return measured


PIECES = Table(
    "pieces",
    "pieces of path in contact with the stock, each at most about a quarter of the tool's diameter long",
    {
        **shared(piece_move),
        "length": number("mm", "length along the path", _piece("length")),
        "travel": number("mm", "travel in X and Y", _piece("travel")),
        "sunk": number("mm", "how deep the whole move of the piece goes down in material under the tip", _sunk),
        "drop": number("mm", "how far the tip goes down, negative where it rises", _piece("drop")),
        "removed": number("mm^3", "volume removed", _piece("removed")),
        "ap": number("mm", "axial depth of cut", _piece("ap")),
        "ae": number("mm", "radial width of cut", _piece("ae")),
        "angle": number("deg", "engagement angle", _piece("angle")),
        "climb": number("", "share of the cut that is climb milling", _piece("climb")),
        "under": number("", "share of the tool's disc on uncut material as it goes down", _piece("under")),
        "depth": number("mm", "depth of the tip below the stock's top", _piece("depth")),
        "operation": text("how the tool is used here",
                          lambda c: (c.cutting.loads.operation.astype(np.int32), OPERATIONS), "", OPERATIONS),
        "feed": number("mm/min", "fastest feed reached on the move", _load("feed"), "a feed in the program"),
        "mean_feed": number("mm/min", "feed reached on average over the move", mean_feed, "a feed in the program"),
        "fz": number("mm", "feed per tooth", _load("fz"), NEEDS_FLUTES),
        "h_ex": number("mm", "largest chip thickness", _load("h_ex"), NEEDS_FLUTES),
        "h_thick": number("mm", "largest chip thickness of the tooth that stands out farthest, by the tool's declared "
                          "`runout`", _load("h_thick"), NEEDS_FLUTES),
        "h_ex_at_set_speed": number("mm", "largest chip thickness if the spindle turned as the program says",
                                    _chip_at_set),
        "h_ex_at_set_feed": number("mm", "largest chip thickness if the feed the program sets were reached",
                                   lambda c: chip_at(c, c.motion.feed[piece_move(c)]), NEEDS_FLUTES),
        "path_radius": number("mm", "radius of the arc, unknown on straight moves", _path_radius),
        "effective_diameter": number("mm", "diameter that cuts at this depth", _load("effective_diameter")),
        "edge_speed": number("m/min", "speed of the cutting edge", _load("edge_speed"), NEEDS_FLUTES),
        "chip_low": number("mm", "thinnest chip the window allows", _load("chip_low"), _CHIP),
        "chip_high": number("mm", "thickest chip the window allows", _load("chip_high"), _CHIP),
        "edge_low": number("m/min", "slowest edge speed the card allows", _load("edge_low"), _MATERIAL),
        "edge_high": number("m/min", "fastest edge speed the card allows", _load("edge_high"), _MATERIAL),
        "chip_judged": truth("whether the chip can be judged here (no entry, drill, V tool or skim)",
                             lambda c: c.cutting.loads.chip_judged != 0),
        "force_mean": number("N", "force on the tool across its axis, on average over a turn, at least",
                             _effort("force_mean"), NEEDS_FORCE),
        "force_low": number("N", "largest force in a turn across the tool, at least",
                            _effort("force_low"), NEEDS_FORCE),
        "force_high": number("N", "largest force in a turn across the tool, at most",
                            _effort("force_high"), NEEDS_FORCE),
        "power_low": number("W", "power the cut takes, at least", _effort("power_low"), NEEDS_FORCE),
        "power_high": number("W", "power the cut takes, at most", _effort("power_high"), NEEDS_FORCE),
        "stress_low": number("N/mm^2", "bending stress in the tool, at least",
                             lambda c: c.cutting.loads.effort.stress(high=False), NEEDS_BENDING),
        "stress_high": number("N/mm^2", "bending stress in the tool, at most",
                              lambda c: c.cutting.loads.effort.stress(high=True), NEEDS_BENDING),
        "turn": number("deg", "how far the path turns around the piece", turn),
        "lifts_top_edge": truth("whether edges that lift their chips (of an up-cut tool, the lower ones of a "
                                "compression tool) cut the stock's top here, and it stays beside the cut",
                                lifts_top_edge),
        "shop_window": truth("whether the chip window comes from this shop's test cuts", _measured_window),
    },
    lambda c: len(c.engagement.pieces),
    of_move("tool", piece_move),
    piece_move,
    lambda c: c.engagement.pieces.length.astype(np.float64),
    neighbours=True,
)  # fmt: skip


@once
def _steps(context: Context) -> tuple[Floats, Floats, Column]:
    """[entries] moves at feed that go down, how deep the deepest of them goes in solid (mm), line of the last."""
    m, (rows, starts) = context.motion, context.entry_moves
    entries = context.engagement.entries
    if not len(starts):
        return np.zeros(0), np.zeros(0), np.zeros(0, np.int64)
    drop = np.nan_to_num(m.z0[rows] - m.z1[rows])
    down = (m.kind[rows] != RAPID) & (drop > 0)
    z1 = np.nan_to_num(m.z1[rows])
    top = np.minimum.reduceat(z1, starts) + entries.solid  # what lies over it is the way down through air
    own = np.diff(np.concatenate((starts, [len(rows)])))
    deepest = np.maximum.reduceat(np.where(down, np.minimum(drop, np.repeat(top, own) - z1), 0.0), starts)
    last = np.maximum.reduceat(np.where(down, rows, rows[starts[0]]), starts)
    count = np.add.reduceat(down.astype(np.float64), starts)
    return np.maximum(count, 1), np.minimum(deepest, entries.solid), m.line[last]


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
        "steps": number("", "moves at feed in which the tool goes down", lambda c: _steps(c)[0]),
        "deepest_step": number("mm", "how far the deepest of them goes down in solid", lambda c: _steps(c)[1]),
        "last_line": number("", "line of the last of them", lambda c: _steps(c)[2]),
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
        "down_feed": number("mm/min", "highest downward share of the feed in solid", _entry("z_feed"),
                            "a feed in the program"),
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


PASSES = Table(
    "passes",
    "unbroken runs of moves of one tool in material",
    {
        **shared(pass_move),
        "length": number("mm", "cut length", _pass("length")),
        "ap": number("mm", "largest axial depth", _pass("ap")),
        "ae": number("mm", "largest radial width", _pass("ae")),
        "turning": truth("whether the spindle turns as the pass begins", lambda c: c.turning[pass_move(c)] == 1),
    },
    lambda c: len(c.engagement.passes),
    lambda c: c.engagement.passes.tool,
    pass_move,
    neighbours=True,
)  # fmt: skip

TABLES = (PIECES, ENTRIES, PASSES)
