"""The file of grades beside a plan: found, begun, added to; what is in it already is never lost."""

from __future__ import annotations

import datetime
import shlex
from pathlib import Path
from typing import Any

from gclint.problem import Problem, nearest
from gclint.toml.file import read_text
from gclint.toml.units import quantity
from gclint.trial.plan import FAULTS, Cut, Grade, Plan, begun, graded
from gclint.trial.plan_file import GRADES_FILE, cut_known, grades_of, grades_text, with_grade
from gclint.trial.scales import scales

PLAN_FILE = "plan.toml"
FREE = ("who", "wear", "note")  # free text
SAID = (*FAULTS, "speed", "date", "photos", *FREE)  # what can be said of a cut
OPEN = ("0", "-", ".")  # in a line of grades: leaves that scale open


def plan_path(given: str) -> Path:
    """The plan of a folder, or the plan itself."""
    path = Path(given)
    return path / PLAN_FILE if path.is_dir() else path


def grades_path(plan: Path) -> Path:
    return plan.with_name(GRADES_FILE)


def grades_now(plan: Plan, path: Path) -> tuple[str, bytes | None]:
    """(text, what the file holds): nothing graded, and None, where there is no file yet. Raises Problem."""
    if not path.exists():
        return grades_text(plan), None
    text = read_text(path, "file of grades")
    return text, path.read_bytes()


def grade_of(text: str, path: Path, plan: Plan, number: int) -> Grade:
    rows = grades_of(text, str(path), plan).grade
    return next((row for row in rows if row.cut == number), Grade(cut=number))


def progress(text: str, path: Path, plan: Plan) -> tuple[list[Cut], list[Cut], list[Cut]]:
    """The cuts of the program that are (graded, begun, not begun), in their order."""
    rows = {row.cut: row for row in grades_of(text, str(path), plan).grade}
    done: list[Cut] = []
    half: list[Cut] = []
    left: list[Cut] = []
    for cut in plan.cut:
        row = rows.get(cut.number, Grade(cut=cut.number))
        if graded(row):
            done.append(cut)
        elif begun(row):
            half.append(cut)
        elif cut_is_made(cut):
            left.append(cut)
    return done, half, left


def cut_is_made(cut: Cut) -> bool:
    """A risky cut that nobody has confirmed is not in the program."""
    return cut.confirmed or not cut.risky


def said_of(words: tuple[str, ...]) -> dict[str, Any]:
    """What `chipping=none speed=10650 who=Ada` says, as values of a row; "" takes a word out. Raises Problem."""
    made: dict[str, Any] = {}
    for word in words:
        name, equals, value = word.partition("=")
        if not equals:
            raise Problem(f'"{word[:40]}" is not of the form NAME=WORD, such as chipping=none')
        name = {"photo": "photos"}.get(name.strip().lower(), name.strip().lower())
        if name not in SAID:
            raise Problem(f'there is no "{name[:40]}" to say of a cut{nearest(name, SAID)}')
        if name in made or (name == "speed" and "measured_speed" in made):
            raise Problem(f'"{name}" is said twice')
        made["measured_speed" if name == "speed" else name] = value_of(name, value.strip())
    return made


def line_of(text: str) -> dict[str, Any]:
    """What a line such as `1211111 note="loud at the curve"` says of a cut.

    A number for each scale in turn, together or apart, `good` for the best of all, NAME=WORD for one. Raises Problem
    that says what was expected.
    """
    try:
        parts = shlex.split(text)
    except ValueError:
        raise Problem("a quotation mark is not closed") from None
    named = tuple(part for part in parts if "=" in part)
    plain = [part for part in parts if "=" not in part]
    if [part.lower() for part in plain] in (["good"], ["ok"]):
        plain = ["1"] * len(FAULTS)
    elif len(plain) == 1 and len(plain[0]) == len(FAULTS):
        plain = list(plain[0])
    if plain and len(plain) != len(FAULTS):
        says = f"{len(FAULTS)} grades are wanted ({' '.join(FAULTS)}), and here are {len(plain)}"
        raise Problem(f"{says}; write such as 1211111, good, or dust=2")
    made: dict[str, Any] = {fault: value_of(fault, part) for fault, part in zip(FAULTS, plain) if part not in OPEN}
    return made | said_of(named)


def value_of(name: str, text: str) -> Any:
    """What is written for one thing said of a cut. Raises Problem that says what was expected."""
    if name in FAULTS:
        scale = scales()[name]
        word = scale.word_of(text)
        if word and word not in scale.words:
            says = f'"{text[:40]}" is not on the scale of {scale.title}{nearest(word, scale.words)}'
            raise Problem(f"{says}; the scale is: {', '.join(scale.words)}")
        return word
    if name == "speed":
        return _speed(text)
    if name == "photos":
        return [part.strip() for part in text.split(",") if part.strip()] or None
    if name == "date":
        if not text:
            return None
        try:
            return datetime.date.fromisoformat(text)
        except ValueError:
            raise Problem(f'"{text[:40]}" is no date; write it as 2026-05-31') from None
    return text


def _speed(text: str) -> int | float | None:
    if not text:
        return None
    try:
        value = quantity(text if not text.replace(".", "", 1).isdigit() else float(text), "speed", True)
    except Problem as problem:
        raise Problem(f"speed: {problem.says}; write the measured rev/min, such as 10650") from None
    if not value > 0:
        raise Problem("speed: a measured speed is above zero, such as 10650")
    return int(value) if value == int(value) else value


def added(text: str, path: Path, plan: Plan, number: int, said: dict[str, Any], today: datetime.date) -> str:
    """The text with what was said, and the day it was said. Raises Problem at the file's own place, or for the cut."""
    if plan.cut_of(number) is None:
        raise Problem(f"the plan has no cut {number}; {cut_known(plan)}", "--cut")
    if "date" not in said and grade_of(text, path, plan, number).date is None:
        said = {**said, "date": today}
    return with_grade(text, str(path), plan, number, said)
