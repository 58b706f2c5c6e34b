"""Gives the facts that too-deep alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Column
from gclint.facts.context import Context
from gclint.facts.fact import Fact, number
from gclint.stock import contact


def _deepest(context: Context) -> Column:
    """[pieces] mm; of pieces that go straight down what they go down in solid."""
    engagement, pieces = context.engagement, context.engagement.pieces
    rim = contact.deepest(engagement.contact, pieces.profile)
    return np.where(rim > 0, rim, np.where(pieces.drop > 0, np.minimum(pieces.ap, pieces.drop), pieces.ap))


FACTS: dict[str, dict[str, Fact]] = {
    "pieces": {
        "ap_deepest": number("mm", "depth that the deepest tenth of the arc of contact reaches at least", _deepest),
    },
}  # fmt: skip
