"""The kernel of cutter compensation: where the tool's centre runs beside a programmed contour in XY.

Compiled by Cython; there is no interpreted twin. `gclint.motion.compensate` prepares the columns and reads the answer.
Entry, outside corners and leaving follow NIST RS274/NGC appendix B; inside corners are met where the shifted moves
cross, which the report refuses and controllers that read ahead do (common practice, no source). Two lines that hardly
turn are met outside as well where that corner lies within half a step of the controller from the arc round it.

A contour is a run of moves under one code and one radius. Each of its moves is shifted to the side by the radius; a
corner is settled when the move behind it is seen, so only the last move that travelled in XY (`last`) is still open.
"""

from __future__ import annotations

import cython

if not cython.compiled:
    raise ImportError("gclint.motion.tool_path is a kernel and must be compiled")

from cython.cimports.libc.math import acos, atan2, cos, fabs, hypot, isnan, sin, sqrt

TURN = cython.declare(cython.double, 6.283185307179586)
SAME_POINT = cython.declare(cython.double, 1e-6)  # mm; far under any controller's resolution
SAME_ANGLE = cython.declare(cython.double, 1e-9)  # radians; under it a turn is none, or half a circle

RAPID = cython.declare(cython.int, 0)

# What is wrong with a move; the wrapper turns these into faults.
CORNER = cython.declare(cython.int, 1)  # an inside corner on a controller that refuses them
ARC = cython.declare(cython.int, 2)  # inside an arc that is no larger than the tool
TIGHT = cython.declare(cython.int, 3)  # the shifted move is used up by its corners, or they cross nowhere
SHORT_ENTRY = cython.declare(cython.int, 4)  # the first move is shorter than the radius
ARC_ENTRY = cython.declare(cython.int, 5)  # the first move is an arc
ARC_EXIT = cython.declare(cython.int, 6)  # the first move after G40 is an arc


