"""Programs for property tests: realistic ones as blocks of words in mm, and text as hostile as it comes.

A realistic block is a list of (letter, number); `text` writes it in either unit. Lengths are whole numbers of
0.0005 in, so that both units say the same without rounding, and every arc closes.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal

from hypothesis import HealthCheck, settings
from hypothesis import strategies as st

STEADY = settings(deadline=None, suppress_health_check=[HealthCheck.too_slow])  # nothing here is timed

Block = list[tuple[str, Decimal]]
LENGTHS = frozenset("XYZIJKRQ")
STEP = Decimal("0.0127")  # mm, 0.0005 in
AXES = "XYZ"
PLANES = {17: ("X", "Y", "I"), 18: ("Z", "X", "K"), 19: ("Y", "Z", "J")}
STATED: Block = [("G", Decimal(code)) for code in (90, 94, 17, 54, 40, 49, 80, 98)]


def text(blocks: list[Block], inch: bool = False) -> str:
    """The program in mm or in inches; the first block states the unit, and F follows it except in G93."""
    lines, inverse = ["G20" if inch else "G21"], False
    for block in blocks:
        codes = {number for letter, number in block if letter == "G"}
        inverse = 93 in codes or (inverse and not codes & {94, 95})
        scaled = LENGTHS if inverse else LENGTHS | {"F"}
        lines.append(
            " ".join(f"{letter}{n / Decimal('25.4') if inch and letter in scaled else n:f}" for letter, n in block)
        )
    return "\n".join(lines) + "\n"


@dataclass
class Tool:
    """Where the tool stands while a program is being made up, mm; `incremental` under G91."""

    at: dict[str, Decimal] = field(default_factory=lambda: dict.fromkeys(AXES, Decimal(0)))
    incremental: bool = False
    plane: int = 17

    def to(self, **ends: Decimal) -> Block:
        """The words that take it there."""
        words = [(axis, end - self.at[axis] if self.incremental else end) for axis, end in ends.items()]
        self.at |= ends
        return words


lengths = st.integers(-8000, 8000).map(lambda n: n * STEP)
radii = st.integers(1, 4000).map(lambda n: n * STEP)


def code(number: float | str) -> tuple[str, Decimal]:
    return ("G", Decimal(number))


@st.composite
def straight(draw: st.DrawFn, tool: Tool) -> Block:
    ends = {axis: draw(lengths) for axis in sorted(draw(st.sets(st.sampled_from(AXES), min_size=1)))}
    return [code(draw(st.sampled_from([0, 1]))), *tool.to(**ends)]


@st.composite
def arc(draw: st.DrawFn, tool: Tool) -> Block:
    """A quarter (or three), a half or a whole circle in the plane in force, by centre or radius; maybe falling."""
    first, second, i = PLANES[tool.plane]
    r = draw(radii) * draw(st.sampled_from([1, -1]))
    share = draw(st.sampled_from(["quarter", "radius", "half", "whole"]))
    u, v = tool.at[first], tool.at[second]
    words: Block = []
    if share == "whole":
        words = [(i, r)]
    elif share == "half":
        words = [*tool.to(**{first: u + 2 * r}), (i, r)]
    else:
        words = [*tool.to(**{first: u + r, second: v + r}), *([("R", abs(r))] if share == "radius" else [(i, r)])]
    if draw(st.booleans()):
        third = next(axis for axis in AXES if axis not in (first, second))
        words += tool.to(**{third: tool.at[third] - abs(r)})
    return [code(draw(st.sampled_from([2, 3]))), *words]


@st.composite
def modes(draw: st.DrawFn, tool: Tool) -> Block:
    """One or two settings; G93 never, since it needs an F on each block."""
    which = draw(st.sampled_from(["distance", "plane", "feed", "speed", "spindle", "tool", "dwell", "coolant"]))
    if which == "distance":
        tool.incremental = draw(st.booleans())
        return [code(91 if tool.incremental else 90)]
    if which == "plane":
        tool.plane = draw(st.sampled_from([17, 18, 19]))
        return [code(tool.plane)]
    if which == "feed":
        return [code(draw(st.sampled_from([94, 95]))), ("F", draw(st.integers(1, 200)) * STEP * 100)]
    if which == "tool":
        return [("T", Decimal(draw(st.integers(1, 12)))), ("M", Decimal(6))]
    number = Decimal(draw(st.integers(1, 24000)))
    return {
        "speed": [("S", number)],
        "spindle": [("M", Decimal(draw(st.sampled_from([3, 4, 5])))), ("S", number)],
        "dwell": [code(4), ("P", number / 1000)],
        "coolant": [("M", Decimal(draw(st.sampled_from([7, 8, 9]))))],
    }[which]


@st.composite
def holes(draw: st.DrawFn, tool: Tool) -> list[Block]:
    """A canned cycle in G17 with a few holes, cancelled at its end; it leaves the tool above the last hole."""
    tool.incremental, tool.plane = False, 17
    clear = tool.at["Z"]
    r = clear - draw(radii)
    depth = draw(radii)
    cycle = draw(st.sampled_from([81, 82, 83, 85, 73]))
    up = draw(st.sampled_from([98, 99]))
    extra: Block = {81: [], 85: [], 82: [("P", Decimal("0.5"))]}.get(cycle, [("Q", depth / 2)])
    blocks = [[code(90), code(17)]]
    places = draw(st.lists(st.tuples(lengths, lengths), min_size=1, max_size=4))
    first = [code(up), code(cycle), *tool.to(X=places[0][0], Y=places[0][1]), ("Z", r - depth), ("R", r), *extra]
    blocks += [first, *(tool.to(X=x, Y=y) for x, y in places[1:]), [code(80)]]
    tool.at["Z"] = clear if up == 98 else r
    return blocks


@st.composite
def realistic(draw: st.DrawFn) -> list[Block]:
    """A job of one to forty blocks: states its modes, starts a tool, moves, cuts arcs, drills."""
    tool = Tool()
    start: Block = [("T", Decimal(1)), ("M", Decimal(6)), ("F", 1000 * STEP), ("S", Decimal(12000))]
    blocks = [STATED, start, [("M", Decimal(3))], [code(0), *tool.to(X=Decimal(0), Y=Decimal(0), Z=100 * STEP)]]
    for _ in range(draw(st.integers(1, 20))):
        kind = draw(st.sampled_from(["straight", "straight", "arc", "modes", "holes"]))
        if kind == "holes":
            blocks += draw(holes(tool))
        else:
            blocks.append(draw({"straight": straight, "arc": arc, "modes": modes}[kind](tool)))
    return blocks


# ---- hostile text

PIECES = (
    "G0", "G1", "G2", "G3", "G17", "G18", "G19", "G20", "G21", "G28", "G30", "G40", "G41", "G43", "G49", "G53", "G54",
    "G55", "G59.3", "G73", "G80", "G81", "G83", "G84", "G87", "G90", "G91", "G92", "G92.1", "G92.2", "G92.3", "G93",
    "G94", "G95", "G98", "G99", "G4", "G10", "G38.2", "G90.1", "M0", "M3", "M4", "M5", "M6", "M8", "X1", "X-2.5", "Y3",
    "Z-1", "Z4", "I1", "J-1", "K2", "R2", "R-3", "P1", "P2", "L2", "L20", "Q.5", "F100", "F0", "S500", "T1", "T2", "H1",
    "D1", "A90", "X1e5", "X,", "#1=2", "X#1", "#<a>=[1+2]", "G1", "X", "-1.5", "Y+.25", "Z3,5", "(", ")", "(a)", ";",
    "%", "/", "#1", "[", "]", "=", "O100", "sub", "O1 while [1]", "O1 endwhile", "O1 repeat [9]", "O1 endrepeat",
    "O2 call", "M98 P1", "M99", "G65 P1 A1", "GOTO 1", "IF [1] GOTO 1", "WHILE [1] DO1", "END1", "N1", "*7",
    " ", "\t", "N10", "é", "$", '"', "1e5", "e-3", "IF", "SIN[", "<a>", "\x1a", "99999999999999999999", ":",
    "\n", "\n", "\n", "\n", "\r", "\r\n",
)  # fmt: skip
pieces = st.lists(st.sampled_from(PIECES), max_size=80)
hostile = st.one_of(
    st.binary(max_size=200),
    pieces.map(lambda words: "".join(words).encode()),
    pieces.map(lambda words: " ".join(words).encode()),
)
