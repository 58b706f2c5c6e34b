"""A file is a program for what is in it."""

from __future__ import annotations

from pathlib import Path

import pytest

from gclint.folder.sniff import HEAD, reads_as_program

SAMPLES = sorted(
    path for path in (Path(__file__).parents[2] / "sample_programs").rglob("*")
    if path.suffix in (".nc", ".tap", ".gcode")
)  # fmt: skip


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.name)
def test_every_sample_reads_as_a_program(path: Path) -> None:
    data = path.read_bytes()
    assert reads_as_program(data[:HEAD], whole=len(data) <= HEAD)


@pytest.mark.parametrize(
    "text",
    [
        b"%\nO1234\n(PLATE)\nN10 G21 G90\nN20 G0 X1. Y-.5 Z3\nN30 G1 Z-1 F100*47\nM30\n%\n",
        b"g1x1y2z3f100\r\nx2\r\nm30\r\n",
        b"#1 = 5\nG0 Z5\nG1 X[#1 * 2] Y0 F100\nO<hole> call [1]\nM2\n",
        b"; made here\n\n/ G0 X0 Y0 Z5\nG81 X1 Y1 Z-2 R1 F50\n",
    ],
)
def test_programs_of_many_habits(text: bytes) -> None:
    assert reads_as_program(text, whole=True)


@pytest.mark.parametrize(
    "text",
    [
        b"",
        b"G1 X1 Y1 Z1\0\0\n",
        b"Dear Ida,\nthe tray is ready.\nX marks the spot.\nZ is up.\n",
        b"x,y,z\n1,2,3\nG1,2,3\n",
        b"<svg><path d='M1 1 L2 2 Z'/></svg>\n",
        b"M48\nT1C0.8\n%\nG90\nT1\nX1.0Y2.0\nM30\n",  # a drill file for circuit boards: nothing moves Z
        b"[machine]\nname = 'x'\n",
        b"A1\nB2\nC3\nX1 Y1 Z1\n",
    ],
)
def test_other_texts(text: bytes) -> None:
    assert not reads_as_program(text, whole=True)


def test_a_last_line_that_is_cut_off_does_not_count() -> None:
    assert reads_as_program(b"G1 X1 Y1 Z1 F1\nG1 X", whole=False)
    assert not reads_as_program(b"G1 X1 Y1 Z1 F1", whole=False)


def test_a_hostile_line_takes_no_time() -> None:
    line = b"G1" + b"X1234567890123456789 " * 18 + b"!"
    assert not reads_as_program((line + b"\n") * 150, whole=True)
