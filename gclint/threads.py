"""Two pieces of work that do not wait for each other, on two cores where that is worth a thread."""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeVar

One = TypeVar("One")
Other = TypeVar("Other")

LONG = 50_000  # moves; below it a thread, and loading what makes one, costs more than it gains


def run_both(one: Callable[[], One], other: Callable[[], Other], moves: int) -> tuple[One, Other]:
    """What the two return; `other` runs in a second thread for a program of LONG moves or more.

    The work must be of compiled loops over columns (those let a second thread run), and neither may change what the
    other reads.
    """
    if moves < LONG:
        return one(), other()
    from concurrent.futures import ThreadPoolExecutor
    from contextvars import copy_context

    with ThreadPoolExecutor(1) as thread:
        later = thread.submit(copy_context().run, other)  # what it asks of the disk belongs to this check
        return one(), later.result()
