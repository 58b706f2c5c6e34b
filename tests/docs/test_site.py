"""The site has a page for everything that ships: each rule, card and schema; the gate builds it."""

from __future__ import annotations

import importlib.util
from functools import cache
from pathlib import Path
from types import ModuleType

import pytest

from gclint.cards import controller, material
from gclint.knowledge.glossary import glossary
from gclint.packs.shipped_packs import shipped_packs

ROOT = Path(__file__).parents[2]


@cache
def site() -> ModuleType:
    spec = importlib.util.spec_from_file_location("site_of_docs", ROOT / ".ci" / "site.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


@cache
def pages() -> dict[str, str]:
    return dict(site().pages())


def test_every_rule_card_and_schema_has_a_page() -> None:
    rules = {f"rules/{rule.name}" for pack in shipped_packs() for rule in pack.rules}
    cards = {f"materials/{name}" for name in material.names()} | {f"controllers/{name}" for name in controller.names()}
    schemas = {f"schemas/{path.name.split('.')[0]}" for path in (ROOT / "gclint").rglob("*.schema.json")}
    assert rules | cards | schemas <= set(pages())


def test_a_page_of_a_rule_has_all_its_numbers_with_their_sources() -> None:
    for pack in shipped_packs():
        for rule in pack.rules:
            page = pages()[f"rules/{rule.name}"]
            assert rule.text.title in page
            for name, limit in rule.text.limits.items():
                assert f"| {name} | {limit.value} | {limit.standing} |" in page


def test_the_glossary_has_every_term() -> None:
    assert all(f"\n{word.term}\n: " in pages()["glossary"] for word in glossary().values())


def test_links_that_leave_the_pages_stay_within_the_site(tmp_path: Path) -> None:
    site().write_sources(tmp_path)
    written = {path.name for path in tmp_path.glob("*.md")}
    assert {"index.md", "readme.md", "language.md", "commands.md"} <= written
    for path in tmp_path.glob("*.md"):
        assert "](../" not in path.read_text(encoding="utf-8"), path.name


@pytest.mark.slow
@pytest.mark.skipif(importlib.util.find_spec("sphinx") is None, reason="the extra `docs` is not installed")
def test_the_site_is_built_without_a_warning(tmp_path: Path) -> None:
    import subprocess
    import sys

    done = subprocess.run(
        [sys.executable, ".ci/site.py", str(tmp_path / "site")], cwd=ROOT, capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stderr[-2000:]
    assert (tmp_path / "site" / "index.html").exists()
