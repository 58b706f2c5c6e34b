"""`--engine dask://HOST:PORT`: the programs are worked off by the workers of a cluster, with all that they ask for.

A worker needs gclint and nothing of the files: each task is a bundle (`gclint/folder/bundle.py`). The worker checks it
in a process of its own, as a run on one machine does, so that a program that crashes or never ends costs no worker.
Workers that have another gclint are given nothing: the answer is that of this one, or none.
"""

from __future__ import annotations

import logging
import multiprocessing
import pickle
import queue
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import suppress
from functools import cache
from typing import Any

import msgspec

from gclint.folder.bundle import Bundle, Packer, Reply, reply_to
from gclint.folder.cache import installation
from gclint.folder.outcome import Maker, Outcome, Task
from gclint.folder.run import Tried, answer, encoded
from gclint.folder.workers import LEFT, Job, Workers
from gclint.problem import Problem

SCHEME = "dask://"
CONNECT = 15.0  # s for the scheduler to answer
TOGETHER = 2  # tasks a worker has in hand, so that it need not wait for the next
AGAIN = 3  # times a task may lose its worker, or come to one with another gclint
EMPTY = 60.0  # s without any worker after which a run gives up what is left
MOST_ROUNDS = 1000  # of questions that one check may ask one by one
OTHER = b"other"  # the answer of a worker that has another gclint


# -- on a worker ------------------------------------------------------------------------------------------------------


@cache
def build() -> str:
    return installation()


_one = threading.Lock()
_own: list[Workers] = []


def work(given: bytes, wanted: str) -> bytes:
    """Check one program in a process beside this worker; a pickled Reply, an encoded Outcome, or OTHER."""
    if build() != wanted:
        return OTHER
    with _one:  # one program at a time, however many threads the worker has
        if not _own:
            _own.append(Workers(1, reply_to, fresh=True))
        crew = _own[0]
        with _children_allowed():
            crew.give(pickle.loads(given))
            while True:
                for _, made in crew.answers(1.0):
                    return made


class _children_allowed:
    """A worker's process may be marked as one that has no children; ours end with it, as they hear that it has gone."""

    def __enter__(self) -> None:
        self.settings: dict[str, Any] = multiprocessing.current_process()._config  # type: ignore[attr-defined]
        self.before = self.settings.pop("daemon", None)

    def __exit__(self, *_: object) -> None:
        if self.before is not None:
            self.settings["daemon"] = self.before


# -- where the run was started ----------------------------------------------------------------------------------------


