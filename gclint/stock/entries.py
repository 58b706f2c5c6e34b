"""Entries: each place where the tip starts down into solid, or starts to cut after open space.

An entry is made of the feed moves that go down in solid, and of nothing else: what a rapid goes through, and what is
gone down in the air, are no part of it. Moves steeper than 45 degrees are told apart from gentler ones, so that a
plunge is never averaged with the ramp behind it, and a ramp has the slope of its steepest stretch.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from gclint.columns import Bools, Column, Floats, Floats32, Ints, Longs
from gclint.stock import contact
from gclint.stock.assume import outline
from gclint.tables.contact import Contact
from gclint.tables.engagement import ENTRY, Entries, Passes, Pieces
from gclint.tables.motion import ARC_CW, RAPID, Motion
from gclint.tables.setup import Stock

CONTACT = 0.01  # mm; what is nearer to the top of the blank is at it
SURFACE = 0.1  # mm; ramps through less, or beside the middle of the tip, follow a surface and are no entries
FOLLOWS = 0.5  # a ramp whose material was thinner than this share of it follows a surface
GRAZE = 0.1  # share of the disc; less of it on solid is a graze, and no part of an entry
HALF = 0.5  # share of the disc from which on the depth under so much of it is what is told
FEW = 0.25  # of the depth under a tenth of the disc: with less under half of it, the entry lies beside the material
STRETCH = 0.4  # of the diameter: the path over which a slope is taken, about half a diameter in whole pieces
TOUCH = 0.05  # of the diameter: a steeper bit of less depth belongs to the ramp around it
LONG = 1e9  # mm; stands for a length that is not known
STEEP = 45.0  # degrees; what goes down steeper is straight down
SAME_SLOPE = 0.05  # degrees; slopes that differ by less are one


@dataclass(frozen=True, slots=True, eq=False)
class Tips:
    """[pieces] what the disc under the tip meets on the way down: its share on solid, and the depth of solid under at
    least half of it and under at least a tenth of it, mm."""

    under: Floats32
    half: Floats32
    tenth: Floats32


def tips_of(pieces: Pieces, of: Contact, flat: Bools, solid: Floats32) -> Tips:
    """From the profiles of contact; all 0 where a piece does not go down.

    flat [pieces]: whether the tool has a flat end. Of a point or a ball less comes off at its rim than in its middle:
    there the depth of solid is that under its middle, `solid` mm, where enough of the footprint meets material.
    """
    down = np.flatnonzero(pieces.drop > 0)
    made = Tips(*(np.zeros(len(pieces), np.float32) for _ in range(3)))
    rows, drop = pieces.profile[down], pieces.drop[down]
    made.under[down] = contact.under(of, rows)
    for depth, share in ((made.half, HALF), (made.tenth, GRAZE)):
        shaped = np.where(made.under[down] >= share, solid[down], 0)
        depth[down] = np.where(flat[down], contact.under_depth(of, rows, drop, share), shaped)
    return made


def entries_of(
    motion: Motion,
    pieces: Pieces,
    tips: Tips,
    passes: Passes,
    pass_of: Ints,
    box: Stock,
    before: Floats32,
    resolution: float,
    radius: Floats,
    pointed: Bools,
) -> Entries:
    """All entries of a program, in the order of execution.

    before [moves]: depth of the surface under the tip at the move's end, before the run of descents it belongs to, mm.
    resolution: of the controller, mm. radius, pointed [moves]: of the tool, mm; whether it is a V, whose point goes
    down into corners all along its cut: of these only the way in from the air is an entry.
    """
    descents, entering = _descents(motion, pieces, tips, passes, pass_of, box, before, resolution, radius, pointed)
    made = [descents, _openings(motion, pieces, passes, entering, box, resolution)]
    order = np.argsort(np.concatenate([part.last_move for part in made]), kind="stable")
    return Entries(
        **{name: np.concatenate([getattr(part, name) for part in made])[order] for name in Entries.__slots__}
    )


def _outside(box: Stock, x: Floats, y: Floats) -> Bools:
    x_low, x_high, y_low, y_high = outline(box)
    return (x < x_low) | (x > x_high) | (y < y_low) | (y > y_high)


def _level_length(motion: Motion) -> Floats:
    """X-Y path of each move, mm, of arcs outside G17 from end to end; large where an end is unknown."""
    level: Floats = np.hypot(motion.x1 - motion.x0, motion.y1 - motion.y0)
    arcs = np.flatnonzero((motion.kind >= ARC_CW) & (motion.plane == 17))
    drop = np.nan_to_num(motion.z1[arcs] - motion.z0[arcs])
    level[arcs] = np.sqrt(np.maximum(0.0, motion.length[arcs] ** 2 - drop**2))
    level[~(level < LONG)] = LONG
    return level


def _begins(values: Column) -> Bools:
    """Whether each row differs from the one before; the first does."""
    return np.concatenate(([True], values[1:] != values[:-1]))


def _descents(
    motion: Motion, pieces: Pieces, tips: Tips, passes: Passes, pass_of: Ints, box: Stock, before: Floats32,
    resolution: float, radius: Floats, pointed: Bools,
) -> tuple[Entries, Bools]:  # fmt: skip
    """The entries, and which pieces belong to one: groups of descending feed moves in solid.

    Pecks into one hole, and the laps of a helix, are one group.
    """
    top = box.top or 0.0
    fall_of_move = motion.z0 - motion.z1
    down = (fall_of_move > 0.5 * resolution) & (motion.kind != RAPID)
    run_of_move = np.cumsum(~down | _begins(down) | _begins(motion.tool)) if len(down) else down
    entering = np.zeros(len(pieces), bool)
    rows = np.flatnonzero((pieces.drop > 0) & (tips.under >= GRAZE) & down[pieces.move])
    if not len(rows):
        return _table(0), entering
    move = pieces.move[rows]
    run, tool = run_of_move[move], motion.tool[move]
    drop, travel = pieces.drop[rows].astype(np.float64), pieces.travel[rows].astype(np.float64)
    level = _level_length(motion)
    bowed = (motion.kind[move] >= ARC_CW) & (motion.plane[move] != 17) & (level[move] > radius[move])
    steep = np.where(bowed, drop > travel, fall_of_move[move] > level[move] * (1 + 1e-6))
    steep |= level[move] < resolution
    gone_through = tips.tenth[rows].astype(np.float64)

    section = _sections(run, steep)
    sum_of = np.bincount(section, gone_through)
    touch = steep & (sum_of < TOUCH * 2 * radius[move[_firsts(section)]])[section]
    gentle_run = np.zeros(run[-1] + 1, bool)
    gentle_run[run[~steep]] = True
    steep &= ~(touch & gentle_run[run])
    section = _sections(run, steep)
    # behind a plunge, what is left of its rounded end belongs to nothing: neither a ramp nor deeper than the plunge
    firsts = _firsts(section)
    deep, far = np.bincount(section, gone_through), np.bincount(section, travel)
    tail = ~steep[firsts] & np.concatenate(([False], run[firsts][1:] == run[firsts][:-1]))
    tail &= (far <= radius[move[firsts]]) & (deep <= np.concatenate(([0.0], deep[:-1])))
    kept = ~tail[section]
    if not kept.all():
        rows, move, run, tool, steep = rows[kept], move[kept], run[kept], tool[kept], steep[kept]
        drop, travel, gone_through = drop[kept], travel[kept], gone_through[kept]
        section = _sections(run, steep)

    # no travel in X and Y from the piece before to the end of this one, and no rapid that cuts: a peck, the same hole
    along = np.concatenate(([0.0], np.cumsum(level)))
    rapids = np.cumsum((motion.kind[pieces.move] == RAPID) & (tips.tenth > 0))[rows]
    same_hole = (along[move[1:] + 1] - along[move[:-1]] < resolution) & (tool[1:] == tool[:-1])
    same_hole = np.concatenate(([False], same_hole & (rapids[1:] == rapids[:-1])))
    begin = np.flatnonzero(_begins(section) & ~same_hole)
    runs = np.flatnonzero(_begins(section))
    stop = np.concatenate((begin[1:], [len(rows)])) - 1
    first, last = move[begin], move[stop]

    half = tips.half[rows].astype(np.float64)
    tenth, wide = np.add.reduceat(gone_through, begin), np.add.reduceat(half, begin)
    on_half = wide >= FEW * tenth
    solid = np.where(on_half, wide, tenth)
    weight = np.where(np.repeat(on_half, stop - begin + 1), half, gone_through)
    under = np.add.reduceat(tips.under[rows] * weight, begin) / np.maximum(np.add.reduceat(weight, begin), 1e-12)
    under = np.where(on_half, np.maximum(under, HALF), np.minimum(under, np.float64(np.nextafter(np.float32(HALF), 0))))
    thick = np.maximum.reduceat(np.maximum(0.0, top - motion.z1[move] - before[move]), runs)
    thick = np.add.reduceat(thick, np.searchsorted(runs, begin))
    gone = np.add.reduceat(travel * np.minimum(1.0, gone_through / drop), begin)
    gone[gone < resolution] = 0.0
    steepest = _steepest(begin, stop, drop, travel, pieces.length[rows].astype(np.float64), _begins(section),
                         STRETCH * 2 * radius[move])  # fmt: skip
    slope = steepest.slope
    slope[gone == 0] = 90.0
    is_arc = (motion.kind[move] >= ARC_CW) & (motion.plane[move] == 17)
    arc_travel = np.add.reduceat(np.where(is_arc, travel, 0.0), begin)
    helix_radius = np.where(
        is_arc,
        np.hypot(motion.x0[move] - np.nan_to_num(motion.cu[move]), motion.y0[move] - np.nan_to_num(motion.cv[move])),
        0.0,
    )
    helix_radius = np.add.reduceat(np.where(is_arc, helix_radius * travel, 0.0), begin) / np.maximum(arc_travel, 1e-12)
    kind = np.full(len(begin), ENTRY["ramp"], np.uint8)
    kind[(arc_travel > 0.5 * np.add.reduceat(travel, begin)) & (gone > 0)] = ENTRY["helix"]
    kind[slope > STEEP + 1e-4] = ENTRY["straight"]
    straight = kind == ENTRY["straight"]
    centre = np.maximum.reduceat(pieces.centre[rows], begin)
    keep = np.where(straight, solid > 0.01, (solid > SURFACE) & (centre > 0) & (thick > FOLLOWS * solid))
    keep &= ~pointed[first] | _from_air(motion, pieces, passes, pass_of, rows[begin], run_of_move, top)

    fall = np.concatenate(([0.0], np.cumsum(np.where(down & (fall_of_move < LONG), fall_of_move, 0.0))))
    # pecks go down again through their own hole: only the way from the first start to the lowest end is the descent
    lowest = np.minimum.reduceat(motion.z1[move], begin)
    descent = np.where(straight, motion.z0[first] - lowest, fall[last + 1] - fall[first])
    feed = motion.feed[move]
    sink = feed * drop / np.maximum(pieces.length[rows], 1e-12)
    of_move = np.cumsum(_begins(move)) - 1
    least = np.minimum(SURFACE, 0.1 * np.repeat(tenth, stop - begin + 1))
    by_move = np.bincount(of_move, gone_through)[of_move]
    # a gentle ramp of many fine moves has no other bits
    least = np.minimum(least, 0.5 * np.repeat(np.maximum.reduceat(by_move, begin), stop - begin + 1))
    counts = by_move >= least
    sink = np.where(counts, sink, np.nan)
    # what its tip grazed on the way belongs to the entry too
    entered = np.zeros(int(run_of_move[-1]) + 1, bool)
    entered[run[np.repeat(keep, stop - begin + 1)]] = True
    entering |= down[pieces.move] & entered[run_of_move[pieces.move]]
    table = _table(
        len(begin),
        kind=kind,
        first_move=first,
        last_move=last,
        pass_=pass_of[rows[begin]],
        solid=solid,
        descent=descent,
        travel=gone,
        slope=slope,
        steep_move=move[steepest.first],
        steep_drop=steepest.drop,
        steep_travel=steepest.travel,
        under=under,
        centre=centre,
        feed=np.fmax.reduceat(feed, begin),
        z_feed=np.fmax.reduceat(sink, begin),
        depth=np.maximum.reduceat(pieces.depth[rows], begin),
        radius=np.where(kind == ENTRY["helix"], helix_radius, np.nan),
        from_outside=_outside(box, motion.x0[first], motion.y0[first]),
        keep=keep,
    )
    return table, entering


def _sections(run: Longs, steep: Bools) -> Longs:
    """Number of the stretch each row belongs to: of one run of moves, and steep all along or not at all."""
    section: Longs = np.cumsum(_begins(run) | _begins(steep)) - 1
    return section


def _firsts(section: Longs) -> Longs:
    return np.flatnonzero(_begins(section))


def _from_air(
    motion: Motion, pieces: Pieces, passes: Passes, pass_of: Ints, rows: Longs, run_of_move: Longs, top: float
) -> Bools:
    """Whether the run of descending moves of each piece begins above the blank, and its pass with it."""
    own, run = pass_of[rows], run_of_move[pieces.move[rows]]
    first = passes.first_piece[np.maximum(own, 0)] if len(passes) else rows
    begins = np.flatnonzero(_begins(run_of_move))[run - 1]
    from_air: Bools = (own < 0) | (run_of_move[pieces.move[first]] == run)
    return from_air & (motion.z0[begins] >= top - CONTACT)


@dataclass(frozen=True, slots=True, eq=False)
class _Steepest:
    """Of each entry the steepest stretch: its first row, its drop and travel, mm, and its slope, degrees."""

    first: Longs
    drop: Floats
    travel: Floats
    slope: Floats


def _steepest(
    begin: Longs, stop: Longs, drop: Floats, travel: Floats, length: Floats, breaks: Bools, reach: Floats
) -> _Steepest:
    """The steepest of all stretches of at least `reach` mm of path, or of all that hangs together where that is less.

    A stretch runs from border to border of the pieces, and as far as the path goes on at the same slope.
    """
    sums = [np.concatenate(([0.0], np.cumsum(values))) for values in (length, drop, travel)]
    borders = np.concatenate((np.flatnonzero(breaks), [len(drop)]))
    of_break = np.cumsum(breaks) - 1
    end = borders[of_break + 1] - 1
    last = np.searchsorted(sums[0][1:], sums[0][:-1] + reach - 1e-6)
    inside = (last <= end) | breaks
    last = np.minimum(last, end)
    slope = np.degrees(np.arctan2(sums[1][last + 1] - sums[1][:-1], sums[2][last + 1] - sums[2][:-1]))
    slope = np.where(inside, slope, -1.0)
    entry = np.repeat(np.arange(len(begin)), stop - begin + 1)
    best = np.maximum.reduceat(slope, begin)
    hits = np.flatnonzero(slope >= best[entry] - 1e-3)
    first = hits[_begins(entry[hits])]
    last = last[first]
    own = np.degrees(np.arctan2(drop, travel))
    even = np.cumsum(breaks | np.concatenate(([True], np.abs(np.diff(own)) > SAME_SLOPE)))
    opens = np.flatnonzero(_begins(even))
    closes = np.concatenate((opens[1:], [len(own)])) - 1
    first = np.where(np.abs(own[first] - best) <= SAME_SLOPE, opens[even[first] - 1], first)
    last = np.where(np.abs(own[last] - best) <= SAME_SLOPE, closes[even[last] - 1], last)
    fallen, gone = sums[1][last + 1] - sums[1][first], sums[2][last + 1] - sums[2][first]
    return _Steepest(first, fallen, gone, np.degrees(np.arctan2(fallen, gone)))


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
        steep_move=came,
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
        "steep_move": np.int32,
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
