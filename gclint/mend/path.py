"""A way in plan, made of lines and arcs: measured, cut to length, walked forth and back, and written as blocks."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from msgspec import Struct

from gclint.columns import Longs
from gclint.mend.case import Case
from gclint.tables.motion import ARC_CCW, ARC_CW, Motion

SAGITTA = 0.005  # mm between an arc and the chords written for it
SHORTEST_CHORD = 0.05  # mm
MOST_CHORDS = 400  # of one arc
TURN = 360.0


class Step(Struct, frozen=True):
    """A line, or an arc about (cx, cy) by `sweep` degrees (counter-clockwise positive); mm."""

    x0: float
    y0: float
    x1: float
    y1: float
    cx: float = 0.0
    cy: float = 0.0
    sweep: float = 0.0

    @property
    def radius(self) -> float:
        return math.hypot(self.x0 - self.cx, self.y0 - self.cy)

    @property
    def length(self) -> float:
        if self.sweep:
            return math.radians(abs(self.sweep)) * self.radius
        return math.hypot(self.x1 - self.x0, self.y1 - self.y0)

    def back(self) -> Step:
        return Step(self.x1, self.y1, self.x0, self.y0, self.cx, self.cy, -self.sweep)

    def at(self, share: float) -> tuple[float, float]:
        if not self.sweep:
            return self.x0 + (self.x1 - self.x0) * share, self.y0 + (self.y1 - self.y0) * share
        turn = math.radians(self.sweep * share)
        dx, dy = self.x0 - self.cx, self.y0 - self.cy
        return (
            self.cx + dx * math.cos(turn) - dy * math.sin(turn),
            self.cy + dx * math.sin(turn) + dy * math.cos(turn),
        )

    def until(self, share: float) -> Step:
        """The first share of it."""
        if share >= 1:
            return self
        x, y = self.at(share)
        return Step(self.x0, self.y0, x, y, self.cx, self.cy, self.sweep * share)

    def chords(self) -> list[Step]:
        """Lines that stand for an arc."""
        if not self.sweep:
            return [self]
        step = 2 * math.acos(max(-1.0, 1 - SAGITTA / max(self.radius, SAGITTA)))
        step = max(step, SHORTEST_CHORD / max(self.radius, 1e-6))
        count = max(1, min(MOST_CHORDS, math.ceil(math.radians(abs(self.sweep)) / step)))
        points = [self.at(k / count) for k in range(count)] + [(self.x1, self.y1)]
        return [Step(*a, *b) for a, b in pairwise(points)]


Path = tuple[Step, ...]


def step_of(m: Motion, row: int) -> Step | None:
    """A move as a step in plan; None for an arc that does not lie in X and Y or turns more than once."""
    ends = float(m.x0[row]), float(m.y0[row]), float(m.x1[row]), float(m.y1[row])
    if not all(map(math.isfinite, ends)):
        return None
    if int(m.kind[row]) not in (ARC_CW, ARC_CCW):
        return Step(*ends)
    if int(m.plane[row]) != 17 or abs(float(m.sweep[row])) > TURN + 1e-6:
        return None
    return Step(*ends, float(m.cu[row]), float(m.cv[row]), float(m.sweep[row]))


def length_of(path: Sequence[Step]) -> float:
    return sum(step.length for step in path)


def back(path: Sequence[Step]) -> Path:
    return tuple(step.back() for step in reversed(path))


def first_part(path: Sequence[Step], length: float, floors: Sequence[float] = ()) -> tuple[Path, tuple[float, ...]]:
    """The path up to a length, mm, and the heights at the ends of its steps, where they are given."""
    made: list[Step] = []
    heights = list(floors[:1])
    for n, step in enumerate(path):
        own = step.length
        share = min(1.0, length / own) if length <= own + 1e-9 else 1.0
        made.append(step.until(share))
        if floors:
            heights.append(floors[n] + (floors[n + 1] - floors[n]) * share)
        length -= own
        if length <= 1e-9:
            break
    return tuple(made), tuple(heights)


def closed(path: Sequence[Step], within: float = 1e-3) -> bool:
    return bool(path) and math.hypot(path[0].x0 - path[-1].x1, path[0].y0 - path[-1].y1) <= within


class Leg(Struct, frozen=True):
    """One way along a path, from one height to another, mm; never below `floors` [steps + 1], the heights at the ends
    of its steps (empty: no bound)."""

    path: Path
    z0: float
    z1: float
    floors: tuple[float, ...] = ()


@dataclass(slots=True)
class Pen:
    """Writes steps as blocks in a program's style. `unit`: mm in its unit of length.

    `at`: where the tool stands as written, for a program that counts in increments (G91); None: absolute words.
    """

    case: Case
    unit: float
    arcs: bool  # arcs may be written as arcs, with Z too
    at: list[float] | None = None

    def number(self, letter: str, value: float) -> str:
        return self.case.style.word(letter, value / self.unit)

    def axis(self, letter: str, value: float) -> str:
        """The word that takes an axis to a place, mm; in increments from where the tool stands."""
        if self.at is None:
            return self.number(letter, value)
        n = "XYZ".index(letter)
        way = self.rounded(value - self.at[n])
        self.at[n] += way
        return self.number(letter, way)

    def rounded(self, value: float) -> float:
        return self.case.style.rounded(value / self.unit) * self.unit

    def legs(self, legs: Sequence[Leg], feed: float | None, mode: int) -> tuple[list[bytes], int]:
        """(blocks, motion code in force behind them); `mode` is the code before them. feed: in F's own unit."""
        made: list[bytes] = []
        before = legs[0].z0 if legs else 0.0
        for leg in legs:
            total = length_of(leg.path)
            done = 0.0
            for n, step in enumerate(leg.path):
                parts = [step] if self.arcs or not step.sweep else step.chords()
                for k, part in enumerate(parts, 1):
                    done += part.length
                    last = n == len(leg.path) - 1 and k == len(parts)
                    z = leg.z1 if last else leg.z0 + (leg.z1 - leg.z0) * done / total
                    if leg.floors:
                        low, high = leg.floors[n], leg.floors[n + 1]
                        z = max(z, low + (high - low) * k / len(parts))
                    words, mode = self._words(part, z, self.number("Z", z) == self.number("Z", before), mode)
                    before = z
                    if feed is not None:
                        words.append(self.case.style.word("F", feed))
                        feed = None
                    made.append(self.case.style.line(*words))
        return made, mode

    def _words(self, step: Step, z: float, level: bool, mode: int) -> tuple[list[str], int]:
        style = self.case.style
        code = 1 if not step.sweep else 3 if step.sweep > 0 else 2
        words = [style.code("G", code)] if code != mode else []
        x0, y0, x1, y1 = (self.number("X", v)[1:] for v in (step.x0, step.y0, step.x1, step.y1))
        start_x, start_y = (self.rounded(step.x0), self.rounded(step.y0)) if self.at is None else self.at[:2]
        if x0 != x1 or step.sweep:
            words.append(self.axis("X", step.x1))
        if y0 != y1 or step.sweep:
            words.append(self.axis("Y", step.y1))
        if not level:
            words.append(self.axis("Z", z))
        if step.sweep:
            words.append(self.number("I", step.cx - start_x))
            words.append(self.number("J", step.cy - start_y))
        if not words or words == [style.code("G", code)]:
            words.append(self.axis("X", step.x1))
        return words, code


