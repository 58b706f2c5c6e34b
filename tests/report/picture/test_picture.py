"""The pictures of the README and the pages show what runs print and draw today."""

from __future__ import annotations

import html
import importlib.util
import re
from pathlib import Path
from typing import Any

import pytest

PICTURE = Path(__file__).parents[3] / ".pictures" / "check.svg"
PATH_PICTURE = PICTURE.with_name("path.svg")


def text_of(svg: str) -> list[str]:
    """What stands in the picture, run by run; shades and places aside."""
    runs = re.findall(r"<text[^>]*>([^<]*)</text>", svg)
    return [" ".join(html.unescape(run).split()) for run in runs]


def drawing() -> Any:
    spec = importlib.util.spec_from_file_location("picture", Path(__file__).parents[2] / "picture.py")
    assert spec is not None
    assert spec.loader is not None
    picture = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(picture)
    return picture


def test_the_picture_is_up_to_date() -> None:
    assert text_of(PICTURE.read_text(encoding="utf-8")) == text_of(drawing().draw()), "run  python tests/picture.py"


@pytest.mark.slow
def test_the_picture_of_a_path_is_up_to_date() -> None:
    """Its words and how much is drawn: another matplotlib may write the same lines in other bytes."""
    kept, made = PATH_PICTURE.read_text(encoding="utf-8"), drawing().draw_path().decode()
    assert text_of(kept) == text_of(made), "run  python tests/picture.py"
    assert kept.count("<path") == made.count("<path")


@pytest.mark.slow
def test_the_picture_of_what_was_learned_is_up_to_date() -> None:
    kept = PATH_PICTURE.with_name("learned.svg").read_text(encoding="utf-8")
    assert text_of(kept) == text_of(drawing().draw_learned().decode()), "run  python tests/picture.py"


def test_the_picture_fetches_nothing() -> None:
    svg = PICTURE.read_text(encoding="utf-8")
    assert "chip-too-thin" in svg
    assert set(re.findall(r'https?://[^\s"<]+', svg)) == {"http://www.w3.org/2000/svg"}
    assert "@font-face" not in svg
    assert "circle" not in svg
