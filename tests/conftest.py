"""The command line in this process, in an empty folder; no test keeps results where a person's runs look for them."""

from __future__ import annotations

import os
import shutil
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import hypothesis
import pytest

if hypothesis.settings.default.deadline is not None:  # nothing here is timed; with CI set nothing is anyway
    hypothesis.settings.register_profile("untimed", deadline=None)
    hypothesis.settings.load_profile("untimed")


TESTS = Path(__file__).parent
# `pytest -m quick`: for every change, in less than 90 s on two cores
QUICK = tuple(
    TESTS / name
    for name in (
        "cards", "cutting", "digest", "facts", "knowledge", "language", "motion", "packs", "program",
        "report/test_screens.py", "setup", "stock", "toml", "test_house.py", "test_import_contracts.py",
        "test_json_schema.py", "test_kernels.py",
    )
)  # fmt: skip


def pytest_ignore_collect(collection_path: Path, config: pytest.Config) -> bool | None:
    """Leave all other tests unread where only the quick ones are asked for."""
    if config.option.markexpr != "quick":
        return None
    path = collection_path
    near = any(path == one or one in path.parents or path in one.parents for one in QUICK)
    return None if near or TESTS not in path.parents else True


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    for item in items:
        if any(one == item.path or one in item.path.parents for one in QUICK) and not item.get_closest_marker("slow"):
            item.add_marker("quick")


@pytest.fixture(autouse=True)
def no_cache(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("GCLINT_CACHE", "none")


@pytest.fixture
def here(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """An empty working folder."""
    monkeypatch.chdir(tmp_path)
    return tmp_path


@pytest.fixture
def gclint(capfd: pytest.CaptureFixture[str]) -> Callable[..., tuple[int, str, str]]:
    """(exit code, stdout, stderr) of a command line."""
    from gclint.cli.main import run

    def call(*args: str) -> tuple[int, str, str]:
        code = run(list(args))
        out, err = capfd.readouterr()
        return code, out, err

    return call


BROWSER = shutil.which("chromium") or shutil.which("chromium-browser")
QUIET = [
    "--no-sandbox", "--disable-quic", "--no-first-run", "--disable-background-networking",
    "--disable-component-update", "--disable-sync", "--use-gl=angle", "--use-angle=swiftshader",
    "--enable-unsafe-swiftshader",
]  # fmt: skip


@pytest.fixture(scope="module")
def browser() -> Iterator[Any]:
    if BROWSER is None:
        if os.environ.get("CI"):
            pytest.fail("there is no chromium here (Debian: apt-get install chromium)")
        pytest.skip("there is no chromium here (Debian: apt-get install chromium)")
    from playwright.sync_api import sync_playwright

    with sync_playwright() as driver:
        opened = driver.chromium.launch(executable_path=BROWSER, args=QUIET)
        yield opened
        opened.close()
