"""Combines all that is declared into one Setup: option over job over shop over shipped card over comment."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

from gclint.problem import Problem, nearest
from gclint.setup.card import Material, material
from gclint.setup.controllers import controller, controller_from
from gclint.setup.declare import Declared, File
from gclint.setup.declared import (
    AboveTable,
    AxisAccelerations,
    AxisFeeds,
    AxisLengths,
    AxisPositions,
    Job,
    MachineTable,
    Shop,
    SpindleTable,
    StockTable,
    ToolTable,
    WindowTable,
)
from gclint.setup.types import (
    GRADES,
    Accept,
    Assumed,
    Axes,
    Controller,
    DialMark,
    Hold,
    KeepOut,
    Machine,
    Setup,
    Spindle,
    Stock,
    Tool,
    Window,
)

if TYPE_CHECKING:
    from gclint.motion.table import Motion
    from gclint.program.table import Program

DRILL_ANGLE = 118.0  # degrees, where a drill's point angle is not declared
SHAPES_WITH_ANGLE = ("v", "tapered-ball")
_OWN_WINDOW = "this shop's own test cuts (windows in its shop file)"


def controller_of(declared: Declared) -> Controller:
    """The controller card the shop names, else `any`. A name that ends in .toml is a card beside the shop file."""
    machine = declared.shop.machine if declared.shop else None
    if machine is None:
        return controller("any")
    if machine.controller.endswith(".toml") and declared.shop_file:
        return controller_from(Path(declared.shop_file.path).parent / machine.controller)
    try:
        return controller(machine.controller)
    except Problem as problem:
        if declared.shop_file:
            raise declared.shop_file.wrong(("machine", "controller"), problem.says) from None
        raise


def resolve(declared: Declared, program: Program, motion: Motion) -> Setup:
    """Raises Problem where declarations contradict each other or name what is not there."""
    from gclint.setup.comments import accepts_in, tools_in

    shop, job = declared.shop or Shop(), declared.job or Job()
    assumed = list(declared.assumed)
    spindle = _spindle(shop.spindle, declared.shop_file)
    dial = _dial(job, spindle, declared.job_file)
    tools = _tools(declared, shop, job)
    used = _cutting_tools(motion)
    _only_tool(tools, declared, used, assumed)
    _from_comments(tools, tools_in(program, motion), used, assumed)
    for number, tool in tools.items():
        if tool.shape == "drill" and tool.angle is None:
            tools[number] = replace(tool, angle=DRILL_ANGLE)
            assumed.append(Assumed(tool.called, f"point angle {DRILL_ANGLE:g} deg", "a drill's angle is not declared"))
    material = _material(declared, job)
    z_zero, stock = _stock(declared, job, motion, assumed)
    setup = Setup(
        machine=_machine(shop.machine),
        spindle=spindle,
        controller=controller_of(declared),
        tools=tools,
        material=material,
        stock=stock,
        z_zero=z_zero,
        dial=dial,
        hold=Hold(job.hold.by, job.hold.spoilboard) if job.hold else Hold(),
        keep_out=_keep_outs(job, declared.job_file),
        work_zero=_axes(job.work_zero),
        measured_windows=_windows(declared, shop, job, material, tools),
        packs=declared.packs,
        accepts=(*_accepts(job, declared.job_file), *accepts_in(program)),
        fail_at=_fail_at(declared, job),
        assumed=tuple(assumed),
        sources=tuple(file.path for file in (declared.job_file, declared.shop_file) if file),
    )
    return replace(setup, not_declared=_not_declared(setup, shop, used))


def _axes(table: AxisLengths | AxisFeeds | AxisAccelerations | AxisPositions | None) -> Axes | None:
    return None if table is None else Axes(table.x, table.y, table.z)


def _machine(table: MachineTable | None) -> Machine:
    if table is None:
        return Machine()
    return Machine(
        name=table.name,
        travel=_axes(table.travel),
        rapid=_axes(table.rapid),
        feed_limit=_axes(table.feed_limit),
        acceleration=_axes(table.acceleration),
        corner_deviation=table.corner_deviation,
        stiffness=table.stiffness,
        homes=table.homes,
    )


def _spindle(table: SpindleTable | None, file: File | None) -> Spindle:
    if table is None:
        return Spindle()
    kind = table.kind or ("dial" if table.dial else "commanded")
    if file:
        if kind == "dial" and not table.dial:
            says = 'a dial spindle needs its marks: dial = [ { mark = "A", stated = 9500 } ]'
            raise file.wrong(("spindle", "kind"), says)
        if table.range and table.range[0] >= table.range[1]:
            raise file.wrong(("spindle", "range"), "the first speed must be under the second")
        for n, row in enumerate(table.dial):
            if row.mark in [other.mark for other in table.dial[:n]]:
                raise file.wrong(("spindle", "dial", n, "mark"), f'the mark "{row.mark}" is given twice')
    marks = tuple(DialMark(row.mark, row.stated, row.measured) for row in table.dial)
    low: float | None = table.range[0] if table.range else None
    high: float | None = table.range[1] if table.range else None
    if kind == "dial" and marks and low is None:
        low, high = min(mark.true for mark in marks), max(mark.true for mark in marks)
    return Spindle(
        kind=kind,
        low=low,
        high=high,
        dial=marks,
        started=table.started,
        power=table.power,
        power_curve=tuple((float(speed), float(power)) for speed, power in table.power_curve),
        spin_up=table.spin_up,
    )


def _dial(job: Job, spindle: Spindle, file: File | None) -> str | None:
    if job.dial is None or file is None:
        return job.dial
    marks = tuple(mark.mark for mark in spindle.dial)
    if not marks:
        raise file.wrong(("dial",), f'"{job.dial}" is no mark, because no shop file declares a spindle with a dial')
    if job.dial not in marks:
        raise file.wrong(("dial",), f'the spindle has no mark "{job.dial}"{nearest(job.dial, marks)}')
    return job.dial


def _tools(declared: Declared, shop: Shop, job: Job) -> dict[int, Tool]:
    """Tools by the number the program uses. A tool of the command line replaces the shop's of that number whole."""
    tools: dict[int, Tool] = {}
    for n, table in enumerate(shop.tool):
        if declared.shop_file:
            if table.number in tools:
                raise declared.shop_file.wrong(("tool", n, "number"), f"tool {table.number} is declared twice")
            _check_tool(table, n, declared.shop_file)
            tools[table.number] = _tool(table, Path(declared.shop_file.path).name)
    given = {tool.number: tool for tool in declared.tools}
    tools.update(given)
    shops = dict(tools)
    for text, number in job.tool_map.items():
        file = declared.job_file
        if file and not (text.isascii() and text.isdigit() and len(text) <= 5):
            raise file.wrong(("tool_map", text), "a program's tool is a whole number in quotes", True)
        if number not in shops:
            if file:
                raise file.wrong(("tool_map", text), f"no shop file or --tool declares a tool {number}")
            continue
        if int(text) not in given:
            tools[int(text)] = replace(shops[number], number=int(text))
    return tools


