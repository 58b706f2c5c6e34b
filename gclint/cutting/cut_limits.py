"""From cuts to limits: the window of chosen pieces of a program, or of one cut that is only described."""

from __future__ import annotations

import math

import numpy as np
from msgspec import Struct

from gclint.columns import Column, distinct, one_of
from gclint.cutting import formulas, mechanics
from gclint.cutting.bites import pulls_of, side_contact
from gclint.cutting.edge import diameter_at, sine_at
from gclint.cutting.limits import Level, Limit, Power, Ray, Rising, Speed
from gclint.cutting.mechanics import Law, feed_for_load, law_of
from gclint.cutting.window import Window
from gclint.cutting.windows import Floor, floors_for, windows_for
from gclint.knowledge.numbers import model_number
from gclint.tables.cutting import OPERATION, Loads
from gclint.tables.material import Sourced
from gclint.tables.setup import Machine, Setup, Tool
from gclint.tables.setup import Window as Given

DECLARED = ("declared", "the declarations of shop and job")


class Bounds(Struct, frozen=True):
    """What rules hold against a cut beside the material's card."""

    wall: Sourced  # mm, that a tool may bend beside a wall that stays
    rough: Sourced  # mm, elsewhere
    stress: Sourced  # share of the stress that the tool is allowed
    power: Sourced  # share of the spindle's power


class Places(Struct, frozen=True, eq=False):
    """Columns with one row for each place; loads are the middle of their range at the feed per tooth `fz`."""

    flutes: Column
    ratio: Column  # h_ex / fz
    ratio_m: Column  # h_m / fz
    diameter: Column  # mm, that cuts
    chip_low: Column
    chip_high: Column
    edge_low: Column
    edge_high: Column
    floors: tuple[tuple[Column, Floor, Column], ...]
    fz: Column
    bend: Column  # mm
    bend_limit: Column
    stress: Column  # N/mm2
    stress_limit: Column
    power: Column  # W per mm/min of feed
    reached: Column  # mm/min that is not exceeded, else inf
    held: Column  # mm/min that cannot be kept up on average, else inf
    weight: Column  # mm
    top_speed: Column  # rev/min, of the tool
    sources: dict[str, tuple[str, str]]  # name of a limit -> standing and source


@np.errstate(divide="ignore", invalid="ignore", over="ignore")
def window_at(places: Places, law: Law | None, setup: Setup, bounds: Bounds, thin: float, thick: float) -> Window:
    """Every limit that is known there."""
    p, limits = places, list[Limit]()

    def said(name: str) -> tuple[str, str]:
        return p.sources.get(name, DECLARED)

    per_chip = p.flutes / p.ratio
    if bool(np.any(p.chip_low > 0)) or p.floors:
        s = said("chip")
        low = np.nan_to_num(p.chip_low)
        limits.append(
            Rising("thinnest chip", True, *s, low=low, per_chip=per_chip, diameter=p.diameter, floors=p.floors)
            if p.floors else Ray("thinnest chip", True, *s, slope=low * per_chip)
        )  # fmt: skip
    if bool(np.isfinite(p.chip_high).any()):
        limits.append(Ray("thickest chip", False, *said("chip"), slope=_finite(p.chip_high * per_chip)))
    for name, load, most, by in (
        ("bending", p.bend, p.bend_limit, bounds.wall), ("breaking", p.stress, p.stress_limit, bounds.stress)
    ):  # fmt: skip
        per = load / p.fz / (law.fall(p.fz * p.ratio) if law else 1.0)
        slope = feed_for_load(most, per, p.ratio, law) * p.flutes
        if bool(np.isfinite(slope).any()):
            limits.append(Ray(name, False, by.standing, by.source, slope=_finite(slope)))
    if (setup.spindle.power is not None or setup.spindle.power_curve) and bool(np.isfinite(p.power).any()):
        per = p.power / (law.fall(p.fz * p.ratio_m) if law else 1.0)
        by = bounds.power
        limits.append(Power("power", False, by.standing, by.source, law=law, per_feed=per, ratio=p.ratio_m / p.flutes,
                            spindle=setup.spindle, share=by.value))  # fmt: skip
    limits += _machine(setup.machine)
    limits += _speeds(p, setup, said("edge"))
    return Window(tuple(limits), setup.spindle, p.reached, p.weight, thin, thick, p.held)


