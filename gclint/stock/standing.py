"""What is left standing of the blank when the program has run: pieces cut free, grooves not cut through, bridges.

Read from the height field alone; the path only says where to look and which line was the last to cut there.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from msgspec import Struct

from gclint.columns import Bools, Floats, Floats32, Ints, Longs
from gclint.knowledge.numbers import model_number
from gclint.motion.along import points_at
from gclint.stock.assume import outline
from gclint.stock.laps import Laps, Points, laps_of, points_along
from gclint.tables.engagement import Engagement
from gclint.tables.motion import RAPID, Motion
from gclint.tables.setup import KeepOut, Setup

AROUND = np.linspace(0.0, 2 * np.pi, 24, endpoint=False)  # directions looked at around a tool
BEYOND = 1.5  # cells outside the rim, so that the wall's own cell does not count
SIDES = (1.5, 2.1)  # radii aside of the path at which a wall is looked for: a kerf may be that much wider than the tool
STANDS = 0.1  # of the blank's thickness: what is that much higher than the floor of a kerf is a wall of it
RISES = 0.05  # mm above the level of its lap: a lift


class Standing(Struct, frozen=True, eq=False):
    """Pieces of the blank that are cut free, one row each; lengths in mm, places in work coordinates.

    The piece that is held, the rest of the blank, is none of them.
    """

    area: Floats  # mm2, as seen from above
    low: Floats  # [pieces, 2] lowest X and Y
    high: Floats
    height: Floats  # of its highest point above the blank's underside
    at_edge: Bools  # whether it reaches the outline of the blank
    clamped: Bools  # whether a declared keep-out (a clamp) lies over it
    freed_by: Longs  # row of Motion of the last move that cuts through beside it; -1 where none does
    freed_length: Floats  # of the cuts through beside it in that pass; of a closed lap its whole length
    lifts: Longs  # lifts of laps beside it, and how many of them were long enough to leave a bridge
    lifts_kept: Longs
    inside: Bools  # whether it lies well within another lap at least nine tenths deep: a slug of a hole in a part

    def __len__(self) -> int:
        return len(self.area)


class Lifts(Struct, frozen=True, eq=False):
    """Lifts of the tool over the blank's underside within a lap that cuts through: where a bridge (tab) should stay."""

    move: Longs  # row of Motion at which the tool rises
    x: Floats  # middle
    y: Floats
    length: Floats  # in X and Y, of the part that leaves material
    bridge: Floats  # width of what is left there at its narrowest, across the way from part to rest; 0 if it is cut off
    height: Floats  # of what is left there, at most
    made: Floats  # width that the lift itself leaves: its length less the tool's diameter

    def __len__(self) -> int:
        return len(self.move)


class Grooves(Struct, frozen=True, eq=False):
    """Closed laps that cut a groove between two walls, at least nine tenths of the thickness deep."""

    move: Longs  # row of Motion of the lap's lowest level
    length: Floats
    share: Floats  # of the thickness that the lap goes down
    left: Floats  # under it at the end, mm (middle of the values along the lap); 0 where it is cut through
    own: Bools  # whether its floor at the end is its own, cut no deeper by a later lap

    def __len__(self) -> int:
        return len(self.move)


class Left(Struct, frozen=True, eq=False):
    standing: Standing
    lifts: Lifts
    grooves: Grooves


def left_standing(motion: Motion, engagement: Engagement, setup: Setup) -> Left:
    """Empty tables where the blank's underside is not known, or nothing comes near it."""
    field = _Field.of(engagement)
    pieces = engagement.pieces
    if field is None or not len(pieces) or float(pieces.depth.max()) < model_number("deep_lap") * field.thick:
        return Left(_nothing_standing(), _no_lifts(), _no_grooves())
    laps = laps_of(motion, field.top, field.top - model_number("deep_lap") * field.thick)
    points = points_along(motion, laps, max(field.cell, 0.5))
    radius = np.array([t.diameter / 2 if (t := setup.tools.get(int(n))) else 0.0 for n in motion.tool[laps.first]])
    walled = _walled(field, laps, points, radius)
    lifts = _lifts(field, motion, laps, points, radius, walled)
    return Left(_standing(field, motion, engagement, setup, laps, radius, lifts), lifts,
                _grooves(field, laps, points, walled))  # fmt: skip


