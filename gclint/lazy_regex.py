"""Regular expressions that are compiled when they are first used: a short check needs few of them, and each costs."""

from __future__ import annotations

import re
from typing import Any


class Later:
    """Stands for `re.compile(pattern, flags)`."""

    def __init__(self, pattern: str | bytes, flags: int = 0) -> None:
        self._pattern, self._flags = pattern, flags

    def __getattr__(self, name: str) -> Any:
        found = getattr(re.compile(self._pattern, self._flags), name)
        self.__dict__[name] = found  # the next time no lookup comes here
        return found
