"""Cutter compensation in the controller; and acceptances, which are faults of what people declare."""

from __future__ import annotations

import math
from collections.abc import Iterator
from random import Random

from tests.planted.base import Base
from tests.planted.harness import ANYWHERE, Plant, at, onward, plants

MOVED = {
    "outside-stock": "the path lies elsewhere",
    "chip-too-thick": "and takes more there",
    "inside-corner": "the same",
    "too-deep": "the same",
    "full-width-too-deep": "the same",
    "tool-bends": "the same",
    "conventional-cut": "the same",
    "rapid-through-stock": "what was not cut stands in the way",
}
STOPPED = MOVED | {"arc-does-not-close": "no path is worked out for the contour", "word-missing": "the same",
                   "compensation-left-on": "the same", "not-followed": "the same"}  # fmt: skip


def _written(base: Base) -> dict[int, tuple[float, float]]:
    """Where each line says that the path ends, as written, before compensation."""
    sheet, x, y, ends = base.sheet(), math.nan, math.nan, {}
    for line, _ in sheet.rows:
        if {28.0, 53.0} & set(sheet.codes(line)):
            continue
        words = {name: value for name, value, _, _ in sheet.words(line)}
        x, y = words.get("X", x), words.get("Y", y)
        ends[line] = (x, y)
    return ends


def _inner_arcs(base: Base) -> list[int]:
    """Lines of quarter arcs to the left within G41, after a straight line."""
    sheet, on, found = base.sheet(), False, []
    for line, _ in sheet.rows:
        codes = sheet.codes(line)
        on = (on or 41 in codes) and 40 not in codes
        if on and 3 in codes and sheet.word(line, "I") is not None and sheet.has(line - 1):
            before = {w[0] for w in sheet.words(line - 1)}
            if before & set("XY") and 3 not in sheet.codes(line - 1) and 41 not in sheet.codes(line - 1):
                found.append(line)
    return found


def _smaller(base: Base, line: int, share: float) -> bytes:
    """The program with one such arc at a share of its radius; 0 leaves a sharp corner."""
    ends, sheet = _written(base), base.sheet()
    (x0, y0), (x1, y1) = ends[line - 1], ends[line]
    i, j = sheet.word(line, "I") or 0, sheet.word(line, "J") or 0
    corner = (x0 + x1 - (x0 + i), y0 + y1 - (y0 + j))
    for n, (x, y) in ((line - 1, (x0, y0)), (line, (x1, y1))):
        for letter, value, to in (("X", x, corner[0]), ("Y", y, corner[1])):
            if sheet.word(n, letter) is not None or (abs(value - to) > 1e-6 and n == line):
                sheet.set(n, letter, to + (value - to) * share)
    if share:
        return sheet.set(line, "I", i * share).set(line, "J", j * share).bytes()
    sheet.drop(line, "I", "J").set(line, "G", 1, sheet.codes(line).index(3))
    return sheet.bytes()


@plants("contour-too-tight", STOPPED)
def inside_radius_too_small(base: Base, dice: Random) -> Iterator[Plant]:
    arcs, tool = _inner_arcs(base), next(iter(base.tables.setup.tools.values()), None)
    for line in dice.sample(arcs, len(arcs)):
        i, j = base.sheet().word(line, "I") or 0, base.sheet().word(line, "J") or 0
        radius = dice.uniform(0.3, 0.9) * (tool.diameter / 2 if tool else 0)
        data = _smaller(base, line, radius / math.hypot(i, j))
        yield Plant(data, (line - 1, line + 1), f"an inside arc of {radius:.1f} mm", follows=ANYWHERE)


@plants("contour-too-tight", STOPPED | {"compensation-of-another-tool": "its D stands for the other diameter"})
def offset_of_a_larger_tool(base: Base, dice: Random) -> Iterator[Plant]:
    """The controller's table holds another tool's diameter under this D."""
    arcs, sheet = _inner_arcs(base), base.sheet()
    for line in dice.sample(arcs, min(len(arcs), 2)):
        radius = math.hypot(sheet.word(line, "I") or 0, sheet.word(line, "J") or 0)
        wide = 2 * radius + dice.uniform(0.5, 3)
        told = base.told(shop=lambda shop: shop.update(diameter_offsets={"1": f"{wide:.2f} mm"}))  # noqa: B023
        yield Plant(base.data, (min(arcs) - 1, max(arcs) + 1), f"D1 is {wide:.1f} mm", follows=ANYWHERE, **told)


