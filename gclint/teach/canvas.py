"""A sheet of plain characters to draw on: columns to the right, rows downward, readable without colour."""

from __future__ import annotations

import math

import msgspec

WIDTH = 62  # columns of a drawing; with the scale at its left it fits 80


class Drawing(msgspec.Struct, frozen=True):
    """`lines` with what each character in them means; `title` says what is seen and from where, `scale` how large."""

    title: str
    lines: tuple[str, ...]
    legend: tuple[tuple[str, str], ...] = ()
    scale: str = ""


class Canvas:
    """Characters in rows; what lies outside is not drawn."""

    def __init__(self, width: int, height: int) -> None:
        self.width, self.height = width, height
        self.rows = [[" "] * width for _ in range(height)]

    def put(self, column: int, row: int, text: str) -> None:
        if 0 <= row < self.height:
            for at, character in enumerate(text, column):
                if 0 <= at < self.width:
                    self.rows[row][at] = character

    def at(self, column: int, row: int) -> str:
        return self.rows[row][column] if 0 <= row < self.height and 0 <= column < self.width else " "

    def line(self, a: tuple[float, float], b: tuple[float, float], character: str) -> None:
        """Along a straight line between two (column, row); nothing where an end is not known."""
        if not all(map(math.isfinite, (*a, *b))):
            return
        steps = min(4 * (self.width + self.height), int(max(abs(b[0] - a[0]), abs(b[1] - a[1])) * 2) + 1)
        for step in range(steps + 1):
            share = step / steps
            self.put(round(a[0] + share * (b[0] - a[0])), round(a[1] + share * (b[1] - a[1])), character)

    @property
    def lines(self) -> tuple[str, ...]:
        return tuple("".join(row).rstrip() for row in self.rows)

    @property
    def used(self) -> set[str]:
        return {character for row in self.rows for character in row}