class _Field(Struct, frozen=True, eq=False):
    cut: Floats32  # [ny, nx] depth that is gone, from both sides
    x: float
    y: float
    cell: float
    top: float
    thick: float  # of the blank
    film: float  # less than this left under a cut holds nothing

    @staticmethod
    def of(engagement: Engagement) -> _Field | None:
        box = engagement.box
        if box is None or box.top is None or box.bottom is None or engagement.cell <= 0 or not engagement.cut.size:
            return None
        thick = box.top - box.bottom
        if thick <= 2 * model_number("film"):
            return None
        x, _, y, _ = outline(box)
        cut = engagement.cut if engagement.under is None else engagement.cut + engagement.under
        return _Field(cut, x, y, engagement.cell, box.top, thick, model_number("film"))

    def place(self, x: Floats, y: Floats) -> tuple[Longs, Longs, Bools]:
        """(row, column, whether they lie in the blank) of points; rows and columns are kept within it."""
        j, i = np.floor((y - self.y) / self.cell).astype(np.int64), np.floor((x - self.x) / self.cell).astype(np.int64)
        inside = (j >= 0) & (i >= 0) & (j < self.cut.shape[0]) & (i < self.cut.shape[1])
        return np.clip(j, 0, self.cut.shape[0] - 1), np.clip(i, 0, self.cut.shape[1] - 1), inside

    def left(self, x: Floats, y: Floats) -> Floats:
        """Thickness that is left at points, mm; 0 outside the blank and where less than a film is left."""
        j, i, inside = self.place(x, y)
        left = np.where(inside, self.thick - self.cut[j, i].astype(np.float64), 0.0)
        return np.where(left > self.film, left, 0.0)


def _walled(field: _Field, laps: Laps, points: Points, radius: Floats) -> Bools:
    """[laps] whether walls stand on both sides of most of the way: a groove, not the floor of a pocket or an edge."""
    floor = np.maximum(field.left(points.x, points.y), 0.0)
    reach = radius[points.lap]
    both = np.ones(len(points.x), dtype=bool)
    for side in (1.0, -1.0):
        stands = np.zeros(len(points.x), dtype=bool)
        for times in SIDES:
            aside = side * (times * reach + BEYOND * field.cell)
            beside = field.left(points.x - aside * points.dy, points.y + aside * points.dx)
            stands |= beside > floor + STANDS * field.thick
        both &= stands
    n = len(laps)
    with np.errstate(invalid="ignore"):
        walled: Bools = np.bincount(points.lap, both * points.step, n) > 0.5 * np.bincount(points.lap, points.step, n)
    return walled


def _grooves(field: _Field, laps: Laps, points: Points, walled: Bools) -> Grooves:
    """Of each walled lap what is left under it; points on lifts are left out."""
    rows = np.flatnonzero(walled)
    low = points.z - laps.level[points.lap] < RISES
    left, own = np.zeros(len(rows)), np.zeros(len(rows), dtype=bool)
    at = field.left(points.x, points.y)
    starts = np.searchsorted(points.lap, np.arange(len(laps) + 1))
    for n, lap in enumerate(rows.tolist()):
        span = slice(int(starts[lap]), int(starts[lap + 1]))
        values = at[span][low[span]]
        left[n] = float(np.median(values)) if len(values) else 0.0
        own[n] = field.top - laps.level[lap] > field.thick - left[n] - field.film
    depth = field.top - laps.level[rows]
    return Grooves(laps.last[rows], laps.length[rows], depth / field.thick, left, own)


