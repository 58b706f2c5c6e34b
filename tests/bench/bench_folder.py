"""A folder of 2,000 programs of mixed size: one core against both, the first run against the second, peak memory.

python tests/bench/bench_folder.py [--programs N] [--pairs N] [--runs N]

Programs, declarations and cache are made for this run in a temporary folder; every figure is a ratio of whole processes
timed in this run. The floors: both cores at least 1.7 x one; a second run with nothing changed at least 20 x faster.
"""

from __future__ import annotations

import argparse
import os
import random
import subprocess
import sys
import tempfile
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))
sys.path.insert(0, str(Path(__file__).parent))
from bench_whole import report
from make_program import finishing_program

SHOP = """[machine]
rapid = { x = "5000 mm/min", y = "5000 mm/min", z = "2000 mm/min" }
acceleration = { x = "200 mm/s^2", y = "200 mm/s^2", z = "150 mm/s^2" }
[spindle]
kind = "commanded"
range = [8000, 24000]
[[tool]]
number = 1
shape = "ball"
diameter = "6 mm"
flutes = 2
[[tool]]
number = 2
shape = "flat"
diameter = "6 mm"
flutes = 2
helix = "up-cut"
"""
JOB = """material = "{material}"
z_zero = "stock-top"
[stock]
size = ["260 mm", "200 mm", "12 mm"]
corner = ["-10 mm", "-10 mm"]
"""
MEASURED = """import resource, subprocess, sys
done = subprocess.run(sys.argv[1:], stdout=subprocess.PIPE)
sys.stdout.buffer.write(done.stdout)
sys.stderr.write(str(resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss))
sys.exit(done.returncode)
"""
MATERIALS = ("beech", "birch-plywood", "mdf", "cured-epoxy")
PEOPLE = 40
SIZES = ((0.7, 30, 200), (0.25, 200, 900), (0.05, 900, 3000))  # share of the programs, lines from and to


def pocket(chance: random.Random, lines: int) -> bytes:
    """Laps of a pocket, deeper and deeper; some plunge, some feeds are too slow."""
    feed, width = chance.choice((300, 900, 1800, 2600)), chance.uniform(20, 120)
    out = ["(tray, invented)", "G21 G90 G94 G17 G54", "T2 M6", "S18000 M3", "G4 P4", "G0 Z5", "G0 X0 Y0"]
    depth, inset = 0.0, 0.0
    while len(out) < lines - 4:
        if inset * 2 >= width or not depth:
            depth, inset = depth + 0.8, 0.0
            if depth > 11:
                break
            out += ["G0 Z5", "G0 X0 Y0", f"G1 Z{-depth:.3f} F200"]
        a, b = inset, width - inset
        out += [f"G1 X{a:.3f} Y{a:.3f} F{feed}", f"X{b:.3f}", f"Y{b:.3f}", f"X{a:.3f}", f"Y{a:.3f}"]
        inset += 2.5
    return "\n".join([*out, "G0 Z5", "M5", "M30", ""]).encode("ascii")


def make(home: Path, programs: int) -> int:
    """Write the folder; its programs' bytes."""
    chance = random.Random(6)
    home.mkdir()
    (home / "shop.toml").write_text(SHOP)
    size = 0
    for number in range(programs):
        person = home / f"person{number % PEOPLE:02d}"
        if not person.exists():
            person.mkdir()
            (person / "job.toml").write_text(JOB.format(material=MATERIALS[number % len(MATERIALS)]))
        _, low, high = chance.choices(SIZES, [share for share, _, _ in SIZES])[0]
        lines = chance.randrange(low, high)
        data = finishing_program(max(lines, 40)) if number % 3 == 0 else pocket(chance, lines)
        (person / f"part{number:04d}.nc").write_bytes(data + f"(number {number})\n".encode())
        size += len(data)
    return size


def whole(home: Path, cache: str, workers: int | None = None) -> tuple[float, float, bytes]:
    """(seconds, peak MB of the largest process, report) of one run, a whole process."""
    more = [] if workers is None else ["--workers", str(workers)]
    command = [sys.executable, "-m", "gclint", "check", str(home), "--cache", cache, *more]
    begun = time.perf_counter()
    done = subprocess.run(
        [sys.executable, "-c", MEASURED, *command], capture_output=True, check=False, cwd=Path(__file__).parents[2]
    )
    seconds = time.perf_counter() - begun
    if done.returncode not in (0, 1):
        sys.exit(f"the run ended with {done.returncode}: {done.stderr.decode()[-500:]}")
    return seconds, int(done.stderr.split()[-1]) / 1024, done.stdout


def main() -> int:
    ask = argparse.ArgumentParser(description=(__doc__ or "").split("\n")[0])
    ask.add_argument("--programs", type=int, default=2_000)
    ask.add_argument("--runs", type=int, default=3)
    ask.add_argument("--pairs", type=int, default=1, help="runs on one and on both cores, in turn; the best of each")
    options, _ = ask.parse_known_args()
    cores = len(os.sched_getaffinity(0))
    with tempfile.TemporaryDirectory() as temporary:
        home, cache = Path(temporary) / "jobs", str(Path(temporary) / "cache")
        size = make(home, options.programs)
        told = f"{options.programs:,} programs, {size / 1e6:.1f} MB"
        pairs = [(whole(home, "none", 1), whole(home, "none", 2)) for _ in range(options.pairs)]
        one, both = (min(pair[n][0] for pair in pairs) for n in (0, 1))
        said, same = pairs[0][0][2], pairs[0][1][2]
        first, memory, _ = whole(home, cache)
        again = [whole(home, cache) for _ in range(options.runs)]
        second = min(seconds for seconds, _, _ in again)
        if not (said == same == again[0][2]):
            sys.exit("the reports differ")
        largest = max(home.rglob("*.nc"), key=lambda path: path.stat().st_size)
        _, alone, _ = whole(largest, "none")
    detail = f"{one:.1f} s and {both:.1f} s on {cores} cores"
    met = report(f"{told}: both cores against one", one / both, 1.7, True, detail)
    met &= report(
        "the second run, with nothing changed, against the first", first / second, 20, True,
        f"{first:.1f} s and {second * 1000:.0f} ms",
    )
    met &= report(
        "peak memory of a process against that of the largest program alone", memory / alone, 1.5, False,
        f"{memory:.0f} MB and {alone:.0f} MB",
    )
    return 0 if met else 1


if __name__ == "__main__":
    raise SystemExit(main())
