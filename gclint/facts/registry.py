"""The tables rules look at: what `gclint pack facts` lists and what names in expressions mean."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import cache, partial
from importlib import import_module
from pkgutil import iter_modules
from typing import Any

import numpy as np
from msgspec import Struct
from msgspec.structs import replace

from gclint.columns import Column, numbered
from gclint.facts import contours, cut, habits, moves, of_rules, part, program
from gclint.facts.context import Context
from gclint.facts.fact import Build, Fact, Table, truth
from gclint.facts.setup import SETUP, tool_facts
from gclint.language.evaluate import FALSE, TRUE, UNKNOWN
from gclint.language.expression import NUMBER, TEXT, TRUTH, Name

BESIDE = {"previous": "the row before", "next": "the row behind"}
_AT_END = {"previous": "first_of_tool", "next": "last_of_tool"}


@cache
def tables() -> dict[str, Table]:
    """Give every table by name: those that several rules share, and what each file of `of_rules` adds."""
    alone = [import_module(f"{of_rules.__name__}.{each.name}") for each in iter_modules(of_rules.__path__)]
    shared = (cut, moves, program, contours, part, habits)
    made = {table.name: table for module in (*shared, *alone) for table in getattr(module, "TABLES", ())}
    for module in alone:
        for name, more in getattr(module, "FACTS", {}).items():
            made[name] = replace(made[name], facts={**made[name].facts, **more})
    return made


@cache
def facts_of(table: str) -> dict[str, Fact]:
    """Every fact rules on this table can use: its own, its neighbours', its tool's and the setup's."""
    own = tables()[table]
    return {**own.facts, **neighbour_facts(own), **(tool_facts(own.tool) if own.tool else {}), **SETUP}


def neighbour_facts(table: Table) -> dict[str, Fact]:
    """Where rows follow on each other: which are the first and the last, and every fact of the rows beside."""
    if not table.neighbours or table.tool is None:
        return {}
    made = {
        name: truth(f"whether it is the {'first' if last is False else 'last'} of its {what} in this table",
                    partial(_end, tool_of=table.tool, last=last, each=what == "tool"))
        for name, what, last in (
            ("first_of_tool", "tool", False), ("last_of_tool", "tool", True),
            ("first_of_program", "program", False), ("last_of_program", "program", True),
        )
    }  # fmt: skip
    for side, which in BESIDE.items():
        for name, fact in table.facts.items():
            meaning = f"{fact.meaning}, in {which} of the same tool"
            needs = fact.needs or f"{which} of the same tool (say `not {_AT_END[side]} and` first)"
            made[f"{side}.{name}"] = Fact(fact.kind, fact.unit, meaning, fact.build, needs, fact.words, side)
    return made


def _end(context: Context, tool_of: Build, last: bool, each: bool) -> Column:
    """bool [rows]: the first or last row of all, or of each tool."""
    tools = np.asarray(tool_of(context))
    answer = np.zeros(len(tools), dtype=bool)
    if not len(tools):
        return answer
    if not each:
        answer[-1 if last else 0] = True
        return answer
    different, place = numbered(tools)
    rows = np.arange(len(tools)) if last else np.arange(len(tools))[::-1]
    found = np.zeros(len(different), dtype=np.int64)
    found[place[rows]] = rows  # of several values for one place, the one that comes last stays
    answer[found] = True
    return answer


@cache
def names_of(table: str) -> dict[str, Name]:
    """The same for the checker of expressions."""
    grouped = tables()[table].weight is not None
    return {key: Name(fact.kind, fact.unit, fact.words, None, grouped) for key, fact in facts_of(table).items()}


class View(Struct, frozen=True, eq=False):
    """A table of one program, or chosen rows of it; what expressions are run over (evaluate.Rows)."""

    table: Table
    context: Context
    length: int
    rows: Column | None = None
    built: dict[str, Any] = {}  # shared by all views of one table
    facts: Mapping[str, Fact] = {}

    @staticmethod
    def of(name: str, context: Context) -> View:
        table = tables()[name]
        return View(table, context, int(table.length(context)), None, {}, facts_of(name))

    def choose(self, rows: Column) -> View:
        return View(self.table, self.context, len(rows), self._within(rows), self.built, self.facts)

    def _within(self, rows: Column) -> Column:
        return rows if self.rows is None else self.rows[rows]

    def whole(self) -> View:
        if self.rows is None:
            return self
        return View(self.table, self.context, int(self.table.length(self.context)), None, self.built, self.facts)

    def pick(self, column: Column) -> Column:
        return column if self.rows is None or np.ndim(column) == 0 else column[self.rows]

    def value(self, name: str) -> Any:
        if name not in self.built:
            fact = self.facts[name]
            self.built[name] = self._beside(fact, name) if fact.beside else as_value(fact, fact.build(self.context))
        value = self.built[name]
        if isinstance(value, tuple):
            return self.pick(value[0]), value[1]
        return self.pick(value)

    def _beside(self, fact: Fact, name: str) -> Any:
        """[whole table] the fact of the row before or behind of the same tool; unknown where there is none."""
        whole = self.whole()
        value, row = whole.value(name.partition(".")[2]), whole._neighbour(fact.beside)
        words = value[1] if isinstance(value, tuple) else None
        codes = np.broadcast_to(np.asarray(value[0] if words is not None else value), (whole.length,))
        unknown: Any = {NUMBER: np.nan, TRUTH: np.int8(UNKNOWN), TEXT: np.int32(-1)}[fact.kind]
        # an empty table has no row 0 to stand in for the missing one
        moved = np.where(row >= 0, codes[np.maximum(row, 0)], unknown).astype(codes.dtype) if len(row) else codes
        return moved if words is None else (moved, words)

    def _neighbour(self, side: str) -> Column:
        """[whole table] the row before or behind of the same tool, -1 where there is none."""
        key = ":" + side
        if key not in self.built:
            tools = self.column("tool")
            order = np.argsort(tools, kind="stable")
            same = tools[order[1:]] == tools[order[:-1]]
            row = np.full(len(tools), -1, dtype=np.int64)
            here, there = (order[1:], order[:-1]) if side == "previous" else (order[:-1], order[1:])
            row[here[same]] = there[same]
            self.built[key] = row
        found: Column = self.built[key]
        return found

    def column(self, key: str) -> Column:
        """`tool`, `move` or `weight` of the rows; -1 where the table has no such thing."""
        if ":" + key not in self.built:
            build = getattr(self.table, key)
            whole = int(self.table.length(self.context))
            self.built[":" + key] = np.full(whole, -1) if build is None else np.asarray(build(self.context))
        return self.pick(self.built[":" + key])

    def kept(self, key: str, make: Callable[[], Column]) -> Column:
        if self.length > 1:  # the condition asks once; the sentences of each finding ask again, for one row each
            return make()
        if key not in self.built:
            self.built[key] = make()
        column: Column = self.built[key]
        return column

    def deeper(self, what: str, limit: Column) -> Column:
        from gclint.stock import contact

        engagement = self.context.engagement
        ask = contact.arc if what == "arc_deeper" else contact.width
        answer = ask(engagement.contact, self.pick(engagement.pieces.profile), np.nan_to_num(limit))
        return np.where(np.isnan(limit), np.nan, answer)

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
