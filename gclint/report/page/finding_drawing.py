"""Drawings of the findings that a picture tells best: off the blank or the travel, into the table, loose, units."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from markupsafe import Markup

from gclint.columns import Bools
from gclint.digest.words import Lengths, figure
from gclint.tables.field import fewer

if TYPE_CHECKING:
    from gclint.run import Run
    from gclint.tables.finding import Finding

WIDE, HIGH, EDGE = 420, 190, 34  # of a drawing, px
CELLS = 120  # along one side of the piece as it is left
INCH = 25.4
Ends = tuple[float, float]


def drawing_of(finding: Finding, run: Run) -> dict[str, Markup | str] | None:
    """{svg, words} for a finding of one of these kinds; None for others, and where what it needs is not known."""
    draw = {
        "outside-stock": _beside, "outside-travel": _travel, "cuts-table": _table, "part-comes-loose": _loose,
        "offcut-comes-loose": _loose, "units-suspect": _units,
    }.get(finding.rule)  # fmt: skip
    made = draw(run) if draw is not None and run.tables is not None else None
    return None if made is None else {"svg": made[0], "words": made[1]}


def _svg(label: str, parts: list[Markup], high: int = HIGH) -> Markup:
    head = '<svg viewBox="0 0 {w} {h}" width="{w}" height="{h}" role="img" aria-label="{label}">{parts}</svg>'
    return Markup(head).format(w=WIDE, h=high, label=label, parts=Markup("").join(parts))


def _rect(x: float, y: float, wide: float, high: float, name: str) -> Markup:
    return Markup('<rect class="{}" x="{}" y="{}" width="{}" height="{}"/>').format(
        name, round(x, 1), round(y, 1), round(max(wide, 1.0), 1), round(max(high, 1.0), 1)
    )


def _text(x: float, y: float, text: str, anchor: str = "start") -> Markup:
    return Markup('<text x="{}" y="{}" text-anchor="{}">{}</text>').format(round(x, 1), round(y, 1), anchor, text)


def _reach(run: Run) -> tuple[Ends, Ends, Ends] | None:
    low, high = run.checked.extent_mm.min, run.checked.extent_mm.max
    ends = [(a, b) for a, b in zip(low, high) if a is not None and b is not None]
    return (ends[0], ends[1], ends[2]) if len(ends) == 3 else None


def _lengths(run: Run) -> Lengths:
    return Lengths(run.checked.units == "inch")


def _beside(run: Run) -> tuple[Markup, str] | None:
    """From above: the blank and the rectangle that the tip reaches."""
    assert run.tables is not None
    box, reach = run.tables.engagement.box, _reach(run)
    if box is None or box.x is None or box.y is None or reach is None:
        return None
    lengths = _lengths(run)
    low = [min(a[0], b[0]) for a, b in ((box.x, reach[0]), (box.y, reach[1]))]
    high = [max(a[1], b[1]) for a, b in ((box.x, reach[0]), (box.y, reach[1]))]
    scale = min((WIDE - 2 * EDGE) / max(high[0] - low[0], 1e-6), (HIGH - 2 * EDGE) / max(high[1] - low[1], 1e-6))

    def place(x: Ends, y: Ends, name: str) -> Markup:
        left, top = EDGE + (x[0] - low[0]) * scale, HIGH - EDGE - (y[1] - low[1]) * scale
        return _rect(left, top, (x[1] - x[0]) * scale, (y[1] - y[0]) * scale, name)

    over = [
        f"{lengths.length(by)} {side}"
        for by, side in (
            (box.x[0] - reach[0][0], "left"), (reach[0][1] - box.x[1], "right"),
            (box.y[0] - reach[1][0], "in front"), (reach[1][1] - box.y[1], "behind"),
        )
        if by > 0.01
    ]  # fmt: skip
    said = f"the tip goes {', '.join(over)} of the blank" if over else "part of the tool goes beside the blank"
    parts = [place(box.x, box.y, "blank"), place(reach[0], reach[1], "reached")]
    return _svg(f"From above: {said}", parts), f"From above: the blank, and dashed what the tip reaches; {said}."


def _travel(run: Run) -> tuple[Markup, str] | None:
    """For each axis a bar of what the machine has over one of what the program asks for."""
    assert run.tables is not None
    travel, reach = run.tables.setup.machine.travel, _reach(run)
    if travel is None or reach is None:
        return None
    rows = [(n, has, ends[1] - ends[0]) for n, has, ends in zip("XYZ", (travel.x, travel.y, travel.z), reach) if has]
    if not any(asks > has for _, has, asks in rows):
        return None  # from where zero lies, which bars of lengths do not show
    lengths, parts = _lengths(run), []
    scale = (WIDE - 150) / max(max(has, asks) for _, has, asks in rows)
    for k, (name, has, asks) in enumerate(rows):
        y = 16 + 54 * k
        parts += [
            _text(10, y + 20, name), _rect(30, y, has * scale, 14, "blank"),
            _text(36 + has * scale, y + 12, f"has {lengths.length(has)}"),
            _rect(30, y + 18, asks * scale, 14, "reached over" if asks > has else "reached"),
            _text(36 + asks * scale, y + 30, f"asks {lengths.length(asks)}"),
        ]  # fmt: skip
    worst = max(rows, key=lambda row: row[2] - row[1])
    said = f"{worst[0]} is short by {lengths.length(worst[2] - worst[1])}"
    return _svg(f"Travel of the machine and of the program: {said}", parts, 22 + 54 * len(rows)), (
        f"What the machine has, and under it what the program asks for: {said}."
    )


def _table(run: Run) -> tuple[Markup, str] | None:
    """From the side: the blank on the table, and how far the tip goes below its underside."""
    assert run.tables is not None
    box, reach = run.tables.engagement.box, _reach(run)
    if box is None or box.top is None or box.bottom is None or reach is None or reach[2][0] >= box.bottom:
        return None
    lengths, thick, deep = _lengths(run), box.top - box.bottom, box.bottom - reach[2][0]
    drawn = max(deep, 0.12 * thick)  # or it would not be seen
    scale = (HIGH - 70) / (thick + 2 * drawn)
    top, bottom = 24.0, 24 + thick * scale
    tip = bottom + drawn * scale
    parts = [
        _rect(70, top, 220, thick * scale, "blank"), _rect(40, bottom, 280, HIGH - bottom - 8, "table-top"),
        Markup('<path class="tool" d="M150 6V{t}H190V6"/>').format(t=round(tip, 1)),
        _text(300, top + 10, f"top {lengths.place(box.top)}"),
        _text(328, bottom + 4, f"underside {lengths.place(box.bottom)}"),
        _text(198, tip + 4, f"tip {lengths.place(reach[2][0])}"),
    ]  # fmt: skip
    more = "" if drawn == deep else "; drawn deeper than it is, to be seen"
    return _svg(f"From the side: the tip goes {lengths.length(deep)} below the blank", parts), (
        f"From the side: the tip goes {lengths.length(deep)} below the blank, into what it lies on{more}."
    )


def _loose(run: Run) -> tuple[Markup, str] | None:
    """From above: the blank as it is left, what hangs on nothing in another shade."""
    assert run.tables is not None
    engagement = run.tables.engagement
    box = engagement.box
    if box is None or box.x is None or box.y is None or box.top is None or box.bottom is None:
        return None
    cut = fewer(engagement.surface, CELLS)
    if min(cut.shape) < 3:
        return None
    left = cut < box.top - box.bottom - 1e-3
    free = left & ~_held(left)
    if not free.any():
        return None
    ny, nx = cut.shape
    scale = min((WIDE - 2 * EDGE) / (box.x[1] - box.x[0]), (HIGH - 20) / (box.y[1] - box.y[0]))
    wide, high = (box.x[1] - box.x[0]) * scale, (box.y[1] - box.y[0]) * scale
    parts = [
        Markup('<path class="{}" transform="translate({} {}) scale({} {})" d="{}"/>').format(
            name, EDGE, 10, round(wide / nx, 4), round(high / ny, 4), _runs(cells[::-1])
        )
        for name, cells in (("blank", left & ~free), ("loose", free))
    ]
    return _svg("From above: what is left of the blank; what comes loose is shaded", parts, int(high) + 20), (
        "From above: the blank as the program leaves it; shaded is what hangs on nothing any more."
    )


def _held(left: Bools) -> Bools:
    """What is joined to the edge of the blank through what is left."""
    edge = np.zeros_like(left)
    edge[[0, -1], :] = edge[:, [0, -1]] = True
    held = left & edge
    while True:
        wider = held.copy()
        wider[1:] |= held[:-1]
        wider[:-1] |= held[1:]
        wider[:, 1:] |= held[:, :-1]
        wider[:, :-1] |= held[:, 1:]
        wider &= left
        if (wider == held).all():
            return held
        held = wider


def _runs(cells: Bools) -> str:
    """The cells as rectangles of a row each."""
    made = []
    for y, row in enumerate(cells):
        ends = np.flatnonzero(np.diff(np.concatenate(([0], row.astype(np.int8), [0]))))
        made += [f"M{a} {y}h{b - a}v1h{a - b}z" for a, b in zip(ends[::2], ends[1::2])]
    return "".join(made)


def _units(run: Run) -> tuple[Markup, str] | None:
    """The same numbers at two scales: read as millimetres and as inches, beside the blank where it is declared."""
    assert run.tables is not None
    reach, box = _reach(run), run.tables.engagement.box
    if reach is None:
        return None
    unit = INCH if run.checked.units == "inch" else 1.0
    wide, high = ((ends[1] - ends[0]) / unit for ends in reach[:2])  # as the numbers stand in the program
    blank = (box.x[1] - box.x[0], box.y[1] - box.y[0]) if box and box.declared and box.x and box.y else (0.0, 0.0)
    scale = min(250 / max(wide * INCH, blank[0], 1e-6), (HIGH - 50) / max(high * INCH, blank[1], 1e-6))
    sizes = [(wide * INCH, high * INCH, "reached", "inches"), (wide, high, "reached over", "millimetres")]
    parts = [_rect(20, 20, blank[0] * scale, blank[1] * scale, "blank")] if blank[0] else []
    for k, (x, y, name, words) in enumerate(sizes):
        parts += [
            _rect(20, 20, x * scale, y * scale, name),
            _text(280, 40 + 44 * k, f"as {words}:"), _text(280, 57 + 44 * k, f"{figure(x)} x {figure(y)} mm"),
        ]  # fmt: skip
    if blank[0]:
        parts += [_text(280, 128, "the blank:"), _text(280, 145, f"{figure(blank[0])} x {figure(blank[1])} mm")]
    return _svg("The reach of the program read as inches and as millimetres", parts), (
        "The same numbers at two scales, from above: dashed as inches, full as millimetres; which of them is meant?"
    )
