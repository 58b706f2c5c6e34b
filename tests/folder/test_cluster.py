"""A cluster of two workers on this machine: the same answers, whatever happens to its workers."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path

import pytest

pytest.importorskip("distributed")

from gclint.folder import cluster as engine
from gclint.folder.outcome import Maker, Task
from gclint.folder.run import Tried
from gclint.problem import Problem
from tests.folder.shop import workshop

pytestmark = [pytest.mark.slow, pytest.mark.filterwarnings("ignore")]  # of what a cluster's own library does

ROOT = Path(__file__).parents[2]
HERE = "127.0.0.1"
PATIENCE = 180.0  # s for what takes a few on an idle machine
MAKERS: tuple[Maker, ...] = ()


class Hosts:
    """A scheduler and its workers, each a process."""

    def __init__(self, home: Path) -> None:
        self.home, self.workers = home, []  # type: tuple[Path, list[subprocess.Popen[bytes]]]
        file = home / "scheduler.json"
        self.scheduler = self.start(
            "scheduler", "--host", HERE, "--port", "0", "--no-dashboard", "--no-show", "--scheduler-file", str(file)
        )
        self.file = file
        self.until(file.exists)
        self.port = int(file.read_text().partition(f"tcp://{HERE}:")[2].partition('"')[0])
        self.address = f"dask://{HERE}:{self.port}"

    def start(self, *what: str) -> subprocess.Popen[bytes]:
        with (self.home / f"{what[0]}.log").open("ab") as log:
            return subprocess.Popen([sys.executable, "-m", "dask", *what], cwd=self.home, stdout=log, stderr=log)

    def worker(self, *more: str) -> subprocess.Popen[bytes]:
        given = ("--nthreads", "1", "--no-dashboard", "--local-directory", str(self.home / f"w{len(self.workers)}"))
        self.workers.append(self.start("worker", f"tcp://{HERE}:{self.port}", *given, *more))
        return self.workers[-1]

    def there(self, count: int) -> None:
        import distributed

        with distributed.Client(f"tcp://{HERE}:{self.port}", set_as_default=False) as client:
            client.wait_for_workers(count, timeout=PATIENCE)

    def until(self, holds: object) -> None:
        begun = time.monotonic()
        while not holds():  # type: ignore[operator]
            assert time.monotonic() - begun < PATIENCE
            time.sleep(0.05)

    def end(self) -> None:
        for each in (*self.workers, self.scheduler):
            each.terminate()
        for each in (*self.workers, self.scheduler):
            try:
                each.wait(10)
            except subprocess.TimeoutExpired:
                each.kill()


@pytest.fixture(scope="module")
def hosts(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Hosts]:
    made = Hosts(tmp_path_factory.mktemp("cluster"))
    try:
        made.worker("--no-nanny")
        made.worker()
        made.there(2)
        yield made
    finally:
        made.end()


def run(home: Path, *more: str) -> subprocess.Popen[bytes]:
    command = [sys.executable, "-m", "gclint", "check", home.name, "--cache", "none", *more]
    environment = os.environ | {"PYTHONPATH": str(ROOT)}
    return subprocess.Popen(
        command, cwd=home.parent, stdout=subprocess.PIPE, stderr=subprocess.PIPE, env=environment
    )  # fmt: skip


def said(run: subprocess.Popen[bytes]) -> tuple[int, bytes, str]:
    out, err = run.communicate(timeout=240)
    return run.returncode, out, err.decode()


@pytest.fixture(scope="module")
def jobs(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return workshop(tmp_path_factory.mktemp("work") / "jobs", people=("anna", "ben", "cleo"), each=3)


@pytest.fixture(scope="module")
def right(jobs: Path) -> tuple[int, bytes]:
    """What this machine says."""
    return said(run(jobs, "--as", "json"))[:2]


def test_a_cluster_says_what_this_machine_says(hosts: Hosts, jobs: Path, right: tuple[int, bytes]) -> None:
    code, out, err = said(run(jobs, "--as", "json", "--engine", hosts.address))
    assert (code, out) == right, err
    assert f"go to {hosts.address}, not encrypted" in err
    assert "2 workers" in err


def test_a_worker_that_is_killed_changes_nothing(hosts: Hosts, jobs: Path, right: tuple[int, bytes]) -> None:
    third = hosts.worker("--no-nanny")
    hosts.there(3)
    going = run(jobs, "--as", "json", "--engine", hosts.address)
    time.sleep(3.0)
    third.send_signal(signal.SIGKILL)
    assert said(going)[:2] == right


def test_a_program_that_does_not_end_is_an_answer(hosts: Hosts, tmp_path: Path) -> None:
    sys.path.insert(0, str(ROOT / "tests" / "bench"))
    from make_program import finishing_program

    home = workshop(tmp_path / "jobs", people=("anna",), each=1)
    (home / "anna" / "long.nc").write_bytes(finishing_program(60_000))
    code, _, err = said(run(home, "--as", "json", "--engine", hosts.address, "--give-up-after", "0.1"))
    assert code == 2, err
    assert "gave up after 0 s of a processor's time" in err
    assert said(run(home, "--as", "json", "--engine", hosts.address))[0] in (0, 1)


def test_workers_with_another_gclint_are_given_nothing(hosts: Hosts, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(engine, "installation", lambda: "another")

    def keep(task: Task, made: Tried) -> None:
        raise AssertionError(task)

    with pytest.raises(Problem, match="its workers have another gclint"):
        engine.Cluster(hosts.address, MAKERS, keep, print)
    engine.build.cache_clear()
    assert engine.work(b"", "one more") == engine.OTHER
    engine.build.cache_clear()


@pytest.mark.parametrize("address", ["dask://nowhere", "tcp://127.0.0.1:1", "dask://127.0.0.1:x"])
def test_an_engine_that_is_none(address: str, jobs: Path) -> None:
    code, out, err = said(run(jobs, "--engine", address))
    assert (code, out) == (2, b"")
    assert "write dask://HOST:PORT" in err


def test_a_scheduler_that_is_not_there(jobs: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(engine, "CONNECT", 1.0)
    with pytest.raises(Problem, match="the scheduler cannot be reached"):
        engine.Cluster("dask://127.0.0.1:9", MAKERS, lambda task, made: None, print)
