"""What has changed in a folder, found by looking at it."""

from __future__ import annotations

import threading
from pathlib import Path

from gclint.folder.polling import looked


def test_what_came_went_and_differs(tmp_path: Path) -> None:
    for name in ("stays.nc", "goes.nc", "grows.nc", "replaced.nc"):
        (tmp_path / name).write_text("G0 X0\n")
    (tmp_path / ".hidden").mkdir()
    stop = threading.Event()
    looks = looked(tmp_path, stop, 0.0)
    assert next(looks) == set()
    (tmp_path / "goes.nc").unlink()
    (tmp_path / "grows.nc").write_text("G0 X0\nG0 X1\n")
    (tmp_path / "other").write_text("G0 X9\n")
    (tmp_path / "other").replace(tmp_path / "replaced.nc")
    (tmp_path / "deep").mkdir()
    (tmp_path / "deep" / "new.nc").write_text("G0 X0\n")
    (tmp_path / ".hidden" / "new.nc").write_text("G0 X0\n")
    changed = {str(tmp_path / name) for name in ("goes.nc", "grows.nc", "replaced.nc", "deep/new.nc")}
    assert next(looks) == changed
    assert next(looks) == set()
    stop.set()
    assert list(looks) == []


def test_after_changes_were_missed_everything_is_told(tmp_path: Path) -> None:
    (tmp_path / "one.nc").write_text("G0 X0\n")
    looks = looked(tmp_path, threading.Event(), 0.0, all_new=True)
    assert next(looks) == {str(tmp_path / "one.nc")}
    assert next(looks) == set()
