"""What to change: numbers in the program's own units, on the line of the word that governs."""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
from msgspec import Struct

from gclint.advice.parts import parts_of
from gclint.advice.words_at_fault import Word, find_word
from gclint.columns import Bools, distinct
from gclint.cutting import nearest_pair as advice
from gclint.cutting.formulas import ramp_length
from gclint.cutting.nearest_pair import Feeds, Part, fastest, nearest_to, other_speed, same_speed
from gclint.cutting.window import runnable
from gclint.facts.context import Context
from gclint.facts.registry import View
from gclint.faults import KINDS
from gclint.knowledge.numbers import model_number
from gclint.language.evaluate import TRUE
from gclint.packs.wording import amount
from gclint.tables.finding import Change, ChangeElsewhere, SetWord
from gclint.tables.motion import EVENT, INVERSE_TIME, PER_REV, RAPID

MOST_PASSES = 20  # beyond that another tool is the answer
MOST_WORDS = 1000
MOST_BETWEEN = 1000  # moves between a plunge and the next cut
LIMIT_OF = {"bend": "bending", "stress": "breaking", "power": "power"}
CHIP = ("thinnest chip", "thickest chip")
MOST_TOLD = 3  # feeds named in one sentence
# what is taken where a program does not say it, by the fault: a G code
USUAL = {"distance-unstated": 90, "feed-mode-unstated": 94, "plane-unstated": 17, "offset-unstated": 54}


class Worst(Struct, frozen=True, eq=False):
    """The worst place of one finding."""

    row: View  # one row
    move: int  # row of Motion; -1 where the finding belongs to no move
    inch: bool
    high: float  # upper limit of what was found, in the unit it was found in; NaN if there is none
    governing: tuple[int, ...] = ()  # lines of the F words that govern the places of this finding
    places: tuple[int, ...] = ()  # the rows of its table that this finding is about, ascending

    @property
    def context(self) -> Context:
        return self.row.context

    def number(self, name: str) -> float:
        """A fact in the unit its column is kept in; NaN where unknown."""
        return float(np.ravel(self.row.value(name))[0])

    def text(self, name: str) -> str:
        codes, words = self.row.value(name)
        code = int(np.ravel(codes)[0])
        return words[code] if code >= 0 else ""

    @property
    def line(self) -> int:
        return int(self.context.motion.line[self.move])

    @property
    def last_move(self) -> int:
        """Row of the last move of an entry, which may go down along many; of anything else its own."""
        if self.row.table.name != "entries" or self.row.rows is None:
            return self.move
        return max(int(self.context.engagement.entries.last_move[int(self.row.rows[0])]), self.move)

    @property
    def feed_line(self) -> int:
        return int(self.context.motion.feed_line[self.move]) or self.line

    def plain_feed(self) -> bool:
        """Whether F is a length per minute here (not inverse time, not per revolution)."""
        return int(self.context.motion.flags[self.move]) & (INVERSE_TIME | PER_REV) == 0

    def feed_word(self, feed: float, down: bool) -> float:
        """mm/min as an F of this program, rounded to the side that keeps it inside its limit."""
        value, step = (feed / 25.4, 0.1) if self.inch else (feed, 1.0 if feed >= 20 else 0.1)
        steps = math.floor(value / step + 1e-9) if down else math.ceil(value / step - 1e-9)
        return round(steps * step, 4)

    def word_of(self, feed: float) -> float:
        """mm/min that can be run as it stands, as an F of this program."""
        return round(feed / 25.4 if self.inch else feed, 4)

    def set_feeds(self, to: float, lines: tuple[int, ...] = ()) -> list[SetWord]:
        """The same new F for every word that governs a place of this finding, or for those on `lines`."""
        lines = lines or self.governing or (self.feed_line,)
        words = [(line, find_word(self.context.program, line, ("F",))) for line in lines]
        # Where an expression stands there is no number to replace.
        return [
            SetWord(line, "F", word.written if word else None, to)
            for line, word in words
            if word is None or word.written is not None
        ]

    def parts(self) -> tuple[Part, ...]:
        """What the F words of this finding govern, as one part; empty where nothing is known."""
        lines = self.governing or (self.feed_line,)
        moved = np.isin(self.context.motion.feed_line, lines)
        return parts_of(self.row, moved, one=True, replanned=True)

    def parts_of_speed(self) -> tuple[Part, ...]:
        """What the S words of this finding govern, one part for each F."""
        return parts_of(self.row, self._with_speed(), one=False, replanned=True)

    def _with_speed(self) -> Bools:
        """[moves] that run with an S of this finding; on a dial all that run at its speed."""
        m, true = self.context.motion, self.context.cutting.true_speed_of
        if self.context.setup.spindle.kind == "dial":
            return np.asarray(true == true[self.move])
        return np.asarray(m.speed == m.speed[self.move])

    def speed_words(self) -> list[Word]:
        lines = distinct(self.context.motion.speed_line[self._with_speed()])
        words = (find_word(self.context.program, int(line), ("S",)) for line in lines[lines > 0][:MOST_WORDS])
        return [word for word in words if word is not None and word.written is not None]



