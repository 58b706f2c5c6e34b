"""What is imported when: a small file must be checked at once, and --version needs next to nothing."""

from __future__ import annotations

import subprocess
from collections.abc import Callable
from pathlib import Path

import pytest

Process = Callable[..., "subprocess.CompletedProcess[str]"]
LOADED = "import sys; print(' '.join(sorted(m for m in sys.modules if '.' not in m)), file=sys.stderr)"


def loaded(process: Process, code: str) -> set[str]:
    return set(process("-c", f"{code}\n{LOADED}").stderr.split())


def command(*args: str) -> str:
    return f"from gclint.cli.main import run; run({list(args)!r})"


def test_importing_the_package_loads_nothing_heavy(process: Process) -> None:
    modules = loaded(process, "import gclint")
    assert "gclint" in modules
    assert not modules & {"numpy", "click", "rich", "lark", "msgspec"}


@pytest.mark.parametrize("args", [("--version",), ("--help",)])
def test_version_and_help_load_only_click(process: Process, args: tuple[str, ...]) -> None:
    modules = loaded(process, command(*args))
    assert "click" in modules
    assert not modules & {"numpy", "rich", "lark", "msgspec", "jsonschema", "importlib_metadata"}


def compiled_rules_are_fresh() -> bool:
    """Where packs were edited after the build, they are compiled in memory, which needs the parser."""
    import msgspec

    import gclint
    from gclint.packs.shipped_packs import fingerprint, sources
    from gclint.shipped import folder

    compiled = Path(gclint.__file__).parent / "rules_compiled.json"
    kept = msgspec.json.decode(compiled.read_bytes()) if compiled.is_file() else {}
    return kept.get("fingerprint") == fingerprint(sources(folder()))


@pytest.mark.skipif(not compiled_rules_are_fresh(), reason="the rules were changed after the build")
def test_a_plain_program_is_checked_without_the_parser_generator(process: Process, program: Path) -> None:
    modules = loaded(process, command("check", str(program), "--material", "beech", "--tool", "1: flat 6mm 2fl"))
    assert "numpy" in modules
    assert not modules & {"lark", "jsonschema", "scipy", "shapely"}


def test_json_needs_no_terminal_library(process: Process, program: Path) -> None:
    assert "rich" not in loaded(process, command("check", str(program), "--as", "json"))


def test_version(process: Process) -> None:
    from gclint import __version__

    done = process("-m", "gclint", "--version")
    assert (done.returncode, done.stdout, done.stderr) == (0, f"gclint {__version__}\n", "")


def test_a_plain_check_loads_nothing_that_teaches(process: Process, here: Path) -> None:
    (here / "cut.nc").write_text("G21 G90 G94 G17 G54\nM3 S12000\nG0 Z5\nG1 Z-1 F300\nG1 X20\nG0 Z5\nM30\n")
    told = process("-c", f"{command('check', 'cut.nc')}\nimport sys; print(*sys.modules, file=sys.stderr)").stderr
    assert "gclint.report.text.terminal" in told
    assert "gclint.teach" not in told
    assert "gclint.knowledge.glossary" not in told
