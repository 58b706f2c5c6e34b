"""Reads the bytes of a program, from a file or from standard input, within bounds."""

from __future__ import annotations

import stat
import sys
from pathlib import Path

from gclint.check import Unreadable
from gclint.problem import reason
from gclint.program import LARGEST

FIRST_LOOK = 1 << 20  # bytes; longer than any line of a program
STANDARD_INPUT = "-"
OPEN_ALREADY = ("/dev/fd", "/proc/self/fd")  # a shell's `<(command)`: somebody is at the other end


def read_bytes(name: str) -> bytes:
    """The bytes of a program, at most 1 GiB and one byte (which reading then refuses). Raises Unreadable."""
    try:
        if name == STANDARD_INPUT:
            return sys.stdin.buffer.read(LARGEST + 1)
        path = Path(name)
        kind = path.stat()
        if stat.S_ISDIR(kind.st_mode):
            raise Unreadable("this is a folder, not a program", name)
        if stat.S_ISFIFO(kind.st_mode) and str(path.parent) not in OPEN_ALREADY:
            raise Unreadable("this is a named pipe, not a file; give - and let it write to standard input", name)
        if not (stat.S_ISREG(kind.st_mode) or stat.S_ISFIFO(kind.st_mode)):
            raise Unreadable("this is not a file", name)
        if kind.st_size > LARGEST:
            raise Unreadable("this file is over 1 GiB; gclint reads programs up to 1 GiB", name)
        with path.open("rb") as file:
            data = file.read(FIRST_LOOK)
            if len(data) < FIRST_LOOK or b"\n" in data or b"\r" in data:  # else refused by its first line
                data += file.read(LARGEST + 1 - len(data))
    except OSError as problem:
        raise Unreadable(f"cannot be read: {reason(problem)}", name) from None
    except ValueError as problem:  # a NUL byte in the name
        raise Unreadable(f"cannot be read: {problem}", repr(name)) from None
    return data


def shown_as(name: str) -> str:
    """The name as every output can write it."""
    if name == STANDARD_INPUT:
        return "standard input"
    return name.encode("utf-8", "surrogateescape").decode("utf-8", "replace")


def path_of(name: str) -> str | None:
    """What declarations are looked for beside; None for standard input."""
    return None if name == STANDARD_INPUT else name
