"""What the fuzzer feeds: one function per reader, each over bytes. Run by run.py, which also says how.

A Problem is an answer. Anything else that is raised, a finding internal-error, and a file opened outside the folder of
the job (or gclint's own) is a failure.
"""

from __future__ import annotations

import importlib
import os
import pkgutil
import re
import shutil
import sys
import sysconfig
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

import atheris

SKIPPED = ("__main__", "check_wheel")
with atheris.instrument_imports(include=["gclint"]):
    import gclint

    for module in pkgutil.walk_packages(gclint.__path__, "gclint."):
        if not module.name.endswith(SKIPPED):
            importlib.import_module(module.name)

    from gclint.check import folder_of, run
    from gclint.motion.feed_planning import plan_feed
    from gclint.motion.interpret import interpret
    from gclint.motion.second_reader import read_again
    from gclint.packs.load import compile_pack
    from gclint.problem import Problem
    from gclint.program.read import read
    from gclint.rule_proof import unproved
    from gclint.setup.declare import Declared, Options, declare
    from gclint.setup.resolve import limits_of, shop_setup, with_program
    from gclint.shipped import folder
    from gclint.tables.setup import Limits


LIMITS = Limits(blocks=100_000, calls=100, moves=50_000)  # less than usual: sanitized kernels are several times slower


def limited(declared: Declared) -> Limits:
    """What a shop declares is read and checked, and then not used."""
    limits_of(declared)
    return LIMITS


gclint.setup.resolve.limits_of = limited
TOOLS = ("1: flat 6mm 2fl up-cut", "2: v 12.7mm 60deg 1fl", "3: drill 3mm")
STOCK = "60 x 20 x 9 mm at -10 -10"
CARDS = (None, *(folder() / "controllers").glob("*.toml"))
# A file of the job target begins with a line like this; other names are not written.
FILE = re.compile(rb"^=== ((?:job|shop|house|material|controller)\.toml|(?:part|sub)\.nc|options)\n", re.MULTILINE)
MOST_SECONDS = 5.0  # of processor time for one input, on kernels that are several times slower than the shipped ones
MOST_EXAMPLES = 4  # of a pack; each is a whole check

home = Path(tempfile.mkdtemp(prefix="gclint-fuzz-"))
job_folder = home / "jobs" / "job"
MAY_OPEN = (
    str(home), *(os.path.realpath(path) for path in sys.path if path), str(Path(sysconfig.get_paths()["stdlib"])),
    sys.prefix, str(folder()), "/dev/null", "/proc/self", "/sys/",
)  # fmt: skip
strayed: list[str] = []
slowest = [0.0]


def told(problem: Problem) -> None:
    """A Problem is one sentence."""
    assert "\n" not in str(problem), str(problem)


def watch(event: str, args: tuple[object, ...]) -> None:
    """An audit hook: keeps the name of every file opened where nothing should be opened."""
    if event == "open" and isinstance(args[0], str | bytes):
        name = os.path.realpath(os.fsdecode(args[0]))
        if not name.startswith(MAY_OPEN) and not name.startswith(tempfile.gettempdir()):
            strayed.append(name)


def judged(data: bytes, options: Options, path: str | None) -> None:
    try:
        done = run(data, "fuzz.nc", options, path)
    except Problem as problem:
        told(problem)
        return
    assert not done.failed, done.checked.findings


def program(data: bytes) -> None:
    """Reading, following and timing, with each controller card in turn; now and then the second reader as well."""
    card = CARDS[len(data) % len(CARDS)]
    shop = None
    if card is not None:
        shop = str(home / "shop.toml")
        Path(shop).write_text(f'[machine]\ncontroller = "{card.stem}"\n')
    path = str(job_folder / "fuzz.nc")
    try:
        declared = declare(Options(shop=shop), path)
        text = read(data, "fuzz.nc")
        setup = shop_setup(declared)
        motion = interpret(text, setup.controller, limited(declared), folder_of(path))
        plan_feed(motion, with_program(setup, declared, text, motion))
    except Problem as problem:
        told(problem)
        return
    if len(data) % 5 == 0:
        read_again(text, motion)


def check(data: bytes) -> None:
    """The whole way, with a blank, a material and tools."""
    judged(data, Options("beech", TOOLS, STOCK), str(job_folder / "fuzz.nc"))


def job(data: bytes) -> None:
    """A folder of a job: its program, its declarations, own cards and packs, and what stands on the command line."""
    parts = FILE.split(data)
    files = dict(zip(parts[1::2], parts[2::2]))
    for name, content in files.items():
        (job_folder / os.fsdecode(name)).write_bytes(content)
    words = files.get(b"options", b"").decode("utf-8", "replace").split("\n")
    given = [word or None for word in (words + [""] * 4)[:4]]
    options = Options(given[0], tuple(t for t in given[1:3] if t), given[3])
    path = str(job_folder / "part.nc")
    judged(files.get(b"part.nc", b"G21 G90 G1 X1 F100\n"), options, path)
    for name in files:
        (job_folder / os.fsdecode(name)).unlink()


def pack(data: bytes) -> None:
    """A rule pack: read, typed, and proved by its own examples."""
    try:
        loaded = compile_pack(data.decode("utf-8", "replace"), "house.toml")
        for rule in loaded.rules[:MOST_EXAMPLES]:
            unproved(loaded, rule)
    except Problem as problem:
        told(problem)


TARGETS: dict[str, Callable[[bytes], None]] = {"program": program, "check": check, "job": job, "pack": pack}


def main() -> None:
    target = TARGETS[sys.argv.pop(1)]
    job_folder.mkdir(parents=True)
    os.chdir(job_folder)

    def one(data: bytes) -> None:
        strayed.clear()
        begin = time.process_time()
        target(data)
        took = time.process_time() - begin
        assert took < MOST_SECONDS, f"took {took:.1f} s of processor time"
        assert not strayed, f"opened outside the job's folder: {strayed}"
        if took > slowest[0]:
            slowest[0] = took
            print(f"slowest: {took:.2f} s", flush=True)

    sys.addaudithook(watch)
    atheris.Setup(sys.argv, one)
    try:
        atheris.Fuzz()
    finally:
        shutil.rmtree(home, ignore_errors=True)


if __name__ == "__main__":
    main()
