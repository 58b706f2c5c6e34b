"""Plants faults in clean programs, judges them, and counts what was found and what was found without a reason."""

from __future__ import annotations

import multiprocessing
import random
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field
from itertools import islice

from gclint.tables.finding import Finding
from tests.planted.base import Base, Declared, judged
from tests.planted.sheet import Sheet

ANYWHERE = (0, 10**9)  # for what stands on no line: a fault of the program as a whole
EACH = 3  # plants of one planter in one program
STOPS = ("halt", "change")
LISTED = 5000  # lines of a finding that are looked at
Span = tuple[int, int]


@dataclass(frozen=True)
class Plant:
    """One planted program: its text and declarations (the clean one's unless given), and where the fault lies."""

    data: bytes
    where: Span  # first and last line of the planted text that the finding may stand on
    says: str
    job: Declared | None = None
    shop: Declared | None = None
    files: dict[str, str] | None = None
    follows: Span | None = None  # lines that what the fault explains may stand on: `where` unless given


Make = Callable[[Base, random.Random], Iterator[Plant]]


@dataclass(frozen=True)
class Planter:
    """Plants what `rule` looks for; `explains` gives the other rules that find the same fault, with the reason."""

    rule: str
    name: str
    make: Make
    explains: dict[str, str]


PLANTERS: list[Planter] = []


def plants(rule: str, explains: dict[str, str] | None = None) -> Callable[[Make], Make]:
    def kept(make: Make) -> Make:
        PLANTERS.append(Planter(rule, make.__name__, make, explains or {}))
        return make

    return kept


def at(sheet: Sheet, *lines: int, slack: int = 0) -> Span:
    """The span, in the planted text, of lines of the clean one."""
    now = [sheet.now(line) for line in lines]
    return min(now) - slack, max(now) + slack


def onward(line: int) -> Span:
    """From a line to the program's end."""
    return line, 10**9


def stands_in(finding: Finding, span: Span) -> bool:
    """Whether the line a finding stands on, or its worst place, lies there."""
    return any(span[0] <= line <= span[1] for line in (finding.line, finding.worst_line))


def names(finding: Finding, span: Span) -> bool:
    """Whether a finding stands there, or lists a line there (one rule's hundredth place and on are told together)."""
    return stands_in(finding, span) or any(span[0] <= line <= span[1] for line in finding.lines[:LISTED])


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
    findings, already = run.checked.findings, {(f.rule, f.grade, f.happens) for f in base.findings}
    hit = [
        f for f in findings
        if f.rule == planter.rule and names(f, plant.where) and (f.rule, f.grade, f.happens) not in already
    ]  # fmt: skip
    extra = [
        f for f in findings
        if f.grade in STOPS and f not in hit
        and not (f.rule in planter.explains and stands_in(f, plant.follows or plant.where))
    ]  # fmt: skip
    return Result(base.name, planter, plant, bool(hit), tuple(f.grade for f in hit), tuple(extra))


def planted(base: Base, planter: Planter, seed: int) -> Iterator[Plant]:
    """All plants of one kind in one program, in the order this seed draws them."""
    return planter.make(base, random.Random(f"{planter.name} in {base.name}" + f", {seed}" * (seed > 0)))


def try_some(base: Base, planter: Planter, seed: int, each: int) -> list[Result]:
    return [try_one(base, planter, plant) for plant in islice(planted(base, planter, seed), each)]


def all_plants(
    bases: list[Base], planters: Iterable[Planter], each: int = EACH, seed: int = 0, processes: int = 2
) -> list[Result]:
    """Every planter in every program, `each` times at most; in the same order however many processes do it."""
    tasks = [(base, planter, seed, each) for base in bases for planter in planters]
    _tasks[:] = tasks
    for base in bases:
        assert base.run.tables is not None  # judged once, before the processes part
    with multiprocessing.get_context("fork").Pool(processes) as pool:
        done = pool.map(_task, range(len(tasks)), chunksize=4)
        pool.close()
        pool.join()
    return [result for results in done for result in results]


_tasks: list[tuple[Base, Planter, int, int]] = []  # what the processes share with the one they come from


def _task(number: int) -> list[Result]:
    return try_some(*_tasks[number])


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
