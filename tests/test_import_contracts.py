"""Lower rooms never import higher ones, and importing gclint loads nothing heavy."""

from __future__ import annotations

import ast
import subprocess
import sys
from pathlib import Path

import pytest

import gclint

PACKAGE = Path(gclint.__file__).parent
# the way the data flows
ORDER = ["program", "motion", "stock", "cutting", "judge", "report", "teach", "folder", "trial", "mend", "cli"]
SETUP_MAY_READ = {"gclint.program.table", "gclint.motion.table"}  # resolving the setup looks at what the program uses
MODULES = sorted(p.relative_to(PACKAGE).as_posix() for p in PACKAGE.rglob("*.py"))


def imported(file: Path) -> set[str]:
    """Every gclint module a file names in an import, also inside functions and for type checking."""
    names: set[str] = set()
    for node in ast.walk(ast.parse(file.read_text())):
        if isinstance(node, ast.ImportFrom) and node.module and node.level == 0:
            names.add(node.module)
            if (PACKAGE.parent / node.module.replace(".", "/")).is_dir():
                names |= {f"{node.module}.{alias.name}" for alias in node.names}
        elif isinstance(node, ast.ImportFrom) and node.level:
            names.add("gclint.relative")
        elif isinstance(node, ast.Import):
            names |= {alias.name for alias in node.names}
    return {name for name in names if name.split(".")[0] == "gclint"}


def may_import(room: str, name: str) -> bool:
    parts = name.split(".")
    if parts[-1] == "relative":
        return False
    other = parts[1] if len(parts) > 1 else ""
    if room == "":  # check.py and check_wheel.py chain all the rooms; the rest of the top level is below them
        return other != "cli"
    if other not in {*ORDER, "setup"}:
        return other not in {"check", "check_wheel"} or room in ("cli", "folder", "trial", "mend")
    if room == "setup":
        return other == "setup" or name in SETUP_MAY_READ
    if other == "setup":
        return True
    return ORDER.index(other) <= ORDER.index(room)


@pytest.mark.parametrize("module", MODULES)
def test_no_room_imports_a_later_one(module: str) -> None:
    room = module.split("/")[0] if "/" in module else ""
    against = {name for name in imported(PACKAGE / module) if not may_import(room, name)}
    assert not against


def test_the_contract_would_be_noticed() -> None:
    assert not may_import("program", "gclint.motion.table")
    assert not may_import("motion", "gclint.report.tables")
    assert not may_import("judge", "gclint.check")
    assert may_import("cli", "gclint.check")
    assert "gclint.motion.interpret" in imported(PACKAGE / "check.py")


@pytest.mark.parametrize("module", ["columns.py", "problem.py", "faults.py", "shipped.py", "disk.py"])
def test_the_foundations_import_no_room(module: str) -> None:
    assert not imported(PACKAGE / module) - {"gclint.columns", "gclint.problem", "gclint.faults", "gclint.shipped"}


@pytest.mark.parametrize("heavy", ["numpy", "rich", "lark", "click", "msgspec", "gclint.program.scan"])
def test_importing_gclint_is_light(heavy: str) -> None:
    code = f"import gclint, sys; raise SystemExit({heavy!r} in sys.modules)"
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0
