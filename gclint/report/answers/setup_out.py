"""What is declared, as text: the answer of `gclint shop check` and `gclint job check`."""

from __future__ import annotations

from collections.abc import Sequence

from gclint.digest.tool_facts import described
from gclint.digest.words import count, figure
from gclint.report.text.text_sheet import TextSheet
from gclint.setup.declared import AcceptTable
from gclint.tables.material import Material
from gclint.tables.setup import Axes, Setup

ACCEPTS_NAMED = 20
SHOP_KEYS = ("tool", "machine.", "spindle.")


def setup_sheet(
    setup: Setup, file: str, paper: TextSheet, whole_job: bool, accepts: Sequence[AcceptTable] = ()
) -> None:
    """`whole_job`: the keys of a job file are missed too; `accepts` are all of its acceptances."""
    paper.ends("JOB FILE" if whole_job else "SHOP FILE", "reads well")
    paper.field("file", file)
    machine, spindle = setup.machine, setup.spindle
    if machine.name or machine.travel:
        paper.field("machine", ", ".join(p for p in (machine.name, _axes("travel", machine.travel, "mm")) if p))
    paper.field("control", setup.controller.title)
    if spindle.dial:
        marks = ", ".join(f"{mark.mark} {mark.true:g}" for mark in spindle.dial)
        paper.field("spindle", f"set by dial: {marks} rev/min")
    elif spindle.low is not None and spindle.high is not None:
        paper.field("spindle", f"set by the program, {spindle.low:g} to {spindle.high:g} rev/min")
    if spindle.started:
        paper.field("started", spindle.started.replace("-", " "))
    for number, tool in sorted(setup.tools.items()):
        paper.field(f"tool {number}", ", ".join(part for part in (tool.name, described(tool)) if part))
    if isinstance(setup.material, Material):
        paper.field("material", setup.material.title)
    stock = setup.stock
    if stock is not None:
        across = [f"{axis} {figure(s[0])} to {figure(s[1])}" for axis, s in (("X", stock.x), ("Y", stock.y)) if s]
        if stock.top is not None and stock.bottom is not None:
            across.append(f"{figure(stock.top - stock.bottom)} thick")
        paper.field("blank", f"{', '.join(across)} (mm)" if across else "its size, not its place")
    if setup.hold.by:
        paper.field("held by", setup.hold.by)
    for box in setup.keep_out:
        paper.field("keep out", box.name or "a box without a name")
    for accept in accepts[:ACCEPTS_NAMED]:
        scope = [accept.program or "", f"tool {accept.tool}" if accept.tool is not None else ""]
        where = f" ({', '.join(part for part in scope if part)})" if any(scope) else ""
        paper.field("accepted", f"{accept.rule}{where}, because {accept.because}")
    if len(accepts) > ACCEPTS_NAMED:
        paper.field("", f"and {count(len(accepts) - ACCEPTS_NAMED, 'more acceptance')}")
    missing = [key for key in setup.not_declared if whole_job or key.startswith(SHOP_KEYS)]
    if missing:
        paper.blank()
        paper.heading("NOT DECLARED")
        paper.text_block("Nothing is wrong with that; each of these lets more be judged:")
        for key in missing:
            paper.bullet(key)


def _axes(name: str, axes: Axes | None, unit: str) -> str:
    if axes is None:
        return ""
    known = [f"{axis} {figure(value)}" for axis, value in (("X", axes.x), ("Y", axes.y), ("Z", axes.z)) if value]
    return f"{name} {' '.join(known)} {unit}"
