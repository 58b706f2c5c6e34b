"""Writes a report to standard output or, whole or not at all, to a file."""

from __future__ import annotations

import sys
from collections.abc import Iterable
from pathlib import Path

from gclint.atomic_file import write_whole
from gclint.problem import Problem
from gclint.screen import QUIET


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


def deliver(made: str | bytes, out: str | None, for_machines: bool = False) -> None:
    """To the file `out` by a file beside it and a rename, or (text only) to standard output.

    A form `for_machines` is UTF-8 there, as it says or as its standard has it, whatever a terminal would want. What is
    for people is left away with -q.
    """
    if out is None:
        if QUIET.get() and not for_machines:
            return
        text = str(made)
        if for_machines and hasattr(sys.stdout, "buffer"):
            sys.stdout.flush()
            sys.stdout.buffer.write(text.encode("utf-8", "replace"))
            sys.stdout.buffer.flush()
            return
        encoding = sys.stdout.encoding or "utf-8"
        sys.stdout.write(text.encode(encoding, "replace").decode(encoding))
        sys.stdout.flush()
        return
    data = made.encode("utf-8", "replace") if isinstance(made, str) else made  # names need not be Unicode
    target = Path(out)
    if target.exists() and not target.is_file():  # a device or a pipe: there is nothing to rename over
        target.write_bytes(data)
        return
    write_whole(target, data)
