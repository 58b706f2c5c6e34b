"""The path of every test cut, and where the cuts lie on the blank.

A straight part, then a curve to the left and one to the right whose turn has the sides 3, 4 and 5, so that every end of
an arc is a round number and closes exactly.
"""

from __future__ import annotations

import math

from msgspec import Struct

from gclint.problem import Problem
from gclint.tables.setup import Machine
from gclint.toml.quantity import Angle, Length
from gclint.trial.asked import Asked
from gclint.trial.layout_numbers import plan_number
from gclint.trial.levels import Levels
from gclint.trial.plan import Shape

RISE, RUN = 0.2, 0.6  # of the radius: how far one curve goes up and along (1 - 4/5, 3/5)
STEP = 0.5  # mm, to which the shape's lengths are rounded up
SLOWER = 0.95  # by which the greatest feed is lowered until enough cuts fit


class Move(Struct, frozen=True):
    """A line, or an arc with its centre to the left or to the right of where it starts."""

    x: float  # relative to the cut's start
    y: float
    centre: tuple[float, float] | None = None  # relative to the start of the arc
    left: bool = True
    graded: bool = False


class Layout(Struct, frozen=True):
    """Fields of equal size in rows, the first at the lower left."""

    field: tuple[float, float]
    first: tuple[float, float]  # lower left corner of the first field, work coordinates
    columns: int
    rows: int

    @property
    def count(self) -> int:
        return self.columns * self.rows

    def at(self, n: int) -> tuple[float, float]:
        row, column = divmod(n, self.columns)
        return (
            round(self.first[0] + column * self.field[0], 3),
            round(self.first[1] + row * self.field[1], 3),
        )


def path_of(shape: Shape) -> tuple[Move, ...]:
    """From the start at full depth to the end, in the cut's own X and Y."""
    r, x = shape.radius, shape.lead
    straight = x + shape.straight
    return (
        Move(x, 0.0),
        Move(straight, 0.0, graded=True),
        Move(straight + RUN * r, RISE * r, (0.0, r), True, True),
        Move(straight + 2 * RUN * r, 2 * RISE * r, (RUN * r, -(1 - RISE) * r), False, True),
        Move(straight + 2 * RUN * r + shape.run_out, 2 * RISE * r),
    )


def size_of(shape: Shape) -> tuple[float, float]:
    """X and Y of the tool centre's path."""
    return path_of(shape)[-1].x, 2 * RISE * shape.radius


def shape_for(feed: float, levels: tuple[Levels, ...], asked: Asked, machine: Machine, ramp: float) -> Shape:
    """The shortest shape on which the machine gets to `feed`, mm/min."""
    axes = machine.acceleration
    slowest = min((a for a in (axes.x, axes.y) if a is not None), default=None) if axes else None
    v = feed / 60.0
    up = 0.0 if slowest is None else v * v / (2 * slowest) * plan_number("room")
    round_ = 0.0 if slowest is None else v * v / slowest * plan_number("room")
    widest = max(each.tool.diameter for each in levels)
    leg = max(leg_of(depth, each.tool.diameter, ramp)[0] for each in levels for depth in each.depths)
    leg = leg if "ramp" in asked.entries else 0.0
    return Shape(
        lead=Length(_up(max(leg, up, widest))),
        straight=Length(plan_number("straight")),
        radius=Length(_up(max(round_, plan_number("radius") * widest))),
        run_out=Length(_up(max(up, widest))),
        ramp=Angle(ramp),
    )


def leg_of(depth: float, diameter: float, ramp: float) -> tuple[float, int]:
    """(length of a leg, how many) of a ramp that goes forth and back and ends where it began."""
    whole = depth / math.tan(math.radians(ramp))
    most = max(plan_number("leg"), plan_number("leg_diameters") * diameter)
    count = 2 * max(1, math.ceil(whole / 2 / most - 1e-9))
    return whole / count, count


def layout_for(shape: Shape, levels: tuple[Levels, ...], asked: Asked) -> Layout:
    """As many fields as the blank has room for; none: count is 0."""
    widest = max(each.tool.diameter for each in levels)
    deepest = max(max(each.depths) for each in levels)
    gap = max(plan_number("gap") * widest, plan_number("gap_least"), deepest)
    length, height = size_of(shape)
    field = (_up(length + widest + gap), _up(height + widest + gap))
    size, corner = asked.blank
    margin = plan_number("margin")
    columns, rows = (max(0, math.floor((size[n] - 2 * margin + gap) / field[n] + 1e-9)) for n in (0, 1))
    # the gap lies to the right of and above each cut, so that the field's corner is the cut's own
    return Layout(field, (corner[0] + margin, corner[1] + margin), columns, rows)


def fitted(levels: tuple[Levels, ...], asked: Asked, machine: Machine, ramp: float) -> tuple[float, Shape, Layout]:
    """(greatest feed, mm/min, shape, layout): the greatest feed at which the blank has room for every cut."""
    wanted = max(each.fastest for each in levels)
    least = max(min(each.feed_range(speed.true, math.inf)[0] for speed in each.speeds) for each in levels)
    feed = wanted
    while True:
        shape = shape_for(feed, levels, asked, machine, ramp)
        layout = layout_for(shape, levels, asked)
        if layout.count >= asked.cuts:
            return feed, shape, layout
        if feed * SLOWER < least:
            break
        feed *= SLOWER
    room = f"there is room for {layout.count}" if layout.count else "there is room for none"
    columns = max(1, layout.columns)
    rows = math.ceil(asked.cuts / columns)
    margin = 2 * plan_number("margin")
    needs = f"{columns * layout.field[0] + margin:.0f} x {rows * layout.field[1] + margin:.0f} mm"
    says = f"{asked.cuts} cuts do not fit on this blank: {room} of {layout.field[0]:g} x {layout.field[1]:g} mm each"
    raise Problem(f"{says}; {asked.cuts} need a blank of about {needs}, or ask for fewer: --cuts", "--blank")


def _up(value: float) -> float:
    return math.ceil(value / STEP - 1e-9) * STEP
