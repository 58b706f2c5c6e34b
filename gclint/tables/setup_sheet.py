"""What the person who stands at the machine needs on paper, as plain values: the `paper` of a program in the JSON."""

from __future__ import annotations

import msgspec

Point = tuple[float, float, float]


class Sides(msgspec.Struct, frozen=True):
    """How far something reaches on each side of work zero, mm; negative where it stays away from zero on that side."""

    left: float
    right: float
    front: float
    back: float


class Zero(msgspec.Struct, frozen=True):
    """Where the person sets zero.

    `corner`: "front-left", "front-right", "back-left", "back-right", "centre", "edge", "inside" or "outside" of the
    blank; "not-known" where the blank's place is not declared. `height`: "stock-top", "table", "above-table" or
    "not-declared".
    """

    corner: str
    height: str
    above_table_mm: float | None  # height of Z zero above the table


class SetupSheetTool(msgspec.Struct, frozen=True):
    """In the order of use. `first_line` is where it first moves."""

    tool: int | None
    name: str
    described: str
    stickout_mm: float | None
    dial_marks: tuple[str, ...]
    set_speed_rpm: tuple[float, float] | None
    first_line: int
    time_s: float | None  # moves of known time; dwells left out


class ProgramStop(msgspec.Struct, frozen=True):
    """A place where a person has something to do.

    `waits`: whether this controller waits there for a person, by its card; None where that is not known (no controller
    is declared, or a switch at the machine decides). `here` is the same in words, `do` one step after the other.
    """

    line: int
    words: str  # "M0", "M6", "M0 M6"
    waits: bool | None
    here: str
    tool: int | None  # that goes in
    time_s: float | None  # from the start, dwells left out
    says: str  # the comment beside it
    do: tuple[str, ...]


class Restart(msgspec.Struct, frozen=True):
    """A line from which a broken-off run can be started again: give `words`, one after the other, then that line."""

    line: int
    tool: int | None
    start_mm: Point  # where the tip stands then
    words: tuple[str, ...]
    left_s: float | None  # still to run, dwells left out


class GoodChip(msgspec.Struct, frozen=True):
    looks: str
    sounds: str
    standing: str
    source: str


class SetupSheet(msgspec.Struct, frozen=True):
    """Lengths are mm, in work coordinates. `tip`: of the tip over all moves; `cut`: of the tool's rim where it cuts."""

    zero: Zero
    blank: Sides | None
    blank_assumed: bool
    tip: Sides | None
    cut: Sides | None
    thickness_mm: float | None
    lowest_z_mm: float | None
    lowest_above_table_mm: float | None  # negative: into the table
    highest_z_mm: float | None
    tools: tuple[SetupSheetTool, ...]
    stops: tuple[ProgramStop, ...]
    stops_left_out: int
    restarts: tuple[Restart, ...]
    restarts_left_out: int
    no_restart: str  # why there are none, or none from some line on; "" otherwise
    material: str
    good_chip: GoodChip | None
    tick: tuple[str, ...]  # boxes to tick or to fill in before the start
