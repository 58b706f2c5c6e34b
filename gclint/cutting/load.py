"""What each tooth bites on each piece of path: feed per tooth, chip, edge speed, and the windows of each."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from gclint.columns import Bools, Column, Floats, Floats32, distinct, lean, one_of
from gclint.cutting import formulas
from gclint.cutting.bites import Bites, bites_of
from gclint.cutting.edge import diameter_at, sine_at
from gclint.cutting.effort import BENDING_RULES, effort, not_known, taken
from gclint.cutting.windows import floors_for, windows_for
from gclint.knowledge.numbers import model_number
from gclint.tables.cutting import OPERATION, OPERATIONS, Cutting, Loads, ToolWindows
from gclint.tables.engagement import SIDE, TIP, Engagement, Pieces
from gclint.tables.material import Material
from gclint.tables.motion import COMPENSATED, RAPID
from gclint.tables.setup import Assumed, Setup, Tool

if TYPE_CHECKING:
    from gclint.tables.motion import Motion
    from gclint.tables.timing import Timing

ROUNDED = ("ball", "bull-nose", "tapered-ball")
SHAPED = (*ROUNDED, "v")
CHIP_RULES = ("chip-too-thin", "chip-too-thick")
NOT_JUDGED_SHAPES = ("drill", "v", "burr", "drag", "form", "t-slot", "thread-mill")


def load(motion: Motion, timing: Timing, engagement: Engagement, setup: Setup) -> Cutting:
    """One row per row of `engagement.pieces`; see gclint.tables.cutting for units and for what NaN means."""
    pieces = engagement.pieces
    material = setup.material
    true_speed, marks, assumed = _true_speed(motion, setup)
    numbers = distinct(motion.tool) if len(motion) else np.zeros(0, np.int32)
    tools = [setup.tools.get(int(number)) for number in numbers]
    windows = {
        int(number): windows_for(material, tool, setup.measured_windows.get(int(number)))
        for number, tool in zip(numbers, tools)
        if tool is not None
    }
    row = np.searchsorted(numbers, motion.tool[pieces.move]).astype(np.int16)  # index of each piece's tool in `tools`
    rapid = motion.kind[pieces.move] == RAPID
    fastest = timing.peak[pieces.move]
    feed = np.where(np.isnan(fastest), motion.feed[pieces.move], fastest).astype(np.float32)
    del fastest
    speed = true_speed[pieces.move].astype(np.float32)
    diameter = _per_tool(tools, lambda tool: tool.diameter)[row]
    flutes = _per_tool(tools, lambda tool: tool.flutes)[row]
    cutting = _per_tool(tools, lambda tool: tool.diameter)[row]
    sin_kr = np.ones(len(pieces), np.float32)
    for n, tool in enumerate(tools):
        if tool is not None and tool.shape in SHAPED:
            mine = np.flatnonzero(row == n) if len(tools) > 1 else slice(None)
            cutting[mine] = diameter_at(tool, pieces.ap[mine])
            sin_kr[mine] = sine_at(tool, pieces.ap[mine])
    fz = formulas.feed_per_tooth(feed, np.where(speed > 0, speed, np.float32(np.nan)), flutes).astype(np.float32)
    operation = _operations(pieces, motion, rapid, row, tools, diameter, cutting)
    axial = (operation == OPERATION["plunge"]) | (operation == OPERATION["drill"])
    bites = bites_of(engagement, row, tools)
    h_ex, h_m = _chips(bites, pieces, fz, sin_kr, axial, _of_shape(tools, ROUNDED)[row])
    thick = _runs_out(h_ex, ~axial, row, tools)
    edge_speed = formulas.cutting_speed(cutting, speed).astype(np.float32)
    chip_low, chip_high = _chip_windows(numbers, tools, windows, row, operation, material)
    _raise_floors(chip_low, edge_speed, operation, row, numbers, tools, setup, material)
    edge_low, edge_high = _edge_windows(numbers, tools, windows, row, material)
    loads = Loads(
        operation=operation,
        feed=lean(feed),
        true_speed=lean(speed),
        fz=fz,
        effective_diameter=cutting,
        h_ex=h_ex,
        h_thick=thick,
        h_m=h_m,
        edge_speed=edge_speed,
        chip_low=lean(chip_low),
        chip_high=lean(chip_high),
        edge_low=lean(edge_low),
        edge_high=lean(edge_high),
        chip_judged=_judged(engagement, motion, operation, row, tools, diameter).astype(np.uint8),
        governs=lean(motion.feed_line[pieces.move]),
        effort=effort(engagement, setup, tools, row, operation, feed, fz, (h_ex, thick, h_m)),
    )
    not_judged = _not_judged(loads, pieces, motion, setup, material, row, numbers, tools, windows)
    assumed += taken(loads.effort, setup)
    return Cutting(loads, windows, true_speed, marks, tuple(assumed), not_judged)


def _true_speed(motion: Motion, setup: Setup) -> tuple[Floats, tuple[str, ...], list[Assumed]]:
    """(true rev/min per move, dial marks in the order of first use, what was taken as true)."""
    spindle, cuts = setup.spindle, motion.kind != RAPID
    if spindle.kind != "dial":
        assumed = []
        if bool(np.isfinite(motion.speed[cuts]).any()):
            assumed.append(Assumed("true speed", "the S of the program", "no measured speeds are declared"))
        top = spindle.high or np.inf
        if bool((motion.speed[cuts] > top).any()):
            because = "the spindle turns no faster, and a controller clips an S that is over its range"
            assumed.append(Assumed("true speed", f"{top:g} rev/min where S asks for more", because))
        return np.where(motion.speed > 0, np.minimum(motion.speed, top), np.nan), (), assumed
    mark_of = np.full(len(motion), -1, np.int32)
    if setup.dial is not None:
        mark_of[:] = [mark.mark for mark in spindle.dial].index(setup.dial)
    else:
        nearest = np.full(len(motion), model_number("same_speed"))
        for n, mark in enumerate(spindle.dial):
            off = np.abs(motion.speed - mark.stated) / mark.stated
            better = off <= nearest  # false where no S is set
            mark_of[better], nearest[better] = n, off[better]
    true = np.array([mark.true for mark in spindle.dial] + [np.nan])[mark_of]
    first = {int(n): int(np.argmax(cuts & (mark_of == n))) for n in distinct(mark_of[cuts])}
    used = sorted(first, key=lambda n: first[n])
    assumed = [
        Assumed(f"dial mark {mark.mark}", f"{mark.stated:g} rev/min as stated", "its true speed was never measured")
        for mark in (spindle.dial[n] for n in used if n >= 0)
        if mark.measured is None
    ]
    return true, tuple(spindle.dial[n].mark if n >= 0 else "" for n in used), assumed


def _per_tool(tools: list[Tool | None], of: object) -> Floats32:
    values = [of(tool) if tool is not None else None for tool in tools]  # type: ignore[operator]
    return np.array([np.nan if value is None else value for value in values], np.float32)


def _of_shape(tools: list[Tool | None], shapes: tuple[str, ...]) -> Bools:
    return np.array([tool is not None and tool.shape in shapes for tool in tools], bool)


def _chips(
    bites: Bites, pieces: Pieces, fz: Floats32, sin_kr: Floats32, axial: Bools, rounded: Bools
) -> tuple[Floats32, Floats32]:
    """(h_ex, h_m), mm.

    Of a feed that goes down, its level part bites at the rim and its downward part under the tip and on the slope of
    the edge; straight down it is all under the tip. rounded: the edge bends from the tip upward.
    """
    h_ex, h_m = fz * bites.largest, fz * bites.mean * sin_kr
    h_ex[bites.largest <= 0] = np.nan  # the rim meets nothing that can be told apart
    down = np.flatnonzero((pieces.drop > 0) & ((bites.largest > 0) | (pieces.under > 0)))
    with np.errstate(divide="ignore", invalid="ignore"):
        level, sink = (column[down] / pieces.length[down] for column in (pieces.travel, pieces.drop))
    # h = A sin(kr) + B cos(kr) from the tip (kr = 0) to the top of the cut; most, all of the feed, where tan(kr) = A/B
    across, top = level * bites.cosine[down], sin_kr[down]
    flat = np.sqrt(1.0 - top * top)
    at_top = level * bites.largest[down] + sink * flat
    tip = pieces.under[down] > 0
    within = rounded[down] & tip & (across * flat <= sink * top)
    h_ex[down] = fz[down] * np.where(within, np.hypot(across, sink), np.maximum(at_top, sink * tip))
    h_m[down] *= level
    h_ex[axial] = h_m[axial] = fz[axial]
    return h_ex.astype(np.float32), h_m.astype(np.float32)


def _runs_out(h_ex: Floats32, sideways: Bools, row: Column, tools: list[Tool | None]) -> Floats32:
    """h_ex of the tooth that stands out farthest, by the runout declared; nothing is added where none is."""
    thick = h_ex
    for n, tool in enumerate(tools):
        if tool is None or not tool.runout or not tool.flutes:
            continue
        if thick is h_ex:
            thick = h_ex.copy()
        mine = np.flatnonzero(sideways & (row == n))
        thick[mine] = formulas.chip_thickness_with_runout(h_ex[mine], tool.runout, tool.flutes)
    return thick


def _operations(
    pieces: Pieces,
    motion: Motion,
    rapid: Bools,
    row: Column,
    tools: list[Tool | None],
    diameter: Floats32,
    cutting: Floats32,
) -> Column:
    """uint8 index into OPERATIONS for every piece."""
    slot = (pieces.angle >= model_number("slot_angle")) | (pieces.ae >= model_number("slot_share") * cutting)
    finish = pieces.ae < model_number("finish_share") * diameter
    operation = np.where(finish, OPERATION["finish"], OPERATION["side"]).astype(np.uint8)
    operation[slot] = OPERATION["slot"]
    down = pieces.drop > 0.001
    entering = (pieces.centre != 0) | (pieces.under >= model_number("ramp_disc")) | (pieces.drop > pieces.travel)
    operation[down & entering] = OPERATION["ramp"]
    operation[down & (pieces.travel <= model_number("straight_share") * pieces.drop)] = OPERATION["plunge"]
    drills = _of_shape(tools, ("drill",))
    operation[drills[row] | (motion.cycle[pieces.move] > 0)] = OPERATION["drill"]
    operation[rapid] = OPERATION["rapid"]
    return operation


def _chip_windows(
    numbers: Column,
    tools: list[Tool | None],
    windows: dict[int, ToolWindows],
    row: Column,
    operation: Column,
    material: Material | None,
) -> tuple[Floats32, Floats32]:
    """Limits of h_ex; NaN where none is known, 0 where the card knows that there is no lower one."""
    low = np.full((len(tools), len(OPERATIONS)), np.nan, np.float32)
    high = low.copy()
    for n, number in enumerate(numbers):
        if int(number) not in windows:
            continue
        for name, window in windows[int(number)].chip.items():
            low[n, OPERATION[name]] = 0.0 if window.low is None else window.low
            high[n, OPERATION[name]] = np.inf if window.high is None else window.high
        high[n, OPERATION["rapid"]] = high[n, OPERATION["side"]]  # a rapid that cuts takes a chip like any other
    return low[row, operation], high[row, operation]


def _raise_floors(
    chip_low: Floats32,
    edge_speed: Floats32,
    operation: Column,
    row: Column,
    numbers: Column,
    tools: list[Tool | None],
    setup: Setup,
    material: Material | None,
) -> None:
    """Where a lower limit rises with edge speed, writes it into `chip_low`."""
    for n, tool in enumerate(tools):
        floors = () if tool is None else floors_for(material, tool, setup.measured_windows.get(int(numbers[n])))
        for floor in floors:
            mine = np.flatnonzero((row == n) & one_of(operation, [OPERATION[name] for name in floor.operations]))
            speed = edge_speed[mine]
            low = np.interp(speed, floor.edge_speed, floor.low)
            low[operation[mine] == OPERATION["finish"]] *= material.finish_share.value if material else 1.0
            known = np.isfinite(speed) & np.isfinite(chip_low[mine])
            chip_low[mine[known]] = low[known]


def _edge_windows(
    numbers: Column, tools: list[Tool | None], windows: dict[int, ToolWindows], row: Column, material: Material | None
) -> tuple[Floats32, Floats32]:
    """Limits of the edge speed; 0 and inf where the card knows of none, NaN where nothing is known."""
    low = np.full(len(tools), np.nan, np.float32)
    high = low.copy()
    for n, number in enumerate(numbers):
        own = windows.get(int(number))
        if own is None:
            continue
        if own.edge_speed is None and material is not None and not material.edge:
            low[n], high[n] = 0.0, np.inf
        elif own.edge_speed is not None:
            reasoned = material is not None and any(edge.slow_because for edge in material.edge)
            low[n] = own.edge_speed.low if reasoned and own.edge_speed.low else 0.0
            high[n] = own.edge_speed.high if own.edge_speed.high else np.inf
    return low[row], high[row]


def _judged(
    engagement: Engagement, motion: Motion, operation: Column, row: Column, tools: list[Tool | None], diameter: Floats32
) -> Bools:
    """Where a chip may be judged: no entries, drills, V tools or burrs, no skims, no pass shorter than the diameter."""
    pieces, passes = engagement.pieces, engagement.passes
    milled = np.array([tool is not None and tool.shape not in NOT_JUDGED_SHAPES for tool in tools], bool)
    shallow = model_number("shallow")
    judged: Bools = (operation <= OPERATION["finish"]) & milled[row] & (pieces.ap >= shallow)
    judged &= pieces.ae >= shallow  # a width within the noise of the stock model says nothing
    judged &= (pieces.touch & (TIP | SIDE)) != 0
    judged &= (motion.flags[pieces.move] & COMPENSATED) == 0
    if len(passes) == 0:
        return np.zeros(len(pieces), bool)
    within = np.searchsorted(passes.first_piece, np.arange(len(pieces)), side="right") - 1
    judged &= (within >= 0) & (passes.length[np.maximum(within, 0)] >= diameter)
    return judged


def _called(tool: Tool) -> str:
    return f"tool {tool.number}" if tool.number >= 0 else "the tool"


def _not_judged(
    loads: Loads,
    pieces: Pieces,
    motion: Motion,
    setup: Setup,
    material: Material | None,
    row: Column,
    numbers: Column,
    tools: list[Tool | None],
    windows: dict[int, ToolWindows],
) -> tuple[tuple[str, str, int], ...]:
    """(rule, the declaration that would let it judge, moves concerned)."""
    if len(pieces) == 0:
        return ()
    starts = np.concatenate(([True], pieces.move[1:] != pieces.move[:-1]))  # one count per move
    cut = starts & (loads.operation <= OPERATION["finish"])
    found = not_known(pieces, setup, tools, row, loads.operation)
    milled = np.array([tool is not None and tool.shape not in NOT_JUDGED_SHAPES for tool in tools], bool)[row]
    if material is None:
        needs = "the material: --material NAME, or `material` in job.toml"
        found.add((*CHIP_RULES, "edge-too-fast"), needs, cut & milled)
    slow = "`dial` in job.toml, --dial, or an S that is on the dial" if setup.spindle.kind == "dial" else "an S word"
    no_speed = cut & milled & np.isnan(loads.true_speed)
    found.add((*CHIP_RULES, "edge-too-fast", *BENDING_RULES), f"the true speed: {slow}", no_speed)
    drilled = starts & (loads.operation == OPERATION["drill"])
    for n, tool in enumerate(tools):
        if tool is not None and tool.shape == "drill" and material is not None:
            mine = drilled & (row == n)
            if "drill" not in windows[int(numbers[n])].chip:
                found.add(CHIP_RULES[1:], f"a window of drills of {tool.diameter:g} mm on the material's card", mine)
            elif tool.flutes is None:
                found.add(CHIP_RULES[1:], f"`flutes` of {_called(tool)} in shop.toml", mine)
        if tool is None or tool.shape in NOT_JUDGED_SHAPES:
            continue
        mine, number = cut & (row == n), int(numbers[n])
        if tool.flutes is None:
            found.add(CHIP_RULES, f"`flutes` of {_called(tool)} in shop.toml", mine)
        if material is not None and not windows[number].chip:
            first, last = material.chip[0].diameter, material.chip[-1].diameter
            own = f'[windows."{material.name}".{max(tool.number, 1)}] in shop.toml'
            needs = f"{own}: {tool.diameter:g} mm lies outside the card's {first:g} to {last:g} mm"
            found.add(CHIP_RULES, needs, mine)
        if material is not None and material.edge and windows[number].edge_speed is None:
            found.add(("edge-too-fast",), f"an edge speed of {material.name} for a tool of {tool.diameter:g} mm", mine)
    return tuple(found)
