"""`gclint watch` as people run it: a process beside a folder in which others write."""

from __future__ import annotations

import hashlib
import os
import shutil
import signal
import subprocess
import sys
import threading
import time
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest

from gclint.folder.reports import mark_of
from tests.folder.shop import JOB, PRINTER, SHOP, program, workshop

ROOT = Path(__file__).parents[2]
PATIENCE = 60.0  # s; nothing here takes a tenth of it

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="stopped by signals")


class Watcher:
    def __init__(self, home: Path, *more: str, **options: Any) -> None:
        command = [sys.executable, "-m", "gclint", "watch", str(home), "--as", "text", "--settle", "0.3"]
        self.process = subprocess.Popen(
            [*command, "--workers", "1", *more], cwd=ROOT, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True,
            start_new_session=True, **options,
        )  # fmt: skip
        self.out: list[str] = []
        self.err: list[str] = []
        self.readers = [
            threading.Thread(target=lambda s=stream, t=told: t.extend(s), daemon=True)  # type: ignore[misc]
            for stream, told in ((self.process.stdout, self.out), (self.process.stderr, self.err))
        ]
        for reader in self.readers:
            reader.start()

    def until(self, holds: Callable[[], bool], what: str) -> None:
        end = time.monotonic() + PATIENCE
        while time.monotonic() < end:
            if holds():
                return
            assert self.process.poll() is None, (what, self.err)
            time.sleep(0.05)
        raise AssertionError(f"{what}: {self.out[-5:]} {self.err[-5:]}")

    def verdict(self, program: Path, says: str = "", out: Path | None = None) -> None:
        """Wait until the verdict is about the program as it is now."""
        file = (out or program.parent) / f"{program.name}.verdict.txt"

        def about() -> bool:
            try:
                text = file.read_text()
                return f"Read as {hashlib.sha256(program.read_bytes()).hexdigest()[:12]}" in text and says in text
            except OSError:
                return False

        self.until(about, f"verdict of {program.name}")

    def stop(self, by: int = signal.SIGTERM) -> int:
        self.process.send_signal(by)
        code = self.process.wait(PATIENCE)
        for reader in self.readers:
            reader.join(PATIENCE)
        return code


@pytest.fixture
def watcher() -> Iterator[Callable[..., Watcher]]:
    started: list[Watcher] = []

    def start(*arguments: Any, **options: Any) -> Watcher:
        started.append(Watcher(*arguments, **options))
        return started[-1]

    yield start
    for each in started:
        if each.process.poll() is None:
            os.killpg(each.process.pid, signal.SIGKILL)
        each.process.wait()
        for reader in each.readers:
            reader.join(PATIENCE)
        for stream in (each.process.stdout, each.process.stderr):
            assert stream is not None
            stream.close()


@pytest.mark.slow
def test_what_is_written_copied_renamed_over_and_declared(tmp_path: Path, watcher: Callable[..., Watcher]) -> None:
    home = workshop(tmp_path / "drive" / "jobs", people=("anna",), each=2)
    shutil.move(home / "shop.toml", tmp_path / "drive" / "shop.toml")  # above the folder that is watched
    cache = tmp_path / "cache"
    one, two = home / "anna" / "part0.nc", home / "anna" / "part1.nc"
    run = watcher(home, "--cache", str(cache))
    run.verdict(one)
    run.verdict(two)
    assert (home / "anna" / "part0.nc.report.txt").read_text().startswith("JOB SHEET")

    one.write_text(program(2, 700))  # written
    run.verdict(one)
    (tmp_path / "new.nc").write_text(program(3, 800))
    (tmp_path / "new.nc").replace(two)  # renamed over
    run.verdict(two)
    (tmp_path / "ben").mkdir()
    (tmp_path / "ben" / "job.toml").write_text(JOB)
    (tmp_path / "ben" / "deep.eia").write_text(program(1, 900))
    shutil.copytree(tmp_path / "ben", home / "ben")  # a folder, with a program of no usual ending
    run.verdict(home / "ben" / "deep.eia")

    before = one.with_name("part0.nc.report.txt").read_text()
    (home / "anna" / "job.toml").write_text(JOB.replace("beech", "oak"))
    run.until(lambda: "Oak" in one.with_name("part0.nc.report.txt").read_text(), "a changed job")
    assert "Oak" not in before
    run.verdict(two)
    told = len(run.out)
    (tmp_path / "drive" / "shop.toml").write_text(SHOP.replace('"6 mm"', '"8 mm"'))  # it uses this one, outside
    run.until(lambda: "8 mm" in (home / "ben" / "deep.eia.report.txt").read_text(), "a changed shop above")
    run.until(lambda: len(run.out) >= told + 3, "all programs are checked again")

    (home / "anna" / "job.toml").write_text("material = ")
    run.until(lambda: "not checked: " in two.with_name("part1.nc.verdict.txt").read_text(), "a broken job")
    assert "not checked" in two.with_name("part1.nc.report.txt").read_text()
    (home / "anna" / "job.toml").write_text(JOB)
    run.verdict(two)
    run.verdict(one)

    assert run.stop(signal.SIGINT) == 0
    assert run.err[-1] == "gclint: stopped\n"
    assert "Traceback" not in "".join(run.err)
    assert not list(tmp_path.rglob(".gclint-*"))

    stood = {path: path.stat().st_mtime_ns for path in home.rglob("*.report.txt")}
    again = watcher(home, "--cache", str(cache))  # what stands is of this very state
    one.write_text(program(4, 900))
    again.verdict(one)
    assert again.stop() == 0
    assert len(again.out) <= 2  # the change may have come before the first look
    del stood[one.with_name("part0.nc.report.txt")]
    assert {path: path.stat().st_mtime_ns for path in stood} == stood


