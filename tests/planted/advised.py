# ruff: noqa: E501
"""Applies the advice of every finding as text, checks again, and counts what is gone and what came instead.

    python -m tests.planted --advice [--corpus FOLDER] [--every N] [--seed N] [RULE...]

Each program is judged with its own declarations and with others that are as plausible: other materials, other numbers of
flutes, a spindle by marks. What is applied is what the finding says to set, by the edits that editors make of it.
"""

from __future__ import annotations

import multiprocessing
import random
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from gclint.advice.edits import edited, edits_of
from gclint.run import Run
from gclint.tables.finding import Finding
from tests.planted.base import Base, judged
from tests.planted.plan import bases
from tests.planted.strangers import STOPS, declared

MATERIALS = ("aluminium-6061", "cast-acrylic", "hdpe", "oak", "mdf", "birch-plywood", "pvc-foam-board", "brass", "softwood")
MARKS = [{"mark": mark, "stated": n, "measured": round(0.94 * n)} for mark, n in zip("123456", range(10000, 34000, 4000))]


def others(base: Base, seed: int, number: int = 3) -> Iterator[Base]:
    """The same program as other owners would declare it."""
    dice = random.Random(f"{base.name}, {seed}")
    for at in range(number):
        material, flutes = dice.choice(MATERIALS), dice.choice((1, 1, 2, 3))
        told = base.told(
            job=lambda job, material=material: job.update(material=material),
            shop=lambda shop, flutes=flutes: [t.update(flutes=flutes) for t in shop["tool"] if t["shape"] in ("flat", "ball")],
        )
        shop = told.get("shop")
        if shop is not None and at == 1 and shop.get("spindle", {}).get("kind") == "commanded":
            shop["spindle"] = {"kind": "dial", "dial": MARKS, "started": "by-hand"}
        if shop is not None and at == 2:
            shop.setdefault("machine", {})["acceleration"] = dict.fromkeys("xyz", dice.choice(("150 mm/s^2", "600 mm/s^2")))
        yield Base(base.name, base.data, told.get("job", base.job), shop, base.files)


@dataclass(frozen=True)
class Applied:
    base: str
    rule: str
    grade: str
    line: int
    says: str
    gone: bool
    grave: tuple[str, ...]  # findings at halt or change that came
    mild: tuple[str, ...]  # at consider


def applied(data: bytes, finding: Finding, texts: dict[int, str]) -> bytes | None:
    """The program with what the finding says to set."""
    edits = edits_of(finding.change, texts)
    if not edits:
        return None
    lines = data.decode().splitlines(keepends=True)
    for line in {edit.line for edit in edits}:
        text = lines[line - 1]
        bare = text.rstrip("\r\n")
        lines[line - 1] = edited(bare, [e for e in edits if e.line == line]) + text[len(bare) :]
    return "".join(lines).encode()


def places(finding: Finding) -> set[int]:
    return {finding.line, finding.worst_line, *finding.lines}


def outcome(base: Base, run: Run, finding: Finding) -> Applied | None:
    data = applied(base.data, finding, run.checked.texts)
    if data is None:
        return None
    after = judged(data, base.name, base.job, base.shop, base.files).checked.findings
    before = run.checked.findings
    mine = places(finding)
    gone = not any(one.rule == finding.rule and places(one) & mine for one in after)

    def new(one: Finding) -> bool:
        return not any(old.rule == one.rule and old.grade <= "z" and places(old) & places(one) for old in before)

    came = [one for one in after if one.accepted is None and one.rule != finding.rule and new(one)]
    told: dict[bool, list[str]] = {True: [], False: []}
    for one in came:
        told[one.grade in STOPS].append(f"{one.rule}@{one.line}")
    return Applied(
        base.name, finding.rule, finding.grade, finding.line, finding.change.text, gone, tuple(told[True]), tuple(told[False])
    )


def _of(base: Base, only: tuple[str, ...]) -> list[Applied]:
    if base.run.failed:
        return []
    made = []
    for finding in base.findings:
        if finding.accepted is None and finding.change.set and (not only or finding.rule in only):
            one = outcome(base, base.run, finding)
            if one is not None:
                made.append(one)
    return made


def _task(job: tuple[str, tuple[str, ...], int]) -> list[Applied]:
    path, only, seed = job
    base = declared(Path(path)) if Path(path).is_file() else next(b for b in bases() if b.name == path)
    if base is None:
        return []
    return [one for each in (base, *others(base, seed)) for one in _of(each, only)]


def table(folder: Path | None, only: tuple[str, ...] = (), seed: int = 0, every: int = 1, processes: int = 2) -> int:
    """Prints, by rule, what became of each piece of advice; 1 where under 98 % hold."""
    if folder is None:
        paths = [base.name for base in bases()]
    else:
        paths = [str(p) for p in sorted(folder.iterdir()) if p.suffix in (".nc", ".gcode", ".ngc", ".tap")][seed % every :: every]
    with multiprocessing.get_context("fork").Pool(processes) as pool:
        done = pool.map(_task, [(p, only, seed) for p in paths], chunksize=1)
    made = [one for some in done for one in some]
    print(f"{'rule':<26}{'advised':>8}{'gone':>6}{'brought':>8}{'mild':>6}{'holds':>8}")
    for rule in sorted({one.rule for one in made}):
        mine = [one for one in made if one.rule == rule]
        good = sum(one.gone and not one.grave for one in mine)
        print(f"{rule:<26}{len(mine):>8}{sum(one.gone for one in mine):>6}{sum(bool(one.grave) for one in mine):>8}"
              f"{sum(bool(one.mild) for one in mine):>6}{100 * good / len(mine):>7.0f} %")  # fmt: skip
    good = sum(one.gone and not one.grave for one in made)
    pure = sum(one.gone and not one.grave and not one.mild for one in made)
    n = max(1, len(made))
    print(f"{len(made)} pieces of advice in {len({one.base for one in made})} programs: {good} hold ({100 * good / n:.1f} %), "
          f"{pure} bring nothing even to consider ({100 * pure / n:.1f} %)")  # fmt: skip
    for one in made:
        if not one.gone or one.grave or one.mild:
            print(f"  {one.base}:{one.line} {one.rule} ({one.grade}): {'' if one.gone else 'STAYS '}{one.grave} {one.mild}: {one.says[:200]}")
    return int(good < 0.98 * len(made))
