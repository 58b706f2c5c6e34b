"""The contact profile: where on the tool's rim each piece of path met material, how deep, and what lay under the tip.

Angles are degrees from the direction of travel, positive to the left, -90 to 90: the rim of a tool that moves along
cuts on its front half only. Depth is what the rim takes off there, above what stood before: for a flat tool what its
side meets, without what the tip then takes off below it; for other shapes the top of the material met above the lowest
point that cuts. Every question takes the table, the rows asked for (`pieces.profile`, or some of it) and, where it
asks for contact deeper than a limit, one limit or one per row, mm. It answers one number per row.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from gclint.columns import Column, Floats32
from gclint.tables.contact import Contact

SECTORS = 24
BANDS = 3
SECTOR = 7.5  # degrees
MM = np.float32(1 / 400)  # of one step of a depth
SHARE = np.float32(1 / 50000)
NONE = 32767  # an edge of a run that is not there
NO_BAND = 65535
AT_ONCE = 100_000  # rows that are worked on together, so that memory stays bounded

MIDDLE = (np.arange(SECTORS) * SECTOR + SECTOR / 2 - 90).astype(np.float32)  # degrees of the sectors' middles


def empty(rows: int) -> Contact:
    """A table whose rows are still to be written."""
    return Contact(
        np.empty((rows, SECTORS), np.uint16),
        np.empty((rows, BANDS * 4), np.int16),
        np.empty((rows, BANDS - 1), np.uint16),
        np.empty(rows, np.uint16),
        np.empty((rows, 5), np.uint16),
    )


def joined(tables: list[Contact]) -> Contact:
    """One table of several, one behind the other."""
    if not tables:
        return empty(0)
    if len(tables) == 1:
        return tables[0]
    return Contact(*(np.concatenate([getattr(each, name) for each in tables]) for name in Contact.__slots__))


def _answer(values: Column) -> Floats32:
    return np.asarray(values, np.float32)


def depths(contact: Contact, rows: Column) -> Floats32:
    """[rows, SECTORS] mm that the rim takes off in each sector."""
    return _answer(contact.depth[rows] * MM)


def runs(contact: Contact, rows: Column, deeper: float | Column = 0.0) -> tuple[Floats32, Floats32]:
    """(first, last), each [rows, 2], degrees: the runs of contact deeper than that; NaN where there is none."""
    rows = np.asarray(rows)
    limit = np.broadcast_to(np.asarray(deeper, np.float32), rows.shape)
    first = np.full((len(rows), 2), np.nan, np.float32)
    last = first.copy()
    for begin in range(0, len(rows), AT_ONCE):
        part = slice(begin, begin + AT_ONCE)
        _runs(contact, rows[part], limit[part], first[part], last[part])
    return first, last


def _edges(contact: Contact, rows: Column, band: int) -> tuple[Floats32, Floats32]:
    edges = contact.edges[rows, band * 4 : band * 4 + 4]
    degrees = np.where(edges == NONE, np.float32(np.nan), edges * np.float32(0.01))
    return _answer(degrees[:, 0::2]), _answer(degrees[:, 1::2])


def _runs(contact: Contact, rows: Column, limit: Floats32, first: Floats32, last: Floats32) -> None:
    """Writes into `first` and `last`. A band gives the runs of what is deeper than its limit; in between, the edges lie
    where the depths of the sectors pass the limit asked for."""
    depth = contact.depth[rows] * MM
    highest = depth.max(axis=1, initial=0.0)
    low, high = _edges(contact, rows, 0)
    above = np.where(contact.above[rows] == NO_BAND, np.float32(np.inf), contact.above[rows] * MM)
    base = np.zeros(len(rows), np.float32)  # the limit of the band taken
    for band in (1, 2):
        deeper = (limit >= above[:, band - 1]) & np.isfinite(above[:, band - 1])
        low_band, high_band = _edges(contact, rows[deeper], band)
        low[deeper], high[deeper], base[deeper] = low_band, high_band, above[deeper, band - 1]
    within = (limit > base) & np.isfinite(low[:, 0]) & (limit < highest)
    within &= np.isfinite(above[:, 0]) | ~_one_depth(depth)
    if within.any():
        at = np.flatnonzero(within)
        low[at], high[at] = _narrowed(depth[at], low[at], high[at], limit[at], contact, rows[at])
    gone = limit >= highest
    low[gone], high[gone] = np.nan, np.nan
    first[:], last[:] = low, high


def _between(low: Floats32, high: Floats32) -> Column:
    found: Column = (low <= MIDDLE) & (high >= MIDDLE)
    return found


def _one_depth(depth: Floats32) -> Column:
    """Whether the sectors in contact are of one depth, to 2 %."""
    least = np.where(depth > 0, depth, np.float32(np.inf)).min(axis=1, initial=np.inf)
    found: Column = least >= np.float32(0.98) * depth.max(axis=1, initial=0.0)
    return found


def _narrowed(
    depth: Floats32, low: Floats32, high: Floats32, limit: Floats32, contact: Contact, rows: Column
) -> tuple[Floats32, Floats32]:
    """The two widest runs of sectors deeper than `limit` within these runs; each ends where the profile passes it:
    between two middles, or at the edge of a deeper band where the profile steps."""
    inside = _between(low[:, 0, None], high[:, 0, None]) | _between(low[:, 1, None], high[:, 1, None])
    starts, ends = _stretches(inside & (depth > limit[:, None]))
    made_low, made_high = np.full_like(low, np.nan), np.full_like(high, np.nan)
    steps = [_edges(contact, rows, band) for band in (1, 2)]
    for k in (0, 1):
        some = np.flatnonzero(starts[:, k] >= 0)
        given = depth[some], inside[some], limit[some]
        for made, at, run_ends, side, sign in ((made_low, starts, low, 0, 1), (made_high, ends, high, 1, -1)):
            stepped = np.concatenate([each[side][some] for each in steps], axis=1)
            made[some, k] = _passing(*given, at[some, k], low[some], high[some], run_ends[some], stepped, sign)
    for run in (0, 1):  # one too narrow to hold a sector's middle is one step
        narrow = np.isfinite(low[:, run]) & ~_between(low[:, run, None], high[:, run, None]).any(axis=1)
        of = np.clip(((low[:, run] + high[:, run]) / 2 + 90) / SECTOR, 0, SECTORS - 1)
        sector = np.where(np.isfinite(of), of, 0).astype(np.int64)
        narrow &= (np.take_along_axis(depth, sector[:, None], 1)[:, 0] > limit) & np.isnan(made_low[:, 1])
        place = np.isfinite(made_low[narrow, 0]).astype(np.int64)
        made_low[narrow, place], made_high[narrow, place] = low[narrow, run], high[narrow, run]
    return made_low, made_high


def _stretches(deep: Column) -> tuple[Column, Column]:
    """(first, last sector), each [rows, 2], of the two longest unbroken stretches; -1 where there is none."""
    n = len(deep)
    starts, ends = np.full((n, 2), -1), np.full((n, 2), -1)
    begun, longest = np.full(n, -1), np.zeros((n, 2), np.int64)
    for sector in range(SECTORS + 1):
        now = deep[:, sector] if sector < SECTORS else np.zeros(n, bool)
        row = np.flatnonzero(~now & (begun >= 0))
        length = sector - begun[row]
        place = np.argmin(longest[row], axis=1)
        longer = length > longest[row, place]
        row, place = row[longer], place[longer]
        longest[row, place], starts[row, place], ends[row, place] = length[longer], begun[row], sector - 1
        begun = np.where(now, np.where(begun < 0, sector, begun), -1)
    swapped = (starts[:, 1] >= 0) & ((starts[:, 0] < 0) | (starts[:, 1] < starts[:, 0]))
    starts[swapped], ends[swapped] = starts[swapped, ::-1], ends[swapped, ::-1]
    return starts, ends


def _passing(
    depth: Floats32, inside: Column, limit: Floats32, sector: Column, low: Floats32, high: Floats32, run_ends: Floats32,
    stepped: Floats32, sign: int,
) -> Floats32:  # fmt: skip
    """Degrees at which the profile passes the limit on the outer side of each row's sector (sign 1: its lower side).

    stepped: edges of deeper bands on that side.
    """

    def at(of: Column) -> Column:
        return np.take_along_axis(depth, of[:, None], 1)[:, 0]

    angle, value = MIDDLE[sector], at(sector)
    before = np.clip(sector - sign, 0, SECTORS - 1)
    outside = (before == sector) | ~np.take_along_axis(inside, before[:, None], 1)[:, 0]
    in_second = (low[:, 1] <= angle) & (high[:, 1] >= angle)
    edge = np.where(in_second, run_ends[:, 1], run_ends[:, 0])
    after = at(np.clip(sector + sign, 0, SECTORS - 1))
    going_on = np.maximum(0, value - (after - value) * np.abs(angle - edge) / np.float32(SECTOR))
    start, there = np.where(outside, edge, MIDDLE[before]), np.where(outside, going_on, at(before))
    with np.errstate(invalid="ignore", divide="ignore"):
        share = np.clip((limit - there) / (value - there), 0, 1)
    found = np.where(there > limit, start, start + share * (angle - start))
    # what is level inside and much deeper than outside ends in a step, and the band has its place
    step = (value > np.float32(1.3) * there) & (after <= np.float32(1.1) * value)
    for k in range(stepped.shape[1]):
        place = stepped[:, k]
        lies = (np.minimum(start, angle) - 1e-3 <= place) & (place <= np.maximum(start, angle) + 1e-3)
        found = np.where(lies & step, place, found)
    return _answer(found)


def _per_profile(
    contact: Contact, rows: Column, deeper: float | Column, answer: Callable[[Column, float | Column], Column]
) -> Floats32:
    """Answers once for each profile where there are more rows than profiles, and one limit for all."""
    if np.ndim(deeper) == 0 and len(rows) > len(contact):
        return _answer(answer(np.arange(len(contact)), deeper)[rows])
    return _answer(answer(np.asarray(rows), deeper))


def _spans(contact: Contact, rows: Column, deeper: float | Column) -> Floats32:
    first, last = runs(contact, rows, deeper)
    return _answer(np.nan_to_num(last - first, nan=0.0))


def arc(contact: Contact, rows: Column, deeper: float | Column = 0.0) -> Floats32:
    """Degrees of contact deeper than that, all runs together."""
    return _per_profile(contact, rows, deeper, lambda mine, limit: _spans(contact, mine, limit).sum(axis=1))


def widest_run(contact: Contact, rows: Column, deeper: float | Column = 0.0) -> Floats32:
    """Degrees of the wider run of contact deeper than that."""
    return _per_profile(
        contact, rows, deeper, lambda mine, limit: _spans(contact, mine, limit).max(axis=1, initial=0.0)
    )


def width(contact: Contact, rows: Column, deeper: float | Column = 0.0) -> Floats32:
    """mm across the travel over which contact is deeper than that."""

    def across(mine: Column, limit: float | Column) -> Column:
        first, last = runs(contact, mine, limit)
        wide: Column = np.nan_to_num(np.sin(np.radians(last)) - np.sin(np.radians(first)), nan=0.0).sum(axis=1)
        return np.asarray(wide * (contact.reach[mine] * MM))

    return _per_profile(contact, rows, deeper, across)


def deepest(contact: Contact, rows: Column, share: float = 0.1) -> Floats32:
    """mm that the deepest `share` of the arc of contact reaches at least."""
    return _per_profile(contact, rows, 0.0, lambda mine, _: _deepest(contact, mine, share))


def _deepest(contact: Contact, rows: Column, share: float) -> Floats32:
    """The sectors from the deepest on, until they make up the share: those of a band have its arc together."""
    depth = contact.depth[rows] * MM
    wide = np.zeros(depth.shape, np.float32)
    total = np.zeros(len(rows), np.float32)
    rest = np.ones(depth.shape, bool)
    for band in (2, 1, 0):
        first, last = _edges(contact, rows, band)
        arcs = np.nan_to_num(last - first, nan=0.0).sum(axis=1)
        limit = contact.above[rows, band - 1] * MM if band else np.zeros(len(rows), np.float32)
        mine = rest & (depth > limit[:, None]) & (arcs > 0)[:, None]
        each = np.maximum(0, arcs - total) / np.maximum(mine.sum(axis=1), 1)
        wide[mine] = np.broadcast_to(each[:, None], wide.shape)[mine]
        total, rest = np.maximum(total, arcs), rest & ~mine
    order = np.argsort(-depth, axis=1, kind="stable")
    so_far = np.cumsum(np.take_along_axis(wide, order, 1), axis=1)
    at = np.argmax(so_far >= share * total[:, None] - 1e-3, axis=1)
    return _answer(np.take_along_axis(np.take_along_axis(depth, order, 1), at[:, None], 1)[:, 0])


def largest_cosine(contact: Contact, rows: Column, deeper: float | Column = 0.0) -> Floats32:
    """Largest cosine of the angle between travel and a place in contact: 1 for what is dead ahead, 0 for no contact."""

    def cosine(mine: Column, limit: float | Column) -> Column:
        first, last = runs(contact, mine, limit)
        nearest = np.where((first <= 0) & (last >= 0), 0, np.minimum(np.abs(first), np.abs(last)))
        found: Column = np.where(np.isnan(nearest), 0, np.cos(np.radians(nearest))).max(axis=1, initial=0.0)
        return found

    return _per_profile(contact, rows, deeper, cosine)


def largest_chip(contact: Contact, rows: Column, sine: Callable[[Floats32], Floats32]) -> Floats32:
    """Largest product of a sector's cosine (at its place in contact nearest to the travel) and `sine` of its depth.

    sine: of the edge angle as a function of a depth in mm, [rows, SECTORS].
    """
    first, last = runs(contact, rows)
    depth = depths(contact, rows)
    beside = np.zeros((len(depth), SECTORS + 2), np.float32)
    beside[:, 1:-1] = depth  # a sector that a run only reaches into has the depth of the one beside it
    depth = np.where(depth > 0, depth, np.maximum(beside[:, :-2], beside[:, 2:]))
    low, high = MIDDLE - SECTOR / 2, MIDDLE + SECTOR / 2
    best = np.zeros(len(depth), np.float32)
    edge = sine(depth)
    for run in (0, 1):
        begin, end = np.maximum(low, first[:, run, None]), np.minimum(high, last[:, run, None])
        nearest = np.where((begin <= 0) & (end >= 0), 0, np.minimum(np.abs(begin), np.abs(end)))
        met = (begin < end) & (depth > 0)
        chip = np.where(met, np.cos(np.radians(nearest)) * edge, 0)
        best = np.maximum(best, chip.max(axis=1, initial=0.0))
    return _answer(best)


def under(contact: Contact, rows: Column) -> Floats32:
    """Share of the disc at the piece's end that met material which this piece took off; 0 where it does not go down."""
    return _answer(contact.disc[rows, 0] * SHARE)


