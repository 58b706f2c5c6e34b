"""The kernels are found by what they say themselves, and a package without one of them does not pass as whole."""

from __future__ import annotations

import importlib.machinery
import subprocess
import sys
from pathlib import Path

import pytest

import gclint
from gclint.kernels import kernels

PACKAGE = Path(gclint.__file__).parent
BUILT = tuple(importlib.machinery.EXTENSION_SUFFIXES)


def test_every_compiled_module_is_a_kernel_and_every_kernel_is_compiled() -> None:
    compiled = {
        ".".join((*path.relative_to(PACKAGE.parent).parent.parts, path.name.partition(".")[0]))
        for path in PACKAGE.rglob("*")
        if path.name.endswith(BUILT)
    }
    assert compiled
    assert sorted(compiled) == kernels(PACKAGE)


@pytest.mark.slow
@pytest.mark.parametrize("kernel", kernels(PACKAGE))
def test_a_package_without_one_kernel_does_not_pass(kernel: str, tmp_path: Path) -> None:
    left_out = kernel.replace(".", "/")
    for path in PACKAGE.rglob("*"):
        inner = path.relative_to(PACKAGE.parent)
        if path.is_dir() and path.name != "__pycache__":
            (tmp_path / inner).mkdir(parents=True, exist_ok=True)
            continue
        lacking = inner.as_posix().startswith(f"{left_out}.") and path.name.endswith(BUILT)
        if path.is_file() and path.parent.name != "__pycache__" and not lacking:
            (tmp_path / inner).parent.mkdir(parents=True, exist_ok=True)
            (tmp_path / inner).symlink_to(path)
    (tmp_path / "rules").symlink_to(PACKAGE.parent / "rules")
    done = subprocess.run(
        [sys.executable, "-m", "gclint.check_wheel"], cwd=tmp_path, capture_output=True, text=True, check=False
    )
    assert done.returncode == 1
    assert done.stderr.strip() == f"{kernel} is not compiled"