def _lifts(
    field: _Field, motion: Motion, laps: Laps, points: Points, radius: Floats, walled: Bools
) -> Lifts:
    """The lifts of walled laps that cut through, and what is left of the bridges under them."""
    through = walled & (field.top - laps.level > field.thick - field.film)
    bottom = field.top - field.thick
    up = through[points.lap] & (points.z > bottom + field.film)
    change = np.flatnonzero(np.diff(up.astype(np.int8), prepend=0, append=0))
    starts, ends = change[::2], change[1::2]
    made: list[tuple[float, ...]] = []
    for start, end in zip(starts.tolist(), ends.tolist()):
        if points.lap[start] != points.lap[end - 1]:
            continue
        length = float(points.step[start:end].sum())
        middle = start + int(np.searchsorted(np.cumsum(points.step[start:end]), length / 2))
        r = float(radius[points.lap[start]])
        width, height = _bridge(field, points, middle, length, r)
        rises = _rise(motion, int(points.move[start]))
        made.append((rises, points.x[middle], points.y[middle], length, width, height, length - 2 * r))
    if not made:
        return _no_lifts()
    columns = np.array(made).T
    return Lifts(columns[0].astype(np.int64), *columns[1:])


def _rise(motion: Motion, move: int) -> int:
    """The move that lifts the tool: where the one before goes straight up to here, that one."""
    before = move - 1
    up = before >= 0 and motion.z1[before] > motion.z0[before] and motion.x0[before] == motion.x1[before]
    return before if up and motion.y0[before] == motion.y1[before] else move


def _bridge(field: _Field, points: Points, middle: int, length: float, radius: float) -> tuple[float, float]:
    """(width at its narrowest, greatest height) of what is left under a lift.

    The kerf is looked at along lines beside the path: on each, the longest unbroken stretch that stands.
    """
    reach = length / 2 + radius
    along = np.arange(-reach, reach + field.cell / 2, field.cell / 2)
    aside = np.linspace(-1.0, 1.0, max(3, int(2 * radius / field.cell)) | 1) * max(radius - BEYOND * field.cell, 0.0)
    dx, dy = float(points.dx[middle]), float(points.dy[middle])
    x = points.x[middle] + along[None, :] * dx - aside[:, None] * dy
    y = points.y[middle] + along[None, :] * dy + aside[:, None] * dx
    left = field.left(x, y)
    stands = left > 0
    # [lines, places] the last place up to here that does not stand: so far back goes the stretch that ends here
    gap = np.maximum.accumulate(np.where(stands, -1, np.arange(len(along))[None, :]), axis=1)
    longest = (np.arange(len(along))[None, :] - gap).max(axis=1)
    return float(longest.min()) * field.cell / 2, float(left.max())


