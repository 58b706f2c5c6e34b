"""Gives the facts that tool-order-changed alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Floats
from gclint.facts.context import Context, once
from gclint.facts.fact import Fact, number, truth
from gclint.facts.moves import cuts_before_next, tool_called


@once
def _expected(context: Context) -> Floats:
    """[changes] the tool that comes next by the job's list; -1 behind its end, NaN where nothing else is cut with.

    The list may hold other programs' tools: where it is longer, it counts from where this one's first tool stands.
    """
    order, called = context.setup.tool_order, tool_called(context)
    expected = np.full(len(called), np.nan)
    rows = [row for row in np.flatnonzero(cuts_before_next(context)).tolist() if np.isfinite(called[row])]
    rows = [row for row, before in zip(rows, [None, *rows]) if before is None or called[row] != called[before]]
    if not rows or not order:
        return expected
    first = int(called[rows[0]])
    at = order.index(first) if first in order and len(rows) < len(order) else 0
    behind = [*order[at:], *[-1] * len(rows)]
    expected[rows] = behind[: len(rows)]
    return expected


FACTS: dict[str, dict[str, Fact]] = {
    "changes": {
        "order_declared": truth("whether the job lists the tools in the order in which they are put in",
                                lambda c: bool(c.setup.tool_order)),
        "off_order": truth("whether the program cuts with it, and the list says another tool",
                           lambda c: np.isfinite(_expected(c)) & (_expected(c) != tool_called(c))),
        "expected_tool": number("", "the tool that comes next by the job's list; -1 behind its end", _expected,
                                "`tool_order` in job.toml"),
    },
}  # fmt: skip