def _check_tool(table: ToolTable, n: int, file: File) -> None:
    if table.corner_radius is not None and table.corner_radius > table.diameter / 2 + 1e-6:
        raise file.wrong(("tool", n, "corner_radius"), "the corner radius is larger than half the diameter")
    if table.tip_diameter is not None and table.tip_diameter > table.diameter:
        raise file.wrong(("tool", n, "tip_diameter"), "the tip is wider than the tool")
    if table.angle is not None and table.angle >= 180.0 and table.shape in (*SHAPES_WITH_ANGLE, "drill"):
        raise file.wrong(("tool", n, "angle"), "the full angle lies between 0 and 180 deg")


def _tool(table: ToolTable, declared_in: str) -> Tool:
    values = {name: getattr(table, name) for name in table.__struct_fields__}
    return Tool(**values, declared_in=declared_in)


def _cutting_tools(motion: Motion) -> set[int]:
    """Tool numbers in the spindle during feed moves; -1 where none was called."""
    import numpy as np

    return {int(number) for number in np.unique(motion.tool[motion.kind != 0])}


def _from_comments(
    tools: dict[int, Tool], said: dict[int, tuple[Tool, str]], used: set[int], assumed: list[Assumed]
) -> None:
    """Tools of which only the program's comments speak; nothing declared is touched."""
    if -1 in said and tools:
        said = {number: tool for number, tool in said.items() if number != -1}
    for number, (tool, because) in said.items():
        if number in used and number not in tools:
            tools[number] = tool
            assumed.append(Assumed("the tool" if number == -1 else f"tool {number}", _described(tool), because))


