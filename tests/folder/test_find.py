"""What of a folder is taken for a program, in which order, and what is passed over."""

from __future__ import annotations

import os
import sys
from pathlib import Path

import pytest

from gclint.folder import find as rooms
from gclint.folder.find import find
from tests.folder.shop import program


def names(folder: Path, *named: Path) -> list[str]:
    return [os.path.relpath(source.name, folder) for source in find(tuple(map(str, named or (folder,)))).sources]


def passed(folder: Path) -> dict[str, str]:
    return {os.path.relpath(left.path, folder): left.because for left in find((str(folder),)).passed}


def test_programs_are_found_by_content_and_by_ending(tmp_path: Path) -> None:
    for name in ("b.nc", "O1001", "a/tray.eia", "a.TAP", "z.txt"):
        (tmp_path / name).parent.mkdir(exist_ok=True)
        (tmp_path / name).write_text(program())
    (tmp_path / "notes.txt").write_text("Feed is G1 here.\nSecond line, X and Z.\n")
    (tmp_path / "part.stl").write_bytes(b"solid\0\1\2" * 900)
    (tmp_path / "job.toml").write_text("")
    assert names(tmp_path) == ["O1001", "a/tray.eia", "a.TAP", "b.nc", "z.txt"]
    assert passed(tmp_path) == {"notes.txt": rooms.NO_PROGRAM, "part.stl": rooms.NO_PROGRAM}


def test_a_file_named_twice_is_taken_once_and_as_named(tmp_path: Path) -> None:
    (tmp_path / "a.nc").write_text(program())
    found = find((str(tmp_path), str(tmp_path / "a.nc"), str(tmp_path / "a.nc")))
    assert [(Path(source.name).name, source.named) for source in found.sources] == [("a.nc", True)]


def test_hidden_folders_and_links_are_passed_over(tmp_path: Path) -> None:
    home = tmp_path / "jobs"
    (home / ".git").mkdir(parents=True)
    (home / ".git" / "a.nc").write_text(program())
    (home / "real").mkdir()
    (home / "real" / "a.nc").write_text(program())
    (home / "real" / "back").symlink_to(home)  # a loop
    (home / "self").symlink_to("self")
    (home / "gone.nc").symlink_to("not-there.nc")
    (tmp_path / "secret.nc").write_text(program())
    (home / "out.nc").symlink_to(tmp_path / "secret.nc")
    (home / "inside.nc").symlink_to("real/a.nc")
    (home / ".draft.nc").write_text(program())
    assert names(home) == ["inside.nc", "real/a.nc"]
    assert find((str(home),)).problems == []
    assert passed(home) == {
        ".git": rooms.HIDDEN_FOLDER, ".draft.nc": rooms.HIDDEN_FILE, "out.nc": rooms.LINK_OUT,
        "real/back": rooms.LINKED_FOLDER, "self": rooms.LINK_NOWHERE, "gone.nc": rooms.LINK_NOWHERE,
    }


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="no pipes here")
def test_a_pipe_is_never_opened(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe.nc")
    os.mkfifo(tmp_path / "pipe")
    (tmp_path / "a.nc").write_text(program())
    assert names(tmp_path) == ["a.nc"]
    assert passed(tmp_path) == {"pipe.nc": rooms.NO_FILE, "pipe": rooms.NO_FILE}


@pytest.mark.skipif(sys.platform != "linux" or os.geteuid() == 0, reason="the super-user may read everything")
def test_a_folder_that_may_not_be_read_is_told_and_the_rest_goes_on(tmp_path: Path) -> None:
    (tmp_path / "a.nc").write_text(program())
    (tmp_path / "shut").mkdir(mode=0)
    found = find((str(tmp_path),))
    assert [Path(source.name).name for source in found.sources] == ["a.nc"]
    assert "permission denied" in str(found.problems[0])


def test_an_unreadable_folder_is_one_problem(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "shut").mkdir()
    (tmp_path / "a.nc").write_text(program())
    scan = os.scandir

    def refuse(folder: str) -> object:
        if str(folder).endswith("shut"):
            raise PermissionError(13, "Permission denied", folder)
        return scan(folder)

    monkeypatch.setattr(os, "scandir", refuse)
    found = find((str(tmp_path),))
    assert [Path(source.name).name for source in found.sources] == ["a.nc"]
    assert [str(problem) for problem in found.problems] == [
        f"{tmp_path / 'shut'}: this folder cannot be read: permission denied"
    ]


def test_a_name_that_is_no_text_is_still_found(tmp_path: Path) -> None:
    try:
        (tmp_path / os.fsdecode(b"pl\xe5t.nc")).write_text(program())
    except OSError:
        pytest.skip("this file system takes UTF-8 names only")
    assert [source.shown for source in find((str(tmp_path),)).sources] == [str(tmp_path / "pl\ufffdt.nc")]
