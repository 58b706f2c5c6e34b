"""Gives the facts that compensation-without-radius alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.facts.contours import numbers_named
from gclint.facts.fact import Fact, truth

FACTS: dict[str, dict[str, Fact]] = {
    "contours": {
        "number_named": truth("whether a D names the diameter", lambda c: np.isfinite(numbers_named(c))),
    },
}  # fmt: skip
