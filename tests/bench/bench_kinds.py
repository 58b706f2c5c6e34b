"""Kinds of program against plain lines: arcs, G41, expressions, many lines, many turns, many keep-outs; memory of each.

python tests/bench/bench_kinds.py [--lines N] [--large N] [--runs N]

Every figure is a ratio of the processor time of two whole processes of this run, which a busy machine disturbs least.
"""

from __future__ import annotations

import argparse
import math
import subprocess
import sys
import tempfile
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
from bench_whole import GCLINT, field, report
from make_program import FOOTER, HEADER, STEP, finishing_program, height

TOOL = ["--tool", "1: ball 6mm 2fl up-cut", "--material", "beech"]
BLANK = "240 x 240 x 12 mm at -120 -120"


MEASURED = """import resource, subprocess, sys
done = subprocess.run(sys.argv[1:], stdout=subprocess.DEVNULL)
spent = resource.getrusage(resource.RUSAGE_CHILDREN)
print(spent.ru_utime + spent.ru_stime, spent.ru_maxrss / 1024)
sys.exit(done.returncode)
"""


def cost(command: list[str]) -> tuple[float, float]:
    """(processor seconds, peak memory in MB) of one process that must not fail; started by one that is small itself."""
    done = subprocess.run([sys.executable, "-c", MEASURED, *command], capture_output=True, text=True, check=False)
    if done.returncode not in (0, 1):
        raise SystemExit(f"{' '.join(command)[:200]} ended with {done.returncode}: {done.stderr[-500:]}")
    seconds, memory = done.stdout.split()
    return float(seconds), float(memory)


def framed(lines: list[str], before: str = "") -> bytes:
    return (HEADER.format(first=-1.0) + before + "".join(lines) + "G1 Z9\nG40 X0 Y0\n" + FOOTER).encode("ascii")


def rows(points: int) -> list[tuple[float, float, bool]]:
    """A raster: x, y, whether the row runs backwards."""
    per_row = max(2, math.isqrt(points))
    made = []
    for n in range(points):
        row, place = divmod(n, per_row)
        back = row % 2 == 1
        made.append(((per_row - 1 - place if back else place) * STEP, row * STEP, back))
    return made


def arcs(lines: int) -> bytes:
    """A raster of quarter waves, an arc for every step."""
    made, last = [], -1.0
    for x, y, back in rows(lines):
        if y != last:
            made.append(f"G1 X{x:.3f} Y{y:.3f}\n")
        else:
            made.append(f"G{3 if back else 2} X{x:.3f} Y{y:.3f} I{(-STEP if back else STEP) / 2:.3f} J-0.1\n")
        last = y
    return framed(made)


def expressions(lines: int) -> bytes:
    return framed([f"G1 X[{x:.3f}+0] Y{y:.3f} Z[{height(x, y):.3f}-0.0]\n" for x, y, _ in rows(lines)])


def laps(lines: int, code: str) -> bytes:
    """Closed laps of a wavy outline, deeper and deeper; `code` G41 or G42, "" for none."""
    made = []
    for n in range(lines):
        angle = math.tau * n / 3142
        r = 96 + 0.8 * math.sin(7 * angle)
        z = -0.5 - 2.5 * n / lines + 0.2 * math.sin(31 * angle)
        made.append(f"G1 X{r * math.cos(angle):.3f} Y{r * math.sin(angle):.3f} Z{z:.3f}\n")
    return framed(made, f"{code} {'D1 ' if code else ''}G1 X96 Y0\n")


