"""Gives the facts that rapid-not-straight alone looks at: rapids whose axes need not arrive together."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np

from gclint.columns import Column, Floats
from gclint.facts.context import Context, once
from gclint.facts.fact import Fact, number, text
from gclint.facts.finished import surface
from gclint.knowledge.numbers import model_number
from gclint.tables.motion import HOME, MACHINE, RAPID

MOST_POINTS = 400  # along one rapid
MOST_RAPIDS = 4000  # looked at, the lowest first


@once
def _bent_paths(context: Context) -> Floats:
    """[moves] how deep a rapid over several axes would run into what stands, if Z came first (or last) and not along.

    mm; -inf for all other moves. Material that stands when the program has ended counts, and declared keep-outs.
    """
    m = context.motion
    deep = np.full(len(m), -np.inf)
    rapids = np.flatnonzero((m.kind == RAPID) & ((m.flags & (MACHINE | HOME)) == 0) & ~context.in_contact)
    rapids = rapids[context.placed[rapids]]
    across = np.hypot(m.x1[rapids] - m.x0[rapids], m.y1[rapids] - m.y0[rapids])
    low = context.lowest[rapids]
    highest = max([box.high[2] for box in context.setup.keep_out], default=-np.inf)
    if context.box is not None and context.box.top is not None:
        highest = max(highest, context.box.top)
    one_axis = model_number("one_axis")
    both = np.flatnonzero(
        (across > one_axis) & (np.abs(m.z1[rapids] - m.z0[rapids]) > one_axis) & (low < highest)
    )
    for at in both[np.argsort(low[both], kind="stable")][:MOST_RAPIDS].tolist():
        deep[rapids[at]] = _met(context, int(rapids[at]), float(across[at]), float(low[at]))
    return deep


def _met(context: Context, row: int, across: float, low: float) -> float:
    """Height of what stands above `low` along the rapid as seen from above, mm."""
    m = context.motion
    tool = context.tool(int(m.tool[row]))
    radius = tool.diameter / 2 if tool else 0.0
    steps = min(MOST_POINTS, int(across / 0.5) + 2)
    share = np.linspace(0.0, 1.0, steps)
    x = m.x0[row] + share * (m.x1[row] - m.x0[row])
    y = m.y0[row] + share * (m.y1[row] - m.y0[row])
    aside = np.array([0.0, 1.0, -1.0])[:, None] * (radius * model_number("strip_looked_at"))
    nx, ny = -(m.y1[row] - m.y0[row]) / across, (m.x1[row] - m.x0[row]) / across
    tall = float(surface(context, x + aside * nx, y + aside * ny).max()) - low
    for bx, by, top in _beside(context, x, y, radius, low):
        if ((x > bx[0] - radius) & (x < bx[1] + radius) & (y > by[0] - radius) & (y < by[1] + radius)).any():
            return max(tall, top - low)
    return tall


def _beside(
    context: Context, x: Floats, y: Floats, radius: float, low: float
) -> Iterator[tuple[Column, Column, float]]:
    """X and Y from and to of the keep-outs within the bounds of these points, and their tops; the highest first."""
    low_x, high_x, low_y, high_y, top = _keep_outs(context)
    near = np.flatnonzero(
        (top > low)
        & (x.max() > low_x - radius)
        & (x.min() < high_x + radius)
        & (y.max() > low_y - radius)
        & (y.min() < high_y + radius)
    )
    for n in near.tolist():
        yield np.array([low_x[n], high_x[n]]), np.array([low_y[n], high_y[n]]), float(top[n])


@once
def _keep_outs(context: Context) -> Column:
    """[lowest X, highest X, lowest Y, highest Y, top; keep-outs], the highest first, mm."""
    boxes = sorted(context.setup.keep_out, key=lambda box: -box.high[2])
    rows = [(box.low[0], box.high[0], box.low[1], box.high[1], box.high[2]) for box in boxes]
    return np.array(rows, float).reshape(-1, 5).T


FACTS: dict[str, dict[str, Fact]] = {
    "moves": {
        "bent_path": number("mm", "of a rapid over X or Y and Z that touches nothing on its straight way: how far what "
                            "stands at the end, or a keep-out, rises above the lower end on the way", _bent_paths),
        "controller.rapids": text("how the controller goes where a rapid moves more than one axis",
                                  lambda c: c.setup.controller.rapids, "", ("straight", "each-axis", "not-known")),
    },
}  # fmt: skip