class Cluster:
    """A crew of the workers of one cluster, those that have this very gclint."""

    def __init__(
        self, address: str, makers: tuple[Maker, ...], keep: Callable[[Task, Tried], object],
        tell: Callable[[str], None],
    ) -> None:  # fmt: skip
        """`keep` is given what each check came to; `tell` says a sentence to the person. Raises Problem."""
        self.address, self.keep, self.tell = address, keep, tell
        self.packer, self.makers = Packer(makers), makers
        self.build = installation()
        self.given: dict[int, _Given] = {}
        self.done: queue.SimpleQueue[tuple[int, Any]] = queue.SimpleQueue()
        self.client = _client(address)
        self.seen = time.monotonic()
        try:
            self.fit = self._fitting()
        except BaseException:
            self.client.close(timeout=2)
            raise
        self.machines = max(1, len(self.fit))
        self.count = TOGETHER * self.machines

    def __enter__(self) -> Cluster:
        return self

    def __exit__(self, *_: object) -> None:
        with suppress(Exception):
            self.client.cancel([each.future for each in self.given.values()], force=True)
        with suppress(Exception):
            self.client.close(timeout=5)

    @property
    def jobs(self) -> list[Job]:
        return [each.job for each in self.given.values()]

    @property
    def free(self) -> bool:
        return len(self.given) < self.count

    def give(self, job: Job) -> None:
        try:
            bundle = self.packer.pack(job.task)
        except Exception:  # the program cannot be read, or its folder: told as it is told here
            self.given[job.number] = _Given(job, None, time.monotonic())
            self.done.put((job.number, answer(None, self.makers, job.task)))
            return
        self.given[job.number] = _Given(job, bundle, time.monotonic())
        self._submit(job.number)

    def answers(self, patience: float) -> Iterator[tuple[int, bytes]]:
        until = time.monotonic() + patience
        while True:
            try:
                number, made = self.done.get(timeout=max(0.0, until - time.monotonic()))
            except queue.Empty:
                break
            said = self._taken(number, made) if number in self.given else None
            if said is not None:
                del self.given[number]
                yield number, said
                until = time.monotonic()
        yield from self._given_up()

    def _submit(self, number: int) -> None:
        each = self.given[number]
        job = Job(number, each.bundle, each.job.seconds, each.job.size)  # type: ignore[arg-type]
        each.future = self.client.submit(
            work, pickle.dumps(job), self.build, pure=False, retries=0, workers=self.fit or None,
            allow_other_workers=True, key=f"gclint-{number}-{each.rounds}-{id(self)}",
        )  # fmt: skip
        each.rounds += 1
        each.future.add_done_callback(lambda future: self.done.put((number, future)))

    def _taken(self, number: int, made: Any) -> bytes | None:
        """The encoded outcome; None where the task has to go out again."""
        each = self.given[number]
        if isinstance(made, bytes):
            return made
        if made is not each.future:
            return None
        try:
            said = made.result(timeout=30)
        except BaseException as fault:  # of the cluster, whatever its class: a worker's own faults are answers
            if isinstance(fault, KeyboardInterrupt):
                raise
            return self._lost(each, f"{type(fault).__name__}: {fault}")
        if said == OTHER:
            return self._lost(each, "the worker has another gclint")
        if not said.startswith(b"\x80"):  # what the process beside the worker came to
            return bytes(said)
        reply: Reply = pickle.loads(said)
        if reply.asks is not None:
            return self._more(each, reply.asks)
        assert reply.tried is not None
        self.packer.learn(each.job.task, reply.tried.heard)
        self.keep(each.job.task, reply.tried)
        return encoded(reply.tried.outcome)

    def _more(self, each: _Given, question: tuple[str, ...]) -> bytes | None:
        assert each.bundle is not None
        if each.rounds > MOST_ROUNDS or question in each.bundle.answers:
            return answer(None, self.makers, each.job.task)
        try:
            each.bundle = self.packer.more(each.bundle, question)
        except Exception:
            return answer(None, self.makers, each.job.task)
        self._submit(each.job.number)
        return None

    def _lost(self, each: _Given, because: str) -> bytes | None:
        each.lost += 1
        if each.lost >= AGAIN or self.client.status != "running":
            says = f"not checked: the cluster lost it {each.lost} times ({because})"
            return encoded(Outcome("problem", says=says, lasting=False))
        with suppress(Problem):
            self.fit = self._fitting()
        self._submit(each.job.number)
        return None

    def _given_up(self) -> Iterator[tuple[int, bytes]]:
        """Answers for what nobody works on any more."""
        now = time.monotonic()
        if not self.given or now - self.seen < 1.0:
            return
        running = self.client.status == "running"
        if running and self.client.nthreads():
            self.seen = now
        empty = now - self.seen > EMPTY or self.client.status in ("closed", "closing")
        for number, each in list(self.given.items()):
            if empty or now - each.began > each.job.seconds * LEFT + EMPTY:
                with suppress(Exception):
                    each.future.cancel(force=True)
                del self.given[number]
                says = "the cluster has no worker left" if empty else f"gave up after {now - each.began:.0f} s"
                yield number, encoded(Outcome("problem", says=f"not checked: {says}", lasting=False))

    def _fitting(self) -> list[str]:
        """The workers that have this very gclint; the others are told of. Raises Problem where there are none."""
        there = self.client.run(build, on_error="return")
        fit = sorted(name for name, digest in there.items() if digest == self.build)
        if not fit:
            says = "its workers have another gclint, or none" if there else "no worker is there"
            raise Problem(f"{says}; install {_version()} on each, with the same Python", self.address)
        if len(fit) < len(there):
            self.tell(f"{len(there) - len(fit)} of {len(there)} workers have another gclint, and are given nothing")
        return fit


class _Given(msgspec.Struct):
    job: Job
    bundle: Bundle | None
    began: float
    future: Any = None
    rounds: int = 0
    lost: int = 0


def _version() -> str:
    from gclint import __version__

    return f"gclint {__version__}"


def _client(address: str) -> Any:
    """A client of the scheduler. Raises Problem."""
    try:
        import dask
        import distributed
    except ImportError:
        raise Problem("a cluster needs more:  pip install 'gclint[cluster]'", "--engine") from None
    host, colon, port = address.removeprefix(SCHEME).rstrip("/").rpartition(":")
    if not address.startswith(SCHEME) or not host or not colon or not port.isdecimal():
        raise Problem(f'"{address[:80]}" is no engine; write dask://HOST:PORT', "--engine")
    secure = bool(dask.config.get("distributed.comm.tls.ca-file", None))
    logging.getLogger("distributed").setLevel(logging.CRITICAL)  # what matters comes as an answer
    connect: Any = distributed.Client  # which has no types
    try:
        return connect(
            f"{'tls' if secure else 'tcp'}://{host}:{port}", timeout=CONNECT, set_as_default=False, name="gclint"
        )
    except Exception as fault:
        says = str(fault) or type(fault).__name__
        raise Problem(f"the scheduler cannot be reached: {says}", address) from None


def encrypted() -> bool:
    """Whether what goes to the cluster is encrypted, as its library is set."""
    import dask

    return bool(dask.config.get("distributed.comm.tls.ca-file", None))
