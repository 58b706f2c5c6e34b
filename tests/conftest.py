"""No test keeps results where a person's own runs look for them."""

from __future__ import annotations

import pytest


@pytest.fixture(autouse=True)
def no_cache(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("GCLINT_CACHE", "none")
