"""What the tests of motion share: a program run from text, its moves as tuples, its faults as names."""

from __future__ import annotations

from typing import Any

from gclint.faults import KINDS
from gclint.motion.interpret import interpret
from gclint.program.read import read
from gclint.tables.motion import EVENTS, Motion
from gclint.tables.setup import Controller

STATED = "G21 G90 G94 G17 G54\n"  # line 1 of most test programs, so that no first-use fault stands in the way
KIND = ("rapid", "line", "cw", "ccw")


def run(text: str, **card: Any) -> Motion:
    return interpret(read(text.encode(), "test"), Controller(**card))


def ends(motion: Motion) -> list[tuple[str, float, float, float]]:
    """(kind, x, y, z) of every move's end, to a millionth of a millimetre."""
    return [
        (KIND[kind], round(float(x), 6), round(float(y), 6), round(float(z), 6))
        for kind, x, y, z in zip(motion.kind, motion.x1, motion.y1, motion.z1)
    ]


def faults(motion: Motion) -> list[tuple[str, int]]:
    return [(KINDS[kind], int(line)) for kind, line in zip(motion.faults.kind, motion.faults.line)]


def events(motion: Motion) -> list[tuple[str, int, int]]:
    """(event, line, moves before it)."""
    return [
        (EVENTS[kind], int(line), int(move))
        for kind, line, move in zip(motion.event_kind, motion.event_line, motion.event_move)
    ]
