"""Coverage-guided fuzzing of every reader, on kernels built with address and undefined-behaviour sanitizers.

    python tests/fuzz/run.py [--seconds N] [--build FOLDER] [--python PYTHON] [TARGET ...]

Targets: program (read, follow, time), check (the whole way), job (declarations, cards, options), pack (rule packs).
Needs atheris and what the build needs (`pip install -e '.[fuzz]'`), and clang with its runtime (Debian: clang
libclang-rt-dev); with gcc alone the kernels are built with the sanitizers but give the fuzzer no counters.
Everything it makes lies in FOLDER (build/fuzz): a copy of the package with its kernels, what was learnt (corpus), and
inputs that failed (findings). An input that takes over 5 s of processor time or over 3 GB fails too. Exit code 1:
something failed.
"""

from __future__ import annotations

import argparse
import importlib.metadata
import os
import re
import shutil
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
HERE = Path(__file__).resolve().parent
TARGETS = ("program", "check", "job", "pack")
WALL_SECONDS, MEGABYTES, LONGEST = 60, 3072, 4096  # harness.py holds each input to 5 s of processor time
ANEW = 600  # s after which a process is followed by a new one: what the sanitizer remembers of allocations only grows
SANITIZED = "-g1 -fno-omit-frame-pointer -fsanitize=address,undefined -fno-sanitize-recover=undefined"
COPIED = ("gclint", "rules", "pyproject.toml", "setup.py", "README.md", "LICENSE", "MANIFEST.in")
STATS = {"executions": "number_of_executed_units", "peak MB": "peak_rss_mb"}


def build(tree: Path) -> None:
    """The package with sanitized kernels in `tree`; what has not changed is not built again."""
    for name in COPIED:
        source = ROOT / name
        for file in [source] if source.is_file() else sorted(source.rglob("*")):
            if not file.is_file() or file.suffix in (".so", ".pyc", ".c"):
                continue
            target = tree / file.relative_to(ROOT)
            if not target.exists() or target.read_bytes() != file.read_bytes():
                target.parent.mkdir(parents=True, exist_ok=True)
                shutil.copyfile(file, target)
    names = ("clang", *(f"clang-{version}" for version in range(22, 11, -1)))
    clang = next((found for name in names if (found := shutil.which(name))), "")
    compiler = clang or "gcc"
    flags = SANITIZED + (" -fsanitize=fuzzer-no-link" if clang else "")
    print(f"building the kernels with {compiler}{'' if clang else ' (no counters: clang is not here)'}", flush=True)
    setting = {**os.environ, "CC": compiler, "LDSHARED": f"{compiler} -shared", "CFLAGS": flags, "LDFLAGS": ""}
    with (tree / "build.log").open("w") as log:
        done = subprocess.run(
            [sys.executable, "setup.py", "build_ext", "--inplace", "-j", "2"],
            cwd=tree, env=setting, stdout=log, stderr=subprocess.STDOUT, check=False,
        )  # fmt: skip
    if done.returncode:
        sys.exit((tree / "build.log").read_text()[-4000:])


def fuzz(target: str, tree: Path, folder: Path, seconds: int, more: list[str]) -> dict[str, str]:
    """Numbers of one run; the key "failed" says what went wrong."""
    try:
        atheris = importlib.metadata.files("atheris") or []
    except importlib.metadata.PackageNotFoundError:
        sys.exit("atheris is not installed: run  pip install -e '.[fuzz]'  (it is made for Linux)")
    corpus, findings = folder / "corpus" / target, folder / "findings"
    for needed in (corpus, findings):
        needed.mkdir(parents=True, exist_ok=True)
    runtime = next(str(file.locate()) for file in atheris if file.name == "asan_with_fuzzer.so")
    setting = {
        **os.environ, "LD_PRELOAD": runtime, "PYTHONPATH": str(tree), "PYTHONMALLOC": "malloc",
        "ASAN_OPTIONS": "detect_leaks=0:allocator_may_return_null=1:quarantine_size_mb=32:malloc_context_size=3",
        "UBSAN_OPTIONS": "print_stacktrace=1:halt_on_error=1", "OPENBLAS_NUM_THREADS": "1",
    }  # fmt: skip
    command = [
        sys.executable, str(HERE / "harness.py"), target, f"-max_total_time={seconds}",
        f"-timeout={WALL_SECONDS}", f"-rss_limit_mb={MEGABYTES}", f"-max_len={LONGEST}", "-print_final_stats=1",
        f"-dict={HERE / 'words.dict'}", f"-artifact_prefix={findings}/{target}-", "-print_funcs=0", *more,
        str(corpus), str(HERE / "seeds" / target),
    ]  # fmt: skip
    log = folder / f"{target}.log"
    with log.open("w") as out:
        code = subprocess.run(command, env=setting, stdout=out, stderr=subprocess.STDOUT, check=False).returncode
    told = log.read_text(errors="replace")
    numbers = {name: found[-1] for name, key in STATS.items() if (found := re.findall(rf"stat::{key}:\s+(\d+)", told))}
    for name, key in (("counters", "cov"), ("features", "ft"), ("kept inputs", "corp")):
        if found := re.findall(rf"\b{key}: ([\d/KMb]+)", told):
            numbers[name] = found[-1].split("/")[0]
    if found := re.findall(r"^slowest: ([\d.]+) s", told, re.MULTILINE):
        numbers["slowest"] = f"{found[-1]} s"
    if code or "SUMMARY:" in told or "runtime error:" in told:
        numbers["failed"] = f"see {log} and {findings}"
        print("".join(line for line in told.splitlines(True) if "Instrumenting" not in line)[-5000:])
    return numbers


def main() -> int:
    ask = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    ask.add_argument("targets", nargs="*", metavar="TARGET", help=", ".join(TARGETS))
    ask.add_argument("--seconds", type=int, default=60, help="for each target")
    ask.add_argument("--build", type=Path, default=ROOT / "build" / "fuzz", help="where everything is made")
    ask.add_argument("--pass", dest="more", action="append", default=[], help="an option for libFuzzer")
    options = ask.parse_args()
    if unknown := set(options.targets) - set(TARGETS):
        ask.error(f"no such target: {', '.join(sorted(unknown))}")
    folder = options.build.resolve()
    tree = folder / "tree"
    tree.mkdir(parents=True, exist_ok=True)
    build(tree)
    failed = 0
    for target in options.targets or TARGETS:
        for begun in range(0, options.seconds, ANEW):
            numbers = fuzz(target, tree, folder, min(ANEW, options.seconds - begun), options.more)
            print(f"{target}: " + ", ".join(f"{name} {value}" for name, value in numbers.items()), flush=True)
            if "failed" in numbers or "executions" not in numbers:
                failed += 1
                break
    return int(failed > 0)


if __name__ == "__main__":
    raise SystemExit(main())
