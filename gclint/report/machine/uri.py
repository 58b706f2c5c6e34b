"""Names of files as URIs (RFC 3986): relative to the folder the command ran in where that is possible."""

from __future__ import annotations

import os
from pathlib import Path
from urllib.parse import quote


def uri_of(path: str) -> tuple[str, bool]:
    """(percent-encoded URI, whether it is relative to the working folder); the bytes of a name need not be UTF-8."""
    absolute = os.path.normpath(Path(path).absolute())  # links are not followed
    try:
        inside = os.path.relpath(absolute)
    except ValueError:  # another drive
        inside = os.pardir
    if os.pardir not in Path(inside).parts:
        return _quoted(inside), True
    whole = _quoted(absolute)
    return f"file://{'' if whole.startswith('/') else '/'}{whole}", False


def _quoted(path: str) -> str:
    return quote(os.fsencode(path.replace(os.sep, "/")), safe="/:" if Path(path).is_absolute() else "/")
