"""Nothing that a check rests on is asked of the disk behind the back of `gclint/disk.py`."""

from __future__ import annotations

import ast
import os
import threading
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest

import gclint
from gclint import disk
from gclint.disk import NONE, ask_again, listening
from gclint.threads import LONG, run_both

PACKAGE = Path(gclint.__file__).parent
ROOMS = (
    "toml", "knowledge", "cards", "tables", "program", "setup", "motion", "stock", "cutting", "language", "facts",
    "packs", "advice", "judge",
)
ASKING = {
    "is_file", "is_dir", "exists", "stat", "lstat", "open", "read_bytes", "iterdir", "glob", "rglob", "samefile",
    "resolve", "realpath", "getmtime", "scandir", "listdir", "is_symlink", "readlink", "cwd",
}
# These read what ships with gclint, which the key of a kept result covers whole, or write an answer for a person.
SHIPPED_ONLY = {
    "packs/shipped_packs.py", "language/expression.py", "program/code.py", "cards/material.py", "cards/controller.py",
    "setup/accept_text.py", "setup/schema.py", "knowledge/glossary.py",
}


def asks(file: Path) -> set[str]:
    """Calls of names that ask the disk; those of `disk` itself are the right way."""
    found = set()
    for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Call):
            called = node.func
            if isinstance(called, ast.Name) and called.id == "open":
                found.add("open")
            if isinstance(called, ast.Attribute) and called.attr in ASKING:
                of = called.value
                if not (isinstance(of, ast.Name) and of.id == "disk"):
                    found.add(called.attr)
    return found


FILES = sorted(
    path.relative_to(PACKAGE).as_posix() for room in ROOMS for path in (PACKAGE / room).rglob("*.py")
)  # fmt: skip


@pytest.mark.parametrize("file", [name for name in FILES if name not in SHIPPED_ONLY])
def test_no_room_asks_the_disk_by_itself(file: str) -> None:
    assert not asks(PACKAGE / file)


def test_asking_would_be_noticed(tmp_path: Path) -> None:
    calls = ("import os", "open('x')", "Path('y').is_file()", "os.path.realpath('z')", "disk.is_file(p)")
    (tmp_path / "a.py").write_text("\n".join(calls))
    assert asks(tmp_path / "a.py") == {"open", "is_file", "realpath"}


def test_every_question_is_heard_and_can_be_asked_again(tmp_path: Path) -> None:
    file, gone = tmp_path / "a.toml", tmp_path / "gone.toml"
    file.write_text("x = 1\n")
    with listening() as heard:
        assert disk.content(file, 100) == b"x = 1\n"
        assert disk.is_file(file)
        assert not disk.is_file(gone)
        assert not disk.exists(gone)
        assert disk.real(file) == os.path.realpath(file)
        with pytest.raises(FileNotFoundError):
            disk.content(gone, 100)
        with pytest.raises(disk.NotAFile):
            disk.content(tmp_path, 100)
        assert disk.beside(tmp_path, frozenset({"a.toml"}), 100) == ("a.toml", b"x = 1\n")
        assert disk.beside(tmp_path, frozenset({"b"}), 100) is None
    assert len(heard) == 9
    assert {question: ask_again(question) for question in heard} == heard
    assert heard["beside", str(tmp_path), "100", "b"] == NONE
    before = dict(heard)
    file.write_text("x = 2\n")
    gone.write_text("")
    (tmp_path / "b").write_text("")
    changed = {question[0] for question in before if ask_again(question) != before[question]}
    assert changed == {"content", "is-file", "exists", "beside"}


def test_a_file_that_changes_while_it_is_read_has_no_answer(tmp_path: Path) -> None:
    file = tmp_path / "a.toml"
    file.write_text("1")
    with listening() as heard:
        disk.content(file, 100)
        file.write_text("2")
        disk.content(file, 100)
    assert list(heard.values()) == [disk.CHANGED]


def test_each_thread_hears_what_its_own_check_asks(tmp_path: Path) -> None:
    files = [tmp_path / f"{n}.toml" for n in range(4)]
    for file in files:
        file.write_text("x = 1\n")
    together = threading.Barrier(len(files), timeout=20)

    def check(file: Path) -> dict[disk.Question, str]:
        with listening() as heard:
            together.wait()  # all listen
            disk.is_file(file)
            together.wait()  # all have asked
            if file is files[0]:
                return heard  # its listening ends while the others go on
            together_again.wait()
            disk.content(file, 10)
            return heard

    together_again = threading.Barrier(len(files) - 1, timeout=20)
    with ThreadPoolExecutor(len(files)) as threads:
        for file, heard in zip(files, threads.map(check, files)):
            questions = {question[0] for question in heard}
            assert {question[1] for question in heard} == {str(file)}
            assert questions == ({"is-file"} if file is files[0] else {"is-file", "content"})


def test_the_second_thread_of_a_check_asks_for_that_check(tmp_path: Path) -> None:
    with listening() as heard:
        run_both(lambda: disk.is_file(tmp_path / "one"), lambda: disk.is_file(tmp_path / "other"), LONG)
    assert {Path(question[1]).name for question in heard} == {"one", "other"}


def test_checks_in_threads_keep_their_questions() -> None:
    """The samples, four at a time: each asks what it asks when it is alone."""
    from gclint.folder.outcome import Source, Task
    from gclint.folder.run import tried
    from gclint.setup.declare import Options

    names = sorted((PACKAGE.parent / "sample_programs").rglob("*.nc"), key=lambda path: path.stat().st_size)[:8]
    tasks = [Task(Source(str(path), named=True), Options()) for path in names]
    alone = [tried(task).heard for task in tasks]
    assert any(alone)
    with ThreadPoolExecutor(4) as threads:
        together = [done.heard for done in threads.map(tried, tasks * 2)]
    assert together == alone * 2
