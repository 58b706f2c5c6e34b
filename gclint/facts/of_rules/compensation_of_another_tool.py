"""Gives the facts that compensation-of-another-tool alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Column, Floats, one_of
from gclint.facts.context import Context
from gclint.facts.contours import contours, numbers_named
from gclint.facts.fact import Fact, number


def _diameter_named(context: Context) -> Floats:
    """[contours] the diameter that D stands for, mm: NaN where nothing says."""
    made = []
    for contour in contours(context):
        number = int(contour.number) if contour.number == contour.number else -1
        tool = context.setup.tools.get(number)
        made.append(context.setup.diameter_offsets.get(number, tool.diameter if tool is not None else np.nan))
    return np.array(made, dtype=np.float64)


def _begins_with(context: Context) -> Column:
    """[contours] number of the tool that begins it; -1 where none is named."""
    m = context.motion
    last = len(m) - 1
    tools = [m.tool[min(contour.on_move, last)] if last >= 0 else -1 for contour in contours(context)]
    return np.array(tools, np.int64)


def _diameter_own(context: Context) -> Floats:
    tools = [context.setup.tools.get(int(number)) for number in _begins_with(context)]
    return np.array([tool.diameter if tool is not None else np.nan for tool in tools], dtype=np.float64)


def _tool_taken(context: Context) -> Floats:
    """[contours] the number of a tool that D would name; NaN for D0 and where D is an offset that the shop declares."""
    made = numbers_named(context)
    return np.where((made > 0) & ~one_of(made, context.setup.diameter_offsets), made, np.nan)


FACTS: dict[str, dict[str, Fact]] = {
    "contours": {
        "number": number("", "the D in force", numbers_named),
        "number_of_tool": number("", "the D in force, where it would be a tool's", _tool_taken),
        "begun_by": number("", "number of the tool that begins it; -1 where none is named", _begins_with),
        "named_diameter": number("mm", "the diameter that D stands for", _diameter_named),
        "own_diameter": number("mm", "the diameter of the tool that begins it", _diameter_own),
    },
}  # fmt: skip
