"""What was learned, in sentences; the screen and the page say the same."""

from __future__ import annotations

from gclint.digest.words import Lengths, count, figure
from gclint.setup.declared import ToolTable
from gclint.trial.expected import expected
from gclint.trial.learn import Effect, Lesson, Limit, ToolWindow, rows_at
from gclint.trial.near import spoils
from gclint.trial.next_cuts import next_cuts
from gclint.trial.plan import FAULTS, listed
from gclint.trial.scales import scales

FEW = 15  # cuts of one tool: under it the answer says that they are few
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
        return f"{text}, where the cuts end: no graded fault sets in on that side"
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
    """(name, sentence) of the pair to use, or why there is none, and of each limit, in order."""
    scale, unit = (1 / 0.3048, "ft/min") if lengths.inch else (1.0, "m/min")
    lines = [("use", pair_words(window, lengths)), ("", odds_words(window)), ("", only_words(window, lengths))] \
        if window.use else [("use", "none"), ("", none_words(window, lengths)), ("", change_words(window))]
    if window.use or window.why_not == "unlikely":
        lines.append(("near it", near_words(window)))
    lines += [
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
    return lines


def none_words(window: ToolWindow, lengths: Lengths) -> str:
    """Say why no pair is one to use."""
    if window.why_not == "all-spoilt":
        by = ", ".join(f"{NAMES[fault]} in {spoilt}" for fault, spoilt in window.worst)
        return f"No pair is good here: {window.spoilt} of {window.cuts} cuts were spoilt ({by})."
    pair = pair_words(window, lengths)
    if window.why_not == "near-spoilt":
        return (f"No pair is recommended: none has good cuts near it. The least bad by the fit is {pair}; "
                f"{near_words(window)}.")  # fmt: skip
    return (f"No pair is recommended: the best, {pair}, is inside the window with a probability of only "
            f"{percent(window.inside)}.")  # fmt: skip


CHANGES = {
    "chipping": "go in by a ramp, take a sharper bit or a helix that presses the edge down, support the edge",
    "dust": "take a bit with fewer flutes or a slower speed, so that the chip gets thicker",
    "melting": "take a bit with fewer flutes or a slower speed, and blow the chips out",
    "chatter": "cut half as deep, hold the bit shorter or take a thicker one, or cut at speeds between these",
    "debris": "cut half as deep, and blow the chips out",
    "tool": "take a new bit, and a slower edge",
    "stopped": "cut half as deep, or at a speed where the spindle has more torque",
}


def change_words(window: ToolWindow) -> str:
    """Say what to change where no pair is one to use, by the faults that spoilt most."""
    if window.why_not == "unlikely":
        return "Make the next cuts below first, or cut less deep."
    worst = [CHANGES[fault] for fault, _ in window.worst[:2]]
    return "Change before the next trial: " + "; ".join(worst or ["cut half as deep"]) + "."


def near_words(window: ToolWindow) -> str:
    """'4 cuts at this speed and within 1.5 times its chip: good 3, 9, 17; spoilt 22 (chatter)'."""
    if not window.near:
        return "no cut at this speed and near its chip was graded"
    many = len({cut.plan for cut in window.near}) > 1
    named = {True: [], False: []}  # type: dict[bool, list[str]]
    for cut in window.near:
        fault = spoils(cut, window.entry)
        number = f"{cut.number} of {cut.plan}" if many else str(cut.number)
        named[bool(fault)].append(f"{number} ({NAMES[fault]})" if fault else number)
    parts = [f"{word} {', '.join(named[bad])}" for bad, word in ((False, "good"), (True, "spoilt")) if named[bad]]
    factor = figure(expected().near.factor)
    return f"{count(len(window.near), 'cut')} at this speed and within {factor} times this chip: {'; '.join(parts)}"


def odds_words(window: ToolWindow) -> str:
    said = f"inside the window with a probability of {percent(window.inside)}"
    return f"{said}; no fault in {percent(window.pair_good)} of such cuts"


def only_words(window: ToolWindow, lengths: Lengths) -> str:
    """Say what these odds are conditional on."""
    known = [NAMES[fault] for fault in FAULTS if fault not in window.not_known]
    said = f"That holds for slots {lengths.length(window.depth)} deep entered {ENTRY[window.entry]} with this bit as " \
           f"it was held, and for {', '.join(known)}"
    if window.not_known:
        said += f"; nothing is known of {', '.join(NAMES[fault] for fault in window.not_known)}"
    few = f". {count(window.cuts, 'cut')} are few: cut a spare piece with it first" if window.cuts < FEW else ""
    return f"{said}{few}."


def check_words(lesson: Lesson) -> list[str]:
    """What does not agree: repeats that contradict, and faults that the fit does not explain."""
    said = []
    for one in lesson.contradictions:
        of = f" of {one.plan}" if len(lesson.trial.plans) > 1 else ""
        bad, clean = listed(list(one.spoilt)), listed(list(one.clean))
        said.append(f"Cuts {bad} and {clean}{of} were made alike; {NAMES[one.fault]} spoilt the former and was not "
                    "seen in the latter. Grade them again, or look for what differed.")  # fmt: skip
    for line in lesson.out_of_line:
        tool = f"Tool {line.tool}: {NAMES[line.fault]} spoilt {line.seen} of {line.of} cuts"
        much = f"where the others lead one to expect {figure(line.expected, 2)}"
        if line.speed:
            at = f"dial {line.dial}" if line.dial else f"{line.speed:.0f} rev/min"
            said.append(f"{tool} at {at} {much}: no pair is recommended there.")
        else:
            said.append(f"{tool} of the later half {much}: it grows along the cuts, as with a bit that wears. "
                        "Cut the pair again with a new bit.")  # fmt: skip
    return said


def next_titles(lengths: Lengths) -> tuple[str, ...]:
    return "", "rev/min", f"feed {lengths.unit}/min", "chip", "entry", "narrows by", "for"


def next_rows(lesson: Lesson, tool: int, lengths: Lengths) -> list[tuple[str, ...]]:
    """The next cuts to make, a row each."""
    return [
        (f"dial {cut.dial}" if cut.dial else "", f"{cut.speed:.0f}", figure(cut.feed * lengths.scale),
         lengths.length(cut.fz), ENTRY[cut.entry], f"{cut.narrows * 100:.0f} %" if cut.narrows else "-",
         cut.why)
        for cut in next_cuts(lesson, tool)
    ]  # fmt: skip


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
