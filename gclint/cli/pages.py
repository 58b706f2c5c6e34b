"""The writer of `--as page`: one page, or a folder with a page for each program and a list of them."""

from __future__ import annotations

import os
from dataclasses import replace
from pathlib import Path, PurePath
from typing import TYPE_CHECKING

from gclint.problem import Problem

if TYPE_CHECKING:
    from gclint.report.page_out import Reader
    from gclint.report.tables import Run

CONTENTS = "index.html"
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


class Pages:
    """Writes each page as soon as its program is checked, so that its tables can be let go."""

    needs_tables = True

    def __init__(self, target: str | None, reader: Reader) -> None:
        self.reader = reader
        self.folder = Path(target).parent if target and Path(target).name == CONTENTS else None
        self.single = ""
        self.listed: list[tuple[str, str, Run]] = []
        self.taken = {CONTENTS}
        if self.folder:
            _refuse_foreign(self.folder / CONTENTS)

    def add(self, done: Run) -> None:
        from gclint import __version__
        from gclint.cli.output import deliver
        from gclint.report.page_out import page

        made = page(done, __version__, self.reader)
        if self.folder is None:
            self.single = made
            return
        file = self._name(done.checked.path)
        _refuse_foreign(self.folder / file)
        deliver(made, str(self.folder / file))
        self.listed.append((file, done.checked.path, replace(done, tables=None)))

    def missed(self, problem: Problem) -> None:
        """Told on standard error alone."""

    def text(self, code: int) -> str:
        from gclint import __version__
        from gclint.report.page_out import contents

        return contents(self.listed, __version__) if self.folder else self.single

    def _name(self, path: str) -> str:
        """'tide-ring.html'; another of the same name gets a number."""
        stem = PurePath(path.replace("\\", "/")).stem or "program"
        stem = "".join(c if c.isalnum() or c in "-_. " else "-" for c in stem)[:120]
        number, file = 1, f"{stem}.html"
        while file.lower() in self.taken:
            number += 1
            file = f"{stem}-{number}.html"
        self.taken.add(file.lower())
        return file


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