def _machine(machine: Machine) -> list[Limit]:
    axes = machine.feed_limit
    known = [value for value in (axes.x, axes.y) if value is not None] if axes else []
    return [Level("machine's feed", False, *DECLARED, end=True, feed=min(known))] if known else []


def _speeds(p: Places, setup: Setup, edge: tuple[str, str]) -> list[Limit]:
    made: list[Limit] = []
    slow, fast = formulas.speed_for(p.edge_low, p.diameter), formulas.speed_for(p.edge_high, p.diameter)
    if bool(np.any(slow > 0)):
        made.append(Speed("slowest edge", True, *edge, speed=np.where(slow > 0, slow, np.nan)))
    if bool(np.isfinite(fast).any()):
        made.append(Speed("fastest edge", False, *edge, speed=_finite(fast)))
    if bool(np.isfinite(p.top_speed).any()):
        made.append(Speed("tool's top speed", False, *DECLARED, end=True, speed=p.top_speed))
    spindle = setup.spindle
    if spindle.kind != "dial":
        if spindle.low:
            made.append(Speed("slowest spindle", True, *DECLARED, end=True, speed=np.array([spindle.low])))
        if spindle.high:
            made.append(Speed("fastest spindle", False, *DECLARED, end=True, speed=np.array([spindle.high])))
    return made


def _finite(values: Column) -> Column:
    return np.where(np.isfinite(values), values, np.nan)


# --- pieces of a program ----------------------------------------------------------------------------------------------


@np.errstate(divide="ignore", invalid="ignore", over="ignore")
def of_pieces(
    loads: Loads, rows: Column, number: Column, length: Column, can: tuple[Column, Column], skims: Column, wall: Column,
    setup: Setup, bounds: Bounds,
) -> Places:  # fmt: skip
    """`rows` of Loads, with their tool's number, cut length; `can`: the feeds that are reached there and kept up on
    average, whatever F asks for; `skims`: no lower chip limit is held there; `wall`: a wall stays beside them."""
    fz, h_ex, h_m = (_wide(column[rows]) for column in (loads.fz, loads.h_ex, loads.h_m))
    effort, operation = loads.effort, loads.operation[rows]
    judged = loads.chip_judged[rows] != 0
    tools = {int(n): setup.tools[int(n)] for n in distinct(number) if int(n) in setup.tools}
    flutes, top, stress = (np.full(len(rows), np.nan) for _ in range(3))
    chip_high = _wide(loads.chip_high[rows])
    sources: dict[str, tuple[str, str]] = {}
    floors = []
    for n, tool in tools.items():
        mine = number == n
        made = mechanics.tool_material(tool.made_of)
        flutes[mine] = tool.flutes or np.nan
        top[mine] = tool.top_speed or np.nan
        chip_high[mine] = _thickest(chip_high[mine], tool)
        stress[mine] = made.stress * bounds.stress.value if made else np.nan
        share = setup.material.finish_share.value if setup.material else 1.0
        for floor in floors_for(setup.material, tool, setup.measured_windows.get(n)):
            where = np.flatnonzero(mine & judged & ~skims & (_wide(loads.chip_low[rows]) > 0))
            where = where[one_of(operation[where], [OPERATION[name] for name in floor.operations])]
            finish = operation[where] == OPERATION["finish"]
            floors.append((where, floor, np.where(finish, share, 1.0)))
        own = windows_for(setup.material, tool, setup.measured_windows.get(n))
        sources |= _sources(next(iter(own.chip.values()), None), own.edge_speed)
    middle = np.sqrt(_wide(effort.power_low[rows]) * _wide(effort.power_high[rows]))
    feed = _wide(loads.feed[rows])
    return Places(
        flutes=flutes,
        ratio=h_ex / fz,
        ratio_m=h_m / fz,
        diameter=_wide(loads.effective_diameter[rows]),
        chip_low=np.where(judged & ~skims, _wide(loads.chip_low[rows]), 0.0),
        chip_high=np.where(judged, chip_high, np.inf),
        edge_low=np.where(judged, _wide(loads.edge_low[rows]), 0.0),
        edge_high=np.where(judged, _wide(loads.edge_high[rows]), np.inf),
        floors=tuple(floors),
        fz=fz,
        bend=np.sqrt(_wide(effort.bend(high=False, rows=rows)) * _wide(effort.bend(high=True, rows=rows))),
        bend_limit=np.where(wall, bounds.wall.value, bounds.rough.value),
        stress=np.sqrt(_wide(effort.stress(high=False, rows=rows)) * _wide(effort.stress(high=True, rows=rows))),
        stress_limit=stress,
        power=middle / feed,
        reached=can[0],
        held=can[1],
        weight=_wide(length),
        top_speed=top,
        sources=sources,
    )


