"""Writes a report to standard output or, whole or not at all, to a file."""

from __future__ import annotations

import os
import sys
import tempfile
from collections.abc import Iterable
from pathlib import Path

from gclint.cli.main import reason
from gclint.problem import Problem


def refuse_overwrite(out: str | None, inputs: Iterable[str | None]) -> None:
    """Raises Problem where `out` is one of the files the run reads, or cannot be a file."""
    if out is None:
        return
    target = Path(out)
    if target.is_dir():
        raise Problem("--out names a folder; name a file", out)
    if not target.parent.is_dir():
        raise Problem("--out lies in a folder that does not exist", out)
    for name in inputs:
        if name and target.exists() and Path(name).exists() and target.samefile(name):
            raise Problem("--out is a file this run reads; name another, it is never overwritten", out)


def deliver(text: str, out: str | None) -> None:
    """To the file `out` by a file beside it and a rename, or to standard output."""
    if out is None:
        encoding = sys.stdout.encoding or "utf-8"
        sys.stdout.write(text.encode(encoding, "replace").decode(encoding))
        sys.stdout.flush()
        return
    text = text.encode("utf-8", "replace").decode()  # the bytes of a file's name need not be Unicode
    target = Path(out)
    if target.exists() and not target.is_file():  # a device or a pipe: there is nothing to rename over
        target.write_text(text, encoding="utf-8")
        return
    try:
        handle, beside = tempfile.mkstemp(prefix=f".{target.name}.", dir=target.parent)
    except OSError as problem:
        raise Problem(f"cannot be written: {reason(problem)}", out) from None
    try:
        with os.fdopen(handle, "w", encoding="utf-8", newline="\n") as file:
            file.write(text)
        Path(beside).chmod(0o666 & ~_umask())
        Path(beside).replace(target)
    except BaseException as problem:
        Path(beside).unlink(missing_ok=True)
        if isinstance(problem, OSError):
            raise Problem(f"cannot be written: {reason(problem)}", out) from None
        raise


def _umask() -> int:
    mask = os.umask(0)
    os.umask(mask)
    return mask
