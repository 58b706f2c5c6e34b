"""The kernel that finds which declared boxes moves cross, and how deep: the time grows with what is near each other.

Compiled by Cython; there is no interpreted twin. Boxes lie in a grid of cells in X and Y; a move looks only at those of
the cells that its bounds touch. The work is counted and bounded.
"""

from __future__ import annotations

import cython

if not cython.compiled:
    raise ImportError("gclint.motion.boxes is a kernel and must be compiled")

import numpy as np
from cython.cimports.libc.math import cos, fabs, fmax, fmin, isnan, sin

MOST_CELLS = cython.declare(cython.int, 256)  # along one axis
ARC_STEP = cython.declare(cython.double, 3.0)  # degrees, of the chords an arc is taken as
MOST_CHORDS = cython.declare(cython.int, 4000)
RADIANS = cython.declare(cython.double, 0.017453292519943295)
INFINITE = cython.declare(cython.double, float("inf"))


@cython.cclass
class Boxes:
    """`crossed` fills the columns it is given."""

    low: cython.const[cython.double][:, ::1]  # [boxes, 3]
    high: cython.const[cython.double][:, ::1]
    count: cython.int
    cells: cython.int
    x: cython.double  # of the grid, mm
    y: cython.double
    wide: cython.double
    tall: cython.double
    first: cython.int[::1]  # where each cell's boxes begin in `of_cell`
    of_cell: cython.int[::1]
    seen: cython.longlong[::1]
    work: cython.longlong

    def __init__(self, low, high) -> None:
        """Lowest and highest corners, [boxes, 3], mm."""
        self.low, self.high, self.count = low, high, len(low)
        self.seen = np.full(len(low), -1, np.int64)
        finite = np.clip(np.concatenate((low[:, :2], high[:, :2])), -1e9, 1e9)
        (self.x, self.y), span = finite.min(axis=0), np.ptp(finite, axis=0)
        cells = min(MOST_CELLS, int(len(low) ** 0.5) + 1)
        while True:
            size = np.maximum(span / cells, 1e-6)
            begin = np.clip(((finite[: len(low)] - finite.min(axis=0)) / size).astype(np.int64), 0, cells - 1)
            end = np.clip(((finite[len(low) :] - finite.min(axis=0)) / size).astype(np.int64), 0, cells - 1)
            entries = int((end - begin + 1).prod(axis=1).sum())
            if cells == 1 or entries <= 16 * len(low) + 1024:
                break
            cells //= 2
        self.cells, self.wide, self.tall = cells, size[0], size[1]
        self.sort(begin.astype(np.int32), end.astype(np.int32), entries)

    @cython.cfunc
    def sort(self, begin: cython.int[:, ::1], end: cython.int[:, ::1], entries: cython.Py_ssize_t) -> cython.int:
        """Fill `first` and `of_cell`."""
        b: cython.int
        i: cython.int
        j: cython.int
        at: cython.int
        self.first = np.zeros(self.cells * self.cells + 1, np.int32)
        self.of_cell = np.zeros(entries, np.int32)
        for b in range(self.count):
            for j in range(begin[b, 1], end[b, 1] + 1):
                for i in range(begin[b, 0], end[b, 0] + 1):
                    self.first[j * self.cells + i + 1] += 1
        for at in range(self.cells * self.cells):
            self.first[at + 1] += self.first[at]
        filled: cython.int[::1] = np.array(self.first)
        for b in range(self.count):
            for j in range(begin[b, 1], end[b, 1] + 1):
                for i in range(begin[b, 0], end[b, 0] + 1):
                    at = j * self.cells + i
                    self.of_cell[filled[at]] = b
                    filled[at] += 1
        return 0

    @cython.cfunc
    def cell(self, value: cython.double, start: cython.double, size: cython.double) -> cython.int:
        value = (value - start) / size
        if not value > 0:
            return 0
        return self.cells - 1 if value >= self.cells else cython.cast(cython.int, value)

    def crossed(
        self,
        rows: cython.const[cython.longlong][::1],
        x0: cython.const[cython.double][::1],
        y0: cython.const[cython.double][::1],
        z0: cython.const[cython.double][::1],
        x1: cython.const[cython.double][::1],
        y1: cython.const[cython.double][::1],
        z1: cython.const[cython.double][::1],
        cu: cython.const[cython.double][::1],
        cv: cython.const[cython.double][::1],
        sweep: cython.const[cython.double][::1],
        plane: cython.const[cython.uchar][::1],
        length: cython.const[cython.double][::1],
        lowest: cython.const[cython.double][::1],
        radius: cython.const[cython.double][::1],
        depth: cython.double[::1],
        which: cython.int[::1],
        most_work: cython.longlong,
    ) -> cython.Py_ssize_t:
        """Fill depth and box of the rows; how many of them were looked at before the work ran out.

        All columns but `rows` are [moves]. `depth`: mm by which the tip passes below the top of a box that its disc
        is over, the deepest; `which`: that box.
        """
        n: cython.Py_ssize_t
        row: cython.Py_ssize_t
        i: cython.int
        j: cython.int
        k: cython.int
        b: cython.int
        bulge: cython.double
        r: cython.double
        left: cython.double
        right: cython.double
        front: cython.double
        back: cython.double
        z: cython.double
        i_low: cython.int
        i_high: cython.int
        self.work = 0
        for n in range(rows.shape[0]):
            row = rows[n]
            r = radius[row]
            bulge = r + (length[row] if sweep[row] != 0 and not isnan(length[row]) else 0.0)
            left, right, front, back = -INFINITE, INFINITE, -INFINITE, INFINITE
            if not isnan(x0[row]):
                left, right = fmin(x0[row], x1[row]) - bulge, fmax(x0[row], x1[row]) + bulge
                if isnan(x1[row]):
                    continue
            if not isnan(y0[row]):
                front, back = fmin(y0[row], y1[row]) - bulge, fmax(y0[row], y1[row]) + bulge
                if isnan(y1[row]):
                    continue
            i_low, i_high = self.cell(left, self.x, self.wide), self.cell(right, self.x, self.wide)
            for j in range(self.cell(front, self.y, self.tall), self.cell(back, self.y, self.tall) + 1):
                for i in range(i_low, i_high + 1):
                    self.work += 1
                    for k in range(self.first[j * self.cells + i], self.first[j * self.cells + i + 1]):
                        b = self.of_cell[k]
                        self.work += 1
                        if self.seen[b] == row or not (
                            left < self.high[b, 0]
                            and right > self.low[b, 0]
                            and front < self.high[b, 1]
                            and back > self.low[b, 1]
                            and self.high[b, 2] - lowest[row] > 0
                            and self.high[b, 2] - lowest[row] >= depth[row]
                        ):
                            continue
                        self.seen[b] = row
                        if isnan(x0[row]) or isnan(y0[row]):  # nobody can say where it comes from
                            z = fmin(z0[row], z1[row])
                        elif sweep[row] == 0:
                            z = self.over(x0[row], y0[row], z0[row], x1[row], y1[row], z1[row], b, r)
                        else:
                            self.work += cython.cast(cython.longlong, fmin(fabs(sweep[row]) / ARC_STEP, MOST_CHORDS))
                            z = self.over_arc(
                                x0[row], y0[row], z0[row], x1[row], y1[row], z1[row], cu[row], cv[row], sweep[row],
                                plane[row], b, r,
                            )  # fmt: skip
                        z = self.high[b, 2] - z
                        if z > depth[row] or (z == depth[row] and b < which[row]):
                            depth[row], which[row] = z, b
                if self.work > most_work:
                    return n
        return rows.shape[0]

    @cython.cfunc
    def over_arc(
        self, x0: cython.double, y0: cython.double, z0: cython.double, x1: cython.double, y1: cython.double,
        z1: cython.double, cu: cython.double, cv: cython.double, sweep: cython.double, plane: cython.int,
        b: cython.int, r: cython.double,
    ) -> cython.double:  # fmt: skip
        """As `over`, of an arc as chords."""
        chords: cython.int = cython.cast(cython.int, fmin(fabs(sweep) / ARC_STEP, MOST_CHORDS - 2.0)) + 1
        k: cython.int
        share: cython.double
        turn: cython.double
        ax: cython.double = x0
        ay: cython.double = y0
        az: cython.double = z0
        bx: cython.double
        by: cython.double
        bz: cython.double
        u: cython.double = x0 if plane == 17 else z0 if plane == 18 else y0
        v: cython.double = y0 if plane == 17 else x0 if plane == 18 else z0
        best: cython.double = INFINITE
        low: cython.double
        du: cython.double = u - cu
        dv: cython.double = v - cv
        for k in range(1, chords + 1):
            share = k / cython.cast(cython.double, chords)
            bx, by, bz = x0 + (x1 - x0) * share, y0 + (y1 - y0) * share, z0 + (z1 - z0) * share
            if k < chords:
                turn = sweep * share * RADIANS
                u = cu + du * cos(turn) - dv * sin(turn)
                v = cv + du * sin(turn) + dv * cos(turn)
                if plane == 17:
                    bx, by = u, v
                elif plane == 18:
                    bz, bx = u, v
                else:
                    by, bz = u, v
            low = self.over(ax, ay, az, bx, by, bz, b, r)
            if low < best:
                best = low
            ax, ay, az = bx, by, bz
        self.work += chords
        return best

    @cython.cfunc
    def over(
        self, x0: cython.double, y0: cython.double, z0: cython.double, x1: cython.double, y1: cython.double,
        z1: cython.double, b: cython.int, r: cython.double,
    ) -> cython.double:  # fmt: skip
        """Lowest Z of the tip on a line while the tool's disc, as a square, is over the box; inf if it never is."""
        first: cython.double = 0.0
        last: cython.double = 1.0
        near: cython.double
        far: cython.double
        axis: cython.int
        start: cython.double
        end: cython.double
        for axis in range(2):
            start, end = (x0, x1) if axis == 0 else (y0, y1)
            near, far = self.low[b, axis] - r, self.high[b, axis] + r
            if start == end:
                if not near < start < far:
                    return INFINITE
                continue
            near, far = (near - start) / (end - start), (far - start) / (end - start)
            if near > far:
                near, far = far, near
            first, last = fmax(first, near), fmin(last, far)
        if first < last or (first == last and x0 == x1 and y0 == y1):
            return fmin(z0 + first * (z1 - z0), z0 + last * (z1 - z0))
        return INFINITE
