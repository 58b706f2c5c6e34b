"""The sweep: lowers the height field under a moving tool and notes what each piece of path meets.

The field is seen from above. `cut` holds for every cell the depth of the surface below the stock's top, taken at the
cell's centre. A vertical wall seldom runs along cell borders, so a cell through which a wall runs also keeps `share`
(0..0.5, the smaller of its two parts, 0 = no wall) and `other` (the depth of that part). Walls are therefore known to a
small fraction of a cell, and a skim thinner than a cell is seen.

Everything is in depths: t = top - z, positive downward. A tool is its profile z(r): a flat disc of radius `flat`, a
corner torus of radius `torus`, a cone of slope `cone` from `join_r`, `join_z` on, and a cylinder of the tool's radius.

What a piece takes off is noted part by part (`_count`); where on the rim that was, and how deep, is laid out by rim.py.
"""

import cython

if not cython.compiled:
    raise ImportError("gclint.stock.sweep runs only as a compiled kernel")

from cython.cimports.gclint.stock.rim import Rim
from cython.cimports.libc.math import (
    NAN,
    acos,
    asin,
    atan2,
    ceil,
    cos,
    fabs,
    fabsf,
    floor,
    hypot,
    isfinite,
    sin,
    sqrt,
    sqrtf,
)

FLAT = cython.declare(cython.int, 0)
BALL = cython.declare(cython.int, 1)
CONE = cython.declare(cython.int, 2)
OTHER = cython.declare(cython.int, 3)

CONTACT = cython.declare(cython.double, 0.01)  # mm lowered, or mm a wall moves, that count as contact
SLIVER = cython.declare(cython.double, 0.1)  # share of a cell; less of it newly cut is a sliver
CONTACT_LEAST = cython.declare(cython.double, 1e-4)  # mm; the same for the finest steps: above the noise of float32
SINK_LEAST = cython.declare(cython.double, 2e-5)  # mm; the same where the tool sinks, which no wall disturbs
UNDER_LEAST = cython.declare(cython.double, 0.1)  # of the drop; less taken off is nothing that the tip met
MOST_MERGED = cython.declare(cython.int, 32)  # moves swept as one
# Of the radius, the longest way of fine moves swept as one; twice that, but no more mm, of tools with a formula.
TOGETHER = cython.declare(cython.double, 0.6)
TOGETHER_SMALL = cython.declare(cython.double, 2.0)
ALONG = cython.declare(cython.double, 0.05)  # of the radius; how far from one line the arcs of one piece may lie
SAGITTA = cython.declare(cython.double, 0.003)  # mm by which fine moves may leave the segment they are swept as
CHORD = cython.declare(cython.double, 0.005)  # mm between an arc and its chords: half of the contact depth
MOST_PIECES = cython.declare(cython.int, 32768)  # of one move
MOST_CHORDS = cython.declare(cython.int, 200000)  # of one arc
# The work of a segment, of a piece (its load and its rules included) and of a cell that is met, in cells that are only
# looked at (some 4 ns)
WORK_SEGMENT = cython.declare(cython.double, 60)
WORK_PIECE = cython.declare(cython.double, 1000)
WORK_MET = cython.declare(cython.double, 8)
MOST_MET = cython.declare(cython.int, 8192)  # parts of cells noted for one piece; of more, a share
LANES = cython.declare(cython.int, 32)
BLOCK = cython.declare(cython.int, 64)  # cells that a ball lowers together
LEVELS = cython.declare(cython.int, 16)  # of what came off under the tip, by their share of the drop
FAR = cython.declare(cython.double, 1e7)  # mm; beyond it a position is not believed
MOST_CARRIED = cython.declare(cython.int, 2048)  # of them, noted for the piece that follows
LEAST_PITCH = cython.declare(cython.double, 0.05)  # mm; the turns of a finer helix are swept as fewer
MANY_TURNS = cython.declare(cython.int, 5)  # of one arc; alike ones are swept once
ALIKE = cython.declare(cython.double, 2e-3)  # of the volume of two turns
PI = cython.declare(cython.double, 3.141592653589793)
# of a profile without a closed formula, the radius that cuts is kept for so many slopes, so far apart
SLOPES = cython.declare(cython.int, 200)
SLOPE_STEP = cython.declare(cython.double, 0.02)

# columns of the table of tools and of the table of pieces, in this order
TOOL_COLUMNS = ("radius", "flat", "torus", "join_r", "join_z", "cone", "rim", "shape", "flute_length", "shank_radius")
PIECE_COLUMNS = (
    *("start", "end", "length", "travel", "drop", "removed", "ap"),
    *("ae", "angle", "climb", "under", "shank", "depth", "solid"),
)


