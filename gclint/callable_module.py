"""Modules that are called by the name of what they offer.

`gclint.check` and `gclint.mend` are where the steps live, and what people call: `gclint.check("tide-ring.nc")`.
Importing a module puts it into its package whatever stands there, so the module itself answers the call.
"""

from __future__ import annotations

import inspect
import sys
from importlib import import_module
from types import ModuleType
from typing import Any


class CallableModule(ModuleType):
    """Hands calls to the function of its own name in `gclint.library`."""

    def _offered(self) -> Any:
        return getattr(import_module("gclint.library"), self.__name__.rpartition(".")[2])

    def __call__(self, *args: Any, **named: Any) -> Any:
        return self._offered()(*args, **named)

    @property
    def __signature__(self) -> inspect.Signature:
        return inspect.signature(self._offered())


def make_callable(name: str) -> None:
    """Let the module of this name, which is being imported, be called."""
    sys.modules[name].__class__ = CallableModule
