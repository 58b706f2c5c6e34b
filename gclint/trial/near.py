"""What stands for a pair, and what speaks against the fit: cuts near it, grades that contradict, grades out of line."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

import numpy as np
from msgspec import Struct

from gclint.trial.expected import expected
from gclint.trial.fitted import SAME_DEPTH
from gclint.trial.plan import FAULTS
from gclint.trial.scales import scales
from gclint.trial.seen import Seen

if TYPE_CHECKING:
    from gclint.columns import Column
    from gclint.trial.fitted import Columns, Fitted

OF_ENTRY = ("chipping", "debris")  # faults that an entry of another kind says nothing of
SAMPLED = 2000  # times that grades are drawn from the fit


class Contradiction(Struct, frozen=True):
    """Cuts made alike of which a fault spoilt some and left no sign in others."""

    tool: int
    fault: str
    spoilt: tuple[int, ...]  # numbers of cuts
    clean: tuple[int, ...]
    plan: str


class OutOfLine(Struct, frozen=True):
    """More spoilt cuts than the fit leads one to expect: at one speed, or late in the order of cutting (`speed` 0)."""

    tool: int
    fault: str
    speed: float  # rev/min, true
    dial: str | None
    seen: int
    expected: float
    of: int  # cuts
    edge: float = 0.0  # m/min


def spoils(cut: Seen, entry: str) -> str:
    """The worst fault that spoils a cut, "" where none does; but for what comes of an entry of another kind."""
    over = {fault: cut.level[fault] - first_bad(fault) for fault in FAULTS
            if fault in cut.level and (cut.entry == entry or fault not in OF_ENTRY)}  # fmt: skip
    worst = max(over, key=lambda fault: over[fault], default="")
    return worst if worst and over[worst] >= 0 else ""


def first_bad(fault: str) -> int:
    """Place of the first word of a fault's scale that spoils a cut."""
    return scales()[fault].index(expected().fault[fault].from_)


def beside(cuts: tuple[Seen, ...], fz: float, edge: float, entry: str) -> tuple[Seen, ...]:
    """The cuts at this very speed with a chip near this one, the nearest first, the same entry before the other."""
    reach = math.log(expected().near.factor)
    made = [(abs(math.log(cut.fz / fz)), cut.entry != entry, cut) for cut in cuts
            if same_speed(cut.edge, edge) and abs(math.log(cut.fz / fz)) <= reach]  # fmt: skip
    return tuple(cut for _, _, cut in sorted(made, key=lambda one: (one[1], one[0])))


def same_speed(edge: float, other: float) -> bool:
    return abs(edge / other - 1) < SAME_DEPTH


def stand_for(near: tuple[Seen, ...], entry: str) -> bool:
    """Whether these cuts bear a pair: the nearest of its own entry was good, and few others were spoilt.

    A plunge that spoilt nothing at all stands for a ramp as well.
    """
    good = [cut for cut in near if not spoils(cut, cut.entry) and (cut.entry == entry or entry == "ramp")]
    spoilt = [cut for cut in near if spoils(cut, entry)]
    own = [cut for cut in near if cut.entry == entry] or good
    if not good or spoils(own[0], entry):
        return False
    return len(good) >= expected().near.good_for_spoilt * len(spoilt)


def contradictions(cuts: tuple[Seen, ...]) -> tuple[Contradiction, ...]:
    """Repeats that do not agree: a fault spoilt one and left not a trace in another."""
    alike: dict[tuple[object, ...], list[Seen]] = {}
    for cut in cuts:
        key = (cut.plan, cut.tool, cut.set_speed, cut.dial, cut.feed, cut.entry, cut.depth, cut.batch)
        alike.setdefault(key, []).append(cut)
    made = []
    for group in alike.values():
        for fault in FAULTS if len(group) > 1 else ():
            bad = tuple(cut.number for cut in group if cut.level.get(fault, 0) >= first_bad(fault))
            clean = tuple(cut.number for cut in group if cut.level.get(fault, 1) == 0)
            if bad and clean:
                made.append(Contradiction(group[0].tool, fault, bad, clean, group[0].plan))
    return tuple(made)


def out_of_line(cuts: tuple[Seen, ...], columns: Columns, fitted: dict[str, Fitted]) -> tuple[OutOfLine, ...]:
    """Each fault and speed with more spoilt cuts than chance allows, and each fault that grows along the cuts."""
    made: list[OutOfLine] = []
    rng = np.random.default_rng(1)
    for fault, one in fitted.items():
        own = tuple(cut for cut in cuts if fault in cut.level)
        if one.draws is None or not own:
            continue
        share = one.draws.share(columns.of(own), one.word)
        share = share[rng.integers(len(share), size=SAMPLED)]
        drawn = rng.random(share.shape) < share
        bad = np.array([cut.level[fault] >= one.word for cut in own])
        for tool in sorted({cut.tool for cut in own}):
            of_tool = np.array([cut.tool == tool for cut in own])
            made += _at_speeds(own, of_tool, bad, drawn, share, fault)
            late = _late(own, of_tool, bad, drawn, share, fault)
            made += [late] if late else []
    return tuple(made)


def _at_speeds(
    cuts: tuple[Seen, ...], of_tool: Column, bad: Column, drawn: Column, share: Column, fault: str
) -> list[OutOfLine]:
    known, made = expected().check, []
    speeds = {round(cut.edge, 2): cut for cut, own in zip(cuts, of_tool) if own}
    for cut in speeds.values() if len(speeds) > 1 else ():
        here = of_tool & np.array([same_speed(other.edge, cut.edge) for other in cuts])
        seen, mean = int(bad[here].sum()), float(share[:, here].sum(axis=1).mean())
        as_many = float((drawn[:, here].sum(axis=1) >= seen).mean())
        if as_many < known.chance and seen >= mean + known.more:
            made.append(OutOfLine(cut.tool, fault, cut.speed, cut.dial, seen, mean, int(here.sum()), cut.edge))
    return made


def _late(
    cuts: tuple[Seen, ...], of_tool: Column, bad: Column, drawn: Column, share: Column, fault: str
) -> OutOfLine | None:
    """More of a fault in the second half of one plan's cuts, and less in the first, than the fit expects."""
    known = expected().check
    if len({cut.plan for cut in cuts}) != 1:
        return None
    numbers = np.array([cut.number for cut in cuts])
    half = float(np.median(numbers[of_tool]))
    late, early = of_tool & (numbers > half), of_tool & (numbers <= half)
    grown = bad[late].sum() - bad[early].sum()
    of_chance = drawn[:, late].sum(axis=1) - drawn[:, early].sum(axis=1)
    mean = float(share[:, late].sum(axis=1).mean())
    if float((of_chance >= grown).mean()) < known.chance and bad[late].sum() >= mean + known.more:
        first = next(cut for cut, own in zip(cuts, late) if own)
        return OutOfLine(first.tool, fault, 0.0, None, int(bad[late].sum()), mean, int(late.sum()))
    return None
