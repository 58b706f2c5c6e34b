"""Writes the programs of the Lowtide workshop (invented) as several post-processors would write them.

Run it to write every program under sample_programs/ anew:  python tests/samples/make_samples.py
The declarations beside the programs (shop.toml, job.toml, samples.toml) are written by hand.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from pathlib import Path

SAMPLES = Path(__file__).resolve().parents[2] / "sample_programs"

Point = tuple[float, float]
Segment = tuple[Point, Point | None, bool]  # end, centre (None: straight), clockwise


class Post:
    """One post-processor's habits. Positions go in as the program speaks them: mm, or inches for an inch program."""

    def __init__(
        self,
        decimals: int = 3,
        numbers: int = 0,
        space: str = " ",
        lower: bool = False,
        eol: str = "\n",
        zeros: str = "point",  # "full" X10.000, "point" X10., "bare" X10
        radius_arcs: bool = False,
        modal: bool = True,
        comment: str = "({})",
        code_width: int = 1,
        near: float = 1,  # how far above the stock the rapid down ends
    ) -> None:
        self.decimals, self.numbers, self.space, self.lower, self.eol = decimals, numbers, space, lower, eol
        self.zeros, self.radius_arcs, self.modal, self.comment = zeros, radius_arcs, modal, comment
        self.code_width, self.near = code_width, near
        self.text: list[str] = []
        self.at: dict[str, float] = {}
        self.motion: int | None = None
        self.feed: float | None = None
        self.block_number = 0

    def number(self, value: float) -> str:
        text = f"{value:.{self.decimals}f}"
        if float(text) == 0:
            text = text.lstrip("-")
        if self.zeros == "full":
            return text
        text = text.rstrip("0")
        return text.rstrip(".") if self.zeros == "bare" else text

    def block(self, words: str) -> None:
        """A block as it stands, words parted by single spaces; numbered where this post-processor numbers."""
        if self.numbers:
            self.block_number += self.numbers
            words = f"N{self.block_number} {words}"
        text = words.replace(" ", self.space)
        self.text.append(text.lower() if self.lower else text)

    def blocks(self, *lines: str) -> None:
        for line in lines:
            self.block(line)

    def say(self, text: str) -> None:
        self.text.append(self.comment.format(text))

    def bare(self, text: str) -> None:
        self.text.append(text)

    def forget(self) -> None:
        """After a tool change or a cycle nothing is taken as still in force."""
        self.at, self.motion, self.feed = {}, None, None

    def _move(self, code: int, ends: dict[str, float | None], tail: list[str], feed: float | None) -> None:
        words = [] if self.modal and self.motion == code else [f"G{code:0{self.code_width}d}"]
        for letter, value in ends.items():
            if value is None:
                continue
            text = self.number(value)
            if not self.modal or tail or self.at.get(letter) != float(text):
                words.append(letter + text)
            self.at[letter] = float(text)
        words += tail
        if feed is not None and (feed != self.feed or not self.modal):
            words.append("F" + (f"{feed:g}" if self.zeros == "bare" or feed != int(feed) else f"{feed:.0f}."))
            self.feed = feed
        if len(words) > (0 if self.modal and self.motion == code else 1):
            self.motion = code
            self.block(" ".join(words))

    def rapid(self, x: float | None = None, y: float | None = None, z: float | None = None) -> None:
        self._move(0, {"X": x, "Y": y, "Z": z}, [], None)

    def line(
        self, x: float | None = None, y: float | None = None, z: float | None = None, f: float | None = None
    ) -> None:
        self._move(1, {"X": x, "Y": y, "Z": z}, [], f)

    def arc(self, end: Point, centre: Point, clockwise: bool, z: float | None = None, f: float | None = None) -> None:
        """An arc with its centre as I and J from the position as it was written, or its radius as R."""
        i, j = centre[0] - self.at["X"], centre[1] - self.at["Y"]
        whole = math.dist(end, (self.at["X"], self.at["Y"])) < 10 ** -self.decimals
        if self.radius_arcs and not whole:
            tail = ["R" + self.number(math.hypot(i, j))]
        else:
            tail = ["I" + self.number(i), "J" + self.number(j)]
        self._move(2 if clockwise else 3, {"X": end[0], "Y": end[1], "Z": z}, tail, f)

    def go(self, segment: Segment, z: float | None = None, f: float | None = None) -> None:
        end, centre, clockwise = segment
        if centre is None:
            self.line(end[0], end[1], z, f)
        else:
            self.arc(end, centre, clockwise, z, f)

    def bytes(self) -> bytes:
        return (self.eol.join(self.text) + self.eol).encode()


# ---- shapes: every path is that of the tool's centre


def round_box(low: Point, high: Point, radius: float, clockwise: bool) -> tuple[Point, list[Segment]]:
    """A closed rectangle with round corners; it starts at the beginning of its lower (upper if clockwise) side."""
    (x0, y0), (x1, y1), r = low, high, radius
    start = (x0 + r, y0)
    path: list[Segment] = [
        ((x1 - r, y0), None, False),
        ((x1, y0 + r), (x1 - r, y0 + r), False),
        ((x1, y1 - r), None, False),
        ((x1 - r, y1), (x1 - r, y1 - r), False),
        ((x0 + r, y1), None, False),
        ((x0, y1 - r), (x0 + r, y1 - r), False),
        ((x0, y0 + r), None, False),
        (start, (x0 + r, y0 + r), False),
    ]
    if clockwise:  # mirrored top to bottom
        flip = y0 + y1

        def mirrored(p: Point) -> Point:
            return p[0], flip - p[1]

        path = [(mirrored(e), None if c is None else mirrored(c), True) for e, c, _ in path]
        start = mirrored(start)
    if r == 0:
        path = [s for s in path if s[1] is None]
    return start, path


def box(low: Point, high: Point) -> tuple[Point, list[Segment]]:
    """A closed rectangle, counter-clockwise from its lower left corner."""
    return round_box(low, high, 0, False)


def around(centre: Point, radius: float, degrees: float) -> Point:
    turn = math.radians(degrees)
    return centre[0] + radius * math.cos(turn), centre[1] + radius * math.sin(turn)


def down_to(post: Post, start: Point, clear: float, top: float, plunge: float) -> None:
    """Over the start, then down to the top of the stock."""
    post.rapid(z=clear)
    post.rapid(*start)
    post.rapid(z=top + post.near)
    post.line(z=top, f=plunge)


