"""A store of results that is no folder: an object store of this machine, spoken to as any of its kind."""

from __future__ import annotations

import os
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from gclint.folder import store as room
from gclint.folder.cache import Cache, cache_of, size_of_cache
from gclint.folder.store import SHARES, FarStore, FolderStore, prune
from gclint.problem import Problem
from tests.folder.shop import checked, workshop

fsspec = pytest.importorskip("fsspec")


@pytest.fixture
def bucket(monkeypatch: pytest.MonkeyPatch) -> Iterator[str]:
    """The address of an empty bucket."""
    pytest.importorskip("s3fs")
    server = pytest.importorskip("moto.server").ThreadedMotoServer(ip_address="127.0.0.1", port=0, verbose=False)
    server.start()
    host, port = server.get_host_and_port()
    for name in [name for name in os.environ if name.startswith("AWS_")]:
        monkeypatch.delenv(name)
    said = {"endpoint_url": f"http://{host}:{port}", "key": "lowtide", "secret": "invented"}
    monkeypatch.setitem(fsspec.config.conf, "s3", said)
    system = fsspec.filesystem("s3", skip_instance_cache=True)
    system.mkdir("lowtide")
    yield "s3://lowtide/gclint"
    server.stop()


@pytest.mark.slow
@pytest.mark.filterwarnings("ignore")  # of the libraries of the object store
def test_an_object_store_keeps_results_and_forgets_the_oldest(bucket: str, tmp_path: Path) -> None:
    home, cache = workshop(tmp_path / "jobs"), Cache(FarStore(bucket, "1"))
    right = checked(home, cores=1)
    keep_all(cache, home)
    again = Cache(FarStore(bucket, "1"))
    kept = [again.look(task, content) for task, content in programs(home)]
    assert len(kept) == 6
    assert [each.checked for each in kept if each] == [each.checked for each in right.values()]

    store = FarStore(bucket, "1")
    there = [entry for share in SHARES for entry in store.entries(share)]
    assert len(there) == 12
    total = sum(size for _, size, _ in there)
    prune(store, total)
    assert sum(1 for share in SHARES for _ in store.entries(share)) == 12
    prune(store, total // 2)
    left = sum(size for share in SHARES for _, size, _ in store.entries(share))
    assert 0 < left <= total // 2


def programs(home: Path) -> list[tuple[Any, str]]:
    import hashlib

    from gclint.folder.find import find
    from gclint.folder.outcome import Task
    from gclint.setup.declare import Options

    return [
        (Task(source, Options()), hashlib.sha256(Path(source.name).read_bytes()).hexdigest())
        for source in find((str(home),)).sources
    ]


def keep_all(cache: Cache, home: Path) -> None:
    from gclint.folder.run import keep, tried

    for task, _ in programs(home):
        assert keep(cache, task, tried(task))


def test_any_address_of_the_library_will_do(tmp_path: Path) -> None:
    """Files by an address: the second run, of a copy elsewhere, works nothing out, in fresh processes as well."""
    home, address = workshop(tmp_path / "jobs", people=("anna",)), f"file://{tmp_path / 'kept'}"
    told: list[str] = []
    cache = cache_of(address, told.append)
    assert told == [f"results, with lines of the programs, are kept at {address}"]
    right = checked(home, cache=cache, cores=1)
    kept = sorted(path.suffix for path in (tmp_path / "kept").rglob("*") if path.is_file())
    assert kept == [".found"] * 3 + [".where"] * 3
    elsewhere = tmp_path / "elsewhere"
    home.rename(elsewhere)
    again = Cache(FarStore(address, "1"))
    assert all(again.look(task, content) for task, content in programs(elsewhere))
    assert [each.kind for each in checked(elsewhere, cache=again, cores=1).values()] == [
        each.kind for each in right.values()
    ]


def test_a_store_that_does_not_answer_costs_a_sentence(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(room, "ANSWER", 0.2)

    class Dead:
        def exists(self, path: str) -> bool:
            time.sleep(5)
            return True

    monkeypatch.setattr(FarStore, "_open", lambda self: (Dead(), "x"))
    told: list[str] = []
    assert cache_of("memory://x", told.append) is None
    assert "does not answer" in told[0]


def test_one_that_fails_again_and_again_is_asked_no_more(monkeypatch: pytest.MonkeyPatch) -> None:
    asked = []

    class Broken:
        def cat_file(self, path: str) -> bytes:
            asked.append(path)
            raise RuntimeError("no")

    monkeypatch.setattr(FarStore, "_open", lambda self: (Broken(), "x"))
    store = FarStore("memory://x", "1")
    assert [store.read(f"aa/{n}") for n in range(20)] == [None] * 20
    assert len(asked) == room.FAULTS


def test_what_is_not_there_is_no_fault(tmp_path: Path) -> None:
    store = FarStore(f"file://{tmp_path}", "1")
    assert [store.read(f"aa/{n}") for n in range(9)] == [None] * 9
    store.write("aa/1", b"x")
    assert store.read("aa/1") == b"x"


def test_two_hosts_write_one_key(tmp_path: Path) -> None:
    """Whatever is read is whole."""
    import threading

    stores = [FolderStore(tmp_path / "r"), FolderStore(tmp_path / "r")]
    data = [b"a" * 300_000, b"b" * 300_000]
    stores[0].write("aa/1", data[0])

    def write(n: int) -> None:
        for _ in range(60):
            stores[n].write("aa/1", data[n])

    threads = [threading.Thread(target=write, args=(n,)) for n in (0, 1)]
    for thread in threads:
        thread.start()
    while any(thread.is_alive() for thread in threads):
        assert stores[0].read("aa/1") in data
    assert [path.name for path in (tmp_path / "r" / "aa").iterdir()] == ["1"]


class Many:
    """A store of so many entries of one size, of which only times are kept; `listed` counts what is told of them."""

    far = False

    def __init__(self, each: int, size: int) -> None:
        self.there = {share: {f"{share}/{n}": 1e9 + n for n in range(each)} for share in SHARES}
        self.size, self.listed = size, 0

    def read(self, name: str) -> bytes | None:
        return None

    def write(self, name: str, data: bytes) -> None:
        raise OSError

    def entries(self, share: str) -> Iterator[tuple[float, int, str]]:
        for name, used in list(self.there[share].items()):
            self.listed += 1
            yield used, self.size, name

    def remove(self, names: list[str]) -> None:
        for name in names:
            del self.there[name[:2]][name]


def test_a_large_store_that_is_not_full_is_not_listed() -> None:
    store = Many(100, 1000)
    prune(store, 100 * 256 * 1000 * 2)
    assert store.listed == 100 * room.LOOKED_INTO


def test_a_large_store_that_is_full_loses_what_is_oldest() -> None:
    store, most = Many(100, 1000), 90 * 256 * 1000
    prune(store, most)
    left = sorted(used - 1e9 for share in store.there.values() for used in share.values())
    assert most * room.KEEP_SHARE - 1000 <= len(left) * 1000 <= most * room.KEEP_SHARE
    assert left[0] == 28
    assert left.count(28) <= 256


@pytest.mark.parametrize(("said", "size"), [("", 512 << 20), ("800MB", 800e6), ("30 GB", 30e9), ("1.5t", 1.5e12)])
def test_the_size_that_is_wanted(said: str, size: float, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("GCLINT_CACHE_SIZE", said)
    assert size_of_cache() == size


@pytest.mark.parametrize("said", ["much", "-1GB", "1" * 30])
def test_a_size_that_is_none(said: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("GCLINT_CACHE_SIZE", said)
    with pytest.raises(Problem, match="is no size"):
        cache_of("none")


@pytest.mark.parametrize("address", ["nothing://x", "s3x://y"])
def test_an_address_that_is_none(address: str) -> None:
    with pytest.raises(Problem, match="cannot be used"):
        cache_of(address)
