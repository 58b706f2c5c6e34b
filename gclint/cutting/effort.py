"""What each piece of path costs the tool and the spindle: force, power, bending, as columns beside the chip's.

A material card gives its cutting force as a law or as a range, and a helix spreads the force by an amount nobody
declares; so every figure has a low and a high end. At the low end the constants are the lowest and the helix is steep;
at the high end the constants are the highest and the helix is shallow, or the edge straight where no helix is declared.
"""

from __future__ import annotations

from dataclasses import fields, replace

import numpy as np

from gclint.columns import Bools, Column, Floats32, lean
from gclint.cutting import mechanics
from gclint.cutting.bites import once_each, pulls_of
from gclint.cutting.mechanics import Law
from gclint.stock import contact as profile
from gclint.tables.cutting import OPERATION, Effort
from gclint.tables.engagement import Engagement, Pieces
from gclint.tables.setup import Assumed, Setup, Tool

CUT_NOTHING = ("drag", "burr")  # they scratch or grind: no chip in the sense of the formulas
BENDING_RULES = ("tool-bends", "tool-breaks")
POWER_RULES = ("spindle-stalls",)
PART = 1_000_000  # pieces at a time: what is worked out on the way takes several times what is kept


def effort(
    engagement: Engagement,
    setup: Setup,
    tools: list[Tool | None],
    row: Column,
    operation: Column,
    feed: Floats32,
    fz: Floats32,
    h: tuple[Floats32, Floats32, Floats32],
) -> Effort:
    """`row`: each piece's tool as an index into `tools`; h: h_ex, that of the tooth that stands out, h_m, mm."""
    if len(engagement.pieces) <= PART:
        return _effort(engagement, setup, tools, row, operation, feed, fz, h)
    columns = {name: np.empty(len(engagement.pieces), np.float32) for name in Effort.__struct_fields__}
    for start in range(0, len(engagement.pieces), PART):
        rows = slice(start, start + PART)
        pieces = Pieces(**{f.name: getattr(engagement.pieces, f.name)[rows] for f in fields(Pieces)})
        chips = (h[0][rows], h[1][rows], h[2][rows])
        part = replace(engagement, pieces=pieces)
        made = _effort(part, setup, tools, row[rows], operation[rows], feed[rows], fz[rows], chips)
        for name, column in columns.items():
            column[rows] = getattr(made, name)
    return Effort(**{name: lean(column) for name, column in columns.items()})


@np.errstate(divide="ignore", invalid="ignore", over="ignore")  # a piece of no length or no width has no figures
def _effort(
    engagement: Engagement, setup: Setup, tools: list[Tool | None], row: Column, operation: Column, feed: Floats32,
    fz: Floats32, h: tuple[Floats32, Floats32, Floats32],
) -> Effort:  # fmt: skip
    pieces, h_m = engagement.pieces, h[2]
    nothing = np.broadcast_to(np.float32(np.nan), (len(pieces),))
    law = mechanics.law_of(setup.material.force) if setup.material else None
    cuts = operation != OPERATION["rapid"]
    idle = np.array([tool is not None and tool.shape in CUT_NOTHING for tool in tools], bool)
    if idle.any():
        cuts &= ~idle[row]
    sideways = cuts & (operation != OPERATION["plunge"]) & (operation != OPERATION["drill"])
    bend, stress = _bending(pieces, setup, tools, row, sideways, nothing)
    if law is None:
        return Effort(nothing, nothing, nothing, nothing, nothing, bend, stress)
    section = np.where(cuts, pieces.removed / pieces.length, np.float32(np.nan)).astype(np.float32)
    kc_low = law.kc(h_m)[0]
    power_low = mechanics.cutting_power(section, feed, kc_low).astype(np.float32)
    power_high = power_low if law.low == law.high else (power_low * np.float32(law.high / law.low))
    mean, force_low, force_high = _forces(law, engagement, tools, row, np.flatnonzero(sideways), fz, h)
    return Effort(mean, force_low, force_high, power_low, power_high, bend, stress)


