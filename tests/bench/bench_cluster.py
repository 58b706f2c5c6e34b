"""A folder of 2,000 programs in every way there is: cold, again, moved, a cluster, a killed worker.

python tests/bench/bench_cluster.py [--programs N]

Every report is compared byte for byte with the first. Figures are seconds of whole processes in this one run.
"""

from __future__ import annotations

import argparse
import subprocess
import sys
import tempfile
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))
sys.path.insert(0, str(Path(__file__).parent))
from bench_folder import make

ROOT = Path(__file__).parents[2]
HERE = "127.0.0.1"


def check(home: Path, *more: str) -> tuple[float, bytes, str]:
    """(seconds, report, what is said beside it) of one run."""
    begun = time.perf_counter()
    done = subprocess.run(
        [sys.executable, "-m", "gclint", "check", home.name, "--as", "json", *more], capture_output=True, check=False,
        cwd=home.parent, env={"PYTHONPATH": str(ROOT), "PATH": "/usr/bin:/bin", "HOME": str(home.parent)},
    )  # fmt: skip
    if done.returncode not in (0, 1):
        sys.exit(f"the run ended with {done.returncode}: {done.stderr.decode()[-500:]}")
    return time.perf_counter() - begun, done.stdout, done.stderr.decode()


def main() -> int:
    ask = argparse.ArgumentParser(description=(__doc__ or "").split("\n")[0])
    ask.add_argument("--programs", type=int, default=2_000)
    options, _ = ask.parse_known_args()
    with tempfile.TemporaryDirectory() as temporary:
        home, cache = Path(temporary) / "work" / "jobs", str(Path(temporary) / "cache")
        home.parent.mkdir()
        size = make(home, options.programs)
        print(f"{options.programs:,} programs, {size / 1e6:.1f} MB", flush=True)
        cold, right, _ = check(home, "--cache", cache)

        def told(what: str, *more: str, place: Path = home) -> None:
            took, said, beside = check(place, *more)
            said = said.replace(str(place).encode(), str(home).encode())  # declarations above are told by their place
            same = "the same bytes" if said == right else "OTHER BYTES"
            print(f"  {what:<44} {took:8.1f} s   {same}", flush=True)
            if said != right:
                print(beside[-400:])

        print(f"  {'cold, two workers of this machine':<44} {cold:8.1f} s", flush=True)
        told("again", "--cache", cache)
        kept = sum(path.stat().st_size for path in Path(cache).rglob("*") if path.is_file())
        print(f"  kept: {kept / options.programs / 1000:.1f} kB a program", flush=True)
        moved = Path(temporary) / "elsewhere" / "jobs"
        moved.parent.mkdir()
        home.rename(moved)
        told("moved to another folder", "--cache", cache, place=moved)
        moved.rename(home)
        cluster = Cluster(Path(temporary))
        try:
            told("a cluster of two workers", "--cache", "none", "--engine", cluster.address)
            cluster.kill_one_in(cold / 4)
            told("a cluster, one worker killed on the way", "--cache", "none", "--engine", cluster.address)
            print(cluster.messages(), flush=True)
        finally:
            cluster.end()
    return 0


class Cluster:
    def __init__(self, home: Path) -> None:
        file = home / "scheduler.json"
        run = [sys.executable, "-m", "dask"]
        quiet = {"stdout": subprocess.DEVNULL, "stderr": subprocess.DEVNULL, "cwd": str(home)}
        own = ["scheduler", "--host", HERE, "--port", "0", "--no-dashboard", "--no-show", "--scheduler-file", str(file)]
        self.all = [subprocess.Popen([*run, *own], **quiet)]  # type: ignore[call-overload]
        while not file.exists():
            time.sleep(0.1)
        self.port = file.read_text().partition(f"tcp://{HERE}:")[2].partition('"')[0]
        self.address = f"dask://{HERE}:{self.port}"
        self.worker = [
            *run, "worker", f"tcp://{HERE}:{self.port}", "--nthreads", "1", "--no-nanny", "--no-dashboard",
        ]  # fmt: skip
        self.all += [subprocess.Popen(self.worker, **quiet) for _ in range(2)]  # type: ignore[call-overload]
        import distributed

        with distributed.Client(f"tcp://{HERE}:{self.port}", set_as_default=False) as client:
            client.wait_for_workers(2, timeout=120)

    def kill_one_in(self, seconds: float) -> None:
        import threading

        timer = threading.Timer(seconds, self.all[1].kill)
        timer.daemon = True
        timer.start()

    def messages(self) -> str:
        import distributed

        with distributed.Client(f"tcp://{HERE}:{self.port}", set_as_default=False) as client:
            used = client.run_on_scheduler(lambda: __import__("resource").getrusage(0))
        return f"  the scheduler used {used.ru_utime + used.ru_stime:.1f} s and {used.ru_maxrss / 1024:.0f} MB"

    def end(self) -> None:
        for each in self.all:
            each.terminate()
            each.wait(20)


if __name__ == "__main__":
    raise SystemExit(main())
