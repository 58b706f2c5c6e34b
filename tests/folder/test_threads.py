"""Many threads of one process check while programs and declarations change: every result fits what it was read from.

Each version of each file is known by its digest, and each check tells the digests that it heard. So for every result
there is one right answer, whatever the threads did: that of the same check, alone, over the very versions it heard.
"""

from __future__ import annotations

import hashlib
import random
import subprocess
import sys
import threading
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager
from pathlib import Path

import pytest

from gclint import disk
from gclint.folder.cache import Cache
from gclint.folder.outcome import Outcome, Source, Task
from gclint.folder.run import answer, encoded, tried
from gclint.setup.declare import Options
from gclint.stock_store import StockStore
from tests.folder.shop import JOB, SHOP, program

THREADS, ROUNDS = 6, 8
Versions = dict[str, list[str]]  # texts that a file may have, by its name

CALLER = "G21 G90 G94 G17 G54\nT1 M6\nM3 S18000\nG4 P5\nG0 Z5\nG0 X0 Y0\nG1 Z-1 F200\nM98 P100\nG0 Z5\nM5\nM30\n"
VERSIONS: Versions = {
    "shop.toml": [SHOP, SHOP.replace("flutes = 2", "flutes = 1"), SHOP.replace('"6 mm"', '"3 mm"'), "[machine\n"],
    "job.toml": [JOB, JOB.replace("beech", "cured-epoxy"), JOB.replace('"9 mm"', '"4 mm"'), 'material = "betch"\n'],
    "tray.nc": [program(1, 1800), program(2, 600), program(4, 300)],
    "call.nc": [CALLER, CALLER.replace("Z-1", "Z-3")],
    "o100.nc": ["O100\nG1 X40 F1800\nM99\n", "O100\nG1 X20 F200\nM99\n"],
}


def put(file: Path, text: str) -> None:
    """Write as editors do: a file beside it, renamed over it."""
    beside = file.with_name(f".{file.name}.{threading.get_ident()}")
    beside.write_text(text)
    beside.replace(file)


@contextmanager
def changing(home: Path, versions: Versions) -> Iterator[None]:
    """Within, a thread gives the files other texts, again and again."""
    stop = threading.Event()
    draw = random.Random(7)

    def change() -> None:
        while not stop.wait(0.001):
            name = draw.choice(list(versions))
            put(home / name, draw.choice(versions[name]))

    thread = threading.Thread(target=change)
    thread.start()
    try:
        yield
    finally:
        stop.set()
        thread.join()


def laid(home: Path, versions: Versions) -> Path:
    home.mkdir(exist_ok=True)
    for name, texts in versions.items():
        (home / name).write_text(texts[0])
    return home


class Alone:
    """The answer of a check in a folder where nothing changes, for what another check has heard."""

    def __init__(self, home: Path, apart: Path, versions: Versions) -> None:
        self.home, self.apart, self.versions = home, laid(apart, versions), versions
        self.text_of = {
            (name, hashlib.sha256(text.encode()).hexdigest()): text
            for name, texts in versions.items() for text in texts
        }  # fmt: skip
        self.known: dict[tuple[tuple[str, str], ...], tuple[bytes, set[disk.Question]]] = {}

    def of(self, program: str, content: str, heard: dict[disk.Question, str]) -> tuple[bytes, set[disk.Question]]:
        """(outcome, questions) of `program` with these contents; paths read as in the folder that changes."""
        found = {(program, content)}
        for question, said in heard.items():
            digest = said.partition(" ")[0]
            names = (Path(question[1]).name,) if question[0] == "content" else question[3:]
            found |= {(name, digest) for name in names if (name, digest) in self.text_of}
        key = tuple(sorted(found))
        if key not in self.known:
            for place in found:
                put(self.apart / place[0], self.text_of[place])
            done = tried(Task(Source(str(self.apart / program)), Options()))
            as_here = [tuple(part.replace(str(self.apart), str(self.home)) for part in each) for each in done.heard]
            said_here = encoded(done.outcome).replace(str(self.apart).encode(), str(self.home).encode())
            self.known[key] = said_here, set(as_here)
        return self.known[key]


