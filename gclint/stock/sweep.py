"""The sweep: lowers the height field under a moving tool and measures what each piece of path meets.

The field is seen from above. `cut` holds for every cell the depth of the surface below the stock's top, taken at the
cell's centre. A vertical wall seldom runs along cell borders, so a cell through which a wall runs also keeps `share`
(0..0.5, the smaller of its two parts, 0 = no wall) and `other` (the depth of that part). Walls are therefore known to a
small fraction of a cell, and a skim thinner than a cell is seen.

Everything is in depths: t = top - z, positive downward. A tool is its profile z(r): a flat disc of radius `flat`, a
corner torus of radius `torus`, a cone of slope `cone` from `join_r`, `join_z` on, and a cylinder of the tool's radius.
"""

import cython

if not cython.compiled:
    raise ImportError("gclint.stock.sweep runs only as a compiled kernel")

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
EVEN = cython.declare(cython.double, 0.25)  # of the mean height; what scatters less is of one height
CONTACT_LEAST = cython.declare(cython.double, 1e-4)  # mm; the same for the finest steps: above the noise of float32
MOST_MERGED = cython.declare(cython.int, 32)  # moves swept as one
# Of the radius, the longest way of fine moves swept as one; from 0.65 on a small ball on waves removes 0.5 % too much.
TOGETHER = cython.declare(cython.double, 0.6)
SAGITTA = cython.declare(cython.double, 0.003)  # mm between an arc and its chords: well under the contact depth
MOST_PIECES = cython.declare(cython.int, 32768)  # of one move
MOST_CHORDS = cython.declare(cython.int, 200000)  # of one arc
FAR = cython.declare(cython.double, 1e7)  # mm; beyond it a position is not believed

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
    t0: cython.double  # depth at a = 0
    slope: cython.double  # growth of depth along a (of a ball: in the middle)
    # a ball's path may be bent downward: its depth is t_mid + slope u + bend u^2 at u from the middle, a = mid
    mid: cython.double
    t_mid: cython.double
    bend: cython.double
    lean: cython.double  # sine of the angle below level, in the middle
    turn: cython.double  # growth of `lean` along the path
    going_down: cython.bint
    end_a: cython.double
    # the end of the piece before, so that a chained piece need not sweep its start again
    last_x: cython.double
    last_y: cython.double
    last_t: cython.double
    scanned: cython.Py_ssize_t  # moves whose `before` is known
    merged: cython.int  # at most so many moves are swept as one
    touched: cython.Py_ssize_t  # the move that last had a piece
    made: cython.Py_ssize_t  # pieces written by this run
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
    ap: cython.double  # of the cells summed by _ball
    met: cython.double  # of the others: depth of the highest material met, and of the deepest cut
    met_by_slivers: cython.double  # the same for cells of which next to nothing was cut
    area: cython.double  # newly cut, in cells, and the sum of its height's squares
    squares: cython.double
    deepest: cython.double
    left: cython.double
    left_moment: cython.double
    right: cython.double
    right_moment: cython.double
    under: cython.double
    centre: cython.double

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
        if row_depth.shape[0] < self.nx:
            raise ValueError("the row buffer is shorter than a row")
        self.row_depth = row_depth
        self.floor, self.floored = floor, floor.shape == cut.shape
        self.merged = max(1, min(MOST_MERGED, merged))
        self.x_low, self.y_low, self.cell, self.top = x_low, y_low, cell, top
        self.per_cell = 1 / cell
        self.walls, self.round = bool(share.any()), False
        self.work, self.scanned, self.touched = 0.0, 0, -2
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
    @cython.exceptval(check=False)
    def _count(
        self,
        a: cython.double,
        v: cython.double,
        old: cython.double,
        depth: cython.double,
        volume: cython.double,
        area: cython.double,
    ) -> cython.void:
        """Adds one cell in contact to the piece's sums; a along, v left of the path; area: its share newly cut."""
        y: cython.double = -v
        right: cython.double
        d2: cython.double
        r2: cython.double = self.radius * self.radius
        self.cells += 1
        self.removed += volume
        right = min(1.0, max(0.0, 0.5 + y * self.per_cell))
        # the mean height of what was cut here: two laps along one wall differ by a rounding, and the sliver left
        # between them, as tall as the wall, is no depth of cut unless nothing else is met
        if area >= SLIVER:
            if depth - volume / area < self.met:
                self.met = depth - volume / area
        elif old < self.met_by_slivers:
            self.met_by_slivers = old
        self.area += area
        self.squares += volume * volume / area
        if self.shape != FLAT:
            self.right += right * volume
            if fabs(v) < 0.71 * self.cell and -self.cell < a < self.end_a + self.cell:
                # the tip itself passes within this cell, deeper than at the cell's centre
                depth = max(depth, self.t0 + self.slope * min(max(a, self.sa), self.sb))
        if depth > self.deepest:
            self.deepest = depth
        if self.going_down:
            d2 = (a - self.end_a) * (a - self.end_a) + v * v
            if d2 < r2:
                self.under += area
                if d2 < 0.36 * r2:  # 0.3 D
                    self.centre += area
        if self.shape == FLAT:
            if self.going_down:  # only what lies ahead of the disc at the start is cut by its side
                area *= min(1.0, max(0.0, 0.5 + (sqrt(a * a + v * v) - self.radius) / self.cell))
            right *= area
            self.right += right
            self.right_moment += right * max(y, 0.0)
            self.left += area - right
            self.left_moment += (area - right) * max(-y, 0.0)

    # Cells of a row are reached through pointers: j and the range come from _rows and _span, which clamp both.
    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _take(
        self, j: cython.Py_ssize_t, first: cython.Py_ssize_t, end: cython.Py_ssize_t, a: cython.double, v: cython.double
    ) -> cython.void:
        """Lowers whole cells of one row to row_depth; a, v: place of cell `first` relative to the segment."""
        n: cython.Py_ssize_t = end - first
        i: cython.Py_ssize_t
        cut: cython.p_float = cython.address(self.cut[j, first])
        share: cython.p_float = cython.address(self.share[j, first])
        other: cython.p_float = cython.address(self.other[j, first])
        depth: cython.p_float = cython.address(self.row_depth[0])
        walls: cython.bint = self.walls
        least: cython.float = self.least
        old: cython.float
        d: cython.float
        low: cython.float
        m: cython.float
        volume: cython.double
        area: cython.double
        da: cython.double = self.ux * self.cell
        dv: cython.double = -self.uy * self.cell
        for i in range(n):
            d = depth[i]
            old = cut[i]
            low = d - old
            if low > 0:
                cut[i] = d
                volume = low
                area = 1.0
                if walls and share[i] > 0:
                    m = share[i]
                    volume = low * (1 - m) + m * max(0.0, d - other[i])
                    area = (1 - m if low > least else 0.0) + (m if d - other[i] > least else 0.0)
                    if other[i] <= d:
                        if other[i] < old:
                            old = other[i]
                        share[i] = 0
                if low > least or (volume > least and area > self.wall_least):
                    self._count(a + i * da, v + i * dv, old, d, volume, area)
            elif walls and share[i] > 0 and other[i] < d:
                m = share[i]
                low = d - other[i]
                old = other[i]
                other[i] = d
                if d >= cut[i] - 1e-5:
                    share[i] = 0
                if low > least and m > self.wall_least:
                    self._count(a + i * da, v + i * dv, old, d, m * low, m)

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
        moved: cython.float = 0
        volume: cython.float = 0
        lost: cython.float
        old: cython.float = main
        if cover >= 0.5:
            if m == 0:
                if d > main:
                    moved, volume = cover, cover * (d - main)
                    self.cut[j, i] = d
                    self.share[j, i], self.other[j, i] = bare, main
            elif o < main:  # a part still stands above the floor
                lost = max(0, m - bare)
                if lost > 0 and d > o:
                    moved, volume, old = lost, lost * (d - o), o
                    if d >= main - 1e-5:
                        self.share[j, i] = min(m, bare)
                    else:
                        self.other[j, i] = d
                if d > main:
                    moved += cover - lost
                    volume += (cover - lost) * (d - main)
                    self.cut[j, i] = d
                    if self.share[j, i] > bare:
                        self.share[j, i] = bare
            elif d > main:  # the wall had come near from this side
                moved, volume = cover - m, (cover - m) * (d - main)
                if d > o:
                    moved += m
                    volume += m * (d - o)
                # rising past a wall leaves the near part a little deeper: one depth for both, lest it be cut again
                self.cut[j, i] = o if d < o and o - d < 0.03 else d
                self.share[j, i], self.other[j, i] = bare, main
        elif d > main:
            if m == 0 or o < main:
                moved, volume = cover, cover * (d - main)
                self.share[j, i], self.other[j, i] = cover, d
            else:
                if cover > m:
                    moved, volume = cover - m, (cover - m) * (d - main)
                    self.share[j, i] = cover
                if d > o:  # the near part goes down as a whole
                    moved += m
                    volume += m * (d - o)
                    if cover <= m:
                        old = o
                    self.other[j, i] = d
        if volume > 0:
            self.walls = True
            if moved > self.wall_least and volume > self.least * moved:
                self._count(a, v, old, d, volume, moved)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _cover(self, dx: cython.double, dy: cython.double) -> cython.double:
        """Share of the cell at (dx, dy) from the axis that lies within the tool's radius, the rim taken as straight."""
        r: cython.double = sqrt(dx * dx + dy * dy)
        s: cython.double = (r - self.radius) * self.per_cell
        wide: cython.double = max(fabs(dx), fabs(dy)) / max(r, 1e-12)
        thin: cython.double = min(fabs(dx), fabs(dy)) / max(r, 1e-12)
        e: cython.double
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
        """Depth reached at one place near the rim by the segment (flat tools exactly, others at their rim)."""
        h: cython.double
        s: cython.double
        if self.slope == 0:
            return self.t0 - self.rim
        h = sqrt(max(0.0, self.radius * self.radius - v * v))
        s = a + h if self.slope > 0 else a - h
        s = min(max(s, self.sa), self.sb)
        return self.t0 + self.slope * s - self.rim

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _fill(self, n: cython.Py_ssize_t, a0: cython.double, v0: cython.double) -> cython.void:
        """row_depth: depth the segment reaches at n cells from (a0, v0) on."""
        depth: cython.p_float = cython.address(self.row_depth[0])
        i: cython.int  # 32 bits, which the processor turns into floats four at a time
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
        base: cython.float
        lean: cython.float
        turn: cython.float
        bend: cython.float
        mid: cython.float = self.mid
        k: cython.float
        dist: cython.double
        x: cython.double
        if self.shape == FLAT:
            if slope == 0:
                for i in range(m):
                    depth[i] = t
            else:
                for i in range(m):
                    aa = a + i * da
                    vv = v + i * dv
                    q = r2 - vv * vv
                    q = q if q > 0 else 0
                    q = sqrtf(q)
                    u = aa + q if slope > 0 else aa - q
                    u = u if u > sa else sa
                    u = u if u < sb else sb
                    depth[i] = t + slope * u
        elif self.shape == BALL:
            # the place u of the path, from its middle, at which the tool cuts the cell: see _ball
            base = self.t_mid - self.radius
            lean, turn, bend = self.lean, self.turn, self.bend
            sa, sb = self.sa - self.mid, self.sb - self.mid
            for i in range(m):
                aa = (a - mid) + i * da
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
        elif self.shape == CONE:
            # t0 + slope (a + u) - cone sqrt(v^2 + u^2); best at u = slope |v| / sqrt(cone^2 - slope^2)
            k = self.cone
            if fabs(self.slope) < self.cone:
                lean = self.slope / sqrt(self.cone * self.cone - self.slope * self.slope)
            else:
                lean = 1e6 if self.slope > 0 else -1e6
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
        else:
            for i in range(m):
                x = a0 + i * da
                dist = v0 + i * dv
                x = x - min(max(x, self.sa), self.sb)
                depth[i] = t - self._profile(sqrt(dist * dist + x * x))

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
        sf: cython.Py_ssize_t
        se: cython.Py_ssize_t
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
        if self.shape == BALL and not self.round and inner > 0:
            self._ball(inner, outer if wall else 0.0, j_first, j_end)
            return
        for j in range(j_first, j_end):
            dy = self.y_low + (j + 0.5) * self.cell - self.oy
            if inner > 0 and self._span(dy, inner, cython.address(f), cython.address(e)):
                sf, se = e, e
                if skip_start and fabs(dy) < inner:
                    lo = sqrt(inner * inner - dy * dy)
                    sf = self._index(self.ox - lo, True)
                    se = self._index(self.ox + lo, False)
                    if se <= sf:
                        sf, se = e, e
                self._part(j, f, min(e, max(f, sf)), dy)
                self._part(j, max(f, min(e, se)), e, dy)
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
        self._take(j, f, e, a, v)

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

        The tip runs on p(u) = t_mid + slope u + bend u^2, u from the path's middle. The ball is lowest over a cell
        where u - a = k lean(u), k^2 = r^2 - v^2; lean grows as lean + turn u, and 1 / (1 - turn k) is taken as the
        first three terms of its series. An error of u moves the depth by its square only.

        The processor does four cells at a time where a loop has neither branches nor a sum across cells: so each sum
        is kept by the cell's place in its block until the end.
        """
        cut: cython.p_float
        share: cython.p_int
        deep = cython.declare(cython.float[64])
        tip = cython.declare(cython.float[64])
        low = cython.declare(cython.float[64])
        volume = cython.declare(cython.float[64])
        right = cython.declare(cython.float[64])
        ap = cython.declare(cython.float[64])
        under = cython.declare(cython.float[64])
        centre = cython.declare(cython.float[64])
        i: cython.int
        m: cython.int
        n: cython.int
        bits: cython.int
        j: cython.Py_ssize_t
        b: cython.Py_ssize_t
        f: cython.Py_ssize_t = 0
        e: cython.Py_ssize_t = 0
        of: cython.Py_ssize_t = 0
        oe: cython.Py_ssize_t = 0
        dx: cython.double
        dy: cython.double
        da: cython.float = self.ux * self.cell
        dv: cython.float = -self.uy * self.cell
        a: cython.float
        v: cython.float
        aa: cython.float
        vv: cython.float
        q: cython.float
        k: cython.float
        u: cython.float
        t: cython.float
        old: cython.float
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
        middle: cython.float = 0.36 * r2  # 0.3 D
        least: cython.float = self.least
        twice: cython.float = 2 * self.per_cell
        end_a: cython.float = self.end_a - self.mid
        one: cython.float = 1  # written out, 1 would be a double
        two: cython.float = 2
        rest: cython.float
        more: cython.float
        for i in range(64):
            volume[i] = right[i] = ap[i] = under[i] = centre[i] = 0
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
            b = f
            while b < e:
                m = cython.cast(cython.int, min(64, e - b))
                cut = cython.address(self.cut[j, b])
                dx = self.x_low + (b + 0.5) * self.cell - self.ox
                a = self.ux * dx + self.uy * dy - self.mid
                v = self.ux * dy - self.uy * dx
                if self.floored:
                    self._fill(m, a + self.mid, v)
                    self._stop_at_floor(j, b, m)
                    self._take(j, b, b + m, a + self.mid, v)
                    b += m
                    continue
                if self.walls:
                    share = cython.cast(cython.p_int, cython.address(self.share[j, b]))
                    bits = 0
                    for i in range(m):
                        bits |= share[i]
                    if bits != 0 and m > 8:
                        m = 8
                        bits = 0
                        for i in range(m):
                            bits |= share[i]
                    if bits != 0:
                        self._fill(m, a + self.mid, v)
                        self._take(j, b, b + m, a + self.mid, v)
                        b += m
                        continue
                n = (m + 3) // 4 * 4  # the cells behind the last are left as they are
                if b + n > self.nx:
                    n = m
                bits = 0  # set where a cell is lowered: e is how far it lies below the ball's centre, e^2 < q if at all
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
                else:
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
                if bits == 0:
                    b += m
                    continue
                for i in range(n):
                    deep[i] = tip[i] - r + sqrtf(deep[i])
                for i in range(m, n):
                    deep[i] = 0
                for i in range(n):
                    old = cut[i]
                    q = deep[i]
                    x = q - old
                    t = tip[i] - old
                    cut[i] = q if q > old else old
                    x = x if x > least else 0
                    low[i] = x
                    u = ap[i]
                    t = t if t > u else u
                    ap[i] = t if x > 0 else u
                    volume[i] += x
                    vv = (v + i * dv) * twice  # the share right of the path goes from 1 to 0 within its cell
                    right[i] += x * (fabsf(one - vv) - fabsf(one + vv) + two)
                if self.going_down:
                    a -= end_a
                    for i in range(n):
                        aa = a + i * da
                        vv = v + i * dv
                        q = aa * aa + vv * vv
                        x = one if low[i] > 0 else 0
                        under[i] += x if q < r2 else 0
                        centre[i] += x if q < middle else 0
                b += m
        for i in range(64):
            if volume[i] > 0:
                self.cells += 1
                self.removed += volume[i]
                self.right += 0.25 * right[i]
                self.ap = max(self.ap, ap[i])
                self.under += under[i]
                self.centre += centre[i]

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
                continue
            dx = self.x_low + (i + 0.5) * self.cell - self.ox
            a = self.ux * dx + self.uy * dy
            v = self.ux * dy - self.uy * dx
            s = min(max(a, self.sa), self.sb)
            cover = self._cover(dx - s * self.ux, dy - s * self.uy)
            if cover < 1e-6:
                continue
            if self.shape == FLAT or cover < 0.5:
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
                self._take(j, i, i + 1, a, v)
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

        bend: of a ball's path, 1/mm; bulge: how much deeper than its ends the path may go, mm.
        """
        length: cython.double = hypot(x1 - x0, y1 - y0)
        drop: cython.double = t1 - t0
        chained: cython.bint = x0 == self.last_x and y0 == self.last_y and t0 == self.last_t
        deepest: cython.double = max(t0, t1) + bulge
        share: cython.double
        n: cython.int
        k: cython.int
        discs: cython.int
        level: cython.int
        lean: cython.double
        self.last_x, self.last_y, self.last_t = x1, y1, t1
        if deepest <= 0:
            return
        self.ox, self.oy = x0, y0
        self.going_down = drop > 1e-6
        if length < 1e-7:
            # straight down: the disc at the end has it all; straight up: the start had it already
            if chained and drop <= 0:
                return
            self.ux, self.uy, self.sa, self.sb, self.end_a = 1.0, 0.0, 0.0, 0.0, 0.0
            self.per_ux, self.per_uy = 1.0, 0.0
            self.a_min, self.t0, self.slope = -1e300, deepest, 0.0
            self.mid, self.t_mid, self.bend, self.lean, self.turn = 0.0, deepest, 0.0, 0.0, 0.0
            self._rows(deepest, False)
            return
        self.ux, self.uy = (x1 - x0) / length, (y1 - y0) / length
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
        if chained and fabs(bend) * self.radius < 1:
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
        if self.shape != OTHER:
            self._rows(deepest, chained and self.shape == FLAT and not self.going_down)
            return
        if self.slope == 0:
            self._rows(deepest, False)
            return
        # No closed form: level steps of at most 0.006 mm, or single places as dense as the corner's curvature asks.
        if self.slope > 0:
            self.a_min = -1e300
        level = cython.cast(cython.int, min(1e6, ceil(fabs(drop) / 0.006)))
        # the corner's curvature along the path grows with the slope at which it cuts
        lean = sqrt(0.024 * self.torus / (steep * steep * steep))
        discs = cython.cast(cython.int, min(1e6, ceil(length / max(0.01, lean)))) + 1
        n = min(level, discs, 64)
        for k in range(n):
            if level <= discs:
                self.sa, self.sb = length * k / n, length * (k + 1) / n
            else:
                share = cython.cast(cython.double, k) / max(1, n - 1) if n > 1 else 1.0
                self.sa = self.sb = length * share
            self.t0 = t0 + drop * 0.5 * (self.sa + self.sb) / length
            self.slope, self.mid, self.t_mid = 0.0, 0.0, self.t0
            if self.t0 > 0:
                self._rows(self.t0, False)

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
    def _begin(self, length: cython.double, drop: cython.double) -> cython.void:
        fine: cython.double = min(1.0, length / (2 * self.cell))
        self.least = max(CONTACT_LEAST, CONTACT * fine)
        if drop > 1e-6:
            self.least = max(CONTACT_LEAST, min(self.least, 0.25 * drop))
        self.wall_least = max(CONTACT_LEAST, CONTACT * fine) / self.cell
        self.cells = self.removed = self.ap = self.deepest = 0.0
        self.met = self.met_by_slivers = 1e300
        self.area = self.squares = 0.0
        self.left = self.left_moment = self.right = self.right_moment = self.under = self.centre = 0.0

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
    def _arc(self, width: cython.double, mean: cython.double, r: cython.double) -> cython.double:
        """Engagement angle (radians) of a contact `width` wide about `mean`, on one side of the axis.

        An end within a cell of the rim or of the axis is taken to lie there.
        """
        lo: cython.double = mean - 0.5 * width
        hi: cython.double = mean + 0.5 * width
        if width <= 0 or r <= 0:
            return 0.0
        if hi > r - self.cell:
            lo, hi = r - width, r
        elif lo < self.cell:
            lo, hi = 0.0, width
        return asin(min(1.0, hi / r)) - asin(min(1.0, max(0.0, lo / r)))

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _together(
        self,
        most: cython.Py_ssize_t,
        kind: cython.p_const_uchar,
        tool: cython.p_const_int,
        x0: cython.p_const_double,
        y0: cython.p_const_double,
        z0: cython.p_const_double,
        x1: cython.p_const_double,
        y1: cython.p_const_double,
        z1: cython.p_const_double,
        longest: cython.double,
        resolution: cython.double,
    ) -> cython.int:
        """How many moves from this one on (at most `most`) can be swept as one segment; sets group_*.

        They are lines of one tool, chained, all below the top and over the stock, at most `longest` together. They
        leave the segment by at most SAGITTA, a ball's segment being bent as they are. None goes down steeper than 45
        degrees, and those that go down are not mixed with those that rise. Flat tools and
        profiles without a closed formula are merged in level motion only.
        """
        along = cython.declare(cython.double[33])
        off = cython.declare(cython.double[33])
        n: cython.int = 0
        k: cython.int
        level: cython.bint = self.shape == FLAT or self.shape == OTHER
        way: cython.int = 0
        mine: cython.int
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
            if flat < 1e-6 or dt > flat or (level and fabs(dt) > 1e-6):
                break
            mine = 1 if dt > 2 * resolution else -1 if dt < -2 * resolution else 0
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
                bend = top / below if self.shape == BALL and n > 1 else 0.0
                good = good and 2 * fabs(bend) * self.radius <= 0.3 and fabs(bend) * widest * widest <= SAGITTA
                for k in range(n):
                    good = good and fabs(off[k] - bend * along[k] * (along[k] - chord)) <= SAGITTA
                if not good:
                    break
                self.group_bend = bend
            total += sqrt(flat * flat + dt * dt)
            self.group_flat[n], self.group_drop[n], self.group_length[n] = flat, dt, sqrt(flat * flat + dt * dt)
            way = mine if way == 0 else way
            n += 1
        return max(n, 1)

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _share_out(
        self, at: cython.Py_ssize_t, n: cython.int, depth: cython.double, resolution: cython.double,
        out: cython.p_float, room: cython.Py_ssize_t, bits: cython.p_uchar, bits_room: cython.Py_ssize_t,
    ) -> cython.void:  # fmt: skip
        """Gives each of n moves swept as one its row, from the row of all at `at`: volume and solid by their shares.

        depth: of the tip at the start of the first move, mm.
        """
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
        for k in range(n):
            length += self.group_length[k]
            drop += max(0.0, self.group_drop[k])
        for k in range(n):
            down = self.group_drop[k] > 1e-6
            out[at], out[room + at] = 0.0, 1.0
            out[2 * room + at] = self.group_length[k]
            out[3 * room + at] = self.group_flat[k] if self.group_flat[k] >= resolution else 0.0
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
            depth += self.group_drop[k]
            at += 1

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(check=False)
    def _load(self, row: cython.const[cython.double][::1]) -> cython.void:
        """Takes a tool: TOOL_COLUMNS in order, mm; shape 0 flat, 1 ball, 2 pointed cone, 3 any other profile."""
        self.radius, self.flat, self.torus, self.join_r = row[0], row[1], row[2], row[3]
        self.join_z, self.cone, self.rim, self.shape = row[4], row[5], row[6], cython.cast(cython.int, row[7])
        self.flute_length, self.shank_radius = row[8], row[9]
        self.last_x = NAN

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
        out_bits: cython.uchar[:, ::1],
        skipped: cython.uchar[::1],
        before: cython.float[::1],
    ):
        """Sweeps moves from row `first` on, as far as `out` surely holds their pieces and `most_work` cells go.

        tool: row of `tools`, -1 = not swept. out: [PIECE_COLUMNS, rows]; out_bits: [touch, centre, open_start; rows].
        skipped[move] = 1 where a move was too much for the bounds (an arc of too many turns).
        before[move]: see entries.py; written for moves that go down.
        Returns (next move, pieces written).
        """
        room: cython.Py_ssize_t = out.shape[1]
        if out.shape[0] < 14 or out_move.shape[0] < room or out_bits.shape[1] < room or out_bits.shape[0] < 3:
            raise ValueError("the output tables do not fit each other")
        with cython.nogil:
            first = self._run(
                first, kind, plane, x0s, y0s, z0s, x1s, y1s, z1s, cus, cvs, sweeps, tool, tools, resolution, most_work,
                out, out_move, out_bits, skipped, before,
            )  # fmt: skip
        return first, self.made

    @cython.cfunc
    @cython.nogil
    @cython.exceptval(-1)
    def _run(
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
        out_bits: cython.uchar[:, ::1],
        skipped: cython.uchar[::1],
        before: cython.float[::1],
    ) -> cython.Py_ssize_t:
        """`run` without the interpreter's lock: two sweepers work side by side. Returns the next move."""
        n_moves: cython.Py_ssize_t = kind.shape[0]
        room: cython.Py_ssize_t = out.shape[1]
        made: cython.Py_ssize_t = 0
        mv: cython.Py_ssize_t
        row: cython.int
        current: cython.int = -1
        x0: cython.double
        y0: cython.double
        z0: cython.double
        x1: cython.double
        y1: cython.double
        z1: cython.double
        sa: cython.double
        sb: cython.double
        s: cython.double
        e: cython.double
        reach: cython.double
        length: cython.double
        flat_length: cython.double
        step: cython.double
        pieces: cython.Py_ssize_t
        p: cython.Py_ssize_t
        k: cython.Py_ssize_t
        chords: cython.Py_ssize_t
        u0: cython.double
        v0: cython.double
        w0: cython.double
        u1: cython.double
        v1: cython.double
        w1: cython.double
        r0: cython.double
        r1: cython.double
        angle0: cython.double
        turn: cython.double
        r: cython.double
        ang: cython.double
        px: cython.double
        py: cython.double
        pt: cython.double
        qx: cython.double
        qy: cython.double
        qt: cython.double
        st: cython.double
        box_x: cython.double = self.x_low + self.nx * self.cell
        box_y: cython.double = self.y_low + self.ny * self.cell
        opened: cython.bint
        floor_t: cython.double
        is_arc: cython.bint
        together: cython.int
        merged_to: cython.Py_ssize_t = 0
        n: cython.Py_ssize_t
        pl: cython.int
        level: cython.double
        wanted: cython.double
        for mv in range(first, n_moves):
            if mv < merged_to:
                continue
            row = tool[mv]
            if row < 0:
                self.last_x = NAN
                continue
            if room - made < MOST_PIECES or self.work > most_work:
                self.made = made
                return mv
            if row != current:
                self._load(tools[row])
                current = row
            x0, y0, z0, x1, y1, z1 = x0s[mv], y0s[mv], z0s[mv], x1s[mv], y1s[mv], z1s[mv]
            if not (
                fabs(x0) < FAR
                and fabs(y0) < FAR
                and fabs(z0) < FAR
                and fabs(x1) < FAR
                and fabs(y1) < FAR
                and fabs(z1) < FAR
            ):
                self.last_x = NAN
                continue
            if mv >= self.scanned and z0 - z1 > 0.5 * resolution:
                k = mv
                while k < n_moves and tool[k] == row and z0s[k] - z1s[k] > 0.5 * resolution:
                    before[k] = self._surface(x1s[k], y1s[k])
                    k += 1
                self.scanned = k
            reach = self.radius + self.cell
            step = max(0.5 * self.radius, self.cell)
            if kind[mv] == 1 and self.touched == mv - 1:
                together = self._together(
                    min(self.merged, n_moves - mv),
                    cython.address(kind[mv]),
                    cython.address(tool[mv]),
                    cython.address(x0s[mv]),
                    cython.address(y0s[mv]),
                    cython.address(z0s[mv]),
                    cython.address(x1s[mv]),
                    cython.address(y1s[mv]),
                    cython.address(z1s[mv]),
                    max(TOGETHER * self.radius, self.cell),
                    resolution,
                )
                if together > 1:
                    self.round = False
                    n = mv + together - 1
                    px, py, pt = x0, y0, self.top - z0
                    qx, qy, qt = x1s[n], y1s[n], self.top - z1s[n]
                    level = pt
                    for k in range(mv, n + 1):
                        self.group_open[k - mv] = self._open_at(x0s[k], y0s[k], self.top - z0s[k])
                        level = max(level, self.top - z1s[k])
                    floor_t = self._floor(qx, qy)
                    flat_length, length = hypot(qx - px, qy - py), 0.0
                    for k in range(together):
                        length += self.group_length[k]
                    self._begin(length, qt - pt)
                    self._segment(px, py, pt, qx, qy, qt, self.group_bend, level - max(pt, qt) + SAGITTA)
                    if self._store(
                        made,
                        out,
                        out_bits,
                        0.0,
                        1.0,
                        length,
                        flat_length,
                        flat_length,
                        qt - pt,
                        level,
                        qx,
                        qy,
                        qt,
                        False,
                        floor_t,
                    ):
                        self._share_out(
                            made,
                            together,
                            pt,
                            resolution,
                            cython.address(out[0, 0]),
                            room,
                            cython.address(out_bits[0, 0]),
                            out_bits.shape[1],
                        )
                        for k in range(mv, n + 1):
                            out_move[made] = k
                            made += 1
                        self.touched = n
                    merged_to = n + 1
                    continue
            is_arc = kind[mv] >= 2 and isfinite(cus[mv]) and isfinite(cvs[mv]) and isfinite(sweeps[mv])
            self.round = is_arc
            if not is_arc:
                st, e = self.top - z0, self.top - z1
                # the part of the line below the top and within reach of the box
                self.lo, self.hi = 0.0, 1.0
                self._clip(st, e - st, 0.0, 1e300)
                self._clip(x0, x1 - x0, self.x_low - reach, box_x + reach)
                self._clip(y0, y1 - y0, self.y_low - reach, box_y + reach)
                sa, sb = self.lo, self.hi
                if not sa <= sb or max(st, e) <= 0:
                    self.last_x = NAN
                    continue
                flat_length = hypot(x1 - x0, y1 - y0)
                length = hypot(flat_length, z1 - z0)
                wanted = flat_length if flat_length >= resolution else 0.0
                pieces = cython.cast(
                    cython.Py_ssize_t,
                    min(cython.cast(cython.double, MOST_PIECES), max(1.0, ceil(length * (sb - sa) / step - 1e-6))),
                )
                px, py, pt = x0 + sa * (x1 - x0), y0 + sa * (y1 - y0), st + sa * (e - st)
                for p in range(pieces):
                    if self.work > most_work:
                        self.made = made
                        return mv
                    s = sb if p == pieces - 1 else sa + (sb - sa) * (p + 1) / pieces
                    qx, qy, qt = x0 + s * (x1 - x0), y0 + s * (y1 - y0), st + s * (e - st)
                    if s == 1.0:
                        qx, qy, qt = x1, y1, e
                    u0 = sa + (sb - sa) * p / pieces
                    opened, floor_t = self._open_at(px, py, pt), self._floor(qx, qy)
                    self._begin(length * (s - u0), qt - pt)
                    self._segment(px, py, pt, qx, qy, qt, 0.0, 0.0)
                    if self._store(
                        made,
                        out,
                        out_bits,
                        u0,
                        s,
                        length * (s - u0),
                        flat_length * (s - u0),
                        wanted * (s - u0),
                        qt - pt,
                        max(pt, qt),
                        qx,
                        qy,
                        qt,
                        opened,
                        floor_t,
                    ):
                        out_move[made] = mv
                        made += 1
                        self.touched = mv
                    px, py, pt = qx, qy, qt
                continue
            # an arc: U, V are the plane's axes, W the third
            pl = plane[mv]
            if pl == 18:
                u0, v0, w0, u1, v1, w1 = z0, x0, y0, z1, x1, y1
            elif pl == 19:
                u0, v0, w0, u1, v1, w1 = y0, z0, x0, y1, z1, x1
            else:
                u0, v0, w0, u1, v1, w1 = x0, y0, z0, x1, y1, z1
            r0, r1 = hypot(u0 - cus[mv], v0 - cvs[mv]), hypot(u1 - cus[mv], v1 - cvs[mv])
            angle0 = atan2(v0 - cvs[mv], u0 - cus[mv])
            turn = sweeps[mv] * 0.017453292519943295
            r = max(r0, r1)
            if not r < FAR:
                self.last_x = NAN
                continue
            # out of reach altogether?
            if pl == 17 and (
                max(self.top - z0, self.top - z1) <= 0
                or cus[mv] - r > box_x + reach
                or cus[mv] + r < self.x_low - reach
                or cvs[mv] - r > box_y + reach
                or cvs[mv] + r < self.y_low - reach
            ):
                self.last_x = NAN
                continue
            if pl != 17:
                e = cus[mv] if pl == 18 else cvs[mv]
                if self.top - (e - r) <= 0:
                    self.last_x = NAN
                    continue
            length = hypot(r * fabs(turn), w1 - w0)
            e = ceil(fabs(turn) / (2 * sqrt(2 * SAGITTA / max(r, 2 * SAGITTA))))
            e = max(e, ceil(length / step))
            if not e <= MOST_CHORDS:
                skipped[mv] = 1
                self.last_x = NAN
                continue
            chords = cython.cast(cython.Py_ssize_t, max(1.0, e))
            pieces = cython.cast(
                cython.Py_ssize_t, min(cython.cast(cython.double, MOST_PIECES), max(1.0, ceil(length / step - 1e-6)))
            )
            chords = pieces * cython.cast(cython.Py_ssize_t, ceil(cython.cast(cython.double, chords) / pieces))
            px, py, pt = x0, y0, self.top - z0
            flat_length = r * fabs(turn)
            if pl != 17:
                flat_length = 0.0
            wanted = flat_length if pl != 17 or 2 * r >= resolution else 0.0
            for p in range(pieces):
                if self.work > most_work:
                    self.made = made
                    return mv
                st = pt
                opened = self._open_at(px, py, pt)
                ang = angle0 + turn * (p + 1) / pieces
                floor_t = self._floor(cus[mv] + r1 * cos(ang), cvs[mv] + r1 * sin(ang)) if pl == 17 else 1e30
                e = 0.0
                level = pt
                # contact is told by the drop of each chord, lest a gentle helix meets nothing below it
                self._begin(length / pieces, (z0 - z1) / chords if pl == 17 else 0.0)
                for k in range(p * chords // pieces, (p + 1) * chords // pieces):
                    s = cython.cast(cython.double, k + 1) / chords
                    ang = angle0 + turn * s
                    r = r0 + (r1 - r0) * s
                    u1, v1, w1 = (
                        cus[mv] + r * cos(ang),
                        cvs[mv] + r * sin(ang),
                        w0 + s * ((y1 if pl == 18 else x1 if pl == 19 else z1) - w0),
                    )
                    if pl == 18:
                        qx, qy, qt = v1, w1, self.top - u1
                    elif pl == 19:
                        qx, qy, qt = w1, u1, self.top - v1
                    else:
                        qx, qy, qt = u1, v1, self.top - w1
                    if k == chords - 1:
                        qx, qy, qt = x1, y1, self.top - z1
                    if self.work > most_work:
                        self.made = made
                        return mv
                    self._segment(px, py, pt, qx, qy, qt, 0.0, 0.0)
                    e += hypot(qx - px, qy - py)
                    level = max(level, qt)
                    px, py, pt = qx, qy, qt
                if self._store(
                    made,
                    out,
                    out_bits,
                    cython.cast(cython.double, p) / pieces,
                    cython.cast(cython.double, p + 1) / pieces,
                    length / pieces,
                    e,
                    wanted / pieces if pl == 17 else e,
                    pt - st,
                    level,
                    px,
                    py,
                    pt,
                    opened,
                    floor_t,
                ):
                    out_move[made] = mv
                    made += 1
                    self.touched = mv
        self.made = made
        return n_moves

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
    @cython.exceptval(-1)
    def _store(
        self,
        at: cython.Py_ssize_t,
        out: cython.float[:, ::1],
        bits: cython.uchar[:, ::1],
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
        c2: cython.double = self.cell * self.cell
        ap: cython.double = 0.0
        ae: cython.double = 0.0
        angle: cython.double = 0.0
        climb: cython.double = 0.5
        under: cython.double = 0.0
        shank: cython.double = 0.0
        r: cython.double = self.radius
        high: cython.double
        w_left: cython.double
        w_right: cython.double
        centre: cython.bint = False
        touch: cython.int = 0
        if t > self.flute_length:
            shank = self._shank(x, y, t)
        if self.removed * c2 < CONTACT * CONTACT * length:
            self.cells = 0.0
        if self.cells <= 0 and shank <= 0:
            return False
        self.removed = self.removed if self.cells > 0 else 0.0
        if self.cells > 0:
            ap = max(self.ap, self.deepest - (self.met if self.met < 1e299 else self.met_by_slivers))
            if self.shape == FLAT and fabs(drop) <= 1e-6 and self.area > 0:
                high = self.removed / self.area
                if self.squares / self.area - high * high < EVEN * EVEN * high * high:
                    ap = high  # one height all over, but for slivers of the wall
            r = self._radius_at(ap)
            if drop > 1e-6:
                under = min(1.0, self.under * c2 / (3.141592653589793 * self.radius * self.radius))
                centre = self.centre * c2 > 0.1 * 3.141592653589793 * min(0.36 * self.radius * self.radius, r * r)
            if swept < 1e-6:
                ae = 2 * self.radius * under
            elif self.shape != FLAT:
                climb = min(1.0, max(0.0, self.right / self.removed))
                # where both sides cut alike the material is level, and the mean depth along the piece gives the section
                high = ap - 0.5 * fabs(drop) if fabs(climb - 0.5) < 0.15 and ap > fabs(drop) else ap
                ae = min(2 * r, self._stepover(self.removed * c2 / swept, high))
                angle = 57.29577951308232 * acos(max(-1.0, 1 - ae / r)) if r > 0 else 0.0
            else:
                w_left, w_right = self.left * c2 / swept, self.right * c2 / swept
                if w_left > r:
                    w_left = r
                if w_right > r:
                    w_right = r
                ae = w_left + w_right
                if ae > 0:
                    climb = w_right / ae
                    if self.left > 0:
                        angle += self._arc(w_left, self.left_moment / self.left, r)
                    if self.right > 0:
                        angle += self._arc(w_right, self.right_moment / self.right, r)
                    angle *= 57.29577951308232
            touch = (1 if under > 0 else 0) + (2 if ae > 0 and swept >= 1e-6 else 0)
        if shank > 0:
            touch += 4
        out[0, at], out[1, at], out[2, at], out[3, at], out[4, at] = s0, s1, length, travel, drop
        out[5, at], out[6, at], out[7, at], out[8, at], out[9, at] = self.removed * c2, ap, ae, angle, climb
        out[10, at], out[11, at], out[12, at] = under, shank, depth
        # solid gone through under the middle of the tip; where the middle hangs over a hole, under the rest of it
        out[13, at] = min(drop, ap) if floor_t >= t else min(drop, min(ap, t - max(floor_t, 0.0)))
        bits[0, at], bits[1, at], bits[2, at] = touch, centre, opened
        return True
