"""The questions of `gclint shop new`."""

from __future__ import annotations

from functools import partial

import click

from gclint.cli.guided import Lines, as_text, ask, of, one_of, refuse_existing, write_new, yes_or_no
from gclint.problem import Problem
from gclint.setup.declared import Shop
from gclint.tables.setup import Tool
from gclint.toml.quantity import Acceleration, Feed, Length, Power, Quantity, Speed, Time, from_text

FIRST = "The machine, its spindle and its tools. `gclint shop check` says what more can stand here."
MADE_OF = ("carbide", "hss", "carbide-tipped")
TOOL = 'A tool by its number, such as "1: flat 1/8in 2fl down-cut" (Enter: no more)'


def ask_shop(file: str) -> None:
    """Asks, and writes the file. Raises Problem where it exists or the answers end."""
    target = refuse_existing(file)
    click.echo("Enter leaves a question open: less can then be judged, and every report says what.")
    lines = Lines(FIRST)
    _machine(lines)
    _spindle(lines)
    taken: set[int] = set()
    while (tool := ask(TOOL, partial(_tool, taken))) is not None:
        taken.add(tool.number)
        _add_tool(lines, tool)
    write_new(lines, target, Shop)
    click.echo(f"{file} is written. What more it could say: gclint shop check {file}")


def _machine(lines: Lines) -> None:
    from gclint.cards.controller import controller, names

    click.echo("\nTHE MACHINE")
    called = ask("What is it called", as_text)
    travel = {axis: ask(f"Travel in {axis.upper()}, such as 600 mm", of(Length)) for axis in "xyz"}
    rates = {
        key: _by_axis(question, kind)
        for key, question, kind in (
            ("rapid", "Fastest travel, G0, {axes}, such as 5000 mm/min", Feed),
            ("feed_limit", "Fastest feed {axes}, such as 2500 mm/min", Feed),
            ("acceleration", "Acceleration {axes}, such as 200 mm/s^2", Acceleration),
        )
    }
    homes = ask("Does it find its own zero by switches (y or n)", yes_or_no)
    for each in names():
        click.echo(f"    {each}: {controller(each).title}")
    card = ask("Which of these is like its controller", one_of(*names()))
    lines.table("[machine]", name=called, travel=_axes(travel), **rates, homes=homes, controller=card)


def _by_axis(question: str, kind: type[Quantity]) -> str | None:
    level = ask(question.format(axes="along X and Y"), of(kind))
    return _axes({"x": level, "y": level, "z": ask(question.format(axes="along Z"), of(kind))})


def _axes(given: dict[str, str | None]) -> str | None:
    told = [f"{axis} = {value}" for axis, value in given.items() if value is not None]
    return "{ " + ", ".join(told) + " }" if told else None


def _spindle(lines: Lines) -> None:
    click.echo("\nTHE SPINDLE")
    kind = ask("Is its speed set by a dial or commanded by the program (dial, commanded)", one_of("dial", "commanded"))
    marks: list[str] = []
    low = high = None
    if kind == '"dial"':
        click.echo("    Many turn slower than the dial says. Measure it once: every chip hangs on the true speed.")
        while (mark := ask('A mark, its stated and its measured speed, such as "A 9500 8100" (Enter: no more)', _mark)):
            marks.append(mark)
    elif kind is not None:
        low = ask("Its slowest speed, rev/min", _speed)
        high = ask("Its fastest speed, rev/min", _speed)
    started = ask("Who starts it (by-hand or program)", one_of("by-hand", "program"))
    lines.table(
        "[spindle]", kind=kind, dial=f"[{', '.join(marks)}]" if marks else None,
        range=f"[{low}, {high}]" if low is not None and high is not None else None, started=started,
        power=ask("Its power, such as 700 W", of(Power)),
        spin_up=ask("How long it takes to full speed, such as 4 s", of(Time)),
    )


def _speed(answer: str) -> str:
    return f"{from_text(Speed, answer):g}"


def _mark(answer: str) -> str:
    mark, *speeds = answer.split()
    if not 1 <= len(speeds) <= 2:
        raise Problem('write the mark and its speed, and the measured speed if you know it: "A 9500 8100"')
    keys = zip(("stated", "measured"), map(_speed, speeds))
    return "{ " + ", ".join([f"mark = {as_text(mark)}", *(f"{key} = {speed}" for key, speed in keys)]) + " }"


def _tool(taken: set[int], answer: str) -> Tool:
    from gclint.setup.tool_text import tool_from_text

    tool = tool_from_text(answer, "")
    if tool.number in taken:
        raise Problem(f"tool {tool.number} is in the list already; another tool has another number")
    return tool


def _add_tool(lines: Lines, tool: Tool) -> None:
    sizes = (("diameter", tool.diameter), ("corner_radius", tool.corner_radius))
    measures = {key: f'"{value:.6g} mm"' for key, value in sizes if value is not None}
    angle = f'"{tool.angle:.6g} deg"' if tool.angle is not None else None
    lines.table(
        "[[tool]]", number=str(tool.number), name=ask("    Its name", as_text), shape=as_text(tool.shape), **measures,
        angle=angle, flutes=str(tool.flutes) if tool.flutes else None,
        flute_length=ask("    Length of its cutting edges, such as 12 mm", of(Length)),
        stickout=ask("    How far it stands out of the nut, such as 22 mm", of(Length)),
        shank=ask("    Diameter of its shank, such as 6 mm", of(Length)),
        helix=as_text(tool.helix) if tool.helix else None,
        centre_cutting=ask("    Does it cut at its centre, so that it may go straight down (y or n)", yes_or_no),
        made_of=ask(f"    What is it made of ({', '.join(MADE_OF)})", one_of(*MADE_OF)),
    )
