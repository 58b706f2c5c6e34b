"""What one tool may do in one material: the windows of its card, read at the tool's diameter."""

from __future__ import annotations

from typing import TypeVar

from msgspec import Struct
from msgspec.structs import replace

from gclint.setup.own_windows import EDGE
from gclint.tables.cutting import OPERATIONS, ToolWindows
from gclint.tables.material import ChipRow, EdgeRow, Material, Sourced
from gclint.tables.setup import Tool, Window

MILLING = ("slot", "side", "ramp")  # operations the chip rows of a card speak of
R = TypeVar("R", ChipRow, EdgeRow)
NOT_MILLS = ("drill", "v", "burr", "drag")  # their chips are not held against a milling window


class Floor(Struct, frozen=True):
    """A lower chip limit that rises with edge speed: mm at m/min, straight lines between, level outside.

    It holds for `operations`.
    """

    edge_speed: tuple[float, ...]
    low: tuple[float, ...]
    operations: tuple[str, ...] = OPERATIONS


def windows_for(material: Material | None, tool: Tool, measured: dict[str, Window] | None = None) -> ToolWindows:
    """Windows of `tool` in `material`; the shop's own `measured` windows (by operation, "" = all, "edge" = of edge
    speed) win over the card, and name it."""
    chip = {} if material is None or tool.shape in NOT_MILLS else _chip(material, tool.diameter)
    measured = dict(measured or {})
    edge = edge_window(material, tool.diameter) if material else None
    own_edge = measured.pop(EDGE, None)
    edge = beside_card(own_edge, edge) if own_edge else edge
    measured = {name: beside_card(window, chip.get(name or "slot")) for name, window in measured.items()}
    if "" in measured:
        chip = dict.fromkeys(MILLING, measured[""])
    if chip:
        share = material.finish_share.value if material else 1.0
        chip["finish"] = _finish(chip["side"], share)
        chip.update(_chip_of(material, tool) if "" not in measured else {})
    elif tool.shape == "drill":
        chip = _chip_of(material, tool)
    chip.update({operation: window for operation, window in measured.items() if operation})
    if material is None:
        return ToolWindows(chip, edge, None, None, None, None, None, None, None)
    diameter = tool.diameter
    return ToolWindows(
        chip=chip,
        edge_speed=edge,
        ramp_advised=_up_to(material.ramp_advised, 1.0, "deg"),
        ramp_limit=_up_to(material.ramp_limit, 1.0, "deg"),
        plunge=material.plunge,
        plunge_depth=_up_to(material.plunge_depth, diameter, "mm"),
        plunge_feed_share=_up_to(material.plunge_feed_share, 1.0, ""),
        depth_slot=_up_to(material.depth_slot, diameter, "mm"),
        depth_side=_up_to(material.depth_side, diameter, "mm"),
    )


def floors_for(material: Material | None, tool: Tool, measured: dict[str, Window] | None = None) -> tuple[Floor, ...]:
    """The rising floors of the shop's own windows, and for other operations the card's, given for this diameter
    (within 2 %)."""
    own = {name: window for name, window in (measured or {}).items() if name != EDGE}
    floors = [
        Floor(tuple(speed for speed, _ in window.floor), tuple(low for _, low in window.floor), (name,))
        for name, window in own.items() if window.floor
    ]  # fmt: skip
    rising = material.chip_floor if material else None
    if rising is not None and "" not in own and abs(tool.diameter - rising.diameter) <= 0.02 * rising.diameter:
        speeds = tuple(float(p.edge_speed) for p in rising.points)
        others = tuple(name for name in OPERATIONS if name not in own)
        floors.append(Floor(speeds, tuple(float(p.low) for p in rising.points), others))
    return tuple(floors)


def beside_card(own: Window, card: Window | None) -> Window:
    """The shop's own window; as wide as the card's where its test cuts ended without a fault. Its source names both."""
    if card is None:
        return own
    low, high = own.low, own.high
    if own.open_low and low is not None:
        low = None if card.low is None else min(low, card.low)
    if own.open_high and high is not None:
        high = None if card.high is None else max(high, card.high)
    ends = "up to" if card.low is None else f"{card.low:.4g} to"
    ends = f"from {card.low:.4g}" if card.high is None else f"{ends} {card.high:.4g}"
    source = f"{own.source}; the material's card has {ends} {card.unit}"
    return replace(own, low=low, high=high, source=source)


def edge_window(material: Material, diameter: float) -> Window | None:
    """None where the card knows no limit, or where the diameter lies outside its rows."""
    rows = material.edge
    if not rows:
        return None
    if rows[0].diameter is None:
        return Window(_number(rows[0].low), _number(rows[0].high), "m/min", rows[0].standing, rows[0].source)
    between = _between(rows, diameter)
    if between is None:
        return None
    below, above, share = between
    low = _mixed(below.low, above.low, share)
    return Window(low, _mixed(below.high, above.high, share), "m/min", below.standing, below.source)


def _chip(material: Material, diameter: float) -> dict[str, Window]:
    between = _between(material.chip, diameter)
    if between is None:
        return {}
    below, above, share = between
    low = _mixed(below.low, above.low, share) if material.thin_judged else None
    window = Window(low, _mixed(below.high, above.high, share), "mm", below.standing, below.source)
    return dict.fromkeys(MILLING, window)


def _chip_of(material: Material | None, tool: Tool) -> dict[str, Window]:
    """Windows the card gives for single operations: of a drill that of drilling, of other tools all but that."""
    chip: dict[str, Window] = {}
    for operation, rows in (material.chip_of if material else {}).items():
        between = _between(rows, tool.diameter)
        if between is None or (operation == "drill") != (tool.shape == "drill"):
            continue
        below, above, share = between
        low, high = _mixed(below.low, above.low, share), _mixed(below.high, above.high, share)
        chip[operation] = Window(low, high, "mm", below.standing, below.source)
    return chip


def _finish(side: Window, share: float) -> Window:
    low = None if side.low is None else side.low * share
    return Window(low, side.high, side.unit, side.standing, side.source)


def _between(rows: tuple[R, ...], diameter: float) -> tuple[R, R, float] | None:
    """The rows around a diameter and how far it lies between them, 0..1; None outside (nothing is extrapolated)."""
    at = [float(row.diameter or 0.0) for row in rows]
    slack = 1e-6
    for n in range(len(rows)):
        if abs(diameter - at[n]) <= slack:
            return rows[n], rows[n], 0.0
        if n and at[n - 1] < diameter < at[n]:
            return rows[n - 1], rows[n], (diameter - at[n - 1]) / (at[n] - at[n - 1])
    return None


def _mixed(below: float | None, above: float | None, share: float) -> float | None:
    if below is None or above is None:
        return None
    return float(below) + (float(above) - float(below)) * share


def _number(value: float | None) -> float | None:
    return None if value is None else float(value)


def _up_to(number: Sourced | None, times: float, unit: str) -> Window | None:
    return None if number is None else Window(None, number.value * times, unit, number.standing, number.source)
