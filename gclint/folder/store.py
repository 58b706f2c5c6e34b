"""Where results are kept: a folder, or a place that a maintained file-system library reaches (an object store, SFTP).

A store reads and writes small files by name, and forgets what was used longest ago. It promises nothing else: a file
may be missing, cut off or of another host, and whoever reads it finds that out by its checksum.
"""

from __future__ import annotations

import os
import random
import threading
import time
from array import array
from collections.abc import Callable, Iterator
from contextlib import suppress
from datetime import datetime
from pathlib import Path
from typing import Any, Protocol, TypeVar

from gclint.problem import Problem

SHARES = tuple(f"{n:02x}" for n in range(256))  # folders that the entries of a store are spread over, evenly
LOOKED_INTO = 8  # of them, to see whether there is anything to prune
FEW = 20_000  # entries that are simply listed
KEEP_SHARE = 0.8  # of the most is left after pruning
FULL = 0.9  # of the most, from where on an estimate is looked at closely
USED_AGAIN = 24 * 3600.0  # s after which a use is noted in an entry's time, so that it is pruned later
LEFT_OVER = 3600.0  # s after which a file that nobody renamed is removed
NEW = ".new"
ANSWER = 30.0  # s that a store elsewhere may take for one file
FAULTS = 5  # in a row after which it is asked no more

Entry = tuple[float, int, str]  # time of the last use as far as it is known, bytes, name
T = TypeVar("T")


class Store(Protocol):
    """`far`: each question costs a way over a network, so several are asked at once."""

    far: bool

    def read(self, name: str) -> bytes | None:
        """The file of that name, "ab/cdef.kind"; None where it is not there or cannot be read."""
        ...

    def write(self, name: str, data: bytes) -> None:
        """Raises OSError. Others may write the same name now: one of them is whole at every moment."""
        ...

    def entries(self, share: str) -> Iterator[Entry]:
        """Those of one of SHARES. Raises OSError."""
        ...

    def remove(self, names: list[str]) -> None:
        """What cannot be removed stays."""
        ...


