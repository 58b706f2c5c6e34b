"""What can be tried with a tool: speeds that the spindle has, feeds that give chips around the window, depths."""

from __future__ import annotations

import math

from msgspec import Struct

from gclint.cutting.windows import edge_window, windows_for
from gclint.knowledge.numbers import model_number
from gclint.problem import Problem
from gclint.tables.setup import Spindle, Tool, Window
from gclint.trial.asked import Asked, Bench, dial_marks
from gclint.trial.layout_numbers import plan_number

STEP = 100.0  # rev/min, what people set


class Speed(Struct, frozen=True):
    """What is set, what it truly is, and the mark on a dial; rev/min."""

    set: float
    true: float
    mark: str | None = None


class Levels(Struct, frozen=True):
    """For one tool. On a dial `speeds` are its marks, slow to fast; else the two ends of what is tried."""

    tool: Tool
    speeds: tuple[Speed, ...]
    dial: bool
    chip: tuple[float, float]  # mm of feed per tooth, thinnest and thickest that are tried
    window: tuple[float | None, float | None]  # the limits that are known
    depths: tuple[float, ...]
    feeds: tuple[float, float]  # mm/min, that the person and the machine allow

    def feed_range(self, true: float, most: float) -> tuple[float, float]:
        """(least, greatest) feed at a true speed, mm/min, under what the test shape allows; least > greatest: none."""
        per = (self.tool.flutes or 1) * true
        return max(self.chip[0] * per, self.feeds[0]), min(self.chip[1] * per, self.feeds[1], most)

    @property
    def fastest(self) -> float:
        """The greatest feed that is wanted, mm/min."""
        return max(self.feed_range(speed.true, math.inf)[1] for speed in self.speeds)


def levels_of(number: int, bench: Bench, asked: Asked) -> Levels:
    """Raises Problem where nothing is left to try."""
    tool, setup = bench.tool(number), bench.setup
    windows = windows_for(setup.material, tool, setup.measured_windows.get(number))
    chip, known = _chips(tool, windows.chip.get("slot"))
    edge = edge_window(setup.material, tool.diameter) if setup.material else None
    limits = setup.machine.feed_limit
    most = min((f for f in (limits.x, limits.y) if f is not None), default=math.inf) if limits else math.inf
    feeds = asked.feeds or (0.0, math.inf)
    dial = setup.spindle.kind == "dial" and bool(setup.spindle.dial)
    speeds = _marks(tool, bench, asked, edge) if dial else _range(tool, setup.spindle, asked, edge)
    depths = asked.depths or (_depth(tool, windows.depth_slot),)
    _fits(depths, tool, asked)
    return Levels(tool, speeds, dial, chip, known, depths, (feeds[0], min(feeds[1], most)))


def _chips(tool: Tool, window: Window | None) -> tuple[tuple[float, float], tuple[float | None, float | None]]:
    if window is None or window.high is None:
        d = tool.diameter
        return (plan_number("chip_new_low") * d, plan_number("chip_new_high") * d), (None, None)
    low = window.low * plan_number("chip_below") if window.low else window.high * plan_number("chip_open")
    return (low, window.high * plan_number("chip_above")), (window.low, window.high)


def _turns(edge_speed: float, tool: Tool) -> float:
    return 1000.0 * edge_speed / (math.pi * tool.diameter)


def _edges(tool: Tool, edge: Window | None) -> tuple[float, float]:
    """(slowest, fastest) true speed that is tried unless speeds are named, rev/min."""
    low = _turns(edge.low * plan_number("edge_below"), tool) if edge and edge.low else 0.0
    high = _turns(edge.high * plan_number("edge_above"), tool) if edge and edge.high else math.inf
    return low, min(high, tool.top_speed or math.inf)


def _marks(tool: Tool, bench: Bench, asked: Asked, edge: Window | None) -> tuple[Speed, ...]:
    marks = sorted(bench.setup.spindle.dial, key=lambda mark: mark.true)
    wanted = dial_marks(bench, asked)
    if asked.speeds:
        raise Problem("this spindle has a dial; name its marks: --dial B --dial C", "--speed")
    if wanted:
        return tuple(Speed(mark.stated, mark.true, mark.mark) for mark in marks if mark.mark in wanted)
    low, high = _edges(tool, edge)
    found = tuple(Speed(mark.stated, mark.true, mark.mark) for mark in marks if low <= mark.true <= high)
    if not found:
        says = f"no mark of the dial gives {tool.called} an edge speed near its window"
        raise Problem(f"{says} ({low:.0f} to {high:.0f} rev/min); name the marks to try: --dial {marks[0].mark}")
    return found


def _range(tool: Tool, spindle: Spindle, asked: Asked, edge: Window | None) -> tuple[Speed, ...]:
    dial_low = spindle.low or model_number("slowest_spindle")
    dial_high = spindle.high or max(model_number("fastest_spindle"), dial_low)
    if asked.marks:
        raise Problem("this spindle has no dial; name speeds: --speed \"12000 to 18000\"", "--dial")
    if asked.speeds:
        low, high = asked.speeds
        if low < dial_low or high > dial_high:
            raise Problem(f"the spindle turns {dial_low:g} to {dial_high:g} rev/min", "--speed")
    else:
        low, high = _edges(tool, edge)
        low, high = max(low, dial_low), min(high, dial_high)
    low, high = math.ceil(low / STEP) * STEP, math.floor(high / STEP) * STEP
    if low > high:
        says = f"the spindle ({dial_low:g} to {dial_high:g} rev/min) has no speed at which the edge of {tool.called}"
        raise Problem(f"{says} is near its window; name speeds to try: --speed \"{dial_low:g} to {dial_low:g}\"")
    return tuple(Speed(n, n) for n in dict.fromkeys((low, high)))


def _depth(tool: Tool, limit: Window | None) -> float:
    most = limit.high * plan_number("depth_share") if limit and limit.high else plan_number("depth_new") * tool.diameter
    most = min(most, plan_number("depth_most") * tool.diameter, tool.flute_length or most)
    return max(round(most, 1), 0.1)


def _fits(depths: tuple[float, ...], tool: Tool, asked: Asked) -> None:
    most = asked.blank[0][2] * (1.0 - plan_number("floor"))
    for depth in depths:
        if depth > most + 1e-9:
            says = f"a cut of {depth:g} mm leaves too thin a floor in a blank of {asked.blank[0][2]:g} mm"
            raise Problem(f"{says}: at most {most:.4g} mm", "--depth")
        if tool.flute_length is not None and depth > tool.flute_length + 1e-9:
            raise Problem(f"the flutes of {tool.called} are {tool.flute_length:g} mm long", "--depth")
