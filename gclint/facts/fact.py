"""What a fact and a table of facts are.

A fact is a column: its kind, the unit it is kept in, what it means, and which declaration would give it where it is
unknown. Columns are built only when an expression reads them.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

import numpy as np
from msgspec import Struct

from gclint.columns import Column
from gclint.facts.context import Context
from gclint.language.expression import NUMBER, TEXT, TRUTH

Build = Callable[[Context], Any]


class Fact(Struct, frozen=True):
    """`build` gives an array of one value per row, or one value for all rows; None, NaN and code -1 are unknown."""

    kind: str
    unit: str
    meaning: str
    build: Build
    needs: str = ""  # the declaration that would give it
    words: tuple[str, ...] = ()
    beside: str = ""  # "previous" or "next": the fact behind the point, of that row of the same tool
    needs_here: Callable[[Context], str] | None = None  # as `needs`, where that depends on what is declared already


def number(
    unit: str, meaning: str, build: Build, needs: str = "", needs_here: Callable[[Context], str] | None = None
) -> Fact:
    return Fact(NUMBER, unit, meaning, build, needs, needs_here=needs_here)


def truth(meaning: str, build: Build, needs: str = "") -> Fact:
    return Fact(TRUTH, "", meaning, build, needs)


def text(meaning: str, build: Build, needs: str = "", words: tuple[str, ...] = ()) -> Fact:
    return Fact(TEXT, "", meaning, build, needs, words)


def of_rows(rows: Build, name: str, kind: type = float) -> Build:
    """Give a builder for one field of each of the rows that `rows` lists."""
    return lambda context: np.array([getattr(row, name) for row in rows(context)], dtype=kind)


class Table(Struct, frozen=True):
    """A kind of thing rules look at. `move` gives the rows' moves, -1 where a row belongs to no move."""

    name: str
    meaning: str
    facts: Mapping[str, Fact]
    length: Build
    tool: Build | None = None  # program tool number of each row
    move: Build | None = None  # row of Motion each row belongs to
    weight: Build | None = None  # cut length of each row, for share and total
    neighbours: bool = False  # whether its rows follow on each other as the tool works


def table_of(rows: Build, name: str, meaning: str, facts: Mapping[str, Fact]) -> Table:
    """Give the table of what `rows` lists; each of them names its row of Motion as `move`."""
    move = of_rows(rows, "move", int)
    return Table(name, meaning, facts, lambda c: len(rows(c)), lambda c: c.motion.tool[move(c)], move)


def texts(values: list[str | None]) -> tuple[Column, tuple[str, ...]]:
    """A text column from one value per row."""
    words = tuple(dict.fromkeys(value for value in values if value is not None))
    place = {word: code for code, word in enumerate(words)}
    return np.array([-1 if value is None else place[value] for value in values], dtype=np.int32), words
