"""The look-ahead kernel: the fastest speed along the whole path that no axis limit forbids, and the time of each move.

Compiled by Cython; there is no interpreted twin. One `Planner` times one program; the wrapper is
`gclint.motion.feed_planning`.

Speeds are kept squared (w, mm2/s2), because w is what changes evenly along a straight move: dw/ds = 2 a. Straight moves
get the acceleration their weakest axis allows in their direction. On arcs the acceleration along the path and the one
towards the centre together stay within the weaker axis of the plane, a_t^2 + (v^2/r)^2 <= a^2, so that no axis is ever
asked for more whatever the direction; hence v <= sqrt(a r), and with w = a r sin(phi) phi grows by 2 s/r along the arc.
For a helix of flat share c, r becomes r/c and a becomes a/c, or the third axis' share if that is less.

Corners: a circle tangent to both moves that misses the corner by the declared deviation d has r = d s/(1 - s), with
s = sin(half the angle between the moves); it may take up no more than half of the shorter move. Where moves are shorter
than `span`, what turns is the direction over `span`, as long as the path stays within d of it: the rest is rounding.
On that circle, v^2/a tan(half the turn) before and behind the corner, there is no acceleration along the path.
"""

from __future__ import annotations

import cython

if not cython.compiled:
    raise ImportError("gclint.motion.look_ahead is a kernel and must be compiled")

from cython.cimports.libc.math import asin, fabs, isnan, sin, sqrt

NAN = cython.declare(cython.double, float("nan"))
HALF_PI = cython.declare(cython.double, 1.5707963267948966)
DEGREE = cython.declare(cython.double, 0.017453292519943295)
FAST = cython.declare(cython.double, 1e30)  # a squared speed that limits nothing
STRAIGHT = cython.declare(cython.double, 1e-12)  # sin2 of half a turn that is none
FLAT = cython.declare(cython.double, 1e-4)  # sin2 of half a turn too slight to ask which axis takes it
MOST_STEPS = cython.declare(cython.int, 32)  # moves looked at on each side of a corner between short ones

# Kinds of gclint.tables.motion as C numbers.
RAPID = cython.declare(cython.int, 0)
LINE = cython.declare(cython.int, 1)

# Gauss-Legendre of five places on [-1, 1].
PLACE = cython.declare(cython.double[5])
WEIGHT = cython.declare(cython.double[5])
for _n, (_place, _weight) in enumerate((
    (-0.906179845938664, 0.236926885056189), (-0.538469310105683, 0.478628670499366), (0.0, 0.568888888888889),
    (0.538469310105683, 0.478628670499366), (0.906179845938664, 0.236926885056189),
)):  # fmt: skip
    PLACE[_n] = _place
    WEIGHT[_n] = _weight


@cython.cfunc
@cython.inline
def turned_time(start: cython.double, end: cython.double) -> cython.double:
    """Integral of d(phi) / sqrt(sin(phi)) between two angles within [0, pi/2]."""
    n: cython.int
    x: cython.double
    x2: cython.double
    total: cython.double = 0.0
    low: cython.double = sqrt(start)
    high: cython.double = sqrt(end)
    for n in range(5):  # with phi = x^2 nothing becomes infinite at rest
        x = 0.5 * (low + high) + 0.5 * (high - low) * PLACE[n]
        x2 = x * x
        total += WEIGHT[n] * 2.0 * (sqrt(x2 / sin(x2)) if x2 > 1e-12 else 1.0)
    return total * 0.5 * (high - low)