class FolderStore:
    """Files below a folder, each written beside and renamed."""

    far = False

    def __init__(self, folder: Path) -> None:
        self.folder = folder

    def read(self, name: str) -> bytes | None:
        path = f"{self.folder}/{name}"
        try:
            with Path(path).open("rb", buffering=0) as file:
                data = file.read()
                used = os.fstat(file.fileno()).st_mtime
        except OSError:
            return None
        if time.time() - used > USED_AGAIN:
            with suppress(OSError):
                os.utime(path)
        return data

    def write(self, name: str, data: bytes) -> None:
        path = f"{self.folder}/{name}"
        beside = f"{path}.{os.urandom(8).hex()}{NEW}"  # others may write the same entry now, on this host or another
        try:
            handle = os.open(beside, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
        except FileNotFoundError:
            Path(path).parent.mkdir(mode=0o700, parents=True, exist_ok=True)
            handle = os.open(beside, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
        try:
            with os.fdopen(handle, "wb") as file:
                file.write(data)
            Path(beside).replace(path)
        except BaseException:
            Path(beside).unlink(missing_ok=True)
            raise

    def entries(self, share: str) -> Iterator[Entry]:
        try:
            there = os.scandir(f"{self.folder}/{share}")
        except FileNotFoundError:
            return
        with there:
            for entry in there:
                with suppress(FileNotFoundError):  # another run prunes as well
                    state = entry.stat(follow_symlinks=False)
                    if not entry.name.endswith(NEW):
                        yield state.st_mtime, state.st_size, f"{share}/{entry.name}"
                    elif time.time() - state.st_mtime > LEFT_OVER:
                        Path(entry.path).unlink(missing_ok=True)

    def remove(self, names: list[str]) -> None:
        for name in names:
            with suppress(OSError):
                Path(f"{self.folder}/{name}").unlink(missing_ok=True)


class FarStore:
    """Files at an address that fsspec knows. One that does not answer is asked no more: a slow run, not a failed one.

    What was written longest ago is pruned first: such places seldom tell when a file was read.
    """

    far = True

    def __init__(self, address: str, form: str) -> None:
        """Raises Problem where the address cannot be used at all."""
        self.address, self.form = address, form
        self.faults = 0
        self.opened: tuple[int, Any, str] | None = None
        self._open()

    def __getstate__(self) -> tuple[str, str]:
        return self.address, self.form

    def __setstate__(self, state: tuple[str, str]) -> None:
        self.__init__(*state)  # type: ignore[misc]  # a connection goes to no other process

    def _open(self) -> tuple[Any, str]:
        if self.opened is None or self.opened[0] != os.getpid():
            try:
                import fsspec
            except ImportError:
                says = "a cache at an address needs more:  pip install 'gclint[store]'"
                raise Problem(says, self.address) from None
            try:
                system, path = fsspec.core.url_to_fs(self.address)
            except (ImportError, ValueError) as problem:
                raise Problem(f"this address of a cache cannot be used: {problem}", self.address) from None
            self.opened = os.getpid(), system, f"{str(path).rstrip('/')}/results-{self.form}"
        return self.opened[1:]

    def read(self, name: str) -> bytes | None:
        system, root = self._open()
        try:
            return self._asked(lambda: bytes(system.cat_file(f"{root}/{name}")))
        except OSError:
            return None

    def write(self, name: str, data: bytes) -> None:
        system, root = self._open()

        def put() -> None:
            try:
                system.pipe_file(f"{root}/{name}", data)
            except FileNotFoundError:  # of those that have folders
                system.makedirs(f"{root}/{name}".rpartition("/")[0], exist_ok=True)
                system.pipe_file(f"{root}/{name}", data)

        self._asked(put)

    def entries(self, share: str) -> Iterator[Entry]:
        system, root = self._open()
        try:
            found = self._asked(lambda: system.find(f"{root}/{share}", detail=True))
        except FileNotFoundError:
            return
        for path, about in found.items():
            yield _time_of(about), int(about.get("size") or 0), f"{share}/{path.rpartition('/')[2]}"

    def remove(self, names: list[str]) -> None:
        system, root = self._open()
        for first in range(0, len(names), 500):
            some = [f"{root}/{name}" for name in names[first : first + 500]]
            with suppress(OSError):
                self._asked(lambda some=some: system.rm(some))  # type: ignore[misc]

    def reaches(self) -> bool:
        """Whether it answers at all."""
        system, root = self._open()
        try:
            self._asked(lambda: system.exists(root))
        except OSError:
            return False
        return True

    def _asked(self, question: Callable[[], T]) -> T:
        """The answer. Raises OSError for whatever goes wrong, FileNotFoundError only where there is no such file."""
        if self.faults >= FAULTS:
            raise OSError(f"{self.address} is asked no more")
        said: list[T] = []
        wrong: list[BaseException] = []

        def ask() -> None:
            try:
                said.append(question())
            except BaseException as fault:  # each place has its own classes for what goes wrong
                wrong.append(fault)

        thread = threading.Thread(target=ask, daemon=True)
        thread.start()
        thread.join(ANSWER)
        if said:
            self.faults = 0
            return said[0]
        if wrong and isinstance(wrong[0], FileNotFoundError):
            self.faults = 0
            raise wrong[0]
        self.faults += 1
        raise OSError(f"{self.address}: {wrong[0] if wrong else 'no answer'}")


def _time_of(about: dict[str, Any]) -> float:
    """When a file was written, s; 0 where its place does not tell."""
    for key in ("LastModified", "mtime", "last_modified", "updated", "created"):
        told = about.get(key)
        if isinstance(told, (int, float)):
            return float(told)
        if isinstance(told, datetime):
            return told.timestamp()
    return 0.0


def prune(store: Store, most: int) -> None:
    """Remove what was used longest ago where a store has outgrown `most` bytes.

    Of a store that is far from full only some shares are listed. Of a full one every entry's time and size are held at
    once, 16 bytes each: 50 MB for 3,000,000 entries, which 1,000,000 programs have.
    """
    try:
        if not _may_be_full(store, most):
            return
        times, sizes = array("d"), array("q")
        for share in SHARES:
            for used, size, _ in store.entries(share):
                times.append(used)
                sizes.append(size)
        total = sum(sizes)
        if total <= most:
            return
        import numpy as np

        order = np.argsort(np.frombuffer(times), kind="stable")
        left = total - np.cumsum(np.frombuffer(sizes, dtype=np.int64)[order])
        cut = int(np.searchsorted(-left, -most * KEEP_SHARE))
        last, excess = times[int(order[min(cut, len(order) - 1)])], total - int(most * KEEP_SHARE)
        for at_last in (False, True):  # those of the very time of the last only as far as need be
            for share in SHARES:
                gone = []
                for used, size, name in store.entries(share):
                    if excess > 0 and (used == last if at_last else used < last):
                        gone.append(name)
                        excess -= size
                store.remove(gone)
    except OSError:
        pass


def _may_be_full(store: Store, most: int) -> bool:
    """By some shares, drawn anew each time; names are digests, so that one share is like another."""
    counts = sizes = 0
    for share in random.sample(SHARES, LOOKED_INTO):
        for _, size, _ in store.entries(share):
            counts += 1
            sizes += size
    times = len(SHARES) / LOOKED_INTO
    return counts * times < FEW or sizes * times > most * FULL
