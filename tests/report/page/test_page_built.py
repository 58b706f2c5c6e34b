"""The bundle is made of the sources that stand beside it (`.ci/run` builds it again and compares), licences kept."""

from __future__ import annotations

import hashlib
import json
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


def test_the_versions_are_pinned() -> None:
    package = json.loads((ROOM / "src" / "package.json").read_text(encoding="utf-8"))
    assert all(v[0].isdigit() for v in {**package["dependencies"], **package["devDependencies"]}.values())
