"""When a file that is being written has settled: its size and its time stand still for a while."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

Sight = tuple[int, int, int] | None  # size, time, file number; None: it is not there


class Settling:
    """Files that have been touched, until each has stood still for `quiet` seconds."""

    def __init__(self, quiet: float) -> None:
        self.quiet = quiet
        self.waiting: dict[str, tuple[Sight, float]] = {}

    def touch(self, paths: Iterable[str], now: float) -> None:
        for path in paths:
            self.waiting[path] = (see(path), now)

    def settled(self, now: float) -> set[str]:
        """The files that have stood still, each told once; also those that have gone and stay away."""
        done = set()
        for path, (before, since) in list(self.waiting.items()):
            seen = see(path)
            if seen != before:
                self.waiting[path] = (seen, now)
            elif now - since >= self.quiet:
                done.add(path)
                del self.waiting[path]
        return done


def see(path: str) -> Sight:
    try:
        state = Path(path).stat()
    except (OSError, ValueError):
        return None
    return state.st_size, state.st_mtime_ns, state.st_ino