def contour(
    post: Post, shape: tuple[Point, list[Segment]], levels: list[float], feed: float, ramp_feed: float, tab: float = 0
) -> None:
    """Laps from Z0 down; each level is reached by a ramp along the first side. `tab`: height of the last lap's tabs."""
    _, path = shape
    for level in levels:
        post.go(path[0], level, ramp_feed)
        for number, segment in enumerate(path[1:]):
            if tab and level == levels[-1] and segment[1] is None:
                begin = path[number][0]
                tabbed(post, begin, segment[0], level, tab, feed)
            else:
                post.go(segment, f=feed)
    post.go(path[0], f=feed)


def tabbed(post: Post, begin: Point, end: Point, z: float, height: float, feed: float) -> None:
    """A side with one tab in its middle: up a slope, 12 mm across, down about 9 degrees; none where it is too short."""
    length, slope, half = math.dist(begin, end), height * 6.5, 6.0
    if length < 2 * (half + slope):
        post.line(*end, f=feed)
        return

    def along(s: float) -> Point:
        share = s / length
        return begin[0] + (end[0] - begin[0]) * share, begin[1] + (end[1] - begin[1]) * share

    middle = length / 2
    post.line(*along(middle - half - slope), f=feed)
    post.line(*along(middle - half), z=z + height)
    post.line(*along(middle + half))
    post.line(*along(middle + half + slope), z=z)
    post.line(*end)


def ring(
    post: Post, centre: Point, radius: float, levels: list[float], ramp: float, feed: float, clockwise: bool
) -> None:
    """A circular groove; a helix over `ramp` degrees of the circle leads to each level, then comes one whole turn."""
    turn, at = (-ramp if clockwise else ramp), 0.0
    for level in levels:
        at += turn
        here = around(centre, radius, at)
        post.arc(here, centre, clockwise, z=level, f=feed)
        post.arc(here, centre, clockwise)


def bore(post: Post, centre: Point, radius: float, pitch: float, depth: float, feed: float) -> None:
    """Helix down at `pitch` a turn, then one level turn."""
    start, z = around(centre, radius, 0), 0.0
    while z > depth + 1e-9:
        z = max(z - pitch, depth)
        post.arc(start, centre, False, z=z, f=feed)
    post.arc(start, centre, False)


def groove(post: Post, a: Point, b: Point, steps: list[float], feed: float) -> None:
    """To and fro along a line, each leg a ramp to the next step, then once level."""
    ends = [b, a]
    for number, z in enumerate(steps):
        post.line(*ends[number % 2], z=z, f=feed)
    post.line(*ends[len(steps) % 2])


STROKES: dict[str, list[list[Point]]] = {  # letters on a grid 4 wide and 6 high
    "L": [[(0, 6), (0, 0), (4, 0)]],
    "O": [[(1, 0), (3, 0), (4, 1.5), (4, 4.5), (3, 6), (1, 6), (0, 4.5), (0, 1.5), (1, 0)]],
    "W": [[(0, 6), (1, 0), (2, 4), (3, 0), (4, 6)]],
    "T": [[(2, 0), (2, 6)], [(0, 6), (4, 6)]],
    "I": [[(2, 0), (2, 6)]],
    "D": [[(0, 0), (0, 6), (2.5, 6), (4, 4.5), (4, 1.5), (2.5, 0), (0, 0)]],
    "E": [[(4, 6), (0, 6), (0, 0), (4, 0)], [(0, 3), (3, 3)]],
}


def letters(word: str, origin: Point, unit: float) -> Iterator[list[Point]]:
    for number, letter in enumerate(word):
        for stroke in STROKES[letter]:
            yield [(origin[0] + (x + number * 5.5) * unit, origin[1] + y * unit) for x, y in stroke]


def stroke(post: Post, points: list[Point], depth: float, clear: float, feed: float, plunge: float) -> None:
    """Ramp down along the first leg, cut the stroke, and come back over the first leg where the ramp left material."""
    down_to(post, points[0], clear, 0, plunge)
    post.line(*points[1], z=depth, f=feed)
    post.line(*points[0])
    for point in points[1:]:
        post.line(*point)
    post.rapid(z=clear)


def steps(last: float, each: float) -> list[float]:
    count = math.ceil(-last / each - 1e-9)
    return [last * (number + 1) / count for number in range(count)]


# ---- programs that are meant to be clean


def tide_dial() -> bytes:
    """Cured epoxy, 1/8 in down-cut on the hand-dialled router: every way down is a ramp of about 3 degrees."""
    post = Post(decimals=3, zeros="full", code_width=2)
    post.say("TIDE DIAL  LOWTIDE WORKSHOP")
    post.say("T1 1/8 IN FLAT 2 FLUTE DOWN-CUT  DIAL 2")
    post.blocks("G21", "G90 G94", "G17", "G54", "T1", "S12500 M03")
    post.rapid(z=15)
    for radius in (32.0, 20.0):
        down_to(post, (radius, 0), 5, 0, 230)
        ring(post, (0, 0), radius, steps(-2.4, 1.2), 1500 / radius, 1150, clockwise=True)
        post.rapid(z=5)
    for hour in range(12):
        outer, inner = around((0, 0), 42, 30 * hour), around((0, 0), 36.4, 30 * hour)
        if hour % 3 == 0:
            inner = around((0, 0), 24, 30 * hour)
        down_to(post, outer, 5, 0, 230)
        groove(post, outer, inner, steps(-1.2, 0.6 if hour % 3 == 0 else 0.28), 1150)
        post.rapid(z=5)
    down_to(post, (1.4, 0), 5, 0, 230)
    bore(post, (0, 0), 1.4, 0.4, -6, 1150)
    post.rapid(z=25)
    post.blocks("M05", "G00 X0.000 Y70.000", "M30")
    return post.bytes()


def shelf_bracket() -> bytes:
    """Birch plywood, 1/4 in up-cut: two bored holes, then the outline in three laps with tabs in the last."""
    post = Post(decimals=3, zeros="bare")
    for line in ("shelf bracket, lowtide workshop", "tool 2: 6.35 mm flat end mill, 2 flutes, dial 3"):
        post.say(line)
    post.blocks("G90 G94 G17", "G21", "G54", "T2", "M3 S16000")
    post.rapid(z=20)
    for hole in ((20.0, 20.0), (120.0, 60.0)):
        down_to(post, (hole[0] + 2, hole[1]), 6, 0, 500)
        bore(post, hole, 2, 1, -11.9, 1200)
        post.rapid(z=6)
    shape = round_box((-3.175, -3.175), (143.175, 83.175), 13.175, clockwise=True)
    down_to(post, shape[0], 6, 0, 500)
    contour(post, shape, [-4, -8, -11.9], 2000, 1500, tab=3)
    post.rapid(z=20)
    post.blocks("M5", "G0 X0 Y0", "M30")
    return post.bytes()


