"""Writes a file whole or not at all: beside its place, then a rename."""

from __future__ import annotations

import os
import tempfile
import time
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path

from gclint.problem import Problem, reason

BEFORE, BEHIND = ".gclint-", ".new"  # how the name of a file begins and ends that is still being written
LEFT_OVER = 3600.0  # s after which nobody is writing it any more


def write_whole(target: Path, made: bytes, place: Callable[[Path], object] | None = None) -> None:
    """`place` puts the file beside in its place (usual: over what is there); whatever happens, the target is whole.

    Raises Problem where it cannot be written.
    """
    try:
        handle, name = tempfile.mkstemp(prefix=BEFORE, suffix=BEHIND, dir=target.parent)
    except OSError as problem:
        raise Problem(f"cannot be written: {reason(problem)}", str(target)) from None
    beside = Path(name)
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(made)
            file.flush()
            os.fsync(file.fileno())
        beside.chmod(0o666 & ~_umask())
        if place is None:
            beside.replace(target)
        else:
            place(beside)
    except BaseException as problem:
        beside.unlink(missing_ok=True)
        if isinstance(problem, OSError):
            raise Problem(f"cannot be written: {reason(problem)}", str(target)) from None
        raise


def write_unchanged(made: bytes, target: Path, before: bytes | None) -> None:
    """Write a file, whole or not at all; `before` is what it held when it was read, None for a new one.

    Raises Problem where somebody else has written it in the meantime: then it stays as it is.
    """

    def place(beside: Path) -> None:
        if before is None:
            try:
                os.link(beside, target)  # fails where there is a file, which a rename would write over
            except FileExistsError:
                raise Problem("this file has come into being during the run; it stays as it is", str(target)) from None
            except OSError:  # a disk without links
                if target.exists():
                    says = "this file has come into being during the run; it stays as it is"
                    raise Problem(says, str(target)) from None
                beside.replace(target)
                return
            beside.unlink()
            return
        if target.read_bytes() != before:
            raise Problem("this file has been changed during the run; it stays as it is, run again", str(target))
        beside.chmod(target.stat().st_mode & 0o7777)
        beside.replace(target)

    write_whole(target, made, place)


def sweep(folder: Path) -> None:
    """Remove what killed runs were writing here."""
    with suppress(OSError):
        for file in folder.glob(f"{BEFORE}*{BEHIND}"):
            if time.time() - file.stat().st_mtime > LEFT_OVER:
                file.unlink(missing_ok=True)


def _umask() -> int:
    mask = os.umask(0)
    os.umask(mask)
    return mask
