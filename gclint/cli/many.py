"""What `check` does where more than one program is named: its options, and the results one by one."""

from __future__ import annotations

import os
import sys
import time
from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from functools import wraps
from typing import TYPE_CHECKING, Any

import click
from msgspec import Struct

from gclint.problem import Problem, one_line
from gclint.screen import QUIET

if TYPE_CHECKING:
    from gclint.folder.cache import Cache
    from gclint.folder.find import Found
    from gclint.folder.outcome import Maker, Outcome, Source
    from gclint.folder.part import Part
    from gclint.folder.workers import Crew
    from gclint.run import Run
    from gclint.setup.declare import Options

FEW = 4  # programs whose sheets are all written; of more the report is a list
SHOWN_AFTER = 1.0  # s of a run before its progress is shown on a terminal
TOLD_EVERY = 30.0  # s between two lines of progress where there is no terminal
SURE_SHARE = 0.05  # of the work that is done before it is said how long the rest takes
PROBLEMS_NAMED = 6  # programs of one problem


class Many(Struct, frozen=True):
    """The options of runs over many programs."""

    sheets: bool = False
    passed: bool = False
    cache: str | None = None
    since: str | None = None
    tracked: bool = False
    workers: int | None = None
    seconds: float | None = None
    part: Part | None = None
    engine: str | None = None


def _part(context: click.Context, option: click.Parameter, given: str | None) -> Part | None:
    if given is None:
        return None
    from gclint.folder.part import part_from

    return part_from(given)


def folder_options(command: Callable[..., Any]) -> Callable[..., Any]:
    """Adds the options and hands them over as one argument, `many`."""

    @wraps(command)
    def packed(
        *, sheets: bool, passed: bool, cache: str | None, differs_from: str | None, tracked: bool,
        workers: int | None, give_up_after: float | None, part: Part | None, engine: str | None, **rest: Any,
    ) -> Any:
        if engine is not None and workers is not None:
            raise click.UsageError("--workers counts processes of this machine; leave it away with --engine")
        many = Many(sheets, passed, cache, differs_from, tracked, workers, give_up_after, part, engine)
        return command(many=many, **rest)

    for option in reversed(
        (
            click.option(
                "--sheets", is_flag=True, help=f"Whole sheets, however many programs (else a list from {FEW + 1} on)."
            ),
            click.option("--passed", is_flag=True, help="Name every file of a folder that is passed over."),
            click.option(
                "--differs-from", metavar="REV",
                help="Only what differs from this revision of a git folder: programs, and those whose declarations do.",
            ),
            click.option(
                "--tracked", is_flag=True, help="With --differs-from: leave out files that git does not keep yet."
            ),
            click.option(
                "--cache", metavar="DIR",
                help='Where results of many programs are kept, a folder or an address; "none": nowhere. Usual: '
                "GCLINT_CACHE, else the system's folder for caches.",
            ),
            click.option(
                "--workers", type=click.IntRange(1, 256), metavar="N", help="Processes at work (usual: one a core)."
            ),
            click.option(
                "--give-up-after", type=click.FloatRange(0.1), metavar="SECONDS",
                help="Processor time that one of many programs may take (usual: 300, and 20 more a megabyte).",
            ),
            click.option(
                "--part", metavar="I/N", callback=_part,
                help="Share I of N: each program is in exactly one, by its name below the folder that is named.",
            ),
            click.option(
                "--engine", metavar="dask://HOST:PORT",
                help="The cluster whose workers check the programs, instead of processes of this machine.",
            ),
        )
    ):
        packed = option(packed)
    return packed


def find_programs(named: tuple[str, ...], options: Options, many: Many) -> Found:
    """The programs behind the arguments; of them those that a change concerns, or that are in the part."""
    from gclint.folder.find import find

    found = find(named)
    if many.since is not None:
        from gclint.folder.since import changed

        found.sources = changed(named, found.sources, many.since, options, many.tracked)
    elif many.tracked:
        raise Problem("--tracked goes with --differs-from")
    if many.part is not None:
        from gclint.folder.part import keep

        whole = keep(many.part, named, found)
        if not found.sources and not QUIET.get():
            of = f"the {whole:,} programs" if whole > 1 else "the programs"
            print(f"gclint: {many.part} holds none of {of}", file=sys.stderr)
    return found


def alone(found: Found, options: Options, makers: tuple[Maker, ...]) -> Iterator[tuple[Source, Run | Problem]]:
    """The only program, in this process. A bad declaration ends the run."""
    from gclint.check import NoProgram, Unreadable, run
    from gclint.cli.progress import Progress
    from gclint.folder.source import read_bytes
    from gclint.tables.finding import Left

    [source] = found.sources
    with Progress() as progress:
        try:
            data = read_bytes(source.name)
            progress.begin(source.shown, len(data))
            done = run(data, source.shown, options, source.path, progress)
        except NoProgram as problem:
            if source.named:
                yield source, problem
            else:
                found.passed.append(Left(source.shown, problem.says))
            return
        except Unreadable as problem:
            yield source, problem
            return
        if makers:
            progress("writing its report")
    yield source, replace(done, made=tuple(maker.made(source, done, "") for maker in makers))


