"""An assumption that may as well be otherwise, and what hangs on it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from gclint.columns import Bools


@dataclass(frozen=True, slots=True, eq=False)
class Assumption:
    """A value taken as given where the text and the declarations leave others as plausible.

    What hangs on it is a finding that would go, or be milder, under one of the alternatives. Such a finding is at most
    `consider`, and all that hang on one assumption are told as one entry, the rule `entry`, which asks for the
    declaration (`gclint.judge.by_assumption`).
    """

    entry: str  # name of the rule that tells what hangs on it
    what: str  # "the blank's edge"
    value: str  # "one tool diameter outside the cuts"
    alternatives: tuple[str, ...]  # "where the cuts end"
    because: str
    rows: Mapping[str, Bools] = field(default_factory=dict)  # table of facts -> which of its rows hang on it
    line: int = 0  # where it begins to matter; 0: where the first of what hangs on it stands
    always: bool = False  # told even where nothing hangs on it
    spares: tuple[str, ...] = ()  # subjects of rules that hold whatever is true of it
