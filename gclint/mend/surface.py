"""Compares what two programs leave: the lowest place that all feed moves reach, taken without a blank.

Moves that both programs make cancel out. Only cells over which a move passes that one of them lacks are looked at.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from gclint.columns import Floats, Ints, Longs
from gclint.motion.along import points_at
from gclint.stock.profile import Profile, profile
from gclint.tables.motion import COMPENSATED, HOME, MACHINE, OTHER_FRAME, PROBE, RAPID, Motion
from gclint.tables.setup import Setup

FINEST = 0.05  # mm, the cell
Z_TOLERANCE = 0.01  # mm
SAGITTA = 0.001  # mm between an arc and its chords
MOST_WORK = 4e8  # cells looked at, about two seconds; over it the cell grows, and the proof says so
MOST_CHORDS = 3000  # of one arc
TILE = 128  # cells
SAME = 1e-6  # mm; moves whose ends are nearer are the same move


@dataclass(frozen=True, slots=True)
class Tile:
    """A square of cells in which the surfaces differ: its lowest corner, and the difference in mm (old minus new)."""

    x: float
    y: float
    difference: Floats


@dataclass(frozen=True, slots=True)
class Difference:
    """`largest`: mm, what no neighbouring cell explains. `at`: where. `why_not`: what kept it from being compared."""

    largest: float
    cell: float
    moves: Longs  # rows of the new motion that the old one lacks
    old_moves: Longs  # rows of the old motion that the new one lacks
    at: tuple[float, float] | None = None
    higher: float = 0.0  # mm of material the new program leaves more, at most
    deeper: float = 0.0  # mm it takes more, at most
    why_not: str = ""
    tiles: tuple[Tile, ...] = ()

    @property
    def same(self) -> bool:
        return not self.why_not and self.largest <= Z_TOLERANCE


def compare_surfaces(old: Motion, new: Motion, setup: Setup, floor: float = -math.inf) -> Difference:
    """The difference of the surfaces that two programs for one setup leave, whatever the blank; above `floor` (mm)."""
    lacks_new, lacks_old = unlike(old, new)
    none = Difference(0.0, FINEST, lacks_old, lacks_new)
    if not len(lacks_new) and not len(lacks_old):
        return none
    tools, row_of = _profiles(old, new, setup, lacks_new, lacks_old)
    for motion, rows in ((old, lacks_new), (new, lacks_old)):
        why = _unknown(motion, rows, row_of)
        if why:
            return Difference(math.inf, FINEST, lacks_old, lacks_new, why_not=why)
    gone, gone_tool = _chords(old, lacks_new, row_of)
    come, come_tool = _chords(new, lacks_old, row_of)
    shared = _shared(old, lacks_new, row_of)
    kept, kept_tool = _chords(old, shared, row_of)
    return _compared(gone, gone_tool, come, come_tool, kept, kept_tool, tools, none, floor)


def unlike(old: Motion, new: Motion) -> tuple[Longs, Longs]:
    """(feed moves of the old program that the new one lacks, and the other way round), counted with their multiples."""
    a, b = _keys(old), _keys(new)
    n = min(len(a), len(b))
    same = (a[:n] == b[:n]).all(axis=1)
    first = int(np.argmin(same)) if n and not same.all() else n
    tail = 0
    rest = n - first
    if rest:
        back = (a[len(a) - rest :] == b[len(b) - rest :]).all(axis=1)[::-1]
        tail = rest if back.all() else int(np.argmin(back))
    left, right = np.arange(first, len(a) - tail), np.arange(first, len(b) - tail)
    left, right = left[old.kind[left] != RAPID], right[new.kind[right] != RAPID]
    both = np.concatenate((a[left], b[right]))
    if not len(both):
        return left, right
    order = np.lexsort(both.T[::-1])
    ordered = both[order]
    group = np.concatenate(([0], np.cumsum((ordered[1:] != ordered[:-1]).any(axis=1))))
    number = np.empty(len(both), np.int64)
    number[order] = group
    mine, theirs = number[: len(left)], number[len(left) :]
    counts = np.bincount(mine, minlength=group[-1] + 1), np.bincount(theirs, minlength=group[-1] + 1)
    # a surface does not know how often a move is made
    return left[counts[1][mine] == 0], right[counts[0][theirs] == 0]


def _keys(m: Motion) -> Longs:
    """[moves, columns] whole numbers: equal rows are the same move of the same tool."""
    columns = []
    for values in (m.x0, m.y0, m.z0, m.x1, m.y1, m.z1, m.cu, m.cv, m.sweep):
        with np.errstate(invalid="ignore"):
            fits = np.abs(values) < 1e9
        columns.append(np.where(fits, np.rint(np.where(fits, values, 0.0) / SAME), -(2**60)).astype(np.int64))
    columns += [m.kind.astype(np.int64), np.where(m.sweep != 0, m.plane, 0).astype(np.int64), m.tool.astype(np.int64)]
    return np.stack(columns, axis=1)


def _profiles(
    old: Motion, new: Motion, setup: Setup, lacks_new: Longs, lacks_old: Longs
) -> tuple[Floats, dict[int, int]]:
    rows: list[tuple[float, ...]] = []
    row_of: dict[int, int] = {}
    for number in {*np.unique(old.tool).tolist(), *np.unique(new.tool).tolist()}:
        tool = setup.tools.get(number)
        made = profile(tool) if tool is not None else None
        if isinstance(made, Profile):
            row_of[number] = len(rows)
            rows.append(made.row[:7])
    return np.array(rows, np.float64).reshape(-1, 7), row_of


def _unknown(m: Motion, rows: Longs, row_of: dict[int, int]) -> str:
    """Why these moves cannot be compared; "" where they can."""
    if not len(rows):
        return ""
    if any(int(number) not in row_of for number in np.unique(m.tool[rows])):
        return "the shape and the diameter of the tool are not declared"
    flags = m.flags[rows]
    if (flags & (OTHER_FRAME | COMPENSATED | PROBE | MACHINE | HOME)).any():
        return "the place of some of the moves is not known"
    finite = np.ones(len(rows), bool)
    for values in (m.x0, m.y0, m.z0, m.x1, m.y1, m.z1):
        finite &= np.abs(values[rows]) < 1e6
    return "" if finite.all() else "the place of some of the moves is not known"


def _shared(m: Motion, lacking: Longs, row_of: dict[int, int]) -> Longs:
    """Feed moves of a program that the other one makes too, and whose place and tool are known."""
    use = m.kind != RAPID
    use[lacking] = False
    for values in (m.x0, m.y0, m.z0, m.x1, m.y1, m.z1):
        use &= np.abs(values) < 1e6
    use &= np.isin(m.tool, list(row_of))
    use &= (m.flags & (OTHER_FRAME | COMPENSATED | PROBE)) == 0
    return np.flatnonzero(use)


def _chords(m: Motion, rows: Longs, row_of: dict[int, int]) -> tuple[Floats, Ints]:
    """Straight moves that stand for moves: [n, 6] ends in mm, and the row of the tool of each."""
    arcs = rows[m.sweep[rows] != 0]
    lines = rows[m.sweep[rows] == 0]
    ends = [np.stack([c[lines] for c in (m.x0, m.y0, m.z0, m.x1, m.y1, m.z1)], axis=1).astype(np.float64)]
    of = [lines]
    if len(arcs):
        turn = np.radians(np.abs(m.sweep[arcs]))
        radius = np.maximum(m.length[arcs] / np.maximum(turn, 1e-9), 1e-6)  # a helix is longer: finer chords
        step = 2 * np.arccos(np.clip(1 - SAGITTA / radius, -1, 1 - 1e-12))
        count = np.clip(np.ceil(turn / step), 1, MOST_CHORDS).astype(np.int64)
        owner = np.repeat(np.arange(len(arcs)), count)
        first = np.concatenate(([0], np.cumsum(count)[:-1]))
        at = np.arange(len(owner)) - first[owner]
        share0, share1 = at / count[owner], (at + 1) / count[owner]
        p0, p1 = points_at(m, arcs[owner], share0), points_at(m, arcs[owner], share1)
        ends.append(np.stack((*p0, *p1), axis=1))
        of.append(arcs[owner])
    tool = np.concatenate(of)
    numbers = m.tool[tool]
    table = np.zeros(len(numbers), np.int32)
    for number, row in row_of.items():
        table[numbers == number] = row
    return np.ascontiguousarray(np.concatenate(ends)), table


def _box(ends: Floats, tool: Ints, tools: Floats) -> tuple[Floats, Floats, Floats, Floats]:
    r = tools[tool, 0]
    x0, x1 = np.minimum(ends[:, 0], ends[:, 3]) - r, np.maximum(ends[:, 0], ends[:, 3]) + r
    y0, y1 = np.minimum(ends[:, 1], ends[:, 4]) - r, np.maximum(ends[:, 1], ends[:, 4]) + r
    return x0, x1, y0, y1


def _compared(gone: Floats, gone_tool: Ints, come: Floats, come_tool: Ints, kept: Floats, kept_tool: Ints,
              tools: Floats, none: Difference, floor: float) -> Difference:  # fmt: skip
    from gclint.mend.envelope import lower

    moved = np.concatenate((gone, come))
    moved_tool = np.concatenate((gone_tool, come_tool))
    cell = _cell(moved, moved_tool, tools)
    boxes = [_box(each, of, tools) for each, of in ((gone, gone_tool), (come, come_tool), (kept, kept_tool))]
    x_low, y_low = (min(float(b[k].min()) for b in boxes[:2] if len(b[k])) for k in (0, 2))
    side = TILE * cell
    seen = _tiles(np.concatenate((boxes[0][0], boxes[1][0])), np.concatenate((boxes[0][1], boxes[1][1])),
                  np.concatenate((boxes[0][2], boxes[1][2])), np.concatenate((boxes[0][3], boxes[1][3])),
                  x_low, y_low, side)  # fmt: skip
    largest = higher = deeper = 0.0
    at = None
    tiles = []
    for column, row in sorted(seen):
        fields = []
        low_x, low_y = x_low + column * side - cell, y_low + row * side - cell  # a cell more on each side
        for (ends, of), b in zip(((gone, gone_tool), (come, come_tool), (kept, kept_tool)), boxes):
            field = np.full((TILE + 2, TILE + 2), np.inf)
            near = np.flatnonzero((b[0] < low_x + side + 2 * cell) & (b[1] > low_x)
                                  & (b[2] < low_y + side + 2 * cell) & (b[3] > low_y))  # fmt: skip
            lower(field, low_x, low_y, cell, ends, of, tools, near.astype(np.int64))
            fields.append(field)
        old, new = (np.maximum(np.minimum(each, fields[2]), floor) for each in fields[:2])
        if np.array_equal(old, new):
            continue
        unexplained, sign = _unexplained(old, new)
        worst = np.unravel_index(int(np.argmax(unexplained)), unexplained.shape)
        value = float(unexplained[worst])
        if value > largest:
            largest = value
            at = (low_x + (worst[1] + 1.5) * cell, low_y + (worst[0] + 1.5) * cell)
        if value > 0:
            higher = max(higher, float(np.max(unexplained, where=sign > 0, initial=0.0)))
            deeper = max(deeper, float(np.max(unexplained, where=sign < 0, initial=0.0)))
        if value > Z_TOLERANCE:
            tiles.append(Tile(low_x + cell, low_y + cell, np.where(unexplained > Z_TOLERANCE, unexplained * sign, 0.0)))
    return Difference(largest, cell, none.moves, none.old_moves, at, higher, deeper, tiles=tuple(tiles))


def _unexplained(old: Floats, new: Floats) -> tuple[Floats, Floats]:
    """[inner cells] by how much each surface leaves what the other has in a cell or its neighbours; sign of new - old.

    A wall may stand a cell further; a floor may not lie deeper.
    """
    result = np.zeros((old.shape[0] - 2, old.shape[1] - 2))
    for a, b in ((old, new), (new, old)):
        stack = [b[1 + j : b.shape[0] - 1 + j, 1 + i : b.shape[1] - 1 + i] for j in (-1, 0, 1) for i in (-1, 0, 1)]
        low, high = np.minimum.reduce(stack), np.maximum.reduce(stack)
        own = a[1:-1, 1:-1]
        with np.errstate(invalid="ignore"):
            off = np.maximum(np.where(own < low, low - own, 0.0), np.where(own > high, own - high, 0.0))
        off[np.isnan(off)] = 0.0
        result = np.maximum(result, off)
    with np.errstate(invalid="ignore"):
        sign = np.sign(np.nan_to_num(new[1:-1, 1:-1] - old[1:-1, 1:-1], nan=0.0, posinf=1.0, neginf=-1.0))
    return np.minimum(result, 1e6), sign


def _cell(ends: Floats, tool: Ints, tools: Floats) -> float:
    """mm: the finest whose work stays bounded."""
    r = tools[tool, 0]
    length = np.hypot(ends[:, 3] - ends[:, 0], ends[:, 4] - ends[:, 1])
    wide, high = np.abs(ends[:, 3] - ends[:, 0]) + 2 * r, np.abs(ends[:, 4] - ends[:, 1]) + 2 * r
    area = float(np.minimum(wide * high, 1e12).sum()) + float((length * 2 * r).sum())
    cells = area / FINEST**2
    return FINEST if cells <= MOST_WORK else FINEST * math.sqrt(cells / MOST_WORK)


def _tiles(
    x0: Floats, x1: Floats, y0: Floats, y1: Floats, x_low: float, y_low: float, side: float
) -> set[tuple[int, int]]:
    """(column, row) of every tile that one of the boxes meets."""
    found: set[tuple[int, int]] = set()
    bounds = [
        np.floor((each - low) / side).astype(int) for each, low in ((x0, x_low), (x1, x_low), (y0, y_low), (y1, y_low))
    ]
    for a, b, c, d in {tuple(each) for each in zip(*(each.tolist() for each in bounds))}:
        found.update((i, j) for i in range(a, b + 1) for j in range(c, d + 1))
    return found
