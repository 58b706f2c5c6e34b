"""`--part I/N`: the shares of a folder are the same on every host, and add up to the whole."""

from __future__ import annotations

import json
import shutil
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from gclint.folder.part import Part, part_from
from gclint.problem import Problem
from tests.folder.shop import PRINTER, program, workshop

Called = Callable[..., tuple[int, str, str]]
OF = 3


@pytest.fixture
def jobs(here: Path) -> Path:
    home = workshop(here / "jobs", ("anna", "ben", "carl"), each=3)
    (home / "empty.nc").write_bytes(b"")
    (home / "notes.txt").write_text("Cut the ring first.\n")
    (home / "print.nc").write_text(PRINTER)
    (home / "carl" / "job.toml").write_text('material = "betch"\n')
    return home


def documents(gclint: Called, *args: str) -> list[tuple[int, dict[str, Any]]]:
    """Exit code and document of each share."""
    made = []
    for number in range(1, OF + 1):
        code, out, _ = gclint("check", *args, "--as", "json", "--part", f"{number}/{OF}")
        made.append((code, json.loads(out)))
    return made


def test_the_shares_add_up_to_the_whole(jobs: Path, gclint: Called) -> None:
    code, out, _ = gclint("check", "jobs", "--as", "json")
    whole = json.loads(out)
    parts = documents(gclint, "jobs")
    for key in ("programs", "not_read", "passed_over"):
        together = [each for _, part in parts for each in part[key]]
        assert sorted(together, key=json.dumps) == sorted(whole[key], key=json.dumps)
        assert together
    assert len([part for _, part in parts if part["programs"]]) > 1
    assert max(each for each, _ in parts) == code == 2


def test_every_host_has_the_same_shares(jobs: Path, here: Path, gclint: Called) -> None:
    shutil.copytree(jobs, here / "elsewhere" / "checked out")

    def names(folder: str) -> list[set[str]]:
        home = Path(folder)
        found = [[*part["programs"], *part["not_read"]] for _, part in documents(gclint, folder)]
        return [{Path(each["path"]).relative_to(home).as_posix() for each in part} for part in found]

    assert names("jobs") == names(str(here / "elsewhere" / "checked out")) == names(str(jobs))


def test_what_else_the_folder_holds_moves_nothing(jobs: Path, gclint: Called) -> None:
    before = [{each["path"] for each in part["programs"]} for _, part in documents(gclint, "jobs")]
    (jobs / "anna" / "new.nc").write_text(program())
    after = [{each["path"] for each in part["programs"]} for _, part in documents(gclint, "jobs")]
    assert all(old <= new for old, new in zip(before, after))
    assert sum(map(len, after)) == sum(map(len, before)) + 1


def test_files_that_are_named_have_their_share_too(jobs: Path, gclint: Called) -> None:
    files = [f"jobs/{person}/part{n}.nc" for person in ("anna", "ben") for n in range(3)]
    parts = documents(gclint, *files)
    assert sorted(each["path"] for _, part in parts for each in part["programs"]) == files


def test_an_empty_share_is_no_fault(jobs: Path, here: Path, gclint: Called) -> None:
    (here / "one").mkdir()
    (here / "one" / "a.nc").write_text(program())
    (here / "one" / "job.toml").write_bytes((jobs / "anna" / "job.toml").read_bytes())
    codes = []
    for number in (1, 2):
        code, out, err = gclint("check", "one", "--as", "json", "--part", f"{number}/2")
        made = json.loads(out)["programs"]
        codes.append((code, len(made)))
        assert ("holds none of the programs" in err) == (not made)
    assert (0, 0) in codes
    assert sorted(count for _, count in codes) == [0, 1]
    empty = 1 + codes.index((0, 0))
    for form in ("text", "lines", "sarif", "junit", "quality", "annotations"):
        assert gclint("check", "one", "--as", form, "--part", f"{empty}/2")[0] == 0


@pytest.mark.parametrize("text", ["", "1", "0/2", "3/2", "1/0", "a/b", "1/2/3", "-1/2", "1/1000000", "1 / 2"])
def test_what_is_no_part(text: str, jobs: Path, gclint: Called) -> None:
    with pytest.raises(Problem, match="is no part"):
        part_from(text)
    code, out, err = gclint("check", "jobs", "--part", text)
    assert (code, out) == (2, "")
    assert "such as 2/5" in err


def test_each_name_is_in_exactly_one_share() -> None:
    names = [f"{folder}/{n}.nc" for folder in ("a", "b c", "é") for n in range(300)]
    for of in (1, 2, 7):
        held = [[name for name in names if Part(number, of).holds(name)] for number in range(1, of + 1)]
        assert sorted(name for part in held for name in part) == sorted(names)
        assert min(map(len, held)) > len(names) / of * 0.7
    assert Part(1, 2).holds("e\u0301.nc") == Part(1, 2).holds("\u00e9.nc")  # one name, as two systems write it


def test_acceptances_are_not_taken_share_by_share(jobs: Path, gclint: Called) -> None:
    code, _, err = gclint("check", "jobs", "--part", "1/2", "--accept-all-as", "ran well", "--into", "jobs/new.toml")
    assert code == 2
    assert "leave --part away" in err
    assert not (jobs / "new.toml").exists()
