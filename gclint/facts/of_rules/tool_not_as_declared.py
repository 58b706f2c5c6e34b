"""Gives the facts that tool-not-as-declared alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Column
from gclint.facts.context import Context, once
from gclint.facts.fact import Fact, number, text, texts, truth
from gclint.facts.program import calling_line, tools_used
from gclint.tables.setup import Tool


@once
def _comment_tools(context: Context) -> list[tuple[Tool | None, str]]:
    """For each tool used that is declared by hand, what the program's comments say of it: (tool, the shape they name).

    None and "" where they say nothing that can be relied on, and where they name no shape.
    """
    from gclint.setup.comments import tools_in

    declared = [context.setup.tools.get(n) for n in tools_used(context)]
    by_hand = [tool is not None and not tool.declared_in.startswith("comment") for tool in declared]
    said = tools_in(context.program, context.motion) if any(by_hand) and len(context.program.comment_line) else {}
    rows: list[tuple[Tool | None, str]] = []
    for n, own in zip(tools_used(context), by_hand):
        tool, because = said.get(n, (None, "")) if own else (None, "")
        rows.append((tool, tool.shape if tool is not None and "names no shape" not in because else ""))
    return rows


def _comment_line(context: Context) -> Column:
    lines = [int(tool.declared_in.rpartition(" ")[2]) if tool else 0 for tool, _ in _comment_tools(context)]
    return np.where(np.array(lines, dtype=np.int64) > 0, lines, calling_line(context))


FACTS: dict[str, dict[str, Fact]] = {
    "tools": {
        "comment_diameter": number("mm", "diameter that the program's comments give it; 0 if they give none",
                                   lambda c: np.array([t.diameter if t else 0.0 for t, _ in _comment_tools(c)])),
        "comment_shape": text("shape that the program's comments name; empty if they name none",
                              lambda c: texts([shape for _, shape in _comment_tools(c)])),
        "comment_line": number("", "line of that comment, else the line that calls the tool", _comment_line),
        "shape_differs": truth("whether the program's comments name another shape than is declared",
                               lambda c: np.array([bool(shape) and tool is not None and shape != tool.shape
                                                   for (_, shape), tool in zip(_comment_tools(c),
                                                   (c.tool(n) for n in tools_used(c)))], dtype=bool)),
    },
}  # fmt: skip
