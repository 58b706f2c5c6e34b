"""The page: one HTML file of a run, to open from disk; and the list of pages of several programs."""

from __future__ import annotations

import base64
import hashlib
from collections.abc import Sequence
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, Any, Literal

from gclint.run import Run

if TYPE_CHECKING:
    from jinja2 import Environment

Reader = Literal["author", "operator", "instructor"]

ROOM = Path(__file__).parent


def page(run: Run, version: str, reader: Reader = "author") -> str:
    """The whole file. Without tables (a failed run) it has no figure and no strips."""
    from gclint.digest.sheet_words import open_findings
    from gclint.report.page.sheet import sheet_of

    model = None
    if run.tables is not None and len(run.tables.motion):
        from gclint.report.page.model import model_of

        model = model_of(run.tables, open_findings(run.checked))
    script, style = _built("page.js"), _built("page.css")
    return _templates().get_template("page.html.j2").render(
        sheet=sheet_of(run, version, reader), model=model, script=script, style=style, policy=_policy(script, style)
    )


def entry(file: str, run: Run) -> dict[str, Any]:
    """What the list of pages tells of the page in `file`; tables are not needed."""
    from gclint.report.page.sheet import entry_of

    return entry_of(file, run.checked.path, run)


def contents(rows: Sequence[dict[str, Any]], version: str, reader: Reader = "author") -> str:
    """A page that leads to others, by the `entry` of each."""
    from gclint.report.page.sheet import LISTED

    style = _built("page.css")
    return _templates().get_template("contents.html.j2").render(
        kind=LISTED[reader], rows=rows, version=version, style=style, policy=_policy("", style)
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


@cache
def _built(name: str) -> str:
    """A file that `src/build.mjs` has made; a browser reads every line end as one character."""
    return (ROOM / "built" / name).read_text(encoding="utf-8").replace("\r\n", "\n")


@cache
def _templates() -> Environment:
    from jinja2 import Environment, FileSystemLoader, StrictUndefined

    return Environment(
        loader=FileSystemLoader(ROOM), autoescape=True, undefined=StrictUndefined, trim_blocks=True, lstrip_blocks=True
    )
