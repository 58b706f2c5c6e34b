"""What a rule that is not judged really waits for: nothing that is declared is asked for."""

from __future__ import annotations

from gclint.facts import part
from gclint.facts import setup as setup_facts
from gclint.facts.context import Context, once
from gclint.setup.toolbox import needs_in_collet
from gclint.stock.assume import NEEDS_STOCK
from gclint.tables.motion import RAPID

BLANK = 'the blank and its place (`[stock]` in job.toml, or --stock "120 x 80 x 18 mm at 0 0")'
BLANK_AND_ZERO = f"{BLANK}, and where Z zero lies (`z_zero` in job.toml)"
# What asks for the blank lacks only this where the blank is declared and no cut goes below Z0.
Z_ZERO = "where Z zero lies (`z_zero` in job.toml): no cut goes below Z0, so the stock's top may be anywhere"
Z_ZERO_OF_RAPIDS = "where Z zero lies (`z_zero` in job.toml): no move at feed shows where the stock's top is"
PLACE = "moves whose place is known: an absolute X, Y and Z before them"
_TOOL = ("the tool", setup_facts.TOOL)
_BLANK = (NEEDS_STOCK, setup_facts.STOCK, part.STOCK)
_PLACED = (*_BLANK, setup_facts.STOCK_PLACE)


def true_need(need: str, context: Context) -> str:
    """`need`, or what is lacking before it."""
    if need in _TOOL:
        if _uncalled(context):
            return needs_in_collet(context.setup.tools)
        need = NEEDS_STOCK if _all_declared(context) else need
    blank = context.setup.stock
    if blank is None or blank.size is None:
        if need in _PLACED:
            return BLANK_AND_ZERO if context.setup.z_zero is None else BLANK
        return need
    if need in _BLANK and blank.top is None and context.setup.z_zero is None:
        return Z_ZERO if _feeds(context) else Z_ZERO_OF_RAPIDS
    return PLACE if need == NEEDS_STOCK else need


@once
def _uncalled(context: Context) -> bool:
    """Whether something is cut before the program calls a tool, with nobody knows which one."""
    return -1 in context.tools and -1 not in context.setup.tools and bool((context.motion.tool == -1).any())


@once
def _all_declared(context: Context) -> bool:
    feeds = context.motion.kind != RAPID
    return all(int(n) in context.setup.tools for n in set(context.motion.tool[feeds].tolist()))


@once
def _feeds(context: Context) -> bool:
    return bool((context.motion.kind != RAPID).any())
