"""The pages of a folder: made by workers, in the order of the list, and not again where nothing has changed."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

import pytest

from tests.folder.shop import SHOP, program, workshop

Gclint = Callable[..., tuple[int, str, str]]


@pytest.fixture
def jobs(here: Path) -> Path:
    return workshop(here / "jobs")


def made(gclint: Gclint, *more: str) -> tuple[int, str, str]:
    return gclint("check", "jobs", "--as", "page", "--out", "pages", "--cache", "cache", *more)


def pages() -> dict[str, tuple[str, int]]:
    """What each page is, and when it was written."""
    files = sorted(Path("pages").iterdir())
    return {file.name: (file.read_text(encoding="utf-8"), file.stat().st_mtime_ns) for file in files}


def again(before: dict[str, tuple[str, int]], after: dict[str, tuple[str, int]]) -> set[str]:
    """The pages that were written once more; the list always is."""
    return {name for name in after if after[name][1] != before[name][1]} - {"index.html"}


def test_pages_are_the_same_whatever_the_number_of_workers(jobs: Path, gclint: Gclint) -> None:
    assert made(gclint, "--workers", "1") == (0, "", "")
    one = {name: text for name, (text, _) in pages().items()}
    for file in Path("pages").iterdir():
        file.unlink()
    assert made(gclint, "--workers", "3", "--cache", "other") == (0, "", "")
    assert {name: text for name, (text, _) in pages().items()} == one
    listed = re.findall(r'<th scope="row"><a href="([^"]+)">([^<]+)</a>', one["index.html"])
    order = [f"jobs/{person}/part{n}.nc" for person in ("anna", "ben") for n in range(3)]
    assert sorted(name for _, name in listed) == order  # the list has the worst first
    assert {file for file, _ in listed} == one.keys() - {"index.html"}


def test_what_has_not_changed_keeps_its_page(jobs: Path, gclint: Gclint) -> None:
    made(gclint)
    first = pages()
    assert made(gclint) == (0, "", "")
    assert again(first, pages()) == set()

    (jobs / "anna" / "part1.nc").write_text(program(2, 1500))
    Path("pages/part2.html").write_text(first["part2.html"][0].replace("Job sheet", "my sheet"))
    second = pages()
    made(gclint)
    assert again(second, pages()) == {"part1.html", "part2.html"}
    assert pages()["part2.html"][0] == first["part2.html"][0]

    (jobs / "shop.toml").write_text(SHOP.replace("6 mm", "8 mm"))
    third = pages()
    made(gclint)
    assert again(third, pages()) == first.keys() - {"index.html"}

    fourth = pages()
    made(gclint, "--for", "operator")
    assert again(fourth, pages()) == first.keys() - {"index.html"}


def test_without_kept_results_every_page_is_made_again(jobs: Path, gclint: Gclint) -> None:
    made(gclint)
    first = pages()
    made(gclint, "--cache", "none")
    assert again(first, pages()) == first.keys() - {"index.html"}


def test_other_forms_beside_pages_tell_the_same(jobs: Path, gclint: Gclint) -> None:
    (jobs / "anna" / "part1.nc").write_bytes(b"")
    code, out, err = gclint("check", "jobs", "--as", "json", "--cache", "none")
    assert code == 2
    for _ in range(2):
        both = gclint("check", "jobs", "--as", "json", "--also", "page=pages", "--cache", "cache")
        assert both == (code, out, err)
    assert "part1.html" not in pages()


def test_a_page_in_the_way_of_a_foreign_file_ends_the_run(jobs: Path, gclint: Gclint) -> None:
    Path("pages").mkdir()
    Path("pages/part1.html").write_text("my notes")
    code, out, err = made(gclint)
    assert (code, out) == (2, "")
    assert "pages/part1.html: this file is no page of gclint; it is never overwritten" in err
    assert Path("pages/part1.html").read_text() == "my notes"


def test_sheets_of_a_folder_are_those_of_its_programs(jobs: Path, gclint: Gclint) -> None:
    for more in ((), ("--teach",), ("--for", "operator")):
        _, many, _ = gclint("check", "jobs", "--sheets", "--cache", "none", *more)
        for file in ("jobs/anna/part0.nc", "jobs/ben/part2.nc"):
            _, one, _ = gclint("check", file, *more)
            assert one.partition("CAUTIONS ---")[0].strip() in many
