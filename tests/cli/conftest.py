"""Programs to check, whole processes where imports or pipes matter, and what must stand on stderr."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

ROOT = Path(__file__).parents[2]
PROGRAM = """G21 G90 G94 G17 G54
T1 M6
M3 S18000
G4 P5
G0 Z5
G0 X0 Y0
G1 Z-1 F200
G1 X40 F1800
G0 Z5
M5
M30
"""
TOOL = "1: flat 6mm 2fl up-cut"
STOCK = "60 x 20 x 9 mm at -10 -10"


@pytest.fixture
def program(here: Path) -> Path:
    path = here / "tray.nc"
    path.write_text(PROGRAM)
    return path


@pytest.fixture
def process() -> Callable[..., subprocess.CompletedProcess[str]]:
    def call(*args: str, **options: Any) -> subprocess.CompletedProcess[str]:
        return subprocess.run(
            [sys.executable, *args], cwd=ROOT, capture_output=True, text=True, timeout=120, check=False, **options
        )

    return call


def one_sentence(err: str) -> str:
    """The one line on stderr; fails where there is more or less."""
    lines = err.splitlines()
    assert len(lines) == 1, err
    assert lines[0].startswith("gclint: ")
    assert "Traceback" not in err
    return lines[0]


@pytest.fixture
def sentence() -> Callable[[str], str]:
    return one_sentence