def was(sets: list[SetWord]) -> str:
    """'F900 to ', in front of the new feed; nothing where no number stands there."""
    return f"F{sets[0].from_:g} to " if sets and sets[0].from_ is not None else ""


def chip_feed(worst: Worst) -> Change | None:
    """A feed that puts the chip inside its window at the true speed, or the speeds that do at this feed."""
    if worst.text("operation") == "drill":
        return drill_feed(worst)
    h, thin = worst.number("h_ex"), worst.number("h_ex") < worst.number("chip_low")
    parts, speed = worst.parts(), worst.number("true_speed")
    if not parts or not speed > 0:
        return None
    part, spindle = parts[0], worst.context.setup.spindle
    feeds = same_speed(part, worst.inch)
    if feeds.to is None:
        feeds = same_speed(advice.without_broken(part, CHIP), worst.inch)
    verb = "Raise" if thin else "Lower"
    texts: list[str] = []
    sets: list[SetWord] = []
    if feeds.to is not None and np.isfinite(feeds.to) and (feeds.to > part.feed) == thin:
        texts.append(_feed_words(worst, feeds, thin))
        sets = worst.set_feeds(worst.word_of(feeds.to)) if worst.plain_feed() else []
    dialled = spindle.kind == "dial"
    marks = advice.marks_that_do(worst.parts_of_speed(), worst.context.setup.dial, speed) if dialled else ()
    if marks:
        chip = _clean(h * speed / marks[0].speed)
        shown = f"{chip / 25.4:.4f} in" if worst.inch else f"{chip:.3f} mm"
        texts.append(f"dial {marks[0].mark} with the feed as it is (chip {shown})")
    if thin and not marks and feeds.high < feeds.low * model_number("open_window"):  # hardly reached: another speed
        roomier = other_pair(worst, nearest_to(speed))
        if roomier is not None:
            return roomier
    if not texts:
        made = other_pair(worst, nearest_to(speed))
        return made or Change(f"{_nothing_helps(worst, feeds)}")
    text = ", or ".join(texts)
    if not worst.plain_feed():
        return Change(f"{verb} the feed: {text}.")
    if not sets and feeds.to is not None and (feeds.to > part.feed) == thin:
        return Change(f"{verb} the feed that the expression on line {worst.feed_line} gives: {text}.")
    if not sets:
        return Change(f"{text[:1].upper()}{text[1:]}.")
    best = f" A good value: F{sets[0].to:g}." if f"F{sets[0].to:g}" not in text else ""
    count = len(sets)
    where = f"line {sets[0].line}" + (f" and {_more(count - 1, 'line')}" if count > 1 else "")
    slower = ""
    if thin and worst.number("edge_speed") > worst.number("edge_high"):
        slower = " The edge is too fast as well: at a slower speed less feed is enough."
    plunges: list[SetWord] = []
    if not thin and feeds.to is not None:
        plunges = _slower_plunges(worst, feeds.to, {word.line for word in sets})
        if plunges:  # what goes down may take a share of the cutting feed, so it becomes too fast as well
            rest = f" and {_more(len(plunges) - 1, 'line')}" if len(plunges) > 1 else ""
            down = f"F{plunges[0].to:g}"
            slower = f" Then go down slower too: {down} on line {plunges[0].line}{rest}."
    return Change(f"{verb} the feed on {where}: {was(sets)}{text}.{best}{slower}", (*sets, *plunges))


