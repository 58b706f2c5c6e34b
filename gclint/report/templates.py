"""The one way to a template of a page or a sheet: what it is given is escaped, and has no hidden characters."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

from gclint.clean_text import HIDDEN, plain

if TYPE_CHECKING:
    from jinja2 import Environment


def templates(folder: Path) -> Environment:
    """Give the templates of a folder; a name that is not given is an error."""
    from jinja2 import Environment, FileSystemLoader, StrictUndefined

    return Environment(
        loader=FileSystemLoader(folder), autoescape=True, undefined=StrictUndefined, trim_blocks=True,
        lstrip_blocks=True, finalize=_plain,
    )


def _plain(value: Any) -> Any:
    if not isinstance(value, str) or not HIDDEN.search(value):
        return value
    from markupsafe import Markup

    return Markup(plain(value)) if isinstance(value, Markup) else plain(value)