@cython.cclass
class Sweeper:
    """The field, the tool that is in the spindle, and the sums of the piece under way.

    cut, share, other: float32 [ny, nx], mm, share of the cell, mm. The cell (0, 0) has its corner at x_low, y_low.
    floor: the same, depth at which the material ends because the blank was cut from below (inf where it was not); of
    another shape where it was cut nowhere. No cell is lowered beyond it: what lies deeper is air.
    """

    cut: cython.float[:, ::1]
    share: cython.float[:, ::1]
    other: cython.float[:, ::1]
    floor: cython.float[:, ::1]
    floored: cython.bint  # somewhere the material ends above the blank's underside
    row_depth: cython.float[::1]
    nx: cython.Py_ssize_t
    ny: cython.Py_ssize_t
    x_low: cython.double
    y_low: cython.double
    cell: cython.double
    per_cell: cython.double
    top: cython.double
    walls: cython.bint  # some cell has a wall
    work: cython.double  # cells looked at so far
    most_work: cython.double
    resolution: cython.double
    # the tool
    radius: cython.double
    flat: cython.double
    torus: cython.double
    join_r: cython.double
    join_z: cython.double
    cone: cython.double
    rim: cython.double
    shape: cython.int
    flute_length: cython.double
    shank_radius: cython.double
    # [slope, 65 places across the path]: radius of the tool that cuts deepest there; see _leaned
    cutting_radius: cython.float[13065]
    cutting_height: cython.float[13065]  # of the tool's surface there, above its tip
    widest: cython.float[201]  # farthest that the place which cuts lies from the axis, along the path
    slope_known: cython.uchar[201]
    at_slope: cython.int
    # the moves: columns of `moves` rows
    moves: cython.Py_ssize_t
    kind: cython.p_const_uchar
    plane: cython.p_const_uchar
    x0: cython.p_const_double
    y0: cython.p_const_double
    z0: cython.p_const_double
    x1: cython.p_const_double
    y1: cython.p_const_double
    z1: cython.p_const_double
    cu: cython.p_const_double
    cv: cython.p_const_double
    swept_angle: cython.p_const_double
    tool: cython.p_const_int
    # the tables that are written
    out: cython.float[:, ::1]
    out_move: cython.int[::1]
    out_profile: cython.int[::1]
    out_bits: cython.uchar[:, ::1]
    skipped: cython.uchar[::1]
    before: cython.float[::1]
    profiles: Rim
    # the segment under way: from a on the line through (ox, oy) along (ux, uy), a in [sa, sb]
    ox: cython.double
    oy: cython.double
    ux: cython.double
    uy: cython.double
    sa: cython.double
    sb: cython.double
    round: cython.bint  # a chord of an arc: its sums are of many chords
    a_min: cython.double  # cells behind it are already lowered by the segment before
    lo: cython.double
    hi: cython.double
    at_rim: cython.float  # no cell through which the rim runs is lowered deeper than this
    per_ux: cython.double  # 1 / ux, 1 / uy; 0 where the direction has none of it
    per_uy: cython.double
    # the path may be bent downward: its depth is t_mid + slope u + bend u^2 at u from the middle, a = mid
    mid: cython.double
    t_mid: cython.double
    slope: cython.double
    bend: cython.double
    t0: cython.double  # depth at a = 0 were the path straight
    lean: cython.double  # sine of the angle below level, in the middle
    turn: cython.double  # growth of `lean` along the path
    going_down: cython.bint
    end_a: cython.double
    per_drop: cython.double
    t_start: cython.double  # depth at a = 0
    under_least: cython.double  # mm taken off that count as met by the tip
    # the end of the piece before, so that a chained piece need not sweep its start again
    last_x: cython.double
    last_y: cython.double
    last_t: cython.double
    scanned: cython.Py_ssize_t  # moves whose `before` is known
    merged: cython.int  # at most so many moves are swept as one
    touched: cython.Py_ssize_t  # the move that last had a piece
    current: cython.int  # row of the tool that is in the spindle
    made: cython.Py_ssize_t  # pieces written by this run
    # the arc under way
    arc_pieces: cython.Py_ssize_t
    per_piece: cython.Py_ssize_t  # chords
    arc_swept: cython.double  # mm of them, and the greatest depth of their ends
    arc_level: cython.double
    per_turn: cython.Py_ssize_t  # pieces of one turn where there are many
    arc_r0: cython.double
    arc_r1: cython.double
    arc_angle: cython.double
    arc_turn: cython.double
    arc_w0: cython.double
    arc_w1: cython.double
    arc_flat: cython.double  # of the whole of it, seen from above
    arc_length: cython.double
    own_ring: cython.bint  # when its last turn began, nothing under it was cut deeper than it was itself
    arc_x: cython.double  # where it has got to
    arc_y: cython.double
    arc_t: cython.double
    # moves swept as one
    group_bend: cython.double
    group_flat: cython.double[32]
    group_length: cython.double[32]
    group_drop: cython.double[32]
    group_open: cython.uchar[32]
    # sums of the piece
    least: cython.double  # lowering that counts
    wall_least: cython.double  # share of a cell by which a wall must move to count
    cells: cython.double  # cells in contact
    removed: cython.double
    right: cython.double  # volume right of the path
    most: cython.double  # height above the tip of the highest material met, and of the lowest; no slivers
    most_of_slivers: cython.double
    foot: cython.double
    under: cython.double
    centre: cython.double
    # of it, area and sum of the heights taken off, by the height's share of the drop
    under_area: cython.float[16]
    under_high: cython.float[16]
    lane_volume: cython.float[32]  # see _take_block
    lane_cells: cython.float[32]
    sample: cython.int  # of fine moves, every so many rows of cells are looked at for what lies under the tip
    front: cython.Py_ssize_t  # where in row_depth the depth that the rim meets lies behind the depth that is reached
    discs: cython.double  # segments swept; each has its disc
    foot_2: cython.double  # square of the radius of the tool's footprint in the material
    # parts of cells that were met: place across the path, height, area
    met: cython.int
    met_step: cython.int  # one of so many is noted
    met_wait: cython.int
    met_v: cython.float[8192]
    met_h: cython.float[8192]
    met_area: cython.float[8192]
    # A cell is an eighth of a piece long, so which piece it falls to would be seen in the width. It lies from where the
    # rim meets it one cell onward, and what of it lies beyond the piece's end is carried to the next piece.
    ahead: cython.double  # mm to the piece's end from the segment's start
    to_go: cython.double
    carried_ux: cython.double
    carried_uy: cython.double
    carry: cython.int
    carried: cython.int
    carry_v: cython.float[2048]
    carry_h: cython.float[2048]
    carry_area: cython.float[2048]
    carried_v: cython.float[2048]
    carried_h: cython.float[2048]
    carried_area: cython.float[2048]
    straight_down: cython.bint
    goes_on: cython.bint  # another segment of the same move follows, in nearly the same direction

    def __init__(
        self,
        cut,
        share,
        other,
        x_low: float,
        y_low: float,
        cell: float,
        top: float,
        row_depth,
        merged: int,
        floor,
    ):
        self.cut, self.share, self.other = cut, share, other
        self.ny, self.nx = cut.shape[0], cut.shape[1]
        if share.shape != cut.shape or other.shape != cut.shape:
            raise ValueError("the three fields must have one shape")
        if row_depth.shape[0] < 2 * self.nx:
            raise ValueError("the row buffer is shorter than two rows")
        self.row_depth = row_depth
        self.floor, self.floored = floor, floor.shape == cut.shape
        self.merged = max(1, min(MOST_MERGED, merged))
        self.x_low, self.y_low, self.cell, self.top = x_low, y_low, cell, top
        self.per_cell = 1 / cell
        self.walls, self.round = bool(share.any()), False
        self.work, self.scanned, self.touched = 0.0, 0, -2
        self.carry, self.carried, self.current = 0, 0, -1
        self.goes_on = False
        self.last_x = self.last_y = self.last_t = NAN

    @property
    def cells_visited(self) -> float:
        return self.work

    @cython.cfunc
    @cython.nogil
    @cython.inline
    @cython.exceptval(check=False)
    def _profile(self, r: cython.double) -> cython.double:
        """Height of the tool's surface above its tip at radius r."""
        e: cython.double
        if r <= self.flat:
            return 0.0
        if r <= self.join_r:
            e = self.torus * self.torus - (r - self.flat) * (r - self.flat)
            return self.torus - (sqrt(e) if e > 0 else 0.0)
        return self.join_z + self.cone * (r - self.join_r)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _radius_at(self, height: cython.double) -> cython.double:
        """Radius of the tool at a height above its tip, at most the tool's."""
        r: cython.double
        if self.shape == FLAT or height >= self.rim:
            return self.radius
        if height <= 0:
            return self.flat
        if height <= self.join_z:
            r = self.flat + sqrt(max(0.0, 2 * self.torus * height - height * height))
        elif self.cone > 0:
            r = self.join_r + (height - self.join_z) / self.cone
        else:
            r = self.radius
        return min(r, self.radius)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _span(
        self, dy: cython.double, reach: cython.double, x_first: cython.p_Py_ssize_t, x_end: cython.p_Py_ssize_t
    ) -> cython.bint:
        """Cells of the row at dy (from the origin) within `reach` of the segment, half-open; False if none."""
        lo: cython.double = 1e300
        hi: cython.double = -1e300
        e: cython.double
        h: cython.double
        p: cython.double
        q: cython.double
        s_lo: cython.double
        s_hi: cython.double
        k: cython.int
        inside: cython.bint
        for k in range(2):
            p = self.sa if k == 0 else self.sb
            e = dy - p * self.uy
            if fabs(e) <= reach:
                h = sqrt(reach * reach - e * e)
                lo = min(lo, p * self.ux - h)
                hi = max(hi, p * self.ux + h)
        if self.sb > self.sa:
            s_lo, s_hi, inside = -1e300, 1e300, True
            if self.per_uy != 0:
                p = (self.ux * dy - reach) * self.per_uy
                q = (self.ux * dy + reach) * self.per_uy
                s_lo, s_hi = min(p, q), max(p, q)
            elif fabs(self.ux * dy) > reach:
                inside = False
            if self.per_ux != 0:
                p = (self.sa - self.uy * dy) * self.per_ux
                q = (self.sb - self.uy * dy) * self.per_ux
                s_lo, s_hi = max(s_lo, min(p, q)), min(s_hi, max(p, q))
            elif self.uy * dy < self.sa or self.uy * dy > self.sb:
                inside = False
            if inside and s_lo <= s_hi:
                lo, hi = min(lo, s_lo), max(hi, s_hi)
        if self.a_min > -1e299:
            e = self.a_min - self.uy * dy
            if self.ux > 1e-9:
                lo = max(lo, e * self.per_ux)
            elif self.ux < -1e-9:
                hi = min(hi, e * self.per_ux)
            elif e > 0:
                return False
        if not lo <= hi:
            return False
        lo = (self.ox + lo - self.x_low) * self.per_cell - 0.5
        hi = (self.ox + hi - self.x_low) * self.per_cell - 0.5
        if hi < 0 or lo > self.nx - 1:
            return False
        x_first[0] = cython.cast(cython.Py_ssize_t, ceil(max(lo, 0.0)))
        x_end[0] = cython.cast(cython.Py_ssize_t, floor(min(hi, cython.cast(cython.double, self.nx - 1)))) + 1
        return x_first[0] < x_end[0]

    @cython.cfunc
    @cython.nogil
    @cython.inline
    @cython.exceptval(check=False)
    def _tip(self, a: cython.double) -> cython.double:
        """Depth of the tip at a place of the segment, the nearest end beyond it."""
        u: cython.double = min(max(a, self.sa), self.sb) - self.mid
        return self.t_mid + (self.slope + self.bend * u) * u

    @cython.cfunc
    @cython.nogil
    @cython.inline
    @cython.exceptval(check=False)
    def _note(self, v: cython.float, h: cython.float, area: cython.float) -> cython.void:
        """Notes a part of a cell that was met: v left of the path, h high. Of very many, one of so many for all."""
        k: cython.int
        if self.met_step > 1:
            self.met_wait -= 1
            if self.met_wait > 0:
                return
            self.met_wait = self.met_step
            area *= self.met_step
        if self.met == MOST_MET:
            for k in range(MOST_MET // 2):
                self.met_v[k], self.met_h[k] = self.met_v[2 * k], self.met_h[2 * k]
                self.met_area[k] = 2 * self.met_area[2 * k]
            self.met = MOST_MET // 2
            self.met_step *= 2
            self.met_wait = self.met_step
            area *= 2
        self.met_v[self.met], self.met_h[self.met], self.met_area[self.met] = v, h, area
        self.met += 1

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _count(
        self,
        a: cython.double,
        v: cython.double,
        old: cython.double,
        depth: cython.double,
        area: cython.double,
    ) -> cython.void:
        """Adds a part of a cell lowered from `old` to `depth`: a along, v left of the path; area: share of the cell.

        What is too little for contact is volume, and may widen a contact, but makes none.
        """
        high: cython.double = depth - old
        front: cython.double = depth
        self.removed += high * area
        if high <= self.least:
            return
        if area > self.wall_least:
            self.cells += 1
        if self.shape == FLAT:
            if self.straight_down:
                self._under(a, v, high, area)
                return
            if self.going_down:  # what the rim does not meet ahead of it, the tip takes off
                front = self.radius * self.radius - v * v
                front = min(depth, self._tip(a - sqrt(front if front > 0 else 0.0)))
                self._under(a, v, depth - max(old, front), area)
            if front - old > self.least:
                self._meet(a, v, front - old, area)
            return
        self.right += min(1.0, max(0.0, 0.5 - v * self.per_cell)) * high * area
        front = max(depth, self._tip(a))
        if not self._in_groove(a, v, old):
            self._note(v, front - old, area)
        if area < SLIVER:
            self.most_of_slivers = max(self.most_of_slivers, front - old)
        else:
            self.most = max(self.most, front - old)
        if fabs(v) < 0.71 * self.cell and -self.cell < a < self.end_a + self.cell:
            self.foot = 0  # the tip itself passes within this cell
        else:
            self.foot = min(self.foot, front - depth)
        if self.going_down:
            self._under(a, v, high, area)

    @cython.cfunc
    @cython.nogil
    @cython.inline
    @cython.exceptval(check=False)
    def _in_groove(self, a: cython.double, v: cython.double, old: cython.double) -> cython.bint:
        """Whether a cell lies as the tool itself left it, at the segment's start: what it takes off there as it goes
        down comes off under its tip, and its rim meets none of it."""
        d_2: cython.double = a * a + v * v
        if not self.going_down or d_2 >= self.radius * self.radius:
            return False
        return fabs(old - self.t_start + self._profile(sqrt(d_2))) < 1e-3

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _meet(
        self, a: cython.double, v: cython.double, high: cython.double, area: cython.double
    ) -> cython.void:
        """Notes what the rim of a flat tool meets; the next piece gets what lies beyond this one's end."""
        beyond: cython.double = self.radius * self.radius - v * v
        beyond = (a - sqrt(beyond if beyond > 0 else 0.0) - self.ahead) * self.per_cell + 1
        if beyond > 0:
            beyond = min(beyond, 1.0) * area
            area -= beyond
            if self.carry < MOST_CARRIED:
                self.carry_v[self.carry], self.carry_h[self.carry], self.carry_area[self.carry] = v, high, beyond
                self.carry += 1
        self._note(v, high, area)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _under(
        self, a: cython.double, v: cython.double, high: cython.double, area: cython.double
    ) -> cython.void:
        """Adds what the tip took off, `high` mm of it, where it lies under the disc at the end of the segment."""
        d_2: cython.double = (a - self.end_a) * (a - self.end_a) + v * v
        k: cython.int
        if d_2 >= self.foot_2 or high < self.under_least:
            return
        self.under += area
        if d_2 < 0.36 * self.radius * self.radius:  # 0.3 D
            self.centre += area
        high = min(1.0, high * self.per_drop)
        k = min(LEVELS - 1, cython.cast(cython.int, high * LEVELS))
        self.under_area[k] += area
        self.under_high[k] += area * high

    # Cells of a row are reached through pointers: j and the range come from _rows and _span, which clamp both.
    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _take(
        self,
        j: cython.Py_ssize_t,
        first: cython.Py_ssize_t,
        end: cython.Py_ssize_t,
        at: cython.Py_ssize_t,
        a: cython.double,
        v: cython.double,
    ) -> cython.void:
        """Lowers whole cells of one row to row_depth, from its place `at` on; a, v: place of cell `first` relative to
        the segment."""
        n: cython.int = cython.cast(cython.int, end - first)
        i: cython.int
        b: cython.int = 0
        m: cython.int
        walled: cython.int
        cut: cython.p_float = cython.address(self.cut[j, 0]) + first
        share: cython.p_int = cython.cast(cython.p_int, cython.address(self.share[j, 0])) + first
        depth: cython.p_float = cython.address(self.row_depth[0]) + at
        old: cython.float
        da: cython.double = self.ux * self.cell
        dv: cython.double = -self.uy * self.cell
        if n <= 0:
            return
        while self.walls and b < n:
            m = min(n, b + 16)
            walled = 0
            for i in range(b, m):
                walled |= share[i]
            if walled != 0:
                for i in range(b, m):
                    if share[i] != 0:
                        self._take_walled(j, first + i, depth[i], a + i * da, v + i * dv)
                        depth[i] = 0  # done
            b = m
        b = 0
        if self.shape == FLAT:
            while b < n:
                m = min(LANES, n - b)
                self._take_block(cut + b, depth + b, m, a + b * da, v + b * dv, j % self.sample == 0)
                b += m
            return
        for i in range(n):
            old = cut[i]
            if depth[i] > old:
                cut[i] = depth[i]
                self._count(a + i * da, v + i * dv, old, depth[i], 1)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _take_block(
        self,
        cut: cython.p_float,
        depth: cython.p_float,
        m: cython.int,
        a: cython.double,
        v: cython.double,
        sampled: cython.bint,
    ) -> cython.void:
        """Lowers at most LANES cells without walls under a flat tool; sampled: those under its tip are looked at.

        The processor does four cells at a time where a loop has neither branches nor a sum across cells: so each sum is
        kept by the cell's place in its block until the piece is done.
        """
        low = cython.declare(cython.float[32])
        side = cython.declare(cython.float[32])
        front: cython.p_float = depth + self.front  # what the rim meets; below it the tip follows
        i: cython.int
        bits: cython.int = 0
        least: cython.float = self.least
        one: cython.float = 1
        old: cython.float
        x: cython.float
        y: cython.float
        cap: cython.float = -1 if self.straight_down else 1e30  # the rim meets nothing on the way straight down
        da: cython.double = self.ux * self.cell
        dv: cython.double = -self.uy * self.cell
        for i in range(m):
            bits |= depth[i] > cut[i]
        if bits == 0:
            return
        bits = 0
        for i in range(m):
            old = cut[i]
            x = depth[i]
            y = front[i]
            y = y if y < x else x
            y = y if y < cap else cap
            y = y - old
            cut[i] = x if x > old else old
            x = x - old
            x = x if x > 0 else 0
            low[i], side[i] = x, y
            bits |= y > least
        for i in range(m):
            self.lane_volume[i] += low[i]
        for i in range(m):
            self.lane_cells[i] += one if low[i] > least else 0
        if bits != 0:
            for i in range(m):
                if side[i] > least:
                    self._meet(a + i * da, v + i * dv, side[i], 1)
        if self.going_down and sampled:
            for i in range(m):
                if low[i] > least:
                    y = side[i]
                    self._under(a + i * da, v + i * dv, low[i] - (y if y > 0 else 0), self.sample)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _take_walled(
        self, j: cython.Py_ssize_t, i: cython.Py_ssize_t, d: cython.float, a: cython.double, v: cython.double
    ) -> cython.void:
        """Lowers one whole cell through which a wall runs."""
        old: cython.float = self.cut[j, i]
        m: cython.float = self.share[j, i]
        other: cython.float = self.other[j, i]
        if d > old:
            self.cut[j, i] = d
            if other <= d:
                self.share[j, i] = 0
                if other < d:
                    self._count(a, v, other, d, m)
            self._count(a, v, old, d, 1 - m)
        elif other < d:
            self.other[j, i] = d
            if d >= old - 1e-5:
                self.share[j, i] = 0
            self._count(a, v, other, d, m)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _strip(
        self,
        a: cython.double,
        v: cython.double,
        first: cython.float,
        last: cython.float,
        old: cython.float,
        depth: cython.float,
    ) -> cython.void:
        """Adds the part of a rim's cell between two shares of it, told outward from the axis."""
        b: cython.double = a - min(max(a, self.sa), self.sb)
        r: cython.double = sqrt(b * b + v * v)
        if last > first and depth > old:
            v += v / max(r, 1e-9) * (0.5 * (first + last) - 0.5) * self.cell
            self._count(a, v, old, depth, last - first)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _wall(
        self,
        j: cython.Py_ssize_t,
        i: cython.Py_ssize_t,
        cover: cython.float,
        d: cython.float,
        a: cython.double,
        v: cython.double,
    ) -> cython.void:
        """Lowers the share `cover` of one cell to depth d, nearest part first; a second time it does nothing."""
        main: cython.float = self.cut[j, i]
        m: cython.float = self.share[j, i]
        o: cython.float = self.other[j, i]
        bare: cython.float = 1 - cover
        lost: cython.float
        if cover >= 0.5:
            if m == 0:
                if d > main:
                    self.cut[j, i] = d
                    self.share[j, i], self.other[j, i] = bare, main
                    self.walls = True
                    self._strip(a, v, 0, cover, main, d)
            elif o < main:  # a part still stands above the floor
                lost = max(0, m - bare)
                if lost > 0 and d > o:
                    if d >= main - 1e-5:
                        self.share[j, i] = min(m, bare)
                    else:
                        self.other[j, i] = d
                    self._strip(a, v, cover - lost, cover, o, d)
                if d > main:
                    self.cut[j, i] = d
                    if self.share[j, i] > bare:
                        self.share[j, i] = bare
                    self._strip(a, v, 0, 1 - m, main, d)
            elif d > main:  # the wall had come near from this side
                # rising past a wall leaves the near part a little deeper: one depth for both, lest it be cut again
                self.cut[j, i] = o if d < o and o - d < 0.03 else d
                self.share[j, i], self.other[j, i] = bare, main
                self._strip(a, v, 0, m, o, d)
                self._strip(a, v, m, cover, main, d)
        elif d > main:
            if m > 0 and o < main and self.goes_on and a > self.sb:
                return  # the next segment covers more of it, and a cell has room for one wall
            if m == 0 or o < main:
                self.share[j, i], self.other[j, i] = cover, d
                self.walls = True
                self._strip(a, v, 0, cover, main, d)
            else:
                if cover > m:
                    self.share[j, i] = cover
                    self._strip(a, v, m, cover, main, d)
                if d > o:  # the near part goes down as a whole
                    self.other[j, i] = d
                    self._strip(a, v, 0, m, o, d)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _cover(self, along: cython.double, across: cython.double) -> cython.double:
        """Share of a cell that lies within the tool's radius, the rim taken as straight there.

        along, across: the cell's place from the axis, in the segment's direction and left of it.
        """
        r: cython.double = sqrt(along * along + across * across)
        s: cython.double = (r - self.radius) * self.per_cell
        x: cython.double = fabs(along * self.ux - across * self.uy)
        y: cython.double = fabs(along * self.uy + across * self.ux)
        wide: cython.double
        thin: cython.double
        e: cython.double
        r = 1 / max(r, 1e-12)
        wide, thin = max(x, y) * r, min(x, y) * r
        if 2 * fabs(s) <= wide - thin:
            return 0.5 - s / wide
        e = 0.5 * (wide + thin) - fabs(s)
        if e <= 0:
            return 0.0 if s > 0 else 1.0
        e = e * e / (2 * wide * thin)
        return e if s > 0 else 1 - e

    @cython.cfunc
    @cython.nogil
    @cython.inline
    @cython.exceptval(check=False)
    def _depth_at(self, a: cython.double, v: cython.double) -> cython.double:
        """Depth reached at one place by the rim of a tool that is not flat."""
        h: cython.double = 0.0
        if self.slope != 0:
            h = sqrt(max(0.0, self.radius * self.radius - v * v))
            h = h if self.slope > 0 else -h
        return self._tip(a + h) - self.rim

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _steepness(self, r: cython.double) -> cython.double:
        """Slope of the profile at radius r."""
        e: cython.double
        if r <= self.flat:
            return 0.0
        if r < self.join_r:
            e = self.torus * self.torus - (r - self.flat) * (r - self.flat)
            return (r - self.flat) / sqrt(e) if e > 0 else 1e300
        return self.cone if self.cone > 0 else 1e300

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _leaned(self, slope: cython.double) -> cython.void:
        """Finds, for a straight path that goes down at `slope` (positive), the tool's radius that cuts deepest at each
        place across the path: there the profile is as steep along the path as the path is.

        Off by half a step of the slope, the depth is off by half its square times the corner's radius: 0.00005 mm per
        mm.
        """
        k: cython.int = cython.cast(cython.int, min(1.0 * SLOPES, slope / SLOPE_STEP + 0.5))
        i: cython.int
        _n: cython.int
        v: cython.double
        lo: cython.double
        hi: cython.double
        r: cython.double
        self.at_slope = k
        if self.slope_known[k] and k < SLOPES:
            return
        if k < SLOPES:
            slope = max(k * SLOPE_STEP, 1e-4)  # on the level too a flat end's low edge decides
        self.widest[k] = 0
        self.slope_known[k] = True
        for i in range(65):
            v = self.radius * i / 64
            lo, hi = v, self.radius
            for _n in range(24):
                r = 0.5 * (lo + hi)
                if self._steepness(r) * sqrt(r * r - v * v) >= slope * r:
                    hi = r
                else:
                    lo = r
            self.cutting_radius[65 * k + i], self.cutting_height[65 * k + i] = hi, self._profile(hi)
            self.widest[k] = max(self.widest[k], sqrt(max(0.0, hi * hi - v * v)))

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _fill(self, n: cython.Py_ssize_t, a0: cython.double, v0: cython.double) -> cython.void:
        """row_depth: depth the segment reaches at n cells from (a0, v0) on."""
        if self.shape == FLAT:
            self._fill_flat(n, a0, v0)
        elif self.shape == BALL:
            self._fill_ball(n, a0, v0)
        elif self.shape == CONE:
            self._fill_cone(n, a0, v0)
        else:
            self._fill_other(n, a0, v0)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _fill_flat(self, n: cython.Py_ssize_t, a0: cython.double, v0: cython.double) -> cython.void:
        """A flat tool's low edge decides: behind it as it goes down, ahead of it as it rises. As it goes down, what its
        rim meets ahead is filled in too, `front` places further on."""
        depth: cython.p_float = cython.address(self.row_depth[0])
        front: cython.p_float
        i: cython.int  # 32 bits, which the processor turns into floats four at a time
        m: cython.int = cython.cast(cython.int, n)
        a: cython.float = a0 - self.mid
        v: cython.float = v0
        da: cython.float = self.ux * self.cell
        dv: cython.float = -self.uy * self.cell
        sa: cython.float = self.sa - self.mid
        sb: cython.float = self.sb - self.mid
        t: cython.float = self.t_mid
        slope: cython.float = self.slope
        bend: cython.float = self.bend
        r2: cython.float = self.radius * self.radius
        side: cython.float = 1 if self.slope > 0 else -1
        vv: cython.float
        q: cython.float
        u: cython.float
        self.front = 0
        if slope == 0:
            for i in range(m):
                depth[i] = t
            return
        if not self.going_down:
            for i in range(m):
                vv = v + i * dv
                q = r2 - vv * vv
                q = q if q > 0 else 0
                u = a + i * da + side * sqrtf(q)
                u = u if u > sa else sa
                u = u if u < sb else sb
                depth[i] = t + (slope + bend * u) * u
            return
        self.front = self.nx
        front = depth + self.nx
        for i in range(m):
            vv = v + i * dv
            q = r2 - vv * vv
            q = q if q > 0 else 0
            q = sqrtf(q)
            u = a + i * da
            vv = u - q
            u = u + side * q
            u = u if u > sa else sa
            u = u if u < sb else sb
            vv = vv if vv > sa else sa
            vv = vv if vv < sb else sb
            depth[i] = t + (slope + bend * u) * u
            front[i] = t + (slope + bend * vv) * vv

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _fill_ball(self, n: cython.Py_ssize_t, a0: cython.double, v0: cython.double) -> cython.void:
        """The place u of the path, from its middle, at which the tool cuts the cell: see _ball."""
        depth: cython.p_float = cython.address(self.row_depth[0])
        i: cython.int
        m: cython.int = cython.cast(cython.int, n)
        a: cython.float = a0 - self.mid
        v: cython.float = v0
        da: cython.float = self.ux * self.cell
        dv: cython.float = -self.uy * self.cell
        aa: cython.float
        vv: cython.float
        u: cython.float
        q: cython.float
        k: cython.float
        sa: cython.float = self.sa - self.mid
        sb: cython.float = self.sb - self.mid
        slope: cython.float = self.slope
        bend: cython.float = self.bend
        r2: cython.float = self.radius * self.radius
        base: cython.float = self.t_mid - self.radius
        lean: cython.float = self.lean
        turn: cython.float = self.turn
        for i in range(m):
            aa = a + i * da
            vv = v + i * dv
            q = r2 - vv * vv
            q = q if q > 0 else 0
            k = sqrtf(q)
            u = (aa + lean * k) * (1 + turn * k * (1 + turn * k))
            u = u if u > sa else sa
            u = u if u < sb else sb
            q = q - (u - aa) * (u - aa)
            q = q if q > 0 else 0
            depth[i] = base + (slope + bend * u) * u + sqrtf(q)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _fill_cone(self, n: cython.Py_ssize_t, a0: cython.double, v0: cython.double) -> cython.void:
        """t0 + slope (a + u) - cone sqrt(v^2 + u^2); best at u = slope |v| / sqrt(cone^2 - slope^2)."""
        depth: cython.p_float = cython.address(self.row_depth[0])
        i: cython.int
        m: cython.int = cython.cast(cython.int, n)
        a: cython.float = a0
        v: cython.float = v0
        da: cython.float = self.ux * self.cell
        dv: cython.float = -self.uy * self.cell
        aa: cython.float
        vv: cython.float
        u: cython.float
        q: cython.float
        sa: cython.float = self.sa
        sb: cython.float = self.sb
        t: cython.float = self.t0
        slope: cython.float = self.slope
        r2: cython.float = self.radius * self.radius
        k: cython.float = self.cone
        lean: cython.float = 1e6 if self.slope > 0 else -1e6
        if fabs(self.slope) < self.cone:
            lean = self.slope / sqrt(self.cone * self.cone - self.slope * self.slope)
        for i in range(m):
            aa = a + i * da
            vv = v + i * dv
            q = r2 - vv * vv
            q = q if q > 0 else 0
            q = sqrtf(q)
            u = lean * (vv if vv > 0 else -vv)
            u = u if u < q else q
            u = u if u > -q else -q
            u = u if u > sa - aa else sa - aa
            u = u if u < sb - aa else sb - aa
            depth[i] = t + slope * (aa + u) - k * sqrtf(vv * vv + u * u)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _fill_other(self, n: cython.Py_ssize_t, a0: cython.double, v0: cython.double) -> cython.void:
        """Any other profile: the radius that cuts, and the tool's height there, are looked up for the path's slope (see
        _leaned); where the path ends before that place, the nearest end cuts."""
        depth: cython.p_float = cython.address(self.row_depth[0])
        radii: cython.p_float = cython.address(self.cutting_radius[65 * self.at_slope])
        heights: cython.p_float = cython.address(self.cutting_height[65 * self.at_slope])
        per: cython.float = 64 / self.radius
        i: cython.int
        k: cython.int
        da: cython.float = self.ux * self.cell
        dv: cython.float = -self.uy * self.cell
        a: cython.float
        v: cython.float
        u: cython.float
        r: cython.float
        x: cython.float
        sa: cython.float = self.sa
        sb: cython.float = self.sb
        t: cython.float = self.t0
        slope: cython.float = self.slope
        most: cython.float = 63.999
        side: cython.float = 1 if self.slope > 0 else -1 if self.slope < 0 else 0
        for i in range(cython.cast(cython.int, n)):
            a = a0 + i * da
            v = v0 + i * dv
            x = fabsf(v) * per
            x = x if x < most else most
            k = cython.cast(cython.int, x)
            x -= k
            r = radii[k] + x * (radii[k + 1] - radii[k])
            u = r * r - v * v
            u = a + side * sqrtf(u if u > 0 else 0)
            if side != 0 and sa < u < sb:
                depth[i] = t + slope * u - heights[k] - x * (heights[k + 1] - heights[k])
            else:
                u = u if u > sa else sa
                u = u if u < sb else sb
                depth[i] = t + slope * u - self._profile(sqrtf(v * v + (a - u) * (a - u)))

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _rows(self, deepest: cython.double, skip_start: cython.bint) -> cython.void:
        """Lowers every cell the segment reaches; `skip_start`: the flat disc at a = 0 is already lowered so deep."""
        wall: cython.bint = deepest > self.rim
        half: cython.double = 0.7072 * self.cell  # half a cell's diagonal
        inner: cython.double
        outer: cython.double
        y_a: cython.double = self.oy + self.sa * self.uy
        y_b: cython.double = self.oy + self.sb * self.uy
        j: cython.Py_ssize_t
        j_first: cython.Py_ssize_t
        j_end: cython.Py_ssize_t
        f: cython.Py_ssize_t = 0
        e: cython.Py_ssize_t = 0
        of: cython.Py_ssize_t = 0
        oe: cython.Py_ssize_t = 0
        dy: cython.double
        lo: cython.double
        if wall:
            inner, outer = self.radius - half, self.radius + half
            self.at_rim = deepest - self._profile(max(0.0, inner)) + 1e-5  # float32 rounds
        else:
            inner = outer = self._radius_at(deepest)
        lo = (min(y_a, y_b) - outer - self.y_low) / self.cell - 0.5
        dy = (max(y_a, y_b) + outer - self.y_low) / self.cell - 0.5
        if dy < 0 or lo > self.ny - 1:
            return
        if max(self.sa * self.ux, self.sb * self.ux) + self.ox + outer < self.x_low:
            return
        if min(self.sa * self.ux, self.sb * self.ux) + self.ox - outer > self.x_low + self.nx * self.cell:
            return
        j_first = cython.cast(cython.Py_ssize_t, ceil(max(lo, 0.0)))
        j_end = cython.cast(cython.Py_ssize_t, floor(min(dy, cython.cast(cython.double, self.ny - 1)))) + 1
        self.work += 8 * (j_end - j_first)
        if self.shape == BALL and inner > 0:
            self._ball(inner, outer if wall else 0.0, j_first, j_end)
            return
        if self.shape == FLAT:
            for j in range(j_first, j_end):
                self._row_flat(j, inner, outer, skip_start)
            return
        for j in range(j_first, j_end):
            dy = self.y_low + (j + 0.5) * self.cell - self.oy
            if inner > 0 and self._span(dy, inner, cython.address(f), cython.address(e)):
                self._part(j, f, e, dy)
            else:
                f = e = -1
            if wall and self._span(dy, outer, cython.address(of), cython.address(oe)):
                if f < 0:
                    self._rim(j, of, oe, dy)
                else:
                    self._rim(j, of, f, dy)
                    self._rim(j, e, oe, dy)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _row_flat(
        self, j: cython.Py_ssize_t, inner: cython.double, outer: cython.double, skip_start: cython.bint
    ) -> cython.void:
        """Lowers one row under a flat tool: whole cells within `inner` of the path, those of the rim to `outer`."""
        dx: cython.double
        dy: cython.double = self.y_low + (j + 0.5) * self.cell - self.oy
        half: cython.double
        a: cython.double
        v: cython.double
        da: cython.double = self.ux * self.cell
        dv: cython.double = -self.uy * self.cell
        f: cython.Py_ssize_t = 0
        e: cython.Py_ssize_t = 0
        of: cython.Py_ssize_t = 0
        oe: cython.Py_ssize_t = 0
        sf: cython.Py_ssize_t
        se: cython.Py_ssize_t
        if not self._span(dy, outer, cython.address(of), cython.address(oe)):
            return
        if not (inner > 0 and self._span(dy, inner, cython.address(f), cython.address(e))):
            f = e = oe
        dx = self.x_low + (of + 0.5) * self.cell - self.ox
        a = self.ux * dx + self.uy * dy
        v = self.ux * dy - self.uy * dx
        self.work += oe - of
        self._fill_flat(oe - of, a, v)
        if self.floored:
            self._stop_at_floor(j, of, oe - of)
        self._rim_flat(j, of, f, of, a, v)
        self._rim_flat(j, e, oe, of, a, v)
        sf, se = e, e
        if skip_start and fabs(dy) < inner:
            half = sqrt(inner * inner - dy * dy)
            sf, se = self._index(self.ox - half, True), self._index(self.ox + half, False)
            if se <= sf:
                sf, se = e, e
        sf, se = min(e, max(f, sf)), max(f, min(e, se))
        self._take(j, f, sf, f - of, a + (f - of) * da, v + (f - of) * dv)
        self._take(j, se, e, se - of, a + (se - of) * da, v + (se - of) * dv)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _rim_flat(
        self,
        j: cython.Py_ssize_t,
        f: cython.Py_ssize_t,
        e: cython.Py_ssize_t,
        of: cython.Py_ssize_t,
        a: cython.double,
        v: cython.double,
    ) -> cython.void:
        """Lowers the cells f to e, through which the rim runs; row_depth, a and v begin at cell `of`."""
        i: cython.Py_ssize_t
        depth: cython.p_float = cython.address(self.row_depth[0])
        cut: cython.p_float = cython.address(self.cut[j, 0])
        share: cython.p_float = cython.address(self.share[j, 0])
        da: cython.double
        dv: cython.double
        s: cython.double
        cover: cython.double
        for i in range(f, e):
            if share[i] == 0 and depth[i - of] <= cut[i]:
                continue
            da = a + (i - of) * self.ux * self.cell
            dv = v - (i - of) * self.uy * self.cell
            s = min(max(da, self.sa), self.sb)
            cover = self._cover(da - s, dv)
            if cover < 1e-6 or depth[i - of] <= 0:
                continue
            if cover > 1 - 1e-6:
                self._take(j, i, i + 1, i - of, da, dv)
            else:
                self._wall(j, i, cover, depth[i - of], da, dv)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _index(self, x: cython.double, up: cython.bint) -> cython.Py_ssize_t:
        """Cell at or after x (up), or one behind the last cell at or before x, clamped to the row."""
        p: cython.double = (x - self.x_low) / self.cell - 0.5
        p = ceil(p) if up else floor(p) + 1
        return cython.cast(cython.Py_ssize_t, min(max(p, 0.0), cython.cast(cython.double, self.nx)))

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _part(self, j: cython.Py_ssize_t, f: cython.Py_ssize_t, e: cython.Py_ssize_t, dy: cython.double) -> cython.void:
        dx: cython.double
        a: cython.double
        v: cython.double
        if f >= e:
            return
        dx = self.x_low + (f + 0.5) * self.cell - self.ox
        a = self.ux * dx + self.uy * dy
        v = self.ux * dy - self.uy * dx
        self.work += e - f
        self._fill(e - f, a, v)
        if self.floored:
            self._stop_at_floor(j, f, e - f)
        self._take(j, f, e, 0, a, v)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _stop_at_floor(self, j: cython.Py_ssize_t, first: cython.Py_ssize_t, n: cython.Py_ssize_t) -> cython.void:
        """row_depth: no deeper than the material reaches."""
        floor: cython.p_float = cython.address(self.floor[j, first])
        depth: cython.p_float = cython.address(self.row_depth[0])
        i: cython.Py_ssize_t
        for i in range(n):
            if depth[i] > floor[i]:
                depth[i] = floor[i]

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _ball(
        self, reach: cython.double, outer: cython.double, j_first: cython.Py_ssize_t, j_end: cython.Py_ssize_t
    ) -> cython.void:
        """Lowers the whole cells of these rows within `reach` of the segment under a ball, and sums them; then those
        through which the rim runs, between `reach` and `outer` (0: the rim is above the stock).

        The processor does four cells at a time where a loop has neither branches nor a sum across cells: so each sum
        is kept by the cell's place in its block until the end.
        """
        # BLOCK places each: volume, volume right of the path, top of the contact, met under the tip, and its middle
        sums = cython.declare(cython.float[320])
        i: cython.int
        j: cython.Py_ssize_t
        f: cython.Py_ssize_t = 0
        e: cython.Py_ssize_t = 0
        of: cython.Py_ssize_t = 0
        oe: cython.Py_ssize_t = 0
        dy: cython.double
        for i in range(5 * BLOCK):
            sums[i] = 0
        for j in range(j_first, j_end):
            dy = self.y_low + (j + 0.5) * self.cell - self.oy
            if outer > 0 and not self._span(dy, outer, cython.address(of), cython.address(oe)):
                continue
            if not self._span(dy, reach, cython.address(f), cython.address(e)):
                if outer > 0:
                    self._rim(j, of, oe, dy)
                continue
            if outer > 0:
                self._rim(j, of, f, dy)
                self._rim(j, e, oe, dy)
            self.work += e - f
            self._ball_row(j, f, e, dy, sums)
        for i in range(BLOCK):
            if sums[i] > 0:
                self.removed += sums[i]
                self.right += 0.25 * sums[BLOCK + i]
            if sums[2 * BLOCK + i] > 0:
                self.cells += 1
                self.most = max(self.most, sums[2 * BLOCK + i])
                self.under += sums[3 * BLOCK + i]
                self.centre += sums[4 * BLOCK + i]

    @cython.cfunc
    @cython.nogil
    @cython.inline
    @cython.exceptval(check=False)
    def _ball_row(
        self, j: cython.Py_ssize_t, f: cython.Py_ssize_t, e: cython.Py_ssize_t, dy: cython.double, sums: cython.p_float
    ) -> cython.void:
        """Lowers the cells f to e of a row under a ball, block by block; those with walls or a floor one by one."""
        deep = cython.declare(cython.float[64])
        tip = cython.declare(cython.float[64])
        low = cython.declare(cython.float[64])
        cut: cython.p_float
        m: cython.int
        n: cython.int
        b: cython.Py_ssize_t = f
        dx: cython.double
        a: cython.float
        v: cython.float
        while b < e:
            m = cython.cast(cython.int, min(BLOCK, e - b))
            cut = cython.address(self.cut[j, b])
            dx = self.x_low + (b + 0.5) * self.cell - self.ox
            a = self.ux * dx + self.uy * dy - self.mid
            v = self.ux * dy - self.uy * dx
            if self.walls:
                m = self._unlike(j, b, m)
            if self.floored or m < 0:
                m = abs(m)
                self._fill(m, a + self.mid, v)
                if self.floored:
                    self._stop_at_floor(j, b, m)
                self._take(j, b, b + m, 0, a + self.mid, v)
                b += m
                continue
            n = (m + 3) // 4 * 4  # the cells behind the last are left as they are
            if b + n > self.nx:
                n = m
            if self._ball_depths(n, a, v, cut, deep, tip):
                self._ball_lower(m, n, v, cut, deep, tip, low, sums)
                self._ball_meets(m, n, a, v, tip, low, deep, sums)
            b += m

    @cython.cfunc
    @cython.nogil
    @cython.inline
    @cython.exceptval(check=False)
    def _unlike(self, j: cython.Py_ssize_t, b: cython.Py_ssize_t, m: cython.int) -> cython.int:
        """How many of the m cells from b on can be done together; less than 0 where a wall runs through one of them."""
        share: cython.p_int = cython.cast(cython.p_int, cython.address(self.share[j, b]))
        i: cython.int
        bits: cython.int = 0
        for i in range(m):
            bits |= share[i]
        if bits != 0 and m > 8:
            m = 8
            bits = 0
            for i in range(m):
                bits |= share[i]
        return -m if bits != 0 else m

    @cython.cfunc
    @cython.nogil
    @cython.inline
    @cython.exceptval(check=False)
    def _ball_depths(
        self, n: cython.int, a: cython.float, v: cython.float, cut: cython.p_float, deep: cython.p_float,
        tip: cython.p_float,
    ) -> cython.int:  # fmt: skip
        """Sets for n cells the depth of the tip where the ball is lowest over them, and the square of how far the ball
        reaches below its centre there; not 0 where it lowers any of them.

        The tip runs on p(u) = t_mid + slope u + bend u^2, u from the path's middle. The ball is lowest over a cell
        where u - a = k lean(u), k^2 = r^2 - v^2; lean grows as lean + turn u, and 1 / (1 - turn k) is taken as the
        first three terms of its series. An error of u moves the depth by its square only.
        """
        i: cython.int
        bits: cython.int = 0  # set where a cell is lowered: e is how far it lies below the centre, e^2 < q if at all
        da: cython.float = self.ux * self.cell
        dv: cython.float = -self.uy * self.cell
        aa: cython.float
        vv: cython.float
        q: cython.float
        k: cython.float
        u: cython.float
        t: cython.float
        x: cython.float
        sa: cython.float = self.sa - self.mid
        sb: cython.float = self.sb - self.mid
        lean: cython.float = self.lean
        turn: cython.float = self.turn
        slope: cython.float = self.slope
        bend: cython.float = self.bend
        t_mid: cython.float = self.t_mid
        r: cython.float = self.radius
        r2: cython.float = r * r
        rest: cython.float
        more: cython.float
        one: cython.float = 1  # written out, 1 would be a double
        if slope == 0 and bend == 0:  # the nearest place of the path is lowest
            for i in range(n):
                aa = a + i * da
                vv = v + i * dv
                u = aa if aa > sa else sa
                u = u if u < sb else sb
                q = r2 - vv * vv - (u - aa) * (u - aa)
                q = q if q > 0 else 0
                tip[i], deep[i] = t_mid, q
                x = cut[i] - t_mid + r
                x = x if x > 0 else 0
                bits |= q > x * x
            return bits
        if dv == 0:
            q = r2 - v * v
            rest = q if q > 0 else 0
            k = sqrtf(rest)
            more = one + turn * k * (one + turn * k)
            k = lean * k
            for i in range(n):
                aa = a + i * da
                u = (aa + k) * more
                u = u if u > sa else sa
                u = u if u < sb else sb
                q = rest - (u - aa) * (u - aa)
                q = q if q > 0 else 0
                t = t_mid + (slope + bend * u) * u
                tip[i], deep[i] = t, q
                x = cut[i] - t + r
                x = x if x > 0 else 0
                bits |= q > x * x
            return bits
        for i in range(n):
            aa = a + i * da
            vv = v + i * dv
            q = r2 - vv * vv
            q = q if q > 0 else 0
            k = sqrtf(q)
            u = (aa + lean * k) * (one + turn * k * (one + turn * k))
            u = u if u > sa else sa
            u = u if u < sb else sb
            q = q - (u - aa) * (u - aa)
            q = q if q > 0 else 0
            t = t_mid + (slope + bend * u) * u
            tip[i], deep[i] = t, q
            x = cut[i] - t + r
            x = x if x > 0 else 0
            bits |= q > x * x
        return bits

    @cython.cfunc
    @cython.nogil
    @cython.inline
    @cython.exceptval(check=False)
    def _ball_lower(
        self, m: cython.int, n: cython.int, v: cython.float, cut: cython.p_float, deep: cython.p_float,
        tip: cython.p_float, low: cython.p_float, sums: cython.p_float,
    ) -> cython.void:  # fmt: skip
        """Lowers m cells (n with those that fill the last four) and sums them; sets low: what came off, 0 where it is
        no contact, and deep: what the ball met there, above its tip."""
        volume: cython.p_float = sums
        right: cython.p_float = sums + BLOCK
        ap: cython.p_float = sums + 2 * BLOCK
        i: cython.int
        dv: cython.float = -self.uy * self.cell
        r: cython.float = self.radius
        least: cython.float = self.least
        twice: cython.float = 2 * self.per_cell
        one: cython.float = 1
        two: cython.float = 2
        old: cython.float
        raw: cython.float
        q: cython.float
        t: cython.float
        u: cython.float
        x: cython.float
        vv: cython.float
        for i in range(n):
            deep[i] = tip[i] - r + sqrtf(deep[i])
        for i in range(m, n):
            deep[i] = 0
        for i in range(n):
            old = cut[i]
            q = deep[i]
            raw = q - old
            t = tip[i] - old
            cut[i] = q if q > old else old
            raw = raw if raw > 0 else 0
            x = raw if raw > least else 0
            low[i], deep[i] = x, t
            u = ap[i]
            t = t if t > u else u
            ap[i] = t if x > 0 else u
            volume[i] += raw
            vv = (v + i * dv) * twice  # the share right of the path goes from 1 to 0 within its cell
            right[i] += raw * (fabsf(one - vv) - fabsf(one + vv) + two)

    @cython.cfunc
    @cython.nogil
    @cython.inline
    @cython.exceptval(check=False)
    def _ball_meets(
        self, m: cython.int, n: cython.int, a: cython.float, v: cython.float, tip: cython.p_float, low: cython.p_float,
        high: cython.p_float, sums: cython.p_float,
    ) -> cython.void:  # fmt: skip
        """Notes what the rim met of m cells, and sums what the tip of a ball that goes down met of n."""
        under: cython.p_float = sums + 3 * BLOCK
        centre: cython.p_float = sums + 4 * BLOCK
        i: cython.int
        da: cython.float = self.ux * self.cell
        dv: cython.float = -self.uy * self.cell
        middle: cython.float = 0.36 * self.radius * self.radius  # 0.3 D
        told: cython.float = max(self.least, self.under_least)
        foot_2: cython.float = self.foot_2
        end_a: cython.float = self.end_a - self.mid
        one: cython.float = 1
        q: cython.float
        x: cython.float
        aa: cython.float
        vv: cython.float
        for i in range(m):
            if low[i] > 0 and not (
                self.going_down and self._in_groove(a + self.mid + i * da, v + i * dv, tip[i] - high[i])
            ):
                self._note(v + i * dv, high[i], 1)
        if self.going_down:
            a -= end_a
            for i in range(n):
                aa = a + i * da
                vv = v + i * dv
                q = aa * aa + vv * vv
                x = one if low[i] > told else 0
                under[i] += x if q < foot_2 else 0
                centre[i] += x if q < middle else 0

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _rim(self, j: cython.Py_ssize_t, f: cython.Py_ssize_t, e: cython.Py_ssize_t, dy: cython.double) -> cython.void:
        """Cells through which the rim of the swept shape runs: only a share of them is lowered."""
        i: cython.Py_ssize_t
        dx: cython.double
        a: cython.double
        v: cython.double
        s: cython.double
        cover: cython.double
        depth: cython.double
        self.work += max(0, e - f)
        for i in range(f, e):
            if self.cut[j, i] >= self.at_rim and self.share[j, i] == 0:
                continue  # as most cells beside an earlier cut
            dx = self.x_low + (i + 0.5) * self.cell - self.ox
            a = self.ux * dx + self.uy * dy
            v = self.ux * dy - self.uy * dx
            s = min(max(a, self.sa), self.sb)
            cover = self._cover(a - s, v)
            if cover < 1e-6:
                continue
            if cover < 0.5:
                depth = self._depth_at(a, v)
                self.row_depth[0] = depth
            else:
                self._fill(1, a, v)
                depth = self.row_depth[0]
            if self.floored and depth > self.floor[j, i]:
                self.row_depth[0] = depth = self.floor[j, i]
            if depth <= 0:
                continue
            if cover > 1 - 1e-6:
                self._take(j, i, i + 1, 0, a, v)
            else:
                self._wall(j, i, cover, depth, a, v)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _segment(
        self,
        x0: cython.double,
        y0: cython.double,
        t0: cython.double,
        x1: cython.double,
        y1: cython.double,
        t1: cython.double,
        bend: cython.double,
        bulge: cython.double,
    ) -> cython.void:
        """Sweeps one segment, straight from above, and adds what it meets to the piece's sums.

        bend: of the path, 1/mm; bulge: how much deeper than its ends the path may go, mm.
        """
        length: cython.double = hypot(x1 - x0, y1 - y0)
        drop: cython.double = t1 - t0
        chained: cython.bint = x0 == self.last_x and y0 == self.last_y and t0 == self.last_t
        deepest: cython.double = max(t0, t1) + bulge
        lean: cython.double
        n: cython.int
        self.last_x, self.last_y, self.last_t = x1, y1, t1
        if deepest <= 0:
            return
        self.ox, self.oy = x0, y0
        self.going_down, self.t_start = drop > 1e-6, t0
        self.per_drop = 1 / drop if self.going_down else 0.0
        self.discs += 1
        self.work += WORK_SEGMENT
        if length < 1e-7:
            # straight down: the disc at the end has it all; straight up: the start had it already
            if chained and drop <= 0:
                return
            self.straight_down = True
            self.ux, self.uy, self.sa, self.sb, self.end_a = 1.0, 0.0, 0.0, 0.0, 0.0
            self.per_ux, self.per_uy = 1.0, 0.0
            self.a_min, self.t0, self.slope = -1e300, deepest, 0.0
            self.mid, self.t_mid, self.bend, self.lean, self.turn = 0.0, deepest, 0.0, 0.0, 0.0
            self._rows(deepest, False)
            return
        self.straight_down = False
        self.ux, self.uy = (x1 - x0) / length, (y1 - y0) / length
        self.ahead = max(length, self.to_go)
        if chained and self.carried > 0 and self.ux * self.carried_ux + self.uy * self.carried_uy > 0.98:
            for n in range(self.carried):
                self._note(self.carried_v[n], self.carried_h[n], self.carried_area[n])
        self.carried, self.carried_ux, self.carried_uy = 0, self.ux, self.uy
        self.per_ux = 1 / self.ux if fabs(self.ux) > 1e-12 else 0.0
        self.per_uy = 1 / self.uy if fabs(self.uy) > 1e-12 else 0.0
        self.sa, self.sb, self.end_a = 0.0, length, length
        self.t0, self.slope = t0, drop / length
        if fabs(drop) < 1e-6:
            self.t0, self.slope = max(t0, t1), 0.0
        self.mid, self.bend = 0.5 * length, bend
        self.t_mid = self.t0 + self.slope * self.mid - bend * self.mid * self.mid
        steep: cython.double = sqrt(1 + self.slope * self.slope)
        self.lean = self.slope / steep
        self.turn = 2 * bend / (steep * steep * steep)
        # Behind this line the best place of the tool is the start of the segment, which the segment before has swept.
        self.a_min = -1e300
        if chained and (self.shape == FLAT or fabs(bend) * self.radius < 1):
            if self.shape == FLAT:
                if not self.going_down:
                    self.a_min = -1e-9
            else:
                lean = self.slope - 2 * bend * self.mid  # at the start
                lean = lean / sqrt(1 + lean * lean)
                self.a_min = -1e-9 - (self.radius * lean if lean > 0 else 0.0)
                if self.shape == CONE and self.slope > 0:
                    self.a_min = (
                        -1e300
                        if self.slope >= self.cone
                        else -1e-9 - self.radius * self.slope / sqrt(self.cone * self.cone - self.slope * self.slope)
                    )
        if self.shape == OTHER:
            self._leaned(fabs(self.slope))
            if self.slope > 0 and self.a_min > -1e299:
                self.a_min = min(self.a_min, 0.0) - self.cell - self.widest[self.at_slope]
        self._rows(deepest, chained and self.shape == FLAT and not self.going_down)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(-1e300)
    def _surface(self, x: cython.double, y: cython.double) -> cython.double:
        """Depth of the surface at a place; very deep outside the outline, and where nothing is left."""
        i: cython.double = floor((x - self.x_low) / self.cell)
        j: cython.double = floor((y - self.y_low) / self.cell)
        if not (0 <= i < self.nx and 0 <= j < self.ny):
            return 1e30
        p: cython.Py_ssize_t = cython.cast(cython.Py_ssize_t, j)
        q: cython.Py_ssize_t = cython.cast(cython.Py_ssize_t, i)
        if self.floored and self.cut[p, q] >= self.floor[p, q] - 1e-4:
            return 1e30
        return self.cut[p, q]

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(-1e300)
    def _floor(self, x: cython.double, y: cython.double) -> cython.double:
        """Depth of the surface under the tip itself: the cell's centre lies a little up a pointed tool's flank."""
        found: cython.double = self._surface(x, y)
        e: cython.double
        if self.shape != FLAT and 0 < found < 1e29:
            e = (floor((x - self.x_low) / self.cell) + 0.5) * self.cell + self.x_low - x
            found += self._profile(hypot(e, (floor((y - self.y_low) / self.cell) + 0.5) * self.cell + self.y_low - y))
        return found

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(-1)
    def _open_at(self, x: cython.double, y: cython.double, t: cython.double) -> cython.bint:
        """Whether the middle of the tip at this place stands in space already cut, or outside the stock's outline."""
        return self._surface(x, y) > max(t, 0.0) + CONTACT

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(-1e300)
    def _shank(self, x: cython.double, y: cython.double, t: cython.double) -> cython.double:
        """Height of wall above the flutes within the shank's radius + 0.05 mm of the axis; 0 if none."""
        limit: cython.double = t - self.flute_length - CONTACT
        reach: cython.double = self.shank_radius + 0.05
        c: cython.double = self.cell
        r: cython.double
        near: cython.double
        highest: cython.double = 0.0
        high: cython.double
        dx: cython.double
        dy: cython.double
        span: cython.double
        i: cython.Py_ssize_t
        j: cython.Py_ssize_t
        i_first: cython.Py_ssize_t
        i_end: cython.Py_ssize_t
        if not limit > 0 or not reach > 0:
            return 0.0
        j_first: cython.Py_ssize_t = cython.cast(
            cython.Py_ssize_t,
            min(max(ceil((y - reach - c - self.y_low) / c - 0.5), 0.0), cython.cast(cython.double, self.ny)),
        )
        j_end: cython.Py_ssize_t = cython.cast(
            cython.Py_ssize_t,
            min(max(floor((y + reach + c - self.y_low) / c - 0.5) + 1, 0.0), cython.cast(cython.double, self.ny)),
        )
        for j in range(j_first, j_end):
            dy = self.y_low + (j + 0.5) * c - y
            span = (reach + c) * (reach + c) - dy * dy
            if span <= 0:
                continue
            span = sqrt(span)
            i_first, i_end = self._index(x - span, True), self._index(x + span, False)
            self.work += max(0, i_end - i_first)
            for i in range(i_first, i_end):
                dx = self.x_low + (i + 0.5) * c - x
                r = sqrt(dx * dx + dy * dy)
                high = self.cut[j, i]
                near = r - c * 0.5
                if self.share[j, i] > 0:
                    if self.other[j, i] > high:
                        near = r - c * (0.5 - self.share[j, i])
                    elif high >= limit:  # the far part of a cell whose middle is cut
                        high, near = self.other[j, i], r + c * (0.5 - self.share[j, i])
                if high < limit and near <= reach and r > self.radius - c:
                    highest = max(highest, t - self.flute_length - high)
        return highest

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _begin(self, length: cython.double, drop: cython.double) -> cython.void:
        """Forgets the piece before. length: of the piece; drop: of each of its segments."""
        fine: cython.double = min(1.0, length / (2 * self.cell))
        k: cython.int
        self.least = max(CONTACT_LEAST, CONTACT * fine)
        self.under_least = 0.0
        if drop > 1e-6:
            self.least = max(SINK_LEAST, min(self.least, 0.25 * drop))
            self.under_least = UNDER_LEAST * drop
            for k in range(LEVELS):
                self.under_area[k] = self.under_high[k] = 0
        self.wall_least = max(CONTACT_LEAST, CONTACT * fine) / self.cell
        self.cells = self.removed = self.right = self.most = self.most_of_slivers = self.under = self.centre = 0.0
        self.foot, self.discs = 1e300, 0.0
        self.met, self.met_step, self.met_wait = 0, 1, 0
        self.to_go, self.straight_down, self.sample = 0.0, False, 1
        for k in range(LANES):
            self.lane_volume[k] = self.lane_cells[k] = 0
        for k in range(self.carry):
            self.carried_v[k], self.carried_h[k] = self.carry_v[k], self.carry_h[k]
            self.carried_area[k] = self.carry_area[k]
        self.carried, self.carry = self.carry, 0

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _footprint(self, t: cython.double, floor_t: cython.double) -> cython.void:
        """Takes the radius of the tool in the material, at the end of the piece, for what counts as under the tip.

        floor_t: depth of the surface there before the piece.
        """
        r: cython.double = self.radius
        if self.shape != FLAT:
            r = self._radius_at(t - max(floor_t, 0.0) if floor_t < t else t)
        self.foot_2 = r * r

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _half_area(self, x: cython.double, high: cython.double) -> cython.double:
        """Area between the profile and a level `high` above its tip, from the axis to x."""
        area: cython.double = high * x
        e: cython.double
        if x > self.flat:
            e = min(x, self.join_r) - self.flat
            if self.torus > 0 and e > 0:
                area -= self.torus * e - 0.5 * (
                    e * sqrt(max(0.0, self.torus * self.torus - e * e))
                    + self.torus * self.torus * asin(min(1.0, e / self.torus))
                )
        if x > self.join_r:
            e = x - self.join_r
            area -= e * (self.join_z + 0.5 * self.cone * e)
        return area

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _stepover(self, section: cython.double, high: cython.double) -> cython.double:
        """Distance from an equal cut `high` deep beside which the tool takes this section; a slot's width if all of it.

        The two profiles cross halfway, so the section is twice the area from the axis to half the distance.
        """
        r: cython.double = self._radius_at(high)
        x: cython.double
        d: cython.double
        _k: cython.int
        if high <= 0 or section <= 0:
            return 0.0
        if section >= 0.96 * 2 * self._half_area(r, high):
            return 2 * r
        x = 0.5 * section / high
        for _k in range(12):  # from below: the area grows ever more slowly
            d = high - self._profile(x)
            if d <= 1e-9:
                break
            d = (0.5 * section - self._half_area(x, high)) / d
            x += d
            if d < 1e-4 * x:
                break
        return 2 * min(x, r)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _together(self, at: cython.Py_ssize_t, most: cython.Py_ssize_t, longest: cython.double) -> cython.int:
        """How many moves from `at` on (at most `most`) can be swept as one segment; sets group_*.

        They are lines of one tool, chained, all below the top and over the stock, at most `longest` together. They
        leave the segment by at most SAGITTA, that of a ball or a flat tool being bent as they are. None goes down
        steeper than 45 degrees, and those that go down are not mixed with those that rise: so a flat tool's low edge
        is at its back or at its front all along, and no cell is off by more than the path is there, SAGITTA of depth
        and SAGITTA across times the slope.
        """
        along = cython.declare(cython.double[33])
        off = cython.declare(cython.double[33])
        n: cython.int = 0
        k: cython.int
        way: cython.int = 0
        mine: cython.int
        bendable: cython.bint = self.shape == BALL or self.shape == FLAT
        dx: cython.double
        dy: cython.double
        dt: cython.double
        flat: cython.double
        total: cython.double = 0.0
        chord: cython.double
        ux: cython.double
        uy: cython.double
        e: cython.double
        g: cython.double
        top: cython.double
        below: cython.double
        bend: cython.double
        widest: cython.double = 0.0
        good: cython.bint
        x_high: cython.double = self.x_low + self.nx * self.cell
        y_high: cython.double = self.y_low + self.ny * self.cell
        kind: cython.p_const_uchar = self.kind + at
        tool: cython.p_const_int = self.tool + at
        x0: cython.p_const_double = self.x0 + at
        y0: cython.p_const_double = self.y0 + at
        z0: cython.p_const_double = self.z0 + at
        x1: cython.p_const_double = self.x1 + at
        y1: cython.p_const_double = self.y1 + at
        z1: cython.p_const_double = self.z1 + at
        self.group_bend = 0.0
        if not (z0[0] < self.top and self.top - z0[0] <= self.flute_length):
            return 1
        while n < most:
            if kind[n] != 1 or tool[n] != tool[0]:
                break
            if n > 0 and (x0[n] != x1[n - 1] or y0[n] != y1[n - 1] or z0[n] != z1[n - 1]):
                break
            if not (self.x_low <= x1[n] <= x_high and self.y_low <= y1[n] <= y_high):
                break
            if not (z1[n] < self.top and self.top - z1[n] <= self.flute_length):
                break
            dx, dy, dt = x1[n] - x0[n], y1[n] - y0[n], z0[n] - z1[n]
            flat = sqrt(dx * dx + dy * dy)
            if flat < 1e-6 or dt > flat:
                break
            mine = 1 if dt > 2 * self.resolution else -1 if dt < -2 * self.resolution else 0
            if mine * way < 0:
                break
            e = sqrt(flat * flat + dt * dt)
            if total + e > longest:
                break
            widest = max(widest, flat)
            if n > 0:
                ux, uy, e = x1[n] - x0[0], y1[n] - y0[0], z0[0] - z1[n]
                chord = sqrt(ux * ux + uy * uy)
                if chord < 1e-6:
                    break
                ux, uy, e = ux / chord, uy / chord, e / chord
                good, top, below, g = True, 0.0, 0.0, 0.0
                for k in range(n):
                    dx, dy = x1[k] - x0[0], y1[k] - y0[0]
                    along[k] = ux * dx + uy * dy
                    good = good and fabs(ux * dy - uy * dx) <= SAGITTA and g < along[k] < chord
                    g = along[k]
                    off[k] = z0[0] - z1[k] - e * g
                    top += off[k] * g * (g - chord)
                    below += g * g * (g - chord) * (g - chord)
                bend = top / below if bendable and n > 1 else 0.0
                good = good and fabs(bend) * widest * widest <= SAGITTA
                good = good and (self.shape == FLAT or 2 * fabs(bend) * self.radius <= 0.3)
                for k in range(n):
                    good = good and fabs(off[k] - bend * along[k] * (along[k] - chord)) <= SAGITTA
                if not good:
                    break
                self.group_bend = bend
            total += sqrt(flat * flat + dt * dt)
            self.group_flat[n], self.group_drop[n], self.group_length[n] = flat, dt, sqrt(flat * flat + dt * dt)
            way = mine if way == 0 else way
            n += 1
        self.work += n * (n + 16)
        return max(n, 1)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _share_out(self, move: cython.Py_ssize_t, n: cython.int, depth: cython.double) -> cython.void:
        """Gives each of n moves swept as one its row, from the row of all at `made`: volume and solid by their shares.

        depth: of the tip at the start of the first move, mm.
        """
        out: cython.p_float = cython.address(self.out[0, 0])
        room: cython.Py_ssize_t = self.out.shape[1]
        bits: cython.p_uchar = cython.address(self.out_bits[0, 0])
        bits_room: cython.Py_ssize_t = self.out_bits.shape[1]
        at: cython.Py_ssize_t = self.made
        k: cython.int
        c: cython.int
        length: cython.double = 0.0
        drop: cython.double = 0.0
        same = cython.declare(cython.float[14])
        down: cython.bint
        for c in range(14):
            same[c] = out[c * room + at]
        touch: cython.uchar = bits[at]
        centre: cython.uchar = bits[bits_room + at]
        profile: cython.int = self.out_profile[at]
        for k in range(n):
            length += self.group_length[k]
            drop += max(0.0, self.group_drop[k])
        for k in range(n):
            down = self.group_drop[k] > 1e-6
            out[at], out[room + at] = 0.0, 1.0
            out[2 * room + at] = self.group_length[k]
            out[3 * room + at] = self.group_flat[k] if self.group_flat[k] >= self.resolution else 0.0
            out[4 * room + at] = self.group_drop[k]
            out[5 * room + at] = same[5] * (self.group_length[k] / length)
            for c in range(6, 10):
                out[c * room + at] = same[c]
            out[10 * room + at] = same[10] if down else 0.0
            out[11 * room + at] = 0.0
            out[12 * room + at] = max(depth, depth + self.group_drop[k])
            out[13 * room + at] = same[13] * (self.group_drop[k] / drop) if down else min(0.0, self.group_drop[k])
            bits[at] = touch if down else touch & 2
            bits[bits_room + at] = centre if down else 0
            bits[2 * bits_room + at] = self.group_open[k]
            self.out_move[at], self.out_profile[at] = cython.cast(cython.int, move + k), profile
            depth += self.group_drop[k]
            at += 1
        self.made = at

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _load(self, row: cython.const[cython.double][::1]) -> cython.void:
        """Takes a tool: TOOL_COLUMNS in order, mm; shape 0 flat, 1 ball, 2 pointed cone, 3 any other profile."""
        k: cython.int
        self.radius, self.flat, self.torus, self.join_r = row[0], row[1], row[2], row[3]
        self.join_z, self.cone, self.rim, self.shape = row[4], row[5], row[6], cython.cast(cython.int, row[7])
        self.flute_length, self.shank_radius = row[8], row[9]
        self.last_x = NAN
        for k in range(SLOPES + 1):
            self.slope_known[k] = False

    def run(
        self,
        first: cython.Py_ssize_t,
        kind: cython.const[cython.uchar][::1],
        plane: cython.const[cython.uchar][::1],
        x0s: cython.const[cython.double][::1],
        y0s: cython.const[cython.double][::1],
        z0s: cython.const[cython.double][::1],
        x1s: cython.const[cython.double][::1],
        y1s: cython.const[cython.double][::1],
        z1s: cython.const[cython.double][::1],
        cus: cython.const[cython.double][::1],
        cvs: cython.const[cython.double][::1],
        sweeps: cython.const[cython.double][::1],
        tool: cython.const[cython.int][::1],
        tools: cython.const[cython.double][:, ::1],
        resolution: cython.double,
        most_work: cython.double,
        out: cython.float[:, ::1],
        out_move: cython.int[::1],
        out_profile: cython.int[::1],
        out_bits: cython.uchar[:, ::1],
        skipped: cython.uchar[::1],
        before: cython.float[::1],
        profiles: Rim,
    ):
        """Sweeps moves from row `first` on, as far as `out` surely holds their pieces and `most_work` cells go.

        tool: row of `tools`, -1 = not swept. out: [PIECE_COLUMNS, rows]; out_bits: [touch, centre, open_start; rows].
        out_profile: row of the tables of `profiles`, which are as long as `out`.
        skipped[move] = 1 where a move was too much for the bounds (an arc of too many turns).
        before[move]: see entries.py; written for moves that go down.
        Returns (next move, pieces written).
        """
        room: cython.Py_ssize_t = out.shape[1]
        n: cython.Py_ssize_t = kind.shape[0]
        each: cython.const[cython.double][::1]
        if (
            out.shape[0] < 14
            or min(out_move.shape[0], out_profile.shape[0], out_bits.shape[1], profiles.depth.shape[0]) < room
            or out_bits.shape[0] < 3
        ):
            raise ValueError("the output tables do not fit each other")
        if min(plane.shape[0], tool.shape[0], skipped.shape[0], before.shape[0]) < n:
            raise ValueError("the columns of moves do not fit each other")
        for each in (x0s, y0s, z0s, x1s, y1s, z1s, cus, cvs, sweeps):
            if each.shape[0] < n:
                raise ValueError("the columns of moves do not fit each other")
        self.made, self.moves = 0, n
        if not 0 <= first < n:
            return first, 0
        self.kind, self.plane, self.tool = cython.address(kind[0]), cython.address(plane[0]), cython.address(tool[0])
        self.x0, self.y0, self.z0 = cython.address(x0s[0]), cython.address(y0s[0]), cython.address(z0s[0])
        self.x1, self.y1, self.z1 = cython.address(x1s[0]), cython.address(y1s[0]), cython.address(z1s[0])
        self.cu, self.cv, self.swept_angle = cython.address(cus[0]), cython.address(cvs[0]), cython.address(sweeps[0])
        self.out, self.out_move, self.out_profile, self.out_bits = out, out_move, out_profile, out_bits
        self.skipped, self.before, self.profiles = skipped, before, profiles
        self.resolution, self.most_work = resolution, most_work
        with cython.nogil:
            first = self._run(first, tools)
        return first, self.made

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(-1)
    def _run(self, first: cython.Py_ssize_t, tools: cython.const[cython.double][:, ::1]) -> cython.Py_ssize_t:
        """`run` without the interpreter's lock: two sweepers work side by side. Returns the next move."""
        room: cython.Py_ssize_t = self.out.shape[1]
        mv: cython.Py_ssize_t = first
        done: cython.Py_ssize_t
        row: cython.int
        while mv < self.moves:
            row = self.tool[mv]
            if row < 0:
                self.last_x = NAN
                mv += 1
                continue
            if room - self.made < MOST_PIECES or self.work > self.most_work:
                return mv
            if row != self.current:
                self._load(tools[row])
                self.current = row
            if not (
                fabs(self.x0[mv]) < FAR
                and fabs(self.y0[mv]) < FAR
                and fabs(self.z0[mv]) < FAR
                and fabs(self.x1[mv]) < FAR
                and fabs(self.y1[mv]) < FAR
                and fabs(self.z1[mv]) < FAR
            ):
                self.last_x = NAN
                mv += 1
                continue
            if mv >= self.scanned and self.z0[mv] - self.z1[mv] > 0.5 * self.resolution:
                self._look_below(mv, row)
            if self.kind[mv] > 0 and self.touched == mv - 1:
                done = self._fine(mv) if self.kind[mv] == 1 else self._fine_arcs(mv)
                if done < 0:
                    return mv
                if done > 0:
                    mv += done
                    continue
            if self.kind[mv] >= 2 and isfinite(self.cu[mv] + self.cv[mv] + self.swept_angle[mv]):
                if not self._arc_move(mv):
                    return mv
            elif not self._line_move(mv):
                return mv
            mv += 1
        return self.moves

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _look_below(self, mv: cython.Py_ssize_t, row: cython.int) -> cython.void:
        """Keeps what lies under the ends of a run of moves that go down, before the first of them cuts."""
        k: cython.Py_ssize_t = mv
        while k < self.moves and self.tool[k] == row and self.z0[k] - self.z1[k] > 0.5 * self.resolution:
            self.before[k] = self._surface(self.x1[k], self.y1[k])
            k += 1
        self.scanned = k

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _fine(self, mv: cython.Py_ssize_t) -> cython.Py_ssize_t:
        """Sweeps fine moves from `mv` on as one; returns how many, 0 if this one must be swept by itself."""
        together: cython.int = self._together(mv, min(self.merged, self.moves - mv), self._longest())
        n: cython.Py_ssize_t = mv + together - 1
        k: cython.Py_ssize_t
        px: cython.double = self.x0[mv]
        py: cython.double = self.y0[mv]
        pt: cython.double = self.top - self.z0[mv]
        qx: cython.double = self.x1[n]
        qy: cython.double = self.y1[n]
        qt: cython.double = self.top - self.z1[n]
        level: cython.double = pt
        length: cython.double = 0.0
        flat_length: cython.double
        floor_t: cython.double
        if together < 2:
            return 0
        self.round, self.goes_on = False, False
        for k in range(mv, n + 1):
            self.group_open[k - mv] = self._open_at(self.x0[k], self.y0[k], self.top - self.z0[k])
            level = max(level, self.top - self.z1[k])
        for k in range(together):
            length += self.group_length[k]
        floor_t = self._floor(qx, qy)
        flat_length = hypot(qx - px, qy - py)
        self._begin(length, qt - pt)
        self._footprint(qt, floor_t)
        self.sample = cython.cast(cython.int, min(4.0, max(1.0, self.radius * self.per_cell / 8)))
        self._segment(px, py, pt, qx, qy, qt, self.group_bend, level - max(pt, qt) + SAGITTA)
        if self._store(
            mv, 0.0, 1.0, length, flat_length, flat_length, qt - pt, level, qx, qy, qt, False, floor_t
        ):
            self.made -= 1
            self._share_out(mv, together, pt)
            self.touched = n
        return together

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _longest(self) -> cython.double:
        """The longest way of fine moves that are swept as one, mm."""
        if self.shape == OTHER:
            return max(TOGETHER * self.radius, self.cell)
        return max(max(TOGETHER * self.radius, self.cell), min(2 * TOGETHER * self.radius, TOGETHER_SMALL))

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _step(self) -> cython.double:
        """The longest piece, mm."""
        return max(0.5 * self.radius, self.cell)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _line_move(self, mv: cython.Py_ssize_t) -> cython.bint:
        """Sweeps a straight move; False where the bound of work is reached."""
        x0: cython.double = self.x0[mv]
        y0: cython.double = self.y0[mv]
        t0: cython.double = self.top - self.z0[mv]
        x1: cython.double = self.x1[mv]
        y1: cython.double = self.y1[mv]
        t1: cython.double = self.top - self.z1[mv]
        reach: cython.double = self.radius + self.cell
        flat_length: cython.double = hypot(x1 - x0, y1 - y0)
        length: cython.double = hypot(flat_length, t1 - t0)
        wanted: cython.double = flat_length if flat_length >= self.resolution else 0.0
        sa: cython.double
        sb: cython.double
        s: cython.double
        u: cython.double
        px: cython.double
        py: cython.double
        pt: cython.double
        qx: cython.double
        qy: cython.double
        qt: cython.double
        opened: cython.bint
        floor_t: cython.double
        pieces: cython.Py_ssize_t
        p: cython.Py_ssize_t
        self.round = False
        # the part of the line below the top and within reach of the box
        self.lo, self.hi = 0.0, 1.0
        self._clip(t0, t1 - t0, 0.0, 1e300)
        self._clip(x0, x1 - x0, self.x_low - reach, self.x_low + self.nx * self.cell + reach)
        self._clip(y0, y1 - y0, self.y_low - reach, self.y_low + self.ny * self.cell + reach)
        sa, sb = self.lo, self.hi
        if not sa <= sb or max(t0, t1) <= 0:
            self.last_x = NAN
            return True
        pieces = cython.cast(
            cython.Py_ssize_t,
            min(cython.cast(cython.double, MOST_PIECES), max(1.0, ceil(length * (sb - sa) / self._step() - 1e-6))),
        )
        px, py, pt = x0 + sa * (x1 - x0), y0 + sa * (y1 - y0), t0 + sa * (t1 - t0)
        for p in range(pieces):
            if self.work > self.most_work:
                return False
            s = sb if p == pieces - 1 else sa + (sb - sa) * (p + 1) / pieces
            qx, qy, qt = x0 + s * (x1 - x0), y0 + s * (y1 - y0), t0 + s * (t1 - t0)
            if s == 1.0:
                qx, qy, qt = x1, y1, t1
            u = sa + (sb - sa) * p / pieces
            opened, floor_t = self._open_at(px, py, pt), self._floor(qx, qy)
            self._begin(length * (s - u), qt - pt)
            self._footprint(qt, floor_t)
            self.goes_on = p < pieces - 1
            self._segment(px, py, pt, qx, qy, qt, 0.0, 0.0)
            self._store(
                mv, u, s, length * (s - u), flat_length * (s - u), wanted * (s - u),
                qt - pt, max(pt, qt), qx, qy, qt, opened, floor_t,
            )  # fmt: skip
            px, py, pt = qx, qy, qt
        return True

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _arc_move(self, mv: cython.Py_ssize_t) -> cython.bint:
        """Sweeps an arc in pieces of chords; False where the bound of work is reached."""
        p: cython.Py_ssize_t = 0
        next_: cython.Py_ssize_t
        many: cython.bint = self._plan_arc(mv)
        turn_row: cython.Py_ssize_t = self.made  # the first row of the turn under way, and of the one before
        row_before: cython.Py_ssize_t = self.made
        swept: cython.Py_ssize_t = 0
        first_row: cython.Py_ssize_t = self.made
        self.round, self.own_ring = True, False
        while p < self.arc_pieces:
            if self.work > self.most_work:
                return False
            if many and p > 0 and p % self.per_turn == 0:
                next_ = self._turns_alike(mv, p, row_before, turn_row)
                if next_ > p:  # the last of them is swept, so that the field is as they leave it
                    self._arc_at(mv, next_ - self.per_turn)
                    for p in range(next_ - self.per_turn, next_):
                        if not self._arc_piece(mv, p, False):
                            return False
                    p = next_
                    turn_row = self.made
                    if p >= self.arc_pieces:
                        break
                row_before, turn_row = turn_row, self.made
                self._under_ring(self.cu[mv], self.cv[mv], self.arc_r0)
                self.own_ring = self.hi <= self.arc_t + CONTACT
            if swept * self.per_piece > MOST_CHORDS or self.made - first_row >= MOST_PIECES - 1:
                self.skipped[mv] = 1
                self.last_x = NAN
                return True
            if not self._arc_piece(mv, p, True):
                return False
            swept += 1
            p += 1
        return True

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _plan_arc(self, mv: cython.Py_ssize_t) -> cython.bint:
        """Sets arc_*: pieces at most a step long, chords within CHORD; none where it is out of reach or too long.

        U, V are its plane's axes, W the third. True for an arc of many turns on one circle, whose turns have the same
        pieces. Turns that sink less than the depth that counts are swept as fewer that sink so much.
        """
        pl: cython.int = self.plane[mv]
        cu: cython.double = self.cu[mv]
        cv: cython.double = self.cv[mv]
        x0: cython.double = self.x0[mv]
        y0: cython.double = self.y0[mv]
        z0: cython.double = self.z0[mv]
        x1: cython.double = self.x1[mv]
        y1: cython.double = self.y1[mv]
        z1: cython.double = self.z1[mv]
        u0: cython.double
        v0: cython.double
        w0: cython.double
        u1: cython.double
        v1: cython.double
        w1: cython.double
        r: cython.double
        length: cython.double
        turns: cython.double
        fewer: cython.double
        chords: cython.double
        pieces: cython.double
        many: cython.bint
        self.arc_pieces = 0
        if pl == 18:
            u0, v0, w0, u1, v1, w1 = z0, x0, y0, z1, x1, y1
        elif pl == 19:
            u0, v0, w0, u1, v1, w1 = y0, z0, x0, y1, z1, x1
        else:
            u0, v0, w0, u1, v1, w1 = x0, y0, z0, x1, y1, z1
        self.arc_r0, self.arc_r1 = hypot(u0 - cu, v0 - cv), hypot(u1 - cu, v1 - cv)
        r = max(self.arc_r0, self.arc_r1)
        if not r < FAR or self._out_of_reach(pl, cu, cv, r, max(self.top - z0, self.top - z1), self.radius + self.cell):
            self.last_x = NAN
            return False
        self.arc_angle, self.arc_turn = atan2(v0 - cv, u0 - cu), self.swept_angle[mv] * PI / 180
        self.arc_w0, self.arc_w1 = w0, w1
        self.arc_flat, self.arc_length = r * fabs(self.arc_turn), hypot(r * fabs(self.arc_turn), w1 - w0)
        turns = fabs(self.arc_turn) / (2 * PI)
        many = pl == 17 and turns >= MANY_TURNS and fabs(self.arc_r0 - self.arc_r1) < 1e-3
        if many:
            fewer = max(1.0, ceil(fabs(w1 - w0) / LEAST_PITCH))
            if fewer < floor(turns):
                turns = fewer + turns - floor(turns)
                self.arc_turn = turns * 2 * PI if self.arc_turn > 0 else -turns * 2 * PI
        length = hypot(r * fabs(self.arc_turn), w1 - w0)
        chords = ceil(fabs(self.arc_turn) / (2 * sqrt(2 * CHORD / max(r, 2 * CHORD))))
        pieces = max(1.0, ceil(length / self._step() - 1e-6))
        chords = max(1.0, max(chords, ceil(length / self._step())))
        if many:
            self.per_turn = cython.cast(cython.Py_ssize_t, min(1e6, max(1.0, ceil(pieces / turns))))
            pieces = ceil(self.per_turn * turns - 1e-6)
            self.per_piece = cython.cast(cython.Py_ssize_t, min(1e6, max(1.0, ceil(chords / pieces))))
            if not pieces < 1e12:
                self.skipped[mv] = 1
                self.last_x = NAN
                return False
        else:
            if not chords <= MOST_CHORDS:
                self.skipped[mv] = 1
                self.last_x = NAN
                return False
            pieces = min(cython.cast(cython.double, MOST_PIECES), pieces)
            self.per_turn = 0
            self.per_piece = cython.cast(cython.Py_ssize_t, ceil(chords / pieces))
        self.arc_pieces = cython.cast(cython.Py_ssize_t, pieces)
        self.arc_x, self.arc_y, self.arc_t = x0, y0, self.top - z0
        return many

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _arc_share(self, p: cython.double) -> cython.double:
        """Share of the arc that lies before its piece p; of many turns all pieces but the last are of one length."""
        if self.per_turn > 0:
            return min(1.0, p / (self.per_turn * fabs(self.arc_turn) / (2 * PI)))
        return p / self.arc_pieces

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _arc_at(self, mv: cython.Py_ssize_t, p: cython.Py_ssize_t) -> cython.void:
        """Goes to the start of piece p of a helix about Z, without sweeping."""
        share: cython.double = self._arc_share(p)
        angle: cython.double = self.arc_angle + self.arc_turn * share
        self.arc_x, self.arc_y = self.cu[mv] + self.arc_r0 * cos(angle), self.cv[mv] + self.arc_r0 * sin(angle)
        self.arc_t = self.top - self.z0[mv] + (self.z0[mv] - self.z1[mv]) * share

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _arc_piece(self, mv: cython.Py_ssize_t, p: cython.Py_ssize_t, stored: cython.bint) -> cython.bint:
        """Sweeps one piece of the arc that was planned; False where the bound of work is reached."""
        pl: cython.int = self.plane[mv]
        cu: cython.double = self.cu[mv]
        cv: cython.double = self.cv[mv]
        first: cython.double = self._arc_share(p)
        last: cython.double = self._arc_share(p + 1)
        fall: cython.double = self.z0[mv] - self.z1[mv] if pl == 17 else 0.0
        angle: cython.double = self.arc_angle + self.arc_turn * last
        st: cython.double = self.arc_t
        travel: cython.double = self.arc_flat * (last - first)
        floor_t: cython.double = 1e30
        opened: cython.bint
        if first >= 1:
            return True
        opened = self._open_at(self.arc_x, self.arc_y, self.arc_t)
        if pl == 17:
            floor_t = self._floor(cu + self.arc_r1 * cos(angle), cv + self.arc_r1 * sin(angle))
        # contact is told by the drop of each chord, lest a gentle helix meets nothing below it
        self._begin(min(self.arc_length * (last - first), self._step()), fall * (last - first) / self.per_piece)
        self._footprint(self.top - self.z0[mv] + fall * last, floor_t if pl == 17 else 0.0)
        if not self._chords(mv, first, last, 0.0):
            return False
        if stored:
            if pl != 17:
                travel = self.arc_swept
            elif 2 * self.arc_r0 < self.resolution and 2 * self.arc_r1 < self.resolution:
                travel = 0.0
            self._store(
                mv, first, last, self.arc_length * (last - first), self.arc_swept, travel, self.arc_t - st,
                self.arc_level, self.arc_x, self.arc_y, self.arc_t, opened, floor_t,
            )  # fmt: skip
        return True

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _chords(
        self, mv: cython.Py_ssize_t, first: cython.double, last: cython.double, beyond: cython.double
    ) -> cython.bint:
        """Sweeps a part of the arc that was planned as `per_piece` chords; False where the bound of work is reached.

        beyond: mm of the same piece behind this part.
        """
        pl: cython.int = self.plane[mv]
        angle: cython.double
        u: cython.double
        v: cython.double
        w: cython.double
        r: cython.double
        s: cython.double
        qx: cython.double
        qy: cython.double
        qt: cython.double
        k: cython.Py_ssize_t
        self.arc_swept, self.arc_level = 0.0, self.arc_t
        for k in range(self.per_piece):
            s = first + (last - first) * (k + 1) / self.per_piece
            angle = self.arc_angle + self.arc_turn * s
            r = self.arc_r0 + (self.arc_r1 - self.arc_r0) * s
            u, v = self.cu[mv] + r * cos(angle), self.cv[mv] + r * sin(angle)
            w = self.arc_w0 + s * (self.arc_w1 - self.arc_w0)
            if pl == 18:
                qx, qy, qt = v, w, self.top - u
            elif pl == 19:
                qx, qy, qt = w, u, self.top - v
            else:
                qx, qy, qt = u, v, self.top - w
            if s >= 1:
                qx, qy, qt = self.x1[mv], self.y1[mv], self.top - self.z1[mv]
            if self.work > self.most_work:
                return False
            self.to_go = beyond
            if pl == 17:
                self.to_go += r * fabs(self.arc_turn) * (last - first) * (self.per_piece - k) / self.per_piece
            self.goes_on = (s < 1 or beyond > 0) and pl == 17
            self._segment(self.arc_x, self.arc_y, self.arc_t, qx, qy, qt, 0.0, 0.0)
            self.arc_swept += hypot(qx - self.arc_x, qy - self.arc_y)
            self.arc_level = max(self.arc_level, qt)
            self.arc_x, self.arc_y, self.arc_t = qx, qy, qt
        return True

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _fine_arcs(self, mv: cython.Py_ssize_t) -> cython.Py_ssize_t:
        """Sweeps fine level arcs from `mv` on, each of them whole, into one piece; returns how many, 0 if this one must
        be swept by itself, -1 where the bound of work is reached."""
        together: cython.int = self._arcs_together(mv, min(self.merged, self.moves - mv))
        n: cython.Py_ssize_t = mv + together - 1
        k: cython.Py_ssize_t
        t: cython.double = self.top - self.z0[mv]
        length: cython.double = 0.0
        left: cython.double
        swept: cython.double = 0.0
        floor_t: cython.double
        if together < 2:
            return 0
        self.round = True
        for k in range(together):
            self.group_open[k] = self._open_at(self.x0[mv + k], self.y0[mv + k], t)
            length += self.group_length[k]
        floor_t = self._floor(self.x1[n], self.y1[n])
        self._begin(length, 0.0)
        self._footprint(t, floor_t)
        left = length
        for k in range(together):
            left -= self.group_length[k]
            self._plan_arc(mv + k)
            self.per_piece *= self.arc_pieces
            if not self._chords(mv + k, 0.0, 1.0, max(left, 0.0)):
                return -1
            swept += self.arc_swept
        if self._store(mv, 0.0, 1.0, length, swept, length, 0.0, t, self.x1[n], self.y1[n], t, False, floor_t):
            self.made -= 1
            self._share_out(mv, together, t)
            self.touched = n
        return together

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _arcs_together(self, at: cython.Py_ssize_t, most: cython.Py_ssize_t) -> cython.int:
        """How many arcs from `at` on (at most `most`) become one piece; sets group_*.

        They are level arcs of one tool in XY of at most half a turn, chained, at one depth below the top and over the
        stock. Together they are as long as the longest piece of fine moves, and lie along one line within ALONG of the
        radius: the field is lowered as by each alone, and only where in the piece the contact is may be off by so much.
        """
        n: cython.int = 0
        k: cython.int
        off: cython.double = ALONG * self.radius
        longest: cython.double = self._longest()
        total: cython.double = 0.0
        turn: cython.double
        r: cython.double
        ux: cython.double
        uy: cython.double
        chord: cython.double
        along: cython.double
        aside: cython.double
        last: cython.double
        q: cython.Py_ssize_t
        good: cython.bint
        if not (self.z0[at] < self.top and self.top - self.z0[at] <= self.flute_length):
            return 1
        while n < most:
            q = at + n
            if self.kind[q] < 2 or self.plane[q] != 17 or self.tool[q] != self.tool[at]:
                break
            if self.z0[q] != self.z0[at] or self.z1[q] != self.z0[at]:
                break
            if n > 0 and (self.x0[q] != self.x1[q - 1] or self.y0[q] != self.y1[q - 1]):
                break
            if not (self.x_low <= self.x1[q] <= self.x_low + self.nx * self.cell):
                break
            if not (self.y_low <= self.y1[q] <= self.y_low + self.ny * self.cell):
                break
            turn = fabs(self.swept_angle[q]) * PI / 180
            r = max(
                hypot(self.x0[q] - self.cu[q], self.y0[q] - self.cv[q]),
                hypot(self.x1[q] - self.cu[q], self.y1[q] - self.cv[q]),
            )
            # false where the centre is not known
            if not (turn <= PI and r * (1 - cos(0.5 * turn)) <= off and total + r * turn <= longest):
                break
            ux, uy = self.x1[q] - self.x0[at], self.y1[q] - self.y0[at]
            chord = sqrt(ux * ux + uy * uy)
            if chord < 1e-6:
                break
            ux, uy = ux / chord, uy / chord
            good, last = True, 0.0
            for k in range(n):
                along = ux * (self.x1[at + k] - self.x0[at]) + uy * (self.y1[at + k] - self.y0[at])
                aside = ux * (self.y1[at + k] - self.y0[at]) - uy * (self.x1[at + k] - self.x0[at])
                good = good and fabs(aside) <= off and last < along < chord
                last = along
            if not good:
                break
            self.group_flat[n] = self.group_length[n] = r * turn
            self.group_drop[n] = 0.0
            total += r * turn
            n += 1
        self.work += n * (n + 16)
        return max(n, 1)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _turns_alike(
        self, mv: cython.Py_ssize_t, p: cython.Py_ssize_t, row_before: cython.Py_ssize_t, turn_row: cython.Py_ssize_t
    ) -> cython.Py_ssize_t:
        """The piece up to which the turns of a helix go on as the one just swept: those between need no sweeping.

        row_before, turn_row: the first rows of the last two turns. Turns that take off the same twice are alike if
        nothing under the ring was cut deeper than they are when the last began; they get one row. Turns that meet
        nothing get none: on the level and rising none ever will, going down none above the highest place under it.
        """
        left: cython.Py_ssize_t = (self.arc_pieces - p) // self.per_turn  # whole turns
        pitch: cython.double = (self.z0[mv] - self.z1[mv]) * (self._arc_share(p + self.per_turn) - self._arc_share(p))
        before: cython.double = 0.0
        now: cython.double = 0.0
        k: cython.Py_ssize_t
        if p < 2 * self.per_turn or left < 2:
            return p
        for k in range(row_before, turn_row):
            before += self.out[5, k]
        for k in range(turn_row, self.made):
            now += self.out[5, k]
        if turn_row == self.made:
            if pitch > 1e-12:
                self._under_ring(self.cu[mv], self.cv[mv], self.arc_r0)
                now = floor((self.lo - self.arc_t) / pitch) - 1
                left = cython.cast(cython.Py_ssize_t, min(cython.cast(cython.double, left), max(0.0, now)))
            return p + left * self.per_turn
        if turn_row - row_before != self.made - turn_row or fabs(now - before) > ALIKE * now or self.floored:
            return p
        if not self.own_ring:
            return p
        self._store_turns(mv, p, left, pitch, turn_row)
        return p + left * self.per_turn

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _store_turns(
        self, mv: cython.Py_ssize_t, p: cython.Py_ssize_t, turns: cython.Py_ssize_t, pitch: cython.double,
        turn_row: cython.Py_ssize_t,
    ) -> cython.void:  # fmt: skip
        """Writes one row for so many turns like the one whose rows begin at turn_row: its sums times their number, and
        the contact of the piece that takes off the most."""
        at: cython.Py_ssize_t = self.made
        k: cython.Py_ssize_t
        c: cython.int
        best: cython.Py_ssize_t = turn_row
        length: cython.double = 0.0
        travel: cython.double = 0.0
        removed: cython.double = 0.0
        solid: cython.double = 0.0
        touch: cython.uchar = 0
        for k in range(turn_row, at):
            length += self.out[2, k]
            travel += self.out[3, k]
            removed += self.out[5, k]
            solid += self.out[13, k]
            touch |= self.out_bits[0, k]
            if self.out[5, k] > self.out[5, best]:
                best = k
        for c in range(14):
            self.out[c, at] = self.out[c, best]
        self.out[0, at], self.out[1, at] = self._arc_share(p), self._arc_share(p + turns * self.per_turn)
        self.out[2, at], self.out[3, at], self.out[4, at] = turns * length, turns * travel, turns * pitch
        self.out[5, at], self.out[13, at] = turns * removed, turns * solid
        self.out[12, at] = self.arc_t + max(0.0, turns * pitch)
        if self.arc_t + turns * pitch > self.flute_length:
            self.out[11, at] = self._shank(self.arc_x, self.arc_y, self.arc_t + turns * pitch)
            if self.out[11, at] > 0:
                touch |= 4
        self.out_bits[0, at], self.out_bits[1, at], self.out_bits[2, at] = touch, self.out_bits[1, best], 0
        self.out_move[at], self.out_profile[at] = cython.cast(cython.int, mv), self.out_profile[best]
        self.made = at + 1

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _under_ring(self, x: cython.double, y: cython.double, r: cython.double) -> cython.void:
        """Sets lo and hi to the highest and the lowest place, as depths, of the surface under a tool on a circle."""
        far: cython.double = r + self.radius + self.cell
        near: cython.double = max(0.0, r - self.radius - self.cell)
        dx: cython.double
        dy: cython.double
        d: cython.double
        i: cython.Py_ssize_t
        j: cython.Py_ssize_t
        i_first: cython.Py_ssize_t = self._index(x - far, True)
        i_end: cython.Py_ssize_t = self._index(x + far, False)
        self.lo, self.hi = 1e30, 0.0
        for j in range(self.ny):
            dy = self.y_low + (j + 0.5) * self.cell - y
            if fabs(dy) > far:
                continue
            self.work += max(0, i_end - i_first)
            for i in range(i_first, i_end):
                dx = self.x_low + (i + 0.5) * self.cell - x
                d = dx * dx + dy * dy
                if near * near <= d <= far * far:
                    d = self.cut[j, i]
                    self.hi = max(self.hi, d)
                    if self.share[j, i] > 0:
                        self.lo = min(self.lo, cython.cast(cython.double, self.other[j, i]))
                        self.hi = max(self.hi, cython.cast(cython.double, self.other[j, i]))
                    self.lo = min(self.lo, d)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _out_of_reach(
        self, pl: cython.int, cu: cython.double, cv: cython.double, r: cython.double, deepest: cython.double,
        reach: cython.double,
    ) -> cython.bint:  # fmt: skip
        """Whether an arc stays above the stock or clear of its outline altogether."""
        if pl != 17:
            return self.top - ((cu if pl == 18 else cv) - r) <= 0
        return (
            deepest <= 0
            or cu - r > self.x_low + self.nx * self.cell + reach
            or cu + r < self.x_low - reach
            or cv - r > self.y_low + self.ny * self.cell + reach
            or cv + r < self.y_low - reach
        )

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _clip(
        self, start: cython.double, change: cython.double, low: cython.double, high: cython.double
    ) -> cython.void:
        """Narrows lo..hi to where start + s change lies within low..high."""
        p: cython.double
        q: cython.double
        if change == 0:
            if start < low or start > high:
                self.lo, self.hi = 1.0, 0.0
            return
        p, q = (low - start) / change, (high - start) / change
        if p > q:
            p, q = q, p
        self.lo, self.hi = max(self.lo, p), min(self.hi, q)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _store(
        self,
        move: cython.Py_ssize_t,
        s0: cython.double,
        s1: cython.double,
        length: cython.double,
        swept: cython.double,
        travel: cython.double,
        drop: cython.double,
        depth: cython.double,
        x: cython.double,
        y: cython.double,
        t: cython.double,
        opened: cython.bint,
        floor_t: cython.double,
    ) -> cython.bint:
        """Writes the piece's row; False where nothing was touched."""
        at: cython.Py_ssize_t = self.made
        k: cython.int
        c2: cython.double = self.cell * self.cell
        ap: cython.double = 0.0
        under: cython.double = 0.0
        shank: cython.double = 0.0
        disc: cython.double = 0.0
        most: cython.double
        reach: cython.double = self.radius
        centre: cython.bint = False
        touch: cython.int = 0
        if t > self.flute_length:
            shank = self._shank(x, y, t)
        self.work += WORK_PIECE + WORK_MET * self.met * cython.cast(cython.double, self.met_step)
        for k in range(LANES):
            self.removed += self.lane_volume[k]
            self.cells += self.lane_cells[k]
        if self.removed * c2 < CONTACT * CONTACT * hypot(swept, drop):
            self.cells = 0.0
        if self.cells <= 0 and shank <= 0:
            return False
        self.profiles.clear()
        if self.cells > 0:
            if drop > 1e-6:
                disc = PI * self.foot_2 / c2 * max(1.0, self.discs)
                under = min(1.0, self.under / max(disc, 1.0))
                # a tenth of the middle of each disc
                most = min(disc, max(1.0, self.discs) * 0.36 * PI * self.radius * self.radius / c2)
                centre = self.centre > 0.1 * most
            if self.shape == FLAT:
                self._lay_out_flat(swept, drop)
            else:
                reach = self._lay_out_rounded(swept, drop, disc)
            ap = self.profiles.ap
            if swept < 1e-6:
                self.profiles.ae, self.profiles.angle, self.profiles.climb = 2 * sqrt(self.foot_2) * under, 0.0, 0.5
            touch = (1 if under > 0 else 0) + (2 if self.profiles.ae > 0 and swept >= 1e-6 else 0)
        else:
            self.removed = 0.0
        if shank > 0:
            touch += 4
        self.out[0, at], self.out[1, at], self.out[2, at], self.out[3, at] = s0, s1, length, travel
        self.out[4, at], self.out[5, at], self.out[6, at] = drop, self.removed * c2, ap
        self.out[7, at], self.out[8, at], self.out[9, at] = self.profiles.ae, self.profiles.angle, self.profiles.climb
        self.out[10, at], self.out[11, at], self.out[12, at] = under, shank, depth
        # solid gone through under the middle of the tip; where the middle hangs over a hole, under the rest of it
        self.out[13, at] = min(drop, ap) if floor_t >= t else min(drop, min(ap, t - max(floor_t, 0.0)))
        self.out_bits[0, at], self.out_bits[1, at], self.out_bits[2, at] = touch, centre, opened
        self.out_move[at] = cython.cast(cython.int, move)
        self.out_profile[at] = cython.cast(
            cython.int, self.profiles.write(reach, disc, under, self.under_area, self.under_high)
        )
        self.made = at + 1
        self.touched = move
        return True

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _lay_out_flat(self, swept: cython.double, drop: cython.double) -> cython.void:
        k: cython.int
        most: cython.double = 0.0
        if swept >= 1e-6 and self.met > 0:
            self.profiles.flat(self.met_v, self.met_h, self.met_area, self.met, self.radius, self.cell, swept)
        if drop > 1e-6:  # as deep as what the tip takes off, if the rim meets less
            for k in range(LEVELS):
                if self.under_area[k] > 0:
                    most = self.under_high[k] / self.under_area[k]
            self.profiles.ap = max(self.profiles.ap, most * drop)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _lay_out_rounded(
        self, swept: cython.double, drop: cython.double, disc: cython.double
    ) -> cython.double:
        """Returns the tool's radius at the top of the contact."""
        b: cython.int
        most: cython.double = self.most if self.most > 0 else self.most_of_slivers
        foot: cython.double = 0.0 if self.shape == BALL else max(0.0, min(self.foot, most))
        reach: cython.double = self._radius_at(most)
        high: cython.double
        r: cython.double
        if self.shape == BALL and disc > 0:
            self.under_area[LEVELS - 1] = self.under_high[LEVELS - 1] = self.under
        self.profiles.ap = most - foot
        if swept < 1e-6 or most <= 0:
            return reach
        self.profiles.highest(
            self.met_v, self.met_h, self.met_area, self.met, max(reach, 0.5 * self.cell), self.cell, swept
        )
        for b in range(1, self.profiles.bins + 1):
            self.profiles.local[b] = self._radius_at(self.profiles.high[0][b])
        self.profiles.rounded(foot, most)
        r = self._radius_at(self.profiles.ap)
        self.profiles.climb = min(1.0, max(0.0, self.right / self.removed))
        # where both sides cut alike the material is level, and the mean depth along the piece gives the section
        high = self.profiles.ap
        if fabs(self.profiles.climb - 0.5) < 0.15 and high > fabs(drop):
            high -= 0.5 * fabs(drop)
        self.profiles.ae = min(2 * r, self._stepover(self.removed * self.cell * self.cell / swept, high))
        self.profiles.angle = 57.29577951308232 * acos(max(-1.0, 1 - self.profiles.ae / r)) if r > 0 else 0.0
        return reach
