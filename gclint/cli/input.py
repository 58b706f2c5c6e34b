"""Finds and reads the programs a command names."""

from __future__ import annotations

import stat
import sys
from pathlib import Path
from typing import TYPE_CHECKING

from gclint.check import Unreadable
from gclint.cli.main import reason
from gclint.problem import Problem
from gclint.program import ENDINGS, LARGEST

if TYPE_CHECKING:
    from gclint.setup.declare import Options

FIRST_LOOK = 1 << 20  # bytes; longer than any line of a program
STANDARD_INPUT = "-"


def programs_in(named: tuple[str, ...]) -> list[str]:
    """The files behind the arguments in their order, each once; of a folder, every file with a program's ending.

    Links that lead out of the folder are passed over.
    """
    found: dict[str, None] = {}
    for name in named:
        path = Path(name)
        if name == STANDARD_INPUT or not path.is_dir():
            found[name] = None
            continue
        inside = [
            str(file)
            for file in sorted(path.rglob("*"))
            if file.suffix.lower() in ENDINGS
            and file.is_file()
            and not leads_out(file, path)
            and not any(part.startswith(".") for part in file.relative_to(path).parts)
        ]
        found.update(dict.fromkeys(inside or [name]))
    return list(found)


def leads_out(file: Path, folder: Path) -> bool:
    """Whether a file of a folder is a link to something outside it: nobody named that."""
    return file.is_symlink() and not file.resolve().is_relative_to(folder.resolve())


def declared_programs(options: Options) -> tuple[str, ...]:
    """The programs of the job file that --job names. Raises Problem where there are none."""
    from gclint.setup.declare import declare

    programs = declare(options, None).programs if options.job else ()
    if not programs:
        raise Problem("name a program, a folder of programs, - for standard input, or a --job that names programs")
    return programs


def read_bytes(name: str) -> bytes:
    """The bytes of a program, at most 1 GiB and one byte (which reading then refuses). Raises Unreadable."""
    try:
        if name == STANDARD_INPUT:
            data = sys.stdin.buffer.read(LARGEST + 1)
        else:
            path = Path(name)
            kind = path.stat()
            if stat.S_ISDIR(kind.st_mode):
                raise Unreadable(f"this folder holds no program (a file that ends in {', '.join(ENDINGS)})", name)
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
    return "standard input" if name == STANDARD_INPUT else name


def path_of(name: str) -> str | None:
    """What declarations are looked for beside; None for standard input."""
    return None if name == STANDARD_INPUT else name
