"""How a picture looks: shades, forms, lines, lengths of bars. Forms tell what colours tell as well."""

from __future__ import annotations

import math
from typing import Any

LEVELS = 24  # shades of depth
# form, fill and ink of a grade's mark: the same as on the page
MARKS = {"halt": ("square", "#d55e00", "#1b1712"), "change": ("diamond", "#e69f00", "#1b1712"),
         "consider": ("disc", "#56b4e9", "#1b1712")}  # fmt: skip
BLANK, KEEP_OUT, ALARM = "#efe9dc", "#8c510a", "#a80f1e"
IN_AIR = {"color": "#7d7360", "linewidth": 0.5}
RAPID = {"color": "#5d5444", "linewidth": 0.5, "linestyle": (0, (5, 4))}
RAPID_IN_STOCK = {"color": ALARM, "linewidth": 1.6, "linestyle": (0, (3, 2))}
CUTTING = {"linewidth": 1.1}
DASHED = (0, (4, 3))
HEIGHT = 2.0  # inches at most, of the view from the front
NUMBERS = 4  # in one row of a mark


def shade(level: int) -> Any:
    """Light at the top of the blank, dark at the deepest cut; even steps to the eye, also of the colour-blind."""
    from matplotlib import colormaps

    return colormaps["viridis_r"](0.22 + 0.78 * level / (LEVELS - 1))


def mark_box(grade: str) -> dict[str, Any]:
    form, fill, _ = MARKS[grade]
    style: Any = {"square": "square,pad=0.25", "disc": "round,pad=0.25,rounding_size=0.7", "diamond": _diamond}[form]
    return {"boxstyle": style, "facecolor": fill, "edgecolor": "black", "linewidth": 0.7}


def _diamond(x: float, y: float, wide: float, tall: float, size: float) -> Any:
    """The outline of a box drawn to a point on the left and on the right, as matplotlib asks for it."""
    from matplotlib.path import Path

    pad, point = 0.25 * size, 0.55 * size
    left, right, low, high = x - 0.5 * pad, x + wide + 0.5 * pad, y - pad, y + tall + pad
    middle = (low + high) / 2
    corners = [(left, low), (right, low), (right + point, middle), (right, high), (left, high), (left - point, middle)]
    return Path([*corners, corners[0]], closed=True)


def span(ends: tuple[float, float]) -> float:
    return ends[1] - ends[0]


def widened(ends: tuple[float, float], least: float) -> tuple[float, float]:
    """The ends, moved apart evenly where they lie nearer than `least`."""
    more = max(least - span(ends), 0.0) / 2
    return ends[0] - more, ends[1] + more


def stretch(height: float) -> float:
    """How many times as large heights are drawn, so that the view from the front is neither a line nor a tower."""
    best = 1.0
    for factor in (1.0, 2.0, 5.0, 10.0, 20.0, 50.0):
        if height * factor <= HEIGHT:
            best = factor
        if height * factor > HEIGHT * 0.4:
            break
    while height * best > HEIGHT * 1.5:
        best /= 2
    return best


def round_length(about: float) -> float:
    """1, 2 or 5 times a power of ten, not over `about`."""
    power = 10 ** math.floor(math.log10(about))
    return float(next(step for step in (5, 2, 1) if step * power <= about * (1 + 1e-9)) * power)


def mark_text(numbers: list[int]) -> str:
    """'1-3 7' for 1, 2, 3, 7; a few to a row."""
    runs: list[list[int]] = []
    for number in sorted(set(numbers)):
        if runs and number == runs[-1][1] + 1:
            runs[-1][1] = number
        else:
            runs.append([number, number])
    said = [str(a) if a == b else f"{a} {b}" if b == a + 1 else f"{a}-{b}" for a, b in runs]
    return "\n".join(" ".join(said[n : n + NUMBERS]) for n in range(0, len(said), NUMBERS))


def beside(x: float, y: float, label: str, taken: list[tuple[float, float, float, float]]) -> tuple[float, float]:
    """Where a mark of (x, y) can stand without covering another one, from there; all inches. Keeps its place."""
    rows = label.split("\n")
    wide, tall = 0.055 * max(map(len, rows)) + 0.14, 0.12 * len(rows) + 0.09
    angles = [math.radians(degrees) for degrees in range(45, 405, 45)]
    tried = [(r * math.cos(a), r * math.sin(a)) for r in (0.28, 0.45, 0.65, 0.9) for a in angles]

    def box(dx: float, dy: float) -> tuple[float, float, float, float]:
        return x + dx - wide / 2, y + dy - tall / 2, x + dx + wide / 2, y + dy + tall / 2

    def free(here: tuple[float, float, float, float]) -> bool:
        return not any(here[0] < t[2] and here[2] > t[0] and here[1] < t[3] and here[3] > t[1] for t in taken)

    chosen = next((each for each in tried if free(box(*each))), tried[0])
    taken.append(box(*chosen))
    return chosen


def printable(text: str, most: int) -> str:
    text = "".join(c if c.isprintable() else "?" for c in text)
    return text if len(text) <= most else f"{text[: most - 3]}..."
