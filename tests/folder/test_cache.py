"""Kept results: used again where nothing has changed, and never where anything has."""

from __future__ import annotations

import os
import random
from pathlib import Path

import pytest

import gclint.folder.run as runner
from gclint.folder import cache as room
from gclint.folder.cache import Cache, folder_of_cache
from gclint.problem import Problem
from gclint.shipped import folder
from tests.folder.shop import JOB, SHOP, checked, program, workshop


@pytest.fixture
def home(tmp_path: Path) -> Path:
    return workshop(tmp_path / "jobs")


@pytest.fixture
def cache(tmp_path: Path) -> Path:
    return tmp_path / "cache"


class Counted:
    """How many programs were really checked."""

    def __init__(self, monkeypatch: pytest.MonkeyPatch) -> None:
        self.count = 0
        give = runner.Workers.give

        def counted(workers: runner.Workers, job: runner.Job) -> None:
            self.count += 1
            give(workers, job)

        monkeypatch.setattr(runner.Workers, "give", counted)

    def since(self) -> int:
        count, self.count = self.count, 0
        return count


@pytest.fixture
def worked(monkeypatch: pytest.MonkeyPatch) -> Counted:
    return Counted(monkeypatch)


def test_what_has_not_changed_is_not_checked_again(home: Path, cache: Path, worked: Counted) -> None:
    first = checked(home, cache=Cache(cache))
    assert worked.since() == 6
    assert checked(home, cache=Cache(cache)) == first
    assert worked.since() == 0


@pytest.mark.parametrize(
    ("file", "text", "again"),
    [
        ("anna/part0.nc", program(4), 1),
        ("anna/job.toml", JOB.replace("beech", "oak"), 3),
        ("shop.toml", SHOP.replace('"6 mm"', '"8 mm"'), 6),
        ("ben/shop.toml", SHOP.replace('"6 mm"', '"8 mm"'), 3),  # nearer than the one above
        ("ben/beech.toml", (folder() / "materials" / "beech.toml").read_text(encoding="utf-8"), 3),  # a card of his own
    ],
)
def test_a_change_is_always_seen(
    home: Path, cache: Path, worked: Counted, file: str, text: str, again: int
) -> None:
    checked(home, cache=Cache(cache))
    worked.since()
    (home / file).write_text(text)
    made = checked(home, cache=Cache(cache))
    assert worked.since() == again
    assert made == checked(home)


def test_going_back_needs_no_new_check(home: Path, cache: Path, worked: Counted) -> None:
    first = checked(home, cache=Cache(cache))
    (home / "shop.toml").write_text(SHOP.replace('"6 mm"', '"8 mm"'))
    assert checked(home, cache=Cache(cache)) != first
    (home / "shop.toml").write_text(SHOP)
    worked.since()
    assert checked(home, cache=Cache(cache)) == first
    assert worked.since() == 0


def test_a_subprogram_beside_is_part_of_what_was_checked(tmp_path: Path, cache: Path, worked: Counted) -> None:
    home = workshop(tmp_path / "calls", people=("anna",), each=1)
    (home / "anna" / "part0.nc").write_text(program().replace("G1 X40 F1800", "M98 P1001"))
    without = checked(home, cache=Cache(cache))
    worked.since()
    (home / "anna" / "o1001.nc").write_text("O1001\nG1 X40 F1800\nM99\n")
    assert checked(home, cache=Cache(cache))["anna/part0.nc"] != without["anna/part0.nc"]
    worked.since()
    (home / "anna" / "o1001.nc").write_text("O1001\nG1 X40 F300\nM99\n")
    made = checked(home, cache=Cache(cache))
    assert worked.since() == 2
    assert made == checked(home)


def test_a_house_pack_is_part_of_what_was_checked(home: Path, cache: Path, worked: Counted) -> None:
    (home / "anna" / "job.toml").write_text('packs = ["house.toml"]\n' + JOB)
    pack = 'pack = "house"\nabout = "ours"\nrule = []\n'
    (home / "anna" / "house.toml").write_text(pack)
    checked(home, cache=Cache(cache))
    worked.since()
    (home / "anna" / "house.toml").write_text(pack.replace("ours", "not TOML"[:3] + '" = 1 "'))
    made = checked(home, cache=Cache(cache))
    assert worked.since() == 3
    assert made["anna/part0.nc"].kind == "problem"


def test_a_pack_that_was_missing_is_looked_for_again(home: Path, cache: Path) -> None:
    (home / "anna" / "job.toml").write_text('packs = ["house.toml"]\n' + JOB)
    assert checked(home, cache=Cache(cache))["anna/part0.nc"].kind == "problem"
    (home / "anna" / "house.toml").write_text('pack = "house"\nabout = "ours"\nrule = []\n')
    assert checked(home, cache=Cache(cache)) == checked(home)


