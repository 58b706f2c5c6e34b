"""A file has settled when it stands still, and not before."""

from __future__ import annotations

from pathlib import Path

from gclint.folder.settle import Settling


def test_a_file_that_grows_has_not_settled(tmp_path: Path) -> None:
    file = tmp_path / "a.nc"
    file.write_text("G1")
    settling = Settling(1.0)
    settling.touch([str(file)], 10.0)
    assert settling.settled(10.9) == set()
    file.write_text("G1 X1")  # seen at 11.1: it starts to wait anew
    assert settling.settled(11.1) == set()
    assert settling.settled(12.0) == set()
    assert settling.settled(12.2) == {str(file)}
    assert settling.settled(99.0) == set()


def test_a_file_renamed_over_another_of_the_same_size(tmp_path: Path) -> None:
    file, other = tmp_path / "a.nc", tmp_path / "b.nc"
    file.write_text("G1")
    other.write_text("G2")
    settling = Settling(1.0)
    settling.touch([str(file)], 10.0)
    other.replace(file)
    assert settling.settled(11.0) == set()
    assert settling.settled(12.0) == {str(file)}


def test_a_file_that_has_gone_settles_too(tmp_path: Path) -> None:
    settling = Settling(1.0)
    settling.touch([str(tmp_path / "a.nc"), "no\0name"], 10.0)
    assert settling.settled(11.0) == {str(tmp_path / "a.nc"), "no\0name"}
