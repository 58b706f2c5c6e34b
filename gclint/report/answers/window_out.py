"""The operating window as text with a drawing, and as JSON."""

from __future__ import annotations

import math
from pathlib import Path
from typing import Any

import msgspec
import numpy as np

from gclint import __version__
from gclint.clean_text import json_text
from gclint.cutting import mechanics
from gclint.cutting.cut_limits import Bounds, Cut, Places, of_cut, window_at
from gclint.cutting.limits import Limit, Speed
from gclint.cutting.ways_out import Way, any_pair, ways_out
from gclint.cutting.window import Corner, Window
from gclint.digest.tool_facts import described
from gclint.digest.words import Lengths, behind, figure
from gclint.json_schema import schema_of, write
from gclint.knowledge.numbers import model_number
from gclint.report.text.cautions import cautions, in_short, of_material
from gclint.report.text.text_sheet import TextSheet
from gclint.tables.setup import Setup, Tool

SCHEMA_FILE = Path(__file__).parents[1] / "window.schema.json"
ROWS = 16
LEFT = 8  # columns for the feeds beside the drawing
WAY_WORDS = {
    "depth": "take {to} of depth in one pass instead of {was}",
    "width": "cut {to} wide instead of {was}",
    "flutes": "use a tool with {to} instead of {was} flutes",
    "stickout": "clamp the tool with {to} out of the nut instead of {was}",
}


class LimitOut(msgspec.Struct, frozen=True):
    """One inequality; `at_feed_mm_min`: the feed it asks for at the speed it is told at (none for a limit of speed)."""

    number: int
    name: str
    of: str  # "feed" or "speed"
    side: str  # "at least" or "at most"
    at_speed_rpm: float | None
    at_feed_mm_min: float | None
    standing: str
    source: str


class PairOut(msgspec.Struct, frozen=True):
    """`what`: "best", "same speed", "same feed" or "dial"; a feed of null: none is inside there."""

    what: str
    mark: str | None
    speed_rpm: float
    feed_mm_min: float | None
    chip_mm: float | None


class BrokenOut(msgspec.Struct, frozen=True):
    limit: str
    times: float


class Programmed(msgspec.Struct, frozen=True):
    speed_rpm: float
    feed_mm_min: float
    chip_mm: float | None
    inside: bool
    broken: tuple[BrokenOut, ...]


class WindowOut(msgspec.Struct, frozen=True):
    """The JSON document of `gclint window`. `region`: its outlines; `unknown`: limits left out, and why."""

    gclint: str
    material: str
    tool: str
    operation: str
    ae_mm: float
    ap_mm: float
    limits: tuple[LimitOut, ...]
    region: tuple[tuple[Corner, ...], ...]
    programmed: Programmed | None
    pairs: tuple[PairOut, ...]
    ways_out: tuple[Way, ...]
    assumed: tuple[str, ...]
    unknown: tuple[tuple[str, str], ...]
    cautions: tuple[str, ...]


class Asked(msgspec.Struct, frozen=True):
    """What the command line asks: rev/min, mm/min."""

    cut: Cut
    tool: Tool
    setup: Setup
    bounds: Bounds
    speed: float | None = None
    feed: float | None = None
    inch: bool = False
    assumed: tuple[str, ...] = ()


class Answer(msgspec.Struct, frozen=True, eq=False):
    asked: Asked
    window: Window
    out: WindowOut
    slowest: float
    fastest: float
    most: float  # feed at the top of the drawing


