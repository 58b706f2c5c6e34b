"""Gives the facts that spindle-stalls alone looks at."""

from __future__ import annotations

from typing import Any

from gclint.columns import Column
from gclint.cutting import mechanics
from gclint.facts.context import Context
from gclint.facts.cut import NEEDS_FORCE
from gclint.facts.fact import Fact, number


def _torque(context: Context) -> Column:
    loads = context.cutting.loads
    return mechanics.torque(loads.effort.power_high, loads.true_speed)


def _spindle_power(context: Context) -> Any:
    spindle = context.setup.spindle
    if spindle.power is None and not spindle.power_curve:
        return None
    return mechanics.spindle_power(spindle.power_curve, spindle.power, context.cutting.loads.true_speed)


FACTS: dict[str, dict[str, Fact]] = {
    "pieces": {
        "torque_high": number("N m", "torque the cut takes, at most", _torque, NEEDS_FORCE),
        "spindle_power": number("W", "power the spindle has at its true speed here", _spindle_power,
                                "`power` or `power_curve` of [spindle] in shop.toml"),
    },
}  # fmt: skip
