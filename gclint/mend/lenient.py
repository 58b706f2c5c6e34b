"""What a program means where its controller refuses blocks: the motion of a controller that takes every arc and works
out compensation. Copies that write such blocks otherwise are proved against it."""

from __future__ import annotations

from dataclasses import replace

import msgspec

from gclint.mend.case import Case
from gclint.tables.motion import Motion
from gclint.tables.setup import Controller

MOST_OFF = 0.05  # mm; an arc whose end lies further from its circle is no arc that was only rounded


def lenient(card: Controller) -> Controller:
    """The card of a controller that refuses no arc and no compensation; everything else as it was."""
    taken = ("G41", "G42", "G41.1", "G42.1", "G40", "arc-turns", "arc-radius", "one-centre-word", "full-circles")
    states = {name: "does" if name in taken else state for name, state in card.states.items()}
    return msgspec.structs.replace(
        card, states=states, compensation="does", compensation_rules="reads-ahead", arc_tolerance=MOST_OFF,
        arc_tolerance_inch=MOST_OFF, arc_tolerance_share=1.0, arc_tolerance_most=MOST_OFF,
    )  # fmt: skip


def plain_motion(case: Case) -> Motion:
    """The moves as written, contours not yet shifted by the tool's radius."""
    from gclint.motion.interpret import interpret

    return interpret(case.program, lenient(case.setup.controller))


def meant(case: Case) -> Case:
    """The case with the motion that is meant; its tables of cutting are those of the real controller."""
    from gclint.motion.compensate import compensate

    card = lenient(case.setup.controller)
    setup = msgspec.structs.replace(case.setup, controller=card)
    motion = compensate(plain_motion(case), setup, case.program)
    return Case(case.draft, replace(case.run, tables=replace(case.tables, motion=motion)), case.asked)
