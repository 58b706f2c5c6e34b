"""Which programs a change concerns in a git folder."""

from __future__ import annotations

import os
import shutil
import subprocess
from pathlib import Path

import pytest

import gclint.folder.since as since
from gclint.folder.find import find
from gclint.problem import Problem
from gclint.setup.declare import Options
from gclint.shipped import folder
from tests.folder.shop import JOB, SHOP, program, workshop

pytestmark = pytest.mark.skipif(shutil.which("git") is None, reason="git is not here")
ANNA = {f"anna/part{n}.nc" for n in range(3)}
BEN = {f"ben/part{n}.nc" for n in range(3)}


def git(home: Path, *arguments: str) -> None:
    who = ("-c", "user.name=Ida", "-c", "user.email=ida@lowtide.invalid", "-c", "commit.gpgsign=false")
    subprocess.run(["git", *who, "-C", str(home), *arguments], check=True, capture_output=True)


@pytest.fixture
def home(tmp_path: Path) -> Path:
    made = workshop(tmp_path / "jobs")
    git(made, "init", "-q")
    git(made, "add", "-A")
    git(made, "commit", "-qm", "As it was")
    return made


def concerned(home: Path, revision: str = "HEAD", named: Path | None = None, tracked: bool = False) -> set[str]:
    names = (str(named or home),)
    sources = since.changed(names, find(names).sources, revision, Options(), tracked)
    return {os.path.relpath(source.name, home) for source in sources}


def test_nothing_has_changed(home: Path) -> None:
    assert concerned(home) == set()


def test_a_program_changed_staged_new_or_renamed(home: Path) -> None:
    (home / "anna" / "part0.nc").write_text(program(4))
    (home / "anna" / "new one é\n.nc").write_text(program(5))
    (home / "ben" / "part1.nc").write_text(program(6))
    git(home, "add", "ben/part1.nc")
    git(home, "mv", "ben/part2.nc", "ben/other.nc")
    assert concerned(home) == {"anna/part0.nc", "anna/new one é\n.nc", "ben/part1.nc", "ben/other.nc"}
    git(home, "add", "-A")
    git(home, "commit", "-qm", "Changed")
    assert concerned(home) == set()
    assert concerned(home, "HEAD~1") == {"anna/part0.nc", "anna/new one é\n.nc", "ben/part1.nc", "ben/other.nc"}
    assert concerned(home, "HEAD~1", home / "ben") == {"ben/part1.nc", "ben/other.nc"}


@pytest.mark.parametrize(
    ("file", "text", "whose"),
    [
        ("anna/job.toml", JOB + "\n", ANNA),
        ("anna/job.toml", None, ANNA),  # gone
        ("shop.toml", SHOP + "\n", ANNA | BEN),
        ("ben/shop.toml", SHOP, BEN),  # new, and nearer than the one above
        ("ben/beech.toml", (folder() / "materials" / "beech.toml").read_text(encoding="utf-8"), BEN),
        ("notes.toml", "", ANNA | BEN),  # beside shop.toml: it could be a card of the shop's own
        ("elsewhere/pyproject.toml", "", set()),
        ("readme.md", "", set()),
    ],
)
def test_a_declaration_concerns_its_programs(home: Path, file: str, text: str | None, whose: set[str]) -> None:
    if text is None:
        (home / file).unlink()
    else:
        (home / file).parent.mkdir(exist_ok=True)
        (home / file).write_text(text)
    assert concerned(home) == whose


def test_a_pack_that_a_job_names_elsewhere(home: Path) -> None:
    (home / "packs").mkdir()
    (home / "packs" / "house.toml").write_text('pack = "house"\nabout = "ours"\nrule = []\n')
    (home / "ben" / "job.toml").write_text('packs = ["../packs/house.toml"]\n' + JOB)
    git(home, "add", "-A")
    git(home, "commit", "-qm", "A pack")
    (home / "packs" / "house.toml").write_text('pack = "house"\nabout = "ours too"\nrule = []\n')
    assert concerned(home) == BEN


def test_a_subprogram_concerns_its_callers(home: Path) -> None:
    (home / "anna" / "part0.nc").write_text(program().replace("G1 X40 F1800", "M98 P1001"))
    (home / "anna" / "o1001.nc").write_text("O1001\nG1 X40 F1800\nM99\n")
    git(home, "add", "-A")
    git(home, "commit", "-qm", "Calls")
    (home / "anna" / "o1001.nc").write_text("O1001\nG1 X40 F900\nM99\n")
    assert concerned(home) == {"anna/part0.nc", "anna/o1001.nc"}


def test_what_git_leaves_out_is_not_looked_at(home: Path) -> None:
    (home / ".gitignore").write_text("scratch/\n")
    (home / "scratch").mkdir()
    (home / "scratch" / "a.nc").write_text(program())
    assert concerned(home) == set()


@pytest.mark.parametrize("revision", ["nowhere", "", "--output=x", "HEAD:shop.toml", "a\0b"])
def test_a_revision_that_is_none(home: Path, revision: str) -> None:
    with pytest.raises(Problem, match="revision"):
        concerned(home, revision)
    assert not (home / "x").exists()


def test_a_folder_that_git_does_not_keep(tmp_path: Path) -> None:
    home = workshop(tmp_path / "plain")
    with pytest.raises(Problem, match="needs a folder that git keeps: not a git repository"):
        concerned(home)


def test_no_git_at_all(home: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("PATH", str(home))
    with pytest.raises(Problem, match="needs the git command"):
        concerned(home)


def test_nothing_that_a_folder_configures_is_run(home: Path) -> None:
    marker, script = home.parent / "ran", home.parent / "script"
    script.write_text(f"#!/bin/sh\ntouch {marker}\n")
    script.chmod(0o755)
    for key in ("core.fsmonitor", "diff.external", "diff.nc.textconv", "diff.nc.command"):
        git(home, "config", key, str(script))
    (home / ".gitattributes").write_text("*.nc diff=nc\n")
    (home / "anna" / "part0.nc").write_text(program(4))
    marker.unlink(missing_ok=True)
    assert concerned(home) == {"anna/part0.nc"}
    assert not marker.exists()


def test_before_the_first_commit(tmp_path: Path) -> None:
    home = workshop(tmp_path / "jobs")
    git(home, "init", "-q")
    git(home, "add", "anna", "shop.toml")
    assert concerned(home) == ANNA | BEN
    assert concerned(home, tracked=True) == ANNA
    with pytest.raises(Problem, match="no revision"):
        concerned(home, "main")


def test_what_git_does_not_keep_yet(home: Path) -> None:
    (home / "anna" / "draft.nc").write_text(program(4))
    (home / "anna" / "part0.nc").write_text(program(5))
    assert concerned(home) == {"anna/draft.nc", "anna/part0.nc"}
    assert concerned(home, tracked=True) == {"anna/part0.nc"}
    git(home, "add", "-A")
    assert concerned(home, tracked=True) == {"anna/draft.nc", "anna/part0.nc"}


def test_from_a_hook_of_another_folder(home: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """git tells its hooks where they are; what is asked about may lie elsewhere."""
    monkeypatch.setenv("GIT_DIR", str(home / ".git"))
    monkeypatch.setenv("GIT_INDEX_FILE", str(home / ".git" / "index.lock"))
    (home / "ben" / "part1.nc").write_text(program(6))
    assert concerned(home, named=home / "ben") == {"ben/part1.nc"}
