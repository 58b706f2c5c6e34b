"""The page of a mend or of a comparison: both paths over the blank, the changes, the surface as a map, the proof."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import Any

import numpy as np
from msgspec import Struct

from gclint import __version__
from gclint.columns import Longs
from gclint.digest.words import GRADE_WORDS, count
from gclint.mend.case import Case
from gclint.mend.compare import Comparison, lines_that_differ
from gclint.mend.mend import Mended
from gclint.mend.result import Compared, Document, Made, Proof
from gclint.mend.surface import Difference, unlike
from gclint.mend.text_out import alike_changes, differs, pairs, same_surface
from gclint.motion.along import points_at
from gclint.report.text.cautions import cautions
from gclint.tables.finding import Range
from gclint.tables.motion import RAPID, Motion

MOST_POINTS = 60_000  # of one figure; a longer path is thinned
MOST_CELLS = 4000
MOST_ROWS = 60  # lines of one change
MOST_CHANGES = 200
MOST_MARKS = 60
MARGINS = (
    ("chip, mm", "h_ex_mm"), ("feed reached, mm/min", "reached_feed_mm_min"), ("true speed, rev/min", "true_speed_rpm"),
    ("force, N", "force_n"), ("bending, mm", "bend_mm"),
)  # fmt: skip


class Figure(Struct, frozen=True):
    title: str
    box: str
    pen: float
    rects: tuple[tuple[float, float, float, float, str], ...]
    lines: tuple[tuple[str, str, float, bool], ...]
    cells: tuple[tuple[float, float, float, str], ...] = ()
    marks: tuple[tuple[float, float, str], ...] = ()


def mend_page(mended: Mended, document: Document) -> str:
    """Self-contained HTML without script."""
    left = len([each for each in document.proof.left if each.grade != "consider"])
    if document.to is None:
        found = bool(document.proof.left)
        verdict = "No copy was written: " + (
            "nothing of what is found could be mended with proof." if found else "nothing is found, so none is needed."
        )
    elif left:
        are = "is" if left == 1 else "are"
        verdict = f"The copy cuts the same part; {count(left, 'finding')} to halt or change for {are} left."
    else:
        verdict = "The copy cuts the same part, and nothing to halt or change for is left."
    facts = [("from", f"{document.from_.path}, read as {document.from_.fingerprint}")]
    if document.to is not None:
        facts.append(("to", f"{document.to.path}, read as {document.to.fingerprint}"))
    return _page(
        "Mended copy", document.from_.path, verdict, facts, mended.original, mended.copy, mended.surface,
        document.proof, document.changes,
        [(f"{each.rule}, line {', '.join(map(str, each.lines[:8]))}", each.because) for each in document.not_mended],
        "A person must look at the copy before it runs." if document.to else "",
    )  # fmt: skip


def compare_page(comparison: Comparison) -> str:
    """Self-contained HTML without script."""
    document: Compared = comparison.document
    change = lines_that_differ(comparison)
    same = "the same surface" if comparison.surface.same else "another surface"
    new = [each for each in document.proof.new if each.grade != "consider"]
    verdict = f"The new version leaves {same}; " + (
        f"{count(len(new), 'finding')} new." if new else "nothing grave is new."
    )
    facts = [
        ("old", f"{document.old.path}, read as {document.old.fingerprint}"),
        ("new", f"{document.new.path}, read as {document.new.fingerprint}"),
    ]
    return _page("Two versions of a program", document.new.path, verdict, facts, comparison.old, comparison.new,
                 comparison.surface, document.proof, (change,) if change is not None else (), [], "")  # fmt: skip


def _page(kicker: str, title: str, verdict: str, facts: Sequence[tuple[str, str]], old: Case, new: Case,
          surface: Difference, proof: Proof, changes: Sequence[Made], not_mended: Sequence[tuple[str, str]],
          note: str) -> str:  # fmt: skip
    from jinja2 import Environment, FileSystemLoader, StrictUndefined

    environment = Environment(
        loader=FileSystemLoader(Path(__file__).parent), autoescape=True, undefined=StrictUndefined,
        trim_blocks=True, lstrip_blocks=True,
    )  # fmt: skip
    shown = []
    number_of = {change: number for number, change in enumerate(changes, 1)}
    for alike in alike_changes(changes)[:MOST_CHANGES]:
        rows = [row for change in alike for row in pairs(old, new, change)]
        change = alike[0]
        numbers = ", ".join(str(number_of[each]) for each in alike)
        shown.append({"number": numbers, "rule": change.rule, "kind": change.kind, "because": change.because,
                      "rows": rows[:MOST_ROWS],
                      "more": count(len(rows) - MOST_ROWS, "line") if len(rows) > MOST_ROWS else ""})  # fmt: skip
    return environment.get_template("page.html.j2").render(
        version=__version__, kicker=kicker, title=title, verdict=verdict, facts=facts, note=note,
        figures=_figures(old, new, surface, changes), changes=shown,
        changes_title="What was changed, and why" if note else "Lines that differ", proof=_proof(proof, surface),
        margin_names=[name for name, _ in MARGINS] + ["depth, mm", "width, mm"], margins=_margins(old, new),
        not_mended=not_mended, cautions=cautions(new.run.material_cautions),
    )  # fmt: skip


def _proof(proof: Proof, surface: Difference) -> list[tuple[str, str]]:
    own = proof.surface
    if own.largest_difference_mm is None:
        said = f"could not be compared: {surface.why_not}"
    elif own.same:
        said = same_surface(own)
    else:
        said = differs(own.largest_difference_mm) + ", marked on the map"
    time = [f"{each:.0f} s" if each is not None else "not known" for each in proof.time_s]
    rows = [("surface", said), ("time", f"{time[0]} before, {time[1]} after")]
    for label, places in (("gone", proof.gone), ("new", proof.new), ("left", proof.left)):
        said = "; ".join(f"{each.rule} ({GRADE_WORDS[each.grade].lower()}), line {each.line}" for each in places[:40])
        rows.append((label, said or "nothing"))
    return [*rows, ("untouched", f"{count(proof.untouched_lines, 'line')}, byte for byte")]


def _margins(old: Case, new: Case) -> list[list[str]]:
    rows = []
    after = {row.tool: row for row in new.run.checked.tools}
    for row in old.run.checked.tools:
        for name, each in (("before", row), ("after", after.get(row.tool))):
            if each is None:
                continue
            cells = [_range(getattr(each, key)) for _, key in MARGINS]
            cells += [_number(value) if value is not None else "-" for value in (each.ap_max_mm, each.ae_max_mm)]
            rows.append(
                [
                    f"{row.tool if row.tool is not None else ''} {row.name}".strip() if name == "before" else "",
                    name,
                    *cells,
                ]
            )
    return rows


def _range(value: Range | None) -> str:
    if value is None:
        return "-"
    low, high = (_number(each) for each in value)
    return low if low == high else f"{low} to {high}"


def _number(value: float) -> str:
    """Three figures, never in powers of ten: 0.0537, 1150, 10700."""
    rounded = float(f"{value:.3g}")
    return f"{rounded:.0f}" if abs(rounded) >= 100 else f"{rounded:.6f}".rstrip("0").rstrip(".")


def _figures(old: Case, new: Case, surface: Difference, changes: Sequence[Made]) -> list[Figure]:
    gone, come = unlike(old.motion, new.motion)
    ends = new.motion.x0 + new.motion.x1 + new.motion.z0 + new.motion.z1
    every = np.flatnonzero((new.motion.kind != RAPID) & np.isfinite(ends)
                           & np.isfinite(new.motion.y0 + new.motion.y1))  # fmt: skip
    kept = every[~np.isin(every, come)]
    sets = ((new.motion, kept, "--old", 1.0, False), (old.motion, gone, "--gone", 2.0, True),
            (new.motion, come, "--new", 2.0, False))  # fmt: skip
    made = []
    box = new.tables.engagement.box
    for title, axes in (("From above.", (0, 1)), ("From the front: height over X; heights are drawn larger.", (0, 2))):
        lines: list[tuple[Any, str, float, bool]] = []
        for motion, rows, colour, wide, dashed in sets:
            lines += [(line, colour, wide, dashed) for line in _polylines(motion, rows, axes)]
        rects = []
        if box is not None and box.x is not None and box.y is not None:
            top = box.top or 0.0
            low = box.bottom if box.bottom is not None else top - 1.0
            other = box.y if axes[1] == 1 else (low, top)
            rects.append((box.x, other))
        figure = _figure(title, lines, rects, surface if axes[1] == 1 else None,
                         _marks(new, changes, axes) if axes[1] == 1 else ())  # fmt: skip
        if figure is not None:
            made.append(figure)
    return made


def _polylines(m: Motion, rows: Longs, axes: tuple[int, int]) -> list[Any]:
    """Runs of moves as points [n, 2]."""
    finite = np.isfinite(m.x0[rows] + m.x1[rows] + m.y0[rows] + m.y1[rows] + m.z0[rows] + m.z1[rows])
    rows = rows[finite]
    if len(rows) > MOST_POINTS // 2:
        rows = rows[:: len(rows) // (MOST_POINTS // 2) + 1]
    lines: list[list[tuple[float, float]]] = []
    before = -2
    for row in rows.tolist():
        turn = abs(float(m.sweep[row]))
        shares = np.linspace(0, 1, max(2, int(turn / 6) + 1)) if turn else np.array((0.0, 1.0))
        shares = shares[:200]
        places = points_at(m, np.full(len(shares), row), shares)
        points = list(zip(places[axes[0]].tolist(), places[axes[1]].tolist()))
        if row == before + 1 and lines:
            lines[-1] += points[1:]
        else:
            lines.append(points)
        before = row
    return [np.array(line) for line in lines]


def _marks(new: Case, changes: Sequence[Made], axes: tuple[int, int]) -> tuple[tuple[float, float, str], ...]:
    """Numbers of the changes at their places; of several at one place the first, with a plus."""
    marks: dict[tuple[float, float], str] = {}
    m = new.motion
    ends = (m.x1, m.y1, m.z1)
    for number, change in enumerate(changes[:MOST_MARKS], 1):
        rows = [row for line in change.new_lines[:3] for row in new.rows_of.get(line, [])[:1]]
        if rows and np.isfinite(ends[axes[0]][rows[0]] + ends[axes[1]][rows[0]]):
            place = round(float(ends[axes[0]][rows[0]]), 1), round(float(ends[axes[1]][rows[0]]), 1)
            marks[place] = marks[place].rstrip("+") + "+" if place in marks else str(number)
    return tuple((x, y, said) for (x, y), said in marks.items())


def _figure(title: str, lines: list[tuple[Any, str, float, bool]], rects: list[Any], surface: Difference | None,
            marks: tuple[tuple[float, float, str], ...]) -> Figure | None:  # fmt: skip
    points = [line[0] for line in lines] + [np.array([(r[0][0], r[1][0]), (r[0][1], r[1][1])]) for r in rects]
    if not points:
        return None
    every = np.concatenate(points)
    low, high = every.min(axis=0), every.max(axis=0)
    wide, tall = max(float(high[0] - low[0]), 1e-3), max(float(high[1] - low[1]), 1e-3)
    front = surface is None
    stretch = min(20.0, 0.3 * wide / tall) if front and tall < 0.3 * wide else 1.0
    tall *= stretch
    pen = max(wide, tall) / 500
    pad = 12 * pen

    def at(x: float, y: float) -> tuple[float, float]:
        return round(x - float(low[0]), 4), round((float(high[1]) - y) * stretch, 4)

    drawn = []
    for line, colour, thick, dashed in lines:
        drawn.append((" ".join("{},{}".format(*at(x, y)) for x, y in line.tolist()), colour, thick, dashed))
    boxes = []
    for (x0, x1), (y0, y1) in rects:
        left, upper = at(x0, y1)
        boxes.append((left, upper, round(x1 - x0, 4), round((y1 - y0) * stretch, 4), "--stock"))
    cells = []
    if surface is not None:
        for tile in surface.tiles:
            js, xs = np.nonzero(tile.difference)
            step = max(1, len(js) // max(1, MOST_CELLS // max(1, len(surface.tiles))))
            for j, i in zip(js[::step].tolist(), xs[::step].tolist()):
                x, y = at(tile.x + i * surface.cell, tile.y + (j + 1) * surface.cell)
                size = round(surface.cell * max(1.0, step**0.5), 4)
                cells.append((x, y, size, "--higher" if tile.difference[j, i] > 0 else "--deeper"))
        title += (" No cell of the surface differs." if surface.same else
                  " Green: more is left; violet: more is taken." if not surface.why_not else "")  # fmt: skip
    view = f"{-pad:.4f} {-pad:.4f} {wide + 2 * pad:.4f} {tall + 2 * pad:.4f}"
    return Figure(title, view, round(pen, 5), tuple(boxes), tuple(drawn), tuple(cells),
                  tuple((*at(x, y), n) for x, y, n in marks))  # fmt: skip
