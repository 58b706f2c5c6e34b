"""Combines all that is declared into one Setup: option over job over shop over shipped card over comment."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from msgspec.structs import replace

from gclint import disk
from gclint.cards.controller import controller, controller_from
from gclint.cards.material import material
from gclint.knowledge.numbers import usual_limits
from gclint.problem import Problem, nearest
from gclint.setup.acceptances import accepts_in, accepts_of_job
from gclint.setup.blank import blank_of
from gclint.setup.declare import Declared, File, placed
from gclint.setup.declared import (
    AxisAccelerations,
    AxisFeeds,
    AxisLengths,
    AxisPositions,
    Job,
    MachineTable,
    Shop,
    SpindleTable,
)
from gclint.setup.order import steps_of
from gclint.setup.own_windows import own_windows
from gclint.setup.toolbox import SHAPES_WITH_ANGLE, add_from_comments, add_tool_in_collet, declared_tools
from gclint.setup.used import used_files
from gclint.tables.material import Material
from gclint.tables.setup import (
    GRADES,
    Assumed,
    Axes,
    Controller,
    DialMark,
    Hold,
    KeepOut,
    Limits,
    Machine,
    Setup,
    Signed,
    Spindle,
    Tool,
)
from gclint.toml.named import LONGEST_NAME, declaration, readable

if TYPE_CHECKING:
    from gclint.tables.motion import Motion
    from gclint.tables.program import Program

DRILL_ANGLE = 118.0  # degrees, where a drill's point angle is not declared


def limits_of(declared: Declared) -> Limits:
    """How far programs with loops and calls are followed: as the shop says, else as usual."""
    usual, own = usual_limits(), declared.shop.limits if declared.shop else None
    if own is None:
        return usual
    return Limits(*(getattr(own, name) or getattr(usual, name) for name in Limits.__struct_fields__))


def own_controller(declared: Declared) -> Path | None:
    """The file of the shop's own controller card; None where a card that ships is named."""
    machine = declared.shop.machine if declared.shop else None
    if machine is None or not machine.controller.endswith(".toml") or declared.shop_file is None:
        return None
    path = placed(declared.shop_file, ("machine", "controller"), declaration, machine.controller)
    if not disk.exists(path):
        says = f'there is no controller card "{machine.controller}" in the folder of this file'
        raise declared.shop_file.wrong(("machine", "controller"), says)
    return path


def controller_of(declared: Declared) -> Controller:
    """The controller card the shop names, else `any`. A name that ends in .toml is a card beside the shop file."""
    machine = declared.shop.machine if declared.shop else None
    if machine is None:
        return controller("any")
    own = own_controller(declared)
    if own is not None:
        return controller_from(own)
    try:
        return controller(machine.controller)
    except Problem as problem:
        if declared.shop_file:
            raise declared.shop_file.wrong(("machine", "controller"), problem.says) from None
        raise


def shop_setup(declared: Declared) -> Setup:
    """What shop, job and options declare, before any program is read; `with_program` completes it.

    Raises Problem where declarations contradict each other or name what is not there.
    """
    shop, job = declared.shop or Shop(), declared.job or Job()
    if declared.job is not None and declared.job_file is not None:
        steps_of(declared.job, declared.job_file, declared.program_path)  # an order that cannot be is told
    spindle = _spindle(shop.spindle, declared.shop_file)
    dial = _dial(declared, job, spindle)
    tools = declared_tools(declared, shop, job)
    _give_points(tools)
    card = _material(declared, job)
    z_zero, stock = blank_of(declared, job)
    setup = Setup(
        machine=_machine(shop.machine),
        spindle=spindle,
        controller=controller_of(declared),
        tools=tools,
        material=card,
        stock=stock,
        z_zero=z_zero,
        dial=dial,
        hold=Hold(job.hold.by, job.hold.spoilboard) if job.hold else Hold(),
        keep_out=_keep_outs(job, declared.job_file),
        diameter_offsets=_diameter_offsets(shop, declared.shop_file),
        work_zero=_axes(job.work_zero),
        work_offset=job.work_offset,
        tool_order=job.tool_order,
        measured_windows=own_windows(declared, shop, job, card, tools),
        packs=declared.packs,
        accepts=accepts_of_job(declared),
        fail_at=_fail_at(declared, job),
        time_limit=None if job.time_limit is None else float(job.time_limit),
        earlier=declared.earlier,
        turned=declared.turned,
        assumed=declared.assumed,
        sources=(*(file.path for file in (declared.job_file, declared.shop_file) if file), *declared.packs),
        signed=tuple(
            Signed(each.program, each.fingerprint, each.declarations, each.on.isoformat(), each.by)
            for each in job.signed
        ),
        used=used_files(declared, card, own_controller(declared)),
    )
    return replace(setup, not_declared=_not_declared(setup, shop, set()))