def by_workers(
    found: Found, options: Options, many: Many, makers: tuple[Maker, ...]
) -> Iterator[tuple[Source, Run | Problem]]:
    """Each program by its kept result or by a worker, without tables, in the order of the list."""
    from gclint.folder.cache import cache_of
    from gclint.folder.outcome import Task
    from gclint.folder.run import outcomes
    from gclint.setup.declare import refuse_wrong
    from gclint.tables.finding import Left

    refuse_wrong(options)
    cache = cache_of(many.cache, tell)
    tasks = [Task(source, options) for source in found.sources]
    with ManyProgress(len(tasks)) as progress:
        made = outcomes(tasks, cache, many.workers, many.seconds, progress, makers, crew_of(many, cache, makers))
        for source, outcome in zip(found.sources, made):
            if outcome.kind == "skipped":
                found.passed.append(Left(source.shown, outcome.says))
            else:
                yield source, _given(source, outcome)
    if cache is not None:
        cache.prune()


def crew_of(many: Many, cache: Cache | None, makers: tuple[Maker, ...] = ()) -> Crew | None:
    """The cluster that is named, said aloud; None where this machine's own processes do the work. Raises Problem."""
    if many.engine is None:
        return None
    from functools import partial

    from gclint.folder.cluster import Cluster, encrypted
    from gclint.folder.run import keep

    if any(getattr(maker, "folder", None) for maker in makers):
        raise Problem("pages of many programs are written where they are checked; leave --engine away for them")
    cluster = Cluster(many.engine, makers, partial(keep, cache), tell)
    how = "encrypted" if encrypted() else "not encrypted"
    tell(f"programs and their declarations go to {many.engine}, {how}; {len(cluster.fit)} workers check them")
    return cluster


def tell(says: str) -> None:
    if not QUIET.get():
        print(f"gclint: {says}", file=sys.stderr, flush=True)


def _given(source: Source, outcome: Outcome) -> Run | Problem:
    if outcome.stopped_by is not None:
        raise Problem(*outcome.stopped_by)
    if outcome.kind == "checked":
        return outcome.run()
    return Problem(outcome.says, source.shown, outcome.line, outcome.column)


def in_sentences(problems: Sequence[Problem]) -> list[str]:
    """What is wrong with programs and folders, as sentences; what is wrong with many alike is said once."""
    alike: dict[str, list[Problem]] = {}
    for problem in problems:
        alike.setdefault(str(Problem(problem.says, None, problem.line, problem.column)), []).append(problem)
    sentences = []
    for says, of in alike.items():
        if len(of) == 1:
            sentences.append(str(of[0]))
            continue
        named = ", ".join(problem.path or "" for problem in of[:PROBLEMS_NAMED])
        more = f" and {len(of) - PROBLEMS_NAMED:,} more" if len(of) > PROBLEMS_NAMED else ""
        what = "folders" if says.startswith("this folder") else "programs"
        sentences.append(f"{says} (so {len(of):,} {what} are not checked: {named}{more})")
    return sentences


class ManyProgress:
    """How far a run over many programs has come, on stderr: a line that is renewed, or one now and then."""

    def __init__(self, of: int) -> None:
        self.of = of
        self.begun = self.told = time.monotonic()
        self.live = sys.stderr.isatty()
        self.width = 0

    def __enter__(self) -> ManyProgress:
        return self

    def __exit__(self, *_: object) -> None:
        if self.width:
            print(f"\r{' ' * self.width}\r", end="", file=sys.stderr, flush=True)

    def __call__(self, done: int, share: float, name: str) -> None:
        """`share` is that of the work which is done; `name` is being worked on."""
        now = time.monotonic()
        ran = now - self.begun
        if QUIET.get() or ran < SHOWN_AFTER or now - self.told < (0.1 if self.live else TOLD_EVERY) or done == self.of:
            return
        self.told = now
        left = f", about {_left(ran / share * (1 - share))} to go" if share > SURE_SHARE else ""
        said = f"{done:,} of {self.of:,} programs{left}"
        if not self.live:
            print(f"gclint: {said}", file=sys.stderr, flush=True)
            return
        said = one_line(f"{said}; {name}")[: _columns() - 1]
        print(f"\r{said:<{self.width}}", end="", file=sys.stderr, flush=True)
        self.width = len(said)


def _columns() -> int:
    """Of the terminal; a longer line could not be renewed."""
    try:
        return os.get_terminal_size(sys.stderr.fileno()).columns or 80
    except (OSError, ValueError):
        return 80


def _left(seconds: float) -> str:
    return f"{seconds:.0f} s" if seconds < 90 else f"{seconds / 60:.0f} min"
