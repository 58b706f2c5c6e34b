"""The program of a plan, for the shop's controller: no cycles, no compensation, nothing that its card refuses."""

from __future__ import annotations

import math
import textwrap
from itertools import zip_longest
from statistics import median

from msgspec import Struct

from gclint.digest.hands import by_hand
from gclint.problem import Problem
from gclint.tables.setup import Controller, Setup
from gclint.trial.groove import Move, leg_of, path_of
from gclint.trial.layout_numbers import plan_number
from gclint.trial.plan import Cut, Plan, Shape

LONGEST = 60  # characters of a comment: displays are narrow
OFF = "spindle off, wait until it stands still"  # the first words of every stop


class Written(Struct, frozen=True):
    """The text, and of each cut its (first, last) line and the lines of its graded part."""

    text: str
    lines: dict[int, tuple[int, int]]
    graded: dict[int, tuple[int, ...]]

    def cut_on(self, line: int) -> int | None:
        return next((number for number, (first, last) in self.lines.items() if first <= line <= last), None)


def made(plan: Plan) -> tuple[Cut, ...]:
    """The cuts of the program: all but the risky ones that nobody has confirmed."""
    return tuple(cut for cut in plan.cut if cut.confirmed or not cut.risky)


def written(plan: Plan, setup: Setup, cuts: tuple[Cut, ...]) -> Written:
    """Raises Problem where the controller refuses what no program can do without."""
    assert plan.shape is not None
    return _Writer(plan, plan.shape, setup).write(cuts)


def start_of(cut: Cut, widest: float) -> tuple[float, float]:
    """Where the tool's middle goes down; `widest` is the largest diameter of the plan's tools."""
    return round(float(cut.at[0]) + widest / 2, 1), round(float(cut.at[1]) + widest / 2, 1)