@cython.cclass
class Path:
    """`follow` fills the columns it was given: true start and end, true sweep, corner arcs, faults."""

    kind: cython.const[cython.uchar][::1]
    x0: cython.const[cython.double][::1]
    y0: cython.const[cython.double][::1]
    x1: cython.const[cython.double][::1]
    y1: cython.const[cython.double][::1]
    cu: cython.const[cython.double][::1]
    cv: cython.const[cython.double][::1]
    radius: cython.const[cython.double][::1]  # above 0: tool to the left; below: to the right; 0: not compensated
    named: cython.const[cython.uchar][::1]  # bit 1: the block names X, bit 2: Y
    sx: cython.double[::1]
    sy: cython.double[::1]
    ex: cython.double[::1]
    ey: cython.double[::1]
    sweep: cython.double[::1]  # degrees
    corner: cython.double[::1]  # degrees of the arc round the corner before the move; 0: none
    wrong: cython.uchar[::1]
    room: cython.double[::1]  # mm there were, where something is wrong

    meets: cython.bint
    least: cython.double
    carry_x: cython.double
    carry_y: cython.double
    last: cython.Py_ssize_t
    first: cython.bint  # `last` is the move that enters the contour
    used: cython.double  # of `last`, by its corners: mm of a line, radians of an arc
    deep: cython.double  # mm that the inside corners of `last` would gouge if they were not cut short
    # the crossing found, and what it takes off each of the two moves
    qx: cython.double
    qy: cython.double
    off_last: cython.double
    off_next: cython.double

    def __init__(self, given, made, meets: bool, least: float) -> None:
        """`given` and `made` are the columns by name; `least`: mm, a gap under it needs no arc."""
        self.kind, self.radius, self.named = given["kind"], given["radius"], given["named"]
        self.x0, self.y0, self.x1, self.y1 = given["x0"], given["y0"], given["x1"], given["y1"]
        self.cu, self.cv = given["cu"], given["cv"]
        self.sx, self.sy, self.ex, self.ey = made["sx"], made["sy"], made["ex"], made["ey"]
        self.sweep, self.corner, self.wrong, self.room = made["sweep"], made["corner"], made["wrong"], made["room"]
        self.meets, self.least = meets, least

    def follow(self) -> None:
        i: cython.Py_ssize_t
        n: cython.Py_ssize_t = self.kind.shape[0]
        self.last, self.carry_x, self.carry_y = -1, 0.0, 0.0
        for i in range(n):
            if (
                self.radius[i] == 0
                or isnan(self.radius[i])
                or isnan(self.x0[i] + self.y0[i] + self.x1[i] + self.y1[i] + self.sweep[i])
            ):
                self.finish(i)
                self.outside(i)
            elif not self.across(i):
                if self.last < 0:
                    self.outside(i)  # straight up or down before the entry
            else:
                if self.last >= 0 and (
                    self.radius[i] != self.radius[self.last]
                    or fabs(self.x0[i] - self.x1[self.last]) > SAME_POINT
                    or fabs(self.y0[i] - self.y1[self.last]) > SAME_POINT
                ):
                    self.finish(i)
                if self.last < 0:
                    self.enter(i)
                else:
                    self.turn(i)
                self.last = i
        self.finish(n)

    @cython.cfunc
    def across(self, i: cython.Py_ssize_t) -> cython.bint:
        """Whether the move travels in XY."""
        return (
            self.sweep[i] != 0
            or fabs(self.x1[i] - self.x0[i]) > SAME_POINT
            or fabs(self.y1[i] - self.y0[i]) > SAME_POINT
        )

    @cython.cfunc
    def outside(self, i: cython.Py_ssize_t) -> cython.int:
        """A move outside a contour: the tool is still beside the programmed point on axes not named since."""
        if self.carry_x == 0 and self.carry_y == 0:
            return 0
        self.sx[i] = self.x0[i] + self.carry_x
        self.sy[i] = self.y0[i] + self.carry_y
        if self.sweep[i] != 0:
            self.wrong[i] = ARC_EXIT
            self.carry_x = self.carry_y = 0.0
        if self.named[i] & 1 or isnan(self.x1[i]):
            self.carry_x = 0.0
        if self.named[i] & 2 or isnan(self.y1[i]):
            self.carry_y = 0.0
        self.ex[i] = self.x1[i] + self.carry_x
        self.ey[i] = self.y1[i] + self.carry_y
        return 0

    @cython.cfunc
    def enter(self, i: cython.Py_ssize_t) -> cython.int:
        """The first move: to the circle of the tool's radius round its end, along a tangent (appendix B.4)."""
        r: cython.double = self.radius[i]
        angle: cython.double
        far: cython.double
        self.first, self.used, self.deep = True, 0.0, 0.0
        self.sx[i] = self.x0[i] + self.carry_x
        self.sy[i] = self.y0[i] + self.carry_y
        self.carry_x = self.carry_y = 0.0
        if self.sweep[i] != 0:
            self.wrong[i] = ARC_ENTRY
            self.first = False
            self.ex[i] = self.x1[i] + r * self.normal_x(i, True)
            self.ey[i] = self.y1[i] + r * self.normal_y(i, True)
            return 0
        far = hypot(self.sx[i] - self.x1[i], self.sy[i] - self.y1[i])
        if far < fabs(r) - SAME_POINT:
            self.wrong[i], self.room[i] = SHORT_ENTRY, far
            self.ex[i] = self.x1[i] + r * self.normal_x(i, True)
            self.ey[i] = self.y1[i] + r * self.normal_y(i, True)
            return 0
        angle = atan2(self.sy[i] - self.y1[i], self.sx[i] - self.x1[i])
        far = acos(min(1.0, fabs(r) / far))
        angle += -far if r > 0 else far
        self.ex[i] = self.x1[i] + fabs(r) * cos(angle)
        self.ey[i] = self.y1[i] + fabs(r) * sin(angle)
        return 0

    @cython.cfunc
    def finish(self, i: cython.Py_ssize_t) -> cython.int:
        """The contour ends before move i: its last move ends square to itself."""
        p: cython.Py_ssize_t = self.last
        if p < 0:
            return 0
        self.settle(i)
        self.carry_x = self.ex[p] - self.x1[p]
        self.carry_y = self.ey[p] - self.y1[p]
        self.last = -1
        return 0

    @cython.cfunc
    def settle(self, i: cython.Py_ssize_t) -> cython.int:
        """The end of `last` is known: moves straight up or down between it and move i stand there."""
        p: cython.Py_ssize_t = self.last
        k: cython.Py_ssize_t
        size: cython.double = self.size(p)
        if self.used > size + (SAME_POINT if self.sweep[p] == 0 else SAME_ANGLE) and not self.wrong[p]:
            # corners that rounding of the coordinates makes between tiny moves are no corners
            if self.deep > 2 * self.least or self.sweep[p] != 0:
                self.wrong[p] = TIGHT
        elif self.used > 0 and self.sweep[p] != 0:
            size = max(0.0, size - self.used) * 360 / TURN
            self.sweep[p] = size if self.sweep[p] > 0 else -size
        for k in range(p + 1, i):
            self.sx[k] = self.ex[k] = self.ex[p]
            self.sy[k] = self.ey[k] = self.ey[p]
        return 0

    @cython.cfunc
    def size(self, i: cython.Py_ssize_t) -> cython.double:
        """mm of a line in XY, radians of an arc."""
        if self.sweep[i] != 0:
            return fabs(self.sweep[i]) * TURN / 360
        return hypot(self.x1[i] - self.x0[i], self.y1[i] - self.y0[i])

    # The unit vector to the left of move i at its start or end.

    @cython.cfunc
    def normal_x(self, i: cython.Py_ssize_t, end: cython.bint) -> cython.double:
        x: cython.double = self.x1[i] if end else self.x0[i]
        y: cython.double = self.y1[i] if end else self.y0[i]
        long: cython.double
        if self.sweep[i] != 0:
            long = hypot(self.cu[i] - x, self.cv[i] - y)
            return (self.cu[i] - x) / long if self.sweep[i] > 0 else (x - self.cu[i]) / long
        long = hypot(self.x1[i] - self.x0[i], self.y1[i] - self.y0[i])
        return (self.y0[i] - self.y1[i]) / long if long > 0 else 0.0

    @cython.cfunc
    def normal_y(self, i: cython.Py_ssize_t, end: cython.bint) -> cython.double:
        x: cython.double = self.x1[i] if end else self.x0[i]
        y: cython.double = self.y1[i] if end else self.y0[i]
        long: cython.double
        if self.sweep[i] != 0:
            long = hypot(self.cu[i] - x, self.cv[i] - y)
            return (self.cv[i] - y) / long if self.sweep[i] > 0 else (y - self.cv[i]) / long
        long = hypot(self.x1[i] - self.x0[i], self.y1[i] - self.y0[i])
        return (self.x1[i] - self.x0[i]) / long if long > 0 else 0.0

    @cython.cfunc
    def shifted_radius(self, i: cython.Py_ssize_t) -> cython.double:
        """Of arc i, mm; zero or less where the tool does not fit into it."""
        own: cython.double = hypot(self.x0[i] - self.cu[i], self.y0[i] - self.cv[i])
        return own - self.radius[i] if self.sweep[i] > 0 else own + self.radius[i]

    @cython.cfunc
    def turn(self, i: cython.Py_ssize_t) -> cython.int:
        """From `last` into move i."""
        p: cython.Py_ssize_t = self.last
        r: cython.double = self.radius[i]
        px: cython.double = self.x0[i]
        py: cython.double = self.y0[i]
        # from the programmed corner to the tool's centre, before and after it
        ax: cython.double = self.ex[p] - px
        ay: cython.double = self.ey[p] - py
        bx: cython.double = r * self.normal_x(i, False)
        by: cython.double = r * self.normal_y(i, False)
        across: cython.double = ax * by - ay * bx
        along: cython.double = ax * bx + ay * by
        angle: cython.double = atan2(fabs(across), along)
        outside: cython.bint = across * r < 0 or angle > TURN / 2 - SAME_ANGLE
        used: cython.double = 0.0
        far: cython.double
        deep: cython.double = 0.0 if outside else fabs(r) * (1 - cos(angle))

        self.sx[i], self.sy[i] = px + bx, py + by
        self.ex[i] = self.x1[i] + r * self.normal_x(i, True)
        self.ey[i] = self.y1[i] + r * self.normal_y(i, True)
        if self.sweep[i] != 0 and self.shifted_radius(i) < SAME_POINT:
            self.wrong[i], self.room[i] = ARC, hypot(px - self.cu[i], py - self.cv[i])
        if angle * fabs(r) < self.least or (
            self.kind[i] == RAPID and (outside or self.kind[p] != RAPID or self.first)
        ):
            self.sx[i], self.sy[i] = self.ex[p], self.ey[p]
        elif (
            outside
            and self.sweep[p] == 0
            and self.sweep[i] == 0
            and self.kind[p] != RAPID
            and not (self.first or self.wrong[p] or self.wrong[i])
            and fabs(r) * angle * angle < 8 * self.least  # r (1 / cos(angle / 2) - 1): from the arc to the corner
        ):
            far = 1 / (1 + cos(angle))
            self.ex[p], self.ey[p] = px + far * (ax + bx), py + far * (ay + by)
            self.sx[i], self.sy[i] = self.ex[p], self.ey[p]
        elif outside:
            self.corner[i] = angle * 360 / TURN
        elif not self.meets:
            if not self.wrong[i]:
                self.wrong[i] = CORNER
        elif self.first or self.kind[p] == RAPID:
            self.ex[p], self.ey[p] = self.sx[i], self.sy[i]  # straight to where the next move begins
        elif self.wrong[p] or self.wrong[i]:
            pass  # there is nothing to cross
        elif self.cross(p, i):
            self.ex[p], self.ey[p] = self.qx, self.qy
            self.sx[i], self.sy[i] = self.qx, self.qy
            self.used += self.off_last
            self.deep = max(self.deep, deep)
            used = self.off_next
        elif deep <= 2 * self.least:
            self.sx[i], self.sy[i] = self.ex[p], self.ey[p]
        else:
            self.wrong[i] = TIGHT
        self.settle(i)
        self.first, self.used, self.deep = False, used, deep
        return 0

    # -- where two shifted moves cross -----------------------------------------------------------------------------

    @cython.cfunc
    def cross(self, p: cython.Py_ssize_t, i: cython.Py_ssize_t) -> cython.bint:
        """The crossing that takes the least off both moves; False where there is none on them."""
        ex: cython.double = self.ex[p]
        ey: cython.double = self.ey[p]
        mx: cython.double = self.sx[i]
        my: cython.double = self.sy[i]
        # directions of lines: the left normal turned back by a quarter
        dx: cython.double = self.normal_y(p, True)
        dy: cython.double = -self.normal_x(p, True)
        fx: cython.double = self.normal_y(i, False)
        fy: cython.double = -self.normal_x(i, False)
        ra: cython.double
        rb: cython.double
        d: cython.double
        h: cython.double
        t: cython.double
        ux: cython.double
        uy: cython.double
        found: cython.bint = False
        self.off_last = self.off_next = 1e300
        if self.sweep[p] == 0 and self.sweep[i] == 0:
            d = dx * fy - dy * fx
            if fabs(d) < SAME_ANGLE:
                return False
            t = -((mx - ex) * fy - (my - ey) * fx) / d
            return self.better(p, i, ex - t * dx, ey - t * dy)
        if self.sweep[p] == 0 or self.sweep[i] == 0:
            if self.sweep[p] == 0:  # a line into an arc
                ux, uy, ra = self.cu[i], self.cv[i], self.shifted_radius(i)
                fx, fy, mx, my = dx, dy, ex, ey
            else:
                ux, uy, ra = self.cu[p], self.cv[p], self.shifted_radius(p)
            t = (ux - mx) * fx + (uy - my) * fy  # to the foot of the centre on the line
            h = ra * ra - ((ux - mx) * (ux - mx) + (uy - my) * (uy - my) - t * t)
            if h < -SAME_POINT * ra:
                return False
            h = sqrt(max(h, 0.0))
            found = self.better(p, i, mx + (t - h) * fx, my + (t - h) * fy)
            return self.better(p, i, mx + (t + h) * fx, my + (t + h) * fy) or found
        ra, rb = self.shifted_radius(p), self.shifted_radius(i)
        ux, uy = self.cu[i] - self.cu[p], self.cv[i] - self.cv[p]
        d = hypot(ux, uy)
        if d < SAME_POINT:
            return False
        ux, uy = ux / d, uy / d
        t = (d * d + ra * ra - rb * rb) / (2 * d)
        h = ra * ra - t * t
        if h < -SAME_POINT * ra:
            return False
        h = sqrt(max(h, 0.0))
        found = self.better(p, i, self.cu[p] + t * ux - h * uy, self.cv[p] + t * uy + h * ux)
        return self.better(p, i, self.cu[p] + t * ux + h * uy, self.cv[p] + t * uy - h * ux) or found

    @cython.cfunc
    def better(self, p: cython.Py_ssize_t, i: cython.Py_ssize_t, qx: cython.double, qy: cython.double) -> cython.bint:
        """Take the point where it lies on both moves and takes less off them than the one found before."""
        a: cython.double = self.taken(p, qx, qy, self.ex[p], self.ey[p], True)
        b: cython.double = self.taken(i, qx, qy, self.sx[i], self.sy[i], False)
        ra: cython.double = self.shifted_radius(p) if self.sweep[p] != 0 else 1.0
        rb: cython.double = self.shifted_radius(i) if self.sweep[i] != 0 else 1.0
        if a < 0 or b < 0 or a > self.size(p) + SAME_POINT or b > self.size(i) + SAME_POINT:
            return False
        if a * ra + b * rb >= self.off_last + self.off_next:
            return False
        self.qx, self.qy, self.off_last, self.off_next = qx, qy, a, b
        return True

    @cython.cfunc
    def taken(
        self,
        i: cython.Py_ssize_t,
        qx: cython.double,
        qy: cython.double,
        x: cython.double,
        y: cython.double,
        end: cython.bint,
    ) -> cython.double:
        """What is taken off move i at its end (start) when it ends (starts) at q instead of x y; below 0: not on it."""
        t: cython.double
        if self.sweep[i] == 0:
            t = (qx - x) * self.normal_y(i, False) - (qy - y) * self.normal_x(i, False)
            t = -t if end else t
            return 0.0 if -SAME_POINT < t < 0 else t
        qx, qy, x, y = qx - self.cu[i], qy - self.cv[i], x - self.cu[i], y - self.cv[i]
        t = atan2(x * qy - y * qx, x * qx + y * qy)
        if (self.sweep[i] < 0) != end:
            t = -t
        if t < -SAME_ANGLE:
            t += TURN
        return max(t, 0.0)
