"""Nothing reaches back the way the data flows, no two files import each other; importing gclint loads nothing heavy."""

from __future__ import annotations

import ast
import subprocess
import sys
from pathlib import Path

import pytest

import gclint

PACKAGE = Path(gclint.__file__).parent
# From the ground up: a file imports from its own floor and from those before it. A floor is a room (a folder of
# gclint/), a room within one, or a file beside the rooms.
FLOORS = (
    "columns problem faults shipped memory __init__ threads sent disk lazy_regex atomic_file",  # they import no room
    "screen callable_module",  # nor do these
    "internal_fault clean_text json_schema kernels",
    "toml", "tables", "knowledge", "cards", "program", "setup", "motion", "stock", "cutting",
    "language", "facts", "packs", "advice", "judge", "run",
    "digest", "report.templates", "report.text", "report.answers", "report.machine", "report.picture", "report.page",
    "stock_store", "earlier_programs", "check", "rule_proof", "teach", "folder", "trial", "mend",
    "library", "editor", "desk", "cli", "check_wheel",
)  # fmt: skip
FLOOR = {name: number for number, names in enumerate(FLOORS) for name in names.split()}


def name_of(file: Path) -> str:
    name = ".".join(file.relative_to(PACKAGE.parent).with_suffix("").parts)
    return name.removesuffix(".__init__")


MODULES = {name_of(file): file for file in PACKAGE.rglob("*.py") if "node_modules" not in file.parts}


def imports_of(tree: ast.AST) -> set[str]:
    """The files of gclint that a file names in imports, also within functions and for type checking."""
    names: set[str] = set()
    for node in ast.walk(tree):
        if isinstance(node, ast.ImportFrom):
            assert not node.level, "imports name the whole path"
            each = {f"{node.module}.{alias.name}" for alias in node.names}
            names |= {name if name in MODULES else node.module or "" for name in each}
        elif isinstance(node, ast.Import):
            names |= {alias.name for alias in node.names}
    return names & set(MODULES)


GRAPH = {name: imports_of(ast.parse(file.read_text(encoding="utf-8"))) for name, file in MODULES.items()}


def floor_of(module: str) -> int:
    parts = module.split(".")[1:]
    if not parts or parts[-1] == "__main__":
        return FLOOR["__init__"] if not parts else len(FLOORS)
    return FLOOR[".".join(parts[:2])] if ".".join(parts[:2]) in FLOOR else FLOOR[parts[0]]


def circles(graph: dict[str, set[str]]) -> list[list[str]]:
    """Every set of files each of which can be reached from each other one along imports."""
    reached: dict[str, set[str]] = {}
    for start in graph:
        seen: set[str] = set()
        ahead = list(graph[start])
        while ahead:
            name = ahead.pop()
            if name not in seen:
                seen.add(name)
                ahead += graph.get(name, set())
        reached[start] = seen
    found = {tuple(sorted(b for b in reached[a] if a in reached.get(b, set()))) for a in graph if a in reached[a]}
    return sorted(map(list, found))


@pytest.mark.parametrize("module", sorted(MODULES))
def test_no_file_imports_from_a_higher_floor(module: str) -> None:
    assert not {name for name in GRAPH[module] if floor_of(name) > floor_of(module)}


def test_no_files_import_each_other() -> None:
    assert circles(GRAPH) == []


def test_a_circle_and_an_arrow_up_would_be_noticed() -> None:
    assert circles({"a": {"b"}, "b": {"c"}, "c": {"b"}, "d": {"d"}}) == [["b", "c"], ["d"]]
    assert floor_of("gclint.program.read") < floor_of("gclint.motion.interpret") < floor_of("gclint.check")
    assert floor_of("gclint.report.text.terminal") < floor_of("gclint.report.page.model") < floor_of("gclint.cli.main")
    assert "gclint.motion.interpret" in GRAPH["gclint.check"]


@pytest.mark.parametrize("heavy", ["numpy", "rich", "lark", "click", "msgspec", "gclint.program.scan"])
def test_importing_gclint_is_light(heavy: str) -> None:
    code = f"import gclint, sys; raise SystemExit({heavy!r} in sys.modules)"
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0
