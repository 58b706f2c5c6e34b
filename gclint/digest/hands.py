"""What is done before a hand goes near a tool, and before it turns again: one wording for every sheet and program.

Common practice at any machine; the machine's own manual and the rules of the workshop come first.
"""

from __future__ import annotations

from gclint.tables.setup import Spindle

OFF = "Spindle off; wait until it stands still."
HANDS_CLEAR = "Hands clear; then press start."


def by_hand(spindle: Spindle) -> bool:
    """Say whether a person switches the spindle: declared so, or a router with a dial of which nothing is said."""
    return spindle.started == "by-hand" or (spindle.started is None and spindle.kind == "dial")


def off(left_on: bool) -> str:
    """Return the first step of every stop; `left_on`: the program itself does not switch the spindle off there."""
    return "Spindle off (the program leaves it on); wait until it stands still." if left_on else OFF


def before_the_collet(spindle: Spindle) -> str:
    """Return what makes sure that the tool cannot start while a hand is at the collet."""
    if by_hand(spindle):
        return "Router unplugged before a hand goes to the collet."
    return "Spindle made unable to start, as the machine's manual says, before a hand goes to the collet."


def go_on(spindle: Spindle, at_the_collet: bool, program_starts: bool | None) -> str:
    """Return the last step; `program_starts`: whether it starts the spindle before its next cut, None: it has none."""
    if program_starts is None:
        return HANDS_CLEAR
    if by_hand(spindle):
        plug = "router plugged in, " if at_the_collet else ""
        return f"Hands clear; {plug}spindle on and up to speed; then press start."
    if program_starts:
        return "Hands clear; then press start: the program starts the spindle."
    return "Hands clear; spindle on again and up to speed, since the program does not start it; then press start."