def answer(asked: Asked) -> Answer:
    setup = asked.setup
    places = of_cut(asked.cut, asked.tool, setup, asked.bounds)
    law = mechanics.law_of(setup.material.force) if setup.material else None
    window = window_at(places, law, setup, asked.bounds, 0.0, 0.0)
    slowest, fastest = _range(window, asked)
    turned = (slowest, fastest) if window.spindle.kind == "dial" else _turns(window)
    told_at = asked.speed or math.sqrt(slowest * fastest)
    most = _top(window, asked, fastest)
    out = WindowOut(
        __version__,
        setup.material.name if setup.material else "",
        described(asked.tool, asked.inch),
        asked.cut.operation,
        round(asked.cut.ae, 4),
        round(asked.cut.ap, 4),
        tuple(_limit(k, limit, told_at) for k, limit in enumerate(window.limits, 1)),
        window.region(*turned, most),
        _programmed(window, asked, places),
        _pairs(window, asked, places),
        ways_out(asked.cut, asked.tool, setup, asked.bounds),
        (*asked.assumed, *_assumed(asked)),
        _unknown(asked, window),
        cautions(of_material(setup.material)),
    )
    return Answer(asked, window, out, slowest, fastest, most)


def pairs_of(asked: Asked) -> tuple[PairOut, ...]:
    """The pairs alone: the best one, and one at each mark of a dial."""
    places = of_cut(asked.cut, asked.tool, asked.setup, asked.bounds)
    law = mechanics.law_of(asked.setup.material.force) if asked.setup.material else None
    return _pairs(window_at(places, law, asked.setup, asked.bounds, 0.0, 0.0), asked, places)


def _turns(window: Window) -> tuple[float, float]:
    choices = window.choices()
    return choices[0].speed, max(choices[-1].speed, choices[0].speed + 1)


def _range(window: Window, asked: Asked) -> tuple[float, float]:
    """Speeds that are drawn: what the spindle turns, and the pair that was asked about."""
    low, high = _turns(window)
    if window.spindle.kind == "dial":
        low, high = low * 0.9, high * 1.1
    if asked.speed:
        low, high = min(low, asked.speed * 0.95), max(high, asked.speed * 1.05)
    return low, high


def _top(window: Window, asked: Asked, fastest: float) -> float:
    _, high = window.feeds(fastest)
    least, _ = window.feeds(fastest)
    rays = [float(np.ravel(limit.at(fastest))[0]) for limit in window.limits if not isinstance(limit, Speed)]
    finite = [value for value in rays if math.isfinite(value) and value > 0]
    top = high * 1.15 if math.isfinite(high) else 2.0 * max(finite, default=1500.0)
    if least > 0 and math.isfinite(least):
        top = max(top, least * 1.15)
    top = max(top, 1.15 * (asked.feed or 0.0))
    unit = 25.4 if asked.inch else 1.0
    return _nice(top / unit / ROWS) * ROWS * unit


def _nice(value: float) -> float:
    """The next larger of 1, 1.25, 2, 2.5, 5 times a power of ten."""
    power = 10.0 ** math.floor(math.log10(value))
    return next((step * power for step in (1.0, 1.25, 2.0, 2.5, 5.0) if step * power >= value * (1 - 1e-9)), 10 * power)


def _limit(number: int, limit: Limit, speed: float) -> LimitOut:
    side = "at least" if limit.least else "at most"
    if isinstance(limit, Speed):
        return LimitOut(number, limit.name, "speed", side, round(float(np.ravel(limit.speed)[0]), 1), None,
                        limit.standing, limit.source)  # fmt: skip
    feed = float(np.ravel(limit.at(speed))[0])
    return LimitOut(number, limit.name, "feed", side, round(speed, 1), round(feed, 2), limit.standing, limit.source)


def _chip(places: Places, speed: float, feed: float | None) -> float | None:
    if feed is None:
        return None
    chip = float(places.ratio[0] * feed / (speed * places.flutes[0]))
    return round(chip, 5) if math.isfinite(chip) else None


def _programmed(window: Window, asked: Asked, places: Places) -> Programmed | None:
    if asked.speed is None or asked.feed is None:
        return None
    broken = tuple(BrokenOut(one.limit.name, round(one.times, 3)) for one in window.broken(asked.speed, asked.feed))
    return Programmed(float(asked.speed), float(asked.feed), _chip(places, asked.speed, asked.feed), not broken, broken)


