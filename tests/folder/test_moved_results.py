"""Results by content: a copy in another folder, checkout or machine is not worked out again, and says its own names."""

from __future__ import annotations

import os
import shutil
from pathlib import Path

import pytest

import gclint.folder.run as runner
from gclint.folder.cache import Cache
from gclint.folder.outcome import Outcome
from tests.folder.shop import JOB, SHOP, checked, program, workshop

SAMPLES = Path(__file__).parents[2] / "sample_programs"


@pytest.fixture
def cache(tmp_path: Path) -> Path:
    return tmp_path / "cache"


class Counted:
    """Which programs were really checked."""

    def __init__(self, monkeypatch: pytest.MonkeyPatch) -> None:
        self.names: list[str] = []
        give = runner.Workers.give

        def counted(workers: runner.Workers, job: runner.Job) -> None:
            self.names.append(job.task.source.name)
            give(workers, job)

        monkeypatch.setattr(runner.Workers, "give", counted)

    def since(self) -> int:
        names, self.names = self.names, []
        return len(names)


@pytest.fixture
def worked(monkeypatch: pytest.MonkeyPatch) -> Counted:
    return Counted(monkeypatch)


def run(named: Path | str, cache: Path | None = None) -> dict[str, Outcome]:
    return checked(named, cache=None if cache is None else Cache(cache))


def test_a_copy_elsewhere_costs_no_check_and_says_its_own_names(tmp_path: Path, cache: Path, worked: Counted) -> None:
    first = workshop(tmp_path / "first" / "jobs")
    run(first, cache)
    assert worked.since() == 6
    for place in ("second/jobs", "first/jobs2", "a/b/c/deeper", "x"):
        copy = Path(shutil.copytree(first, tmp_path / place))
        made = run(copy, cache)
        assert worked.since() == 0, place
        assert made == run(copy)
        worked.since()
        assert not any(f"{first}/" in repr(outcome) for outcome in made.values())


def test_another_checkout_under_relative_names(
    tmp_path: Path, cache: Path, worked: Counted, monkeypatch: pytest.MonkeyPatch
) -> None:
    for place in ("one", "two/deeper"):
        workshop(tmp_path / place / "jobs")
        monkeypatch.chdir(tmp_path / place)
        made = run("jobs", cache)
        assert worked.since() == (6 if place == "one" else 0)
        assert made == run("jobs")
        worked.since()
    monkeypatch.chdir(tmp_path)
    for named in ("one/jobs", str(tmp_path / "one" / "jobs")):
        made = run(named, cache)
        assert worked.since() == 0
        assert made == run(named)
        worked.since()


@pytest.mark.slow
def test_every_sample_is_the_same_wherever_it_was_worked_out(tmp_path: Path, cache: Path, worked: Counted) -> None:
    names = sorted({path.parent.name for path in SAMPLES.rglob("job.toml")})[:6]
    for place in ("first", "second/jobs"):
        for each in SAMPLES.iterdir():
            if each.suffix == ".toml" or each.name in names:
                (shutil.copytree if each.is_dir() else shutil.copy)(each, _made(tmp_path / place) / each.name)
    run(tmp_path / "first", cache)
    count = worked.since()
    made = run(tmp_path / "second" / "jobs", cache)
    assert worked.since() == 0
    assert count >= len(names)
    assert made == run(tmp_path / "second" / "jobs")


def _made(folder: Path) -> Path:
    folder.mkdir(parents=True, exist_ok=True)
    return folder


OTHER = SHOP.replace('"6 mm"', '"8 mm"')


@pytest.mark.parametrize(
    ("place", "files"),
    [
        ("second/jobs", {"second/jobs/anna/shop.toml": OTHER}),  # nearer than the one that was used
        ("second/jobs", {"second/jobs/shop.toml": OTHER}),
        ("second/jobs", {"second/jobs/anna/job.toml": JOB.replace("beech", "oak")}),
        ("second/jobs", {"second/jobs/anna/beech.toml": "title = 1\n"}),  # a card of her own, and a wrong one
        ("second/jobs", {"second/jobs/anna/part0.nc": program(3)}),
    ],
)
def test_what_differs_in_the_copy_is_seen(
    place: str, files: dict[str, str], tmp_path: Path, cache: Path, worked: Counted
) -> None:
    first = workshop(tmp_path / "first" / "jobs", ("anna",), each=1)
    run(first, cache)
    copy = Path(shutil.copytree(first, tmp_path / place))
    for name, text in files.items():
        (tmp_path / name).write_text(text)
    worked.since()
    made = run(copy, cache)
    assert worked.since() == 1
    assert made == run(copy)


def test_declarations_above_the_copy_count(tmp_path: Path, cache: Path, worked: Counted) -> None:
    """Without any in the folder, what lies above decides, however far above it is."""
    (tmp_path / "plain").mkdir()
    (tmp_path / "plain" / "part0.nc").write_text(program())
    run(tmp_path / "plain", cache)
    for place, file in (("a/b/c/jobs", "a/shop.toml"), ("d/jobs", "d/job.toml"), ("e/f/g/jobs", "e/f/job.toml")):
        copy = _made(tmp_path / place)
        shutil.copy(tmp_path / "plain" / "part0.nc", copy)
        (tmp_path / file).write_text(SHOP if file.endswith("shop.toml") else JOB)
        worked.since()
        made = run(copy, cache)
        assert worked.since() == 1
        assert made == run(copy)
    worked.since()
    assert run(tmp_path / "a" / "b" / "c" / "jobs", cache) == run(tmp_path / "a" / "b" / "c" / "jobs")
    moved = _made(tmp_path / "g" / "h" / "i" / "j" / "jobs")
    shutil.copy(tmp_path / "plain" / "part0.nc", moved)
    (tmp_path / "g" / "shop.toml").write_text(SHOP)  # the very same, farther up
    worked.since()
    made = run(moved, cache)
    assert made == run(moved)


