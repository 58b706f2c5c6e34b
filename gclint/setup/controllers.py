"""Controller cards: what a controller does with what it is sent. Shipped in rules/controllers, named by class."""

from __future__ import annotations

from pathlib import Path
from typing import Literal

from msgspec import Struct

from gclint.problem import Problem, nearest
from gclint.setup.declared import Depth, Length
from gclint.setup.types import Controller
from gclint.shipped import folder

Does = Literal["does", "refuses", "ignores"]


class ArcRule(Struct, frozen=True, forbid_unknown_fields=True):
    """An arc is refused over `most`, or over both `tolerance` and `share` of its radius."""

    tolerance: Depth
    share: float = 0.0
    most: Depth = Depth(0.0)
    centres: Literal["incremental", "absolute"] = "incremental"


class ControllerCard(Struct, frozen=True, forbid_unknown_fields=True):
    name: str
    title: str
    source: str
    arcs: ArcRule
    tool_change: Literal["does", "stops", "refuses", "ignores"] = "does"
    program_stop: Literal["stops", "stops-spindle", "refuses", "ignores"] = "stops"
    dwell_unit: Literal["s", "ms"] = "s"
    resolution: Length = Length(0.001)
    end_required: bool = True
    canned_cycles: Does = "does"
    compensation: Does = "does"
    start_state: tuple[str, ...] = ()


def names() -> tuple[str, ...]:
    return tuple(sorted(path.stem for path in (folder() / "controllers").glob("*.toml")))


def controller(name: str) -> Controller:
    """The shipped card `name`. Raises Problem, without a place, naming the nearest card."""
    from gclint.setup.toml_file import load

    if name not in names():
        raise Problem(f'there is no controller card "{name[:40]}"{nearest(name, names())}')
    return _resolved(load(folder() / "controllers" / f"{name}.toml", ControllerCard, "controller card"))


def controller_from(path: Path) -> Controller:
    """A card of the shop's own."""
    from gclint.setup.toml_file import load

    return _resolved(load(path, ControllerCard, "controller card"))


def _resolved(card: ControllerCard) -> Controller:
    return Controller(
        name=card.name,
        title=card.title,
        tool_change=card.tool_change,
        program_stop=card.program_stop,
        dwell_unit=card.dwell_unit,
        arc_tolerance=float(card.arcs.tolerance),
        arc_tolerance_share=card.arcs.share,
        arc_tolerance_most=float(card.arcs.most),
        resolution=float(card.resolution),
        end_required=card.end_required,
        arc_centres=card.arcs.centres,
        start_state=card.start_state,
        canned_cycles=card.canned_cycles,
        compensation=card.compensation,
        source=card.source,
    )
