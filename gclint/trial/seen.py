"""What graded test cuts have shown: each cut with its chip, its edge speed and its grades, of one or more plans."""

from __future__ import annotations

import datetime
import math
from pathlib import Path
from statistics import median

from msgspec import Struct

from gclint.cards.material import material, material_from
from gclint.problem import Problem
from gclint.report.text.cautions import of_material
from gclint.setup.declared import Shop, ToolTable
from gclint.toml.file import load
from gclint.trial.plan import FAULTS, Cut, Grade, Plan, begun
from gclint.trial.plan_file import GRADES_FILE, read_grades, read_plan
from gclint.trial.scales import scales


class Seen(Struct, frozen=True):
    """A cut that has been graded, wholly or in part."""

    plan: str
    number: int
    tool: int  # number in the shop
    entry: str
    fz: float  # mm, at the true speed
    edge: float  # m/min
    speed: float  # rev/min, true
    set_speed: float
    feed: float  # mm/min
    depth: float  # mm
    batch: str
    level: dict[str, int]  # fault -> place of its word on the scale; a fault that was not graded is not in it
    dial: str | None = None
    date: datetime.date | None = None


class Trial(Struct, frozen=True):
    """Graded cuts in one material."""

    material: str
    tools: dict[int, ToolTable]
    cuts: tuple[Seen, ...]
    plans: tuple[str, ...]
    planned: int = 0  # cuts in the plans, graded or not
    assumed: tuple[str, ...] = ()
    shop: Path | None = None  # the shop file that the plans name
    cautions: tuple[str, ...] = ()  # of the material's card, or of the one it was planned by
    feed_limit: float | None = None  # mm/min: no X or Y of the shop's machine feeds faster


def read_trial(paths: tuple[Path, ...]) -> Trial:
    """The plans, each a file or its folder, with the grades beside them. Raises Problem."""
    plans: dict[str, tuple[Path, Plan]] = {}
    seen: list[Seen] = []
    assumed: dict[str, None] = {}
    for given in paths:
        path = given / "plan.toml" if given.is_dir() else given
        plan = read_plan(path)
        if plan.plan in plans:
            raise Problem(f'the plan "{plan.plan}" is given twice', str(path))
        _same_material(plan, path, plans)
        plans[plan.plan] = (path, plan)
        grades = {grade.cut: grade for grade in read_grades(path.parent / GRADES_FILE, plan).grade}
        speeds, said = _true_speeds(plan, grades)
        assumed.update(dict.fromkeys(said))
        seen += [_seen(plan, cut, grades[cut.number], speeds[cut.number], path)
                 for cut in plan.cut if cut.number in grades and begun(grades[cut.number])]  # fmt: skip
    first = next(plan for _, plan in plans.values())
    shops = [(path.parent / plan.shop).resolve() for path, plan in plans.values() if plan.shop]
    return Trial(
        first.material, _tools(plans), tuple(seen), tuple(plans), sum(len(plan.cut) for _, plan in plans.values()),
        tuple(assumed), shops[0] if shops and len(set(shops)) == 1 else None, _cautions(first, shops),
        _feed_limit(shops),
    )  # fmt: skip


def _feed_limit(shops: list[Path]) -> float | None:
    """The fastest feed of the slower of X and Y in the shop files that are there and sound."""
    found: list[float] = []
    for path in dict.fromkeys(shops):
        try:
            machine = load(path, Shop, "shop file").machine if path.is_file() else None
        except Problem:
            continue  # what it says is told where the file is asked for; cuts are learned from without it
        limits = machine.feed_limit if machine is not None else None
        found += [float(each) for each in (limits.x, limits.y) if each is not None] if limits else []
    return min(found, default=None)


def _cautions(plan: Plan, shops: list[Path]) -> tuple[str, ...]:
    """Return what the material's own card warns of, else that of the card it was planned by; () where there is none."""
    for name in filter(None, (plan.material, plan.like)):
        try:
            own = next((path for shop in shops if (path := shop.parent / f"{name}.toml").is_file()), None)
            return of_material(material(name) if own is None else material_from(own))
        except Problem:
            continue  # a new material, or a card that is not sound: nothing is known of it here
    return ()


def _same_material(plan: Plan, path: Path, plans: dict[str, tuple[Path, Plan]]) -> None:
    for other_path, other in plans.values():
        if other.material != plan.material:
            says = f'this plan cuts "{plan.material}", and {other_path} cuts "{other.material}"'
            raise Problem(f"{says}: learn from one at a time", str(path))


def _tools(plans: dict[str, tuple[Path, Plan]]) -> dict[int, ToolTable]:
    """Tools by number; one number must be one form of tool in all plans."""
    tools: dict[int, ToolTable] = {}
    for path, plan in plans.values():
        for tool in plan.tool:
            if tool.flutes is None:
                raise Problem(f"tool {tool.number} has no flutes here: its feed per tooth is not known", str(path))
            known = tools.setdefault(tool.number, tool)
            for key in ("shape", "diameter", "flutes", "helix"):
                if getattr(known, key) != getattr(tool, key):
                    says = f"tool {tool.number} has another {key} here than in the plans before"
                    raise Problem(f"{says}: two tools are not mixed", str(path))
    return tools


def _true_speeds(plan: Plan, grades: dict[int, Grade]) -> tuple[dict[int, float], list[str]]:
    """The true speed of each cut: measured in it, else in others at the same setting, else by the shop's dial."""
    measured: dict[tuple[str | None, float], list[float]] = {}
    for cut in plan.cut:
        grade = grades.get(cut.number)
        if grade is not None and grade.measured_speed is not None:
            measured.setdefault((cut.dial, float(cut.speed)), []).append(float(grade.measured_speed))
    speeds: dict[int, float] = {}
    said: list[str] = []
    for cut in plan.cut:
        key, grade = (cut.dial, float(cut.speed)), grades.get(cut.number)
        if grade is not None and grade.measured_speed is not None:
            speeds[cut.number] = float(grade.measured_speed)
        elif key in measured:
            speeds[cut.number] = median(measured[key])
        else:
            speeds[cut.number] = float(cut.true_speed or cut.speed)
            if cut.true_speed is None:
                at = f"dial {cut.dial}" if cut.dial else f"S{cut.speed:g}"
                said.append(f"at {at} the spindle turns {cut.speed:g} rev/min: its true speed was never measured")
    return speeds, said


def _seen(plan: Plan, cut: Cut, grade: Grade, speed: float, path: Path) -> Seen:
    tool = next(tool for tool in plan.tool if tool.number == cut.tool)
    if tool.flutes is None:
        raise Problem(f"tool {tool.number} has no flutes here: its feed per tooth is not known", str(path))
    words = {fault: getattr(grade, fault) for fault in FAULTS}
    level = {fault: scales()[fault].index(word) for fault, word in words.items() if word}
    return Seen(
        plan.plan, cut.number, cut.tool, cut.entry, float(cut.feed) / (speed * tool.flutes),
        math.pi * float(tool.diameter) * speed / 1000.0, speed, float(cut.speed), float(cut.feed), float(cut.depth),
        plan.batch, level, cut.dial, grade.date or plan.made,
    )  # fmt: skip