def _binnacle(title: str, tool: str, number: int) -> Post:
    post = Post(decimals=3, zeros="point")
    post.say(f"BINNACLE CAP, BIRCH PLYWOOD 18 MM: {title}")
    post.say(tool)
    post.blocks("G90 G94 G17", "G21", "G54", f"T{number}", "M3 S16000")
    post.rapid(z=20)
    return post


def binnacle_rough() -> bytes:
    """Birch plywood, 1/4 in up-cut: a pocket of 68 by 28 mm, 0.5 mm left on its wall and floor."""
    post = _binnacle("ROUGH", "T2 1/4 IN FLAT 2 FLUTE DIAL 3", 2)
    down_to(post, (40, 40), 6, 0, 500)
    groove(post, (40, 40), (80, 40), steps(-7.5, 2.5), 1500)
    for lap in range(1, 5):
        k = 2.5 * lap + (0.325 if lap == 4 else 0)
        start, path = box((40 - k, 40 - k), (80 + k, 40 + k))
        post.line(*start, f=2000)
        for segment in path:
            post.go(segment)
    post.rapid(z=20)
    post.blocks("M5", "G0 X0 Y0", "M30")
    return post.bytes()


def binnacle_finish() -> bytes:
    """The same pocket, 1/8 in down-cut: down in what was cleared, the floor, then the wall in two levels."""
    post = _binnacle("FINISH", "T1 1/8 IN FLAT 2 FLUTE DIAL 3", 1)
    post.rapid(60, 40)
    post.rapid(z=-7)
    post.line(z=-7.4, f=400)
    post.line(50, 40, -8, f=1100)
    for row in range(12):
        ends, y = (28.5, 91.5), 28.5 + 23 * row / 11
        post.line(ends[row % 2], y, f=1300)
        post.line(ends[(row + 1) % 2], y)
    for level in (-4, -8):
        post.rapid(z=6)
        post.rapid(60, 40)
        post.rapid(z=level + 0.6)
        post.line(50, 30, level, f=1100)
        start, path = round_box((27.5875, 27.5875), (92.4125, 52.4125), 2, clockwise=False)
        post.line(*start)
        for segment in path:
            post.go(segment, f=1500)
        post.line(50, 30)
    post.rapid(z=20)
    post.blocks("M5", "G0 X0 Y0", "M30")
    return post.bytes()


def binnacle_back() -> bytes:
    """The other side, 1/4 in up-cut: a round opening through the floor of the pocket, bored from below."""
    post = _binnacle("SECOND SIDE, TURNED OVER LEFT TO RIGHT", "T2 1/4 IN FLAT 2 FLUTE DIAL 3", 2)
    down_to(post, (65, 40), 6, 0, 500)
    bore(post, (60, 40), 5, 1.5, -11, 1200)
    post.rapid(z=20)
    post.blocks("M5", "G0 X0 Y0", "M30")
    return post.bytes()


def harbour_sign() -> bytes:
    """Oak, in inches: letters with a 60 degree V, then a round-cornered groove with a 1/4 in flat tool."""
    post = Post(decimals=4, numbers=10, zeros="point", radius_arcs=True, eol="\r\n", near=0.04)
    post.bare("%")
    post.say("HARBOUR SIGN - INCH")
    post.say("T5 D=0.5 60DEG V 2 FLUTE / T3 D=0.25 FLAT 2 FLUTE UP-CUT")
    post.blocks("G90 G94 G17", "G20", "G53 G0 Z0.", "T5 M6", "S16000 M3", "G54", "G4 P5.")
    post.forget()
    post.rapid(1, 1)
    post.block("G43 Z0.6 H5")
    post.forget()
    for points in letters("LOWTIDE", (1.0, 1.0), 0.22):
        stroke(post, points, -0.025, 0.2, 60, 20)
    post.blocks("M5", "G53 G0 Z0.", "T3 M6", "S16000 M3", "G4 P5.")
    post.forget()
    shape = round_box((0.5, 0.5), (9.75, 2.75), 0.5, clockwise=False)
    post.rapid(*shape[0])
    post.block("G43 Z0.6 H3")
    post.forget()
    down_to(post, shape[0], 0.2, 0, 20)
    contour(post, shape, [-0.125, -0.25], 80, 60)
    post.rapid(z=0.6)
    post.blocks("M5", "G53 G0 Z0.", "G53 G0 X0. Y0.", "M30")
    post.bare("%")
    return post.bytes()


def rail_cleat() -> bytes:
    """Aluminium on the small mill: pocket from a helix, outline by side milling from outside, two pecked holes."""
    post = Post(decimals=4, numbers=5, zeros="point")
    post.bare("%")
    post.say("RAIL CLEAT")
    post.say("T1 6 MM FLAT, 3 FLUTES")
    post.say("T2 4 MM DRILL")
    post.blocks("G90 G94 G17 G49 G40 G80", "G21", "G53 G0 Z0.", "T1 M6", "S16000 M3", "G54", "M8", "G4 P4.")
    post.forget()
    post.rapid(2, 0)
    post.block("G43 Z15. H1")
    post.forget()
    for level in (-1.0, -2.0, -3.0):  # pocket 30 x 14 with 3 mm corners
        down_to(post, (2, 0), 5, level + 1, 200)
        z = level + 1
        for _ in range(2):
            z -= 0.5
            post.arc((2, 0), (0, 0), False, z=z, f=1300)
        post.arc((2, 0), (0, 0), False)
        post.line(8, 0, f=1440)
        post.line(-8, 0)
        for out in (2.0, 4.0):
            start, path = box((-8 + 2 - out, -out), (8 - 2 + out, out))
            post.line(*start)
            for segment in path:
                post.go(segment)
        post.rapid(z=5)
    for level in (-2.5, -5.0, -7.5):  # part 60 x 30 in a blank 62 x 32
        start, path = round_box((-33, -18), (33, 18), 7, clockwise=True)
        post.rapid(start[0] - 6, 26)
        post.rapid(z=2)
        post.line(z=level, f=400)
        post.line(*start, f=1440)
        for segment in path:
            post.go(segment)
        post.line(path[0][0][0] - 30, 18)
        post.line(path[0][0][0] - 24, 26)
        post.rapid(z=5)
    post.blocks("M9", "M5", "G53 G0 Z0.", "T2 M6", "S7000 M3", "M8", "G4 P4.")
    post.forget()
    post.rapid(-23, 0)
    post.block("G43 Z15. H2")
    post.blocks("G98 G83 X-23. Y0. Z-9. R1. Q1. F280.", "X23.", "G80")
    post.blocks("M9", "M5", "G53 G0 Z0.", "G53 G0 X0. Y0.", "M30")
    post.bare("%")
    return post.bytes()


