"""What the proof of a material card doubts, and that every shipped card passes it."""

from __future__ import annotations

from pathlib import Path

import pytest

from gclint.cards.material import names
from gclint.cards.proof import prove
from gclint.shipped import folder

CARDS = folder() / "materials"


@pytest.mark.parametrize("name", names())
def test_shipped_cards_have_no_doubts(name: str) -> None:
    assert prove(CARDS / f"{name}.toml") == ()


@pytest.mark.parametrize(
    ("old", "new", "says"),
    [
        ('low = "0.050 mm", high = "0.28 mm"', 'low = "0.020 mm", high = "0.28 mm"', "falls although the tool grows"),
        ('high = "0.28 mm"', 'high = "2.8 mm"', "is the unit right"),
        ('diameter = "12.7 mm", low = "0.050 mm"', 'diameter = "12.7 m", low = "0.050 mm"', "mm thick"),
        ('advised = { value = "8 deg"', 'advised = { value = "30 deg"', "steeper than the steepest"),
        ("slot = { value = 1,", "slot = { value = 3,", "deeper than a cut along an edge"),
        ("slot = { value = 1,", "slot = { value = 100,", "diameters deep"),
        ('low = "20 N/mm^2"', 'low = "60 N/mm^2"', "low end is over"),
        ('high = "50 N/mm^2"', 'high = "50000 N/mm^2"', "a cutting force lies"),
        ('source = "common practice, no source" },', 'source = " " },', "the source is empty"),
        ("feed_share = { value = 0.30", "feed_share = { value = 3.0", "share of the cutting feed"),
        ("by = { value = 0.25", "by = { value = 25", "between 0 and 1"),
        ('policy = "yes"', 'policy = "no"', "yet a depth is given"),
        ("burns = true", "burns = true\nmelts = true", "does not melt"),
        ("burns = true", "burns = true\ntape_holds = false", "a caution must say so"),
    ],
)  # fmt: skip
def test_what_cannot_be_right(tmp_path: Path, old: str, new: str, says: str) -> None:
    text = (CARDS / "beech.toml").read_text(encoding="utf-8")
    text = text.replace("melts = false\n", "")
    assert old in text
    path = tmp_path / "card.toml"
    path.write_text(text.replace(old, new, 1), encoding="utf-8")
    doubts = prove(path)
    assert any(says in doubt.says for doubt in doubts), doubts
    at = text[: text.index(old)].count("\n") + 1
    assert any(abs(doubt.line - at) <= 3 for doubt in doubts)


def test_words_fit_the_kind(tmp_path: Path) -> None:
    text = (CARDS / "brass.toml").read_text(encoding="utf-8")
    path = tmp_path / "card.toml"
    path.write_text(text.replace('kind = "metal"', 'kind = "wood"'), encoding="utf-8")
    assert not any("heat shows" in doubt.says for doubt in prove(path))  # dust is a word of both
    text = text.replace("dust-fine chips, squeal, and metal built up on the edges", "melted strings").replace(
        "chips that weld to the tool", "gum"
    )
    path.write_text(text, encoding="utf-8")
    assert any("heat shows in metal" in doubt.says for doubt in prove(path))
