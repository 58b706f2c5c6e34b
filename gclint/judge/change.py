"""What to change: numbers in the program's own units, on the line of the word that governs."""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
from msgspec import Struct

from gclint.cutting.advice import advise_chip, feed_for_chip
from gclint.cutting.formulas import ramp_length
from gclint.cutting.mechanics import law_of
from gclint.judge.chain import Chain
from gclint.judge.facts import View
from gclint.judge.finding import Change, SetWord
from gclint.judge.places import find_word
from gclint.judge.wording import amount
from gclint.motion.table import INVERSE_TIME, PER_REV, RAPID
from gclint.setup.numbers import model_number

MOST_PASSES = 20  # beyond that another tool is the answer
ROOM = 1.1  # the force of a shallower pass acts a little nearer to the tip


class Worst(Struct, frozen=True, eq=False):
    """The worst place of one finding."""

    row: View  # one row
    move: int  # row of Motion; -1 where the finding belongs to no move
    inch: bool
    high: float  # upper limit of what was found, in the unit it was found in; NaN if there is none
    governing: tuple[int, ...] = ()  # lines of the F words that govern the places of this finding

    @property
    def chain(self) -> Chain:
        return self.row.chain

    def number(self, name: str) -> float:
        """A fact in the unit its column is kept in; NaN where unknown."""
        return float(np.ravel(self.row.value(name))[0])

    def text(self, name: str) -> str:
        codes, words = self.row.value(name)
        code = int(np.ravel(codes)[0])
        return words[code] if code >= 0 else ""

    @property
    def line(self) -> int:
        return int(self.chain.motion.line[self.move])

    @property
    def feed_line(self) -> int:
        return int(self.chain.motion.feed_line[self.move]) or self.line

    def plain_feed(self) -> bool:
        """Whether F is a length per minute here (not inverse time, not per revolution)."""
        return int(self.chain.motion.flags[self.move]) & (INVERSE_TIME | PER_REV) == 0

    def feed_word(self, feed: float, down: bool) -> float:
        """mm/min as an F of this program, rounded to the side that keeps it inside its limit."""
        value, step = (feed / 25.4, 0.1) if self.inch else (feed, 1.0 if feed >= 20 else 0.1)
        steps = math.floor(value / step + 1e-9) if down else math.ceil(value / step - 1e-9)
        return round(steps * step, 4)

    def set_feeds(self, to: float) -> list[SetWord]:
        """The same new F for every word that governs a place of this finding."""
        lines = self.governing or (self.feed_line,)
        words = [(line, find_word(self.chain.program, line, ("F",))) for line in lines]
        return [SetWord(line, "F", word.value if word else None, to) for line, word in words]


def feed_name(value: float, inch: bool) -> str:
    return f"F{value:g} ({value:g} {'in' if inch else 'mm'}/min)"


def feed_shown(worst: Worst, feed: float) -> str:
    return f"{feed / 25.4 if worst.inch else feed:.4g}"


def chip_feed(worst: Worst) -> Change | None:
    """A feed that puts the chip inside its window at the true speed, or the speeds that do at this feed."""
    h, setup = worst.number("h_ex"), worst.chain.setup
    low, high = worst.number("chip_low"), worst.number("chip_high")
    flutes, feed, thin = worst.number("tool.flutes"), worst.number("set_feed"), h < low
    if not (flutes > 0 and feed > 0):
        return None
    advice = advise_chip(
        thin, _clean(worst.number("fz")), _clean(h), int(flutes), worst.number("true_speed"), feed,
        None if math.isnan(low) else _clean(low), None if math.isnan(high) else _clean(high),
        setup.spindle, setup.machine, setup.dial, worst.inch,
    )  # fmt: skip
    if not worst.plain_feed():
        return Change(f"{'Raise' if thin else 'Lower'} the feed: {advice.text}.")
    sets: list[SetWord] = []
    if advice.feed is not None:
        to = advice.feed / 25.4 if worst.inch else advice.feed
        sets += worst.set_feeds(math.ceil(to * 10) / 10 if thin else math.floor(to * 10) / 10)
    if advice.speed is not None:
        line = int(worst.chain.motion.speed_line[worst.move])
        word = find_word(worst.chain.program, line, ("S",)) if line else None
        if word is not None:
            sets.append(SetWord(line, "S", word.value, advice.speed))
    text = advice.text.rstrip(".")
    if sets and sets[0].word == "F":
        was = f"F{sets[0].from_:g} to " if sets[0].from_ is not None else ""
        best = f" A good value: F{sets[0].to:g}." if f"F{sets[0].to:g}" not in text else ""
        feeds = sum(each.word == "F" for each in sets)
        where = f"line {sets[0].line}" + (f" and {feeds - 1} more lines" if feeds > 1 else "")
        slower = ""
        if thin and worst.number("edge_speed") > worst.number("edge_high"):
            slower = " The edge is too fast as well: at a slower speed less feed is enough."
        return Change(f"{'Raise' if thin else 'Lower'} the feed on {where}: {was}{text}.{best}{slower}", tuple(sets))
    return Change(f"{text[:1].upper()}{text[1:]}.", tuple(sets))


