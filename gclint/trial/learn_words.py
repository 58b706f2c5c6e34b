"""What was learned, in sentences; the screen and the page say the same."""

from __future__ import annotations

from gclint.digest.words import Lengths, count, figure
from gclint.setup.declared import ToolTable
from gclint.trial.expected import expected
from gclint.trial.learn import Effect, Lesson, Limit, ToolWindow, rows_at
from gclint.trial.next_cuts import next_cuts
from gclint.trial.plan import FAULTS
from gclint.trial.scales import scales

EMPTY = "No feed is good: at every one that was cut a fault is likelier than not."
ENTRY = {"ramp": "down a ramp", "straight": "straight down"}
SIGNS = {"chipping": "E", "dust": "D", "melting": "M", "chatter": "C", "debris": "L", "tool": "T", "stopped": "S"}
NAMES = {
    "chipping": "edge chipping", "dust": "dust", "melting": "melting", "chatter": "chatter",
    "debris": "debris left", "tool": "tool wear", "stopped": "stops",
}  # fmt: skip


def percent(share: float) -> str:
    """'97 %'; never 0 or 100, which nothing that was drawn can tell."""
    return "over 99 %" if share > 0.99 else "under 1 %" if share < 0.01 else f"{share * 100:.0f} %"


def tool_words(tool: ToolTable, lengths: Lengths) -> str:
    wide = f"{figure(float(tool.diameter) * lengths.scale, 4)} {lengths.unit}"
    parts = [f"tool {tool.number}:", tool.shape, wide, f"{tool.flutes} fl"]
    return " ".join([*parts, *([tool.helix] if tool.helix else [])]) + (f" ({tool.name})" if tool.name else "")


def edge_words(limit: Limit, low: bool, text: str, interval: str) -> str:
    """'0.043 mm (0.039 to 0.048), under it dust', or where the cuts ended without one."""
    side = "under" if low else "over"
    if limit.found:
        return f"{text} ({interval}), {side} it {NAMES[limit.fault]}"
    if not limit.fault:
        return f"{text}, where the cuts end: no fault sets in on that side"
    return f"{text} ({interval}): not known well, cuts are missing there"


def chip_words(limit: Limit, low: bool, lengths: Lengths) -> str:
    return edge_words(limit, low, lengths.length(limit.value),
                      f"{figure(limit.low * lengths.scale)} to {figure(limit.high * lengths.scale)}")  # fmt: skip


def speed_words(limit: Limit, low: bool, lengths: Lengths) -> str:
    scale, unit = (1 / 0.3048, "ft/min") if lengths.inch else (1.0, "m/min")
    return edge_words(limit, low, f"{figure(limit.value * scale)} {unit}",
                      f"{figure(limit.low * scale)} to {figure(limit.high * scale)}")  # fmt: skip


def pair_words(window: ToolWindow, lengths: Lengths) -> str:
    dial = f"dial {window.pair_dial}, " if window.pair_dial else ""
    feed = f"F{figure(window.pair_feed * lengths.scale)} at {dial}{window.pair_speed:.0f} rev/min (true)"
    return f"{feed}: chip {lengths.length(window.pair_fz)}"


def how_words(window: ToolWindow, lengths: Lengths) -> str:
    cut = f"A slot {lengths.length(window.depth)} deep, entered {ENTRY[window.entry]}; {count(window.cuts, 'cut')}."
    return f"{cut} In brackets the interval that holds a limit with {expected().interval * 100:.0f} %."


def window_lines(window: ToolWindow, lengths: Lengths) -> list[tuple[str, str]]:
    """(name, sentence) of each limit and of the pair to use, in order."""
    scale, unit = (1 / 0.3048, "ft/min") if lengths.inch else (1.0, "m/min")
    lines = [
        ("chip", f"at an edge speed of {figure(window.pair_edge * scale)} {unit}:"),
        ("  from", chip_words(window.fz.low, True, lengths)),
        ("  to", chip_words(window.fz.high, False, lengths)),
    ]
    if window.edge is not None:
        lines += [
            ("edge", "where some chip is good:"),
            ("  from", speed_words(window.edge.low, True, lengths)),
            ("  to", speed_words(window.edge.high, False, lengths)),
        ]
    return [*lines, ("use", pair_words(window, lengths)), ("", odds_words(window))]


def next_titles(lengths: Lengths) -> tuple[str, ...]:
    return "", "rev/min", f"feed {lengths.unit}/min", "chip", "entry", "narrows by", ""


