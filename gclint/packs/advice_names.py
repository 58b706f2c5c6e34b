"""The names by which a rule asks for a worked-out change, each with the table whose rows it is worked out for.

`gclint.advice.change` works them out; compiling a rule needs no more than this.
"""

from __future__ import annotations

ADVICE_ON = {
    "chip-feed": "pieces",
    "slower-edge": "pieces",
    "faster-edge": "pieces",
    "reachable-pair": "pieces",
    "plunge-feed": "entries",
    "ramp": "entries",
    "passes": "pieces",
    "less-bending": "pieces",
    "less-stress": "pieces",
    "less-power": "pieces",
    "start-spindle": "passes",
    "wait-unit": "waits",
    "missing-modes": "program",
    "within-axes": "moves",
}