def _slower_plunges(worst: Worst, cutting: float, set_already: set[int]) -> list[SetWord]:
    """F words for the downward moves of this tool that would be too fast beside a new cutting feed (mm/min), and the
    old one again behind them. Those that run under a word of `set_already` are left to it; empty where an expression
    stands in the way."""
    share, usual = worst.number("window.plunge_share"), worst.number("cutting_feed")
    usual = min(cutting, usual) if usual == usual else cutting
    if (least := worst.number("window.least_feed")) > usual:
        usual = least
    allowed = share * usual
    entries, m = worst.context.engagement.entries, worst.context.motion
    tool = worst.context.setup.tools.get(int(m.tool[worst.move]))
    if tool is None or tool.shape in ("drill", "drag") or not (math.isfinite(allowed) and allowed > 0):
        return []
    slower: dict[int, float] = {}
    back: dict[int, float] = {}
    mine = np.flatnonzero((m.tool[entries.first_move] == m.tool[worst.move]) & (entries.solid > 0.2))
    for entry in mine[:MOST_WORDS].tolist():
        first, last = int(entries.first_move[entry]), int(entries.last_move[entry])
        shallow = entries.solid[entry] <= 0.25 * tool.diameter
        found = _slower_words(worst, first, last, allowed * (2.0 if shallow else 1.1))
        if not found or set(found) & set_already:
            continue
        words = {word: line_to for word, line_to in _slower_words(worst, first, last, allowed).items() if word in found}
        for line, to in words.values():
            slower[line] = min(to, slower.get(line, math.inf))
        back |= _given_back(worst, last, next(reversed(words)))
    back = {line: feed for line, feed in back.items() if line not in slower and line not in set_already}
    at = {line: find_word(worst.context.program, line, ("F",)) for line in slower}
    if set(slower) & set_already or any(word is not None and word.written is None for word in at.values()):
        return []
    made = [SetWord(line, "F", word.written if word else None, slower[line]) for line, word in at.items()]
    return made + [SetWord(line, "F", None, feed) for line, feed in back.items()]


def drill_feed(worst: Worst) -> Change | None:
    """The greatest feed at which a lip of a drill takes no thicker chip than its window allows; of a drill that rubs
    the least at which it cuts, where the machine can go down so fast."""
    feed, h, low = (worst.number(name) for name in ("set_feed", "h_ex", "chip_low"))
    if h < low:
        axes, to = worst.context.setup.machine.feed_limit, worst.feed_word(feed * low / h, down=False)
        if axes is not None and axes.z is not None and to * (25.4 if worst.inch else 1.0) > axes.z:
            return None
        return raise_to(worst, to, " or more") if worst.plain_feed() else None
    to = worst.feed_word(feed * model_number("inside_limit") * worst.high / h, down=True)
    if not to > 0 or not worst.plain_feed():
        return None
    return lower_to(worst, to, " or less")


def _feed_words(worst: Worst, feeds: Feeds, thin: bool) -> str:
    """'F1855 or more at dial F': the limit itself, on its safe side, and the other one where it is near."""
    dial = worst.context.setup.dial
    at = f" at dial {dial}" if dial else ""
    near, far = (feeds.low, feeds.high) if thin else (feeds.high, feeds.low)
    edge = worst.feed_word(near if np.isfinite(near) else feeds.to or 0.0, down=not thin)
    narrow = far < near * model_number("near_window")
    most = f" (at most F{worst.feed_word(far, down=True):g})" if thin and narrow else ""
    return f"F{edge:g} {'or more' if thin else 'or less'}{at}{most}"


