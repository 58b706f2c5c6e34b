"""Checks many programs on every core, in their order: kept results first, then workers."""

from __future__ import annotations

import hashlib
import os
import stat
from collections.abc import Callable, Iterator, Sequence
from functools import cache, partial
from pathlib import Path
from typing import NamedTuple

import msgspec
from msgspec.structs import replace

from gclint import disk
from gclint.check import NoProgram, run
from gclint.disk import Question
from gclint.folder.cache import Cache
from gclint.folder.chains import Chains, Place
from gclint.folder.outcome import Maker, Outcome, Source, Task, outcome_of, outcome_of_problem
from gclint.folder.source import STANDARD_INPUT, read_bytes
from gclint.folder.workers import Crew, Job, Workers
from gclint.problem import Problem
from gclint.run import Run
from gclint.stock_store import StockStore

AHEAD = 256  # programs that may be answered before the one whose turn it is
WAITING = 64  # programs among which the largest is taken first, so that no core waits at the end
PATIENCE = 0.2  # s between two looks at the clock
SECONDS = 300.0  # that any program may take
SECONDS_A_MEGABYTE = 20.0  # more, for its size
LEAST_WORK = 20_000  # bytes that a program counts for at least where progress is told
LOOKS = 16  # results that a store elsewhere is asked for at once
TOGETHER = 32 << 20  # bytes of programs checked at the same time, unless one alone is larger: it bounds memory

OnProgress = Callable[[int, float, str], None]  # how many are done, which share of the work, the largest in work


def outcomes(
    tasks: Sequence[Task], cache: Cache | None, cores: int | None = None, seconds: float | None = None,
    progress: OnProgress = lambda done, share, name: None, makers: tuple[Maker, ...] = (), crew: Crew | None = None,
) -> Iterator[Outcome]:
    """The outcome of each task, in their order and the same whatever the number of processes.

    Never raises for what one program does: an outcome says it. `seconds` is how long a processor may work for one. A
    kept outcome is used where all that `makers` make of it stands too. `crew` works the programs off, else processes
    of this machine.
    """
    far = cache is not None and cache.kept.far
    crew = crew or Workers(cores or usual_cores(), partial(answer, cache, makers), fresh=far)
    look = _looks(tasks, cache, makers) if far else (_look(task, cache, makers) for task in tasks)
    ahead, waited = max(AHEAD, 8 * crew.count), max(WAITING, 2 * crew.count)
    waiting: list[tuple[int, int]] = []  # (size, number)
    ready: dict[int, Outcome] = {}
    looked = given = 0
    sizes = [_work(task) for task in tasks]
    work, worked = sum(sizes), 0  # of what is not kept
    chains = Chains()
    places: dict[int, Place] = {}
    with crew as workers:
        while given < len(tasks):
            while looked < len(tasks) and looked - given < ahead and len(waiting) < waited:
                size, outcome = next(look)
                if outcome is None:
                    waiting.append((size, looked))
                    places[looked] = chains.of(tasks[looked])
                else:
                    ready[looked] = outcome
                    work -= sizes[looked]
                looked += 1
                if workers.free and waiting:
                    break
            while waiting and workers.free:
                chosen = _next(waiting, workers.jobs, places, TOGETHER * crew.machines)
                if chosen is None:
                    break
                size, number = waiting.pop(chosen)
                place = places.pop(number)
                patience = seconds or patience_for(size + place.before)
                workers.give(Job(number, tasks[number], patience, size, place.chain))
            while given in ready:
                given += 1
                yield ready.pop(given - 1)
            more = looked < len(tasks) and looked - given < ahead and len(waiting) < waited
            for number, data in workers.answers(0.0 if more else PATIENCE):
                ready[number] = msgspec.json.decode(data, type=Outcome)
                worked += sizes[number]
            largest = max(workers.jobs, key=lambda job: job.size, default=None)
            progress(given + len(ready), worked / work if work else 1.0, largest.task.source.shown if largest else "")


def _work(task: Task) -> int:
    """What a program counts for in the progress, roughly as its check takes time."""
    try:
        return max(LEAST_WORK, Path(task.source.name).stat().st_size)
    except (OSError, ValueError):
        return LEAST_WORK


def usual_cores() -> int:
    try:
        return max(1, len(os.sched_getaffinity(0)))
    except AttributeError:  # not every system has it
        return os.cpu_count() or 1


def patience_for(size: int) -> float:
    """How long a program of so many bytes may take, s."""
    return SECONDS + SECONDS_A_MEGABYTE * size / 1e6


def _next(
    waiting: list[tuple[int, int]], jobs: list[Job], places: dict[int, Place], together: int = TOGETHER
) -> int | None:
    """Place in `waiting` of the largest program that may be checked beside those in work; None: wait.

    Of programs that cut one blank in turn the first, and only while none of them is in work: it leaves the stock for
    the next.
    """
    room = together - sum(job.size for job in jobs) if jobs else None
    busy = {job.chain for job in jobs if job.chain}
    first: dict[str, int] = {}
    for _, number in waiting:
        place = places[number]
        if place.chain:
            first[place.chain] = min(place.at, first.get(place.chain, place.at))
    fitting = [
        n for n, (size, number) in enumerate(waiting)
        if (room is None or size <= room) and places[number].chain not in busy
        and places[number].at == first.get(places[number].chain, 0)
    ]  # fmt: skip
    return max(fitting, key=lambda n: waiting[n][0]) if fitting else None


