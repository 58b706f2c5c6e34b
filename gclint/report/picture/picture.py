"""Draws one judged program as a picture: the path from above and from the front in its blank, the findings marked.

matplotlib draws; it is an extra, imported only when a figure is saved and in the views.
"""

from __future__ import annotations

import textwrap
from collections.abc import Iterator
from pathlib import Path as File
from typing import TYPE_CHECKING, Any, NamedTuple

import numpy as np

from gclint.digest import summary
from gclint.digest.path import RAPID_CUT
from gclint.digest.sheet_words import LINES_NAMED, UNIT_WORDS, is_entry, sentence, title_words, where_words
from gclint.digest.words import GRADE_WORDS, Lengths, count, figure
from gclint.report.picture.picture_save import saved
from gclint.report.picture.picture_scene import Scene, scene_of
from gclint.report.picture.picture_style import (
    CUTTING,
    IN_AIR,
    LEVELS,
    MARKS,
    RAPID,
    RAPID_IN_STOCK,
    mark_box,
    printable,
    round_length,
    shade,
    span,
    stretch,
    widened,
)
from gclint.report.picture.picture_view import View
from gclint.run import Run, Tables
from gclint.tables.finding import Finding

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

PIECES = {".png": 200_000, ".svg": 60_000}  # of the path; more of them would make a file large and not be seen
LISTED = 60  # findings in the list under the picture; the others are only counted
TOOLS_LISTED = 8
# inches
LEFT, RIGHT, HEAD, GAP, FOOT = 0.75, 1.9, 0.75, 0.65, 0.5
ACROSS, TALL = 7.4, 6.0  # of the view from above, at most
LEAST_WIDTH = 8.5  # of the picture: the list needs it
NOTHING = 10.0  # of the program's units, across a view of nothing
ROW = 0.18  # of the list
TEXT_AT, GRADE_AT, NUMBER_AT = 2.2, 0.75, 0.45
CLOSING = "A picture of what the program asks for. It is no promise: the person at the machine decides."


def picture(run: Run, ending: str) -> bytes:
    """The picture of a judged program; the same run gives the same bytes with the same matplotlib."""
    assert run.tables is not None
    drawing = _Drawing(run, run.tables, PIECES[ending])
    return saved(drawing.figure, ending, f"{run.checked.path}: the tool's path")


class _Row(NamedTuple):
    """A row of the list: a finding begins where `number` is set; others run on from `at`, inches."""

    number: int
    grade: str
    text: str
    at: float


