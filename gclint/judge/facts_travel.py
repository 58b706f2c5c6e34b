"""Facts about moves: rapids whose axes need not arrive together, and moves that come faster than they can be read."""

from __future__ import annotations

from typing import Any

import numpy as np

from gclint.columns import Column, Floats
from gclint.judge.chain import Chain, once
from gclint.judge.facts import Fact, number, text
from gclint.judge.finished import surface
from gclint.motion.table import HOME, MACHINE, RAPID

SIDEWAYS = 0.1  # mm; less travel in X and Y, or less change of Z, is one axis alone
WITHIN = 0.7  # of the tool's radius: the strip whose middle and two sides are looked at
MOST_POINTS = 400  # along one rapid
MOST_RAPIDS = 4000  # looked at, the lowest first
WINDOW = 32  # moves over which reading and moving are compared: about what a small controller holds ready


@once
def _bent_paths(chain: Chain) -> Floats:
    """[moves] how deep a rapid over several axes would run into what stands, if Z came first (or last) and not along.

    mm; -inf for all other moves. Material that stands when the program has ended counts, and declared keep-outs.
    """
    m = chain.motion
    deep = np.full(len(m), -np.inf)
    across = np.hypot(m.x1 - m.x0, m.y1 - m.y0)
    low = chain.lowest
    highest = max([box.high[2] for box in chain.setup.keep_out], default=-np.inf)
    if chain.box is not None and chain.box.top is not None:
        highest = max(highest, chain.box.top)
    rows = np.flatnonzero(
        (m.kind == RAPID) & chain.placed & ((m.flags & (MACHINE | HOME)) == 0) & ~chain.in_contact
        & (across > SIDEWAYS) & (np.abs(m.z1 - m.z0) > SIDEWAYS) & (low < highest)
    )  # fmt: skip
    for row in rows[np.argsort(low[rows], kind="stable")][:MOST_RAPIDS].tolist():
        deep[row] = _met(chain, row, float(across[row]), float(low[row]))
    return deep


def _met(chain: Chain, row: int, across: float, low: float) -> float:
    """Height of what stands above `low` along the rapid as seen from above, mm."""
    m = chain.motion
    tool = chain.tool(int(m.tool[row]))
    radius = tool.diameter / 2 if tool else 0.0
    steps = min(MOST_POINTS, int(across / 0.5) + 2)
    share = np.linspace(0.0, 1.0, steps)
    x = m.x0[row] + share * (m.x1[row] - m.x0[row])
    y = m.y0[row] + share * (m.y1[row] - m.y0[row])
    aside = np.array([0.0, WITHIN, -WITHIN])[:, None] * radius
    nx, ny = -(m.y1[row] - m.y0[row]) / across, (m.x1[row] - m.x0[row]) / across
    tall = float(surface(chain, x + aside * nx, y + aside * ny).max()) - low
    for box in chain.setup.keep_out:
        inside = (x > box.low[0] - radius) & (x < box.high[0] + radius)
        inside &= (y > box.low[1] - radius) & (y < box.high[1] + radius)
        if inside.any():
            tall = max(tall, box.high[2] - low)
    return tall


@once
def _window(chain: Chain) -> tuple[Floats, Floats, Floats]:
    """[moves] of the WINDOW moves up to this one: (lines, characters, seconds); the seconds infinite where unknown.

    0, 0 and infinite where the program is followed through calls and loops: the controller does not read it line by
    line then.
    """
    m, n = chain.motion, len(chain.motion)
    if m.followed is not None or n <= WINDOW:
        return np.zeros(n), np.zeros(n), np.full(n, np.inf)
    starts = chain.program.line_start
    line = np.clip(m.line, 1, chain.program.lines)
    lines, characters = np.concatenate(([0.0], np.cumsum(np.diff(line) != 0))), starts[line]
    seconds = chain.clock + 1e6 * chain.untimed
    over = [np.zeros(n), np.zeros(n), np.full(n, np.inf)]
    over[0][WINDOW:] = lines[WINDOW:] - lines[:-WINDOW]
    over[1][WINDOW:] = np.maximum(characters[WINDOW:] - characters[:-WINDOW], 0)
    over[2][WINDOW:] = seconds[WINDOW + 1 :] - seconds[1 : n - WINDOW + 1]
    return over[0], over[1], over[2]


def _lines_per_second(chain: Chain) -> Floats:
    lines, _, seconds = _window(chain)
    with np.errstate(divide="ignore", invalid="ignore"):
        return np.where(seconds > 0, lines / seconds, 0.0)


def _reading_share(chain: Chain) -> Any:
    """Time to read over time to move."""
    rate = chain.setup.controller.characters_per_second
    if rate is None:
        return None
    _, characters, seconds = _window(chain)
    with np.errstate(divide="ignore", invalid="ignore"):
        return np.where(seconds > 0, characters / rate / seconds, 0.0)


def _at_reading_speed(chain: Chain) -> Any:
    """Feed at which these moves come no faster than they can be read, mm/min."""
    share: Column | None = _reading_share(chain)
    if share is None:
        return None
    with np.errstate(divide="ignore", invalid="ignore"):
        return np.where(share > 0, chain.motion.feed / share, np.inf)


_RATE = "`characters_per_second` on the controller's card"
MOVING: dict[str, Fact] = {
    "bent_path": number("mm", "of a rapid over X or Y and Z that touches nothing on its straight way: how far what "
                        "stands at the end, or a keep-out, rises above the lower end on the way", _bent_paths),
    "controller.rapids": text("how the controller goes where a rapid moves more than one axis",
                              lambda c: c.setup.controller.rapids, "", ("straight", "each-axis", "not-known")),
    "lines_per_second": number("", "lines that the 32 moves up to this one ask for in a second", _lines_per_second),
    "reading_share": number("", "time the controller needs to read the 32 moves up to this one, over the time they "
                            "take", _reading_share, _RATE),
    "feed_at_reading_speed": number("mm/min", "feed at which these moves come no faster than they can be read",
                                    _at_reading_speed, _RATE),
}  # fmt: skip