def _pairs(window: Window, asked: Asked, places: Places) -> tuple[PairOut, ...]:
    made = []

    def add(what: str, mark: str | None, speed: float, feed: float | None) -> None:
        shown = None if feed is None else round(feed, 4)
        made.append(PairOut(what, mark, round(speed, 1), shown, _chip(places, speed, feed)))

    best = window.best(asked.inch)
    if best is not None:
        add("best", best.mark or None, best.speed, best.feed)
    if asked.speed is not None:
        nearest = asked.feed if asked.feed is not None else best.feed if best else 1000.0
        add("same speed", None, asked.speed, window.same_speed(asked.speed, nearest, asked.inch))
    if asked.feed is not None:
        other = window.same_feed(asked.speed or (best.speed if best else 15000.0), asked.feed)
        if other is not None:
            add("same feed", other.mark or None, other.speed, asked.feed)
    for mark, feed in window.marks(asked.feed, asked.inch):
        add("dial", mark.mark, mark.true, feed)
    return tuple(made)


def _assumed(asked: Asked) -> tuple[str, ...]:
    spindle, said = asked.setup.spindle, []
    if spindle.kind != "dial" and not (spindle.low and spindle.high):
        low, high = (model_number(name) for name in ("slowest_spindle", "fastest_spindle"))
        said.append(f"the spindle turns {low:g} to {high:g} rev/min (its range is not declared)")
    if spindle.kind == "dial" and any(mark.measured is None for mark in spindle.dial):
        said.append("the dial turns as it says (its marks were never all measured)")
    return tuple(said)


def _unknown(asked: Asked, window: Window) -> tuple[tuple[str, str], ...]:
    """(limit, what would let it be drawn)."""
    tool, names = asked.tool, {limit.name for limit in window.limits}
    found = []
    if not names & {"thinnest chip", "thickest chip"}:
        found.append(("chip", "the card has no chip for a tool of this size; `[windows]` in shop.toml can give one"))
    if not names & {"slowest edge", "fastest edge"}:
        found.append(("edge speed", "the material's card knows no limit for it"))
    if "bending" not in names:
        missing = mechanics.missing_for_beam(tool)
        keys = ", ".join(f"`{key}`" for key in missing) or "a cutting force on the material's card"
        found.append(("bending", f"{keys} of the tool in shop.toml" if missing else keys))
    if "power" not in names:
        found.append(("power", "`power` or `power_curve` of [spindle] in shop.toml"))
    if "machine's feed" not in names:
        found.append(("machine's feed", "`feed_limit` of [machine] in shop.toml"))
    return tuple(found)


# --- writers ----------------------------------------------------------------------------------------------------------


def to_json(made: Answer) -> str:
    return json_text(msgspec.json.encode(made.out))


def schema() -> dict[str, Any]:
    """Make the JSON Schema of the document from the structs themselves."""
    return schema_of(WindowOut, "The operating window that `gclint window --as json` gives")


def sheet(made: Answer, paper: TextSheet) -> None:
    asked, out, lengths = made.asked, made.out, Lengths(made.asked.inch)
    card = asked.setup.material
    paper.ends("OPERATING WINDOW", f"gclint {__version__}")
    paper.field("material", card.title if card else "not declared")
    paper.field("tool", ", ".join(part for part in (asked.tool.name, out.tool) if part))
    what = {"slot": "a slot", "side": "a side cut", "finish": "a finishing cut"}[out.operation]
    paper.field("cut", f"{what}, {_long(asked.cut.ae, lengths)} wide and {_long(asked.cut.ap, lengths)} deep")
    if out.programmed:
        paper.field("asked", _asked_words(out.programmed, lengths))
    paper.blank()
    for line in _drawing(made, paper.width, lengths):
        paper.text_block(line)
    paper.blank()
    _limits(made, paper, lengths)
    paper.blank()
    _pair_table(made, paper, lengths)
    for way in out.ways_out:
        was, to = ((f"{way.was:g}", f"{way.to:g}") if way.what == "flutes" else
                   (lengths.length(way.was), lengths.length(_down(way.to))))  # fmt: skip
        paper.bullet(WAY_WORDS[way.what].format(was=was, to=to))
    if out.assumed or out.unknown:
        paper.blank()
        paper.heading("TAKEN AS GIVEN, AND LEFT OUT")
    for said in out.assumed:
        paper.bullet(said)
    for limit, needs in out.unknown:
        paper.bullet(f"{limit} is left out: {needs}")
    paper.cautions(in_short(of_material(card)))


