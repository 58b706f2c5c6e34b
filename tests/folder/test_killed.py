"""A run that is killed, two runs at once, a cache that is damaged: never a wrong or a missing verdict afterwards."""

from __future__ import annotations

import json
import os
import random
import signal
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path
from typing import Any

import pytest

from tests.folder.shop import workshop

ROOT = Path(__file__).parents[2]
MOMENTS = 20

pytestmark = pytest.mark.skipif(not hasattr(os, "killpg"), reason="no process groups here")


def start(home: Path, cache: Path | str, *more: str, out: int = subprocess.PIPE) -> subprocess.Popen[bytes]:
    command = [sys.executable, "-m", "gclint", "check", str(home), "--as", "json", "--cache", str(cache), *more]
    return subprocess.Popen(
        command, cwd=ROOT, stdout=out, stderr=subprocess.PIPE, start_new_session=True,
        env=os.environ | {"GCLINT_CACHE": "none"},
    )  # fmt: skip


def finished(run: subprocess.Popen[bytes]) -> dict[str, Any]:
    out, err = run.communicate(timeout=120)
    assert run.returncode in (0, 1), err.decode()
    made: dict[str, Any] = json.loads(out)
    return made


@pytest.fixture(scope="module")
def home(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return workshop(tmp_path_factory.mktemp("killed") / "jobs", people=("anna", "ben", "cleo"), each=3)


@pytest.fixture(scope="module")
def right(home: Path) -> dict[str, Any]:
    made = finished(start(home, "none"))
    assert len(made["programs"]) == 9
    return made


@pytest.fixture(autouse=True)
def nobody_left(home: Path) -> Iterator[None]:
    """No worker outlives its run."""
    yield
    for _ in range(100):
        if not any(os.fsencode(home) in line for line in command_lines()):
            return
        time.sleep(0.1)
    raise AssertionError("a process of a run that has ended is still there")


def command_lines() -> Iterator[bytes]:
    """Those of all processes, where the system tells them; a worker has that of its run."""
    for file in Path("/proc").glob("[0-9]*/cmdline"):
        with suppress(OSError):
            yield file.read_bytes()


@pytest.mark.slow
def test_a_run_killed_at_random_moments(home: Path, right: dict[str, Any], tmp_path: Path) -> None:
    """The cache lives through all of them, and some of its entries are damaged in between."""
    chance, cache = random.Random(20), tmp_path / "cache"
    for moment in range(MOMENTS):
        run = start(home, cache, out=subprocess.DEVNULL)  # a full pipe would hold it up
        if moment % 4:  # else at its start
            until(run, cache, len(entries(cache)) + chance.randrange(9))
        time.sleep(chance.uniform(0.0, 0.2))
        run.kill()  # the run alone: its workers must find out by themselves
        run.communicate()
        damage(cache, chance)
        if moment == MOMENTS // 2:
            assert finished(start(home, cache)) == right
    assert finished(start(home, cache)) == right


def entries(cache: Path) -> list[Path]:
    return sorted(path for path in cache.rglob("*") if path.is_file())


def until(run: subprocess.Popen[bytes], cache: Path, many: int) -> None:
    """Wait until the cache holds this many files, or the run has ended."""
    while len(entries(cache)) < many and run.poll() is None:
        time.sleep(0.01)


def damage(cache: Path, chance: random.Random) -> None:
    files = entries(cache)
    for path in chance.sample(files, min(3, len(files))):
        data = bytearray(path.read_bytes())
        if data and chance.random() < 0.5:
            data[chance.randrange(len(data))] ^= 1 << chance.randrange(8)
        else:
            data = data[: chance.randrange(len(data) + 1)]
        path.write_bytes(data)


@pytest.mark.slow
def test_pages_of_runs_that_were_killed(home: Path, right: dict[str, Any], tmp_path: Path) -> None:
    """Every page is whole at every moment, and of what was checked in the end."""
    chance, cache, pages = random.Random(6), tmp_path / "cache", tmp_path / "pages"
    assert finished(start(home, "none", "--also", f"page={tmp_path / 'right'}")) == right
    for _ in range(MOMENTS // 2):
        run = start(home, cache, "--also", f"page={pages}", out=subprocess.DEVNULL)
        until(run, pages, len(entries(pages)) + chance.randrange(3))
        time.sleep(chance.uniform(0.0, 0.3))
        run.kill()
        run.communicate()
        damage(cache, chance)
        whole = [page for page in entries(pages) if not page.name.startswith(".")]
        assert all("</html>" in page.read_text(encoding="utf-8")[-200:] for page in whole)
    assert finished(start(home, cache, "--also", f"page={pages}")) == right
    named = {page.name: words(page) for page in entries(pages) if not page.name.startswith(".")}
    assert named == {page.name: words(page) for page in entries(tmp_path / "right")}


def words(page: Path) -> str:
    """A page without the line that names its state."""
    return page.read_text(encoding="utf-8").partition("<!-- made by gclint")[0].strip()


@pytest.mark.slow
def test_two_runs_at_once_on_one_cache(home: Path, right: dict[str, Any], tmp_path: Path) -> None:
    runs = [start(home, tmp_path / "cache") for _ in range(2)]
    assert [finished(run) for run in runs] == [right, right]
    assert finished(start(home, tmp_path / "cache")) == right


def test_an_interrupted_run_leaves_nothing_behind(home: Path, tmp_path: Path) -> None:
    run = start(home, tmp_path / "cache")
    time.sleep(1.0)
    os.killpg(run.pid, signal.SIGINT)
    out, err = run.communicate(timeout=30)
    assert run.returncode in (130, 0, 1)
    assert b"Traceback" not in err
    assert out == b"" or json.loads(out)
    assert not [path for path in (tmp_path / "cache").rglob("*.new") if path.is_file()] or run.returncode == 130
