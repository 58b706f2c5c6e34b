"""Pages of real runs, and a reader of what they carry for their script."""

from __future__ import annotations

import base64
import json
import re
import zlib
from collections.abc import Callable
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from gclint.check import run
from gclint.report.page.page_out import page
from gclint.run import Run
from gclint.setup.declare import Options

ROOT = Path(__file__).resolve().parents[3]
SAMPLES = ROOT / "sample_programs"


def unpacked(html: str, name: str) -> bytes:
    """What a page carries under a name."""
    found = re.search(rf'<script type="application/octet-stream" id="{name}">([^<]*)</script>', html)
    assert found is not None
    return zlib.decompress(base64.b64decode(found.group(1)))


class Carried:
    """The model of a page and its columns, read as the script reads them."""

    def __init__(self, html: str) -> None:
        self.model: dict[str, Any] = json.loads(unpacked(html, "model"))
        self.raw = np.frombuffer(unpacked(html, "columns"), np.uint8)
        self.lines = unpacked(html, "text").decode("utf-8").split("\n")

    def column(self, told: dict[str, Any]) -> np.ndarray[Any, Any]:
        n, at = told["length"], told["at"]
        if told["bytes"] == 1:
            return self.raw[at : at + n]
        planes = self.raw[at : at + 4 * n].reshape(4, n)
        numbers = np.ascontiguousarray(planes.T).view("<i4").ravel()
        whole = np.cumsum(numbers, dtype=np.int32) if told["delta"] else numbers
        return whole / told["scale"]


@pytest.fixture(scope="session")
def sample_run() -> Callable[[str], Run]:
    def make(name: str) -> Run:
        file = next(f for f in sorted((SAMPLES / name).iterdir()) if f.suffix != ".toml")
        return run(file.read_bytes(), file.name, Options(), str(file))

    return make


@pytest.fixture(scope="session")
def sample_page(sample_run: Callable[[str], Run]) -> Callable[[str], str]:
    return lambda name: page(sample_run(name), "0.0")


@pytest.fixture(scope="session")
def page_of() -> Callable[..., str]:
    """(program text or bytes, file name, options) -> the page."""

    def make(text: str | bytes, name: str = "hatch.nc", **options: Any) -> str:
        data = text.encode() if isinstance(text, str) else text
        return page(run(data, name, Options(**options)), "0.0")

    return make
