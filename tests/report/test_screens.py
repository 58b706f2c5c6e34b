"""Each screen reads as it is kept in tests/screens; `python tests/screens.py` writes them again."""

from __future__ import annotations

import pytest

from tests.screens import FOLDER, SCREENS, screen


@pytest.mark.parametrize("name", SCREENS)
def test_a_screen_reads_as_it_is_kept(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("COLUMNS", "80")
    monkeypatch.setenv("NO_COLOR", "1")
    kept = (FOLDER / f"{name}.txt").read_text(encoding="utf-8")
    assert screen(name) == kept, "after a change of words: python tests/screens.py, and read the difference"


def test_no_screen_is_kept_that_none_asks_for() -> None:
    assert {path.stem for path in FOLDER.glob("*.txt")} == set(SCREENS)
