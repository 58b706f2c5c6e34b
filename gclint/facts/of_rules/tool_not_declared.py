"""Gives the facts that tool-not-declared alone looks at."""

from __future__ import annotations

from gclint.facts.context import Context
from gclint.facts.fact import Fact, number, text
from gclint.tables.setup import Tool

MOST_NAMED = 8  # tools that a question names


def _by_hand(context: Context) -> list[Tool]:
    tools = context.setup.tools
    return [tools[n] for n in sorted(tools) if n >= 0 and not tools[n].declared_in.startswith("comment")]


def _by_hand_words(context: Context) -> str:
    """'1 (eighth down-cut), 3 (flat, 3 mm)'."""
    tools = _by_hand(context)
    named = [f"{tool.number} ({tool.name or f'{tool.shape}, {tool.diameter:g} mm'})" for tool in tools[:MOST_NAMED]]
    return ", ".join([*named, *([f"{len(tools) - MOST_NAMED} more"] if len(tools) > MOST_NAMED else [])])


FACTS: dict[str, dict[str, Fact]] = {
    "tools": {
        "others_declared": number("", "number of tools that are declared by hand", lambda c: len(_by_hand(c))),
        "declared_tools": text("the tools that are declared by hand, in words; empty if none is",
                               lambda c: _by_hand_words(c)),
    },
}  # fmt: skip
