"""What each tooth bites: one row per row of Pieces, plus the windows each is held against."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from msgspec import Struct

from gclint.columns import Bytes, Column, Floats, Floats32, Ints
from gclint.tables.setup import Assumed, Window

# operations a window may be given for
OPERATIONS: tuple[str, ...] = ("slot", "side", "finish", "ramp", "plunge", "drill", "rapid")
OPERATION = {name: number for number, name in enumerate(OPERATIONS)}


class Effort(Struct, frozen=True, eq=False):
    """Rows as in Pieces; each figure from a low to a high end, as cutting forces are known as ranges.

    NaN where a fact is missing, for rapids, and (power apart) for straight plunges, whose force lies along the axis.
    """

    force_mean: Floats32  # N, across the tool's axis on average over a turn, at its low end
    force_low: Floats32  # N, the same at its largest during a turn
    force_high: Floats32
    power_low: Floats32  # W, on average
    power_high: Floats32
    bend_per_newton: Floats32  # mm/N: how far the tip moves aside for a force at half the depth of cut
    stress_per_newton: Floats32  # 1/mm2: largest bending stress in the tool for it

    def bend(self, high: bool, rows: Column | slice = slice(None)) -> Floats32:
        """mm, of the tip, of these rows: by the mean force at the low end, by the largest at the high end.

        A wall is made while no tooth is in its thickest chip, so the mean is the least that must show on it.
        """
        with np.errstate(invalid="ignore", over="ignore"):
            return (self.force_high if high else self.force_mean)[rows] * self.bend_per_newton[rows]

    def stress(self, high: bool, rows: Column | slice = slice(None)) -> Floats32:
        """N/mm2, of these rows."""
        with np.errstate(invalid="ignore", over="ignore"):
            return (self.force_high if high else self.force_low)[rows] * self.stress_per_newton[rows]


@dataclass(frozen=True, slots=True, eq=False)
class Loads:
    """Rows as in Pieces; NaN where a fact is missing (flutes, speed, feed, material)."""

    operation: Bytes  # index into OPERATIONS
    feed: Floats32  # fastest feed reached on the move, mm/min (`Timing.peak`); all below follows from it
    true_speed: Floats32  # rev/min
    fz: Floats32  # feed per tooth, mm
    effective_diameter: Floats32  # diameter that cuts at this depth, mm
    h_ex: Floats32  # largest chip thickness after radial thinning and tool shape, mm
    h_thick: Floats32  # h_ex of the tooth that stands out farthest, by the tool's declared runout
    h_m: Floats32  # mean chip thickness, mm
    edge_speed: Floats32  # at the effective diameter, m/min
    chip_low: Floats32  # window of h_ex for this tool, operation and edge speed, mm; NaN = no limit known
    chip_high: Floats32
    edge_low: Floats32  # window of edge speed, m/min
    edge_high: Floats32
    chip_judged: Bytes  # 1 where DESIGN section 7 allows the chip to be judged (no entries, drills, V tools, skims)
    governs: Ints  # source line of the F word in force
    effort: Effort  # force, power and bending


class ToolWindows(Struct, frozen=True):
    """Windows of one tool in this material, for reports and advice. None where the card is silent."""

    chip: dict[str, Window]  # by operation
    edge_speed: Window | None
    ramp_advised: Window | None  # degrees
    ramp_limit: Window | None  # degrees, high = alarm
    plunge: str | None  # "no", "yes", "peck", "drill"
    plunge_depth: Window | None  # mm
    plunge_feed_share: Window | None  # of the cutting feed
    depth_slot: Window | None  # mm
    depth_side: Window | None  # mm


class Cutting(Struct, frozen=True, eq=False):
    loads: Loads
    windows: dict[int, ToolWindows]  # by program tool number
    true_speed_of: Floats  # [moves] rev/min, NaN unknown
    dial_mark: tuple[str, ...]  # marks used, in order of first use ("" where the speed is on no mark)
    assumed: tuple[Assumed, ...]
    not_judged: tuple[tuple[str, str, int], ...]  # (rule, needs, count)
