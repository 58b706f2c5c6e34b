"""Names of files, as URIs (RFC 3986) too: relative to the folder the command ran in where that is possible."""

from __future__ import annotations

import os
from pathlib import Path
from urllib.parse import quote


def place_of(path: str) -> tuple[str, bool]:
    """(name of a file, whether it is relative to the working folder), without detours; links are not followed."""
    absolute = os.path.normpath(Path(path).absolute())
    try:
        inside = os.path.relpath(absolute)
    except ValueError:  # another drive
        inside = os.pardir
    return (absolute, False) if os.pardir in Path(inside).parts else (inside, True)


def plain_place(path: str) -> str:
    """The name as code hosts want it: by /, relative to the working folder where it lies in it."""
    return place_of(path)[0].replace(os.sep, "/")


def uri_of(path: str) -> tuple[str, bool]:
    """(percent-encoded URI, whether it is relative to the working folder); the bytes of a name need not be UTF-8."""
    absolute, relative = place_of(path)
    if relative:
        return _quoted(absolute), True
    whole = _quoted(absolute)
    return f"file://{'' if whole.startswith('/') else '/'}{whole}", False


def _quoted(path: str) -> str:
    return quote(os.fsencode(path.replace(os.sep, "/")), safe="/:" if Path(path).is_absolute() else "/")