def _described(tool: Tool) -> str:
    parts = [tool.shape, f"{tool.diameter:g} mm"]
    parts += [f"{tool.flutes} flutes" if tool.flutes != 1 else "1 flute"] if tool.flutes else []
    parts += [f"corner {tool.corner_radius:g} mm"] if tool.corner_radius else []
    parts += [f"{tool.angle:g} deg"] if tool.angle else []
    parts += [tool.helix] if tool.helix else []
    return ", ".join(parts)


def _only_tool(tools: dict[int, Tool], declared: Declared, used: set[int], assumed: list[Assumed]) -> None:
    """With no T before a cut, the one declared tool is taken to be in the spindle."""
    numbers = {tool.number for tool in declared.tools}
    numbers |= {table.number for table in declared.shop.tool} if declared.shop else set()
    if len(numbers) != 1 or -1 not in used:
        return
    tool = tools[-1] = tools[numbers.pop()]
    because = "the program calls no tool before it cuts, and it is the only tool declared"
    assumed.append(Assumed("tool in the spindle", tool.called, because))


def _material(declared: Declared, job: Job) -> Material | None:
    given = declared.options.material
    if given is not None:
        try:
            return material(given)
        except Problem as problem:
            raise problem if problem.path else Problem(problem.says, "--material") from None
    if job.material is None or declared.job_file is None:
        return None
    name = job.material
    if name.endswith(".toml"):
        name = str(Path(declared.job_file.path).parent / name)
    try:
        return material(name)
    except Problem as problem:
        raise problem if problem.path else declared.job_file.wrong(("material",), problem.says) from None


def _stock(
    declared: Declared, job: Job, motion: Motion, assumed: list[Assumed]
) -> tuple[str | float | None, Stock | None]:
    """(where Z zero lies, the blank in work coordinates)."""
    z_zero: str | float | None = (
        float(job.z_zero.above_table) if isinstance(job.z_zero, AboveTable) else job.z_zero
    )
    size, thickness, corner = _blank(declared, job.stock)
    if size is None and thickness is None:
        return z_zero, None
    if thickness is None and size is not None:
        thickness = size[2]
    where = z_zero
    if where is None and _cuts_below_zero(motion):
        where = "stock-top"
        assumed.append(Assumed("Z zero", "the stock's top", "z_zero is not declared, and the program cuts below Z0"))
    top: float | None = None
    bottom: float | None = None
    if thickness is not None and where is not None:
        bottom = {"stock-top": -thickness, "table": 0.0}[where] if isinstance(where, str) else -where
        top = bottom + thickness
    placed = corner is not None and size is not None
    x = (corner[0], corner[0] + size[0]) if corner and size else None
    y = (corner[1], corner[1] + size[1]) if corner and size else None
    return z_zero, Stock(x=x, y=y, top=top, bottom=bottom, declared=True, placed=placed)


def _blank(
    declared: Declared, table: StockTable | None
) -> tuple[tuple[float, float, float] | None, float | None, tuple[float, float] | None]:
    """(size, thickness, corner); --stock stands in for the job's blank whole."""
    if declared.stock:
        return declared.stock[0], None, declared.stock[1]
    if table is None:
        return None, None, None
    return table.size, table.measured_thickness, table.corner


def _cuts_below_zero(motion: Motion) -> bool:
    return bool(((motion.kind != 0) & (motion.z1 < -0.001)).any())


def _keep_outs(job: Job, file: File | None) -> tuple[KeepOut, ...]:
    boxes: list[KeepOut] = []
    for n, table in enumerate(job.keep_out):
        low, high = table.from_, table.to
        for axis, a, b in zip("XYZ", low, high):
            if a >= b and file:
                raise file.wrong(("keep_out", n, "to"), f"in {axis} it does not lie above the corner named in `from`")
        boxes.append(KeepOut(table.name or f"keep-out {n + 1}", low, high))
    return tuple(boxes)