def _down(value: float) -> float:
    step = 10.0 ** (math.floor(math.log10(value)) - 1)
    return math.floor(value / step + 1e-9) * step


def _asked_words(programmed: Programmed, lengths: Lengths) -> str:
    pair = f"F{_feed(programmed.feed_mm_min, lengths)} at {programmed.speed_rpm:g} rev/min"
    chip = f", chip {lengths.length(programmed.chip_mm)}" if programmed.chip_mm else ""
    if programmed.inside:
        return f"{pair}{chip}: inside every limit that is known"
    words = [
        f"{figure(one.times if one.times > 1 else 1 / one.times)} times "
        + (f"past {one.limit}" if one.times > 1 else f"short of {one.limit}")
        for one in programmed.broken
    ]
    return f"{pair}{chip}: outside, " + ", ".join(words)


def _long(mm: float, lengths: Lengths) -> str:
    return f"{figure(mm * lengths.scale, 4)} {lengths.unit}"


def _feed(mm_min: float, lengths: Lengths) -> str:
    return figure(mm_min * lengths.scale, 4)


def _limits(made: Answer, paper: TextSheet, lengths: Lengths) -> None:
    paper.heading("LIMITS")
    speed = next((one.at_speed_rpm for one in made.out.limits if one.of == "feed"), None)
    rows = []
    for one in made.out.limits:
        value = f"{one.at_speed_rpm or 0:.0f} rev/min"
        if one.of == "feed" and one.at_feed_mm_min is not None:
            value = f"F{_feed(one.at_feed_mm_min, lengths)}" + ("" if one.name == "machine's feed" else " *")
        rows.append((str(one.number), one.name, one.side, value, behind(one.standing, one.source)))
    paper.table(("", "limit", "", "value", "standing; source"), rows, left=5)
    if speed:
        paper.text_block(f"* at {speed:.0f} rev/min, in {lengths.unit}/min")


def _pair_table(made: Answer, paper: TextSheet, lengths: Lengths) -> None:
    paper.heading("PAIRS THE MACHINE CAN RUN")
    rows = []
    for pair in made.out.pairs:
        what = f"dial {pair.mark}" if pair.what == "dial" else pair.what
        what += f" (dial {pair.mark})" if pair.mark and pair.what != "dial" else ""
        feed = "none" if pair.feed_mm_min is None else f"F{_feed(pair.feed_mm_min, lengths)}"
        chip = "-" if pair.chip_mm is None else lengths.length(pair.chip_mm)
        rows.append((what, f"{pair.speed_rpm:g}", feed, chip))
    if rows:
        paper.table(("", "rev/min", f"feed {lengths.unit}/min", "chip"), rows)
    if not any_pair(made.window):
        paper.text_block("No pair is inside every limit.")
        if made.out.ways_out:
            paper.text_block("One of these alone opens the window:")


