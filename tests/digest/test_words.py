"""Figures and glosses for people."""

from __future__ import annotations

import pytest

from gclint.digest.words import Glossary, Lengths, duration, figure, plain_number, span


@pytest.mark.parametrize(
    ("value", "text"),
    [
        (0.0423, "0.0423"), (0.028, "0.028"), (1855.2, "1855"), (12.0, "12"), (0.0, "0"), (-3.456, "-3.46"),
        (26500, "26500"), (0.000001, "0.000001"), (999.6, "1000"), (float("nan"), "unknown"), (1e-9, "0"),
    ],
)
def test_figures(value: float, text: str) -> None:
    assert figure(value) == text


def test_words_of_a_program() -> None:
    assert [plain_number(n) for n in (400.0, 12.5, -0.0, 0.00001)] == ["400", "12.5", "0", "0"]


def test_a_range_that_reads_the_same_at_both_ends_is_one_number() -> None:
    assert span(300, 1500, "mm/min") == "300 to 1500 mm/min"
    assert span(0.0421, 0.04211, "mm") == "0.0421 mm"


def test_durations() -> None:
    assert [duration(s) for s in (8.2, 760, 3900, None)] == ["8.2 s", "12 min 40 s", "1 h 05 min", "unknown"]


def test_inches() -> None:
    lengths = Lengths(inch=True)
    assert lengths.length(25.4) == "1 in"
    assert lengths.feeds(254, 1524) == "10 to 60 in/min"
    assert lengths.path(3048) == "10 ft"
    assert lengths.place(-3.175) == "-0.125"


def test_a_gloss_comes_once() -> None:
    gloss = Glossary()
    slice_ = "the thickest slice one tooth takes: the chip load that is really cut"
    assert gloss("the chip thickness is low") == f"the chip thickness ({slice_}) is low"
    assert gloss("the chip thickness is low, the chip rubs") == "the chip thickness is low, the chip rubs"


def test_a_gloss_is_not_put_inside_brackets_or_other_words() -> None:
    gloss = Glossary()
    assert gloss("down-cut (plunge) and microchip") == "down-cut (plunge) and microchip"
    assert gloss("Plunge here").startswith("Plunge (straight down")