def _standing(
    field: _Field, motion: Motion, engagement: Engagement, setup: Setup, laps: Laps, radius: Floats, lifts: Lifts
) -> Standing:
    """Labels what is not cut through, picks the piece that is held, and tells of each other one what cut it free."""
    from gclint.stock.islands import label

    through = field.cut >= field.thick - field.film
    rows, columns = np.flatnonzero(through.any(axis=1)), np.flatnonzero(through.any(axis=0))
    if not len(rows):
        return _nothing_standing()
    ny, nx = field.cut.shape
    j0, j1 = max(int(rows[0]) - 1, 0), min(int(rows[-1]) + 2, ny)
    i0, i1 = max(int(columns[0]) - 1, 0), min(int(columns[-1]) + 2, nx)
    if (j0 == 0 and j1 == ny) or (i0 == 0 and i1 == nx):  # what lies on two sides of the window need not hang together
        j0, j1, i0, i1 = 0, ny, 0, nx
    solid = np.ascontiguousarray(~through[j0:j1, i0:i1]).view(np.uint8)
    del through
    labels = np.zeros(solid.shape, np.int32)
    table = label(solid, field.cut[j0:j1, i0:i1], labels, False)
    if len(table) < 2:
        return _nothing_standing()
    rest = _rest(labels, table, (j0 > 0, j1 < ny, i0 > 0, i1 < nx))
    size = table[:, 0] * field.cell * field.cell
    loose = ~rest & (size >= model_number("crumb") ** 2)
    at_edge = np.zeros(len(table), dtype=bool)
    for side, reaches in zip(_sides(labels), (j0 == 0, j1 == ny, i0 == 0, i1 == nx)):
        if reaches:
            at_edge[side[side > 0] - 1] = True
    keep = np.flatnonzero(loose)
    if not len(keep):
        return _nothing_standing()
    number = np.full(len(table) + 1, -1)
    number[keep + 1] = np.arange(len(keep))

    def beside(x: Floats, y: Floats, r: Floats) -> list[tuple[Longs, Longs]]:
        """(points, loose piece) for each direction around each point in which a loose piece lies beside the tool."""
        found = []
        for angle in AROUND.tolist():
            reach = r + BEYOND * field.cell
            j, i, inside = field.place(x + reach * np.cos(angle), y + reach * np.sin(angle))
            inside &= (j >= j0) & (j < j1) & (i >= i0) & (i < i1)
            which = np.flatnonzero(inside)
            piece = number[labels[j[which] - j0, i[which] - i0]]
            found.append((which[piece >= 0], piece[piece >= 0]))
        return found

    low = np.column_stack((field.x + (table[keep, 3] + i0) * field.cell, field.y + (table[keep, 1] + j0) * field.cell))
    high = np.column_stack(
        (field.x + (table[keep, 4] + 1 + i0) * field.cell, field.y + (table[keep, 2] + 1 + j0) * field.cell)
    )
    freed_by, freed_length = _freed(motion, engagement, setup, field, len(keep), beside)
    if len(laps):
        lap = np.maximum(np.searchsorted(laps.first, freed_by, side="right") - 1, 0)
        within = (laps.first[lap] <= freed_by) & (freed_by <= laps.last[lap])
        freed_length = np.where(within, np.maximum(freed_length, laps.length[lap]), freed_length)
    count = np.zeros((2, len(keep)), np.int64)
    r = np.array([t.diameter / 2 if (t := setup.tools.get(int(n))) else 0.0 for n in motion.tool[lifts.move]])
    pairs = {(int(p), int(k)) for points, piece in beside(lifts.x, lifts.y, r) for p, k in zip(points, piece)}
    for lift, piece in pairs:
        count[0, piece] += 1
        count[1, piece] += lifts.made[lift] >= model_number("least_bridge")
    return Standing(
        area=size[keep],
        low=low,
        high=high,
        height=field.thick - np.maximum(table[keep, 5], 0.0),
        at_edge=at_edge[keep],
        clamped=_clamped(setup.keep_out, labels, keep, field, (j0, i0)),
        freed_by=freed_by,
        freed_length=freed_length,
        lifts=count[0],
        lifts_kept=count[1],
        inside=_inside(low, high, laps, radius),
    )


def _sides(labels: Ints) -> tuple[Ints, Ints, Ints, Ints]:
    return labels[0], labels[-1], labels[:, 0], labels[:, -1]


def _rest(labels: Ints, table: Floats, open_sides: tuple[bool, bool, bool, bool]) -> Bools:
    """Which pieces are the rest of the blank: what reaches past the window, else the largest that reaches its border.

    Behind a side of the window that is not the blank's own edge everything stands and hangs together.
    """
    rest = np.zeros(len(table), dtype=bool)
    for side, is_open in zip(_sides(labels), open_sides):
        if is_open:
            rest[side[side > 0] - 1] = True
    if rest.any():
        return rest
    border = np.zeros(len(table), dtype=bool)
    for side in _sides(labels):
        border[side[side > 0] - 1] = True
    spread = (table[:, 2] - table[:, 1] + 1) * (table[:, 4] - table[:, 3] + 1)
    rest[int(np.argmax(np.where(border, spread, 0.0) if border.any() else spread))] = True
    return rest


Beside = Callable[[Floats, Floats, Floats], list[tuple[Longs, Longs]]]
MOST_CUTS = 400_000  # pieces of path looked at, the last ones first


