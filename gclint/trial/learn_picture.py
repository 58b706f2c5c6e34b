"""The windows that graded cuts leave, as a picture: one plane of speed and feed for each tool, every cut on it."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import numpy as np

from gclint.digest.words import Lengths, figure
from gclint.report.picture.picture_save import saved
from gclint.report.picture.picture_style import printable
from gclint.trial.learn import Lesson, ToolWindow, reached
from gclint.trial.learn_words import NAMES, pair_words, tool_words
from gclint.trial.plan import FAULTS
from gclint.trial.plane import plane_of, spoilt_by
from gclint.trial.seen import Seen

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

FINE = 120  # speeds and feeds looked at, each
SHARES = (0.5, 0.9, 1.01)  # of the draws, where the shade changes
SHADES = ("#cfe3f1", "#86b6d8")
# Forms and colours that stay apart for people who see red and green alike.
FORMS = {
    "": ("o", "#1a1a1a"), "chipping": ("v", "#d55e00"), "dust": ("s", "#b8860b"), "melting": ("D", "#cc79a7"),
    "chatter": ("X", "#b2182b"), "debris": ("P", "#6a3d9a"), "tool": ("h", "#4d4d4d"), "stopped": ("*", "#000000"),
}  # fmt: skip
WIDE, TALL, HEAD = 7.6, 4.2, 0.5  # inches


def picture_of(lesson: Lesson, lengths: Lengths, ending: str, tools: tuple[int, ...] | None = None) -> bytes:
    """Bytes of a .png or .svg; the windows of `tools`, of all that have one if not said."""
    windows = [window for number, window in lesson.windows.items() if tools is None or number in tools]

    def draw(make: type[Figure]) -> Figure:
        made = make(figsize=(WIDE + 1.9, HEAD + (TALL + 1.0) * len(windows)))
        height = HEAD + (TALL + 1.0) * len(windows)
        for n, window in enumerate(windows):
            down = HEAD + (TALL + 1.0) * n
            place = 0.75 / (WIDE + 1.9), 1 - (down + TALL) / height, (WIDE - 0.9) / (WIDE + 1.9), TALL / height
            _plane(made.add_axes(place), lesson, window, lengths)
        return made

    return saved(draw, ending, f"test cuts in {lesson.trial.material}")


def _plane(axes: Axes, lesson: Lesson, window: ToolWindow, lengths: Lengths) -> None:
    plane = plane_of(lesson, window.tool, FINE, FINE)
    feeds = plane.feeds * lengths.scale
    inside = np.ma.masked_invalid(plane.inside)
    axes.contourf(plane.speeds, feeds, inside, levels=list(SHARES), colors=list(SHADES))
    _what_was_cut(axes, plane.cuts, lengths)
    shifted: dict[tuple[int, int], int] = {}
    width = float(np.ptp(plane.speeds))
    for one in plane.cuts:
        key = round(one.speed), round(one.feed)
        beside = shifted[key] = shifted.get(key, -1) + 1
        form, colour = FORMS[spoilt_by(one)]
        hollow: dict[str, Any] = {"markerfacecolor": "white"} if one.entry == "straight" else {}
        axes.plot(one.speed + 0.014 * width * beside, one.feed * lengths.scale, form, color=colour, markersize=6,
                  markeredgewidth=1.1, **hollow)  # fmt: skip
    if window.use:
        axes.plot(window.pair_speed, window.pair_feed * lengths.scale, "o", markersize=15, markerfacecolor="none",
                  markeredgecolor="#005a8c", markeredgewidth=2)  # fmt: skip
    axes.set(xlim=(plane.speeds[0], plane.speeds[-1]), ylim=(0, feeds[-1] * 1.06))
    _limits(axes, window, lengths, plane.cuts[0].feed / (plane.cuts[0].speed * plane.cuts[0].fz))
    axes.set_xlabel("true speed, rev/min", fontsize=8)
    axes.set_ylabel(f"feed, {lengths.unit}/min", fontsize=8)
    marks = {round(one.speed): one.dial for one in plane.cuts if one.dial}
    if marks:
        ticks = sorted(marks)
        axes.set_xticks(ticks, [f"{speed}\ndial {marks[speed]}" for speed in ticks])
    axes.tick_params(labelsize=7)
    title = f"{lesson.trial.material}, {tool_words(lesson.trial.tools[window.tool], lengths)}"
    pair = f"use {pair_words(window, lengths)}" if window.use else "no pair is recommended"
    axes.set_title(f"{printable(title, 90)}\n{pair}", fontsize=9, loc="left")
    _legend(axes, {spoilt_by(one) for one in plane.cuts}, {one.entry for one in plane.cuts}, window.use)


def _what_was_cut(axes: Axes, cuts: tuple[Seen, ...], lengths: Lengths) -> None:
    speeds = np.linspace(min(cut.speed for cut in cuts), max(cut.speed for cut in cuts), FINE)
    teeth, per_speed = cuts[0].feed / (cuts[0].speed * cuts[0].fz), cuts[0].edge / cuts[0].speed
    ends = np.array([reached(cuts, float(n) * per_speed) for n in speeds]) * speeds[:, None] * teeth * lengths.scale
    outline = np.r_[ends[:, 0], ends[::-1, 1], ends[0, 0]]
    axes.plot(np.r_[speeds, speeds[::-1], speeds[0]], outline, color="#909090", linewidth=0.7, linestyle="dashed")


def _limits(axes: Axes, window: ToolWindow, lengths: Lengths, teeth: float) -> None:
    """At the pair's speed the limits of the feed, and along the top those of the speed, as intervals."""
    n = window.pair_speed
    top = axes.get_ylim()[1]
    style: dict[str, Any] = {"color": "#005a8c", "linewidth": 1.6, "capsize": 4, "fmt": "none"}
    for limit in (window.fz.low, window.fz.high):
        if limit.fault:
            value, low, high = (fz * n * teeth * lengths.scale for fz in (limit.value, limit.low, limit.high))
            axes.errorbar([n], [value], yerr=[[value - low], [high - value]], **style)
    for limit in (window.edge.low, window.edge.high) if window.edge else ():
        if limit.fault:
            low, high = (edge * n / window.pair_edge for edge in (limit.low, limit.high))
            axes.plot([low, high], [top * 0.985] * 2, "|-", color="#005a8c", linewidth=1.6, markersize=8)


