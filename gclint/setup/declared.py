"""The two declaration files as people write them, shop.toml and job.toml: their keys and kinds of value."""

from __future__ import annotations

import datetime
from typing import Annotated, Literal

import msgspec
from msgspec import Meta, Struct

from gclint.toml.quantity import (
    Acceleration,
    Angle,
    Depth,
    EdgeSpeed,
    Feed,
    Grade,
    Length,
    Position,
    Power,
    Speed,
    Stiffness,
    Time,
)

Shape = Literal[
    "flat", "ball", "bull-nose", "v", "tapered-ball", "drill", "facing", "burr", "drag", "form", "t-slot", "thread-mill"
]
Helix = Literal["up-cut", "down-cut", "compression", "straight"]
End = Literal["fz_low", "fz_high", "edge_low", "edge_high"]
HeldBy = Literal["vacuum", "tape", "screws", "clamps", "vise", "tabs", "skin"]
Operation = Literal["slot", "side", "finish", "ramp", "plunge", "drill"]


class Table(Struct, frozen=True, forbid_unknown_fields=True):
    """Every table of a declaration: unknown keys are refused."""


class AxisLengths(Table, frozen=True):
    x: Length | None = None
    y: Length | None = None
    z: Length | None = None


class AxisPositions(Table, frozen=True):
    x: Position | None = None
    y: Position | None = None
    z: Position | None = None


class AxisFeeds(Table, frozen=True):
    x: Feed | None = None
    y: Feed | None = None
    z: Feed | None = None


class AxisAccelerations(Table, frozen=True):
    x: Acceleration | None = None
    y: Acceleration | None = None
    z: Acceleration | None = None


class MachineTable(Table, frozen=True):
    name: str = ""
    travel: AxisLengths | None = None
    rapid: AxisFeeds | None = None
    feed_limit: AxisFeeds | None = None
    acceleration: AxisAccelerations | None = None
    corner_deviation: Length | None = None
    stiffness: Stiffness | None = None
    homes: bool | None = None
    controller: str = "any"


class DialRow(Table, frozen=True):
    mark: str
    stated: Speed
    measured: Speed | None = None


class SpindleTable(Table, frozen=True):
    kind: Literal["commanded", "dial"] | None = None
    range: tuple[Speed, Speed] | None = None
    dial: tuple[DialRow, ...] = ()
    started: Literal["by-hand", "program"] | None = None
    power: Power | None = None
    power_curve: tuple[tuple[Speed, Power], ...] = ()
    spin_up: Time | None = None


class ToolTable(Table, frozen=True):
    number: Annotated[int, Meta(ge=0, le=99999)]
    shape: Shape
    diameter: Length
    name: str = ""
    flutes: Annotated[int, Meta(ge=1, le=100)] | None = None
    flute_length: Length | None = None
    stickout: Length | None = None
    shank: Length | None = None
    corner_radius: Depth | None = None
    angle: Angle | None = None
    tip_diameter: Depth | None = None
    helix: Helix | None = None
    up_cut_length: Length | None = None
    centre_cutting: bool | None = None
    made_of: str | None = None
    edge_radius: Length | None = None
    neck: Length | None = None
    top_speed: Speed | None = None
    runout: Depth | None = None


class FloorRow(Table, frozen=True):
    """The lower limit of the chip at an edge speed."""

    edge_speed: EdgeSpeed
    low: Length


class OperationWindow(Table, frozen=True):
    """`floor`: how the lower limit rises with edge speed; straight lines between, level outside."""

    fz: tuple[Length, Length]
    floor: tuple[FloorRow, ...] = ()


class MeasuredTable(Table, frozen=True):
    """How a window was measured. `fz_low` to `edge_high`: the intervals that hold its ends with `interval`; `open`:
    ends at which no fault set in, so that they lie where the cuts ended. The chip's hold at `at_edge_speed`."""

    on: datetime.date
    cuts: Annotated[int, Meta(ge=1)]
    interval: Annotated[float, Meta(gt=0, lt=1)] = 0.8
    fz_low: tuple[Length, Length] | None = None
    fz_high: tuple[Length, Length] | None = None
    edge_low: tuple[EdgeSpeed, EdgeSpeed] | None = None
    edge_high: tuple[EdgeSpeed, EdgeSpeed] | None = None
    open: tuple[End, ...] = ()
    at_edge_speed: EdgeSpeed | None = None
    depth: Length | None = None
    entry: str = ""
    plans: tuple[str, ...] = ()