def _wide(column: Column) -> Column:
    """Double precision, as short as the six digits of single precision mean it."""
    wide = column.astype(np.float64)
    with np.errstate(divide="ignore", invalid="ignore"):
        size = np.where(np.isfinite(wide) & (wide != 0), 10.0 ** (5 - np.floor(np.log10(np.abs(wide)))), 1.0)
        return np.where(np.isfinite(wide), np.round(wide * size) / size, wide)


def _thickest(chip_high: Column | float, tool: Tool) -> Column:
    """The largest chip at which the tooth that stands out farthest takes no more than `chip_high`, mm."""
    if not tool.runout or not tool.flutes:
        return np.asarray(chip_high)
    return formulas.chip_allowed_with_runout(chip_high, tool.runout, tool.flutes)


def _sources(chip: Given | None, edge: Given | None) -> dict[str, tuple[str, str]]:
    named = (("chip", chip), ("edge", edge))
    return {name: (window.standing, window.source) for name, window in named if window is not None}


# --- one cut that is described ----------------------------------------------------------------------------------------


class Cut(Struct, frozen=True):
    """How a tool cuts: mm; `wall`: beside a wall that stays."""

    operation: str  # "slot", "side", "finish"
    ae: float
    ap: float
    wall: bool = True


def usual_cut(tool: Tool, operation: str, setup: Setup) -> Cut:
    """A slot of the full width, a side cut of a quarter of it, a skim of a twentieth; as deep as the card allows."""
    windows = windows_for(setup.material, tool, setup.measured_windows.get(tool.number))
    given = windows.depth_slot if operation == "slot" else windows.depth_side
    deep = given.high if given and given.high else tool.diameter * model_number("usual_depth")
    if tool.flute_length:
        deep = min(deep, tool.flute_length)
    share = {"slot": 1.0, "side": model_number("usual_side"), "finish": model_number("usual_finish")}[operation]
    return Cut(operation, tool.diameter * share, min(deep, tool.diameter), operation != "slot")


