"""The questions of `gclint trial grade`, as text: a scale's words, what they mean, and their drawings side by side."""

from __future__ import annotations

from gclint.trial.plan import FAULTS, Cut, Grade, Plan
from gclint.trial.plan_file import cut_words
from gclint.trial.scales import Scale, scales

COLUMN = 18
FREE = {  # what is on no scale
    "who": "Who grades? Enter leaves it open:",
    "wear": "Tool {tool} before this cut: new, or how much it has cut? Enter leaves it open:",
    "speed": "The true speed that was measured in this cut, rev/min? Enter leaves it open:",
    "note": "Anything else? Enter leaves it open:",
}


def headline(plan: Plan, cut: Cut) -> str:
    """'CUT 7 of 24  tool 1, 1200 mm/min, ...' and where it lies."""
    lines = [f"CUT {cut.number} of {len(plan.cut)}: {cut_words(cut)}"]
    lines.append(f"it starts {place(plan, cut)} of the blank's lower left corner")
    if cut.repeat_of is not None:
        lines.append(f"made like cut {cut.repeat_of}; grade what you see, not what you said there")
    return "\n".join(lines)


def place(plan: Plan, cut: Cut) -> str:
    x, y = (cut.at[n] - plan.corner[n] for n in (0, 1))
    return f"{x:.0f} mm right and {y:.0f} mm up"


def question(scale: Scale, given: str) -> str:
    """A scale as it is asked: its four words over their drawings, then what each means."""
    lines = [f"{scale.asks}  ({scale.title})"]
    heads = (f"{n} {step.word}" for n, step in enumerate(scale.step, 1))
    lines.append("    " + "".join(f"{head:<{COLUMN}}" for head in heads).rstrip())
    drawings = [step.drawing.split("\n") for step in scale.step]
    for row in range(max(map(len, drawings))):
        cells = (drawing[row] if row < len(drawing) else "" for drawing in drawings)
        lines.append("    " + "".join(f"{cell:<{COLUMN}}" for cell in cells).rstrip())
    for n, step in enumerate(scale.step, 1):
        lines.append(f"    {n}  {step.word}: {step.means}")
    lines.append(prompt(given))
    return "\n".join(lines)


def prompt(given: str) -> str:
    stands = f"Enter keeps {given}" if given else "Enter leaves it open"
    return f"1 to 4, or the word; {stands}; b goes back, q ends for today:"


HELP = ("help", "?", "h")


def legend() -> str:
    """All scales in short: a line each, in the order of a line of grades."""
    wide = max(len(fault) for fault in FAULTS)
    lines = [f"    {fault:<{wide}}  " + "  ".join(f"{n} {word}" for n, word in enumerate(scales()[fault].words, 1))
             for fault in FAULTS]  # fmt: skip
    return "\n".join(lines)


def line_prompt(grade: Grade) -> str:
    """What one line for a cut may be."""
    known = told(grade)
    stands = f"it has: {known}\n" if known else ""
    return (f"{stands}Seven numbers ({' '.join(FAULTS)}) such as 1211111,\n"
            "or good, or dust=2 note=\"loud\" photo=FILE; "
            "Enter comes back to it later, u takes the last cut back, each asks one by one, ? shows the scales, "
            "q ends:")  # fmt: skip


def short_prompt(grade: Grade) -> str:
    """The same once it is known."""
    known = told(grade)
    return f"{f'it has: {known}; ' if known else ''}{' '.join(FAULTS)}  (? for help)"


def told(grade: Grade) -> str:
    """'chipping none, dust chips, ...': what a cut was given; '' where nothing."""
    given = [f"{scales()[fault].title} {getattr(grade, fault)}" for fault in FAULTS if getattr(grade, fault)]
    if grade.measured_speed is not None:
        given.append(f"measured at {grade.measured_speed:g} rev/min")
    return ", ".join(given)
