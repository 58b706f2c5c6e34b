"""Whole processes: start-up, a 500-line check, and the check of a finishing program against pygcode's parse of it.

python tests/bench/bench_whole.py [--lines N] [--runs N] [--full]

Every figure is a ratio of two things timed in this run. Prints the floor beside each; exits with 1 where one is missed.
"""

from __future__ import annotations

import argparse
import os
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
from make_program import finishing_program

GCLINT = [sys.executable, "-c", "from gclint.cli.main import main; main()"]
TOOL = ["--tool", "1: ball 6mm 2fl up-cut", "--material", "beech"]
FINE = ["--tool", "1: ball 3.2mm 2fl up-cut", "--material", "beech"]  # a cell is a 32nd of the tool: 0.1 mm
FLAT = ["--tool", "1: flat 3.2mm 2fl up-cut", "--material", "beech"]  # on a wavy floor: the worst case of the stock
PARSED = 20_000  # lines of each part that pygcode parses unless --full


def once(command: list[str]) -> tuple[float, float]:
    """(seconds, peak memory in MB) of one process that must not fail."""
    begin = time.perf_counter()
    process = subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE)
    assert process.stderr is not None
    said = process.stderr.read()
    _, status, usage = os.wait4(process.pid, 0)
    seconds = time.perf_counter() - begin
    process.returncode = os.waitstatus_to_exitcode(status)
    if process.returncode not in (0, 1):
        raise SystemExit(f"{' '.join(command)[:200]} ended with {process.returncode}: {said.decode()[-500:]}")
    return seconds, usage.ru_maxrss / 1024


def alternately(a: list[str], b: list[str], runs: int) -> tuple[float, float]:
    """Medians of two commands run in turn, so that a busy machine slows both."""
    once(a), once(b)
    pairs = [(once(a)[0], once(b)[0]) for _ in range(runs)]
    return statistics.median(p[0] for p in pairs), statistics.median(p[1] for p in pairs)


def loaded(command: list[str]) -> set[str]:
    """The modules a Python process imports."""
    told = subprocess.run([command[0], "-X", "importtime", *command[1:]], capture_output=True, text=True, check=False)
    return {line.rpartition("|")[2].strip() for line in told.stderr.splitlines()}


def pygcode_seconds(data: bytes, lines: int, full: bool) -> tuple[float, str]:
    """Time pygcode takes to parse these lines and do nothing else, and how that was got."""
    import warnings

    warnings.simplefilter("ignore")
    from pygcode import Line

    def parse(part: list[str]) -> float:
        begin = time.perf_counter()
        for line in part:
            Line(line)
        return time.perf_counter() - begin

    text = data.decode().splitlines()
    if full or lines <= PARSED:
        return parse(text), "measured on all lines"
    firsts = [n * (lines - PARSED) // 4 for n in range(5)]
    median = statistics.median(parse(text[first : first + PARSED]) for first in firsts)
    return median * lines / PARSED, f"median of 5 parts of {PARSED:,} lines, scaled linearly; see --full"


def report(what: str, ratio: float, floor: float, at_least: bool, detail: str) -> bool:
    met = ratio >= floor if at_least else ratio <= floor
    bound = f"at {'least' if at_least else 'most'} {floor:g} x"
    print(f"{what}\n    {ratio:.2f} x   floor: {bound}   {'met' if met else 'MISSED'}   ({detail})", flush=True)
    return met


def field(lines: int) -> str:
    """--stock for the finishing program: its square field with a margin, 12 mm thick."""
    import math

    side = math.isqrt(lines) * 0.2 + 8
    return f"{side:.1f} x {side:.1f} x 12 mm at -4 -4"


def main() -> int:
    ask = argparse.ArgumentParser(description=(__doc__ or "").split("\n")[0])
    ask.add_argument("--lines", type=int, default=1_000_000)
    ask.add_argument("--runs", type=int, default=7)
    ask.add_argument("--full", action="store_true", help="let pygcode parse every line (half a minute or more)")
    options = ask.parse_args()
    met = []
    with tempfile.TemporaryDirectory() as folder:
        small = Path(folder, "small.nc")
        small.write_bytes(finishing_program(500))
        check_small = [*GCLINT, "check", str(small), *TOOL, "--stock", field(500)]
        if "lark" in loaded(check_small):
            raise SystemExit("gclint/rules_compiled.json is missing or stale: run  pip install -e .  first")
        imports = [sys.executable, "-c", "import numpy, click, rich.console, lark"]
        ours, theirs = alternately(check_small, imports, options.runs)
        detail = f"{ours * 1000:.0f} ms, imports {theirs * 1000:.0f} ms"
        what = "500 lines, whole process, to importing numpy, click, rich.console, lark"
        met.append(report(what, ours / theirs, 1.4, False, detail))

        version, nothing = alternately([*GCLINT, "--version"], [sys.executable, "-c", "pass"], options.runs)
        allowed = 3 * nothing + 0.06
        detail = f"{version * 1000:.0f} ms, python -c pass {nothing * 1000:.0f} ms"
        met.append(report("--version, to 3 x python -c pass plus 60 ms", version / allowed, 1, False, detail))

        n = options.lines
        large, twice = Path(folder, "large.nc"), Path(folder, "twice.nc")
        data = finishing_program(n)
        large.write_bytes(data)
        twice.write_bytes(finishing_program(2 * n))
        parsed, how = pygcode_seconds(data, n, options.full)
        print(f"pygcode parses {n:,} lines in {parsed:.1f} s ({how})", flush=True)
        sizes = (TOOL, "6 mm ball", "0.19 mm"), (FLAT, "3.2 mm flat tool", "0.1 mm"), (FINE, "3.2 mm ball", "0.1 mm")
        for tool, size, cells in sizes:
            check_large = [*GCLINT, "check", str(large), *tool, "--stock", field(n)]
            once(check_large)
            seconds, peak = statistics.median_low(once(check_large) for _ in range(3))
            what = f"that parse, to the full check as a whole process with a {size}, cells of {cells}"
            met.append(report(what, parsed / seconds, 12, True, f"{seconds:.2f} s"))
            met.append(report("peak memory of that check, to 1.5 GB", peak / 1536, 1, False, f"{peak:.0f} MB"))

        check_twice = [*GCLINT, "check", str(twice), *FINE, "--stock", field(2 * n)]
        double, peak = min(once(check_twice) for _ in range(2))
        detail = f"{double:.2f} s to {seconds:.2f} s, peak {peak:.0f} MB"
        met.append(report(f"{2 * n:,} lines, to {n:,} lines", double / seconds, 2.2, False, detail))
    return 0 if all(met) else 1


if __name__ == "__main__":
    raise SystemExit(main())
