"""The bundle is made of the sources that stand beside it (`.ci/run` builds it again and compares), licences kept."""

from __future__ import annotations

import hashlib
import html
import json
import re
import tomllib
from collections.abc import Callable
from pathlib import Path

import pytest

import gclint.report.page

ROOM = Path(gclint.report.page.__file__).parent
RECORD = json.loads((ROOM / "built" / "record.json").read_text(encoding="utf-8"))
BUILD = "run  npm ci && npm run build  in gclint/report/page/src"


def test_the_bundle_is_of_these_sources() -> None:
    if not (ROOM / "src").is_dir():
        pytest.skip("an installed package has no sources of its page")
    sources = {f"src/{f.name}" for f in (ROOM / "src").iterdir() if f.suffix in (".ts", ".css", ".mjs", ".json")}
    assert sources | {"built/page.js", "built/page.css", "built/LICENSES.txt"} == set(RECORD), BUILD
    for name, told in RECORD.items():
        assert hashlib.sha256((ROOM / name).read_bytes()).hexdigest() == told, f"{name}: {BUILD}"


def test_the_licences_are_kept() -> None:
    licences = (ROOM / "built" / "LICENSES.txt").read_text(encoding="utf-8")
    for name in ("three", "@observablehq/plot", "d3-scale-chromatic"):
        assert f"\n{name} " in licences
    assert "GPL" not in licences


def test_the_notices_travel_in_every_page(page_of: Callable[..., str]) -> None:
    """The licences ask for it: whoever has a page has a copy of the libraries in its script."""
    text = html.unescape(page_of("G21 G90 G94 G17 G54\nM3 S12000\nG0 X0 Y0 Z5\nG1 Z-1 F200\nM30\n"))
    licences = (ROOM / "built" / "LICENSES.txt").read_text(encoding="utf-8")
    assert licences.count("Copyright") > 30
    assert licences.strip() in text


def test_the_notices_travel_in_the_package() -> None:
    project = tomllib.loads((ROOM.parents[2] / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    assert "gclint/report/page/built/LICENSES.txt" in project["license-files"]
    kinds = set(re.findall(r"^\S+ \S+ \((.+)\)$", (ROOM / "built" / "LICENSES.txt").read_text("utf-8"), re.MULTILINE))
    assert {*kinds, "Apache-2.0"} == set(project["license"].split(" AND "))
    licence = (ROOM.parents[2] / "LICENSE").read_text(encoding="utf-8")
    assert "the gclint maintainers" in licence


def test_the_versions_are_pinned() -> None:
    package = json.loads((ROOM / "src" / "package.json").read_text(encoding="utf-8"))
    assert all(v[0].isdigit() for v in {**package["dependencies"], **package["devDependencies"]}.values())