def hull(x: float, y: float) -> float:
    """Surface of a half hull, mm below the blank's top, over a plan of 100 x 36 mm centred on Y0."""
    along = (x - 45) / 55
    beam = 18 * max(0.0, 1 - along * along)
    across = min(1.0, abs(y) / beam) if beam > 0.5 else 1.0
    return -8 + 8 * max(0.0, 1 - along * along) ** 0.6 * math.sqrt(max(0.0, 1 - across**2.2)) - 0.3


def ball_on(surface: Callable[[float, float], float], x: float, y: float, radius: float) -> float:
    """Height of a ball's tip that rests on the surface with its centre over (x, y)."""
    best = -1e9
    for i in range(-4, 5):
        for j in range(-4, 5):
            dx, dy = i * radius / 4.4, j * radius / 4.4
            if dx * dx + dy * dy < radius * radius:
                best = max(best, surface(x + dx, y + dy) + math.sqrt(radius * radius - dx * dx - dy * dy) - radius)
    return best


def thinned(points: list[tuple[float, float]], band: float) -> list[tuple[float, float]]:
    """The points of (x, z) that are needed to stay within `band` of all of them."""
    if len(points) < 3:
        return points
    (xa, za), (xb, zb) = points[0], points[-1]
    off = [abs(z - (za + (zb - za) * (x - xa) / (xb - xa))) for x, z in points]
    worst = max(range(len(off)), key=off.__getitem__)
    if off[worst] <= band:
        return [points[0], points[-1]]
    return thinned(points[: worst + 1], band)[:-1] + thinned(points[worst:], band)


def half_hull() -> bytes:
    """Beech, 6 mm ball: layers that stop short of the hull, then fine lines over it, all entered from outside."""
    post = Post(decimals=3, zeros="bare")
    post.say("half hull, 1:40, lowtide workshop")
    post.say("T4 ball 6 mm 2 flutes")
    post.blocks("G21", "G90 G94 G17", "G54", "T4 M6", "G43 H4", "S18000 M3", "G4 P4")
    post.rapid(z=15)
    xs = [-5 + 0.5 * n for n in range(221)]

    def lines(ys: list[float], floor: float, spare: float, feed: float, band: float) -> None:
        post.rapid(xs[0], ys[0])
        post.rapid(z=2)
        first = True
        for row, y in enumerate(ys):
            points = [(x, max(floor, ball_on(hull, x, y, 3) + spare)) for x in xs]
            points = thinned(points, band)
            points = points if row % 2 == 0 else points[::-1]
            post.line(points[0][0], y, points[0][1], 800 if first else feed)
            first = False
            for x, z in points[1:]:
                post.line(x, y, z, feed)
        post.rapid(z=15)

    rough = [-22.5 + 2.5 * n for n in range(19)]
    for floor in (-2.5, -5.0, -7.4):
        lines(rough, floor, 0.5, 2400, 0.05)
    lines([-22 + 0.8 * n for n in range(56)], -8.3, 0, 2400, 0.004)
    post.blocks("M5", "G53 G0 Z0", "M30")
    return post.bytes()


def oar_rack() -> bytes:
    """HDPE, one flute: lower case, words glued together, and all travel written as G1 at the cutting feed."""
    post = Post(decimals=3, zeros="bare", space="", lower=True, comment="; {}")
    post.say("oar rack, lowtide workshop")
    post.say("t3 6mm single flute up-cut, dial 3")
    post.blocks("G21", "G90", "G94", "G17", "G54", "T3", "M3 S16000")
    post.line(z=6, f=800)
    for number in range(4):
        x = 30 + 45 * number
        post.line(x, 0, f=1400)
        post.line(z=0, f=450)
        a, b = (x, 0.0), (x, 60.0)
        groove(post, a, b, [-3, -6], 1400)
        post.line(z=6, f=800)
    post.line(0, 0, f=1400)
    post.blocks("M5", "M2")
    return post.bytes()


def plank_hook() -> bytes:
    """MDF, no shop declared: the tool's facts stand in a comment; R arcs, CR LF, home by G28 in Z."""
    post = Post(decimals=3, numbers=1, zeros="full", radius_arcs=True, eol="\r\n", modal=False)
    post.say("PLANK HOOK - MDF 9 MM")
    post.say("TOOL: 1/4 IN END MILL, 2 FLUTES, UP-CUT")
    post.blocks("G21 G17 G90 G94", "G54", "S18000 M3", "G4 P3")
    shape = round_box((-3.175, -3.175), (63.175, 43.175), 8.175, clockwise=True)
    post.rapid(*shape[0])
    down_to(post, shape[0], 8, 0, 800)
    contour(post, shape, [-3, -6, -8.6], 2500, 1500)
    post.rapid(z=8)
    post.blocks("M5", "G91 G28 Z0.000", "G90", "M30")
    return post.bytes()


def sheave_cheek() -> bytes:
    """Aluminium: the outline is written as it is drawn, and G41 keeps the tool beside it; straight leads."""
    post = Post(decimals=3, numbers=10, zeros="point")
    post.bare("%")
    post.say("SHEAVE CHEEK")
    post.say("T1 6 MM FLAT, 3 FLUTES, COMPENSATED IN THE CONTROLLER BY D1")
    post.blocks("G90 G94 G17 G49 G40 G80", "G21", "G53 G0 Z0.", "T1 M6", "S16000 M3", "G54", "M8", "G4 P4.")
    post.forget()
    post.rapid(-48, 26)
    post.block("G43 Z15. H1")
    post.forget()
    start, path = round_box((-30, -15), (30, 15), 4, clockwise=True)
    for level in (-2.5, -5.0, -7.5):
        post.rapid(-48, 26)
        post.rapid(z=2)
        post.line(z=level, f=400)
        post.block("G41 D1 X-38. Y15. F1440.")
        post.at |= {"X": -38.0, "Y": 15.0}
        post.feed = 1440
        post.line(*start)
        for segment in path:
            post.go(segment)
        post.line(-10, 15)
        post.block("G40 X0. Y26.")
        post.at |= {"X": 0.0, "Y": 26.0}
        post.rapid(z=5)
    post.blocks("M9", "M5", "G53 G0 Z0.", "G53 G0 X0. Y0.", "M30")
    post.bare("%")
    return post.bytes()