def next_rows(lesson: Lesson, tool: int, lengths: Lengths) -> list[tuple[str, ...]]:
    """The next cuts to make, a row each."""
    return [
        (f"dial {cut.dial}" if cut.dial else "", f"{cut.speed:.0f}", figure(cut.feed * lengths.scale),
         lengths.length(cut.fz), ENTRY[cut.entry], f"{cut.narrows * 100:.0f} %" if cut.narrows else "-",
         "beyond what was cut: may fail" if cut.beyond else "")
        for cut in next_cuts(lesson, tool)
    ]  # fmt: skip


def odds_words(window: ToolWindow) -> str:
    said = f"inside the window with a probability of {percent(window.inside)}"
    return f"{said}; no fault in {percent(window.pair_good)} of such cuts"


def entry_words(lesson: Lesson) -> list[str]:
    """What going straight down does against a ramp, by fault; the advice last."""
    if lesson.columns.place("straight") is None:
        entries = {cut.entry for cut in lesson.trial.cuts}
        return [f"All cuts went {ENTRY[entries.pop()]}: nothing is known of the other entry."] if entries else []
    said, worse, tell = [], [], expected().tell
    for effect in lesson.effects:
        if effect.what != "straight" or _sure(effect) < tell.sure:
            continue
        straight, ramp = _at_the_pair(lesson, effect.fault)
        if abs(straight - ramp) < tell.matters:
            continue
        more, fault = "more" if effect.worse > 0.5 else "less", NAMES[effect.fault]
        chance, shares = percent(_sure(effect)), f"{percent(straight)} of plunges and {percent(ramp)} of ramps"
        said.append(f"Straight down gives {more} {fault} than a ramp, with a probability of {chance}: "
                    f"at the pair to use it spoils {shares}.")  # fmt: skip
        if effect.worse > tell.advice:
            worse.append(fault)
    if worse:
        said.append(f"Advice: go in by a ramp or a helix, never straight down ({', '.join(worse)}).")
    elif not said:
        said.append("Straight down and a ramp do not differ as far as these cuts can tell.")
    return said


def _at_the_pair(lesson: Lesson, fault: str) -> tuple[float, float]:
    """Shares of plunges and of ramps that a fault spoils at the pair to use of the first tool."""
    import numpy as np

    one, window = lesson.fitted[fault], next(iter(lesson.windows.values()), None)
    if window is None or one.draws is None:
        return 0.0, 0.0
    fz, edge = np.array([window.pair_fz]), np.array([window.pair_edge])
    rows = (rows_at(lesson, window.tool, fz, edge, entry, window.depth) for entry in ("straight", "ramp"))
    straight, ramp = (float(one.draws.share(x, one.word).mean()) for x in rows)
    return straight, ramp


def cause_words(lesson: Lesson) -> list[tuple[str, str]]:
    """For each fault (its name, what makes it more likely): most certain first, what is not certain left out."""
    rows = []
    for fault in FAULTS:
        one = lesson.fitted.get(fault)
        if one is None:
            continue
        if not one.enough:
            rows.append((NAMES[fault], f"graded in {one.cuts} cuts: too few to say anything"))
        elif one.draws is None:
            rows.append((NAMES[fault], f"never seen in {one.cuts} cuts"))
        else:
            own = (e for e in lesson.effects if e.fault == fault and _sure(e) >= expected().tell.sure)
            causes = [f"{_cause(effect)} ({percent(_sure(effect))})" for effect in sorted(own, key=_unsure)]
            known = ", ".join(causes)
            seen = f'"{expected().fault[fault].from_}" or worse in {one.spoilt} of {one.cuts} cuts'
            rows.append((NAMES[fault], f"{seen}; more of it: {known or 'by nothing that is sure'}"))
    return rows


def _sure(effect: Effect) -> float:
    return max(effect.worse, 1 - effect.worse)


def _unsure(effect: Effect) -> float:
    return -_sure(effect)


def _cause(effect: Effect) -> str:
    more = effect.worse > 0.5
    if effect.what == "chip":
        return "by a thicker chip" if more else "by a thinner chip"
    if effect.what == "edge":
        return "by a faster edge" if more else "by a slower edge"
    if effect.what == "depth":
        return "by a deeper cut" if more else "by a shallower cut"
    if effect.what == "straight":
        return "by going straight down" if more else "by a ramp"
    return f"with {effect.what}" if more else f"without {effect.what}"


def missing_words(lesson: Lesson, tool: int) -> list[str]:
    """What would make the answer better, beside what there is too little of."""
    said = [f"{what}." for what in lesson.missing[tool]]
    window = lesson.windows.get(tool)
    if window is not None and window.edge is None:
        said.append("One speed was cut: nothing can be said of the edge speed. Cut at a second one.")
    for fault in FAULTS:
        one = lesson.fitted.get(fault)
        if window is not None and one is not None and not one.enough:
            said.append(f"{scales()[fault].title} is graded in {one.cuts} cuts only: the window does not know of it.")
    return said