def under_depth(contact: Contact, rows: Column, drop: Column, share: float) -> Floats32:
    """mm taken off under at least `share` of the disc; 0 where less met material. drop: of each piece, mm."""
    return _answer(_over_disc(contact, rows, share) * np.maximum(np.asarray(drop, np.float32), 0))


def _over_disc(contact: Contact, rows: Column, share: float) -> Floats32:
    """Shares of the drop. Between the places that are kept the depth is taken as straight."""
    disc = contact.disc[rows] * SHARE
    met = disc[:, 0]
    places = np.stack([np.zeros_like(met), np.minimum(0.1, met), np.minimum(0.5, met), met], axis=1)
    values = np.stack([disc[:, 4], disc[:, 3], disc[:, 2], disc[:, 2]], axis=1)
    values[met < 0.5, 2:] = np.minimum(disc[met < 0.5, 1, None], values[met < 0.5, 1, None])
    values[met < 0.1, 1] = disc[met < 0.1, 1]
    found = values[:, 3].copy()
    for k in (2, 1, 0):
        here = (share >= places[:, k]) & (share <= places[:, k + 1]) & (places[:, k + 1] > places[:, k])
        part = np.where(here, share - places[:, k], 0) / np.where(here, places[:, k + 1] - places[:, k], 1)
        found = np.where(here, values[:, k] + part * (values[:, k + 1] - values[:, k]), found)
    found[share > met] = 0
    return _answer(found)