def _legend(axes: Axes, faults: set[str], entries: set[str], use: bool) -> None:
    from matplotlib.lines import Line2D
    from matplotlib.patches import Patch

    def mark(fault: str, label: str, **more: Any) -> Line2D:
        form, colour = FORMS[fault]
        return Line2D([], [], linestyle="none", marker=form, color=colour, markersize=6, label=label, **more)

    rows: list[Any] = [mark(fault, NAMES[fault] if fault else "good cut")
                       for fault in ("", *FAULTS) if fault in faults]  # fmt: skip
    if "straight" in entries:
        rows.append(mark("", "hollow: straight down", markerfacecolor="white"))
    rows += [
        Patch(facecolor=SHADES[1], label=f"inside: {figure(SHARES[1] * 100)} %"),
        Patch(facecolor=SHADES[0], label="likely inside"),
        Line2D([], [], color="#909090", linewidth=0.7, linestyle="dashed", label="what was cut"),
        Line2D([], [], color="#005a8c", linewidth=1.6, label="a limit's interval"),
    ]
    if use:
        rows.append(Line2D([], [], linestyle="none", marker="o", markersize=10, markerfacecolor="none",
                           markeredgecolor="#005a8c", markeredgewidth=2, label="the pair to use"))  # fmt: skip
    axes.legend(handles=rows, loc="upper left", bbox_to_anchor=(1.01, 1.0), fontsize=7, frameon=False, borderaxespad=0)