def winch_pocket() -> bytes:
    """Aluminium: a slot opened slowly, then fast narrow laps that slow down before each inside corner."""
    post = Post(decimals=3, zeros="point")
    post.say("WINCH POCKET, ALUMINIUM 10 MM")
    post.say("T1 D=6 FLAT 3 FLUTE UP-CUT")
    post.blocks("G90 G94 G17", "G21", "G53 G0 Z0.", "T1 M6", "S14000 M3", "G54", "M8", "G4 P4.")
    post.forget()
    post.rapid(20, 20)
    post.block("G43 Z15. H1")
    post.forget()
    post.say("1 THE SLOT")
    down_to(post, (20, 20), 5, 0, 200)
    groove(post, (20, 20), (60, 20), [-1, -2, -3], 1300)
    post.say("2 LAPS OF 1.2 MM, SLOW IN THE CORNERS")
    for lap in range(1, 8):
        k = 1.2 * lap
        (x, y), path = box((20 - k, 20 - k), (60 + k, 20 + k))
        post.line(x + 3, y, f=1400)
        for number, ((end_x, end_y), _, _) in enumerate([*path, ((x + 3, y), None, False)]):
            long, here = math.dist((end_x, end_y), (post.at["X"], post.at["Y"])), (post.at["X"], post.at["Y"])
            for left, feed in ((long - 1.5, 1500), (3.5, 3200), (0, 1500)) if long > 6 and number < 4 else ((0, 1500),):
                share = 1 - left / long
                post.line(here[0] + (end_x - here[0]) * share, here[1] + (end_y - here[1]) * share, f=feed)
    post.rapid(z=15)
    post.blocks("M9", "M5", "G53 G0 Z0.", "M30")
    return post.bytes()


def bollard_row() -> bytes:
    """Written by hand for a mill with macros: a loop over the places, and a subprogram with a loop over the depths."""
    return b"""\
%
O2040 (BOLLARD ROW, HDPE 12 MM)
(T1 6 MM THREE FLUTES. G4 P IS MILLISECONDS HERE)
G21 G90 G94 G17 G54 G40 G49 G80
T1 M6
S9000 M3
G4 P5000
G0 G43 H1 Z40.
#101=25. (X OF THE FIRST SLOT)
WHILE [#101 LE 145.] DO1
G0 X#101 Y15.
Z3.
M98 P2041
G0 Z3.
#101=#101+40.
END1
G0 Z40.
M5
M30
O2041 (ONE SLOT, 30 MM LONG, 6 MM DEEP)
#102=0. (DEPTH SO FAR)
G1 Z0. F600.
WHILE [#102 GT -6.] DO2
#102=#102-1.5
G1 Y45. Z#102 F1500.
Y15. F2400.
END2
M99
%
"""


def bosun_plate() -> bytes:
    """Aluminium, 20 mm: six deep pecked holes and two that end in a short wait, then two bores by a helix."""
    post = Post(decimals=3, numbers=5, zeros="point")
    post.bare("%")
    post.say("BOSUN PLATE")
    post.say("T2 4 MM DRILL")
    post.say("T1 6 MM FLAT, 3 FLUTES")
    post.blocks("G90 G94 G17 G49 G40 G80", "G21", "G53 G0 Z0.", "T2 M6", "S7000 M3", "G54", "M8", "G4 P4.")
    post.forget()
    post.rapid(15, 15)
    post.block("G43 Z15. H2")
    post.blocks("G98 G83 X15. Y15. Z-17. R1. Q4. F280.", "X45.", "X75.", "Y45.", "X45.", "X15.", "G80")
    post.blocks("G98 G82 X30. Y30. Z-6. R1. P0.3 F280.", "X60.", "G80")
    post.blocks("M9", "M5", "G53 G0 Z0.", "T1 M6", "S16000 M3", "M8", "G4 P4.")
    post.forget()
    post.rapid(19, 30)
    post.block("G43 Z15. H1")
    post.forget()
    for x in (15.0, 75.0):
        down_to(post, (x + 4, 30), 5, 0, 200)
        bore(post, (x, 30), 4, 0.6, -5.4, 1300)
        post.line(x, 30)
        post.rapid(z=5)
    post.rapid(z=15)
    post.blocks("M9", "M5", "G53 G0 Z0.", "G53 G0 X0. Y0.", "M30")
    post.bare("%")
    return post.bytes()


def tide_gate() -> bytes:
    """Birch plywood between clamps: grooves, a stop for the tool change, a tabbed outline by a compression tool."""
    post = Post(decimals=3, zeros="bare")
    post.say("tide gate, lowtide workshop")
    post.say("t1 1/8 in down-cut, then t5 1/4 in compression. dial 3 for both. clamps left and right, 20 mm")
    post.blocks("G21", "G90 G94 G17", "G54", "T1", "M3 S16000")
    post.rapid(z=30)
    post.rapid(20, 20)
    for y in (20.0, 40.0, 60.0):
        down_to(post, (20, y), 6, 0, 400)
        groove(post, (20, y), (140, y), [-1.5, -3], 1600)
        post.rapid(z=6)
    post.rapid(z=30)
    post.blocks("M5", "M0 (put in t5, set z zero anew, dial 3)", "T5", "M3 S16000")
    post.forget()
    post.rapid(z=30)
    shape = round_box((-3.175, -3.175), (163.175, 83.175), 13.175, clockwise=True)
    post.rapid(*shape[0])
    down_to(post, shape[0], 6, 0, 500)
    contour(post, shape, [-6, -9, -11.9], 2000, 1500, tab=4)
    post.rapid(z=30)
    post.blocks("M5", "G0 X0 Y120", "M30")
    return post.bytes()


def berth_tag() -> bytes:
    """Birch plywood on the vacuum bed, between stop pins: two tags cut free by a compression tool, with no tabs."""
    post = Post(decimals=3, zeros="bare")
    post.say("berth tags, lowtide workshop")
    post.say("t5 1/4 in compression, dial 3. on the vacuum bed, stop pins left and front")
    post.blocks("G21", "G90 G94 G17", "G54", "T5", "M3 S16000")
    post.rapid(z=15)
    for x in (0.0, 80.0):
        shape = round_box((x - 3.175, -3.175), (x + 63.175, 43.175), 8.175, clockwise=True)
        post.rapid(*shape[0])
        down_to(post, shape[0], 3, 0, 500)
        contour(post, shape, [-6, -9], 2000, 1500)
        post.rapid(z=15)
    post.blocks("M5", "G0 X0 Y60", "M30")
    return post.bytes()


