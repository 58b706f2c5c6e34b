"""Entries: each place where the tip starts down into solid, or starts to cut after open space."""

from __future__ import annotations

import numpy as np

from gclint.columns import Bools, Floats, Floats32, Ints, Longs
from gclint.stock.assume import outline
from gclint.tables.engagement import ENTRY, Entries, Passes, Pieces
from gclint.tables.motion import ARC_CW, Motion
from gclint.tables.setup import Stock

SURFACE = 0.1  # mm; descents through less, or beside the middle of the tip, follow a surface and are no entries
FOLLOWS = 0.5  # a descent whose material was thinner than this share of it follows a surface
LONG = 1e9  # mm; stands for a length that is not known
STRAIGHT = 89.0  # degrees; steeper is straight
STEEP, GENTLE = 0.98, 2.0  # travel by drop: below and above it a move is averaged with its own kind only


def entries_of(
    motion: Motion,
    pieces: Pieces,
    solid: Floats32,
    passes: Passes,
    pass_of: Ints,
    box: Stock,
    before: Floats32,
    resolution: float,
) -> Entries:
    """All entries of a program, in the order of execution.

    solid: per piece, depth of solid gone through, mm. before: per move, depth of the surface under the tip at the
    move's end, before the run of descents it belongs to, mm.
    resolution: of the controller, mm.
    """
    descents, entering = _descents(motion, pieces, solid, pass_of, box, before, resolution)
    made = [descents, _openings(motion, pieces, passes, entering, box, resolution)]
    order = np.argsort(np.concatenate([part.last_move for part in made]), kind="stable")
    return Entries(
        **{name: np.concatenate([getattr(part, name) for part in made])[order] for name in Entries.__slots__}
    )


def _outside(box: Stock, x: Floats, y: Floats) -> Bools:
    x_low, x_high, y_low, y_high = outline(box)
    return (x < x_low) | (x > x_high) | (y < y_low) | (y > y_high)


def _level_length(motion: Motion) -> Floats:
    """X-Y path of each move, mm; large where an end is unknown."""
    level: Floats = np.hypot(motion.x1 - motion.x0, motion.y1 - motion.y0)
    arcs = np.flatnonzero(motion.kind >= ARC_CW)
    drop = np.nan_to_num(motion.z1[arcs] - motion.z0[arcs])
    level[arcs] = np.sqrt(np.maximum(0.0, motion.length[arcs] ** 2 - drop**2))
    level[~(level < LONG)] = LONG
    return level


