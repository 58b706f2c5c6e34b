"""A material as the judge uses it, and the rows of its card that it keeps as they are written."""

from __future__ import annotations

import re
from typing import Literal, get_args

from msgspec import Meta, Struct

from gclint.toml.quantity import EdgeSpeed, Grade, Length, Pressure, Standing

Operation = Literal["slot", "side", "finish", "ramp", "plunge", "drill"]
OPERATION_NAMES = Meta(extra_json_schema={"propertyNames": {"enum": list(get_args(Operation))}})


class Sourced(Struct, frozen=True):
    """A number we judge by, with where it comes from."""

    value: float
    standing: str
    source: str


class Row(Struct, frozen=True, forbid_unknown_fields=True):
    """Every table of a card: unknown keys are refused."""


class ChipRow(Row, frozen=True):
    """Limits of h_ex, mm, at one tool diameter."""

    diameter: Length
    low: Length
    high: Length
    standing: Standing
    source: str


class EdgeRow(Row, frozen=True):
    """Limits of the edge speed, m/min, at one diameter, or at all where none is named."""

    standing: Standing
    source: str
    high: EdgeSpeed | None = None
    low: EdgeSpeed | None = None
    diameter: Length | None = None
    slow_because: str | None = None  # what goes wrong below `low`; without it the low limit is not judged


class FloorPoint(Row, frozen=True):
    edge_speed: EdgeSpeed
    low: Length


class ChipFloor(Row, frozen=True):
    """A lower limit of h_ex that rises with edge speed, for one diameter; straight lines between its points."""

    diameter: Length
    points: tuple[FloorPoint, ...]
    standing: Standing
    source: str
    grade_between: Grade = "consider"


class Force(Row, frozen=True):
    """Specific cutting force: kc = kc11 h^-exponent, or a range; with an exponent the range is one of kc11."""

    standing: Standing
    source: str
    kc11: Pressure | None = None
    exponent: float | None = None
    low: Pressure | None = None
    high: Pressure | None = None


class GoodChip(Row, frozen=True):
    """What a person at the machine sees and hears while the cut goes well."""

    looks: str
    sounds: str
    standing: Standing
    source: str


class Material(Struct, frozen=True):
    """A material as the judge uses it; mm, m/min, degrees, N/mm2. None where the card is silent."""

    name: str
    title: str
    kind: str
    brittle: bool
    up_cut_frays_top: bool  # the top edge chips or tears under a tool that lifts its chips
    climb_walls: bool  # walls that stay should be cut by climb milling
    melts: bool
    tape_holds: bool  # False: double-sided tape does not stick to it well enough to hold it
    burns: bool
    dust: bool | str
    cautions: tuple[str, ...]
    thin_words: str  # what will be seen where the chip is too thin, too thick, the edge too fast
    thick_words: str
    fast_words: str
    chip: tuple[ChipRow, ...]  # by rising diameter
    chip_floor: ChipFloor | None
    edge: tuple[EdgeRow, ...]  # empty: the card knows no limit
    thin_by: Sourced  # share of the lower limit by which a chip must be under it to be worth a word
    thin_grade: str
    thin_judged: bool  # False: this material makes dust, a thin chip is not judged
    finish_share: Sourced  # of the lower limit, where ae < 0.1 D
    ramp_advised: Sourced | None  # degrees
    ramp_limit: Sourced | None
    plunge: str | None  # "no", "yes", "peck", "drill"
    plunge_standing: str
    plunge_source: str
    plunge_depth: Sourced | None  # times the diameter
    plunge_feed_share: Sourced | None  # of the cutting feed
    depth_slot: Sourced | None  # times the diameter
    depth_side: Sourced | None
    force: Force | None
    aliases: tuple[str, ...] = ()
    path: str = ""
    good_chip: GoodChip | None = None
    chip_of: dict[str, tuple[ChipRow, ...]] = {}  # windows of single operations, in place of `chip`; of drills "drill"

    @property
    def named(self) -> str:
        """The title without what it adds, as it stands in a sentence."""
        return re.split(r",| \(", self.title)[0]