def deck_plank() -> bytes:
    """Softwood: the top planed by a 40 mm surfacing cutter that comes from outside and runs over both ends."""
    post = Post(decimals=3, numbers=10, zeros="point")
    post.bare("%")
    post.say("DECK PLANK")
    post.say("T8 40 MM SURFACING CUTTER, 2 FLUTES")
    post.blocks("G90 G94 G17", "G21", "G53 G0 Z0.", "T8 M6", "S12000 M3", "G54", "G4 P5.")
    post.forget()
    post.rapid(-26, 0)
    post.block("G43 Z20. H8")
    post.forget()
    post.rapid(z=2)
    for level in (-0.8, -1.4):
        post.rapid(-26, 0)
        post.line(z=level, f=500)
        for row in range(5):
            post.line(226 if row % 2 == 0 else -26, 25.0 * row, f=3000)
            if row < 4:
                post.line(post.at["X"], 25.0 * (row + 1))
        post.rapid(z=5)
    post.rapid(z=20)
    post.blocks("M5", "G53 G0 Z0.", "M30")
    post.bare("%")
    return post.bytes()


# ---- programs with something planted


def tide_ring() -> bytes:
    post = Post(decimals=3, zeros="full", code_width=2)
    post.say("TIDE RING  LOWTIDE WORKSHOP")
    post.say("T1 1/8 IN FLAT 2 FLUTE DOWN-CUT  DIAL 2")
    post.blocks("G21", "G90 G94", "G17", "G54", "T1", "S12500 M03")
    post.rapid(z=15)
    for radius in (30.0, 24.0):
        down_to(post, (radius, 0), 5, 0, 230)
        for level in (-1.2, -2.4):
            post.line(z=level, f=230)
            post.arc((radius, 0), (0, 0), True, f=1150)
        post.rapid(z=5)
    post.rapid(z=25)
    post.blocks("M05", "G00 X0.000 Y60.000", "M30")
    return post.bytes()


def compass_rose() -> bytes:
    """What the card takes at dial 3, and the shop's own test cuts found to make dust."""
    post = Post(decimals=3, zeros="full", code_width=2)
    post.say("COMPASS ROSE  LOWTIDE WORKSHOP")
    post.say("T1 1/8 IN FLAT 2 FLUTE DOWN-CUT  DIAL 3")
    post.blocks("G21", "G90 G94", "G17", "G54", "T1", "S16000 M03")
    post.rapid(z=15)
    for radius in (34.0, 27.0, 20.0):
        down_to(post, (radius, 0), 5, 0, 230)
        ring(post, (0, 0), radius, steps(-2.4, 1.2), 1500 / radius, 1400, clockwise=True)
        post.rapid(z=5)
    post.rapid(z=25)
    post.blocks("M05", "G00 X0.000 Y60.000", "M30")
    return post.bytes()


def float_plate() -> bytes:
    post = Post(decimals=3, zeros="bare")
    post.say("float plate")
    post.say("T3 6 mm one flute, dial 6")
    post.blocks("G21 G90 G94 G17", "G54", "T3", "M3 S26500")
    post.rapid(z=10)
    shape = round_box((-3, -3), (93, 53), 9, clockwise=True)
    down_to(post, shape[0], 5, 0, 300)
    contour(post, shape, [-3, -6, -9], 1000, 1000)
    post.rapid(z=20)
    post.blocks("M5", "G0 X0 Y0", "M30")
    return post.bytes()


def sorting_tray() -> bytes:
    post = Post(decimals=4, numbers=5, zeros="point")
    post.bare("%")
    post.say("SORTING TRAY")
    post.say("T3 D=6.35 FLAT 2 FLUTE UP-CUT")
    post.blocks("G90 G94 G17 G49 G40 G80", "G21", "G53 G0 Z0.", "T3 M6", "S16000 M3", "G54", "G4 P4.")
    post.forget()
    post.rapid(-43, -13)
    post.block("G43 Z15. H3")
    post.forget()
    walls = [16.825 - 2.275 * n for n in range(7)]
    start, path = box((-60 + walls[0], -30 + walls[0]), (60 - walls[0], 30 - walls[0]))
    down_to(post, start, 5, 0, 700)
    contour(post, (start, path), [-4], 2200, 1800)
    for wall in walls[1:]:
        start, path = box((-60 + wall, -30 + wall), (60 - wall, 30 - wall))
        post.line(*start)
        for segment in path:
            post.go(segment)
    post.line(-50, 0)
    post.line(-60, 0)
    post.line(-50, 0)
    post.rapid(50, 0)  # the lift is missing: the island stands between
    post.line(60, 0)
    post.line(50, 0)
    post.rapid(z=15)
    post.blocks("M5", "G53 G0 Z0.", "M30")
    post.bare("%")
    return post.bytes()


def net_needle() -> bytes:
    post = Post(decimals=3, zeros="point", radius_arcs=True)
    post.say("NET NEEDLE, BEECH")
    post.say("T1 3.175 FLAT 2 FLUTE")
    post.blocks("G21 G90 G94 G17", "G54", "T1", "M3 S18000")
    post.rapid(z=10)
    shape = round_box((-1.5875, -1.5875), (151.5875, 21.5875), 9.5875, clockwise=True)
    down_to(post, shape[0], 5, 0, 400)
    contour(post, shape, steps(-6.2, 2.1), 1500, 1200, tab=1.5)
    post.rapid(z=20)
    post.blocks("M5", "G0 X0. Y0.", "M30")
    return post.bytes()


def gauge_board() -> bytes:
    post = Post(decimals=3, numbers=10, zeros="point")
    post.bare("%")
    post.say("GAUGE BOARD OAK")
    post.say("T6 3 MM FLAT 2 FLUTE")
    post.blocks("G90 G94 G17", "G21", "G53 G0 Z0.", "T6 M6", "S18000", "G54", "G4 P4.")
    post.forget()
    post.rapid(0, 0)
    post.block("G43 Z15. H6")
    post.forget()
    for mark in range(11):
        y = 12.0 * mark
        a, b = (0.0, y), (30.0 if mark % 5 == 0 else 18.0, y)
        down_to(post, a, 5, 0, 400)
        groove(post, a, b, [-0.75, -1.5], 1600)
        post.rapid(z=5)
    post.rapid(z=15)
    post.blocks("M5", "G53 G0 Z0.", "M30")
    post.bare("%")
    return post.bytes()


