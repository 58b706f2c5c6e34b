"""Finds what has changed in a folder by looking at it again and again, where nobody tells.

watchfiles looks as well, but ends at a name that is no UTF-8 text and at links that lead in a circle.
"""

from __future__ import annotations

import os
import threading
import time
from collections.abc import Iterator
from pathlib import Path

Seen = dict[str, tuple[int, int, int]]  # size, time, file number by path
RESTS = 5.0  # times as long as a look took


def looked(home: Path, stop: threading.Event, every: float, all_new: bool = False) -> Iterator[set[str]]:
    """Paths that came, went or differ since the look before, every so many seconds, until `stop` is set.

    `all_new`: the first look tells every file, since changes may have been missed. A large folder is looked at less
    often, so that looking takes no more than a sixth of a core.
    """
    before, rest = {} if all_new else look(str(home)), 0.0
    while not stop.wait(max(every, rest)):
        begun = time.monotonic()
        now = look(str(home))
        rest = RESTS * (time.monotonic() - begun)
        yield {path for path in before.keys() | now.keys() if before.get(path) != now.get(path)}
        before = now


def look(folder: str) -> Seen:
    """All files below a folder, those of hidden folders apart; no link to a folder is followed."""
    seen: Seen = {}
    for home, folders, files in os.walk(folder):
        folders[:] = [name for name in folders if not name.startswith(".")]
        for name in files:
            path = f"{home}{os.sep}{name}"
            try:
                state = Path(path).stat()
            except OSError:  # it vanished, or links to itself
                continue
            seen[path] = (state.st_size, state.st_mtime_ns, state.st_ino)
    return seen
