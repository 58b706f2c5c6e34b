"""How the teeth bite by where on the rim the contact lies: shares of the feed per tooth, for each piece of path.

Many pieces share one profile of contact (see gclint.stock.contact), so everything is worked out once for each profile
that a tool has, and handed to its pieces.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass

import numpy as np

from gclint.columns import Bools, Column, Floats32, Longs, distinct
from gclint.cutting import formulas
from gclint.cutting.edge import sine_at
from gclint.stock import contact as profile
from gclint.stock.contact import MIDDLE, MM, SECTOR
from gclint.tables.contact import Contact
from gclint.tables.engagement import Engagement
from gclint.tables.setup import Tool

ROUND = round(360.0 / SECTOR)  # sectors of a whole turn
SHARPEST = np.cos(np.radians(np.maximum(np.abs(MIDDLE) - SECTOR / 2, 0.0)))  # largest cosine within a sector
SHAPED = ("ball", "bull-nose", "v", "tapered-ball")
MOST = 1 << 16  # profiles looked at together


@dataclass(frozen=True, slots=True, eq=False)
class Bites:
    """[pieces] of a feed per tooth of 1; 0 where the rim meets nothing."""

    largest: Floats32  # h_ex
    mean: Floats32  # h_m, but for the edge angle at the top of the cut
    cosine: Floats32  # of the angle between the travel and the nearest point of the rim in contact


def bites_of(engagement: Engagement, row: Column, tools: list[Tool | None]) -> Bites:
    """`row`: each piece's tool as an index into `tools`."""
    contact, n = engagement.contact, len(engagement.pieces)
    made = Bites(*(np.zeros(n, np.float32) for _ in range(3)))
    for number, tool in enumerate(tools):
        mine = np.flatnonzero(row == number) if len(tools) > 1 else slice(None)
        rows, of_piece = once_each(engagement.pieces.profile[mine])
        if tool is None or not len(rows):
            continue
        cosine = profile.largest_cosine(contact, rows)
        largest = cosine
        if tool.shape in SHAPED:
            largest = _in_parts(rows, lambda part, tool=tool: profile.largest_chip(
                contact, part, lambda depth: sine_at(tool, depth)))  # type: ignore[misc]  # fmt: skip
        arc, width = profile.arc(contact, rows), profile.width(contact, rows)
        mean = formulas.chip_thickness_mean_of_arc(1.0, width, contact.reach[rows] * MM, arc)
        made.largest[mine], made.mean[mine] = largest[of_piece], mean[of_piece]
        made.cosine[mine] = cosine[of_piece]
    return made


def once_each(profiles: Column) -> tuple[Longs, Longs]:
    """(each profile once, row among these for each piece); neighbours that are equal share one."""
    if not len(profiles):
        return np.zeros(0, np.int64), np.zeros(0, np.int64)
    new: Bools = np.concatenate(([True], profiles[1:] != profiles[:-1]))
    return profiles[new].astype(np.int64), np.cumsum(new) - 1


def _in_parts(rows: Longs, of: Callable[[Longs], Column]) -> Floats32:
    """Columns of 24 sectors are wide: never all of them at once."""
    made = np.zeros(len(rows), np.float32)
    for start in range(0, len(rows), MOST):
        made[start : start + MOST] = of(rows[start : start + MOST])
    return made


@dataclass(frozen=True, slots=True, eq=False)
class Pulls:
    """[profiles] forces across the tool's axis of all teeth together, for kc = 1 N/mm2 and a feed per tooth of 1 mm."""

    mean: Floats32  # N, over a turn
    low: Floats32  # at the worst position of the teeth, the edges as steep as they may be
    high: Floats32  # the same, as shallow as they may be


def pulls_of(contact: Contact, rows: Longs, teeth: int, lags: tuple[Floats32, Floats32]) -> Pulls:
    """The teeth are put at every position of a turn, and what acts on those in the cut is added as vectors.

    lags [profiles]: degrees over which one edge is spread around the tool at the depth of the contact: steep, shallow.
    A helical edge acts at once on all that lies within its lag, a part of its height on each.
    """
    made = Pulls(*(np.zeros(len(rows), np.float32) for _ in range(3)))
    for start in range(0, len(rows), MOST):
        part = slice(start, min(start + MOST, len(rows)))
        depth, (middle, met) = profile.depths(contact, rows[part]), _in_sectors(contact, rows[part])
        chips = depth * met * np.cos(np.radians(middle))
        made.mean[part] = teeth / (2 * np.pi) * np.radians(SECTOR) * np.hypot(*_sum_of(chips))
        # one straight edge at its thickest chip, which lies at the border of a sector
        nearest = np.minimum(SHARPEST, profile.largest_cosine(contact, rows[part])[:, None])
        one = (depth * nearest * (met > 0)).max(axis=1, initial=0.0)
        for lag, peak in zip(lags, (made.low, made.high), strict=True):
            spread = np.clip(np.nan_to_num(lag[part] / SECTOR), 1.0, ROUND - 1.0)
            peak[part] = one / spread
            for sectors, of_spread in _by_value(spread.astype(np.int64)):
                worst = _worst(chips[of_spread], teeth, sectors, spread[of_spread] - sectors)
                peak[part][of_spread] = np.maximum(peak[part][of_spread], worst)
    return made


