"""What each tool does to the stock: pieces of path in contact, entries and passes, as columns.

Lengths mm, angles degrees, volumes mm3. A piece is a part of one move at most about a quarter of the tool's diameter
long; pieces without contact are not stored. Short moves that run on straight (and smoothly up or down) are swept
together, up to 0.3 of the diameter or 2 mm: each keeps its own row, length, drop and depth, shares the volume by its
length, and has the profile, ap, ae, angle and climb of all. Where contact ends, the rows may run on by as much. The
turns of a helix that all cut the same are one piece, with the sums of them all and the profile of one.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from gclint.columns import Bytes, Floats32, Ints, Longs
from gclint.tables.assumption import Assumption
from gclint.tables.contact import Contact
from gclint.tables.field import Field, gone
from gclint.tables.setup import Assumed, Stock

# touch bits
TIP, SIDE, SHANK = 1, 2, 4

# kinds of entry
ENTRY_KINDS: tuple[str, ...] = ("straight", "ramp", "helix", "side", "open")
ENTRY = {name: number for number, name in enumerate(ENTRY_KINDS)}


@dataclass(frozen=True, slots=True, eq=False)
class Pieces:
    """Rows in the order of execution; rapids in contact are rows too (Motion.kind tells)."""

    move: Ints  # row of Motion
    start: Floats32  # share of the move's length at which the piece starts, 0..1
    end: Floats32
    length: Floats32  # along the path
    travel: Floats32  # in X and Y
    drop: Floats32  # downward, positive; negative where the tool rises
    removed: Floats32  # volume
    # Depth and width of one statement: of all that is so deep all over its width, the largest section. A wall skim over
    # a thin floor is deep and narrow or shallow and wide, whichever takes off more, never deep and wide.
    ap: Floats32  # axial depth of cut; of tools that are not flat the top of the material above the lowest contact
    # radial width of that contact, 0..D; of tools that are not flat the stepover from an equal cut beside which they
    # take this section, at most the diameter that is in the cut (a slot)
    ae: Floats32
    angle: Floats32  # engagement angle of that contact, 0..180; of other tools arccos(1 - ae / radius there)
    climb: Floats32  # share of the cut that is climb milling with a clockwise spindle, 0..1
    under: Floats32  # share of the tool's footprint that met material as it went down; 0 when it does not
    centre: Bytes  # 1 where material lies under the middle 0.3 D (radius) of the tip as it goes down
    touch: Bytes  # TIP, SIDE, SHANK bits
    shank: Floats32  # height of wall met by the shank above the flutes; 0 if none
    depth: Floats32  # of the tip's lowest point below the stock's top
    open_start: Bytes  # 1 where the tip, at the start of the piece, stood in space already cut or outside the stock
    profile: Ints  # row of Engagement.contact; neighbours that are alike share one

    def __len__(self) -> int:
        return len(self.move)


@dataclass(frozen=True, slots=True, eq=False)
class Entries:
    """Each place where the tip starts down into solid, or starts to cut after open space."""

    kind: Bytes  # index into ENTRY_KINDS
    first_move: Ints  # rows of Motion: the first in solid, and the last
    last_move: Ints
    pass_: Ints  # row of Passes it opens or lies in; -1 if none
    # depth of solid gone through under at least half of the disc; where less than a quarter of the way has so much
    # under it, under at least a tenth: less than that is a graze and does not count
    solid: Floats32
    descent: Floats32  # whole descent of those moves, air included
    travel: Floats32  # X-Y travel while in solid
    slope: Floats32  # degrees below level of the steepest stretch of about half a diameter: 90 = straight down
    steep_move: Ints  # row of Motion at which that stretch begins
    steep_drop: Floats32  # its drop
    steep_travel: Floats32  # and its X-Y travel
    under: Floats32  # share of the disc on solid over the depth `solid`: at least half, or less than half
    centre: Bytes  # 1 where the middle of the tip met uncut material
    feed: Floats32  # highest set feed in solid, mm/min (NaN if none)
    z_feed: Floats32  # highest downward share of it, bits of next to no depth apart, mm/min
    depth: Floats32  # tip's depth below the stock's top at the end of the entry
    radius: Floats32  # of the helix; NaN if not a helix
    from_outside: Bytes  # 1 where the descent was made outside the stock's outline

    def __len__(self) -> int:
        return len(self.kind)


@dataclass(frozen=True, slots=True, eq=False)
class Passes:
    """Unbroken runs of pieces of one tool in material."""

    first_piece: Ints
    last_piece: Ints
    tool: Ints
    length: Floats32
    ap: Floats32  # largest
    ae: Floats32  # largest
    lowest: Floats32  # Z of the lowest tip
    removed: Floats32

    def __len__(self) -> int:
        return len(self.first_piece)


def seen_from_above(cut: Floats32, under: Floats32 | None, box: Stock | None) -> Floats32:
    """[ny, nx] depth of the surface below the top, mm; the whole thickness where the two sides meet."""
    if under is None or box is None or box.top is None or box.bottom is None or under.shape != cut.shape:
        return cut
    thick = np.float32(box.top - box.bottom)
    return np.where(gone(cut, under, float(thick)), np.maximum(cut, thick), cut)


@dataclass(frozen=True, slots=True, eq=False)
class Engagement:
    box: Stock | None  # the blank that was modelled (declared or assumed); None where nothing could be modelled
    cell: float  # mm; 0 where nothing was modelled
    cell_wanted: float  # mm; smaller than `cell` where the memory cap made the cell grow
    pieces: Pieces
    contact: Contact  # the profiles of the pieces
    entries: Entries
    passes: Passes
    cut: Floats32  # [ny, nx] depth of the finished surface below the stock's top, 0 = untouched
    assumed: tuple[Assumed, ...]
    not_judged: tuple[tuple[str, str, int], ...]  # (what, or the one rule; which declaration would judge it; moves)
    start: Field | None = None  # what earlier programs left of the blank; None where none has cut it
    field: Field | None = None  # what this one leaves; None where nothing was modelled
    doubts: tuple[Assumption, ...] = ()  # what was assumed of the blank that may as well be otherwise
    # What these moves cut nobody has looked at: those from this one on, as a bound of work was reached (None: all were
    # swept), and arcs of too many turns.
    swept_moves: int | None = None
    turns: Longs | None = None

    @property
    def surface(self) -> Floats32:
        """`cut`, and the whole thickness where nothing is left because the blank was cut from below as well."""
        return seen_from_above(self.cut, self.under, self.box)

    @property
    def surface_at_start(self) -> Floats32 | None:
        """The same as this program finds it; None where nothing was cut before."""
        return None if self.start is None else seen_from_above(self.start.top.cut, self.under, self.box)

    @property
    def under(self) -> Floats32 | None:
        """[ny, nx] depth cut from the underside, mm; None where nothing was."""
        return self.start.under.cut if self.start is not None and self.start.under is not None else None