def _clean(value: float) -> float:
    """Six digits: what a column of single precision means."""
    return float(f"{value:.6g}")


def slower_edge(worst: Worst) -> Change | None:
    """The fastest speed that keeps the edge within its limit, with a feed that keeps the chip."""
    setup, true = worst.chain.setup, worst.number("true_speed")
    limit = true * worst.number("edge_high") / worst.number("edge_speed")
    if not limit > 0:
        return None
    feed, h, low = worst.number("set_feed"), worst.number("h_ex"), worst.number("chip_low")
    sets: list[SetWord] = []
    if setup.spindle.kind == "dial":
        marks = [mark for mark in setup.spindle.dial if mark.true <= limit]
        if not marks:
            return None
        best = max(marks, key=lambda mark: mark.true)
        to, text = best.true, f"Set the dial to {best.mark} ({best.true:g} rev/min)"
    else:
        to = math.floor(limit / 100) * 100.0
        if to <= 0 or to < (setup.spindle.low or 0):
            return None
        line = int(worst.chain.motion.speed_line[worst.move])
        word = find_word(worst.chain.program, line, ("S",)) if line else None
        text = f"Lower the speed to S{to:g}"
        if word is not None:
            sets.append(SetWord(line, "S", word.value, to))
    if not feed > 0:
        return Change(f"{text}.", tuple(sets))
    thin = h < low and worst.number("fz") > 0
    if thin:  # the same chip would still be too thin: the feed that puts it right at the slower speed
        high = worst.number("chip_high")
        aim = low + (high - low) * model_number("aim") if math.isfinite(high) else low
        wanted = feed_for_chip(aim, h / worst.number("fz"), worst.number("tool.flutes"), to)
        scale = wanted / feed
    else:
        scale = to / true
    f_word = worst.feed_word(feed * scale, down=False)
    if sets:  # every feed that this speed goes with, in proportion
        words = (find_word(worst.chain.program, line, ("F",)) for line in worst.governing)
        unit = 25.4 if worst.inch else 1.0
        sets += [
            SetWord(word.line, "F", word.value, worst.feed_word(word.value * unit * scale, down=False))
            for word in words
            if word is not None and word.value > 0
        ]
    so_that = "so that the chip is right as well" if thin else "so that the chip stays"
    return Change(
        f"{text}, and F{feed_shown(worst, feed)} to {feed_name(f_word, worst.inch)}, {so_that}.", tuple(sets)
    )


def plunge_feed(worst: Worst) -> Change | None:
    """An F of its own for the downward move, and the old one again behind it."""
    share, usual = worst.number("window.plunge_share"), worst.number("cutting_feed")
    if math.isnan(usual):
        usual = worst.number("window.feed")
    axes = worst.chain.setup.machine.feed_limit
    allowed = min(v for v in (share * usual, (axes.z if axes else None) or math.inf, math.inf) if not math.isnan(v))
    z_feed, feed = worst.number("down_feed"), worst.number("feed")
    if not (math.isfinite(allowed) and z_feed > 0):
        return None
    to = worst.feed_word(feed * allowed / z_feed, down=True)
    m = worst.chain.motion
    old = find_word(worst.chain.program, worst.line, ("F",))
    sets = [SetWord(worst.line, "F", old.value if old else None, to)]
    later = np.flatnonzero((m.kind[worst.move + 1 :] != RAPID) & (m.line[worst.move + 1 :] > worst.line))
    text = f"Go down with {feed_name(to, worst.inch)} on line {worst.line}"
    if len(later) and not int(m.cycle[worst.move]):
        after = worst.move + 1 + int(later[0])
        line = int(m.line[after])
        if int(m.feed_line[after]) == worst.feed_line:
            back = find_word(worst.chain.program, worst.feed_line, ("F",))
            if back is not None:
                sets.append(SetWord(line, "F", None, back.value))
                text += f", and give line {line} its F{back.value:g} back"
    return Change(text + ".", tuple(sets) if worst.plain_feed() else ())


