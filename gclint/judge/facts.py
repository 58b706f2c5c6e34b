"""The tables rules look at and the facts in them: what `gclint pack facts` lists and what names in expressions mean.

A fact is a column: its kind, the unit it is kept in, what it means, and which declaration would give it where it is
unknown. Columns are built only when an expression reads them.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import cache
from typing import Any

import numpy as np
from msgspec import Struct

from gclint.columns import Column, numbered
from gclint.judge.chain import Chain
from gclint.judge.evaluate import FALSE, TRUE, UNKNOWN
from gclint.judge.language import NUMBER, TEXT, TRUTH, Name

Build = Callable[[Chain], Any]


class Fact(Struct, frozen=True):
    """`build` gives an array of one value per row, or one value for all rows; None, NaN and code -1 are unknown."""

    kind: str
    unit: str
    meaning: str
    build: Build
    needs: str = ""  # the declaration that would give it
    words: tuple[str, ...] = ()


def number(unit: str, meaning: str, build: Build, needs: str = "") -> Fact:
    return Fact(NUMBER, unit, meaning, build, needs)


def truth(meaning: str, build: Build, needs: str = "") -> Fact:
    return Fact(TRUTH, "", meaning, build, needs)


def text(meaning: str, build: Build, needs: str = "", words: tuple[str, ...] = ()) -> Fact:
    return Fact(TEXT, "", meaning, build, needs, words)


class Table(Struct, frozen=True):
    """A kind of thing rules look at. `place` gives the rows' moves, -1 where a row belongs to no move."""

    name: str
    meaning: str
    facts: Mapping[str, Fact]
    length: Build
    tool: Build | None = None  # program tool number of each row
    move: Build | None = None  # row of Motion each row belongs to
    weight: Build | None = None  # cut length of each row, for share and total


@cache
def tables() -> dict[str, Table]:
    """Every table by name."""
    from gclint.judge import (
        facts_contours,
        facts_cut,
        facts_dwell,
        facts_motion,
        facts_program,
        facts_stops,
        facts_words,
    )

    made = (
        *facts_cut.TABLES, *facts_motion.TABLES, *facts_program.TABLES, facts_dwell.DWELLS, *facts_words.TABLES,
        *facts_contours.TABLES, *facts_stops.TABLES,
    )
    return {table.name: table for table in made}


@cache
def facts_of(table: str) -> dict[str, Fact]:
    """Every fact rules on this table can use: its own, its tool's and the setup's."""
    from gclint.judge.facts_setup import SETUP, tool_facts

    own = tables()[table]
    return {**own.facts, **(tool_facts(own.tool) if own.tool else {}), **SETUP}


@cache
def names_of(table: str) -> dict[str, Name]:
    """The same for the checker of expressions."""
    grouped = tables()[table].weight is not None
    return {key: Name(fact.kind, fact.unit, fact.words, None, grouped) for key, fact in facts_of(table).items()}


class View(Struct, frozen=True, eq=False):
    """A table of one program, or chosen rows of it; what expressions are run over (evaluate.Rows)."""

    table: Table
    chain: Chain
    length: int
    rows: Column | None = None
    built: dict[str, Any] = {}  # shared by all views of one table
    facts: Mapping[str, Fact] = {}

    @staticmethod
    def of(name: str, chain: Chain) -> View:
        table = tables()[name]
        return View(table, chain, int(table.length(chain)), None, {}, facts_of(name))

    def choose(self, rows: Column) -> View:
        return View(self.table, self.chain, len(rows), self._within(rows), self.built, self.facts)

    def _within(self, rows: Column) -> Column:
        return rows if self.rows is None else self.rows[rows]

    def whole(self) -> View:
        if self.rows is None:
            return self
        return View(self.table, self.chain, int(self.table.length(self.chain)), None, self.built, self.facts)

    def pick(self, column: Column) -> Column:
        return column if self.rows is None or np.ndim(column) == 0 else column[self.rows]

    def value(self, name: str) -> Any:
        if name not in self.built:
            fact = self.facts[name]
            self.built[name] = as_value(fact, fact.build(self.chain))
        value = self.built[name]
        if isinstance(value, tuple):
            return self.pick(value[0]), value[1]
        return self.pick(value)

    def column(self, key: str) -> Column:
        """`tool`, `move` or `weight` of the rows; -1 where the table has no such thing."""
        if ":" + key not in self.built:
            build = getattr(self.table, key)
            whole = int(self.table.length(self.chain))
            self.built[":" + key] = np.full(whole, -1) if build is None else np.asarray(build(self.chain))
        return self.pick(self.built[":" + key])

    def breaks(self) -> Column:
        move, tool = self.column("move"), self.column("tool")
        return np.concatenate(([True], (np.diff(move) > 1) | (np.diff(tool) != 0)))[: self.length]

    def group(self) -> tuple[Column, int, Column]:
        if ":group" not in self.built:
            tools, group = numbered(self.column("tool"))
            self.built[":group"] = (group, len(tools), self.column("weight"))
        made: tuple[Column, int, Column] = self.built[":group"]
        return made


def as_value(fact: Fact, given: Any) -> Any:
    """What a builder gave, as `evaluate` wants it."""
    if fact.kind == TEXT:
        if given is None or isinstance(given, str):
            return (np.int32(-1), ()) if given is None else (np.int32(0), (given,))
        return given
    if fact.kind == TRUTH:
        if given is None:
            return np.int8(UNKNOWN)
        array = np.asarray(given)
        return np.where(array, np.int8(TRUE), np.int8(FALSE)).astype(np.int8) if array.dtype == bool else array
    if given is None:
        return np.float64(np.nan)
    array = np.asarray(given)
    return array if array.dtype.kind == "f" else array.astype(np.float64)


def texts(values: list[str | None]) -> tuple[Column, tuple[str, ...]]:
    """A text column from one value per row."""
    words = tuple(dict.fromkeys(value for value in values if value is not None))
    place = {word: code for code, word in enumerate(words)}
    return np.array([-1 if value is None else place[value] for value in values], dtype=np.int32), words
