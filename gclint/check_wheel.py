"""The least that an installed gclint must do: its kernels are compiled, its rules are there, and it finds a crash.

Run with  python -m gclint.check_wheel  after installing a wheel.
"""

from __future__ import annotations

import importlib
import sys
from pathlib import Path

import gclint
from gclint.kernels import kernels

PROGRAM = b"G21 G90 G94 G17 G54\nM3 S12000\nG0 Z5\nG0 X0 Y0\nG1 Z-1 F200\nG1 X20 F900\nG0 X40\nG0 Z5\nM5\nM30\n"


def main() -> None:
    from gclint.check import check
    from gclint.setup.declare import Options

    known = kernels(Path(gclint.__file__).parent)
    if not known:
        raise SystemExit("the package has no source of a kernel, so nobody can tell which are missing")
    for kernel in known:
        try:
            file = importlib.import_module(kernel).__file__ or ""
        except ImportError:
            file = ".py"
        if file.endswith(".py"):
            raise SystemExit(f"{kernel} is not compiled")
    options = Options(material="mdf", tools=("1: flat 6mm 2fl up-cut",), stock="60 x 20 x 9 mm at -10 -10")
    checked = check(PROGRAM, "smoke.nc", options)
    found = {finding.rule for finding in checked.findings}
    if "rapid-through-stock" not in found:
        raise SystemExit(f"rapid-through-stock was not found, only {sorted(found)}")
    if "lark" in sys.modules:
        raise SystemExit("the rules were parsed again: rules_compiled.json is missing from the package")
    print(f"gclint: {len(known)} kernels compiled, rules compiled, one program judged")


if __name__ == "__main__":
    main()