def test_another_gclint_uses_nothing_of_this_one(
    home: Path, cache: Path, worked: Counted, monkeypatch: pytest.MonkeyPatch
) -> None:
    checked(home, cache=Cache(cache))
    worked.since()
    monkeypatch.setattr(room, "__version__", "99.0")
    checked(home, cache=Cache(cache))
    assert worked.since() == 6


def test_the_same_names_elsewhere_are_other_programs(
    tmp_path: Path, cache: Path, worked: Counted, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Relative names in another working folder, with another shop above."""
    for place, size in (("here", "6 mm"), ("there", "8 mm")):
        (tmp_path / place).mkdir()
        workshop(tmp_path / place / "jobs")
        (tmp_path / place / "jobs" / "shop.toml").write_text(SHOP.replace("6 mm", size))
    made = []
    for place in ("here", "there"):
        monkeypatch.chdir(tmp_path / place)
        made.append(checked("jobs", cache=Cache(cache)))
        assert worked.since() == 6
    assert made[0] != made[1]


def entries(cache: Path) -> list[Path]:
    return sorted(path for path in cache.rglob("*") if path.is_file())


@pytest.mark.parametrize("seed", range(12))
def test_an_entry_that_is_altered_is_never_believed(home: Path, cache: Path, seed: int) -> None:
    right = checked(home, cache=Cache(cache))
    chance = random.Random(seed)
    for path in entries(cache):
        data = bytearray(path.read_bytes())
        act = chance.randrange(6)
        if act == 0:
            data = data[: chance.randrange(len(data))]
        elif act == 1:
            for _ in range(chance.randrange(1, 9)):
                data[chance.randrange(len(data))] ^= 1 << chance.randrange(8)
        elif act == 2:
            data = bytearray()
        elif act == 3:
            data += b"\0" * chance.randrange(1, 50)
        elif act == 4:  # a whole entry in another's place
            data = bytearray(chance.choice(entries(cache)).read_bytes())
        path.write_bytes(data)
    assert checked(home, cache=Cache(cache)) == right
    assert checked(home, cache=Cache(cache)) == right


def test_an_entry_that_is_a_folder_or_not_to_be_read(home: Path, cache: Path) -> None:
    right = checked(home, cache=Cache(cache))
    for path in entries(cache)[:5]:
        path.unlink()
        path.mkdir()
    assert checked(home, cache=Cache(cache)) == right


def test_a_cache_that_cannot_be_written_is_a_slow_run(home: Path, tmp_path: Path, worked: Counted) -> None:
    blocked = tmp_path / "blocked"
    blocked.write_text("a file where a folder should be")
    right = checked(home)
    worked.since()
    assert checked(home, cache=Cache(blocked)) == right
    assert worked.since() == 6


def test_what_need_not_be_so_again_is_not_kept(home: Path, cache: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def fail(*_: object, **__: object) -> None:
        raise RuntimeError("a defect")

    monkeypatch.setattr(runner, "run", fail)
    assert {outcome.kind for outcome in checked(home, cache=Cache(cache)).values()} == {"problem"}
    monkeypatch.undo()
    assert {outcome.kind for outcome in checked(home, cache=Cache(cache)).values()} == {"checked"}


def test_pruning_keeps_what_was_used_last_and_the_bound(home: Path, cache: Path) -> None:
    results = Cache(cache)
    checked(home, cache=results)
    files = entries(cache)
    for age, path in enumerate(files):
        os.utime(path, (1e9 + age, 1e9 + age))
    left_over = files[0].with_name("x.said.1.new")
    left_over.write_bytes(b"killed")
    os.utime(left_over, (1e9, 1e9))
    total = sum(path.stat().st_size for path in files)
    results.prune(total)
    assert entries(cache) == files  # all fits; what was never renamed goes
    results.prune(total // 2)
    stay = entries(cache)
    assert stay
    assert sum(path.stat().st_size for path in stay) <= total // 2
    assert stay == files[len(files) - len(stay):]  # fmt: skip


def test_where_results_are_kept(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("GCLINT_CACHE", str(tmp_path / "env"))
    assert folder_of_cache(None) == tmp_path / "env"
    assert folder_of_cache(str(tmp_path / "given")) == tmp_path / "given"
    assert folder_of_cache("none") is None
    monkeypatch.setenv("GCLINT_CACHE", "none")
    assert folder_of_cache(None) is None
    monkeypatch.delenv("GCLINT_CACHE")
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path / "xdg"))
    place = folder_of_cache(None)
    assert place is not None
    assert place.name == "gclint"
    (tmp_path / "file").write_text("")
    with pytest.raises(Problem, match="not a folder"):
        folder_of_cache(str(tmp_path / "file"))