def _windows(
    declared: Declared, shop: Shop, job: Job, material: Material | None, tools: dict[int, Tool]
) -> dict[int, dict[str, Window]]:
    """The shop's own windows for this material, by the program's tool numbers."""
    windows: dict[int, dict[str, Window]] = {}
    names = {material.name if material else None, declared.options.material or job.material}
    replaced = {tool.number for tool in declared.tools}
    to_shop = {int(text): number for text, number in job.tool_map.items() if int(text) not in replaced}
    for name, by_tool in shop.windows.items():
        for text, table in by_tool.items():
            if declared.shop_file:
                _check_window(name, text, table, declared.shop_file, shop)
            if name not in names:
                continue
            for number in tools:
                if to_shop.get(number, number) == int(text) and int(text) not in replaced:
                    windows[number] = _by_operation(table)
            if -1 in tools and tools[-1].number == int(text) and int(text) not in replaced:
                windows[-1] = _by_operation(table)
    return windows


def _check_window(name: str, text: str, table: WindowTable, file: File, shop: Shop) -> None:
    key = ("windows", name, text)
    if not (text.isascii() and text.isdigit() and len(text) <= 5):
        raise file.wrong(key, "the last part is a shop tool's number", True)
    if int(text) not in [tool.number for tool in shop.tool]:
        raise file.wrong(key, f"this shop file has no tool {text}", True)
    for operation, (low, high) in _ranges(table).items():
        if low >= high:
            inner = (operation, "fz") if operation else ("fz",)
            raise file.wrong((*key, *inner), "the low limit is not under the high one")


def _ranges(table: WindowTable) -> dict[str, tuple[float, float]]:
    ranges: dict[str, tuple[float, float]] = {} if table.fz is None else {"": table.fz}
    for operation in ("slot", "side", "finish", "ramp", "plunge", "drill"):
        inner = getattr(table, operation)
        if inner is not None:
            ranges[operation] = inner.fz
    return ranges


def _by_operation(table: WindowTable) -> dict[str, Window]:
    return {
        operation: Window(float(low), float(high), "mm", "measured", _OWN_WINDOW)
        for operation, (low, high) in _ranges(table).items()
    }


def _accepts(job: Job, file: File | None) -> tuple[Accept, ...]:
    for n, table in enumerate(job.accept):
        if not table.because.strip() and file:
            raise file.wrong(("accept", n, "because"), "an acceptance needs its reason")
    where = Path(file.path).name if file else ""
    return tuple(Accept(table.rule, table.because.strip(), table.tool, None, where) for table in job.accept)


def _fail_at(declared: Declared, job: Job) -> str:
    given = declared.options.fail_at
    if given is not None and given not in GRADES:
        raise Problem(f'there is no grade "{given[:40]}"{nearest(given, GRADES)}', "--fail-at")
    return given or job.fail_at or "change"


def _not_declared(setup: Setup, shop: Shop, used: set[int]) -> tuple[str, ...]:
    """Keys that would let more be judged, most useful first."""
    missing = [] if setup.material else ["material"]
    missing += [] if setup.tools else ["tool"]
    for number, tool in sorted(setup.tools.items()):
        if number in used:
            wanted = ["flutes", "flute_length"]
            wanted += ["angle"] if tool.shape in SHAPES_WITH_ANGLE else ["helix"]
            called = f"tool {tool.number}" if tool.number >= 0 else "the tool"
            missing += [f"{called}: {key}" for key in wanted if getattr(tool, key) is None]
    missing += [] if setup.stock else ["stock.size"]
    missing += [] if setup.stock and setup.stock.placed else ["stock.corner"]
    missing += [] if setup.z_zero is not None else ["z_zero"]
    machine = setup.machine
    limits = ("travel", "rapid", "feed_limit", "acceleration")
    missing += [f"machine.{key}" for key in limits if getattr(machine, key) is None]
    missing += [] if shop.machine else ["machine.controller"]
    missing += [] if shop.spindle else ["spindle.kind"]
    missing += [] if setup.spindle.spin_up is not None or setup.spindle.started == "by-hand" else ["spindle.spin_up"]
    missing += [] if setup.hold.by else ["hold.by"]
    missing += [] if setup.keep_out else ["keep_out"]
    missing += [] if setup.work_zero else ["work_zero"]
    return tuple(missing)