def test_every_result_fits_what_it_was_read_from_and_no_question_is_lost(tmp_path: Path) -> None:
    home = laid(tmp_path / "shared", VERSIONS)
    store = StockStore()
    tasks = [Task(Source(str(home / name)), Options()) for name in ("tray.nc", "call.nc")] * (THREADS * ROUNDS // 2)
    with changing(home, VERSIONS), ThreadPoolExecutor(THREADS) as threads:
        made = list(threads.map(lambda task: tried(task, store), tasks))
    alone = Alone(home, tmp_path / "still", VERSIONS)
    kinds, materials = set(), set()
    for task, done in zip(tasks, made):
        if disk.CHANGED in done.heard.values():  # read twice, and changed between: such a result is never kept
            continue
        assert done.content is not None
        said, asked = alone.of(Path(task.source.name).name, done.content, done.heard)
        assert encoded(done.outcome) == said
        assert set(done.heard) == asked
        kinds.add(done.outcome.kind)
        materials |= set(done.outcome.material_cautions)
    assert kinds == {"checked", "problem"}  # the files did change under them
    assert len(alone.known) > 5


@pytest.mark.slow
def test_no_kept_result_is_stale(tmp_path: Path) -> None:
    """Threads keep what they find while files change; then each kept result is that of the files as they stand."""
    home, place = laid(tmp_path / "shared", VERSIONS), tmp_path / "cache"
    cache = Cache(place)
    tasks = [Task(Source(str(home / name)), Options()) for name in ("tray.nc", "call.nc")]
    used = 0
    for _ in range(3):
        with changing(home, VERSIONS), ThreadPoolExecutor(THREADS) as threads:
            list(threads.map(lambda task: answer(cache, (), task), tasks * THREADS))
        for number in range(8):
            draw = random.Random(number)
            for name, texts in VERSIONS.items():
                put(home / name, draw.choice(texts))
            for task in tasks:
                now = Cache(place)
                content = hashlib.sha256(Path(task.source.name).read_bytes()).hexdigest()
                outcome: Outcome | None = now.look(task, content)
                if outcome is not None:
                    assert encoded(outcome) == encoded(tried(task).outcome)
                    used += 1
    assert used
    assert not list(place.rglob("*.new"))


def test_threads_that_write_one_key_all_keep_it(tmp_path: Path) -> None:
    home = laid(tmp_path / "shared", VERSIONS)
    cache, task = Cache(tmp_path / "cache"), Task(Source(str(home / "tray.nc")), Options())
    done = tried(task)
    assert done.content is not None
    together = threading.Barrier(THREADS, timeout=20)

    def keep(_: int) -> str:
        together.wait()
        return cache.keep(task, done.content or "", done.heard, encoded(done.outcome))

    with ThreadPoolExecutor(THREADS) as threads:
        states = set(threads.map(keep, range(THREADS)))
    assert len(states) == 1
    assert "" not in states
    again = cache.look(task, done.content)
    assert again is not None
    assert encoded(again) == encoded(done.outcome)


CHAIN = {
    "shop.toml": [SHOP],
    "job.toml": ['program = ["rough.nc", "finish.nc"]\n' + JOB, 'program = "finish.nc"\n' + JOB],
    "rough.nc": [program(1, 1800), program(3, 900)],
    "finish.nc": [program(4, 600), program(5, 1200)],
}


def test_the_stock_between_programs_is_that_of_the_programs_as_they_were_read(tmp_path: Path) -> None:
    home = laid(tmp_path / "shared", CHAIN)
    store = StockStore()
    tasks = [Task(Source(str(home / "finish.nc")), Options())] * (THREADS * ROUNDS)
    with changing(home, CHAIN), ThreadPoolExecutor(THREADS) as threads:
        made = list(threads.map(lambda task: tried(task, store), tasks))
    alone = Alone(home, tmp_path / "still", CHAIN)
    compared = 0
    for done in made:
        if disk.CHANGED not in done.heard.values() and done.content is not None:
            said, asked = alone.of("finish.nc", done.content, done.heard)
            assert encoded(done.outcome) == said
            assert set(done.heard) == asked
            compared += 1
    assert compared > ROUNDS
    assert len(alone.known) > 2


FIRST = """
import sys, threading
import gclint
sys.setswitchinterval(1e-6)
together, told = threading.Barrier(6), []
def check():
    together.wait()
    told.append(gclint.check(sys.argv[1]))
threads = [threading.Thread(target=check) for _ in range(6)]
[thread.start() for thread in threads], [thread.join() for thread in threads]
assert len(told) == 6 and all(each == told[0] for each in told) and told[0].tools
"""


def test_the_first_checks_of_a_process_may_come_from_many_threads(tmp_path: Path) -> None:
    """What is loaded and worked out once per process is then asked for by all of them at once."""
    home = laid(tmp_path / "shared", VERSIONS)
    for _ in range(3):
        made = subprocess.run([sys.executable, "-c", FIRST, home / "tray.nc"], capture_output=True, text=True)
        assert made.returncode == 0, made.stderr


def test_a_wrong_answer_would_be_noticed(tmp_path: Path) -> None:
    home = laid(tmp_path / "shared", VERSIONS)
    done = tried(Task(Source(str(home / "tray.nc")), Options()))
    alone = Alone(home, tmp_path / "still", VERSIONS)
    assert done.content is not None
    assert alone.of("tray.nc", done.content, done.heard) == (encoded(done.outcome), set(done.heard))
    put(home / "shop.toml", VERSIONS["shop.toml"][1])
    other = tried(Task(Source(str(home / "tray.nc")), Options()))
    assert alone.of("tray.nc", done.content, done.heard)[0] != encoded(other.outcome)
    with pytest.raises(KeyError):
        alone.text_of["tray.nc", hashlib.sha256(b"no version").hexdigest()]
