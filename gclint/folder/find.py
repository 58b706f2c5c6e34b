"""Finds the programs of folders, in a stable order, and says what is passed over and why."""

from __future__ import annotations

import errno
import os
from collections.abc import Iterator
from pathlib import Path

import msgspec

from gclint.folder.outcome import Source
from gclint.folder.sniff import HEAD, reads_as_program
from gclint.folder.source import STANDARD_INPUT, shown_as
from gclint.problem import Problem, reason
from gclint.program import ENDINGS
from gclint.tables.finding import Left

SURE_ENDINGS = tuple(ending for ending in ENDINGS if ending != ".txt")  # the others are asked by their content
REPORTS = (".report.txt", ".report.html", ".verdict.txt")  # what `gclint watch` writes beside a program
DEEPEST = 200  # folders in folders

HIDDEN_FOLDER = "a hidden folder"
HIDDEN_FILE = "a hidden file"
LINKED_FOLDER = "a link to a folder"
LINK_OUT = "a link that leads out of the folder"
LINK_NOWHERE = "a link that leads nowhere"
NO_FILE = "neither a file nor a folder"
NO_PROGRAM = "not the text of a milling program"
OWN_REPORT = "a report that stands beside its program"
TOO_DEEP = f"a folder more than {DEEPEST} folders deep"
NO_DECLARATION = ".toml"  # declarations are no programs, and nobody takes them for one


class Found(msgspec.Struct):
    """What lies in the folders that were named. `problems` are folders and files that could not be looked into."""

    sources: list[Source]
    passed: list[Left]
    problems: list[Problem]


def find(named: tuple[str, ...], but: Path | None = None) -> Found:
    """The programs behind the arguments, in their order, each once; of a folder by the names of what is in it.

    A file that is named is taken as it is; a folder's files are taken for their ending or their content. `but` is a
    folder to leave out (where reports go).
    """
    found, seen = Found([], [], []), set[str]()
    files = {name for name in named if name == STANDARD_INPUT or not Path(name).is_dir()}
    for name in named:
        if name in files:
            if name not in seen:
                seen.add(name)
                found.sources.append(Source(name))
            continue
        before = len(found.sources), len(found.problems)
        for path in _walk(name, Path(name).resolve(), but, found):
            if path not in seen:
                seen.add(path)
                found.sources.append(Source(path, named=path in files))
        if (len(found.sources), len(found.problems)) == before and not seen:
            said = f"this folder holds no program (a file that ends in {', '.join(ENDINGS)}, or reads like one)"
            found.problems.append(Problem(said, shown_as(name)))
    return found


def _walk(folder: str, home: Path, but: Path | None, found: Found) -> Iterator[str]:
    """Paths of programs below a folder, ordered by the parts of their names; no link to a folder is followed."""
    waiting: list[tuple[int, list[os.DirEntry[str]]]] = [(0, _entries(folder, found))]
    while waiting:
        depth, entries = waiting[-1]
        if not entries:
            waiting.pop()
            continue
        entry = entries.pop()
        try:
            because = _because(entry, home, depth)
            if because is None and entry.is_dir(follow_symlinks=False):
                if but is None or Path(entry.path).resolve() != but:
                    waiting.append((depth + 1, _entries(entry.path, found)))
            elif because is None:
                because = _no_program(entry)
                if because is None:
                    yield os.path.normpath(entry.path)
        except OSError as problem:  # it vanished meanwhile, or may not be read
            found.problems.append(Problem(f"cannot be read: {reason(problem)}", shown_as(entry.path)))
            continue
        if because is not None and because != NO_DECLARATION:
            found.passed.append(Left(shown_as(os.path.normpath(entry.path)), because))


def _entries(folder: str, found: Found) -> list[os.DirEntry[str]]:
    """What a folder holds, last name first."""
    try:
        with os.scandir(folder) as entries:
            return sorted(entries, key=lambda entry: entry.name, reverse=True)
    except OSError as problem:
        found.problems.append(Problem(f"this folder cannot be read: {reason(problem)}", shown_as(folder)))
        return []


def _because(entry: os.DirEntry[str], home: Path, depth: int) -> str | None:
    """Why an entry is passed over for what it is; None where its content decides."""
    is_folder = entry.is_dir(follow_symlinks=False)
    if entry.name.startswith("."):
        return HIDDEN_FOLDER if is_folder else HIDDEN_FILE
    if is_folder:
        return TOO_DEEP if depth >= DEEPEST else None
    if entry.is_symlink():
        try:
            Path(entry.path).stat()
        except (FileNotFoundError, RuntimeError):
            return LINK_NOWHERE
        except OSError as problem:
            if problem.errno != errno.ELOOP:
                raise
            return LINK_NOWHERE
        if not Path(entry.path).resolve().is_relative_to(home):
            return LINK_OUT
        if entry.is_dir():
            return LINKED_FOLDER
    return None if entry.is_file() else NO_FILE


def _no_program(entry: os.DirEntry[str]) -> str | None:
    """Why the content of a file is no program; None where it may be one."""
    name = entry.name.lower()
    if name.endswith(NO_DECLARATION):
        return NO_DECLARATION
    if name.endswith(SURE_ENDINGS):
        return None
    if name.endswith(REPORTS):
        return OWN_REPORT
    with Path(entry.path).open("rb") as file:
        head = file.read(HEAD)
    return None if reads_as_program(head, whole=len(head) < HEAD) else NO_PROGRAM