@cython.cclass
class Planner:
    """Columns of Motion with what comes out beside them; `run` fills `seconds` and `peak`."""

    kind: cython.uchar[::1]
    plane: cython.uchar[::1]
    x0: cython.double[::1]
    y0: cython.double[::1]
    z0: cython.double[::1]
    x1: cython.double[::1]
    y1: cython.double[::1]
    z1: cython.double[::1]
    cu: cython.double[::1]
    cv: cython.double[::1]
    sweep: cython.double[::1]
    length: cython.double[::1]
    rest: cython.uchar[::1]  # [n + 1] 1: the machine stands before this move; 2: exact path, no corner is cut
    entry: cython.double[::1]  # [n + 1] w at the beginning of each move
    bend: cython.double[::1]  # [n + 1] length taken up by the corner there, on each side of it, by w
    seconds: cython.double[::1]  # in: set speed, mm/s; on the way: acceleration; out: time
    peak: cython.double[::1]  # on the way: largest w; out: fastest speed reached, mm/s

    planned: cython.bint  # accelerations are declared
    inverse: cython.double[3]  # 1 / acceleration of each axis
    weakest: cython.double
    feed_limit: cython.double[3]
    rapid_limit: cython.double[3]
    deviation: cython.double
    span: cython.double

    # the move at hand
    start: cython.double[3]  # direction at its start
    end: cython.double[3]
    before: cython.double[3]  # direction at the end of the move before
    rho: cython.double  # r/c of an arc; 0 for a line

    def __init__(
        self, motion, rest, entry, bend, seconds, peak, acceleration, feed_limit, rapid_limit, deviation, span
    ) -> None:
        self.kind, self.plane = motion.kind, motion.plane
        self.x0, self.y0, self.z0 = motion.x0, motion.y0, motion.z0
        self.x1, self.y1, self.z1 = motion.x1, motion.y1, motion.z1
        self.cu, self.cv, self.sweep, self.length = motion.cu, motion.cv, motion.sweep, motion.length
        self.rest, self.entry, self.bend, self.seconds, self.peak = rest, entry, bend, seconds, peak
        self.planned = acceleration is not None
        self.deviation, self.span, self.weakest = deviation, span, FAST
        k: cython.int
        for k in range(3):
            self.inverse[k] = 1.0 / acceleration[k] if acceleration is not None else 0.0
            if acceleration is not None and acceleration[k] < self.weakest:
                self.weakest = acceleration[k]
            self.feed_limit[k], self.rapid_limit[k] = feed_limit[k], rapid_limit[k]

    def run(self) -> None:
        self.forwards()
        self.backwards()

    @cython.cfunc
    def forwards(self) -> cython.int:
        """Caps, accelerations, corners, and how fast each move can be entered for what lies before it."""
        i: cython.Py_ssize_t
        last: cython.Py_ssize_t = -1  # the move before that has a length; -1: the machine stands
        cap: cython.double
        limit: cython.double
        w: cython.double = 0.0
        stop: cython.int = 1
        k: cython.int
        for i in range(self.length.shape[0]):
            if stop != 1:
                stop = 1 if self.rest[i] == 1 else max(stop, self.rest[i])
            if stop == 1:
                last = -1
            cap = self.seconds[i]
            self.bend[i] = 0.0
            if self.length[i] == 0:
                self.entry[i] = 0.0 if last < 0 else FAST
                continue
            cap = self.shape(i, cap) if cap > 0 and self.length[i] > 0 else NAN
            if isnan(cap):
                self.entry[i] = 0.0
                self.peak[i] = NAN
                last, stop = -1, 1
                continue
            self.peak[i] = cap
            limit = 0.0
            if last >= 0 and self.planned:
                limit = min(self.peak[last], cap)
                limit = self.corner(last, i, limit, stop == 2)
                w = self.reach(last, self.entry[last], self.bend[last], self.bend[i])
                limit = min(limit, w)
            self.entry[i] = limit
            last, stop = i, 0
            for k in range(3):
                self.before[k] = self.end[k]
        self.entry[self.length.shape[0]] = self.bend[self.length.shape[0]] = 0.0
        return 0

    @cython.cfunc
    def shape(self, i: cython.Py_ssize_t, cap: cython.double) -> cython.double:
        """Largest w of a move; sets its directions and its acceleration. NaN: a rate that matters is not known."""
        k: cython.int
        u: cython.int
        v: cython.int
        third: cython.int
        share = cython.declare(cython.double[3])  # largest share of the speed each axis ever takes
        step = cython.declare(cython.double[3])
        du: cython.double
        dv: cython.double
        eu: cython.double
        ev: cython.double
        r: cython.double
        flat: cython.double
        rise: cython.double
        sense: cython.double
        slowness: cython.double = 0.0
        needed: cython.double = 0.0
        length: cython.double = self.length[i]
        step[0] = self.x1[i] - self.x0[i]
        step[1] = self.y1[i] - self.y0[i]
        step[2] = self.z1[i] - self.z0[i]
        for k in range(3):
            if isnan(step[k]):  # its place is unknown at both ends: it does not move
                step[k] = 0.0
        self.rho = 0.0
        if self.kind[i] <= LINE or isnan(self.cu[i]):
            for k in range(3):
                self.start[k] = self.end[k] = step[k] / length
                share[k] = fabs(self.start[k])
                needed = max(needed, share[k] * self.inverse[k])
            self.seconds[i] = 1.0 / needed if needed > 0 else FAST
        else:
            u = (self.plane[i] - 17) * 2 % 3
            v = (u + 1) % 3
            third = (u + 2) % 3
            du, dv = self.from_centre(i, u, v, False, self.cu[i], self.cv[i])
            eu, ev = self.from_centre(i, u, v, True, self.cu[i], self.cv[i])
            r = 0.5 * (sqrt(du * du + dv * dv) + sqrt(eu * eu + ev * ev))
            if not r > 0:
                return NAN
            flat = min(1.0, fabs(self.sweep[i]) * DEGREE * r / length)
            rise = step[third] / length
            sense = flat / r if self.sweep[i] > 0 else -flat / r
            self.start[u], self.start[v], self.start[third] = -dv * sense, du * sense, rise
            self.end[u], self.end[v], self.end[third] = -ev * sense, eu * sense, rise
            share[u] = share[v] = flat
            share[third] = fabs(rise)
            if fabs(self.sweep[i]) < 180:
                if du * eu >= 0:
                    share[u] = max(fabs(self.start[u]), fabs(self.end[u]))
                if dv * ev >= 0:
                    share[v] = max(fabs(self.start[v]), fabs(self.end[v]))
            needed = max(flat * max(self.inverse[u], self.inverse[v]), share[third] * self.inverse[third])
            self.rho = r / flat if flat > 0 else FAST
            self.seconds[i] = 1.0 / needed if needed > 0 else FAST
        for k in range(3):
            if share[k] > 1e-9:
                if self.kind[i] == RAPID:
                    slowness = max(slowness, share[k] / self.rapid_limit[k])
                    if isnan(self.rapid_limit[k]):
                        return NAN
                else:
                    slowness = max(slowness, share[k] / self.feed_limit[k])
        if slowness * cap > 1.0:
            cap = 1.0 / slowness
        cap = cap * cap
        if self.planned and self.rho > 0 and self.seconds[i] < FAST:
            cap = min(cap, self.seconds[i] * self.rho)
        return cap

    @cython.cfunc
    @cython.inline
    def from_centre(
        self,
        i: cython.Py_ssize_t,
        u: cython.int,
        v: cython.int,
        at_end: cython.bint,
        cu: cython.double,
        cv: cython.double,
    ) -> tuple[cython.double, cython.double]:
        return self.at(i, u, at_end) - cu, self.at(i, v, at_end) - cv

    @cython.cfunc
    @cython.inline
    def at(self, i: cython.Py_ssize_t, axis: cython.int, at_end: cython.bint) -> cython.double:
        """Coordinate of an end of a move."""
        if axis == 0:
            return self.x1[i] if at_end else self.x0[i]
        if axis == 1:
            return self.y1[i] if at_end else self.y0[i]
        return self.z1[i] if at_end else self.z0[i]

    @cython.cfunc
    @cython.inline
    def radius(self, i: cython.Py_ssize_t) -> cython.double:
        """r/c of an arc, 0 of a line."""
        u: cython.int
        v: cython.int
        du: cython.double
        dv: cython.double
        eu: cython.double
        ev: cython.double
        flat: cython.double
        r: cython.double
        if self.kind[i] <= LINE or isnan(self.cu[i]):
            return 0.0
        u = (self.plane[i] - 17) * 2 % 3
        v = (u + 1) % 3
        du, dv = self.from_centre(i, u, v, False, self.cu[i], self.cv[i])
        eu, ev = self.from_centre(i, u, v, True, self.cu[i], self.cv[i])
        r = 0.5 * (sqrt(du * du + dv * dv) + sqrt(eu * eu + ev * ev))
        flat = min(1.0, fabs(self.sweep[i]) * DEGREE * r / self.length[i])
        return r / flat if flat > 0 else FAST

    @cython.cfunc
    @cython.inline
    def reach(
        self, i: cython.Py_ssize_t, w: cython.double, near: cython.double, far: cython.double
    ) -> cython.double:
        """w at the far end of a move that is entered with w, at most its cap; `near` and `far`: bends of its ends."""
        a: cython.double = self.seconds[i]
        rho: cython.double
        turned: cython.double
        if a >= FAST:
            return self.peak[i]
        rho = self.radius(i)
        if rho == 0:  # from w' = w + 2 a (length - near w - far w')
            near, far = min(1.0, a * near), min(1.0, a * far)
            w = (w * (1.0 - 2.0 * near) + 2.0 * a * self.length[i]) / (1.0 + 2.0 * far)
            return min(self.peak[i], max(w, 0.0))
        turned = asin(min(1.0, w / (a * rho))) + 2.0 * self.length[i] / rho
        return self.peak[i] if turned >= HALF_PI else min(self.peak[i], a * rho * sin(turned))

    @cython.cfunc
    def corner(
        self, last: cython.Py_ssize_t, i: cython.Py_ssize_t, limit: cython.double, exact: cython.bint
    ) -> cython.double:
        """w at which the corner between two moves may be taken, at most `limit`."""
        one = cython.declare(cython.double[3])
        two = cython.declare(cython.double[3])
        k: cython.int
        room: cython.double = min(self.length[last], self.length[i])
        w: cython.double
        wide: cython.double
        sharp: cython.double
        for k in range(3):
            one[k], two[k] = self.before[k], self.start[k]
        if exact:
            return self.turn(i, one, two, 0.0, FAST, limit)
        w = self.turn(i, one, two, self.deviation, 0.5 * room, limit)
        if w == limit or room >= self.span or self.kind[last] > LINE or self.kind[i] > LINE:
            return w
        sharp = self.bend[i]
        if self.widen(last, i, one, two):
            wide = self.turn(i, one, two, self.deviation, 0.5 * self.span, limit)
            if wide > w * 1.000001:  # more than rounding: the turn is one of several within the span
                self.bend[i] *= room / self.span  # its part of the turn
                return wide
        self.bend[i] = sharp
        return w

    @cython.cfunc
    def turn(
        self,
        i: cython.Py_ssize_t,
        one: cython.double[3],
        two: cython.double[3],
        deviation: cython.double,
        room: cython.double,
        limit: cython.double,
    ) -> cython.double:
        """w through a turn from one direction to another; `room` is how far from the corner it may begin.
        Sets the bend of the corner before move i."""
        k: cython.int
        q: cython.double = 0.0  # sin2 of half the turn
        s: cython.double
        r: cython.double
        cos_turn: cython.double
        sin_turn: cython.double
        n0: cython.double
        n1: cython.double
        most: cython.double
        needed: cython.double = 0.0
        for k in range(3):
            q += (two[k] - one[k]) * (two[k] - one[k])
        q *= 0.25
        self.bend[i] = 0.0
        if q < STRAIGHT:
            return limit
        if q >= 1.0 - STRAIGHT or deviation <= 0:
            return 0.0
        s = sqrt(1.0 - q)
        r = min(deviation * s * (1.0 + s) / q, room * s / sqrt(q))
        if q < FLAT and self.weakest * r >= limit:
            self.bend[i] = sqrt(q) / (s * self.weakest)
            return limit
        # The largest share of the acceleration towards the centre that each axis takes anywhere on that circle.
        cos_turn = 1.0 - 2.0 * q
        sin_turn = 2.0 * sqrt(q) * s
        for k in range(3):
            n0 = (two[k] - cos_turn * one[k]) / sin_turn
            n1 = (cos_turn * two[k] - one[k]) / sin_turn
            most = max(fabs(n0), fabs(n1))
            if one[k] * two[k] < 0:
                most = sqrt(one[k] * one[k] + n0 * n0)
            needed = max(needed, most * self.inverse[k])
        if needed == 0:
            return limit
        self.bend[i] = needed * sqrt(q) / s
        return min(limit, r / needed)

    @cython.cfunc
    def widen(
        self, last: cython.Py_ssize_t, i: cython.Py_ssize_t, one: cython.double[3], two: cython.double[3]
    ) -> cython.bint:
        """The directions over `span` before and behind a corner between short moves; False where the path leaves them
        by more than the deviation, or is not straight moves that far."""
        j: cython.Py_ssize_t
        n: cython.int
        k: cython.int
        side: cython.int
        left: cython.double
        part: cython.double
        size: cython.double
        along: cython.double
        off: cython.double
        chord = cython.declare(cython.double[3])
        first = cython.declare(cython.double[3])  # the far end of the nearest move, seen from the corner
        for side in range(2):
            left = self.span
            j = last if side == 0 else i
            for k in range(3):
                chord[k] = 0.0
            for n in range(MOST_STEPS):
                if self.length[j] > 0:
                    part = min(1.0, left / self.length[j])
                    for k in range(3):
                        off = self.at(j, k, True) - self.at(j, k, False)
                        if not isnan(off):
                            chord[k] += off * part
                        if n == 0:
                            first[k] = chord[k]
                    left -= self.length[j]
                if left <= 0:
                    break
                if side == 0:
                    if j == 0 or self.rest[j]:
                        break
                    j -= 1
                else:
                    j += 1
                    if j >= self.length.shape[0] or self.rest[j]:
                        break
                if self.kind[j] > LINE or not self.length[j] >= 0:
                    break
            if left > 0.5 * self.span:
                return False
            size = sqrt(chord[0] * chord[0] + chord[1] * chord[1] + chord[2] * chord[2])
            if size < 0.5 * (self.span - max(left, 0.0)):
                return False  # it turns back on itself
            along = 0.0
            for k in range(3):
                chord[k] /= size
                along += first[k] * chord[k]
            off = 0.0
            for k in range(3):
                off += (first[k] - along * chord[k]) * (first[k] - along * chord[k])
            if off > self.deviation * self.deviation:
                return False
            for k in range(3):
                if side == 0:
                    one[k] = chord[k]
                else:
                    two[k] = chord[k]
        return True

    @cython.cfunc
    def backwards(self) -> cython.int:
        """Lowers the speed at the beginning of each move to one it can be stopped from, and times the move."""
        i: cython.Py_ssize_t
        w0: cython.double
        w1: cython.double = 0.0
        far: cython.double = 0.0
        cap: cython.double
        a: cython.double
        for i in range(self.length.shape[0] - 1, -1, -1):
            if self.length[i] == 0:
                w1 = min(w1, self.entry[i])
                self.entry[i] = w1
                self.seconds[i] = self.peak[i] = 0.0
                continue
            cap = self.peak[i]
            if isnan(cap):
                w1 = self.entry[i] = far = 0.0
                self.seconds[i] = NAN
                continue
            if not self.planned:
                self.peak[i] = sqrt(cap)
                self.seconds[i] = self.length[i] / self.peak[i]
                continue
            w0 = min(self.entry[i], self.reach(i, w1, far, self.bend[i]))
            self.entry[i] = w0
            a = self.seconds[i]
            if a >= FAST:
                self.seconds[i] = self.length[i] / sqrt(cap)
                self.peak[i] = sqrt(cap)
            elif self.kind[i] <= LINE or self.radius(i) == 0:
                self.time_line(i, w0, w1, cap, a, far)
            else:
                self.time_arc(i, w0, w1, cap, a, self.radius(i))
            w1, far = w0, self.bend[i]
        return 0

    @cython.cfunc
    @cython.inline
    def time_line(
        self,
        i: cython.Py_ssize_t,
        w0: cython.double,
        w1: cython.double,
        cap: cython.double,
        a: cython.double,
        far: cython.double,
    ) -> cython.int:
        v0: cython.double = sqrt(w0)
        v1: cython.double = sqrt(w1)
        near: cython.double = min(self.bend[i], 1.0 / a)
        far = min(far, 1.0 / a)
        length: cython.double = self.length[i] - near * w0 - far * w1
        top: cython.double = max(w0, max(w1, min(cap, 0.5 * (w0 + w1) + a * length)))
        v: cython.double = sqrt(top)
        level: cython.double = length - (top - 0.5 * (w0 + w1)) / a
        self.peak[i] = v
        self.seconds[i] = near * v0 + far * v1 + (2.0 * v - v0 - v1) / a + (level / v if level > 0 else 0.0)
        return 0

    @cython.cfunc
    def time_arc(
        self,
        i: cython.Py_ssize_t,
        w0: cython.double,
        w1: cython.double,
        cap: cython.double,
        a: cython.double,
        rho: cython.double,
    ) -> cython.int:
        most: cython.double = a * rho
        whole: cython.double = 2.0 * self.length[i] / rho
        p0: cython.double = asin(min(1.0, w0 / most))
        p1: cython.double = asin(min(1.0, w1 / most))
        top: cython.double = min(asin(min(1.0, cap / most)), 0.5 * (p0 + p1 + whole))
        level: cython.double = 0.5 * rho * (whole - (top - p0) - (top - p1))
        v: cython.double
        top = max(top, max(p0, p1))
        v = sqrt(most * sin(top))
        self.peak[i] = v
        self.seconds[i] = 0.5 * rho / sqrt(most) * (turned_time(p0, top) + turned_time(p1, top))
        if level > 0:
            self.seconds[i] += level / v
        return 0