def porthole() -> bytes:
    post = Post(decimals=4, zeros="point")
    post.say("PORTHOLE PANE, CAST ACRYLIC 8 MM")
    post.say("T7 D=6 ONE FLUTE")
    post.blocks("G90 G94 G17", "G21", "G53 G0 Z0.", "T7 M6", "S16000 M3", "G54", "G4 P4.")
    post.forget()
    post.rapid(40, 0)
    post.block("G43 Z15. H7")
    post.forget()
    down_to(post, (40, 0), 5, 0, 300)
    ring(post, (0, 0), 40, [-7.5], 150, 1300, clockwise=True)
    post.rapid(z=15)
    post.blocks("M5", "G53 G0 Z0.", "M30")
    return post.bytes()


def crate_lid() -> bytes:
    post = Post(decimals=3, numbers=10, zeros="full")
    post.say("CRATE LID MDF")
    post.say("T2 1/4 IN FLAT 2 FLUTE UP-CUT DIAL 3")
    post.blocks("G21 G90 G94 G17", "G54", "T2", "S16000 M3")
    post.rapid(z=15)
    for row in range(5):
        y = 20.0 + 18 * row
        post.rapid(20, y)
        post.rapid(z=1)
        post.line(z=-4, f=2200)
        post.line(160, y)
        post.rapid(z=5)
    post.rapid(z=15)
    post.blocks("M5", "G0 X0.000 Y0.000", "M30")
    return post.bytes()


def oarlock_plate() -> bytes:
    post = Post(decimals=3, zeros="point")
    post.say("OARLOCK PLATE, ALUMINIUM 8 MM")
    post.say("T1 D=6 FLAT 3 FLUTE UP-CUT")
    post.blocks("G90 G94 G17", "G21", "G53 G0 Z0.", "T1 M6", "S14000 M3", "G54", "M8", "G4 P4.")
    post.forget()
    post.rapid(10, 20)
    post.block("G43 Z15. H1")
    post.forget()
    post.say("1 A RAMP DOWN INTO THE SLOT")
    down_to(post, (10, 20), 5, 0, 200)
    post.line(40, 20, -1, 1800)
    post.line(10, 20, -2)
    post.say("2 ALONG IT AT FULL WIDTH, AT THE FEED OF THE LAPS")
    post.line(70, 20, f=3400)
    post.say("3 LAPS OF 0.4 MM THAT WIDEN IT TO 10 MM")
    for lap in range(1, 6):
        k = 0.4 * lap
        _, path = round_box((10 - k, 20 - k), (70 + k, 20 + k), k, False)
        post.line(70, 20 - k)
        for segment in path[1:]:
            post.go(segment)
        post.go(path[0])
    post.rapid(z=15)
    post.blocks("M9", "M5", "G53 G0 Z0.", "M30")
    return post.bytes()


def fender_step() -> bytes:
    post = Post(decimals=3, zeros="bare")
    post.say("fender step, lowtide workshop")
    post.say("T7 6 mm one flute up-cut")
    post.blocks("G90 G94 G17", "G54", "T7 M6", "G43 H7", "S14000 M3", "G4 P4")
    post.rapid(z=15)
    for y in (10.0, 30.0, 50.0):
        down_to(post, (10, y), 5, 0, 450)
        groove(post, (10, y), (90, y), [-2.5, -5], 1500)
        post.rapid(z=5)
    post.rapid(z=15)
    post.blocks("M5", "G53 G0 Z0", "M30")
    return post.bytes()


def name_plate() -> bytes:
    post = Post(decimals=3, zeros="point")
    post.say("NAME PLATE BEECH")
    post.say("T1 1/8 IN FLAT 2 FLUTE DIAL 3 - T4 60 DEG V DIAL 3")
    post.blocks("G21 G90 G94 G17", "G54", "T1 M6", "S16000 M3")
    post.rapid(z=15)
    shape = round_box((4, 4), (156, 41), 6, clockwise=False)
    down_to(post, shape[0], 5, 0, 350)
    contour(post, shape, [-1.5], 1200, 1000)
    post.rapid(z=15)
    post.blocks("T4 M6", "S16000 M3")
    post.forget()
    for points in letters("LOWTIDE", (16, 13), 3.4):
        stroke(post, points, -0.4, 5, 1200, 300)
    post.rapid(z=15)
    post.blocks("M5", "G0 X0. Y0.", "M30")
    return post.bytes()


def peg_board() -> bytes:
    post = Post(decimals=3, zeros="full")
    post.say("PEG BOARD, BIRCH PLYWOOD 18 MM")
    post.say("T1 1/8 IN FLAT 2 FLUTE DIAL 3")
    post.blocks("G21 G90 G94 G17", "G54", "T1", "S16000 M3")
    post.rapid(z=15)
    for x in (20.0, 60.0, 100.0):
        down_to(post, (x, 10), 5, 0, 400)
        groove(post, (x, 10), (x, 50), [-2.0 * n for n in range(1, 9)], 1300)
        post.rapid(z=5)
    post.rapid(z=15)
    post.blocks("M5", "G0 X0.000 Y0.000", "M30")
    return post.bytes()


def ferry_token() -> bytes:
    post = Post(decimals=2, zeros="full")
    post.say("FERRY TOKEN, CAST ACRYLIC")
    post.say("T3 6 MM ONE FLUTE DIAL 3")
    post.blocks("G21 G90 G94 G17", "G54", "T3", "S16000 M3")
    post.rapid(z=15)
    down_to(post, (20, 0), 5, 0, 250)
    ring(post, (0, 0), 20, [-2, -4], 80, 1200, clockwise=False)
    post.rapid(z=5)
    down_to(post, (-8, 4), 5, 0, 250)
    post.line(12, 4, z=-1, f=1200)
    post.blocks("G2 X12.35 Y3.88 I0.19 J0.00")
    post.forget()
    post.line(12.35, -4)
    post.line(-8, -4)
    post.line(-8, 4)
    post.line(12, 4)
    post.rapid(z=15)
    post.blocks("M5", "G0 X0.00 Y40.00", "M30")
    return post.bytes()