@pytest.mark.slow
def test_files_that_vanish_grow_or_belong_to_others(tmp_path: Path, watcher: Callable[..., Watcher]) -> None:
    home = workshop(tmp_path / "jobs", people=("anna",), each=2)
    one, two = home / "anna" / "part0.nc", home / "anna" / "part1.nc"
    own = two.with_name("part1.nc.report.txt")
    own.write_text("my own notes\n")
    run = watcher(home, "--cache", "none")
    run.verdict(one)
    run.until(lambda: any("not written by gclint watch" in line for line in run.err), "somebody's file")
    assert own.read_text() == "my own notes\n"
    assert not two.with_name("part1.nc.verdict.txt").exists()

    passing = home / "anna" / "passing.nc"
    passing.write_text(program())
    passing.unlink()
    one.unlink()
    run.until(lambda: "is gone" in one.with_name("part0.nc.verdict.txt").read_text(), "a program that is gone")

    slow = home / "anna" / "slow.nc"
    text = program(1, 1100)
    with slow.open("w") as file:
        for n in range(0, len(text), 12):
            file.write(text[n : n + 12])
            file.flush()
            time.sleep(0.1)
    run.verdict(slow)  # of the whole, however often a busy machine found it settled on the way
    run.until(lambda: any("slow.nc" in line for line in run.out), "a program that grew slowly")

    slow.write_text(PRINTER)
    run.until(lambda: "no milling program" in slow.with_name("slow.nc.verdict.txt").read_text(), "another kind of file")
    assert run.stop() == 0
    assert not any("passing" in line for line in run.out)
    assert "Traceback" not in "".join(run.err)


def test_a_full_disk_is_told_and_the_watch_goes_on(tmp_path: Path, watcher: Callable[..., Watcher]) -> None:
    import resource

    home, out = workshop(tmp_path / "jobs", people=("anna",), each=1), tmp_path / "out"

    def small_disk() -> None:  # no file may grow beyond this
        resource.setrlimit(resource.RLIMIT_FSIZE, (600, 600))

    run = watcher(home, "--cache", "none", "--out", str(out), preexec_fn=small_disk)
    run.until(lambda: any("cannot be written" in line for line in run.err), "a full disk")
    assert [path.name for path in out.rglob("*") if path.is_file()] == []
    (home / "anna" / "empty.nc").write_text("")  # its report is short enough
    run.until(lambda: mark_of(out / "anna" / "empty.nc.verdict.txt") is not None, "it goes on")
    assert run.stop() == 0
    assert not list(tmp_path.rglob(".gclint-*"))


@pytest.mark.slow
@pytest.mark.skipif(sys.platform != "linux", reason="names are text here")
@pytest.mark.parametrize("more", [(), ("--poll",)], ids=["told", "looking"])
def test_names_that_are_no_text_and_links_in_a_circle(
    tmp_path: Path, watcher: Callable[..., Watcher], more: tuple[str, ...]
) -> None:
    home = workshop(tmp_path / "jobs", people=("anna",), each=1)
    (home / "one").symlink_to(home / "other")
    (home / "other").symlink_to(home / "one")
    (home / "self").symlink_to(home)
    one, two = home / "anna" / "part0.nc", home / "anna" / "later.nc"
    run = watcher(home, "--cache", "none", *more)
    run.verdict(one)
    odd = os.fsencode(home / "anna") + b"/odd\xff.nc"
    Path(os.fsdecode(odd)).write_text(program(2, 700))
    run.until(lambda: any("not UTF-8 text" in line for line in run.out), "a name that is no text")
    two.write_text(program(3, 800))
    run.verdict(two)
    one.write_text(program(2, 900))
    run.verdict(one)
    assert run.stop() == 0
    assert "Traceback" not in "".join(run.err)


def test_the_folder_itself_goes(tmp_path: Path, watcher: Callable[..., Watcher]) -> None:
    home = workshop(tmp_path / "jobs", people=("anna",), each=1)
    run = watcher(home, "--cache", "none")
    run.verdict(home / "anna" / "part0.nc")
    shutil.rmtree(home)
    assert run.process.wait(PATIENCE) == 2
    for reader in run.readers:
        reader.join(PATIENCE)
    assert "gone" in run.err[-1] or "cannot be watched" in run.err[-1]


@pytest.mark.parametrize(
    ("more", "says"),
    [(("nowhere",), "not a folder"), ((".", "--out", "."), "folder itself"), ((".", "--tool", "x"), "--tool")],
)
def test_what_cannot_be_watched(tmp_path: Path, more: tuple[str, ...], says: str) -> None:
    done = subprocess.run(
        [sys.executable, "-m", "gclint", "watch", *more], cwd=tmp_path, capture_output=True, text=True, check=False,
        env=os.environ | {"PYTHONPATH": str(ROOT)}, timeout=PATIENCE,
    )  # fmt: skip
    assert done.returncode == 2
    assert says in done.stderr
    assert done.stdout == ""
    assert len(done.stderr.splitlines()) == 1