def ramp(worst: Worst) -> Change | None:
    """How far to travel while going down."""
    angle = worst.number("window.ramp_advised")
    if math.isnan(angle):
        angle = worst.number("window.ramp_limit")
    solid = worst.number("solid")
    if not (angle > 0 and solid > 0):
        return None
    travel = ramp_length(solid, min(angle, 89.0))
    length = amount(round(travel, 1), "mm", worst.inch)
    return Change(
        f"Go down along a ramp: {length} of travel for these {amount(solid, 'mm', worst.inch)} "
        f"({angle:g} deg), forth and back or as a helix if space is short."
    )


def passes(worst: Worst) -> Change | None:
    """How many passes of what depth."""
    ap, limit = worst.number("ap"), worst.high
    if not (ap > 0 and limit > 0):
        return None
    number = math.ceil(ap / limit - 1e-6)
    return Change(f"Cut this in {number} passes of {amount(ap / number, 'mm', worst.inch)} "
                  f"instead of one of {amount(ap, 'mm', worst.inch)}.")  # fmt: skip


def less_load(of: str) -> Callable[[Worst], Change | None]:
    """A feed at which the middle of the range of `of` (bend, stress, power) is at its limit; else how many passes.

    Force and power go with the feed to the power 1 - mc (Kienzle), and with the depth.
    """

    def change(worst: Worst) -> Change | None:
        low, high, limit = worst.number(f"{of}_low"), worst.number(f"{of}_high"), worst.high
        material = worst.chain.setup.material
        law = law_of(material.force) if material else None
        middle = math.sqrt(low * high)
        feed = min(worst.number("set_feed"), worst.number("feed"))
        if law is None or not (0 < limit < middle < math.inf and feed > 0):
            return None
        share = (limit / middle) ** (1.0 / (1.0 - law.mc))
        floor = worst.number("chip_low")
        if worst.plain_feed() and not worst.number("h_ex") * share < floor:
            to = worst.feed_word(feed * share, down=True)
            sets = worst.set_feeds(to)
            was = f"F{sets[0].from_:g} to " if sets[0].from_ is not None else ""
            return Change(f"Lower the feed on line {sets[0].line}: {was}{feed_name(to, worst.inch)}.", tuple(sets))
        ap = worst.number("ap")
        number = math.ceil(ROOM * middle / limit)
        if not ap > 0 or number > MOST_PASSES:
            return None
        return Change(f"Cut this in {number} passes of {amount(ap / number, 'mm', worst.inch)} instead of one of "
                      f"{amount(ap, 'mm', worst.inch)}; with less feed the chip would be too thin.")  # fmt: skip

    return change


def start_spindle(worst: Worst) -> Change | None:
    """The words to add, and where: at the last lift before the place, behind the tool change or the stop."""
    m = worst.chain.motion
    speed = float(m.speed[worst.move])
    said = f"M3 S{speed:g}" if speed > 0 else "M3 with a speed (S)"
    same = (m.tool[: worst.move + 1] == m.tool[worst.move]) & (m.spindle[: worst.move + 1] == m.spindle[worst.move])
    other = np.flatnonzero(~same)
    start = int(other[-1]) + 1 if len(other) else 0
    lifted = np.flatnonzero(m.kind[start : worst.move + 1] == RAPID)
    line = int(m.line[start + int(lifted[0])]) if len(lifted) else worst.line
    return Change(f"Start the spindle before line {line}: add a line {said}, and a wait until it turns at full speed.")


ADVICE: dict[str, Callable[[Worst], Change | None]] = {
    "chip-feed": chip_feed,
    "slower-edge": slower_edge,
    "plunge-feed": plunge_feed,
    "ramp": ramp,
    "passes": passes,
    "less-bending": less_load("bend"),
    "less-stress": less_load("stress"),
    "less-power": less_load("power"),
    "start-spindle": start_spindle,
}
