"""The contact profile of one piece of path: where on the tool's rim material is met, and how deep.

The sweep notes each part of a cell that the piece takes off: its place v across the travel (left positive), the height
h that the rim meets there, and its area. Material v beside the axis is first met by the rim at the angle asin(v / r)
from the direction of travel, r the tool's radius at the top of the material. So the parts are gathered into bins across
the travel; a bin's area over the length swept is the share of it in contact, and the ends of a run of contact follow
from the area and its mean place, far finer than a cell. Bands repeat this for what is deeper than a limit, which is put
where the profile has its steps.

What may be shared with a row before (equal profiles of neighbours) is written once.
"""

import cython

if not cython.compiled:
    raise ImportError("gclint.stock.rim runs only as a compiled kernel")

from cython.cimports.libc.math import asin, sin

SECTORS = cython.declare(cython.int, 24)
BANDS = cython.declare(cython.int, 3)
MOST_BINS = cython.declare(cython.int, 60)
LEVELS = cython.declare(cython.int, 16)  # of what came off under the tip; as in sweep.py
SECTOR = cython.declare(cython.double, 7.5)  # degrees
DEGREES = cython.declare(cython.double, 57.29577951308232)
PER_MM = cython.declare(cython.double, 400.0)  # 16-bit depths: 2.5 micrometres, up to 163 mm
PER_DEGREE = cython.declare(cython.double, 100.0)
PER_SHARE = cython.declare(cython.double, 50000.0)
NONE = cython.declare(cython.short, 32767)  # no such run
NO_BAND = cython.declare(cython.int, 65535)
TRACE = cython.declare(cython.double, 0.02)  # share of a bin; less is no contact
# Where the inner bins of a wide run have from so much to so much of the length, they have all of it: a cut began or
# ended within a cell of the piece's ends.
BEGUN = cython.declare(cython.double, 0.85)
WHOLE = cython.declare(cython.double, 0.97)
ONE_LEVEL = cython.declare(cython.double, 0.8)  # of the highest bin: where all reach it, the contact has one depth
STEP = cython.declare(cython.double, 0.15)  # of the highest bin: a jump between two bins that is a step
SLOT = cython.declare(cython.double, 0.15)  # of a bin; what lacks less to the tool's width has all of it
SLIVER = cython.declare(cython.float, 0.1)  # of a cell; less has no height
NEAR = cython.declare(cython.double, 0.75)  # of a bin; contact of a shaped tool that ends so near the rim ends at it
THINNEST = cython.declare(cython.double, 0.004)  # mm; a narrower run is noise


