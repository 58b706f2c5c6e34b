"""The page: one HTML file of a run, to open from disk; and the list of pages of several programs."""

from __future__ import annotations

import base64
import hashlib
from collections.abc import Sequence
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, Any, Literal

from gclint.internal_fault import left_out
from gclint.report.templates import templates
from gclint.run import Run

if TYPE_CHECKING:
    from jinja2 import Environment

Reader = Literal["author", "operator", "instructor"]

ROOM = Path(__file__).parent


def page(run: Run, version: str, reader: Reader = "author") -> str:
    """The whole file. Without tables (a failed run) it has no figure and no strips."""
    try:
        return _page(run, version, reader)
    except Exception as fault:
        return _bare(run, version, left_out("this page", fault))


def _page(run: Run, version: str, reader: Reader) -> str:
    from gclint.digest.sheet_words import open_findings
    from gclint.report.page.page_text import sheet_of

    model, failed = None, ""
    if run.tables is not None and len(run.tables.motion):
        from gclint.report.page.model import model_of

        try:
            model = model_of(run.tables, open_findings(run.checked))
        except Exception as fault:
            failed = left_out("the drawing of the path", fault)
    script, style, licences = _built("page.js"), _built("page.css"), _built("LICENSES.txt")
    return _templates().get_template("page.html.j2").render(
        sheet=sheet_of(run, version, reader), model=model, failed=failed, licences=licences,
        script=script, style=style, policy=_policy(script, style)
    )


def _bare(run: Run, version: str, says: str) -> str:
    """Every open finding in a line: where the page itself fails."""
    from html import escape

    from gclint.clean_text import plain
    from gclint.report.text.terminal import bare

    said = escape(plain(f"{says}\n\n{bare(run.checked)}"))
    head = '<!DOCTYPE html>\n<html lang="en"><head><meta charset="utf-8">'
    ours = f'<meta name="generator" content="gclint {version}">'
    title = f"<title>{escape(plain(run.checked.path))}</title></head>"
    return f"{head}\n{ours}\n{title}<body><pre>{said}</pre></body></html>\n"


def style() -> str:
    """The style sheet of every page, for another page that shall look like them."""
    return _built("page.css")


def entry(file: str, run: Run) -> dict[str, Any]:
    """What the list of pages tells of the page in `file`; tables are not needed."""
    from gclint.report.page.page_text import entry_of

    return entry_of(file, run.checked.path, run)


def contents(rows: Sequence[dict[str, Any]], version: str, reader: Reader = "author") -> str:
    """A page that leads to others, by the `entry` of each."""
    from gclint.report.page.page_text import LISTED, listed

    style = _built("page.css")
    return _templates().get_template("contents.html.j2").render(
        kind=LISTED[reader], version=version, style=style, policy=_policy("", style), **listed(rows)
    )


def _policy(script: str, style: str) -> str:
    """What a browser may load and run for this page: its own script and its own style, from nowhere else."""
    run = f"'sha256-{_hash(script)}'" if script else "'none'"
    return (
        f"default-src 'none'; script-src {run}; style-src 'sha256-{_hash(style)}'; img-src data: blob:; "
        "base-uri 'none'; form-action 'none'"
    )


def _hash(text: str) -> str:
    return base64.b64encode(hashlib.sha256(text.encode("utf-8")).digest()).decode("ascii")


def page_style() -> str:
    """The stylesheet of the page, for other sheets that shall look like it."""
    return _built("page.css")


@cache
def _built(name: str) -> str:
    """A file that `src/build.mjs` has made; a browser reads every line end as one character."""
    return (ROOM / "built" / name).read_text(encoding="utf-8").replace("\r\n", "\n")


@cache
def _templates() -> Environment:
    return templates(ROOM)
