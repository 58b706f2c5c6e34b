"""The files beside programs: known as our own by their mark, and never written over anybody else's."""

from __future__ import annotations

from pathlib import Path

import pytest

from gclint.folder.reports import Place, mark_of, not_checked, write_own
from gclint.problem import Problem

KEY = "0123abc"


@pytest.mark.parametrize("form", ["text", "page"])
def test_both_files_are_ours_and_of_their_key(tmp_path: Path, form: str) -> None:
    place = Place(tmp_path / "a.nc", tmp_path, None, form)  # type: ignore[arg-type]
    assert not place.marked(KEY)
    place.write("<p>sheet</p>\n", "a.nc: Nothing\nwas found.", KEY)
    assert place.marked(KEY)
    assert not place.marked("")
    assert place.report.name == ("a.nc.report.html" if form == "page" else "a.nc.report.txt")
    [line] = place.verdict.read_text().splitlines()
    assert line.startswith("a.nc: Nothing was found. [written by gclint watch ")
    place.write("<p>again</p>", "a.nc: other", "fff")
    assert place.marked("fff")
    place.stale("a.nc: it has changed")
    assert not place.marked("fff")
    assert place.verdict.read_text().startswith("a.nc: it has changed [")


def test_in_a_folder_of_their_own(tmp_path: Path) -> None:
    place = Place(Path("jobs/anna/a.nc"), Path("jobs"), tmp_path / "out", "text")
    place.write("sheet", "a.nc: fine", KEY)
    assert sorted(path.relative_to(tmp_path).as_posix() for path in tmp_path.rglob("*.txt")) == [
        "out/anna/a.nc.report.txt", "out/anna/a.nc.verdict.txt",
    ]


def test_what_somebody_else_wrote_stays(tmp_path: Path) -> None:
    place = Place(tmp_path / "a.nc", tmp_path, None, "text")
    place.report.write_text("my own notes\n")
    with pytest.raises(Problem, match="not written by gclint watch"):
        place.write("sheet", "a.nc: fine", KEY)
    assert place.report.read_text() == "my own notes\n"
    assert not place.verdict.exists()


def test_what_somebody_added_to_ours_stays(tmp_path: Path) -> None:
    file = tmp_path / "a.nc.verdict.txt"
    write_own(file, "fine [written by gclint watch 1 for ab]\n")
    assert mark_of(file) == "ab"
    file.write_text(file.read_text() + "seen, Ida\n")
    assert mark_of(file) is None
    with pytest.raises(Problem):
        write_own(file, "other")


def test_a_link_is_not_followed_and_not_replaced(tmp_path: Path) -> None:
    target = tmp_path / "secret.txt"
    target.write_text("x [written by gclint watch 1 for ab]\n")
    (tmp_path / "a.nc.verdict.txt").symlink_to(target)
    with pytest.raises(Problem):
        write_own(tmp_path / "a.nc.verdict.txt", "other")
    assert (tmp_path / "a.nc.verdict.txt").is_symlink()


def test_a_folder_that_cannot_be_written_in(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("")
    with pytest.raises(Problem, match="cannot be written"):
        write_own(tmp_path / "file" / "a.verdict.txt", "x")


def test_no_report_is_safe_to_show() -> None:
    assert "<script>" not in not_checked("<script>.nc", "line 3: <b>", "page")
    assert not_checked("a.nc", "this file\nis empty", "text") == "a.nc\nthis file is empty"
