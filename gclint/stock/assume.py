"""The blank that is modelled: what is declared, and what must be assumed, with the reason."""

from __future__ import annotations

import math

import numpy as np

from gclint.columns import Bools, Floats
from gclint.problem import Problem
from gclint.tables.motion import RAPID, Motion
from gclint.tables.setup import Assumed, Setup, Stock

NEEDS_STOCK = "stock (--stock or [stock] in job.toml)"


def top_of(setup: Setup) -> float | None:
    """Z of the stock's top in work coordinates; None where nothing says where it is."""
    if setup.stock is not None and setup.stock.top is not None:
        return setup.stock.top
    return 0.0 if setup.z_zero in (None, "stock-top") else None


def blank(
    motion: Motion, setup: Setup, top: float, cuts: Bools, radius: Floats
) -> tuple[Stock | None, tuple[Assumed, ...]]:
    """The blank, unknown parts filled from the path; None where no cut goes below `top` and no outline is declared.

    None too where nothing is declared and the program speaks against a blank below `top`.

    cuts: moves that are swept; radius: of each move's tool, mm. X and Y are then the swept box of the feed moves below
    the top, plus one tool diameter on each side.
    """
    known = setup.stock or Stock(None, None, None, None, declared=False, placed=False)
    assumed: list[Assumed] = []
    because = "no stock is declared" if not known.declared else "the stock's place is not declared"
    if known.top is None and _upside_down(motion, top):
        return None, ()
    if known.top is None:
        assumed.append(Assumed("stock top", f"Z {top:.3f} mm (work zero)", because))
    x, y = known.x, known.y
    if x is None or y is None:
        found = _extent(motion, top, cuts & (motion.kind != RAPID), radius)
        if found is None:
            return None, ()
        if x is None:
            x = found[0]
            assumed.append(
                Assumed("stock in X", f"{x[0]:.3f} to {x[1]:.3f} mm (the cuts and one tool diameter)", because)
            )
        if y is None:
            y = found[1]
            assumed.append(
                Assumed("stock in Y", f"{y[0]:.3f} to {y[1]:.3f} mm (the cuts and one tool diameter)", because)
            )
    for name, (low, high) in (("X", x), ("Y", y)):
        if not (math.isfinite(low) and math.isfinite(high) and low < high):
            raise Problem(f"the stock reaches from {low:g} to {high:g} mm in {name}: that is no size")
    return Stock(x, y, top, known.bottom, known.declared, known.placed), tuple(assumed)


def wider(each: Assumed, box: Stock) -> Assumed:
    """What was assumed of the outline, for a blank that the cuts of earlier programs make larger."""
    for name, span in (("stock in X", box.x), ("stock in Y", box.y)):
        if each.what == name and span is not None:
            value = f"{span[0]:.3f} to {span[1]:.3f} mm (the cuts of all programs so far and one tool diameter)"
            return Assumed(name, value, each.because)
    return each


def _upside_down(motion: Motion, top: float) -> bool:
    """Whether all travel runs below `top` and cuts rise above it: some programs count Z downward, or from below."""
    rapid = motion.kind == RAPID
    sideways = rapid & ((motion.x1 != motion.x0) | (motion.y1 != motion.y0))
    travel = np.maximum(motion.z0, motion.z1)[sideways]
    travel = travel[np.isfinite(travel)]
    feeds = np.maximum(motion.z0, motion.z1)[~rapid]
    feeds = feeds[np.isfinite(feeds)]
    return bool(len(travel) and len(feeds) and travel.max() < top and feeds.max() > travel.max())


def outline(box: Stock) -> tuple[float, float, float, float]:
    """Lowest and highest X, lowest and highest Y of a modelled blank, mm."""
    if box.x is None or box.y is None:
        raise ValueError("this blank has no outline")
    return *box.x, *box.y


def lowest_z(motion: Motion) -> Floats:
    """Lowest Z of every move, mm; NaN where an end is unknown."""
    low = np.minimum(motion.z0, motion.z1)
    rows = np.flatnonzero((motion.sweep != 0) & (motion.plane != 17))
    if len(rows):
        low[rows] = _arc_extent(motion, rows)[0][2]
    return low


def _extent(
    motion: Motion, top: float, cuts: Bools, radius: Floats
) -> tuple[tuple[float, float], tuple[float, float]] | None:
    """X and Y ranges of what the feed moves sweep below the top, one diameter wider; None where they stay above it."""
    rows = np.flatnonzero(cuts & ((motion.z0 < top) | (motion.z1 < top) | (motion.sweep != 0)))
    x0, y0, z0 = motion.x0[rows], motion.y0[rows], motion.z0[rows]
    x1, y1, z1 = motion.x1[rows], motion.y1[rows], motion.z1[rows]
    arc = motion.sweep[rows] != 0
    # a line that crosses the top counts from there on
    change = np.where(np.abs(z1 - z0) > 1e-12, z1 - z0, 1.0)
    cross = np.clip((top - z0) / change, 0.0, 1.0)
    first = np.where((z0 > top) & ~arc, cross, 0.0)
    last = np.where((z1 > top) & ~arc, cross, 1.0)
    lows, highs = [], []
    arc_low, arc_high = _arc_extent(motion, rows)
    below = arc_low[2] < top
    if not below.any():
        return None
    wide = 3 * radius[rows]
    for axis, (a, b) in enumerate(((x0, x1), (y0, y1))):
        p, q = a + first * (b - a), a + last * (b - a)
        low = np.where(arc, arc_low[axis], np.minimum(p, q)) - wide
        high = np.where(arc, arc_high[axis], np.maximum(p, q)) + wide
        lows.append(float(low[below].min()))
        highs.append(float(high[below].max()))
    return (lows[0], highs[0]), (lows[1], highs[1])


def _arc_extent(motion: Motion, rows: np.ndarray[tuple[int], np.dtype[np.int64]]) -> tuple[list[Floats], list[Floats]]:
    """Lowest and highest X, Y, Z of arcs (of lines: of their ends)."""
    start = [motion.x0[rows], motion.y0[rows], motion.z0[rows]]
    end = [motion.x1[rows], motion.y1[rows], motion.z1[rows]]
    low = [np.minimum(a, b) for a, b in zip(start, end, strict=True)]
    high = [np.maximum(a, b) for a, b in zip(start, end, strict=True)]
    turn = np.radians(motion.sweep[rows])
    for plane, (u, v) in ((17, (0, 1)), (18, (2, 0)), (19, (1, 2))):
        mine = (motion.plane[rows] == plane) & (turn != 0)
        if not mine.any():
            continue
        cu, cv = motion.cu[rows][mine], motion.cv[rows][mine]
        r = np.maximum(
            np.hypot(start[u][mine] - cu, start[v][mine] - cv), np.hypot(end[u][mine] - cu, end[v][mine] - cv)
        )
        angle = np.arctan2(start[v][mine] - cv, start[u][mine] - cu)
        sweep = turn[mine]
        for quarter, axis, centre, sign in ((0, u, cu, 1), (1, v, cv, 1), (2, u, cu, -1), (3, v, cv, -1)):
            way = (quarter * math.pi / 2 - angle) * np.sign(sweep) % (2 * math.pi)
            passed = way <= np.abs(sweep)
            reach = np.where(passed, centre + sign * r, np.nan)
            side = high[axis] if sign > 0 else low[axis]
            side[mine] = (np.fmax if sign > 0 else np.fmin)(side[mine], reach)
    return low, high
