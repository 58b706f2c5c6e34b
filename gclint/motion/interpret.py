"""Program to Motion: the wrapper of the interpreter kernel."""

from __future__ import annotations

from pathlib import Path

import numpy as np

from gclint.columns import distinct, lean
from gclint.faults import CODE, FaultRows, Faults
from gclint.knowledge.numbers import usual_limits
from gclint.motion.controller_filter import filter_program
from gclint.problem import NotBuilt
from gclint.tables.motion import Motion
from gclint.tables.program import BEHIND_END, BROKEN, DELETED, EXPRESSION, FLOW, Program
from gclint.tables.setup import Assumed, Controller, Limits

TOOLS_BY_T = Assumed(
    "tool changes", "each T word puts its tool into the spindle", "the program has T words but no M6"
)
SLASHED = Assumed(
    "lines that begin with a slash", "not executed", "their switch (block delete) is set at the machine; here it is on"
)
FRAMES = {1: "G16", 2: "G51", 4: "G51.1", 8: "G68"}  # by the bit of the interpreter
UNSTATED = {
    "units-unstated": ("units", "mm (G21)"),
    "distance-unstated": ("distances", "absolute (G90)"),
    "feed-mode-unstated": ("feed mode", "per minute (G94)"),
    "plane-unstated": ("plane of arcs", "XY (G17)"),
    "offset-unstated": ("work offset", "the one that is set at the machine"),
}


# What no kernel reads and a long program may hold as it is throughout.
SELDOM_CHANGED = ("feed", "speed", "spindle", "tool", "offset", "cycle", "feed_line", "speed_line", "tool_line")


def interpret(
    program: Program, controller: Controller, limits: Limits | None = None, folder: Path | None = None
) -> Motion:
    """Execute a program as `controller` would; positions start unknown, and nothing is raised for what it says.

    Only `controller.start_state` counts as stated at the start. Moves are bounded (2,000,000 and 4 per block, at
    most 50,000,000, where `limits` gives no more): a program that asks for more stops there and says so. Loops and
    calls are bounded by `limits`;
    subprograms that the program does not hold are looked for in `folder` (None: nowhere).
    """
    try:
        from gclint.motion.interpreter import Interpreter
    except ImportError as error:
        raise NotBuilt("gclint.motion.interpreter") from error

    flows = needs_following(program)
    if flows:
        from gclint.motion.expand import FaultsOnce, follow

    faults = FaultsOnce() if flows else FaultRows()
    written = program
    program, taken = filter_program(program, controller, faults)
    by_t = selects_without_change(program)
    start_codes = [round(float(code[1:]) * 10) for code in controller.start_state if code[:1] == "G"]
    run = Interpreter(program, controller, start_codes, by_t, faults)
    run.most = max(run.most, (limits or usual_limits()).moves)
    assumed = list(taken)
    followed, beside = None, None
    if needs_following(program):
        followed, beside, more = follow(
            program, run, faults, limits or usual_limits(), folder,
            lambda other, told, inch: filter_program(other, controller, told, inch), program is not written,
        )  # fmt: skip
        assumed += more
    else:
        run.run()
    if by_t:
        assumed.append(TOOLS_BY_T)
    framed = [code for bit, code in FRAMES.items() if run.frames_used & bit]
    if framed:
        value = "read as radius and angle, mirrored, scaled, then turned, in the XY plane"
        assumed.append(Assumed(f"coordinates under {', '.join(framed)}", value, "controllers differ in their order"))
    if bool(np.any(program.faults.kind == CODE["block-unmoving"])):
        assumed.append(SLASHED)
    told = faults.columns()
    assumed += taken_modes(told)
    columns = {name: column[: run.moves] for name, column in run.table.items()}
    for name in SELDOM_CHANGED:
        columns[name] = run.table[name] = lean(columns[name])
    events = {name: column[: run.events] for name, column in run.event_table.items()}
    return Motion(
        **columns,
        **events,
        faults=told,
        stopped_at=run.stopped_at,
        stopped_because=run.stopped_because,
        ended=run.ended or (not run.stopped_at and ends_with_percent(program)),
        assumed=tuple(assumed),
        followed=followed,
        beside=beside,
    )


def needs_following(program: Program) -> bool:
    """Whether any block holds what the interpreter alone cannot execute."""
    return bool(np.any(program.block_flags & (EXPRESSION | FLOW) & ~(program.block_flags & BROKEN)))


def taken_modes(faults: Faults) -> tuple[Assumed, ...]:
    """What is taken to be in force where the program does not say."""
    kinds = distinct(faults.kind).tolist()
    return tuple(
        Assumed(what, value, "the program does not state it")
        for kind, (what, value) in UNSTATED.items()
        if CODE[kind] in kinds
    )


def selects_without_change(program: Program) -> bool:
    """Whether tools are named and M6 never comes: then T itself is taken as the change."""
    return bool(len(executed_words(program, "T"))) and not bool(np.any(np.abs(executed_words(program, "M") - 6) < 1e-3))


def executed_words(program: Program, letter: str) -> np.ndarray[tuple[int], np.dtype[np.float64]]:
    """Values of all words of one letter in blocks that can be executed."""
    words = np.flatnonzero(program.word_letter == ord(letter))
    block = np.searchsorted(program.block_word, words, side="right") - 1
    skipped = program.block_flags[block] & (DELETED | BROKEN | BEHIND_END)
    return np.asarray(program.word_value[words[skipped == 0]])


def ends_with_percent(program: Program) -> bool:
    """Whether the last line is a bare `%` that closes the program."""
    tail = program.data[-4096:].rstrip(b" \t\r\n\x1a")
    before = tail[:-1].rstrip(b" \t")
    return tail.endswith(b"%") and before[-1:] in (b"\n", b"\r") and len(program.block_line) > 0
