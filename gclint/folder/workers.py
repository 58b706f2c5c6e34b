"""Worker processes: each checks one program at a time, and none that dies or hangs ends the run.

A worker answers every task, also with what went wrong; one that ends or stays silent past its time is replaced, and its
task gets the answer that says so.
"""

from __future__ import annotations

import gc
import os
import signal
import sys
import time
import warnings
from collections.abc import Callable, Iterator
from contextlib import suppress
from multiprocessing import connection, get_context
from multiprocessing.connection import Connection
from multiprocessing.process import BaseProcess
from pathlib import Path
from typing import Any, Protocol, cast

import msgspec

from gclint import memory
from gclint.folder.outcome import Outcome, Task

Handle = Callable[[Any], bytes]  # takes a Task and gives an encoded Outcome
FEW_COLLECTIONS = 50_000  # as the command line sets it
LARGE = 1 << 20  # bytes of a program after which a worker gives memory back; after a smaller one the next uses it
ASLEEP = 60.0  # s more than its time for which a worker may do nothing at all: a disk or a pipe that has died
UNTOLD = 10.0  # times its time that a worker may take by the clock, where the system does not tell what it has used
LEAST_USE = 0.005  # share of the time by the clock; a worker that got less of a processor sleeps, however busy the host
LEFT = 100.0  # times its time by the clock at which a worker ends itself, should nobody be there to end it
COUNTS = hasattr(signal, "setitimer")  # whether the system itself ends a process that has used up its time


class Job(msgspec.Struct, frozen=True):
    """`number` tells answers apart; `seconds` is how much time of a processor it may use, `size` its program's bytes.

    Jobs of one `chain` go to the worker that had the one before, where it is idle: it has what that one left.
    """

    number: int
    task: Task
    seconds: float
    size: int
    chain: str = ""


class Crew(Protocol):
    """Whoever works jobs off: `count` at a time, with the memory of so many `machines`. A context."""

    count: int
    machines: int

    def __enter__(self) -> Crew: ...
    def __exit__(self, *_: object) -> None: ...

    @property
    def jobs(self) -> list[Job]:
        """What is being worked on."""
        ...

    @property
    def free(self) -> bool: ...
    def give(self, job: Job) -> None:
        """Hand a job over; only while `free`."""
        ...

    def answers(self, patience: float) -> Iterator[tuple[int, bytes]]:
        """(number of a job, encoded Outcome) of what is done, waiting at most `patience` seconds for the first."""
        ...


class Worker:
    def __init__(self, handle: Handle, others: list[Worker], fresh: bool) -> None:
        context: Any = get_context("fork" if sys.platform == "linux" and not fresh else "spawn")
        self.pipe, far = context.Pipe()
        inherited = [worker.pipe for worker in others] + [self.pipe] if context.get_start_method() == "fork" else []
        self.process: BaseProcess = context.Process(target=_work, args=(far, handle, inherited), daemon=True)
        with warnings.catch_warnings():  # of threads that libraries keep: the child touches none of them
            warnings.simplefilter("ignore", DeprecationWarning)
            self.process.start()
        far.close()
        self.job: Job | None = None
        self.began = self.until = self.used = 0.0
        self.chain = ""

    def give(self, job: Job) -> None:
        self.job, self.chain = job, job.chain
        self.began = time.monotonic()
        self._look_again()
        with suppress(OSError):  # it has died: `answers` finds that out
            self.pipe.send(job)  # pickled: a name need not be text

    def _look_again(self) -> None:
        """Set when to look whether it still works."""
        assert self.job is not None
        used = used_by(self.process.pid)
        self.used = used or 0.0
        times = UNTOLD if used is None and COUNTS else 1.0
        self.until = time.monotonic() + self.job.seconds * times + ASLEEP * COUNTS

    def sleeps(self) -> bool:
        """Whether its time is up by the clock and it has done next to nothing since the last look."""
        if time.monotonic() < self.until or self.job is None:
            return False
        used = used_by(self.process.pid)
        if used is None or used - self.used < LEAST_USE * (self.job.seconds + ASLEEP):
            return True
        self._look_again()
        return False

    def end(self) -> None:
        self.process.kill()
        self.process.join()
        self.pipe.close()


