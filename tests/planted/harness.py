"""Plants faults in clean programs, judges them, and counts what was found and what was found without a reason."""

from __future__ import annotations

import random
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field
from itertools import islice

from gclint.judge.finding import Finding
from tests.planted.base import Base, Declared, judged
from tests.planted.sheet import Sheet

ANYWHERE = (1, 10**9)
EACH = 3  # plants of one planter in one program
STOPS = ("halt", "change")


@dataclass(frozen=True)
class Plant:
    """One planted program: its text and declarations (the clean one's unless given), and where the fault lies."""

    data: bytes
    where: tuple[int, int]  # first and last line of the planted text that a finding may stand on
    says: str
    job: Declared | None = None
    shop: Declared | None = None
    files: dict[str, str] | None = None


Make = Callable[[Base, random.Random], Iterator[Plant]]


@dataclass(frozen=True)
class Planter:
    """Plants what `rule` looks for; `explains` gives the other rules that find the same fault, with the reason."""

    rule: str
    name: str
    make: Make
    explains: dict[str, str]
    everything: str = ""  # why any other finding may follow from the fault; "" where none may


PLANTERS: list[Planter] = []


def plants(rule: str, explains: dict[str, str] | None = None, everything: str = "") -> Callable[[Make], Make]:
    def kept(make: Make) -> Make:
        PLANTERS.append(Planter(rule, make.__name__, make, explains or {}, everything))
        return make

    return kept


def at(sheet: Sheet, *lines: int, slack: int = 0) -> tuple[int, int]:
    """The span, in the planted text, of lines of the clean one."""
    now = [sheet.now(line) for line in lines]
    return min(now) - slack, max(now) + slack


def covers(finding: Finding, where: tuple[int, int]) -> bool:
    low, high = where
    return any(low <= line <= high for line in (*finding.lines, finding.line, finding.worst_line))


@dataclass
class Result:
    base: str
    planter: Planter
    plant: Plant
    found: bool
    grades: tuple[str, ...]
    extra: tuple[Finding, ...]  # of grade change or halt, that the fault does not explain


def try_one(base: Base, planter: Planter, plant: Plant) -> Result:
    run = judged(
        plant.data, base.name, plant.job or base.job, plant.shop or base.shop, base.files | (plant.files or {})
    )
    before = {finding.rule for finding in base.findings}
    named = [f for f in run.checked.findings if f.rule == planter.rule]
    hit = [f for f in named if covers(f, plant.where)]
    explained = {planter.rule, *planter.explains} if hit else set(planter.explains)
    extra = [
        f for f in run.checked.findings
        if f.grade in STOPS and not planter.everything
        and not (f.rule in explained and (f.rule != planter.rule or f in hit))
        and not (f.rule in before and f.rule != planter.rule)
    ]  # fmt: skip
    if any(f.rule == "internal-error" for f in run.checked.findings):
        extra += [f for f in run.checked.findings if f.rule == "internal-error" and f not in extra]
    return Result(base.name, planter, plant, bool(hit), tuple(f.grade for f in hit), tuple(extra))


def all_plants(bases: Iterable[Base], planters: Iterable[Planter], each: int = EACH) -> Iterator[Result]:
    chosen = list(planters)
    for base in bases:
        for planter in chosen:
            dice = random.Random(f"{planter.name} in {base.name}")
            for plant in islice(planter.make(base, dice), each):
                yield try_one(base, planter, plant)


@dataclass
class Tally:
    planted: int = 0
    found: int = 0
    programs: set[str] = field(default_factory=set)
    alarms: int = 0  # named in a planted program where nothing explains it


def tally(results: Iterable[Result]) -> dict[str, Tally]:
    """By rule."""
    count: dict[str, Tally] = {}
    for result in results:
        mine = count.setdefault(result.planter.rule, Tally())
        mine.planted += 1
        mine.found += result.found
        mine.programs.add(result.base)
        for finding in result.extra:
            count.setdefault(finding.rule, Tally()).alarms += 1
    return count