def _descents(
    motion: Motion, pieces: Pieces, solid: Floats32, pass_of: Ints, box: Stock, before: Floats32, resolution: float
) -> tuple[Entries, Bools]:
    """The entries, and which pieces belong to one: groups of descending moves in material.

    Pecks into one hole, and the laps of a helix, are one group. A plunge and the ramp that goes on from it are two:
    their average would be a gentle ramp.
    """
    top = box.top or 0.0
    drop_of_move = motion.z0 - motion.z1
    down = drop_of_move > 0.5 * resolution
    tool = motion.tool
    run = np.cumsum(~down | np.concatenate(([True], ~down[:-1] | (tool[1:] != tool[:-1]))) if len(down) else down)
    rows = np.flatnonzero((pieces.drop > 0) & (pieces.under > 0) & down[pieces.move])
    entering = np.zeros(len(pieces), bool)
    if not len(rows):
        return _table(0), entering
    move = pieces.move[rows]
    level = _level_length(motion)
    along = np.concatenate(([0.0], np.cumsum(level)))
    new_run = np.concatenate(([True], np.diff(run[move]) != 0))
    fall_of, level_of = drop_of_move[move], level[move]
    steep = (level_of < resolution) | (level_of < STEEP * fall_of)
    told = steep | (level_of > GENTLE * fall_of) | new_run  # what is neither goes with the moves before it
    steep = steep[np.maximum.accumulate(np.where(told, np.arange(len(told)), 0))]
    starts_run = new_run | np.concatenate(([False], np.diff(steep.astype(np.int8)) != 0))
    # no travel in X and Y from the piece before to the end of this one: a peck, part of the same hole
    same_hole = np.concatenate(
        ([False], (along[move[1:] + 1] - along[move[:-1]] < resolution) & (tool[move[1:]] == tool[move[:-1]]))
    )
    begin = np.flatnonzero(starts_run & ~same_hole)
    runs = np.flatnonzero(starts_run)

    drop, gone_through = pieces.drop[rows].astype(np.float64), solid[rows].astype(np.float64)
    travel = pieces.travel[rows] * (gone_through / drop)
    thick = np.maximum.reduceat(np.maximum(0.0, top - motion.z1[move] - before[move]), runs)
    thick = np.add.reduceat(thick, np.searchsorted(runs, begin))
    total, gone = np.add.reduceat(gone_through, begin), np.add.reduceat(travel, begin)
    gone[gone < resolution] = 0.0
    centre = np.maximum.reduceat(pieces.centre[rows], begin)
    under = np.maximum.reduceat(pieces.under[rows], begin)
    slope = np.degrees(np.arctan2(total, gone))
    is_arc = (motion.kind[move] >= ARC_CW) & (motion.plane[move] == 17)
    arc_travel = np.add.reduceat(np.where(is_arc, travel, 0.0), begin)
    radius = np.where(
        is_arc,
        np.hypot(motion.x0[move] - np.nan_to_num(motion.cu[move]), motion.y0[move] - np.nan_to_num(motion.cv[move])),
        0.0,
    )
    radius = np.add.reduceat(np.where(is_arc, radius * travel, 0.0), begin) / np.maximum(arc_travel, 1e-12)
    kind = np.full(len(begin), ENTRY["ramp"], np.uint8)
    helix = (arc_travel > 0.5 * gone) & (gone > 0)
    kind[helix] = ENTRY["helix"]
    kind[(slope > STRAIGHT) & ~helix | (gone == 0)] = ENTRY["straight"]
    straight = kind == ENTRY["straight"]
    keep = np.where(straight, total > 0.01, (total > SURFACE) & (centre > 0) & (thick > FOLLOWS * total))

    stop = np.concatenate((begin[1:], [len(rows)])) - 1
    first, last = move[begin], move[stop]
    fall = np.concatenate(([0.0], np.cumsum(np.where(down & (drop_of_move < LONG), drop_of_move, 0.0))))
    # pecks go down again through their own hole: only the way from the first start to the lowest end is the descent
    lowest = np.minimum.reduceat(motion.z1[move], begin)
    descent = np.where(straight, motion.z0[first] - lowest, fall[last + 1] - fall[first])
    feed = motion.feed[move]
    sink = feed * drop / np.maximum(pieces.length[rows], 1e-12)
    entering[rows] = np.repeat(keep, stop - begin + 1)
    table = _table(
        len(begin),
        kind=kind,
        first_move=first,
        last_move=last,
        pass_=pass_of[rows[begin]],
        solid=total,
        descent=descent,
        travel=gone,
        slope=slope,
        under=under,
        centre=centre,
        feed=np.fmax.reduceat(feed, begin),
        z_feed=np.fmax.reduceat(sink, begin),
        depth=np.maximum.reduceat(pieces.depth[rows], begin),
        radius=np.where(kind == ENTRY["helix"], radius, np.nan),
        from_outside=_outside(box, motion.x0[first], motion.y0[first]),
        keep=keep,
    )
    return table, entering


def _openings(
    motion: Motion, pieces: Pieces, passes: Passes, entering: Bools, box: Stock, resolution: float
) -> Entries:
    """Passes that no descent into solid opens: the tool came from outside (side) or through open space (open)."""
    first = passes.first_piece
    move = pieces.move[first].astype(np.int64)
    entered = entering[first]
    first, move, row = first[~entered], move[~entered], np.flatnonzero(~entered)
    if not len(first):
        return _table(0)
    down = motion.z0 - motion.z1 > 0.5 * resolution
    came: Longs = np.maximum.accumulate(np.where(down, np.arange(len(down)), -1))[move]
    came = np.where(came < 0, move, came)
    outside = _outside(box, motion.x1[came], motion.y1[came])
    return _table(
        len(first),
        kind=np.where(outside, ENTRY["side"], ENTRY["open"]),
        first_move=came,
        last_move=move,
        pass_=row,
        descent=np.clip(np.nan_to_num(motion.z0[came] - motion.z1[came]), 0.0, LONG),
        under=pieces.under[first],
        centre=pieces.centre[first],
        feed=motion.feed[move],
        depth=pieces.depth[first],
        radius=np.full(len(first), np.nan),
        from_outside=outside,
    )


def _table(n: int, keep: Bools | None = None, **columns: object) -> Entries:
    """Entries of n rows; columns not given are 0."""
    types = {
        "kind": np.uint8,
        "first_move": np.int32,
        "last_move": np.int32,
        "pass_": np.int32,
        "centre": np.uint8,
        "from_outside": np.uint8,
    }
    rows = slice(None) if keep is None else keep
    filled = {
        name: np.asarray(columns.get(name, np.zeros(n))).astype(types.get(name, np.float32))[rows]
        for name in Entries.__slots__
    }
    return Entries(**filled)
