"""What the tests of cutter compensation share: a program's path beside its contour, and paths as points."""

from __future__ import annotations

import math
from typing import Any

from gclint.motion.compensate import compensate
from gclint.motion.interpret import interpret
from gclint.program.read import read
from gclint.tables.motion import RAPID, Motion
from gclint.tables.setup import Controller, Hold, Machine, Setup, Spindle, Tool

Point = tuple[float, float]


def compensated(text: str, diameter: float = 6.0, offsets: dict[int, float] | None = None, **card: Any) -> Motion:
    """The motion of a program with tool 1 of this diameter, as the tool's centre runs."""
    controller = Controller(**card)
    program = read(text.encode(), "test")
    setup = Setup(
        machine=Machine(), spindle=Spindle(), controller=controller, tools={1: Tool(1, "flat", diameter)},
        material=None, stock=None, z_zero=None, dial=None, hold=Hold(), diameter_offsets=offsets or {},
    )  # fmt: skip
    return compensate(interpret(program, controller), setup, program)


def points(motion: Motion, first: int, behind: int) -> list[Point]:
    """Moves first .. behind in XY as points, 0.001 mm from arcs at most; fails where two moves do not meet."""
    found: list[Point] = []
    for row in range(first, behind):
        start = (float(motion.x0[row]), float(motion.y0[row]))
        if found:
            assert math.dist(found[-1], start) < 2e-3, f"move {row} starts away from where the one before it ends"
        found.append(start)
        sweep = math.radians(motion.sweep[row])
        if sweep:
            cx, cy = float(motion.cu[row]), float(motion.cv[row])
            radius, angle = math.dist(start, (cx, cy)), math.atan2(start[1] - cy, start[0] - cx)
            n = max(2, math.ceil(abs(sweep) / math.sqrt(0.008 / max(radius, 0.01))))
            for k in range(1, n + 1):
                at = angle + sweep * k / n
                found.append((cx + radius * math.cos(at), cy + radius * math.sin(at)))
            assert math.dist(found[-1], (float(motion.x1[row]), float(motion.y1[row]))) < 2e-3
        else:
            found.append((float(motion.x1[row]), float(motion.y1[row])))
    return found


def cuts(motion: Motion) -> list[int]:
    return [row for row in range(len(motion)) if motion.kind[row] != RAPID]
