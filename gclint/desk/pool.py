"""Worker processes with a bound on time: one that dies or hangs is replaced, and its work is answered with why."""

from __future__ import annotations

import os
import subprocess
import sys
import threading
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import Any

from msgspec import Struct

from gclint.desk.worker import receive, send

WORKERS = 2
MOST_WAITING = 40  # pieces of work that wait for a worker; more are refused


class Failed(Exception):
    """What a worker says is wrong, as it stands in the answer."""

    def __init__(self, says: str, kind: str = "", **more: Any) -> None:
        self.says, self.kind, self.more = says, kind, more
        super().__init__(says)


class _Worker(Struct):
    process: subprocess.Popen[bytes]

    def end(self) -> None:
        self.process.kill()
        with suppress(Exception):
            self.process.wait(5)
        for pipe in (self.process.stdin, self.process.stdout):
            if pipe is not None:
                with suppress(OSError):
                    pipe.close()


class Pool:
    """`do` may be called from any thread."""

    def __init__(self, root: Path, count: int = WORKERS) -> None:
        self.root, self.count = root, count
        self.free = threading.Semaphore(count)
        self.lock = threading.Lock()
        self.idle: list[_Worker] = []
        self.busy: list[_Worker] = []
        self.waiting, self.ended = 0, False

    def do(self, work: str, seconds: float, **given: Any) -> Any:
        """The result. Raises Failed."""
        with self._place(), self._worker() as worker:
            slow = threading.Event()

            def late() -> None:
                slow.set()
                worker.process.kill()

            timer = threading.Timer(seconds, late)
            timer.daemon = True
            timer.start()
            try:
                assert worker.process.stdin is not None
                assert worker.process.stdout is not None
                send(worker.process.stdin, {"work": work, "given": given})
                answer = receive(worker.process.stdout)
            except (OSError, ValueError):
                answer = None
            finally:
                timer.cancel()
            if answer is None:
                if slow.is_set():
                    raise Failed(f"gclint gave up after {seconds:.0f} s; it had not come to an end", "Late")
                code = worker.process.wait(5)
                raise Failed(f"the process that worked on it ended without an answer ({code})", "Lost")
        if "problem" in answer:
            kept = {key: answer.get(key) for key in ("path", "line", "column", "fields")}
            raise Failed(answer["problem"], answer["kind"], **kept)
        return answer["done"]

    def end(self) -> None:
        """Kill every worker; work that is under way is answered as lost."""
        with self.lock:
            self.ended = True
            workers = [*self.idle, *self.busy]
            self.idle.clear()
        for worker in workers:
            worker.end()

    @contextmanager
    def _place(self) -> Iterator[None]:
        with self.lock:
            if self.waiting >= MOST_WAITING:
                raise Failed("the desk is busy with earlier work; try again in a moment", "Busy")
            self.waiting += 1
        self.free.acquire()
        try:
            yield
        finally:
            self.free.release()
            with self.lock:
                self.waiting -= 1

    @contextmanager
    def _worker(self) -> Iterator[_Worker]:
        with self.lock:
            if self.ended:
                raise Failed("the desk is being closed", "Lost")
            while self.idle and self.idle[-1].process.poll() is not None:
                self.idle.pop().end()
            worker = self.idle.pop() if self.idle else self._new()
            self.busy.append(worker)
        good = False
        try:
            yield worker
            good = True
        finally:
            with self.lock:
                self.busy.remove(worker)
                good = good and not self.ended
                if good:
                    self.idle.append(worker)
            if not good:
                worker.end()

    def _new(self) -> _Worker:
        command = [sys.executable, "-m", "gclint.desk.worker", str(self.root)]
        more: dict[str, Any] = {"start_new_session": True} if os.name == "posix" else {}
        return _Worker(subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, bufsize=-1, **more))
