"""Many programs at once: their order, what a bad one does, and workers that die or hang."""

from __future__ import annotations

import os
import signal
import time
from pathlib import Path
from typing import Any

import pytest

import gclint.folder.run as runner
import gclint.folder.workers as crew
from gclint.folder.chains import ALONE, Place
from gclint.folder.find import find
from gclint.folder.outcome import Source, Task
from gclint.folder.workers import Job
from gclint.setup.declare import Options
from tests.folder.shop import PRINTER, checked, program, workshop


def test_the_outcomes_are_the_same_whatever_the_number_of_workers(tmp_path: Path) -> None:
    home = workshop(tmp_path)
    one = checked(home, cores=1)
    assert list(one) == [f"{person}/part{n}.nc" for person in ("anna", "ben") for n in range(3)]
    assert all(outcome.kind == "checked" for outcome in one.values())
    many = checked(home, cores=3)
    assert list(many) == list(one)
    assert many == one


def test_a_bad_program_is_told_and_the_others_go_on(tmp_path: Path) -> None:
    home = workshop(tmp_path)
    (home / "anna" / "empty.nc").write_bytes(b"")
    (home / "anna" / "netcdf.nc").write_bytes(b"CDF\1\0\0\0" * 40)
    (home / "anna" / "vase.gcode").write_text(PRINTER)
    (home / "ben" / "job.toml").write_text('material = "beech"\nz_zero = 7\n')
    made = checked(home)
    assert {name: outcome.kind for name, outcome in made.items()} == {
        "anna/empty.nc": "problem", "anna/netcdf.nc": "skipped", "anna/part0.nc": "checked", "anna/part1.nc": "checked",
        "anna/part2.nc": "checked", "anna/vase.gcode": "skipped", "ben/part0.nc": "problem", "ben/part1.nc": "problem",
        "ben/part2.nc": "problem",
    }  # fmt: skip
    assert made["anna/empty.nc"].says == "this file is empty; there is nothing to check"
    assert "job.toml:2:10: z_zero" in made["ben/part0.nc"].says
    assert "3D printer" in made["anna/vase.gcode"].says


def test_a_program_that_is_named_is_a_problem_where_one_in_a_folder_is_passed_over(tmp_path: Path) -> None:
    (tmp_path / "vase.gcode").write_text(PRINTER)
    assert [outcome.kind for outcome in checked(tmp_path / "vase.gcode").values()] == ["problem"]


def test_a_program_that_vanishes_after_it_was_listed(tmp_path: Path) -> None:
    home = workshop(tmp_path)
    tasks = [Task(source, Options()) for source in find((str(home),)).sources]
    (home / "anna" / "part1.nc").unlink()
    kinds = [outcome.kind for outcome in runner.outcomes(tasks, None, 2)]
    assert kinds == ["checked", "problem", "checked", "checked", "checked", "checked"]


@pytest.fixture
def trap(monkeypatch: pytest.MonkeyPatch) -> Any:
    """Makes the check of programs with this feed do something else; workers are forks and inherit it."""
    if not hasattr(os, "fork"):
        pytest.skip("workers are fresh interpreters here")
    check = runner.run

    def set_trap(feed: str, act: Any) -> None:
        def caught(data: bytes, *others: Any, **more: Any) -> Any:
            if feed.encode() in data:
                act()
            return check(data, *others, **more)

        monkeypatch.setattr(runner, "run", caught)

    return set_trap


def test_a_worker_that_dies_costs_its_own_program_alone(tmp_path: Path, trap: Any) -> None:
    home = workshop(tmp_path)
    trap("F1200", lambda: os.kill(os.getpid(), signal.SIGKILL))
    made = checked(home)
    assert {name for name, outcome in made.items() if outcome.kind != "checked"} == {"anna/part1.nc"}
    assert "ended by SIGKILL" in made["anna/part1.nc"].says


def test_a_worker_that_sleeps_on_is_given_up(tmp_path: Path, trap: Any, monkeypatch: pytest.MonkeyPatch) -> None:
    home = workshop(tmp_path)
    monkeypatch.setattr(crew, "ASLEEP", 1.0)
    trap("F1200", lambda: time.sleep(600))
    made = checked(home, seconds=1.5)
    assert {name for name, outcome in made.items() if outcome.kind != "checked"} == {"anna/part1.nc"}
    assert "gave up after" in made["anna/part1.nc"].says


def spin(seconds: float) -> None:
    begun = time.process_time()
    while time.process_time() - begun < seconds:
        pass


@pytest.mark.slow
def test_a_worker_that_works_on_for_ever_is_given_up(tmp_path: Path, trap: Any) -> None:
    home = workshop(tmp_path)
    trap("F1200", lambda: spin(600))
    made = checked(home, seconds=1.5)
    assert {name for name, outcome in made.items() if outcome.kind != "checked"} == {"anna/part1.nc"}
    assert "gave up after 2 s of a processor's time" in made["anna/part1.nc"].says