def _nothing_helps(worst: Worst, feeds: Feeds) -> str:
    """Which limit to move, where no feed and no speed is inside."""
    flutes = worst.number("tool.flutes")
    if 0 < feeds.high < feeds.low < math.inf and flutes > 1:
        fewer = math.floor(flutes * feeds.high / feeds.low + 1e-9)
        if fewer >= 1:
            flutes_shown = f"{fewer} flute{'s' if fewer > 1 else ''}"
            return f"No feed and no speed of this machine does: use a tool with {flutes_shown}."
    if worst.context.setup.spindle.kind == "dial":
        return "No feed and no dial mark of this machine brings the chip into its window: take fewer flutes."
    return "No feed at any speed of this spindle brings the chip into its window: take fewer flutes or a lighter cut."


def _clean(value: float) -> float:
    """Six digits: what a column of single precision means."""
    return float(f"{value:.6g}")


def other_pair(worst: Worst, order: Callable[[float], float], scaled: bool = False) -> Change | None:
    """A speed, with a feed for every F that goes with it, at which all their places are inside; None: there is none."""
    parts, present = worst.parts_of_speed(), worst.number("true_speed")
    if not parts or not present > 0:
        return None
    pairs = other_speed(parts, order, worst.inch, present if scaled else None)
    if pairs is None or abs(pairs.speed - present) <= 1e-6 * present:
        return None
    sets: list[SetWord] = []
    words = worst.speed_words()
    text = f"{'Lower' if pairs.speed < present else 'Raise'} the speed to S{pairs.speed:g}"
    to_set = pairs.speed
    if pairs.mark:  # the program says what the mark says
        to_set = next(mark.stated for mark in worst.context.setup.spindle.dial if mark.mark == pairs.mark)
        text = f"Set the dial to {pairs.mark} ({pairs.speed:g} rev/min)"
    elif not words:
        return None
    sets += [SetWord(word.line, "S", word.value, float(to_set)) for word in words if word.value != to_set]
    told: list[str] = []
    for part, feed in zip(parts, pairs.feeds):
        to = worst.word_of(feed)
        same = abs(feed - part.feed) <= 1e-6 * part.feed
        told.append(f"F{worst.word_of(part.feed):g}{' as it is' if same else f' to F{to:g}'}")
        if not same and worst.plain_feed():
            sets += worst.set_feeds(to, part.lines[:MOST_WORDS])
    more = f" and {_more(len(told) - MOST_TOLD, 'feed')}" if len(told) > MOST_TOLD else ""
    joined = ", ".join(told[:MOST_TOLD]) + more
    return Change(f"{text}, and {joined}, so that every chip is right.", tuple(sets) if worst.plain_feed() else ())


def slower_edge(worst: Worst) -> Change | None:
    """The fastest speed that keeps the edge within its limit, with feeds that keep the chips."""
    made = other_pair(worst, fastest, scaled=True)
    if made is not None:
        return made
    allowed = [one for part in worst.parts_of_speed() for one in part.window.allowed()]
    if not allowed:
        return None
    best = max(allowed, key=lambda one: one.speed)
    what = f"Set the dial to {best.mark}" if best.mark else f"Lower the speed to S{best.speed:g}"
    return Change(f"{what} ({best.speed:g} rev/min) or less; no feed there keeps every other limit, so take less depth "
                  "or width as well.")  # fmt: skip


def faster_edge(worst: Worst) -> Change | None:
    """The slowest speed at which the edge is fast enough, with feeds that keep the chips."""
    made = other_pair(worst, lambda n: n, scaled=True)
    if made is not None:
        return made
    needed = worst.number("true_speed") * worst.number("edge_low") / worst.number("edge_speed")
    return Change(f"Raise the speed to {needed:.0f} rev/min or more, and the feed with it so that the chip stays the "
                  "same; or use a larger tool.")  # fmt: skip


def reachable_pair(worst: Worst) -> Change | None:
    """A speed at which the feed that is really reached still gives a chip, and feeds to go with it."""
    return other_pair(worst, nearest_to(worst.number("true_speed")))