@plants("entry-too-short", STOPPED)
def compensation_begun_on_a_short_move(base: Base, dice: Random) -> Iterator[Plant]:
    """G41 comes on a move shorter than the tool's radius."""
    sheet, ends = base.sheet(), _written(base)
    for line in dice.sample(found := sheet.lines_with("G", 41), len(found)):
        before = max(n for n in ends if n < line)
        (x0, y0), (x1, y1) = ends[before], ends[line]
        way = math.hypot(x1 - x0, y1 - y0)
        short = dice.uniform(0.3, 2.5) / base.unit
        changed, n = base.sheet(), base.sheet().number
        to = f"X{n(x1)} Y{n(y1)}"
        changed.set(line, "X", x0 + (x1 - x0) * short / way).set(line, "Y", y0 + (y1 - y0) * short / way)
        changed.after(line, to)
        yield Plant(changed.bytes(), (line, line + 1), f"G41 on a move of {short:.1f}", follows=onward(line))


NO_INSIDE = STOPPED | {"compensation-refused": "this controller takes no inside corner, that of the way in either"}


@plants("compensation-refused", NO_INSIDE)
def sharp_inside_corner(base: Base, dice: Random) -> Iterator[Plant]:
    """On a controller that takes no inside corners while compensation is on."""
    arcs = _inner_arcs(base)
    for line in dice.sample(arcs, len(arcs)):
        told = base.with_shop("machine", controller="rs274ngc")
        yield Plant(_smaller(base, line, 0.0), (line - 1, line + 1), "a sharp inside corner", follows=ANYWHERE, **told)


@plants("compensation-refused", NO_INSIDE)
def home_within_a_contour(base: Base, dice: Random) -> Iterator[Plant]:
    """On a controller that does not go home while compensation is on."""
    sheet = base.sheet()
    for line in sheet.lines_with("G", 41):
        end = min(n for n in sheet.lines_with("G", 40) if n > line)
        changed = base.sheet().before(end, "G28 Z15")
        told = base.with_shop("machine", controller="rs274ngc")
        here = at(changed, end)[0] - 1
        yield Plant(changed.bytes(), (here, here), "G28 within a contour", follows=ANYWHERE, **told)


@plants("compensation-left-on", STOPPED)
def compensation_never_ended(base: Base, dice: Random) -> Iterator[Plant]:
    sheet = base.sheet()
    on = sheet.lines_with("G", 41)
    for line in on:
        end = min(n for n in sheet.lines_with("G", 40) if n > line)
        changed = base.sheet().drop_code(end, "G", 40)
        yield Plant(changed.bytes(), (line, changed.last), "G40 left out", follows=ANYWHERE)


# ---- acceptances


@plants("acceptance-unknown")
def misspelt_acceptance(base: Base, dice: Random) -> Iterator[Plant]:
    for line in dice.sample(base.gaps, len(base.gaps)):
        name = dice.choice(["chip-to-thin", "straight-plunges", "rapid-thru-stock", "too-deap"])
        sheet = base.sheet().before(line, f"(gclint accept {name} because it ran well)")
        new = sheet.now(line) - 1
        yield Plant(sheet.bytes(), (new, new + 1), f"{name} is no rule")


@plants("acceptance-stale")
def acceptance_of_nothing(base: Base, dice: Random) -> Iterator[Plant]:
    for line in dice.sample(base.gaps, len(base.gaps)):
        name = dice.choice(["straight-plunge", "tool-breaks", "rim-too-fast", "wall-too-thin"])
        sheet = base.sheet().before(line, f"(gclint accept {name} because it ran well)")
        new = sheet.now(line) - 1
        yield Plant(sheet.bytes(), (new, new + 1), f"{name} finds nothing there")


@plants("acceptance-stale")
def acceptance_of_nothing_in_the_job(base: Base, dice: Random) -> Iterator[Plant]:
    name = dice.choice(["straight-plunge", "tool-breaks", "rim-too-fast", "wall-too-thin"])
    told = base.with_job(accept=[{"rule": name, "because": "it ran well"}])
    yield Plant(base.data, ANYWHERE, f"the job accepts {name}, which finds nothing", **told)