class WindowTable(Table, frozen=True):
    fz: tuple[Length, Length] | None = None
    edge_speed: tuple[EdgeSpeed, EdgeSpeed] | None = None
    measured: MeasuredTable | None = None
    slot: OperationWindow | None = None
    side: OperationWindow | None = None
    finish: OperationWindow | None = None
    ramp: OperationWindow | None = None
    plunge: OperationWindow | None = None
    drill: OperationWindow | None = None


class LimitsTable(Table, frozen=True):
    """How far programs with loops and calls are followed."""

    blocks: Annotated[int, Meta(ge=1, le=2_000_000_000)] | None = None
    calls: Annotated[int, Meta(ge=1, le=1000)] | None = None
    moves: Annotated[int, Meta(ge=1, le=50_000_000)] | None = None
    expressions: Annotated[int, Meta(ge=1, le=50_000_000)] | None = None


class Shop(Table, frozen=True):
    """shop.toml: the machine, its spindle, its tools, its own rules, and what its own test cuts have shown."""

    machine: MachineTable | None = None
    spindle: SpindleTable | None = None
    tool: tuple[ToolTable, ...] = ()
    windows: dict[str, dict[str, WindowTable]] = msgspec.field(default_factory=dict)
    limits: LimitsTable | None = None
    packs: tuple[str, ...] = ()  # house packs for every job
    diameter_offsets: dict[str, Depth] = msgspec.field(default_factory=dict)  # D number -> diameter in the tool table


class AboveTable(Table, frozen=True):
    above_table: Position


class StockTable(Table, frozen=True):
    size: tuple[Length, Length, Length] | None = None
    measured_thickness: Length | None = None
    corner: tuple[Position, Position] | None = None


class HoldTable(Table, frozen=True):
    by: HeldBy | None = None
    spoilboard: Depth | None = None


class KeepOutTable(Table, frozen=True, rename={"from_": "from"}):
    from_: tuple[Position, Position, Position]
    to: tuple[Position, Position, Position]
    name: str = ""


class AcceptTable(Table, frozen=True):
    """`grade`: the worst that is accepted; "halt" must be said. `places` and `found` bound what is: more places, or a
    worse figure, are told again."""

    rule: str
    because: str
    tool: int | None = None
    program: str | None = None
    by: str | None = None
    grade: Grade | None = None
    places: Annotated[int, Meta(ge=1)] | None = None
    found: str | None = None


class FlipTable(Table, frozen=True):
    """The blank is turned over before a program: about an axis along X (front and back change places) or along Y (left
    and right do). `corner`: its lowest X and Y then, in work coordinates. What is not said stays as it was."""

    before: str
    axis: Literal["x", "y"]
    corner: tuple[Position, Position] | None = None
    z_zero: Literal["stock-top", "table"] | AboveTable | None = None
    hold: HeldBy | HoldTable | None = None
    keep_out: tuple[KeepOutTable, ...] | None = None


class SignedTable(Table, frozen=True):
    """A note that somebody has looked at a program and its declarations; `gclint sign` writes it. No proof of identity.

    `fingerprint` is that of the program, `declarations` that of all that was declared for it, these notes left out.
    """

    program: str
    fingerprint: str
    declarations: str
    on: datetime.date
    by: str = ""


class Job(Table, frozen=True):
    """job.toml: one job on that shop's machine."""

    program: str | tuple[str, ...] | None = None
    one_blank: bool = True  # the listed programs cut one blank, in their order; false: each has a blank of its own
    after: tuple[str, ...] = ()  # programs that have cut this blank before, in their order
    flip: tuple[FlipTable, ...] = ()
    shop: str | None = None
    material: str | None = None
    z_zero: Literal["stock-top", "table"] | AboveTable | None = None
    dial: str | None = None
    fail_at: Grade | None = None
    time_limit: Time | None = None
    packs: tuple[str, ...] = ()
    tool: Annotated[int, Meta(ge=0, le=99999)] | None = None  # in the collet, for cuts before the program calls a tool
    tool_map: dict[str, int] = msgspec.field(default_factory=dict)
    tool_order: tuple[int, ...] = ()
    work_zero: AxisPositions | None = None
    work_offset: Literal["G54", "G55", "G56", "G57", "G58", "G59", "G59.1", "G59.2", "G59.3"] | None = None
    stock: StockTable | None = None
    hold: HoldTable | None = None
    keep_out: tuple[KeepOutTable, ...] = ()
    accept: tuple[AcceptTable, ...] = ()
    signed: tuple[SignedTable, ...] = ()
