"""Test cuts at the desk: planned into a folder of their own, graded one by one, learned from."""

from __future__ import annotations

import datetime
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Any

from gclint.desk.declarations import Above, Changed
from gclint.desk.names import FORBIDDEN, inside, is_within
from gclint.problem import Problem

if TYPE_CHECKING:
    from gclint.trial.plan import Plan

MOST_CUTS = 100


def plan(
    root: Path, folder: str, material: str, like: str, tools: list[str], blank: str, cuts: int, depth: str,
    confirm: list[int] | None,
) -> dict[str, Any]:  # fmt: skip
    """What would be cut; with `confirm`, the risky cuts that may be made, it is written into the folder."""
    from gclint.setup.tool_text import stock_from_text
    from gclint.toml.units import quantity
    from gclint.trial.asked import Asked
    from gclint.trial.files import Files
    from gclint.trial.make import confirmed, make
    from gclint.trial.plan_file import cut_words

    target = _new_folder(root, folder)
    size, corner = stock_from_text(blank, "blank")
    if not 4 <= cuts <= MOST_CUTS:
        raise Problem(f"a plan has 4 to {MOST_CUTS} cuts")
    asked = Asked(
        material=material, like=like, tools=tuple(tools), blank=(size, corner or (0.0, 0.0)), cuts=cuts,
        entries=(), depths=(quantity(depth, "length"),) if depth else (),
    )  # fmt: skip
    files = Files(target, asked.program)
    files.refuse_existing()
    try:
        made = make(asked, target, datetime.date.today())
    except Problem as problem:
        if problem.path is not None and problem.path.startswith("--"):  # an option of the command line
            raise Problem(problem.says) from None
        raise
    if confirm is not None:
        risky = {cut.number for cut in made.plan.cut if cut.risky}
        files.write(confirmed(made.plan, risky & set(confirm)), made.bench)
    return {
        "notes": list(made.notes), "written": confirm is not None, "folder": folder,
        "cuts": [
            {"number": cut.number, "words": cut_words(cut), "risky": cut.risky, "repeat": cut.repeat_of}
            for cut in made.plan.cut
        ],
    }  # fmt: skip


def _new_folder(root: Path, name: str) -> Path:
    plain = name.strip()
    if not plain or len(plain) > 80 or not plain.isprintable() or plain.startswith((".", "-")):
        raise Problem("name the folder for the test cuts, such as beech-trial")
    if any(mark in plain for mark in FORBIDDEN) or plain.endswith("."):
        raise Problem(f"the name of a folder holds none of {' '.join(FORBIDDEN)}")
    target = root / plain
    if target.is_symlink():
        raise Problem("this is a link; name another folder")
    return target


def _read(root: Path, folder: str) -> tuple[Plan, Path]:
    from gclint.trial.grading import PLAN_FILE, grades_path
    from gclint.trial.plan_file import read_plan

    path = inside(root, f"{folder}/{PLAN_FILE}" if folder != "." else PLAN_FILE)
    return read_plan(path), grades_path(path)


def cuts(root: Path, folder: str) -> dict[str, Any]:
    """The cuts that are made, with what was seen at each, and the scales."""
    from msgspec import to_builtins

    from gclint.trial.ask import place
    from gclint.trial.grading import cut_is_made, grade_of, grades_now, progress
    from gclint.trial.plan import FAULTS
    from gclint.trial.plan_file import cut_words
    from gclint.trial.scales import scales

    planned, target = _read(root, folder)
    text, _ = grades_now(planned, target)
    done = {cut.number for cut in progress(text, target, planned)[0]}
    rows = []
    for cut in planned.cut:
        if cut_is_made(cut):
            grade = grade_of(text, target, planned, cut.number)
            rows.append({
                "number": cut.number, "words": cut_words(cut), "place": place(planned, cut), "done": cut.number in done,
                "said": {fault: getattr(grade, fault) for fault in FAULTS}, "note": grade.note,
            })  # fmt: skip
    return {"material": planned.material, "cuts": rows, "scales": [to_builtins(scales()[name]) for name in FAULTS]}


def grade(
    root: Path, folder: str, cut: int, said: dict[str, str], seen: dict[str, str] | None = None
) -> dict[str, Any]:
    """Save what was seen at a cut. `seen` is what the window showed of these; another's answer is not written over."""
    from gclint.atomic_file import write_unchanged
    from gclint.trial.grading import added, grade_of, grades_now, value_of
    from gclint.trial.plan import FAULTS

    planned, target = _read(root, folder)
    if not said or any(name not in (*FAULTS, "note") for name in said):
        raise Problem("this is nothing that is said of a cut")
    text, before = grades_now(planned, target)
    now = grade_of(text, target, planned, cut)
    for name, words in (seen or {}).items():
        if name in said and getattr(now, name, "") != words:
            raise Changed(f"another window has graded this cut meanwhile: {getattr(now, name, '') or 'taken back'}")
    values = {name: value_of(name, words) for name, words in said.items()}
    made = added(text, target, planned, cut, values, datetime.date.today())
    if before is None or made != text:
        write_unchanged(made.encode("utf-8"), target, before)
    return {}


def sheet(root: Path, folder: str) -> dict[str, Any]:
    """The grading sheet that was written with the plan."""
    return {"page": inside(root, f"{folder}/sheet.html" if folder != "." else "sheet.html").read_text("utf-8")}


def learn(root: Path, folder: str, write: bool, yes: bool) -> dict[str, Any]:
    """What the graded cuts teach, as a page; the windows go into the shop file where `write` says so."""
    from gclint.digest.words import Lengths
    from gclint.trial.into_shop import writable
    from gclint.trial.learn import learn as taught
    from gclint.trial.learn_page import page
    from gclint.trial.seen import read_trial

    planned, target = _read(root, folder)
    trial = read_trial((target.parent,))
    lesson = taught(trial)
    windows, left = writable(lesson)
    told = [f"Not written: {why}." for why in left]
    if write:
        told = _write(root, lesson, windows, trial.shop, yes) + told
    return {
        "page": page(lesson, Lengths(False)), "writable": [window.tool for window in windows], "told": told,
        "shop": str(trial.shop) if trial.shop else "", "material": planned.material,
    }  # fmt: skip


def _write(root: Path, lesson: Any, windows: list[Any], shop: Path | None, yes: bool) -> list[str]:
    from gclint.atomic_file import write_unchanged
    from gclint.toml.file import read_text
    from gclint.trial.into_shop import shop_text

    if shop is None:
        raise Problem("this plan names no shop file")
    if not windows:
        raise Problem("there is no window to write yet")
    if not is_within(root, shop) and not yes:
        raise Above(f"this file lies outside the desk's folder: {shop}", str(shop))
    read_text(shop, "shop file")
    before = shop.read_bytes()
    made = shop_text(before.decode("utf-8-sig"), str(shop), lesson, windows)
    write_unchanged(made.encode("utf-8"), shop, before)
    tools = ", ".join(str(window.tool) for window in windows)
    return [f"The window of tool {tools} stands in {shop.name}; checks judge by it from now on."]


TRIALS: dict[str, Callable[..., Any]] = {
    "plan": plan, "cuts": cuts, "grade": grade, "grading_sheet": sheet, "learn": learn,
}  # fmt: skip
