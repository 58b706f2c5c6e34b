"""--teach: what to put right first, at length, with the numbers and the drawing of this program."""

from __future__ import annotations

from pathlib import Path

import pytest
from click.testing import CliRunner

from gclint.cli.main import gclint
from gclint.knowledge.glossary import words_in

BAD = """G21 G90 G94 G17
G54
M3 S20000
G0 Z5
G0 X40 Y30
G1 Z-3 F300
G1 X80 F300
G0 X40 Y60
G0 Z5
M5
M30
"""
WITH = ("--material", "cured-epoxy", "--tool", "1: flat 6mm 2fl up-cut", "--stock", "120 x 80 x 20 mm at 0 0")


@pytest.fixture
def taught(tmp_path: Path) -> str:
    file = tmp_path / "bad.nc"
    file.write_text(BAD)
    result = CliRunner().invoke(gclint, ["check", str(file), *WITH, "--teach"], standalone_mode=False)
    assert result.return_value == 1
    return result.output


def test_a_crash_comes_before_the_way_in_and_that_before_the_chip(taught: str) -> None:
    order = ("rapid-through-stock", "straight-plunge", "chip-too-thin")
    places = [taught.index(f"rule      {name} ") for name in order]
    assert places == sorted(places)
    assert taught.index("WHERE THE TOOL MUST NEVER BE") < taught.index("THE WAY INTO THE MATERIAL")


def test_a_lesson_has_steps_drawing_change_and_what_to_listen_for(taught: str) -> None:
    lesson = taught[taught.index("rule      straight-plunge ") :]
    lesson = lesson[: lesson.index("THE CHIP") if "THE CHIP" in lesson else None]
    flat = " ".join(lesson.split())
    assert "it meets 3 mm of solid material" in flat
    assert "0.015 mm deeper with each turn, 0.0075 mm for each tooth" in flat  # 300 / 20000, and half of it
    assert "::::" in lesson
    assert "#####" in lesson
    assert "What to change first" in lesson
    assert "look and listen for afterwards" in lesson
    assert "`gclint word TERM`" in flat


def test_all_fits_eighty_plain_columns(taught: str) -> None:
    assert all(len(line) <= 80 for line in taught.splitlines())
    assert taught.isascii()


def test_a_word_is_pointed_to_once(taught: str) -> None:
    said = [" ".join(part.split("(")[0].split()) for part in taught.split("words     ")[1:]]
    named = [name for names in said for name in names.split(", ")]
    assert len(named) == len(set(named))
    assert words_in("Go down along a ramp or as a helix; ramps are kind.") == ["ramp", "helix"]


def test_teaching_is_for_people(tmp_path: Path) -> None:
    file = tmp_path / "bad.nc"
    file.write_text(BAD)
    result = CliRunner().invoke(gclint, ["check", str(file), "--teach", "--as", "json"], standalone_mode=False)
    assert "--teach" in str(result.exception)
