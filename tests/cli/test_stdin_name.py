"""`gclint check - --stdin-name FILE`: what comes in stands for that file."""

from __future__ import annotations

import io
import json
from collections.abc import Callable
from pathlib import Path
from types import SimpleNamespace

import pytest

Called = Callable[..., tuple[int, str, str]]
SHOP = '[[tool]]\nnumber = 1\nshape = "flat"\ndiameter = "6 mm"\nflutes = 2\n'


@pytest.fixture
def jobs(here: Path, program: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A folder with declarations; standard input holds a program that is not in it."""
    folder = here / "jobs"
    folder.mkdir()
    (folder / "shop.toml").write_text(SHOP)
    (folder / "job.toml").write_text('material = "beech"\n')
    data = program.read_bytes()
    monkeypatch.setattr("sys.stdin", SimpleNamespace(buffer=io.BytesIO(data)))
    return folder


def test_it_finds_its_declarations(jobs: Path, gclint: Called) -> None:
    code, out, _ = gclint("check", "-", "--stdin-name", "jobs/new.nc", "--as", "json")
    [made] = json.loads(out)["programs"]
    assert made["path"] == "jobs/new.nc"
    assert {Path(each["path"]).name for each in made["used"]} >= {"shop.toml", "job.toml"}
    assert code in (0, 1)


def test_it_is_the_same_as_the_file_itself(jobs: Path, program: Path, gclint: Called) -> None:
    given = gclint("check", "-", "--stdin-name", "jobs/new.nc", "--as", "json")
    (jobs / "new.nc").write_bytes(program.read_bytes())
    assert gclint("check", "jobs/new.nc", "--as", "json") == given


def test_sarif_places_it(jobs: Path, gclint: Called) -> None:
    out = gclint("check", "-", "--stdin-name", "jobs/new.nc", "--as", "sarif")[1]
    [made] = json.loads(out)["runs"]
    assert made["artifacts"][0]["location"] == {"uri": "jobs/new.nc", "uriBaseId": "%SRCROOT%"}


def test_it_finds_subprograms_beside_the_name(jobs: Path, gclint: Called, monkeypatch: pytest.MonkeyPatch) -> None:
    (jobs / "o100.nc").write_text("O100\nG1 X50 F1800\nM99\n")
    text = b"G21 G90 G94 G17 G54\nT1 M6\nM3 S18000\nG4 P5\nG0 Z5\nG0 X0 Y0\nG1 Z-1 F200\nM98 P100\nG0 Z5\nM30\n"
    monkeypatch.setattr("sys.stdin", SimpleNamespace(buffer=io.BytesIO(text)))
    out = gclint("check", "-", "--stdin-name", "jobs/new.nc", "--as", "json")[1]
    assert json.loads(out)["programs"][0]["extent_mm"]["max"][0] == 50


def test_among_other_programs(jobs: Path, gclint: Called, program: Path) -> None:
    lines = gclint("check", "-", program.name, "--stdin-name", "jobs/new.nc", "--as", "lines")[1].splitlines()
    assert {line.split(":")[0] for line in lines} == {"jobs/new.nc", program.name}


@pytest.mark.parametrize(
    ("args", "says"),
    [
        (("tray.nc", "--stdin-name", "a.nc"), "goes with -"),
        (("-", "--stdin-name", ""), "name of a file"),
        (("-", "--stdin-name", "jobs"), "name of a file"),
        (("-", "--stdin-name", "jobs/new.nc", "--out", "jobs/new.nc"), "never overwritten"),
    ],
)
def test_what_cannot_be(args: tuple[str, ...], says: str, jobs: Path, gclint: Called) -> None:
    (jobs / "new.nc").write_text("G21\n")
    code, out, err = gclint("check", *args)
    assert (code, out) == (2, "")
    assert says in err
    assert (jobs / "new.nc").read_text() == "G21\n"
