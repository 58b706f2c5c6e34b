"""One view of a program: the blank, what to keep out of, the path and the marks, in the program's own units."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

import numpy as np

from gclint.columns import Bools, Column, Floats, Longs
from gclint.digest.path import CUT, FEED_AIR, RAPID_AIR, RAPID_CUT
from gclint.digest.words import Lengths, figure
from gclint.report.picture.picture_scene import Place, Scene
from gclint.report.picture.picture_style import (
    BLANK,
    CUTTING,
    DASHED,
    IN_AIR,
    KEEP_OUT,
    LEVELS,
    MARKS,
    RAPID,
    RAPID_IN_STOCK,
    beside,
    mark_box,
    mark_text,
    round_length,
    shade,
    span,
)
from gclint.run import Tables
from gclint.tables.field import GONE, fewer

if TYPE_CHECKING:
    from matplotlib.axes import Axes

PIECES = 2_000  # of one drawn path: a rasteriser takes none without end
PAPER = {"facecolor": "white", "edgecolor": "none", "pad": 0.4, "alpha": 0.7}  # behind small words
SMALL = 6.5
MOST_SEEN = 400  # cells along one side of what earlier programs cut
STRAIGHT = 1e-3  # mm of travel in X and Y of what goes straight down
TOOLS_NAMED = 6  # in one place


class View:
    """The view along one axis; `up` is the axis drawn upwards: 1 (from above) or 2 (from the front)."""

    def __init__(self, axes: Axes, up: int, scene: Scene, tables: Tables, lengths: Lengths) -> None:
        self.axes, self.up, self.scene, self.tables, self.lengths = axes, up, scene, tables, lengths
        self.unit = lengths.scale
        self.x, self.y = axes.get_xlim(), axes.get_ylim()
        place, size = axes.get_position(), axes.figure.get_size_inches()  # type: ignore[union-attr]
        self.inches = place.width * size[0] / span(self.x), place.height * size[1] / span(self.y)  # for each unit

    def draw(self, grades: Sequence[str], numbered: int) -> None:
        """Marks the first `numbered` groups of findings with their numbers, the others with a diamond."""
        self._blank()
        if self.up == 1:
            self._cut_before()
        self._keep_outs()
        self._path()
        self._zero()
        if self.up == 1:
            self._dots()
            self._bar()
            self._tool_changes()
        self._marks(grades, numbered)

    def _at(self, place: Place) -> tuple[float, float]:
        return place.x * self.unit, (place.y if self.up == 1 else place.z) * self.unit

    def _blank(self) -> None:
        box = self.tables.engagement.box
        if box is None or box.x is None:
            return
        low, high = (box.y or (None, None)) if self.up == 1 else (box.bottom, box.top)
        if high is None:
            return
        low = self.y[0] / self.unit if low is None else low  # no bottom is known: it runs out of the picture
        line = "-" if box.declared and box.placed else DASHED
        self._rectangle(box.x, (low, high), facecolor=BLANK, edgecolor="black", linestyle=line, zorder=1)

    def _cut_before(self) -> None:
        """What earlier programs cut: the deeper the darker, white where nothing is left; dashed what lies under it."""
        found, box = self.tables.engagement, self.tables.engagement.box
        cut = found.surface_at_start
        if cut is None or box is None or box.x is None or box.y is None:
            return
        cut = fewer(cut, MOST_SEEN)
        thick = box.top - box.bottom if box.top is not None and box.bottom is not None else np.inf
        share = cut / max(float(cut[cut < thick - GONE].max(initial=0.0)), 1e-6)
        ink = np.zeros((*cut.shape, 4))
        ink[..., 3] = np.where(cut > GONE, 0.12 + 0.33 * np.clip(share, 0, 1), 0)
        ink[cut >= thick - GONE] = 1
        ends = [end * self.unit for end in (*box.x, *box.y)]
        self.axes.imshow(ink, origin="lower", extent=(ends[0], ends[1], ends[2], ends[3]), aspect="auto",
                         interpolation="nearest", zorder=1.2)  # fmt: skip
        under = None if found.under is None else fewer(found.under, MOST_SEEN)
        if under is not None and under.any() and min(under.shape) > 1:
            x, y = (np.linspace(a, b, n) for a, b, n in ((*ends[:2], under.shape[1]), (*ends[2:], under.shape[0])))
            style: dict[str, Any] = {"colors": ["0.4"], "linewidths": 0.6, "linestyles": "dashed"}
            self.axes.contour(x, y, under > GONE, [0.5], zorder=1.3, **style)

    def _keep_outs(self) -> None:
        for each in self.tables.setup.keep_out:
            across, up = (each.low[0], each.high[0]), (each.low[self.up], each.high[self.up])
            self._rectangle(across, up, facecolor="none", edgecolor=KEEP_OUT, hatch="////", zorder=2)
            if self.up == 1:
                middle = sum(across) / 2 * self.unit, sum(up) / 2 * self.unit
                self.axes.annotate(each.name, middle, ha="center", va="center", fontsize=SMALL, zorder=2.5, bbox=PAPER)

    def _rectangle(self, across: tuple[float, float], up: tuple[float, float], **style: Any) -> None:
        from matplotlib.patches import Rectangle

        corner = across[0] * self.unit, up[0] * self.unit
        wide, tall = span(across) * self.unit, span(up) * self.unit
        self.axes.add_patch(Rectangle(corner, wide, tall, linewidth=0.8, **style))

    def _path(self) -> None:
        """Air under cuts, shallow under deep, rapids in material on top."""
        path = self.scene.path
        x, y = path.x * self.unit, (path.y if self.up == 1 else path.z) * self.unit
        level = self._levels()
        self._lines(x, y, path.kind == FEED_AIR, {**IN_AIR, "zorder": 3})
        self._lines(x, y, path.kind == RAPID_AIR, {**RAPID, "zorder": 3.1})
        for n in range(LEVELS):
            chosen = (path.kind == CUT) & (level == n)
            self._lines(x, y, chosen, {**CUTTING, "color": shade(n), "zorder": 4 + n / LEVELS})
        self._lines(x, y, path.kind == RAPID_CUT, {**RAPID_IN_STOCK, "zorder": 6})

    def _levels(self) -> Longs:
        """Shade of each piece, by the depth of its middle below the blank's top; of one straight down by its end."""
        path, deepest = self.scene.path, self.scene.deepest
        if not len(path) or deepest <= 0:
            return np.zeros(len(path), np.int64)
        low, high = np.minimum(path.z[:-1], path.z[1:]), np.maximum(path.z[:-1], path.z[1:])
        below = self.scene.top - np.where(self._straight(), low, (low + high) / 2)
        return np.clip(below / deepest * LEVELS, 0, LEVELS - 1).astype(np.int64)

    def _straight(self) -> Bools:
        """Which pieces go straight up or down."""
        path = self.scene.path
        return np.asarray(np.hypot(np.diff(path.x), np.diff(path.y)) < STRAIGHT)[: len(path)]

    def _lines(self, x: Floats, y: Floats, chosen: Column, style: dict[str, Any]) -> None:
        """Chosen pieces; those that follow each other are one line, up to a length the rasteriser takes."""
        from matplotlib.patches import PathPatch
        from matplotlib.path import Path as Drawn

        every = np.flatnonzero(chosen & self.scene.path.drawn)
        for begin in range(0, len(every), PIECES):
            rows = every[begin : begin + PIECES]
            lasts = np.flatnonzero(np.append(np.diff(rows) != 1, True))  # where a line ends
            points = np.insert(rows, lasts + 1, rows[lasts] + 1)
            codes = np.full(len(points), Drawn.LINETO, np.uint8)
            codes[np.append(0, (lasts + 1 + np.arange(1, len(lasts) + 1))[:-1])] = Drawn.MOVETO
            drawn = Drawn(np.column_stack((x[points], y[points])), codes)
            self.axes.add_artist(PathPatch(drawn, fill=False, capstyle="butt", joinstyle="round", **style))

    def _dots(self) -> None:
        """Cuts straight down: a dot for each place, of its deepest shade."""
        path, level = self.scene.path, self._levels()
        rows = np.flatnonzero(self._straight() & path.drawn & (path.kind >= CUT))
        rows = rows[np.argsort(-level[rows], kind="stable")]
        cell = 0.02 / min(self.inches)  # finer would not be seen
        x, y = path.x * self.unit, path.y * self.unit
        at = np.column_stack((np.round(x[rows] / cell), np.round(y[rows] / cell)))
        rows = rows[np.sort(np.unique(at, axis=0, return_index=True)[1])]
        for n in np.unique(level[rows]).tolist():
            here = rows[level[rows] == n]
            self.axes.plot(x[here], y[here], linestyle="none", marker="o", markersize=2.8, markeredgewidth=0,
                           color=shade(n), zorder=5.5)  # fmt: skip

    def _zero(self) -> None:
        """Work zero: a disc with two opposite quarters filled."""
        from matplotlib.patches import Ellipse, Wedge

        if self.up == 2:
            self.axes.plot(0, 0, marker="+", color="black", markersize=9, markeredgewidth=1.2, zorder=7)
            return
        radius = 0.08 / self.inches[0]
        self.axes.add_patch(Ellipse((0, 0), 2 * radius, 2 * radius, facecolor="white", linewidth=0, zorder=7))
        for start in (0, 180):
            self.axes.add_patch(Wedge((0, 0), radius, start, start + 90, color="black", linewidth=0, zorder=7))
        self.axes.add_patch(Ellipse((0, 0), 2 * radius, 2 * radius, fill=False, linewidth=0.7, zorder=7))
        self.axes.annotate("X0 Y0", (0, 0), xytext=(7, -10), textcoords="offset points", fontsize=SMALL, zorder=7,
                           bbox=PAPER)  # fmt: skip

    def _bar(self) -> None:
        """A bar of a round length, above the view on the right."""
        length = round_length(span(self.x) / 4)
        share, up = length / span(self.x), 1 + 0.1 / (self.inches[1] * span(self.y))
        self.axes.plot([1 - share, 1], [up, up], color="black", linewidth=2, solid_capstyle="butt", clip_on=False,
                       transform=self.axes.transAxes)  # fmt: skip
        self.axes.annotate(f"{figure(length)} {self.lengths.unit}", (1, up), xycoords="axes fraction", xytext=(0, 3),
                           textcoords="offset points", ha="right", fontsize=7)  # fmt: skip

    def _tool_changes(self) -> None:
        """A triangle where each is made, those of one place together."""
        said: dict[tuple[float, float], list[int]] = {}
        for tool, place in self.scene.changes:
            here = self._at(place)
            said.setdefault(next((k for k in said if self._near(k, here, 0.25, 0.25)), here), []).append(tool)
        for here, tools in said.items():
            names = list(dict.fromkeys(tools))
            label = " ".join(f"T{tool}" for tool in names[:TOOLS_NAMED]) + (" ..." if len(names) > TOOLS_NAMED else "")
            self.axes.plot(*here, marker="^", color="black", markersize=5, zorder=7)
            self.axes.annotate(label, here, xytext=(0, 5), textcoords="offset points", ha="center", fontsize=SMALL,
                               zorder=7, bbox=PAPER)  # fmt: skip

    def _near(self, a: tuple[float, float], b: tuple[float, float], across: float, up: float) -> bool:
        """Whether two points lie nearer than so many inches."""
        return bool(abs(a[0] - b[0]) * self.inches[0] < across and abs(a[1] - b[1]) * self.inches[1] < up)

    def _marks(self, grades: Sequence[str], numbered: int) -> None:
        """The findings' numbers at their places; those that would cover each other share a mark."""
        held: list[tuple[tuple[float, float], list[int]]] = []
        for number, places in enumerate(self.scene.places):
            for here in map(self._at, places):
                if number >= numbered:
                    self.axes.plot(*here, marker="D", markersize=3, color="black", zorder=8)
                    continue
                shared = next((numbers for at, numbers in held if self._near(at, here, 0.3, 0.2)), None)
                if shared is None:
                    held.append((here, [number]))
                else:
                    shared.append(number)
        taken: list[tuple[float, float, float, float]] = []
        for here, numbers in held:
            label = mark_text([number + 1 for number in numbers])
            grade = min((grades[number] for number in numbers), key=list(MARKS).index)
            off = beside(here[0] * self.inches[0], here[1] * self.inches[1], label, taken)
            self.axes.plot(*here, marker="o", markersize=2.5, color="black", zorder=8)
            self.axes.annotate(
                label, here, xytext=(off[0] * 72, off[1] * 72), textcoords="offset points", fontsize=7, ha="center",
                va="center", color=MARKS[grade][2], zorder=9, linespacing=1.0, bbox=mark_box(grade),
                arrowprops={"arrowstyle": "-", "linewidth": 0.6, "shrinkA": 0, "shrinkB": 0},
            )  # fmt: skip
