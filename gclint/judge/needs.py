"""What a rule that is not judged really waits for: nothing that is declared is asked for."""

from __future__ import annotations

from gclint.facts import beside, part
from gclint.facts import setup as setup_facts
from gclint.facts.chain import Chain, once
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
_PLACED = (*_BLANK, beside.NEEDS)


def true_need(need: str, chain: Chain) -> str:
    """`need`, or what is lacking before it."""
    if need in _TOOL:
        if _uncalled(chain):
            return needs_in_collet(chain.setup.tools)
        need = NEEDS_STOCK if _all_declared(chain) else need
    blank = chain.setup.stock
    if blank is None or blank.size is None:
        if need in _PLACED:
            return BLANK_AND_ZERO if chain.setup.z_zero is None else BLANK
        return need
    if need in _BLANK and blank.top is None and chain.setup.z_zero is None:
        return Z_ZERO if _feeds(chain) else Z_ZERO_OF_RAPIDS
    return PLACE if need == NEEDS_STOCK else need


@once
def _uncalled(chain: Chain) -> bool:
    """Whether something is cut before the program calls a tool, with nobody knows which one."""
    return -1 in chain.tools and -1 not in chain.setup.tools and bool((chain.motion.tool == -1).any())


@once
def _all_declared(chain: Chain) -> bool:
    feeds = chain.motion.kind != RAPID
    return all(int(n) in chain.setup.tools for n in set(chain.motion.tool[feeds].tolist()))


@once
def _feeds(chain: Chain) -> bool:
    return bool((chain.motion.kind != RAPID).any())