@cython.cclass
class Rim:
    """The tables of profiles and what is gathered of the piece under way.

    depth [rows, 24], edges [rows, 12] (band, run, end), above [rows, 2], reach [rows], disc [rows, 5]: see contact.py.
    """

    def __init__(self, depth, edges, above, reach, disc):
        self.depth, self.edges, self.above, self.reach, self.disc = depth, edges, above, reach, disc
        rows = depth.shape[0]
        if (
            depth.shape[1] != SECTORS
            or edges.shape[1] != 4 * BANDS
            or above.shape[1] != BANDS - 1
            or disc.shape[1] != 5
            or min(edges.shape[0], above.shape[0], reach.shape[0], disc.shape[0]) < rows
        ):
            raise ValueError("the tables of profiles do not fit each other")
        self.used = 0
        for k in range(SECTORS):
            self.middle[k] = sin((-90.0 + SECTOR * (k + 0.5)) / DEGREES)
        self.clear()

    def clear(self):
        """Forgets the piece."""
        i: cython.int
        for i in range(SECTORS):
            self.depths[i] = 0
        for i in range(BANDS):
            self.parts[i] = 0
            self.limit[i] = 0
        self.ap = self.ae = self.angle = 0.0
        self.climb = 0.5

    def gather(self, v, h, area, n, band, half, cell, length):
        """Puts what is higher than the band's limit into bins between -half and half, each part shared by two bins."""
        i: cython.int
        b: cython.int
        m: cython.int = cython.cast(cython.int, min(cython.cast(cython.double, MOST_BINS), max(4.0, 2 * half / cell)))
        cover: cython.p_float = self.cover[band]
        high: cython.p_float = self.high[band]
        per: cython.float = m / (2 * half)
        from_edge: cython.float = half * m / (2 * half) + 0.5
        most: cython.float = m + 0.9999
        limit: cython.float = self.limit[band]
        p: cython.float
        x: cython.float
        y: cython.float
        self.bins, self.half, self.wide = m, half, 2 * half / m
        for i in range(m + 3):
            cover[i] = high[i] = 0
        for i in range(n):
            if h[i] <= limit:
                continue
            p = v[i] * per + from_edge
            p = p if p > 0 else 0
            p = p if p < most else most
            b = cython.cast(cython.int, p)
            x = (p - b) * area[i]
            y = area[i] - x
            cover[b] += y
            cover[b + 1] += x
            high[b] += y * h[i]
            high[b + 1] += x * h[i]
        # what was shared out beyond the rim belongs to the outermost bins
        cover[1] += cover[0]
        high[1] += high[0]
        cover[m] += cover[m + 1] + cover[m + 2]
        high[m] += high[m + 1] + high[m + 2]
        cover[0] = cover[m + 1] = cover[m + 2] = 0
        high[0] = high[m + 1] = high[m + 2] = 0
        if band == 0:
            self.scale = cell * cell / (self.wide * max(length, 1e-9))

    def highest(self, v, h, area, n, half, cell, length):
        """Puts the parts into bins as `gather` does, each into one, and keeps of each bin the highest and its place.

        The flank of a shaped tool takes a column off step by step, and only the first step meets all its height.
        """
        i: cython.int
        b: cython.int
        m: cython.int = cython.cast(cython.int, min(cython.cast(cython.double, MOST_BINS), max(4.0, 2 * half / cell)))
        per: cython.float = m / (2 * half)
        edge: cython.float = half
        x: cython.float
        self.bins, self.half, self.wide = m, half, 2 * half / m
        for i in range(m + 3):
            self.cover[0][i] = self.high[0][i] = 0
            self.place[i], self.low_end[i], self.high_end[i] = 0, edge, -edge
        for i in range(n):
            x = v[i] if v[i] > -edge else -edge
            x = x if x < edge else edge
            b = cython.cast(cython.int, (x + edge) * per) + 1
            b = b if b <= m else m
            self.cover[0][b] += area[i]
            if area[i] >= SLIVER and h[i] > self.high[0][b]:
                self.high[0][b], self.place[b] = h[i], x
            self.low_end[b] = min(self.low_end[b], x)
            self.high_end[b] = max(self.high_end[b], x)
        self.scale = cell * cell / (self.wide * max(length, 1e-9))

    def _keep(self, band, first, last):
        """Takes a run of contact (places across the travel or degrees), the two widest of a band being kept."""
        k: cython.int = self.parts[band]
        if k == 2:
            k = 0 if self.last[band][0] - self.first[band][0] < self.last[band][1] - self.first[band][1] else 1
            if last - first <= self.last[band][k] - self.first[band][k]:
                return
            if k == 0:  # they stay in their order across the travel
                self.first[band][0], self.last[band][0] = self.first[band][1], self.last[band][1]
            k = 1
        else:
            self.parts[band] = k + 1
        self.first[band][k], self.last[band][k] = first, last

    def _whole_length(self):
        """Sets the scale so that bins which are in contact over nearly the whole length are so over all of it."""
        b: cython.int
        n: cython.int = 0
        inner: cython.double = 0
        for b in range(2, self.bins):
            if self.cover[0][b] * self.scale > BEGUN - 0.05:
                inner += self.cover[0][b]
                n += 1
        if n > 3 and BEGUN < inner * self.scale / n < WHOLE:
            self.scale = n / inner

    def _runs(self, band):
        """Finds the runs of contact of a band, as places across the travel."""
        b: cython.int
        start: cython.int = 0
        c: cython.double
        width: cython.double = 0
        moment: cython.double = 0
        self.parts[band] = 0
        for b in range(1, self.bins + 2):
            c = self.cover[band][b] * self.scale
            if c > TRACE:
                start = b if start == 0 else start
                width += c
                moment += c * (b - 0.5)
            elif start > 0:
                if width * self.wide > THINNEST:
                    self._run(band, start, b - 1, width * self.wide, moment * self.wide / width - self.half)
                start, width, moment = 0, 0, 0
        if self.parts[band] == 2 and self.first[band][1] <= self.last[band][0]:  # so wide that they are one
            self.first[band][0] = min(self.first[band][0], self.first[band][1])
            self.last[band][0] = max(self.last[band][0], self.last[band][1])
            self.parts[band] = 1

    def _run(self, band, start, end, width, middle):
        """Adds the run of the bins from `start` to `end`, of this width about this place if all of it is in contact
        over the whole piece. Where some is not, as in a corner, its ends are where contact ends at its longest."""
        b: cython.int
        inner: cython.double = 0
        near: cython.double = 0.5 * self.wide
        first: cython.double = middle - 0.5 * width
        last: cython.double = middle + 0.5 * width
        if end - start >= 5:
            for b in range(start + 2, end - 1):
                inner += self.cover[band][b] * self.scale
            if inner < WHOLE * (end - start - 3):
                first = -self.half + (start + 1 - self._edge(band, start, 1)) * self.wide
                last = -self.half + (end - 2 + self._edge(band, end, -1)) * self.wide
                width = last - first
        # as wide as the tool but for noise is a slot, and what ends within half a bin of the rim ends at it
        if width > 2 * self.half - SLOT * self.wide:
            first, last = -self.half, self.half
        elif self.half - last < self.half + first:
            if last > self.half - near:
                first, last = self.half - width, self.half
        elif first < near - self.half:
            first, last = -self.half, width - self.half
        self._keep(band, max(first, -self.half), min(last, self.half))

    def _edge(self, band, b, inward):
        """How much of the outermost two bins of a run is in contact, by the longest of the outermost three."""
        one: cython.double = self.cover[band][b]
        two: cython.double = self.cover[band][b + inward]
        most: cython.double = max(max(one, two), cython.cast(cython.double, self.cover[band][b + 2 * inward]))
        return (one + two) / most

    def _limits(self):
        """Puts the bands' limits where the heights of the bins have their largest steps; returns how many bands."""
        b: cython.int
        k: cython.int
        n: cython.int = 0
        level = cython.declare(cython.float[64])
        x: cython.float
        gap: cython.double
        wide: cython.double = 0
        second: cython.double = 0
        at: cython.double = 0
        at_second: cython.double = 0
        for b in range(1, self.bins + 1):
            if self.cover[0][b] * self.scale <= TRACE:
                continue
            x = self.high[0][b] / self.cover[0][b]
            k = n
            while k > 0 and level[k - 1] > x:
                level[k] = level[k - 1]
                k -= 1
            level[k] = x
            n += 1
        if n < 2 or level[0] >= ONE_LEVEL * level[n - 1]:
            return 1
        for k in range(1, n):
            gap = level[k] - level[k - 1]
            if gap > wide:
                second, at_second = wide, at
                wide, at = gap, 0.5 * (level[k] + level[k - 1])
            elif gap > second:
                second, at_second = gap, 0.5 * (level[k] + level[k - 1])
        if wide < STEP * level[n - 1]:  # no step: a slope
            self.limit[1], self.limit[2] = level[n - 1] / 3, level[n - 1] * 2 / 3
            return 3
        if second < 0.5 * STEP * level[n - 1]:
            self.limit[1] = at
            return 2
        self.limit[1], self.limit[2] = min(at, at_second), max(at, at_second)
        return 3

    def _zone_mean(self, band, bands):
        """Mean height of what is deeper than the band's limit and no deeper than the next one's."""
        b: cython.int
        area: cython.double = 0
        high: cython.double = 0
        for b in range(1, self.bins + 1):
            area += self.cover[band][b]
            high += self.high[band][b]
            if band + 1 < bands:
                area -= self.cover[band + 1][b]
                high -= self.high[band + 1][b]
        return high / area if area > 1e-6 else self.limit[band]

    def _zone(self, band, bands, v, whole):
        """The same at one place across the travel; `whole` where nothing was gathered there."""
        p: cython.double = (v + self.half) / self.wide + 0.5
        b: cython.int
        k: cython.int
        area: cython.double
        high: cython.double
        w: cython.double
        found: cython.double = 0
        weight: cython.double = 0
        p = min(max(p, 1.0), cython.cast(cython.double, self.bins))
        b = cython.cast(cython.int, p)
        for k in range(2):
            area, high = self.cover[band][b + k], self.high[band][b + k]
            if band + 1 < bands:
                area -= self.cover[band + 1][b + k]
                high -= self.high[band + 1][b + k]
            if area * self.scale > TRACE:
                w = (1 - p + b) if k == 0 else p - b
                weight += w
                found += w * high / area
        return found / weight if weight > 1e-3 else whole

    def _band_at(self, v, bands):
        """The deepest band in contact at a place across the travel; -1 if none."""
        band: cython.int
        k: cython.int
        for band in range(bands - 1, -1, -1):
            for k in range(self.parts[band]):
                if self.first[band][k] <= v <= self.last[band][k]:
                    return band
        return -1

    def _sectors(self, bands):
        """Depth in the middle of each sector; a run so narrow that it meets no middle counts in its own sector."""
        i: cython.int
        k: cython.int
        band: cython.int
        v: cython.double
        mean = cython.declare(cython.double[3])
        for band in range(bands):
            mean[band] = self._zone_mean(band, bands)
        for i in range(SECTORS):
            v = self.middle[i] * self.half
            band = self._band_at(v, bands)
            self.depths[i] = self._zone(band, bands, v, mean[band]) if band >= 0 else 0
        for band in range(bands):
            for k in range(self.parts[band]):
                v = 0.5 * (asin(self.first[band][k] / self.half) + asin(self.last[band][k] / self.half)) * DEGREES
                i = cython.cast(cython.int, min(23.0, max(0.0, (v + 90) / SECTOR)))
                v = self._zone(band, bands, sin(v / DEGREES) * self.half, mean[band])
                if self.depths[i] < v:
                    self.depths[i] = v

    def _pair(self, bands):
        """The depth and width of the largest section that is so deep all over its width; its angle and climb."""
        band: cython.int
        best: cython.int = 0
        k: cython.int
        width: cython.double
        mean: cython.double
        most: cython.double = 0
        for band in range(bands):
            width = 0
            for k in range(self.parts[band]):
                width += self.last[band][k] - self.first[band][k]
            mean = self._zone_mean(band, bands)
            if mean * width > most:
                most, best = mean * width, band
                self.ap, self.ae = mean, width
        width = 0
        for k in range(self.parts[best]):
            width += max(0.0, min(self.last[best][k], 0.0) - min(self.first[best][k], 0.0))
        self.climb = width / self.ae if self.ae > 0 else 0.5
        self.angle = 0
        for k in range(self.parts[best]):
            self.angle += (asin(self.last[best][k] / self.half) - asin(self.first[best][k] / self.half)) * DEGREES

    def flat(self, v, h, area, n, radius, cell, length):
        """Lays out the contact of a tool whose rim stands upright; leaves the runs in degrees."""
        bands: cython.int
        band: cython.int
        k: cython.int
        self.limit[0] = 0
        self.gather(v, h, area, n, 0, radius, cell, length)
        self._runs(0)
        if self.parts[0] == 0:
            return
        bands = self._limits()
        for band in range(1, bands):
            self.gather(v, h, area, n, band, radius, cell, length)
            self._runs(band)
        self._sectors(bands)
        self._pair(bands)
        for band in range(bands):
            for k in range(self.parts[band]):
                self.first[band][k] = asin(self.first[band][k] / self.half) * DEGREES
                self.last[band][k] = asin(self.last[band][k] / self.half) * DEGREES
        for band in range(bands, BANDS):
            self.limit[band] = -1

    def rounded(self, foot, most):
        """Lays out the contact of a tool that is not flat, sorted by `highest` by height above the tip.

        local [bins]: the tool's radius at the height of each bin. foot: height of the lowest contact above the tip;
        most: the same of the highest.
        """
        b: cython.int
        band: cython.int
        last: cython.int = 0
        angle: cython.double
        end: cython.double
        high: cython.double
        before: cython.double = 0
        high_before: cython.double = 0
        start = cython.declare(cython.double[3])
        self.limit[0], self.limit[1], self.limit[2] = 0, (most - foot) / 3, (most - foot) * 2 / 3
        for band in range(BANDS):
            self.parts[band] = 0
            start[band] = 1e9
        for b in range(1, self.bins + 2):
            if b > self.bins or self.cover[0][b] * self.scale <= TRACE or self.high[0][b] <= foot:
                if last > 0:  # the run ends at the outer edge of the last cell
                    end = max(before, self._side(self.high_end[last] + 0.5 * self.wide, last))
                    for band in range(BANDS):
                        self._close(band, start[band], end)
                        start[band] = 1e9
                    self._fill(before, high_before, end, high_before)
                last = 0
                continue
            high = self.high[0][b] - foot
            angle = asin(min(1.0, max(-1.0, self.place[b] / max(self.local[b], 1e-6)))) * DEGREES
            if last == 0:
                before, high_before = min(angle, -self._side(0.5 * self.wide - self.low_end[b], b)), high
                for band in range(BANDS):
                    if high > self.limit[band]:
                        start[band] = before
            for band in range(1, BANDS):
                if (high > self.limit[band]) != (high_before > self.limit[band]):
                    end = before + (angle - before) * (self.limit[band] - high_before) / (high - high_before)
                    if high > high_before:
                        start[band] = end
                    else:
                        self._close(band, start[band], end)
                        start[band] = 1e9
            self._fill(before, high_before, angle, high)
            before, high_before, last = angle, high, b
        self.ap = most - foot

    def _side(self, v, b):
        """Degrees at which contact ends that reaches to v across the travel, in bin b; at the rim if near it."""
        r: cython.double = self.local[b]
        if r - v < NEAR * self.wide:
            return 90.0
        return asin(min(1.0, max(-1.0, v / max(r, 1e-6)))) * DEGREES

    def _close(self, band, start, end):
        if start < 1e8 and end > start:
            self._keep(band, start, end)

    def _fill(self, first, high_first, last, high_last):
        """Raises the sectors whose middles lie between two angles to a line between two heights."""
        k: cython.int
        angle: cython.double
        x: cython.float
        slope: cython.double = (high_last - high_first) / (last - first) if abs(last - first) > 1e-9 else 0.0
        if last < first:
            first, last, high_first, high_last = last, first, high_last, high_first
        k = cython.cast(cython.int, max(0.0, (first + 90) / SECTOR + 0.5 - 1e-9))
        while k < SECTORS:
            angle = -90 + SECTOR * (k + 0.5)
            if angle > last + 1e-9:
                break
            x = high_first + slope * (angle - first)
            if x > self.depths[k]:
                self.depths[k] = x
            k += 1

    def _reaches(self, area, under_area, under_high):
        """Share of the drop that came off under at least so much of the disc (in cells); 0 if less met material."""
        k: cython.int
        found: cython.double = 0
        for k in range(LEVELS - 1, -1, -1):
            found += under_area[k]
            if found >= area and under_area[k] > 0:
                return under_high[k] / under_area[k]
        return 0.0

    def _share(self, share):
        return cython.cast(cython.int, min(1.0, share) * PER_SHARE + 0.5)

    def write(self, reach, disc_area, share, under_area, under_high):
        """Writes the profile as a row, or finds it equal to the last one; returns its row.

        disc_area: of the disc, in cells; 0 where the tool does not go down. share: of it that met material. under_area,
        under_high [LEVELS]: that material's area and the sum of the heights taken off, by their share of the drop.
        """
        at: cython.Py_ssize_t = self.used
        i: cython.int
        k: cython.int
        band: cython.int
        area: cython.double = 0
        most: cython.double = 0
        tenth: cython.double
        new = cython.declare(cython.int[44])
        equal: cython.bint = at > 0
        if at >= self.depth.shape[0]:
            return self.depth.shape[0] - 1
        for i in range(SECTORS):
            new[i] = cython.cast(cython.int, min(65535.0, self.depths[i] * PER_MM + 0.5))
        for band in range(BANDS):
            for k in range(2):
                i = SECTORS + 4 * band + 2 * k
                if k < self.parts[band] and self.limit[band] >= 0:
                    new[i] = cython.cast(cython.int, (self.first[band][k] + 90) * PER_DEGREE + 0.5) - 9000
                    new[i + 1] = cython.cast(cython.int, (self.last[band][k] + 90) * PER_DEGREE + 0.5) - 9000
                else:
                    new[i] = new[i + 1] = NONE
        for band in range(1, BANDS):
            i = 35 + band
            new[i] = cython.cast(cython.int, min(65534.0, self.limit[band] * PER_MM)) if self.parts[band] else NO_BAND
        new[38] = cython.cast(cython.int, min(65535.0, reach * PER_MM + 0.5))
        for i in range(5):
            new[39 + i] = 0
        if disc_area > 0 and share > 0:
            for i in range(LEVELS):
                area += under_area[i]
                if under_area[i] > 0.01 * disc_area:
                    most = under_high[i] / under_area[i]
            tenth = self._reaches(0.1 * disc_area, under_area, under_high)
            new[39] = self._share(share)
            new[40] = self._share(self._reaches(0.5 * area, under_area, under_high))
            new[41] = self._share(self._reaches(0.5 * disc_area, under_area, under_high))
            new[42], new[43] = self._share(tenth), self._share(max(tenth, most))
        for i in range(SECTORS):
            equal = equal and self.depth[at - 1, i] == new[i]
            self.depth[at, i] = new[i]
        for i in range(4 * BANDS):
            equal = equal and self.edges[at - 1, i] == new[SECTORS + i]
            self.edges[at, i] = new[SECTORS + i]
        for i in range(2):
            equal = equal and self.above[at - 1, i] == new[36 + i]
            self.above[at, i] = new[36 + i]
        equal = equal and self.reach[at - 1] == new[38]
        self.reach[at] = new[38]
        for i in range(5):
            equal = equal and self.disc[at - 1, i] == new[39 + i]
            self.disc[at, i] = new[39 + i]
        if equal:
            return at - 1
        self.used = at + 1
        return at