def plunge_feed(worst: Worst) -> Change | None:
    """An F of its own for every downward move that is too fast, and the old one again behind it."""
    share, usual = worst.number("window.plunge_share"), worst.number("cutting_feed")
    if math.isnan(usual):
        usual = worst.number("window.feed")
    if (least := worst.number("window.least_feed")) > usual:  # the program crawls: the card's share is of a good feed
        usual = least
    axes = worst.context.setup.machine.feed_limit
    allowed = min(v for v in (share * usual, (axes.z if axes else None) or math.inf, math.inf) if not math.isnan(v))
    entries = worst.context.engagement.entries
    if not (math.isfinite(allowed) and allowed > 0) or worst.row.rows is None:
        return None
    own = int(worst.row.rows[0])
    slower: dict[int, float] = {}
    back: dict[int, float] = {}
    for entry in [own, *(row for row in worst.places if row != own)][:MOST_WORDS]:
        first, last = int(entries.first_move[entry]), int(entries.last_move[entry])
        words = _slower_words(worst, first, last, allowed)
        for line, to in words.values():
            slower[line] = min(to, slower.get(line, math.inf))
        if words:
            back |= _given_back(worst, last, next(reversed(words)))
    if not slower:
        return None
    lines, others = list(slower), sorted({*list(slower.values())[1:]})
    text = f"Go down with F{slower[lines[0]]:g} on line {lines[0]}"
    if others and others != [slower[lines[0]]]:
        text += f", and slower too on {_more(len(lines) - 1, 'line')} ({_spread(others)})"
    elif others:
        text += f" and {_more(len(lines) - 1, 'line')}"
    back = {line: feed for line, feed in back.items() if line not in slower}
    if back:
        line, feed = next(iter(back.items()))
        text += f", and give line {line} its F{feed:g} back"
        text += f" (and so {_more(len(back) - 1, 'line')} behind a plunge)" if len(back) > 1 else ""
    words_at = {line: find_word(worst.context.program, line, ("F",)) for line in slower}
    sets = [SetWord(line, "F", word.written if word else None, slower[line]) for line, word in words_at.items()]
    sets += [SetWord(line, "F", None, feed) for line, feed in back.items()]
    # Where an expression stands there is no number to replace, and all words of a change go together.
    whole = worst.plain_feed() and all(word is None or word.written is not None for word in words_at.values())
    return Change(text + ".", tuple(sets) if whole else ())


def _slower_words(worst: Worst, first: int, last: int, allowed: float) -> dict[int, tuple[int, float]]:
    """For the line of each F word under which moves of one entry go down faster than `allowed` (mm/min): the line of
    the first of them, and the F to write there."""
    m, rows = worst.context.motion, np.arange(first, last + 1)
    with np.errstate(divide="ignore", invalid="ignore"):
        steep = (m.z0[rows] - m.z1[rows]) / m.length[rows]
        fast = (m.kind[rows] != RAPID) & (m.tool[rows] == m.tool[first]) & (steep * m.feed[rows] > allowed)
    made = {}
    for word in dict.fromkeys(m.feed_line[rows[fast]].tolist()):
        under = fast & (m.feed_line[rows] == word)
        to = worst.feed_word(allowed / float(np.max(steep[under])), down=True)
        made[word] = (int(m.line[rows[under][0]]), to)
    return made


def _given_back(worst: Worst, last: int, word: int) -> dict[int, float]:
    """The next line with a cut behind an entry, with the F of line `word` if it inherits that one; else empty."""
    m = worst.context.motion
    if int(m.cycle[last]):
        return {}
    # As the machine comes to it: in a loop or a subprogram it may stand further up.
    near = slice(last + 1, last + 1 + MOST_BETWEEN)
    later = np.flatnonzero((m.kind[near] != RAPID) & (m.line[near] != m.line[last]))
    if not len(later):
        return {}
    after = last + 1 + int(later[0])
    old = find_word(worst.context.program, word, ("F",)) if int(m.feed_line[after]) == word else None
    return {int(m.line[after]): old.value} if old is not None and old.written is not None else {}


def _more(number: int, what: str) -> str:
    return f"{number:,} more {what}{'' if number == 1 else 's'}"


def _spread(feeds: list[float]) -> str:
    return f"F{feeds[0]:g}" if len(feeds) == 1 else f"F{feeds[0]:g} to F{feeds[-1]:g}"