def _forces(
    law: Law, engagement: Engagement, tools: list[Tool | None], row: Column, sideways: Column, fz: Floats32,
    h: tuple[Floats32, Floats32, Floats32],
) -> tuple[Floats32, Floats32, Floats32]:  # fmt: skip
    """(mean over a turn, largest in a turn, the same at the high end), N, of the pieces `sideways`; NaN elsewhere."""
    contact, profile_of = engagement.contact, engagement.pieces.profile
    made = tuple(np.full(len(row), np.nan, np.float32) for _ in range(3))
    for n, tool in enumerate(tools):
        if tool is None or tool.flutes is None:
            continue
        mine = sideways[row[sideways] == n]
        rows, of_piece = once_each(profile_of[mine])
        if not len(rows):
            continue
        deep, across = profile.MM * contact.depth[rows].max(axis=1, initial=0), 2 * profile.MM * contact.reach[rows]
        lags = tuple(mechanics.edge_lag(deep, across, angle) for angle in mechanics.edge_angles(tool))
        pulls = pulls_of(contact, rows, tool.flutes, (lags[0], lags[1]))
        usual, thick = (fz[mine] * law.fall(h[0][mine]), fz[mine] * h[1][mine] / h[0][mine] * law.fall(h[1][mine]))
        made[0][mine] = law.low * usual * pulls.mean[of_piece]
        made[1][mine] = law.low * thick * pulls.low[of_piece]
        made[2][mine] = law.high * thick * pulls.high[of_piece]
    return made[0], made[1], made[2]


def _bending(
    pieces: Pieces, setup: Setup, tools: list[Tool | None], row: Column, sideways: Bools, nothing: Floats32
) -> tuple[Floats32, Floats32]:
    """(mm/N, 1/mm2) with the force half way up the depth of cut."""
    beams = [None if tool is None else mechanics.beam_of(tool, setup.machine.stiffness) for tool in tools]
    if not any(beams):
        return nothing, nothing
    bend = np.full(len(pieces), np.nan, np.float32)
    stress = bend.copy()
    for n, beam in enumerate(beams):
        if beam is None:
            continue
        mine = np.flatnonzero(sideways & (row == n))
        at = pieces.ap[mine] * np.float32(0.5)
        bend[mine], stress[mine] = beam.bend_per_newton(at), beam.stress_per_newton(at)
    return bend, stress


class Missing(list[tuple[str, str, int]]):
    """(rule, the declaration that would let it judge, moves concerned) of what is not known."""

    def add(self, rules: tuple[str, ...], needs: str, where: Bools) -> None:
        count = int(np.count_nonzero(where))
        self.extend((rule, needs, count) for rule in rules if count)


def taken(of: Effort, setup: Setup) -> list[Assumed]:
    """What was taken as true where it made a difference."""
    said, spindle = [], setup.spindle
    if spindle.power is not None and not spindle.power_curve and bool(np.isfinite(of.power_low).any()):
        because = "only one power is declared, no `power_curve`"
        said.append(Assumed("power of the spindle", f"{spindle.power:g} W at every speed", because))
    if setup.machine.stiffness is None and bool(np.isfinite(of.bend(high=False)).any()):
        because = "its `stiffness` is not declared"
        said.append(Assumed("stiffness of the machine", "no give, the tool alone bends", because))
    return said


def not_known(
    pieces: Pieces, setup: Setup, tools: list[Tool | None], row: Column, operation: Column
) -> Missing:
    """For bending and power."""
    starts = np.concatenate(([True], pieces.move[1:] != pieces.move[:-1]))  # one count per move
    cut = starts & (operation <= OPERATION["ramp"])
    found = Missing()
    material = setup.material
    if material is None or mechanics.law_of(material.force) is None:
        needs = "the material: --material NAME, or `material` in job.toml"
        if material is not None:
            needs = f"a cutting force of {material.name}: [force] on its card"
        found.add((*BENDING_RULES, *POWER_RULES), needs, cut)
    if setup.spindle.power is None and not setup.spindle.power_curve:
        found.add(POWER_RULES, "`power` or `power_curve` of [spindle] in shop.toml", cut)
    for n, tool in enumerate(tools):
        if tool is None or tool.shape not in mechanics.STRAIGHT_BEAMS:
            continue
        called = f"tool {tool.number}" if tool.number >= 0 else "the tool"
        mine = cut & (row == n)
        missing = mechanics.missing_for_beam(tool)
        if missing:
            keys = ", ".join(f"`{key}`" for key in missing)
            known = tool.made_of is None or "made_of" not in missing
            unknown = "" if known else ' ("carbide", "hss" or "carbide-tipped")'
            found.add(BENDING_RULES, f"{keys} of {called} in shop.toml{unknown}", mine)
        if tool.flutes is None:
            found.add(BENDING_RULES, f"`flutes` of {called} in shop.toml", mine)
    return found
