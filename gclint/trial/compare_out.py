"""A comparison as one sentence, a table and a picture."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from gclint import __version__
from gclint.digest.words import Lengths
from gclint.report.picture.picture_save import saved
from gclint.report.text.text_sheet import TextSheet
from gclint.trial.compare import Better, Comparison
from gclint.trial.expected import expected
from gclint.trial.learn import Lesson
from gclint.trial.learn_words import ENTRY, NAMES, percent, tool_words

if TYPE_CHECKING:
    from matplotlib.figure import Figure

INKS = ("#005a8c", "#d55e00")
SIGNS = ("o", "x")
BAR = 32  # characters for all cuts


def called(lesson: Lesson, made: Comparison) -> tuple[str, str]:
    """How the two are called: 'tool 1 (flat 3.175 mm 2 fl down-cut)', 'a ramp', 'batch "March"'."""
    names = []
    for side in (made.first, made.second):
        if made.by == "tool":
            number, _, form = tool_words(lesson.trial.tools[int(side.called)], Lengths(False)).partition(": ")
            names.append(f"{number} ({form})")
        elif made.by == "entry":
            names.append(ENTRY[side.called])
        else:
            names.append(f'batch "{side.called}"')
    return names[0], names[1]


def sentence(lesson: Lesson, made: Comparison) -> str:
    """'Down a ramp is better at edge chipping (over 99 %); at the other faults these cuts do not tell them apart.'"""
    first, second = called(lesson, made)
    better: dict[str, list[str]] = {first: [], second: []}
    for fault in made.faults:
        if fault.second_better is None or not _matters(fault):
            continue
        sure = max(fault.second_better, 1 - fault.second_better)
        if sure >= expected().tell.advice:
            which = second if fault.second_better > 0.5 else first
            better[which].append(f"{NAMES[fault.fault]} (with a probability of {percent(sure)})")
    parts = [f"{name} is better at {' and '.join(faults)}" for name, faults in better.items() if faults]
    if not parts:
        return f"{first[:1].upper()}{first[1:]} and {second}: these cuts do not tell which is better at any fault."
    said = "; ".join(parts)
    return f"{said[:1].upper()}{said[1:]}; at the other faults these cuts do not tell them apart."


def _matters(fault: Better) -> bool:
    return abs(fault.first - fault.second) >= expected().tell.matters / 2


def sheet(lesson: Lesson, made: Comparison, paper: TextSheet) -> None:
    names = called(lesson, made)
    paper.ends("TEST CUTS COMPARED", f"gclint {__version__}")
    paper.field("material", lesson.trial.material)
    for sign, name, side in zip(SIGNS, names, (made.first, made.second)):
        paper.field(sign, f"{name}, {side.cuts} cuts graded")
    paper.blank()
    paper.text_block(sentence(lesson, made), style="head")
    paper.blank()
    rows = []
    for one in made.faults:
        if one.second_better is None:
            rows.append((NAMES[one.fault], "never seen, or too few graded", "", "", ""))
            continue
        better = max(one.second_better, 1 - one.second_better)
        sign = SIGNS[int(one.second_better > 0.5)]
        rows.append((NAMES[one.fault], _bar(one), percent(one.first), percent(one.second), f"{sign} {percent(better)}"))
    paper.table(("spoilt by", f"0 {'-' * (BAR - 7)} 100 %", *SIGNS, "better"), rows, left=2)
    paper.text_block(
        "Shares of cuts that each fault spoils, reckoned over all the cuts as if made with the one and with the other; "
        f"the lines are intervals of {expected().interval * 100:.0f} %. Under better: which has less of it, and the "
        "probability of that."
    )


def _bar(one: Better) -> str:
    """Both intervals on one line; where they overlap the line is double."""
    cells = [" "] * BAR
    for share, (low, high) in ((one.first, one.first_interval), (one.second, one.second_interval)):
        del share
        for c in range(_column(low), _column(high) + 1):
            cells[c] = "=" if cells[c] == "-" else "-"
    for sign, share in zip(SIGNS, (one.first, one.second)):
        c = _column(share)
        cells[c if cells[c] not in SIGNS else min(c + 1, BAR - 1)] = sign
    return "".join(cells)


def _column(share: float) -> int:
    return min(max(round(share * (BAR - 1)), 0), BAR - 1)


def picture_of(lesson: Lesson, made: Comparison, ending: str) -> bytes:
    """Bytes of a .png or .svg: for each fault the shares of spoilt cuts with their intervals."""
    import textwrap

    known = [one for one in made.faults if one.second_better is not None]
    names = called(lesson, made)

    def draw(make: type[Figure]) -> Figure:
        height = 2.0 + 0.5 * len(known)
        figure = make(figsize=(7.6, height))
        axes = figure.add_axes((0.19, 0.55 / height, 0.62, 1 - 1.75 / height))
        for row, one in enumerate(reversed(known)):
            both = ((one.first, one.first_interval), (one.second, one.second_interval))
            for n, (share, (low, high)) in enumerate(both):
                up = row + (0.14 if n == 0 else -0.14)
                axes.plot([low * 100, high * 100], [up, up], color=INKS[n], linewidth=2)
                style: dict[str, Any] = {"markerfacecolor": "white"} if n else {}
                axes.plot([share * 100], [up], "os"[n], color=INKS[n], markersize=7, markeredgewidth=1.6, **style)
            assert one.second_better is not None
            sure = max(one.second_better, 1 - one.second_better)
            which = int(one.second_better > 0.5)
            axes.text(103, row, f"less: {'●□'[which]} {percent(sure)}", va="center", fontsize=8, color=INKS[which])
        axes.set_yticks(range(len(known)), [NAMES[one.fault] for one in reversed(known)])
        axes.set(xlim=(0, 100), ylim=(-0.6, len(known) - 0.4))
        axes.set_xlabel("cuts that it spoils, %", fontsize=8)
        axes.grid(axis="x", color="#e0e0e0", linewidth=0.5)
        axes.set_axisbelow(True)
        top = height - 0.2
        figure.text(0.03, top / height, "\n".join(textwrap.wrap(sentence(lesson, made), 100)), fontsize=9, va="top")
        for n, name in enumerate(names):
            figure.text(0.03, (top - 0.5 - 0.2 * n) / height, f"{'●□'[n]} {name}", color=INKS[n], fontsize=8, va="top")
        return figure

    return saved(draw, ending, f"{names[0]} against {names[1]}")