def _freed(
    motion: Motion, engagement: Engagement, setup: Setup, field: _Field, count: int, beside: Beside
) -> tuple[Longs, Floats]:
    """For each loose piece (row of Motion that cut through beside it last, length of such cuts in that pass)."""
    pieces, passes = engagement.pieces, engagement.passes
    deep = (pieces.depth >= field.thick - field.film) & (pieces.removed > 0) & (motion.kind[pieces.move] != RAPID)
    rows = np.flatnonzero(deep)[-MOST_CUTS:]
    last = np.full(count, -1, np.int64)
    length = np.zeros(count)
    if not len(rows):
        return last, length
    move = pieces.move[rows]
    share = (pieces.start[rows] + pieces.end[rows]).astype(np.float64) / 2
    x, y, _ = points_at(motion, move, share)
    numbers = motion.tool[move]
    radius = np.zeros(len(rows))
    for n in set(numbers.tolist()):
        tool = setup.tools.get(int(n))
        radius[numbers == n] = tool.diameter / 2 if tool else 0.0
    near = [np.zeros(0, np.int64)] * count
    for points, piece in beside(x, y, radius):
        order = np.argsort(piece, kind="stable")
        for k, span in zip(*_runs(piece[order])):
            near[k] = np.concatenate((near[k], points[order][span]))
    pass_of = np.searchsorted(passes.first_piece, rows, side="right") - 1
    for k, points in enumerate(near):
        if not len(points):
            continue
        own = np.sort(points)
        own = own[np.concatenate(([True], np.diff(own) != 0))]
        last[k] = int(move[own[-1]])
        length[k] = float(pieces.length[rows[own[pass_of[own] == pass_of[own[-1]]]]].sum())
    return last, length


def _runs(values: Longs) -> tuple[list[int], list[slice]]:
    """The different values of an ascending column, and where each stands in it."""
    if not len(values):
        return [], []
    starts = np.flatnonzero(np.concatenate(([True], np.diff(values) != 0)))
    ends = np.concatenate((starts[1:], [len(values)]))
    return values[starts].tolist(), [slice(a, b) for a, b in zip(starts.tolist(), ends.tolist())]


def _clamped(keep_out: tuple[KeepOut, ...], labels: Ints, keep: Longs, field: _Field, corner: tuple[int, int]) -> Bools:
    """Whether a declared keep-out box lies over a piece."""
    found = np.zeros(len(keep), dtype=bool)
    for box in keep_out:
        ends = [
            int(np.clip((at - zero) / field.cell - before, 0, size))
            for axis, (zero, before, size) in enumerate(
                ((field.x, corner[1], labels.shape[1]), (field.y, corner[0], labels.shape[0]))
            )
            for at in (box.low[axis], box.high[axis])
        ]
        under = labels[ends[2] : ends[3] + 1, ends[0] : ends[1] + 1]
        found |= np.isin(keep + 1, under)
    return found


def _inside(low: Floats, high: Floats, laps: Laps, radius: Floats) -> Bools:
    """Whether a piece lies within a lap that passes it farther away than the kerf that cut it free."""
    found = np.zeros(len(low), dtype=bool)
    for n in range(len(laps)):
        margin = np.concatenate((low - laps.low[n], laps.high[n] - high), axis=1)
        found |= (margin.min(axis=1) > 0) & (margin.max(axis=1) > 3 * radius[n] + 1.0)
    return found


def _nothing_standing() -> Standing:
    none, two, rows = np.zeros(0), np.zeros((0, 2)), np.zeros(0, np.int64)
    flags = np.zeros(0, dtype=bool)
    return Standing(none, two, two, none, flags, flags, rows, none, rows, rows, flags)


def _no_lifts() -> Lifts:
    none = np.zeros(0)
    return Lifts(np.zeros(0, np.int64), none, none, none, none, none, none)


def _no_grooves() -> Grooves:
    none = np.zeros(0)
    return Grooves(np.zeros(0, np.int64), none, none, none, np.zeros(0, dtype=bool))