class Workers:
    """`count` workers that call `handle`; a context, so that none is left behind.

    They are forks of this process where the system has them (20 ms), or `fresh` interpreters (300 ms), which a process
    that has threads needs.
    """

    machines = 1

    def __init__(self, count: int, handle: Handle, fresh: bool = False) -> None:
        self.count, self.handle, self.fresh = count, handle, fresh
        self.workers: list[Worker] = []

    def __enter__(self) -> Workers:
        return self

    def __exit__(self, *_: object) -> None:
        for worker in self.workers:
            worker.end()
        self.workers.clear()

    @property
    def jobs(self) -> list[Job]:
        """What is being worked on."""
        return [worker.job for worker in self.workers if worker.job is not None]

    @property
    def free(self) -> bool:
        return len(self.jobs) < self.count

    def give(self, job: Job) -> None:
        """Hand a job to an idle worker, a new one if need be; only while `free`."""
        free = [worker for worker in self.workers if worker.job is None]
        idle = next((worker for worker in free if job.chain and worker.chain == job.chain), free[0] if free else None)
        if idle is None:
            idle = Worker(self.handle, self.workers, self.fresh)
            self.workers.append(idle)
        idle.give(job)

    def answers(self, patience: float) -> Iterator[tuple[int, bytes]]:
        """What has been answered, waiting at most `patience` seconds for the first answer."""
        busy = {worker.pipe: worker for worker in self.workers if worker.job is not None}
        if not busy:
            return
        left = min(worker.until for worker in busy.values()) - time.monotonic()
        for pipe in connection.wait(list(busy), timeout=max(0.0, min(patience, left))):
            yield self._answer(busy.pop(cast(Connection, pipe)))  # which class a pipe is hangs on the system
        for worker in busy.values():
            if worker.sleeps():
                waited = time.monotonic() - worker.began
                yield self._lost(worker, f"gave up after {waited:.0f} s; gclint had not come to an end")

    def _answer(self, worker: Worker) -> tuple[int, bytes]:
        assert worker.job is not None
        try:
            answer = worker.pipe.recv_bytes()
        except (EOFError, OSError):
            worker.process.join(1.0)
            return self._lost(worker, _ended(worker.process.exitcode, worker.job.seconds))
        number, worker.job = worker.job.number, None
        return number, answer

    def _lost(self, worker: Worker, says: str) -> tuple[int, bytes]:
        assert worker.job is not None
        worker.end()
        self.workers.remove(worker)
        return worker.job.number, msgspec.json.encode(Outcome("problem", says=says, lasting=False))


def used_by(process: int | None) -> float | None:
    """The seconds that processors have worked for a process; None where the system does not tell."""
    try:
        told = Path(f"/proc/{process}/stat").read_bytes().rpartition(b")")[2].split()
        return (int(told[11]) + int(told[12])) / float(os.sysconf("SC_CLK_TCK"))
    except (OSError, ValueError, IndexError, AttributeError):
        return None


def _ended(code: int | None, seconds: float) -> str:
    if COUNTS and code == -signal.SIGPROF:
        return f"gave up after {seconds:.0f} s of a processor's time; gclint had not come to an end"
    if code is not None and code < 0:
        name = signal.Signals(-code).name if -code in {each.value for each in signal.Signals} else f"signal {-code}"
        memory = "; there may not be enough memory" if name == "SIGKILL" else ""
        return f"gclint itself failed: the process that checked it was ended by {name}{memory}"
    return f"gclint itself failed: the process that checked it ended without an answer ({code})"


def _work(pipe: Connection, handle: Handle, inherited: list[Connection]) -> None:
    """What a worker does until nobody is at the other end."""
    for other in inherited:
        other.close()
    gc.set_threshold(FEW_COLLECTIONS)
    memory.keep()
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # the parent hears it and ends the workers
    signal.signal(signal.SIGTERM, signal.SIG_DFL)
    if COUNTS:
        signal.signal(signal.SIGPROF, signal.SIG_DFL)
    while True:
        try:
            job: Job = pipe.recv()
        except (EOFError, OSError):
            os._exit(0)
        if COUNTS:  # what is used up on a busy host is the same, so that the host changes no answer
            signal.setitimer(signal.ITIMER_PROF, job.seconds)
            signal.setitimer(signal.ITIMER_REAL, job.seconds * LEFT + ASLEEP)
        answer = handle(job.task)
        try:
            pipe.send_bytes(answer)
        except OSError:
            os._exit(0)
        if job.size >= LARGE:
            memory.give_back()
