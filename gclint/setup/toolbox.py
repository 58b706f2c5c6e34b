"""Which tools a program has, by its own numbers: command line over shop over comments, and the job's tool map."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

from msgspec.structs import replace

from gclint.setup.declare import Declared, File
from gclint.setup.declared import Job, Shop, ToolTable
from gclint.setup.tool_text import LARGEST, SMALLEST
from gclint.tables.setup import Assumed, Tool

SHAPES_WITH_ANGLE = ("v", "tapered-ball")
SAME_DIAMETER = 0.01  # mm, of a comment and a declaration
IN_COLLET = "tool in the spindle"


def declared_tools(declared: Declared, shop: Shop, job: Job) -> dict[int, Tool]:
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
    if job.tool is not None and job.tool not in tools and declared.job_file:
        known = ", ".join(str(number) for number in sorted(tools)) or "none"
        says = f"no shop file or --tool declares a tool {job.tool} (declared: {known})"
        raise declared.job_file.wrong(("tool",), says)
    return tools


def _check_tool(table: ToolTable, n: int, file: File) -> None:
    if not SMALLEST <= table.diameter <= LARGEST:
        raise file.wrong(("tool", n, "diameter"), f"a tool is {SMALLEST:g} to {LARGEST:g} mm wide")
    if table.corner_radius is not None and table.corner_radius > table.diameter / 2 + 1e-6:
        raise file.wrong(("tool", n, "corner_radius"), "the corner radius is larger than half the diameter")
    if table.tip_diameter is not None and table.tip_diameter > table.diameter:
        raise file.wrong(("tool", n, "tip_diameter"), "the tip is wider than the tool")
    if table.angle is not None and table.angle >= 180.0 and table.shape in (*SHAPES_WITH_ANGLE, "drill"):
        raise file.wrong(("tool", n, "angle"), "the full angle lies between 0 and 180 deg")


def _tool(table: ToolTable, declared_in: str) -> Tool:
    values = {name: getattr(table, name) for name in table.__struct_fields__}
    return Tool(**values, declared_in=declared_in)


def add_from_comments(
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


def needs_in_collet(tools: Mapping[int, Tool]) -> str:
    """What must be declared where the program cuts before it calls a tool, and nothing says which one is in."""
    if tools:
        return "which of the declared tools is in the collet (`tool` in job.toml, or it alone as --tool)"
    return 'the tool in the collet (e.g. --tool "1: flat 6mm 2fl up-cut")'


def add_tool_in_collet(
    tools: dict[int, Tool], declared: Declared, said: Tool | None, selected: int | None, assumed: list[Assumed]
) -> None:
    """Where a program cuts before it calls a tool, puts the tool that is in the collet under the number -1.

    That is the only --tool, else the job's `tool`, the only entry of its `tool_order`, the only one declared, the one
    that the program selects without a change, or the only one that is what the comments `said` of the tool.
    """
    found = _in_collet(tools, declared, said, selected)
    if found is None:
        return
    number, why = found
    tools[-1] = tools[number]
    assumed.append(Assumed(IN_COLLET, tools[-1].called, f"the program calls no tool before it cuts, and {why}"))


def _in_collet(
    tools: dict[int, Tool], declared: Declared, said: Tool | None, selected: int | None
) -> tuple[int, str] | None:
    """(its number, how that is known); None where several are as likely."""
    job, file = declared.job, declared.job_file
    given = [tool.number for tool in declared.tools]
    numbers = {*given, *(table.number for table in declared.shop.tool)} if declared.shop else set(given)
    if len(given) == 1 and len(numbers) > 1:
        return given[0], "it is the only --tool"
    if job is not None and job.tool is not None and file is not None:
        return job.tool, f"`tool` in {file.line_of(('tool',))}, says so"
    if job is not None and len(job.tool_order) == 1 and job.tool_order[0] in tools:
        return job.tool_order[0], "`tool_order` of the job names no other"
    if len(numbers) == 1:
        return numbers.pop(), "it is the only tool declared"
    if selected is not None and selected in tools:
        return selected, f"it selects tool {selected} without a change of tool"
    if said is None:
        return None
    like = [
        number
        for number in sorted(numbers)
        if tools[number].shape == said.shape and abs(tools[number].diameter - said.diameter) < SAME_DIAMETER
    ]
    return (like[0], f"of those declared only this one is what the {said.declared_in} says") if len(like) == 1 else None