def ramp(worst: Worst) -> Change | None:
    """How far to travel while going down; of a hole as wide as the tool another way to make it."""
    if worst.row.table.name == "entries" and worst.number("bores") == TRUE:
        if worst.text("window.plunge") == "peck":
            return Change("It is a hole as wide as the tool: go down in pecks of half its diameter, lifted out between "
                          "them; or drill it, or mill it along a helix with a tool of two thirds of its width.")
        return ChangeElsewhere("It is a hole as wide as the tool: drill it, with a drill at a drill's speed and in "
                               "pecks, or mill it along a helix with a tool of two thirds of its width.")  # fmt: skip
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
        middle = math.sqrt(low * high) if low > 0 and high > 0 else math.nan
        parts = worst.parts()
        if not parts or not 0 < limit < middle < math.inf:
            return None
        made = _less_feed(worst, parts[0]) or other_pair(worst, nearest_to(worst.number("true_speed")))
        made = made or _less_feed(worst, advice.without_broken(parts[0], (LIMIT_OF[of], "thinnest chip")))
        if made is not None:
            return made
        ap = worst.number("ap")
        number = math.ceil(model_number("lower_hold") * middle / limit)
        if not ap > 0 or number > MOST_PASSES:
            return None
        return Change(f"Cut this in {number} passes of {amount(ap / number, 'mm', worst.inch)} instead of one of "
                      f"{amount(ap, 'mm', worst.inch)}; with less feed the chip would be too thin.")  # fmt: skip

    change.__doc__ = (less_load.__doc__ or "").replace("`of` (bend, stress, power)", of)
    return change


def _less_feed(worst: Worst, part: Part) -> Change | None:
    """The greatest feed that is inside at the speed as it is."""
    feeds = same_speed(part, worst.inch)
    if feeds.to is None or feeds.to >= part.feed or not worst.plain_feed():
        return None
    most = runnable(feeds.high * model_number("inside_limit"), feeds.low, feeds.high, worst.inch)
    return lower_to(worst, worst.word_of(most if most is not None else feeds.to))


def lower_to(worst: Worst, to: float, more: str = "") -> Change:
    """This F instead of the one that governs."""
    return _other_feed(worst, "Lower", to, more)


def raise_to(worst: Worst, to: float, more: str = "") -> Change:
    """This higher F instead of the one that governs."""
    return _other_feed(worst, "Raise", to, more)


def _other_feed(worst: Worst, verb: str, to: float, more: str) -> Change:
    sets, other = worst.set_feeds(to), f"F{to:g}"
    if not sets:
        return Change(f"{verb} the feed that the expression on line {worst.feed_line} gives to {other}{more}.")
    return Change(f"{verb} the feed on line {sets[0].line}: {was(sets)}{other}{more}.", tuple(sets))


def start_spindle(worst: Worst) -> Change | None:
    """The words to add, and where: at the last lift before the place, behind the tool change or the stop."""
    m = worst.context.motion
    speed = float(m.speed[worst.move])
    said = f"M3 S{speed:g}" if speed > 0 else "M3 with a speed (S)"
    same = (m.tool[: worst.move + 1] == m.tool[worst.move]) & (m.spindle[: worst.move + 1] == m.spindle[worst.move])
    other = np.flatnonzero(~same)
    start = int(other[-1]) + 1 if len(other) else 0
    lifted = np.flatnonzero(m.kind[start : worst.move + 1] == RAPID)
    line = int(m.line[start + int(lifted[0])]) if len(lifted) else worst.line
    return Change(f"Start the spindle before line {line}: add a line {said}, and a wait until it turns at full speed.")


def wait_unit(worst: Worst) -> Change | None:
    """P of each wait in the unit that the declared controller counts; None where none is declared."""
    card, m = worst.context.setup.controller, worst.context.motion
    if card.name == "any":
        return None
    waits = np.flatnonzero((m.event_kind == EVENT["dwell"]) & np.isfinite(m.event_value))
    factor = 1000.0 if card.dwell_unit == "ms" else 0.001
    sets: list[SetWord] = []
    for line in distinct(m.event_line[waits[list(worst.places)]]).tolist():
        word = find_word(worst.context.program, int(line), ("P",))
        if word is None or word.written is None:
            return None
        sets.append(SetWord(int(line), "P", word.written, round(word.written * factor, 6)))
    return Change("", tuple(sets)) if sets else None


