"""The files that `gclint watch` keeps beside programs: a report and a verdict of one line, each marked as its own.

Every file ends with a mark, so that it is known to be ours and to be whole; a file without one is never written over.
"""

from __future__ import annotations

import os
import re
from pathlib import Path
from typing import Literal

from gclint import __version__
from gclint.atomic_file import write_whole
from gclint.problem import Problem, one_line, reason
from gclint.run import Run

Form = Literal["text", "page"]
ENDINGS: dict[Form, str] = {"text": ".report.txt", "page": ".report.html"}
VERDICT = ".verdict.txt"
MARK = re.compile(rb"\[written by gclint watch \S+ for ([0-9a-f]*)\](?: -->)?\s*\Z")
TAIL = 300  # bytes in which the mark stands


class Place:
    """Where the files of one program stand: beside it, or at the same place below another folder."""

    def __init__(self, program: Path, folder: Path, out: Path | None, form: Form) -> None:
        stem = program if out is None else out / os.path.relpath(program, folder)
        self.report = stem.with_name(stem.name + ENDINGS[form])
        self.verdict = stem.with_name(stem.name + VERDICT)
        self.form = form

    def marked(self, key: str) -> bool:
        """Whether both files are whole, ours, and of this key."""
        return bool(key) and mark_of(self.report) == key and mark_of(self.verdict) == key

    def write(self, report: str | None, verdict: str, key: str) -> None:
        """Write the report, then the verdict on it. Raises Problem, and then leaves no verdict of another state."""
        try:
            if report is not None:
                mark = f"[written by gclint watch {__version__} for {key}]"
                tail = f"<!-- {mark} -->\n" if self.form == "page" else f"\n{mark}\n"
                write_own(self.report, report.rstrip("\n") + "\n" + tail)
            write_own(self.verdict, _line(verdict, key))
        except Problem:
            remove_own(self.verdict)
            raise

    def stale(self, says: str) -> None:
        """Let the verdict say that it no longer holds, where there is one of ours."""
        if mark_of(self.verdict) is not None:
            self.write(None, says, "")


def _line(verdict: str, key: str) -> str:
    return f"{one_line(verdict)} [written by gclint watch {__version__} for {key}]\n"


def mark_of(file: Path) -> str | None:
    """The key in a file's mark; None for a file that is not there, not ours or not whole."""
    try:
        if file.is_symlink() or not file.is_file():
            return None
        with file.open("rb") as opened:
            opened.seek(max(0, os.fstat(opened.fileno()).st_size - TAIL))
            found = MARK.search(opened.read())
    except OSError:
        return None
    return found[1].decode() if found else None


def write_own(file: Path, text: str) -> None:
    """Whole or not at all. Raises Problem: not ours to overwrite, or not writable."""
    if (file.exists() or file.is_symlink()) and mark_of(file) is None:
        raise Problem("this file was not written by gclint watch, so it stays as it is; move it away", str(file))
    try:
        file.parent.mkdir(parents=True, exist_ok=True)
    except OSError as problem:
        raise Problem(f"cannot be written: {reason(problem)}", str(file)) from None
    write_whole(file, text.encode("utf-8", "replace"))


def remove_own(file: Path) -> None:
    if mark_of(file) is not None:
        file.unlink(missing_ok=True)


def not_checked(name: str, says: str, form: Form) -> str:
    """What stands in place of a report where there is none."""
    if form == "text":
        return f"{one_line(name)}\n{one_line(says)}"
    import html

    title, text = html.escape(one_line(name)), html.escape(one_line(says))
    head = f'<!doctype html>\n<html lang="en"><meta charset="utf-8"><title>{title}</title>'
    return f"{head}<h1>{title}</h1><p>{text}</p></html>"


def written_as(run: Run, form: Form) -> str:
    """The report of one program."""
    if form == "page":
        from gclint.report.page.page_out import page

        return page(run, __version__)
    from gclint.digest.sheet_words import verdict
    from gclint.report.text.cautions import cautions
    from gclint.report.text.terminal import closing, sheet
    from gclint.report.text.text_sheet import TextSheet

    paper = TextSheet()
    sheet(run, paper, __version__)
    closing(paper, cautions(run.material_cautions), [(run.checked.path, verdict(run.checked))])
    return paper.text
