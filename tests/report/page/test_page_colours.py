"""Colours that carry meaning, measured: contrast on what they are drawn on, and apart for the colour-blind.

Contrast is the ratio of relative luminances of WCAG 2.2 (https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio); 3:1 is its
success criterion 1.4.11 for graphics, 4.5:1 its 1.4.3 for text, asked here of collisions as well. Colour blindness is
simulated by Machado, Oliveira and Fernandes, "A physiologically-based model for simulation of color vision deficiency",
IEEE TVCG 15(6), 2009, and differences are those of CAM02-UCS (Luo, Cui, Li 2006), both as the library colorspacious has
them. That 15 units are well told apart is common practice, without a source.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from itertools import combinations
from pathlib import Path

import numpy as np
import pytest

import gclint.report.page
from gclint.report.picture.picture_style import MARKS
from gclint.report.text.text_sheet import STYLES

pytest.importorskip("colorspacious")

CSS = (Path(gclint.report.page.__file__).parent / "built" / "page.css").read_text(encoding="utf-8")
KINDS = ("protanomaly", "deuteranomaly", "tritanomaly")
APART = 15.0


def theme(name: str) -> dict[str, str]:
    """The colours of a theme by their names, as `#rrggbb`."""
    light = dict(re.findall(r"--([a-z-]+):\s*(#[0-9a-f]{3,6})", CSS.partition("color-scheme:light")[0]))
    block = re.search(r':root\[data-theme="?dark"?\]\{([^}]*)\}', CSS)
    assert block is not None
    dark = dict(re.findall(r"--([a-z-]+):\s*(#[0-9a-f]{3,6})", block.group(1)))
    return light if name == "light" else light | dark


def rgb(colour: str) -> np.ndarray:
    if colour.startswith("rgb"):
        return np.array([float(part) for part in re.findall(r"[\d.]+", colour)[:3]]) / 255
    digits = colour.removeprefix("#")
    digits = "".join(2 * digit for digit in digits) if len(digits) == 3 else digits
    return np.array([int(digits[k : k + 2], 16) for k in (0, 2, 4)]) / 255


def luminance(colour: str) -> float:
    part = rgb(colour)
    linear = np.where(part <= 0.04045, part / 12.92, ((part + 0.055) / 1.055) ** 2.4)
    return float(linear @ (0.2126, 0.7152, 0.0722))


def contrast(one: str, other: str) -> float:
    low, high = sorted((luminance(one), luminance(other)))
    return (high + 0.05) / (low + 0.05)


def difference(one: str, other: str, kind: str | None) -> float:
    from colorspacious import cspace_convert, deltaE

    seen = [rgb(one), rgb(other)]
    if kind:
        space = {"name": "sRGB1+CVD", "cvd_type": kind, "severity": 100}
        seen = [np.clip(cspace_convert(each, space, "sRGB1"), 0, 1) for each in seen]
    return float(deltaE(*seen, input_space="sRGB1"))


def test_the_measure_is_that_of_the_standard() -> None:
    assert contrast("#000", "#fff") == pytest.approx(21)  # WCAG 2.2: "ranges from 1 to 21"
    assert contrast("#777777", "#ffffff") == pytest.approx(4.48, abs=0.01)  # the usual example of a grey just too light


@pytest.fixture
def shades(opened: Callable[..., object], sample_page: Callable[[str], str]) -> Callable[[str, float, bool], str]:
    page = opened(sample_page("float-plate")).page  # type: ignore[attr-defined]
    return lambda key, t, dark: str(page.evaluate("(at) => window.gclintShade(...at)", [key, t, dark]))


def test_every_shade_is_seen_on_the_stock(shades: Callable[[str, float, bool], str]) -> None:
    for name in ("light", "dark"):
        for key in ("chip", "reached", "depth", "force", "height"):
            for t in np.linspace(0, 1, 21):
                assert contrast(shades(key, float(t), name == "dark"), theme(name)["stock"]) >= 3, (name, key, t)


def test_thin_good_and_thick_chips_stay_apart_for_everybody(shades: Callable[[str, float, bool], str]) -> None:
    for dark in (False, True):
        chips = {t: shades("chip", t, dark) for t in (0.0, 0.32, 0.5, 0.68, 1.0)}
        assert shades("chip", 0.35, dark) == shades("chip", 0.65, dark) == chips[0.5]  # neutral within the window
        for one, other in ((0.0, 0.5), (0.32, 0.5), (0.5, 0.68), (0.5, 1.0), (0.0, 1.0), (0.32, 0.68)):
            for kind in (None, *KINDS):
                assert difference(chips[one], chips[other], kind) >= APART, (dark, one, other, kind)


@pytest.mark.parametrize("name", ["light", "dark"])
def test_lines_are_seen_and_collisions_more_so(name: str) -> None:
    colours = theme(name)
    for ground in ("stock", "figure"):
        for line in ("air", "rapid", "plain-cut"):
            assert contrast(colours[line], colours[ground]) >= 3, (line, ground)
        assert contrast(colours["crash"], colours[ground]) >= 4.5, ground
    assert contrast(colours["band-line"], colours["paper"]) >= 3  # what bounds a window


@pytest.mark.parametrize("name", ["light", "dark"])
def test_grades_are_told_apart_by_form_by_number_and_by_colour(name: str) -> None:
    colours = theme(name)
    for one, other in combinations(MARKS, 2):
        for kind in (None, *KINDS):
            assert difference(colours[one], colours[other], kind) >= APART, (one, other, kind)
    for grade, (_, fill, ink) in MARKS.items():
        assert fill == colours[grade] == STYLES[grade].split()[-1]  # page, picture and terminal
        assert ink == colours["on-grade"]
        assert contrast(colours[grade], colours["on-grade"]) >= 4.5
        assert max(contrast(colours["ink"], colours[ground]) for ground in ("stock", "figure", "paper")) >= 3
    assert len({form for form, *_ in MARKS.values()}) == 3