def missing_modes(worst: Worst) -> Change | None:
    """The modes that the program never states, as they are taken, on the line of the first move that needs one; None
    where no controller is declared."""
    setup, faults = worst.context.setup, worst.context.motion.faults
    kinds = {KINDS[kind] for kind in faults.kind.tolist()}
    line = int(worst.number("unstated_line"))
    if setup.controller.name == "any" or not 1 <= line <= worst.context.program.lines:
        return None
    codes = [code for kind, code in USUAL.items() if kind in kinds and setup.controller.state(f"G{code}") == "does"]
    if setup.work_offset not in (None, "G54"):
        codes = [code for code in codes if code != 54]
    return Change("", tuple(SetWord(line, "G", None, float(code)) for code in codes)) if codes else None


def within_axes(worst: Worst) -> Change | None:
    """A feed that no axis minds: in place of the F word where all its moves ask too much, else on the lines of those
    that do, with the old one again behind them."""
    context, m = worst.context, worst.context.motion
    if worst.row.rows is None or not worst.plain_feed():
        return None
    within = worst.row.whole().value("feed_within_limits")
    rows = np.array(sorted({worst.move, *worst.places}))
    slower: dict[int, float] = {}
    back: dict[int, float] = {}
    fed = m.kind != RAPID
    for word in distinct(m.feed_line[rows]).tolist():
        under = np.flatnonzero(fed & (m.feed_line == word))
        mine = np.intersect1d(under, rows)
        least = float(np.fmin.reduce(within[mine], initial=np.inf))
        to = worst.feed_word(least, down=True) if math.isfinite(least) else 0
        if not to > 0:
            return None
        if len(mine) == len(under):
            slower[word] = min(to, slower.get(word, math.inf))
            continue
        starts = mine[np.concatenate(([True], np.diff(np.searchsorted(under, mine)) > 1))]
        if len(slower) + len(starts) > MOST_WORDS:
            return None
        for move in starts.tolist():
            slower[int(m.line[move])] = to
        ends = mine[np.concatenate((np.diff(np.searchsorted(under, mine)) > 1, [True]))]
        for move in ends.tolist():
            back |= _given_back(worst, move, word)
    back = {line: feed for line, feed in back.items() if line not in slower}
    words_at = {line: find_word(context.program, line, ("F",)) for line in slower}
    if any(word is not None and word.written is None for word in words_at.values()) or not slower:
        return None
    sets = [SetWord(line, "F", word.written if word else None, slower[line]) for line, word in words_at.items()]
    sets += [SetWord(line, "F", None, feed) for line, feed in back.items()]
    lines, feeds = sorted(slower), sorted({*slower.values()})
    text = f"Write {_spread(feeds)} on line {lines[0]}"
    text += f" and {_more(len(lines) - 1, 'line')}" if len(lines) > 1 else ""
    if back:
        line, feed = min(back.items())
        text += f", and give line {line} its F{feed:g} back"
        text += f" (and so {_more(len(back) - 1, 'line')})" if len(back) > 1 else ""
    return Change(text + ".", tuple(sets))


# By the name a rule asks for it; gclint/packs/advice_names.py says on which table each is worked out.
ADVICE: dict[str, Callable[[Worst], Change | None]] = {
    "chip-feed": chip_feed,
    "slower-edge": slower_edge,
    "faster-edge": faster_edge,
    "reachable-pair": reachable_pair,
    "plunge-feed": plunge_feed,
    "ramp": ramp,
    "passes": passes,
    "less-bending": less_load("bend"),
    "less-stress": less_load("stress"),
    "less-power": less_load("power"),
    "start-spindle": start_spindle,
    "wait-unit": wait_unit,
    "missing-modes": missing_modes,
    "within-axes": within_axes,
}
