"""A signature in a job file: it stands while program and declarations do, and leaves the rest of the file alone."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from gclint.check import run
from gclint.cli.main import run as command
from gclint.setup.declare import Options
from gclint.setup.used import unsigned
from gclint.tables.finding import Signature

SAMPLES = Path(__file__).parents[2] / "sample_programs"


@pytest.fixture
def job(tmp_path: Path) -> Path:
    shutil.copytree(SAMPLES / "tide-dial", tmp_path / "tide-dial")
    shutil.copy(SAMPLES / "bench-router.toml", tmp_path)
    return tmp_path / "tide-dial" / "job.toml"


def signatures(job: Path) -> tuple[Signature, ...]:
    program = job.with_name("tide-dial.nc")
    return run(program.read_bytes(), str(program), Options(), str(program)).checked.signed


def sign(job: Path, *more: str) -> int:
    return command(["sign", str(job.with_name("tide-dial.nc")), *more])


def test_it_stands_until_the_program_changes(job: Path) -> None:
    before = job.read_text(encoding="utf-8")
    assert sign(job, "--by", "R. Okafor") == 0
    assert job.read_text(encoding="utf-8").startswith(before.rstrip())  # comments and all
    [made] = signatures(job)
    assert (made.by, made.stands, made.changed) == ("R. Okafor", True, ())
    program = job.with_name("tide-dial.nc")
    program.write_text(program.read_text(encoding="utf-8") + "(one more remark)\n", encoding="utf-8")
    [made] = signatures(job)
    assert (made.stands, made.changed) == (False, ("the program",))


@pytest.mark.parametrize("file", ["job.toml", "../bench-router.toml"])
def test_it_is_void_when_a_declaration_changes(job: Path, file: str) -> None:
    sign(job)
    changed = job.parent / file
    changed.write_text("# another hand\n" + changed.read_text(encoding="utf-8"), encoding="utf-8")
    [made] = signatures(job)
    assert (made.stands, made.changed) == (False, ("a declaration",))


def test_a_second_signature_leaves_the_first_one_standing(job: Path) -> None:
    sign(job, "--by", "R. Okafor")
    sign(job, "--by", "Maren")
    assert [(each.by, each.stands) for each in signatures(job)] == [("R. Okafor", True), ("Maren", True)]


def test_ends_of_lines_stay_as_they_are(job: Path) -> None:
    job.write_bytes(job.read_bytes().replace(b"\n", b"\r\n"))
    assert sign(job) == 0
    assert job.read_bytes().count(b"\n") == job.read_bytes().count(b"\r\n")
    assert signatures(job)[0].stands


def test_what_must_not_run_is_not_signed(job: Path, capsys: pytest.CaptureFixture[str]) -> None:
    program = job.with_name("tide-dial.nc")
    text = program.read_text(encoding="utf-8").replace("M30", "G0 X0 Y0 Z-5\nG0 X40\nM30")
    program.write_text(text, encoding="utf-8")
    before = job.read_bytes()
    assert sign(job) == 2
    assert job.read_bytes() == before
    assert "Do not run" in capsys.readouterr().err


def test_without_a_job_file_it_says_so(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    program = tmp_path / "alone.nc"
    program.write_text("G21 G90\nG0 X1\nM30\n", encoding="utf-8")
    assert command(["sign", str(program)]) == 2
    assert "gclint job new" in capsys.readouterr().err


def test_only_signatures_are_left_out() -> None:
    text = 'material = "beech"\n\n[[signed]]\nprogram = "a.nc"\non = 2026-12-01\n\n[stock]\nsize = ["1 mm"]\n'
    assert unsigned(text) == 'material = "beech"\n\n[stock]\nsize = ["1 mm"]\n'
    assert unsigned("a = 1") == unsigned("a = 1\n\n")