class _Drawing:
    """One figure while it is being made; lengths on it are inches, in the views the program's units."""

    def __init__(self, run: Run, tables: Tables, pieces: int) -> None:
        self.run, self.tables = run, tables
        self.groups = _alike([finding for finding in run.checked.findings if is_entry(finding)])
        self.scene: Scene = scene_of(tables, self.groups, pieces)
        self.lengths = Lengths(summary.units(tables.motion) == "inch")

    def figure(self, make: type[Figure]) -> Figure:
        """The views, the legend on their right, the list under them."""
        low, high = self.scene.low, self.scene.high
        x, y, z = (self._padded(*ends) for ends in ((low.x, high.x), (low.y, high.y), (low.z, high.z)))
        if not len(self.scene.path) and self.tables.engagement.box is None:
            x, y, z = (widened(ends, NOTHING) for ends in (x, y, z))
        x, y = widened(x, 0.5 * span(y)), widened(y, 0.12 * span(x))
        scale = min(ACROSS / span(x), TALL / span(y))  # inches for each unit
        wide, tall = scale * span(x), scale * span(y)
        times = stretch(scale * span(z))
        z = widened(z, 0.5 / (scale * times))
        deep = scale * times * span(z)
        self.width = max(LEFT + wide + RIGHT, LEAST_WIDTH)
        rows = list(self._rows())
        self.height = HEAD + max(tall + GAP + deep, 4.0) + FOOT + ROW * (len(rows) + 2)
        self.made = make(figsize=(self.width, self.height))
        above = self._axes(HEAD, wide, tall)
        above.set(xlim=x, ylim=y)
        front = self._axes(HEAD + tall + GAP, wide, deep)
        front.set(xlim=x, ylim=z)
        grades = [group[0].grade for group in self.groups]
        much = f"{figure(times)} times as large" if times > 1 else f"{figure(1 / times)} times smaller"
        larger = "" if times == 1 else f"; heights drawn {much}"
        for axes, up, name, title in ((above, 1, "Y", "from above"), (front, 2, "Z", f"from the front{larger}")):
            axes.set_title(title, fontsize=9, loc="left")
            axes.set_xlabel(f"X, {self.lengths.unit}", fontsize=7, labelpad=1)
            axes.set_ylabel(f"{name}, {self.lengths.unit}", fontsize=7)
            View(axes, up, self.scene, self.tables, self.lengths).draw(grades, LISTED)
        self._head()
        self._legend(LEFT + wide + 0.3)
        self._list(rows, HEAD + max(tall + GAP + deep, 4.0) + FOOT)
        return self.made

    def _padded(self, low: float, high: float) -> tuple[float, float]:
        """The ends in the program's units with room around them."""
        room = 0.04 * (high - low) + 1e-3
        return (low - room) * self.lengths.scale, (high + room) * self.lengths.scale

    def _axes(self, down: float, wide: float, tall: float) -> Axes:
        place = LEFT / self.width, 1 - (down + tall) / self.height, wide / self.width, tall / self.height
        made = self.made.add_axes(place)
        made.tick_params(labelsize=7, width=0.5, length=2.5)
        made.ticklabel_format(useOffset=False, style="plain")
        return made

    def _text(self, left: float, down: float, text: str, **style: Any) -> None:
        self.made.text(left / self.width, 1 - down / self.height, text, **{"va": "center", "fontsize": 7.5, **style})

    def _head(self) -> None:
        checked = self.run.checked
        self._text(LEFT, 0.22, printable(File(checked.path).name, 50), fontsize=11, weight="bold")
        units = UNIT_WORDS.get(checked.units, checked.units)
        said = f"{checked.lines:,} lines, {units}, fingerprint {checked.fingerprint.removeprefix('sha256:')[:12]}"
        self._text(self.width - 0.2, 0.22, said, ha="right", fontsize=7)

    def _legend(self, left: float) -> None:
        """Shades of depth, kinds of line, the blank and the tools, from the top down."""
        from matplotlib.lines import Line2D

        down = HEAD
        if self.scene.deepest > 0:
            self._shades(left)
            down += 1.9
        rows = [
            Line2D([], [], **{**CUTTING, "color": shade(LEVELS // 2)}, label="cut, by depth"),
            Line2D([], [], **IN_AIR, label="feed in the air"),  # type: ignore[arg-type]
            Line2D([], [], **RAPID, label="rapid"),  # type: ignore[arg-type]
        ]
        if np.any(self.scene.path.kind == RAPID_CUT):
            rows.append(Line2D([], [], **RAPID_IN_STOCK, label="rapid in material"))  # type: ignore[arg-type]
        if self.scene.changes:
            rows.append(Line2D([], [], color="black", linestyle="none", marker="^", markersize=5, label="tool change"))
        self.made.legend(
            handles=rows, loc="upper left", bbox_to_anchor=(left / self.width, 1 - down / self.height), fontsize=7,
            frameon=False, handlelength=2.6, borderaxespad=0, borderpad=0,
        )  # fmt: skip
        down += 0.17 * len(rows) + 0.15
        self._text(left, down, "\n".join(self._blank_and_tools()), va="top", fontsize=7, linespacing=1.5)

    def _blank_and_tools(self) -> Iterator[str]:
        box = self.tables.engagement.box
        if box is None or box.x is None:
            yield "blank: not known"
        else:
            yield "blank: solid outline" if box.declared and box.placed else "blank: assumed, dashed"
        start = self.tables.engagement.start
        if start is not None and start.top.cut.any():
            yield "grey: cut by earlier programs"
        if start is not None and start.under is not None:
            yield "dashed in it: cut from below"
        used = summary.order_of_use(self.tables.motion)
        for tool in used[:TOOLS_LISTED]:
            declared = self.tables.setup.tools.get(tool)
            number = summary.number_of(tool, self.tables.setup)
            label = "" if number is None else f"T{number}: "
            name = (declared.name or declared.shape) if declared is not None else "not declared"
            yield from textwrap.wrap(label + printable(name, 60), 24, subsequent_indent="  ")
        if len(used) > TOOLS_LISTED:
            yield f"and {count(len(used) - TOOLS_LISTED, 'more tool')}"

    def _shades(self, left: float) -> None:
        place = left / self.width, 1 - (HEAD + 1.6) / self.height, 0.13 / self.width, 1.3 / self.height
        axes = self.made.add_axes(place)
        for n in range(LEVELS):
            axes.axhspan(n / LEVELS, (n + 1) / LEVELS, color=shade(n), linewidth=0)
        deepest = self.scene.deepest * self.lengths.scale
        ticks = np.arange(0, deepest * (1 + 1e-9), round_length(deepest / 3))
        axes.set(xlim=(0, 1), ylim=(1, 0), xticks=[])
        axes.yaxis.tick_right()
        axes.set_yticks((ticks / deepest).tolist(), [figure(float(tick)) for tick in ticks])
        axes.tick_params(labelsize=7, width=0.5, length=2.5)
        box = self.tables.engagement.box
        below = "the blank's top" if box is not None and box.top is not None else "Z 0"
        self._text(left, HEAD, f"depth below {below},\n{self.lengths.unit}", va="top", fontsize=7)

    def _rows(self) -> Iterator[_Row]:
        """The findings that are numbered, those alike as one, and notes on the picture."""
        room = int((self.width - TEXT_AT) * 15)  # characters
        for number, (group, places) in enumerate(zip(self.groups[:LISTED], self.scene.places), 1):
            finding = group[0]
            tool = f", tool {finding.tool}" if finding.tool is not None else ""
            nowhere = "" if places else " (about no one place of the path)"
            text = f"{title_words(finding.rule, self.run)}{tool}: {_where(group)}{nowhere}"
            first, *more = textwrap.wrap(printable(text, 400), room) or [""]
            yield _Row(number, finding.grade, first, TEXT_AT)
            yield from (_Row(0, "", row, TEXT_AT) for row in more)
        for note in self._notes():
            yield from (_Row(0, "", row, LEFT) for row in textwrap.wrap(note, room + 20))

    def _notes(self) -> Iterator[str]:
        checked, scene = self.run.checked, self.scene
        accepted = sum(finding.accepted is not None for finding in checked.findings)
        more = sum(map(len, self.groups[LISTED:]))
        if more:
            yield f"And {count(more, 'more finding')}, each a small diamond: `gclint check` lists them."
        if not self.groups:
            yield "Nothing was found by what could be judged."
        if accepted:
            yield f"Not marked: {count(accepted, 'accepted finding')}."
        if checked.not_judged:
            blind = count(len(checked.not_judged), "rule")
            yield f"{sentence(blind)} could not be judged everywhere: `gclint check` says what is missing."
        if scene.hidden:
            yield f"Not drawn: {count(scene.hidden, 'move')} whose place in the blank is not known."
        if not np.any(scene.path.drawn):
            yield "Nothing moves in this program, or nowhere that is known."
        if scene.off > 0:
            yield f"Drawn to within {self.lengths.length(scene.off)} of the path."

    def _list(self, rows: list[_Row], down: float) -> None:
        for row in rows:
            if row.number:
                ink = MARKS[row.grade][2]
                box = mark_box(row.grade)
                self._text(NUMBER_AT, down, str(row.number), ha="center", color=ink, bbox=box, fontsize=7)
                self._text(GRADE_AT, down, GRADE_WORDS[row.grade], weight="bold", fontsize=7)
            self._text(row.at, down, row.text)
            down += ROW
        self._text(LEFT, down + 0.5 * ROW, CLOSING, style="italic", fontsize=7)


def _alike(findings: list[Finding]) -> list[list[Finding]]:
    """Findings of one rule, tool and grade together, in the order of the first of each."""
    groups: dict[tuple[str, int | None, str], list[Finding]] = {}
    for finding in findings:
        groups.setdefault((finding.rule, finding.tool, finding.grade), []).append(finding)
    return list(groups.values())


def _where(group: list[Finding]) -> str:
    if len(group) == 1:
        return where_words(group[0])
    lines = sorted({finding.worst_line for finding in group})
    named = ", ".join(map(str, lines[:LINES_NAMED]))
    more = f" and {len(lines) - LINES_NAMED:,} more" if len(lines) > LINES_NAMED else ""
    return f"{count(len(group), 'finding')}, on line{'s' if len(lines) > 1 else ''} {named}{more}"