def test_subprograms_and_packs_and_earlier_programs_are_part_of_it(
    tmp_path: Path, cache: Path, worked: Counted
) -> None:
    first = workshop(tmp_path / "first" / "jobs", ("anna",), each=2)
    home = first / "anna"
    (home / "part0.nc").write_text(program().replace("G1 X40 F1800", "M98 P1001"))
    (home / "o1001.nc").write_text("O1001\nG1 X40 F1800\nM99\n")
    (home / "job.toml").write_text('packs = ["house.toml"]\nafter = ["o1001.nc"]\n' + JOB)
    (home / "house.toml").write_text('pack = "house"\nabout = "ours"\nrule = []\n')
    run(first, cache)
    worked.since()
    copy = Path(shutil.copytree(first, tmp_path / "second" / "jobs"))
    assert run(copy, cache) == run(copy)
    changes = {"o1001.nc": "O1001\nG1 X40 F300\nM99\n", "house.toml": 'pack = "house"\nabout = "yours"\nrule = []\n'}
    for name, text in changes.items():
        (copy / "anna" / name).write_text(text)
        worked.since()
        made = run(copy, cache)
        assert worked.since() >= 2
        assert made == run(copy)


def test_a_link_that_leads_elsewhere_in_the_copy_is_seen(tmp_path: Path, cache: Path) -> None:
    first = workshop(tmp_path / "first" / "jobs", ("anna",), each=1)
    (first / "anna" / "job.toml").write_text('program = "part0.nc"\n' + JOB)
    run(first, cache)
    copy = Path(shutil.copytree(first, tmp_path / "second" / "jobs"))
    (copy / "anna" / "part0.nc").rename(tmp_path / "elsewhere.nc")
    (copy / "anna" / "part0.nc").symlink_to(tmp_path / "elsewhere.nc")
    assert run(copy / "anna" / "part0.nc", cache) == run(copy / "anna" / "part0.nc")


def test_what_names_places_itself_stays_where_it_is(tmp_path: Path, cache: Path, worked: Counted) -> None:
    """A program or a declaration that repeats its own place."""
    first = workshop(tmp_path / "first" / "jobs", ("anna", "ben"), each=1)
    path = first / "anna" / "part0.nc"
    reason = f'[[accept]]\nrule = "straight-plunge"\nbecause = "see {path} and {path}.txt"\n'
    (first / "anna" / "job.toml").write_text(JOB + reason)
    (first / "ben" / "part0.nc").write_text(f"(written to {first / 'ben' / 'part0.nc'})\n{program()}")
    run(first, cache)
    copy = Path(shutil.copytree(first, tmp_path / "second" / "jobs"))
    worked.since()
    assert run(copy, cache) == run(copy)


def test_problems_are_told_by_their_own_names(tmp_path: Path, cache: Path, worked: Counted) -> None:
    first = workshop(tmp_path / "first" / "jobs", ("anna",), each=2)
    (first / "anna" / "job.toml").write_text('z_zero = "middle"\n')
    (first / "anna" / "part1.nc").write_bytes(b"")
    run(first, cache)
    copy = Path(shutil.copytree(first, tmp_path / "second" / "jobs"))
    worked.since()
    made = run(copy, cache)
    assert made == run(copy)
    assert f"{copy / 'anna' / 'job.toml'}:1:10" in made["anna/part0.nc"].says


@pytest.mark.parametrize("seed", range(6))
def test_an_entry_that_is_altered_is_never_believed_in_a_copy(tmp_path: Path, cache: Path, seed: int) -> None:
    import random

    first = workshop(tmp_path / "first" / "jobs", ("anna",), each=2)
    run(first, cache)
    copy = Path(shutil.copytree(first, tmp_path / "second" / "jobs"))
    chance = random.Random(seed)
    for path in sorted(each for each in cache.rglob("*") if each.is_file()):
        data = bytearray(path.read_bytes())
        data[chance.randrange(len(data))] ^= 1 << chance.randrange(8)
        path.write_bytes(data)
    assert run(copy, cache) == run(copy)


def test_pages_of_a_copy_are_its_own(tmp_path: Path, cache: Path, here: Path) -> None:
    from gclint.cli.main import run as command

    (here / "first").mkdir()
    workshop(here / "first" / "jobs", ("anna",), each=2)
    shutil.copytree(here / "first", here / "second")
    for place in ("first", "second"):
        os.chdir(here)
        command(["check", f"{place}/jobs", "-q", "--cache", str(cache), "--also", f"page={here / 'pages'}/"])
        pages = [page.read_text() for page in (here / "pages").glob("part*.html")]
        assert len(pages) == 2
        assert all(f"{place}/jobs/anna" in page for page in pages)
