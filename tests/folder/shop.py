"""Folders of programs to check: the Lowtide workshop's shared drive, invented."""

from __future__ import annotations

from pathlib import Path

from gclint.check import check
from gclint.folder.cache import Cache
from gclint.folder.find import find
from gclint.folder.outcome import Outcome, Task
from gclint.folder.run import outcomes
from gclint.setup.declare import Options

PROGRAM = """G21 G90 G94 G17 G54
T1 M6
M3 S18000
G4 P5
G0 Z5
G0 X0 Y0
G1 Z-{depth} F200
G1 X40 F{feed}
G0 Z5
M5
M30
"""
SHOP = """[spindle]
kind = "commanded"
range = [8000, 24000]
[[tool]]
number = 1
shape = "flat"
diameter = "6 mm"
flutes = 2
helix = "up-cut"
"""
JOB = """material = "beech"
z_zero = "stock-top"
[stock]
size = ["60 mm", "20 mm", "9 mm"]
corner = ["-10 mm", "-10 mm"]
"""
PRINTER = "M104 S200\nG28\n" + "G1 X1 Y1 E0.5\n" * 5


def program(depth: float = 1, feed: int = 1800) -> str:
    return PROGRAM.format(depth=depth, feed=feed)


def workshop(home: Path, people: tuple[str, ...] = ("anna", "ben"), each: int = 3) -> Path:
    """A folder with a shop file, and for each person a job and some programs that differ."""
    home.mkdir(parents=True, exist_ok=True)
    (home / "shop.toml").write_text(SHOP)
    for number, person in enumerate(people):
        (home / person).mkdir()
        (home / person / "job.toml").write_text(JOB)
        for n in range(each):
            (home / person / f"part{n}.nc").write_text(program(1 + n, 900 + 300 * n + number))
    return home


def checked(
    *named: Path | str, cache: Cache | None = None, cores: int = 2, seconds: float | None = None,
    options: Options | None = None,
) -> dict[str, Outcome]:
    """Outcomes by the last two parts of their paths."""
    found = find(tuple(str(name) for name in named))
    tasks = [Task(source, options or Options()) for source in found.sources]
    made = outcomes(tasks, cache, cores, seconds)
    return {"/".join(Path(task.source.name).parts[-2:]): outcome for task, outcome in zip(tasks, made)}


check(program().encode(), "warm.nc", Options())  # workers are forks: what is loaded now need not be loaded by each
