"""Writes a report to standard output or, whole or not at all, to a file."""

from __future__ import annotations

import os
import sys
import tempfile
from collections.abc import Callable, Iterable
from pathlib import Path

from gclint.problem import Problem, reason


def refuse_overwrite(out: str | None, inputs: Iterable[str | None], option: str = "--out") -> None:
    """Raises Problem where `out`, given by `option`, is one of the files the run reads, or cannot be a file."""
    if out is None:
        return
    target = Path(out)
    if target.is_dir():
        raise Problem(f"{option} names a folder; name a file", out)
    if not target.parent.is_dir():
        raise Problem(f"{option} lies in a folder that does not exist", out)
    for name in inputs:
        if name and target.exists() and Path(name).exists() and target.samefile(name):
            raise Problem(f"{option} is a file this run reads; name another, it is never overwritten", out)


def deliver(made: str | bytes, out: str | None) -> None:
    """To the file `out` by a file beside it and a rename, or (text only) to standard output."""
    if out is None:
        text = str(made)
        encoding = sys.stdout.encoding or "utf-8"
        sys.stdout.write(text.encode(encoding, "replace").decode(encoding))
        sys.stdout.flush()
        return
    data = made.encode("utf-8", "replace") if isinstance(made, str) else made  # names need not be Unicode
    target = Path(out)
    if target.exists() and not target.is_file():  # a device or a pipe: there is nothing to rename over
        target.write_bytes(data)
        return
    _beside_and_rename(data, target, lambda beside: beside.replace(target))


def write_job(made: bytes, target: Path, before: bytes | None) -> None:
    """Write a job file, whole or not at all; `before` is what it held when it was read, None for a new one.

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

    _beside_and_rename(made, target, place)


def _beside_and_rename(made: bytes, target: Path, place: Callable[[Path], object]) -> None:
    """Write a file beside the target and put it in its place; whatever happens, the target is whole."""
    try:
        handle, name = tempfile.mkstemp(prefix=f".{target.name}.", dir=target.parent)
    except OSError as problem:
        raise Problem(f"cannot be written: {reason(problem)}", str(target)) from None
    beside = Path(name)
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(made)
            file.flush()
            os.fsync(file.fileno())
        beside.chmod(0o666 & ~_umask())
        place(beside)
    except BaseException as problem:
        beside.unlink(missing_ok=True)
        if isinstance(problem, OSError):
            raise Problem(f"cannot be written: {reason(problem)}", str(target)) from None
        raise


def _umask() -> int:
    mask = os.umask(0)
    os.umask(mask)
    return mask