def with_program(setup: Setup, declared: Declared, program: Program, motion: Motion) -> Setup:
    """The setup of what is declared, completed by what the program says, calls and cuts."""
    shop, job = declared.shop or Shop(), declared.job or Job()
    assumed = list(setup.assumed)
    tools = declared_tools(declared, shop, job)
    used = _cutting_tools(motion)
    said = {}
    if used - set(tools):
        from gclint.setup.comments import tools_in  # only here: its patterns take a while to compile

        said = tools_in(program, motion)
    if -1 in used:
        of_spindle = said[-1][0] if -1 in said else None
        add_tool_in_collet(tools, declared, of_spindle, _selected(motion), assumed)
    add_from_comments(tools, said, used, assumed)
    for number in _give_points(tools):
        if number in used:
            because = "a drill's angle is not declared"
            assumed.append(Assumed(tools[number].called, f"point angle {DRILL_ANGLE:g} deg", because))
    z_zero, stock = blank_of(declared, job, _cuts_below_zero(motion), assumed)
    setup = replace(
        setup,
        tools=tools,
        stock=stock,
        z_zero=z_zero,
        measured_windows=own_windows(declared, shop, job, setup.material, tools),
        accepts=(*setup.accepts, *accepts_in(program)),
        assumed=tuple(assumed),
    )
    return replace(setup, not_declared=_not_declared(setup, shop, used))


def _give_points(tools: dict[int, Tool]) -> list[int]:
    """Give the usual point angle to each drill that has none; returns their numbers."""
    without = [number for number, tool in tools.items() if tool.shape == "drill" and tool.angle is None]
    for number in without:
        tools[number] = replace(tools[number], angle=DRILL_ANGLE)
    return without


def _cuts_below_zero(motion: Motion) -> bool:
    return bool(((motion.kind != 0) & (motion.z1 < -0.001)).any())


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


def _dial(declared: Declared, job: Job, spindle: Spindle) -> str | None:
    """The mark that is set; raises Problem where the spindle has no such mark."""
    given, file = declared.options.dial, declared.job_file
    mark = job.dial if given is None else given
    if mark is None or (given is None and file is None):
        return mark
    marks = tuple(each.mark for each in spindle.dial)
    if mark in marks:
        return mark
    if not marks:
        says = f'"{mark[:40]}" is no mark, because no shop file declares a spindle with a dial'
    else:
        says = f'the spindle has no mark "{mark[:40]}"{nearest(mark[:40], marks)}; its marks: {", ".join(marks)}'
    raise Problem(says, "--dial") if given is not None or file is None else file.wrong(("dial",), says)


def _cutting_tools(motion: Motion) -> set[int]:
    """Tool numbers in the spindle during feed moves (of a program without any: during its rapids); -1: none called."""
    from gclint.columns import distinct

    feeds = motion.kind != 0
    return {int(number) for number in distinct(motion.tool[feeds] if feeds.any() else motion.tool)}


def _selected(motion: Motion) -> int | None:
    """The one tool that T words select before the first feed move without a called tool."""
    from gclint.tables.motion import EVENT

    uncalled = (motion.kind != 0) & (motion.tool == -1)
    first = int(uncalled.argmax()) if uncalled.any() else 0
    chosen = motion.event_value[(motion.event_kind == EVENT["select"]) & (motion.event_move <= first)]
    return int(chosen[0]) if len(set(chosen.tolist())) == 1 else None


def _material(declared: Declared, job: Job) -> Material | None:
    given = declared.options.material
    if given is not None:
        try:
            return material(_own_card(declared, given) or given)
        except Problem as problem:
            raise problem if problem.path else Problem(problem.says, "--material") from None
    if job.material is None or declared.job_file is None:
        return None
    name = job.material
    if name.endswith(".toml"):
        name = str(placed(declared.job_file, ("material",), declaration, name))
    else:
        name = _own_card(declared, name) or name
    try:
        return material(name)
    except Problem as problem:
        raise problem if problem.path else declared.job_file.wrong(("material",), problem.says) from None


def _own_card(declared: Declared, name: str) -> str | None:
    """The shop's own card of that name: a file NAME.toml beside job.toml or shop.toml."""
    if name.endswith(".toml") or len(name) > LONGEST_NAME or not {"/", "\\", "\0"}.isdisjoint(name):
        return None
    files = [file for file in (declared.job_file, declared.shop_file) if file is not None]
    beside = (Path(file.path).parent / f"{'-'.join(name.lower().split())}.toml" for file in files)
    found = next((path for path in beside if disk.there(path) and str(path) not in {f.path for f in files}), None)
    return str(readable(found)) if found else None


def _keep_outs(job: Job, file: File | None) -> tuple[KeepOut, ...]:
    boxes: list[KeepOut] = []
    for n, table in enumerate(job.keep_out):
        low, high = table.from_, table.to
        for axis, a, b in zip("XYZ", low, high):
            if a >= b and file:
                raise file.wrong(("keep_out", n, "to"), f"in {axis} it does not lie above the corner named in `from`")
        boxes.append(KeepOut(table.name or f"keep-out {n + 1}", low, high))
    return tuple(boxes)


def _diameter_offsets(shop: Shop, file: File | None) -> dict[int, float]:
    for number in shop.diameter_offsets:
        if file and not (number.isascii() and number.isdigit() and len(number) < 10):
            says = f'"{number[:20]}" is no D number: write it as a whole number'
            raise file.wrong(("diameter_offsets", number), says)
    return {int(number): float(size) for number, size in shop.diameter_offsets.items()}


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