def arcs_allowed(case: Case, rows: Sequence[int] | Longs, line: int = 0, any_arcs: bool = False) -> bool:
    """Whether arcs with Z may be written at a line: those of these moves are by I and J from the start, the plane in
    force is X and Y, and either the declared controller or the program itself shows that arcs with Z are understood.

    `any_arcs`: where these moves hold no arc, it is told from all of the program.
    """
    m = case.motion
    arcs = [int(row) for row in rows if int(m.kind[row]) in (ARC_CW, ARC_CCW) and int(m.plane[row]) == 17]
    if line and case.modes.code_at("plane", line, 170) != 170:
        return False
    if not arcs and any_arcs:
        arcs = np.flatnonzero(np.isin(m.kind, (ARC_CW, ARC_CCW)) & (m.plane == 17))[:50].tolist()
        if not arcs and case.setup.controller.name == "any":
            return False
    if not arcs:
        return True
    for row in arcs:
        letters = {letter for letter, *_ in case.words(int(m.line[row]))}
        if int(m.plane[row]) != 17 or not letters & {"I", "J"} or "R" in letters or "P" in letters:
            return False
        if case.modes.code_at("centres", int(m.line[row])) == 901 or case.setup.controller.arc_centres != "incremental":
            return False
    if case.setup.controller.name != "any":
        return True
    rising = (m.sweep != 0) & (m.plane == 17) & (abs(m.z1 - m.z0) > 1e-6) & (m.cycle == 0)
    return bool(rising.any())