@np.errstate(divide="ignore", invalid="ignore", over="ignore")
def of_cut(cut: Cut, tool: Tool, setup: Setup, bounds: Bounds) -> Places:
    """One row; NaN for what is not known of tool and material."""
    material, z = setup.material, float(tool.flutes or math.nan)
    measured = setup.measured_windows.get(tool.number)
    windows = windows_for(material, tool, measured)
    D, sin_kr = float(diameter_at(tool, cut.ap)), float(sine_at(tool, cut.ap))
    ae = min(cut.ae, D)
    fz = model_number("reference_chip")  # loads are reckoned at this feed per tooth and carried on by their law
    h_ex = float(formulas.chip_thickness_largest(fz, ae, D, sin_kr))
    h_m = float(formulas.chip_thickness_mean(fz, ae, D, sin_kr))
    given, speeds = windows.chip.get(cut.operation), windows.edge_speed
    held = given is not None and (material is None or material.thin_judged)
    floors = floors_for(material, tool, measured) if held else ()
    floor = next((floor for floor in floors if cut.operation in floor.operations), None)
    share = material.finish_share.value if material and cut.operation == "finish" else 1.0
    reasoned = material is not None and any(row.slow_because for row in material.edge)
    bend, stress, power = _loads(cut, tool, setup, fz, (h_ex, h_m), ae, D)
    made = mechanics.tool_material(tool.made_of)
    return Places(
        flutes=_one(z),
        ratio=_one(h_ex / fz),
        ratio_m=_one(h_m / fz),
        diameter=_one(D),
        chip_low=_one((given.low or 0.0) if given else math.nan),
        chip_high=_one(float(_thickest(given.high or math.inf, tool)) if given else math.nan),
        edge_low=_one((speeds.low or 0.0) if speeds and reasoned else 0.0),
        edge_high=_one((speeds.high or math.inf) if speeds else math.nan),
        floors=((np.array([0]), floor, np.array([share])),) if floor else (),
        fz=_one(fz),
        bend=_one(bend),
        bend_limit=_one(bounds.wall.value if cut.wall else bounds.rough.value),
        stress=_one(stress),
        stress_limit=_one(made.stress * bounds.stress.value if made else math.nan),
        power=_one(power),
        reached=_one(math.inf),
        held=_one(math.inf),
        weight=_one(1.0),
        top_speed=_one(tool.top_speed or math.nan),
        sources=_sources(given, speeds),
    )


def window_of(cut: Cut, tool: Tool, setup: Setup, bounds: Bounds) -> Window:
    """The window of one cut."""
    law = law_of(setup.material.force) if setup.material else None
    return window_at(of_cut(cut, tool, setup, bounds), law, setup, bounds, 0.0, 0.0)


def _one(value: float) -> Column:
    return np.array([value], dtype=np.float64)


def _loads(
    cut: Cut, tool: Tool, setup: Setup, fz: float, h: tuple[float, float], ae: float, D: float
) -> tuple[float, float, float]:
    """Middle of (bending mm, stress N/mm2, power W per mm/min) at `fz`; NaN where a fact is missing."""
    law, (h_ex, h_m) = law_of(setup.material.force) if setup.material else None, h
    if law is None or tool.flutes is None:
        return math.nan, math.nan, math.nan
    low_kc, high_kc = law.kc(h_m)
    power = float(mechanics.cutting_power(ae * cut.ap, 1.0, math.sqrt(float(low_kc) * float(high_kc))))
    beam = mechanics.beam_of(tool, setup.machine.stiffness)
    if beam is None:
        return math.nan, math.nan, power
    lags = tuple(np.atleast_1d(mechanics.edge_lag(cut.ap, D, angle)) for angle in mechanics.edge_angles(tool))
    pulls = pulls_of(side_contact(ae, cut.ap, D / 2), np.zeros(1, np.int64), tool.flutes, (lags[0], lags[1]))
    thick = float(formulas.chip_thickness_with_runout(h_ex, tool.runout or 0.0, tool.flutes))
    usual, most = (fz * float(law.fall(h_ex)), fz * thick / h_ex * float(law.fall(thick)))
    mean = law.low * usual * float(pulls.mean[0])
    low, high = law.low * most * float(pulls.low[0]), law.high * most * float(pulls.high[0])
    bend, stress = beam.bend_per_newton(cut.ap / 2), beam.stress_per_newton(cut.ap / 2)
    return math.sqrt(mean * high) * float(bend), math.sqrt(low * high) * float(stress), power
