"""Runs the steps of .ci/Containerfile without a container:  python tests/recipe.py FOLDER

What it copies lands in FOLDER/source, its wheels in FOLDER/wheels, and what it installs in FOLDER/env.
"""

from __future__ import annotations

import shutil
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
RECIPE = ROOT / ".ci" / "Containerfile"


def steps() -> list[list[tuple[str, str]]]:
    """(instruction, what follows it) of each stage, lines that go on in the next joined, options left out."""
    stages: list[list[tuple[str, str]]] = []
    text = RECIPE.read_text().replace("\\\n", " ")
    for line in text.splitlines():
        if not line or line.startswith("#"):
            continue
        word, _, rest = line.partition(" ")
        if word == "FROM":
            stages.append([])
        words = rest.split(" ")
        while words[0].startswith("--") or not words[0]:
            words.pop(0)
        stages[-1].append((word, " ".join(words)))
    return stages


def copied(stage: list[tuple[str, str]], source: Path) -> None:
    """Copy as COPY does: files into a folder, a folder's content to another."""
    for word, rest in stage:
        if word != "COPY":
            continue
        *names, target = rest.split()
        for name in names:
            if (ROOT / name).is_dir():
                built = shutil.ignore_patterns("*.so", "*.c", "__pycache__", "node_modules")
                shutil.copytree(ROOT / name, source / target, ignore=built)
            else:
                shutil.copy(ROOT / name, source / target)


def main(folder: str) -> None:
    home = Path(folder).resolve()
    (home / "source").mkdir(parents=True)
    build, last = steps()
    copied(build, home / "source")
    subprocess.run([sys.executable, "-m", "venv", home / "env"], check=True)
    for stage, place in ((build, home / "source"), (last, home)):
        for word, rest in stage:
            if word == "RUN" and rest.startswith("pip "):
                command = f"{home}/env/bin/{rest}".replace(" /wheels", f" {home}/wheels")
                print(command, flush=True)
                subprocess.run(["sh", "-ec", command], cwd=place, check=True, stdout=subprocess.DEVNULL)


if __name__ == "__main__":
    main(sys.argv[1])
