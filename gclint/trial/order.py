"""The order of the cuts: by tool, what gclint finds nothing against first, else by chance, with few changes."""

from __future__ import annotations

import random

from msgspec import Struct
from msgspec.structs import replace

from gclint.toml.quantity import Feed, Length, Position
from gclint.toml.quantity import Speed as Set
from gclint.trial.design import Cell
from gclint.trial.groove import Layout
from gclint.trial.plan import Cut


class Judged(Struct, frozen=True):
    """A cell and why it is risky; "" where nothing of grade change or above was found."""

    cell: Cell
    risky: str = ""
    halt: bool = False
    minor: int = 0  # findings to consider

    @property
    def danger(self) -> tuple[int, bool, float, float]:
        """The less, the earlier it should be tried; then slow before fast."""
        return self.minor, self.cell.entry != "ramp", self.cell.middle, self.cell.speed.true


def with_repeats(judged: list[Judged], repeats: int, seed: int) -> list[Judged]:
    """The cells with the ones that are cut again: near the middle of the feeds, not risky where possible, and of each
    tool and entry in turn.
    """
    chance = random.Random(seed)
    groups: dict[tuple[int, str], list[Judged]] = {}
    for each in judged:
        groups.setdefault((each.cell.tool, each.cell.entry), []).append(each)
    for rows in groups.values():
        chance.shuffle(rows)
        rows.sort(key=lambda each: (bool(each.risky), each.cell.middle))
    safest_first = sorted(groups.values(), key=lambda rows: bool(rows[0].risky))
    again: list[Judged] = []
    while len(again) < repeats and any(safest_first):
        for rows in safest_first:
            if rows and len(again) < repeats:
                again.append(rows.pop(0))
    return [*judged, *again]


def in_order(judged: list[Judged], seed: int) -> list[Judged]:
    """A tool at a time, first what is not risky, the safest before all, then what is; a mark of the dial at a time."""
    chance = random.Random(seed)
    made: list[Judged] = []
    tools = list(dict.fromkeys(each.cell.tool for each in judged))
    for tool in tools:
        mark: str | None = None
        for halt, risky in ((False, False), (False, True), (True, True)):
            part = [e for e in judged if e.cell.tool == tool and bool(e.risky) == risky and e.halt == halt]
            marks = list(dict.fromkeys(each.cell.speed.mark for each in part))
            chance.shuffle(marks)
            first = min(part, key=lambda each: each.danger) if mark is None and part else None
            here = first.cell.speed.mark if first else mark
            marks.sort(key=lambda one: one != here)  # where the dial stands already
            for one in marks:
                block = [each for each in part if each.cell.speed.mark == one]
                chance.shuffle(block)
                if first in block:
                    block.remove(first)
                    block.insert(0, first)
                made += block
                mark = one
    return made


def numbered(judged: list[Judged], layout: Layout) -> tuple[Cut, ...]:
    """Cuts in the order they are made, each in a field of its own."""
    cuts: list[Cut] = []
    first: dict[Cell, int] = {}
    for n, each in enumerate(judged):
        cell = each.cell
        x, y = layout.at(n)
        cut = Cut(
            number=n + 1, tool=cell.tool, feed=Feed(cell.feed), speed=Set(cell.speed.set),
            entry="ramp" if cell.entry == "ramp" else "straight", depth=Length(cell.depth),
            at=(Position(x), Position(y)), dial=cell.speed.mark,
            true_speed=None if cell.speed.true == cell.speed.set else Set(cell.speed.true), risky=each.risky,
        )  # fmt: skip
        if cell in first:
            cut = replace(cut, repeat_of=first[cell])
        first.setdefault(cell, n + 1)
        cuts.append(cut)
    return tuple(cuts)
