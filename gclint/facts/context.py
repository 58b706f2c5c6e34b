"""Everything known about one program, with the sums that several tables of facts need, each worked out once."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import cached_property, wraps
from typing import Any, TypeVar

import numpy as np

from gclint.columns import Bools, Column, Floats, Ints, distinct, one_of
from gclint.tables.cutting import Cutting, ToolWindows
from gclint.tables.engagement import Engagement
from gclint.tables.motion import COMPENSATED, EVENT, HOME, MACHINE, OTHER_FRAME, PROBE, RAPID, Z_WORD, Motion
from gclint.tables.program import Program
from gclint.tables.setup import Controller, DialMark, Setup, Stock, Tool
from gclint.tables.timing import Timing

ON = (EVENT["spindle-cw"], EVENT["spindle-ccw"])
Made = TypeVar("Made")
STOPS = (EVENT["stop"], EVENT["optional-stop"], EVENT["pallet-stop"])


@dataclass(frozen=True)
class Context:
    """The tables of every step. Nothing here is changed after it is made."""

    program: Program
    motion: Motion
    timing: Timing
    engagement: Engagement
    cutting: Cutting
    setup: Setup
    advises: bool = True  # whether findings say what to set

    @cached_property
    def kept(self) -> dict[Callable[[Context], Any], Any]:
        """What `once` has worked out."""
        return {}

    @cached_property
    def plain_advice(self) -> dict[str, str]:
        """The text of each change that was worked out -> what its rule says where nothing is."""
        return {}

    @cached_property
    def tools(self) -> list[int]:
        """Numbers of the tools that move, ascending; -1 where the program never says."""
        return [int(number) for number in distinct(self.motion.tool)]

    def tool(self, number: int) -> Tool | None:
        return self.setup.tools.get(number)

    def windows(self, number: int) -> ToolWindows | None:
        return self.cutting.windows.get(number)

    @cached_property
    def box(self) -> Stock | None:
        """The blank that was modelled, declared or assumed."""
        return self.engagement.box if self.engagement.box is not None else self.setup.stock

    @cached_property
    def in_contact(self) -> Bools:
        """[moves] whether the move removes material."""
        touched = np.zeros(len(self.motion), dtype=bool)
        pieces = self.engagement.pieces
        touched[pieces.move[pieces.removed > 0]] = True
        return touched

    @cached_property
    def cuts(self) -> Bools:
        """[moves] moves at feed that remove material; of tools and places that are not known, all moves at feed."""
        m = self.motion
        feeds: Bools = m.kind != RAPID
        if self.engagement.box is None:
            return feeds
        apart = m.flags & (OTHER_FRAME | COMPENSATED | PROBE) != 0
        lost = feeds & (m.flags & PROBE == 0) & (apart | ~(np.isfinite(m.x1) & np.isfinite(m.y1) & np.isfinite(m.z1)))
        if self.engagement.swept_moves is not None:  # what lies behind a bound of work is taken as meant to cut
            lost[self.engagement.swept_moves :] |= feeds[self.engagement.swept_moves :]
        if all(number in self.setup.tools for number in self.tools):
            return np.asarray(feeds & (self.in_contact | lost))
        return np.asarray(feeds & (self.in_contact | lost | ~one_of(m.tool, list(self.setup.tools))))

    @cached_property
    def placed(self) -> Bools:
        """[moves] whether both ends are known and belong to the one frame that the extent is told in."""
        m = self.motion
        own: Bools = (m.flags & (MACHINE | HOME | OTHER_FRAME)) == 0
        return own & np.isfinite(m.x1) & np.isfinite(m.y1) & np.isfinite(m.z1)

    @cached_property
    def lowest(self) -> Floats:
        """[moves] lowest Z of the tip along the move, mm (arcs outside G17 count by their ends)."""
        return np.fmin(self.motion.z0, self.motion.z1)

    @cached_property
    def depth_line(self) -> Ints:
        """[moves] line of the Z word in force, 0 if there is none."""
        own = np.where((self.motion.flags & Z_WORD) != 0, np.arange(len(self.motion)), -1)
        last = np.maximum.accumulate(own) if len(own) else own
        return np.where(last >= 0, self.motion.line[np.maximum(last, 0)], 0).astype(np.int32)

    @cached_property
    def clock(self) -> Floats:
        """[moves + 1] seconds from the start to the beginning of each move, dwells left out; unknown times as 0."""
        unknown = self.untimed[-1] > 0
        return _summed(np.nan_to_num(self.timing.seconds) if unknown else self.timing.seconds)

    @cached_property
    def untimed(self) -> Column:
        """[moves + 1] how many moves before each one have no known time."""
        unknown = np.isnan(self.timing.seconds)
        return _summed(unknown) if unknown.any() else np.zeros(len(unknown) + 1, np.int64)

    @cached_property
    def dwell(self) -> Floats:
        """[events] seconds of each dwell, 0 for other events."""
        m = self.motion
        seconds = np.nan_to_num(m.event_value) * self.setup.controller.dwell_seconds
        return np.where(m.event_kind == EVENT["dwell"], seconds, 0.0)

    @cached_property
    def offset_words(self) -> tuple[Column, Column]:
        """(code number x 10, block) of G10, G52 to G59.3 and G92 to G92.3, in the order of the text."""
        p = self.program
        with np.errstate(invalid="ignore"):
            value = p.word_value
            near = (value == 10) | ((value >= 52) & (value < 60)) | ((value >= 92) & (value < 92.5))
        words = np.flatnonzero(near & (p.word_letter == ord("G")))
        codes = np.rint(value[words] * 10).astype(np.int64)
        return codes, np.searchsorted(p.block_word, words, side="right") - 1

    @cached_property
    def stop_events(self) -> Column:
        """Rows of the events at which the machine waits for a person on this controller."""
        return stop_events(self.motion, self.setup.controller)

    @cached_property
    def spindle_stops(self) -> tuple[int, ...]:
        """Kinds of the events at which the spindle stops on this controller."""
        controller = self.setup.controller
        changes = () if controller.tool_change == "ignores" else (EVENT["change"],)
        return (EVENT["spindle-off"], *changes, *(STOPS if controller.program_stop == "stops-spindle" else ()))

    @cached_property
    def turning(self) -> Column:
        """[moves] int8: 1 the spindle turns, 0 it stands (never started, M5, or a stop that halts it)."""
        m = self.motion
        turning: Column = (np.abs(m.spindle) == 1).astype(np.int8)
        if self.setup.controller.program_stop == "stops-spindle":
            halts = np.flatnonzero(one_of(m.event_kind, STOPS))
            starts = np.flatnonzero(one_of(m.event_kind, ON))
            until = np.append(m.event_move[starts], len(turning))[np.searchsorted(starts, halts)]
            still = np.bincount(m.event_move[halts], minlength=len(turning) + 1) - np.bincount(
                until, minlength=len(turning) + 1
            )
            turning[np.cumsum(still)[:-1] > 0] = 0
        return turning

    @cached_property
    def chosen_mark(self) -> DialMark | None:
        return next((mark for mark in self.setup.spindle.dial if mark.mark == self.setup.dial), None)

    @cached_property
    def entry_moves(self) -> tuple[Column, Column]:
        """Rows of the moves of all entries, one entry after the other, and where each entry's begin among them.

        Of an entry into no solid material only the descent: the cut that begins there may be half the program away.
        """
        entries = self.engagement.entries
        first = entries.first_move.astype(np.int64)
        count = np.where(entries.solid > 0, entries.last_move - first + 1, 1)
        starts = np.cumsum(count) - count
        return np.arange(int(count.sum())) + np.repeat(first - starts, count), starts

    @cached_property
    def cutting_feed(self) -> dict[int, float]:
        """Feed of each tool's own level cuts, mm/min, at or over which a fifth of their length runs.

        Not the median: a slow last operation does not stand for the tool.
        """
        pieces, loads, m = self.engagement.pieces, self.cutting.loads, self.motion
        usual: dict[int, float] = {}
        level = (loads.operation <= 2) & (pieces.drop <= 0) & (m.kind[pieces.move] != RAPID)
        feeds = m.feed[pieces.move]
        level &= np.isfinite(feeds)
        number = m.tool[pieces.move]
        for tool in self.tools:
            own = np.flatnonzero(level & (number == tool))
            if len(own) == 0:
                continue
            order = own[np.argsort(feeds[own], kind="stable")]
            length = np.cumsum(pieces.length[order])
            usual[tool] = float(feeds[order[int(np.searchsorted(length, 0.8 * length[-1]))]])
        return usual


def stop_events(motion: Motion, controller: Controller) -> Column:
    """Rows of the events at which the machine waits for a person on this controller."""
    kinds = [] if controller.program_stop in ("ignores", "refuses") else list(STOPS)
    if controller.tool_change in ("stops", "does"):
        kinds.append(EVENT["change"])
    return np.flatnonzero(one_of(motion.event_kind, kinds))


def _summed(values: Column) -> Column:
    """[n + 1] the sum of the values before each."""
    sums = np.zeros(len(values) + 1, np.int64 if values.dtype == bool else np.float64)
    np.cumsum(values, out=sums[1:])
    return sums


def once(build: Callable[[Context], Made]) -> Callable[[Context], Made]:
    """A sum that several facts of one table need, worked out once for each program."""

    @wraps(build)
    def kept(context: Context) -> Made:
        if build not in context.kept:
            context.kept[build] = build(context)
        made: Made = context.kept[build]
        return made

    return kept