class _Writer:
    def __init__(self, plan: Plan, shape: Shape, setup: Setup) -> None:
        self.plan, self.shape, self.setup = plan, shape, setup
        self.card: Controller = setup.controller
        self.feeds: dict[int, list[float]] = {}  # of each tool, in this program
        self.out: list[str] = []
        self.lines: dict[int, tuple[int, int]] = {}
        self.graded: dict[int, tuple[int, ...]] = {}
        self.widest = max(float(tool.diameter) for tool in plan.tool)
        self.travel = plan_number("travel")
        self.look = self._look_height()
        self.to_look = ""  # at what, at the next stop
        self.stopped_spindle = False  # by the stop before, and not started again

    def write(self, cuts: tuple[Cut, ...]) -> Written:
        for cut in cuts:
            self.feeds.setdefault(cut.tool, []).append(float(cut.feed))
        self._head(cuts)
        before: Cut | None = None
        for cut, after in zip_longest(cuts, cuts[1:]):
            self._ready(before, cut)
            self._cut(cut, last=after is None)
            before = cut
        self._end()
        return Written("\n".join(self.out) + "\n", self.lines, self.graded)

    def _head(self, cuts: tuple[Cut, ...]) -> None:
        size = " x ".join(f"{float(each):g}" for each in self.plan.coupon)
        self._say(f"test cuts in {self.plan.material}: {self.plan.plan}")
        self._say(f"{len(cuts)} cuts, blank {size} mm, Z zero on its top")
        x, y = (float(value) for value in self.plan.corner)
        self._say(f"X and Y zero: the blank's lower left corner is at X{x:g} Y{y:g}")
        units = next((code for code in ("G21", "G71") if self._does(code)), None)
        self._put(" ".join([units or self._needed("G21"), self._needed("G90"), *self._may("G94", "G17")]))
        self._put(*self._may("G54"))
        self._put(" ".join(self._may("G40", "G49", "G80")))

    def _ready(self, before: Cut | None, cut: Cut) -> None:
        """Write what is done before a cut: the tool, the dial, the spindle. It stands still for all that hands do."""
        new_tool = before is None or before.tool != cut.tool
        new_speed = new_tool or before is None or (before.dial, before.speed) != (cut.dial, cut.speed)
        if new_tool:
            self._change(cut, first=before is None)
            self._put(f"T{cut.tool}") if self._by_hand_alone else None
            self._put(f"G0 Z{_n(self.look)}") if not (self._by_changer and self._does("G43")) else None
        elif cut.dial is not None and new_speed:
            self._stop(f"set the dial to {cut.dial}")
        elif self.to_look:
            self._stop("")
        if new_speed or self.stopped_spindle:
            self._put(f"{self._needed('M3')} S{_whole(float(cut.speed))}")
            self._wait()

    def _change(self, cut: Cut, first: bool) -> None:
        """Put the tool in: by the changer, in the pause that M6 is, at a stop, or before the program starts."""
        tool = next(tool for tool in self.plan.tool if tool.number == cut.tool)
        what = f"put in tool {tool.number}{f', {tool.name}' if tool.name else ''}, set Z zero on the blank's top"
        dial = f", dial {cut.dial}" if cut.dial is not None else ""
        if self._by_hand_alone:
            if first:
                self._say("before the start: spindle off, wait until it stands still")
                self._say(f"{self._cannot_start}, {what}{dial}")
                self._say(self._go_on(at_the_collet=True))
                return
            self._stop(f"{what}{dial}", at_the_collet=True)
            return
        if self._by_changer and cut.dial is not None and not first:
            self._stop(f"set the dial to {cut.dial}")
        elif self._by_changer and self.to_look:
            self._stop("")
        if not first:
            self._spindle_off()
        if not self._by_changer:  # M6 itself is the pause
            self._tell(OFF)
            self._tell(self.to_look) if self.to_look else None
            self._tell(f"{self._cannot_start}, {what}{dial}")
            self._tell(self._go_on(at_the_collet=True))
            self.to_look, self.stopped_spindle = "", not self.by_hand
        elif first and cut.dial is not None:
            self._say("before the start: spindle off, wait until it stands still")
            self._say(f"set the dial to {cut.dial}")
        self._put(f"T{cut.tool} M6")
        if self._by_changer and self._does("G43"):
            self._put(f"G0 G43 H{cut.tool} Z{_n(self.look)}")

    def _cut(self, cut: Cut, last: bool) -> None:
        first = len(self.out) + 1
        x0, y0 = start_of(cut, self.widest)
        speed = f"dial {cut.dial}" if cut.dial is not None else f"S{float(cut.speed):g}"
        entry = "ramp" if cut.entry == "ramp" else "straight down"
        self._say(f"cut {cut.number}: F{float(cut.feed):g} {speed} {entry} Z-{float(cut.depth):g}")
        self._put(f"G0 X{_n(x0)} Y{_n(y0)}")
        self._put(f"G0 Z{_n(self.travel)}")
        self._put("G0 Z1.0")
        feed, depth = float(cut.feed), float(cut.depth)
        down = self._down(cut)
        ramp = min(feed, float(int(down / math.sin(math.radians(float(self.shape.ramp))))))  # going down no faster
        if cut.entry == "ramp":
            diameter = next(float(tool.diameter) for tool in self.plan.tool if tool.number == cut.tool)
            leg, count = leg_of(depth, diameter, float(self.shape.ramp))
            self._put(f"G1 Z0.0 F{self._f(down)}")
            for n in range(1, count + 1):
                word = f" F{self._f(ramp)}" if n == 1 else ""
                self._put(f"G1 X{_n(x0 + (n % 2) * leg)} Z{_n(-depth * n / count)}{word}")
        else:
            self._put(f"G1 Z{_n(-depth)} F{self._f(down)}")
        graded = []
        where = (x0, y0)
        for n, move in enumerate(path_of(self.shape)):
            word = f" F{self._f(feed)}" if n == 0 and (cut.entry != "ramp" or ramp != feed) else ""
            self._put(self._move(move, where, (x0, y0)) + word)
            where = (x0 + move.x, y0 + move.y)
            if move.graded:
                graded.append(len(self.out))
        self._put(f"G0 Z{_n(self.look if self.plan.looks or last else self.travel)}")
        self.lines[cut.number] = (first, len(self.out))
        self.graded[cut.number] = tuple(graded)
        self.to_look = f"look at cut {cut.number}" if self.plan.looks and not last else ""

    def _move(self, move: Move, where: tuple[float, float], start: tuple[float, float]) -> str:
        end = f"X{_n(start[0] + move.x)} Y{_n(start[1] + move.y)}"
        if move.centre is None:
            return f"G1 {end}" if move.y != where[1] - start[1] else f"G1 X{_n(start[0] + move.x)}"
        base = where if self.card.arc_centres == "absolute" else (0.0, 0.0)
        i, j = (_n(base[n] + move.centre[n]) for n in (0, 1))
        return f"{self._needed('G3' if move.left else 'G2')} {end} I{i} J{j}"

    def _end(self) -> None:
        if self._does("M5"):
            self._put("M5")
        end = next((code for code in ("M30", "M2") if self._does(code)), None)
        if end:
            self._put(end)

    # --- the spindle and stops ---------------------------------------------------------------------------------------

    @property
    def by_hand(self) -> bool:
        return by_hand(self.setup.spindle)

    @property
    def _cannot_start(self) -> str:
        """What is seen to before a hand goes to the collet."""
        return "router unplugged" if self.by_hand else "made unable to start as the machine's manual says"

    def _go_on(self, at_the_collet: bool) -> str:
        """The last words of a stop."""
        plug = "plugged in, " if at_the_collet and self.by_hand else ""
        return f"hands clear, {plug}{'spindle on, ' if self.by_hand else ''}then press start"

    @property
    def _by_changer(self) -> bool:
        """A card says that M6 changes the tool; with no controller declared hands do."""
        return self.card.tool_change == "does" and self.card.name != "any"

    @property
    def _by_hand_alone(self) -> bool:
        """M6 neither changes the tool nor waits for somebody who does."""
        return not self._by_changer and self.card.tool_change != "stops"

    def _spindle_off(self) -> None:
        if not self.by_hand and not self.stopped_spindle and self._does("M5"):
            self._put("M5")

    def _wait(self) -> None:
        self.stopped_spindle = False
        if self.by_hand or not self._does("G4"):
            return
        seconds = self.setup.spindle.spin_up or plan_number("spin_up")
        self._put(f"G4 P{_whole(seconds * 1000)}" if self.card.dwell_unit == "ms" else f"G4 P{_n(seconds)}")

    def _stop(self, words: str, at_the_collet: bool = False) -> None:
        """Write a program stop: the spindle stands still before anything is looked at or set."""
        if self.card.program_stop not in ("stops", "stops-spindle"):
            says = f'the controller "{self.card.name}" does not stop at M0, so nothing can be set or looked at between'
            raise Problem(f"{says} two cuts; plan one tool and one dial mark at a time, with --run-through")
        self._spindle_off()
        self._tell(OFF)
        does = (self.to_look, self._cannot_start if at_the_collet else "", words)
        self._tell(", ".join(part for part in does if part))
        self._tell(self._go_on(at_the_collet))
        self._put("M0")
        self.to_look = ""
        self.stopped_spindle = not self.by_hand

    # --- words -------------------------------------------------------------------------------------------------------

    def _down(self, cut: Cut) -> float:
        """The feed of going straight down, mm/min: a share of this cut's feed, or of the tool's usual one if lower."""
        feed = min(float(cut.feed), median(self.feeds[cut.tool]))
        card = self.setup.material
        share = card.plunge_feed_share.value if card and card.plunge_feed_share else plan_number("plunge_share")
        limit = self.setup.machine.feed_limit
        most = limit.z if limit is not None and limit.z is not None else feed
        return max(float(int(min(feed * share, most))), 1.0)

    def _does(self, name: str) -> bool:
        return self.card.state(name) == "does"

    def _needed(self, code: str) -> str:
        if not self._does(code):
            how = "refuses" if self.card.state(code) == "refuses" else "passes over"
            raise Problem(f'the controller "{self.card.name}" {how} {code}, and no test cuts can be written without it')
        return code

    def _may(self, *codes: str) -> list[str]:
        return [code for code in codes if self._does(code)]

    def _look_height(self) -> float:
        """Half of what the machine travels in Z, if that is less than usual; the cuts need the rest."""
        axes, usual = self.setup.machine.travel, plan_number("look")
        if axes is None or axes.z is None:
            return usual
        return max(self.travel, min(usual, float(int(axes.z / 2))))

    def _f(self, feed: float) -> str:
        return _n(feed / 60.0 if self.card.feed_unit == "mm/s" else feed)

    def _put(self, *blocks: str) -> None:
        self.out += [block for block in blocks if block]

    def _say(self, words: str) -> None:
        for line in textwrap.wrap(words, LONGEST):
            self._put(f"({_plain(line)})")

    def _tell(self, words: str) -> None:
        """Comments that many controllers show while they wait."""
        for line in textwrap.wrap(words, LONGEST):
            self._put(f"(MSG, {_plain(line)})")


def _plain(words: str) -> str:
    """What may stand in a comment of any controller."""
    return "".join(c if " " <= c <= "~" and c not in "()%;\\" else "-" for c in words)


def _n(value: float) -> str:
    """At most three decimals and always a point: some controllers count steps where there is none."""
    text = f"{value:.3f}".rstrip("0")
    text = text + "0" if text.endswith(".") else text
    return "0.0" if text == "-0.0" else text


def _whole(value: float) -> str:
    return str(round(value))
