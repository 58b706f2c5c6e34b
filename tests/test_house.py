"""The house stays in order: what stands at the top, what is packaged, what is generated."""

from __future__ import annotations

import subprocess
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[1]
TOP = {
    ".ci", ".dockerignore", ".gitignore", ".pictures", ".pre-commit-hooks.yaml", "CHANGELOG.md", "DEVELOPERS.md",
    "LICENSE", "MANIFEST.in", "README.md", "gclint", "pyproject.toml", "rules", "sample_programs", "setup.py", "tests",
}


def kept_files() -> list[str]:
    """What git keeps, or, in a copy without git, nothing."""
    if not (ROOT / ".git").exists():
        pytest.skip("no git here")
    told = subprocess.run(["git", "ls-files"], cwd=ROOT, capture_output=True, text=True, check=False)
    if told.returncode:
        pytest.skip("git does not answer")
    return told.stdout.splitlines()


def test_the_top_level_holds_only_what_is_ruled() -> None:
    assert {name.split("/")[0] for name in kept_files()} <= TOP


def test_every_folder_of_code_is_a_package() -> None:
    """The build packs the folders that have an __init__.py."""
    folders = {path.parent for path in (ROOT / "gclint").rglob("*.py") if "node_modules" not in path.parts}
    assert [folder for folder in sorted(folders) if not (folder / "__init__.py").exists()] == []


def test_every_kernel_is_built_and_guarded() -> None:
    import importlib

    from gclint.kernels import kernels

    for name in kernels(ROOT / "gclint"):
        assert not (importlib.import_module(name).__file__ or "").endswith(".py")
        source = (ROOT / (name.replace(".", "/") + ".py"))
        assert "cython.compiled" in source.read_text()
        assert source.with_suffix(".pyi").exists()


def test_nothing_generated_is_kept() -> None:
    assert not [f for f in kept_files() if f.endswith((".so", ".c", ".pyc", ".html", "rules_compiled.json"))]


def test_names_of_test_files_are_unique() -> None:
    names = [Path(f).name for f in kept_files() if Path(f).match("test_*.py")]
    assert names
    assert len(names) == len(set(names))