def _in_sectors(contact: Contact, rows: Longs) -> tuple[Column, Column]:
    """[n, 24] (middle of what is in contact in each sector, degrees; the share of the sector that is)."""
    middle, met = np.broadcast_to(MIDDLE, (len(rows), len(MIDDLE))).copy(), np.zeros((len(rows), len(MIDDLE)))
    first, last = profile.runs(contact, rows)
    for run in range(first.shape[1]):
        low = np.maximum(MIDDLE - SECTOR / 2, np.nan_to_num(first[:, run, None], nan=np.inf))
        high = np.minimum(MIDDLE + SECTOR / 2, np.nan_to_num(last[:, run, None], nan=-np.inf))
        here = high > low
        middle[here] = ((low + high) / 2)[here]
        met += np.where(here, high - low, 0.0) / SECTOR
    return middle, np.minimum(met, 1.0)


def _by_value(values: Longs) -> Iterator[tuple[int, Longs]]:
    for value in distinct(values).tolist():
        yield int(value), np.flatnonzero(values == value)


def side_contact(ae: float, ap: float, radius: float) -> Contact:
    """The profile of one cut that is only described: `ae` mm of the rim's side, `ap` mm deep all over."""
    made = profile.empty(1)
    made.depth[:], made.edges[:], made.above[:], made.disc[:] = 0, profile.NONE, profile.NO_BAND, 0
    made.reach[0] = round(radius / MM)
    first = math.degrees(math.asin(min(max(1.0 - ae / radius, -1.0), 1.0)))
    made.edges[0, :2] = round(first * 100), 9000
    made.depth[0, first < MIDDLE + SECTOR / 2] = round(ap / MM)
    return made


def _sum_of(chips: Column) -> tuple[Column, Column]:
    """[n] (along, across the travel) of forces in all sectors together: each acts across the radius there."""
    angle = np.radians(MIDDLE)
    return chips @ np.sin(angle), chips @ np.cos(angle)


def _worst(chips: Column, teeth: int, spread: int, more: Column) -> Column:
    """[n] the largest sum of vectors over all positions of the teeth; [n, 24] in.

    Each edge is spread over so many sectors and a part `more` [n] of another. Where the teeth divide the turn evenly,
    the sums repeat from tooth to tooth, and one pitch is enough.
    """
    n, sectors = chips.shape
    angle, more = np.radians(MIDDLE), more.astype(np.float32)[:, None]
    pitch = ROUND // teeth if ROUND % teeth == 0 else ROUND
    best = np.zeros(n, np.float32)
    made = []
    for part in (np.sin(angle), np.cos(angle)):
        turned = np.zeros((n, pitch), np.float32)  # what all teeth meet, by the position of the first
        bitten = (chips * part).astype(np.float32)
        if pitch < ROUND:
            for first in range(0, sectors, pitch):
                turned[:, : min(pitch, sectors - first)] += bitten[:, first : first + pitch]
        else:
            whole = np.zeros((n, ROUND), np.float32)
            whole[:, :sectors] = bitten
            for tooth in range(teeth):
                turned += np.roll(whole, round(tooth * ROUND / teeth), axis=1)
        laps = -(-(pitch + spread + 1) // pitch)
        again = np.tile(turned, laps)[:, : pitch + spread]  # and what an edge reaches beyond
        sums = np.cumsum(again, axis=1)
        held = sums[:, spread - 1 : spread - 1 + pitch].copy()
        held[:, 1:] -= sums[:, : pitch - 1]
        made.append((held, np.roll(turned, 1, axis=1), again[:, spread : spread + pitch]))
    for beside in (1, 2):  # the part of a sector lies at either end of the edge
        edges = [(held[0] + held[beside] * more) / (spread + more) for held in made]
        best = np.maximum(best, np.sqrt((edges[0] ** 2 + edges[1] ** 2).max(axis=1)))
    return best