def first_pour() -> bytes:
    post = Post(decimals=3, zeros="bare")
    post.say("first pour: coaster with a ring and a cross, cured epoxy")
    post.say("T1 1/8 in flat, 2 flutes, down-cut. Dial 4")
    post.blocks("G21 G90 G94 G17", "G54", "T1", "M3 S19500")
    post.rapid(z=10)
    down_to(post, (30, 0), 5, 0, 300)
    for level in (-1, -2):
        post.line(z=level, f=300)
        post.arc((30, 0), (0, 0), False, f=600)
    post.rapid(z=5)
    for a, b in (((-20.0, 0.0), (20.0, 0.0)), ((0.0, -20.0), (0.0, 20.0))):
        down_to(post, a, 5, 0, 300)
        post.line(z=-1, f=300)
        post.line(*b, f=600)
        post.rapid(z=5)
    post.rapid(z=20)
    post.blocks("M5", "G0 X0 Y50", "M30")
    return post.bytes()


def mooring_plate() -> bytes:
    """Written by hand: parameters, a subprogram with a loop in it, and a loop that calls it."""
    return b"""\
(MOORING PLATE, HDPE 12 MM: FOUR SLOTS BY ONE SUBPROGRAM)
(T1 6 MM THREE FLUTES)
G21 G90 G94 G17 G54
#100 = 5            (HEIGHT OF TRAVEL)
#101 = 40           (FROM SLOT TO SLOT)
#102 = 1900         (FEED)
T1 M6
S12000 M3
G4 P4
G43 H1
G0 Z[#100 + 10]

O100 sub            (ONE SLOT: #1 X, #2 Y, #3 LENGTH, #4 DEPTH)
G0 X#1 Y#2
G0 Z#100
#5 = 0              (DEPTH SO FAR)
G1 Z0 F600
O110 while [#5 LT #4]
#5 = [#5 + 1.5]
O120 if [#5 GT #4]
#5 = #4
O120 endif
G1 Y[#2 + #3] Z-#5 F600
Y#2 F#102
O110 endwhile
G0 Z#100
O100 endsub

#103 = 0
O200 repeat [4]
O100 call [40 + #103 * #101] [15] [30] [6]
#103 = [#103 + 1]
O200 endrepeat
G0 Z[#100 + 10]
M5
M30
"""


def drift_box() -> bytes:
    post = Post(decimals=3, zeros="point")
    post.say("DRIFT BOX LID, BIRCH PLYWOOD 12 MM")
    post.say("T3 1/4 IN UP-CUT, T10 D=2 TWO FLUTE")
    post.blocks("G90 G94 G17", "G21", "G53 G0 Z0.", "T3 M6", "S16000 M3", "G54", "G4 P4.")
    post.forget()
    post.rapid(30, 20)
    post.block("G43 Z15. H3")
    post.forget()
    post.say("1 A GROOVE OF 3 MM")
    down_to(post, (30, 20), 5, 0, 600)
    post.line(70, 20, -3, 1800)
    post.line(30, 20, f=3200)
    post.line(130, 20)
    post.rapid(z=15)
    post.blocks("M5", "G53 G0 Z0.", "T10 M6", "S20000 M3", "G54", "G4 P4.")
    post.forget()
    post.rapid(30, 60)
    post.block("G43 Z15. H10")
    post.forget()
    post.say("2 A FINE SLOT, 1 MM AT A TIME")
    down_to(post, (30, 60), 5, 0, 300)
    for layer in range(6):
        post.line(*((60, 60) if layer % 2 == 0 else (100, 60)), -1 - layer, 900)
        post.line(*((130, 60) if layer % 2 == 0 else (30, 60)))
    post.rapid(z=15)
    post.blocks("M5", "G53 G0 Z0.", "M30")
    return post.bytes()


def epoxy_trial() -> bytes:
    """The program of a plan of test cuts, every risky one confirmed."""
    from gclint.trial.asked import bench_again
    from gclint.trial.plan_file import read_plan
    from gclint.trial.program import made, written

    path = SAMPLES / "epoxy-trial" / "plan.toml"
    plan = read_plan(path)
    bench = bench_again(plan.material, plan.tool, path.parent / str(plan.shop))
    return written(plan, bench.setup, made(plan)).text.encode("ascii")


PROGRAMS: dict[str, Callable[[], bytes]] = {
    "epoxy-trial/test-cuts.nc": epoxy_trial,
    "tide-dial/tide-dial.nc": tide_dial,
    "shelf-bracket/shelf-bracket.nc": shelf_bracket,
    "binnacle-cap/rough.nc": binnacle_rough,
    "binnacle-cap/finish.nc": binnacle_finish,
    "binnacle-cap/back.nc": binnacle_back,
    "harbour-sign/harbour-sign.tap": harbour_sign,
    "rail-cleat/rail-cleat.nc": rail_cleat,
    "half-hull/half-hull.nc": half_hull,
    "oar-rack/oar-rack.gcode": oar_rack,
    "plank-hook/plank-hook.nc": plank_hook,
    "sheave-cheek/sheave-cheek.nc": sheave_cheek,
    "winch-pocket/winch-pocket.nc": winch_pocket,
    "bollard-row/bollard-row.nc": bollard_row,
    "bosun-plate/bosun-plate.nc": bosun_plate,
    "tide-gate/tide-gate.nc": tide_gate,
    "berth-tag/berth-tag.nc": berth_tag,
    "deck-plank/deck-plank.nc": deck_plank,
    "tide-ring/tide-ring.nc": tide_ring,
    "compass-rose/compass-rose.nc": compass_rose,
    "float-plate/float-plate.nc": float_plate,
    "sorting-tray/sorting-tray.nc": sorting_tray,
    "net-needle/net-needle.nc": net_needle,
    "gauge-board/gauge-board.nc": gauge_board,
    "porthole/porthole.nc": porthole,
    "crate-lid/crate-lid.nc": crate_lid,
    "oarlock-plate/oarlock-plate.nc": oarlock_plate,
    "fender-step/fender-step.nc": fender_step,
    "name-plate/name-plate.nc": name_plate,
    "peg-board/peg-board.nc": peg_board,
    "ferry-token/ferry-token.nc": ferry_token,
    "first-pour/first-pour.nc": first_pour,
    "mooring-plate/mooring-plate.nc": mooring_plate,
    "drift-box/drift-box.nc": drift_box,
}


def main() -> None:
    for name, program in PROGRAMS.items():
        path = SAMPLES / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(program())


if __name__ == "__main__":
    main()
