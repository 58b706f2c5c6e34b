"""Reads and writes plan.toml and grades.toml; what is wrong in them is a Problem with its place and what to write."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import msgspec

from gclint.problem import Problem, nearest
from gclint.toml.file import Key, decode, problem_at, read_text
from gclint.trial.plan import FAULTS, Cut, Grades, Plan
from gclint.trial.scales import scales

GRADES_FILE = "grades.toml"


def read_plan(path: Path) -> Plan:
    """A plan whose cuts have numbers of their own, tools that are listed and repeats of cuts before them."""
    text = read_text(path, "plan of test cuts")
    return plan_of(text, str(path))


def plan_of(text: str, path: str) -> Plan:
    plan = decode(text, Plan, path)
    if Path(plan.program).name != plan.program:
        raise problem_at(text, path, ("program",), "it names a file beside the plan, without a folder")
    tools = {tool.number for tool in plan.tool}
    seen: set[int] = set()
    for row, cut in enumerate(plan.cut):
        if cut.number in seen:
            raise problem_at(text, path, ("cut", row, "number"), f"there are two cuts with the number {cut.number}")
        seen.add(cut.number)
        if cut.tool not in tools:
            raise problem_at(text, path, ("cut", row, "tool"), f"the plan has no tool {cut.tool}; {_known(tools)}")
        if cut.repeat_of is not None and (cut.repeat_of not in seen or cut.repeat_of == cut.number):
            says = f"cut {cut.number} repeats cut {cut.repeat_of}, which does not stand before it"
            raise problem_at(text, path, ("cut", row, "repeat_of"), says)
    if not plan.cut:
        raise Problem("this plan has no cuts: it needs a [[cut]] for each", path)
    return plan


def read_grades(path: Path, plan: Plan) -> Grades:
    """The grades of this very plan; each cut at most once, each word on its scale."""
    text = read_text(path, "file of grades")
    return grades_of(text, str(path), plan)


def grades_of(text: str, path: str, plan: Plan) -> Grades:
    grades = decode(text, Grades, path)
    if grades.plan != plan.plan:
        says = f'these are grades of the plan "{grades.plan}", and the plan is "{plan.plan}": two plans are not mixed'
        raise problem_at(text, path, ("plan",), says)
    numbers = {cut.number for cut in plan.cut}
    seen: set[int] = set()
    for row, grade in enumerate(grades.grade):
        key: Key = ("grade", row)
        if grade.cut not in numbers:
            raise problem_at(text, path, (*key, "cut"), f"the plan has no cut {grade.cut}; {cut_known(plan)}")
        if grade.cut in seen:
            raise problem_at(text, path, (*key, "cut"), f"cut {grade.cut} is graded twice in this file")
        seen.add(grade.cut)
        for fault in FAULTS:
            word, words = getattr(grade, fault), scales()[fault].words
            if word and word not in words:
                says = f'"{word}" is not on the scale of {scales()[fault].title}{nearest(word, words)}'
                raise problem_at(text, path, (*key, fault), f"{says}; the scale is: {', '.join(words)}")
    return grades


def plan_text(plan: Plan) -> str:
    """plan.toml as it is written anew: a table for each tool and cut, in order."""
    import tomlkit

    document = tomlkit.document()
    document.add(tomlkit.comment(f"Test cuts, planned by gclint trial plan. What was seen goes into {GRADES_FILE}."))
    for name, value in plain(plan).items():
        if name in ("tool", "cut"):
            rows = tomlkit.aot()
            for row in value:
                table = tomlkit.table()
                table.update(row)
                rows.append(table)
            document.add(name, rows)
        else:
            document.add(name, tomlkit.item(value))
    return tomlkit.dumps(document)


def with_confirmed(text: str, plan: Plan) -> str:
    """plan.toml with the cuts confirmed that `plan` has confirmed, all else as it stands."""
    import tomlkit

    document = tomlkit.parse(text)
    for row in document.get("cut", ()):
        cut = plan.cut_of(row["number"])
        if cut is not None and cut.confirmed:
            row["confirmed"] = True
        else:
            row.pop("confirmed", None)
    return tomlkit.dumps(document)


def grades_text(plan: Plan) -> str:
    """grades.toml with nothing graded: to be filled by `gclint trial grade` or in an editor."""
    lines = [f"# What was seen at the cuts of {plan.program}. Fill in here, or with: gclint trial grade"]
    for scale in scales().values():
        lines.append(f"# {scale.name}: {', '.join(scale.words)}")
    lines += ["", f"plan = {_quoted(plan.plan)}", ""]
    for cut in plan.cut:
        lines.append("[[grade]]")
        lines.append(f"cut = {cut.number}  # {cut_words(cut)}")
        lines += [f'{fault} = ""' for fault in FAULTS]
        lines += ['who = ""', 'wear = ""', 'note = ""', ""]
    return "\n".join(lines)


def with_grade(text: str, path: str, plan: Plan, number: int, said: dict[str, Any]) -> str:
    """grades.toml with what was said of one cut (None: taken out), all else as it stands. Raises Problem."""
    import tomlkit

    grades_of(text, path, plan)  # what is wrong already is told at its own place
    document = tomlkit.parse(text)
    rows = document.setdefault("grade", tomlkit.aot())
    row = next((row for row in rows if row["cut"] == number), None)
    if row is None:
        row = tomlkit.table()
        row.add("cut", number)
        rows.append(row)
    for name, value in said.items():
        if value is None:
            row.pop(name, None)
        elif name not in row or row[name] != value:
            row[name] = value
    made = tomlkit.dumps(document)
    grades_of(made, path, plan)
    return made


def cut_words(cut: Cut) -> str:
    """'tool 1, 1200 mm/min, dial B, ramp, 1.2 mm deep'."""
    speed = f"dial {cut.dial}" if cut.dial else f"S{cut.speed:g}"
    entry = "ramp" if cut.entry == "ramp" else "straight down"
    return f"tool {cut.tool}, {cut.feed:g} mm/min, {speed}, {entry}, {cut.depth:g} mm deep"


def cut_known(plan: Plan) -> str:
    """'it has 1 to 24': the cuts of a plan, for a sentence about one that it has not."""
    return _known({cut.number for cut in plan.cut})


UNITS = {"Length": "mm", "Position": "mm", "Depth": "mm", "Feed": "mm/min", "Angle": "deg"}


def plain(value: Any) -> Any:
    """Structs as tables: quantities with their units, what is not given left out."""
    if isinstance(value, msgspec.Struct):
        fields = ((name, getattr(value, name)) for name in value.__struct_fields__)
        defaults = {f.name: f.default for f in msgspec.structs.fields(value)}
        return {name: plain(each) for name, each in fields if each is not None and each != defaults.get(name)}
    if isinstance(value, tuple):
        return [plain(each) for each in value]
    unit = UNITS.get(type(value).__name__)
    if unit:
        return f"{float(value):.6g} {unit}"
    if isinstance(value, float):
        return int(value) if value == int(value) else float(value)
    return value


def _quoted(text: str) -> str:
    import tomlkit

    return tomlkit.item(text).as_string()


def _known(numbers: set[int]) -> str:
    ordered = sorted(numbers)
    if len(ordered) > 2 and ordered[-1] - ordered[0] == len(ordered) - 1:
        return f"it has {ordered[0]} to {ordered[-1]}"
    return f"it has {', '.join(map(str, ordered[:20]))}" if ordered else "it has none"