def _looks(
    tasks: Sequence[Task], cache: Cache | None, makers: tuple[Maker, ...]
) -> Iterator[tuple[int, Outcome | None]]:
    """As `_look`, for each task in turn, several ahead: each waits for answers over a network."""
    from collections import deque
    from concurrent.futures import Future, ThreadPoolExecutor

    with ThreadPoolExecutor(LOOKS) as threads:
        asked: deque[Future[tuple[int, Outcome | None]]] = deque()
        for task in tasks:
            asked.append(threads.submit(_look, task, cache, makers))
            if len(asked) >= 2 * LOOKS:
                yield asked.popleft().result()
        while asked:
            yield asked.popleft().result()


def _look(task: Task, cache: Cache | None, makers: tuple[Maker, ...]) -> tuple[int, Outcome | None]:
    """(size of the program, its outcome where it is kept and all that is made of it stands)."""
    if task.source.name == STANDARD_INPUT:  # only this process has it
        return 0, msgspec.json.decode(answer(None, makers, task), type=Outcome)
    try:
        if not stat.S_ISREG(Path(task.source.name).stat().st_mode):
            return 0, None
        with Path(task.source.name).open("rb", buffering=0) as file:
            size = os.fstat(file.fileno()).st_size
            if cache is None or not size:
                return size, None
            content = hashlib.file_digest(file, "sha256").hexdigest()
    except (OSError, ValueError):  # the worker says what is wrong
        return 0, None
    outcome = cache.look(task, content)
    if outcome is not None and outcome.checked is not None and makers:
        state = cache.answered(task, content)
        made = [text for maker in makers if (text := maker.stands(task.source, state)) is not None]
        outcome = replace(outcome, made=tuple(made)) if len(made) == len(makers) else None
    return size, outcome


class Tried(NamedTuple):
    """What one check came to; `run` has the tables, where there is one. `content` None: it could not be read."""

    outcome: Outcome
    run: Run | None
    content: str | None
    heard: dict[Question, str]


def tried(task: Task, store: StockStore | None = None, data: bytes | None = None) -> Tried:
    """Check one program, or `data` that was read from it. Raises nothing: what goes wrong is the outcome."""
    content: str | None = None
    done: Run | None = None
    with disk.listening() as heard:
        try:
            data = read_bytes(task.source.name) if data is None else data
            content = hashlib.sha256(data).hexdigest()
            done = run(data, task.source.shown, task.options, task.source.path, store=store)
            outcome = outcome_of(done, tuple(sorted(heard)))
        except NoProgram as problem:
            outcome = outcome_of_problem(problem, task.source, tuple(sorted(heard)))
            if not task.source.named:
                outcome = Outcome("skipped", says=problem.says, asked=tuple(sorted(heard)))
        except Problem as problem:
            outcome = outcome_of_problem(problem, task.source, tuple(sorted(heard)))
        except MemoryError:
            outcome = Outcome("problem", says="there is not enough memory for this", lasting=False)
        except Exception as fault:
            says = f"gclint itself failed: {type(fault).__name__}: {fault}; please report this"
            outcome = Outcome("problem", says=says, lasting=False)
    return Tried(outcome, done, content, heard)


def encoded(outcome: Outcome) -> bytes:
    try:
        return msgspec.json.encode(outcome)
    except UnicodeEncodeError:
        says = "the name of a folder or file on its way is not UTF-8 text, so that no report can tell it; rename it"
        return msgspec.json.encode(Outcome("problem", says=says, lasting=False))


@cache
def _shelf(cache: Cache | None) -> StockStore:
    """Of this process: a worker is given the programs of one job in their order."""
    return StockStore() if cache is None else cache.store()


def answer(cache: Cache | None, makers: tuple[Maker, ...], task: Task) -> bytes:
    """Check one program, keep what came of it, make what reports make of it: an encoded Outcome. Raises nothing."""
    made = tried(task, _shelf(cache))
    state = keep(cache, task, made)
    return encoded(finished(made, task.source, state, makers))


def keep(cache: Cache | None, task: Task, made: Tried) -> str:
    """Keep what a check came to, where that may be; the name of this state, or ""."""
    if cache is None or made.content is None or not made.outcome.lasting:
        return ""
    bare = replace(made.outcome, made=(), stopped_by=None)
    return cache.keep(task, made.content, made.heard, encoded(bare))


def finished(made: Tried, source: Source, state: str, makers: tuple[Maker, ...]) -> Outcome:
    """The outcome with what reports make of it."""
    return _with_made(made.outcome, made.run, source, state, makers) if makers and made.run else made.outcome


def _with_made(outcome: Outcome, run: Run, source: Source, state: str, makers: tuple[Maker, ...]) -> Outcome:
    try:
        made = [maker.made(source, run, state).encode("utf-8", "replace").decode("utf-8") for maker in makers]
        return replace(outcome, made=tuple(made))
    except Problem as problem:
        return replace(outcome, stopped_by=(problem.says, problem.path or ""))
    except MemoryError:
        return Outcome("problem", says="there is not enough memory for its report", lasting=False)
    except Exception as fault:
        says = f"gclint itself failed on the report: {type(fault).__name__}: {fault}; please report this"
        return Outcome("problem", says=says, asked=outcome.asked, lasting=False)
