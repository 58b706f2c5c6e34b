"""Tells milling programs from files for other machines; refuses only what is surely something else.

Refusing a milling program is far worse than reading a file for another machine, so each test asks for several signs
at once. A program without any motion is not refused here: the rule never-cuts judges it.
"""

from __future__ import annotations

import numpy as np

from gclint.columns import Longs, distinct, one_of
from gclint.problem import Problem
from gclint.tables.program import BROKEN, Program

HEATERS = (82, 83, 104, 109, 140, 190)  # M words of extruders and heaters
CODE_LETTERS = b"GMXYZFST"


class NoProgram(Problem):
    """The content is surely something else than a milling program; a folder may well hold such files."""


def refuse_other_kinds(program: Program) -> None:
    """Raise NoProgram where the content is that of a 3D printer, a laser, a lathe, or of no program at all."""
    for sign in (printer, laser, lathe, prose):
        found = sign(program)
        if found:
            raise NoProgram(found[0], program.name, found[1])


def of(program: Program, letter: str) -> Longs:
    """The words of this letter."""
    return np.flatnonzero(program.word_letter == ord(letter))


def coded(program: Program, letter: str, *values: float) -> Longs:
    """The words that are one of these codes."""
    words = of(program, letter)
    return words[one_of(program.word_value[words], values)]


def block_of(program: Program, words: Longs) -> Longs:
    """The blocks in which these words stand, each once, ascending."""
    return distinct(np.searchsorted(program.block_word, words, side="right") - 1)


def printer(program: Program) -> tuple[str, int] | None:
    """Heaters are set and E words feed the filament."""
    filament, heaters = of(program, "E"), coded(program, "M", *HEATERS)
    if len(heaters) and len(filament) >= 3:
        return (
            "this is a file for a 3D printer (it heats, and E words feed filament); gclint reads milling programs",
            int(program.block_line[block_of(program, heaters)[0]]),
        )
    return None


def laser(program: Program) -> tuple[str, int] | None:
    """Cuts without any Z, and a beam that is switched or whose power follows the path."""
    if len(of(program, "Z")) or not len(coded(program, "G", 1, 2, 3)):
        return None
    power, path = block_of(program, of(program, "S")), np.concatenate((of(program, "X"), of(program, "Y")))
    on_path = np.intersect1d(power, block_of(program, path))
    levels = np.unique(program.word_value[of(program, "S")])
    dynamic = block_of(program, coded(program, "M", 4))
    switched = block_of(program, coded(program, "M", 3, 4))
    if len(on_path) >= 3 and len(levels) >= 2:
        line = on_path[0]
    elif len(dynamic) and len(power):
        line = dynamic[0]
    elif len(switched) >= 3 and len(block_of(program, coded(program, "M", 5))) >= 3:
        line = switched[0]
    else:
        return None
    return (
        "this is a file for a laser (it never moves Z, and S or M3 and M5 switch the beam along the path); "
        "gclint reads milling programs",
        int(program.block_line[line]),
    )


def lathe(program: Program) -> tuple[str, int] | None:
    """X and Z without any Y, and a sign that only a lathe has: constant surface speed, a speed limit, T0101."""
    if len(of(program, "Y")) or not (len(of(program, "X")) and len(of(program, "Z"))):
        return None
    surface_speed = block_of(program, coded(program, "G", 96))
    limit = np.intersect1d(block_of(program, coded(program, "G", 50, 92)), block_of(program, of(program, "S")))
    tools = of(program, "T")
    four_digits = (program.word_end[tools] - program.word_start[tools] == 5) & (program.word_value[tools] >= 100)
    for signs in (surface_speed, limit, block_of(program, tools[four_digits])):
        if len(signs):
            return (
                "this is a file for a lathe (X and Z without any Y, and lathe words); gclint reads milling programs",
                int(program.block_line[signs[0]]),
            )
    return None


def prose(program: Program) -> tuple[str, int] | None:
    """Hardly a line reads as a block."""
    if not np.any(program.block_flags & BROKEN):
        return None
    words = np.isin(program.word_letter, np.frombuffer(CODE_LETTERS, np.uint8)) & ~np.isnan(program.word_value)
    readable = np.zeros(len(program.block_line), bool)
    readable[block_of(program, np.flatnonzero(words))] = True
    text = np.flatnonzero((program.block_flags & BROKEN != 0) & ~readable)
    if len(text) and (not readable.any() or len(text) > max(4, 4 * int(np.count_nonzero(readable)))):
        return (
            "hardly a line of this file can be read as a block of words and numbers; gclint reads milling programs",
            int(program.block_line[text[0]]),
        )
    return None
