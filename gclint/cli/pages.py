"""The writer of `--as page`: one page, or a folder with a page for each program and a list of them."""

from __future__ import annotations

import hashlib
import os
from collections.abc import Sequence
from pathlib import Path, PurePath
from typing import TYPE_CHECKING, Any

from msgspec import Struct

from gclint.problem import Problem

if TYPE_CHECKING:
    from gclint.folder.outcome import Source
    from gclint.report.page.page_out import Reader
    from gclint.run import Run

CONTENTS = "index.html"
MARK = b"<!-- made by gclint for "
OURS = b'<meta name="generator" content="gclint'


def page_target(out: str | None, programs: int, option: str = "--out") -> str | None:
    """The file that `deliver` writes: the page itself, or of several programs the list in the folder `out`.

    A folder that is there, or a name that ends as a folder's does ("pages/"), is one also of a single program.
    """
    if programs < 2 and not (out and (Path(out).is_dir() or out.endswith(("/", os.sep)))):
        return out
    if out is None:
        raise Problem("the pages of several programs need a folder: --out FOLDER")
    folder = Path(out)
    if folder.exists() and not folder.is_dir():
        raise Problem(f"{option} names a file; the pages of several programs need a folder", out)
    try:
        folder.mkdir(exist_ok=True)
    except OSError as problem:
        from gclint.problem import reason

        raise Problem(f"this folder cannot be made: {reason(problem)}", out) from None
    return str(folder / CONTENTS)


class PageOf(Struct, frozen=True):
    """Makes the page of one program: its file in `folder`, or without one the page itself.

    A page whose last line names the state it was made of, and that is as it was written, is not made again.
    """

    folder: str | None
    files: dict[str, str]  # of the pages, by the program's name
    reader: Reader

    def made(self, source: Source, run: Run, state: str) -> str:
        from gclint import __version__
        from gclint.atomic_file import write_whole
        from gclint.report.page.page_out import page

        text = page(run, __version__, self.reader)
        if self.folder is None:
            return text
        file = Path(self.folder, self.files[source.name])
        _refuse_foreign(file)
        data = text.rstrip("\n").encode("utf-8", "replace") + b"\n"
        write_whole(file, data + (self._mark(state, data) if state else b""))
        return file.name

    def stands(self, source: Source, state: str) -> str | None:
        if self.folder is None or not state:
            return None
        file = Path(self.folder, self.files[source.name])
        try:
            data = file.read_bytes()
        except OSError:
            return None
        page, mark, _ = data.rpartition(MARK)
        return file.name if mark and data == page + self._mark(state, page) else None

    def _mark(self, state: str, page: bytes) -> bytes:
        said = hashlib.sha256(f"{state} {self.reader} ".encode())
        said.update(page)
        return MARK + said.hexdigest().encode() + b" -->\n"


class Pages:
    """Has each page written where its program is checked, then lists them."""

    def __init__(self, target: str | None, reader: Reader, sources: Sequence[Source]) -> None:
        self.reader = reader
        self.folder = Path(target).parent if target and Path(target).name == CONTENTS else None
        self.single = ""
        self.rows: list[dict[str, Any]] = []
        files: dict[str, str] = {}
        if self.folder:
            from gclint.atomic_file import sweep

            _refuse_foreign(self.folder / CONTENTS)
            sweep(self.folder)
            files = _files(sources)
        self.maker = PageOf(str(self.folder) if self.folder else None, files, reader)

    def add(self, done: Run) -> None:
        from gclint.report.page.page_out import entry

        [made] = done.made
        if self.folder is None:
            self.single = made
        else:
            self.rows.append(entry(made, done))

    def missed(self, problem: Problem) -> None:
        """Told on standard error alone."""

    def text(self, code: int) -> str:
        from gclint import __version__
        from gclint.report.page.page_out import contents

        return contents(self.rows, __version__, self.reader) if self.folder else self.single


def _files(sources: Sequence[Source]) -> dict[str, str]:
    """'tide-ring.html' for each program; another of the same name gets a number."""
    files: dict[str, str] = {}
    taken = {CONTENTS}
    for source in sources:
        stem = PurePath(source.shown.replace("\\", "/")).stem or "program"
        stem = "".join(c if c.isalnum() or c in "-_. " else "-" for c in stem)[:120]
        number, file = 1, f"{stem}.html"
        while file.lower() in taken:
            number += 1
            file = f"{stem}-{number}.html"
        taken.add(file.lower())
        files[source.name] = file
    return files


def _refuse_foreign(file: Path) -> None:
    """Raises Problem where a file that is no page of ours would be overwritten."""
    try:
        with file.open("rb") as before:
            ours = OURS in before.read(4000)
    except FileNotFoundError:
        return
    except OSError:
        ours = False
    if not ours:
        raise Problem("this file is no page of gclint; it is never overwritten", str(file))
