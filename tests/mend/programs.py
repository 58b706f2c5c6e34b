"""Generated programs of the Lowtide workshop (invented): slots, contours, rings and pockets with faults."""

from __future__ import annotations

from dataclasses import dataclass

from hypothesis import strategies as st

from gclint.setup.declare import Options

MATERIALS = ("cured-epoxy", "cast-acrylic", "birch-plywood", "hdpe", "mdf", "beech")


@dataclass(frozen=True)
class Style:
    numbers: int
    fixed: bool
    end: str
    gap: str
    modal: bool
    inch: bool
    comment: str

    def number(self, value: float) -> str:
        value = value / 25.4 if self.inch else value
        digits = 4 if self.inch else 3
        text = f"{value:.{digits}f}"
        return text if self.fixed else text.rstrip("0").rstrip(".") if "." in text else text


@dataclass(frozen=True)
class Program:
    data: bytes
    options: Options
    radius: float


class _Writer:
    def __init__(self, style: Style) -> None:
        self.style, self.lines, self.mode = style, [], -1

    def put(self, *words: str) -> None:
        lead = [f"N{(len(self.lines) + 1) * self.style.numbers}"] if self.style.numbers else []
        self.lines.append(self.style.gap.join((*lead, *words)))

    def move(self, mode: int, feed: float | None = None, **axes: float) -> None:
        words = [] if self.style.modal and mode == self.mode else [f"G{mode}"]
        self.mode = mode
        words += [f"{axis}{self.style.number(value)}" for axis, value in axes.items()]
        if feed is not None:
            words.append(f"F{round(feed / 25.4, 1) if self.style.inch else round(feed)}")
        self.put(*words)


styles = st.builds(
    Style, numbers=st.sampled_from((0, 0, 1, 5, 10)), fixed=st.booleans(), end=st.sampled_from(("\n", "\r\n", "\r")),
    gap=st.sampled_from((" ", "")), modal=st.booleans(), inch=st.sampled_from((False, False, True)),
    comment=st.sampled_from(("lowtide", "p\xe4tch", "")),
)  # fmt: skip


@st.composite
def programs(draw: st.DrawFn) -> Program:
    """A program with one tool, a declared blank and one to three parts of work."""
    style = draw(styles)
    diameter = draw(st.sampled_from((3.0, 4.0, 6.0)))
    writer = _Writer(style)
    if style.comment:
        writer.lines.append(f"({style.comment})")
    writer.put("G20" if style.inch else "G21", "G90", "G94", "G17", "G54")
    writer.put("T1", "M6")
    writer.put(f"S{draw(st.sampled_from((9000, 12000, 18000)))}", "M3")
    writer.move(0, Z=15.0)
    feed = draw(st.sampled_from((300, 700, 1200, 2400)))
    plunge = draw(st.sampled_from((100, 250, feed)))
    for part in range(draw(st.integers(1, 3))):
        x, y = 12.0 + 34 * part, 14.0
        _part(draw, writer, x, y, diameter, feed, plunge)
    writer.move(0, Z=15.0)
    writer.put("M5")
    writer.put("M30")
    text = style.end.join(writer.lines) + draw(st.sampled_from((style.end, "")))
    tool = f"1: flat {diameter:g}mm 2fl up-cut"
    material = draw(st.sampled_from(MATERIALS))
    options = Options(material, (tool,), "120 x 60 x 20 mm at 0 0")
    return Program(text.encode("latin-1"), options, diameter / 2)


def _part(draw: st.DrawFn, w: _Writer, x: float, y: float, diameter: float, feed: float, plunge: float) -> None:
    kind = draw(st.sampled_from(("slot", "bent", "box", "ring", "pocket", "ramp", "dip", "steps", "hole", "spiral")))
    depth = draw(st.sampled_from((0.6, 1.2, 2.5, 5.0)))
    levels = draw(st.integers(1, 2))
    w.move(0, Z=5.0)
    w.move(0, X=x, Y=y)
    w.move(0, Z=1.0)
    for level in range(1, levels + 1):
        z = -depth * level / levels
        if kind == "ramp":
            w.move(1, plunge, Z=0.5)
            w.move(1, feed, X=x + 6.0, Z=z)
            w.move(1, X=x)
            w.move(1, X=x + 15.0)
            w.move(0, Z=1.0)
            w.move(0, X=x)
            continue
        if kind == "hole":
            w.move(1, plunge, Z=z)
            w.move(0, Z=1.0)
            continue
        if kind == "spiral":  # a helix of half turns, steeper or not, and a circle at its end
            w.move(1, plunge, Z=0.2)
            for n in range(1, 5):
                side = 5.0 if n % 2 else 0.0
                w.move(3, feed, X=x + side, Y=y, Z=0.2 + (z - 0.2) * n / 4, I=2.5 if n % 2 else -2.5, J=0.0)
            w.move(3, X=x + 5.0, Y=y, I=2.5, J=0.0)
            w.move(3, X=x, Y=y, I=-2.5, J=0.0)
            w.move(0, Z=1.0)
            continue
        w.move(1, plunge, Z=z)
        if kind == "dip":  # a lead-in in X and Z
            w.put("G18")
            w.move(2, feed, X=x + 0.3, Z=z - 0.3, I=0.3, K=0.0)
            w.put("G17")
            w.move(1, X=x + 18.0)
            w.move(0, Z=1.0)
            w.move(0, X=x)
        elif kind == "steps":
            w.move(3, feed, X=x, Y=y, I=1.5, J=0.0)
        elif kind == "slot":
            w.move(1, feed, X=x + 18.0)
            w.move(0, Z=1.0)
            w.move(0, X=x)
        elif kind == "bent":
            w.move(1, feed, X=x + 9.0)
            w.move(3, X=x + 14.0, Y=y + 5.0, I=0.0, J=5.0)
            w.move(1, Y=y + 16.0)
            w.move(0, Z=1.0)
            w.move(0, X=x, Y=y)
        elif kind == "box":
            w.move(1, feed, X=x + 20.0)
            w.move(1, Y=y + 16.0)
            w.move(1, X=x)
            w.move(1, Y=y)
        elif kind == "ring":
            w.move(draw(st.sampled_from((2, 3))), feed, X=x, Y=y, I=9.0, J=0.0)
        else:
            step = 0.4 * diameter
            w.move(1, feed, X=x + 14.0)
            for k in range(1, 4):
                w.move(1, Y=y + k * step)
                w.move(1, X=x + (0.0 if k % 2 else 14.0))
            w.move(0, Z=1.0)
            w.move(0, X=x, Y=y)
