"""Findings that a picture tells best have one, with the numbers of the finding, without a script."""

from __future__ import annotations

import re
from collections.abc import Callable

import numpy as np

from gclint.report.page.finding_drawing import _held
from tests.report.page.test_page_carries import EPOXY

HEAD = "G21 G90 G94 G17 G54\nT1 M6\nM3 S16000\nG0 X0 Y0 Z5\n"
TAIL = "G0 Z5\nM5\nM30\n"


def drawn(html: str) -> dict[str, str]:
    """What stands under the drawing of each finding, by its rule."""
    found = {}
    for article in html.split('<article class="finding')[1:]:
        said = re.search(r'<figure class="finding-drawing"><svg.*?</svg><figcaption>([^<]*)', article, re.DOTALL)
        if said:
            found[re.search(r'<p class="aside">([a-z-]+)', article)[1]] = said[1]  # type: ignore[index]
    return found


def test_beside_the_blank_and_into_the_table(page_of: Callable[..., str]) -> None:
    # the blank of 120 x 40 x 12 mm reaches from X-10 to X110, Z-12 to Z0: X130 is 20 mm beyond it, Z-13.5 1.5 mm below
    cuts = "G1 Z-3 F200\nG1 X130 F800\nG1 Y9\nG1 X0\nG1 Y0\nG1 Z-13.5 F200\nG1 X60 F800\n"
    said = drawn(page_of(HEAD + cuts + TAIL, **EPOXY))
    assert "20 mm right of the blank" in said["outside-stock"]
    assert "1.5 mm below the blank" in said["cuts-table"]


def test_units_at_two_scales(page_of: Callable[..., str]) -> None:
    text = HEAD.replace("G21", "G20") + "G1 Z-0.1 F20\nG1 X60 F80\nG1 Y30\nG1 X0\nG1 Y0\n" + TAIL
    html = page_of(text, **EPOXY)
    assert "units-suspect" in drawn(html)
    assert "as millimetres:" in html
    assert "60 x 30 mm" in html
    assert "1524 x 762 mm" in html or "1520 x 762 mm" in html


def test_what_hangs_on_nothing_is_told_from_what_is_held() -> None:
    left = np.ones((9, 9), bool)
    left[2, 2:7] = left[6, 2:7] = left[2:7, 2] = left[2:7, 6] = False  # a slot right round
    assert (left & ~_held(left)).sum() == 9
    left[2, 4] = True  # a tab
    assert not (left & ~_held(left)).any()