def _drawing(made: Answer, width: int, lengths: Lengths) -> list[str]:
    """Feeds upward, speeds to the right; '.' or '#' (a mark) inside, limits by their numbers, X asked, O best."""
    window, columns = made.window, width - LEFT - 2
    speeds = np.linspace(made.slowest, made.fastest, columns)
    step = made.most / ROWS
    feeds = (np.arange(ROWS) + 0.5) * step
    cells = [[" "] * columns for _ in range(ROWS)]
    low_speed, high_speed = window.speeds()
    dial = window.spindle.dial if window.spindle.kind == "dial" else ()
    marks = {_column(mark.true, made, columns): mark.mark for mark in dial}
    for c, n in enumerate(speeds):
        low, high = window.feeds(float(n))
        for r, vf in enumerate(feeds):
            if low <= vf <= high and low_speed <= n <= high_speed:
                cells[r][c] = "#" if c in marks else "."
    for number, limit in enumerate(window.limits, 1):
        _line(cells, limit, _digit(number), made, speeds)
    best = next((pair for pair in made.out.pairs if pair.what == "best"), None)
    if best and best.feed_mm_min:
        _put(cells, best.speed_rpm, best.feed_mm_min, "O", made, columns)
    if made.asked.speed and made.asked.feed:
        _put(cells, made.asked.speed, made.asked.feed, "X", made, columns)
    unit = f"{lengths.unit}/min"
    lines = [f"{unit:>{LEFT}}"]
    for r in range(ROWS - 1, -1, -1):
        label = _feed(r * step, lengths) if r % 4 == 0 and r else ""
        lines.append(f"{label:>{LEFT - 1}} |" + "".join(cells[r]).rstrip())
    lines.append(" " * LEFT + "+" + "-" * columns)
    lines += _axis(made, columns, marks)
    signs = [". inside", *(["# inside, at a dial mark"] if marks else [])]
    signs += ["O best pair"] if best else []
    signs += ["X as asked"] if made.asked.speed and made.asked.feed else []
    return [*lines, " " * (LEFT + 1) + "  ".join(signs)]


def _axis(made: Answer, columns: int, marks: dict[int, str]) -> list[str]:
    if marks:
        row = [" "] * (columns + 4)
        for column, mark in marks.items():
            row[column : column + len(mark)] = list(mark)
        return [" " * (LEFT + 1) + "".join(row).rstrip() + "  dial"]
    row = [" "] * (columns + LEFT)
    apart = max(_nice((made.fastest - made.slowest) / 6), 1.0)
    for k in range(math.ceil(made.slowest / apart), math.floor(made.fastest / apart) + 1):
        text, at = f"{k * apart:.0f}", _column(k * apart, made, columns)
        if at + len(text) < columns - len(" rev/min"):
            row[at : at + len(text)] = list(text)
    row[columns - len("rev/min") : columns] = list("rev/min")
    return [" " * (LEFT + 1) + "".join(row).rstrip()]


def _digit(number: int) -> str:
    return str(number) if number < 10 else chr(ord("a") + number - 10)


def _column(n: float, made: Answer, columns: int) -> int:
    return min(max(round((n - made.slowest) / (made.fastest - made.slowest) * (columns - 1)), 0), columns - 1)


def _put(cells: list[list[str]], n: float, vf: float, sign: str, made: Answer, columns: int) -> None:
    row = min(max(int(vf / made.most * ROWS), 0), ROWS - 1)
    cells[row][_column(n, made, columns)] = sign


def _line(cells: list[list[str]], limit: Limit, sign: str, made: Answer, speeds: Any) -> None:
    if isinstance(limit, Speed):
        n = float(np.ravel(limit.speed)[0])
        if made.slowest <= n <= made.fastest:
            at = _column(n, made, len(speeds))
            for row in cells:
                row[at] = sign
        return
    for c, vf in enumerate(np.ravel(limit.at(speeds[:, None]))):
        if 0 <= vf < made.most:
            cells[int(vf / made.most * ROWS)][c] = sign


if __name__ == "__main__":  # python -m gclint.report.answers.window_out  writes the shipped schema anew
    write({SCHEMA_FILE.name: schema()}, str(SCHEMA_FILE))
