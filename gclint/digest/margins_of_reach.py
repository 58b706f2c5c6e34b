"""How near a tool comes to the table, to the ends of the machine's travel and, in its rapids, to the stock."""

from __future__ import annotations

from functools import cache

import numpy as np

from gclint.columns import Bools
from gclint.language.expression import quantity
from gclint.run import Tables
from gclint.tables.finding import Margin
from gclint.tables.motion import COMPENSATED, HOME, MACHINE, OTHER_FRAME, PROBE, RAPID
from gclint.tables.setup import Axes

DISTANCES = ("lowest cut", "travel in X", "travel in Y", "travel in Z", "height of rapids")
ROUNDING = 5
DECLARED = ("declared", "the declarations of shop and job")


def reach_of(tables: Tables, tool: int) -> tuple[Margin, ...]:
    """Depth against the table, the path's extent against each axis, rapids across the blank against its top, mm.

    Each is told only where its limit is declared.
    """
    m = tables.motion
    placed = (m.tool == tool) & (m.flags & (MACHINE | HOME | OTHER_FRAME | COMPENSATED | PROBE) == 0)
    placed &= np.isfinite(m.x1) & np.isfinite(m.y1) & np.isfinite(m.z1)
    made = (_table(tables, placed), *_travel(tables, placed), _height(tables, placed))
    return tuple(one for one in made if one is not None)


def _told(tables: Tables, what: str, side: str, found: float, limit: float, move: int,
          origin: tuple[str, str] = DECLARED) -> Margin | None:  # fmt: skip
    if not limit > 0:
        return None
    room = found / limit - 1.0 if side == "least" else 1.0 - found / limit
    found, limit = round(found, ROUNDING), round(limit, ROUNDING)
    return Margin(what, side, found, limit, "mm", round(room, 4), int(tables.motion.line[move]), *origin)


def _table(tables: Tables, placed: Bools) -> Margin | None:
    """How deep the lowest cut goes below the blank's top, of what blank and spoilboard allow."""
    box, m = tables.setup.stock, tables.motion
    cuts = np.flatnonzero(placed & (m.kind != RAPID) & _touching(tables))
    if box is None or box.top is None or box.bottom is None or not len(cuts):
        return None
    low = cuts[int(np.argmin(np.fmin(m.z0[cuts], m.z1[cuts])))]
    found = box.top - float(np.fmin(m.z0[low], m.z1[low]))
    return _told(tables, "lowest cut", "most", found, box.top - box.bottom + (tables.setup.hold.spoilboard or 0.0), low)


def _touching(tables: Tables) -> Bools:
    touched = np.zeros(len(tables.motion), bool)
    touched[tables.engagement.pieces.move] = True
    return touched


def _travel(tables: Tables, placed: Bools) -> tuple[Margin | None, ...]:
    travel, m, rows = tables.setup.machine.travel, tables.motion, np.flatnonzero(placed)
    if not isinstance(travel, Axes) or not len(rows):
        return ()
    made = []
    for name, end, limit in (("X", m.x1, travel.x), ("Y", m.y1, travel.y), ("Z", m.z1, travel.z)):
        if limit is not None:
            far = rows[int(np.argmax(end[rows]))]
            made.append(_told(tables, f"travel in {name}", "most", float(np.ptp(end[rows])), limit, far))
    return tuple(made)


def _height(tables: Tables, placed: Bools) -> Margin | None:
    """The lowest rapid that crosses the blank without cutting, against what travel-too-low asks for."""
    box, m = tables.setup.stock, tables.motion
    if box is None or box.top is None or box.x is None or box.y is None or not box.declared:
        return None
    low = np.fmin(m.z0, m.z1)
    with np.errstate(invalid="ignore"):
        across = placed & (m.kind == RAPID) & (np.hypot(m.x1 - m.x0, m.y1 - m.y0) > 1.0) & (low > box.top)
        across &= (np.fmin(m.x0, m.x1) < box.x[1]) & (np.fmax(m.x0, m.x1) > box.x[0])
        across &= (np.fmin(m.y0, m.y1) < box.y[1]) & (np.fmax(m.y0, m.y1) > box.y[0])
    rows = np.flatnonzero(across)
    if not len(rows):
        return None
    at = rows[int(np.argmin(low[rows]))]
    limit, *origin = _clearance()
    return _told(tables, "height of rapids", "least", float(low[at]) - box.top, limit, at, (origin[0], origin[1]))


@cache
def _clearance() -> tuple[float, str, str]:
    """The least height of travel over the blank, mm, with standing and source, as travel-too-low has it."""
    from gclint.packs.shipped_packs import shipped_packs

    found = next(
        rule.text.limits["least_clearance"]
        for pack in shipped_packs() for rule in pack.rules if rule.name == "travel-too-low"
    )  # fmt: skip
    return quantity(str(found.value))[0], found.standing, found.source