def under_median(contact: Contact, rows: Column, drop: Column) -> Floats32:
    """mm: median of what came off where the disc met material."""
    return _answer(contact.disc[rows, 1] * SHARE * np.maximum(np.asarray(drop, np.float32), 0))


def under_most(contact: Contact, rows: Column, drop: Column) -> Floats32:
    """mm: the most that came off under the disc."""
    return _answer(contact.disc[rows, 4] * SHARE * np.maximum(np.asarray(drop, np.float32), 0))


def under_share(contact: Contact, rows: Column, drop: Column, deeper: float | Column) -> Floats32:
    """Share of the disc under which more than that came off."""
    rows = np.asarray(rows)
    fall = np.maximum(np.asarray(drop, np.float32), 0)
    disc = contact.disc[rows] * SHARE
    limit = np.broadcast_to(np.asarray(deeper, np.float32), rows.shape)
    # half and tenth of the disc are known places; the most lies at its rim, the least of what was met at the share
    known = np.stack([np.zeros(len(rows)), np.minimum(disc[:, 0], 0.1), np.minimum(disc[:, 0], 0.5), disc[:, 0]], 1)
    values = np.stack([disc[:, 4], disc[:, 3], disc[:, 2], np.zeros(len(rows))], axis=1) * fall[:, None]
    found = np.zeros(len(rows))
    for k in range(3):
        with np.errstate(invalid="ignore", divide="ignore"):
            part = np.clip((values[:, k] - limit) / (values[:, k] - values[:, k + 1]), 0, 1)
        part = np.where(values[:, k] > values[:, k + 1], part, 1)
        found = np.where(values[:, k] > limit, known[:, k] + part * (known[:, k + 1] - known[:, k]), found)
    return _answer(found)
