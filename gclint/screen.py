"""What a person asked of the screen: colour, and silence. The command line sets it, whoever writes there asks."""

from __future__ import annotations

from contextvars import ContextVar
from typing import Literal

Colour = Literal["auto", "always", "never"]

COLOUR: ContextVar[Colour] = ContextVar("colour", default="auto")
QUIET: ContextVar[bool] = ContextVar("quiet", default=False)
