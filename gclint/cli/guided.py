"""Questions on the terminal whose answers become a declaration: an empty answer leaves its key out.

What an answer cannot be is said at once, and the question comes again. Nothing is written before the last answer, and
never over a file that exists.
"""

from __future__ import annotations

import json
import sys
from collections.abc import Callable
from pathlib import Path
from typing import TypeVar

import click

from gclint.problem import Problem, nearest
from gclint.toml.quantity import Quantity, from_text

Read = TypeVar("Read")
LONGEST = 200  # characters of an answer


def refuse_existing(file: str) -> Path:
    """Where the declaration will stand."""
    target = Path(file)
    if target.exists() or target.is_symlink():
        raise Problem("this file exists and stays as it is; name another", file)
    if not target.parent.is_dir():
        raise Problem("lies in a folder that does not exist", file)
    return target


def ask(question: str, read: Callable[[str], Read]) -> Read | None:
    """None for an empty answer. Raises Problem where the answers end."""
    while True:
        click.echo(f"{question}: ", nl=False)
        try:
            line = sys.stdin.readline()
        except UnicodeDecodeError:
            raise Problem("an answer is no text; nothing is written") from None
        if not line:
            click.echo()
            raise Problem("the answers end before the last question; nothing is written")
        answer = line.strip()
        if not answer:
            return None
        try:
            if len(answer) > LONGEST or not answer.isprintable():
                raise Problem(f"an answer is a line of at most {LONGEST} characters")
            return read(answer)
        except Problem as problem:
            click.echo(f"    {problem.says}")


def as_text(answer: str) -> str:
    """The answer as a text of TOML."""
    return json.dumps(answer, ensure_ascii=False)


def of(kind: type[Quantity]) -> Callable[[str], str]:
    """Reads a quantity, and gives it back as it was written."""

    def read(answer: str) -> str:
        from_text(kind, answer)
        return as_text(answer)

    return read


def one_of(*words: str) -> Callable[[str], str]:
    def read(answer: str) -> str:
        plain = "-".join(answer.lower().split())
        if plain not in words:
            raise Problem(f'"{answer[:40]}" is none of {", ".join(words)}{nearest(plain[:40], words)}')
        return as_text(plain)

    return read


def yes_or_no(answer: str) -> str:
    given = answer.lower()
    if given not in ("y", "yes", "n", "no"):
        raise Problem("answer y or n")
    return "true" if given.startswith("y") else "false"


class Lines:
    """The file as it grows; a table's head is written with its first key."""

    def __init__(self, first: str) -> None:
        self.lines = [f"# {first}"]

    def table(self, head: str, **keys: str | None) -> None:
        """`keys` as TOML; None is left out, and so is a table of which nothing is left."""
        given = [f"{key} = {value}" for key, value in keys.items() if value is not None]
        if given:
            self.lines += ["", head, *given] if head else given

    def text(self) -> str:
        return "\n".join(self.lines) + "\n"


def write_new(lines: Lines, target: Path, kind: type) -> None:
    """Raises Problem where a file has come into being in the meantime."""
    from gclint.atomic_file import write_unchanged
    from gclint.toml.file import decode

    decode(lines.text(), kind, str(target))
    write_unchanged(lines.text().encode("utf-8"), target, None)
