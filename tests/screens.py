"""What people see on the screen, a file of tests/screens for each; `python tests/screens.py` writes them again.

A change of words shows here as a difference to read, and nowhere else: other tests ask for rules, lines and numbers.
"""

from __future__ import annotations

import contextlib
import io
import os
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
FOLDER = ROOT / "tests" / "screens"
PLATE = "sample_programs/name-plate/name-plate.nc"
SCREENS: dict[str, tuple[str, ...]] = {
    "check": ("check", PLATE),
    "check-teach": ("check", PLATE, "--teach"),
    "check-operator": ("check", PLATE, "--for", "operator"),
    "check-instructor": ("check", PLATE, "--for", "instructor"),
    "check-lines": ("check", PLATE, "--as", "lines"),
    "check-folder": ("check", *(f"sample_programs/{name}" for name in ("name-plate", "oar-rack", "tide-dial"))),
    "check-nothing-declared": ("check", PLATE, "--job", "tests/screens/empty-job.toml"),
    "show": ("show", PLATE),
    "why-rule": ("why", "straight-plunge"),
    "why-quantity": ("why", "force"),
    "material": ("material", "beech"),
    "controller": ("controller", "shop-3-axis"),
    "word": ("word", "feed-per-tooth"),
    "window": ("window", "--material", "beech", "--tool", "1: flat 6mm 2fl up-cut", "--ap", "3 mm", "--speed", "18000"),
}


def screen(name: str) -> str:
    """Give what the command of this screen prints, errors included, with its exit code on the last line."""
    from gclint.cli.main import run

    said = io.StringIO()
    with contextlib.chdir(ROOT), contextlib.redirect_stdout(said), contextlib.redirect_stderr(said):
        code = run(list(SCREENS[name]))
    return f"{said.getvalue()}\nexit code {code}\n"


def main() -> None:
    """Write every screen again."""
    os.environ.update(GCLINT_CACHE="none", COLUMNS="80", NO_COLOR="1")
    for name in SCREENS:
        (FOLDER / f"{name}.txt").write_text(screen(name), encoding="utf-8")


if __name__ == "__main__":
    main()
