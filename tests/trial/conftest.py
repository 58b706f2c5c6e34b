"""The command line in this process, in an empty folder."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from gclint.cli.main import run


@pytest.fixture
def here(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.chdir(tmp_path)
    return tmp_path


@pytest.fixture
def gclint(capfd: pytest.CaptureFixture[str]) -> Callable[..., tuple[int, str, str]]:
    """(exit code, stdout, stderr) of a command line."""

    def call(*args: str) -> tuple[int, str, str]:
        code = run(list(args))
        out, err = capfd.readouterr()
        return code, out, err

    return call
