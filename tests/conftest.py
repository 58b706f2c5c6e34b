"""The command line in this process, in an empty folder; no test keeps results where a person's runs look for them."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import hypothesis
import pytest

if hypothesis.settings.default.deadline is not None:  # nothing here is timed; with CI set nothing is anyway
    hypothesis.settings.register_profile("untimed", deadline=None)
    hypothesis.settings.load_profile("untimed")


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