@pytest.mark.slow
def test_a_host_that_is_busy_or_slow_changes_no_answer(
    tmp_path: Path, trap: Any, monkeypatch: pytest.MonkeyPatch
) -> None:
    """One program waits for its disk longer than it may work; another gets a twentieth of a processor."""
    home = workshop(tmp_path)
    right = checked(home)
    trap("F1200", lambda: time.sleep(2.5))
    assert checked(home, seconds=1.5) == right
    monkeypatch.setattr(crew, "ASLEEP", 0.0)

    def seldom() -> None:
        for _ in range(40):
            spin(0.005)
            time.sleep(0.1)

    trap("F1200", seldom)
    assert checked(home, seconds=1.5) == right


def test_a_worker_that_leaves_without_a_word(tmp_path: Path, trap: Any) -> None:
    home = workshop(tmp_path)
    trap("F900\n", lambda: os._exit(3))
    made = checked(home, cores=1)
    assert "without an answer (3)" in made["anna/part0.nc"].says
    assert made["anna/part1.nc"].kind == "checked"


def test_memory_that_runs_out_is_a_problem_of_one_program(tmp_path: Path, trap: Any) -> None:
    home = workshop(tmp_path)

    def run_out() -> None:
        raise MemoryError

    trap("F1200", run_out)
    assert checked(home)["anna/part1.nc"].says == "there is not enough memory for this"


def test_large_programs_are_not_checked_side_by_side() -> None:
    large, small = runner.TOGETHER - 10, 100
    apart = dict.fromkeys(range(3), ALONE)
    assert runner._next([(small, 0), (large, 1)], [], apart) == 1
    busy = [Job(9, Task(Source("busy.nc"), Options()), 1.0, large)]
    assert runner._next([(large, 1), (5, 2)], busy, apart) == 1
    assert runner._next([(large, 1)], busy, apart) is None


def test_programs_of_one_blank_are_checked_one_after_another() -> None:
    places = {0: Place("job", 1, 9), 1: Place("job", 0, 0), 2: ALONE}
    assert runner._next([(900, 0), (9, 1)], [], places) == 1
    busy = [Job(1, Task(Source("first.nc"), Options()), 1.0, 9, "job")]
    assert runner._next([(900, 0)], busy, places) is None
    assert runner._next([(900, 0), (9, 2)], busy, places) == 1


@pytest.mark.parametrize("workers", [1, 2])
def test_a_job_of_several_programs_is_judged_in_order_whatever_the_workers(tmp_path: Path, workers: int) -> None:
    """The last in the list of files is the first that cuts; the others plunge into what it cleared."""
    head = "G21 G90 G94 G17 G54\nM3 S16000\nG0 Z5\n"
    slot = "G0 X10 Y10\nG1 Z0 F400\nG1 X50 Z-3 F1200\nG1 X10\nG0 Z5\nM30\n"
    deeper = "G0 X10 Y10\nG0 Z-{0}\nG1 Z-{1} F400\nG1 X50 F1200\nG0 Z5\nM30\n"
    (tmp_path / "job.toml").write_text(
        'program = ["c.nc", "b.nc", "a.nc"]\n[stock]\nsize = ["60 mm", "20 mm", "9 mm"]\ncorner = ["0 mm", "0 mm"]\n'
    )
    for name, text in (("c", slot), ("b", deeper.format(3, 4)), ("a", deeper.format(4, 5))):
        (tmp_path / f"{name}.nc").write_text(head + text)
    options = Options(tools=("1: flat 6mm 2fl",))
    tasks = [Task(Source(str(tmp_path / f"{name}.nc")), options) for name in "abc"]
    for made in runner.outcomes(tasks, None, workers):
        assert made.checked is not None
        assert not [f for f in made.checked.findings if f.grade == "halt"]
        if not made.checked.path.endswith("c.nc"):
            first = [question[1] for question in made.asked if question[0] == "content"]
            assert str(tmp_path / "c.nc") in first


def test_a_folder_on_a_path_that_is_no_text(tmp_path: Path) -> None:
    try:
        folder = tmp_path / os.fsdecode(b"pl\xe5t")
        folder.mkdir()
    except OSError:
        pytest.skip("this file system takes UTF-8 names only")
    (folder / "a.nc").write_text(program())
    (folder / "b.nc").write_text(program())
    made = checked(folder)
    assert [outcome.kind for outcome in made.values()] == ["problem", "problem"] or all(
        outcome.kind == "checked" for outcome in made.values()
    )


def test_pipes_of_another_class_serve_as_well(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Windows has pipes of a class of their own, a sibling of the one that other systems have."""
    monkeypatch.setattr(crew, "Connection", type("AnotherConnection", (), {}))
    made = checked(workshop(tmp_path), cores=2)
    assert [outcome.kind for outcome in made.values()] == ["checked"] * 6
