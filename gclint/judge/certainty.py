"""Which findings rest on something taken as given: they are told behind those that rest on what is declared."""

from __future__ import annotations

from typing import Any

from gclint.facts.context import Context, once
from gclint.packs.pack import Rule
from gclint.tables.setup import Assumed

# Tables whose rows are what a tool takes off the modelled blank.
OF_THE_STOCK = ("pieces", "entries", "passes")
BLANK = ("Z zero", "stock top", "stock in X", "stock in Y")
# Facts that follow from how fast the tool turns, and how fast it is fed.
BY_SPEED = (
    "true_speed", "fz", "h_ex", "h_m", "edge_speed", "chip_", "edge_", "force", "power", "torque", "bend", "stress",
    "rim",
)  # fmt: skip
SPEEDS = ("true speed",)
FEEDS = ("reached feed",)


def rests_on(rule: Rule, tool: int, context: Context) -> tuple[str, ...]:
    """The assumptions (`Assumed.what`) that a finding of this rule about this tool of the program rests on."""
    key = (rule.name, tool)
    kept = _kept(context)
    if key not in kept:
        kept[key] = _rests_on(rule, tool, context)
    return kept[key]


@once
def _kept(context: Context) -> dict[tuple[str, int], tuple[str, ...]]:
    return {}


@once
def _assumed(context: Context) -> tuple[Assumed, ...]:
    steps = (context.motion, context.setup, context.timing, context.engagement, context.cutting)
    return tuple(dict.fromkeys(taken for step in steps for taken in step.assumed))


def _rests_on(rule: Rule, tool: int, context: Context) -> tuple[str, ...]:
    facts = set().union(*(_facts(part.code) for part in (rule.when, rule.found, rule.low, rule.high) if part))
    modelled = rule.text.looks_at in OF_THE_STOCK
    wanted: list[str] = []
    if modelled or any(name.startswith(("depth", "stock.")) for name in facts):
        wanted += BLANK
    if modelled or any(name.startswith("tool.") for name in facts):
        wanted += _about_tool(tool, context)
    if any(name.startswith(BY_SPEED) for name in facts):
        wanted += SPEEDS
        wanted += [each.what for each in _assumed(context) if each.what.startswith("dial mark ")]
        wanted += FEEDS
    return tuple(dict.fromkeys(each.what for each in _assumed(context) if each.what in wanted))


def _about_tool(tool: int, context: Context) -> list[str]:
    known = context.setup.tools.get(tool)
    called = known.called if known else ""
    own = "the tool" if tool == -1 else f"tool {tool}"
    taken = ["tool in the spindle"] if tool == -1 else []
    return [own, called, f"point angle of {called}", f"shape of {called}", *taken]


def _facts(code: Any) -> set[str]:
    if not isinstance(code, list):
        return set()
    if code[:1] == ["fact"]:
        return {code[1]}
    return set().union(*(_facts(part) for part in code)) if code else set()