def turns(count: int) -> bytes:
    """Helices of 100 turns each."""
    deep = [-3 * (n + 1) * 100 / count for n in range(count // 100)]
    return framed([f"G2 X0 Y0 I5 J0 Z{z:.4f} P100\n" for z in deep], "G1 X0 Y0\n")


def keep_outs(count: int) -> str:
    boxes = "".join(
        f'[[keep_out]]\nfrom=["{n % 100 * 2} mm","{n // 100 * 2} mm","0 mm"]\n'
        f'to=["{n % 100 * 2 + 1} mm","{n // 100 * 2 + 1} mm","9 mm"]\n'
        for n in range(count)
    )
    return f'material="beech"\n[stock]\nsize=["240 mm","240 mm","12 mm"]\ncorner=["0 mm","0 mm"]\n{boxes}'


def main() -> int:
    ask = argparse.ArgumentParser(description=(__doc__ or "").split("\n")[0])
    ask.add_argument("--lines", type=int, default=1_000_000)
    ask.add_argument("--large", type=int, default=10_000_000, help="lines of the largest program")
    ask.add_argument("--runs", type=int, default=3)
    options, _ = ask.parse_known_args()
    n, met = options.lines, []
    with tempfile.TemporaryDirectory() as folder:

        def run(data: bytes, *more: str, runs: int = options.runs) -> tuple[float, float]:
            """The least of the runs."""
            path = Path(folder, "program.nc")
            path.write_bytes(data)
            return min(cost([*GCLINT, "check", str(path), *more]) for _ in range(runs))

        plain, memory = run(finishing_program(n), *TOOL, "--stock", field(n))
        met.append(report(f"peak memory of {n:,} plain lines, to 0.8 GB", memory / 819, 1, False, f"{memory:.0f} MB"))
        kinds = (
            ("arcs", arcs(n), 2.0, field(n), plain),
            ("lines with expressions", expressions(n), 1.2, field(n), plain),
        )
        for what, data, floor, blank, beside in kinds:
            seconds, memory = run(data, *TOOL, "--stock", blank)
            detail = f"{seconds:.2f} and {beside:.2f} s, {memory:.0f} MB"
            met.append(report(f"{n:,} {what}, to plain lines", seconds / beside, floor, False, detail))
        beside, _ = run(laps(n, ""), *TOOL, "--stock", BLANK)
        for code in ("G41", "G42"):
            seconds, memory = run(laps(n, code), *TOOL, "--stock", BLANK)
            detail = f"{seconds:.2f} and {beside:.2f} s, {memory:.0f} MB"
            met.append(report(f"{n:,} lines under {code}, to the same without", seconds / beside, 1.5, False, detail))

        seconds, memory = run(finishing_program(options.large), *TOOL, "--stock", field(options.large), runs=1)
        times = options.large / n
        what = f"{options.large:,} lines, to {times:g} x {n:,}"
        met.append(report(what, seconds / plain / times, 1.1, False, f"{seconds:.1f} s, {memory:.0f} MB"))
        met.append(report("peak memory of that, to 3 GB", memory / 3072, 1, False, f"{memory:.0f} MB"))

        for what, small, large in (("turns of helices", turns(5000), turns(10_000)),):
            once, _ = run(small, *TOOL, "--stock", BLANK, runs=1)
            twice, memory = run(large, *TOOL, "--stock", BLANK, runs=1)
            met.append(report(f"10,000 {what}, to 5,000", twice / once, 2.2, False, f"{twice:.2f} s, {memory:.0f} MB"))
            met.append(report(f"10,000 {what}, to 2 s", twice / 2, 1, False, f"{twice:.2f} s"))

        job, spent = Path(folder, "job.toml"), {}
        for count in (0, 5000, 10_000):
            job.write_text(keep_outs(count))
            spent[count], memory = run(finishing_program(2000), TOOL[0], TOOL[1], "--job", str(job))
        once, twice = spent[5000] - spent[0], spent[10_000] - spent[0]
        detail = f"{twice:.2f} s more than with none, {memory:.0f} MB"
        met.append(report("10,000 keep-outs, to 5,000", twice / once, 2.2, False, detail))
        met.append(report("10,000 keep-outs, to 2 s", spent[10_000] / 2, 1, False, f"{spent[10_000]:.2f} s"))
    return 0 if all(met) else 1


if __name__ == "__main__":
    raise SystemExit(main())
